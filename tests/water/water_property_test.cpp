// SPDX-License-Identifier: GPL-3.0-or-later
// Laws that hold whatever the numbers: round trips, order, conservation under mixing, limits.
#include "core/base/random.h"
#include "core/water/ammonia.h"
#include "core/water/blend.h"
#include "core/water/calcite.h"
#include "core/water/change_plan.h"
#include "core/water/dilution.h"
#include "core/water/dosing.h"
#include "core/water/least_squares.h"
#include "core/water/load.h"
#include "core/water/oxygen.h"
#include "core/water/quantities.h"
#include "core/water/salts.h"
#include "core/water/uncertain.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <type_traits>

namespace {

using namespace littoral::water;
using littoral::Random;

template <typename A, typename B>
concept CanAdd = requires(A a, B b)
{
    a + b;
};
template <typename A, typename B>
concept CanCompare = requires(A a, B b)
{
    a < b;
};

// What must not compile when someone mixes up bases and scales.
static_assert(CanAdd<Co2, Co2>);
static_assert(!CanAdd<Co2, TotalCarbon>);
static_assert(!CanAdd<PhosphateIon, Phosphorus>);
static_assert(!CanAdd<ChlorineAsCl2, Monochloramine>);
static_assert(!CanAdd<UsGallons, ImperialGallons>);
static_assert(!CanAdd<MgNPerL, NitrateIon>);
static_assert(!CanAdd<NitriteIon, NitrateIon>);
static_assert(!CanAdd<GermanDegrees, MeqPerL>);
static_assert(!CanAdd<MeqPerL, MmolPerL>);
static_assert(!CanCompare<MgNPerL, NitriteIon>);
static_assert(!CanCompare<GermanDegrees, MeqPerL>);
static_assert(!CanCompare<AlkalinityAsCaCO3, HardnessAsCaCO3>);
static_assert(!std::is_convertible_v<GermanDegrees, MeqPerL>);
static_assert(!std::is_convertible_v<Celsius, KelvinDifference>);

constexpr int kTries = 200;

double between(Random& random, double low, double high)
{
    return low + (high - low) * random.uniform();
}

TEST(Quantities, RoundTrips)
{
    Random random(1);
    for (int i = 0; i < kTries; ++i) {
        const double x = between(random, 0.001, 500.0);
        EXPECT_NEAR(asPhosphate(asPhosphorus({x})).value, x, 1e-9 * x);
        EXPECT_NEAR(asMeq(asCaCO3(MeqPerL{x})).value, x, 1e-9 * x);
        EXPECT_NEAR(asMmol(asCaCO3(MmolPerL{x})).value, x, 1e-9 * x);
        EXPECT_NEAR(NitrateIon::from(NitrateIon{x}.asN()).mg_per_L, x, 1e-9 * x);
        EXPECT_NEAR(GermanDegrees::from(GermanDegrees{x}.alkalinity()).value, x, 1e-9 * x);
    }
    EXPECT_DOUBLE_EQ(fahrenheitSteps({5.0}), 9.0); // a difference, without the 32
    EXPECT_DOUBLE_EQ((Co2{3.0} + Co2{4.0} - Co2{1.0}).value, 6.0);
}

TEST(Carbonate, PhAndCo2AreEachOthersInverse)
{
    Random random(2);
    for (int i = 0; i < kTries; ++i) {
        const MeqPerL alkalinity{between(random, 0.05, 6.0)};
        const Medium medium{between(random, 2.0, 34.0), between(random, 0.0, 0.02)};
        const double pH = between(random, 5.0, 8.3);
        const auto co2 = co2FromPh(pH, alkalinity, medium);
        ASSERT_TRUE(co2);
        if (co2->value > 2000.0) {
            continue;
        }
        EXPECT_NEAR(*phFromCo2(*co2, alkalinity, medium), pH, 1e-9);
        EXPECT_NEAR(*phFromCarbon(*totalCarbon(pH, alkalinity, medium), alkalinity, medium), pH, 1e-7);
        EXPECT_NEAR(*phFromChart(*co2FromChart(pH, alkalinity, medium.t_C), alkalinity, medium.t_C), pH, 1e-12);
    }
}

TEST(Carbonate, Co2FallsWithPhAndRisesWithAlkalinity)
{
    for (double pH = 5.0; pH < 8.5; pH += 0.1) {
        EXPECT_GT(co2FromPh(pH, MeqPerL{1.0}, {}).value(), co2FromPh(pH + 0.1, MeqPerL{1.0}, {}).value());
        EXPECT_LT(co2FromPh(pH, MeqPerL{1.0}, {}).value(), co2FromPh(pH, MeqPerL{1.1}, {}).value());
    }
}

TEST(Carbonate, DaviesTurnsIntoTheChartInThinSoftWaterAndNeverReadsMore)
{
    // Between pH 6 and 7.5 hydroxide and carbonate do not count; without salts the two models are one.
    EXPECT_NEAR(co2FromPh(6.6, MeqPerL{1.4}, {25.0, 0.0})->value / co2FromChart(6.6, MeqPerL{1.4}, 25.0)->value, 1.0,
                1e-3);
    for (const double strength : {0.001, 0.005, 0.01}) {
        EXPECT_LT(co2FromPh(6.6, MeqPerL{1.4}, {25.0, strength})->value, co2FromChart(6.6, MeqPerL{1.4}, 25.0)->value);
    }
}

TEST(Carbonate, SlopeOfTheActivityEquationAt25Degrees)
{
    // Debye-Hückel slope 0.511 at 25 °C (handbook, from memory): at vanishing strength log γ = -0.511 √I.
    const double slope = -std::log10(activityCoefficient(1, {25.0, 1e-8})) / 1e-4;
    EXPECT_NEAR(slope, 0.511, 0.001);
    EXPECT_DOUBLE_EQ(activityCoefficient(1, {25.0, 0.0}), 1.0);
}

TEST(Mixing, ConservesAlkalinityCarbonAndCalciumInAnyOrder)
{
    Random random(3);
    for (int i = 0; i < kTries; ++i) {
        std::array<CarbonatePortion, 3> waters;
        double alkalinity = 0.0;
        double carbon = 0.0;
        double calcium = 0.0;
        for (CarbonatePortion& water : waters) {
            water = {between(random, 0.1, 90.0), MeqPerL{between(random, 0.0, 6.0)},
                     TotalCarbon{between(random, 0.0, 7.0)}, between(random, 0.0, 3.0), Medium{22.0, 0.004}};
            alkalinity += water.litres * water.alkalinity.value;
            carbon += water.litres * water.carbon.value;
            calcium += water.litres * water.calcium_mmol_per_L;
        }
        const CarbonatePortion all = mixPortions(waters).value();
        const CarbonatePortion two = mixPortions(std::array{waters[1], waters[2]}).value();
        const CarbonatePortion other = mixPortions(std::array{two, waters[0]}).value();
        EXPECT_NEAR(all.litres * all.alkalinity.value, alkalinity, 1e-9);
        EXPECT_NEAR(all.litres * all.carbon.value, carbon, 1e-9);
        EXPECT_NEAR(all.litres * all.calcium_mmol_per_L, calcium, 1e-9);
        EXPECT_NEAR(*phOf(all), *phOf(other), 1e-7);
    }
}

TEST(Mixing, OfAWaterWithItselfChangesNothing)
{
    const Medium medium{24.0, 0.005};
    const MeqPerL alkalinity{1.8};
    const CarbonatePortion water{10.0, alkalinity, totalCarbon(7.1, alkalinity, medium).value(), 1.0, medium};
    EXPECT_NEAR(*phOf(mixPortions(std::array{water, water}).value()), 7.1, 1e-9);
}

TEST(Limestone, EndsSaturatedAndHardensMoreUnderMoreCo2)
{
    double before = 0.0;
    for (const double co2 : {0.6, 3.0, 10.0, 30.0}) {
        const LimestoneEnd end = limestoneEnd(MeqPerL{0.5}, 0.2, {co2}, {24.0, 0.001}).value();
        EXPECT_GT(end.dissolved_mmol_per_L, before);
        before = end.dissolved_mmol_per_L;
        const double strength = 0.001 + 3.0 * end.dissolved_mmol_per_L / 1000.0;
        EXPECT_NEAR(*calciteSaturation(end.pH, end.alkalinity, end.calcium_mmol_per_L, {24.0, strength}), 0.0, 1e-6);
        EXPECT_NEAR(end.alkalinity.value - 0.5, 2.0 * (end.calcium_mmol_per_L - 0.2), 1e-9);
    }
}

TEST(Limestone, FallsOutOfWaterThatHoldsTooMuch)
{
    EXPECT_LT(limestoneEnd(MeqPerL{6.0}, 3.0, {0.6}, {25.0, 0.009})->dissolved_mmol_per_L, 0.0);
}

TEST(Oxygen, FallsWithWarmthAndRisesWithPressure)
{
    for (double t = 0.0; t < 39.0; t += 1.0) {
        EXPECT_GT(*oxygenSaturation_mg_per_L(t), *oxygenSaturation_mg_per_L(t + 1.0));
        EXPECT_GT(*oxygenSaturation_mg_per_L(t, 1.0), *oxygenSaturation_mg_per_L(t, 0.9));
    }
    EXPECT_DOUBLE_EQ(*standardPressure_atm(0.0), 1.0);
}

TEST(Oxygen, TheRepeatedDayRepeats)
{
    const OxygenDay day{1.1, 0.5, 0.3, 8.4, 9.0};
    const OxygenSwing swing = oxygenSwing(day).value();
    EXPECT_NEAR(relaxed(swing.dawn, swing.lightLevel, 0.3, 9.0), swing.dusk, 1e-12);
    EXPECT_NEAR(relaxed(swing.dusk, swing.darkLevel, 0.3, 15.0), swing.dawn, 1e-12);
    EXPECT_NEAR(lightResponse(1.5, 0.02, 1e-6), 0.02e-6, 1e-15); // proportional in the dark end
    EXPECT_NEAR(lightResponse(1.5, 0.02, 5000.0), 1.5, 1e-9);
}

TEST(FreeAmmonia, SaltsLowerItAndNoneLeavesIt)
{
    for (double pH = 6.0; pH <= 9.0; pH += 0.5) {
        EXPECT_DOUBLE_EQ(*unionisedFractionInSalt(pH, 25.0, 0.0), *unionisedFraction(pH, 25.0));
        EXPECT_LT(*unionisedFractionInSalt(pH, 25.0, 0.005), *unionisedFraction(pH, 25.0));
    }
}

TEST(AmmoniaCriteria, ChronicIsStricterAndBothFallWithPh)
{
    for (double pH = 6.5; pH <= 8.9; pH += 0.1) {
        EXPECT_LT(chronicCriterion(pH, 25)->value, acuteCriterionSalmonidsAbsent(pH, 25)->value);
        EXPECT_GT(chronicCriterion(pH, 25)->value, chronicCriterion(pH + 0.1, 25)->value);
    }
}

TEST(Salts, SharesOfAWholeSaltAddUp)
{
    // Each salt of ions in the table is its ions and its water.
    const double water = 1000.0 * 7.0 * (2.0 * atomic::kH + atomic::kO) / *molarMass("MgSO4.7H2O");
    const Salt& epsom = *findSalt("mgso4");
    EXPECT_NEAR(milligramsPerGram(epsom, Nutrient::Magnesium) + milligramsPerGram(epsom, Nutrient::Sulfate) + water,
                1000.0, 1e-9);
    const Salt& table = *findSalt("nacl");
    EXPECT_NEAR(milligramsPerGram(table, Nutrient::Sodium) + milligramsPerGram(table, Nutrient::Chloride), 1000.0,
                1e-9);
}

TEST(Salts, DoseAndRiseAreEachOthersInverse)
{
    Random random(4);
    for (const Salt& salt : salts()) {
        ASSERT_TRUE(molarMass(salt.formula)) << salt.formula;
        for (const Nutrient nutrient : kNutrients) {
            if (milligramsPerGram(salt, nutrient) > 0.0) {
                const double grams = between(random, 0.1, 40.0);
                const double litres = between(random, 5.0, 900.0);
                const double rise = riseFrom(salt, nutrient, grams, litres).value();
                EXPECT_NEAR(*gramsFor(salt, nutrient, rise, litres), grams, 1e-9 * grams) << salt.formula;
                const Stock stock{20.0, 500.0};
                EXPECT_NEAR(*stockMillilitresFor(salt, stock, nutrient, rise, litres), grams * 25.0, 1e-6);
            } else {
                EXPECT_FALSE(gramsFor(salt, nutrient, 1.0, 10.0)) << salt.formula;
            }
        }
    }
}

TEST(Salts, HydrateSolubilitiesFollowFromTheAnhydrousOnes)
{
    for (const auto& [dry, wet] : {std::pair("mgso4-dry", "mgso4"), std::pair("cacl2-dry", "cacl2")}) {
        const Salt& a = *findSalt(dry);
        const Salt& h = *findSalt(wet);
        const double ratio = *molarMass(h.formula) / *molarMass(a.formula);
        EXPECT_NEAR(*hydrateSolubility_g_per_100g(a.solubility_g_per_100g, ratio), h.solubility_g_per_100g, 0.2) << wet;
    }
    EXPECT_FALSE(hydrateSolubility_g_per_100g(99.0, 2.05));
}

TEST(Salts, FormulasThatDoNotParse)
{
    for (const char* formula : {"", "X", "Xx2", "Mg(SO4", "kno3", "KNO3.", "3", "KNO3)"}) {
        EXPECT_FALSE(molarMass(formula)) << formula;
    }
    EXPECT_EQ(atomsOf("O", "Ca(NO3)2.4H2O"), 10.0);
    EXPECT_EQ(atomsOf("H", "CH4N2O"), 4.0);
}

TEST(Doses, ClosedFormsWhereTheyHold)
{
    Random random(5);
    for (int i = 0; i < kTries; ++i) {
        DosePlan plan;
        plan.dose = between(random, 1.0, 20.0);
        plan.fraction = between(random, 0.05, 0.9);
        plan.source = between(random, 0.0, 30.0);
        EXPECT_NEAR(doseCeiling(plan)->afterDose, plan.source + plan.dose / plan.fraction, 1e-8);
        // What holds the ceiling is the dose that made it.
        EXPECT_NEAR(*doseToHold(doseCeiling(plan)->afterDose, plan.fraction, plan.source, 0.0), plan.dose, 1e-7);
    }
}

TEST(Doses, UptakeStopsAtNothing)
{
    DosePlan plan;
    plan.dose = 5.0;
    plan.fraction = 0.3;
    plan.uptake = 8.0; // more than is given: the closed form would go below zero
    EXPECT_DOUBLE_EQ(doseCeiling(plan)->beforeChange, 0.0);
    EXPECT_DOUBLE_EQ(doseCeiling(plan)->afterDose, 5.0);
}

TEST(Doses, WithoutChangeOrUptakeThereIsNoCeiling)
{
    DosePlan plan;
    plan.dose = 1.0;
    EXPECT_FALSE(doseCeiling(plan));
    plan.uptake = 2.0;
    EXPECT_TRUE(doseCeiling(plan));
}

TEST(LeastSquares, SatisfiesTheConditionsOfKarushKuhnTucker)
{
    Random random(6);
    for (int i = 0; i < kTries; ++i) {
        Matrix a(5, std::vector<double>(4));
        std::vector<double> b(5);
        for (std::size_t r = 0; r < 5; ++r) {
            for (double& value : a[r]) {
                value = random.normal();
            }
            b[r] = random.normal();
        }
        const NonnegativeSolution solution = nonnegativeLeastSquares(a, b).value();
        for (std::size_t c = 0; c < 4; ++c) {
            double slope = 0.0;
            for (std::size_t r = 0; r < 5; ++r) {
                slope += a[r][c] * solution.residuals[r];
            }
            EXPECT_GE(solution.x[c], 0.0);
            EXPECT_LE(slope, 1e-9);
            EXPECT_NEAR(slope * solution.x[c], 0.0, 1e-9);
        }
    }
}

TEST(LeastSquares, SurvivesEqualColumnsAndRefusesNonsense)
{
    const auto twins = nonnegativeLeastSquares({{1, 1}, {2, 2}}, {3, 6});
    ASSERT_TRUE(twins);
    EXPECT_NEAR(twins->x[0] + twins->x[1], 3.0, 1e-9);
    EXPECT_NEAR(twins->norm, 0.0, 1e-9);
    EXPECT_FALSE(nonnegativeLeastSquares({}, {}));
    EXPECT_FALSE(nonnegativeLeastSquares({{1, 2}, {3}}, {1, 2}));
    EXPECT_FALSE(nonnegativeLeastSquares({{1}}, {std::nan("")}));
}

TEST(Blending, SharesAreAWholeAndReachWhatCanBeReached)
{
    Random random(7);
    for (int i = 0; i < kTries; ++i) {
        const double first = between(random, 0.05, 0.9);
        const std::vector<double> gh{between(random, 8, 16), between(random, 0, 1)};
        const std::vector<double> kh{between(random, 5, 12), between(random, 0, 1)};
        const BlendTarget one{gh, first * gh[0] + (1 - first) * gh[1], 0};
        const BlendTarget two{kh, first * kh[0] + (1 - first) * kh[1], 0};
        const Blend blend = blendSources(std::array{one, two}).value();
        EXPECT_NEAR(blend.shares[0] + blend.shares[1], 1.0, 1e-12);
        EXPECT_NEAR(blend.shares[0], first, 1e-5);
        EXPECT_NEAR(blend.reached[0], one.wanted, 1e-4);
        EXPECT_NEAR(*softShare(gh[0], gh[1], one.wanted), 1.0 - first, 1e-9);
    }
    EXPECT_FALSE(softShare(14, 0.2, 15));
    EXPECT_FALSE(softShare(5, 5, 5));
}

TEST(Blending, WeighableAmountsAreWholeStepsOfTheScale)
{
    const MineralRecipe recipe{{128.87, 81.12}, {}};
    const std::vector<double> grams = weighable_g(recipe, 20.0, 0.1);
    EXPECT_NEAR(grams[0], 2.6, 1e-9);
    EXPECT_NEAR(grams[1], 1.6, 1e-9);
}

TEST(ChangePlans, EqualSharesReachTheTargetExactly)
{
    Random random(8);
    for (int i = 0; i < kTries; ++i) {
        const double source = between(random, 0.0, 10.0);
        const double target = source + between(random, 1.0, 20.0);
        const double start = target + between(random, 1.0, 60.0);
        for (const int count : {1, 2, 5}) {
            const double share = equalShareToTarget(start, target, source, count).value();
            const std::vector<double> shares(static_cast<std::size_t>(count), share);
            EXPECT_NEAR(afterEachChange(start, source, shares).back(), target, 1e-9 * start);
        }
        // Flowing through always costs more water than one change.
        EXPECT_GT(*flowThroughToTarget_L(start, target, source, 100.0),
                  100.0 * *equalShareToTarget(start, target, source, 1));
    }
    EXPECT_FALSE(equalShareToTarget(30, 4, 5, 1));
    EXPECT_EQ(*equalShareToTarget(20, 20, 20, 3), 0.0);
}

TEST(ChangePlans, HarderFreshWaterOfHigherPhFreesAmmonia)
{
    // Soft acid tank full of ammonia, refilled from a hard tap: less in total, more of it free.
    const AmmoniaWater tank{{3.0}, 6.3, MeqPerL{0.4}, 24.0, {0.6}};
    const AmmoniaWater tap{{0.0}, 8.0, MeqPerL{4.0}, 24.0, {2.0}};
    const AmmoniaAfter after = ammoniaAfterChange(tank, tap, 0.5, Co2{3.0}).value();
    EXPECT_DOUBLE_EQ(after.total.value, 1.5);
    EXPECT_GT(after.freeAfter, after.freeBefore);
    EXPECT_GT(*after.freeAfterGas, after.freeAfter);
    EXPECT_LT(after.pH, 8.0);
    EXPECT_GT(after.pH, 6.3);
    // Nothing changed changes nothing.
    const AmmoniaAfter same = ammoniaAfterChange(tank, tap, 0.0, std::nullopt).value();
    EXPECT_NEAR(same.freeAfter.value, same.freeBefore.value, 1e-9);
    EXPECT_FALSE(same.freeAfterGas);
}

TEST(Rock, SteadyExcessReproducesItself)
{
    const RockExcess excess = rockExcess(1.2, 0.4).value();
    EXPECT_NEAR(excess.before * 0.6, excess.after, 1e-12);
    EXPECT_NEAR(excess.after + 1.2, excess.before, 1e-12);
    EXPECT_NEAR(*rockRise(6.0 + excess.before, 6.0 + excess.before, 0.4, 6.0), 1.2, 1e-12);
    EXPECT_NEAR(*shareForRock(1.2, excess.before), 0.4, 1e-12);
    EXPECT_FALSE(shareForRock(3.0, 2.0));
}

TEST(Errors, LinearResultsJoinByRootOfSquares)
{
    const auto sum = [](std::span<const double> x) { return x[0] + 2.0 * x[1]; };
    const Spread spread = propagate(sum, std::array{Measured{10, 0.3}, Measured{5, 0.2}});
    EXPECT_DOUBLE_EQ(spread.value, 20.0);
    EXPECT_NEAR(spread.plus, 0.5, 1e-12);
    EXPECT_NEAR(spread.minus, 0.5, 1e-12);
}

TEST(Errors, APowerOfTenSpreadsFurtherUpThanDown)
{
    const auto power = [](std::span<const double> x) { return std::pow(10.0, x[0]); };
    const Spread spread = propagate(power, std::array{Measured{1.0, 0.2}});
    EXPECT_NEAR(spread.high(), std::pow(10.0, 1.2), 1e-12);
    EXPECT_NEAR(spread.low(), std::pow(10.0, 0.8), 1e-12);
    EXPECT_NEAR(firstOrderError(power, std::array{Measured{1.0, 0.2}}), 10.0 * std::log(10.0) * 0.2, 1e-6);
}

TEST(Errors, AnInputThatLeavesTheRangeCountsOnOneSideOnly)
{
    const auto root = [](std::span<const double> x) { return std::sqrt(x[0]); };
    const Spread spread = propagate(root, std::array{Measured{1.0, 2.0}});
    EXPECT_NEAR(spread.plus, std::sqrt(3.0) - 1.0, 1e-12);
    EXPECT_EQ(spread.minus, 0.0);
}

TEST(Errors, KitStep)
{
    const std::array steps{0.0, 0.25, 0.5, 1.0, 2.0};
    EXPECT_DOUBLE_EQ(kitStepError(0.5, steps), 0.25);
    EXPECT_DOUBLE_EQ(kitStepError(0.0, steps), 0.125);
    EXPECT_DOUBLE_EQ(kitStepError(2.0, steps), 0.5);
    EXPECT_DOUBLE_EQ(kitStepError(1.0, {}), 0.0);
}

} // namespace
