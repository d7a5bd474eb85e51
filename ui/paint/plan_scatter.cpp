// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/plan_scatter.h"

#include "core/wording/numbers.h"
#include "ui/theme/figures.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr double kRing = 4.0;     // radius of an unlettered plan, px at scale 1
constexpr double kLettered = 9.5; // radius of a lettered one

struct Rows
{
    explicit Rows(const LaneMetrics& metrics)
        : top(metrics.smallLine + metrics.px(10))
        , bottom(metrics.tickLine + metrics.smallLine + metrics.px(12))
    {
    }
    double top, bottom;
};

void cross(QPainter& painter, QPointF at, double reach)
{
    painter.drawLine(at + QPointF(-reach, -reach), at + QPointF(reach, reach));
    painter.drawLine(at + QPointF(-reach, reach), at + QPointF(reach, -reach));
}

void paintFrame(QPainter& painter, const Theme& theme, const LaneMetrics& metrics, const ScatterModel& model,
                const ScatterLayout& layout)
{
    const QRectF& plot = layout.plot;
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(metrics.tick);
    for (const double tick : layout.y.ticks) {
        const double y = std::round(layout.y.y(tick, plot.top(), plot.bottom()));
        painter.setPen(QPen(theme[tick == 0.0 ? Token::Rule2 : Token::Rule], 1));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        painter.setPen(theme[Token::Ink3]);
        drawFigures(painter, QRectF(0, y - metrics.tickLine / 2, plot.left() - metrics.px(6), metrics.tickLine),
                    Qt::AlignVCenter | Qt::AlignRight, wording::numberText(tick, layout.y.decimals));
    }
    for (const double tick : layout.x.ticks) {
        const double x = plot.left() + (tick - layout.x.low) / (layout.x.high - layout.x.low) * plot.width();
        painter.setPen(QPen(theme[Token::Rule2], 1));
        painter.drawLine(QPointF(std::round(x), plot.bottom()), QPointF(std::round(x), plot.bottom() + metrics.px(3)));
        const QString text = wording::numberText(tick, layout.x.decimals);
        const double width = figuresWidth(metrics.tick, text) + 4;
        painter.setPen(theme[Token::Ink3]);
        drawFigures(painter, QRectF(x - width / 2, plot.bottom() + metrics.px(4), width, metrics.tickLine),
                    Qt::AlignCenter, text);
    }
    painter.setFont(metrics.small);
    painter.setPen(theme[Token::Ink2]);
    drawFigures(painter,
                QRectF(plot.left(), plot.bottom() + metrics.px(6) + metrics.tickLine, plot.width(), metrics.smallLine),
                Qt::AlignCenter, elidedFigures(metrics.small, model.xTitle, plot.width()));
    drawFigures(painter, QRectF(metrics.px(2), metrics.px(3), plot.right(), metrics.smallLine),
                Qt::AlignVCenter | Qt::AlignLeft, elidedFigures(metrics.small, model.yTitle, plot.right()));
}

void paintLegend(QPainter& painter, const Theme& theme, const LaneMetrics& metrics, const ScatterModel& model,
                 const ScatterLayout& layout)
{
    const double mark = metrics.px(kRing);
    const double gap = metrics.px(6);
    painter.setFont(metrics.small);
    painter.setRenderHint(QPainter::Antialiasing);
    double right = layout.legend.right();
    const auto entry = [&](const QString& text, auto draw) {
        const double width = figuresWidth(metrics.small, text);
        painter.setPen(theme[Token::Ink2]);
        drawFigures(painter, QRectF(right - width, layout.legend.top(), width, layout.legend.height()),
                    Qt::AlignVCenter | Qt::AlignLeft, text);
        draw(QPointF(right - width - gap - mark, layout.legend.center().y()));
        right -= width + gap * 3 + mark * 2;
    };
    if (std::ranges::any_of(model.points, &ScatterPoint::late)) {
        entry(model.lateText, [&](QPointF at) {
            painter.setPen(QPen(theme[Token::Act], 1.8));
            cross(painter, at, mark * 0.85);
        });
    }
    entry(model.ringText, [&](QPointF at) {
        painter.setBrush(theme[Token::Panel]);
        painter.setPen(QPen(theme[Token::Ink2], 1.3));
        painter.drawEllipse(at, mark, mark);
    });
}

} // namespace

