// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/constants.h"

/// Hardness and alkalinity. "Carbonate hardness" as kits read it is total alkalinity by acid titration, so it may
/// exceed general hardness (bicarbonate of soda does that) and is never limited to it.
namespace littoral::water {

/// g/mol, from the atomic weights.
inline constexpr double kMolarMassCaO = atomic::kCa + atomic::kO;
inline constexpr double kMolarMassCaCO3 = atomic::kCa + atomic::kC + 3.0 * atomic::kO;
inline constexpr double kMolarMassHCO3 = atomic::kH + atomic::kC + 3.0 * atomic::kO;

/// One German degree is 10 mg/L of CaO (DIN definition): in mmol/L of Ca + Mg, in meq/L, in mg/L of CaCO3.
inline constexpr double kMmolPerDegree = 10.0 / kMolarMassCaO;
inline constexpr double kMeqPerDegree = 2.0 * kMmolPerDegree;
inline constexpr double kCaCO3MgPerDegree = kMmolPerDegree * kMolarMassCaCO3;

/// mg/L of CaCO3 in one French degree (definition), one Clark degree (a grain per imperial gallon), one grain per US
/// gallon.
inline constexpr double kGrain_mg = 64.79891;
inline constexpr double kCaCO3MgPerFrenchDegree = 10.0;
inline constexpr double kCaCO3MgPerClarkDegree = kGrain_mg / 4.54609;
inline constexpr double kCaCO3MgPerGrainUS = kGrain_mg / 3.785411784;

/// mg/L of the ion in one German degree.
inline constexpr double kBicarbonateMgPerDegree = kMeqPerDegree * kMolarMassHCO3;
inline constexpr double kCalciumMgPerDegree = kMmolPerDegree * atomic::kCa;
inline constexpr double kMagnesiumMgPerDegree = kMmolPerDegree * atomic::kMg;

/// German degrees to other scales.
[[nodiscard]] constexpr double frenchFromGerman(double degrees)
{
    return degrees * kCaCO3MgPerDegree / kCaCO3MgPerFrenchDegree;
}
[[nodiscard]] constexpr double clarkFromGerman(double degrees)
{
    return degrees * kCaCO3MgPerDegree / kCaCO3MgPerClarkDegree;
}
[[nodiscard]] constexpr double grainsUSFromGerman(double degrees)
{
    return degrees * kCaCO3MgPerDegree / kCaCO3MgPerGrainUS;
}

/// General hardness in German degrees from mg/L of calcium and magnesium.
[[nodiscard]] constexpr double generalHardness_dGH(double calcium_mg_per_L, double magnesium_mg_per_L)
{
    return (calcium_mg_per_L / atomic::kCa + magnesium_mg_per_L / atomic::kMg) / kMmolPerDegree;
}

/// Carbonate hardness in German degrees from mg/L of bicarbonate (all alkalinity taken as bicarbonate: right to 2 %
/// below pH 8.3).
[[nodiscard]] constexpr double carbonateHardness_dKH(double bicarbonate_mg_per_L)
{
    return bicarbonate_mg_per_L / kMolarMassHCO3 / kMeqPerDegree;
}

} // namespace littoral::water
