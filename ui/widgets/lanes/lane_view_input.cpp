// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/lanes/lane_access.h"
#include "ui/widgets/lanes/lane_view.h"

#include <QApplication>
#include <QDateTime>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr double kZoomStep = 0.8;
/// A notch of the wheel (120 units) moves the axis by this part of its span.
constexpr double kPanPerNotch = 0.08;

} // namespace

void LaneView::keyPressEvent(QKeyEvent* event)
{
    const auto mods = event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier);
    const bool taken = m_move ? handleMoveKey(event)
                              : mods == Qt::NoModifier && (handleStepKey(event->key()) || handleWorkKey(event->key()) ||
                                                           handleAxisKey(event));
    if (!taken) {
        event->ignore();
    }
}

bool LaneView::handleStepKey(int key)
{
    bool moved = false;
    switch (key) {
    case Qt::Key_Up:
        moved = m_cursor.stepLane(-1, m_lanes, m_options);
        break;
    case Qt::Key_Down:
        moved = m_cursor.stepLane(1, m_lanes, m_options);
        break;
    case Qt::Key_Left:
        moved = m_cursor.stepItem(-1, m_lanes, m_options);
        break;
    case Qt::Key_Right:
        moved = m_cursor.stepItem(1, m_lanes, m_options);
        break;
    case Qt::Key_Home:
        moved = m_cursor.toEnd(false, m_lanes, m_options);
        break;
    case Qt::Key_End:
        moved = m_cursor.toEnd(true, m_lanes, m_options);
        break;
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
        verticalScrollBar()->triggerAction(key == Qt::Key_PageUp ? QAbstractSlider::SliderPageStepSub
                                                                 : QAbstractSlider::SliderPageStepAdd);
        return true;
    default:
        return false;
    }
    if (moved) {
        afterCursor(true);
    }
    return true;
}

bool LaneView::handleWorkKey(int key)
{
    const facade::LaneChip* chip = selectedChip();
    const facade::LaneModel* lane = selectedLane();
    switch (key) {
    case Qt::Key_Space:
        if (chip != nullptr) {
            emit doneRequested(*chip);
        }
        return true;
    case Qt::Key_S:
        if (chip != nullptr) {
            emit snoozeRequested(*chip);
        }
        return true;
    case Qt::Key_K:
        if (chip != nullptr) {
            emit skipRequested(*chip);
        }
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        activate();
        return true;
    case Qt::Key_M:
        startMove(false);
        return true;
    case Qt::Key_W:
        if (lane != nullptr) {
            emit waterChangeRequested(lane->tank, lane->layout);
        }
        return true;
    default:
        return false;
    }
}

bool LaneView::handleAxisKey(QKeyEvent* event)
{
    const AxisView view = frame().axis;
    const double nowShare =
        m_axis.mode() == AxisMode::Calendar ? (view.x(m_axis.now(), 0) - view.left) / view.width : 0.5;
    const double share = nowShare >= 0.0 && nowShare <= 1.0 ? nowShare : 0.5;
    switch (event->key()) {
    case Qt::Key_N:
        showNow();
        return true;
    case Qt::Key_A:
        m_axis.setMode(m_axis.mode() == AxisMode::Calendar ? AxisMode::Age : AxisMode::Calendar);
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        m_axis.zoom(share, kZoomStep);
        return true;
    case Qt::Key_Minus:
        m_axis.zoom(share, 1.0 / kZoomStep);
        return true;
    default:
        return false;
    }
}

bool LaneView::handleMoveKey(QKeyEvent* event)
{
    const int days = (event->modifiers() & Qt::ShiftModifier) != 0 ? 7 : 1;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Minus:
        m_move->day = m_move->day.addDays(-days);
        break;
    case Qt::Key_Right:
    case Qt::Key_Plus:
        m_move->day = m_move->day.addDays(days);
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_M:
        finishMove(true);
        return true;
    case Qt::Key_Escape:
        finishMove(false);
        return true;
    default:
        return false;
    }
    viewport()->update();
    return true;
}

