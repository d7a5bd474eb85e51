// SPDX-License-Identifier: GPL-3.0-or-later
// Edges of the water functions: where they must refuse, and identities that hold whatever the numbers.
#include "core/water/ammonia.h"
#include "core/water/dilution.h"
#include "core/water/nitrite.h"
#include "core/water/units.h"
#include "core/water/volume.h"

#include <array>
#include <gtest/gtest.h>
#include <limits>

namespace {

using namespace littoral::water;
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

TEST(FreeAmmonia, RefusesOutsideItsRange)
{
    EXPECT_FALSE(pKa(-0.1));
    EXPECT_FALSE(pKa(50.1));
    EXPECT_FALSE(pKa(kNaN));
    EXPECT_FALSE(unionisedFraction(1.9, 25));
    EXPECT_FALSE(unionisedFraction(13.1, 25));
    EXPECT_FALSE(freeAmmonia({-0.1}, 7.0, 25));
    EXPECT_TRUE(unionisedFraction(7.0, 0.0));
    EXPECT_TRUE(unionisedFraction(7.0, 50.0));
}

TEST(FreeAmmonia, IsHalfWherePHEqualsPKa)
{
    EXPECT_NEAR(*unionisedFraction(*pKa(25.0), 25.0), 0.5, 1e-12);
}

TEST(FreeAmmonia, RisesTenfoldPerUnitOfPHFarBelowPKa)
{
    EXPECT_NEAR(*unionisedFraction(6.5, 25.0) / *unionisedFraction(5.5, 25.0), 10.0, 0.03);
}

TEST(AmmoniaCriteria, RefuseOutsideTheirTables)
{
    EXPECT_FALSE(chronicCriterion(6.4, 20));
    EXPECT_FALSE(chronicCriterion(9.1, 20));
    EXPECT_FALSE(acuteCriterionSalmonidsAbsent(7, 31));
    EXPECT_FALSE(acuteCriterionSalmonidsPresent(7, -1));
    EXPECT_FALSE(chronicFourDayLimit(kNaN, 20));
}

TEST(AmmoniaCriteria, SalmonidsNeverRaiseTheLimit)
{
    for (double pH = 6.5; pH <= 9.0; pH += 0.25) {
        for (double t = 0.0; t <= 30.0; t += 5.0) {
            EXPECT_LE(acuteCriterionSalmonidsPresent(pH, t)->value, acuteCriterionSalmonidsAbsent(pH, t)->value + 1e-12)
                << pH << ' ' << t;
        }
    }
}

TEST(AmmoniaCriteria, ColdStopsMatteringToTheChronicOneBelowSevenDegrees)
{
    EXPECT_DOUBLE_EQ(chronicCriterion(7.5, 3)->value, chronicCriterion(7.5, 7)->value);
    EXPECT_GT(chronicCriterion(7.5, 7)->value, chronicCriterion(7.5, 8)->value);
}

TEST(Nitrite, EnoughChlorideNeedsNoSalt)
{
    EXPECT_EQ(chlorideNeeded_mg_per_L({2.0}, 20.0), 0.0);
    EXPECT_EQ(saltNeeded_g({2.0}, 500.0, 100.0), 0.0);
    EXPECT_GT(saltNeeded_g({2.0}, 19.9, 100.0), 0.0);
}

TEST(Volume, NoRoomGivesNothing)
{
    EXPECT_EQ(innerVolume_L({60, 1, 36, 0.6, 3}), 0.0);
    EXPECT_EQ(innerVolume_L({60, 30, 3, 0.6, 3}), 0.0);
    EXPECT_EQ(innerVolume_L({0, 0, 0, 0.6, 3}), 0.0);
    EXPECT_EQ(bowRadius_cm(20, 11), 0.0);
    EXPECT_EQ(bowSegment_cm2(20, 0), 0.0);
    EXPECT_EQ(floorPressure_kPa(100, 0, 45), 0.0);
    EXPECT_EQ(solidDisplacement_L(4, 0), 0.0);
}

TEST(Volume, DeepestBowIsHalfACircle)
{
    EXPECT_NEAR(bowSegment_cm2(20, 10), 3.14159265 * 100.0 / 2.0, 1e-5);
}

TEST(Dilution, CountIsTheFirstThatReachesTheTarget)
{
    for (const double fraction : {0.1, 0.25, 0.5, 0.8}) {
        const auto count = changesToTarget(80, 20, 5, fraction);
        ASSERT_TRUE(count);
        const std::vector<double> enough(static_cast<std::size_t>(*count), fraction);
        const std::vector<double> oneLess(static_cast<std::size_t>(*count) - 1, fraction);
        EXPECT_LE(afterChanges(80, 5, enough), 20.0 + 1e-9);
        EXPECT_GT(afterChanges(80, 5, oneLess), 20.0);
    }
    EXPECT_EQ(changesToTarget(80, 20, 0, 0.5), 2); // exactly two: 80 > 40 > 20
}

TEST(Dilution, SaysWhenNoNumberOfChangesWillDo)
{
    EXPECT_FALSE(changesToTarget(80, 5, 5, 0.5));
    EXPECT_FALSE(changesToTarget(80, 4, 5, 0.5));
    EXPECT_FALSE(changesToTarget(80, 20, 5, 0.0));
    EXPECT_EQ(changesToTarget(10, 20, 5, 0.5), 0);
    EXPECT_FALSE(singleChangeToTarget(80, 4, 5));
    EXPECT_FALSE(steadyState(1, 0, 0));
    EXPECT_FALSE(dripSteadyState(1, 0, 0));
    EXPECT_FALSE(flowThroughForChange(1.0));
}

TEST(Dilution, SteadyStateReproducesItself)
{
    const auto state = steadyState(10, 0.3, 5);
    const std::array once{0.3};
    EXPECT_NEAR(afterChanges(state->peak, 5, once), state->trough, 1e-12);
    EXPECT_NEAR(state->trough + 10, state->peak, 1e-12);
}

TEST(Dilution, OrderDoesNotMatterAndADripNeedsMoreWater)
{
    const std::array one{0.5, 0.2, 0.3};
    const std::array other{0.3, 0.5, 0.2};
    EXPECT_DOUBLE_EQ(remainingFraction(one), remainingFraction(other));
    for (const double fraction : {0.1, 0.3, 0.5, 0.9}) {
        EXPECT_GT(*flowThroughForChange(fraction), fraction);
    }
}

TEST(Units, ConvertOnlyByNameAndBackAgain)
{
    EXPECT_DOUBLE_EQ(NitriteIon::from(NitriteIon{0.7}.asN()).mg_per_L, 0.7);
    EXPECT_DOUBLE_EQ(NitrateIon::from(NitrateIon{20}.asN()).mg_per_L, 20);
    EXPECT_DOUBLE_EQ(GermanDegrees::from(GermanDegrees{6}.alkalinity()).value, 6);
    EXPECT_DOUBLE_EQ(GermanDegrees::from(GermanDegrees{6}.hardness()).value, 6);
    EXPECT_DOUBLE_EQ(GermanDegrees{1}.alkalinity().value, 2.0 * GermanDegrees{1}.hardness().value);
}

} // namespace
