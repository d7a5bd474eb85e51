// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <vector>

/// What doses and water changes make of a concentration over the weeks.
namespace littoral::water {

/// One interval goes: plants take up, a change of `fraction` with `source` water, then the interval's whole dose.
/// Concentrations in one unit throughout.
struct DosePlan
{
    double start = 0.0;
    double dose = 0.0;             ///< rise per interval, all doses of it together
    double fraction = 0.0;         ///< of the net volume changed per interval, 0..1
    double source = 0.0;           ///< concentration in the new water
    double uptake = 0.0;           ///< taken up per interval, as far as there is so much
    double uptakeRate_per_d = 0.0; ///< and in proportion to what is there
    double intervalDays = 7.0;
};

/// One interval's three levels.
struct DoseStep
{
    double beforeChange = 0.0;
    double afterChange = 0.0; ///< the trough
    double afterDose = 0.0;   ///< the peak
};

[[nodiscard]] std::vector<DoseStep> doseSteps(const DosePlan& plan, int intervals);

/// The level after the dose at which the plan settles, found by running it on (uptake stops at zero, so the closed
/// forms do not always hold). Refuses a plan that never settles: dose without change or uptake.
[[nodiscard]] Result<DoseStep> doseCeiling(const DosePlan& plan);

/// Intervals until the peak is within 5 % of its ceiling, without uptake: ceil(ln 0.05 / ln(1 - f)).
[[nodiscard]] Result<int> intervalsToSettle(double fraction);

/// Dose per interval that holds a peak: fraction × (peak − source) plus what is taken up before the change.
[[nodiscard]] Result<double> doseToHold(double peak, double fraction, double source, double uptake);

} // namespace littoral::water