void LaneView::activate()
{
    const facade::LaneModel* lane = selectedLane();
    if (lane == nullptr) {
        return;
    }
    if (const auto* chip = selectedChip()) {
        emit openRequested(*chip);
        return;
    }
    const auto& item = m_cursor.item();
    if (item && item->row == LaneRow::Events) {
        emit entryOpenRequested(lane->events[item->index].entry);
        return;
    }
    if (item && item->row == LaneRow::Readings) {
        std::size_t index = item->index;
        for (const facade::LaneSeries* series : shownSeries(*lane, m_options)) {
            if (index < series->marks.size()) {
                emit readingOpenRequested(series->marks[index].reading);
                return;
            }
            index -= series->marks.size();
        }
    }
    emit laneOpenRequested(lane->layout);
}

void LaneView::startMove(bool byPointer)
{
    const facade::LaneChip* chip = selectedChip();
    if (chip == nullptr) {
        return;
    }
    const QDate today = QDateTime::fromMSecsSinceEpoch(m_axis.now(), m_axis.zone()).date();
    m_move = Move{m_cursor.lane(), *m_cursor.item(), std::max(chip->item.due, today), byPointer};
    viewport()->update();
    emit selectionChanged();
}

void LaneView::finishMove(bool take)
{
    const Move move = *std::exchange(m_move, std::nullopt);
    viewport()->update();
    if (take && move.lane < m_lanes.size()) {
        const facade::LaneChip chip = m_lanes[move.lane]->chips[move.item.index];
        if (move.day != chip.item.due) {
            emit moveRequested(chip, move.day);
        }
    }
    emit selectionChanged();
}

bool LaneView::focusNextPrevChild(bool next)
{
    // Tab walks the rows of the lane and then leaves the view: never a trap.
    if (hasFocus() && m_cursor.stepRow(next ? 1 : -1, m_lanes, m_options)) {
        afterCursor(true);
        return true;
    }
    return QAbstractScrollArea::focusNextPrevChild(next);
}

void LaneView::focusInEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
    announceLaneFocus(this);
    emit selectionChanged();
}

void LaneView::focusOutEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

void LaneView::wheelEvent(QWheelEvent* event)
{
    const QPointF at = event->position();
    const QPoint delta = event->angleDelta();
    const AxisView view = frame().axis;
    const bool overHeader = at.x() < view.left;
    const double notches = (std::abs(delta.x()) > std::abs(delta.y()) ? delta.x() : delta.y()) / 120.0;
    if ((event->modifiers() & Qt::ControlModifier) != 0) {
        m_axis.zoom(std::clamp((at.x() - view.left) / view.width, 0.0, 1.0), std::pow(kZoomStep, notches));
        event->accept();
        return;
    }
    const bool sideways =
        (event->modifiers() & (Qt::ShiftModifier | Qt::AltModifier)) != 0 || std::abs(delta.x()) > std::abs(delta.y());
    const bool scrolls = !sideways && (overHeader || verticalScrollBar()->maximum() > 0);
    if (scrolls) {
        QScrollBar* bar = verticalScrollBar();
        const double pixels = event->pixelDelta().isNull() ? notches * 3 * bar->singleStep() : event->pixelDelta().y();
        bar->setValue(bar->value() - static_cast<int>(std::lround(pixels)));
    } else {
        const double pixels = event->pixelDelta().isNull()
                                  ? 0.0
                                  : (event->pixelDelta().x() != 0 ? event->pixelDelta().x() : event->pixelDelta().y());
        m_axis.pan(pixels != 0.0 ? -pixels / view.width : -notches * kPanPerNotch);
    }
    event->accept();
}

