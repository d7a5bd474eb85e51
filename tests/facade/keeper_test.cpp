// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/keeper.h"

#include "core/facade/row_edit.h"
#include "tests/support/temp_store.h"

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

namespace {

/// Row as text, to compare what is in memory with what is on disk.
QString dump(const record::Row& row)
{
    QString text;
    for (const record::Tank& tank : row.tanks) {
        text += u"tank %1 %2 %3\n"_s.arg(tank.id.value).arg(tank.position).arg(tank.name);
    }
    for (const auto& [id, layout] : row.layouts) {
        text += u"layout %1 of %2\n"_s.arg(id.value).arg(layout.layout.tank.value);
        for (const record::Reading& r : layout.readings) {
            text += u" reading %1 %2 %3 %4\n"_s.arg(r.id.value).arg(r.parameter, r.typed, r.at.toIso());
        }
        for (const record::Entry& e : layout.entries) {
            text += u" entry %1 %2 %3 %4\n"_s.arg(e.id.value)
                        .arg(record::entryKindCode(e.kind), e.at.toIso())
                        .arg(e.planned);
        }
        for (const record::Task& t : layout.tasks) {
            text += u" task %1 %2 %3\n"_s.arg(t.id.value).arg(t.templateKey).arg(static_cast<int>(t.state));
        }
    }
    return text;
}

void expectMemoryIsDisk(TempKeeper& t)
{
    const auto fresh = t.keeper.store()->load();
    ASSERT_TRUE(fresh);
    EXPECT_EQ(dump(t.keeper.row()).toStdString(), dump(*fresh).toStdString());
}

} // namespace

TEST(Keeper, RowInMemoryFollowsEveryChange)
{
    TempKeeper t;
    int changes = 0;
    QObject::connect(&t.keeper, &facade::Keeper::changed, [&changes] { ++changes; });
    const auto a = t.addTank(u"Long Reach"_s, 5);
    const auto b = t.addTank(u"Small Reach"_s, 50);
    const auto reading = t.read(a, u"tan"_s, u"1"_s, 2.0);
    t.read(a, u"tan"_s, u"2"_s, 3.0);
    t.read(b, u"no3"_s, u"20"_s, 1.0);
    t.change(a, 0.5, 1.0);
    EXPECT_EQ(changes, 6);
    expectMemoryIsDisk(t);

    facade::Keeper::TypedReading again;
    again.replaces = reading;
    again.layout = a;
    again.parameter = u"tan"_s;
    again.typed = u"<0.25"_s;
    again.at = t.clock.now().plusDays(-4.0); // moves before the other
    ASSERT_TRUE(t.keeper.enterReading(again));
    expectMemoryIsDisk(t);
    EXPECT_EQ(t.keeper.row().layout(a)->readings.size(), 2u);
    EXPECT_EQ(t.keeper.row().layout(a)->readings.front().typed, u"<0.25"_s);

    ASSERT_TRUE(t.keeper.undo());
    expectMemoryIsDisk(t);
    EXPECT_EQ(t.keeper.row().layout(a)->readings.back().typed, u"1"_s);
    ASSERT_TRUE(t.keeper.redo());
    expectMemoryIsDisk(t);
}

TEST(Keeper, UndoSurvivesARestart)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 5);
    t.read(layout, u"no2"_s, u"0.5"_s, 0.0);
    t.keeper.close();
    ASSERT_TRUE(t.keeper.open(t.path()));
    EXPECT_TRUE(t.keeper.lastChangeText().contains(u"Nitrite"_s)) << t.keeper.lastChangeText().toStdString();
    ASSERT_TRUE(t.keeper.undo());
    EXPECT_TRUE(t.keeper.row().layout(layout)->readings.empty());
}

TEST(Keeper, UnitOfTheKitIsTakenWhenNoneIsTyped)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 5);
    record::TestKit kit;
    kit.name = u"nitrogen meter"_s;
    kit.parameter = u"no3"_s;
    kit.unit = u"mg/L N"_s;
    kit.kind = record::KitKind::Digital;
    store::Edit edit(u"kit"_s);
    edit.put(kit);
    ASSERT_TRUE(t.keeper.commit(edit));
    t.read(layout, u"no3"_s, u"2.5"_s, 0.0);
    const record::Reading& reading = t.keeper.row().layout(layout)->readings.front();
    EXPECT_EQ(reading.unit, u"mg/L N"_s);
    EXPECT_DOUBLE_EQ(reading.value, 2.5);
    EXPECT_TRUE(reading.kit);
}

TEST(Keeper, AWaterChangeMarkedDoneBecomesAnEntryAndTakesOverItsPlan)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 20);
    t.change(layout, 0.3, -0.1, true); // planned for later today
    care::DueItem item;
    item.tank = t.keeper.row().layout(layout)->layout.tank;
    item.layout = layout;
    item.kind = care::WorkKind::WaterChange;
    item.fraction = 0.5;
    item.templateKey = u"water-change"_s;
    item.due = item.cadenceDue = t.clock.today();
    ASSERT_TRUE(t.keeper.markDone(item, t.clock.now()));
    const record::LayoutRecord& after = *t.keeper.row().layout(layout);
    ASSERT_EQ(after.entries.size(), 1u);
    EXPECT_FALSE(after.entries[0].planned);
    EXPECT_TRUE(after.entries[0].plannedFor.has_value());
    ASSERT_EQ(after.tasks.size(), 1u);
    EXPECT_EQ(after.tasks[0].closedBy, after.entries[0].id);
    ASSERT_TRUE(t.keeper.undo());
    EXPECT_TRUE(t.keeper.row().layout(layout)->entries[0].planned);
    EXPECT_TRUE(t.keeper.row().layout(layout)->tasks.empty());
}

TEST(Keeper, SkippingNeedsAReasonAndSnoozingALaterDay)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 20);
    care::DueItem item;
    item.tank = t.keeper.row().layout(layout)->layout.tank;
    item.layout = layout;
    item.templateKey = u"glass"_s;
    item.due = item.cadenceDue = t.clock.today();
    EXPECT_FALSE(t.keeper.skip(item, u"  "_s));
    EXPECT_FALSE(t.keeper.snooze(item, t.clock.today()));
    EXPECT_TRUE(t.keeper.row().layout(layout)->tasks.empty());
    ASSERT_TRUE(t.keeper.skip(item, u"away until Friday"_s));
    EXPECT_EQ(t.keeper.row().layout(layout)->tasks[0].reason, u"away until Friday"_s);
}

TEST(Keeper, RefusesWhatIsNotATank)
{
    TempKeeper t;
    record::Layout layout;
    layout.flooded = t.clock.now();
    const auto unnamed = t.keeper.addTank({}, layout);
    ASSERT_FALSE(unnamed);
    EXPECT_FALSE(unnamed.error().mend.empty());
    t.addTank(u"Long Reach"_s, 1);
    record::Tank twin;
    twin.name = u"long reach"_s;
    const auto second = t.keeper.addTank(twin, layout);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().fault, Fault::Conflict);
}

TEST(Keeper, AReadingThatCannotBeIsRefusedWithItsUnit)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Long Reach"_s, 5);
    facade::Keeper::TypedReading reading;
    reading.layout = layout;
    reading.parameter = u"ph"_s;
    reading.typed = u"72"_s;
    reading.at = t.clock.now();
    const auto refused = t.keeper.enterReading(reading);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().fault, Fault::BadInput);
    EXPECT_FALSE(refused.error().mend.empty());
}
