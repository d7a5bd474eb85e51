// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/stock_words.h"
#include "ui/pages/stock/load_chart.h"
#include "ui/pages/stock/stock_cards.h"
#include "ui/widgets/caution_box.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/notice_strip.h"

#include "core/facts/entry_cautions.h"
#include "core/wording/numbers.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

AdditionCard::AdditionCard(facade::Keeper& keeper, facade::StockDesk& desk, Theme& theme, QWidget* parent)
    : StockCard(theme, tr("Before buying: run the load through the forecast"), parent)
    , m_keeper(keeper)
    , m_desk(desk)
    , m_species(new QComboBox)
    , m_count(new QSpinBox)
    , m_lots(new QSpinBox)
    , m_day(new MomentEdit(keeper.clock(), false))
    , m_chart(new LoadChart(theme))
    , m_reason(new QLineEdit)
    , m_plan(new QPushButton(tr("Plan this addition")))
    , m_record(new QPushButton(tr("Record as added")))
{
    makeForm();
    m_load = addText(TextStyle::Secondary);
    body()->addWidget(m_chart);
    m_verdict = addText(TextStyle::Strong);
    m_gates = addText(TextStyle::Secondary);
    m_against = addText(TextStyle::Body);
    m_against->setToken(Token::Act);
    m_reason->setPlaceholderText(tr("Why you do not wait for it"));
    m_reason->setAccessibleName(tr("Reason for not waiting, kept in the entry"));
    body()->addWidget(m_reason);
    m_advice = addText(TextStyle::Secondary,
                       tr("Test ammonia and nitrite on days 1, 3 and 7 after adding, and feed half in the first week "
                          "(common practice)."));
    m_caution = new CautionBox(theme);
    m_caution->setCautions(facts::cautionsFor(facts::builtInFacts(), record::EntryKind::Addition, {}),
                           CautionBox::Extent::Line);
    body()->addWidget(m_caution);
    auto* foot = new QWidget;
    auto* buttons = new FlowLayout(foot, 8);
    buttons->setContentsMargins(0, 0, 0, 0);
    m_plan->setProperty("primary", true);
    buttons->addWidget(m_plan);
    buttons->addWidget(m_record);
    body()->addWidget(foot);
    connect(m_plan, &QPushButton::clicked, this, [this] { write(true); });
    connect(m_record, &QPushButton::clicked, this, [this] { write(false); });
    connect(m_reason, &QLineEdit::textChanged, this, &AdditionCard::refresh);
    connect(&desk, &facade::StockDesk::weighed, this, [this] {
        refresh();
        announce(this, verdict());
    });
    connect(&desk, &facade::StockDesk::failed, this, [this](const QString& sentence) {
        refresh();
        m_verdict->setText(sentence);
    });
    refresh();
}

void AdditionCard::makeForm()
{
    m_species->setAccessibleName(tr("Animal to consider"));
    m_species->setMaxVisibleItems(16);
    m_species->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_species->setMinimumContentsLength(16);
    m_count->setRange(1, 500);
    m_count->setAccessibleName(tr("How many"));
    m_lots->setRange(1, 6);
    m_lots->setAccessibleName(tr("In how many lots, a week apart"));
    m_day->setAccessibleName(tr("Day of the first lot"));
    m_day->setMinimumWidth(theme().px(90));
    auto* fields = new QWidget;
    auto* grid = new QGridLayout(fields);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(4);
    const auto label = [this](const QString& text) {
        return (new Text(theme(), TextStyle::Secondary, text))->wrapped();
    };
    grid->addWidget(label(tr("Animal")), 0, 0, 1, 3);
    grid->addWidget(m_species, 1, 0, 1, 3);
    grid->addWidget(label(tr("How many")), 2, 0, Qt::AlignBottom);
    grid->addWidget(label(tr("Lots, a week apart")), 2, 1, Qt::AlignBottom);
    grid->addWidget(label(tr("First on")), 2, 2, Qt::AlignBottom);
    grid->addWidget(m_count, 3, 0);
    grid->addWidget(m_lots, 3, 1);
    grid->addWidget(m_day, 3, 2);
    grid->setColumnStretch(2, 1);
    body()->addWidget(fields);
    connect(m_species, &QComboBox::currentIndexChanged, this, [this](int index) {
        if (index > 0) {
            const facts::Species& one = m_animals[static_cast<std::size_t>(index - 1)];
            const QSignalBlocker quiet(m_count);
            m_count->setValue(one.group.value_or(1));
        }
        changed();
    });
    connect(m_count, &QSpinBox::valueChanged, this, &AdditionCard::changed);
    connect(m_lots, &QSpinBox::valueChanged, this, &AdditionCard::changed);
    connect(m_day, &MomentEdit::momentChanged, this, [this] { weigh(); });
}

