// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/skill/independent_tank.h"

/// The person in front of a simulated tank: what is set up, done and written down, and how the cards are read.
namespace littoral::skill {

struct Keeper
{
    double shortest = 1.0, longest = 3.0; ///< days between readings
    bool strips = false;
    std::array<bool, 3> tests{true, true, true};  ///< by Substance; one never tested now and then
    double nitrateShare = 0.6;                    ///< of the readings include nitrate
    std::array<double, 3> gain{1.0, 1.0, 1.0};    ///< of the kits
    std::array<bool, 3> printsNitrogen{}, dead{}; ///< see Mishap
    double crossReading = 0.35;                   ///< share of nitrite the nitrate test sees
};

[[nodiscard]] Keeper keeperOf(Random& random);

/// Setup, kits and events as logged, and what really happened.
void writeLog(StartMethod method, const Keeper& keeper, SimulatedTank& tank, Random& random);

/// Readings to the end from the true water.
void readCards(const Keeper& keeper, SimulatedTank& tank, Random& random);

} // namespace littoral::skill
