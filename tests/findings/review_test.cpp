// SPDX-License-Identifier: GPL-3.0-or-later
// What changed, change points and exposure, against published and independently computed figures.
#include "core/findings/change_points.h"
#include "core/findings/changes.h"
#include "core/findings/exposure.h"
#include "core/findings/robust.h"
#include "core/water/nitrogen.h"
#include "tests/findings/small_row.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;
using findings::ChangeKind;
using record::EntryKind;

namespace {

const findings::Change* find(const findings::ChangeReview& review, ChangeKind kind, const QString& key = {})
{
    const auto found = std::ranges::find_if(
        review.changes, [&](const findings::Change& c) { return c.kind == kind && (key.isEmpty() || c.key == key); });
    return found == review.changes.end() ? nullptr : &*found;
}

} // namespace

// Worked example of Pettitt 1979, Table 1 (the data of Page 1955, as reprinted in the manuals of the R packages "trend"
// and "wql"): change after the 17th of 40 values, K = 232, p = 0.0146.
TEST(PettittTest, PublishedExample)
{
    const std::array values{-1.05, 0.96, 1.22,  0.58,  -0.98, -0.03, -1.54, -0.71, -0.35, 0.66,
                            0.44,  0.91, -0.02, -1.42, 1.26,  -1.02, -0.81, 1.66,  1.05,  0.97,
                            2.14,  1.22, -0.24, 1.60,  0.72,  -0.12, 0.44,  0.03,  0.66,  0.56,
                            1.37,  1.66, 0.10,  0.80,  1.29,  0.49,  -0.07, 1.18,  3.29,  1.84};
    const auto test = findings::pettitt(values);
    ASSERT_TRUE(test.has_value());
    EXPECT_EQ(test->last + 1, 17u);
    EXPECT_DOUBLE_EQ(test->statistic, 232.0);
    EXPECT_NEAR(test->probability, 0.0146, 0.0001);
}

// Annual flow of the Nile at Aswan 1871-1970 (Cobb 1978, Biometrika 65, 243-251; data set "Nile" of R, here from
// memory, its mean of 919.35 as published): the level fell after 1898. K computed independently by ranks, 2 sum r - t
// (n + 1).
TEST(PettittTest, FlowOfTheNile)
{
    const std::array<double, 100> flow{
        1120, 1160, 963,  1210, 1160, 1160, 813,  1230, 1370, 1140, 995,  935,  1110, 994, 1020, 960,  1180,
        799,  958,  1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774,  840,  874, 694,  940,  833,
        701,  916,  692,  1020, 1050, 969,  831,  726,  456,  824,  702,  1120, 1100, 832, 764,  821,  768,
        845,  864,  862,  698,  845,  744,  796,  1040, 759,  781,  865,  845,  944,  984, 897,  822,  1010,
        771,  676,  649,  846,  812,  742,  801,  1040, 860,  874,  848,  890,  744,  749, 838,  1050, 918,
        986,  797,  923,  975,  815,  1020, 906,  901,  1170, 912,  746,  919,  718,  714, 740};
    double sum = 0.0;
    for (const double value : flow) {
        sum += value;
    }
    ASSERT_NEAR(sum / 100.0, 919.35, 1e-9);
    const auto test = findings::pettitt(flow);
    ASSERT_TRUE(test.has_value());
    EXPECT_EQ(1870 + static_cast<int>(test->last) + 1, 1898);
    EXPECT_DOUBLE_EQ(test->statistic, 1617.0);
    EXPECT_NEAR(test->probability, 3.591e-7, 1e-9);
}

TEST(PettittTest, NothingToFind)
{
    EXPECT_FALSE(findings::pettitt(std::array{1.0, 1.0, 1.0, 1.0, 1.0}).has_value());
    EXPECT_FALSE(findings::pettitt(std::array{1.0, 2.0}).has_value());
    const auto test = findings::pettitt(std::array{1.0, 3.0, 2.0, 1.0, 3.0, 2.0});
    ASSERT_TRUE(test.has_value());
    EXPECT_EQ(test->probability, 1.0);
}

TEST(ChangePoints, TwoStepsAreFoundAndDated)
{
    SmallRow row;
    const std::array levels{4.9, 5.1, 5.0, 4.8, 5.0, 5.2, 4.9, 5.1, 7.0, 7.2, 6.9, 7.1,
                            7.0, 6.8, 7.1, 7.0, 3.0, 3.1, 2.9, 3.0, 2.8, 3.2, 3.1, 3.0};
    for (std::size_t i = 0; i < levels.size(); ++i) {
        row.read(u"kh"_s, static_cast<double>(i) * 3.0, levels[i]);
    }
    const auto points = findings::changePoints(row.sorted(), u"kh"_s, row.at(100));
    ASSERT_EQ(points.size(), 2u);
    EXPECT_EQ(points[0].after, row.at(24));
    EXPECT_NEAR(points[0].levelBefore, 5.0, 0.06);
    EXPECT_NEAR(points[0].levelAfter, 7.0, 0.06);
    EXPECT_EQ(points[1].after, row.at(48));
    EXPECT_NEAR(points[1].levelAfter, 3.0, 0.06);
    EXPECT_TRUE(findings::changePoints(row.sorted(), u"kh"_s, row.at(15)).empty());
}

