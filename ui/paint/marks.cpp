// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/marks.h"

#include <QPainter>
#include <QPainterPath>
#include <cmath>
#include <numbers>

namespace littoral::ui {

namespace {

QPolygonF regular(QPointF centre, double radius, int corners, double startDegrees)
{
    QPolygonF polygon;
    for (int i = 0; i < corners; ++i) {
        const double angle = (startDegrees + 360.0 * i / corners) * std::numbers::pi / 180.0;
        polygon << QPointF(centre.x() + radius * std::cos(angle), centre.y() + radius * std::sin(angle));
    }
    return polygon;
}

QPainterPath crossPath(QPointF centre, double reach, double thick, double degrees)
{
    QPainterPath upright;
    upright.setFillRule(Qt::WindingFill);
    upright.addRect(QRectF(-reach, -thick / 2, 2 * reach, thick));
    upright.addRect(QRectF(-thick / 2, -reach, thick, 2 * reach));
    QTransform turn;
    turn.translate(centre.x(), centre.y());
    turn.rotate(degrees);
    return turn.map(upright.simplified());
}

QPainterPath pathOf(Mark mark, QPointF c, double size)
{
    const double r = size / 2.0;
    QPainterPath path;
    switch (mark) {
    case Mark::Circle:
    case Mark::OpenCircle:
        path.addEllipse(c, r * 0.92, r * 0.92);
        break;
    case Mark::TriangleUp:
        path.addPolygon(QPolygonF{{c.x(), c.y() - r}, {c.x() + r, c.y() + r * 0.82}, {c.x() - r, c.y() + r * 0.82}});
        break;
    case Mark::TriangleDown:
        path.addPolygon(QPolygonF{{c.x(), c.y() + r}, {c.x() + r, c.y() - r * 0.82}, {c.x() - r, c.y() - r * 0.82}});
        break;
    case Mark::Square:
    case Mark::OpenSquare:
        path.addRect(QRectF(c.x() - r * 0.82, c.y() - r * 0.82, r * 1.64, r * 1.64));
        break;
    case Mark::Diamond:
    case Mark::OpenDiamond:
        path.addPolygon(regular(c, r * 1.1, 4, -90));
        break;
    case Mark::Hexagon:
        path.addPolygon(regular(c, r, 6, 0));
        break;
    case Mark::Pentagon:
        path.addPolygon(regular(c, r, 5, -90));
        break;
    case Mark::Plus:
        path = crossPath(c, r, size * 0.3, 0);
        break;
    case Mark::Cross:
        path = crossPath(c, r, size * 0.3, 45);
        break;
    case Mark::Bar:
        path.addRect(QRectF(c.x() - r, c.y() - size * 0.17, size, size * 0.34));
        break;
    case Mark::Dot:
        path.addEllipse(c, r * 0.6, r * 0.6);
        break;
    }
    path.closeSubpath();
    return path;
}

bool isOpen(Mark mark)
{
    return mark == Mark::OpenCircle || mark == Mark::OpenSquare || mark == Mark::OpenDiamond;
}

} // namespace

void drawMark(QPainter& painter, Mark mark, QPointF centre, double size, const QColor& hue, const QColor& ground,
              bool open)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (open || isOpen(mark)) {
        const double stroke = std::max(1.3, size * 0.18);
        const QPainterPath path = pathOf(mark, centre, size - stroke * 0.6);
        painter.strokePath(path, QPen(ground, stroke + 2.0));
        painter.setPen(QPen(hue, stroke));
        painter.setBrush(ground);
        painter.drawPath(path);
    } else {
        const QPainterPath path = pathOf(mark, centre, size);
        painter.strokePath(path, QPen(ground, 2.0));
        painter.fillPath(path, hue);
    }
    painter.restore();
}

void drawParameterMark(QPainter& painter, const Theme& theme, const QString& parameter, QPointF centre, double size,
                       const QColor& ground)
{
    drawMark(painter, Tokens::mark(parameter), centre, size, theme.tokens().parameter(parameter), ground);
}

void drawCensoredMark(QPainter& painter, Mark mark, QPointF centre, double size, const QColor& hue,
                      const QColor& ground, bool below)
{
    drawMark(painter, mark, centre, size, hue, ground);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double way = below ? 1.0 : -1.0;
    const double start = centre.y() + way * size * 0.7;
    const double end = start + way * size * 0.75;
    const double wing = size * 0.28;
    painter.setPen(QPen(hue, std::max(1.0, size * 0.16), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawLine(QPointF(centre.x(), start), QPointF(centre.x(), end));
    const QPointF head[] = {
        {centre.x() - wing, end - way * wing}, {centre.x(), end}, {centre.x() + wing, end - way * wing}};
    painter.drawPolyline(head, 3);
    painter.restore();
}

} // namespace littoral::ui
