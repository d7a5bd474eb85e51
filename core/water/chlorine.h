// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/quantities.h"

/// Chlorine in tap water, what removes it, and hypochlorite dips. Bleach is never mixed with acids, ammonia or other
/// cleaners; label, safety data sheet and local rules come first.
namespace littoral::water {

/// g/mol of sodium thiosulfate pentahydrate and of chlorine.
inline constexpr double kMolarMassThiosulfate =
    2.0 * atomic::kNa + 2.0 * atomic::kS + 3.0 * atomic::kO + 5.0 * (2.0 * atomic::kH + atomic::kO);
inline constexpr double kMolarMassCl2 = 2.0 * atomic::kCl;

/// mg of thiosulfate pentahydrate per mg of chlorine by the way the reaction goes: two to one (tetrathionate, the
/// demand to dose by: an instrument maker gives 7.0), one to one (sulfur, in acid water), one to four (sulfate).
inline constexpr double kThiosulfatePerChlorine = 2.0 * kMolarMassThiosulfate / kMolarMassCl2;
inline constexpr double kThiosulfatePerChlorineSulfur = kMolarMassThiosulfate / kMolarMassCl2;
inline constexpr double kThiosulfatePerChlorineSulfate = kMolarMassThiosulfate / (4.0 * kMolarMassCl2);

/// Grams of thiosulfate pentahydrate for a volume of tap water.
[[nodiscard]] Result<double> thiosulfate_g(ChlorineAsCl2 residual, double litres);

/// mg/L of ammonia nitrogen that one mg/L of combined chlorine "as Cl2" leaves behind when it is broken.
inline constexpr double kNitrogenPerCombinedChlorine = atomic::kN / kMolarMassCl2;
[[nodiscard]] constexpr MgNPerL ammoniaFromChloramine(ChlorineAsCl2 combined)
{
    return {combined.value * kNitrogenPerCombinedChlorine};
}
/// One NH2Cl counts as one Cl2.
[[nodiscard]] constexpr ChlorineAsCl2 asCl2(Monochloramine chloramine)
{
    return {chloramine.value * kMolarMassCl2 / (atomic::kN + 2.0 * atomic::kH + atomic::kCl)};
}

/// mg of available chlorine per mg of sodium hypochlorite.
inline constexpr double kAvailablePerHypochlorite = kMolarMassCl2 / (atomic::kNa + atomic::kCl + atomic::kO);

/// What the per cent on a bleach label means.
enum class BleachBasis {
    HypochloriteByVolume, ///< g of NaOCl in 100 mL
    HypochloriteByWeight, ///< g of NaOCl in 100 g
    AvailableChlorine     ///< g of available chlorine in 100 g
};
/// mg/L of available chlorine as sold. Density of household bleach 1.07-1.2 kg/L. Strength halves in months.
[[nodiscard]] Result<ChlorineAsCl2> bleachStrength(double percent, BleachBasis basis, double density_kg_per_L);

/// `parts` of water to one of bleach: "1 + 19" is parts = 19. ("1:20" may mean 19 or 20.)
[[nodiscard]] Result<ChlorineAsCl2> dipStrength(ChlorineAsCl2 bleach, double parts);
/// mL of bleach in `dip_L` of a dip of this strength.
[[nodiscard]] Result<double> bleachFor_mL(ChlorineAsCl2 bleach, ChlorineAsCl2 dip, double dip_L);

} // namespace littoral::water