TEST(Robust, MedianAndSpread)
{
    EXPECT_DOUBLE_EQ(findings::medianOf({3, 1, 2}), 2.0);
    EXPECT_DOUBLE_EQ(findings::medianOf({4, 1, 2, 3}), 2.5);
    // Deviations from 2 are 1 1 0 0 2 4 7, their median 1 (worked example of an encyclopedia article on the MAD).
    EXPECT_DOUBLE_EQ(findings::spreadOf({1, 1, 2, 2, 4, 6, 9}), 1.4826);
}

TEST(WhatChanged, LargestFirstAgainstTheLayoutsOwnSpread)
{
    SmallRow row;
    for (int day = 2; day <= 100; day += 7) {
        row.change(day, 0.3).source = record::SourceWaterId{5};
        row.read(u"gh"_s, day, 1.0 + (day % 2 == 0 ? 0.02 : -0.02));
        row.read(u"no3"_s, day, 2.0 + 0.4 * (day % 3));
    }
    row.change(107, 0.3).source = record::SourceWaterId{6};
    row.change(113, 0.3).source = record::SourceWaterId{6}; // a day early
    row.read(u"gh"_s, 108, 1.6);
    row.read(u"gh"_s, 110, 1.7);
    row.read(u"gh"_s, 112, 1.7);
    auto& light = row.enter(EntryKind::LightChange, 105);
    light.amount = 9.0; // six before, as the layout has it
    row.enter(EntryKind::Upkeep, 60, u"filter-service"_s);
    row.enter(EntryKind::Observation, 114, u"melt"_s).severity = 3;
    const auto& layout = row.sorted();
    const auto onset = findings::onsetOf(layout, row.at(120));
    ASSERT_TRUE(onset.has_value());
    EXPECT_EQ(*onset, row.at(114));
    const auto review = findings::whatChanged(row.row, layout, *onset);
    ASSERT_GE(review.changes.size(), 3u);
    const findings::Change* source = find(review, ChangeKind::Event, u"source-change"_s);
    ASSERT_NE(source, nullptr);
    EXPECT_NEAR(source->z, 4.0, 1e-9); // one where there was none, over a quarter
    EXPECT_TRUE(source->ownSpread);
    EXPECT_EQ(source->first, row.at(107));
    const findings::Change* hours = find(review, ChangeKind::LightHours);
    ASSERT_NE(hours, nullptr);
    EXPECT_NEAR(hours->before, 6.0, 1e-9);
    EXPECT_NEAR(hours->z, 6.0, 1e-9); // three hours over half an hour
    const findings::Change* hardness = find(review, ChangeKind::Reading, u"gh"_s);
    ASSERT_NE(hardness, nullptr);
    EXPECT_EQ(hardness->first, row.at(108));
    EXPECT_GT(hardness->z, 5.0);
    EXPECT_EQ(find(review, ChangeKind::Reading, u"no3"_s), nullptr);
    EXPECT_EQ(find(review, ChangeKind::Event, u"filter-service"_s), nullptr);
    EXPECT_EQ(find(review, ChangeKind::WaterChanged), nullptr);
    bool readingsBegan = false;
    for (const findings::Change& change : review.changes) {
        readingsBegan = readingsBegan || !change.wasDone();
        EXPECT_EQ(change.wasDone(), !readingsBegan);
    }
}

TEST(WhatChanged, PlannedAndLaterThingsAreNotChanges)
{
    SmallRow row;
    row.enter(EntryKind::Upkeep, 90, u"power-cut"_s).planned = true;
    row.enter(EntryKind::Upkeep, 101, u"power-cut"_s);
    const auto review = findings::whatChanged(row.row, row.sorted(), row.at(100));
    EXPECT_TRUE(review.changes.empty());
}

TEST(WhatChanged, SkippedChangesShow)
{
    SmallRow row;
    for (int day = 2; day <= 79; day += 7) {
        row.change(day, 0.4);
    }
    const auto review = findings::whatChanged(row.row, row.sorted(), row.at(104));
    const findings::Change* weekly = find(review, ChangeKind::WaterChanged);
    ASSERT_NE(weekly, nullptr);
    EXPECT_NEAR(weekly->before, 0.4, 1e-9);
    EXPECT_NEAR(weekly->after, 0.0, 1e-9);
    EXPECT_LT(weekly->z, -4.0);
}

