// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <map>

namespace littoral::test {

using namespace Qt::StringLiterals;

namespace {

constexpr int kFirstQuantile = 6, kOdds = 13;

QStringList question(const QString& store, const QStringList& more)
{
    return QStringList{u"forecast"_s, store, u"--tank"_s, u"Heron Reach"_s} + more;
}

} // namespace

TEST_F(Ctl, forecastPrintsQuantilesAndOdds)
{
    const QString store = storeWithTank();
    const auto rows = cells(expect(0, question(store, {u"--csv"_s, u"--days"_s, u"10"_s, u"--at"_s, u"18.25"_s})));
    ASSERT_FALSE(rows.empty());
    EXPECT_EQ(rows[0].join(u','),
              u"tank,parameter,scale,unit,day,date,q0.025,q0.1,q0.25,q0.5,q0.75,q0.9,q0.975,odds"_s);
    std::map<QString, int> counts;
    bool extra = false;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        const QStringList& row = rows[i];
        ASSERT_EQ(row.size(), 14) << row.join(u',').toStdString();
        EXPECT_EQ(row[0], u"Heron Reach"_s);
        ++counts[row[1] + u' ' + row[2]];
        extra = extra || (row[1] == u"no2"_s && row[2] == u"kit"_s && row[4] == u"18.25"_s &&
                          row[5] == u"2026-11-27T16:00:00Z"_s);
        if (row[2] == u"water"_s || row[2] == u"kit"_s) {
            double last = 0.0;
            for (int q = kFirstQuantile; q < kOdds; ++q) {
                EXPECT_GE(row[q].toDouble(), last);
                last = row[q].toDouble();
            }
        }
        if (row[2] == u"odds"_s) {
            EXPECT_GE(row[kOdds].toDouble(), 0.0);
            EXPECT_LE(row[kOdds].toDouble(), 1.0);
        }
    }
    EXPECT_TRUE(extra);
    for (const QString& series :
         {u"tan water"_s, u"tan kit"_s, u"no2 water"_s, u"no2 kit"_s, u"no3 water"_s, u"no3 kit"_s}) {
        EXPECT_EQ(counts[series], 12) << series.toStdString(); // day 0 to 10 ahead, and one more
    }
    EXPECT_EQ(counts[u"cycle-complete day"_s], 1);
    EXPECT_EQ(counts[u"cycle-complete calendar"_s], 1);
    EXPECT_EQ(counts[u"cycle-not-complete-by-horizon odds"_s], 1);
    const auto unit =
        std::ranges::find_if(rows, [](const QStringList& r) { return r[1] == u"tan"_s && r[2] == u"kit"_s; });
    ASSERT_NE(unit, rows.end());
    EXPECT_EQ((*unit)[3], u"mg/L NH4"_s);
}

TEST_F(Ctl, forecastInJsonAndInWords)
{
    const QString store = storeWithTank();
    const QJsonObject json = QJsonDocument::fromJson(expect(0, question(store, {u"--json"_s}))).object();
    ASSERT_EQ(json.value(u"tanks"_s).toArray().size(), 1);
    const QJsonObject tank = json.value(u"tanks"_s).toArray()[0].toObject();
    EXPECT_EQ(tank.value(u"plan"_s).toString(), u"recorded"_s);
    EXPECT_EQ(tank.value(u"planned_changes"_s).toInt(), 1);
    EXPECT_EQ(tank.value(u"parameters"_s).toArray().size(), 4);
    const QJsonObject complete = tank.value(u"cycle_complete"_s).toObject();
    EXPECT_EQ(complete.value(u"days"_s).toArray().size(), 7);
    // Asked on day 15.9 without --days: to tank day 60.
    EXPECT_NEAR(complete.value(u"horizon_day"_s).toDouble(), 60.0, 1e-3);

    const QByteArray text = expect(0, question(store, {}));
    EXPECT_TRUE(text.startsWith("Heron Reach, layout 1, day 15 (2026-11-25 08:00)\nCycle complete"))
        << text.toStdString();
    EXPECT_TRUE(text.contains("Nitrite, mg/L NO2 as the kit would show"));
    EXPECT_TRUE(text.contains("Plan followed: what the record plans (water changes: 1)."));
}

