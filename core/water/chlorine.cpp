// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/chlorine.h"

#include "core/water/refusal.h"

namespace littoral::water {

Result<double> thiosulfate_g(ChlorineAsCl2 residual, double litres)
{
    if (!(residual.value >= 0.0) || !(litres >= 0.0)) {
        return refuse("Chlorine and litres cannot be negative.");
    }
    return residual.value * litres * kThiosulfatePerChlorine / 1000.0;
}

Result<ChlorineAsCl2> bleachStrength(double percent, BleachBasis basis, double density_kg_per_L)
{
    if (!(percent > 0.0) || percent > 20.0) {
        return refuse("Household bleach has more than 0 and at most 20 %.", "Read the label once more.");
    }
    if (!within(density_kg_per_L, 0.9, 1.4)) {
        return refuse("The density of bleach lies between 1.0 and 1.3 kg/L.");
    }
    constexpr double kMgPerLitrePerPercent = 10000.0;
    const double byVolume = percent * kMgPerLitrePerPercent;
    switch (basis) {
    case BleachBasis::HypochloriteByVolume:
        return ChlorineAsCl2{byVolume * kAvailablePerHypochlorite};
    case BleachBasis::HypochloriteByWeight:
        return ChlorineAsCl2{byVolume * density_kg_per_L * kAvailablePerHypochlorite};
    case BleachBasis::AvailableChlorine:
        break;
    }
    return ChlorineAsCl2{byVolume * density_kg_per_L};
}

Result<ChlorineAsCl2> dipStrength(ChlorineAsCl2 bleach, double parts)
{
    if (!(parts >= 0.0)) {
        return refuse("The parts of water cannot be negative.");
    }
    return ChlorineAsCl2{bleach.value / (1.0 + parts)};
}

Result<double> bleachFor_mL(ChlorineAsCl2 bleach, ChlorineAsCl2 dip, double dip_L)
{
    if (!(bleach.value > 0.0) || dip.value > bleach.value || !(dip.value >= 0.0) || !(dip_L > 0.0)) {
        return refuse("The dip cannot be stronger than the bleach, and needs a volume.");
    }
    return dip_L * 1000.0 * dip.value / bleach.value;
}

} // namespace littoral::water
