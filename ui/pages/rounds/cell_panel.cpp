// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/cell_panel.h"

#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/models/entries_model.h"
#include "ui/models/number_text.h"
#include "ui/pages/rounds/advice_panel.h"
#include "ui/pages/rounds/reading_sparkline.h"
#include "ui/paint/marks.h"
#include "ui/widgets/flow_layout.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <cmath>

namespace littoral::ui {

namespace {

QString kindWord(record::KitKind kind)
{
    switch (kind) {
    case record::KitKind::Card:
        return CellPanel::tr("colour card");
    case record::KitKind::Drops:
        return CellPanel::tr("drops");
    case record::KitKind::Strip:
        return CellPanel::tr("strip");
    case record::KitKind::Digital:
        return CellPanel::tr("digital");
    }
    return {};
}

} // namespace

CellPanel::CellPanel(Theme& theme, facade::Keeper& keeper, const facade::Forecasts& forecasts, const RoundsModel& model,
                     QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
    , m_model(model)
    , m_title(new Text(theme, TextStyle::Strong))
    , m_kit(new Text(theme, TextStyle::Secondary))
    , m_timer(new QPushButton)
    , m_place(new Text(theme, TextStyle::Secondary))
    , m_stepsLine(new Text(theme, TextStyle::Secondary))
    , m_stepBox(new QWidget)
    , m_stepFlow(new FlowLayout(m_stepBox, 6))
    , m_sparkline(new ReadingSparkline(theme))
    , m_advice(new AdvicePanel(theme))
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("The cell the keyboard is on"));
    m_title->setIndent(theme.px(18));
    m_kit->setWordWrap(true);
    m_stepBox->setAccessibleName(tr("Steps of the kit"));
    auto* head = new QHBoxLayout;
    head->setSpacing(12);
    head->addWidget(m_title);
    head->addWidget(m_kit, 1);
    head->addWidget(m_timer);
    head->addWidget(m_place);
    auto* lower = new QHBoxLayout;
    lower->setSpacing(12);
    lower->addWidget(m_sparkline, 4);
    lower->addWidget(m_advice, 5);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 10, 14, 12);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(m_stepsLine);
    column->addWidget(m_stepBox);
    column->addLayout(lower, 1);
    m_timer->setProperty("keyHint", tr("Ctrl J"));
    m_timer->setAccessibleName(tr("Start the timer of this kit"));
    m_timer->hide();
    connect(m_timer, &QPushButton::clicked, this, &CellPanel::timerWanted);
    connect(m_advice, &AdvicePanel::keep, this, &CellPanel::keep);
    connect(&theme, &Theme::changed, this, [this] {
        m_title->setIndent(m_theme.px(18));
        update();
    });
}

QString CellPanel::kitLine(const QModelIndex& cell) const
{
    const QString unit = cell.data(RoundsModel::UnitLabelRole).toString();
    const record::TestKit* kit = m_model.kit(cell);
    if (kit == nullptr) {
        return tr("%1 · no kit named; any value is taken").arg(unit);
    }
    const QDate today = m_keeper.clock().today();
    if (!kit->expires.isValid()) {
        return tr("%1 · %2, %3").arg(unit, kit->name, kindWord(kit->kind));
    }
    return kit->expires < today
               ? tr("%1 · %2, %3, past its date since %4")
                     .arg(unit, kit->name, kindWord(kit->kind), wording::dateText(kit->expires, today))
               : tr("%1 · %2, %3, good until %4")
                     .arg(unit, kit->name, kindWord(kit->kind), wording::dateText(kit->expires, today));
}

QString CellPanel::quietLine(const QModelIndex& cell) const
{
    const record::Reading* last = m_model.lastReading(cell);
    const bool due = cell.data(RoundsModel::DueRole).toBool();
    if (last == nullptr) {
        return due ? tr("Due today. Not read before in this layout.")
                   : tr("Not due today. Not read before in this layout.");
    }
    const QString value = readingText(*last);
    const QString when = momentText(last->at, m_keeper.clock().today());
    return due ? tr("Due today. Last: %1, %2.").arg(value, when) : tr("Not due today. Last: %1, %2.").arg(value, when);
}

void CellPanel::showTimer(double minutes, const QString& state)
{
    m_timer->setVisible(minutes > 0.0);
    m_timer->setText(state.isEmpty() ? tr("Timer %1 min").arg(numberText(minutes, 3)) : tr("Timer: %1").arg(state));
    m_timer->setAccessibleName(state.isEmpty()
                                   ? tr("Start the timer of this kit, %1 minutes").arg(numberText(minutes, 3))
                                   : tr("Start the timer of this kit anew; it stands at: %1").arg(state));
}

