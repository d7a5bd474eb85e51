// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/bulk_edit.h"

#include "tests/support/temp_store.h"

using namespace littoral;
using namespace Qt::StringLiterals;
using facade::BulkChange;
using facade::DatedRef;
using test::TempKeeper;

namespace {

constexpr qint64 kHourMs = 3'600'000;

std::vector<DatedRef> readingsOf(const TempKeeper& t, record::LayoutId layout)
{
    std::vector<DatedRef> all;
    for (const record::Reading& reading : t.keeper.row().layout(layout)->readings) {
        all.emplace_back(reading.id);
    }
    return all;
}

} // namespace

TEST(BulkEdit, SeveralMoveInTimeAsOneChangeThatOutlivesARestart)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 20);
    t.read(layout, u"tan"_s, u"1"_s, 3.0);
    t.read(layout, u"no2"_s, u"0.5"_s, 3.0);
    std::vector<DatedRef> records = readingsOf(t, layout);
    records.emplace_back(t.change(layout, 0.5, 2.0));
    const record::Moment before = t.keeper.row().layout(layout)->readings[0].at;
    BulkChange change;
    change.shift_ms = -2 * kHourMs;
    const auto outcome = facade::changeAll(t.keeper, records, change);
    ASSERT_TRUE(outcome);
    EXPECT_EQ(outcome->changed, 3);
    EXPECT_EQ(t.keeper.row().layout(layout)->readings[0].at.utcMs(), before.utcMs() - 2 * kHourMs);
    // Another program start: the change is still named, and one undo takes all of it back.
    const QString path = t.keeper.path();
    t.keeper.close();
    ASSERT_TRUE(t.keeper.open(path));
    const QString label = t.keeper.lastChangeText();
    EXPECT_TRUE(label.contains(u'3') && label.contains(u"earlier"_s)) << label.toStdString();
    ASSERT_TRUE(t.keeper.undo());
    EXPECT_EQ(t.keeper.row().layout(layout)->readings[0].at, before);
    EXPECT_EQ(t.keeper.row().layout(layout)->entries[0].at, t.clock.now().plusDays(-2));
}

TEST(BulkEdit, NothingDoneIsMovedPastNow)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 20);
    t.read(layout, u"tan"_s, u"1"_s, 0.5);
    t.read(layout, u"no2"_s, u"0.5"_s, 10.0);
    BulkChange change;
    change.shift_ms = 24 * kHourMs;
    const auto outcome = facade::changeAll(t.keeper, readingsOf(t, layout), change);
    ASSERT_FALSE(outcome);
    EXPECT_EQ(outcome.error().fault, Fault::BadInput);
    EXPECT_EQ(t.keeper.row().layout(layout)->readings[0].at, t.clock.now().plusDays(-10)) << "all or none";
    // What is planned may lie ahead.
    const auto planned = t.change(layout, 0.3, -2.0, true);
    ASSERT_TRUE(facade::changeAll(t.keeper, {planned}, change));
}

TEST(BulkEdit, AnotherTankTakesTheLayoutOfThatTimeAndReopensTheWork)
{
    TempKeeper t;
    const auto a = t.addTank(u"Long Reach"_s, 20);
    const auto b = t.addTank(u"Small Reach"_s, 30);
    care::DueItem item;
    item.tank = t.keeper.row().layout(a)->layout.tank;
    item.layout = a;
    item.templateKey = u"water-change"_s;
    item.kind = care::WorkKind::WaterChange;
    item.fraction = 0.4;
    item.due = item.cadenceDue = t.clock.today();
    ASSERT_TRUE(t.keeper.markDone(item, t.clock.now().plusDays(-0.1)));
    const QString done = t.keeper.lastChangeText();
    EXPECT_TRUE(done.contains(u"Water change 40 %"_s) && done.contains(u"Long Reach"_s)) << done.toStdString();
    const record::EntryId entry = t.keeper.row().layout(a)->entries.front().id;
    BulkChange change;
    change.tank = t.keeper.row().layout(b)->layout.tank;
    ASSERT_TRUE(facade::changeAll(t.keeper, {entry}, change));
    EXPECT_TRUE(t.keeper.row().layout(a)->entries.empty());
    ASSERT_EQ(t.keeper.row().layout(b)->entries.size(), 1U);
    EXPECT_EQ(t.keeper.row().layout(b)->entries[0].layout, b);
    EXPECT_EQ(t.keeper.row().layout(a)->tasks[0].state, record::TaskState::Open) << "it was not done here";
    ASSERT_TRUE(t.keeper.undo());
    EXPECT_EQ(t.keeper.row().layout(a)->tasks[0].state, record::TaskState::Done);
    EXPECT_EQ(t.keeper.row().layout(a)->tasks[0].closedBy, entry);
}

TEST(BulkEdit, KitsOfTheirParameterOnlyAndSubjectsOfEntriesOnly)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 20);
    store::Edit kits(u"kit"_s);
    record::TestKit kit;
    kit.name = u"Drops B"_s;
    kit.parameter = u"no2"_s;
    kit.unit = u"mg/L NO2"_s;
    kit.id = kits.put(kit);
    ASSERT_TRUE(t.keeper.commit(kits));
    t.read(layout, u"tan"_s, u"1"_s, 3.0);
    t.read(layout, u"no2"_s, u"0.5"_s, 3.0);
    store::Edit off(u"no kit"_s);
    record::Reading bare = t.keeper.row().layout(layout)->readings[1];
    bare.kit = {};
    off.put(bare);
    ASSERT_TRUE(t.keeper.commit(off));
    BulkChange change;
    change.kit = kit.id;
    const auto outcome = facade::changeAll(t.keeper, readingsOf(t, layout), change);
    ASSERT_TRUE(outcome);
    EXPECT_EQ(outcome->changed, 1);
    EXPECT_EQ(outcome->left, 1);
    EXPECT_EQ(t.keeper.row().layout(layout)->readings[1].typed, u"0.5"_s) << "what was typed stays";

    record::Entry look;
    look.layout = layout;
    look.kind = record::EntryKind::Observation;
    look.subject = u"green stuff"_s;
    look.at = t.clock.now();
    const auto id = t.keeper.enter(look);
    ASSERT_TRUE(id);
    BulkChange rename;
    rename.subject = u"alg_dust"_s;
    const auto renamed = facade::changeAll(t.keeper, {*id, t.change(layout, 0.5, 1.0)}, rename);
    ASSERT_TRUE(renamed);
    EXPECT_EQ(renamed->changed, 1) << "a water change has no subject of this kind";
    EXPECT_TRUE(t.keeper.lastChangeText().contains(u"green dust"_s));
}

TEST(BulkEdit, RemovingManyIsOneChange)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 20);
    for (int i = 0; i < 300; ++i) {
        t.read(layout, u"tan"_s, u"1"_s, 1.0 + i * 0.01);
    }
    BulkChange change;
    change.remove = true;
    ASSERT_TRUE(facade::changeAll(t.keeper, readingsOf(t, layout), change));
    EXPECT_TRUE(t.keeper.row().layout(layout)->readings.empty());
    const auto undone = t.keeper.undo();
    ASSERT_TRUE(undone);
    EXPECT_TRUE(undone->contains(u"300"_s)) << undone->toStdString();
    EXPECT_EQ(t.keeper.row().layout(layout)->readings.size(), 300U);
}
