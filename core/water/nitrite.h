// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/constants.h"
#include "core/water/units.h"

#include <optional>

/// Nitrite enters fish by the chloride uptake of the gill, so chloride protects by its mass ratio to nitrite.
namespace littoral::water {

/// Chloride : nitrite (as the ion) by mass that protects channel catfish: at least 10 (Durborow, Crosby & Brunson 1997,
/// SRAC 462). Not every species: largemouth bass were not protected (Tomasso 1986).
inline constexpr double kProtectiveChlorideRatio = 10.0;

/// mg of sodium chloride per mg of chloride.
inline constexpr double kSaltPerChloride = (atomic::kNa + atomic::kCl) / atomic::kCl;

/// Chloride to add, mg/L, so that chloride is `ratio` times the nitrite; 0 when there is enough.
[[nodiscard]] double chlorideNeeded_mg_per_L(NitriteIon nitrite, double chloridePresent_mg_per_L,
                                             double ratio = kProtectiveChlorideRatio);

/// The same as grams of sodium chloride for a tank. Salt stays until it is changed out; some plants and snails suffer.
[[nodiscard]] double saltNeeded_g(NitriteIon nitrite, double chloridePresent_mg_per_L, double net_L,
                                  double ratio = kProtectiveChlorideRatio);

/// Nitrite limits by the chloride of the water (British Columbia, Nordin & Pommen, updated Meays 2009, table 2; from
/// memory): water without chloride, as remineralised without it, falls into the strictest band.
struct NitriteLimits
{
    MgNPerL highest;
    MgNPerL mean30Days;
};
[[nodiscard]] std::optional<NitriteLimits> nitriteLimits(double chloride_mg_per_L);

} // namespace littoral::water
