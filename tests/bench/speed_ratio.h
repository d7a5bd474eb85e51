// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sim/run.h"

#include <cstddef>
#include <vector>

/// One 60-day run with 30 events, by our lanes and by Boost.odeint's controlled Dormand-Prince stepper on the same
/// rates (TankModel<double>), so that the two can be compared at the same accuracy.
namespace littoral::bench {

/// Members drawn from the prior and the scenario they live through.
struct Ensemble
{
    sim::Scenario scenario;
    std::vector<sim::Member> members;
};
[[nodiscard]] Ensemble ensembleOf(std::size_t members);

/// What a run is judged by: total ammonia and nitrite just before every event and at the end, mg N/L.
struct Course
{
    std::vector<double> ammonia;
    std::vector<double> nitrite;
};

/// How odeint is given the equations: by our own rates for one member (no powers or logarithms left in them), or
/// written out as they stand in the books.
enum class Rates { Ours, Plain };

/// odeint's tolerances per step: absolute for everything, relative.
struct Tolerance
{
    double absolute = 1e-6;
    double relative = 1e-6;
};

void runLanes(const Ensemble& ensemble, std::size_t first, double tolerance, sim::PackTrace& trace);
/// kept: nothing when the values do not matter, as in timing.
void runOdeint(const Ensemble& ensemble, std::size_t member, Rates rates, const Tolerance& tolerance, Course* kept);

/// Errors in percent of the card's first step (0.25 ppm), both substances together.
struct Accuracy
{
    double median = 0.0;
    double high = 0.0; ///< 99 of 100 lie below
    double worst = 0.0;
};

/// Measures our error against odeint at 1e-11, looks for the fastest odeint tolerance that is no less accurate (99th
/// percentile), times both and prints everything. Returns that tolerance (for our own rates).
Tolerance reportSpeedRatio(const Ensemble& ensemble, double ourTolerance);

} // namespace littoral::bench
