// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

/// The limits the care rules act on, canonical units (mg N/L, meq/L, mmol/L, °C). Each names where it comes from; those
/// without a publication are common practice or this program's judgement, and say so wherever they are shown.
namespace littoral::care::limits {

/// Free ammonia that asks for a change at once with animals: 0.02 mg/L is the trade's limit; UF/IFAS FA16 puts harm
/// above 0.05 mg/L.
inline constexpr double kFreeAmmoniaAnimals = 0.02;
/// Nitrite with animals: 0.5 mg/L as the ion; by the rule of SRAC 462 5 mg/L of
/// chloride protects from it.
inline constexpr double kNitriteAnimals = 0.15;
/// The same in water poor in chloride: 0.1 mg/L as the ion (MSD/Merck Veterinary Manual, table of environmental
/// diseases).
inline constexpr double kNitriteAnimalsPoorChloride = 0.03;
/// Chloride below which water counts as poor in it, mg/L (highest band of the British Columbia guideline, from memory).
inline constexpr double kPoorChloride_mg_per_L = 10.0;
/// Total ammonia that harms plants in weeks (rosettes lost above 0.56 and failing at 0.81 mg N/L, Cao et al. 2007;
/// stems bear more): the change is asked for at 2.
inline constexpr double kAmmoniaPlants = 2.0;
/// Free ammonia that slows nitrite oxidisers.
inline constexpr double kFreeAmmoniaOxidisers = 0.2;
/// Nitrite during a cycle without animals from which the lane says so: 1 mg/L as the ion (judgement).
inline constexpr double kNitriteWatch = 1.0 / water::kNitritePerN;
/// Nitrate: 50 mg/L as the ion with animals (trade limit over source water), 80 in any tank (common practice).
inline constexpr double kNitrateAnimals = 50.0 / water::kNitratePerN;
inline constexpr double kNitrateAny = 80.0 / water::kNitratePerN;
/// Where one change for nitrate aims when the tank has no target of its own, mg/L as the ion 30 (common practice).
inline constexpr double kNitrateAim = 30.0 / water::kNitratePerN;
/// Degrees above the target from which hardening rock asks for more changes (common practice).
inline constexpr double kHardnessOverTarget_deg = 2.0;
/// Clear for the reading of a cycle: the first gate's limits (common practice).
inline constexpr double kAmmoniaClear = 0.20;
inline constexpr double kNitriteClear = 0.06;
/// Carbon dioxide never above this with animals (common practice; fish medicine texts aim below 20, toxic above 40).
inline constexpr double kCo2Animals_mg_per_L = 30.0;
/// Temperatures outside which gates hold and the lane says so (common practice).
inline constexpr double kWarm_C = 28.0;
inline constexpr double kCool_C = 20.0;
/// Carbonate hardness under which pH may fall and nitrification stall: 1 degree (common practice).
inline constexpr double kLowAlkalinity = 1.0 * water::kMeqPerDegree;

} // namespace littoral::care::limits
