// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace littoral::ui {

/// The small pictures of work and events as vector strokes in a 14 unit box, fitted into `box`. `fraction` (0..1) is
/// how full the glass of a water change stands.
void drawGlyph(QPainter& painter, facade::Glyph glyph, const QRectF& box, const QColor& ink, double fraction = 0.4);

/// Shape of a status, told apart without colour: tick in a ring, diamond with a dot, triangle with a bar, flag, ring
/// with hands, dashed ring. `ground` is the colour behind it, for the cut-outs.
void drawStatus(QPainter& painter, facade::Status status, const QRectF& box, const QColor& ink, const QColor& ground);

/// The tick of finished work.
void drawTick(QPainter& painter, const QRectF& box, const QColor& ink);

} // namespace littoral::ui
