// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/trend_statistics.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace littoral::facade {
namespace {

constexpr qint64 kDay = 86'400'000;

// NIST Statistical Reference Datasets, Linear Least Squares, "Norris" (ozone monitors; 36 observations, lower level of
// difficulty), https://www.itl.nist.gov/div898/strd/lls/data/Norris.shtml. Pairs of y and x as published.
constexpr std::array<std::array<double, 2>, 36> kNorris{{
    {0.1, 0.2},     {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1},    {228.1, 226.5},
    {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4},
    {0.1, 0.6},     {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6},
    {557.7, 556.0}, {228.3, 228.1}, {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3},
    {0.6, 0.3},     {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2}, {998.5, 999.0}, {778.9, 779.0},
    {10.2, 11.1},   {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5},
}};

/// Digits that agree, as NIST counts them: -log10 of the relative error.
double agreeingDigits(double got, double certified)
{
    return got == certified ? 16.0 : -std::log10(std::abs(got - certified) / std::abs(certified));
}

TEST(TrendStatistics, TheLineAgreesWithTheCertifiedNorrisValues)
{
    std::vector<double> x, y;
    for (const auto& [measured, reference] : kNorris) {
        y.push_back(measured);
        x.push_back(reference);
    }
    const auto fit = fitLine(x, y);
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->count, 36u);
    // Certified values of the same page. A dozen digits: doubles, sums about the means.
    EXPECT_GT(agreeingDigits(fit->slope, 1.00211681802045), 12.0);
    EXPECT_GT(agreeingDigits(fit->intercept, -0.262323073774029), 11.0);
    EXPECT_GT(agreeingDigits(fit->slopeError, 0.429796848199937e-03), 11.0);
    EXPECT_GT(agreeingDigits(fit->interceptError, 0.232818234301152), 11.0);
    EXPECT_GT(agreeingDigits(fit->scatter, 0.884796396144373), 11.0);
}

TEST(TrendStatistics, LargeAbscissaeLoseNoDigits)
{
    // The same data set moved by a million: slope and its error may not change.
    std::vector<double> x, y;
    for (const auto& [measured, reference] : kNorris) {
        y.push_back(measured);
        x.push_back(reference + 1e6);
    }
    const auto fit = fitLine(x, y);
    ASSERT_TRUE(fit);
    EXPECT_GT(agreeingDigits(fit->slope, 1.00211681802045), 9.0);
    EXPECT_GT(agreeingDigits(fit->slopeError, 0.429796848199937e-03), 7.0);
}

TEST(TrendStatistics, NoLineWithoutThreePointsOrSpread)
{
    const std::array two{1.0, 2.0};
    const std::array same{3.0, 3.0, 3.0};
    const std::array any{1.0, 2.0, 4.0};
    EXPECT_FALSE(fitLine(two, two));
    EXPECT_FALSE(fitLine(same, any));
    EXPECT_FALSE(fitLine(any, two));
}

std::vector<TrendPoint> daily(std::initializer_list<double> values)
{
    std::vector<TrendPoint> points;
    for (const double value : values) {
        points.push_back({static_cast<qint64>(points.size()) * kDay, value});
    }
    return points;
}

TEST(TrendStatistics, FiguresOfAHandfulOfReadings)
{
    const auto points = daily({4, 2, 6, 2, 6});
    const auto made = statisticsOf(points, {}, {0, 4 * kDay, {}, {}});
    EXPECT_EQ(made.count, 5u);
    EXPECT_DOUBLE_EQ(made.mean, 4.0);
    EXPECT_EQ(made.lowest.at, kDay) << "the earlier of equals";
    EXPECT_EQ(made.highest.at, 2 * kDay);
    EXPECT_EQ(made.last.value, 6.0);
    ASSERT_TRUE(made.line);
    // By hand: Sxy = (-2)(0) + (-1)(-2) + 0 + (1)(-2) + (2)(2) = 4, Sxx = 10.
    EXPECT_DOUBLE_EQ(made.line->slope, 0.4);
    // Residuals 0.8, -1.6, 2, -2.4, 1.2: squares 14.4; error = sqrt(14.4 / 3 / 10).
    EXPECT_NEAR(made.line->slopeError, std::sqrt(0.48), 1e-12);
    EXPECT_FALSE(made.inBand) << "no band was asked for";
}

