// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/forecast/fit.h"
#include "core/forecast/tank_case.h"

#include <limits>
#include <optional>
#include <stop_token>
#include <vector>

namespace littoral::forecast {

/// A schedule of water changes from the decision day on.
struct ChangePlan
{
    double fraction = 0.3;                                          ///< of the net volume, 0..0.95; 0: no change at all
    double everyDays = 3.0;                                         ///< 0.5..60
    double easeAfterDays = std::numeric_limits<double>::infinity(); ///< from then on half the fraction
    int source = 0;                                                 ///< which SourceWater

    friend bool operator==(const ChangePlan&, const ChangePlan&) = default;
};

/// Limits whose hours are counted. Defaults: free ammonia at the level the trade takes for a caution (common practice;
/// the criteria of the water sheets are the place for animals), nitrite at the step a card shows first after 0.25 ppm.
struct ExposureLimits
{
    double free_mgN_per_L = 0.02;
    double nitrite_mgN_per_L = 0.5 / 3.28454;
};

struct PlanQuestion
{
    std::vector<ChangePlan> plans; ///< see planGrid
    GateRule gate;                 ///< until when water is counted and what the odds are for
    ExposureLimits limits;
    double windowDays = 35.0; ///< exposure and changes are counted this far; the gate is looked for as far as the
                              ///< forecast reports dates
    int draws = 200;          ///< members used, the same for every plan (common random numbers)
};

/// What one plan would do, over the calibrated members.
struct PlanOutcome
{
    ChangePlan plan;               ///< meaningless when `present`
    bool present = false;          ///< the plan already in the case's events
    std::vector<Event> changes;    ///< its water changes from decisionDay on, to the end of the window
    double volumesToGate = 0.0;    ///< tank volumes of new water until the gate opens or the window ends, mean
    double changesToGate = 0.0;    ///< number of changes until then, mean
    double hoursNitriteOver = 0.0; ///< in the window, mean over members
    double hoursFreeOver = 0.0;
    std::vector<double> nitritePeaks; ///< highest value in the window, mg N/L, one per member, ascending
    DateOdds gate;                    ///< readings clear as the gate asks
    /// Probability that both guilds could carry Request::load on the day the gate opens; nothing without a load. Shown
    /// apart from the gate: very heavy changes clear readings by dilution and starve the filter.
    std::optional<double> carriesAtGate;
    bool onFrontier = false; ///< no other plan is better in water, exposure and gate date at once
    bool shown = false;      ///< one of the few that span the frontier

    /// Probability that nitrite goes above this in the window.
    [[nodiscard]] double nitriteAbove(double mgN_per_L) const;
};

struct PlanTable
{
    std::vector<PlanOutcome> outcomes; ///< the present plan first
    double windowDays = 0.0;
};

/// Five fractions, four intervals, held or halved after one or two weeks, for each source water that is not the first
/// one only held; and no change at all. At least 60; schedules that come out the same are not repeated.
[[nodiscard]] std::vector<ChangePlan> planGrid(const TankCase& tank);

/// The water changes of a plan: the first one everyDays after the last change made, at the earliest on the decision
/// day, all at the decision day's time of day; to endDay.
[[nodiscard]] std::vector<Event> changesOf(const ChangePlan& plan, const TankCase& tank, double endDay);

/// The case with its later water changes replaced by these; other later events stay.
[[nodiscard]] TankCase withChanges(TankCase tank, const std::vector<Event>& changes);

/// Runs every plan of the question and the present one on the calibrated members. BadInput for a plan no one can do,
/// Cancelled when stopped.
[[nodiscard]] Result<PlanTable> comparePlans(const Request& request, const Fit& fit, const PlanQuestion& question,
                                             std::stop_token stop = {});

/// The plan with the least water whose probability of nitrite above `nitrite_mgN_per_L` is at most `most`; nothing when
/// none keeps it.
[[nodiscard]] std::optional<std::size_t> cheapestPlan(const PlanTable& table, double nitrite_mgN_per_L, double most);

} // namespace littoral::forecast
