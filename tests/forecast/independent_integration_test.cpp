// SPDX-License-Identifier: GPL-3.0-or-later
// Our lanes against a second implementation integrated by Boost.odeint at a tolerance of 1e-11.
#include "core/forecast/priors.h"
#include "tests/forecast/cases.h"
#include "tests/forecast/reference_tank.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

namespace littoral::forecast {
namespace {

struct Errors
{
    std::vector<double> ammonia; ///< in shares of a 0.25 ppm step
    std::vector<double> nitrite;
};

double highQuantile(std::vector<double>& values, double q)
{
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(q * static_cast<double>(values.size() - 1))];
}

Errors compare(const TankCase& tank, std::size_t draws, double tolerance)
{
    const Prior prior(tank);
    Random random(99);
    const Rows z = priorDraws(prior, draws, random);
    sim::Scenario scenario = scenarioOf(tank, 60.0, false);
    for (int day = 0; day <= 60; ++day) {
        scenario.stops.push_back(day);
    }
    sim::PackTrace trace;
    Errors errors;
    std::array<sim::Member, sim::kLanes> members;
    for (std::size_t first = 0; first < draws; first += sim::kLanes) {
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            members[lane] = prior.member(z.row(first + lane));
        }
        sim::runToStops(scenario, members, sim::tankControl(tolerance), trace);
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            EXPECT_FALSE(trace.failed[lane]);
            std::size_t i = 0;
            reference::run(scenario, members[lane], 1e-11, [&](double, const reference::Vector& y) {
                const auto& ours = trace.atStops[i++];
                errors.ammonia.push_back(std::fabs(ours[sim::kTotalAmmonia][lane] - y[0]) / kClearAmmonia_mgN_per_L);
                errors.nitrite.push_back(std::fabs(ours[sim::kNitrite][lane] - y[1]) / kClearNitrite_mgN_per_L);
            });
        }
    }
    return errors;
}

/// Within one percent of the first step of the card, for 99 of 100 values; ten percent for the last.
void expectClose(Errors errors)
{
    EXPECT_LT(highQuantile(errors.ammonia, 0.99), 0.01);
    EXPECT_LT(highQuantile(errors.nitrite, 0.99), 0.01);
    EXPECT_LT(errors.ammonia.back(), 0.10);
    EXPECT_LT(errors.nitrite.back(), 0.10);
}

TEST(IndependentIntegration, RichSoilWithFrequentChanges)
{
    expectClose(compare(cases::richSoil(7.0), 48, 1e-4));
}

TEST(IndependentIntegration, InjectedCo2AndSoftWater)
{
    TankCase tank = cases::richSoil(7.0);
    tank.setup.co2 = {true, 28.0, 8.0};
    tank.setup.sources[0].alkalinity_meq_per_L = 0.6;
    tank.events.push_back({0.5, EventKind::MatureMedia, 0.3, 0});
    tank.events.push_back({10.0, EventKind::FeedRate, 0.1, 0});
    expectClose(compare(tank, 32, 1e-4));
}

TEST(IndependentIntegration, FishlessDoses)
{
    TankCase tank;
    tank.setup.soil = SoilKind::Inert;
    tank.setup.plants = PlantDensity::None;
    tank.events = {{0.0, EventKind::AmmoniaDose, 2.5, 0},
                   {14.0, EventKind::AmmoniaDose, 0.8, 0},
                   {28.0, EventKind::AmmoniaDose, 0.8, 0}};
    expectClose(compare(tank, 32, 1e-4));
}

TEST(IndependentIntegration, ATightRunAgreesFarBetter)
{
    Errors errors = compare(cases::richSoil(7.0), 16, 1e-9);
    EXPECT_LT(highQuantile(errors.ammonia, 1.0), 1e-5);
    EXPECT_LT(highQuantile(errors.nitrite, 1.0), 1e-5);
}

} // namespace
} // namespace littoral::forecast
