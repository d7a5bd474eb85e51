// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/supply_work.h"

#include "core/wording/sentences.h"
#include "tests/support/temp_store.h"

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

namespace {

/// 100 mL opened 29 days ago, 3 mL a day: 13 mL left, good for four days.
record::SupplyId shelve(TempKeeper& t, record::LayoutId layout)
{
    store::Edit edit(u"shelf"_s);
    record::Supply supply;
    supply.name = u"Green drops"_s;
    supply.kind = u"fertiliser"_s;
    supply.amount = 100.0;
    supply.unit = u"mL"_s;
    supply.opened = t.clock.today().addDays(-29);
    supply.expires = t.clock.today().addDays(400);
    const record::SupplyId id = edit.put(supply);
    for (int day = 0; day < 29; ++day) {
        record::Entry entry;
        entry.tank = t.keeper.row().layout(layout)->layout.tank;
        entry.layout = layout;
        entry.kind = record::EntryKind::Dose;
        entry.subject = u"green drops"_s;
        entry.amount = 3.0;
        entry.unit = u"mL"_s;
        entry.at = entry.enteredAt = t.clock.now().plusDays(-day);
        edit.put(entry);
    }
    record::TestKit kit;
    kit.name = u"Drops B"_s;
    kit.parameter = u"no2"_s;
    kit.unit = u"mg/L NO2"_s;
    kit.expires = t.clock.today().addDays(-10);
    edit.put(kit);
    EXPECT_TRUE(t.keeper.commit(edit));
    return id;
}

std::vector<facade::SupplyTask> due(const TempKeeper& t, int ahead = 0)
{
    const record::Moment now = t.clock.now().plusDays(ahead);
    return facade::supplyWork(t.keeper.row(), now, now.localDate());
}

} // namespace

TEST(SupplyWork, WhatRunsOutOrIsPastItsDateIsAskedForWithItsReason)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 60);
    const record::SupplyId id = shelve(t, layout);
    const auto tasks = due(t);
    ASSERT_EQ(tasks.size(), 2U);
    EXPECT_TRUE(wording::dueTitle(tasks[0].item).contains(u"Drops B"_s)) << "past its date, first";
    EXPECT_TRUE(tasks[0].item.overdue);
    EXPECT_EQ(tasks[1].standing.supply, id);
    EXPECT_EQ(tasks[1].item.due, t.clock.today().addDays(4 - 7)) << "four days left, wanted a week ahead";
    EXPECT_FALSE(tasks[1].item.overdue) << "until it has run out";
    const QString why = tasks[1].why.join(u' ');
    EXPECT_TRUE(why.contains(u"About 13 mL left"_s) && why.contains(u"about 4 day"_s)) << why.toStdString();
}

TEST(SupplyWork, TickedIsQuietForTwoWeeksAndUndoBringsItBack)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 60);
    const record::SupplyId id = shelve(t, layout);
    ASSERT_TRUE(t.keeper.markDone(due(t)[1].item, t.clock.now()));
    EXPECT_TRUE(t.keeper.lastChangeText().contains(u"Green drops"_s)) << t.keeper.lastChangeText().toStdString();
    EXPECT_EQ(due(t).size(), 1U);
    ASSERT_TRUE(t.keeper.markDone(due(t)[0].item, t.clock.now()));
    EXPECT_EQ(due(t).size(), 0U);
    EXPECT_EQ(due(t, 13).size(), 0U);
    ASSERT_EQ(due(t, 14).size(), 1U) << "the kit is still past its date, so it is asked for again";
    EXPECT_TRUE(due(t, 14)[0].standing.kit);
    ASSERT_TRUE(t.keeper.undo());
    ASSERT_TRUE(t.keeper.undo());
    ASSERT_EQ(due(t).size(), 2U);
    EXPECT_EQ(due(t)[1].standing.supply, id);
}

TEST(SupplyWork, ANewBottleIsNotAskedFor)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 60);
    shelve(t, layout);
    record::Supply fresh = t.keeper.row().supplies[0];
    fresh.opened = t.clock.today();
    fresh.amount = 500.0;
    store::Edit edit(u"a new bottle"_s);
    edit.put(fresh);
    ASSERT_TRUE(t.keeper.commit(edit));
    ASSERT_EQ(due(t).size(), 1U);
    EXPECT_TRUE(due(t)[0].standing.kit);
}

TEST(SupplyWork, PutOffComesBackOnItsNewDay)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 60);
    shelve(t, layout);
    ASSERT_TRUE(t.keeper.snooze(due(t)[1].item, t.clock.today().addDays(3)));
    EXPECT_EQ(due(t).size(), 1U);
    EXPECT_EQ(due(t, 2).size(), 1U);
    EXPECT_EQ(due(t, 3).size(), 2U);
    ASSERT_TRUE(t.keeper.skip(due(t)[0].item, u"the old one will do"_s));
    EXPECT_EQ(due(t).size(), 0U);
}
