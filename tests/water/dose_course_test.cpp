// SPDX-License-Identifier: GPL-3.0-or-later
// A level followed through doses, changes and uptake, against closed forms of the geometric series.
#include "core/water/dosing.h"

#include <gtest/gtest.h>

namespace littoral::water {
namespace {

/// Weekly: uptake, a change, then the dose, for `weeks` weeks from day 0.
std::vector<CourseEvent> weekly(double dose, double fraction, double source, int weeks)
{
    std::vector<CourseEvent> events;
    for (int week = 1; week <= weeks; ++week) {
        events.push_back({7.0 * week, fraction, source, dose, {}});
    }
    return events;
}

TEST(DoseCourse, SettlesAtDoseOverFraction)
{
    // Geometric series d/f with no uptake: 2 mg/L a week and half changed weekly settle at 4 just after the dose and at
    // 2 just after the change (arithmetic).
    const auto events = weekly(2.0, 0.5, 0.0, 60);
    const auto course = doseCourse(0.0, 0.0, 420.0, 0.0, events);
    EXPECT_NEAR(course.back().level, 4.0, 1e-9);
    EXPECT_NEAR(*levelAt(course, 413.0 + 3.5), 4.0, 1e-9);
    // After n weeks: (d/f)(1 - (1-f)^n); four weeks give 3.75.
    EXPECT_NEAR(*levelAt(course, 28.5), 3.75, 1e-9);
}

TEST(DoseCourse, SettlesAtTheClosedFormWithConstantUptake)
{
    // (d - u(1-f))/f with d 15 and u 8 a week, f 0.3: 31.3333 (arithmetic; valid while the level never reaches zero).
    const auto course = doseCourse(20.0, 0.0, 7.0 * 120, 8.0 / 7.0, weekly(15.0, 0.3, 0.0, 120));
    EXPECT_NEAR(course.back().level, (15.0 - 8.0 * 0.7) / 0.3, 1e-6);
    // The same as the interval arithmetic of the dosing sheets.
    DosePlan plan;
    plan.start = 20.0;
    plan.dose = 15.0;
    plan.fraction = 0.3;
    plan.uptake = 8.0;
    EXPECT_NEAR(course.back().level, doseCeiling(plan)->afterDose, 1e-6);
}

TEST(DoseCourse, SourceWaterIsAFloor)
{
    // c_s + d/f: source 10, 2 a week, half changed: 14 (arithmetic).
    const auto course = doseCourse(0.0, 0.0, 7.0 * 60, 0.0, weekly(2.0, 0.5, 10.0, 60));
    EXPECT_NEAR(course.back().level, 14.0, 1e-9);
}

TEST(DoseCourse, FollowsTheStepsOfTheIntervalArithmetic)
{
    DosePlan plan{6.0, 3.0, 0.4, 1.0, 4.5, 0.0, 7.0};
    const auto course = doseCourse(6.0, 0.0, 70.0, 4.5 / 7.0, weekly(3.0, 0.4, 1.0, 10));
    const auto steps = doseSteps(plan, 10);
    for (std::size_t week = 0; week < 9; ++week) {
        EXPECT_NEAR(*levelAt(course, 7.0 * static_cast<double>(week + 1)), steps[week].beforeChange, 1e-9) << week;
    }
    EXPECT_NEAR(course.back().level, steps.back().afterDose, 1e-9);
}

TEST(DoseCourse, RunsDryAndStaysThere)
{
    const auto course = doseCourse(3.0, 0.0, 10.0, 1.0, {});
    ASSERT_EQ(course.size(), 3U);
    EXPECT_DOUBLE_EQ(course[1].day, 3.0);
    EXPECT_DOUBLE_EQ(course[1].level, 0.0);
    EXPECT_DOUBLE_EQ(course[2].level, 0.0);
}

TEST(DoseCourse, UptakeMayChangeAndTurnRound)
{
    const std::vector<CourseEvent> events{{-5.0, 0.0, 0.0, 9.0, 1.0}, {4.0, 0.0, 0.0, 0.0, -2.0}};
    const auto course = doseCourse(10.0, 0.0, 6.0, 0.0, events);
    EXPECT_DOUBLE_EQ(*levelAt(course, 4.0), 6.0); // the earlier event's uptake of 1 a day holds, its dose does not
    EXPECT_DOUBLE_EQ(course.back().level, 10.0);  // two days of 2 set free
}

TEST(DoseCourse, NothingIsSaidOutsideIt)
{
    const auto course = doseCourse(3.0, 1.0, 2.0, 0.0, {});
    EXPECT_FALSE(levelAt(course, 0.9));
    EXPECT_FALSE(levelAt(course, 2.1));
    EXPECT_FALSE(levelAt({}, 1.0));
}

} // namespace
} // namespace littoral::water
