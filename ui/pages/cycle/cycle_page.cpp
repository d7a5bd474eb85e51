// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/cycle/cycle_page.h"

#include "core/store/edit.h"
#include "core/wording/plan_sentences.h"
#include "ui/pages/cycle/cycle_bar.h"
#include "ui/pages/cycle/plans_card.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/fan_stack.h"
#include "ui/widgets/table_twin.h"

#include <QBoxLayout>
#include <QPainter>
#include <QScrollArea>
#include <QStackedWidget>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Narrower than this (at text scale 1) the cards go under the charts.
constexpr int kTwoColumns = 900;
constexpr int kCardsLeast = 430;
constexpr int kCardsMost = 570;
constexpr double kCardsShare = 0.4;

QScrollArea* scroller(QWidget* content, const QString& name)
{
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setAccessibleName(name);
    if (content != nullptr) {
        area->setWidget(content);
    }
    return area;
}

} // namespace

CyclePage::CyclePage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, TimeAxis& axis,
                     QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
    , m_theme(theme)
    , m_axis(axis)
    , m_glide(*this)
    , m_desk(keeper, forecasts)
    , m_bar(new CycleBar(theme, axis))
    , m_pages(new QStackedWidget)
    , m_message((new Text(theme, TextStyle::Body))->wrapped())
    , m_body(new QWidget)
    , m_chartStack(new QStackedWidget)
    , m_charts(new FanStack(theme, axis))
    , m_twin(new TableTwin(theme))
    , m_verdict(new VerdictCard(theme))
    , m_gates(new CycleGatesCard(theme))
    , m_plans(new PlansCard(theme))
    , m_record(new CycleRecordCard(theme))
{
    setAccessibleName(tr("Cycle"));
    assemble();
    connectAll();
    refresh();
}

CyclePage::~CyclePage() = default;

void CyclePage::assemble()
{
    m_chartStack->addWidget(m_charts);
    m_chartStack->addWidget(m_twin);
    m_chartStack->setAccessibleName(tr("Charts"));
    auto* cards = new QWidget;
    cards->setAccessibleName(tr("Verdict, gates and plans"));
    m_cards = new QVBoxLayout(cards);
    m_cards->setContentsMargins(12, 12, 12, 12);
    m_cards->setSpacing(10);
    for (QWidget* card : std::initializer_list<QWidget*>{m_verdict, m_gates, m_plans, m_record}) {
        m_cards->addWidget(card);
    }
    m_cards->addStretch(1);
    m_left = scroller(m_chartStack, tr("Charts, scrolling"));
    m_right = scroller(cards, tr("Cards, scrolling"));
    m_columns = new QBoxLayout(QBoxLayout::LeftToRight, m_body);
    m_columns->setContentsMargins(0, 0, 0, 0);
    m_columns->setSpacing(0);
    m_columns->addWidget(m_left, 1);
    m_columns->addWidget(m_right);
    auto* messagePage = new QWidget;
    auto* messageColumn = new QVBoxLayout(messagePage);
    messageColumn->setContentsMargins(40, 40, 40, 40);
    messageColumn->addWidget(m_message);
    messageColumn->addStretch(1);
    m_pages->addWidget(m_body);
    m_pages->addWidget(messagePage);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addWidget(m_pages, 1);
    m_charts->setMinimumHeight(m_charts->minimumSizeHint().height());
}

