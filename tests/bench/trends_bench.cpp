// SPDX-License-Identifier: GPL-3.0-or-later
// Drawing a million readings: first picture once they are in memory, then a step of panning, in milliseconds. Beside it
// the same with a general plotting library, where one was there when this was built. The fastest of several runs: what
// else the machine does only adds.
#include "core/base/random.h"
#include "ui/paint/trend_painter.h"

#ifdef LITTORAL_QCUSTOMPLOT
#include <qcustomplot.h>
#endif

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cstdio>
#include <functional>
#include <memory>
#include <vector>

namespace {

using namespace littoral;
using namespace littoral::ui;
using namespace Qt::StringLiterals;

constexpr std::size_t kReadings = 1'000'000;
constexpr int kWidth = 1200;
constexpr int kHeight = 500;
constexpr int kRuns = 15;
constexpr double kWindow = 0.3; // of the record, for panning
constexpr double kStep = 0.02;
constexpr double kFirstBar_ms = 60.0;
constexpr double kPanBar_ms = 20.0;
#ifdef LITTORAL_QCUSTOMPLOT
constexpr double kShareBar = 0.25; // of the other library's time
#endif

/// A reading every five minutes for nine and a half years, wandering.
facade::TrendModel millionReadings()
{
    Random random(7);
    facade::TrendModel model;
    facade::TrendTank tank;
    tank.name = tank.shortName = u"One tank"_s;
    model.tanks.push_back(tank);
    model.parameters.push_back({u"temp"_s, u"Temperature"_s, u"Temp"_s, u"°C"_s, 1, {}});
    facade::TrendSeries series;
    series.points.reserve(kReadings);
    double value = 24.0;
    for (std::size_t i = 0; i < kReadings; ++i) {
        value = std::clamp(value + (random.uniform() - 0.5) * 0.2, 18.0, 30.0);
        series.points.push_back({static_cast<qint64>(i) * 300'000, value});
    }
    series.intervals.resize(kReadings);
    series.readings.resize(kReadings);
    model.series.push_back(std::move(series));
    return model;
}

const char* verdict(bool met)
{
    return met ? "met" : "MISSED";
}

double fastestMs(const std::function<void(int)>& work)
{
    std::vector<double> times;
    for (int run = 0; run < kRuns; ++run) {
        QElapsedTimer timer;
        timer.start();
        work(run);
        times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    return std::ranges::min(times);
}

struct Timings
{
    double first = 0.0, whole = 0.0, pan = 0.0;
};

Timings ours()
{
    const Theme theme(Scheme::Light);
    const LaneMetrics metrics(theme);
    TrendOptions options;
    options.events = false;
    TimeAxis axis;
    const facade::TrendModel model = millionReadings();
    const qint64 last = model.series.front().points.back().at;
    axis.setNow(last);
    QImage image(kWidth, kHeight, QImage::Format_ARGB32_Premultiplied);
    const auto paint = [&](const TrendDrawing& drawing) {
        image.fill(theme[Token::Panel]);
        QPainter painter(&image);
        const TrendLayout layout =
            layOutTrends(drawing, options, metrics, axis.view(0, kWidth), QSizeF(kWidth, kHeight));
        TrendPainter(theme, metrics, drawing, options, layout, 0).paint(painter, axis);
    };
    Timings made;
    std::vector<facade::TrendModel> copies(kRuns, model);
    axis.setRange(0, last);
    // The first picture: from the values in memory, the index included.
    std::vector<std::unique_ptr<TrendDrawing>> drawings; // putting them away is not timed
    made.first = fastestMs([&](int run) {
        drawings.push_back(std::make_unique<TrendDrawing>(std::move(copies[static_cast<std::size_t>(run)])));
        paint(*drawings.back());
    });
    const TrendDrawing drawing{facade::TrendModel(model)};
    made.whole = fastestMs([&](int) { paint(drawing); });
    const auto span = static_cast<double>(last);
    made.pan = fastestMs([&](int run) {
        const double from = 0.1 + kStep * run;
        axis.setRange(static_cast<qint64>(from * span), static_cast<qint64>((from + kWindow) * span));
        paint(drawing);
    });
    return made;
}

#ifdef LITTORAL_QCUSTOMPLOT
Timings theirs()
{
    const facade::TrendModel model = millionReadings();
    QVector<double> keys, values;
    for (const facade::TrendPoint& point : model.series.front().points) {
        keys << static_cast<double>(point.at);
        values << point.value;
    }
    const double last = keys.back();
    Timings made;
    // The values are in its own containers before the clock starts, as ours are in ours; adding them to the graph
    // counts.
    const auto fill = [&](QCustomPlot& plot) {
        plot.resize(kWidth, kHeight);
        plot.addGraph();
        plot.graph(0)->setPen(QPen(Qt::black, 1));
        plot.graph(0)->setData(keys, values, true);
        plot.yAxis->setRange(17, 31);
        plot.xAxis->setRange(0, last);
    };
    std::vector<std::unique_ptr<QCustomPlot>> plots;
    QPixmap picture;
    made.first = fastestMs([&](int) {
        plots.push_back(std::make_unique<QCustomPlot>());
        fill(*plots.back());
        picture = plots.back()->toPixmap(kWidth, kHeight);
    });
    QCustomPlot plot;
    fill(plot);
    made.whole = fastestMs([&](int) { picture = plot.toPixmap(kWidth, kHeight); });
    made.pan = fastestMs([&](int run) {
        const double from = 0.1 + kStep * run;
        plot.xAxis->setRange(from * last, (from + kWindow) * last);
        picture = plot.toPixmap(kWidth, kHeight);
    });
    return made;
}
#endif

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication app(argc, argv);
    std::printf("%zu readings, %d x %d px, fastest of %d runs, ms\n", kReadings, kWidth, kHeight, kRuns);
    std::printf("%-34s %10s %14s %14s\n", "", "first", "everything", "pan step");
    const Timings mine = ours();
    std::printf("%-34s %10.2f %14.2f %14.2f\n", "Trends painter", mine.first, mine.whole, mine.pan);
#ifdef LITTORAL_QCUSTOMPLOT
    const Timings other = theirs();
    std::printf("%-34s %10.2f %14.2f %14.2f\n", "QCustomPlot " QCUSTOMPLOT_VERSION_STR, other.first, other.whole,
                other.pan);
    std::printf("%-34s %10.1f %14.1f %14.1f\n", "ratio, other to ours", other.first / mine.first,
                other.whole / mine.whole, other.pan / mine.pan);
    std::printf("first picture at most %.2f of the other's: %.2f %s; pan step: %.2f %s\n", kShareBar,
                mine.first / other.first, verdict(mine.first <= kShareBar * other.first), mine.pan / other.pan,
                verdict(mine.pan <= kShareBar * other.pan));
#else
    std::printf("QCustomPlot was not there when this was built (libqcustomplot-dev): nothing to set beside it.\n");
#endif
    std::printf("first picture under %.0f ms: %s; pan step under %.0f ms: %s\n", kFirstBar_ms,
                verdict(mine.first < kFirstBar_ms), kPanBar_ms, verdict(mine.pan < kPanBar_ms));
    return 0;
}
