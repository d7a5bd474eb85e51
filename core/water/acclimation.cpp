// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/acclimation.h"

#include "core/water/ammonia.h"
#include "core/water/refusal.h"

#include <cmath>

namespace littoral::water {

namespace {
Error noBag()
{
    return refuse("The bag must hold some water, and the additions cannot be negative.");
}
} // namespace

Result<double> bagShare(double bag_L, std::span<const double> additions_L)
{
    double total = bag_L;
    for (const double addition : additions_L) {
        if (!(addition >= 0.0)) {
            return noBag();
        }
        total += addition;
    }
    return bag_L > 0.0 ? Result<double>(bag_L / total) : Result<double>(noBag());
}

Result<double> bagShareReplacing(double share, int times)
{
    if (!within(share, 0.0, 1.0) || times < 0) {
        return refuse("The share replaced lies between 0 and 100 %.");
    }
    return std::pow(1.0 - share, times);
}

Result<double> dripTime_min(double bag_L, double times, double flow_mL_per_min)
{
    if (!(bag_L > 0.0) || !(times >= 1.0) || !(flow_mL_per_min > 0.0)) {
        return refuse("Bag and drip must be above zero, and the end volume at least that of the bag.");
    }
    return (times - 1.0) * bag_L * 1000.0 / flow_mL_per_min;
}

Result<double> dripFlow_mL_per_min(double bag_L, double times, double minutes)
{
    if (!(bag_L > 0.0) || !(times >= 1.0) || !(minutes > 0.0)) {
        return refuse("Bag and time must be above zero, and the end volume at least that of the bag.");
    }
    return (times - 1.0) * bag_L * 1000.0 / minutes;
}

Result<BagOpening> openBag(MgNPerL total, MeqPerL alkalinity, Co2 closed, Co2 open, const Medium& medium)
{
    const auto before = phFromCo2(closed, alkalinity, medium);
    const auto after = phFromCo2(open, alkalinity, medium);
    if (!before || !after) {
        return before ? after.error() : before.error();
    }
    const auto bound = freeAmmonia(total, *before, medium.t_C);
    const auto free = freeAmmonia(total, *after, medium.t_C);
    if (!bound || !free) {
        return refuse("Total ammonia cannot be negative.");
    }
    return BagOpening{*before, *after, *bound, *free};
}

} // namespace littoral::water
