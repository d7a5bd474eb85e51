// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/carbonate.h"

#include "core/water/oxygen.h"
#include "core/water/refusal.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {

constexpr double kLowestPh = 2.0;
constexpr double kHighestPh = 13.0;
constexpr int kBisections = 60; // of 11 pH units: below 1e-17
constexpr double kMgPerMol = 1000.0 * kMolarMassCO2;

/// The five terms of a fitted constant, log10 K.
struct Fit
{
    double a, b, c, d, e;
    [[nodiscard]] double at(double kelvin) const
    {
        return a + b * kelvin + c / kelvin + d * std::log10(kelvin) + e / (kelvin * kelvin);
    }
};

constexpr Fit kHenry{108.3865, 0.01985076, -6919.53, -40.45154, 669365.0};
constexpr Fit kFirst{-356.3094, -0.06091964, 21834.37, 126.8339, -1684915.0};
constexpr Fit kSecond{-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9};
constexpr Fit kWater{-283.971, -0.05069842, 13323.0, 102.24447, -1119669.0};
constexpr Fit kCalcite{-171.9065, -0.077993, 2839.319, 71.595, 0.0};
constexpr Fit kAragonite{-171.9773, -0.077993, 2903.293, 71.595, 0.0};
constexpr Fit kPairBicarbonate{1209.120, 0.31294, -34765.05, -478.782, 0.0};
constexpr Fit kPairCarbonate{-1228.732, -0.299444, 35512.75, 485.818, 0.0};

Error badTemperature()
{
    return refuse("The constants hold from 0 to 50 °C.", "Give the temperature in degrees Celsius.");
}

Error badPh()
{
    return refuse("The pH lies outside 2 to 13.", "Check the decimal mark of the pH.");
}

/// Concentrations in mol/L for one mol/L of free bicarbonate alkalinity left after H and OH.
struct Speciation
{
    double co2 = 0.0;
    double bicarbonate = 0.0;
    double carbonate = 0.0;
};

struct Model
{
    CarbonateConstants k;
    double g1 = 1.0;
    double g2 = 1.0;

    [[nodiscard]] Speciation at(double pH, double alkalinity_mol) const
    {
        const double h = std::pow(10.0, -pH);
        const double excess = alkalinity_mol + h / g1 - std::pow(10.0, -k.pKw) / (h * g1);
        const double ratio = std::pow(10.0, -k.pK2) * g1 / (g2 * h); // CO3 per HCO3
        Speciation s;
        s.bicarbonate = excess / (1.0 + 2.0 * ratio);
        s.carbonate = s.bicarbonate * ratio;
        s.co2 = h * g1 * s.bicarbonate / std::pow(10.0, -k.pK1);
        return s;
    }
};

Result<Model> modelFor(const Medium& medium)
{
    const auto constants = carbonateConstants(medium.t_C);
    if (!constants) {
        return constants.error();
    }
    if (!within(medium.ionicStrength, 0.0, 0.1)) {
        return refuse("The activities hold up to an ionic strength of 0.1 mol/L, about 7700 µS/cm.",
                      "Brackish and sea water are outside this reckoning.");
    }
    return Model{*constants, activityCoefficient(1, medium), activityCoefficient(2, medium)};
}

