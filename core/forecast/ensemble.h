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

/// The instants one forecast reports.
struct Timetable
{
    std::vector<double> rows;     ///< decisionDay and later
    std::vector<double> past;     ///< startDay .. decisionDay
    std::vector<double> readings; ///< days of the used readings, one per reading
    double lastDay = 0.0;         ///< last day dates are reported for
};

[[nodiscard]] Timetable timetableOf(const Request& request);

/// All draws' outcomes; columns[i] holds one value per draw.
struct EnsembleOutcome
{
    using Columns = std::vector<std::vector<double>>;
    std::array<Columns, 4> water;  ///< by Substance, one column per row day, dispersed
    std::array<Columns, 3> kit;    ///< by Substance, what the newest kit shows
    std::array<Columns, 4> fitted; ///< by Substance, one column per past day, not dispersed
    std::vector<double> complete;
    std::vector<std::vector<double>> gates;
    std::vector<double> logCapacity; ///< ln of ammonia-oxidising capacity at the decision day
    /// Mean over draws of each used reading's tail probabilities.
    std::vector<ReadingModel::Tails> readingTails;
    std::size_t failed = 0;
};

/// Runs the rows of z, each with its own inflation and dispersion, through log and plan. Nothing when stopped.
[[nodiscard]] std::optional<EnsembleOutcome> runEnsemble(const Request& request, const Prior& prior, const Rows& z,
                                                         const Timetable& timetable, Random& random,
                                                         const std::stop_token& stop);

} // namespace littoral::forecast