void CyclePage::connectAll()
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    connect(&m_soon, &QTimer::timeout, this, &CyclePage::refresh);
    const auto soon = [this] { m_soon.start(); };
    connect(&m_keeper, &facade::Keeper::changed, this, soon);
    connect(&m_keeper, &facade::Keeper::storeOpened, this, soon);
    connect(&m_keeper, &facade::Keeper::storeClosed, this, [this] {
        m_chosen.reset();
        m_track.reset();
        m_failures.clear();
        m_soon.start();
    });
    connect(&m_forecasts, &facade::Forecasts::ready, this, [this](record::LayoutId id) {
        m_failures.erase(id);
        // The plan that is looked at is looked at on the new members.
        if (id == layout() && m_chosen) {
            ask();
        }
        m_soon.start();
    });
    connect(&m_forecasts, &facade::Forecasts::failed, this, [this](record::LayoutId id, const QString& sentence) {
        m_failures[id] = sentence;
        m_soon.start();
    });
    connect(&m_desk, &facade::PlanDesk::compared, this, soon);
    connect(&m_desk, &facade::PlanDesk::previewReady, this, soon);
    connect(&m_desk, &facade::PlanDesk::failed, this,
            [this](record::LayoutId, const QString& sentence) { emit told(sentence); });
    connect(m_bar, &CycleBar::referenceChanged, this, &CyclePage::refresh);
    connect(m_bar, &CycleBar::tableWanted, this, [this](bool table) {
        if (table != isTable()) {
            toggleTable();
        }
    });
    connect(m_bar, &CycleBar::refitWanted, this, &CyclePage::refit);
    connect(m_charts, &FanStack::readingOpenWanted, this, &CyclePage::readingOpenWanted);
    connect(m_verdict, &VerdictCard::readingOpenWanted, this, &CyclePage::readingOpenWanted);
    connect(m_gates, &CycleGatesCard::gateChosen, this, &CyclePage::chooseGate);
    connect(m_plans, &PlansCard::planChosen, this, &CyclePage::choosePlan);
    connect(m_plans, &PlansCard::adoptWanted, this, &CyclePage::adopt);
    connect(m_record, &CycleRecordCard::learnChosen, this, &CyclePage::setLearning);
    connect(&m_theme, &Theme::changed, this, &CyclePage::arrange);
    m_plans->setFinder([this](double nitrite, double most, bool& any) { return cheapest(nitrite, most, any); });
}

record::LayoutId CyclePage::layout() const
{
    const record::LayoutRecord* current = m_keeper.row().currentLayout(m_tank, m_keeper.clock().now());
    return current == nullptr ? record::LayoutId{} : current->layout.id;
}

facade::ForecastState CyclePage::stateOf(record::LayoutId id) const
{
    if (m_forecasts.isRunning(id)) {
        return facade::ForecastState::Running;
    }
    if (m_forecasts.result(id) == nullptr) {
        return facade::ForecastState::None;
    }
    return m_forecasts.isCurrent(id) ? facade::ForecastState::Ready : facade::ForecastState::Stale;
}

void CyclePage::setSelected(record::TankId tank)
{
    if (tank == m_tank) {
        return;
    }
    m_tank = tank;
    m_gate.clear();
    m_chosen.reset();
    m_charts->setCursorAt(std::nullopt);
    refresh();
}

void CyclePage::readTrack()
{
    if (!m_keeper.hasStore()) {
        m_track.reset();
        return;
    }
    if (m_track && m_trackRevision == m_keeper.revision()) {
        return;
    }
    auto track = facade::trackRecord(m_keeper.row(), *m_keeper.store());
    m_trackRevision = m_keeper.revision();
    m_track = track ? std::optional(std::move(track).value()) : std::nullopt;
}

void CyclePage::refresh()
{
    if (!isVisible()) {
        return; // made when it is shown
    }
    const record::LayoutId id = layout();
    const auto result = m_forecasts.result(id);
    const auto plans = m_desk.plans(id);
    const auto preview = m_desk.previewOf(id);
    readTrack();
    const auto failure = m_failures.find(id);
    CycleQuestion question{m_keeper.row(), m_tank, m_keeper.clock().now()};
    question.forecast = result.get();
    question.state = stateOf(id);
    question.failure = failure == m_failures.end() ? QString() : failure->second;
    question.plans = plans.get();
    question.preview = preview != nullptr && preview->basis == result ? preview.get() : nullptr;
    question.comparing = m_desk.isComparing(id);
    question.track = m_track ? &*m_track : nullptr;
    question.gate = m_gate;
    question.chosen = m_chosen;
    question.withReference = m_bar->withReference();
    m_model = cycleModel(question);
    if (result != nullptr && m_model.state == CycleModel::State::Ready) {
        m_desk.compare(id, m_model.gate);
    }
    apply();
}

