// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/trend_words.h"
#include "ui/widgets/trends/trend_view.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using facade::TrendSeries;

namespace {

constexpr double kZoomStep = 0.8;
constexpr double kPanPerNotch = 0.08; // of the span, for 120 units of the wheel
constexpr double kReach = 9.0;        // px a pointer may be off a mark

} // namespace

void TrendView::keyPressEvent(QKeyEvent* event)
{
    const auto mods = event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier);
    const bool plain = mods == Qt::NoModifier || mods == Qt::ControlModifier;
    if (!plain || !(handleCursorKey(event) || (mods == Qt::NoModifier && handleAxisKey(event)))) {
        event->ignore();
    }
}

bool TrendView::handleCursorKey(QKeyEvent* event)
{
    const bool control = (event->modifiers() & Qt::ControlModifier) != 0;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
        stepCursor((event->key() == Qt::Key_Left ? -1 : 1) * (control ? 7 : 1));
        return true;
    case Qt::Key_Up:
    case Qt::Key_Down:
        stepPanel(event->key() == Qt::Key_Up ? -1 : 1);
        return !control;
    case Qt::Key_Period:
    case Qt::Key_Comma:
        stepReading(event->key() == Qt::Key_Period);
        return true;
    case Qt::Key_Home:
    case Qt::Key_End:
        toEnd(event->key() == Qt::Key_End);
        return true;
    case Qt::Key_BracketLeft:
    case Qt::Key_BracketRight:
        setStretchEnd(event->key() == Qt::Key_BracketRight);
        return true;
    case Qt::Key_Backspace:
        setStretch(std::nullopt);
        return true;
    case Qt::Key_Escape:
        if (m_stretch || m_cursor) {
            // One level at a time.
            m_stretch ? setStretch(std::nullopt) : setCursor(std::nullopt);
            return true;
        }
        return false;
    default:
        return false;
    }
}

bool TrendView::handleAxisKey(QKeyEvent* event)
{
    const double share =
        static_cast<double>(cursor() - m_axis.from()) / static_cast<double>(m_axis.to() - m_axis.from());
    const double about = share >= 0.0 && share <= 1.0 ? share : 0.5;
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        m_axis.zoom(about, kZoomStep);
        return true;
    case Qt::Key_Minus:
        m_axis.zoom(about, 1.0 / kZoomStep);
        return true;
    default:
        return false;
    }
}

void TrendView::bringIntoView(qint64 own)
{
    if (own < m_axis.from() || own > m_axis.to()) {
        m_axis.centre(own, own < m_axis.from() ? 0.1 : 0.9);
    }
}

void TrendView::stepCursor(int days)
{
    const qint64 own = cursor() + days * kDayMs;
    bringIntoView(own);
    setCursor(own);
}

void TrendView::stepPanel(int by)
{
    const int next = std::clamp(m_part + by, 0, std::max(0, partCount() - 1));
    if (next != m_part) {
        m_part = next;
        describe();
        announcePart();
        update();
        emit panelChanged();
    }
}

void TrendView::stepReading(bool forward)
{
    const auto part = static_cast<std::size_t>(std::max(0, m_part));
    if (part >= layoutNow().panels.size()) {
        return;
    }
    const qint64 own = cursor();
    std::optional<qint64> best;
    for (const std::size_t place : layoutNow().panels[part].series) {
        const TrendSeries& series = m_drawing->model.series[place];
        const qint64 flooded = m_drawing->model.tanks[series.tank].flooded;
        const qint64 at = instantOf(m_axis.mode(), own, flooded);
        const auto found = forward ? std::ranges::upper_bound(series.points, at, {}, &facade::TrendPoint::at)
                                   : std::ranges::lower_bound(series.points, at, {}, &facade::TrendPoint::at);
        if (forward ? found == series.points.end() : found == series.points.begin()) {
            continue;
        }
        const qint64 place_ms = ownPlace(m_axis.mode(), (forward ? found : found - 1)->at, flooded);
        if (!best || (forward ? place_ms < *best : place_ms > *best)) {
            best = place_ms;
        }
    }
    if (best) {
        bringIntoView(*best);
        setCursor(best);
    }
}

void TrendView::toEnd(bool last)
{
    std::optional<qint64> best;
    for (const TrendSeries& series : m_drawing->model.series) {
        if (series.points.empty()) {
            continue;
        }
        const qint64 at = (last ? series.points.back() : series.points.front()).at;
        const qint64 own = ownPlace(m_axis.mode(), at, m_drawing->model.tanks[series.tank].flooded);
        best = best ? (last ? std::max(*best, own) : std::min(*best, own)) : own;
    }
    if (best) {
        bringIntoView(*best);
        setCursor(best);
    }
}

void TrendView::setStretchEnd(bool last)
{
    Stretch wanted = stretch();
    (last ? wanted.to : wanted.from) = cursor();
    if (wanted.from >= wanted.to) {
        // The other end gives way: as far as there is something on show.
        (last ? wanted.from : wanted.to) = last ? std::min(m_axis.from(), cursor()) : std::max(m_axis.to(), cursor());
    }
    setStretch(wanted);
}