std::optional<std::pair<std::size_t, LaneItem>> LaneView::hit(QPointF at) const
{
    const auto lane = laneAt(at.y());
    if (!lane || at.x() < frame().axis.left) {
        return {};
    }
    const auto item = itemAt(box(*lane), *m_lanes[*lane], at - QPointF(0, laneTop(*lane)), m_metrics, m_options);
    return item ? std::optional(std::pair(*lane, *item)) : std::nullopt;
}

void LaneView::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) {
        event->ignore();
        return;
    }
    m_press = Press{event->position(),
                    laneAt(event->position().y()),
                    {},
                    m_axis.from(),
                    m_axis.to(),
                    false,
                    event->position().x() < frame().axis.left};
    if (const auto found = hit(event->position())) {
        m_press->item = found->second;
        m_cursor.toItem(found->first, found->second);
        afterCursor(false);
    } else if (m_press->lane && m_press->inHeader) {
        m_cursor.toLane(*m_press->lane, m_lanes, m_options);
        afterCursor(false);
    }
}

void LaneView::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_press) {
        const auto found = hit(event->position());
        const bool changed = found.has_value() != m_hover.has_value() ||
                             (found && (found->first != m_hover->first || !found->second.same(m_hover->second)));
        if (changed) {
            m_hover = found;
            viewport()->setCursor(found && found->second.row == LaneRow::Due ? Qt::PointingHandCursor
                                                                             : Qt::ArrowCursor);
            viewport()->update();
        }
        return;
    }
    if (!m_press->dragging &&
        (event->position() - m_press->at).manhattanLength() >= QApplication::startDragDistance()) {
        m_press->dragging = !m_press->inHeader;
        if (m_press->dragging && m_press->item && m_press->item->row == LaneRow::Due) {
            startMove(true);
        } else if (m_press->dragging) {
            viewport()->setCursor(Qt::ClosedHandCursor);
        }
    }
    if (!m_press->dragging) {
        return;
    }
    if (m_move) {
        dragChip(event->position());
        return;
    }
    const double share = (event->position().x() - m_press->at.x()) / frame().axis.width;
    const auto shift = static_cast<qint64>(share * static_cast<double>(m_press->to - m_press->from));
    m_axis.setRange(m_press->from - shift, m_press->to - shift);
}

void LaneView::dragChip(QPointF at)
{
    const facade::LaneModel& model = *m_lanes[m_move->lane];
    const qint64 under = frame().axis.at(at.x(), model.flooded);
    m_move->day = QDateTime::fromMSecsSinceEpoch(under, m_axis.zone()).date();
    viewport()->update();
    emit selectionChanged();
}

void LaneView::mouseReleaseEvent(QMouseEvent*)
{
    const bool moving = m_move && m_move->byPointer;
    m_press.reset();
    viewport()->setCursor(Qt::ArrowCursor);
    if (moving) {
        finishMove(true);
    }
}

void LaneView::mouseDoubleClickEvent(QMouseEvent* event)
{
    m_press.reset();
    if (event->button() == Qt::LeftButton && (hit(event->position()) || event->position().x() < frame().axis.left)) {
        activate();
    }
}

QString LaneView::tipAt(QPointF at) const
{
    if (const auto found = hit(at)) {
        const facade::LaneModel& lane = *m_lanes[found->first];
        if (found->second.row != LaneRow::Due) {
            return found->second.sentence;
        }
        // A fold tells what is in it, one a line.
        QStringList lines;
        for (const ChipBox& chip : box(found->first).chips) {
            if (std::ranges::find(chip.chips, found->second.index) != chip.chips.end()) {
                for (const std::size_t each : chip.chips) {
                    lines << (chip.chips.size() == 1 ? tr("%1. %2", "work and why it is due")
                                                           .arg(lane.chips[each].text, lane.chips[each].why)
                                                     : lane.chips[each].text);
                }
            }
        }
        return lines.join(QLatin1Char('\n'));
    }
    return {};
}

} // namespace littoral::ui
