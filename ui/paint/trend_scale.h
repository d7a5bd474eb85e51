// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace littoral::ui {

/// A vertical scale, linear or logarithmic, with round ticks.
struct TrendScale
{
    double low = 0.0;
    double high = 1.0;
    bool logarithmic = false;
    std::vector<double> ticks;
    int decimals = 0; ///< enough for the smallest tick

    /// 0 at the bottom, 1 at the top. A logarithmic scale has no place for zero and less: they lie on its bottom.
    [[nodiscard]] double share(double value) const;
    [[nodiscard]] double y(double value, double top, double bottom) const
    {
        return bottom - share(value) * (bottom - top);
    }
};

/// Linear over [low, high], ending a little above the highest value; starts at zero where values come near it.
[[nodiscard]] TrendScale linearScale(double low, double high, int mostTicks);
/// Whole parts of a decade (1, 2, 5) around [lowestPositive, high]; at least one decade.
[[nodiscard]] TrendScale logScale(double lowestPositive, double high, int mostTicks);

} // namespace littoral::ui
