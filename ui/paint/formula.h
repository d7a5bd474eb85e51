// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QRectF>
#include <QString>

class QPainter;

namespace littoral::ui {

/// A formula written on one line ("share = (33 − 20) / (33 − 8) = 52 %", "1 + 10^(pKa − pH)") set as on paper:
/// quotients of bracketed terms one above the other, powers raised, figures tabular. Parts that belong together stay on
/// one line; the line breaks before "=" and after ";" where the width runs out.

/// Height it takes in a box this wide, px.
[[nodiscard]] double formulaHeight(const Theme& theme, const QString& text, double width);
void paintFormula(QPainter& painter, const QRectF& box, const Theme& theme, const QString& text, const QColor& ink);

} // namespace littoral::ui
