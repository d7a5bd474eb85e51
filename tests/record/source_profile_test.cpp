// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/source_profile.h"

#include "core/water/carbonate.h"

#include <gtest/gtest.h>

namespace littoral::record {
namespace {

using namespace Qt::StringLiterals;

class SourceProfileTest : public ::testing::Test
{
protected:
    SourceProfileTest()
    {
        SourceWater tap = named(1, u"tap"_s, SourceKind::Tap);
        tap.nitrate_mgN_per_L = 5.0;
        tap.alkalinity_meq_per_L = 3.0;
        tap.hardness_mmol_per_L = 2.0;
        tap.chloride_mg_per_L = 40.0;
        tap.ph = 7.6;
        tap.chloramine = YesNoUnknown::No;
        m_all = {tap, named(2, u"osmosis"_s, SourceKind::ReverseOsmosis), named(3, u"rain"_s, SourceKind::Rain)};
    }
    static SourceWater named(qint64 id, const QString& name, SourceKind kind)
    {
        SourceWater water;
        water.id.value = id;
        water.name = name;
        water.kind = kind;
        return water;
    }
    SourceWater& blend(qint64 first, qint64 second, std::optional<double> share)
    {
        SourceWater water =
            named(static_cast<qint64>(m_all.size()) + 1, u"blend %1"_s.arg(m_all.size()), SourceKind::Blend);
        water.firstPart.value = first;
        water.secondPart.value = second;
        water.firstShare = share;
        m_all.push_back(water);
        return m_all.back();
    }
    SourceWater& at(qint64 id) { return m_all[static_cast<std::size_t>(id - 1)]; }

