// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sim/parameters.h"

#include "core/sim/model_constants.h"

#include <cmath>

namespace littoral::sim {

double ammoniumPKa(double temperature_C)
{
    return 0.09018 + 2729.92 / (temperature_C + 273.15);
}

double hydrogen_umol_per_L(double alkalinity_meq_per_L, double co2_mg_per_L)
{
    const double k = alkalinity_meq_per_L * 1000.0;
    const double carbon = 4.0 * kCarbonicAcid_umol_per_L * co2_mg_per_L * kCo2_umol_per_mg;
    return 0.5 * (std::sqrt(k * k + carbon) - k);
}

double freeShare(double alkalinity_meq_per_L, double co2_mg_per_L, double temperature_C)
{
    const double acid = std::pow(10.0, 6.0 - ammoniumPKa(temperature_C));
    return acid / (acid + hydrogen_umol_per_L(alkalinity_meq_per_L, co2_mg_per_L));
}

Coefficients<double> coefficientsOf(const Member& m, double injectedShare)
{
    const double warmth = m.temperature_C - 25.0;
    const double ammoniaTemperature = std::exp(kAmmoniaWarmth_per_C * warmth);
    const double nitriteTemperature = std::exp(kNitriteWarmth_per_C * warmth);
    const double inverseLow = std::pow(10.0, m.lowHalf_pH - 6.0);

    Coefficients<double> c;
    c.ammoniaGrowth = m.ammoniaGrowth_per_d;
    c.nitriteGrowth = m.nitriteGrowth_per_d;
    c.decayAmmonia = m.decay_per_d * ammoniaTemperature;
    c.decayNitrite = m.decay_per_d * nitriteTemperature;
    c.ammoniaHalf = m.ammoniaHalf_mgN_per_L;
    c.nitriteHalf = m.nitriteHalf_mgN_per_L;
    c.inverseCeiling = 1.0 / m.ceiling_mgN_per_L_d;
    c.fastSoil = m.fastSoil_per_d;
    c.slowSoil = m.slowSoil_per_d;
    c.ammonification = m.ammonification_per_d * nitriteTemperature; // TO and TN share one slope
    c.denitrification = m.denitrification_per_d;
    c.uptake = m.uptake_mgN_per_L_d;
    c.plantGrowth = m.plantGrowth_per_d;
    c.soilBuffering = m.soilBuffering_per_d;
    c.ammoniaTemperature = ammoniaTemperature;
    c.nitriteTemperature = nitriteTemperature;
    c.inverseLowAmmonia = inverseLow;
    c.inverseLowNitrite = inverseLow * kNitriteAcidShift;
    c.ammoniumAcid = std::pow(10.0, 6.0 - ammoniumPKa(m.temperature_C));
    c.carbonOff = 4.0 * kCarbonicAcid_umol_per_L * m.co2Off_mg_per_L * kCo2_umol_per_mg;
    c.carbonOn = 4.0 * kCarbonicAcid_umol_per_L * m.co2On_mg_per_L * kCo2_umol_per_mg;
    c.shareOn = injectedShare;
    return c;
}

} // namespace littoral::sim
