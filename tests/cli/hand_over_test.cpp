// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

namespace {

QJsonObject object(const QByteArray& json)
{
    return QJsonDocument::fromJson(json).object();
}

} // namespace

TEST_F(Ctl, handOverSplitsTheWorkOfAJourney)
{
    const QString store = storeWithTank();
    const QStringList line{u"hand-over"_s, store, u"--from"_s, u"2026-11-28"_s, u"--to"_s, u"2026-12-08"_s};
    const QJsonObject json = object(expect(0, line + QStringList{u"--helper"_s, u"Ida"_s, u"--json"_s}));
    EXPECT_EQ(json.value(u"leaves"_s).toString(), u"2026-11-28"_s);
    EXPECT_EQ(json.value(u"helper"_s).toString(), u"Ida"_s);
    const QJsonArray sheets = json.value(u"sheets"_s).toArray();
    ASSERT_EQ(sheets.size(), 1);
    const QJsonObject sheet = sheets[0].toObject();
    EXPECT_EQ(sheet.value(u"tank"_s).toString(), u"Heron Reach"_s);
    EXPECT_TRUE(sheet.value(u"young"_s).toBool()) << "nineteen days old on the day of leaving";
    EXPECT_FALSE(sheet.value(u"do_not"_s).toArray().isEmpty());
    EXPECT_FALSE(sheet.value(u"call_when"_s).toArray().isEmpty());
    EXPECT_FALSE(sheet.value(u"tasks"_s).toArray().isEmpty());
    for (const QJsonValue& value : sheet.value(u"tasks"_s).toArray()) {
        const QDate day = QDate::fromString(value.toObject().value(u"day"_s).toString(), Qt::ISODate);
        EXPECT_GT(day, QDate(2026, 11, 28));
        EXPECT_LT(day, QDate(2026, 12, 8));
        EXPECT_FALSE(value.toObject().value(u"how"_s).toString().isEmpty());
        EXPECT_FALSE(value.toObject().value(u"why"_s).toString().isEmpty());
    }
    EXPECT_EQ(json.value(u"days"_s).toArray().size(), 9);
    const QByteArray text = expect(0, line);
    for (const char* head : {"To prepare", "Before leaving", "Waits until the return", "Helper's sheet: Heron Reach",
                             "Do not", "Call when", "C-ELEC"}) {
        EXPECT_TRUE(text.contains(head)) << head;
    }
    // The cautions stand before the work.
    EXPECT_LT(text.indexOf("C-ELEC"), text.indexOf("On its day"));
}

TEST_F(Ctl, handOverKeepsTheJourneyAndTakesItFromTheStore)
{
    const QString store = storeWithTank();
    expect(2, {u"hand-over"_s, store});
    expect(2, {u"hand-over"_s, store, u"--from"_s, u"2026-11-28"_s});
    expect(3, {u"hand-over"_s, store, u"--from"_s, u"2026-12-08"_s, u"--to"_s, u"2026-11-28"_s});
    const QStringList days{u"--from"_s, u"2026-12-20"_s, u"--to"_s, u"2027-01-02"_s};
    const QByteArray given = expect(0, QStringList{u"hand-over"_s, store, u"--helper"_s, u"Ida"_s, u"--phone"_s,
                                                   u"+00 12"_s, u"--keep"_s, u"--json"_s} +
                                           days);
    EXPECT_EQ(expect(0, {u"hand-over"_s, store, u"--json"_s}), given);
    expect(0, {u"export"_s, store, path(u"out"_s)});
    EXPECT_TRUE(read(u"out/journeys.csv"_s).contains("2026-12-20,2027-01-02,Ida,+00 12"));
    const QString other = path(u"other.littoral"_s);
    expect(0, {u"init"_s, other});
    const QJsonObject brought = object(expect(0, {u"import"_s, other, path(u"out/journeys.csv"_s), u"--json"_s}));
    EXPECT_EQ(brought.value(u"journeys"_s).toInt(), 1);
    EXPECT_EQ(
        object(expect(0, {u"import"_s, other, path(u"out/journeys.csv"_s), u"--json"_s})).value(u"skipped"_s).toInt(),
        1);
    // Near a journey the work for the whole row says so.
    const QByteArray due = expect(0, {u"due"_s, store, u"--on"_s, u"2026-12-15"_s});
    EXPECT_TRUE(due.contains("The whole row"));
    EXPECT_TRUE(due.contains("A journey begins on 20 Dec"));
}

