// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/forecast_case.h"

#include "core/facade/evidence.h"
#include "tests/support/temp_store.h"

#include <algorithm>

using namespace littoral;
using namespace Qt::StringLiterals;
using forecast::EventKind;
using test::TempKeeper;

namespace {

std::vector<forecast::Event> eventsOf(const facade::ForecastCase& made, EventKind kind)
{
    std::vector<forecast::Event> found;
    std::ranges::copy_if(made.request.tank.events, std::back_inserter(found),
                         [&](const auto& e) { return e.kind == kind; });
    return found;
}

facade::ForecastCase caseOf(TempKeeper& t, record::LayoutId layout, double asOfDaysAgo)
{
    auto made = facade::forecastCase(t.keeper.row(), layout, t.clock.now().plusDays(-asOfDaysAgo));
    EXPECT_TRUE(made) << (made ? "" : made.error().sentence());
    return made ? std::move(made).value() : facade::ForecastCase{};
}

} // namespace

TEST(ForecastCase, LooksAtNoReadingOfLater)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 20);
    t.read(layout, u"tan"_s, u"1"_s, 10.0);
    t.change(layout, 0.5, 9.0);
    const auto before = caseOf(t, layout, 8.0);
    t.read(layout, u"tan"_s, u"8"_s, 7.0);
    t.read(layout, u"no2"_s, u"5"_s, 1.0);
    t.read(layout, u"temp"_s, u"31"_s, 1.0);
    const auto after = caseOf(t, layout, 8.0);
    EXPECT_EQ(before.fingerprint, after.fingerprint);
    EXPECT_EQ(before.request.seed, after.request.seed);
    EXPECT_EQ(after.request.tank.readings.size(), 1u);
    EXPECT_DOUBLE_EQ(after.request.tank.setup.temperature_C, before.request.tank.setup.temperature_C);
}

TEST(ForecastCase, WhatWasPlannedForLaterIsThePlan)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 10);
    t.change(layout, 0.5, 2.0);
    t.change(layout, 0.3, -3.0, true);
    const auto made = caseOf(t, layout, 0.0);
    EXPECT_EQ(made.plan, facade::PlanFollowed::Recorded);
    const auto changes = eventsOf(made, EventKind::WaterChange);
    ASSERT_EQ(changes.size(), 2u);
    EXPECT_NEAR(changes[1].day, 13.0, 1e-6);
    EXPECT_DOUBLE_EQ(changes[1].amount, 0.3);
}

TEST(ForecastCase, APlanThatWasDoneSinceCountsAsItWasPlanned)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 10);
    record::Entry entry;
    entry.layout = layout;
    entry.kind = record::EntryKind::WaterChange;
    entry.at = t.clock.now().plusDays(-1.0);
    entry.plannedFor = t.clock.now().plusDays(-2.0);
    entry.fraction = 0.7;        // what was done
    entry.plannedFraction = 0.4; // what was planned
    ASSERT_TRUE(t.keeper.enter(entry));
    const auto earlier = eventsOf(caseOf(t, layout, 4.0), EventKind::WaterChange);
    ASSERT_EQ(earlier.size(), 1u);
    EXPECT_NEAR(earlier[0].day, 8.0, 1e-6);
    EXPECT_DOUBLE_EQ(earlier[0].amount, 0.4);
    const auto later = eventsOf(caseOf(t, layout, 0.5), EventKind::WaterChange);
    ASSERT_GE(later.size(), 1u);
    EXPECT_NEAR(later[0].day, 9.0, 1e-6);
    EXPECT_DOUBLE_EQ(later[0].amount, 0.7);
}

