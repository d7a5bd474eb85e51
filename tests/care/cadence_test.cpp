// SPDX-License-Identifier: GPL-3.0-or-later
// Water changes by start method and age. The days were worked out by hand from the table of common practice: rich soil
// with CO2, new media: daily to day 7, every other day to 14, twice a week to 28, then weekly; mature media: daily to
// day 3, every other day to 7, twice a week to 14, then weekly; inert bed without CO2: 25 % on day 3, twice a week to
// 14, weekly to 56, then every two weeks.
#include "core/care/cadence.h"
#include "tests/care/care_row.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using record::Bed;
using record::Co2Mode;
using record::StartMethod;
using testing::ElementsAre;

const QString kWater = u"water-change"_s;

TEST(WaterChangeTable, NewMediaFromFlooding)
{
    CareRow row;
    EXPECT_THAT(row.ages(kWater, 0, 42), ElementsAre(1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34, 41));
}

TEST(WaterChangeTable, StarterIsTreatedAsNewMedia)
{
    CareRow row(StartMethod::Starter);
    EXPECT_THAT(row.ages(kWater, 0, 16), ElementsAre(1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16));
}

TEST(WaterChangeTable, MatureMediaIsOneStepLooserFromDayFour)
{
    CareRow row(StartMethod::MatureMedia);
    EXPECT_THAT(row.ages(kWater, 0, 40), ElementsAre(1, 2, 3, 5, 7, 10, 14, 21, 28, 35));
}

TEST(WaterChangeTable, InertBedWithoutCo2)
{
    CareRow row(StartMethod::NewMedia, Bed::Inert, Co2Mode::None);
    EXPECT_THAT(row.ages(kWater, 0, 80), ElementsAre(3, 6, 10, 13, 20, 27, 34, 41, 48, 55, 69));
    const auto items = row.due(kWater, 0, 80);
    EXPECT_DOUBLE_EQ(*items.front().fraction, 0.25);
    EXPECT_DOUBLE_EQ(*items[6].fraction, 0.20);
}

TEST(WaterChangeTable, InertBedWithCo2IsWeeklyWhenMature)
{
    CareRow row(StartMethod::NewMedia, Bed::Inert, Co2Mode::Pressurised);
    row.changes({3, 6, 10, 13, 20, 27, 34, 41, 48, 55, 62, 69, 76, 83, 90}, 0.4);
    EXPECT_THAT(row.ages(kWater, 90, 105), ElementsAre(97, 104));
}

TEST(WaterChangeTable, DarkStartWaitsForPlantsAndThenJoinsTheThirdWeek)
{
    CareRow row(StartMethod::DarkStart);
    EXPECT_TRUE(row.ages(kWater, 10, 30).empty());
    row.read(u"tan"_s, 27, 0.05);
    row.read(u"no2"_s, 27, 0.01);
    row.enter(record::EntryKind::Addition, 28, u"stems"_s).unit = u"plants"_s;
    // Day 28 counts as day 15: twice a week for two weeks.
    EXPECT_THAT(row.ages(kWater, 28, 40), ElementsAre(28, 31, 35, 38));
}

TEST(WaterChangeTable, DarkStartPlantedInDirtyWaterBeginsAtDayOne)
{
    CareRow row(StartMethod::DarkStart);
    row.read(u"tan"_s, 27, 1.0);
    row.read(u"no2"_s, 27, 0.5);
    row.enter(record::EntryKind::Addition, 28, u"stems"_s).unit = u"plants"_s;
    EXPECT_THAT(row.ages(kWater, 28, 32), ElementsAre(28, 29, 30, 31, 32));
}

TEST(WaterChangeTable, LowAmmoniaMakesTheFirstWeeksChangesSmaller)
{
    CareRow row;
    row.changes({1, 2, 3});
    row.read(u"tan"_s, 4, 0.4);
    EXPECT_DOUBLE_EQ(*row.due(kWater, 4, 4).front().fraction, 0.3);
    row.read(u"tan"_s, 4, 0.6, 9);
    EXPECT_DOUBLE_EQ(*row.due(kWater, 4, 4).front().fraction, 0.5);
}

TEST(WaterChangeTable, SaysLitresIntervalAndUntilWhen)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9});
    const care::DueItem item = row.due(kWater, 10, 11).front();
    EXPECT_EQ(item.due, CareRow::day(11));
    EXPECT_DOUBLE_EQ(*item.litres, 50.0);
    EXPECT_DOUBLE_EQ(item.reason.intervalDays, 2.0);
    EXPECT_EQ(item.reason.last, CareRow::day(9));
    EXPECT_EQ(item.reason.cadenceUntil, CareRow::day(14));
    EXPECT_EQ(item.reason.phaseKey, u"new-media"_s);
}

TEST(WaterChangeTable, HalfDaysAlternate)
{
    const QDate day = CareRow::day(20);
    EXPECT_EQ(care::gapDays(3.5, day, std::nullopt), 3);
    EXPECT_EQ(care::gapDays(3.5, day, day.addDays(-3)), 4);
    EXPECT_EQ(care::gapDays(3.5, day, day.addDays(-4)), 3);
    EXPECT_EQ(care::gapDays(3.5, day, day.addDays(-10)), 3);
    EXPECT_EQ(care::gapDays(7.0, day, day.addDays(-3)), 7);
}

TEST(WaterChangeTable, AcceptedStepsShiftTheTable)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20});
    row.row.settings[care::cadenceSettingKey(row.layoutId)] = u"1@2026-03-21"_s;
    EXPECT_THAT(row.ages(kWater, 20, 30), ElementsAre(27));
    row.row.settings[care::cadenceSettingKey(row.layoutId)] = u"-1@2026-03-21"_s;
    EXPECT_THAT(row.ages(kWater, 20, 25), ElementsAre(22, 24));
}

TEST(WaterChangeTable, LadderMovesIntervalOrFractionNeverBoth)
{
    care::Pace pace{1.0, 0.5, {}, {}, {}};
    for (int step = 0; step < 8; ++step) {
        const care::Pace looser = care::loosened(pace, true);
        EXPECT_TRUE(looser.everyDays == pace.everyDays || looser.fraction == pace.fraction);
        EXPECT_GE(looser.everyDays, pace.everyDays);
        EXPECT_LE(looser.fraction, pace.fraction);
        pace = looser;
    }
    EXPECT_DOUBLE_EQ(pace.everyDays, 21.0);
    EXPECT_NEAR(pace.fraction, 0.3, 1e-9);
    EXPECT_DOUBLE_EQ(care::loosened({7.0, 0.3, {}, {}, {}}, false).everyDays, 7.0);
    EXPECT_DOUBLE_EQ(care::tightened({7.0, 0.4, {}, {}, {}}).everyDays, 3.5);
    EXPECT_NEAR(care::tightened({1.0, 0.5, {}, {}, {}}).fraction, 0.6, 1e-9);
    EXPECT_NEAR(care::tightened({1.0, 0.7, {}, {}, {}}).fraction, 0.7, 1e-9);
}

} // namespace
