// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QPointF>

class QPainter;

namespace littoral::ui {

/// Usual size of a mark across, in px at text scale 1.
inline constexpr double kMarkSize = 8.0;

/// One mark of `size` px across, with a 1 px rim in the colour of its ground so that it stays apart from its line. An
/// open mark shows the ground inside.
void drawMark(QPainter& painter, Mark mark, QPointF centre, double size, const QColor& hue, const QColor& ground,
              bool open = false);

/// The same by parameter key, hue and shape from the theme.
void drawParameterMark(QPainter& painter, const Theme& theme, const QString& parameter, QPointF centre, double size,
                       const QColor& ground);

/// A reading outside its kit's steps: the mark with a short arrow away from it (down when below the lowest step, up
/// when above the highest).
void drawCensoredMark(QPainter& painter, Mark mark, QPointF centre, double size, const QColor& hue,
                      const QColor& ground, bool below);

} // namespace littoral::ui
