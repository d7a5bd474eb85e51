// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/trends/trend_brush.h"

#include "ui/models/trend_words.h"
#include "ui/theme/figures.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::ui {

namespace {

constexpr double kStep = 0.1;      // of the window, for a press of an arrow key
constexpr double kGripReach = 8.0; // px either side of an end
constexpr qint64 kLeastWindow = kDayMs;

} // namespace

TrendBrush::TrendBrush(const Theme& theme, TimeAxis& axis, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_axis(axis)
    , m_drawing(std::make_shared<const TrendDrawing>())
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Part of the record on show"));
    setMouseTracking(true);
    for (const auto signal : {&TimeAxis::rangeChanged, &TimeAxis::modeChanged, &TimeAxis::nowChanged}) {
        connect(&axis, signal, this, &TrendBrush::forget);
    }
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        forget();
    });
}

void TrendBrush::setDrawing(std::shared_ptr<const TrendDrawing> drawing, std::size_t parameter)
{
    m_drawing = std::move(drawing);
    m_parameter = parameter;
    forget();
}

void TrendBrush::forget()
{
    m_still.forget();
    describe();
    update();
}

void TrendBrush::describe()
{
    const AxisView all = whole();
    setAccessibleDescription(tr("The charts show %1 to %2, of %3 to %4.")
                                 .arg(ownPlaceText(all, m_axis.from()), ownPlaceText(all, m_axis.to()),
                                      ownPlaceText(all, all.from), ownPlaceText(all, all.to)));
}

AxisView TrendBrush::whole() const
{
    AxisView view = m_axis.view(track().left(), track().width());
    const bool age = view.mode == AxisMode::Age;
    qint64 from = std::min(age ? 0 : m_axis.now() - 7 * kDayMs, m_axis.from());
    qint64 to = std::max(age ? 28 * kDayMs : m_axis.now() + 7 * kDayMs, m_axis.to());
    for (const facade::TrendSeries& series : m_drawing->model.series) {
        const qint64 flooded = m_drawing->model.tanks[series.tank].flooded;
        if (!series.points.empty()) {
            from = std::min(from, ownPlace(view.mode, series.points.front().at, flooded));
            to = std::max(to, ownPlace(view.mode, series.points.back().at, flooded));
        }
    }
    view.from = from;
    view.to = std::max(to, from + kDayMs);
    return view;
}

QRectF TrendBrush::track() const
{
    const double side = m_theme.px(8);
    return QRectF(rect()).adjusted(side, m_theme.px(5), -side, -m_theme.px(5));
}

QRectF TrendBrush::window() const
{
    const AxisView all = whole();
    const QRectF area = track();
    const double left = std::clamp(all.x(m_axis.from(), 0), area.left(), area.right());
    const double right = std::clamp(all.x(m_axis.to(), 0), area.left(), area.right());
    return {left, area.top(), std::max(2.0, right - left), area.height()};
}

QSize TrendBrush::sizeHint() const
{
    return {m_theme.px(400), m_theme.px(52)};
}

QSize TrendBrush::minimumSizeHint() const
{
    return {m_theme.px(160), m_theme.px(52)};
}

void TrendBrush::paintLines(QPainter& painter) const
{
    const facade::TrendModel& model = m_drawing->model;
    if (m_parameter >= model.parameters.size()) {
        return;
    }
    const AxisView all = whole();
    const QRectF area = track().adjusted(0, 5, 0, -5);
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (std::size_t i = 0; i < model.series.size(); ++i) {
        const facade::TrendSeries& series = model.series[i];
        if (series.parameter == m_parameter && !series.points.empty()) {
            const Extremes found = m_drawing->indexes[i].extremes(0, series.points.size());
            low = std::min(low, series.points[found.lowest].value);
            high = std::max(high, series.points[found.highest].value);
        }
    }
    const double range = std::max(high - low, 1e-9);
    const QColor hue = m_theme.tokens().parameter(model.parameters[m_parameter].key);
    for (std::size_t i = 0; i < model.series.size(); ++i) {
        const facade::TrendSeries& series = model.series[i];
        if (series.parameter != m_parameter || series.points.empty()) {
            continue;
        }
        const qint64 flooded = model.tanks[series.tank].flooded;
        QPolygonF line;
        for (const std::size_t place : decimated(m_drawing->indexes[i], 0, series.points.size(), all, flooded)) {
            line << QPointF(all.x(series.points[place].at, flooded),
                            area.bottom() - (series.points[place].value - low) / range * area.height());
        }
        const bool dense = line.size() > static_cast<qsizetype>(area.width());
        painter.setRenderHint(QPainter::Antialiasing, !dense);
        QPen pen(hue, 1);
        if (model.tanks[series.tank].earlier && !dense) {
            pen.setDashPattern({3, 2});
        }
        painter.setPen(pen);
        painter.drawPolyline(line);
    }
}

