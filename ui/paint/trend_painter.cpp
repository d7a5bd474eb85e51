// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/trend_painter.h"

#include "core/wording/numbers.h"
#include "ui/paint/glyphs.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr int kLeft = Qt::AlignVCenter | Qt::AlignLeft;
constexpr int kRight = Qt::AlignVCenter | Qt::AlignRight;

QString words(const char* text)
{
    return QCoreApplication::translate("TrendPainter", text);
}

QDate dayOf(const AxisView& axis, qint64 at)
{
    return QDateTime::fromMSecsSinceEpoch(at, axis.zone).date();
}

/// "day 10" or "Thu 19 Nov".
QString placeText(const AxisView& axis, qint64 own)
{
    if (axis.mode == AxisMode::Age) {
        const auto days = static_cast<qint64>(std::floor(static_cast<double>(own) / static_cast<double>(kDayMs)));
        return words("day %1").arg(days);
    }
    return wording::weekdayText(dayOf(axis, own), dayOf(axis, axis.now));
}

} // namespace

double trendLabelRoom(const LaneMetrics& metrics)
{
    return figuresWidth(metrics.small, QStringLiteral("30 Nov 2026")) + metrics.px(14);
}

void drawTankSample(QPainter& painter, const QRectF& box, const TankStyle& style, const QColor& ink,
                    const QColor& ground)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(ink, style.width, Qt::SolidLine, Qt::FlatCap);
    if (!style.dash.isEmpty()) {
        pen.setDashPattern(style.dash);
    }
    painter.setPen(pen);
    painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
    drawMark(painter, Mark::Circle, box.center(), style.mark, ink, ground, style.open);
    painter.restore();
}

void TrendPainter::paint(QPainter& painter, const TimeAxis& axis) const
{
    painter.save();
    // All columns are as wide as the first, so one set of ticks does for all panels.
    const AxisTicks ticks = axis.ticks(m_layout.columns.front().axis.width, trendLabelRoom(m_metrics));
    paintHeadings(painter);
    for (const TrendPanelBox& box : m_layout.panels) {
        paintTitle(painter, box);
        painter.save();
        paintGround(painter, box, ticks);
        painter.setClipRect(box.plot.adjusted(-1, 0, 1, 1), Qt::IntersectClip);
        for (const std::size_t series : box.series) {
            paintExpected(painter, box, series);
            paintForecast(painter, box, series);
        }
        // The selected tank last: it lies on top.
        std::vector<std::size_t> order = box.series;
        std::ranges::stable_partition(order, [&](std::size_t s) { return m_model.series[s].tank != m_selected; });
        painter.restore();
        painter.save();
        painter.setClipRect(box.plot.adjusted(-1, -m_metrics.px(5), 1, m_metrics.px(5)), Qt::IntersectClip);
        paintClear(painter, box);
        for (const std::size_t series : order) {
            paintLine(painter, box, series);
            paintSteps(painter, box, series);
            paintMarks(painter, box, series);
        }
        painter.restore();
        paintNames(painter, box);
    }
    paintEvents(painter);
    for (const TrendColumn& column : m_layout.columns) {
        paintAxis(painter, column, ticks);
    }
    paintNowLines(painter);
    painter.restore();
}

