// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/random.h"
#include "core/sim/run.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

namespace littoral::sim {
namespace {

using Members = std::array<Member, kLanes>;

Members same(const Member& m)
{
    Members members;
    members.fill(m);
    return members;
}

/// A tank in which nothing lives: only events and the soil act.
Member sterile()
{
    Member m;
    m.changeGain = 1.0;
    m.start[kAlkalinity] = 1.5;
    m.sources[0].alkalinity_meq_per_L = 1.5;
    return m;
}

Member wild(Random& random)
{
    Member m;
    m.start[kTotalAmmonia] = std::exp(random.normal() - 1.0);
    m.start[kNitrate] = std::exp(random.normal());
    m.start[kAmmoniaCapacity] = 0.0025 * std::exp(1.7 * random.normal());
    m.start[kNitriteCapacity] = m.start[kAmmoniaCapacity] * std::exp(0.9 * random.normal());
    m.start[kFastSoil] = 7.0 * std::exp(0.8 * random.normal());
    m.start[kSlowSoil] = 4.0 * std::exp(0.9 * random.normal());
    m.start[kOrganic] = 0.6 * std::exp(0.9 * random.normal());
    m.start[kAlkalinity] = 1.5 * random.uniform();
    m.start[kPlants] = 0.18;
    m.uptake_mgN_per_L_d = 0.35 * std::exp(0.8 * random.normal());
    m.denitrification_per_d = 0.02 * random.uniform();
    m.soilBuffering_per_d = 0.12 * random.uniform();
    m.ammoniaHalf_mgN_per_L = 0.25 * std::exp(0.6 * random.normal());
    m.nitriteHalf_mgN_per_L = 0.15 * std::exp(0.6 * random.normal());
    m.temperature_C = 24.0 + random.normal();
    m.efficiency = std::exp(0.3 * random.normal());
    m.changeGain = 0.96 * std::exp(0.05 * random.normal());
    m.sources[0] = {0.05, 1.4, 1.2};
    return m;
}

Members crowd(Random& random)
{
    Members members;
    std::generate(members.begin(), members.end(), [&] { return wild(random); });
    return members;
}

Scenario wildScenario(Random& random)
{
    Scenario scenario;
    scenario.endDay = 40.0;
    scenario.co2Injected = random.uniform() < 0.5;
    scenario.co2ShareOfDay = scenario.co2Injected ? 0.33 : 0.0;
    scenario.feed_mgN_per_L_d = 0.1 * random.uniform();
    for (int i = 0; i < 25; ++i) {
        const double day = 40.0 * random.uniform();
        const double pick = random.uniform();
        if (pick < 0.5) {
            scenario.events.push_back({day, EventKind::WaterChange, random.uniform(), 0});
        } else if (pick < 0.65) {
            scenario.events.push_back({day, EventKind::AmmoniaDose, 2.0 * random.uniform(), 0});
        } else if (pick < 0.8) {
            scenario.events.push_back({day, EventKind::FeedRate, 0.3 * random.uniform(), 0});
        } else if (pick < 0.9) {
            scenario.events.push_back({day, EventKind::ExcretionChange, 0.2 * random.uniform(), 0});
        } else {
            scenario.events.push_back({day, EventKind::Squeezings, random.uniform(), 0});
        }
    }
    std::sort(scenario.events.begin(), scenario.events.end(),
              [](const Event& a, const Event& b) { return a.day < b.day; });
    for (const Event& event : scenario.events) {
        scenario.stops.push_back(event.day);
    }
    return scenario;
}

double nitrogen(const State<Pack>& y, std::size_t lane)
{
    double sum = 0.0;
    for (const auto i : {kTotalAmmonia, kNitrite, kNitrate, kFastSoil, kSlowSoil, kOrganic, kRemoved}) {
        sum += y[i][lane];
    }
    return sum;
}

TEST(Run, WaterChangesFollowTheDilutionLaw)
{
    // C_n = s + (C0 - s)(1 - f)^n.
    Member m = sterile();
    m.start[kNitrate] = 40.0;
    m.sources[0].nitrate_mgN_per_L = 10.0;
    Scenario scenario;
    scenario.endDay = 5.5;
    for (int i = 1; i <= 5; ++i) {
        scenario.events.push_back({static_cast<double>(i), EventKind::WaterChange, 0.3, 0});
        scenario.stops.push_back(i + 0.5);
    }
    PackTrace trace;
    runToStops(scenario, same(m), tankControl(1e-6), trace);
    const std::array<double, 5> expected{31.0, 24.7, 20.29, 17.203, 15.0421};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(trace.atStops[i][kNitrate][2], expected[i], 1e-9);
    }
}

TEST(Run, SevenSmallChangesAreLessThanOneLarge)
{
    Member m = sterile();
    m.start[kNitrate] = 1.0;
    Scenario scenario;
    scenario.endDay = 8.0;
    for (int i = 0; i < 7; ++i) {
        scenario.events.push_back({static_cast<double>(i), EventKind::WaterChange, 0.1, 0});
    }
    PackTrace trace;
    runToStops(scenario, same(m), tankControl(1e-6), trace);
    EXPECT_NEAR(trace.end[kNitrate][0], 0.4782969, 1e-9);
}

TEST(Run, ChangesTakeHalfTheShareOfWhatLiesOnTheBottom)
{
    Member m = sterile();
    m.ammonification_per_d = 0.0;
    m.start[kOrganic] = 1.0;
    m.changeGain = 0.96;
    m.start[kAmmoniaCapacity] = 0.5;
    m.decay_per_d = 0.0;
    Scenario scenario;
    scenario.endDay = 1.0;
    scenario.events = {{0.5, EventKind::WaterChange, 0.5, 0}};
    PackTrace trace;
    runToStops(scenario, same(m), tankControl(1e-6), trace);
    EXPECT_NEAR(trace.end[kOrganic][0], 1.0 - 0.24, 1e-12);
    EXPECT_NEAR(trace.end[kAmmoniaCapacity][0], 0.5, 1e-12) << "attached cells stay";
}

TEST(Run, AFullChangeIsCapped)
{
    Member m = sterile();
    m.start[kNitrate] = 1.0;
    m.changeGain = 1.2;
    Scenario scenario;
    scenario.endDay = 1.0;
    scenario.events = {{0.5, EventKind::WaterChange, 1.0, 0}};
    PackTrace trace;
    runToStops(scenario, same(m), tankControl(1e-6), trace);
    EXPECT_NEAR(trace.end[kNitrate][0], 1.0 - kLargestChange, 1e-12);
}

TEST(Run, SoilLeachesExponentiallyBetweenChanges)
{
    // M0 = 20, k = 0.08: first week 20 (1 - exp(-0.56)); with 50 % weekly changes pre values by the geometric closed
    // form.
    Member m = sterile();
    m.fastSoil_per_d = 0.08;
    m.start[kFastSoil] = 20.0;
    Scenario scenario;
    scenario.endDay = 28.0;
    for (int week = 1; week <= 4; ++week) {
        scenario.stops.push_back(7.0 * week);
        if (week < 4) {
            scenario.events.push_back({7.0 * week, EventKind::WaterChange, 0.5, 0});
        }
    }
    PackTrace trace;
    runToStops(scenario, same(m), tankControl(1e-9), trace);
    const std::array<double, 4> expected{8.5758187, 9.1864947, 7.3913637, 5.2939913};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(trace.atStops[i][kTotalAmmonia][1], expected[i], 1e-6);
    }
    EXPECT_NEAR(trace.atStops[0][kFastSoil][0], 11.4241813, 1e-6);
}

