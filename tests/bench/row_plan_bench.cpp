// SPDX-License-Identifier: GPL-3.0-or-later
// How long the water of the coming two weeks takes to reckon for a row of 24 tanks with a year's record and a daily
// dose each. The bar is 50 ms.
#include "core/facade/row_plan.h"

#include <benchmark/benchmark.h>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

constexpr int kTanks = 24;
constexpr int kDays = 365;

record::LayoutRecord year(qint64& id, record::TankId tank, record::SourceWaterId source, const record::Moment& now)
{
    record::LayoutRecord layout;
    layout.layout.id = record::LayoutId{++id};
    layout.layout.tank = tank;
    layout.layout.flooded = now.plusDays(-kDays);
    layout.layout.source = source;
    layout.layout.measuredNet_L = 60.0 + static_cast<double>(id % 7) * 40.0;
    for (int day = 0; day < kDays; day += 2) {
        record::Reading reading;
        reading.id = record::ReadingId{++id};
        reading.tank = tank;
        reading.layout = layout.layout.id;
        reading.parameter = day % 4 == 0 ? u"no3"_s : u"tan"_s;
        reading.at = layout.layout.flooded.plusDays(day);
        reading.value = reading.low = reading.high = day % 4 == 0 ? 4.0 : 0.0;
        layout.readings.push_back(reading);
    }
    for (int day = 7; day < kDays; day += 7) {
        record::Entry entry;
        entry.id = record::EntryId{++id};
        entry.tank = tank;
        entry.layout = layout.layout.id;
        entry.kind = record::EntryKind::WaterChange;
        entry.at = layout.layout.flooded.plusDays(day);
        entry.fraction = 0.4;
        layout.entries.push_back(entry);
    }
    record::DoseRegimen mix;
    mix.id = record::RegimenId{++id};
    mix.tank = tank;
    mix.layout = layout.layout.id;
    mix.name = u"mixture"_s;
    mix.nitrate_mg_per_mL = 20.0;
    mix.amount = 4.0;
    mix.from = layout.layout.flooded.localDate();
    layout.regimens.push_back(mix);
    return layout;
}

record::Row row24(const record::Moment& now)
{
    record::Row row;
    qint64 id = 1000;
    for (const auto& [kind, name] :
         {std::pair{record::SourceKind::Tap, u"tap"_s}, std::pair{record::SourceKind::ReverseOsmosis, u"osmosis"_s},
          std::pair{record::SourceKind::Blend, u"blend"_s}}) {
        record::SourceWater source;
        source.id = record::SourceWaterId{++id};
        source.name = name;
        source.kind = kind;
        if (kind == record::SourceKind::Tap) {
            source.alkalinity_meq_per_L = 4.0;
        }
        row.sources.push_back(source);
    }
    record::SourceWater& blend = row.sources.back();
    blend.firstPart = row.sources[0].id;
    blend.secondPart = row.sources[1].id;
    blend.firstShare = 0.3;
    for (int i = 0; i < kTanks; ++i) {
        record::Tank tank;
        tank.id = record::TankId{++id};
        tank.name = u"Tank %1"_s.arg(i + 1);
        tank.position = i;
        row.tanks.push_back(tank);
        record::LayoutRecord layout = year(id, tank.id, row.sources[static_cast<std::size_t>(i % 3)].id, now);
        row.layouts.emplace(layout.layout.id, std::move(layout));
    }
    record::sortRow(row);
    return row;
}

void twoWeeksOf24Tanks(benchmark::State& state)
{
    const record::Moment now = record::Moment::fromIso(u"2026-11-25T07:40:00Z"_s);
    const record::Row row = row24(now);
    facade::RowPlanOptions options;
    options.conditioner_mL_per_100L = 5.0;
    double litres = 0.0;
    for (auto _ : state) {
        litres = facade::rowPlan(row, now, options).litres;
        benchmark::DoNotOptimize(litres);
    }
    state.counters["litres"] = litres;
}
BENCHMARK(twoWeeksOf24Tanks)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