TEST_F(Ctl, asOfLooksAtNothingLater)
{
    const QString store = storeWithTank();
    const QStringList asked =
        question(store, {u"--csv"_s, u"--as-of"_s, u"2026-11-17T10:00:00Z"_s, u"--days"_s, u"7"_s});
    const QByteArray before = expect(0, asked);
    // Readings, observations, losses and notes of later days, whenever they were entered.
    expect(0, {u"import"_s, store,
               write(u"later.csv"_s, "tank,at,kind,parameter,value,unit,subject,severity,count,note,kit\n"
                                     "Heron Reach,2026-11-18T10:00:00Z,,tan,8,mg/L NH4,,,,,card\n"
                                     "Heron Reach,2026-11-18T10:00:00Z,,no2,5,mg/L NO2,,,,,card\n"
                                     "Heron Reach,2026-11-18T10:00:00Z,,no3,40,mg/L NO3,,,,,\n"
                                     "Heron Reach,2026-11-18T10:00:00Z,,temp,29,C,,,,,\n"
                                     "Heron Reach,2026-11-18T10:00:00Z,,kh,9,dKH,,,,,\n"
                                     "Heron Reach,2026-11-18T11:00:00Z,observation,,,,melt,3,,,\n"
                                     "Heron Reach,2026-11-19T11:00:00Z,loss,,,,snail,,2,,\n"
                                     "Heron Reach,2026-11-19T11:00:00Z,note,,,,,,,smells,\n"
                                     "Heron Reach,2026-11-19T11:00:00Z,upkeep,,,,filter-service,,,,\n")});
    EXPECT_EQ(expect(0, asked), before);
    // A change planned for later is part of the plan.
    expect(0, {u"import"_s, store,
               write(u"plan.csv"_s,
                     "tank,at,kind,planned,fraction\nHeron Reach,2026-11-19T10:00:00Z,water-change,yes,0.8\n")});
    EXPECT_NE(expect(0, asked), before);
}

TEST_F(Ctl, anyNumberOfThreadsGivesTheSame)
{
    const QString store = storeWithTank();
    expect(0, {u"import"_s, store, write(u"a.json"_s, tankFile(u"Sill"_s)), write(u"b.json"_s, tankFile(u"Weir"_s))});
    const auto all = [&](const QString& threads) {
        return expect(0, {u"forecast"_s, store, u"--all"_s, u"--days"_s, u"7"_s, u"--csv"_s, u"--threads"_s, threads});
    };
    const QByteArray one = all(u"1"_s);
    EXPECT_EQ(all(u"2"_s), one);
    EXPECT_LT(one.indexOf("Heron Reach,"), one.indexOf("Sill,"));
    EXPECT_LT(one.indexOf("Sill,"), one.indexOf("Weir,"));
    // One tank asked alone is one tank asked among others.
    const QByteArray alone = expect(0, {u"forecast"_s, store, u"--tank"_s, u"sill"_s, u"--days"_s, u"7"_s, u"--csv"_s});
    EXPECT_TRUE(one.contains(alone.mid(alone.indexOf("\r\n") + 2)));
}

TEST_F(Ctl, forecastRefusesWhatItCannotAnswer)
{
    const QString store = storeWithTank();
    EXPECT_EQ(run({u"forecast"_s, store, u"--tank"_s, u"Nowhere"_s}).code, 3);
    const Outcome early = run(question(store, {u"--as-of"_s, u"2026-11-01"_s}));
    EXPECT_EQ(early.code, 3);
    EXPECT_TRUE(early.err.contains("not flooded until 2026-11-09"));
    EXPECT_TRUE(early.out.isEmpty());
    // Among others it is said and passed over.
    const Outcome all = run({u"forecast"_s, store, u"--all"_s, u"--as-of"_s, u"2026-11-01"_s, u"--json"_s});
    EXPECT_EQ(all.code, 0);
    EXPECT_TRUE(
        QJsonDocument::fromJson(all.out).object().value(u"tanks"_s).toArray()[0].toObject().contains(u"error"_s));
}

} // namespace littoral::test