std::optional<std::size_t> TrendView::panelAt(QPointF pos) const
{
    const auto& panels = layoutNow().panels;
    for (std::size_t i = 0; i < panels.size(); ++i) {
        if (panels[i].title.united(panels[i].plot).contains(pos)) {
            return i;
        }
    }
    return std::nullopt;
}

std::optional<qint64> TrendView::placeAt(QPointF pos) const
{
    for (const TrendColumn& column : layoutNow().columns) {
        const AxisView& axis = column.axis;
        if (pos.x() >= axis.left - 1 && pos.x() <= axis.right() + 1) {
            return axis.at(std::clamp(pos.x(), axis.left, axis.right()), 0);
        }
    }
    return std::nullopt;
}

std::optional<TrendView::Hit> TrendView::readingAt(QPointF pos) const
{
    const auto panel = panelAt(pos);
    if (!panel) {
        return std::nullopt;
    }
    const TrendPanelBox& box = layoutNow().panels[*panel];
    const AxisView& axis = layoutNow().axisOf(box);
    const double reach = m_theme.px(kReach);
    std::optional<Hit> best;
    double nearest = reach * reach;
    for (const std::size_t place : box.series) {
        const TrendSeries& series = m_drawing->model.series[place];
        const qint64 flooded = m_drawing->model.tanks[series.tank].flooded;
        const auto [first, last] =
            m_drawing->indexes[place].run(axis.at(pos.x() - reach, flooded), axis.at(pos.x() + reach, flooded));
        for (std::size_t i = first; i < last; ++i) {
            const QPointF off = QPointF(axis.x(series.points[i].at, flooded), box.y(series.points[i].value)) - pos;
            const double distance = off.x() * off.x() + off.y() * off.y();
            if (distance < nearest) {
                nearest = distance;
                best = Hit{place, i};
            }
        }
    }
    return best;
}

QString TrendView::eventSentenceAt(QPointF pos) const
{
    QStringList sentences;
    for (const TrendEventRow& row : layoutNow().events) {
        if (!row.row.contains(pos)) {
            continue;
        }
        const facade::TrendTank& tank = m_drawing->model.tanks[row.tank];
        for (const facade::LaneEvent& event : tank.events) {
            const double x = layoutNow().columns[row.column].axis.x(event.at, tank.flooded);
            if (std::abs(x - pos.x()) <= m_theme.px(kReach)) {
                sentences << event.sentence;
            }
        }
    }
    return sentences.join(u'\n');
}

void TrendView::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) {
        return;
    }
    if (const auto panel = panelAt(event->position()); panel && static_cast<int>(*panel) != m_part) {
        m_part = static_cast<int>(*panel);
        emit panelChanged();
    }
    m_dragFrom = placeAt(event->position());
    if (m_dragFrom && (event->modifiers() & Qt::ShiftModifier) == 0) {
        setCursor(m_dragFrom);
    }
}

void TrendView::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_dragFrom || (event->buttons() & Qt::LeftButton) == 0) {
        return;
    }
    const auto own = placeAt(event->position());
    if (!own) {
        return;
    }
    if ((event->modifiers() & Qt::ShiftModifier) != 0) {
        setStretch(Stretch{std::min(*own, *m_dragFrom), std::max(*own, *m_dragFrom)});
    } else {
        setCursor(own);
    }
}

void TrendView::mouseReleaseEvent(QMouseEvent*)
{
    m_dragFrom.reset();
}

void TrendView::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (const auto hit = readingAt(event->position())) {
        const record::ReadingId reading = m_drawing->model.series[hit->series].readings[hit->point];
        if (reading) {
            emit readingOpenWanted(reading);
        }
    }
}

void TrendView::wheelEvent(QWheelEvent* event)
{
    const QPoint turned = event->angleDelta();
    if ((event->modifiers() & Qt::ControlModifier) != 0) {
        const qint64 under = placeAt(event->position()).value_or(cursor());
        const double share =
            static_cast<double>(under - m_axis.from()) / static_cast<double>(m_axis.to() - m_axis.from());
        m_axis.zoom(std::clamp(share, 0.0, 1.0), std::pow(kZoomStep, turned.y() / 120.0));
        event->accept();
        return;
    }
    const bool sideways = std::abs(turned.x()) > std::abs(turned.y());
    const bool scrolls = parentWidget() != nullptr && height() > parentWidget()->height();
    if (!sideways && scrolls && (event->modifiers() & Qt::ShiftModifier) == 0) {
        event->ignore(); // the page scrolls
        return;
    }
    m_axis.pan(-(sideways ? turned.x() : turned.y()) / 120.0 * kPanPerNotch);
    event->accept();
}

void TrendView::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    announcePart();
    update();
}

void TrendView::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

bool TrendView::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        QString text;
        if (const auto hit = readingAt(help->pos())) {
            const TrendSeries& series = m_drawing->model.series[hit->series];
            text = pointSentence(m_drawing->model, series, hit->point, m_axis.zone());
        } else {
            text = eventSentenceAt(help->pos());
        }
        text.isEmpty() ? QToolTip::hideText() : QToolTip::showText(help->globalPos(), text, this);
        return true;
    }
    return ChartWidget::event(event);
}

} // namespace littoral::ui