void TrendBrush::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    m_still.paint(painter, size(), m_theme[Token::Panel], [&](QPainter& still) {
        still.fillRect(track(), m_theme[Token::Sunk]);
        still.fillRect(window(), m_theme[Token::Panel]);
        paintLines(still);
    });
    const QRectF box = window();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_theme[Token::Accent], 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme[Token::Accent]);
    const double width = m_theme.px(6);
    const double height = m_theme.px(20);
    for (const double x : {box.left(), box.right()}) {
        painter.drawRoundedRect(QRectF(x - width / 2, box.center().y() - height / 2, width, height), 2, 2);
    }
    // What lies outside the window, where there is room to say it.
    const AxisView all = whole();
    painter.setFont(m_theme.font(11));
    painter.setPen(m_theme[Token::Ink2]);
    const QRectF area = track();
    const auto say = [&](const QRectF& room, int flags, qint64 from, qint64 to) {
        const QString text = tr("%1 to %2").arg(ownPlaceText(all, from), ownPlaceText(all, to));
        if (figuresWidth(painter.font(), text) + m_theme.px(16) < room.width()) {
            QColor ground = m_theme[Token::Sunk];
            ground.setAlphaF(0.75F);
            const double wide = figuresWidth(painter.font(), text);
            const double left = (flags & Qt::AlignRight) != 0 ? room.right() - wide : room.left();
            const double line = QFontMetricsF(painter.font()).height();
            const QRectF words(left, room.center().y() - line / 2, wide, line);
            painter.fillRect(words, ground);
            drawFigures(painter, words, Qt::AlignVCenter | Qt::AlignLeft, text);
        }
    };
    const double gap = m_theme.px(9);
    say(QRectF(area.left() + gap, area.top(), box.left() - area.left() - 2 * gap, area.height()), Qt::AlignRight,
        all.from, m_axis.from());
    say(QRectF(box.right() + gap, area.top(), area.right() - box.right() - 2 * gap, area.height()), Qt::AlignLeft,
        m_axis.to(), all.to);
    if (hasFocus()) {
        painter.setPen(QPen(m_theme[Token::Accent], 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
    }
}

void TrendBrush::keyPressEvent(QKeyEvent* event)
{
    const auto step = static_cast<qint64>(kStep * static_cast<double>(m_axis.to() - m_axis.from()));
    const qint64 span = m_axis.to() - m_axis.from();
    const AxisView all = whole();
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right: {
        const qint64 by = event->key() == Qt::Key_Left ? -step : step;
        const bool right = (event->modifiers() & Qt::ShiftModifier) != 0;
        const bool left = (event->modifiers() & Qt::ControlModifier) != 0;
        const qint64 from = right ? m_axis.from() : m_axis.from() + by;
        const qint64 to = left ? m_axis.to() : m_axis.to() + by;
        if (to - from >= kLeastWindow) {
            m_axis.setRange(from, to);
        }
        return;
    }
    case Qt::Key_Home:
        m_axis.setRange(all.from, all.from + span);
        return;
    case Qt::Key_End:
        m_axis.setRange(all.to - span, all.to);
        return;
    default:
        event->ignore();
    }
}

void TrendBrush::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) {
        return;
    }
    const double x = event->position().x();
    const QRectF box = window();
    const double reach = m_theme.px(kGripReach);
    const bool atRight = std::abs(x - box.right()) <= reach;
    const bool atLeft = std::abs(x - box.left()) <= reach && !(atRight && x > box.center().x());
    if (!atLeft && !atRight && !box.contains(QPointF(x, box.center().y()))) {
        const AxisView all = whole();
        m_axis.centre(all.at(x, 0), 0.5);
    }
    m_drag = Drag{atLeft ? Grip::Left : atRight ? Grip::Right : Grip::Window, x, m_axis.from(), m_axis.to()};
}

void TrendBrush::mouseMoveEvent(QMouseEvent* event)
{
    const double x = event->position().x();
    if (!m_drag) {
        const QRectF box = window();
        const bool end = std::min(std::abs(x - box.left()), std::abs(x - box.right())) <= m_theme.px(kGripReach);
        setCursor(end ? Qt::SizeHorCursor : Qt::ArrowCursor);
        return;
    }
    const AxisView all = whole();
    const auto by = static_cast<qint64>((x - m_drag->x) / all.width * static_cast<double>(all.to - all.from));
    switch (m_drag->grip) {
    case Grip::Window:
        m_axis.setRange(m_drag->from + by, m_drag->to + by);
        break;
    case Grip::Left:
        m_axis.setRange(std::min(m_drag->from + by, m_drag->to - kLeastWindow), m_drag->to);
        break;
    case Grip::Right:
        m_axis.setRange(m_drag->from, std::max(m_drag->to + by, m_drag->from + kLeastWindow));
        break;
    }
}

void TrendBrush::mouseReleaseEvent(QMouseEvent*)
{
    m_drag.reset();
}

void TrendBrush::resizeEvent(QResizeEvent*)
{
    forget();
}

void TrendBrush::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
}

void TrendBrush::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace littoral::ui
