// SPDX-License-Identifier: GPL-3.0-or-later
// How long the parts of a forecast take, and our integrator against Boost.odeint at equal accuracy. Prints, judges
// nothing. Build it optimised; numbers from a Debug build mean nothing.
#include "core/forecast/forecaster.h"
#include "tests/bench/speed_ratio.h"
#include "tests/forecast/cases.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <vector>

namespace {

using namespace littoral;
using namespace littoral::forecast;

constexpr double kDisplayTolerance = 1e-4;
constexpr std::size_t kMembers = 256;

double worstOf(const std::vector<double>& values)
{
    return *std::max_element(values.begin(), values.end());
}

/// kLanes members to day 60 in lockstep; items are single runs.
void runLanes(benchmark::State& state, const bench::Ensemble& ensemble)
{
    sim::PackTrace trace;
    std::size_t next = 0;
    for (auto _ : state) {
        bench::runLanes(ensemble, next, kDisplayTolerance, trace);
        benchmark::DoNotOptimize(trace.end);
        next = (next + sim::kLanes) % ensemble.members.size();
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(sim::kLanes));
}

/// The same runs one by one with the tolerance that makes odeint as accurate.
void runOdeintAlone(benchmark::State& state, const bench::Ensemble& ensemble, const bench::Tolerance& tolerance)
{
    std::size_t next = 0;
    for (auto _ : state) {
        bench::runOdeint(ensemble, next, bench::Rates::Ours, tolerance, nullptr);
        next = (next + 1) % ensemble.members.size();
    }
    state.SetItemsProcessed(state.iterations());
}

/// One tank with 45 readings, calibrated and forecast for 28 days with two gates; each repetition has its own seed.
void calibrateAndForecast(benchmark::State& state)
{
    static std::uint64_t seed = 0;
    Request request;
    request.tank = cases::manyReadings(15, 21.0);
    request.gates = {{"G1", 7.0, 0.4, 0.02, 0.3, 3.0}, {"G2", 21.0, 0.2, 0.01, 0.1, 7.0}};
    for (auto _ : state) {
        request.seed = ++seed;
        auto result = littoral::forecast::forecast(request);
        benchmark::DoNotOptimize(result);
    }
}
BENCHMARK(calibrateAndForecast)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1)
    ->Repetitions(25)
    ->ComputeStatistics("worst", worstOf)
    ->ReportAggregatesOnly();

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

int main(int argc, char** argv)
{
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) {
        return 1;
    }
    const bench::Ensemble ensemble = bench::ensembleOf(kMembers);
    const bench::Tolerance tolerance = bench::reportSpeedRatio(ensemble, kDisplayTolerance);
    benchmark::RegisterBenchmark("runLanes", runLanes, ensemble)->Unit(benchmark::kMicrosecond);
    benchmark::RegisterBenchmark("runOdeintAlone", runOdeintAlone, ensemble, tolerance)->Unit(benchmark::kMicrosecond);
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}
