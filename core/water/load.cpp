// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/load.h"

#include "core/water/refusal.h"

namespace littoral::water {

namespace {
Error noVolume()
{
    return refuse("The volume must be above zero.", "Give the net litres of the tank.");
}
} // namespace

Result<double> feedNitrogen_mg_per_d(double feed_g_per_d, double proteinShare)
{
    if (!(feed_g_per_d >= 0.0) || !within(proteinShare, 0.0, 1.0)) {
        return refuse("Feed cannot be negative, and protein lies between 0 and 100 %.");
    }
    return feed_g_per_d * proteinShare * kAmmoniaNitrogenPerProtein * 1000.0;
}

Result<NitrateIon> nitratePerDay(double nitrogen_mg_per_d, double net_L)
{
    if (!(net_L > 0.0)) {
        return noVolume();
    }
    return NitrateIon::from(MgNPerL{nitrogen_mg_per_d / net_L});
}

Result<MeqPerL> alkalinityUsedPerDay(double nitrogen_mg_per_d, double net_L)
{
    if (!(net_L > 0.0)) {
        return noVolume();
    }
    return MeqPerL{nitrogen_mg_per_d / net_L * kAlkalinityPerNitrogen};
}

Result<RockExcess> rockExcess(double rise, double fraction)
{
    if (!(fraction > 0.0) || !(fraction <= 1.0)) {
        return refuse("Without water changes the excess has no end but that of the rock.");
    }
    return RockExcess{rise / fraction, rise * (1.0 - fraction) / fraction};
}

Result<double> shareForRock(double rise, double most)
{
    if (!(most > 0.0) || !(rise >= 0.0)) {
        return refuse("The excess allowed must be above zero.");
    }
    if (rise > most) {
        return refuse("The rock adds more in one interval than is allowed, so no share is enough.",
                      "Change more often, take rock out, or blend with softer water.");
    }
    return rise / most;
}

Result<double> rockRise(double firstBefore, double secondBefore, double fraction, double source)
{
    if (!within(fraction, 0.0, 1.0)) {
        return refuse("The share changed lies between 0 and 100 %.");
    }
    return secondBefore - (firstBefore + fraction * (source - firstBefore));
}

} // namespace littoral::water
