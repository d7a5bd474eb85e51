// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

namespace littoral::water {

/// Light of a day, mol/m²: PPFD (µmol/m²/s) × hours × 0.0036.
[[nodiscard]] constexpr double dailyLight_mol(double ppfd, double hours)
{
    return ppfd * hours * 0.0036;
}
/// With ramps in which the light climbs and falls evenly, each `ramp_h` long and part of `hours`: a ramp counts half.
[[nodiscard]] Result<double> dailyLightWithRamps_mol(double ppfd, double hours, double ramp_h);
/// Hours at full light that give this sum; refuses no light and more than a day.
[[nodiscard]] Result<double> hoursForDailyLight(double mol, double ppfd);

} // namespace littoral::water
