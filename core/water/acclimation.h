// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/carbonate.h"

#include <span>

/// From the bag into the tank.
namespace littoral::water {

/// Share of the bag's own water after additions (litres each) without taking any out.
[[nodiscard]] Result<double> bagShare(double bag_L, std::span<const double> additions_L);
/// The same with a share taken out and replaced each time.
[[nodiscard]] Result<double> bagShareReplacing(double share, int times);
/// Minutes of drip until the bag holds `times` its volume.
[[nodiscard]] Result<double> dripTime_min(double bag_L, double times, double flow_mL_per_min);
/// mL/min that get there in the given time.
[[nodiscard]] Result<double> dripFlow_mL_per_min(double bag_L, double times, double minutes);

/// Change per hour of anything that went from one value to another in some minutes.
[[nodiscard]] constexpr double ratePerHour(double from, double to, double minutes)
{
    return (to - from) / minutes * 60.0;
}

/// What opening a long-closed bag does: carbon dioxide leaves within minutes, pH climbs, and ammonia that was bound
/// turns free.
struct BagOpening
{
    double pHClosed = 0.0;
    double pHOpen = 0.0;
    MgNPerL freeClosed;
    MgNPerL freeOpen;
};
[[nodiscard]] Result<BagOpening> openBag(MgNPerL total, MeqPerL alkalinity, Co2 closed, Co2 open, const Medium& medium);

} // namespace littoral::water
