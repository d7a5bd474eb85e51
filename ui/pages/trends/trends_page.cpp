// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/trends/trends_page.h"

#include "ui/models/trend_words.h"
#include "ui/pages/trends/trend_export.h"
#include "ui/pages/trends/trends_side.h"
#include "ui/widgets/call_field.h"
#include "ui/widgets/table_twin.h"
#include "ui/widgets/trends/side_column.h"
#include "ui/widgets/trends/tick_list.h"
#include "ui/widgets/trends/trend_brush.h"
#include "ui/widgets/trends/trend_view.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Widths at text scale 1.
constexpr int kLeft = 216;
constexpr int kRight = 290;
constexpr int kRightNarrow = 248;
// Narrower than this, one side at a time.
constexpr int kBothSides = 900;
constexpr int kFiguresDelayMs = 40; // a pan reckons its figures once, when it rests

QScrollArea* scroller(QWidget* content, const QString& name)
{
    auto* area = new QScrollArea;
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setAccessibleName(name);
    return area;
}

} // namespace

TrendsPage::TrendsPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask, TimeAxis& axis,
                       QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
    , m_theme(theme)
    , m_ask(ask)
    , m_axis(axis)
    , m_glide(*this)
    , m_bar(new TrendsBar(theme, axis))
    , m_filter(new CallField(tr("Narrow the lists of tanks and parameters"), tr("tank or parameter")))
    , m_tanks(new TickList(theme))
    , m_parameters(new TickList(theme))
    , m_legend(new Text(theme, TextStyle::Secondary,
                        tr("Hue and shape say which parameter; weight, dash and fill say which tank.")))
    , m_messageStrip(new QWidget)
    , m_message(new Text(theme, TextStyle::Body))
    , m_messageButton(nullptr)
    , m_stack(new QStackedWidget)
    , m_view(new TrendView(theme, axis))
    , m_twin(new TableTwin(theme))
    , m_brush(new TrendBrush(theme, axis))
    , m_side(new TrendsSide(theme))
{
    setAccessibleName(tr("Trends"));
    assemble();
    connectAll();
    recall();
    arrange();
}

void TrendsPage::assemble()
{
    auto* choices = new SideColumn(m_theme);
    auto* list = new QVBoxLayout(choices);
    list->setContentsMargins(6, 10, 6, 10);
    list->setSpacing(4);
    m_tanks->setAccessibleName(tr("Tanks on show; Space ticks"));
    m_parameters->setAccessibleName(tr("Parameters on show; Space ticks, Ctrl+Up and Ctrl+Down reorder"));
    auto* keys = new Text(m_theme, TextStyle::Secondary, tr("Space ticks, Ctrl ↑ ↓ reorders"));
    keys->setContentsMargins(8, 0, 8, 4);
    m_legend->setContentsMargins(8, 8, 8, 0);
    list->addWidget(m_filter);
    list->addWidget(m_tanks);
    list->addWidget(m_legend->wrapped());
    list->addSpacing(10);
    list->addWidget(m_parameters);
    list->addWidget(keys->wrapped());
    list->addStretch(1);
    m_left = scroller(choices, tr("What to show, scrolling"));
    m_right = scroller(m_side, tr("Figures, scrolling"));
    m_charts = scroller(m_view, tr("Charts, scrolling"));
    m_charts->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded); // a grid of many tanks is wider than a small window
    m_stack->addWidget(m_charts);
    m_stack->addWidget(m_twin);
    m_stack->setAccessibleName(tr("Charts"));
    auto* go = new QPushButton(tr("Type readings"));
    go->setAccessibleDescription(tr("Goes to Rounds"));
    connect(go, &QPushButton::clicked, this, &TrendsPage::roundsWanted);
    m_messageButton = go;
    auto* strip = new QHBoxLayout(m_messageStrip);
    strip->setContentsMargins(14, 10, 14, 10);
    strip->addWidget(m_message->wrapped(), 1);
    strip->addWidget(go);
    m_messageStrip->hide();
    auto* middle = new QVBoxLayout;
    middle->setContentsMargins(0, 6, 0, 4);
    middle->setSpacing(4);
    middle->addWidget(m_messageStrip);
    middle->addWidget(m_stack, 1);
    middle->addWidget(m_brush);
    auto* body = new QHBoxLayout;
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(1);
    body->addWidget(m_left);
    body->addLayout(middle, 1);
    body->addWidget(m_right);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addLayout(body, 1);
}