TEST(ForecastCase, WithoutAPlanTheCadenceIsFollowed)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 10);
    t.change(layout, 0.5, 1.0);
    const auto made = caseOf(t, layout, 0.0);
    EXPECT_EQ(made.plan, facade::PlanFollowed::Cadence);
    EXPECT_GT(made.plannedChanges, 5);

    record::Layout free = t.keeper.row().layout(layout)->layout;
    free.followsCadence = false;
    store::Edit edit(u"layout"_s);
    edit.put(free);
    ASSERT_TRUE(t.keeper.commit(edit));
    const auto none = caseOf(t, layout, 0.0);
    EXPECT_EQ(none.plan, facade::PlanFollowed::None);
    EXPECT_EQ(eventsOf(none, EventKind::WaterChange).size(), 1u);
}

TEST(ForecastCase, FeedInGramsBecomesNitrogenPerLitre)
{
    // 1 g of 45 % protein feed is 41.4 mg of ammonia nitrogen: 0.45 x 0.092 (Timmons & Ebeling 2013, quoted in an
    // aquaponics manual), so 0.414 mg/L a day in 100 L.
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 10);
    record::Layout measured = t.keeper.row().layout(layout)->layout;
    measured.measuredNet_L = 100.0;
    store::Edit edit(u"litres"_s);
    edit.put(measured);
    ASSERT_TRUE(t.keeper.commit(edit));
    record::Entry feed;
    feed.layout = layout;
    feed.kind = record::EntryKind::Feeding;
    feed.at = t.clock.now().plusDays(-1.0);
    feed.amount = 1.0;
    feed.unit = u"g/d"_s;
    feed.proteinShare = 0.45;
    ASSERT_TRUE(t.keeper.enter(feed));
    const auto events = eventsOf(caseOf(t, layout, 0.0), EventKind::FeedRate);
    ASSERT_EQ(events.size(), 1u);
    EXPECT_NEAR(events[0].amount, 0.414, 1e-9);
}

TEST(ForecastCase, CensoredReadingsKeepTheirBounds)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 10);
    t.read(layout, u"no2"_s, u"<0.25"_s, 3.0, u"mg/L NO2"_s);
    t.read(layout, u"no2"_s, u">5"_s, 2.0, u"mg/L NO2"_s);
    t.read(layout, u"no2"_s, u"0.5-1"_s, 1.0, u"mg/L NO2"_s);
    const auto made = caseOf(t, layout, 0.0);
    const auto& readings = made.request.tank.readings;
    ASSERT_EQ(readings.size(), 3u);
    EXPECT_TRUE(readings[0].below);
    EXPECT_NEAR(readings[0].high, 0.25, 1e-9);
    EXPECT_TRUE(std::isinf(readings[1].high));
    EXPECT_NEAR(readings[2].low, 0.5, 1e-9);
    EXPECT_NEAR(readings[2].high, 1.0, 1e-9);
}

TEST(ForecastCase, AnEndedLayoutIsNotForecast)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 100);
    record::Layout ended = t.keeper.row().layout(layout)->layout;
    ended.ended = t.clock.now().plusDays(-2.0);
    store::Edit edit(u"ended"_s);
    edit.put(ended);
    ASSERT_TRUE(t.keeper.commit(edit));
    EXPECT_FALSE(facade::forecastCase(t.keeper.row(), layout, t.clock.now()));
    EXPECT_TRUE(facade::forecastCase(t.keeper.row(), layout, t.clock.now().plusDays(-50.0)));
}

TEST(ForecastCase, ASettledTankStartsLateWithItsFeedInForce)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 400);
    record::Entry feed;
    feed.layout = layout;
    feed.kind = record::EntryKind::Feeding;
    feed.at = t.clock.now().plusDays(-300.0);
    feed.amount = 0.3;
    feed.unit = u"mg/L/d N"_s;
    ASSERT_TRUE(t.keeper.enter(feed));
    const auto made = caseOf(t, layout, 0.0);
    EXPECT_TRUE(made.request.tank.setup.established);
    EXPECT_GT(made.request.tank.setup.startDay, 300.0);
    const auto events = eventsOf(made, EventKind::FeedRate);
    ASSERT_EQ(events.size(), 1u);
    EXPECT_DOUBLE_EQ(events[0].day, made.request.tank.setup.startDay);
}
