// SPDX-License-Identifier: GPL-3.0-or-later
// Floors of the window, each beside its bar: start to the first complete Lanes picture of the sample row, memory of
// the workbench on it, a frame of panning and of zooming 24 lanes of two years. Offscreen, software raster. The start
// is measured in fresh processes, the frames by Google Benchmark on the 95th percentile.
#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "core/facade/sample_row.h"
#include "tests/ui/support/lane_demo.h"
#include "ui/frame/file_ask.h"
#include "ui/frame/main_window.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/style/littoral_style.h"
#include "ui/widgets/lanes/lane_view.h"

#include <QApplication>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimeZone>
#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <functional>

namespace {

using namespace littoral;
using namespace Qt::StringLiterals;
using Clock = std::chrono::steady_clock;

constexpr double kStartBar_ms = 600.0;
constexpr double kFrameBar_ms = 16.0;
constexpr double kMemoryBar_MB = 150.0;
constexpr int kStarts = 5;
constexpr int kYears_d = 730;
constexpr int kLanes = 24;
constexpr QSize kWindow(1600, 1000);

double msSince(Clock::time_point start)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// "VmRSS" or "VmHWM" of this process, MB (proc(5): kB).
double memoryMB(const QByteArray& what)
{
    QFile file(u"/proc/self/status"_s);
    if (file.open(QIODevice::ReadOnly)) {
        for (const QByteArray& line : file.readAll().split('\n')) {
            if (line.startsWith(what + ':')) {
                return line.simplified().split(' ').value(1).toDouble() / 1024.0;
            }
        }
    }
    return 0.0;
}

record::Moment sampleNow()
{
    return record::Moment::fromIso(u"2026-11-25T07:40:00Z"_s);
}

bool makeStore(const QString& path)
{
    const record::FixedClock clock(sampleNow());
    facade::Keeper keeper(clock);
    return keeper.create(path) && facade::makeSampleRow(keeper, clock.now());
}

/// The workbench as its main() puts it together, up to a whole picture; then with all forecasts, every page seen once.
int start(QApplication& app, const QString& path, Clock::time_point begun)
{
    ui::Theme theme(ui::Scheme::Light);
    ui::applyTheme(app, theme);
    const record::FixedClock clock(sampleNow());
    facade::Keeper keeper(clock);
    facade::Forecasts forecasts(keeper);
    ui::FileAsk ask;
    ui::MainWindow window(keeper, forecasts, theme, ask);
    window.resize(kWindow);
    window.openAtStart(path, false);
    window.show();
    QCoreApplication::processEvents();
    const bool whole = window.findChild<ui::LanesPage*>()->view().lanes().size() == 6 && !window.grab().isNull();
    const double first = msSince(begun);
    forecasts.refresh();
    forecasts.wait();
    QCoreApplication::processEvents();
    const bool forecast = !window.grab().isNull();
    const double all = msSince(begun);
    const double lanes = memoryMB("VmRSS");
    using Page = ui::MainWindow::Page;
    for (const Page page :
         {Page::Trends, Page::Cycle, Page::History, Page::Rounds, Page::Stock, Page::Bench, Page::Guide, Page::Lanes}) {
        window.showPage(page);
        QCoreApplication::processEvents();
        window.grab();
    }
    std::printf("%.1f %.1f %.1f %.1f %.1f\n", first, all, lanes, memoryMB("VmRSS"), memoryMB("VmHWM"));
    return whole && forecast ? 0 : 1;
}

QList<double> measuredStart(const QString& store)
{
    QProcess child;
    child.start(QCoreApplication::applicationFilePath(), {u"--start"_s, store});
    if (!child.waitForFinished(60'000) || child.exitCode() != 0) {
        std::fprintf(stderr, "the start failed: %s\n", child.readAllStandardError().constData());
        return {};
    }
    QList<double> numbers;
    for (const QByteArray& word : child.readAllStandardOutput().simplified().split(' ')) {
        numbers << word.toDouble();
    }
    return numbers;
}

double median(QList<double> values)
{
    std::ranges::sort(values);
    return values.value(values.size() / 2);
}

void row(const char* what, double value, const char* unit, double bar)
{
    std::printf("%-58s %8.1f %-3s bar %5.0f %-3s %s\n", what, value, unit, bar, unit, value < bar ? "met" : "MISSED");
}

bool printStart()
{
    const QTemporaryDir folder;
    const QString store = folder.filePath(u"sample.littoral"_s);
    if (!makeStore(store)) {
        std::fprintf(stderr, "the sample row was not made\n");
        return false;
    }
    QList<double> first, all, lanes, resident, peak;
    for (int i = 0; i < kStarts; ++i) {
        const QList<double> numbers = measuredStart(store);
        if (numbers.size() != 5) {
            return false;
        }
        first << numbers[0];
        all << numbers[1];
        lanes << numbers[2];
        resident << numbers[3];
        peak << numbers[4];
    }
    std::printf("Workbench on the sample row, median of %d starts, %d x %d px offscreen\n", kStarts, kWindow.width(),
                kWindow.height());
    row("start to the first complete Lanes picture", median(first), "ms", kStartBar_ms);
    std::printf("%-58s %8.1f ms\n", "  the same with all forecasts worked out", median(all));
    row("resident memory (VmRSS) with Lanes and forecasts", median(lanes), "MB", kMemoryBar_MB);
    row("resident memory (VmRSS) after every page", median(resident), "MB", kMemoryBar_MB);
    row("peak resident memory (VmHWM)", median(peak), "MB", kMemoryBar_MB);
    return true;
}

/// 24 lanes of two years, all of it in the range; every frame is painted at once.
class Desk
{
public:
    Desk()
        : m_theme(ui::Scheme::Light)
        , m_view(m_theme, m_axis)
    {
        m_axis.setZone(QTimeZone(3600));
        m_axis.setNow(ui::demo::now());
        m_axis.showAround(kYears_d, 60);
        m_view.resize(1392, 850);
        m_view.setLanes(ui::demo::manyLanes(kLanes, kYears_d));
        m_view.show();
        QCoreApplication::processEvents();
    }
    double frame()
    {
        const auto begun = Clock::now();
        m_view.viewport()->repaint();
        return msSince(begun);
    }
    ui::TimeAxis& axis() { return m_axis; }
    void showWhole() { m_axis.showAround(kYears_d, 60); }

private:
    ui::Theme m_theme;
    ui::TimeAxis m_axis;
    ui::LaneView m_view;
};

void frames(benchmark::State& state, const std::function<void(ui::TimeAxis&, int)>& step)
{
    Desk desk;
    desk.frame();
    std::vector<double> times;
    int count = 0;
    for (auto _ : state) {
        step(desk.axis(), count++);
        times.push_back(desk.frame());
    }
    std::ranges::sort(times);
    state.counters["p50_ms"] = times[times.size() / 2];
    state.counters["p95_ms"] = times[times.size() * 95 / 100];
    state.counters["bar_ms"] = kFrameBar_ms;
}

void panTwoYears(benchmark::State& state)
{
    frames(state, [](ui::TimeAxis& axis, int i) { axis.pan(i % 100 < 50 ? 0.004 : -0.004); });
}

void zoomTwoYears(benchmark::State& state)
{
    frames(state, [](ui::TimeAxis& axis, int i) { axis.zoom(0.7, i % 60 < 30 ? 0.95 : 1.0 / 0.95); });
}

BENCHMARK(panTwoYears)->Unit(benchmark::kMillisecond)->Iterations(200);
BENCHMARK(zoomTwoYears)->Unit(benchmark::kMillisecond)->Iterations(200);

} // namespace

int main(int argc, char** argv)
{
    const auto begun = Clock::now();
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    const QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
    QApplication app(argc, argv);
    const QStringList arguments = QApplication::arguments();
    if (arguments.value(1) == u"--start"_s) {
        return start(app, arguments.value(2), begun);
    }
    benchmark::Initialize(&argc, argv);
    if (!printStart()) {
        return 1;
    }
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