void TrendsPage::connectAll()
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    m_figuresSoon.setSingleShot(true);
    m_figuresSoon.setInterval(kFiguresDelayMs);
    connect(&m_soon, &QTimer::timeout, this, &TrendsPage::refresh);
    connect(&m_figuresSoon, &QTimer::timeout, this, &TrendsPage::updateFigures);
    const auto soon = [this] { m_soon.start(); };
    const auto afresh = [this] {
        recall();
        m_view->setCursor(std::nullopt);
        m_soon.start();
    };
    connect(&m_keeper, &facade::Keeper::changed, this, soon);
    connect(&m_keeper, &facade::Keeper::storeOpened, this, afresh);
    connect(&m_keeper, &facade::Keeper::storeClosed, this, afresh);
    connect(&m_forecasts, &facade::Forecasts::ready, this, soon);
    connect(m_tanks, &TickList::changed, this, [this] {
        m_byHand = true;
        takeChoice();
    });
    connect(m_parameters, &TickList::changed, this, [this] {
        m_parametersByHand = true;
        takeChoice();
    });
    connect(m_bar, &TrendsBar::optionsChanged, this, [this] {
        m_view->setOptions(m_bar->options());
        say();
        remember();
    });
    connect(m_bar, &TrendsBar::viewWanted, this, &TrendsPage::useView);
    connect(m_bar, &TrendsBar::viewSaveWanted, this, &TrendsPage::saveView);
    connect(m_bar, &TrendsBar::viewRemoveWanted, this, &TrendsPage::removeView);
    connect(m_bar->viewName(), &CallField::left, this, &TrendsPage::begin);
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_tanks->setFilter(text.trimmed());
        m_parameters->setFilter(text.trimmed());
    });
    connect(m_filter, &CallField::left, this, &TrendsPage::begin);
    connect(m_filter, &CallField::given, this,
            [this] { (m_tanks->isEmpty() ? m_parameters : m_tanks)->setFocus(Qt::OtherFocusReason); });
    connect(m_bar, &TrendsBar::tableWanted, this, [this](bool table) {
        if (table != isTable()) {
            toggleTable();
        }
    });
    connect(m_bar, &TrendsBar::sideChosen, this, &TrendsPage::arrange);
    connect(m_bar, &TrendsBar::exportWanted, this, &TrendsPage::exportTo);
    connect(m_view, &TrendView::cursorMoved, this, [this] {
        updateReadout();
        m_figuresSoon.start();
    });
    connect(m_view, &TrendView::stretchChanged, &m_figuresSoon, qOverload<>(&QTimer::start));
    connect(m_view, &TrendView::panelChanged, this, [this] {
        m_brush->setDrawing(m_view->drawing(), m_view->currentParameter());
        m_figuresSoon.start();
    });
    connect(m_view, &TrendView::readingOpenWanted, this, &TrendsPage::readingOpenWanted);
    connect(m_side, &TrendsSide::nextReadingWanted, this, [this] { m_view->stepReading(true); });
    connect(&m_axis, &TimeAxis::rangeChanged, &m_figuresSoon, qOverload<>(&QTimer::start));
    connect(&m_axis, &TimeAxis::nowChanged, &m_figuresSoon, qOverload<>(&QTimer::start));
    connect(&m_theme, &Theme::changed, this, &TrendsPage::arrange);
}

void TrendsPage::arrange()
{
    const double scale = m_theme.textScale();
    const bool both = width() >= kBothSides * scale;
    const bool roomy = width() >= 1150 * scale;
    m_bar->setOneSide(!both);
    m_left->setFixedWidth(m_theme.px(kLeft));
    m_right->setFixedWidth(m_theme.px(roomy ? kRight : kRightNarrow));
    m_left->setVisible(both || m_bar->side() == 0);
    m_right->setVisible(both || m_bar->side() == 1);
}

QString TrendsPage::focusedTopic() const
{
    if (m_parameters->hasFocus() || focusWidget() == m_parameters) {
        return m_parameters->currentKey();
    }
    const auto& parameters = m_view->model().parameters;
    const std::size_t at = m_view->currentParameter();
    return at < parameters.size() ? parameters[at].key : QString();
}

QSize TrendsPage::minimumSizeHint() const
{
    return {m_theme.px(300), m_theme.px(300)};
}

std::vector<record::LayoutId> TrendsPage::runningLayouts() const
{
    std::vector<record::LayoutId> layouts;
    for (const record::Tank& tank : m_keeper.row().tanks) {
        if (const auto* current = m_keeper.row().currentLayout(tank.id, m_keeper.clock().now())) {
            layouts.push_back(current->layout.id);
        }
    }
    return layouts;
}

