// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/skill/independent_tank.h"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

/// Forecasts on simulated tanks, scored one by one.
namespace littoral::skill {

inline constexpr std::array<double, 3> kDecisionDays{7.0, 14.0, 21.0};
inline constexpr std::array<double, 3> kLeads_d{3.0, 7.0, 14.0};

/// One concentration at one lead. inside: of the 50, 80 and 95 % bands, with a hair allowed; held: the same as shares,
/// a truth that cannot be told from the band's edge counting in part (see heldShares).
struct WaterScore
{
    std::size_t substance = 0, lead = 0, decision = 0;
    std::array<bool, 3> inside{};
    std::array<double, 3> held{};
    bool wide = true; ///< the 50 % band is wider than what `inside` lets pass anyway
    double crps = 0.0, prior = 0.0;
    bool read = false; ///< the kit was used before the decision day, so that the next three mean something
    double persistence = 0.0, line = 0.0, lineWithSpread = 0.0;
};

/// One completion date.
struct DateScore
{
    std::size_t decision = 0;
    std::array<bool, 3> inside{};
    double crps = 0.0, prior = 0.0;           ///< from flooding to kLastDay
    double crpsAhead = 0.0, priorAhead = 0.0; ///< from the decision day on: what was over counts as over on it
    double error_d = 0.0, width80_d = 0.0;    ///< 'not by then' counts as kLastDay + 10 in these two
    double withinWeek = 0.0;                  ///< stated probability of completion within seven days
    bool wasWithinWeek = false;
    bool open = true; ///< not complete on the decision day
    bool fitted = true;
};

struct TankScores
{
    std::size_t method = 0;
    double complete = 0.0;
    std::vector<WaterScore> water;
    std::vector<DateScore> dates;
    std::vector<double> seconds; ///< processor time of each calibrated forecast (a forecast uses one thread)
    std::string failure;         ///< empty when all went well
};

struct Batch
{
    int tanksPerMethod = 76;
    std::uint64_t seed = kReportSeed;
    unsigned threads = 2;
};

/// What the forecaster is asked about a tank on a decision day: the log, and readings up to that day.
[[nodiscard]] forecast::Request requestOf(const SimulatedTank& tank, std::size_t method, std::uint64_t index,
                                          std::size_t decision);

/// Every tank of the batch in the same order whatever the number of threads, and the same scores.
[[nodiscard]] std::vector<TankScores> scoreBatch(const Batch& batch);

} // namespace littoral::skill
