// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <vector>

/// Values no kit reads: worked out from readings taken at about the same time.
namespace littoral::facade {

struct ReckonedValue
{
    record::Moment at;
    double value = 0.0;
};

/// How far a companion reading may be off: pH moves within a day, hardness and temperature slowly.
inline constexpr double kPhReach_d = 1.0;
inline constexpr double kSlowReach_d = 7.0;

/// Free ammonia, mg/L N: each total ammonia reading with the pH nearest to it (within a day) and the temperature
/// nearest (within a week, else the layout's set one), by water::unionisedFraction. Readings below the scale count at
/// their bound: the cautious side.
[[nodiscard]] std::vector<ReckonedValue> reckonedFreeAmmonia(const record::LayoutRecord& layout);

/// CO2, mg/L: each pH reading with the KH nearest (within a week), water::co2FromPh at the ionic strength that GH and
/// KH give.
[[nodiscard]] std::vector<ReckonedValue> reckonedCo2(const record::LayoutRecord& layout);

} // namespace littoral::facade
