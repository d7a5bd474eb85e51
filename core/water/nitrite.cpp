// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/nitrite.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

double chlorideNeeded_mg_per_L(NitriteIon nitrite, double chloridePresent_mg_per_L, double ratio)
{
    return std::max(0.0, ratio * nitrite.mg_per_L - chloridePresent_mg_per_L);
}

double saltNeeded_g(NitriteIon nitrite, double chloridePresent_mg_per_L, double net_L, double ratio)
{
    return chlorideNeeded_mg_per_L(nitrite, chloridePresent_mg_per_L, ratio) * kSaltPerChloride * net_L / 1000.0;
}

std::optional<NitriteLimits> nitriteLimits(double chloride_mg_per_L)
{
    if (!(chloride_mg_per_L >= 0.0)) {
        return std::nullopt;
    }
    // Each 2 mg/L of chloride allows 0.06 mg N/L more; above 10 the limit doubles once and stays.
    if (chloride_mg_per_L > 10.0) {
        return NitriteLimits{{0.60}, {0.20}};
    }
    const double band = std::min(5.0, std::floor(chloride_mg_per_L / 2.0) + 1.0);
    return NitriteLimits{{0.06 * band}, {0.02 * band}};
}

} // namespace littoral::water