void TrendPainter::paintGround(QPainter& painter, const TrendPanelBox& box, const AxisTicks& ticks) const
{
    const AxisView& view = m_layout.axisOf(box);
    const double left = box.plot.left();
    const double right = box.plot.right();
    // What is to come has its own ground where one now holds for the whole panel.
    if (view.mode == AxisMode::Calendar || box.tank) {
        const qint64 flooded = box.tank ? m_model.tanks[*box.tank].flooded : 0;
        const bool over = box.tank && m_model.tanks[*box.tank].ended.has_value();
        const double now = std::clamp(view.x(view.now, flooded), left, right);
        if (!over) {
            painter.fillRect(QRectF(now, box.plot.top(), right - now, box.plot.height()), m_theme[Token::Future]);
        }
        if (box.tank && view.x(flooded, flooded) > left + 1.0) {
            const double start = std::min(view.x(flooded, flooded), right);
            painter.fillRect(QRectF(left, box.plot.top(), start - left, box.plot.height()),
                             QBrush(m_theme[Token::Rule], Qt::BDiagPattern));
        }
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    for (const AxisTick& tick : ticks.lower) {
        const double at = std::round(view.x(tick.at, 0));
        if (at > left && at < right) {
            painter.drawLine(QPointF(at, box.plot.top()), QPointF(at, box.plot.bottom()));
        }
    }
    painter.setFont(m_metrics.tick);
    for (const FanTick& tick : box.ticks) {
        painter.setPen(QPen(m_theme[Token::Rule], 1));
        painter.drawLine(QPointF(left, std::round(tick.y)), QPointF(right, std::round(tick.y)));
        painter.setPen(m_theme[Token::Ink3]);
        const double room = figuresWidth(m_metrics.tick, tick.text);
        drawFigures(painter,
                    QRectF(left - m_metrics.px(7) - room, tick.y - m_metrics.tickLine / 2, room, m_metrics.tickLine),
                    kRight, tick.text);
    }
    paintTargets(painter, box);
    painter.setPen(QPen(m_theme[Token::Rule2], 1));
    painter.drawLine(QPointF(left, std::round(box.plot.bottom())), QPointF(right, std::round(box.plot.bottom())));
    if (box.series.empty()) {
        painter.setFont(m_metrics.small);
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(painter, box.plot, Qt::AlignCenter,
                    elidedFigures(m_metrics.small, words("no readings of this kind yet"), box.plot.width()));
    }
}

void TrendPainter::paintTitle(QPainter& painter, const TrendPanelBox& box) const
{
    const facade::TrendParameter& parameter = m_model.parameters[box.parameter];
    const double mark = m_metrics.px(kMarkSize);
    double at = box.title.left();
    drawParameterMark(painter, m_theme, parameter.key, {at + mark / 2 + 1, box.title.center().y()}, mark,
                      m_theme[Token::Panel]);
    at += mark + m_metrics.px(8);
    const bool named = box.tank && m_options.arrangement == TrendArrangement::Stacked;
    const QString title = named ? words("%1, %2").arg(parameter.name, m_model.tanks[*box.tank].name) : parameter.name;
    painter.setPen(m_theme[Token::Ink]);
    painter.setFont(m_metrics.strong);
    // The limits' words stand at the right where they leave the title its room; a narrow panel has only its title.
    const double whole = box.title.right() - at;
    const QString limits = limitWords(box);
    const double wanted = limits.isEmpty() ? 0.0 : figuresWidth(m_metrics.small, limits) + m_metrics.px(10);
    const bool both = figuresWidth(m_metrics.strong, title) + wanted <= whole;
    const double room = both ? whole - wanted : whole;
    const QString shown = elidedFigures(m_metrics.strong, title, room);
    drawFigures(painter, QRectF(at, box.title.top(), room, box.title.height()), kLeft, shown);
    at += figuresWidth(m_metrics.strong, shown) + m_metrics.px(8);
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    const double unit = figuresWidth(m_metrics.small, parameter.unitLabel);
    if (at + unit <= box.title.right() - (both ? wanted : 0.0) && parameter.unitLabel != parameter.name) {
        drawFigures(painter, QRectF(at, box.title.top(), unit, box.title.height()), kLeft, parameter.unitLabel);
    }
    if (both) {
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, box.title, kRight, limits);
    }
}

void TrendPainter::paintHeadings(QPainter& painter) const
{
    for (const TrendColumn& column : m_layout.columns) {
        if (!column.tank) {
            continue;
        }
        const TankStyle style = tankStyle(m_model, *column.tank, m_selected);
        const double sample = m_metrics.px(26);
        drawTankSample(painter, QRectF(column.heading.left(), column.heading.top(), sample, column.heading.height()),
                       style, m_theme[Token::Ink2], m_theme[Token::Panel]);
        painter.setFont(m_metrics.name);
        painter.setPen(m_theme[Token::Ink]);
        const QRectF rest = column.heading.adjusted(sample + m_metrics.px(8), 0, 0, 0);
        drawFigures(painter, rest, kLeft,
                    elidedFigures(m_metrics.name, m_model.tanks[*column.tank].name, rest.width()));
    }
}