TEST(Run, DosesSeedsAndRatesArrive)
{
    Member m = sterile();
    m.decay_per_d = 0.0;
    m.efficiency = 0.8;
    m.seedNitriteShare = 0.5;
    m.ammonification_per_d = 0.0;
    Scenario scenario;
    scenario.endDay = 10.0;
    scenario.excretion_mgN_per_L_d = 0.1;
    scenario.events = {{2.0, EventKind::AmmoniaDose, 1.5, 0}, {4.0, EventKind::FeedRate, 0.2, 0}};
    PackTrace trace;
    runToStops(scenario, same(m), tankControl(1e-8), trace);
    EXPECT_NEAR(trace.end[kTotalAmmonia][0], 1.5 + 10.0 * 0.08, 1e-9);
    EXPECT_NEAR(trace.end[kOrganic][0], 6.0 * 0.16, 1e-9);

    // No growth, so that only what was put in counts.
    m.ammoniaGrowth_per_d = m.nitriteGrowth_per_d = 0.0;
    scenario.events = {
        {1.0, EventKind::Starter, 2.0, 0}, {2.0, EventKind::MatureMedia, 0.5, 0}, {3.0, EventKind::Squeezings, 1.0, 0}};
    runToStops(scenario, same(m), tankControl(1e-8), trace);
    EXPECT_NEAR(trace.end[kAmmoniaCapacity][0], 2.0 * 0.06 + 0.6 + 0.10, 1e-9);
    EXPECT_NEAR(trace.end[kNitriteCapacity][0], 0.5 * (2.0 * 0.06 + 0.6 + 0.10), 1e-9);
}

