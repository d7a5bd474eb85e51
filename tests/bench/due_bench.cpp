// SPDX-License-Identifier: GPL-3.0-or-later
// How long the due list of a row of 24 tanks takes with five years of record each: everything due and to come in two
// weeks, all tanks and the work for the whole row. The bar is 100 ms.
#include "core/care/due.h"
#include "core/care/work_template.h"
#include "core/facade/row_load.h"

#include <benchmark/benchmark.h>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

constexpr int kTanks = 24;
constexpr int kDays = 5 * 365;

/// Readings every second day, a change a week, upkeep, observations and ticks: about 5000 records a tank.
record::LayoutRecord fiveYears(qint64& id, record::TankId tank, const record::Moment& now)
{
    record::LayoutRecord layout;
    layout.layout.id = record::LayoutId{++id};
    layout.layout.tank = tank;
    layout.layout.flooded = now.plusDays(-kDays);
    layout.layout.co2 = record::Co2Mode::Pressurised;
    layout.layout.measuredNet_L = 60.0;
    const auto entry = [&](record::EntryKind kind, int day, const QString& subject) {
        record::Entry made;
        made.id = record::EntryId{++id};
        made.tank = tank;
        made.layout = layout.layout.id;
        made.kind = kind;
        made.at = layout.layout.flooded.plusDays(day);
        made.subject = subject;
        layout.entries.push_back(made);
        return layout.entries.size() - 1;
    };
    const QStringList parameters{u"no3"_s, u"po4"_s, u"ph"_s, u"kh"_s, u"gh"_s, u"temp"_s};
    for (int day = 1; day < kDays; day += 3) {
        for (const QString& parameter : parameters) {
            record::Reading reading;
            reading.id = record::ReadingId{++id};
            reading.tank = tank;
            reading.layout = layout.layout.id;
            reading.parameter = parameter;
            reading.at = layout.layout.flooded.plusDays(day);
            reading.value = reading.low = reading.high = 4.0;
            layout.readings.push_back(reading);
        }
    }
    const QStringList upkeep{u"glass"_s, u"outlets"_s, u"trim-stems"_s, u"filter-service"_s, u"algae-score"_s};
    for (int day = 7; day < kDays; day += 7) {
        layout.entries[entry(record::EntryKind::WaterChange, day, {})].fraction = 0.4;
        entry(record::EntryKind::Upkeep, day, upkeep[(day / 7) % upkeep.size()]);
        layout.entries[entry(record::EntryKind::Observation, day, u"alg_dust"_s)].severity = 1;
        layout.entries[entry(record::EntryKind::Dose, day, u"iron"_s)].amount = 2.0;
    }
    layout.entries[entry(record::EntryKind::Addition, 60, u"ember tetra"_s)].count = 12;
    for (int day = 30; day < kDays; day += 10) {
        record::Task task;
        task.id = record::TaskId{++id};
        task.tank = tank;
        task.layout = layout.layout.id;
        task.templateKey = u"heater-check"_s;
        task.due = layout.layout.flooded.localDate().addDays(day);
        task.state = record::TaskState::Done;
        task.closedAt = layout.layout.flooded.plusDays(day);
        layout.tasks.push_back(task);
    }
    return layout;
}

record::Row row24(const record::Moment& now)
{
    record::Row row;
    qint64 id = 1000;
    for (int i = 0; i < kTanks; ++i) {
        record::Tank tank;
        tank.id = record::TankId{++id};
        tank.name = u"Tank %1"_s.arg(i + 1);
        tank.position = i;
        row.tanks.push_back(tank);
        record::LayoutRecord layout = fiveYears(id, tank.id, now);
        row.layouts.emplace(layout.layout.id, std::move(layout));
    }
    record::sortRow(row);
    return row;
}

const record::Moment kNow = record::Moment::fromIso(u"2026-11-25T07:40:00Z"_s);

void dueListOf24TanksAndFiveYears(benchmark::State& state)
{
    const record::Row row = row24(kNow);
    const QDate until = kNow.localDate().addDays(14);
    std::size_t items = 0;
    for (auto _ : state) {
        const care::TemplateSet templates = care::templatesFor(row);
        items = care::rowWork(row, kNow, until).size();
        for (const record::Tank& tank : row.tanks) {
            items += care::dueWork(row, row.currentLayout(tank.id, kNow)->layout.id, kNow, until, templates).size();
        }
        benchmark::DoNotOptimize(items);
    }
    state.counters["items"] = static_cast<double>(items);
    state.counters["records"] = static_cast<double>(row.recordCount());
}
BENCHMARK(dueListOf24TanksAndFiveYears)->Unit(benchmark::kMillisecond);

/// The line of Lanes: minutes and litres of seven days.
void loadOfTheRow(benchmark::State& state)
{
    const record::Row row = row24(kNow);
    int minutes = 0;
    for (auto _ : state) {
        minutes = facade::rowLoad(row, kNow, 7).minutes(7);
        benchmark::DoNotOptimize(minutes);
    }
    state.counters["minutes"] = minutes;
}
BENCHMARK(loadOfTheRow)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
