// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/row_plan_card.h"

#include "core/record/shown.h"
#include "core/wording/numbers.h"
#include "ui/models/number_text.h"
#include "ui/paint/glyphs.h"
#include "ui/paint/value_scale.h"
#include "ui/theme/figures.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/flow_layout.h"

#include <QFontMetricsF>
#include <QLineEdit>
#include <QLocale>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr double kMostConditioner_mL = 1000.0;

QString millilitres(double value)
{
    return RowPlanCard::tr("%1 mL of conditioner").arg(wording::numberText(value, value < 10.0 ? 1 : 0));
}

QStringList waterDetails(const facade::WaterDay& day)
{
    QStringList details;
    if (day.demineralised_L > 0.0) {
        details << RowPlanCard::tr("%1 demineralised").arg(wording::litresText(day.demineralised_L));
    }
    if (day.toTreat_L > 0.0) {
        details << RowPlanCard::tr("%1 to treat").arg(wording::litresText(day.toTreat_L));
    }
    if (day.conditioner_mL && *day.conditioner_mL > 0.0) {
        details << millilitres(*day.conditioner_mL);
    }
    return details;
}

QString changeText(const facade::PlannedWater& change)
{
    const QString what = change.fraction
                             ? RowPlanCard::tr("%1 %2").arg(change.tankName, wording::percentText(*change.fraction))
                             : change.tankName;
    return change.daysOver > 0 ? RowPlanCard::tr("%1, %2").arg(what, wording::overText(change.daysOver)) : what;
}

QString collisionText(const facade::WaterDay& day, const QDate& today)
{
    return day.freerDay
               ? RowPlanCard::tr("Large changes collide; %1 has none").arg(wording::weekdayText(*day.freerDay, today))
               : RowPlanCard::tr("Large changes collide");
}

} // namespace

