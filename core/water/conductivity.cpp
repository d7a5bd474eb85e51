// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/conductivity.h"

#include <cmath>

namespace littoral::water {

namespace {

/// Limiting conductivity of an ion at 25 °C, S cm²/eq (handbook values, from memory), and its charge.
struct Mobility
{
    double limit;
    int charge;
};
constexpr Mobility kCalcium{59.5, 2};
constexpr Mobility kMagnesium{53.0, 2};
constexpr Mobility kSodium{50.1, 1};
constexpr Mobility kPotassium{73.5, 1};
constexpr Mobility kBicarbonate{44.5, 1};
constexpr Mobility kSulfate{80.0, 2};
constexpr Mobility kChloride{76.3, 1};
constexpr Mobility kNitrate{71.4, 1};

/// Onsager's two retardations per root of ionic strength at 25 °C, and the closest approach of 0.36 nm that Falkenhagen
/// puts below them.
double conductivity(const Mobility& ion, double mmol_per_L, double root)
{
    const double retarded = (30.1 * ion.charge + 0.229 * ion.charge * ion.limit) * root / (1.0 + 3.29 * 0.36 * root);
    return mmol_per_L * ion.charge * (ion.limit - retarded);
}

} // namespace

double conductivityOf_uS(const Ions& ions)
{
    const double root = std::sqrt(ionicStrength(ions));
    return conductivity(kCalcium, ions.calcium, root) + conductivity(kMagnesium, ions.magnesium, root) +
           conductivity(kSodium, ions.sodium, root) + conductivity(kPotassium, ions.potassium, root) +
           conductivity(kBicarbonate, ions.bicarbonate, root) + conductivity(kSulfate, ions.sulfate, root) +
           conductivity(kChloride, ions.chloride, root) + conductivity(kNitrate, ions.nitrate, root);
}

} // namespace littoral::water