TEST_F(Ctl, gatesPrintEveryConditionWithOddsAndSource)
{
    const QString store = storeWithTank();
    const QStringList line{u"gates"_s, store, u"--tank"_s, u"Heron Reach"_s};
    const QJsonObject json = object(expect(0, line + QStringList{u"--json"_s}));
    const QJsonArray gates = json.value(u"gates"_s).toArray();
    ASSERT_EQ(gates.size(), 4);
    for (const QJsonValue& value : gates) {
        const QJsonObject gate = value.toObject();
        const QJsonArray conditions = gate.value(u"conditions"_s).toArray();
        EXPECT_GE(conditions.size(), 8) << gate.value(u"key"_s).toString().toStdString();
        bool unmet = false;
        for (const QJsonValue& one : conditions) {
            EXPECT_FALSE(one.toObject().value(u"text"_s).toString().isEmpty());
            unmet = unmet || one.toObject().value(u"state"_s).toString() == u"unmet"_s;
        }
        EXPECT_EQ(gate.value(u"state"_s).toString() == u"shut"_s, unmet);
        EXPECT_FALSE(gate.value(u"source"_s).toString().isEmpty());
        const QJsonArray odds = gate.value(u"odds"_s).toArray();
        ASSERT_EQ(odds.size(), 5);
        double last = 0.0;
        for (const QJsonValue& one : odds) {
            const double now = one.toObject().value(u"probability"_s).toDouble();
            EXPECT_GE(now, last - 1e-9) << "odds of having opened do not fall";
            last = now;
        }
    }
    const QByteArray text = expect(0, line);
    EXPECT_TRUE(text.contains("G1 First grazers"));
    EXPECT_TRUE(text.contains("Rule: "));
    expect(2, {u"gates"_s, store});
    expect(3, {u"gates"_s, store, u"--tank"_s, u"Nowhere"_s});
}

TEST_F(Ctl, gatesShowWhatWasNotWaitedFor)
{
    const QString store = storeWithTank();
    const QString csv =
        write(u"note.csv"_s, "tank,at,kind,subject,where,note\n"
                             "Heron Reach,2026-11-24 18:00,note,gate-overridden,ember tetra,a rescue\n");
    expect(0, {u"import"_s, store, csv});
    const QJsonObject json = object(expect(0, {u"gates"_s, store, u"--tank"_s, u"Heron Reach"_s, u"--json"_s}));
    const QJsonArray overridden = json.value(u"overridden"_s).toArray();
    ASSERT_EQ(overridden.size(), 1);
    EXPECT_EQ(overridden[0].toObject().value(u"reason"_s).toString(), u"a rescue"_s);
    EXPECT_TRUE(expect(0, {u"gates"_s, store, u"--tank"_s, u"Heron Reach"_s}).contains("a rescue"));
}

TEST_F(Ctl, dueShowsTheLoadOfEachDayAndWritesACalendar)
{
    const QString store = storeWithTank();
    const QJsonObject json = object(expect(0, {u"due"_s, store, u"--days"_s, u"14"_s, u"--json"_s}));
    const QJsonArray days = json.value(u"days"_s).toArray();
    ASSERT_EQ(days.size(), 14);
    EXPECT_EQ(days[0].toObject().value(u"day"_s).toString(), u"2026-11-25"_s);
    EXPECT_GT(days[0].toObject().value(u"minutes"_s).toInt(), 0);
    EXPECT_TRUE(expect(0, {u"due"_s, store, u"--days"_s, u"14"_s}).contains("Day by day, all tanks"));
    const QByteArray calendar = expect(0, {u"due"_s, store, u"--days"_s, u"14"_s, u"--ics"_s, u"-"_s});
    EXPECT_TRUE(calendar.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_TRUE(calendar.contains("Heron Reach"));
    expect(0, {u"due"_s, store, u"--days"_s, u"14"_s, u"--ics"_s, path(u"due.ics"_s)});
    EXPECT_EQ(read(u"due.ics"_s), calendar);
    expect(2, {u"due"_s, store, u"--ics"_s, u"-"_s, u"--json"_s});
    expect(2, {u"due"_s, store, u"--days"_s, u"0"_s});
}

} // namespace littoral::test
