// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/value_scale.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::ui {

namespace {

/// Smallest of 1, 2, 5 x 10^n that is not below `rough`.
double roundStep(double rough)
{
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : std::array{1.0, 2.0, 5.0}) {
        if (factor * power >= rough * (1.0 - 1e-9)) {
            return factor * power;
        }
    }
    return 10.0 * power;
}

} // namespace

ValueScale niceScale(double low, double high, int mostTicks)
{
    if (!std::isfinite(low) || !std::isfinite(high) || low > high) {
        low = 0.0;
        high = 1.0;
    }
    if (low > 0.0 && low < 0.35 * high) {
        low = 0.0;
    }
    if (high - low < 1e-9 * std::max(1.0, std::abs(high))) {
        const double half = std::max(0.05, std::abs(high) * 0.1);
        low = low == 0.0 ? 0.0 : low - half;
        high += half;
    }
    const int intervals = std::max(1, mostTicks - 1);
    ValueScale scale;
    double step = roundStep((high - low) / intervals);
    double first = std::floor(low / step + 1e-9) * step;
    double last = std::ceil(high / step - 1e-9) * step;
    while (std::lround((last - first) / step) > intervals && intervals > 1) {
        step = roundStep(step * 1.01);
        first = std::floor(low / step + 1e-9) * step;
        last = std::ceil(high / step - 1e-9) * step;
    }
    if (intervals == 1) {
        // Two labels only: round numbers inside the range, so that a short lane keeps its height for the data.
        scale.low = low - 0.06 * (high - low);
        scale.high = high + 0.06 * (high - low);
        step = roundStep((high - low) / 2.0);
        first = std::ceil(scale.low / step - 1e-9) * step;
        last = std::floor(scale.high / step + 1e-9) * step;
        if (low == 0.0) {
            scale.low = 0.0;
            first = 0.0;
        }
        scale.ticks = last > first ? std::vector{first, last} : std::vector{first};
    } else {
        scale.low = first;
        scale.high = last;
        const long count = std::lround((last - first) / step);
        for (long i = 0; i <= count; ++i) {
            scale.ticks.push_back(first + static_cast<double>(i) * step);
        }
    }
    scale.decimals = std::clamp(static_cast<int>(-std::floor(std::log10(step) + 1e-9)), 0, 4);
    return scale;
}

} // namespace littoral::ui
