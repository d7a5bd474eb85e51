// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/quantities.h"

/// What feeding puts into the water, and hardening rock.
namespace littoral::water {

/// g of ammonia nitrogen per g of protein fed: 0.16 N in protein × 0.80 × 0.80 × 0.90 (Timmons & Ebeling 2013, as
/// quoted in an aquaponics manual of 2021).
inline constexpr double kAmmoniaNitrogenPerProtein = 0.092;
/// meq of alkalinity used per mg of ammonia nitrogen oxidised to nitrate: two per mole.
inline constexpr double kAlkalinityPerNitrogen = 2.0 / atomic::kN;

/// mg N a day from feed; protein share 0..1.
[[nodiscard]] Result<double> feedNitrogen_mg_per_d(double feed_g_per_d, double proteinShare);
/// Nitrate as the ion that builds up per day, mg/L, if plants take none.
[[nodiscard]] Result<NitrateIon> nitratePerDay(double nitrogen_mg_per_d, double net_L);
/// Alkalinity used per day when that nitrogen is nitrified.
[[nodiscard]] Result<MeqPerL> alkalinityUsedPerDay(double nitrogen_mg_per_d, double net_L);

/// Rock that hardens the water by `rise` per interval, a change of `fraction` at its end: excess over the source.
struct RockExcess
{
    double before = 0.0; ///< just before the change: r / f
    double after = 0.0;  ///< just after: r (1 − f) / f
};
[[nodiscard]] Result<RockExcess> rockExcess(double rise, double fraction);
/// The share to change so that the excess stays within `most`: r / D. Refuses when even a full change does not.
[[nodiscard]] Result<double> shareForRock(double rise, double most);
/// Rise per interval as two readings just before changes tell it: what came on top of the mixture after the change.
[[nodiscard]] Result<double> rockRise(double firstBefore, double secondBefore, double fraction, double source);

} // namespace littoral::water
