// SPDX-License-Identifier: GPL-3.0-or-later
// Input that has no answer is refused with a sentence, never with a figure that is not a number.
#include "core/water/acclimation.h"
#include "core/water/blend.h"
#include "core/water/calcite.h"
#include "core/water/carbonate.h"
#include "core/water/change_plan.h"
#include "core/water/chlorine.h"
#include "core/water/conductivity.h"
#include "core/water/dosing.h"
#include "core/water/evaporation.h"
#include "core/water/gas_supply.h"
#include "core/water/heat.h"
#include "core/water/light.h"
#include "core/water/load.h"
#include "core/water/nitrite.h"
#include "core/water/oxygen.h"

#include <array>
#include <gtest/gtest.h>
#include <limits>

namespace {

using namespace littoral::water;
using littoral::Fault;
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

template <typename T> void expectRefused(const littoral::Result<T>& result, int line)
{
    ASSERT_FALSE(result) << "line " << line;
    EXPECT_EQ(result.error().fault, Fault::BadInput) << line;
    EXPECT_TRUE(result.error().what.ends_with('.')) << line << ": " << result.error().what;
}
#define EXPECT_REFUSED(call) expectRefused(call, __LINE__)

TEST(Refusals, Carbonate)
{
    EXPECT_REFUSED(carbonateConstants(-1));
    EXPECT_REFUSED(carbonateConstants(kNaN));
    EXPECT_REFUSED(co2FromChart(3.9, MeqPerL{1}, 25));
    EXPECT_REFUSED(co2FromChart(7.0, MeqPerL{0}, 25)); // no alkalinity: pH says nothing
    EXPECT_REFUSED(phFromChart({0}, MeqPerL{1}, 25));
    EXPECT_REFUSED(co2FromPh(1.9, MeqPerL{1}, {}));
    EXPECT_REFUSED(co2FromPh(kNaN, MeqPerL{1}, {}));
    EXPECT_REFUSED(co2FromPh(7.0, MeqPerL{1}, {25, 0.2}));
    EXPECT_REFUSED(co2FromPh(12.0, MeqPerL{0.1}, {})); // all hydroxide
    EXPECT_REFUSED(phFromCo2({0}, MeqPerL{1}, {}));
    EXPECT_REFUSED(phFromCo2({3}, MeqPerL{kNaN}, {}));
    EXPECT_REFUSED(phFromCarbon({-1}, MeqPerL{1}, {}));
    EXPECT_REFUSED(airCo2(25, -1));
    EXPECT_REFUSED(airCo2(25, 400, 2));
    EXPECT_REFUSED(dropForCo2({0}, {30}));
    EXPECT_REFUSED(mixPortions({}));
    EXPECT_REFUSED(mixPortions(std::array{CarbonatePortion{-1, {}, {}, 0, {}}}));
}

TEST(Refusals, Limestone)
{
    EXPECT_REFUSED(calciteSaturation(7, MeqPerL{1}, 0, {}));
    EXPECT_REFUSED(calciteSaturation(7, MeqPerL{0}, 1, {}));
    EXPECT_REFUSED(langelierIndex(7, 0, 25, HardnessAsCaCO3{1}, AlkalinityAsCaCO3{1}));
    EXPECT_REFUSED(limestoneEnd(MeqPerL{1}, 1, {0}, {}));
    EXPECT_REFUSED(limestoneEnd(MeqPerL{1}, -1, {3}, {}));
}

TEST(Refusals, OxygenHeatAndLight)
{
    EXPECT_REFUSED(oxygenSaturation_mg_per_L(41));
    EXPECT_REFUSED(oxygenSaturation_mg_per_L(25, 0.4));
    EXPECT_REFUSED(standardPressure_atm(9000));
    EXPECT_REFUSED(oxygenSwing({1, 1, 0, 8, 8}));
    EXPECT_REFUSED(oxygenSwing({1, 1, 0.2, 8, 25}));
    EXPECT_REFUSED(warmUp_h(60, 5, 0));
    EXPECT_REFUSED(coolingTime_h(60, 0, 1));
    EXPECT_REFUSED(turnover_per_h(600, 0));
    EXPECT_REFUSED(hoursForDailyLight(3, 0));
    EXPECT_REFUSED(hoursForDailyLight(30, 50));
    EXPECT_REFUSED(dailyLightWithRamps_mol(50, 2, 1.5));
    EXPECT_DOUBLE_EQ(*dailyLightWithRamps_mol(50, 8, 1), dailyLight_mol(50, 7));
    EXPECT_NEAR(*hoursForDailyLight(1.44, 50), 8.0, 1e-12);
}

TEST(Refusals, DosesAndDips)
{
    DosePlan plan;
    plan.fraction = 1.1;
    EXPECT_REFUSED(doseCeiling(plan));
    plan.fraction = 0.5;
    plan.dose = -1;
    EXPECT_REFUSED(doseCeiling(plan));
    EXPECT_REFUSED(intervalsToSettle(0));
    EXPECT_EQ(*intervalsToSettle(1), 1);
    EXPECT_REFUSED(doseToHold(5, 0.5, 20, 0)); // the tap alone brings more
    EXPECT_REFUSED(riseFromShare(10, 1.1, 50));
    EXPECT_REFUSED(riseFromShare(10, 0.1, 0));
    EXPECT_REFUSED(thiosulfate_g({-1}, 10));
    EXPECT_REFUSED(bleachStrength(35, BleachBasis::AvailableChlorine, 1.1));
    EXPECT_REFUSED(bleachStrength(5, BleachBasis::AvailableChlorine, 2));
    EXPECT_REFUSED(dipStrength({47000}, -1));
    EXPECT_REFUSED(bleachFor_mL({1000}, {2000}, 1));
    EXPECT_NEAR(*bleachFor_mL({47623}, {47623.0 / 20.0}, 2.0), 100.0, 1e-9);
}

TEST(Refusals, WaterInAndOut)
{
    EXPECT_REFUSED(afterEvaporation(6, 60, 60));
    EXPECT_REFUSED(afterTopUps(6, 6, 3, 0, 1));
    EXPECT_REFUSED(topUpSteadyState(6, 6, 3, 0));
    EXPECT_REFUSED(equalShareToTarget(80, 5, 5, 1));
    EXPECT_REFUSED(equalShareToTarget(80, 20, 5, 0));
    EXPECT_REFUSED(flowThroughToTarget_L(80, 20, 5, 0));
    EXPECT_REFUSED(ammoniaAfterChange({}, {}, 1.5, std::nullopt));
    EXPECT_REFUSED(blendSources({}));
    EXPECT_REFUSED(remineralise({}, {}));
    EXPECT_REFUSED(rockExcess(1, 0));
    EXPECT_REFUSED(rockRise(8, 8, 2, 6));
    EXPECT_REFUSED(feedNitrogen_mg_per_d(1, 1.5));
    EXPECT_REFUSED(nitratePerDay(41, 0));
    EXPECT_REFUSED(alkalinityUsedPerDay(41, 0));
    EXPECT_FALSE(nitriteLimits(-1));
    EXPECT_FALSE(nitriteLimits(kNaN));
}

TEST(Refusals, BagAndCylinder)
{
    EXPECT_REFUSED(bagShare(0, {}));
    EXPECT_REFUSED(bagShare(1, std::array{-0.1}));
    EXPECT_REFUSED(bagShareReplacing(2, 1));
    EXPECT_REFUSED(dripTime_min(0.5, 0.5, 10));
    EXPECT_REFUSED(dripFlow_mL_per_min(0.5, 3, 0));
    EXPECT_NEAR(*dripFlow_mL_per_min(0.5, 3, 100), 10.0, 1e-12);
    EXPECT_REFUSED(openBag({-1}, MeqPerL{2}, {60}, {3}, {}));
    EXPECT_REFUSED(weighedUse_g_per_d(1000, 1000, 7));
    EXPECT_REFUSED(weighedUse_g_per_d(1000, 900, 0));
    EXPECT_REFUSED(daysLeft(500, 0));
    EXPECT_REFUSED(roomShare(1000, 0));
}

// A kilogram of gas at 25 °C is 0.55 m³: 2.2 % of a room of 25 m³ (ideal gas, R of the 2019 SI).
TEST(Supply, AKilogramInARoom)
{
    EXPECT_NEAR(*roomShare(1000, 25), 0.0222, 0.0002);
    EXPECT_EQ(*roomShare(1e6, 1), 1.0);
    EXPECT_NEAR(*weighedUse_g_per_d(2000, 1979, 7), 3.0, 1e-12);
}

// PHREEQC 3 (phreeqc.dat) gave 411.8, 313.0, 193.0 and 129.6 µS/cm for these four waters.
TEST(Conductivity, FourWatersOfPhreeqc)
{
    const auto expectNear = [](const Ions& ions, double phreeqc) {
        EXPECT_NEAR(conductivityOf_uS(ions) / phreeqc, 1.0, 0.05) << phreeqc;
    };
    expectNear({1.25, 0.533, 0.5, 0, 2.85322, 0.2, 0.8, 0}, 411.8);
    expectNear({0.8, 0.27, 0, 0.5, 1.42661, 0.6, 0, 0.3}, 313.0);
    expectNear({1.0, 0, 0, 0, 2.0, 0, 0, 0}, 193.0);
    expectNear({0, 0, 1.42661, 0, 1.42661, 0, 0, 0}, 129.6);
}

// Feed of 45 % protein: 1 g gives 41.4 mg N, 0.414 mg/L in 100 L; 3 mg N/L nitrified uses 1.2 degrees of alkalinity.
TEST(Load, WorkedFigures)
{
    EXPECT_NEAR(*feedNitrogen_mg_per_d(1.0, 0.45), 41.4, 1e-9);
    EXPECT_NEAR(nitratePerDay(41.4, 100)->asN().value, 0.414, 1e-12);
    EXPECT_NEAR(GermanDegrees::from(*alkalinityUsedPerDay(300.0, 100.0)).value, 1.20013, 1e-3);
}

} // namespace
