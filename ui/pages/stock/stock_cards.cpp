// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/stock_cards.h"

#include "core/record/shown.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"
#include "ui/models/number_text.h"
#include "ui/models/stock_words.h"
#include "ui/paint/glyphs.h"
#include "ui/widgets/caution_box.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using care::Known;

namespace {

class StatusMark final : public QWidget
{
public:
    StatusMark(Theme& theme, facade::Status status)
        : m_theme(theme)
        , m_status(status)
    {
        setFixedSize(theme.px(16), theme.px(20));
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const double side = m_theme.px(14);
        drawStatus(painter, m_status, QRectF(0, m_theme.px(2), side, side), m_theme.tokens().status(m_status),
                   m_theme[Token::Panel]);
    }

private:
    Theme& m_theme;
    facade::Status m_status;
};

void empty(QLayout* layout)
{
    while (QLayoutItem* item = layout->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

facade::Status statusOf(Known known)
{
    return known == Known::Met     ? facade::Status::Ok
           : known == Known::Unmet ? facade::Status::Waiting
                                   : facade::Status::Unknown;
}

} // namespace

QWidget* statusRow(Theme& theme, facade::Status status, const QString& strong, const QString& rest)
{
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(theme.px(8));
    line->addWidget(new StatusMark(theme, status), 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget((new Text(theme, TextStyle::Strong, strong))->wrapped());
    if (!rest.isEmpty()) {
        words->addWidget((new Text(theme, TextStyle::Secondary, rest))->wrapped());
    }
    line->addLayout(words, 1);
    return row;
}

StockCard::StockCard(Theme& theme, const QString& title, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_title(new Text(theme, TextStyle::Strong, title))
    , m_aside(new Text(theme, TextStyle::Secondary))
    , m_body(new QVBoxLayout)
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(title);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 12, 14, 12);
    column->setSpacing(8);
    column->addWidget(m_title->wrapped());
    column->addWidget(m_aside->wrapped());
    m_aside->hide();
    m_body->setSpacing(8);
    column->addLayout(m_body);
}

void StockCard::setTitle(const QString& title)
{
    m_title->setText(title);
    setAccessibleName(title);
}

void StockCard::setAside(const QString& words)
{
    m_aside->setText(words);
    m_aside->setVisible(!words.isEmpty());
}

Text* StockCard::addText(TextStyle style, const QString& text)
{
    auto* made = new Text(m_theme, style, text);
    made->wrapped();
    m_body->addWidget(made);
    return made;
}

StockGatesCard::StockGatesCard(Theme& theme, QWidget* parent)
    : StockCard(theme, tr("Gates on this tank"), parent)
    , m_rows(new QVBoxLayout)
{
    m_rows->setSpacing(8);
    body()->addLayout(m_rows);
    setAside(tr("Limits met by readings, not by age alone; common practice, to be judged by you."));
}

void StockGatesCard::setStock(const facade::StockModel& model, const QDate& today)
{
    empty(m_rows);
    for (const care::GateState& gate : model.gates) {
        QStringList open;
        for (const care::GateCondition& condition : gate.conditions) {
            if (condition.state == Known::Unmet) {
                open << wording::gateConditionText(condition, today);
            }
        }
        const QString rest = open.isEmpty() ? wording::gateVerdict(gate) : open.join(u' ');
        m_rows->addWidget(statusRow(theme(), statusOf(gate.state()), wording::gateTitle(gate), rest));
    }
    if (model.gates.empty()) {
        m_rows->addWidget(
            (new Text(theme(), TextStyle::Secondary, tr("Gates count from the flooding; this layout is not flooded.")))
                ->wrapped());
    }
}

namespace {

/// From the unit on show to the one the plan reckons in.
std::optional<double> usualFrom(const QString& parameter, const std::optional<double>& shown)
{
    const record::Parameter& known = *record::findParameter(parameter);
    return shown ? std::optional(record::inUsualUnits(known).shown().fromCanonical(known.shown().toCanonical(*shown)))
                 : std::nullopt;
}

std::optional<double> degreesFrom(const std::optional<double>& shown)
{
    return usualFrom(u"gh"_s, shown);
}

} // namespace

AcclimationCard::AcclimationCard(Theme& theme, QWidget* parent)
    : StockCard(theme, tr("From the bag into the tank"), parent)
    , m_ph(new QLineEdit)
    , m_gh(new QLineEdit)
    , m_hours(new QLineEdit(u"1"_s))
    , m_litres(new QLineEdit(numberText(record::volumeMeasure(record::shownUnits()).shown(1.0), 2)))
    , m_fields(new QWidget)
    , m_steps(new QVBoxLayout)
{
    auto* grid = new QGridLayout(m_fields);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(6);
    int column = 0;
    for (const auto& [field, name] :
         {std::pair(m_ph, tr("Bag pH")),
          std::pair(m_gh, tr("Bag GH, %1").arg(record::findParameter(u"gh"_s)->shown().label)),
          std::pair(m_hours, tr("Hours on the way")),
          std::pair(m_litres, tr("Bag, %1").arg(record::volumeMeasure(record::shownUnits()).label))}) {
        grid->addWidget((new Text(theme, TextStyle::Secondary, name))->wrapped(), 0, column, Qt::AlignBottom);
        grid->addWidget(field, 1, column++);
        field->setAccessibleName(name);
        field->setMinimumWidth(theme.px(44));
        connect(field, &QLineEdit::textChanged, this, &AcclimationCard::refresh);
    }
    body()->addWidget(m_fields);
    m_way = addText(TextStyle::Strong);
    m_steps->setSpacing(6);
    m_caution = new CautionBox(theme);
    m_caution->setCautions({u"C-ELEC"_s, u"C-HANDS"_s, u"C-WASTE"_s, u"C-RELEASE"_s, u"C-MED"_s},
                           CautionBox::Extent::Line);
    body()->addWidget(m_caution);
    body()->addLayout(m_steps);
}

void AcclimationCard::setAnimal(const std::optional<facts::Species>& species, const facade::StockModel& model)
{
    m_species = species;
    m_tank = {};
    for (const facade::StockColumn& column : model.columns) {
        if (column.parameter == u"ph"_s) {
            m_tank.ph = column.newest;
        } else if (column.parameter == u"gh"_s) {
            m_tank.gh_deg = degreesFrom(column.newest);
        } else if (column.parameter == u"temp"_s) {
            m_tank.temperature_C = usualFrom(u"temp"_s, column.newest);
        }
    }
    setTitle(species ? tr("From the bag into the tank: %1").arg(species->name) : tr("From the bag into the tank"));
    refresh();
}

void AcclimationCard::refresh()
{
    empty(m_steps);
    m_fields->setVisible(m_species.has_value());
    m_caution->setVisible(m_species.has_value());
    if (!m_species) {
        m_way->setText(tr("Choose an animal above; the steps follow from its bag and this water."));
        return;
    }
    facade::BagWater bag;
    bag.ph = numberFrom(m_ph->text());
    bag.gh_deg = degreesFrom(numberFrom(m_gh->text()));
    bag.travelHours = numberFrom(m_hours->text()).value_or(1.0);
    bag.bag_L = 1.0;
    if (const auto typed = numberFrom(m_litres->text())) {
        bag.bag_L = std::max(0.1, record::volumeMeasure(record::shownUnits()).canonical(*typed));
    }
    m_plan = facade::acclimationPlan(*m_species, bag, m_tank);
    m_way->setText(acclimationTitle(m_plan));
    const bool missing = m_plan.phUnknown || m_plan.ghUnknown;
    setAside(missing ? tr("pH or GH of bag or tank is not known: the careful way is shown.") : QString());
    for (const AcclimationLine& line : acclimationLines(m_plan)) {
        auto* row = new QWidget;
        auto* cells = new QHBoxLayout(row);
        cells->setContentsMargins(0, 0, 0, 0);
        cells->setSpacing(theme().px(10));
        auto* when = new Text(theme(), TextStyle::Strong, line.when);
        when->setMinimumWidth(theme().px(56));
        cells->addWidget(when, 0, Qt::AlignTop);
        auto* words = new QVBoxLayout;
        words->setSpacing(0);
        words->addWidget((new Text(theme(), TextStyle::Body, line.what))->wrapped());
        if (!line.why.isEmpty()) {
            words->addWidget((new Text(theme(), TextStyle::Secondary, line.why))->wrapped());
        }
        cells->addLayout(words, 1);
        m_steps->addWidget(row);
    }
}

} // namespace littoral::ui
