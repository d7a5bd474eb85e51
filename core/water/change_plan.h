// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/carbonate.h"

#include <optional>
#include <span>
#include <vector>

/// Water changes that are planned: sequences, equal steps to a target, drip, and what a change does to free ammonia.
namespace littoral::water {

/// The share that, changed `count` times, brings `start` to `target`. Refuses what no change can reach.
[[nodiscard]] Result<double> equalShareToTarget(double start, double target, double source, int count);

/// Concentration after each change of a sequence.
[[nodiscard]] std::vector<double> afterEachChange(double start, double source, std::span<const double> fractions);

/// Litres that flow through to bring `start` to `target`: more than a change of the same effect.
[[nodiscard]] Result<double> flowThroughToTarget_L(double start, double target, double source, double net_L);

/// The water as far as ammonia and acid are concerned.
struct AmmoniaWater
{
    MgNPerL total;
    double pH = 7.0;
    MeqPerL alkalinity;
    double t_C = 25.0;
    MmolPerL hardness; ///< for the ionic strength only
};
struct AmmoniaAfter
{
    MgNPerL total;
    double pH = 0.0; ///< right after mixing, before gas moves; from alkalinity and carbon, never a mean of pH
    MeqPerL alkalinity;
    double t_C = 0.0;
    MgNPerL freeBefore;
    MgNPerL freeAfter;
    /// Free ammonia once the mixture has lost its extra carbon dioxide to the given CO2 level; the later risk.
    std::optional<MgNPerL> freeAfterGas;
    double pHAfterGas = 0.0;
};
/// `share` of the tank replaced by `fresh`. `settledCo2`: what the tank's CO2 returns to.
[[nodiscard]] Result<AmmoniaAfter> ammoniaAfterChange(const AmmoniaWater& tank, const AmmoniaWater& fresh, double share,
                                                      std::optional<Co2> settledCo2);

} // namespace littoral::water
