// SPDX-License-Identifier: GPL-3.0-or-later
// Functions by the names the check rows use: units, volumes, ammonia and nitrite, water changes.
#include "tests/water/check_functions.h"

#include "core/water/ammonia.h"
#include "core/water/carbonate.h"
#include "core/water/conductivity.h"
#include "core/water/dilution.h"
#include "core/water/hardness.h"
#include "core/water/nitrite.h"
#include "core/water/nitrogen.h"
#include "core/water/volume.h"

#include <cmath>

namespace littoral::test {

using namespace littoral::water;

namespace {

double valueOf(std::optional<MgNPerL> result)
{
    return result ? result->value : kNothing;
}

double netExample()
{
    return innerVolume_L({60, 30, 36, 0.6, 3}) - bedDisplacement_L(57.6 * 28.8 * 5 / 1000, 0.40) -
           solidDisplacement_L(4, 2.65);
}

FunctionMap unitFunctions()
{
    return {
        {"german_caco3", [](const Inputs&) { return kCaCO3MgPerDegree; }},
        {"german_mmol", [](const Inputs&) { return kMmolPerDegree; }},
        {"german_meq", [](const Inputs&) { return kMeqPerDegree; }},
        {"german_from_meq", [](const Inputs& i) { return GermanDegrees::from(MeqPerL{i[0]}).value; }},
        {"german_hco3", [](const Inputs&) { return kBicarbonateMgPerDegree; }},
        {"german_ca", [](const Inputs&) { return kCalciumMgPerDegree; }},
        {"german_mg", [](const Inputs&) { return kMagnesiumMgPerDegree; }},
        {"clark_caco3", [](const Inputs&) { return kCaCO3MgPerClarkDegree; }},
        {"french_caco3", [](const Inputs&) { return kCaCO3MgPerFrenchDegree; }},
        {"grain_us_caco3", [](const Inputs&) { return kCaCO3MgPerGrainUS; }},
        {"gh_from_ions", [](const Inputs& i) { return generalHardness_dGH(i[0], i[1]); }},
        {"kh_from_hco3", [](const Inputs& i) { return carbonateHardness_dKH(i[0]); }},
        {"no3_per_n", [](const Inputs&) { return NitrateIon::from(MgNPerL{1.0}).mg_per_L; }},
        {"no2_per_n", [](const Inputs&) { return NitriteIon::from(MgNPerL{1.0}).mg_per_L; }},
        {"nh4_per_n", [](const Inputs&) { return kAmmoniumPerN; }},
        {"nh3_per_n", [](const Inputs&) { return kAmmoniaPerN; }},
        {"n_per_nh3", [](const Inputs&) { return 1.0 / kAmmoniaPerN; }},
        {"po4_per_p", [](const Inputs&) { return kPhosphatePerP; }},
        {"p_per_p2o5", [](const Inputs&) { return kPhosphorusPerP2O5; }},
        {"k_per_k2o", [](const Inputs&) { return kPotassiumPerK2O; }},
        {"us_gallon", [](const Inputs& i) { return litresFromUSGallons(i[0]); }},
        {"imperial_gallon", [](const Inputs& i) { return litresFromImperialGallons(i[0]); }},
        {"fahrenheit", [](const Inputs& i) { return fahrenheitFromCelsius(i[0]); }},
        {"ec25", [](const Inputs& i) { return conductivityAt25_uS(i[0], i[1]); }},
        {"solids", [](const Inputs& i) { return dissolvedSolids_mg_per_L(i[0], i[1]); }},
        {"kcl_ec",
         [](const Inputs& i) {
             const double mmol_per_L = 1000.0 * i[0] * 0.99705; // density of water at 25 °C, from mol/kg
             Ions ions;
             ions.potassium = mmol_per_L;
             ions.chloride = mmol_per_L;
             return conductivityOf_uS(ions);
         }},
        {"ionic_per_ec", [](const Inputs&) { return kIonicStrengthPerMicroSiemens; }},
    };
}

FunctionMap volumeFunctions()
{
    return {
        {"outer",
         [](const Inputs& i) {
             return outerVolume_L({i[0], i[1], i[2], 0, 0});
         }},
        {"inner",
         [](const Inputs& i) {
             return innerVolume_L({i[0], i[1], i[2], i[3], i[4]});
         }},
        {"bow_radius", [](const Inputs& i) { return bowRadius_cm(i[0], i[1]); }},
        {"bow_segment", [](const Inputs& i) { return bowSegment_cm2(i[0], i[1]); }},
        {"bow_front", [](const Inputs& i) { return bowFront_L(i[0], i[1], i[2], i[3]); }},
        {"cylinder", [](const Inputs& i) { return cylinder_L(i[0], i[1]); }},
        {"hexagon", [](const Inputs& i) { return hexagon_L(i[0], i[1]); }},
        {"bed", [](const Inputs& i) { return bedDisplacement_L(i[0], i[1]); }},
        {"solid", [](const Inputs& i) { return solidDisplacement_L(i[0], i[1]); }},
        {"net_example", [](const Inputs&) { return netExample(); }},
        {"floor",
         [](const Inputs& i) {
             return floorLoad({i[0], i[1], i[2], i[3], i[4]}, i[5], i[6]).pressure_kPa;
         }},
    };
}

FunctionMap toxicityFunctions()
{
    return {
        {"pka", [](const Inputs& i) { return pKa(i[0]).value_or(kNothing); }},
        {"free_share", [](const Inputs& i) { return unionisedFraction(i[0], i[1]).value_or(kNothing); }},
        {"free_percent", [](const Inputs& i) { return 100.0 * unionisedFraction(i[0], i[1]).value_or(kNothing); }},
        {"free_of_total", [](const Inputs& i) { return valueOf(freeAmmonia({i[0]}, i[1], i[2])); }},
        {"cmc_absent", [](const Inputs& i) { return valueOf(acuteCriterionSalmonidsAbsent(i[0], i[1])); }},
        {"ccc", [](const Inputs& i) { return valueOf(chronicCriterion(i[0], i[1])); }},
        {"ccc4", [](const Inputs& i) { return valueOf(chronicFourDayLimit(i[0], i[1])); }},
        {"free_share_salt",
         [](const Inputs& i) { return unionisedFractionInSalt(i[0], i[1], i[2]).value_or(kNothing); }},
        {"level_caution", [](const Inputs&) { return kFreeAmmoniaHarm.value; }},
        {"level_lethal", [](const Inputs&) { return kFreeAmmoniaLethal.value; }},
        {"no2_limits",
         [](const Inputs& i) {
             const auto limits = nitriteLimits(i[0]);
             // The mean is a third of the highest in every band.
             return limits && std::abs(limits->highest.value / limits->mean30Days.value - 3.0) < 1e-9
                        ? limits->highest.value
                        : kNothing;
         }},
        {"cl_ratio", [](const Inputs&) { return kProtectiveChlorideRatio; }},
        {"salt", [](const Inputs& i) { return saltNeeded_g({i[0]}, i[1], i[2]); }},
        {"salt_per_cl", [](const Inputs&) { return kSaltPerChloride; }},
    };
}

FunctionMap changeFunctions()
{
    return {
        {"remaining", [](const Inputs& i) { return remainingFraction(i); }},
        {"equivalent", [](const Inputs& i) { return equivalentSingleChange(i); }},
        {"count", [](const Inputs& i) { return changesToTarget(i[0], i[1], i[2], i[3]).value_or(-1); }},
        {"single", [](const Inputs& i) { return singleChangeToTarget(i[0], i[1], i[2]).value_or(kNothing); }},
        {"flow_left", [](const Inputs& i) { return remainingAfterFlowThrough(i[0]); }},
        {"flow_for", [](const Inputs& i) { return flowThroughForChange(i[0]).value_or(kNothing); }},
        {"steady_peak",
         [](const Inputs& i) {
             return steadyState(i[0], i[1], i[2]).value_or(SteadyState{kNothing, kNothing}).peak;
         }},
        {"drip_steady", [](const Inputs& i) { return dripSteadyState(i[0], i[1], i[2]).value_or(kNothing); }},
        {"mix_temp", [](const Inputs& i) { return mixedTemperature_C(i[0], i[1], i[2], i[3]); }},
        {"after", [](const Inputs& i) { return afterChanges(i[0], i[1], std::span(i).subspan(2)); }},
    };
}

} // namespace

FunctionMap basicFunctions()
{
    FunctionMap merged = unitFunctions();
    merged.merge(volumeFunctions());
    merged.merge(toxicityFunctions());
    merged.merge(changeFunctions());
    return merged;
}

} // namespace littoral::test
