// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/evaporation.h"

#include "core/water/refusal.h"

namespace littoral::water {

Result<double> afterEvaporation(double concentration, double net_L, double lost_L)
{
    if (!(lost_L >= 0.0) || !(net_L > lost_L)) {
        return refuse("More water cannot evaporate than there is.");
    }
    return concentration * net_L / (net_L - lost_L);
}

Result<double> afterTopUps(double start, double topUp, double lost_L, double net_L, int intervals)
{
    if (!(lost_L >= 0.0) || !(net_L > 0.0) || intervals < 0) {
        return refuse("Litres and intervals cannot be negative, and the tank must hold water.");
    }
    return start + topUp * lost_L * intervals / net_L;
}

Result<double> topUpSteadyState(double topUp, double source, double lost_L, double changed_L)
{
    if (!(lost_L >= 0.0) || !(changed_L > 0.0)) {
        return refuse("Without water changes, what the top-up brings piles up without end.",
                      "Top up with demineralised water, or change some water.");
    }
    return source + topUp * lost_L / changed_L;
}

} // namespace littoral::water
