// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/supplies_editor.h"

#include "core/facts/fact_book.h"
#include "core/wording/supply_sentences.h"
#include "ui/models/day_words.h"

#include <QFormLayout>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kKitRole = Qt::UserRole + 1;
constexpr double kMostPerLitre = 1000.0;
constexpr double kHeaviest_g = 100000.0;

/// What stands above work on the gas, before any of it.
QString gasCaution()
{
    const facts::Caution* caution = facts::builtInFacts().caution(u"C-CO2"_s);
    if (caution == nullptr) {
        return {};
    }
    QStringList lines{caution->title};
    for (const facts::CautionPoint& point : caution->points) {
        lines << point.text;
    }
    return lines.join(u'\n');
}

std::optional<double> positive(const QLineEdit* field, double most, QString& problem)
{
    if (field->text().trimmed().isEmpty()) {
        return std::nullopt;
    }
    const auto value = numberFrom(field->text());
    if (!value || *value <= 0.0 || *value > most) {
        problem = problem.isEmpty() ? SuppliesEditor::tr("%1: \"%2\" is not a number above 0 and up to %3.")
                                          .arg(field->accessibleName(), field->text(), numberText(most))
                                    : problem;
        return std::nullopt;
    }
    return value;
}

} // namespace

SuppliesEditor::SuppliesEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Supplies"), parent)
    , m_keeper(keeper)
    , m_list(new QListWidget)
    , m_standing(new Text(theme, TextStyle::Body))
    , m_caution(new Text(theme, TextStyle::Secondary))
{
    m_list->setAccessibleName(tr("Supplies and test kits with a date, soonest wanted first"));
    m_list->setMaximumHeight(theme.px(190));
    m_list->setWordWrap(true);
    m_list->setSpacing(3);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    body()->addWidget(m_list);
    m_standing->setWordWrap(true);
    body()->addWidget(m_standing);
    m_caution->setWordWrap(true);
    m_caution->setToken(Token::Watch);
    m_caution->setText(gasCaution());
    body()->addWidget(m_caution);
    makeForm();
    makeWeighing();
    body()->addStretch(1);
    m_save = addFootButton(tr("Save supply"), tr("Enter"), true);
    auto* fresh = addFootButton(tr("New supply"), {}, false);
    m_remove = addFootButton(tr("Remove"), {}, false);
    connect(m_save, &QPushButton::clicked, this, &SuppliesEditor::save);
    connect(m_remove, &QPushButton::clicked, this, &SuppliesEditor::remove);
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_list->setCurrentRow(-1);
        show({});
        m_name->setFocus();
    });
    connect(m_list, &QListWidget::currentRowChanged, this, &SuppliesEditor::choose);
    connect(m_list, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        if (item->data(kKitRole).toBool()) {
            emit kitsWanted();
        } else {
            m_name->setFocus();
        }
    });
    setFirstField(m_list);
    connect(&keeper, &facade::Keeper::changed, this, [this] {
        refreshList();
        refreshStanding();
    });
    connect(&theme, &Theme::changed, this, [this] { m_list->setMaximumHeight(this->theme().px(190)); });
    refreshChoices();
    refreshList();
    show({});
}

void SuppliesEditor::makeForm()
{
    QFormLayout* form = addForm();
    m_name = addField(form, tr("Name, as doses of it are entered"));
    m_kind = new QComboBox;
    for (const QString& kind : care::supplyKinds()) {
        m_kind->addItem(wording::supplyKindName(kind), kind);
    }
    addRow(form, tr("Kind"), m_kind);
    m_fields.text(m_name, &record::Supply::name);
    m_fields.optional(addField(form, tr("Amount when opened or last counted")), &record::Supply::amount, 0.0, 1e9);
    m_unit = new QComboBox;
    m_unit->setEditable(true);
    m_unit->addItems({u"mL"_s, u"L"_s, u"g"_s, u"kg"_s, tr("doses"), tr("tests"), tr("pieces")});
    addRow(form, tr("Unit"), m_unit);
    m_opened = addField(form, tr("Opened or counted on"), u"2026-11-25"_s);
    m_expires = addField(form, tr("Good until"), u"2027-04-30"_s);
    m_fields.text(addField(form, tr("Lot")), &record::Supply::lot);
    m_fields.text(addField(form, tr("Note")), &record::Supply::note);

    m_useBox = new QWidget;
    auto* use = new QFormLayout(m_useBox);
    use->setContentsMargins(0, 0, 0, 0);
    use->setRowWrapPolicy(QFormLayout::WrapAllRows);
    use->setVerticalSpacing(6);
    use->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_perLitre = addField(use, tr("Used at water changes, of that unit per litre of new water"), u"0.05"_s);
    m_source = new QComboBox;
    addRow(use, tr("At changes with"), m_source);
    body()->addWidget(m_useBox);
    for (QComboBox* combo : {m_kind, m_unit, m_source}) {
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(10);
    }
    connect(m_kind, &QComboBox::currentIndexChanged, this, &SuppliesEditor::arrangeFields);
}