    std::vector<SourceWater> m_all;
};

TEST_F(SourceProfileTest, ThirtyInAHundredOfTapByHand)
{
    // Mixing by volume (mass balance of a conservative substance): 0.3 × tap, the rest free of salts.
    const SourceProfile profile = sourceProfile(m_all, blend(1, 2, 0.3));
    EXPECT_NEAR(*profile.nitrate_mgN_per_L.value, 1.5, 1e-12);
    EXPECT_NEAR(*profile.alkalinity_meq_per_L.value, 0.9, 1e-12);
    EXPECT_NEAR(*profile.hardness_mmol_per_L.value, 0.6, 1e-12);
    EXPECT_NEAR(*profile.chloride_mg_per_L.value, 12.0, 1e-12);
    EXPECT_EQ(profile.nitrate_mgN_per_L.origin, Origin::Reckoned);
    EXPECT_FALSE(profile.ph.value) << "the pH of the osmosis water is not stated, so the carbon in it is not known";
    EXPECT_EQ(profile.chloramine, YesNoUnknown::Unknown) << "the osmosis water does not say";
}

TEST_F(SourceProfileTest, WhatIsMeasuredGoesBeforeWhatIsReckoned)
{
    SourceWater& water = blend(1, 2, 0.3);
    water.nitrate_mgN_per_L = 2.2;
    const SourceProfile profile = sourceProfile(m_all, water);
    EXPECT_EQ(profile.nitrate_mgN_per_L.value, 2.2);
    EXPECT_EQ(profile.nitrate_mgN_per_L.origin, Origin::Measured);
    EXPECT_EQ(profile.alkalinity_meq_per_L.origin, Origin::Reckoned);
}

TEST_F(SourceProfileTest, PhFollowsFromCarbonAndNotFromAMean)
{
    at(2).ph = 5.8;
    at(2).alkalinity_meq_per_L = 0.05;
    const SourceProfile profile = sourceProfile(m_all, blend(1, 2, 0.5));
    ASSERT_TRUE(profile.ph.value);
    EXPECT_EQ(profile.ph.origin, Origin::Reckoned);
    // CO2 of either part is far under its bicarbonate here, so the mixture lies near the harder part: above the mean of
    // the two figures (Stumm & Morgan, closed carbonate system: alkalinity and total carbon mix, pH does not).
    EXPECT_GT(*profile.ph.value, (7.6 + 5.8) / 2.0);
    EXPECT_LT(*profile.ph.value, 7.6);
    // The mixture's carbon and alkalinity give that pH back.
    const water::Medium tapMedium{20.0, water::ionicStrengthFromHardness({2.0}, {3.0})};
    const water::Medium softMedium{20.0, water::ionicStrengthFromHardness({0.0}, {0.05})};
    const double carbon =
        (water::totalCarbon(7.6, {3.0}, tapMedium)->value + water::totalCarbon(5.8, {0.05}, softMedium)->value) / 2.0;
    const water::Medium mixed{20.0, (tapMedium.ionicStrength + softMedium.ionicStrength) / 2.0};
    EXPECT_NEAR(*profile.ph.value, *water::phFromCarbon({carbon}, {1.525}, mixed), 0.002);
}

TEST_F(SourceProfileTest, ChloramineOfAnyPartIsInTheBlend)
{
    at(1).chloramine = YesNoUnknown::Yes;
    EXPECT_EQ(sourceProfile(m_all, blend(1, 2, 0.3)).chloramine, YesNoUnknown::Yes);
    at(1).chloramine = YesNoUnknown::No;
    at(2).chloramine = YesNoUnknown::No;
    EXPECT_EQ(sourceProfile(m_all, blend(1, 2, 0.3)).chloramine, YesNoUnknown::No);
}

TEST_F(SourceProfileTest, DemineralisedWaterWithoutFiguresIsFreeOfSaltsAndRainIsNot)
{
    const SourceProfile pure = sourceProfile(m_all, at(2));
    EXPECT_EQ(pure.alkalinity_meq_per_L.value, 0.0);
    EXPECT_EQ(pure.alkalinity_meq_per_L.origin, Origin::Assumed);
    EXPECT_FALSE(sourceProfile(m_all, at(3)).alkalinity_meq_per_L.value);
    EXPECT_FALSE(sourceProfile(m_all, blend(1, 3, 0.5)).alkalinity_meq_per_L.value);
}

TEST_F(SourceProfileTest, BlendsOfBlendsAreTakenApart)
{
    blend(1, 2, 0.5); // 4
    blend(4, 3, 0.4); // 5
    const auto parts = sourceParts(m_all, m_all.back());
    ASSERT_TRUE(parts);
    ASSERT_EQ(parts->size(), 3U);
    EXPECT_NEAR((*parts)[0].share, 0.2, 1e-12);
    EXPECT_NEAR((*parts)[1].share, 0.2, 1e-12);
    EXPECT_NEAR((*parts)[2].share, 0.6, 1e-12);
}

TEST_F(SourceProfileTest, WhatCannotBeTakenApartSaysWhy)
{
    blend(1, 0, 0.5); // 4: a part missing
    blend(1, 2, {});  // 5: no share
    blend(7, 1, 0.5); // 6 of 7
    blend(6, 1, 0.5); // 7 of 6: each holds the other
    for (const qint64 id : {4, 5, 6, 7}) {
        const auto parts = sourceParts(m_all, at(id));
        ASSERT_FALSE(parts) << id;
        EXPECT_FALSE(parts.error().mend.empty());
        EXPECT_FALSE(sourceProfile(m_all, at(id)).alkalinity_meq_per_L.value);
    }
    EXPECT_NE(sourceParts(m_all, at(6)).error().what.find("itself"), std::string::npos);
    EXPECT_EQ(blendProblems(m_all).size(), 4);
}

TEST_F(SourceProfileTest, TapsMixedAreTapWater)
{
    m_all.push_back(named(4, u"other tap"_s, SourceKind::Tap));
    const SourceWater taps = blend(1, 4, 0.5);
    EXPECT_TRUE(isAllFromTap(m_all, taps));
    EXPECT_FALSE(isAllFromTap(m_all, blend(1, 2, 0.9)));
    EXPECT_TRUE(isAllFromTap(m_all, at(1)));
}

} // namespace
} // namespace littoral::record
