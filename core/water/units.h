// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

#include <compare>

/// Types for the quantities that are most often taken for one another. They convert only by name.
namespace littoral::water {

/// mg of nitrogen (in whatever form the name beside it says) per litre.
struct MgNPerL
{
    double value = 0.0;
    auto operator<=>(const MgNPerL&) const = default;
};

/// mg/L of nitrite as the ion.
struct NitriteIon
{
    double mg_per_L = 0.0;
    [[nodiscard]] constexpr MgNPerL asN() const { return {mg_per_L / kNitritePerN}; }
    [[nodiscard]] static constexpr NitriteIon from(MgNPerL n) { return {n.value * kNitritePerN}; }
};

/// mg/L of nitrate as the ion.
struct NitrateIon
{
    double mg_per_L = 0.0;
    [[nodiscard]] constexpr MgNPerL asN() const { return {mg_per_L / kNitratePerN}; }
    [[nodiscard]] static constexpr NitrateIon from(MgNPerL n) { return {n.value * kNitratePerN}; }
};

/// Alkalinity in meq/L, the unit in which carbonate hardness is kept.
struct MeqPerL
{
    double value = 0.0;
    auto operator<=>(const MeqPerL&) const = default;
};

/// Calcium plus magnesium in mmol/L, the unit in which general hardness is kept.
struct MmolPerL
{
    double value = 0.0;
    auto operator<=>(const MmolPerL&) const = default;
};

/// German degrees, of carbonate or of general hardness as the call says.
struct GermanDegrees
{
    double value = 0.0;
    auto operator<=>(const GermanDegrees&) const = default;

    [[nodiscard]] constexpr MeqPerL alkalinity() const { return {value * kMeqPerDegree}; }
    [[nodiscard]] constexpr MmolPerL hardness() const { return {value * kMmolPerDegree}; }
    [[nodiscard]] static constexpr GermanDegrees from(MeqPerL alkalinity) { return {alkalinity.value / kMeqPerDegree}; }
    [[nodiscard]] static constexpr GermanDegrees from(MmolPerL hardness) { return {hardness.value / kMmolPerDegree}; }
};

} // namespace littoral::water