TEST(Run, StopsShowTheValueBeforeTheEventOfThatInstant)
{
    Member m = sterile();
    Scenario scenario;
    scenario.endDay = 3.0;
    scenario.events = {{1.0, EventKind::AmmoniaDose, 2.0, 0}, {3.0, EventKind::AmmoniaDose, 5.0, 0}};
    scenario.stops = {1.0, 2.0, 3.0};
    scenario.samples = {0.0, 1.0, 1.5, 3.0};
    PackTrace trace;
    runRecorded(scenario, same(m), tankControl(1e-6), trace);
    EXPECT_NEAR(trace.atStops[0][kTotalAmmonia][0], 0.0, 1e-12);
    EXPECT_NEAR(trace.atStops[1][kTotalAmmonia][0], 2.0, 1e-12);
    EXPECT_NEAR(trace.atStops[2][kTotalAmmonia][0], 2.0, 1e-12);
    EXPECT_NEAR(trace.samples[1].totalAmmonia[0], 0.0, 1e-12);
    EXPECT_NEAR(trace.samples[2].totalAmmonia[0], 2.0, 1e-12);
    EXPECT_NEAR(trace.samples[3].totalAmmonia[0], 2.0, 1e-12);
}

TEST(Run, AStopBetweenEventsIsReadOffTheStepsThatAreTakenAnyway)
{
    // In hundredths of the first step of the common cards: 0.25 ppm is 0.2056 mg N/L of ammonia, 0.0761 of nitrite.
    std::vector<double> errors;
    for (std::uint64_t seed = 300; seed < 310; ++seed) {
        Random random(seed);
        const Members members = crowd(random);
        Scenario scenario = wildScenario(random);
        scenario.stops.clear();
        PackTrace without;
        runToStops(scenario, members, tankControl(1e-4), without);
        for (int i = 1; i < 80; ++i) {
            scenario.stops.push_back(0.5 * i);
        }
        PackTrace with;
        runToStops(scenario, members, tankControl(1e-4), with);
        EXPECT_EQ(with.steps, without.steps);
        PackTrace fine;
        runToStops(scenario, members, tankControl(1e-9), fine);
        for (std::size_t i = 0; i < scenario.stops.size(); ++i) {
            const State<Pack>& a = with.atStops[i];
            const State<Pack>& b = fine.atStops[i];
            for (std::size_t lane = 0; lane < kLanes; ++lane) {
                errors.push_back(100.0 * std::fabs(a[kTotalAmmonia][lane] - b[kTotalAmmonia][lane]) / 0.2056);
                errors.push_back(100.0 * std::fabs(a[kNitrite][lane] - b[kNitrite][lane]) / 0.0761);
            }
        }
    }
    std::sort(errors.begin(), errors.end());
    EXPECT_LT(errors[errors.size() * 99 / 100], 0.5);
    EXPECT_LT(errors.back(), 3.0);
}

