// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/outline.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

double outlineScale(std::span<const TankShape> shapes, QSizeF room)
{
    double longest = 0.0;
    double tallest = 0.0;
    for (const TankShape& shape : shapes) {
        longest = std::max(longest, shape.length_cm);
        tallest = std::max(tallest, shape.height_cm);
    }
    if (longest <= 0.0 || tallest <= 0.0) {
        return 0.0;
    }
    return std::min(room.width() / longest, room.height() / tallest);
}

QSizeF outlineSize(const TankShape& shape, double pxPerCm)
{
    return {std::max(6.0, std::round(shape.length_cm * pxPerCm)), std::max(6.0, std::round(shape.height_cm * pxPerCm))};
}

void drawOutline(QPainter& painter, const Theme& theme, const QRectF& room, const TankShape& shape, double pxPerCm)
{
    if (shape.length_cm <= 0.0 || shape.height_cm <= 0.0 || pxPerCm <= 0.0) {
        return;
    }
    const QSizeF size = outlineSize(shape, pxPerCm);
    const QRectF glass(std::round(room.right() - size.width() - 3), std::round(room.bottom() - size.height() - 1),
                       size.width(), size.height());
    const double surface = glass.top() + glass.height() * 0.08;
    painter.save();
    painter.fillRect(QRectF(glass.left(), surface, glass.width(), glass.bottom() - surface), theme[Token::Water]);
    painter.setRenderHint(QPainter::Antialiasing);
    const double bed = glass.height() * std::clamp(shape.bedShare, 0.04, 0.5);
    QPainterPath soil(QPointF(glass.left(), glass.bottom()));
    soil.lineTo(glass.left(), glass.bottom() - bed * 0.55);
    soil.cubicTo(glass.left() + glass.width() * 0.4, glass.bottom() - bed * 0.6, glass.left() + glass.width() * 0.6,
                 glass.bottom() - bed * 1.5, glass.right(), glass.bottom() - bed * 1.55);
    soil.lineTo(glass.right(), glass.bottom());
    soil.closeSubpath();
    painter.fillPath(soil, theme[Token::Soil]);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(theme[Token::WaterSurface], 1));
    painter.drawLine(QPointF(glass.left(), surface), QPointF(glass.right(), surface));
    painter.setPen(QPen(theme[Token::Glass], 1));
    painter.drawLine(glass.topLeft(), glass.bottomLeft());
    painter.drawLine(glass.topRight(), glass.bottomRight());
    painter.drawLine(QPointF(glass.left() - 3, glass.bottom()), QPointF(glass.right() + 3, glass.bottom()));
    painter.restore();
}

} // namespace littoral::ui
