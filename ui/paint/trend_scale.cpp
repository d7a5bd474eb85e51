// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/trend_scale.h"

#include "ui/paint/value_scale.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr double kHeadroom = 0.08; // of the range, above the highest value
constexpr int kMostDecades = 12;

int decimalsFor(double tick)
{
    return std::clamp(static_cast<int>(std::ceil(-std::log10(tick) - 1e-9)), 0, 6);
}

} // namespace

double TrendScale::share(double value) const
{
    if (!logarithmic) {
        return (value - low) / (high - low);
    }
    return value <= low ? 0.0 : std::log(value / low) / std::log(high / low);
}

TrendScale linearScale(double low, double high, int mostTicks)
{
    const ValueScale nice = niceScale(low, high, std::max(3, mostTicks));
    TrendScale made;
    made.low = nice.low;
    // The next round number above is often far off: plots are low enough as they are.
    const double top = std::max(high, nice.low);
    made.high = std::max(top + kHeadroom * (top - nice.low), nice.low + 1e-9);
    if (top <= nice.low) {
        made.high = nice.high;
    }
    made.decimals = nice.decimals;
    for (const double tick : nice.ticks) {
        if (tick <= made.high + 1e-9 * std::abs(made.high)) {
            made.ticks.push_back(tick);
        }
    }
    return made;
}

TrendScale logScale(double lowestPositive, double high, int mostTicks)
{
    const double bottom = lowestPositive > 0.0 ? lowestPositive : 0.01;
    const double top = std::max(high, bottom * 10.0);
    TrendScale made;
    made.logarithmic = true;
    int first = static_cast<int>(std::floor(std::log10(bottom) + 1e-9));
    const int last = static_cast<int>(std::ceil(std::log10(top) - 1e-9));
    first = std::max(first, last - kMostDecades);
    made.low = std::pow(10.0, first);
    for (const double factor : std::array{2.0, 5.0}) {
        if (made.low < bottom && std::pow(10.0, first) * factor <= bottom * (1.0 + 1e-9)) {
            made.low = std::pow(10.0, first) * factor;
        }
    }
    made.high = top * 1.1;
    made.decimals = decimalsFor(made.low);
    const int decades = last - first;
    const bool steps = decades * 3 <= mostTicks;
    for (int power = first; power <= last; ++power) {
        for (const double factor : std::array{1.0, 2.0, 5.0}) {
            const double tick = factor * std::pow(10.0, power);
            const bool fits = factor == 1.0 || steps;
            if (fits && tick >= made.low * (1.0 - 1e-9) && tick <= made.high) {
                made.ticks.push_back(tick);
            }
        }
    }
    return made;
}

} // namespace littoral::ui