void CyclePage::apply()
{
    m_bar->setModel(m_model);
    const bool message = m_model.state == CycleModel::State::NoTank || m_model.state == CycleModel::State::NoLayout;
    m_pages->setCurrentIndex(message ? 1 : 0);
    const QString text =
        m_model.state == CycleModel::State::Loading
            ? tr("The first forecast of %1 is running; readings are shown meanwhile.").arg(m_model.name)
            : m_model.message;
    m_message->setText(text);
    if (!message) {
        FanStackModel fans = m_model.fans;
        if (m_model.state == CycleModel::State::Loading) {
            fans.note = tr("forecast running");
            m_model.warnings.prepend(text);
        } else if (m_model.state == CycleModel::State::Failed) {
            fans.note = tr("no forecast");
            m_model.warnings.prepend(text);
        }
        m_charts->setModel(std::move(fans));
        m_charts->setMinimumHeight(m_charts->minimumSizeHint().height());
        if (isTable()) {
            m_twin->setTable(fanTable(m_model.fans, m_axis.zone(), m_axis.now()));
        }
    }
    m_verdict->setModel(m_model);
    m_gates->setModel(m_model);
    m_plans->setModel(m_model, m_keeper.hasStore() && !m_keeper.isReadOnly());
    m_record->setModel(m_model, m_keeper.hasStore() && !m_keeper.isReadOnly());
    emit stateChanged();
}

void CyclePage::ask()
{
    if (m_chosen) {
        m_desk.preview(layout(), *m_chosen, m_model.gate);
    } else {
        m_desk.dropPreview(layout());
    }
}

void CyclePage::choosePlan(const std::optional<forecast::ChangePlan>& plan)
{
    if (plan == m_chosen) {
        return;
    }
    m_chosen = plan;
    ask();
    refresh();
}

void CyclePage::chooseGate(const QString& key)
{
    m_gate = key;
    refresh();
    if (m_chosen) {
        ask();
    }
}

std::optional<forecast::ChangePlan> CyclePage::cheapest(double nitrite_mgN_per_L, double most, bool& any) const
{
    const auto plans = m_desk.plans(layout());
    const auto best = plans == nullptr ? std::nullopt : forecast::cheapestPlan(plans->table, nitrite_mgN_per_L, most);
    any = best.has_value() && plans->gate == m_model.gate;
    if (!any || plans->table.outcomes[*best].present) {
        return std::nullopt;
    }
    return plans->table.outcomes[*best].plan;
}

bool CyclePage::canAdopt() const
{
    return m_chosen.has_value() && m_keeper.hasStore() && !m_keeper.isReadOnly() &&
           m_model.state == CycleModel::State::Ready && m_model.selected < m_model.plans.size() &&
           m_model.plans[m_model.selected].plan.has_value();
}

void CyclePage::adopt()
{
    const record::LayoutId id = layout();
    const auto result = m_forecasts.result(id);
    const record::LayoutRecord* record = m_keeper.row().layout(id);
    if (!canAdopt() || result == nullptr || record == nullptr) {
        return;
    }
    const auto plans = m_desk.plans(id);
    const double window = plans == nullptr ? forecast::PlanQuestion{}.windowDays : plans->table.windowDays;
    const QString name = m_model.plans[m_model.selected].name;
    const forecast::ChangePlan plan = *m_chosen;
    const auto changes = facade::plannedChanges(*result, plan, *record, window);
    if (const auto done = facade::adopt(m_keeper, id, name, plan, changes); !done) {
        emit failed(done.error(), tr("The plan that was there is still in force."));
        return;
    }
    m_chosen.reset();
    m_desk.dropPreview(id);
    refresh();
    emit told(tr("Plan adopted: %1. Ctrl+Z takes it back.").arg(name));
    m_plans->table().setFocus(Qt::OtherFocusReason);
}

bool CyclePage::isTable() const
{
    return m_chartStack->currentWidget() == m_twin;
}