TEST(TrendStatistics, OnlyReadingsOfTheSpanCount)
{
    const auto points = daily({9, 1, 2, 3, 9});
    const auto made = statisticsOf(points, {}, {kDay, 3 * kDay, {}, {}});
    EXPECT_EQ(made.count, 3u);
    EXPECT_DOUBLE_EQ(made.mean, 2.0);
    const auto before = spanBefore({kDay, 3 * kDay, {}, {}});
    EXPECT_EQ(before.to, kDay - 1) << "a reading on the border belongs to the later span";
    EXPECT_EQ(before.from, -kDay);
    EXPECT_EQ(statisticsOf(points, {}, before).count, 1u);
}

TEST(TrendStatistics, TimeInBandFollowsTheLinesBetweenReadings)
{
    // Up from 0 to 10 in a day: half of it lies in 2.5 .. 7.5. The next day is flat at 10: none.
    const auto points = daily({0, 10, 10});
    const auto made = statisticsOf(points, {}, {0, 2 * kDay, 2.5, 7.5});
    ASSERT_TRUE(made.inBand);
    EXPECT_NEAR(*made.inBand, 0.25, 1e-12);
    EXPECT_NEAR(made.known_d, 2.0, 1e-12);
}

TEST(TrendStatistics, ASpanBetweenReadingsIsCutFromTheirLine)
{
    const auto points = daily({0, 10});
    const auto made = statisticsOf(points, {}, {kDay / 2, kDay * 3 / 4, {}, 6.0});
    // From 5 to 7.5 on the line; up to 6 is two fifths.
    ASSERT_TRUE(made.inBand);
    EXPECT_NEAR(*made.inBand, 0.4, 1e-12);
    EXPECT_EQ(made.count, 0u);
}

TEST(TrendStatistics, ReadingsFarApartSayNothingBetweenThem)
{
    std::vector<TrendPoint> points{{0, 5.0}, {kDay, 5.0}, {60 * kDay, 5.0}};
    const auto made = statisticsOf(points, {}, {0, 60 * kDay, 4.0, 6.0});
    EXPECT_NEAR(made.known_d, 1.0, 1e-12);
    ASSERT_TRUE(made.inBand);
    EXPECT_DOUBLE_EQ(*made.inBand, 1.0);
}

TEST(TrendStatistics, CensoredReadingsSayHowFarTheyCanMoveTheMean)
{
    const auto points = daily({0.05, 1.0});
    const std::vector<TrendInterval> intervals{{0.0, 0.05, record::Censoring::Below},
                                               {0.9, 1.1, record::Censoring::None}};
    const auto made = statisticsOf(points, intervals, {0, kDay, {}, {}});
    EXPECT_EQ(made.censored, 1u);
    EXPECT_NEAR(made.meanLow, 0.5, 1e-12);
    EXPECT_NEAR(made.meanHigh, 0.525, 1e-12);
}

TEST(TrendStatistics, ShareWithinOpenAndFlatBands)
{
    EXPECT_DOUBLE_EQ(shareWithin(0, 10, std::nullopt, 5.0), 0.5);
    EXPECT_DOUBLE_EQ(shareWithin(10, 0, 5.0, std::nullopt), 0.5);
    EXPECT_DOUBLE_EQ(shareWithin(3, 3, 2.0, 4.0), 1.0);
    EXPECT_DOUBLE_EQ(shareWithin(5, 5, 2.0, 4.0), 0.0);
    EXPECT_DOUBLE_EQ(shareWithin(0, 1, 2.0, 4.0), 0.0);
}

TEST(TrendStatistics, ClearSinceIsTheStartOfTheLastRunBelowTheLimit)
{
    const auto points = daily({3, 0.1, 2, 0.1, 0.2});
    EXPECT_EQ(clearSince(points, 0.2, 2), 3 * kDay);
    EXPECT_FALSE(clearSince(points, 0.15, 1)) << "the newest is above it";
    EXPECT_FALSE(clearSince(points, 0.2, 3)) << "three in a row were asked for";
    EXPECT_FALSE(clearSince({}, 1.0, 1));
}

} // namespace
} // namespace littoral::facade