void TrendPainter::paintNowLines(QPainter& painter) const
{
    const double bottom = m_layout.columns.front().axisRow.top();
    if (m_layout.columns.front().axis.mode == AxisMode::Calendar) {
        paintCalendarNow(painter);
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const TrendColumn& column : m_layout.columns) {
        for (std::size_t tank = 0; tank < m_model.tanks.size(); ++tank) {
            const bool here = !column.tank || *column.tank == tank;
            const double at = std::round(column.axis.x(column.axis.now, m_model.tanks[tank].flooded));
            if (!here || m_model.tanks[tank].ended || at < column.axis.left || at > column.axis.right()) {
                continue;
            }
            QPen pen(m_theme[Token::Ink2], 1);
            pen.setDashPattern({1, 3});
            painter.setPen(pen);
            painter.drawLine(QPointF(at, m_layout.plotsTop), QPointF(at, bottom));
            const double side = m_metrics.px(4);
            const QPointF triangle[] = {
                {at - side, bottom - side * 1.4}, {at + side, bottom - side * 1.4}, {at, bottom}};
            painter.setPen(Qt::NoPen);
            painter.setBrush(m_theme[Token::Ink]);
            painter.drawPolygon(triangle, 3);
        }
    }
    paintNowNames(painter);
}

void TrendPainter::paintNowNames(QPainter& painter) const
{
    painter.setFont(m_metrics.small);
    for (const TrendColumn& column : m_layout.columns) {
        std::vector<QRectF> taken;
        for (std::size_t tank = 0; tank < m_model.tanks.size(); ++tank) {
            const double at = std::round(column.axis.x(column.axis.now, m_model.tanks[tank].flooded));
            const bool here = !column.tank || *column.tank == tank;
            if (!here || m_model.tanks[tank].ended || at < column.axis.left || at > column.axis.right()) {
                continue;
            }
            const QString text = column.tank ? words("now") : words("%1 now").arg(m_model.tanks[tank].shortName);
            const double width = figuresWidth(m_metrics.small, text);
            const double gap = m_metrics.px(4);
            for (const double left : {at + gap, at - gap - width}) {
                const QRectF row(left, m_metrics.px(2), width, m_layout.flagHeight - m_metrics.px(2));
                const bool free = std::ranges::none_of(
                    taken, [&](const QRectF& other) { return other.adjusted(-gap, 0, gap, 0).intersects(row); });
                if (free && row.left() >= column.axis.left && row.right() <= column.axis.right()) {
                    painter.setPen(m_theme[Token::Ink2]);
                    drawFigures(painter, row, kLeft, text);
                    QPen pen(m_theme[Token::Ink2], 1);
                    pen.setDashPattern({1, 3});
                    painter.setPen(pen);
                    painter.drawLine(QPointF(at, row.top()), QPointF(at, m_layout.plotsTop));
                    taken.push_back(row);
                    break;
                }
            }
        }
    }
}

void TrendPainter::paintCalendarNow(QPainter& painter) const
{
    for (const TrendColumn& column : m_layout.columns) {
        const double at = std::round(column.axis.x(column.axis.now, 0));
        if (at < column.axis.left || at > column.axis.right()) {
            continue;
        }
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.fillRect(QRectF(at - 1, m_layout.flagHeight, 2, column.axisRow.top() - m_layout.flagHeight),
                         m_theme[Token::Ink]);
        const QDate today = dayOf(column.axis, column.axis.now);
        const QString text = wording::dateText(today, today);
        const double width = figuresWidth(m_metrics.smallStrong, text) + m_metrics.px(16);
        QRectF flag(at - width / 2, m_metrics.px(2), width, m_layout.flagHeight - m_metrics.px(2));
        flag.moveLeft(
            std::clamp(flag.left(), column.axis.left, std::max(column.axis.left, column.axis.right() - width)));
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme[Token::Ink]);
        painter.drawRoundedRect(flag, 2, 2);
        painter.setFont(m_metrics.smallStrong);
        painter.setPen(m_theme[Token::Panel]);
        drawFigures(painter, flag, Qt::AlignCenter, text);
    }
}

