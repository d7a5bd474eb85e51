// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/time_axis.h"

#include <QDateTime>
#include <QSignalSpy>
#include <gtest/gtest.h>

#include <algorithm>

namespace littoral::ui {
namespace {

const QTimeZone kBerlin("Europe/Berlin");

qint64 at(const QTimeZone& zone, int year, int month, int day, int hour = 0)
{
    return QDateTime(QDate(year, month, day), QTime(hour, 0), zone).toMSecsSinceEpoch();
}

QStringList words(std::initializer_list<const char*> list)
{
    QStringList out;
    for (const char* word : list) {
        out << QString::fromLatin1(word);
    }
    return out;
}

QStringList labels(const std::vector<AxisTick>& ticks)
{
    QStringList out;
    for (const AxisTick& tick : ticks) {
        out << tick.label;
    }
    return out;
}

double hoursBetween(const AxisTick& a, const AxisTick& b)
{
    return static_cast<double>(b.at - a.at) / 3'600'000.0;
}

// Summer time in the European Union ends at 01:00 UTC on the last Sunday of October and begins at 01:00 UTC on the last
// Sunday of March (Directive 2000/84/EC, articles 2 and 3): in 2026 on 25 October and 29 March.
TEST(AxisTicks, DaysAreLocalMidnightsAcrossTheOctoberClockChange)
{
    const AxisTicks ticks = calendarTicks(at(kBerlin, 2026, 10, 23), at(kBerlin, 2026, 10, 28), kBerlin, 100, 60, 2026);
    ASSERT_EQ(labels(ticks.lower), words({"Fri 23", "Sat 24", "Sun 25", "Mon 26", "Tue 27", "Wed 28"}));
    EXPECT_DOUBLE_EQ(hoursBetween(ticks.lower[1], ticks.lower[2]), 24.0);
    EXPECT_DOUBLE_EQ(hoursBetween(ticks.lower[2], ticks.lower[3]), 25.0);
    for (const AxisTick& tick : ticks.lower) {
        EXPECT_EQ(QDateTime::fromMSecsSinceEpoch(tick.at, kBerlin).time(), QTime(0, 0));
    }
}

TEST(AxisTicks, DaysAreLocalMidnightsAcrossTheMarchClockChange)
{
    const AxisTicks ticks = calendarTicks(at(kBerlin, 2026, 3, 28), at(kBerlin, 2026, 3, 31), kBerlin, 100, 60, 2026);
    ASSERT_EQ(labels(ticks.lower), words({"Sat 28", "Sun 29", "Mon 30", "Tue 31"}));
    EXPECT_DOUBLE_EQ(hoursBetween(ticks.lower[1], ticks.lower[2]), 23.0);
}

TEST(AxisTicks, WeeksBeginOnMondayAndKeepTheirMidnightThroughTheClockChange)
{
    const AxisTicks ticks = calendarTicks(at(kBerlin, 2026, 10, 14), at(kBerlin, 2026, 11, 11), kBerlin, 25, 60, 2026);
    ASSERT_EQ(labels(ticks.lower), words({"Mon 12", "Mon 19", "Mon 26", "Mon 2", "Mon 9"}));
    EXPECT_DOUBLE_EQ(hoursBetween(ticks.lower[1], ticks.lower[2]), 7 * 24 + 1.0);
    EXPECT_EQ(labels(ticks.upper), words({"October", "November"}));
    EXPECT_FALSE(ticks.minor.empty());
}

// In Lebanon and other places summer time begins at midnight, so that the day has no 00:00 (IANA time zone database,
// Asia/Beirut).
TEST(AxisTicks, ADayWithoutMidnightStillHasATick)
{
    const QTimeZone beirut("Asia/Beirut");
    const qint64 start = startOfDay(QDate(2026, 3, 29), beirut);
    EXPECT_EQ(QDateTime::fromMSecsSinceEpoch(start, beirut).date(), QDate(2026, 3, 29));
    EXPECT_EQ(QDateTime::fromMSecsSinceEpoch(start - 1, beirut).date(), QDate(2026, 3, 28));
}

TEST(AxisTicks, TheYearIsNamedWhenItIsNotThisOne)
{
    const AxisTicks ticks = calendarTicks(at(kBerlin, 2026, 12, 10), at(kBerlin, 2027, 1, 10), kBerlin, 25, 60, 2026);
    EXPECT_EQ(labels(ticks.upper), words({"December", "January 2027"}));
}

TEST(AxisTicks, FarOutMonthsAndYearsTakeOver)
{
    const AxisTicks ticks = calendarTicks(at(kBerlin, 2024, 11, 1), at(kBerlin, 2026, 12, 1), kBerlin, 1.4, 60, 2026);
    EXPECT_EQ(labels(ticks.upper), words({"2024", "2025", "2026"}));
    EXPECT_TRUE(labels(ticks.lower).contains(QLatin1String("Jan")));
    for (std::size_t i = 1; i < ticks.lower.size(); ++i) {
        EXPECT_GE(hoursBetween(ticks.lower[i - 1], ticks.lower[i]) / 24.0 * 1.4, 50.0);
    }
}

TEST(AxisTicks, AgesCountWholeDaysFromFlooding)
{
    const AxisTicks ticks = ageTicks(-kDayMs / 4, 63 * kDayMs, 15.0, 60);
    const QStringList lower = labels(ticks.lower);
    EXPECT_TRUE(lower.contains(QLatin1String("day 0")));
    EXPECT_TRUE(lower.contains(QLatin1String("day 56")));
    EXPECT_FALSE(lower.contains(QLatin1String("day 5")));
    EXPECT_EQ(labels(ticks.upper).first(), QLatin1String("week 1"));
}

TEST(TimeAxis, ZoomKeepsTheInstantUnderThePointer)
{
    TimeAxis axis;
    axis.setRange(0, 100 * kDayMs);
    const qint64 under = axis.view(0, 1000).at(300, 0);
    axis.zoom(0.3, 0.5);
    EXPECT_NEAR(static_cast<double>(axis.view(0, 1000).at(300, 0)), static_cast<double>(under), 2.0);
    EXPECT_EQ(axis.to() - axis.from(), 50 * kDayMs);
}

TEST(TimeAxis, ZoomStopsAtHalfADay)
{
    TimeAxis axis;
    axis.setRange(0, kDayMs);
    for (int i = 0; i < 20; ++i) {
        axis.zoom(0.5, 0.5);
    }
    EXPECT_EQ(axis.to() - axis.from(), kDayMs / 2);
}

TEST(TimeAxis, PanMovesByPartsOfTheSpan)
{
    TimeAxis axis;
    axis.setRange(0, 10 * kDayMs);
    QSignalSpy spy(&axis, &TimeAxis::rangeChanged);
    axis.pan(0.5);
    EXPECT_EQ(axis.from(), 5 * kDayMs);
    EXPECT_EQ(axis.to(), 15 * kDayMs);
    EXPECT_EQ(spy.count(), 1);
}

TEST(TimeAxis, DatesAndAgesKeepTheirOwnRange)
{
    TimeAxis axis;
    axis.setRange(1000 * kDayMs, 1049 * kDayMs);
    axis.setMode(AxisMode::Age);
    axis.setRange(0, 28 * kDayMs);
    axis.setMode(AxisMode::Calendar);
    EXPECT_EQ(axis.from(), 1000 * kDayMs);
    axis.setMode(AxisMode::Age);
    EXPECT_EQ(axis.to(), 28 * kDayMs);
}

TEST(TimeAxis, InAgeModeEveryLaneCountsFromItsOwnFlooding)
{
    TimeAxis axis;
    axis.setMode(AxisMode::Age);
    axis.setRange(0, 100 * kDayMs);
    const AxisView view = axis.view(200, 1000);
    const qint64 flooded = 20'000 * kDayMs;
    EXPECT_DOUBLE_EQ(view.x(flooded, flooded), 200.0);
    EXPECT_DOUBLE_EQ(view.x(flooded + 50 * kDayMs, flooded), 700.0);
    EXPECT_DOUBLE_EQ(view.x(flooded + 57 * kDayMs, flooded + 7 * kDayMs), 700.0);
    EXPECT_EQ(view.at(700.0, flooded), flooded + 50 * kDayMs);
}

TEST(CalendarTicks, BeginEachDayWhereTheZoneSaysAcrossYearsOfClockChanges)
{
    // Every day of three years, clock changes both ways in each (Berlin), at half an hour (Lord Howe), and none (UTC).
    for (const char* name : {"Europe/Berlin", "Australia/Lord_Howe", "America/Sao_Paulo", "UTC"}) {
        const QTimeZone zone(name);
        const qint64 from = at(zone, 2016, 1, 1);
        const AxisTicks ticks = calendarTicks(from, from + 1100 * kDayMs, zone, 80.0, 60.0, 2016);
        ASSERT_GT(ticks.lower.size(), 1090U);
        QDate day(2016, 1, 1);
        for (const AxisTick& tick : ticks.lower) {
            ASSERT_EQ(tick.at, startOfDay(day, zone)) << name << " " << day.toString(Qt::ISODate).toStdString();
            day = day.addDays(1);
        }
    }
}

} // namespace
} // namespace littoral::ui