void CyclePage::toggleTable()
{
    const bool table = !isTable();
    if (table) {
        m_twin->setTable(fanTable(m_model.fans, m_axis.zone(), m_axis.now()));
    }
    m_chartStack->setCurrentWidget(table ? static_cast<QWidget*>(m_twin) : m_charts);
    m_bar->setTable(table);
    if (table) {
        m_twin->showCurrent();
    }
    m_chartStack->currentWidget()->setFocus(Qt::OtherFocusReason);
}

void CyclePage::toggleMode()
{
    m_axis.setMode(m_axis.mode() == AxisMode::Calendar ? AxisMode::Age : AxisMode::Calendar);
}

void CyclePage::showNow()
{
    m_glide.glideToNow(m_axis, m_model.fans.flooded);
}

void CyclePage::refit()
{
    m_forecasts.refresh();
    emit told(m_forecasts.isRunning(layout()) ? tr("Fitting the forecast to what is entered now.")
                                              : tr("The forecast already rests on everything that is entered."));
    refresh();
}

void CyclePage::setLearning(bool on)
{
    store::Edit edit(on ? tr("Learn from other layouts") : tr("Do not learn from other layouts"));
    edit.set(u"forecast.learn"_s, on ? QString() : u"off"_s);
    if (const auto done = m_keeper.commit(edit); !done) {
        emit failed(done.error(), tr("The setting is as it was."));
        refresh();
        return;
    }
    emit told(on ? tr("Forecasts use what other layouts of the row taught.")
                 : tr("Forecasts rest on the plain starting ranges."));
    m_forecasts.refresh();
}

QString CyclePage::focusedTopic() const
{
    const QWidget* focus = focusWidget();
    const auto isIn = [focus](const QWidget* card) {
        return focus != nullptr && (focus == card || card->isAncestorOf(focus));
    };
    if (isIn(m_gates)) {
        const QString gate = m_gates->chosenGate();
        return gate.isEmpty() ? u"gate"_s : gate;
    }
    if (isIn(m_plans)) {
        return u"plan"_s;
    }
    if (isIn(m_record)) {
        return u"track-record"_s;
    }
    const auto& panels = m_charts->model().panels;
    const int part = m_charts->currentPart();
    const bool chart = isIn(m_charts) && part >= 0 && part < static_cast<int>(panels.size());
    return chart ? panels[static_cast<std::size_t>(part)].parameter : u"cycle"_s;
}

QList<QWidget*> CyclePage::regions() const
{
    return {m_bar, m_chartStack, m_verdict, m_gates, m_plans, m_record};
}

void CyclePage::begin()
{
    refresh();
    m_chartStack->currentWidget()->setFocus(Qt::OtherFocusReason);
}

void CyclePage::wait()
{
    m_forecasts.wait();
    refresh();
    m_desk.wait();
    refresh();
}

void CyclePage::arrange()
{
    const bool single = width() < m_theme.px(kTwoColumns);
    if (single != m_single) {
        m_single = single;
        // The answer stays first: in one column the charts come after the verdict.
        if (single) {
            m_left->takeWidget();
            m_cards->insertWidget(1, m_chartStack);
            m_chartStack->show();
        } else {
            m_cards->removeWidget(m_chartStack);
            m_left->setWidget(m_chartStack);
            m_chartStack->show();
        }
        m_left->setVisible(!single);
    }
    if (single) {
        m_right->setMinimumWidth(0);
        m_right->setMaximumWidth(QWIDGETSIZE_MAX);
        m_columns->setStretch(1, 1);
        m_chartStack->setMinimumHeight(std::max(m_charts->minimumSizeHint().height(), m_theme.px(620)));
    } else {
        m_columns->setStretch(1, 0);
        m_right->setFixedWidth(std::clamp(static_cast<int>(width() * kCardsShare), m_theme.px(kCardsLeast),
                                          std::max(m_theme.px(kCardsLeast), m_theme.px(kCardsMost))));
        m_chartStack->setMinimumHeight(0);
    }
    m_charts->setMinimumHeight(m_charts->minimumSizeHint().height());
}

void CyclePage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    arrange();
    refresh();
}

void CyclePage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void CyclePage::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), m_theme[Token::Window]);
}

} // namespace littoral::ui
