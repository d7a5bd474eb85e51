// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

TEST_F(Ctl, dueSaysWhatAndWhy)
{
    const QString store = storeWithTank();
    const QDate today(2026, 11, 25);
    const QJsonObject json = QJsonDocument::fromJson(expect(0, {u"due"_s, store, u"--json"_s})).object();
    EXPECT_EQ(json.value(u"on"_s).toString(), u"2026-11-25"_s);
    const QJsonArray work = json.value(u"work"_s).toArray();
    ASSERT_FALSE(work.isEmpty());
    bool change = false;
    for (const QJsonValue& value : work) {
        const QJsonObject item = value.toObject();
        const QDate due = QDate::fromString(item.value(u"due"_s).toString(), Qt::ISODate);
        const QString state = item.value(u"state"_s).toString();
        const QString tank = item.value(u"tank"_s).toString();
        EXPECT_TRUE(tank == u"Heron Reach"_s || tank.isEmpty()) << "the tank, or the whole row";
        EXPECT_FALSE(item.value(u"title"_s).toString().isEmpty());
        EXPECT_FALSE(item.value(u"why"_s).toString().isEmpty()) << item.value(u"title"_s).toString().toStdString();
        EXPECT_LE(due, today.addDays(7));
        EXPECT_EQ(state == u"coming"_s, due > today);
        EXPECT_EQ(item.value(u"days_over"_s).toInt(), std::max<qint64>(0, due.daysTo(today)));
        change = change || item.value(u"work"_s).toString().contains(u"water"_s);
    }
    // The last change was on 15 November, ten days ago, in a tank with ammonia and nitrite.
    EXPECT_TRUE(change);

    const auto rows = cells(expect(0, {u"due"_s, store, u"--csv"_s}));
    EXPECT_EQ(rows.size(), static_cast<std::size_t>(work.size()) + 1);
    EXPECT_EQ(rows[0].join(u','),
              u"tank,state,due,days_over,work,title,fraction,litres,minutes,priority,snoozed,why"_s);
    EXPECT_TRUE(expect(0, {u"due"_s, store}).startsWith("Heron Reach\n"));
}

TEST_F(Ctl, dueOnAnotherDay)
{
    const QString store = storeWithTank();
    // The day asked about stands in for the clock.
    EXPECT_EQ(run({u"due"_s, store, u"--on"_s, u"2026-12-02"_s, u"--csv"_s}).out,
              run({u"due"_s, store, u"--csv"_s}, u"2026-12-02T12:00:00Z"_s).out);
    EXPECT_NE(expect(0, {u"due"_s, store, u"--on"_s, u"2026-12-02"_s, u"--csv"_s}),
              expect(0, {u"due"_s, store, u"--csv"_s}));
    EXPECT_TRUE(expect(3, {u"due"_s, store, u"--tank"_s, u"Nowhere"_s}).contains("There is no tank \"Nowhere\"."));
}

} // namespace littoral::test
