// SPDX-License-Identifier: GPL-3.0-or-later
// Every water function against figures from outside: definitions, published tables and worked examples. The source of
// each is in its row of tests/data/check_values_water.csv and is printed with a failure.
#include "tests/water/check_values.h"

#include "core/water/ammonia.h"
#include "core/water/conductivity.h"
#include "core/water/dilution.h"
#include "core/water/hardness.h"
#include "core/water/nitrite.h"
#include "core/water/nitrogen.h"
#include "core/water/volume.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>
#include <map>

namespace {

using namespace littoral::water;
using Inputs = std::vector<double>;
using Function = std::function<double(const Inputs&)>;

constexpr double kNothing = std::numeric_limits<double>::quiet_NaN();

double valueOf(std::optional<MgNPerL> result)
{
    return result ? result->value : kNothing;
}

double netExample()
{
    return innerVolume_L({60, 30, 36, 0.6, 3}) - bedDisplacement_L(57.6 * 28.8 * 5 / 1000, 0.40) -
           solidDisplacement_L(4, 2.65);
}

std::map<std::string, Function> unitFunctions()
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
    };
}

std::map<std::string, Function> volumeFunctions()
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

std::map<std::string, Function> toxicityFunctions()
{
    return {
        {"pka", [](const Inputs& i) { return pKa(i[0]).value_or(kNothing); }},
        {"free_share", [](const Inputs& i) { return unionisedFraction(i[0], i[1]).value_or(kNothing); }},
        {"free_percent", [](const Inputs& i) { return 100.0 * unionisedFraction(i[0], i[1]).value_or(kNothing); }},
        {"free_of_total", [](const Inputs& i) { return valueOf(freeAmmonia({i[0]}, i[1], i[2])); }},
        {"cmc_absent", [](const Inputs& i) { return valueOf(acuteCriterionSalmonidsAbsent(i[0], i[1])); }},
        {"ccc", [](const Inputs& i) { return valueOf(chronicCriterion(i[0], i[1])); }},
        {"ccc4", [](const Inputs& i) { return valueOf(chronicFourDayLimit(i[0], i[1])); }},
        {"cl_ratio", [](const Inputs&) { return kProtectiveChlorideRatio; }},
        {"salt", [](const Inputs& i) { return saltNeeded_g({i[0]}, i[1], i[2]); }},
        {"salt_per_cl", [](const Inputs&) { return kSaltPerChloride; }},
    };
}

std::map<std::string, Function> changeFunctions()
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

const std::map<std::string, Function>& functions()
{
    static const std::map<std::string, Function> all = [] {
        std::map<std::string, Function> merged = unitFunctions();
        merged.merge(volumeFunctions());
        merged.merge(toxicityFunctions());
        merged.merge(changeFunctions());
        return merged;
    }();
    return all;
}

/// The rows of one group, by the letters their ids begin with.
std::vector<CheckValue> group(const std::string& letters)
{
    std::vector<CheckValue> rows;
    for (const CheckValue& value : checkValues()) {
        if (value.id.substr(0, value.id.find_first_of("0123456789")) == letters) {
            rows.push_back(value);
        }
    }
    return rows;
}

class WaterCheck : public testing::TestWithParam<CheckValue>
{
};

TEST_P(WaterCheck, AgreesWithItsSource)
{
    const auto function = functions().find(GetParam().function);
    ASSERT_NE(function, functions().end()) << "no function named " << GetParam().function;
    const double actual = function->second(GetParam().inputs);
    EXPECT_TRUE(agrees(GetParam(), actual)) << "gave " << actual << "; " << GetParam();
}

std::string rowName(const testing::TestParamInfo<CheckValue>& info)
{
    return info.param.id;
}

// Definitions of the degrees (DIN, FAO glossary), of the gallons, and IUPAC abridged atomic weights.
INSTANTIATE_TEST_SUITE_P(UnitsByDefinition, WaterCheck, testing::ValuesIn(group("U")), rowName);
// Plane geometry; densities and porosities as stated in the rows.
INSTANTIATE_TEST_SUITE_P(VolumesByGeometry, WaterCheck, testing::ValuesIn(group("V")), rowName);
// Emerson, Russo, Lund & Thurston 1975.
INSTANTIATE_TEST_SUITE_P(FreeAmmoniaEmerson1975, WaterCheck, testing::ValuesIn(group("A")), rowName);
// UF/IFAS circular FA16, Table 1 and its worked example.
INSTANTIATE_TEST_SUITE_P(FreeAmmoniaUfIfasFA16, WaterCheck, testing::ValuesIn(group("AP")), rowName);
// Trussell 1972: another constant, hence 3 %.
INSTANTIATE_TEST_SUITE_P(FreeAmmoniaTrussell1972, WaterCheck, testing::ValuesIn(group("AT")), rowName);
// US EPA 822-R-13-001 (2013).
INSTANTIATE_TEST_SUITE_P(AmmoniaCriteriaEpa2013, WaterCheck, testing::ValuesIn(group("AE")), rowName);
// Durborow, Crosby & Brunson 1997, SRAC 462.
INSTANTIATE_TEST_SUITE_P(NitriteSrac462, WaterCheck, testing::ValuesIn(group("AN")), rowName);
// Arithmetic of dilution.
INSTANTIATE_TEST_SUITE_P(WaterChanges, WaterCheck, testing::ValuesIn(group("W")), rowName);

TEST(WaterCheckFile, IsReadWhole)
{
    EXPECT_EQ(checkValues().size(), 106U);
}

TEST(WaterCheckFile, ToleranceGrammar)
{
    CheckValue value{"X1", "x", {}, 10.0, "abs:0.5", "", ""};
    EXPECT_TRUE(agrees(value, 10.5));
    EXPECT_FALSE(agrees(value, 10.6));
    value.tolerance = "rel:0.01|abs:0.5";
    EXPECT_TRUE(agrees(value, 10.4));
    EXPECT_FALSE(agrees(value, 10.6));
    value.tolerance = "not:rel:0.05";
    EXPECT_FALSE(agrees(value, 10.4));
    EXPECT_TRUE(agrees(value, 10.6));
    value.tolerance = "exact";
    EXPECT_TRUE(agrees(value, 10.0));
    EXPECT_FALSE(agrees(value, 10.0001));
    value.tolerance = "roughly";
    EXPECT_FALSE(agrees(value, 10.0));
}

} // namespace
