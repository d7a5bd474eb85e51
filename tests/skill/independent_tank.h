// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/random.h"
#include "core/forecast/tank_case.h"

#include <vector>

/// Simulated tanks to score forecasts on. The generator shares no equation with the forecaster on purpose:
///  - three guilds instead of two: fast ammonia oxidisers with Blackman (ramp and plateau) kinetics, slow high-affinity
///    ones that go straight to nitrate, nitrite oxidisers with substrate inhibition;
///  - growth after a lag, shared crowding on the media, no pH or alkalinity chemistry but a slowly wandering vigour;
///  - soil releases by a power law in time, not by exponentials; plants ramp up linearly; melt comes in a pulse;
///  - each water change and each feeding has its own error; fixed-step integration;
///  - cards are read to the nearest step on a linear scale with additive and proportional noise.
/// It is still the work of the same people as the prior, so it tests equations and luck, not beliefs, and no real tank.
namespace littoral::skill {

enum class StartMethod { NewMedia, MatureMedia, Starter, DosedInert };
inline constexpr int kStartMethods = 4;

struct SimulatedTank
{
    forecast::TankCase log;      ///< what the keeper told: setup, events, all readings to the end
    std::vector<double> ammonia; ///< true mg N/L, kPerDay samples a day from day 0
    std::vector<double> nitrite;
    std::vector<double> nitrate;
    double complete = 0.0; ///< true completion day, infinite when not by kLastDay
};

inline constexpr int kPerDay = 8;
inline constexpr double kLastDay = 60.0;

[[nodiscard]] SimulatedTank simulate(StartMethod method, Random& random);

} // namespace littoral::skill
