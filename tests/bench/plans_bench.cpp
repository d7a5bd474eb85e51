// SPDX-License-Identifier: GPL-3.0-or-later
// What a keeper waits for on the Cycle page, on the members calibrated to one tank with 45 readings.
#include "core/forecast/contradiction.h"
#include "core/forecast/forecaster.h"
#include "core/forecast/plans.h"
#include "tests/forecast/cases.h"

#include <benchmark/benchmark.h>

namespace {

using namespace littoral;
using namespace littoral::forecast;

const GateRule kOrdinaryFish{"G2", 21.0, 0.2, 0.02, 0.1, 3.0};

Request request(TankCase tank)
{
    Request asked;
    asked.tank = std::move(tank);
    asked.gates = {{"G1", 7.0, 0.4, 0.02, 0.3, 1.0}, kOrdinaryFish};
    asked.load_mgN_per_L_d = 0.1;
    asked.seed = 3;
    return asked;
}

/// A young tank, where everything is still moving, and one with 45 readings.
Request young()
{
    return request(cases::fiveReadings());
}

Request wellRead()
{
    return request(cases::manyReadings(15, 21.0));
}

void plans(benchmark::State& state, const Request& asked)
{
    const Fit members = fit(asked).value();
    PlanQuestion question;
    question.plans = planGrid(asked.tank);
    question.gate = kOrdinaryFish;
    std::size_t count = 0;
    for (auto _ : state) {
        auto table = comparePlans(asked, members, question);
        count = table->outcomes.size();
        benchmark::DoNotOptimize(table);
    }
    state.counters["plans"] = static_cast<double>(count);
}
BENCHMARK_CAPTURE(plans, young, young())->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(plans, wellRead, wellRead())->Unit(benchmark::kMillisecond);

/// A dragged slider: one plan on `draws` members, bands and the plan's own row.
void slider(benchmark::State& state, const Request& asked)
{
    const Fit members = fit(asked).value();
    PlanQuestion question;
    question.plans = {{0.3, 3.0}};
    question.gate = kOrdinaryFish;
    question.draws = static_cast<int>(state.range(0));
    for (auto _ : state) {
        auto table = comparePlans(asked, members, question);
        Request changed = asked;
        changed.draws = question.draws;
        changed.tank = withChanges(asked.tank, changesOf(question.plans.front(), asked.tank, 70.0));
        auto answer = littoral::forecast::forecast(changed, members);
        benchmark::DoNotOptimize(table);
        benchmark::DoNotOptimize(answer);
    }
}
BENCHMARK_CAPTURE(slider, young, young())->Arg(120)->Arg(600)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(slider, wellRead, wellRead())->Arg(120)->Arg(600)->Unit(benchmark::kMillisecond);

/// One reading more, taken in by weighting the members, and a quick picture of it.
void oneReadingMore(benchmark::State& state)
{
    const Request asked = wellRead();
    Request before = asked;
    before.tank.readings.pop_back();
    const Fit members = fit(before).value();
    for (auto _ : state) {
        auto after = updated(members, asked, {asked.tank.readings.size() - 1});
        Request quick = asked;
        quick.draws = 200;
        auto answer = littoral::forecast::forecast(quick, after->value());
        benchmark::DoNotOptimize(answer);
    }
}
BENCHMARK(oneReadingMore)->Unit(benchmark::kMillisecond);

void explain(benchmark::State& state)
{
    const Request asked = wellRead();
    for (auto _ : state) {
        auto found = explainContradiction(asked);
        benchmark::DoNotOptimize(found);
    }
}
BENCHMARK(explain)->Unit(benchmark::kMillisecond);

} // namespace
