// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/nitrite.h"

#include <algorithm>

namespace littoral::water {

double chlorideNeeded_mg_per_L(NitriteIon nitrite, double chloridePresent_mg_per_L, double ratio)
{
    return std::max(0.0, ratio * nitrite.mg_per_L - chloridePresent_mg_per_L);
}

double saltNeeded_g(NitriteIon nitrite, double chloridePresent_mg_per_L, double net_L, double ratio)
{
    return chlorideNeeded_mg_per_L(nitrite, chloridePresent_mg_per_L, ratio) * kSaltPerChloride * net_L / 1000.0;
}

} // namespace littoral::water
