// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/random.h"
#include "core/forecast/linear.h"
#include "core/forecast/observation.h"
#include "core/forecast/priors.h"
#include "core/sim/run.h"

#include <array>
#include <cstddef>
#include <optional>
#include <stop_token>
#include <vector>

namespace littoral::forecast {

/// What the future may hold that the past did not show: from the decision day each draw's growth, soil and uptake rates
/// are multiplied by exp(sd e) (chosen on simulated tanks so that bands cover what they say, slightly too wide).
inline constexpr double kLaterGrowthSd = 0.10;
inline constexpr double kLaterSoilSd = 0.15;
inline constexpr double kLaterUptakeSd = 0.15;
/// Concentrations are spread by exp(sd e) with sd = base + slope * sqrt(days ahead), about an offset in kit ppm.
inline constexpr double kDispersionBase = 0.04;
inline constexpr double kDispersionSlope = 0.03;
/// Remaining time to a date still open is spread by exp(sd e).
inline constexpr double kDateDispersion = 0.05;

/// Draws what the future may add to one member.
void drawLater(sim::Member& member, double inflation, Random& random);

/// What ammonia and nitrite oxidisers could do with the water at its clear limits, mg N/L/d.
[[nodiscard]] std::array<double, 2> usableCapacity(const sim::Sample& sample, std::size_t lane,
                                                   const sim::Coefficients<double>& coefficients);

/// The instants one forecast reports.
struct Timetable
{
    std::vector<double> rows; ///< decisionDay and later
    std::vector<double> past; ///< startDay .. decisionDay
    std::vector<double> load; ///< days at which the filter is held against the load, one a day; empty without a load
    double lastDay = 0.0;     ///< last day dates are reported for
};

[[nodiscard]] Timetable timetableOf(const Request& request);

/// All draws' outcomes; columns[i] holds one value per draw.
struct EnsembleOutcome
{
    using Columns = std::vector<std::vector<double>>;
    std::array<Columns, 4> water;          ///< by Substance, one column per row day, dispersed
    std::array<Columns, 3> kit;            ///< by Substance, what the newest kit shows
    std::array<Columns, 4> fitted;         ///< by Substance, one column per past day, not dispersed
    std::array<Columns, 2> capacity;       ///< ammonia and nitrite oxidisers at the clear limits, one per row day
    std::array<Columns, 2> fittedCapacity; ///< the same, one per past day
    std::vector<double> complete;          ///< days, kNotByLast included, one per draw
    std::vector<std::vector<double>> gates;
    std::vector<double> carries; ///< first day both guilds carry the load; empty without a load
    std::size_t failed = 0;
};

/// The kit a substance was last read with, else the last one listed.
[[nodiscard]] std::optional<std::size_t> newestKit(const TankCase& tank, Substance substance);

/// Runs the rows of z, each with its own inflation and dispersion, through log and plan. Nothing when stopped.
[[nodiscard]] std::optional<EnsembleOutcome> runEnsemble(const Request& request, const Prior& prior, const Rows& z,
                                                         const Timetable& timetable, Random& random,
                                                         const std::stop_token& stop);

} // namespace littoral::forecast
