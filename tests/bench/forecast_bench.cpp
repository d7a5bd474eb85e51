// SPDX-License-Identifier: GPL-3.0-or-later
// How long the parts of a forecast take. Build optimised; numbers from a Debug build mean nothing.
#include "core/forecast/forecaster.h"
#include "core/forecast/priors.h"
#include "tests/forecast/cases.h"
#include "tests/forecast/reference_tank.h"

#include <benchmark/benchmark.h>

#include <array>
#include <vector>

namespace {

using namespace littoral;
using namespace littoral::forecast;

std::vector<sim::Member> someMembers(const TankCase& tank)
{
    const Prior prior(tank);
    Random random(3);
    const Rows z = priorDraws(prior, 64, random);
    std::vector<sim::Member> members;
    for (std::size_t i = 0; i < z.count(); ++i) {
        members.push_back(prior.member(z.row(i)));
    }
    return members;
}

/// Four members to day 60 in lockstep; items are single runs.
void runLanes(benchmark::State& state)
{
    const TankCase tank = cases::richSoil(7.0);
    const auto members = someMembers(tank);
    const sim::Scenario scenario = scenarioOf(tank, 60.0, false);
    const auto control = sim::tankControl(1e-4);
    sim::PackTrace trace;
    std::size_t next = 0;
    for (auto _ : state) {
        std::array<sim::Member, sim::kLanes> pack;
        for (auto& member : pack) {
            member = members[next++ % members.size()];
        }
        sim::runToStops(scenario, pack, control, trace);
        benchmark::DoNotOptimize(trace.end);
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(sim::kLanes));
}
BENCHMARK(runLanes)->Unit(benchmark::kMicrosecond);

/// The same runs one by one with Boost.odeint's controlled Dormand-Prince at the same tolerance.
void runOdeint(benchmark::State& state)
{
    const TankCase tank = cases::richSoil(7.0);
    const auto members = someMembers(tank);
    const sim::Scenario scenario = scenarioOf(tank, 60.0, false);
    std::size_t next = 0;
    for (auto _ : state) {
        double last = 0.0;
        reference::run(scenario, members[next++ % members.size()], 1e-4,
                       [&](double, const reference::Vector& y) { last = y[2]; });
        benchmark::DoNotOptimize(last);
    }
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(runOdeint)->Unit(benchmark::kMicrosecond);

/// One tank with 45 readings, calibrated and forecast for 28 days with two gates.
void calibrateAndForecast(benchmark::State& state)
{
    Request request;
    request.tank = cases::manyReadings(15, 21.0);
    request.gates = {{"G1", 7.0, 0.4, 0.02, 0.3, 3.0}, {"G2", 21.0, 0.2, 0.01, 0.1, 7.0}};
    for (auto _ : state) {
        ++request.seed;
        auto result = littoral::forecast::forecast(request);
        benchmark::DoNotOptimize(result);
    }
}
BENCHMARK(calibrateAndForecast)->Unit(benchmark::kMillisecond);

void forecastWithoutReadings(benchmark::State& state)
{
    Request request;
    request.tank = cases::richSoil(0.0);
    for (auto _ : state) {
        ++request.seed;
        auto result = littoral::forecast::forecast(request);
        benchmark::DoNotOptimize(result);
    }
}
BENCHMARK(forecastWithoutReadings)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