void TrendsPage::chooseByItself()
{
    // The tank the page is about, its earlier layouts, and the other tank nearest to it in age: enough to compare, few
    // enough to read.
    const record::Row& row = m_keeper.row();
    const record::LayoutRecord* own = row.currentLayout(m_tank, m_keeper.clock().now());
    if (own == nullptr) {
        m_layouts = runningLayouts();
        m_layouts.resize(std::min<std::size_t>(m_layouts.size(), 1));
        return;
    }
    m_layouts = {own->layout.id};
    const record::LayoutRecord* nearest = nullptr;
    const auto apart = [own](const record::LayoutRecord& other) {
        return std::abs(record::daysBetween(own->layout.flooded, other.layout.flooded));
    };
    for (const record::LayoutId id : runningLayouts()) {
        const record::LayoutRecord* other = row.layout(id);
        const bool nearer = nearest == nullptr || apart(*other) < apart(*nearest);
        if (id != own->layout.id && nearer && !other->readings.empty()) {
            nearest = other;
        }
    }
    if (nearest != nullptr) {
        m_layouts.push_back(nearest->layout.id);
    }
    for (const record::LayoutRecord* layout : row.layoutsOf(m_tank)) {
        if (layout->layout.id != own->layout.id) {
            m_layouts.push_back(layout->layout.id);
        }
    }
}

void TrendsPage::setSelected(record::TankId tank)
{
    if (tank == m_tank) {
        return;
    }
    m_tank = tank;
    if (m_byHand) {
        const auto* own = m_keeper.row().currentLayout(tank, m_keeper.clock().now());
        if (own != nullptr && std::ranges::find(m_layouts, own->layout.id) == m_layouts.end()) {
            m_layouts.push_back(own->layout.id);
        }
    } else {
        chooseByItself();
    }
    if (!m_parametersByHand) {
        m_shown.clear();
    }
    refresh();
}

void TrendsPage::choose(const std::vector<record::LayoutId>& layouts, const QStringList& parameters)
{
    m_byHand = true;
    m_parametersByHand = true;
    m_layouts = layouts;
    m_shown = parameters;
    refresh();
}

void TrendsPage::refresh()
{
    if (!isVisible()) {
        m_stale = true;
        return;
    }
    m_stale = false;
    std::erase_if(m_layouts, [this](record::LayoutId id) { return m_keeper.row().layout(id) == nullptr; });
    if (m_layouts.empty() && !m_byHand) {
        chooseByItself();
    }
    if (!m_parametersByHand && m_shown.isEmpty()) {
        chooseParameters();
    }
    fillTanks();
    fillParameters();
    fillViews();
    draw();
}

void TrendsPage::draw()
{
    // Layouts are drawn in the order of the row, so that a tank keeps its dash.
    facade::TrendChoice choice{m_layouts, m_shown, m_keeper.clock().now()};
    auto model =
        facade::trendOf(m_keeper.row(), choice, [this](record::LayoutId layout) { return m_forecasts.result(layout); });
    m_view->setDrawing(std::make_shared<const TrendDrawing>(std::move(model)));
    m_view->setSelected(m_tank);
    m_view->setOptions(m_bar->options());
    m_brush->setDrawing(m_view->drawing(), m_view->currentParameter());
    fillTanks();
    say();
    updateReadout();
    updateFigures();
}

void TrendsPage::say()
{
    QString sentence;
    const facade::TrendModel& model = m_view->model();
    const bool writable = m_keeper.hasStore() && !m_keeper.isReadOnly();
    bool offer = false;
    if (m_layouts.empty()) {
        sentence = tr("Readings of the tanks ticked at the left are drawn here. Tick a tank.");
    } else if (m_shown.isEmpty()) {
        sentence = tr("Each parameter ticked at the left has a chart here. Tick a parameter.");
    } else if (model.pointCount() == 0) {
        sentence = tr("Readings of these tanks are drawn here as they are typed. There are none of these parameters "
                      "yet.");
        offer = writable;
    }
    m_message->setText(sentence);
    m_messageButton->setVisible(offer);
    m_messageStrip->setVisible(!sentence.isEmpty());
}

void TrendsPage::updateReadout()
{
    m_side->setReadout(readoutTable(m_view->model(), m_axis.view(0, 1), m_view->cursor()));
    m_side->setEvents(eventSentences(m_view->model(), m_axis.view(0, 1), m_view->cursor()));
}

