// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/plans.h"

#include "core/forecast/forecaster.h"
#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <thread>

namespace littoral::forecast {
namespace {

const GateRule kGate{"G2", 21.0, 0.2, 0.02, 0.1, 3.0};

Request ask(TankCase tank)
{
    Request request;
    request.tank = std::move(tank);
    request.seed = 5;
    request.gates = {kGate};
    request.load_mgN_per_L_d = 0.1;
    request.draws = 200;
    return request;
}

PlanTable compared(const Request& request, std::vector<ChangePlan> plans)
{
    const auto members = fit(request);
    PlanQuestion question;
    question.plans = std::move(plans);
    question.gate = kGate;
    auto table = comparePlans(request, members.value(), question);
    EXPECT_TRUE(table.has_value());
    return std::move(table).value();
}

TEST(Plans, GridHasSixtyAndMore)
{
    const TankCase tank = cases::richSoil(7.0);
    EXPECT_GE(planGrid(tank).size(), 60U);
    TankCase two = tank;
    two.setup.sources.push_back({0.0, Chloramine::No, 0.2});
    EXPECT_GT(planGrid(two).size(), planGrid(tank).size());
}

TEST(Plans, ChangesStartAnIntervalAfterTheLastOne)
{
    TankCase tank = cases::richSoil(7.0); // changes on days 2, 4, 6
    const auto every3 = changesOf({0.4, 3.0}, tank, 20.0);
    ASSERT_EQ(every3.size(), 4U); // 9, 12, 15, 18
    EXPECT_DOUBLE_EQ(every3.front().day, 9.0);
    EXPECT_DOUBLE_EQ(every3.back().day, 18.0);
    const auto eased = changesOf({0.4, 3.0, 7.0}, tank, 20.0);
    EXPECT_DOUBLE_EQ(eased[1].amount, 0.4); // day 12 is five days on
    EXPECT_DOUBLE_EQ(eased[2].amount, 0.2); // day 15 is eight
    EXPECT_TRUE(changesOf({0.0, 3.0}, tank, 20.0).empty());
    tank.events.clear();
    EXPECT_DOUBLE_EQ(changesOf({0.4, 3.0}, tank, 20.0).front().day, 7.0) << "nothing changed yet: today";
}

TEST(Plans, ReplacingKeepsThePastAndOtherEvents)
{
    TankCase tank = cases::richSoil(7.0);
    tank.events.push_back({12.0, EventKind::LivestockRate, 0.05, 0});
    const auto changed = withChanges(tank, changesOf({0.3, 7.0}, tank, 30.0));
    const auto count = [&](auto&& wanted) {
        return std::count_if(changed.events.begin(), changed.events.end(), wanted);
    };
    EXPECT_EQ(count([](const Event& e) { return e.kind == EventKind::WaterChange && e.day < 7.0; }), 3);
    EXPECT_EQ(count([](const Event& e) { return e.kind == EventKind::WaterChange && e.day >= 7.0; }), 3); // 13, 20, 27
    EXPECT_EQ(count([](const Event& e) { return e.kind == EventKind::LivestockRate; }), 1);
}

TEST(Plans, MoreWaterLowersExposureAndStarvesTheFilter)
{
    // The direction both follows from mass balance and is what the de-risking study found on independent tanks.
    const auto table =
        compared(ask(cases::richSoil(7.0)), {{0.0, 7.0}, {0.5, 7.0}, {0.5, 2.0}, {0.5, 1.0}, {0.7, 1.0}});
    ASSERT_EQ(table.outcomes.size(), 6U); // the present one, half every other day, is asked about by its own row
    for (std::size_t i = 2; i < table.outcomes.size(); ++i) {
        const PlanOutcome& less = table.outcomes[i - 1];
        const PlanOutcome& more = table.outcomes[i];
        EXPECT_LT(more.hoursNitriteOver, less.hoursNitriteOver);
        EXPECT_LT(more.hoursFreeOver, less.hoursFreeOver);
        EXPECT_GT(more.volumesToGate, less.volumesToGate);
        EXPECT_LE(more.nitriteAbove(1.0), less.nitriteAbove(1.0));
    }
    EXPECT_LT(table.outcomes[5].carriesAtGate.value(), table.outcomes[2].carriesAtGate.value());
    EXPECT_EQ(table.outcomes[1].volumesToGate, 0.0);
}

TEST(Plans, PresentPlanAgreesWithTheForecastItself)
{
    // Same members, other random numbers for the future and a coarser step: the gate's odds must agree within noise of
    // 200 members (sd of a proportion at most 0.035) and the step of a quarter day.
    Request request = ask(cases::manyReadings(9, 14.0));
    const auto members = fit(request);
    const auto whole = forecast(request, members.value());
    const auto table = compared(request, {});
    const DateOdds& plan = table.outcomes.front().gate;
    const DateOdds& gate = whole->gates.front();
    ASSERT_TRUE(table.outcomes.front().present);
    for (std::size_t i = 0; i < plan.gridDays.size(); i += 7) {
        EXPECT_NEAR(plan.cumulative[i], gate.cumulative[i], 0.14) << "day " << plan.gridDays[i];
    }
}

TEST(Plans, StretchBeforeTodayCounts)
{
    // Clear for days already: a gate that asks for three clear days is open, not three days away.
    TankCase tank = cases::richSoil(40.0);
    tank.setup.soil = SoilKind::Inert;
    tank.setup.plants = PlantDensity::None;
    for (double day = 20.0; day <= 40.0; day += 2.0) {
        cases::addReading(tank, day, 0, 0.0);
        cases::addReading(tank, day, 1, 0.0);
    }
    Request request = ask(tank);
    request.load_mgN_per_L_d = 0.0;
    const auto table = compared(request, {});
    EXPECT_LE(table.outcomes.front().gate.day[3], 40.0);
    EXPECT_FALSE(table.outcomes.front().carriesAtGate.has_value());
}

TEST(Plans, FrontierHoldsNoPlanThatAnotherBeats)
{
    const Request request = ask(cases::richSoil(7.0));
    const auto table = compared(request, planGrid(request.tank));
    EXPECT_GE(table.outcomes.size(), 60U);
    const auto shown =
        std::count_if(table.outcomes.begin(), table.outcomes.end(), [](const auto& o) { return o.shown; });
    EXPECT_GE(shown, 5);
    EXPECT_LE(shown, 8);
    for (const PlanOutcome& a : table.outcomes) {
        for (const PlanOutcome& b : table.outcomes) {
            if (b.onFrontier) {
                EXPECT_FALSE(a.volumesToGate < b.volumesToGate && a.hoursNitriteOver < b.hoursNitriteOver &&
                             a.hoursFreeOver < b.hoursFreeOver && a.gate.day[3] < b.gate.day[3]);
            }
        }
    }
}

TEST(Plans, CheapestKeepsThePromise)
{
    const Request request = ask(cases::richSoil(7.0));
    const auto table = compared(request, planGrid(request.tank));
    const double limit = 3.0 / 3.28454;
    const auto best = cheapestPlan(table, limit, 0.3);
    ASSERT_TRUE(best.has_value());
    EXPECT_LE(table.outcomes[*best].nitriteAbove(limit), 0.3);
    for (const PlanOutcome& other : table.outcomes) {
        if (other.nitriteAbove(limit) <= 0.3) {
            EXPECT_GE(other.volumesToGate, table.outcomes[*best].volumesToGate);
        }
    }
    EXPECT_FALSE(cheapestPlan(table, 0.0, 0.0).has_value()) << "nitrite above nothing at all cannot be kept";
}

TEST(Plans, SameAnswerOnAnyThread)
{
    const Request request = ask(cases::manyReadings(5, 8.0));
    const auto hours = [&] {
        std::vector<double> all;
        for (const PlanOutcome& outcome : compared(request, {{0.3, 3.0}, {0.5, 1.0}}).outcomes) {
            all.push_back(outcome.hoursNitriteOver);
            all.push_back(outcome.gate.day[3]);
            all.push_back(outcome.volumesToGate);
        }
        return all;
    };
    const auto here = hours();
    std::vector<double> there;
    std::thread([&] { there = hours(); }).join();
    EXPECT_EQ(here, there);
}

TEST(Plans, RefusesTheImpossible)
{
    const Request request = ask(cases::richSoil(7.0));
    const auto members = fit(request);
    for (const ChangePlan& plan :
         {ChangePlan{1.2, 3.0}, ChangePlan{0.3, 0.0}, ChangePlan{0.3, 3.0, 7.0, 4}, ChangePlan{std::nan(""), 3.0}}) {
        PlanQuestion question;
        question.gate = kGate;
        question.plans = {plan};
        const auto table = comparePlans(request, members.value(), question);
        ASSERT_FALSE(table.has_value());
        EXPECT_EQ(table.error().fault, Fault::BadInput);
    }
}

} // namespace
} // namespace littoral::forecast