// A triangle from 0 to 2 and back in 48 h crosses 1 at a quarter and three quarters: 24 h above it.
TEST(ExposureHours, StraightLinesBetweenReadings)
{
    SmallRow row;
    row.read(u"no2"_s, 10, 0.0);
    row.read(u"no2"_s, 11, 2.0);
    row.read(u"no2"_s, 12, 0.0);
    const auto& layout = row.sorted();
    const findings::Limit limit{u"no2"_s, 1.0, true, {}};
    const auto whole = findings::exposure(row.row, layout, limit, row.at(0), row.at(20));
    EXPECT_NEAR(whole.hours, 24.0, 1e-6);
    EXPECT_NEAR(whole.readHours, 48.0, 1e-6);
    EXPECT_NEAR(whole.gapHours, 18.0 * 24.0, 1e-6);
    EXPECT_DOUBLE_EQ(whole.worst, 2.0);
    EXPECT_EQ(whole.worstAt, row.at(11));
    // 10 % at the top: 1.8 crosses 1 at 1/1.8 of the way, 2.2 at 1/2.2; at the foot one step of the last digit.
    EXPECT_NEAR(whole.hoursLow, 48.0 * (1.0 - 1.0 / 1.8), 1e-6);
    EXPECT_GT(whole.hoursHigh, 48.0 * (1.0 - 1.0 / 2.2) - 1e-6);
    EXPECT_LT(whole.hoursHigh, 48.0 * (1.0 - 1.0 / 2.2) + 0.3);
    const auto half = findings::exposure(row.row, layout, limit, row.at(11), row.at(20));
    EXPECT_NEAR(half.hours, 12.0, 1e-6);
    const findings::Limit under{u"no2"_s, 1.0, false, {}};
    EXPECT_NEAR(findings::exposure(row.row, layout, under, row.at(0), row.at(20)).hours, 24.0, 1e-6);
}

TEST(ExposureHours, GapsAreNotRead)
{
    SmallRow row;
    row.read(u"no2"_s, 10, 2.0);
    row.read(u"no2"_s, 30, 2.0);
    row.read(u"no2"_s, 31, 0.0);
    row.read(u"no2"_s, 60, 0.0);
    const findings::Limit limit{u"no2"_s, 1.0, true, {}};
    const auto exposure = findings::exposure(row.row, row.sorted(), limit, row.at(10), row.at(60));
    EXPECT_NEAR(exposure.hours, 12.0, 1e-6);
    EXPECT_NEAR(exposure.readHours, 24.0, 1e-6);
    EXPECT_NEAR(exposure.gapHours, 49.0 * 24.0, 1e-6);
    EXPECT_GT(exposure.hoursHigh, 20.0 * 24.0);        // the gap between two readings beyond it may have been beyond it
    EXPECT_LT(exposure.hoursHigh, 20.0 * 24.0 + 24.0); // the one between two readings of nothing not
}

TEST(ExposureHours, ACardErrsByHalfAStep)
{
    SmallRow row;
    record::TestKit kit;
    kit.id = record::KitId{3};
    kit.parameter = u"no2"_s;
    kit.unit = u"mg/L NO2"_s;
    kit.steps = {0, 0.25, 0.5, 1, 2};
    row.row.kits.push_back(kit);
    auto& reading = row.read(u"no2"_s, 10, 0.5 / water::kNitritePerN);
    reading.kit = kit.id;
    const auto range = findings::errorOf(row.row, reading);
    EXPECT_NEAR(range.low * water::kNitritePerN, 0.375, 1e-9);
    EXPECT_NEAR(range.high * water::kNitritePerN, 0.75, 1e-9);
}

TEST(ExposureHours, FreeAmmoniaIsReckonedFromItsReadings)
{
    SmallRow row;
    row.read(u"ph"_s, 10, 8.0);
    row.read(u"temp"_s, 10, 25.0);
    row.read(u"tan"_s, 10, 1.0); // 5.4 % free: 0.0537 mg/L N (Emerson et al. 1975)
    row.read(u"tan"_s, 11, 1.0);
    const findings::Limit limit{u"nh3"_s, 0.05, true, {}};
    const auto exposure = findings::exposure(row.row, row.sorted(), limit, row.at(10), row.at(11));
    EXPECT_NEAR(exposure.worst, 0.0537, 0.0005);
    EXPECT_NEAR(exposure.hours, 24.0, 1e-6);
    EXPECT_NEAR(exposure.hoursLow, 0.0, 1e-6);
}

TEST(ExposureHours, LimitsFollowTheAnimals)
{
    SmallRow row;
    const auto bare = findings::limitsFor(row.row, row.sorted(), row.at(30));
    row.enter(EntryKind::Addition, 20, u"tetras"_s).count = 6;
    const auto stocked = findings::limitsFor(row.row, row.sorted(), row.at(30));
    const auto has = [](const std::vector<findings::Limit>& limits, const QString& key) {
        return std::ranges::any_of(limits, [&](const findings::Limit& limit) { return limit.parameter == key; });
    };
    EXPECT_TRUE(has(bare, u"tan"_s));
    EXPECT_FALSE(has(bare, u"no2"_s));
    EXPECT_TRUE(has(stocked, u"no2"_s));
    for (const findings::Limit& limit : stocked) {
        EXPECT_FALSE(limit.source.isEmpty());
    }
}