void SuppliesEditor::makeWeighing()
{
    m_cylinderBox = new QWidget;
    auto* form = new QFormLayout(m_cylinderBox);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    form->setVerticalSpacing(6);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_tank = new QComboBox;
    m_tank->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_tank->setMinimumContentsLength(10);
    addRow(form, tr("The cylinder hangs at"), m_tank);
    m_empty = addField(form, tr("Weight when empty, with what is weighed with it, g"), u"5400"_s);
    m_weight = addField(form, tr("Weight now, closed, g"));
    m_weigh = new QPushButton(tr("Enter the weighing"));
    m_weigh->setAccessibleName(m_weigh->text());
    form->addRow(m_weigh);
    body()->addWidget(m_cylinderBox);
    connect(m_weigh, &QPushButton::clicked, this, &SuppliesEditor::enterWeighing);
    connect(m_weight, &QLineEdit::returnPressed, m_weigh, &QPushButton::click);
}

QString SuppliesEditor::kind() const
{
    return m_kind->currentData().toString();
}

void SuppliesEditor::arrangeFields()
{
    const bool gas = kind() == u"co2"_s;
    m_useBox->setVisible(!gas && kind() != u"kit"_s);
    m_cylinderBox->setVisible(gas);
    m_caution->setVisible(gas);
}

void SuppliesEditor::refreshChoices()
{
    m_source->clear();
    m_source->addItem(tr("every water"), 0);
    for (const record::SourceWater& source : m_keeper.row().sources) {
        m_source->addItem(source.name, source.id.value);
    }
    m_tank->clear();
    m_tank->addItem(tr("no tank yet"), 0);
    for (const record::Tank& tank : m_keeper.row().tanks) {
        m_tank->addItem(tank.name, tank.id.value);
    }
}

void SuppliesEditor::refreshList()
{
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    const record::Moment now = m_keeper.clock().now();
    for (const care::SupplyStanding& it : care::supplyStandings(m_keeper.row(), now)) {
        QStringList parts{it.kit ? tr("%1, test kit").arg(it.name) : it.name};
        for (const QString& part :
             {wording::remainingText(it), wording::daysLeftText(it), wording::expiryText(it, now.localDate())}) {
            if (!part.isEmpty()) {
                parts << part;
            }
        }
        if (it.wanted().isValid() && it.wanted() <= now.localDate()) {
            parts << tr("wanted now");
        }
        auto* item = new QListWidgetItem(parts.join(u" · "_s), m_list);
        item->setData(Qt::UserRole, it.kit ? it.kit.value : it.supply.value);
        item->setData(kKitRole, static_cast<bool>(it.kit));
        if (!it.kit && it.supply == m_shown.supply.id) {
            m_list->setCurrentItem(item);
        }
    }
    m_list->setVisible(m_list->count() > 0);
}

void SuppliesEditor::refreshStanding()
{
    const record::Moment now = m_keeper.clock().now();
    const auto& supplies = m_keeper.row().supplies;
    const auto found = std::ranges::find(supplies, m_shown.supply.id, &record::Supply::id);
    if (found == supplies.end()) {
        m_standing->setText(tr("State how much there is and when it was opened: doses entered under its name, water "
                               "changes and weighings are taken off by themselves."));
        return;
    }
    m_standing->setText(
        wording::supplyReasons(care::standingOf(m_keeper.row(), *found, now), now.localDate()).join(u' '));
}

void SuppliesEditor::open()
{
    if (!hasDraft()) {
        refreshChoices();
        show(m_shown.supply);
    }
    refreshList();
    m_save->setEnabled(!m_keeper.isReadOnly());
}

void SuppliesEditor::edit(record::SupplyId supply)
{
    open();
    for (int row = 0; row < m_list->count(); ++row) {
        const QListWidgetItem* item = m_list->item(row);
        if (!item->data(kKitRole).toBool() && item->data(Qt::UserRole).toLongLong() == supply.value) {
            m_list->setCurrentRow(row);
        }
    }
}

void SuppliesEditor::choose(int row)
{
    if (row < 0) {
        return;
    }
    const QListWidgetItem* item = m_list->item(row);
    const record::SupplyId id{item->data(Qt::UserRole).toLongLong()};
    const auto& supplies = m_keeper.row().supplies;
    const auto found = std::ranges::find(supplies, id, &record::Supply::id);
    if (!item->data(kKitRole).toBool() && found != supplies.end()) {
        show(*found);
    } else {
        show({});
        m_standing->setText(tr("A test kit: its date and steps stand in its own form. Enter opens it."));
    }
}

