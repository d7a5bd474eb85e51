// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace littoral::ui {

/// A vertical scale in a parameter's shown unit with round tick values.
struct ValueScale
{
    double low = 0.0;
    double high = 1.0;
    std::vector<double> ticks;
    int decimals = 0; ///< enough for the tick step

    [[nodiscard]] double y(double value, double top, double bottom) const
    {
        return bottom - (value - low) / (high - low) * (bottom - top);
    }
};

/// Scale over [low, high] with a step of 1, 2 or 5 times a power of ten and at most `mostTicks` ticks (at least 2). A
/// range that starts near zero starts at zero; a range without width is given one.
[[nodiscard]] ValueScale niceScale(double low, double high, int mostTicks);

} // namespace littoral::ui
