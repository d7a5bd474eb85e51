// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/lanes/lane_view.h"

#include "ui/paint/axis_slide.h"

#include "ui/theme/figures.h"
#include "ui/widgets/lanes/lane_access.h"

#include <QHelpEvent>
#include <QLocale>
#include <QPainter>
#include <QResizeEvent>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <new>

namespace littoral::ui {

LaneView::LaneView(const Theme& theme, TimeAxis& axis, QWidget* parent)
    : QAbstractScrollArea(parent)
    , m_theme(theme)
    , m_axis(axis)
    , m_metrics(theme)
    , m_painter(theme, m_metrics)
    , m_header(theme, m_metrics)
    , m_glide(*this)
    , m_slide(*this)
{
    installLaneAccess();
    setAccessibleName(tr("Lanes"));
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    connect(&m_axis, &TimeAxis::rangeChanged, this, &LaneView::invalidateBoxes);
    connect(&m_axis, &TimeAxis::nowChanged, this, &LaneView::invalidateBoxes);
    connect(&m_axis, &TimeAxis::modeChanged, this, &LaneView::axisModeChanged);
    connect(&m_theme, &Theme::changed, this, &LaneView::themeChanged);
}

LaneView::~LaneView() = default;

void LaneView::setLanes(std::vector<LanePtr> lanes)
{
    const std::vector<LanePtr> before = std::exchange(m_lanes, std::move(lanes));
    m_cursor.adopt(before, m_lanes, m_options);
    m_hover.reset();
    m_press.reset();
    if (m_move && (m_move->lane >= m_lanes.size() || m_move->lane >= before.size() ||
                   m_lanes[m_move->lane] != before[m_move->lane])) {
        m_move.reset();
    }
    relayout();
    ++m_generation;
    emit selectionChanged();
}

void LaneView::setOptions(const LaneOptions& options)
{
    if (!(options == m_options)) {
        m_options = options;
        m_cursor.adopt(m_lanes, m_lanes, m_options);
        invalidateBoxes();
        ++m_generation;
    }
}

void LaneView::setOverviewAbove(std::size_t lanes)
{
    m_overviewAbove = lanes;
    relayout();
}

void LaneView::setRowShapes(std::vector<TankShape> shapes)
{
    if (shapes != m_shapes) {
        m_shapes = std::move(shapes);
        relayout();
    }
}

const facade::LaneModel* LaneView::selectedLane() const
{
    return m_cursor.lane() < m_lanes.size() ? m_lanes[m_cursor.lane()].get() : nullptr;
}

const facade::LaneChip* LaneView::selectedChip() const
{
    const facade::LaneModel* lane = selectedLane();
    const auto& item = m_cursor.item();
    if (lane == nullptr || !item || item->row != LaneRow::Due || item->index >= lane->chips.size()) {
        return nullptr;
    }
    return &lane->chips[item->index];
}

void LaneView::selectTank(record::TankId tank)
{
    if (const auto* lane = selectedLane(); lane != nullptr && lane->tank == tank) {
        return;
    }
    for (std::size_t i = 0; i < m_lanes.size(); ++i) {
        if (m_lanes[i]->tank == tank) {
            m_cursor.toLane(i, m_lanes, m_options);
            afterCursor(true);
            return;
        }
    }
}

void LaneView::selectItem(std::size_t lane, const LaneItem& item)
{
    m_cursor.toItem(lane, item);
    afterCursor(true);
}

LaneFrame LaneView::frame() const
{
    LaneFrame frame;
    frame.width = viewport()->width();
    const double header = m_metrics.headerWidth(frame.width);
    frame.axis = m_axis.view(header, frame.width - header);
    frame.options = m_options;
    std::vector<TankShape> shapes = m_shapes;
    if (shapes.empty()) {
        for (const LanePtr& lane : m_lanes) {
            shapes.push_back(shapeOf(*lane));
        }
    }
    const double room = std::min(m_metrics.px(108), header * 0.42);
    frame.outlineScale = outlineScale(shapes, {room, m_metrics.px(36)});
    return frame;
}

LaneKind LaneView::kindOf(std::size_t lane) const
{
    const bool overview = m_lanes.size() > m_overviewAbove && lane != m_cursor.lane();
    return laneKind(*m_lanes[lane], overview);
}

LaneFrame LaneView::frameOf(std::size_t lane) const
{
    LaneFrame made = frame();
    if (m_sliding && m_sliding->axis) {
        made.axis = between(*m_sliding->axis, made.axis, m_lanes[lane]->flooded, m_sliding->done);
    }
    return made;
}

void LaneView::slide(bool axis, bool show)
{
    const Slide before{m_tops, axis ? std::optional(m_axisAtRest) : std::nullopt, 0.0};
    relayout();
    const std::vector<double> after = m_tops;
    if (before.tops.size() != after.size()) {
        return;
    }
    m_slide.start([this, before, after, show](double done) {
        m_sliding = before;
        m_sliding->done = done;
        for (std::size_t i = 0; i < after.size(); ++i) {
            m_tops[i] = before.tops[i] + (after[i] - before.tops[i]) * done;
        }
        if (done >= 1.0) {
            m_sliding.reset();
            m_tops = after;
        }
        updateScrollBar();
        invalidateBoxes();
        if (show && done >= 1.0) {
            reveal();
        }
    });
}

void LaneView::axisModeChanged()
{
    slide(true, false);
}

void LaneView::relayout()
{
    m_slide.stop();
    m_sliding.reset();
    const LaneFrame shared = frame();
    m_tops.assign(1, 0.0);
    for (std::size_t i = 0; i < m_lanes.size(); ++i) {
        m_tops.push_back(m_tops.back() + laneHeight(*m_lanes[i], kindOf(i), m_metrics, shared));
    }
    m_cache.assign(m_lanes.size(), Cached{});
    m_grid.reset();
    m_axisAtRest = shared.axis;
    updateScrollBar();
    viewport()->update();
}

void LaneView::invalidateBoxes()
{
    m_grid.reset();
    for (Cached& cached : m_cache) {
        cached.boxValid = false;
        cached.picture.forget();
    }
    if (!m_sliding) {
        m_axisAtRest = frame().axis;
    }
    viewport()->update();
}

void LaneView::updateScrollBar()
{
    const int page = std::max(0, viewport()->height() - static_cast<int>(headerHeight()));
    verticalScrollBar()->setPageStep(page);
    verticalScrollBar()->setSingleStep(static_cast<int>(m_metrics.px(36)));
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(contentHeight())) - page));
}

