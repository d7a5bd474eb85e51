// SPDX-License-Identifier: GPL-3.0-or-later
// What tightens the water changes at once, and what eases them: each with a case that must and one that must not.
// Limits: free ammonia 0.02 mg/L and UF/IFAS FA16; nitrite by SRAC 462 (0.5 mg/L as the ion is 0.15 mg N/L); plants by
// Cao et al. 2007; the rest common practice.
#include "core/care/cadence.h"
#include "core/care/limits.h"
#include "tests/care/care_row.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using care::DueItem;
using care::TriggerKind;
using record::EntryKind;

const QString kWater = u"water-change"_s;

/// A tank of 65 days, weekly changes, the last on day 62.
CareRow settled()
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34, 41, 48, 55, 62}, 0.4);
    return row;
}

std::vector<TriggerKind> kinds(CareRow& row, int age, int hour = 18)
{
    std::vector<TriggerKind> found;
    for (const care::Trigger& trigger :
         care::activeTriggers(care::circumstances(row.sorted(), row.record(), CareRow::at(age, hour)))) {
        found.push_back(trigger.kind);
    }
    return found;
}

TEST(Trigger, NitriteWithAnimals)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 50, 8);
    row.read(u"no2"_s, 65, 0.149);
    EXPECT_THAT(kinds(row, 65), testing::IsEmpty());
    row.read(u"no2"_s, 65, 0.15, 9);
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::NitriteWithAnimals));
    const DueItem item = row.due(kWater, 65, 65).front();
    EXPECT_EQ(item.due, CareRow::day(65));
    EXPECT_DOUBLE_EQ(*item.fraction, 0.5);
    EXPECT_EQ(item.graceDays, 0);
    ASSERT_EQ(item.reason.tightened.size(), 1U);
    EXPECT_EQ(item.reason.tightened[0].parameter, u"no2"_s);
    EXPECT_DOUBLE_EQ(item.reason.tightened[0].value, 0.15);
    EXPECT_DOUBLE_EQ(item.reason.tightened[0].limit, 0.15);
}

TEST(Trigger, AfterTheEmergencyChangeItIsDailyAndReadAgain)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 50, 8);
    row.read(u"no2"_s, 65, 0.3);
    row.change(65, 0.5, 10);
    EXPECT_THAT(row.ages(kWater, 65, 67), testing::ElementsAre(66, 67));
    ASSERT_EQ(row.due(u"retest"_s, 65, 65).size(), 1U);
    row.read(u"no2"_s, 65, 0.05, 13);
    EXPECT_TRUE(row.due(u"retest"_s, 65, 65).empty());
    EXPECT_THAT(row.ages(kWater, 65, 73), testing::ElementsAre(72));
}

TEST(Trigger, NitriteLimitIsLowerInWaterPoorInChloride)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 50, 8);
    row.read(u"no2"_s, 65, 0.05);
    EXPECT_TRUE(kinds(row, 65).empty());
    record::SourceWater water;
    water.id = {5};
    water.kind = record::SourceKind::ReverseOsmosis;
    row.row.sources.push_back(water);
    row.layout().source = water.id;
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::NitriteWithAnimals));
    row.row.sources.front().chloride_mg_per_L = 20.0;
    EXPECT_TRUE(kinds(row, 65).empty());
}

TEST(Trigger, NitriteWithoutAnimalsDoesNotFire)
{
    CareRow row = settled();
    row.read(u"no2"_s, 65, 3.0);
    EXPECT_TRUE(kinds(row, 65).empty());
}

TEST(Trigger, FreeAmmoniaWithAnimalsNeedsPh)
{
    // 0.5 mg N/L at pH 8.0 and 24 C holds 5.02 % free: 0.025 (UF/IFAS FA16's factor); at pH 7.0 0.53 %: 0.0026.
    CareRow row = settled();
    row.animals(u"tetra"_s, 50, 8);
    row.read(u"tan"_s, 65, 0.5);
    EXPECT_TRUE(kinds(row, 65).empty());
    row.read(u"ph"_s, 65, 7.0);
    EXPECT_TRUE(kinds(row, 65).empty());
    row.record().readings.back().value = 8.0;
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::FreeAmmoniaWithAnimals));
}

TEST(Trigger, AmmoniaOfTwoWithoutAnimals)
{
    CareRow row = settled();
    row.read(u"tan"_s, 65, 1.99);
    EXPECT_TRUE(kinds(row, 65).empty());
    row.read(u"tan"_s, 65, 2.0, 9);
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::AmmoniaWithoutAnimals));
    EXPECT_DOUBLE_EQ(*row.due(kWater, 65, 65).front().fraction, 0.6);
    EXPECT_THAT(row.ages(kWater, 65, 67), testing::ElementsAre(65, 66, 67));
}

TEST(Trigger, AnimalsAllLostCountAsNone)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 50, 8);
    row.enter(EntryKind::Loss, 55, u"tetra"_s).count = 8;
    row.read(u"tan"_s, 65, 2.5);
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::AmmoniaWithoutAnimals));
}