/// The pH at which a falling function passes zero.
template <typename Falling> double solvePh(const Falling& falling)
{
    double low = kLowestPh;
    double high = kHighestPh;
    for (int i = 0; i < kBisections; ++i) {
        const double middle = 0.5 * (low + high);
        (falling(middle) > 0.0 ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

} // namespace

Result<CarbonateConstants> carbonateConstants(double t_C)
{
    if (!within(t_C, 0.0, 50.0)) {
        return badTemperature();
    }
    const double kelvin = t_C + kZeroCelsius_K;
    return CarbonateConstants{-kHenry.at(kelvin),          -kFirst.at(kelvin),       -kSecond.at(kelvin),
                              -kWater.at(kelvin),          -kCalcite.at(kelvin),     -kAragonite.at(kelvin),
                              kPairBicarbonate.at(kelvin), kPairCarbonate.at(kelvin)};
}

double activityCoefficient(int charge, const Medium& medium)
{
    const double t = medium.t_C;
    const double kelvin = t + kZeroCelsius_K;
    const double permittivity = 87.740 - 0.40008 * t + 9.398e-4 * t * t - 1.410e-6 * t * t * t;
    // Density of water, g/cm³, to 2e-4 between 0 and 50 °C: its root enters, so 1e-4 of the slope.
    const double density = 1.0 - (t - 3.98) * (t - 3.98) / 503570.0 * (t + 283.0) / (t + 67.26);
    const double slope = 1.82483e6 * std::sqrt(density) / std::pow(permittivity * kelvin, 1.5);
    const double root = std::sqrt(medium.ionicStrength);
    const double term = root / (1.0 + root) - 0.3 * medium.ionicStrength;
    return std::pow(10.0, -slope * charge * charge * term);
}

double ionicStrength(const Ions& ions)
{
    const double twice = ions.calcium + ions.magnesium + ions.sulfate;
    const double once = ions.sodium + ions.potassium + ions.bicarbonate + ions.chloride + ions.nitrate;
    return 0.5 * (4.0 * twice + once) / 1000.0;
}

double ionicStrengthFromHardness(MmolPerL hardness, MeqPerL alkalinity)
{
    const double charge = std::max(2.0 * hardness.value, alkalinity.value);
    const double single = charge - 2.0 * hardness.value; // sodium and potassium beside bicarbonate
    return 0.5 * (4.0 * hardness.value + single + charge) / 1000.0;
}

Result<Co2> co2FromChart(double pH, MeqPerL alkalinity, double t_C)
{
    const auto k = carbonateConstants(t_C);
    if (!k) {
        return k.error();
    }
    if (!within(pH, 4.0, 10.0)) {
        return refuse("The chart holds from pH 4 to 10.", "Check the decimal mark of the pH.");
    }
    if (!(alkalinity.value > 0.0)) {
        return refuse("Without alkalinity the pH says nothing about carbon dioxide.",
                      "Use a reference solution with an indicator, or a cylinder weighed every week.");
    }
    return Co2{alkalinity.value * kMolarMassCO2 * std::pow(10.0, k->pK1 - pH)};
}

Result<double> phFromChart(Co2 co2, MeqPerL alkalinity, double t_C)
{
    const auto k = carbonateConstants(t_C);
    if (!k) {
        return k.error();
    }
    if (!(co2.value > 0.0) || !(alkalinity.value > 0.0)) {
        return refuse("Carbon dioxide and alkalinity must both be above zero.");
    }
    return k->pK1 - std::log10(co2.value / (alkalinity.value * kMolarMassCO2));
}

Result<Co2> co2FromPh(double pH, MeqPerL alkalinity, const Medium& medium)
{
    const auto model = modelFor(medium);
    if (!model) {
        return model.error();
    }
    if (!within(pH, kLowestPh, kHighestPh)) {
        return badPh();
    }
    const double co2 = model->at(pH, alkalinity.value / 1000.0).co2;
    if (!(co2 >= 0.0)) {
        return refuse("No water of this alkalinity has this pH: more of it would have to be hydroxide.",
                      "Read pH and alkalinity once more, at the same hour.");
    }
    return Co2{co2 * kMgPerMol};
}

Result<double> phFromCo2(Co2 co2, MeqPerL alkalinity, const Medium& medium)
{
    const auto model = modelFor(medium);
    if (!model) {
        return model.error();
    }
    if (!(co2.value > 0.0) || co2.value > 2000.0 || !within(alkalinity.value, -1.0, 50.0)) {
        return refuse("Carbon dioxide must lie above 0 and up to 2000 mg/L, alkalinity from -1 to 50 meq/L.");
    }
    const double wanted = co2.value / kMgPerMol;
    return solvePh([&](double pH) { return model->at(pH, alkalinity.value / 1000.0).co2 - wanted; });
}

Result<TotalCarbon> totalCarbon(double pH, MeqPerL alkalinity, const Medium& medium)
{
    const auto co2 = co2FromPh(pH, alkalinity, medium); // makes the checks
    if (!co2) {
        return co2.error();
    }
    const auto model = modelFor(medium);
    const Speciation s = model->at(pH, alkalinity.value / 1000.0);
    return TotalCarbon{(s.co2 + s.bicarbonate + s.carbonate) * 1000.0};
}

Result<double> phFromCarbon(TotalCarbon carbon, MeqPerL alkalinity, const Medium& medium)
{
    const auto model = modelFor(medium);
    if (!model) {
        return model.error();
    }
    if (!(carbon.value >= 0.0) || !within(alkalinity.value, -10.0, 50.0)) {
        return refuse("Total carbon must not be negative, and alkalinity must lie from -10 to 50 meq/L.");
    }
    // For a given pH the share of each form is fixed, and alkalinity rises with pH.
    return solvePh([&](double pH) {
        const double h = std::pow(10.0, -pH);
        const double toCo2 = h * model->g1 / std::pow(10.0, -model->k.pK1);
        const double toCarbonate = std::pow(10.0, -model->k.pK2) * model->g1 / (model->g2 * h);
        const double bicarbonate = carbon.value / (1.0 + toCo2 + toCarbonate);
        const double hydroxide = std::pow(10.0, -model->k.pKw) / (h * model->g1);
        const double reached = bicarbonate * (1.0 + 2.0 * toCarbonate) + 1000.0 * (hydroxide - h / model->g1);
        return alkalinity.value - reached;
    });
}

Result<CarbonatePortion> mixPortions(std::span<const CarbonatePortion> portions)
{
    CarbonatePortion mix;
    mix.medium = {0.0, 0.0};
    for (const CarbonatePortion& portion : portions) {
        if (!(portion.litres >= 0.0)) {
            return refuse("A volume in the mixture is negative.");
        }
        mix.litres += portion.litres;
        mix.alkalinity.value += portion.litres * portion.alkalinity.value;
        mix.carbon.value += portion.litres * portion.carbon.value;
        mix.calcium_mmol_per_L += portion.litres * portion.calcium_mmol_per_L;
        mix.medium.t_C += portion.litres * portion.medium.t_C;
        mix.medium.ionicStrength += portion.litres * portion.medium.ionicStrength;
    }
    if (!(mix.litres > 0.0)) {
        return refuse("There is no water in the mixture.");
    }
    mix.alkalinity.value /= mix.litres;
    mix.carbon.value /= mix.litres;
    mix.calcium_mmol_per_L /= mix.litres;
    mix.medium.t_C /= mix.litres;
    mix.medium.ionicStrength /= mix.litres;
    return mix;
}

Result<double> phOf(const CarbonatePortion& portion)
{
    return phFromCarbon(portion.carbon, portion.alkalinity, portion.medium);
}

Result<Co2> airCo2(double t_C, double ppm, double pressure_atm)
{
    const auto k = carbonateConstants(t_C);
    if (!k) {
        return k.error();
    }
    if (!within(ppm, 0.0, 1.0e6) || !within(pressure_atm, 0.5, 1.1)) {
        return refuse("Air holds 0 to 1 000 000 ppm, and the pressure must lie from 0.5 to 1.1 atm.");
    }
    const double partial = ppm * 1.0e-6 * (pressure_atm - vapourPressure_atm(t_C));
    return Co2{std::pow(10.0, -k->pKH) * partial * kMgPerMol};
}

Co2 co2FromDrop(Co2 base, double drop)
{
    return {base.value * std::pow(10.0, drop)};
}

Result<double> dropForCo2(Co2 base, Co2 target)
{
    if (!(base.value > 0.0) || !(target.value > 0.0)) {
        return refuse("Both amounts of carbon dioxide must be above zero.");
    }
    return std::log10(target.value / base.value);
}

} // namespace littoral::water
