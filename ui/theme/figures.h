// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace littoral::ui {

/// Tabular figures by hand: Qt 6.4 cannot ask a font for its `tnum` feature, so every digit is set in a cell as wide as
/// the font's widest digit. All numbers on screen go through these three, so columns line up and values do not jiggle.

/// Width of the widest of 0..9, in px.
[[nodiscard]] double figureAdvance(const QFont& font);
/// Width `text` takes when drawn by drawFigures, in px.
[[nodiscard]] double figuresWidth(const QFont& font, const QString& text);
/// Draws `text` on one line in the painter's font and pen; `flags` are Qt::Alignment bits. Nothing is elided.
void drawFigures(QPainter& painter, const QRectF& box, int flags, const QString& text);
/// The longest beginning of `text` that fits `width` px as figures, with an ellipsis if something was cut.
[[nodiscard]] QString elidedFigures(const QFont& font, const QString& text, double width);

} // namespace littoral::ui
