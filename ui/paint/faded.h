// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

namespace littoral::ui {

/// A colour let through: opacity 0 .. 1.
[[nodiscard]] inline QColor faded(QColor colour, double opacity)
{
    colour.setAlphaF(static_cast<float>(opacity));
    return colour;
}

} // namespace littoral::ui
