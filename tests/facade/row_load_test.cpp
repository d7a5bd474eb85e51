// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/row_load.h"

#include "core/facade/due_calendar.h"
#include "tests/support/temp_store.h"

#include <QRegularExpression>
#include <set>

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

namespace {

QStringList uidsOf(const QByteArray& calendar)
{
    QStringList uids;
    static const QRegularExpression kUid(u"^UID:(.*)\\r$"_s, QRegularExpression::MultilineOption);
    auto found = kUid.globalMatch(QString::fromUtf8(calendar));
    while (found.hasNext()) {
        uids << found.next().captured(1);
    }
    return uids;
}

} // namespace

TEST(RowLoad, SumsMinutesAndLitresByDayAndNamesTheCollision)
{
    TempKeeper t;
    const auto slate = t.addTank(u"Slate Ford"_s, 200);
    const auto mill = t.addTank(u"Mill Race"_s, 200);
    t.change(slate, 0.4, 4.0);
    t.change(mill, 0.4, 4.0);
    const facade::RowLoad load = facade::rowLoad(t.keeper.row(), t.clock.now(), 14);
    ASSERT_EQ(load.days.size(), 14U);
    EXPECT_EQ(load.days.front().day, t.clock.today());
    const facade::LoadDay* meeting = load.firstCollision();
    ASSERT_NE(meeting, nullptr) << "both weekly, both changed on the same day";
    EXPECT_EQ(meeting->day, t.clock.today().addDays(3));
    EXPECT_EQ(meeting->large, (QStringList{u"Slate Ford"_s, u"Mill Race"_s}));
    EXPECT_TRUE(meeting->freerDay);
    EXPECT_GE(meeting->minutes, 60) << "two changes of half an hour";
    EXPECT_GT(meeting->litres, 30.0);
    int minutes = 0;
    double litres = 0.0;
    for (const facade::LoadDay& day : load.days) {
        minutes += day.minutes;
        litres += day.litres;
    }
    EXPECT_EQ(load.minutes(14), minutes);
    EXPECT_DOUBLE_EQ(load.litres(14), litres);
    EXPECT_EQ(load.minutes(1), load.days.front().minutes);
}

TEST(RowLoad, AnEmptyRowAsksNothing)
{
    TempKeeper t;
    const facade::RowLoad load = facade::rowLoad(t.keeper.row(), t.clock.now(), 7);
    EXPECT_EQ(load.days.size(), 7U);
    EXPECT_EQ(load.minutes(7), 0);
    EXPECT_EQ(load.firstCollision(), nullptr);
}

TEST(DueCalendar, SaysWhatAndWhyAndKeepsItsUids)
{
    TempKeeper t;
    const auto slate = t.addTank(u"Slate Ford"_s, 200);
    t.addTank(u"Mill; Race"_s, 20);
    t.change(slate, 0.4, 4.0);
    const QDate until = t.clock.today().addDays(14);
    const QByteArray once = facade::dueCalendar(t.keeper.row(), t.clock.now(), until);
    const QStringList uids = uidsOf(once);
    EXPECT_GT(uids.size(), 20);
    EXPECT_EQ(std::set<QString>(uids.begin(), uids.end()).size(), static_cast<std::size_t>(uids.size()))
        << "one event each";
    QByteArray plain = once;
    plain.replace("\r\n ", "");
    EXPECT_TRUE(plain.contains("SUMMARY:Slate Ford: Water change 40"));
    EXPECT_TRUE(plain.contains("SUMMARY:Mill\\; Race: "));
    EXPECT_TRUE(plain.contains("Rule: Common practice.") || plain.contains("Rule: common practice."));
    EXPECT_TRUE(plain.contains("CATEGORIES:Water change,Slate Ford"));
    EXPECT_FALSE(plain.contains("VALARM"));
    EXPECT_EQ(facade::dueCalendar(t.keeper.row(), t.clock.now(), until), once);
    // A change done: its round goes, the others keep theirs.
    const QStringList before = uidsOf(facade::dueCalendar(t.keeper.row(), t.clock.now(), until));
    t.change(slate, 0.4, 0.0);
    const QStringList after = uidsOf(facade::dueCalendar(t.keeper.row(), t.clock.now(), until));
    int kept = 0;
    for (const QString& uid : after) {
        kept += before.contains(uid) ? 1 : 0;
    }
    EXPECT_GT(kept, before.size() / 2);
    const record::TankId only = t.keeper.row().tankNamed(u"Slate Ford"_s)->id;
    EXPECT_LT(uidsOf(facade::dueCalendar(t.keeper.row(), t.clock.now(), until, only)).size(), after.size());
}
