// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/dilution.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {
// A count that is whole but for rounding must not be raised to the next whole number.
constexpr double kCountSlack = 1.0e-9;
} // namespace

double remainingFraction(std::span<const double> fractions)
{
    double left = 1.0;
    for (const double fraction : fractions) {
        left *= 1.0 - std::clamp(fraction, 0.0, 1.0);
    }
    return left;
}

double equivalentSingleChange(std::span<const double> fractions)
{
    return 1.0 - remainingFraction(fractions);
}

double afterChanges(double start, double source, std::span<const double> fractions)
{
    return source + (start - source) * remainingFraction(fractions);
}

std::optional<int> changesToTarget(double start, double target, double source, double fraction)
{
    if (start <= target) {
        return 0;
    }
    if (target <= source || !(fraction > 0.0) || fraction > 1.0) {
        return std::nullopt;
    }
    if (fraction == 1.0) {
        return 1;
    }
    const double exact = std::log((target - source) / (start - source)) / std::log1p(-fraction);
    return static_cast<int>(std::ceil(exact - kCountSlack));
}

std::optional<double> singleChangeToTarget(double start, double target, double source)
{
    if (start <= target) {
        return 0.0;
    }
    if (target < source || start == source) {
        return std::nullopt;
    }
    return (start - target) / (start - source);
}

double remainingAfterFlowThrough(double exchangedVolumes)
{
    return std::exp(-exchangedVolumes);
}

std::optional<double> flowThroughForChange(double fraction)
{
    if (!(fraction >= 0.0) || fraction >= 1.0) {
        return std::nullopt;
    }
    return -std::log1p(-fraction);
}

std::optional<SteadyState> steadyState(double production, double fraction, double source)
{
    if (!(fraction > 0.0) || fraction > 1.0) {
        return std::nullopt;
    }
    return SteadyState{source + production / fraction, source + production * (1.0 - fraction) / fraction};
}

std::optional<double> dripSteadyState(double production, double exchange, double source)
{
    if (!(exchange > 0.0)) {
        return std::nullopt;
    }
    return source + production / exchange;
}

double mixedTemperature_C(double tank_L, double tank_C, double new_L, double new_C)
{
    const double total = tank_L + new_L;
    return total > 0.0 ? (tank_L * tank_C + new_L * new_C) / total : tank_C;
}

} // namespace littoral::water