TEST(Run, DailyMeansAreIntegralsNotSamples)
{
    // Nothing but a constant income of 0.4 a day and a dose of 1 at 9 o'clock in the evening of day 1.
    Member m = sterile();
    Scenario scenario;
    scenario.startDay = 0.25;
    scenario.endDay = 3.0;
    scenario.excretion_mgN_per_L_d = 0.4;
    scenario.events = {{1.875, EventKind::AmmoniaDose, 1.0, 0}};
    PackTrace trace;
    runRecorded(scenario, same(m), tankControl(1e-6), trace);
    ASSERT_EQ(trace.meanAmmonia.size(), 3U);
    EXPECT_NEAR(trace.meanAmmonia[0][0], 0.4 * 0.75 / 2.0, 1e-9);
    EXPECT_NEAR(trace.meanAmmonia[1][0], 0.4 * 1.25 + 0.125, 1e-9);
    EXPECT_NEAR(trace.meanAmmonia[2][0], 0.4 * 2.25 + 1.0, 1e-9);
}

TEST(Run, NitrogenIsConservedThroughRandomEvents)
{
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        Random random(seed);
        Members members = crowd(random);
        const Scenario scenario = wildScenario(random);
        PackTrace trace;
        runToStops(scenario, members, tankControl(1e-4), trace);
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            ASSERT_FALSE(trace.failed[lane]);
            const Member& m = members[lane];
            double expected = 0.0;
            for (const double value : {m.start[kTotalAmmonia], m.start[kNitrite], m.start[kNitrate], m.start[kFastSoil],
                                       m.start[kSlowSoil], m.start[kOrganic]}) {
                expected += value;
            }
            double turnover = expected;
            double feed = scenario.feed_mgN_per_L_d;
            double excretion = 0.0;
            double day = 0.0;
            const auto add = [&](double amount) {
                expected += amount;
                turnover += std::fabs(amount);
            };
            for (std::size_t i = 0; i < scenario.events.size(); ++i) {
                const Event& event = scenario.events[i];
                const State<Pack>& before = trace.atStops[i];
                add((feed + excretion) * m.efficiency * (event.day - day));
                day = event.day;
                if (event.kind == EventKind::WaterChange) {
                    const double f = std::min(event.amount * m.changeGain, kLargestChange);
                    add(f * (m.sources[0].totalAmmonia_mgN_per_L + m.sources[0].nitrate_mgN_per_L));
                    add(-f * (before[kTotalAmmonia][lane] + before[kNitrite][lane] + before[kNitrate][lane]));
                    add(-0.5 * f * before[kOrganic][lane]);
                } else if (event.kind == EventKind::AmmoniaDose) {
                    add(event.amount);
                } else if (event.kind == EventKind::FeedRate) {
                    feed = event.amount;
                } else if (event.kind == EventKind::ExcretionChange) {
                    excretion += event.amount;
                }
            }
            add((feed + excretion) * m.efficiency * (scenario.endDay - day));
            EXPECT_NEAR(nitrogen(trace.end, lane), expected, 1e-9 * turnover) << "seed " << seed;
        }
    }
}

TEST(Run, NothingButAlkalinityTurnsNegative)
{
    for (std::uint64_t seed = 100; seed < 130; ++seed) {
        Random random(seed);
        Members members = crowd(random);
        members[0].start[kAlkalinity] = 0.01; // soon acid
        const Scenario scenario = wildScenario(random);
        PackTrace trace;
        runToStops(scenario, members, tankControl(4e-4), trace);
        for (const State<Pack>& y : trace.atStops) {
            for (std::size_t i = 0; i < kStateCount; ++i) {
                for (std::size_t lane = 0; lane < kLanes; ++lane) {
                    ASSERT_TRUE(std::isfinite(y[i][lane]));
                    if (i != kAlkalinity) {
                        EXPECT_GE(y[i][lane], -2e-13) << "seed " << seed << " state " << i;
                    }
                }
            }
        }
    }
}