void LaneView::themeChanged()
{
    // Painter and header hold a reference to the metrics, which are replaced in place.
    m_metrics = LaneMetrics(m_theme);
    relayout();
}

const LaneBox& LaneView::box(std::size_t lane) const
{
    Cached& cached = m_cache[lane];
    if (!cached.boxValid) {
        cached.box = layOutLane(*m_lanes[lane], kindOf(lane), m_metrics, frameOf(lane));
        cached.boxValid = true;
        cached.picture.forget();
    }
    return cached.box;
}

double LaneView::laneTop(std::size_t lane) const
{
    return headerHeight() + m_tops[lane] - verticalScrollBar()->value();
}

QRect LaneView::laneRect(std::size_t lane) const
{
    if (lane >= m_lanes.size()) {
        return {};
    }
    return QRectF(0, laneTop(lane), viewport()->width(), m_tops[lane + 1] - m_tops[lane]).toRect();
}

QRect LaneView::itemViewRect(std::size_t lane, const LaneItem& item) const
{
    if (lane >= m_lanes.size()) {
        return {};
    }
    const QRectF rect = itemRect(box(lane), *m_lanes[lane], item, m_metrics);
    return rect.isEmpty() ? QRect() : rect.translated(0, laneTop(lane)).toAlignedRect();
}

std::optional<std::size_t> LaneView::laneAt(double viewportY) const
{
    const double y = viewportY - headerHeight() + verticalScrollBar()->value();
    if (viewportY < headerHeight() || y < 0 || y >= contentHeight()) {
        return {};
    }
    const auto after = std::ranges::upper_bound(m_tops, y);
    return static_cast<std::size_t>(after - m_tops.begin()) - 1;
}

void LaneView::paintLaneAt(QPainter& painter, std::size_t lane) const
{
    const LaneBox& laid = box(lane);
    Cached& cached = m_cache[lane];
    const QSize size(viewport()->width(), static_cast<int>(std::ceil(laid.height)));
    const bool selected = lane == m_cursor.lane();
    if (cached.drawnSelected != selected) {
        cached.picture.forget();
        cached.drawnSelected = selected;
    }
    painter.save();
    painter.translate(0, laneTop(lane));
    if (m_sliding) {
        painter.setClipRect(QRectF(0, 0, size.width(), m_tops[lane + 1] - m_tops[lane]));
    }
    cached.picture.paint(painter, size, m_theme[Token::Window], [&](QPainter& inner) {
        if (!m_grid) {
            m_grid = m_header.gridLines(m_axis, frame().axis);
        }
        m_painter.paintLane(inner, *m_lanes[lane], laid, frameOf(lane), *m_grid, selected);
    });
    m_painter.paintNow(painter, *m_lanes[lane], laid);
    painter.restore();
}

void LaneView::paintEvent(QPaintEvent*)
{
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), m_theme[Token::Window]);
    const double top = headerHeight();
    const double bottom = viewport()->height();
    for (std::size_t i = 0; i < m_lanes.size(); ++i) {
        if (laneTop(i) < bottom && laneTop(i) + m_tops[i + 1] - m_tops[i] > top) {
            paintLaneAt(painter, i);
        }
    }
    painter.save();
    painter.setClipRect(QRectF(0, top, viewport()->width(), bottom - top));
    paintOverlays(painter);
    painter.restore();
    m_header.paint(painter, m_axis, frame().axis, viewport()->width());
}

