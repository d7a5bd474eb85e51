// SPDX-License-Identifier: GPL-3.0-or-later
// Every water function against figures from outside: definitions, published tables and worked examples. The source of
// each is in its row of tests/data and is printed with a failure.
#include "tests/water/check_functions.h"
#include "tests/water/check_values.h"

#include <gtest/gtest.h>
#include <set>

namespace {

using littoral::test::functionNamed;

/// The rows of one group, by the letters their ids begin with.
std::vector<CheckValue> group(const std::string& letters)
{
    std::vector<CheckValue> rows;
    for (const CheckValue& value : checkValues()) {
        if (value.id.substr(0, value.id.find_first_of("-0123456789")) == letters) {
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
    const auto function = functionNamed(GetParam().function);
    ASSERT_TRUE(function) << "no function named " << GetParam().function;
    const double actual = function(GetParam().inputs);
    EXPECT_TRUE(agrees(GetParam(), actual)) << "gave " << actual << "; " << GetParam();
}

std::string rowName(const testing::TestParamInfo<CheckValue>& info)
{
    std::string name = info.param.id; // gtest names are letters and digits
    std::erase(name, '-');
    return name;
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
// PHREEQC 3 runs made for this project: ionic strength per conductivity.
INSTANTIATE_TEST_SUITE_P(IonicStrengthPhreeqc, WaterCheck, testing::ValuesIn(group("I")), rowName);
// Plummer & Busenberg 1982: constants, and the chart model built on them.
INSTANTIATE_TEST_SUITE_P(CarbonatePlummerBusenberg1982, WaterCheck, testing::ValuesIn(group("C")), rowName);
// Tucker 1984 (also SRAC 468); Skougstad et al. 1979.
INSTANTIATE_TEST_SUITE_P(Co2Tucker1984, WaterCheck, testing::ValuesIn(group("CP")), rowName);
// PHREEQC 3 runs made for this project (wateq4f.dat), and stoichiometry.
INSTANTIATE_TEST_SUITE_P(Co2Phreeqc, WaterCheck, testing::ValuesIn(group("CX")), rowName);
INSTANTIATE_TEST_SUITE_P(CalcitePhreeqc, WaterCheck, testing::ValuesIn(group("CS")), rowName);
INSTANTIATE_TEST_SUITE_P(MixingPhreeqc, WaterCheck, testing::ValuesIn(group("CM")), rowName);
// Wanninkhof 1992 (from memory), first-order exchange.
INSTANTIATE_TEST_SUITE_P(GasExchangeWanninkhof1992, WaterCheck, testing::ValuesIn(group("CG")), rowName);
// Benson & Krause 1980/84, the form of APHA 4500-O.
INSTANTIATE_TEST_SUITE_P(OxygenBensonKrause, WaterCheck, testing::ValuesIn(group("O")), rowName);
// EN 25814 / ISO 5814.
INSTANTIATE_TEST_SUITE_P(OxygenEn25814, WaterCheck, testing::ValuesIn(group("OP")), rowName);
// Benson & Krause 1984 equation 24; ISO 2533 atmosphere.
INSTANTIATE_TEST_SUITE_P(OxygenByPressure, WaterCheck, testing::ValuesIn(group("OA")), rowName);
// Printed steam table.
INSTANTIATE_TEST_SUITE_P(VapourSteamTable, WaterCheck, testing::ValuesIn(group("OV")), rowName);
// IUPAC abridged atomic weights.
INSTANTIATE_TEST_SUITE_P(SaltsByFormula, WaterCheck, testing::ValuesIn(group("D")), rowName);
INSTANTIATE_TEST_SUITE_P(IronByLabel, WaterCheck, testing::ValuesIn(group("DF")), rowName);
INSTANTIATE_TEST_SUITE_P(RaisersByFormula, WaterCheck, testing::ValuesIn(group("DS")), rowName);
// Handbook solubilities; gypsum by PHREEQC 3.
INSTANTIATE_TEST_SUITE_P(SolubilityHandbook, WaterCheck, testing::ValuesIn(group("DL")), rowName);
// Geometric series.
INSTANTIATE_TEST_SUITE_P(DosesPileUp, WaterCheck, testing::ValuesIn(group("DC")), rowName);
// Stoichiometry; an instrument maker's 7.0; Massachusetts DEP; NHMRC.
INSTANTIATE_TEST_SUITE_P(ChlorineStoichiometry, WaterCheck, testing::ValuesIn(group("DX")), rowName);
INSTANTIATE_TEST_SUITE_P(BleachStoichiometry, WaterCheck, testing::ValuesIn(group("DB")), rowName);
// Linear mixing; Lawson & Hanson 1974.
INSTANTIATE_TEST_SUITE_P(Blending, WaterCheck, testing::ValuesIn(group("B")), rowName);
// Dilution, and the Davies model for an opened bag.
INSTANTIATE_TEST_SUITE_P(Acclimation, WaterCheck, testing::ValuesIn(group("H")), rowName);
// Heat, light, gas and evaporation by arithmetic; constants as each row says.
INSTANTIATE_TEST_SUITE_P(EnergyAndSupply, WaterCheck, testing::ValuesIn(group("E")), rowName);
// Odum 1956; Jassby & Platt 1976.
INSTANTIATE_TEST_SUITE_P(OxygenDayOdum1956, WaterCheck, testing::ValuesIn(group("P")), rowName);
// Arithmetic of dilution.
INSTANTIATE_TEST_SUITE_P(WaterChanges, WaterCheck, testing::ValuesIn(group("W")), rowName);

TEST(WaterCheckFile, IsReadWhole)
{
    std::set<std::string> ids;
    for (const CheckValue& value : checkValues()) {
        EXPECT_TRUE(ids.insert(value.id).second) << value.id << " stands there twice";
        EXPECT_FALSE(value.source.empty()) << value.id;
        EXPECT_FALSE(value.status.empty()) << value.id;
    }
    EXPECT_EQ(ids.size(), 332U);
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
