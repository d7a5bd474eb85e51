// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/glyphs.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace littoral::ui {

namespace {

using facade::Glyph;
using facade::Status;

constexpr double kUnits = 14.0;

/// Painter set up so that the strokes below are written in 14 x 14 units.
class Pad final
{
public:
    Pad(QPainter& painter, const QRectF& box, const QColor& ink)
        : p(painter)
        , m_ink(ink)
    {
        p.save();
        p.setRenderHint(QPainter::Antialiasing);
        const double scale = std::min(box.width(), box.height()) / kUnits;
        p.translate(box.center());
        p.scale(scale, scale);
        p.translate(-kUnits / 2, -kUnits / 2);
        p.setPen(QPen(ink, 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        p.setBrush(Qt::NoBrush);
    }
    ~Pad() { p.restore(); }
    Pad(const Pad&) = delete;
    Pad& operator=(const Pad&) = delete;

    void line(double x1, double y1, double x2, double y2) { p.drawLine(QPointF(x1, y1), QPointF(x2, y2)); }
    void ring(double x, double y, double r) { p.drawEllipse(QPointF(x, y), r, r); }
    void dot(double x, double y, double r)
    {
        p.save();
        p.setPen(Qt::NoPen);
        p.setBrush(m_ink);
        p.drawEllipse(QPointF(x, y), r, r);
        p.restore();
    }
    void poly(const QPolygonF& points, bool closed = false) { closed ? p.drawPolygon(points) : p.drawPolyline(points); }
    void fill(const QPainterPath& path) { p.fillPath(path, m_ink); }

    QPainter& p;

private:
    QColor m_ink;
};

QPainterPath dropPath()
{
    QPainterPath path(QPointF(7, 1));
    path.cubicTo(9, 4, 11.2, 6.2, 11.2, 9);
    path.cubicTo(11.2, 11.4, 9.4, 13, 7, 13);
    path.cubicTo(4.6, 13, 2.8, 11.4, 2.8, 9);
    path.cubicTo(2.8, 6.2, 5, 4, 7, 1);
    return path;
}

void glass(Pad& pad, double fraction)
{
    pad.poly({{1.5, 2}, {1.5, 12.5}, {12.5, 12.5}, {12.5, 2}});
    const double height = 9.4 * std::clamp(fraction, 0.12, 1.0);
    QPainterPath water;
    water.addRect(QRectF(2.2, 12.2 - height, 9.6, height));
    pad.fill(water);
}

void dose(Pad& pad)
{
    const QPainterPath drop = dropPath();
    pad.p.drawPath(drop);
    QPainterPath lower;
    lower.addRect(QRectF(0, 8, 14, 6));
    pad.fill(drop.intersected(lower));
}

void trim(Pad& pad)
{
    pad.line(3.6, 1.5, 9.2, 9.4);
    pad.line(10.4, 1.5, 4.8, 9.4);
    pad.ring(3.6, 11.2, 1.9);
    pad.ring(10.4, 11.2, 1.9);
}

void comb(Pad& pad)
{
    QPainterPath back;
    back.addRect(QRectF(1.4, 2, 11.2, 3.2));
    pad.fill(back);
    pad.p.drawRect(QRectF(1.4, 2, 11.2, 3.2));
    for (const double x : {2.2, 5.4, 8.6, 11.8}) {
        pad.line(x, 5.5, x, 12.4);
    }
}

void sheets(Pad& pad)
{
    pad.poly({{7, 1.4}, {12.8, 4}, {7, 6.6}, {1.2, 4}}, true);
    pad.poly({{1.2, 7.2}, {7, 9.8}, {12.8, 7.2}});
    pad.poly({{1.2, 10.2}, {7, 12.8}, {12.8, 10.2}});
}

void arrow(Pad& pad, bool right)
{
    if (right) {
        pad.line(1.5, 7, 12, 7);
        pad.poly({{8, 3}, {12.3, 7}, {8, 11}});
    } else {
        pad.line(2, 7, 12.5, 7);
        pad.poly({{6, 3}, {1.7, 7}, {6, 11}});
    }
}

void lossMark(Pad& pad)
{
    pad.poly({{7, 1}, {13, 7}, {7, 13}, {1, 7}}, true);
    pad.line(4.6, 7, 9.4, 7);
}

void lamp(Pad& pad)
{
    QPainterPath half;
    half.moveTo(2.8, 10.5);
    half.arcTo(QRectF(2.8, 6.3, 8.4, 8.4), 180, -180);
    half.closeSubpath();
    pad.p.drawPath(half);
    pad.line(1, 12.8, 13, 12.8);
    pad.line(7, 1.2, 7, 3.6);
    pad.line(2.2, 3.4, 3.8, 5.2);
    pad.line(11.8, 3.4, 10.2, 5.2);
}

void bottle(Pad& pad)
{
    QPainterPath path(QPointF(5.4, 1.4));
    path.lineTo(8.6, 1.4);
    path.lineTo(8.6, 3.6);
    path.cubicTo(10.8, 4.4, 11, 5.4, 11, 6.6);
    path.lineTo(11, 12.8);
    path.lineTo(3, 12.8);
    path.lineTo(3, 6.6);
    path.cubicTo(3, 5.4, 3.2, 4.4, 5.4, 3.6);
    path.closeSubpath();
    pad.p.drawPath(path);
}

void tube(Pad& pad)
{
    pad.line(3, 1.5, 11, 1.5);
    QPainterPath path(QPointF(4.4, 1.5));
    path.lineTo(4.4, 10.4);
    path.arcTo(QRectF(4.4, 7.8, 5.2, 5.2), 180, 180);
    path.lineTo(9.6, 1.5);
    pad.p.drawPath(path);
    QPainterPath lower;
    lower.addRect(QRectF(0, 7, 14, 7));
    path.closeSubpath();
    pad.fill(path.intersected(lower));
}

void topUp(Pad& pad)
{
    pad.poly({{1.5, 5}, {1.5, 12.6}, {12.5, 12.6}, {12.5, 5}});
    pad.line(7, 0.8, 7, 9.2);
    pad.poly({{4.2, 6.6}, {7, 9.6}, {9.8, 6.6}});
}

void page(Pad& pad)
{
    pad.poly({{8.6, 1.2}, {2.6, 1.2}, {2.6, 12.8}, {11.4, 12.8}, {11.4, 4}}, true);
    pad.line(5, 6.4, 9, 6.4);
    pad.line(5, 9.4, 9, 9.4);
}

void tickedRing(Pad& pad)
{
    pad.ring(7, 7, 5.7);
    pad.poly({{4.4, 7.2}, {6.3, 9.1}, {9.7, 5.2}});
}

void fork(Pad& pad)
{
    pad.line(7, 13, 7, 8.4);
    pad.line(7, 8.4, 2.8, 4.2);
    pad.line(7, 8.4, 11.2, 4.2);
    pad.poly({{2.4, 7}, {2.4, 3.6}, {5.8, 3.6}});
    pad.poly({{8.2, 3.6}, {11.6, 3.6}, {11.6, 7}});
}

void flakes(Pad& pad)
{
    pad.line(2.4, 2, 11.6, 2);
    pad.dot(4, 6, 1.1);
    pad.dot(9, 5.4, 1.1);
    pad.dot(6.6, 9, 1.1);
    pad.dot(10.6, 9.6, 1.1);
    pad.dot(3.4, 11.6, 1.1);
}

void frame(Pad& pad)
{
    pad.p.drawRect(QRectF(1.4, 2.4, 11.2, 9.4));
    pad.poly({{1.8, 10.4}, {5, 6.6}, {7.4, 9}, {9, 7.4}, {12.2, 10.4}});
    pad.dot(9.8, 5, 0.9);
}

void flag(Pad& pad)
{
    pad.line(2.4, 1.2, 2.4, 13);
    QPainterPath cloth(QPointF(2.4, 1.6));
    cloth.lineTo(12.6, 1.6);
    cloth.lineTo(9.8, 5);
    cloth.lineTo(12.6, 8.6);
    cloth.lineTo(2.4, 8.6);
    cloth.closeSubpath();
    pad.fill(cloth);
    pad.p.drawPath(cloth);
}

void warnTriangle(Pad& pad, const QColor& ground)
{
    QPainterPath triangle;
    triangle.addPolygon(QPolygonF{{7, 1.6}, {13, 12.2}, {1, 12.2}});
    triangle.closeSubpath();
    pad.fill(triangle);
    pad.p.drawPath(triangle);
    pad.p.setPen(QPen(ground, 1.6, Qt::SolidLine, Qt::RoundCap));
    pad.line(7, 5.4, 7, 8.4);
    pad.line(7, 10.6, 7, 10.7);
}

} // namespace

void drawGlyph(QPainter& painter, Glyph glyph, const QRectF& box, const QColor& ink, double fraction)
{
    Pad pad(painter, box, ink);
    switch (glyph) {
    case Glyph::WaterChange:
        return glass(pad, fraction);
    case Glyph::Dose:
        return dose(pad);
    case Glyph::Trim:
        return trim(pad);
    case Glyph::Upkeep:
        return comb(pad);
    case Glyph::Media:
        return sheets(pad);
    case Glyph::In:
        return arrow(pad, true);
    case Glyph::Out:
        return arrow(pad, false);
    case Glyph::Loss:
        return lossMark(pad);
    case Glyph::Light:
        return lamp(pad);
    case Glyph::Co2:
        pad.ring(5, 8.4, 3.9);
        pad.ring(11, 3.6, 2);
        return;
    case Glyph::Cylinder:
        return bottle(pad);
    case Glyph::Observation:
        pad.ring(7, 7, 5.4);
        pad.dot(7, 7, 1.9);
        return;
    case Glyph::Test:
        return tube(pad);
    case Glyph::TopUp:
        return topUp(pad);
    case Glyph::Note:
        return page(pad);
    case Glyph::Gate:
        return tickedRing(pad);
    case Glyph::Decide:
        return fork(pad);
    case Glyph::Feed:
        return flakes(pad);
    case Glyph::Photo:
        return frame(pad);
    }
}

void drawStatus(QPainter& painter, Status status, const QRectF& box, const QColor& ink, const QColor& ground)
{
    Pad pad(painter, box, ink);
    switch (status) {
    case Status::Ok:
        return tickedRing(pad);
    case Status::Watch:
        pad.poly({{7, 0.9}, {13.1, 7}, {7, 13.1}, {0.9, 7}}, true);
        pad.dot(7, 7, 1.8);
        return;
    case Status::Act:
        return warnTriangle(pad, ground);
    case Status::Overdue:
        return flag(pad);
    case Status::Waiting:
        pad.ring(7, 7, 5.7);
        pad.poly({{7, 3.8}, {7, 7.2}, {9.4, 8.6}});
        return;
    case Status::Unknown: {
        QPen pen(ink, 1.4, Qt::CustomDashLine, Qt::FlatCap);
        pen.setDashPattern({2.1, 2.1});
        pad.p.setPen(pen);
        pad.ring(7, 7, 5.6);
        return;
    }
    }
}

void drawTick(QPainter& painter, const QRectF& box, const QColor& ink)
{
    Pad pad(painter, box, ink);
    pad.poly({{3, 7.4}, {5.8, 10.2}, {11, 4}});
}

} // namespace littoral::ui