void AdditionCard::setSpecies(const facts::FactBook& book)
{
    const QString kept = wish() ? wish()->species : QString();
    m_animals.clear();
    for (const facts::Species& one : book.species) {
        if (!one.isPlant()) {
            m_animals.push_back(one);
        }
    }
    std::ranges::stable_sort(m_animals,
                             [](const auto& a, const auto& b) { return a.name.localeAwareCompare(b.name) < 0; });
    const QSignalBlocker quiet(m_species);
    m_species->clear();
    m_species->addItem(tr("None considered"));
    for (const facts::Species& one : m_animals) {
        m_species->addItem(tr("%1 (%2)").arg(one.name, one.scientific), one.id);
    }
    m_species->setCurrentIndex(std::max(0, m_species->findData(kept)));
    m_day->setMoment(m_keeper.clock().now().plusDays(3.0));
}

void AdditionCard::setStock(const facade::StockModel& model)
{
    m_stock = model;
    refresh();
}

std::optional<facade::StockWish> AdditionCard::wish() const
{
    const QString id = m_species->currentData().toString();
    return id.isEmpty() ? std::nullopt : std::optional(facade::StockWish{id, m_count->value()});
}

std::optional<facade::Addition> AdditionCard::addition() const
{
    const int index = m_species->currentIndex();
    if (index <= 0) {
        return std::nullopt;
    }
    facade::Addition made;
    made.species = m_animals[static_cast<std::size_t>(index - 1)];
    made.count = m_count->value();
    made.lots = std::min(m_lots->value(), made.count);
    made.first = m_day->moment().isValid() ? m_day->moment() : m_keeper.clock().now().plusDays(3.0);
    made.feedOfMass = made.species.kind == u"fish"_s ? facade::kFeedOfMass_fish : facade::kFeedOfMass_grazer;
    return made;
}

void AdditionCard::choose(const QString& speciesId, int count, int lots)
{
    m_species->setCurrentIndex(std::max(0, m_species->findData(speciesId)));
    m_count->setValue(count);
    m_lots->setValue(lots);
}

void AdditionCard::focusFirst()
{
    m_species->setFocus(Qt::OtherFocusReason);
}

void AdditionCard::changed()
{
    emit wishChanged();
    weigh();
}

void AdditionCard::weigh()
{
    if (const auto wanted = addition(); wanted && m_stock.layout) {
        m_desk.weigh(m_stock.layout, *wanted);
    } else {
        m_desk.forget();
    }
    refresh();
}

QString AdditionCard::verdict() const
{
    return m_verdict->text();
}

void AdditionCard::refresh()
{
    const auto wanted = addition();
    const auto trial = wanted ? m_desk.trial() : nullptr;
    const bool fits = trial != nullptr && trial->addition.species.id == wanted->species.id;
    m_chart->setTrial(fits ? trial : nullptr);
    setAside(!wanted              ? QString()
             : m_desk.isRunning() ? tr("The forecast is running; the picture before it stays.")
             : !fits              ? tr("This tank has no forecast yet, so the load cannot be run through it.")
                                  : tr("300 members, with and without them."));
    m_verdict->setText(fits ? trialVerdict(*trial).join(u' ') : QString());
    m_gates->setText(fits ? gateChanges(*trial, m_stock).join(u' ') : QString());
    m_load->setText(
        wanted ? tr("About %1 g of food a day at %2 of their mass; the mass is an estimate.")
                     .arg(wording::numberText(wanted->feed_g_per_d(), 2), wording::percentText(wanted->feedOfMass))
               : QString());
    QStringList against;
    if (wanted) {
        const auto row = std::ranges::find(m_stock.animals, facade::StockPlace::Considered, &facade::AnimalRow::place);
        if (row != m_stock.animals.end()) {
            against = objections(m_stock, *row, m_keeper.clock().today());
        }
    }
    m_against->setText(against.join(u' '));
    m_reason->setVisible(!against.isEmpty());
    const bool writable = wanted && m_stock.layout && m_keeper.hasStore() && !m_keeper.isReadOnly();
    const bool reasoned = against.isEmpty() || !m_reason->text().trimmed().isEmpty();
    m_plan->setEnabled(writable && m_day->moment().isValid());
    m_record->setEnabled(writable && reasoned);
    m_record->setToolTip(reasoned ? QString() : tr("Something speaks against it: write down why you do not wait."));
    for (QWidget* part : std::initializer_list<QWidget*>{m_verdict, m_gates, m_load, m_against}) {
        part->setVisible(!static_cast<Text*>(part)->text().isEmpty());
    }
    m_advice->setVisible(wanted.has_value());
    m_caution->setVisible(wanted.has_value());
}

void AdditionCard::write(bool plan)
{
    const auto wanted = addition();
    if (!wanted) {
        return;
    }
    const QString reason = m_reason->isVisible() ? m_reason->text().trimmed() : QString();
    const auto done = plan ? facade::planAddition(m_keeper, m_stock.layout, *wanted, reason)
                           : facade::recordAddition(m_keeper, m_stock.layout, *wanted, reason);
    if (!done) {
        emit failed(done.error(), tr("Nothing was written."));
        return;
    }
    const QString name = wanted->species.name;
    m_reason->clear();
    m_species->setCurrentIndex(0);
    emit told(plan ? tr("%1 %2 planned for %3").arg(wanted->count).arg(name, m_stock.name)
                   : tr("%1 %2 recorded in %3").arg(wanted->count).arg(name, m_stock.name));
}

} // namespace littoral::ui
