// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/moment.h"

#include <ctime>
#include <gtest/gtest.h>

using namespace littoral::record;
using namespace Qt::StringLiterals;

namespace {

Moment iso(const char* text)
{
    return Moment::fromIso(QString::fromLatin1(text));
}

/// Central European time for as long as it lives, as a POSIX rule, so that no zone files are needed: summer time from
/// the last Sunday in March to the last Sunday in October, changes at 01:00 UTC (Directive 2000/84/EC).
class CentralEuropeanTime
{
public:
    CentralEuropeanTime()
        : m_before(qgetenv("TZ"))
    {
        set("CET-1CEST,M3.5.0,M10.5.0/3");
    }
    ~CentralEuropeanTime() { set(m_before); }
    CentralEuropeanTime(const CentralEuropeanTime&) = delete;
    CentralEuropeanTime& operator=(const CentralEuropeanTime&) = delete;

private:
    static void set(const QByteArray& zone)
    {
        qputenv("TZ", zone);
        ::tzset();
    }
    QByteArray m_before;
};

} // namespace

TEST(MomentIso, GoesThereAndBack)
{
    for (const char* text : {"2026-11-25T07:40:00+01:00", "2026-11-25T07:40:00-09:30", "2026-11-25T07:40:00Z",
                             "1969-07-20T20:17:40-05:00", "2024-02-29T23:59:59+14:00"}) {
        const Moment moment = iso(text);
        ASSERT_TRUE(moment.isValid()) << text;
        EXPECT_EQ(moment.toIso(), QString::fromLatin1(text));
    }
    // RFC 3339 section 5.8 gives this pair as one and the same instant.
    EXPECT_EQ(iso("1996-12-19T16:39:57-08:00"), iso("1996-12-20T00:39:57Z"));
    EXPECT_EQ(iso("2026-11-25T07:40:00.250+01:00").utcMs() % 1000, 250);
}

TEST(MomentIso, WhatDoesNotParseIsNotValid)
{
    for (const char* text : {"", "yesterday", "2026-13-01T00:00:00Z", "2026-02-29T00:00:00Z", "25.11.2026"}) {
        EXPECT_FALSE(iso(text).isValid()) << text;
        EXPECT_TRUE(iso(text).toIso().isEmpty());
    }
    EXPECT_FALSE(Moment::fromLocal(QDate(2026, 2, 30), QTime(8, 0)).isValid());
    EXPECT_NE(Moment(), Moment(0, 0));
}

TEST(MomentLocal, TheDayIsTheKeepersOwn)
{
    EXPECT_EQ(iso("2026-11-25T00:30:00+01:00").localDate(), QDate(2026, 11, 25)); // still the 24th in UTC
    EXPECT_EQ(iso("2026-11-25T23:30:00-05:00").localDate(), QDate(2026, 11, 25)); // already the 26th in UTC
    EXPECT_EQ(iso("2026-11-25T00:30:00+01:00"), iso("2026-11-24T23:30:00Z")) << "equality is that of the instant";
}

TEST(MomentLocal, SummerTimeEnds)
{
    const CentralEuropeanTime zone;
    const QDate day(2026, 10, 25);
    EXPECT_EQ(Moment::fromLocal(day, QTime(1, 30)).offsetSeconds(), 7200);
    EXPECT_EQ(Moment::fromLocal(day, QTime(12, 0)).offsetSeconds(), 3600);
    for (const QTime& time : {QTime(0, 0), QTime(2, 30), QTime(23, 59)}) {
        EXPECT_EQ(Moment::fromLocal(day, time).localDate(), day);
    }
    const double hours =
        24.0 * daysBetween(Moment::fromLocal(day, QTime(0, 0)), Moment::fromLocal(day.addDays(1), QTime(0, 0)));
    EXPECT_NEAR(hours, 25.0, 1e-9);
}

TEST(MomentLocal, SummerTimeBegins)
{
    const CentralEuropeanTime zone;
    const QDate day(2026, 3, 29);
    EXPECT_EQ(Moment::fromLocal(day, QTime(1, 59)).offsetSeconds(), 3600);
    EXPECT_EQ(Moment::fromLocal(day, QTime(3, 0)).offsetSeconds(), 7200);
    const double hours =
        24.0 * daysBetween(Moment::fromLocal(day, QTime(0, 0)), Moment::fromLocal(day.addDays(1), QTime(0, 0)));
    EXPECT_NEAR(hours, 23.0, 1e-9);
    // 02:30 does not exist: a clock that was not put forward shows it half an hour after the change.
    const Moment skipped = Moment::fromLocal(day, QTime(2, 30));
    EXPECT_EQ(skipped, iso("2026-03-29T01:30:00Z"));
    EXPECT_EQ(skipped.localDate(), day);
    EXPECT_EQ(iso("2026-03-29T02:30:00"), skipped);
}

TEST(MomentLocal, WithoutOffsetTheSystemsZoneIsTaken)
{
    const CentralEuropeanTime zone;
    EXPECT_EQ(iso("2026-07-01T12:00:00"), iso("2026-07-01T10:00:00Z"));
    EXPECT_EQ(iso("2026-12-01T12:00:00"), iso("2026-12-01T11:00:00Z"));
}

TEST(MomentReckoning, DaysAndClock)
{
    const Moment start = iso("2026-11-25T07:40:00+01:00");
    EXPECT_EQ(start.plusDays(1.5), iso("2026-11-26T19:40:00+01:00"));
    EXPECT_EQ(start.plusDays(1.5).offsetSeconds(), 3600);
    EXPECT_DOUBLE_EQ(daysBetween(start, start.plusDays(-2.25)), -2.25);
    FixedClock clock(start);
    EXPECT_EQ(clock.today(), QDate(2026, 11, 25));
    clock.set(iso("2026-11-26T00:10:00+01:00"));
    EXPECT_EQ(clock.today(), QDate(2026, 11, 26));
    EXPECT_GT(SystemClock().now(), iso("2020-01-01T00:00:00Z"));
}
