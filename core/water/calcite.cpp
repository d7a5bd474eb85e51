// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/calcite.h"

#include "core/water/refusal.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {

constexpr int kPairRounds = 50; // the pairs take a few per cent of calcium: each round gains a digit or more
constexpr int kBisections = 60;
constexpr double kMostDissolved_mol = 0.05; // far above what any CO2 pressure in a tank dissolves

double power(double exponent)
{
    return std::pow(10.0, exponent);
}

/// Free calcium, mol/L, beside these activities of bicarbonate and carbonate.
struct Pairs
{
    double withBicarbonate = 0.0; ///< mol/L per mol/L of free calcium
    double withCarbonate = 0.0;
};

struct Limestone
{
    CarbonateConstants k;
    double g1 = 1.0;
    double g2 = 1.0;

    [[nodiscard]] Pairs pairs(double bicarbonateActivity, double carbonateActivity) const
    {
        return {power(k.logPairBicarbonate) * g2 * bicarbonateActivity / g1,
                power(k.logPairCarbonate) * g2 * carbonateActivity};
    }
    [[nodiscard]] double index(double freeCalcium, double carbonateActivity) const
    {
        return std::log10(g2 * freeCalcium * carbonateActivity) + k.pKcalcite;
    }
};

Result<Limestone> limestoneFor(const Medium& medium)
{
    const auto constants = carbonateConstants(medium.t_C);
    if (!constants) {
        return constants.error();
    }
    return Limestone{*constants, activityCoefficient(1, medium), activityCoefficient(2, medium)};
}

/// Saturation and pH of water held at a CO2 activity, for one amount dissolved.
struct Held
{
    double index = 0.0;
    double pH = 0.0;
};

Held heldAt(const Limestone& stone, double co2_mol, double alkalinity_mol, double calcium_mol)
{
    double low = 2.0;
    double high = 13.0;
    Held held;
    for (int i = 0; i < kBisections; ++i) {
        held.pH = 0.5 * (low + high);
        const double h = power(-held.pH);
        const double bicarbonate = power(-stone.k.pK1) * co2_mol / h; // activities
        const double carbonate = power(-stone.k.pK2) * bicarbonate / h;
        const Pairs pairs = stone.pairs(bicarbonate, carbonate);
        const double free = calcium_mol / (1.0 + pairs.withBicarbonate + pairs.withCarbonate);
        const double reached = bicarbonate / stone.g1 + 2.0 * carbonate / stone.g2 +
                               free * (pairs.withBicarbonate + 2.0 * pairs.withCarbonate) +
                               power(-stone.k.pKw) / (h * stone.g1) - h / stone.g1;
        held.index = stone.index(free, carbonate);
        (reached < alkalinity_mol ? low : high) = held.pH;
    }
    return held;
}

} // namespace

Result<double> calciteSaturation(double pH, MeqPerL alkalinity, double calcium_mmol_per_L, const Medium& medium)
{
    const auto co2 = co2FromPh(pH, alkalinity, medium); // makes the checks
    if (!co2) {
        return co2.error();
    }
    if (!(calcium_mmol_per_L > 0.0) || !(alkalinity.value > 0.0)) {
        return refuse("Without calcium or without alkalinity there is no saturation to reckon: limestone dissolves.");
    }
    const auto stone = limestoneFor(medium);
    const double h = power(-pH);
    const double calcium = calcium_mmol_per_L / 1000.0;
    const double excess = alkalinity.value / 1000.0 + h / stone->g1 - power(-stone->k.pKw) / (h * stone->g1);
    const double ratio = power(-stone->k.pK2) * stone->g1 / (stone->g2 * h);
    double paired = 0.0;
    double index = 0.0;
    for (int round = 0; round < kPairRounds; ++round) {
        const double bicarbonate = std::max(0.0, excess - paired) / (1.0 + 2.0 * ratio);
        const double carbonateActivity = bicarbonate * ratio * stone->g2;
        const Pairs pairs = stone->pairs(bicarbonate * stone->g1, carbonateActivity);
        const double free = calcium / (1.0 + pairs.withBicarbonate + pairs.withCarbonate);
        paired = free * (pairs.withBicarbonate + 2.0 * pairs.withCarbonate);
        index = stone->index(free, carbonateActivity);
    }
    return index;
}

Result<double> langelierIndex(double pH, double solids_mg_per_L, double t_C, HardnessAsCaCO3 calcium,
                              AlkalinityAsCaCO3 alkalinity)
{
    if (!(solids_mg_per_L > 0.0) || !(calcium.value > 0.0) || !(alkalinity.value > 0.0) || !within(t_C, 0.0, 90.0)) {
        return refuse("The index needs solids, calcium and alkalinity above zero, and 0 to 90 °C.");
    }
    const double a = (std::log10(solids_mg_per_L) - 1.0) / 10.0;
    const double b = -13.12 * std::log10(t_C + 273.0) + 34.55;
    const double c = std::log10(calcium.value) - 0.4;
    const double d = std::log10(alkalinity.value);
    return pH - (9.3 + a + b - c - d);
}

Result<LimestoneEnd> limestoneEnd(MeqPerL alkalinity, double calcium_mmol_per_L, Co2 co2, const Medium& start)
{
    const auto constants = carbonateConstants(start.t_C);
    if (!constants) {
        return constants.error();
    }
    if (!(co2.value > 0.0) || !(calcium_mmol_per_L >= 0.0) || !within(alkalinity.value, 0.0, 50.0)) {
        return refuse("Carbon dioxide must be above zero, calcium and alkalinity not negative.");
    }
    const double co2_mol = co2.value / (1000.0 * kMolarMassCO2);
    double low = -std::min(calcium_mmol_per_L, alkalinity.value / 2.0) / 1000.0;
    double high = kMostDissolved_mol;
    double dissolved = 0.0;
    Held held;
    for (int i = 0; i < kBisections; ++i) {
        dissolved = 0.5 * (low + high);
        // One mole of limestone adds one of calcium and two of bicarbonate: three to the ionic strength.
        const Medium medium{start.t_C, std::max(0.0, start.ionicStrength + 3.0 * dissolved)};
        const auto stone = limestoneFor(medium);
        held = heldAt(*stone, co2_mol, alkalinity.value / 1000.0 + 2.0 * dissolved,
                      calcium_mmol_per_L / 1000.0 + dissolved);
        (held.index < 0.0 ? low : high) = dissolved;
    }
    return LimestoneEnd{dissolved * 1000.0, MeqPerL{alkalinity.value + 2000.0 * dissolved},
                        calcium_mmol_per_L + 1000.0 * dissolved, held.pH};
}

} // namespace littoral::water
