// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/test_value.h"

#include "core/forecast/contradiction.h"
#include "core/forecast/forecaster.h"
#include "core/forecast/observation.h"
#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace littoral::forecast {
namespace {

Request ask(TankCase tank)
{
    Request request;
    request.tank = std::move(tank);
    request.seed = 23;
    request.gates = {{"G2", 14.0, 0.2, 0.02, 0.1, 3.0}};
    request.focusGate = 0;
    return request;
}

TEST(StepOdds, CardOddsAgreeWithTheLikelihoodOfEachStep)
{
    const Kit kit = cases::nitriteCard();
    const CardOdds card(kit);
    std::vector<double> odds(card.count());
    for (const double m : {0.0, 0.1, 0.4, 1.5, 4.0, 20.0}) {
        card(m, odds);
        EXPECT_NEAR(std::accumulate(odds.begin(), odds.end(), 0.0), 1.0, 1e-12);
        for (std::size_t k = 0; k < odds.size(); ++k) {
            CaseReading reading;
            reading.low = reading.high = kit.steps[k];
            EXPECT_NEAR(odds[k], std::exp(ReadingModel(kit, reading).logLikelihood(m)), 1e-12) << m << " step " << k;
        }
    }
}

TEST(StepOdds, GivenForTheComingWeek)
{
    const auto made = forecast(ask(cases::fiveReadings()));
    ASSERT_TRUE(made);
    const SubstanceForecast& nitrite = made->substances[1];
    EXPECT_EQ(nitrite.steps, cases::nitriteCard().steps);
    for (std::size_t row = 0; row < made->days.size(); ++row) {
        const auto& odds = nitrite.stepOdds[row];
        if (made->days[row] > 9.0 + kStepOddsDays) {
            EXPECT_TRUE(odds.empty());
            continue;
        }
        ASSERT_EQ(odds.size(), nitrite.steps.size());
        EXPECT_NEAR(std::accumulate(odds.begin(), odds.end(), 0.0), 1.0, 1e-9);
    }
    EXPECT_TRUE(made->substances[3].steps.empty()) << "free ammonia is not read";
}

TEST(NextTests, AreRankedAndTellOfEachAnswer)
{
    const auto made = forecast(ask(cases::fiveReadings()));
    ASSERT_TRUE(made);
    ASSERT_EQ(made->nextTests.size(), 3U * 7U) << "three cards, seven days";
    for (std::size_t i = 0; i < made->nextTests.size(); ++i) {
        const TestValue& value = made->nextTests[i];
        if (i > 0) {
            EXPECT_LE(value.narrowing_d(), made->nextTests[i - 1].narrowing_d());
        }
        double sum = 0.0;
        for (const TestOutcome& outcome : value.outcomes) {
            sum += outcome.probability;
            EXPECT_LE(outcome.day10, outcome.day50);
            EXPECT_LE(outcome.day50, outcome.day90);
        }
        EXPECT_GT(sum, 0.9);
    }
    EXPECT_GT(made->nextTests.front().narrowing_d(), 0.5);
    EXPECT_NE(made->nextTests.front().substance, Substance::Nitrate) << "nitrate says least about this gate";
}

TEST(NextTests, ExpectedWidthIsWhatTheTestBringsOnAverage)
{
    // Make the promised test many times on members of the ensemble, recalibrate in full, and compare the mean width
    // with the promise. Twelve truths: the mean's own sd is about 2 days here.
    const Request request = ask(cases::fiveReadings());
    const auto members = fit(request);
    const auto made = forecast(request, members.value());
    const TestValue best = made->nextTests.front();
    const Kit& kit = request.tank.kits[static_cast<std::size_t>(best.substance)];
    Random random(3);
    double width = 0.0;
    constexpr int kTruths = 12;
    for (int i = 0; i < kTruths; ++i) {
        double u = random.uniform();
        double shown = best.outcomes.back().low;
        for (const TestOutcome& outcome : best.outcomes) {
            u -= outcome.probability;
            if (u <= 0.0) {
                shown = outcome.low;
                break;
            }
        }
        Request later = request;
        later.tank.decisionDay = best.day;
        later.seed = static_cast<std::uint64_t>(i) + 100;
        later.tank.readings.push_back({best.day, static_cast<int>(best.substance), shown, shown, false, 77});
        const auto after = forecast(later);
        ASSERT_TRUE(after);
        const DateOdds& gate = after->gates[0];
        width += (std::min(gate.day[5], gate.lastDay) - std::min(gate.day[1], gate.lastDay)) / kTruths;
    }
    ASSERT_FALSE(kit.steps.empty());
    EXPECT_LT(width, best.width_d) << "the test does narrow the range";
    EXPECT_NEAR(width, best.expectedWidth_d, 6.0);
}

TEST(Fit, UpdateFollowsANewReadingWithoutCalibration)
{
    TankCase tank = cases::fiveReadings();
    Request before = ask(tank);
    before.tank.readings.pop_back();
    const auto earlier = fit(before);
    const Request after = ask(tank);
    const auto quick = updated(earlier.value(), after, {tank.readings.size() - 1});
    ASSERT_TRUE(quick && quick->has_value());
    const auto preview = forecast(after, **quick);
    const auto full = forecast(after);
    const auto stale = forecast(after, earlier.value());
    ASSERT_TRUE(preview && full && stale);
    const double truth = full->substances[1].water[0][3];
    EXPECT_LT(std::fabs(preview->substances[1].water[0][3] - truth),
              std::fabs(stale->substances[1].water[0][3] - truth));
    EXPECT_FALSE(updated(earlier.value(), after, {99}).has_value());
}

TEST(Fit, UpdateGivesUpWhenTheReadingIsNews)
{
    TankCase tank = cases::richSoil(9.0);
    for (const double day : {3.0, 5.0, 7.0}) {
        cases::addReading(tank, day, 0, 0.0);
        cases::addReading(tank, day, 1, 0.0);
    }
    const auto earlier = fit(ask(tank));
    for (const double day : {8.0, 8.4, 8.8}) {
        cases::addReading(tank, day, 0, 8.0);
        cases::addReading(tank, day, 1, 5.0);
    }
    const auto quick = updated(earlier.value(), ask(tank), {6, 7, 8, 9, 10, 11});
    ASSERT_TRUE(quick);
    EXPECT_FALSE(quick->has_value());
}

TEST(Contradiction, NamesTheKitOnTheWrongBasis)
{
    // A believable nitrite course read with a card whose printed values are as N while the case takes them as the ion.
    TankCase tank = cases::richSoil(30.0);
    tank.kits[1].steps = {0, 0.05, 0.1, 0.2, 0.4, 0.8, 1.5, 3.0};
    tank.kits.push_back(cases::nitriteCard());
    const std::vector<double> asN{0, 0.05, 0.2, 0.8, 1.5, 1.5, 0.8, 0.2};
    const std::vector<double> ion{0, 0.25, 0.5, 2, 5, 5, 2, 0.5};
    for (std::size_t i = 0; i < asN.size(); ++i) {
        const double day = 8.0 + 2.5 * static_cast<double>(i);
        cases::addReading(tank, day, 1, asN[i]);
        cases::addReading(tank, day, 3, ion[i]);
    }
    const auto found = explainContradiction(ask(tank));
    ASSERT_TRUE(found);
    ASSERT_FALSE(found->empty());
    EXPECT_EQ(found->front().cause, Cause::OtherUnitBasis);
    EXPECT_GE(found->front().odds, 3.0);
}

TEST(Contradiction, IsLookedIntoFromTheFirstReadingAtOdds)
{
    Diagnostics diagnostics;
    EXPECT_FALSE(worthExplaining(diagnostics));
    diagnostics.flagged = {{1, 0.005}};
    EXPECT_TRUE(worthExplaining(diagnostics));
    diagnostics.flagged.clear();
    diagnostics.fitted = false;
    EXPECT_TRUE(worthExplaining(diagnostics));
}

TEST(Contradiction, SaysNothingOfSoundReadings)
{
    const auto found = explainContradiction(ask(cases::fiveReadings()));
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->empty());
}

TEST(Capacity, CarriesTheLoadLaterThanAThirdOfIt)
{
    Request request = ask(cases::richSoil(7.0));
    request.load_mgN_per_L_d = 0.3;
    const auto heavy = forecast(request);
    request.load_mgN_per_L_d = 0.1;
    const auto light = forecast(request);
    ASSERT_TRUE(heavy && light);
    for (std::size_t i = 0; i < light->carriesLoad.cumulative.size(); i += 5) {
        EXPECT_GE(light->carriesLoad.cumulative[i], heavy->carriesLoad.cumulative[i]);
    }
    request.load_mgN_per_L_d = 0.0;
    EXPECT_TRUE(forecast(request)->carriesLoad.gridDays.empty());
    for (const auto& guild : light->capacity) {
        EXPECT_EQ(guild.future.size(), light->days.size());
        EXPECT_EQ(guild.fitted.size(), light->pastDays.size());
        EXPECT_GT(guild.future.back()[3], guild.future.front()[3]) << "a young filter grows";
    }
}

} // namespace
} // namespace littoral::forecast