std::optional<std::size_t> ScatterLayout::hit(QPointF pos, double reach) const
{
    std::optional<std::size_t> best;
    double nearest = reach * reach;
    for (std::size_t i = 0; i < at.size(); ++i) {
        const QPointF off = at[i] - pos;
        const double distance = off.x() * off.x() + off.y() * off.y();
        if (distance <= nearest) {
            nearest = distance;
            best = i;
        }
    }
    return best;
}

double leastScatterHeight(const LaneMetrics& metrics)
{
    const Rows rows(metrics);
    return std::ceil(rows.top + rows.bottom + metrics.px(104) + metrics.smallLine);
}

ScatterLayout layOutScatter(const ScatterModel& model, const LaneMetrics& metrics, const QRectF& box)
{
    const Rows rows(metrics);
    ScatterLayout made;
    const double left = figuresWidth(metrics.tick, QStringLiteral("0000")) + metrics.px(12);
    made.plot = box.adjusted(left, rows.top + metrics.smallLine, -metrics.px(14), -rows.bottom);
    made.legend = QRectF(box.left(), box.top() + metrics.px(3) + metrics.smallLine, box.width() - metrics.px(8),
                         metrics.smallLine);
    double litres = 1.0;
    double hours = 1.0;
    for (const ScatterPoint& point : model.points) {
        litres = std::max(litres, point.litres);
        hours = std::max(hours, point.hours);
    }
    made.x = niceScale(0.0, litres, 6);
    made.y = niceScale(0.0, hours, 5);
    for (const ScatterPoint& point : model.points) {
        made.at.emplace_back(made.plot.left() +
                                 (point.litres - made.x.low) / (made.x.high - made.x.low) * made.plot.width(),
                             made.y.y(point.hours, made.plot.top(), made.plot.bottom()));
    }
    return made;
}

void paintScatter(QPainter& painter, const Theme& theme, const LaneMetrics& metrics, const ScatterModel& model,
                  const ScatterLayout& layout)
{
    painter.save();
    paintFrame(painter, theme, metrics, model, layout);
    paintLegend(painter, theme, metrics, model, layout);
    painter.setRenderHint(QPainter::Antialiasing);
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < model.points.size(); ++i) {
        if (model.points[i].frontier) {
            order.push_back(i);
        }
    }
    std::ranges::sort(order, {}, [&](std::size_t i) { return model.points[i].litres; });
    QPolygonF line;
    for (const std::size_t i : order) {
        line << layout.at[i];
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme[Token::Accent], 1.3));
    painter.drawPolyline(line);
    const double ring = metrics.px(kRing);
    for (std::size_t i = 0; i < model.points.size(); ++i) {
        const ScatterPoint& point = model.points[i];
        if (!point.letter.isEmpty()) {
            continue;
        }
        if (point.late) {
            painter.setPen(QPen(theme[Token::Act], 1.8));
            cross(painter, layout.at[i], ring * 0.85);
        } else {
            painter.setBrush(theme[Token::Panel]);
            painter.setPen(QPen(theme[Token::Ink2], 1.2));
            painter.drawEllipse(layout.at[i], ring, ring);
        }
    }
    painter.setFont(metrics.smallStrong);
    const double radius = metrics.px(kLettered);
    const auto letter = [&](std::size_t i) {
        const ScatterPoint& point = model.points[i];
        const bool chosen = model.selected == i;
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(theme[chosen ? Token::Accent : Token::Panel]);
        painter.setPen(QPen(theme[chosen ? Token::Accent : point.late ? Token::Act : Token::Ink], 1.5));
        painter.drawEllipse(layout.at[i], radius, radius);
        painter.setPen(theme[chosen ? Token::OnAccent : Token::Ink]);
        drawFigures(painter, QRectF(layout.at[i].x() - radius, layout.at[i].y() - radius, 2 * radius, 2 * radius),
                    Qt::AlignCenter, point.letter);
        if (point.late) {
            // The letter hides the mark, so the mark sits at its shoulder.
            painter.setPen(QPen(theme[Token::Act], 1.8));
            cross(painter, layout.at[i] + QPointF(radius, -radius), ring * 0.7);
        }
    };
    for (std::size_t i = 0; i < model.points.size(); ++i) {
        if (!model.points[i].letter.isEmpty() && model.selected != i) {
            letter(i);
        }
    }
    if (model.selected && *model.selected < model.points.size() && !model.points[*model.selected].letter.isEmpty()) {
        letter(*model.selected);
    }
    painter.restore();
}

} // namespace littoral::ui