void CellPanel::fillSteps(const QModelIndex& cell)
{
    const std::vector<double> steps = m_model.steps(cell);
    if (steps == m_steps && m_stepButtons.size() == steps.size()) {
        return;
    }
    m_steps = steps;
    for (QPushButton* button : m_stepButtons) {
        m_stepFlow->removeWidget(button);
        button->deleteLater();
    }
    m_stepButtons.clear();
    for (double step : m_steps) {
        auto* button = new QPushButton(numberText(step));
        button->setFocusPolicy(Qt::NoFocus); // the arrow keys in the cell do the same
        button->setCheckable(true);
        button->setAccessibleName(tr("Step %1").arg(button->text()));
        button->setMinimumWidth(m_theme.px(52));
        connect(button, &QPushButton::clicked, this, [this, step] { emit stepChosen(step); });
        m_stepFlow->addWidget(button);
        m_stepButtons.push_back(button);
    }
    m_stepBox->updateGeometry();
}

void CellPanel::showCell(const QModelIndex& cell, RoundsModel::Order order)
{
    const record::Parameter* parameter = m_model.parameter(cell.column());
    const record::LayoutRecord* layout = m_keeper.row().layout(m_model.layout(cell.row()));
    if (!cell.isValid() || parameter == nullptr || layout == nullptr) {
        m_parameter.clear();
        m_title->setText(tr("No cell chosen"));
        m_kit->clear();
        m_place->clear();
        m_stepsLine->hide();
        fillSteps({});
        m_sparkline->clear();
        m_advice->showQuiet(tr("Move to a cell with the arrow keys, or press Enter for the next due one."));
        update();
        return;
    }
    m_parameter = parameter->key;
    m_title->setText(tr("%1, %2").arg(cell.data(RoundsModel::TankNameRole).toString(), nameInText(*parameter)));
    m_kit->setText(kitLine(cell));
    const int place = m_model.placeOf(cell, order);
    m_place->setText(place == 0 ? QString() : tr("due cell %1 of %2").arg(place).arg(m_model.progress().all));
    fillSteps(cell);
    m_stepsLine->setVisible(true);
    m_stepsLine->setText(m_steps.empty() ? tr("No steps: type the number, with either decimal mark")
                                         : tr("Kit steps: ↑ ↓ moves, < below the lowest, / marks between two"));
    const auto forecast = m_forecasts.result(layout->layout.id);
    m_sparkline->show(*layout, *parameter, m_keeper.clock().now(), forecast.get());
    m_advice->showQuiet(quietLine(cell));
    showTyping(cell, cell.data(RoundsModel::TypedRole).toString());
    update();
}

void CellPanel::showTyping(const QModelIndex& cell, const QString& typed)
{
    const record::Parameter* parameter = m_model.parameter(cell.column());
    if (!cell.isValid() || parameter == nullptr) {
        return;
    }
    const Advice advice = m_model.advise(cell, typed);
    if (advice.level == Advice::Level::None) {
        m_advice->showQuiet(quietLine(cell));
    } else {
        m_advice->show(advice, typed.trimmed());
    }
    const auto parsed = record::parseTypedValue(typed);
    for (std::size_t i = 0; i < m_stepButtons.size(); ++i) {
        m_stepButtons[i]->setChecked(parsed && std::abs(parsed->high - m_steps[i]) < 1e-9 &&
                                     parsed->censoring == record::Censoring::None);
    }
    std::optional<double> value;
    const record::TestKit* kit = m_model.kit(cell);
    const record::Unit* unit = kit == nullptr ? &parameter->shown() : parameter->unit(kit->unit);
    if (parsed && unit != nullptr && advice.level != Advice::Level::Impossible) {
        const double plain =
            parsed->censoring == record::Censoring::Between ? (parsed->low + parsed->high) / 2.0 : parsed->high;
        value = parameter->shown().fromCanonical(unit->toCanonical(plain));
    }
    m_sparkline->setTyped(value, advice.level == Advice::Level::Unlikely);
}

void CellPanel::paintEvent(QPaintEvent* event)
{
    QFrame::paintEvent(event);
    if (m_parameter.isEmpty()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawParameterMark(painter, m_theme, m_parameter,
                      QPointF(m_title->x() + m_theme.px(6), m_title->geometry().center().y() + 1), m_theme.px(9),
                      m_theme[Token::Panel]);
}

} // namespace littoral::ui
