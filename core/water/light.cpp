// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/light.h"

#include "core/water/refusal.h"

namespace littoral::water {

Result<double> dailyLightWithRamps_mol(double ppfd, double hours, double ramp_h)
{
    if (!within(hours, 0.0, 24.0) || !(ramp_h >= 0.0) || 2.0 * ramp_h > hours) {
        return refuse("The day has 24 hours, and the two ramps must fit into the hours of light.");
    }
    return dailyLight_mol(ppfd, hours - ramp_h);
}

Result<double> hoursForDailyLight(double mol, double ppfd)
{
    if (!(ppfd > 0.0) || !(mol >= 0.0)) {
        return refuse("Without light no number of hours gives a sum.");
    }
    const double hours = mol / dailyLight_mol(ppfd, 1.0);
    if (hours > 24.0) {
        return refuse("This sum needs more than 24 hours of such light.", "Use a stronger or a nearer lamp.");
    }
    return hours;
}

} // namespace littoral::water
