// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>
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

/// Something that happens to a level at a moment; days on any one clock.
struct CourseEvent
{
    double day = 0.0;
    double fraction = 0.0; ///< of the net volume changed, 0..1 ...
    double source = 0.0;   ///< ... for water of this level
    double rise = 0.0;     ///< and what is dosed after it
    /// From here on so much is taken up a day; below zero it is set free.
    std::optional<double> uptake_per_d;
};

struct CoursePoint
{
    double day = 0.0;
    double level = 0.0;
};

/// The level from `fromDay` to `toDay` as corners between which it moves in straight lines: uptake as far as there is
/// anything, events at their moments (a corner before and one after). `events` in order of time; those outside are left
/// out, but their uptake holds from then on.
[[nodiscard]] std::vector<CoursePoint> doseCourse(double start, double fromDay, double toDay, double uptake_per_d,
                                                  std::span<const CourseEvent> events);

/// The level at a day, on the line between two corners, before what happens at that moment; nothing outside.
[[nodiscard]] std::optional<double> levelAt(std::span<const CoursePoint> course, double day);

} // namespace littoral::water