void LaneView::paintOverlays(QPainter& painter) const
{
    if (m_hover && m_hover->first < m_lanes.size()) {
        const QRect rect = itemViewRect(m_hover->first, m_hover->second);
        if (!rect.isEmpty()) {
            m_painter.paintHover(painter, rect);
        }
    }
    if (m_cursor.lane() >= m_lanes.size()) {
        return;
    }
    const QRect rect = m_cursor.item() ? itemViewRect(m_cursor.lane(), *m_cursor.item()) : QRect();
    const bool keyboard = hasFocus();
    if (!rect.isEmpty()) {
        keyboard ? m_painter.paintFocus(painter, rect) : m_painter.paintHover(painter, rect);
    } else if (keyboard) {
        // The item is out of the range shown, or the lane has none: the header carries the ring.
        const double inset = 5.0;
        m_painter.paintFocus(painter,
                             QRectF(0, laneTop(m_cursor.lane()), frame().axis.left, laneRect(m_cursor.lane()).height())
                                 .adjusted(inset, inset, -inset, -inset));
    }
    paintMove(painter);
}

void LaneView::paintMove(QPainter& painter) const
{
    if (!m_move || m_move->lane >= m_lanes.size()) {
        return;
    }
    const LaneBox& laid = box(m_move->lane);
    const double top = laneTop(m_move->lane);
    const facade::LaneModel& model = *m_lanes[m_move->lane];
    const facade::LaneChip& chip = model.chips[m_move->item.index];
    const QString day = QLocale().toString(m_move->day, tr("ddd d MMM", "form of a date"));
    const QString text = tr("%1 to %2", "work being moved to another day").arg(chip.title, day);
    const double width = chipWidth(m_metrics, text);
    const double x = laid.axis.x(startOfDay(m_move->day, m_axis.zone()), model.flooded);
    painter.setRenderHint(QPainter::Antialiasing);
    QRectF ghost(std::clamp(x, laid.strip.left(), std::max(laid.strip.left(), laid.strip.right() - width)),
                 top + laid.dueTops.back(), width, m_metrics.chipHeight);
    painter.setPen(QPen(m_theme[Token::Accent], 1.6, Qt::DashLine));
    painter.setBrush(m_theme[Token::Selection]);
    painter.drawRoundedRect(ghost, m_metrics.px(3), m_metrics.px(3));
    painter.drawLine(QPointF(x, top + laid.chart.top()), QPointF(x, ghost.top()));
    painter.setFont(m_metrics.chipStrong);
    painter.setPen(m_theme[Token::Accent]);
    drawFigures(painter, ghost, Qt::AlignVCenter | Qt::AlignHCenter, text);
}

void LaneView::afterCursor(bool show)
{
    if (m_lanes.size() > m_overviewAbove) {
        slide(false, show); // the selected lane opens, the one before it closes
    } else if (show) {
        reveal();
    }
    viewport()->update();
    announceLaneFocus(this);
    emit selectionChanged();
    if (const auto* lane = selectedLane()) {
        emit laneSelected(lane->tank, lane->layout);
    }
}

void LaneView::reveal()
{
    if (m_cursor.lane() >= m_lanes.size()) {
        return;
    }
    const QRect rect = laneRect(m_cursor.lane());
    const int top = static_cast<int>(headerHeight());
    QScrollBar* bar = verticalScrollBar();
    if (rect.top() < top) {
        bar->setValue(bar->value() - (top - rect.top()));
    } else if (rect.bottom() > viewport()->height()) {
        bar->setValue(bar->value() + std::min(rect.bottom() - viewport()->height(), rect.top() - top));
    }
    if (!m_cursor.item()) {
        return;
    }
    const facade::LaneModel& model = *m_lanes[m_cursor.lane()];
    const AxisView view = frame().axis;
    const double x = view.x(m_cursor.item()->at, model.flooded);
    if (x < view.left || x > view.right()) {
        // Overdue work stands at the now-line, wherever its due day is.
        const bool over = m_cursor.item()->row == LaneRow::Due && model.chips[m_cursor.item()->index].overdue;
        if (over && !itemViewRect(m_cursor.lane(), *m_cursor.item()).isEmpty()) {
            return;
        }
        const qint64 at = over ? m_axis.now() : m_cursor.item()->at;
        const qint64 own = view.mode == AxisMode::Age ? at - model.flooded : at;
        m_axis.centre(own, x < view.left ? 0.15 : 0.85);
    }
}

void LaneView::showNow()
{
    const facade::LaneModel* lane = selectedLane();
    m_glide.glideToNow(m_axis, lane == nullptr ? m_axis.now() : lane->flooded);
}

void LaneView::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    relayout();
}

void LaneView::scrollContentsBy(int, int)
{
    viewport()->update();
}

bool LaneView::event(QEvent* event)
{
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        themeChanged();
    }
    return QAbstractScrollArea::event(event);
}

bool LaneView::viewportEvent(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const QString tip = tipAt(help->pos());
        tip.isEmpty() ? QToolTip::hideText() : QToolTip::showText(help->globalPos(), tip, viewport());
        return true;
    }
    if (event->type() == QEvent::Leave && m_hover) {
        m_hover.reset();
        viewport()->update();
    }
    return QAbstractScrollArea::viewportEvent(event);
}

} // namespace littoral::ui
