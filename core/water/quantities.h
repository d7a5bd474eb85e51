// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/nitrogen.h"
#include "core/water/units.h"

#include <compare>

/// More quantities that must not be added to one another: same unit on paper, different substance or basis. Arithmetic
/// within one type is allowed; from one type to another only by a named conversion.
namespace littoral::water {

template <typename Tag> struct Quantity
{
    double value = 0.0;
    auto operator<=>(const Quantity&) const = default;

    [[nodiscard]] friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.value + b.value}; }
    [[nodiscard]] friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.value - b.value}; }
    [[nodiscard]] friend constexpr Quantity operator*(Quantity a, double factor) { return {a.value * factor}; }
    [[nodiscard]] friend constexpr double operator/(Quantity a, Quantity b) { return a.value / b.value; }
};

/// mg/L of dissolved carbon dioxide (CO2 with the few per mille of carbonic acid).
using Co2 = Quantity<struct Co2Tag>;
/// mmol/L of carbon in all inorganic forms.
using TotalCarbon = Quantity<struct TotalCarbonTag>;
/// mg/L of phosphate as the ion, of phosphorus as the element.
using PhosphateIon = Quantity<struct PhosphateTag>;
using Phosphorus = Quantity<struct PhosphorusTag>;
/// mg/L of alkalinity or of hardness "as CaCO3".
using AlkalinityAsCaCO3 = Quantity<struct AlkalinityCaCO3Tag>;
using HardnessAsCaCO3 = Quantity<struct HardnessCaCO3Tag>;
/// mg/L of chlorine residual, free or combined, "as Cl2"; and mg/L of monochloramine as NH2Cl.
using ChlorineAsCl2 = Quantity<struct ChlorineTag>;
using Monochloramine = Quantity<struct MonochloramineTag>;
/// Litres of the two gallons, which differ by a fifth: the commonest slip in recipes from elsewhere.
using Litres = Quantity<struct LitresTag>;
using UsGallons = Quantity<struct UsGallonTag>;
using ImperialGallons = Quantity<struct ImperialGallonTag>;
/// °C as a reading, and kelvin as a difference: a difference converts to °F without the 32.
using Celsius = Quantity<struct CelsiusTag>;
using KelvinDifference = Quantity<struct KelvinDifferenceTag>;

[[nodiscard]] constexpr PhosphateIon asPhosphate(Phosphorus p)
{
    return {p.value * kPhosphatePerP};
}
[[nodiscard]] constexpr Phosphorus asPhosphorus(PhosphateIon ion)
{
    return {ion.value / kPhosphatePerP};
}
/// 1 meq/L is half a mmol/L of CaCO3: 50.04 mg/L.
[[nodiscard]] constexpr AlkalinityAsCaCO3 asCaCO3(MeqPerL alkalinity)
{
    return {alkalinity.value * kMolarMassCaCO3 / 2.0};
}
[[nodiscard]] constexpr MeqPerL asMeq(AlkalinityAsCaCO3 alkalinity)
{
    return {alkalinity.value * 2.0 / kMolarMassCaCO3};
}
[[nodiscard]] constexpr HardnessAsCaCO3 asCaCO3(MmolPerL hardness)
{
    return {hardness.value * kMolarMassCaCO3};
}
[[nodiscard]] constexpr MmolPerL asMmol(HardnessAsCaCO3 hardness)
{
    return {hardness.value / kMolarMassCaCO3};
}
[[nodiscard]] constexpr double fahrenheitSteps(KelvinDifference difference)
{
    return difference.value * 1.8;
}

} // namespace littoral::water
