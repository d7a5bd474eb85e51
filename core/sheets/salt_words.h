// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sheets/reckoner.h"
#include "core/water/salts.h"

/// What the sheets that weigh salts share.
namespace littoral::sheets {

[[nodiscard]] std::vector<Choice> saltChoices();
[[nodiscard]] std::vector<Choice> nutrientChoices();
[[nodiscard]] const water::Salt& saltOf(const Reckoner& in);
[[nodiscard]] water::Nutrient nutrientOf(const Reckoner& in);
[[nodiscard]] QString nutrientName(water::Nutrient nutrient);
/// All that `grams` of a salt in `litres` raises, but for the one asked about.
void moveAll(Reckoner& in, const water::Salt& salt, double grams, double litres, std::optional<water::Nutrient> but);
/// Cautions and notes every salt brings.
void saltCautions(Reckoner& in, const water::Salt& salt);
[[nodiscard]] Input netLitres();

} // namespace littoral::sheets
