// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/milestones.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace littoral::forecast {
namespace {

const DoseDays kNoDoses{{}};

TEST(Completion, LimitIsAQuarterPpmOfTheCommonCards)
{
    // Molar masses: 17.031/14.007 = 1.2159 (NH3 per N), 46.006/14.007 = 3.2845 (NO2 per N).
    EXPECT_NEAR(kClearAmmonia_mgN_per_L * 17.031 / 14.007, 0.25, 1e-4);
    EXPECT_NEAR(kClearNitrite_mgN_per_L * 46.006 / 14.007, 0.25, 1e-4);
}

TEST(Completion, IsTheFirstDayFromWhichBothStayClear)
{
    const std::vector<double> ammonia{1.0, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1};
    const std::vector<double> nitrite{0.0, 0.0, 0.5, 0.5, 0.01, 0.01, 0.01};
    EXPECT_EQ(completionDay(ammonia, nitrite, 0.0, kNoDoses, 6.0), 4.0);
    EXPECT_EQ(completionDay(ammonia, nitrite, 10.0, kNoDoses, 16.0), 14.0);
    EXPECT_EQ(completionDay(ammonia, nitrite, 0.0, kNoDoses, 3.0), kNotByLast);
}

TEST(Completion, ATankClearThroughoutWasCompleteAtTheStart)
{
    const std::vector<double> clear(5, 0.01);
    EXPECT_EQ(completionDay(clear, clear, 370.0, kNoDoses, 374.0), 370.0);
}

TEST(Completion, LeavesOutTheDayOfADoseAndTheNext)
{
    std::vector<double> ammonia(10, 0.01);
    const std::vector<double> nitrite(10, 0.01);
    ammonia[0] = 2.0;
    ammonia[5] = 1.0;
    ammonia[6] = 0.4;
    EXPECT_EQ(completionDay(ammonia, nitrite, 0.0, kNoDoses, 9.0), 7.0);
    const DoseDays doses({{5.4, EventKind::AmmoniaDose, 1.0, 0}});
    EXPECT_EQ(completionDay(ammonia, nitrite, 0.0, doses, 9.0), 1.0);
    ammonia[7] = 0.4;
    EXPECT_EQ(completionDay(ammonia, nitrite, 0.0, doses, 9.0), 8.0);
}

TEST(Completion, AValueThatIsNotANumberIsNotClear)
{
    std::vector<double> ammonia(4, 0.01);
    ammonia[2] = std::nan("");
    EXPECT_EQ(completionDay(ammonia, std::vector<double>(4, 0.0), 0.0, kNoDoses, 4.0), 3.0);
}

FinePath pathOf(const std::vector<double>& nitritePerDay)
{
    FinePath path;
    for (std::size_t i = 0; i < nitritePerDay.size() * 8; ++i) {
        path.days.push_back(static_cast<double>(i) / 8.0);
        path.totalAmmonia.push_back(0.05);
        path.freeAmmonia.push_back(0.001);
        path.nitrite.push_back(nitritePerDay[i / 8]);
    }
    return path;
}

GateRule weekClear()
{
    return {"G1", 0.0, 0.2, 0.02, 0.1, 3.0};
}

TEST(Gate, OpensWhenAllLimitsHaveHeldForTheSpan)
{
    const FinePath path = pathOf({1, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0});
    EXPECT_EQ(gateDay(path, weekClear(), kNoDoses, 0.0, 20.0), 8.0);
    GateRule older = weekClear();
    older.minDay = 9.5;
    EXPECT_EQ(gateDay(path, older, kNoDoses, 0.0, 20.0), 9.5);
    older.minDay = 30.0;
    EXPECT_EQ(gateDay(path, older, kNoDoses, 0.0, 20.0), kNotByLast);
    GateRule strict = weekClear();
    strict.free_mgN_per_L = 0.0005;
    EXPECT_EQ(gateDay(path, strict, kNoDoses, 0.0, 20.0), kNotByLast);
}

TEST(Gate, AnOpeningThatClosedAgainDoesNotCount)
{
    const FinePath path = pathOf({0, 0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 0});
    EXPECT_EQ(gateDay(path, weekClear(), kNoDoses, 0.0, 20.0), 3.0);
    EXPECT_EQ(gateDay(path, weekClear(), kNoDoses, 4.0, 20.0), 3.0) << "still open on day 4";
    EXPECT_EQ(gateDay(path, weekClear(), kNoDoses, 6.0, 20.0), 10.0);
}

TEST(Gate, LeavesOutDoseDays)
{
    const FinePath path = pathOf({0, 1, 1, 0, 0, 0, 0});
    const DoseDays doses({{1.0, EventKind::AmmoniaDose, 1.0, 0}});
    EXPECT_EQ(gateDay(path, weekClear(), doses, 0.0, 20.0), 3.0);
}

TEST(Odds, NotByLastIsItsOwnOutcome)
{
    const DateOdds odds = oddsOf({10, 12, 14, 16, kNotByLast, 70, kNotByLast, 18, 20, 22}, 7.0, 60.0);
    EXPECT_NEAR(odds.notByLast, 0.3, 1e-12);
    EXPECT_EQ(odds.lastDay, 60.0);
    EXPECT_EQ(odds.day[3], 19.0); // between 18 and 20: infinite days are counted, not averaged
    EXPECT_EQ(odds.day[5], kNotByLast);
    EXPECT_EQ(odds.gridDays.front(), 7.0);
    EXPECT_EQ(odds.gridDays.back(), 60.0);
    EXPECT_EQ(odds.cumulative.front(), 0.0);
    EXPECT_NEAR(odds.cumulative[5], 0.2, 1e-12); // day 12
    EXPECT_NEAR(odds.cumulative.back(), 0.7, 1e-12);
}

TEST(Odds, BandIsTheUsualQuantile)
{
    std::vector<double> values;
    for (int i = 40; i >= 0; --i) {
        values.push_back(i);
    }
    const Band band = bandOf(values);
    EXPECT_NEAR(band[0], 1.0, 1e-12);
    EXPECT_NEAR(band[1], 4.0, 1e-12);
    EXPECT_NEAR(band[3], 20.0, 1e-12);
    EXPECT_NEAR(band[6], 39.0, 1e-12);
}

} // namespace
} // namespace littoral::forecast
