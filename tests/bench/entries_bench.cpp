// SPDX-License-Identifier: GPL-3.0-or-later
// The record of a row of ten tanks, 100,000 lines, in its table: made, narrowed, sorted, and scrolled by a page and
// painted. A frame of scrolling has 16 ms.
#include "core/facade/keeper.h"
#include "ui/models/entries_model.h"
#include "ui/pages/editors/entries_panel.h"
#include "ui/style/littoral_style.h"

#include <QApplication>
#include <QImage>
#include <QScrollBar>
#include <QTableView>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>
#include <cstdio>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

constexpr int kTanks = 10;
constexpr int kReadings = 8'000; // each tank
constexpr int kEntries = 2'000;  // each tank

class BigRow
{
public:
    BigRow()
        : clock(record::Moment::fromIso(u"2026-11-25T07:40:00Z"_s))
        , keeper(clock)
    {
        if (!keeper.create(place.filePath(u"big.littoral"_s))) {
            std::fprintf(stderr, "The store could not be made.\n");
            std::exit(1);
        }
        for (int i = 0; i < kTanks; ++i) {
            fill(i);
        }
    }

    record::FixedClock clock;
    facade::Keeper keeper;

private:
    void fill(int number)
    {
        record::Tank tank;
        tank.name = u"Tank %1"_s.arg(number + 1);
        tank.length_cm = tank.depth_cm = tank.height_cm = 50;
        record::Layout layout;
        layout.flooded = clock.now().plusDays(-2000);
        const auto id = keeper.addTank(tank, layout);
        const record::LayoutId home = keeper.row().layoutsOf(*id).front()->layout.id;
        store::Edit edit(u"years of it"_s);
        for (int i = 0; i < kReadings; ++i) {
            record::Reading reading;
            reading.tank = *id;
            reading.layout = home;
            reading.parameter = i % 3 == 0 ? u"no2"_s : i % 3 == 1 ? u"no3"_s : u"tan"_s;
            reading.at = clock.now().plusDays(-1990.0 + i * 0.24);
            if (!record::setTypedValue(reading, QString::number(i % 20), u"mg/L N"_s)) {
                std::exit(1);
            }
            reading.note = i % 50 == 0 ? u"after the lights"_s : QString();
            reading.enteredAt = reading.at;
            edit.put(std::move(reading));
        }
        for (int i = 0; i < kEntries; ++i) {
            record::Entry entry;
            entry.tank = *id;
            entry.layout = home;
            entry.kind = i % 2 == 0 ? record::EntryKind::WaterChange : record::EntryKind::Observation;
            entry.fraction = i % 2 == 0 ? std::optional(0.4) : std::nullopt;
            entry.subject = i % 2 == 0 ? QString() : u"alg_dust"_s;
            entry.severity = i % 2 == 0 ? std::nullopt : std::optional(1);
            entry.at = entry.enteredAt = clock.now().plusDays(-1990.0 + i * 0.9);
            edit.put(std::move(entry));
        }
        if (!keeper.commit(edit)) {
            std::exit(1);
        }
    }

    QTemporaryDir place;
};

BigRow& bigRow()
{
    static BigRow row;
    return row;
}

void madeFromTheRow(benchmark::State& state)
{
    ui::EntriesModel model(bigRow().keeper);
    for (auto _ : state) {
        model.refresh();
        benchmark::DoNotOptimize(model.rowCount());
    }
    state.counters["lines"] = model.rowCount();
}
BENCHMARK(madeFromTheRow)->Unit(benchmark::kMillisecond);

void narrowedByText(benchmark::State& state, const char* text)
{
    ui::EntriesModel model(bigRow().keeper);
    int rows = 0;
    for (auto _ : state) {
        model.setFilter({});
        ui::EntriesFilter filter;
        filter.text = QString::fromLatin1(text);
        model.setFilter(filter);
        rows = model.rowCount();
    }
    state.counters["lines"] = rows;
}
BENCHMARK_CAPTURE(narrowedByText, tankAndParameter, "tank 7 nitrite")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(narrowedByText, wordsOfAnEntry, "dust")->Unit(benchmark::kMillisecond);

void sortedByKind(benchmark::State& state)
{
    ui::EntriesModel model(bigRow().keeper);
    for (auto _ : state) {
        model.sort(ui::EntriesModel::WhatColumn, Qt::AscendingOrder);
    }
}
BENCHMARK(sortedByKind)->Unit(benchmark::kMillisecond);

void scrolledByAPage(benchmark::State& state)
{
    ui::Theme theme(ui::Scheme::Light);
    ui::EntriesPanel panel(bigRow().keeper, theme);
    panel.resize(1390, 900);
    panel.setTank({});
    panel.show();
    QCoreApplication::processEvents();
    QTableView* table = panel.table();
    QScrollBar* bar = table->verticalScrollBar();
    QImage picture(table->viewport()->size(), QImage::Format_RGB32);
    for (auto _ : state) {
        bar->setValue(bar->value() + bar->pageStep() > bar->maximum() ? 0 : bar->value() + bar->pageStep());
        table->viewport()->render(&picture);
    }
    state.counters["rows on show"] = bar->pageStep();
}
BENCHMARK(scrolledByAPage)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication app(argc, argv);
    ui::Theme theme(ui::Scheme::Light);
    ui::applyTheme(app, theme);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