TEST(Run, ATighterToleranceChangesLittle)
{
    // A hundredth of the first step of the common cards: 0.25 ppm is 0.2056 mg N/L of ammonia, 0.0761 of nitrite.
    std::vector<double> ammonia;
    std::vector<double> nitrite;
    for (std::uint64_t seed = 200; seed < 230; ++seed) {
        Random random(seed);
        const Members members = crowd(random);
        const Scenario scenario = wildScenario(random);
        PackTrace coarse;
        PackTrace fine;
        runToStops(scenario, members, tankControl(1e-4), coarse);
        runToStops(scenario, members, tankControl(0.5e-4), fine);
        for (std::size_t i = 0; i < scenario.stops.size(); ++i) {
            for (std::size_t lane = 0; lane < kLanes; ++lane) {
                ammonia.push_back(
                    std::fabs(coarse.atStops[i][kTotalAmmonia][lane] - fine.atStops[i][kTotalAmmonia][lane]));
                nitrite.push_back(std::fabs(coarse.atStops[i][kNitrite][lane] - fine.atStops[i][kNitrite][lane]));
            }
        }
    }
    for (auto* errors : {&ammonia, &nitrite}) {
        std::sort(errors->begin(), errors->end());
    }
    EXPECT_LT(ammonia[ammonia.size() * 99 / 100], 0.01 * 0.2056);
    EXPECT_LT(nitrite[nitrite.size() * 99 / 100], 0.01 * 0.0761);
}

TEST(Run, LanesOnlyShareTheStep)
{
    Random random(5);
    const Members members = crowd(random);
    const Scenario scenario = wildScenario(random);
    PackTrace together;
    runToStops(scenario, members, tankControl(1e-7), together);
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        PackTrace alone;
        runToStops(scenario, same(members[lane]), tankControl(1e-7), alone);
        for (std::size_t i = 0; i < kStateCount; ++i) {
            EXPECT_NEAR(together.end[i][lane], alone.end[i][0], 2e-6);
            EXPECT_EQ(alone.end[i][0], alone.end[i][kLanes - 1]);
        }
    }
}

TEST(Run, AnImpossibleMemberFailsAlone)
{
    Random random(6);
    Members members = crowd(random);
    const Scenario scenario = wildScenario(random);
    members[1].ammoniaGrowth_per_d = std::numeric_limits<double>::quiet_NaN();
    PackTrace trace;
    runToStops(scenario, members, tankControl(1e-4), trace);
    EXPECT_EQ(trace.failed, (std::array<bool, kLanes>{false, true}));
    PackTrace alone;
    runToStops(scenario, same(members[2]), tankControl(1e-4), alone);
    EXPECT_EQ(trace.end[kNitrate][2], alone.end[kNitrate][0]);
}

TEST(Run, OutlookMultipliersApplyFromTheirDay)
{
    Member m = sterile();
    m.fastSoil_per_d = 0.1;
    m.start[kFastSoil] = 10.0;
    m.laterSoil = 2.0;
    Scenario scenario;
    scenario.endDay = 2.0;
    scenario.events = {{1.0, EventKind::OutlookBegins, 0.0, 0}};
    PackTrace trace;
    runToStops(scenario, same(m), tankControl(1e-8), trace);
    EXPECT_NEAR(trace.end[kFastSoil][0], 10.0 * std::exp(-0.3), 1e-7);
}

TEST(Run, InjectedCo2SlowsTheCycleByItsShareOfTheDay)
{
    Member m;
    m.start[kTotalAmmonia] = 3.0;
    m.start[kAmmoniaCapacity] = 0.2;
    m.start[kAlkalinity] = 0.7;
    m.co2On_mg_per_L = 30.0;
    Scenario scenario;
    scenario.endDay = 3.0;
    PackTrace off;
    runToStops(scenario, same(m), tankControl(1e-7), off);
    scenario.co2Injected = true;
    scenario.co2ShareOfDay = 0.3;
    PackTrace some;
    runToStops(scenario, same(m), tankControl(1e-7), some);
    scenario.co2ShareOfDay = 1.0;
    PackTrace always;
    runToStops(scenario, same(m), tankControl(1e-7), always);
    EXPECT_LT(off.end[kTotalAmmonia][0], some.end[kTotalAmmonia][0]);
    EXPECT_LT(some.end[kTotalAmmonia][0], always.end[kTotalAmmonia][0]);
}

} // namespace
} // namespace littoral::sim
