// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QRectF>
#include <QSizeF>
#include <span>

class QPainter;

namespace littoral::ui {

/// Front view of a glass box: what the outline needs. Measures in cm; bedShare is the bed's height as a part of the
/// glass's.
struct TankShape
{
    double length_cm = 0.0;
    double height_cm = 0.0;
    double bedShare = 0.15;

    bool operator==(const TankShape&) const = default;
};

/// px per cm at which the largest of `shapes` just fits `room`, so that every tank of the row is drawn to one scale.
/// Zero when no tank has measures.
[[nodiscard]] double outlineScale(std::span<const TankShape> shapes, QSizeF room);
/// px the outline takes at that scale; never narrower than 6 px, so that the smallest box is still seen.
[[nodiscard]] QSizeF outlineSize(const TankShape& shape, double pxPerCm);
/// Glass, water and bed, standing on the bottom right of `room`.
void drawOutline(QPainter& painter, const Theme& theme, const QRectF& room, const TankShape& shape, double pxPerCm);

} // namespace littoral::ui