void SuppliesEditor::show(const record::Supply& supply)
{
    m_shown = {supply, care::supplyUse(m_keeper.row(), supply.id)};
    clearProblem();
    m_fields.fill(supply);
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(supply.kind)));
    m_unit->setEditText(supply.unit.isEmpty() && !supply.id ? u"mL"_s : supply.unit);
    m_opened->setText(supply.opened.toString(Qt::ISODate));
    m_expires->setText(supply.expires.toString(Qt::ISODate));
    m_perLitre->setText(numberText(m_shown.use.perLitre));
    m_empty->setText(numberText(m_shown.use.empty_g));
    m_source->setCurrentIndex(std::max(0, m_source->findData(m_shown.use.source.value)));
    m_tank->setCurrentIndex(std::max(0, m_tank->findData(m_shown.use.tank.value)));
    m_weight->clear();
    const bool writable = !m_keeper.isReadOnly();
    m_remove->setEnabled(writable && static_cast<bool>(supply.id));
    m_weigh->setEnabled(writable && static_cast<bool>(supply.id));
    arrangeFields();
    refreshStanding();
}

QString SuppliesEditor::readDays(record::Supply& supply) const
{
    for (const auto& [field, day] : {std::pair{m_opened, &supply.opened}, std::pair{m_expires, &supply.expires}}) {
        const QString text = field->text().trimmed();
        const record::Moment at = momentFrom(text, m_keeper.clock().now());
        *day = at.isValid() ? at.localDate() : QDate();
        if (!text.isEmpty() && !day->isValid()) {
            return tr("%1: \"%2\" is not a date. Type it as 2027-04-30.").arg(field->accessibleName(), text);
        }
    }
    return {};
}

QString SuppliesEditor::read(Draft& draft) const
{
    QString problem = m_fields.read(draft.supply);
    if (!problem.isEmpty()) {
        return problem;
    }
    if (draft.supply.name.isEmpty()) {
        return tr("The supply has no name yet.");
    }
    const auto& supplies = m_keeper.row().supplies;
    const bool taken = std::ranges::any_of(supplies, [&](const record::Supply& other) {
        return other.id != draft.supply.id && other.lot == draft.supply.lot &&
               other.name.compare(draft.supply.name, Qt::CaseInsensitive) == 0;
    });
    if (taken) {
        return tr("There is a supply of that name and lot already. Give this one its lot, or choose another name.");
    }
    draft.supply.kind = kind();
    draft.supply.unit = draft.supply.amount ? m_unit->currentText().trimmed() : QString();
    draft.use = {};
    if (kind() == u"co2"_s) {
        draft.use.tank.value = m_tank->currentData().toLongLong();
        draft.use.empty_g = positive(m_empty, kHeaviest_g, problem);
    } else if (kind() != u"kit"_s) {
        draft.use.perLitre = positive(m_perLitre, kMostPerLitre, problem);
        draft.use.source.value = draft.use.perLitre ? m_source->currentData().toLongLong() : 0;
    }
    return problem.isEmpty() ? readDays(draft.supply) : problem;
}

bool SuppliesEditor::hasDraft() const
{
    Draft typed = m_shown;
    return !m_name->text().trimmed().isEmpty() && (!read(typed).isEmpty() || !(typed == m_shown));
}

void SuppliesEditor::save()
{
    Draft draft = m_shown;
    if (const QString problem = read(draft); !problem.isEmpty()) {
        showProblem(problem);
        return;
    }
    if (draft.supply.id && draft == m_shown) {
        return;
    }
    store::Edit edit(tr("supply %1").arg(draft.supply.name));
    draft.supply.id = edit.put(draft.supply);
    edit.set(care::supplyUseKey(draft.supply.id), care::supplyUseText(draft.use));
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show(draft.supply);
    refreshList();
    emit saved(tr("Supply %1 saved").arg(draft.supply.name));
}

void SuppliesEditor::remove()
{
    const QString name = m_shown.supply.name;
    store::Edit edit(tr("remove supply %1").arg(name));
    edit.set(care::supplyUseKey(m_shown.supply.id), {});
    edit.remove(m_shown.supply.id);
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show({});
    refreshList();
    m_name->setFocus();
    emit saved(tr("Removed: supply %1").arg(name));
}

void SuppliesEditor::enterWeighing()
{
    const record::LayoutRecord* layout = m_keeper.row().currentLayout(m_shown.use.tank, m_keeper.clock().now());
    if (layout == nullptr || !m_shown.use.empty_g) {
        showProblem(tr("Say first at which tank the cylinder hangs and what it weighs empty, and save that."));
        return;
    }
    facade::Keeper::TypedReading weighing;
    weighing.layout = layout->layout.id;
    weighing.parameter = u"cylinder"_s;
    weighing.typed = m_weight->text();
    weighing.unit = u"g"_s;
    weighing.at = m_keeper.clock().now();
    if (const auto done = m_keeper.enterReading(weighing); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    clearProblem();
    m_weight->clear();
    emit saved(tr("%1: weighing entered").arg(m_shown.supply.name));
}

} // namespace littoral::ui
