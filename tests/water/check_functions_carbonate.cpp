// SPDX-License-Identifier: GPL-3.0-or-later
// Functions by the names the check rows use: carbonate system and limestone.
#include "tests/water/check_functions.h"

#include "core/water/calcite.h"
#include "core/water/carbonate.h"
#include "core/water/salts.h"
#include "core/water/uncertain.h"

#include <array>
#include <cmath>

namespace littoral::test {

using namespace littoral::water;

namespace {

double value(const Result<Co2>& co2)
{
    return co2 ? co2->value : kNothing;
}

Ions ionsOf(double alkalinity, std::span<const double> i)
{
    return {i[0], i[1], i[2], i[3], alkalinity, i[4], i[5], i[6]};
}

/// The pH of a bicarbonate reference solution at a CO2 level; its ions are sodium and bicarbonate.
double referencePh(double co2, double dKH, double t)
{
    const MeqPerL alkalinity = GermanDegrees{dKH}.alkalinity();
    return orNothing(phFromCo2({co2}, alkalinity, {t, alkalinity.value / 1000.0}));
}

double airPh(const Inputs& i)
{
    const MeqPerL alkalinity = GermanDegrees{i[0]}.alkalinity();
    const auto co2 = airCo2(i[1], i[2]);
    return co2 ? orNothing(phFromCo2(*co2, alkalinity, {i[1], alkalinity.value / 1000.0})) : kNothing;
}

/// CO2 in water under a partial pressure of it, mg/L.
double co2Under(double partial_atm, double t)
{
    return partial_atm * std::pow(10.0, -carbonateConstants(t)->pKH) * 1000.0 * kMolarMassCO2;
}

LimestoneEnd endFor(double co2, double t)
{
    return limestoneEnd(MeqPerL{0.0}, 0.0, {co2}, {t, 0.0}).value();
}

CarbonatePortion portion(double litres, double pH, MeqPerL alkalinity, double calcium, double magnesium, double t)
{
    const Medium medium{t, ionicStrengthFromHardness({calcium + magnesium}, alkalinity)};
    return {litres, alkalinity, totalCarbon(pH, alkalinity, medium).value(), calcium, medium};
}

double mixedPh(const CarbonatePortion& a, const CarbonatePortion& b)
{
    return orNothing(phOf(mixPortions(std::array{a, b}).value()));
}

/// Two limestone waters, one in air and one under more CO2, mixed: their saturation.
double mixedSaturation(const Inputs& i)
{
    const double t = i[2];
    std::vector<CarbonatePortion> waters;
    for (const double co2 : {airCo2(t, i[0])->value, co2Under(i[1], t)}) {
        const LimestoneEnd end = endFor(co2, t);
        waters.push_back(portion(1.0, end.pH, end.alkalinity, end.calcium_mmol_per_L, 0.0, t));
    }
    const CarbonatePortion mix = mixPortions(waters).value();
    return orNothing(calciteSaturation(phOf(mix).value(), mix.alkalinity, mix.calcium_mmol_per_L, mix.medium));
}

FunctionMap co2Functions()
{
    return {
        {"co2_chart",
         [](const Inputs& i) { return value(co2FromChart(i[0], GermanDegrees{i[1]}.alkalinity(), i[2])); }},
        {"co2_chart_caco3",
         [](const Inputs& i) { return value(co2FromChart(i[0], asMeq(AlkalinityAsCaCO3{i[1]}), i[2])); }},
        {"co2_factor", [](const Inputs&) { return kMeqPerDegree * kMolarMassCO2; }},
        {"co2_davies",
         [](const Inputs& i) {
             return value(co2FromPh(i[0], MeqPerL{i[1]}, {i[2], i[3]}));
         }},
        {"co2_davies_ions",
         [](const Inputs& i) {
             const double strength = ionicStrength(ionsOf(i[1], std::span(i).subspan(3)));
             return value(co2FromPh(i[0], MeqPerL{i[1]}, {i[2], strength}));
         }},
        {"ph_chart",
         [](const Inputs& i) { return orNothing(phFromChart({i[0]}, GermanDegrees{i[1]}.alkalinity(), i[2])); }},
        {"ph_reference", [](const Inputs& i) { return referencePh(i[0], i[1], i[2]); }},
        {"reference_nahco3",
         [](const Inputs& i) { return 1000.0 * orNothing(gramsForAlkalinity(*findSalt("nahco3"), i[0], 1.0)); }},
        {"air_co2", [](const Inputs& i) { return value(airCo2(i[0], i[1])); }},
        {"air_ph", airPh},
        {"co2_drop", [](const Inputs& i) { return co2FromDrop({i[0]}, i[1]).value; }},
        {"drop_needed", [](const Inputs& i) { return orNothing(dropForCo2(airCo2(i[0], i[1]).value(), {i[2]})); }},
        {"co2_relative_error",
         [](const Inputs& i) {
             const auto co2 = [](std::span<const double> x) {
                 return value(co2FromChart(x[1], GermanDegrees{x[0]}.alkalinity(), 25.0));
             };
             const std::array inputs{Measured{i[0], i[1]}, Measured{7.0, i[2]}};
             return firstOrderError(co2, inputs) / co2(std::array{i[0], 7.0});
         }},
    };
}

} // namespace

FunctionMap carbonateFunctions()
{
    FunctionMap all{
        {"pkh", [](const Inputs& i) { return carbonateConstants(i[0])->pKH; }},
        {"pk1", [](const Inputs& i) { return carbonateConstants(i[0])->pK1; }},
        {"pk2", [](const Inputs& i) { return carbonateConstants(i[0])->pK2; }},
        {"pkw", [](const Inputs& i) { return carbonateConstants(i[0])->pKw; }},
        {"pkcalcite", [](const Inputs& i) { return carbonateConstants(i[0])->pKcalcite; }},
        {"calcite_ions",
         [](const Inputs& i) {
             const double strength = ionicStrength(ionsOf(i[1], std::span(i).subspan(3)));
             return orNothing(calciteSaturation(i[0], MeqPerL{i[1]}, i[3], {i[2], strength}));
         }},
        {"langelier",
         [](const Inputs& i) {
             return orNothing(langelierIndex(i[0], i[1], i[2], HardnessAsCaCO3{i[3]}, AlkalinityAsCaCO3{i[4]}));
         }},
        {"limestone_air_kh",
         [](const Inputs& i) { return GermanDegrees::from(endFor(airCo2(i[1], i[0])->value, i[1]).alkalinity).value; }},
        {"limestone_atm_kh",
         [](const Inputs& i) { return GermanDegrees::from(endFor(co2Under(i[0], i[1]), i[1]).alkalinity).value; }},
        {"limestone_ratio",
         [](const Inputs& i) {
             const LimestoneEnd end = endFor(airCo2(i[1], i[0])->value, i[1]);
             return GermanDegrees::from(MmolPerL{end.calcium_mmol_per_L}).value /
                    GermanDegrees::from(end.alkalinity).value;
         }},
        {"mix_hard_air",
         [](const Inputs& i) {
             const double air = orNothing(phFromCo2(airCo2(i[4], 425.0).value(), MeqPerL{0.0}, {i[4], 0.0}));
             return mixedPh(portion(1, i[0], MeqPerL{i[1]}, i[2], i[3], i[4]),
                            portion(1, air, MeqPerL{0.0}, 0, 0, i[4]));
         }},
        {"mix_two",
         [](const Inputs& i) {
             return mixedPh(portion(1, i[0], MeqPerL{i[1]}, i[2], 0, i[6]),
                            portion(1, i[3], MeqPerL{i[4]}, i[5], 0, i[6]));
         }},
        {"mix_saturated", mixedSaturation},
    };
    all.merge(co2Functions());
    return all;
}

} // namespace littoral::test
