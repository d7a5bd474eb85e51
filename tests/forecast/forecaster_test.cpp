// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/forecaster.h"

#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstring>
#include <limits>
#include <thread>
#include <vector>

namespace littoral::forecast {
namespace {

constexpr std::size_t kMedian = 3;
constexpr double kPpmNitrate = 4.42680;

Request ask(TankCase tank)
{
    Request request;
    request.tank = std::move(tank);
    request.seed = 17;
    request.gates = {{"G1", 7.0, 0.4, 0.02, 0.3, 3.0}, {"G2", 21.0, 0.2, 0.01, 0.1, 7.0}};
    return request;
}

Forecast answer(const Request& request)
{
    auto result = forecast(request);
    EXPECT_TRUE(result.has_value()) << (result ? "" : result.error().sentence());
    return std::move(result).value();
}

/// Every number of a forecast in one row, to compare byte for byte.
std::vector<double> flat(const Forecast& f)
{
    std::vector<double> all(f.days);
    const auto add = [&all](const std::vector<Band>& bands) {
        for (const Band& band : bands) {
            all.insert(all.end(), band.begin(), band.end());
        }
    };
    for (const auto& s : f.substances) {
        add(s.water);
        add(s.kit);
        add(s.fitted);
    }
    for (const auto* odds : {&f.complete, &f.gates[0], &f.gates[1]}) {
        add({odds->day});
        all.insert(all.end(), odds->cumulative.begin(), odds->cumulative.end());
        all.push_back(odds->notByLast);
    }
    all.push_back(f.diagnostics.finalAcceptance);
    all.push_back(f.diagnostics.shrinkage);
    return all;
}

bool sameBytes(const std::vector<double>& a, const std::vector<double>& b)
{
    return a.size() == b.size() && std::memcmp(a.data(), b.data(), a.size() * sizeof(double)) == 0;
}

double width80(const DateOdds& odds)
{
    return odds.day[5] - odds.day[1];
}

TEST(Forecast, HasTheShapeThatWasAskedFor)
{
    Request request = ask(cases::fiveReadings());
    request.horizonDays = 10.0;
    request.stepDays = 2.5;
    request.extraDays = {9.0, 12.3};
    const Forecast f = answer(request);
    EXPECT_EQ(f.days, (std::vector<double>{9.0, 11.5, 12.3, 14.0, 16.5, 19.0}));
    EXPECT_EQ(f.pastDays.front(), 0.0);
    EXPECT_EQ(f.pastDays.back(), 9.0);
    ASSERT_EQ(f.gates.size(), 2U);
    EXPECT_EQ(f.complete.lastDay, 60.0);
    for (const auto& s : f.substances) {
        EXPECT_EQ(s.water.size(), f.days.size());
        EXPECT_EQ(s.fitted.size(), f.pastDays.size());
        EXPECT_EQ(s.kit.size(), s.substance == Substance::FreeAmmonia ? 0U : f.days.size());
        for (const Band& band : s.water) {
            EXPECT_GE(band[0], 0.0);
            for (std::size_t q = 1; q < band.size(); ++q) {
                EXPECT_GE(band[q], band[q - 1]);
            }
        }
    }
    for (const auto* odds : {&f.complete, &f.gates[0], &f.gates[1]}) {
        EXPECT_NEAR(odds->cumulative.back() + odds->notByLast, 1.0, 1e-12);
        for (std::size_t i = 1; i < odds->cumulative.size(); ++i) {
            EXPECT_GE(odds->cumulative[i], odds->cumulative[i - 1]);
        }
    }
    EXPECT_TRUE(f.diagnostics.fitted);
    EXPECT_GT(f.diagnostics.shrinkage, 0.1);
    EXPECT_GE(f.gates[1].day[0], 21.0) << "no gate opens before its age";
}

TEST(Forecast, SameRequestSameBytes)
{
    const Request request = ask(cases::fiveReadings());
    EXPECT_TRUE(sameBytes(flat(answer(request)), flat(answer(request))));
    Request other = request;
    other.seed = 18;
    EXPECT_FALSE(sameBytes(flat(answer(request)), flat(answer(other))));
}

TEST(Forecast, ThreadsDoNotChangeTheAnswer)
{
    const Request one = ask(cases::fiveReadings());
    const Request two = ask(cases::manyReadings(5, 8.0));
    const std::vector<double> alone = flat(answer(one));
    std::vector<double> together;
    std::thread other([&] { (void)forecast(two); });
    std::thread same([&] { together = flat(answer(one)); });
    other.join();
    same.join();
    EXPECT_TRUE(sameBytes(alone, together));
}

TEST(Forecast, AnotherSeedMovesTheDateLittle)
{
    // Two-seed repeat: the median date should move by less than 1.5 days when readings have pinned it down.
    Request request = ask(cases::manyReadings(10, 14.0));
    const double first = answer(request).complete.day[kMedian];
    request.seed = 4711;
    EXPECT_NEAR(answer(request).complete.day[kMedian], first, 1.5);
}

TEST(Forecast, WithoutReadingsIsThePriorAndSaysSo)
{
    const Forecast f = answer(ask(cases::richSoil(0.0)));
    EXPECT_TRUE(f.diagnostics.fitted);
    EXPECT_EQ(f.diagnostics.stages, 0);
    EXPECT_TRUE(f.diagnostics.flagged.empty());
    EXPECT_NEAR(f.complete.day[kMedian], 25.0, 5.0);
    EXPECT_GT(width80(f.complete), 25.0);
    EXPECT_EQ(f.diagnostics.shrinkage, 0.0);
}

TEST(Forecast, ReadingsNarrowTheCompletionDate)
{
    const Forecast prior = answer(ask(cases::richSoil(0.0)));
    const Forecast some = answer(ask(cases::manyReadings(7, 10.0)));
    const Forecast more = answer(ask(cases::manyReadings(13, 18.0)));
    EXPECT_LT(width80(some.complete), 0.8 * width80(prior.complete));
    EXPECT_LT(width80(more.complete), 0.8 * width80(some.complete));
    EXPECT_LT(some.diagnostics.shrinkage, 1.0);
    EXPECT_GT(more.diagnostics.shrinkage, 0.3);
}

TEST(Forecast, FittedPastFollowsTheReadings)
{
    const TankCase tank = cases::manyReadings(15, 21.0);
    const Forecast f = answer(ask(tank));
    // Day 8: ammonia was read 1 ppm, nitrite 1 ppm. The 95 % band in kit ppm must reach there within one step.
    const Band& ammonia = f.substances[0].fitted[8];
    EXPECT_LT(ammonia[0] * 1.21588, 1.4);
    EXPECT_GT(ammonia[6] * 1.21588, 0.7);
    EXPECT_LT(f.substances[0].water.front()[kMedian] * 1.21588, 0.125) << "it reads zero by now";
}

TEST(Forecast, ContradictoryReadingsAreRefusedAndThePriorShown)
{
    // A card cannot go from 0 to 8 ppm and back every day.
    TankCase tank = cases::richSoil(12.0);
    for (int day = 1; day <= 12; ++day) {
        cases::addReading(tank, day, 0, day % 2 == 0 ? 8.0 : 0.0);
        cases::addReading(tank, day, 1, day % 2 == 0 ? 0.0 : 5.0);
    }
    const Forecast f = answer(ask(tank));
    EXPECT_FALSE(f.diagnostics.fitted);
    EXPECT_GE(f.diagnostics.flagged.size(), 3U);
    // As wide as without readings, for the same day and plan; two sets of 600 draws agree within a few days.
    TankCase unread = tank;
    unread.readings.clear();
    const Forecast prior = answer(ask(unread));
    EXPECT_NEAR(f.complete.day[kMedian], prior.complete.day[kMedian], 4.0);
    EXPECT_NEAR(f.complete.notByLast, prior.complete.notByLast, 0.05);
}

TEST(Forecast, OneOddReadingIsFlaggedAndTheRestStillUsed)
{
    TankCase tank = cases::manyReadings(12, 17.0);
    const std::int64_t odd = tank.readings[27].tag;
    ASSERT_EQ(tank.readings[27].kit, 0);
    tank.readings[27].low = tank.readings[27].high = 8.0; // 0.25 before and after
    const Forecast f = answer(ask(tank));
    EXPECT_TRUE(f.diagnostics.fitted);
    ASSERT_EQ(f.diagnostics.flagged.size(), 1U);
    EXPECT_EQ(f.diagnostics.flagged[0].tag, odd);
    EXPECT_LT(f.diagnostics.flagged[0].probability, 0.01);
}

TEST(Forecast, RowsShowTheValueBeforeTheEvent)
{
    TankCase tank;
    tank.setup.soil = SoilKind::Inert;
    tank.setup.plants = PlantDensity::None;
    tank.decisionDay = 2.0;
    tank.events = {{0.0, EventKind::AmmoniaDose, 2.0, 0}, {4.0, EventKind::WaterChange, 0.5, 0}};
    Request request = ask(tank);
    request.horizonDays = 3.0;
    request.extraDays = {4.1};
    const Forecast f = answer(request);
    ASSERT_EQ(f.days[2], 4.0);
    EXPECT_NEAR(f.substances[0].water[2][kMedian], 2.0, 0.2);
    EXPECT_NEAR(f.substances[0].water[3][kMedian], 1.0, 0.15);
}

TEST(Forecast, SettledTankShowsANitrateSawToothAndNoCycle)
{
    const Forecast f = answer(ask(cases::settled()));
    EXPECT_TRUE(f.diagnostics.fitted);
    EXPECT_EQ(f.pastDays.front(), 370.0);
    EXPECT_LE(f.complete.day[kMedian], 400.0);
    EXPECT_LT(f.complete.notByLast, 0.1);
    EXPECT_GT(f.complete.cumulative.front(), 0.85) << "already";
    for (std::size_t i = 0; i < f.days.size(); ++i) {
        EXPECT_LT(f.substances[0].water[i][kMedian], 0.05);
        EXPECT_LT(f.substances[1].water[i][kMedian], 0.03);
        const double shown = f.substances[2].kit[i][kMedian];
        EXPECT_GT(shown, 3.0);
        EXPECT_LT(shown, 25.0) << "read 10 ppm every week so far";
    }
    // Change on day 406: day 406 is before it, day 407 after; then it climbs again until day 413.
    ASSERT_EQ(f.days[6], 406.0);
    const auto nitrate = [&](std::size_t i) { return f.substances[2].water[i][kMedian]; };
    EXPECT_LT(nitrate(7), 0.85 * nitrate(6));
    EXPECT_GT(nitrate(13), 1.1 * nitrate(7));
    EXPECT_GE(f.complete.lastDay, 428.0);
}

TEST(Forecast, MoreFoodMeansMoreNitrateInASettledTank)
{
    TankCase tank = cases::settled();
    const double before = answer(ask(tank)).substances[2].water.back()[kMedian];
    tank.events.push_back({401.0, EventKind::FeedRate, 1.0, 0});
    EXPECT_GT(answer(ask(tank)).substances[2].water.back()[kMedian], 1.3 * before);
}

TEST(Forecast, StopsWhenAsked)
{
    std::stop_source source;
    source.request_stop();
    const auto result = forecast(ask(cases::fiveReadings()), source.get_token());
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().fault, Fault::Cancelled);
}

TEST(Forecast, RefusesCasesThatContradictThemselves)
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto refused = [](TankCase tank) {
        const auto result = forecast(ask(std::move(tank)));
        return !result && result.error().fault == Fault::BadInput && !result.error().what.empty();
    };
    TankCase late = cases::fiveReadings();
    late.readings[0].day = 9.5;
    EXPECT_TRUE(refused(late));
    TankCase fraction = cases::fiveReadings();
    fraction.events[0].amount = 1.5;
    EXPECT_TRUE(refused(fraction));
    TankCase kit = cases::fiveReadings();
    kit.readings[0].kit = 3;
    EXPECT_TRUE(refused(kit));
    TankCase source = cases::fiveReadings();
    source.events[0].source = 1;
    EXPECT_TRUE(refused(source));
    TankCase bounds = cases::fiveReadings();
    bounds.readings[0].high = 0.1;
    EXPECT_TRUE(refused(bounds));
    TankCase warm = cases::fiveReadings();
    warm.setup.temperature_C = nan;
    EXPECT_TRUE(refused(warm));
    TankCase card = cases::fiveReadings();
    card.kits[0].steps = {0.25, 0.5};
    EXPECT_TRUE(refused(card));
    TankCase free = cases::fiveReadings();
    free.kits[0].substance = Substance::FreeAmmonia;
    EXPECT_TRUE(refused(free));
    TankCase early = cases::fiveReadings();
    early.setup.startDay = 20.0;
    EXPECT_TRUE(refused(early));
    EXPECT_FALSE(refused(cases::fiveReadings()));
}

TEST(Forecast, ReadingsFromBeforeTheRunAreLeftOut)
{
    TankCase tank = cases::settled();
    const std::vector<double> without = flat(answer(ask(tank)));
    tank.readings.insert(tank.readings.begin(), {20.0, 0, 8.0, 8.0, false, 99});
    EXPECT_TRUE(sameBytes(without, flat(answer(ask(tank)))));
}

TEST(Forecast, EventsMayComeInAnyOrder)
{
    TankCase tank = cases::fiveReadings();
    const std::vector<double> sorted = flat(answer(ask(tank)));
    std::reverse(tank.events.begin(), tank.events.end());
    EXPECT_TRUE(sameBytes(sorted, flat(answer(ask(tank)))));
}

} // namespace
} // namespace littoral::forecast