void TrendPainter::paintAxis(QPainter& painter, const TrendColumn& column, const AxisTicks& ticks) const
{
    const QRectF& row = column.axisRow;
    const AxisView& view = column.axis;
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Ink2], 1));
    painter.drawLine(QPointF(view.left, row.top()), QPointF(view.right(), row.top()));
    const auto tickAt = [&](const AxisTick& tick, double length) {
        const double at = std::round(view.x(tick.at, 0));
        const bool inside = at >= view.left && at <= view.right();
        if (inside) {
            painter.setPen(QPen(m_theme[Token::Ink2], 1));
            painter.drawLine(QPointF(at, row.top()), QPointF(at, row.top() + m_metrics.px(length)));
        }
        return inside;
    };
    for (const AxisTick& tick : ticks.minor) {
        tickAt(tick, 4);
    }
    painter.setFont(m_metrics.small);
    double freeFrom = view.left;
    for (const AxisTick& tick : ticks.lower.empty() ? ticks.upper : ticks.lower) {
        if (!tickAt(tick, 6)) {
            continue;
        }
        const bool age = view.mode == AxisMode::Age;
        const QString text = age ? (tick.at == 0 ? words("flooded") : tick.label)
                                 : wording::dateText(dayOf(view, tick.at), dayOf(view, view.now));
        const double width = figuresWidth(m_metrics.small, text);
        const double left = std::clamp(std::round(view.x(tick.at, 0)) - width / 2, view.left,
                                       std::max(view.left, view.right() - width));
        if (left < freeFrom) {
            continue;
        }
        freeFrom = left + width + m_metrics.px(8);
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, QRectF(left, row.top() + m_metrics.px(7), width, m_metrics.smallLine), kLeft, text);
    }
}

void TrendPainter::paintSpan(QPainter& painter, qint64 from, qint64 to) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const TrendColumn& column : m_layout.columns) {
        const double left = std::clamp(column.axis.x(from, 0), column.axis.left, column.axis.right());
        const double right = std::clamp(column.axis.x(to, 0), column.axis.left, column.axis.right());
        if (right <= left) {
            continue;
        }
        const double y = column.axisRow.top();
        const double drop = m_metrics.px(7);
        painter.fillRect(QRectF(left, y - 1, right - left, 3), m_theme[Token::Accent]);
        painter.fillRect(QRectF(left, y - 1, 2, drop), m_theme[Token::Accent]);
        painter.fillRect(QRectF(right - 2, y - 1, 2, drop), m_theme[Token::Accent]);
    }
    painter.restore();
}

void TrendPainter::paintCursor(QPainter& painter, qint64 own) const
{
    painter.save();
    for (const TrendColumn& column : m_layout.columns) {
        const double at = std::round(column.axis.x(own, 0));
        if (at < column.axis.left || at > column.axis.right()) {
            continue;
        }
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.fillRect(QRectF(at - 1, m_layout.plotsTop, 2, column.axisRow.top() - m_layout.plotsTop),
                         m_theme[Token::Accent]);
        const QString text = placeText(column.axis, own);
        const double width = figuresWidth(m_metrics.smallStrong, text) + m_metrics.px(14);
        QRectF flag(at - width / 2, column.axisRow.top() + m_metrics.px(4), width,
                    m_metrics.smallLine + m_metrics.px(6));
        flag.moveLeft(
            std::clamp(flag.left(), column.axis.left, std::max(column.axis.left, column.axis.right() - width)));
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme[Token::Accent]);
        painter.drawRoundedRect(flag, 3, 3);
        painter.setFont(m_metrics.smallStrong);
        painter.setPen(m_theme[Token::OnAccent]);
        drawFigures(painter, flag, Qt::AlignCenter, text);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    for (const TrendPanelBox& box : m_layout.panels) {
        for (const std::size_t place : box.series) {
            const facade::TrendSeries& series = m_model.series[place];
            const AxisView& view = m_layout.axisOf(box);
            const qint64 at = instantOf(view.mode, own, m_model.tanks[series.tank].flooded);
            if (const auto near = series.nearest(at, kDayMs / 2)) {
                const QPointF mark(x(box, place, series.points[*near].at), box.y(series.points[*near].value));
                if (box.plot.adjusted(-2, -2, 2, 2).contains(mark)) {
                    painter.setPen(QPen(m_theme[Token::Accent], 1.6));
                    painter.drawEllipse(mark, m_metrics.px(7), m_metrics.px(7));
                }
            }
        }
    }
    painter.restore();
}

void TrendPainter::paintCurrent(QPainter& painter, std::size_t panel) const
{
    if (panel >= m_layout.panels.size()) {
        return;
    }
    const TrendPanelBox& box = m_layout.panels[panel];
    const double x = box.title.left() - m_metrics.px(6);
    painter.fillRect(QRectF(std::max(3.0, x - m_metrics.px(3)), box.title.top() + 2, 3, box.title.height() - 4),
                     m_theme[Token::Accent]);
}

} // namespace littoral::ui
