// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

/// Water changes on a dissolved, conservative substance. Fractions are of the net volume, 0..1; concentrations in any
/// one unit, `source` being that of the new water.
namespace littoral::water {

/// Share of the original water left after the changes, in any order: the product of (1 - f).
[[nodiscard]] double remainingFraction(std::span<const double> fractions);

/// The one change that removes as much as the sequence.
[[nodiscard]] double equivalentSingleChange(std::span<const double> fractions);

/// Concentration after the sequence.
[[nodiscard]] double afterChanges(double start, double source, std::span<const double> fractions);

/// How many changes of `fraction` bring `start` to `target` or past it, 0 when it is there already; nothing when no
/// number of them will (target at or beyond the source water, or no change at all).
[[nodiscard]] std::optional<int> changesToTarget(double start, double target, double source, double fraction);

/// The single change that reaches the target; nothing when one cannot.
[[nodiscard]] std::optional<double> singleChangeToTarget(double start, double target, double source);

/// Left of the excess after flowing `exchangedVolumes` tank volumes through a mixed tank: exp(-V/Vt).
[[nodiscard]] double remainingAfterFlowThrough(double exchangedVolumes);

/// Tank volumes of flow-through that remove as much as one change of `fraction` (0 <= f < 1).
[[nodiscard]] std::optional<double> flowThroughForChange(double fraction);

/// Where concentration settles with `production` per interval and a change of `fraction` at its end.
struct SteadyState
{
    double peak = 0.0;   ///< just before the change
    double trough = 0.0; ///< just after
};
[[nodiscard]] std::optional<SteadyState> steadyState(double production, double fraction, double source);

/// Steady concentration with production per unit of time and a drip that exchanges `exchange` tank volumes in the same
/// time.
[[nodiscard]] std::optional<double> dripSteadyState(double production, double exchange, double source);

/// Temperature of a mixture by heat.
[[nodiscard]] double mixedTemperature_C(double tank_L, double tank_C, double new_L, double new_C);

} // namespace littoral::water
