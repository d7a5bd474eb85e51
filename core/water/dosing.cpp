// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/dosing.h"

#include "core/water/refusal.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {

constexpr double kSettledShare = 0.05;
constexpr double kCountSlack = 1.0e-9; // a whole number but for rounding stays it
constexpr int kMostIntervals = 200000; // 0.01 % changes settle to 1e-9 in this many

DoseStep next(const DosePlan& plan, double level)
{
    DoseStep step;
    const double decayed = level * std::exp(-plan.uptakeRate_per_d * plan.intervalDays);
    step.beforeChange = std::max(0.0, decayed - plan.uptake);
    step.afterChange = step.beforeChange + plan.fraction * (plan.source - step.beforeChange);
    step.afterDose = step.afterChange + plan.dose;
    return step;
}

} // namespace

std::vector<DoseStep> doseSteps(const DosePlan& plan, int intervals)
{
    std::vector<DoseStep> steps;
    double level = plan.start;
    for (int i = 0; i < intervals; ++i) {
        steps.push_back(next(plan, level));
        level = steps.back().afterDose;
    }
    return steps;
}

Result<DoseStep> doseCeiling(const DosePlan& plan)
{
    if (!within(plan.fraction, 0.0, 1.0)) {
        return refuse("The share changed lies between 0 and 100 %.");
    }
    if (!(plan.dose >= 0.0) || !(plan.uptake >= 0.0) || !(plan.uptakeRate_per_d >= 0.0) || !(plan.intervalDays > 0.0)) {
        return refuse("Dose, uptake and interval cannot be negative.");
    }
    double level = plan.start;
    DoseStep step;
    for (int i = 0; i < kMostIntervals; ++i) {
        step = next(plan, level);
        if (std::abs(step.afterDose - level) <= 1.0e-12 * std::max(1.0, std::abs(level))) {
            return step;
        }
        level = step.afterDose;
    }
    return refuse("With this plan the level rises without end.",
                  "Change water, dose less, or enter what the plants take up.");
}

Result<int> intervalsToSettle(double fraction)
{
    if (!(fraction > 0.0) || !(fraction <= 1.0)) {
        return refuse("The share changed must be above 0 and up to 100 %.");
    }
    if (fraction == 1.0) {
        return 1;
    }
    return static_cast<int>(std::ceil(std::log(kSettledShare) / std::log1p(-fraction) - kCountSlack));
}

Result<double> doseToHold(double peak, double fraction, double source, double uptake)
{
    if (!within(fraction, 0.0, 1.0) || !(uptake >= 0.0)) {
        return refuse("The share changed lies between 0 and 100 %, and uptake is not negative.");
    }
    if (peak < source * fraction + (1.0 - fraction) * std::max(0.0, peak - uptake)) {
        return refuse("The source water alone brings more than this level.", "Blend it with demineralised water.");
    }
    const double left = std::max(0.0, peak - uptake);
    return peak - (left + fraction * (source - left));
}

} // namespace littoral::water
