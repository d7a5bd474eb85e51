// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/strip_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {
constexpr double kPanStep = 0.1;
constexpr double kZoomStep = 1.25;
} // namespace

StripView::StripView(Theme& theme, TimeAxis& axis, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
    , m_axis(axis)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Strip: readings and events around the window; Left and Right walk through them"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&axis, &TimeAxis::rangeChanged, this, &StripView::forget);
    connect(&axis, &TimeAxis::modeChanged, this, &StripView::forget);
    connect(&axis, &TimeAxis::nowChanged, this, &StripView::forget);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        forget();
    });
}

void StripView::forget()
{
    m_laidOut = false;
    m_current = std::min(m_current, partCount() - 1);
    partsChanged();
    update();
}

void StripView::setStrip(const facade::CaseStrip& strip)
{
    m_whole = strip;
    cut();
}

void StripView::setCompact(bool compact)
{
    if (compact != m_compact) {
        m_compact = compact;
        cut();
    }
}

void StripView::cut()
{
    m_strip = m_whole;
    if (m_compact && m_strip.series.size() > 1) {
        m_strip.series.resize(1);
    }
    updateGeometry();
    forget();
}

void StripView::setMarked(const std::vector<facade::RecordRef>& marked)
{
    if (m_marked != marked) {
        m_marked = marked;
        update();
    }
}

void StripView::showWindow(bool always)
{
    if (m_strip.onset <= m_strip.from) {
        return;
    }
    const qint64 shift = m_axis.mode() == AxisMode::Age ? m_strip.flooded : 0;
    const qint64 from = m_strip.from - shift;
    const qint64 to = m_strip.onset - shift;
    if (!always && from >= m_axis.from() && to <= m_axis.to()) {
        return;
    }
    const qint64 last = std::max(to, std::min(m_strip.ended.value_or(m_axis.now()), m_axis.now()) - shift);
    const qint64 most = (to - from) * 3;
    m_axis.setRange(from - 5 * kDayMs, std::min(last + 12 * kDayMs, to + most));
}

const StripLayout& StripView::layoutNow() const
{
    if (!m_laidOut) {
        m_layout = layOutStrip(m_strip, LaneMetrics(m_theme), m_axis.view(0, 1), width());
        m_laidOut = true;
    }
    return m_layout;
}

QString StripView::partSentence(int part) const
{
    return part >= 0 && part < partCount() ? layoutNow().parts[static_cast<std::size_t>(part)].sentence : QString();
}

QRect StripView::partRect(int part) const
{
    return part >= 0 && part < partCount()
               ? layoutNow().parts[static_cast<std::size_t>(part)].box.toAlignedRect().adjusted(-4, -4, 4, 4)
               : QRect();
}

QSize StripView::sizeHint() const
{
    return {m_theme.px(600), static_cast<int>(stripHeight(m_strip, LaneMetrics(m_theme)))};
}

QSize StripView::minimumSizeHint() const
{
    return {m_theme.px(260), sizeHint().height()};
}

void StripView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    const LaneMetrics metrics(m_theme);
    const StripPainter strip(m_theme, metrics, m_strip, layoutNow());
    strip.paint(painter, m_axis);
    strip.paintMarked(painter, m_marked);
    if (hasFocus() && m_current >= 0) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme[Token::Accent], 2));
        painter.drawRoundedRect(QRectF(partRect(m_current)), 4, 4);
    }
    paintFocusRing(painter, m_theme[Token::Accent]);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_theme[Token::Rule]);
}

void StripView::resizeEvent(QResizeEvent* event)
{
    ChartWidget::resizeEvent(event);
    forget();
}

void StripView::go(int part)
{
    m_current = std::clamp(part, -1, partCount() - 1);
    if (m_current >= 0) {
        const StripPart& at = layoutNow().parts[static_cast<std::size_t>(m_current)];
        emit reached(at.ref, at.sentence);
    }
    announcePart();
    update();
}

int StripView::partAt(const QPointF& at) const
{
    int best = -1;
    double nearest = 1e9;
    for (int i = 0; i < partCount(); ++i) {
        const QRectF box = layoutNow().parts[static_cast<std::size_t>(i)].box;
        const double grow = std::max(0.0, (24.0 - std::min(box.width(), box.height())) / 2);
        const double distance = std::hypot(at.x() - box.center().x(), at.y() - box.center().y());
        if (box.adjusted(-grow, -grow, grow, grow).contains(at) && distance < nearest) {
            nearest = distance;
            best = i;
        }
    }
    return best;
}

void StripView::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Right:
        go(m_current + 1);
        return;
    case Qt::Key_Left:
        go(std::max(0, m_current < 0 ? partCount() - 1 : m_current - 1));
        return;
    case Qt::Key_Home:
        go(0);
        return;
    case Qt::Key_End:
        go(partCount() - 1);
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        m_axis.zoom(0.5, 1 / kZoomStep);
        return;
    case Qt::Key_Minus:
        m_axis.zoom(0.5, kZoomStep);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_current >= 0) {
            emit opened(layoutNow().parts[static_cast<std::size_t>(m_current)].ref);
        }
        return;
    default:
        ChartWidget::keyPressEvent(event);
    }
}

void StripView::wheelEvent(QWheelEvent* event)
{
    const double turns = event->angleDelta().y() / 120.0;
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        const AxisView& view = layoutNow().axis;
        m_axis.zoom((event->position().x() - view.left) / view.width, std::pow(kZoomStep, -turns));
    } else {
        m_axis.pan(-turns * kPanStep);
    }
    event->accept();
}

void StripView::mousePressEvent(QMouseEvent* event)
{
    m_drag = event->position().x();
    m_dragged = false;
}

void StripView::mouseMoveEvent(QMouseEvent* event)
{
    const double by = m_drag ? event->position().x() - *m_drag : 0.0;
    if (m_drag && (m_dragged || std::abs(by) > 4)) {
        m_dragged = true;
        m_axis.pan(-by / layoutNow().axis.width);
        m_drag = event->position().x();
    }
}

void StripView::mouseReleaseEvent(QMouseEvent* event)
{
    if (m_drag && !m_dragged) {
        if (const int part = partAt(event->position()); part >= 0) {
            go(part);
        }
    }
    m_drag.reset();
}

void StripView::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (const int part = partAt(event->position()); part >= 0) {
        emit opened(layoutNow().parts[static_cast<std::size_t>(part)].ref);
    }
}

void StripView::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    update();
}

void StripView::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

} // namespace littoral::ui