TEST(Trigger, OldReadingsSetNothingOff)
{
    CareRow row = settled();
    row.read(u"tan"_s, 50, 3.0);
    EXPECT_TRUE(kinds(row, 65).empty());
}

TEST(Trigger, MeltOnAFifthOfThePlants)
{
    CareRow row = settled();
    row.observe(u"melt"_s, 64, 2, 0.19);
    EXPECT_TRUE(kinds(row, 65).empty());
    row.record().entries.back().coverage = 0.20;
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::MeltHeavy));
    EXPECT_DOUBLE_EQ(row.due(kWater, 65, 70).front().reason.intervalDays, 3.5);
    row.observe(u"melt"_s, 65, 1, 0.5);
    EXPECT_TRUE(kinds(row, 65).empty());
}

TEST(Trigger, MeltTightensForOneWeekOnly)
{
    CareRow row = settled();
    row.observe(u"melt"_s, 62, 3, 0.5);
    row.change(66, 0.4);
    // Tight to day 69, so the next is three or four days on; the one after that is a week later.
    EXPECT_THAT(row.ages(kWater, 66, 80), testing::ElementsAre(69, 76));
    EXPECT_TRUE(kinds(row, 70).empty());
}

TEST(Trigger, AlgaeUpOneSeverityInFourDays)
{
    CareRow row = settled();
    row.observe(u"alg_hair"_s, 60, 1);
    row.observe(u"alg_hair"_s, 65, 2);
    EXPECT_TRUE(kinds(row, 65).empty()) << "five days apart";
    row.observe(u"alg_dust"_s, 61, 1);
    row.observe(u"alg_dust"_s, 65, 2);
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::AlgaeRising));
    row.observe(u"alg_dust"_s, 65, 1);
    EXPECT_TRUE(kinds(row, 65).empty()) << "the newest look decides";
}

TEST(Trigger, BedDisturbedAsksForTwoDays)
{
    CareRow row = settled();
    row.enter(EntryKind::Upkeep, 64, u"bed-disturbed"_s, 10);
    EXPECT_THAT(row.ages(kWater, 64, 66), testing::ElementsAre(64, 65));
    row.change(64, 0.5, 12);
    EXPECT_THAT(row.ages(kWater, 64, 66), testing::ElementsAre(65));
    row.change(65, 0.5, 12);
    EXPECT_TRUE(row.ages(kWater, 65, 71).empty());
}

TEST(Trigger, AChangeBeforeTheLossDoesNotAnswerIt)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 50, 8);
    row.change(65, 0.4, 9);
    EXPECT_TRUE(row.ages(kWater, 65, 65).empty());
    row.enter(EntryKind::Loss, 65, u"tetra"_s, 15).count = 1;
    EXPECT_THAT(row.ages(kWater, 65, 65), testing::ElementsAre(65));
    row.change(65, 0.4, 17);
    EXPECT_TRUE(row.ages(kWater, 65, 65).empty());
}

TEST(Trigger, ALostPlantIsNoLoss)
{
    CareRow row = settled();
    row.enter(EntryKind::Loss, 65, u"fern"_s).unit = u"plants"_s;
    EXPECT_TRUE(kinds(row, 65).empty());
}

TEST(Trigger, HardnessTwoDegreesOverItsRange)
{
    CareRow row = settled();
    row.layout().rockHardens = true;
    row.target(u"gh"_s, 4 * water::kMmolPerDegree, 6 * water::kMmolPerDegree);
    row.read(u"gh"_s, 64, 7.9 * water::kMmolPerDegree);
    EXPECT_TRUE(kinds(row, 65).empty());
    row.read(u"gh"_s, 65, 8.1 * water::kMmolPerDegree);
    EXPECT_THAT(kinds(row, 65), testing::ElementsAre(TriggerKind::HardnessAboveTarget));
    row.layout().rockHardens = false;
    EXPECT_TRUE(kinds(row, 65).empty());
}

TEST(Trigger, NitrateAsksForOneChangeSizedToItsAim)
{
    CareRow row = settled();
    row.read(u"no3"_s, 65, 60.0 / water::kNitratePerN);
    EXPECT_TRUE(kinds(row, 65).empty()) << "without animals the limit is 80";
    row.animals(u"tetra"_s, 50, 8);
    const DueItem item = row.due(kWater, 65, 65).front();
    EXPECT_EQ(item.reason.trigger, u"nitrate"_s);
    EXPECT_NEAR(*item.fraction, 0.5, 1e-9); // from 60 to 30 with none in the source: half
    row.change(65, 0.5, 10);
    EXPECT_THAT(row.ages(kWater, 65, 73), testing::ElementsAre(72));
}

TEST(Trigger, AnEarlierMoveDoesNotHoldAnEmergencyBack)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 50, 8);
    record::Task& move = row.task(kWater, 69, record::TaskState::Open);
    move.movedTo = CareRow::day(71);
    move.enteredAt = CareRow::at(63);
    EXPECT_THAT(row.ages(kWater, 65, 72), testing::ElementsAre(71));
    row.read(u"no2"_s, 65, 0.4);
    EXPECT_EQ(row.ages(kWater, 65, 72).front(), 65);
}

} // namespace