WaterBars::WaterBars(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Litres a day"));
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void WaterBars::setPlan(const facade::RowPlan& plan)
{
    m_days = plan.days;
    setAccessibleDescription(tr("The table below says the same."));
    update();
}

QSize WaterBars::sizeHint() const
{
    return {m_theme.px(260), m_theme.px(112)};
}

void WaterBars::paintEvent(QPaintEvent*)
{
    if (m_days.empty()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QFont small = m_theme.font(10);
    const double line = QFontMetricsF(small).height();
    const record::Measure unit = record::volumeMeasure(record::shownUnits());
    double most = 0.0;
    for (const facade::WaterDay& day : m_days) {
        most = std::max(most, unit.shown(day.litres));
    }
    const ValueScale scale = niceScale(0.0, std::max(most, unit.shown(10.0)), 4);
    painter.setFont(small);
    double left = 0.0;
    for (const double tick : scale.ticks) {
        left = std::max(
            left,
            figuresWidth(small,
                         tr("%1 %2", "amount and unit").arg(wording::numberText(tick, scale.decimals), unit.label)));
    }
    left += m_theme.px(6);
    const double top = m_theme.px(18);
    const double bottom = height() - line - m_theme.px(4);
    for (const double tick : scale.ticks) {
        const double y = scale.y(tick, top, bottom);
        painter.setPen(QPen(m_theme[Token::Rule], 1));
        painter.drawLine(QPointF(left, y), QPointF(width(), y));
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(painter, QRectF(0, y - line / 2, left - m_theme.px(6), line), Qt::AlignRight | Qt::AlignVCenter,
                    tr("%1 %2", "amount and unit").arg(wording::numberText(tick, scale.decimals), unit.label));
    }
    const double step = (width() - left) / static_cast<double>(m_days.size());
    const double bar = std::min(step * 0.6, static_cast<double>(m_theme.px(26)));
    const QLocale locale;
    for (std::size_t i = 0; i < m_days.size(); ++i) {
        const facade::WaterDay& day = m_days[i];
        const double middle = left + step * (static_cast<double>(i) + 0.5);
        const double full = scale.y(unit.shown(day.litres), top, bottom);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme[Token::WaterSurface]);
        painter.drawRect(QRectF(QPointF(middle - bar / 2, full), QPointF(middle + bar / 2, bottom)));
        if (day.demineralised_L > 0.0) {
            const double part = scale.y(unit.shown(day.demineralised_L), top, bottom);
            painter.setBrush(m_theme[Token::Water]);
            painter.setPen(QPen(m_theme[Token::WaterSurface], 1));
            painter.drawRect(QRectF(QPointF(middle - bar / 2, part), QPointF(middle + bar / 2, bottom)));
        }
        if (day.collides) {
            const double side = m_theme.px(13);
            drawStatus(painter, facade::Status::Watch,
                       QRectF(middle - side / 2, full - side - m_theme.px(2), side, side), m_theme[Token::Watch],
                       m_theme[Token::Panel]);
        }
        painter.setPen(m_theme[i == 0 ? Token::Ink : Token::Ink3]);
        drawFigures(painter, QRectF(middle - step / 2, bottom + 2, step, line), Qt::AlignCenter,
                    step > m_theme.px(40)
                        ? tr("%1 %2").arg(locale.dayName(day.day.dayOfWeek(), QLocale::ShortFormat)).arg(day.day.day())
                        : QString::number(day.day.day()));
    }
}

RowPlanCard::RowPlanCard(Theme& theme, QWidget* parent)
    : BenchCard(theme, parent)
    , m_conditioner(new QLineEdit)
{
    setHead(tr("The coming two weeks"), tr("Water for the whole row, as it is due or planned"));
    m_totals = addText(TextStyle::Name, Token::Ink);
    m_collisions = addText(TextStyle::Body, Token::Watch);
    m_bars = new WaterBars(theme);
    column()->addWidget(m_bars);
    auto* field = new QWidget;
    auto* flow = new FlowLayout(field, 8);
    auto* label = new Text(theme, TextStyle::Body, tr("Conditioner, from its label"));
    label->setToken(Token::Ink2);
    label->setBuddy(m_conditioner);
    m_conditioner->setAlignment(Qt::AlignRight);
    m_conditioner->setFixedWidth(theme.px(84));
    m_conditioner->setAccessibleName(tr("Conditioner, mL for 100 L, from its label"));
    flow->addWidget(label);
    flow->addWidget(m_conditioner);
    flow->addWidget(new Text(theme, TextStyle::Body, tr("mL for 100 L")));
    column()->addWidget(field);
    m_problem = addText(TextStyle::Secondary, Token::Act);
    m_problem->hide();
    m_table = new CardTable(theme);
    m_table->setAccessibleName(tr("Water day by day"));
    m_table->setMinimumWidth(1); // its lines wrap; it never makes the card wider than its column
    m_table->setColumns({{tr("Day"), false, 0.0}, {tr("Water"), true, 1.0}, {tr("Tanks"), false, 1.4}});
    column()->addWidget(m_table);
    m_notes = addText(TextStyle::Secondary, Token::Ink3);
    connect(m_conditioner, &QLineEdit::textEdited, this, &RowPlanCard::readConditioner);
    connect(&theme, &Theme::changed, this, [this] { m_conditioner->setFixedWidth(this->theme().px(84)); });
}

void RowPlanCard::readConditioner(const QString& text)
{
    if (text.trimmed().isEmpty()) {
        m_problem->hide();
        emit conditionerTyped({});
        return;
    }
    const auto value = numberFrom(text);
    const bool good = value && *value >= 0.0 && *value <= kMostConditioner_mL;
    m_problem->setText(
        good ? QString()
             : tr("\"%1\" is no amount from 0 to 1000 mL. Type the figure of the label, such as 5.").arg(text));
    m_problem->setVisible(!good);
    m_conditioner->setAccessibleDescription(m_problem->text());
    if (good) {
        emit conditionerTyped(value);
    }
}

void RowPlanCard::show(const facade::RowPlan& plan, std::optional<double> conditioner_mL_per_100L)
{
    const QDate today = plan.days.front().day;
    if (!m_conditioner->hasFocus() && m_problem->isHidden()) {
        m_conditioner->setText(numberText(conditioner_mL_per_100L));
    }
    QStringList totals{wording::litresText(plan.litres)};
    for (const care::WaterPart& water : plan.waters) {
        if (plan.waters.size() > 1) {
            totals << tr("%1 of %2").arg(wording::litresText(water.litres), water.name);
        }
    }
    if (plan.conditioner_mL) {
        totals << millilitres(*plan.conditioner_mL);
    }
    m_totals->setText(totals.join(u", "_s));
    m_collisions->setText(tr("Large changes collide on %n day(s).", nullptr, static_cast<int>(plan.collisions)));
    m_collisions->setVisible(plan.collisions > 0);
    m_bars->setPlan(plan);
    std::vector<CardRow> rows;
    for (const facade::WaterDay& day : plan.days) {
        if (day.changes.empty()) {
            continue;
        }
        QStringList tanks;
        for (const facade::PlannedWater& change : day.changes) {
            tanks << changeText(change);
        }
        CardRow row;
        row.cells = {{wording::weekdayText(day.day, today), {}, {}, true, false},
                     {wording::litresText(day.litres), waterDetails(day), {}, true, false},
                     {day.collides ? collisionText(day, today) : tanks.join(u"; "_s), {}, {}, false, false}};
        if (day.collides) {
            row.cells[2].status = care::Status::Watch;
            row.cells[2].details = {tanks.join(u"; "_s)};
        }
        row.sentence = tr("%1: %2. %3").arg(row.cells[0].text, row.cells[1].text, tanks.join(u"; "_s));
        rows.push_back(std::move(row));
    }
    const bool none = rows.empty();
    m_table->setRows(std::move(rows));
    m_table->setVisible(!none);
    QStringList notes;
    if (none) {
        notes << tr("No water changes are due in these days.");
    }
    for (const QString& tank : plan.volumeUnknown) {
        notes << tr("%1 has no measures: its litres are missing from the sums.").arg(tank);
    }
    for (const QString& blend : plan.blendUnknown) {
        notes << tr("The parts of \"%1\" are not stated: all of it is counted as water to treat. Name its two waters "
                    "and their share.")
                     .arg(blend);
    }
    notes << tr("What is overdue counts for today. Large: 40 % of the tank or 60 L and more, a measure of work, not a "
                "limit for animals.");
    m_notes->setText(notes.join(u'\n'));
}

QWidget* RowPlanCard::firstField()
{
    return m_conditioner;
}

} // namespace littoral::ui