void TrendsPage::updateFigures()
{
    const facade::TrendModel& model = m_view->model();
    const AxisView all = m_brush->whole();
    m_bar->setExtent(all.from, all.to);
    if (isTable()) {
        m_twin->setTable(valuesTable(model, m_axis.view(0, 1)));
    }
    const std::size_t parameter = m_view->currentParameter();
    if (parameter >= model.parameters.size() || model.tanks.empty()) {
        m_side->setStatistics({}, false);
        m_side->setComparison({tr("Nothing is on show.")});
        return;
    }
    const TrendView::Stretch stretch = m_view->stretch();
    const AxisView axis = m_axis.view(0, 1);
    m_side->setStatistics(statisticsTable(model, parameter, axis, stretch.from, stretch.to), m_view->hasStretch());
    QStringList sentences = expectedSentences(model, parameter, m_view->selected());
    sentences << comparisonSentences(model, parameter, m_view->selected(), axis, stretch.from, stretch.to,
                                     m_view->hasCursor() ? std::optional(m_view->cursor()) : std::nullopt);
    m_side->setComparison(sentences);
}

bool TrendsPage::isTable() const
{
    return m_stack->currentWidget() == m_twin;
}

void TrendsPage::toggleTable()
{
    const bool table = !isTable();
    m_stack->setCurrentWidget(table ? static_cast<QWidget*>(m_twin) : m_charts);
    m_bar->setTable(table);
    if (table) {
        m_twin->setTable(valuesTable(m_view->model(), m_axis.view(0, 1)));
        m_twin->showCurrent();
        m_twin->setFocus(Qt::OtherFocusReason);
    } else {
        m_view->setFocus(Qt::OtherFocusReason);
    }
}

void TrendsPage::toggleMode()
{
    m_axis.setMode(m_axis.mode() == AxisMode::Age ? AxisMode::Calendar : AxisMode::Age);
}

void TrendsPage::showNow()
{
    m_view->setCursor(std::nullopt);
    const auto& tanks = m_view->model().tanks;
    const std::size_t place = m_view->selected();
    m_glide.glideToNow(m_axis, place < tanks.size() ? tanks[place].flooded : m_axis.now());
}

void TrendsPage::openExport()
{
    m_bar->openExport();
}

void TrendsPage::exportTo(TrendFile kind)
{
    QStringList names;
    for (const facade::TrendTank& tank : m_view->model().tanks) {
        names << tank.name;
    }
    const QString suffix = kind == TrendFile::Png ? u"png"_s : kind == TrendFile::Svg ? u"svg"_s : u"csv"_s;
    const QString path = m_ask.fileToWrite(this, tr("Export what is on show"),
                                           u"%1.%2"_s.arg(names.join(u", "_s).left(80), suffix), suffix);
    if (path.isEmpty()) {
        return;
    }
    const int width = std::max(m_view->width(), 640);
    const int height = std::max(m_view->height(), 480);
    const Result<void> done = kind == TrendFile::Png   ? writeTrendPng(*m_view, path, width, height)
                              : kind == TrendFile::Svg ? writeTrendSvg(*m_view, path, width, height)
                                                       : writeTrendCsv(*m_view, m_axis, path);
    if (done) {
        emit told(tr("Exported to %1.").arg(path));
    } else {
        emit failed(done.error(), tr("The record is as it was."));
    }
}

QList<QWidget*> TrendsPage::regions() const
{
    return {m_bar, m_left, m_stack, m_brush, m_right};
}

void TrendsPage::begin()
{
    (isTable() ? static_cast<QWidget*>(m_twin) : m_view)->setFocus(Qt::OtherFocusReason);
}

void TrendsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void TrendsPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void TrendsPage::keyPressEvent(QKeyEvent* event)
{
    if ((event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) != 0) {
        QWidget::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_T:
        toggleTable();
        return;
    case Qt::Key_X:
        openExport();
        return;
    case Qt::Key_A:
        toggleMode();
        return;
    case Qt::Key_N:
        showNow();
        return;
    case Qt::Key_Period:
    case Qt::Key_Comma:
        m_view->stepReading(event->key() == Qt::Key_Period);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void TrendsPage::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    const int top = m_bar->height();
    painter.setPen(m_theme[Token::Rule]);
    if (!m_left->isHidden()) {
        painter.drawLine(m_left->geometry().right() + 1, top, m_left->geometry().right() + 1, height());
    }
    if (!m_right->isHidden()) {
        painter.drawLine(m_right->geometry().left() - 1, top, m_right->geometry().left() - 1, height());
    }
}

} // namespace littoral::ui
