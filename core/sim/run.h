// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sim/integrator.h"
#include "core/sim/parameters.h"

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace littoral::sim {

enum class EventKind {
    WaterChange,     ///< amount: logged fraction, 0..1
    AmmoniaDose,     ///< amount: mg N/L
    FeedRate,        ///< amount: mg N/L/d from now on
    ExcretionChange, ///< amount: mg N/L/d added to the rate from now on
    Starter,         ///< amount: label doses
    MatureMedia,     ///< amount: share of a whole mature filter
    Squeezings,      ///< amount: share of a whole mature filter's squeezings
    OutlookBegins,   ///< the member's `later` multipliers apply from now on
};

struct Event
{
    double day = 0.0;
    EventKind kind = EventKind::WaterChange;
    double amount = 0.0;
    std::size_t source = 0;
};

/// What all members of one tank share: the span, the log and the plan, where to stop and what to sample.
struct Scenario
{
    double startDay = 0.0;
    double endDay = 60.0;
    bool co2Injected = false;
    double co2ShareOfDay = 0.0;
    double feed_mgN_per_L_d = 0.0;      ///< rate in force at startDay
    double excretion_mgN_per_L_d = 0.0; ///< rate in force at startDay
    std::vector<Event> events;          ///< sorted by day; those before startDay are not applied
    std::vector<double> stops;          ///< sorted days within the span at which the state is wanted exactly
    std::vector<double> samples;        ///< sorted days within the span at which the interpolated state is wanted
};

/// What a filter of unit capacity oxidises per day in given water: ammonia oxidisers at `tan`, nitrite oxidisers at
/// `nitrite` (mg N/L), with the member's temperature, pH over the day and inhibitions. Multiply by the capacities.
struct UsableShare
{
    double ammonia = 0.0;
    double nitrite = 0.0;
};
[[nodiscard]] UsableShare usableShare(const Coefficients<double>& coefficients, double tan, double nitrite,
                                      double alkalinity_meq_per_L);

/// Largest logged fraction times gain that a water change may reach.
inline constexpr double kLargestChange = 0.98;

/// Error control for a relative tolerance; 1e-4 serves display, 4e-4 calibration.
[[nodiscard]] StepControl<kStateCount> tankControl(double relative);

/// Dissolved values and the filter at one sample, one lane per member.
struct Sample
{
    Pack totalAmmonia{};
    Pack nitrite{};
    Pack nitrate{};
    Pack alkalinity{};
    Pack ammoniaCapacity{}; ///< mg N/L/d saturated at 25 C
    Pack nitriteCapacity{};
};

/// What a pack of members did. Reused from run to run so that no run allocates.
struct PackTrace
{
    std::vector<State<Pack>> atStops; ///< just before any event of that instant; one per Scenario::stops
    std::vector<Sample> samples;      ///< likewise, one per Scenario::samples
    /// Daily means of total ammonia and nitrite over [startDay's whole day + i, + 1), exact integrals of the
    /// interpolant.
    std::vector<Pack> meanAmmonia;
    std::vector<Pack> meanNitrite;
    State<Pack> end{};
    std::array<bool, kLanes> failed{};
    int steps = 0;
};

/// Runs kLanes members through the scenario and keeps only the states at the stops. A member that needs more steps than
/// the control allows is flagged; the others of its pack are then run without it.
void runToStops(const Scenario& scenario, std::span<const Member, kLanes> members,
                const StepControl<kStateCount>& control, PackTrace& trace);

/// The same, with samples and daily means.
void runRecorded(const Scenario& scenario, std::span<const Member, kLanes> members,
                 const StepControl<kStateCount>& control, PackTrace& trace);

} // namespace littoral::sim
