// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/random.h"
#include "ui/paint/decimate.h"
#include "ui/paint/line_labels.h"
#include "ui/paint/trend_layout.h"
#include "ui/paint/trend_painter.h"

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace littoral::ui {
namespace {

using namespace Qt::StringLiterals;
using facade::TrendPoint;

constexpr int kWidth = 700;
constexpr int kHeight = 240;

/// A wandering line with spikes, unevenly spaced in time.
std::vector<TrendPoint> wandering(std::size_t count, std::uint64_t seed)
{
    Random random(seed);
    std::vector<TrendPoint> points;
    double value = 50.0;
    qint64 at = 0;
    for (std::size_t i = 0; i < count; ++i) {
        value = std::clamp(value + (random.uniform() - 0.5) * 6.0, 0.0, 100.0);
        at += 1000 + static_cast<qint64>(random.uniform() * 240'000);
        points.push_back({at, random.uniform() < 0.002 ? 100.0 * random.uniform() : value});
    }
    return points;
}

AxisView axisOver(qint64 from, qint64 to)
{
    AxisView axis;
    axis.from = from;
    axis.to = to;
    axis.left = 0.0;
    axis.width = kWidth;
    return axis;
}

QImage drawn(const std::vector<QPointF>& line)
{
    QImage image(kWidth, kHeight, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    drawSpans(painter, columnSpans(line, 0, kWidth), Qt::black);
    return image;
}

/// The same line as the toolkit draws it, piece by piece.
QImage drawnByToolkit(const std::vector<QPointF>& line)
{
    QImage image(kWidth, kHeight, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(Qt::black, 1));
    painter.drawPolyline(line.data(), static_cast<int>(line.size()));
    return image;
}

bool isInk(const QImage& image, int x, int y)
{
    return image.rect().contains(x, y) && image.pixel(x, y) == qRgb(0, 0, 0);
}

/// Inked pixels of `a` that have no ink of `b` within a pixel.
int strayPixels(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            bool near = !isInk(a, x, y);
            for (int i = 0; i < 9 && !near; ++i) {
                near = isInk(b, x + i % 3 - 1, y + i / 3 - 1);
            }
            count += near ? 0 : 1;
        }
    }
    return count;
}

std::vector<QPointF> placed(const std::vector<TrendPoint>& points, const AxisView& axis)
{
    std::vector<QPointF> line;
    for (const TrendPoint& point : points) {
        line.emplace_back(axis.x(point.at, 0), kHeight - 5.0 - point.value / 100.0 * (kHeight - 10.0));
    }
    return line;
}

int differingPixels(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            count += a.pixel(x, y) == b.pixel(x, y) ? 0 : 1;
        }
    }
    return count;
}

TEST(Decimation, TheThinnedLineIsTheSamePictureAsTheWholeOne)
{
    for (const std::uint64_t seed : {1u, 2u, 3u}) {
        const auto points = wandering(60'000, seed);
        const PointIndex index(points);
        // The whole run, and a third of it seen closer.
        for (const auto& [from, to] : {std::pair(0.0, 1.0), std::pair(0.4, 0.73)}) {
            const double last = static_cast<double>(points.back().at);
            const AxisView axis = axisOver(static_cast<qint64>(from * last), static_cast<qint64>(to * last));
            const auto [first, end] = shownRun(index, axis, 0);
            std::vector<TrendPoint> kept;
            for (const std::size_t i : decimated(index, first, end, axis, 0)) {
                kept.push_back(points[i]);
            }
            EXPECT_LT(kept.size(), 4u * kWidth + 16u);
            const std::vector<TrendPoint> whole(points.begin() + static_cast<std::ptrdiff_t>(first),
                                                points.begin() + static_cast<std::ptrdiff_t>(end));
            EXPECT_GT(whole.size(), 5u * kept.size());
            EXPECT_EQ(differingPixels(drawn(placed(whole, axis)), drawn(placed(kept, axis))), 0)
                << "seed " << seed << ", from " << from;
        }
    }
}

TEST(Decimation, WhatIsDrawnIsTheLineTheToolkitDraws)
{
    // Spans are our own way to draw: an independent one agrees to a pixel, dense or not.
    for (const std::size_t count : {120u, 3'000u, 60'000u}) {
        const auto points = wandering(count, 5);
        const auto line = placed(points, axisOver(0, points.back().at));
        EXPECT_EQ(strayPixels(drawn(line), drawnByToolkit(line)), 0) << count;
        EXPECT_EQ(strayPixels(drawnByToolkit(line), drawn(line)), 0) << count;
    }
}

TEST(Decimation, DroppingAnExtremeWouldShow)
{
    // The check of the check: every second kept point only, and the pictures differ.
    const auto points = wandering(60'000, 4);
    const PointIndex index(points);
    const AxisView axis = axisOver(0, points.back().at);
    std::vector<TrendPoint> kept;
    const auto places = decimated(index, 0, points.size(), axis, 0);
    for (std::size_t i = 0; i < places.size(); i += 2) {
        kept.push_back(points[places[i]]);
    }
    EXPECT_GT(differingPixels(drawn(placed(points, axis)), drawn(placed(kept, axis))), 100);
}

TEST(Decimation, ExtremesOfAnyRunAreThoseOfAWalkThroughIt)
{
    const auto points = wandering(5'000, 9);
    const PointIndex index(points);
    Random random(17);
    for (int round = 0; round < 300; ++round) {
        const auto a = static_cast<std::size_t>(random.uniform() * 4999.0);
        const auto b = static_cast<std::size_t>(random.uniform() * 4999.0);
        const std::size_t first = std::min(a, b);
        const std::size_t last = std::max(a, b) + 1;
        const Extremes found = index.extremes(first, last);
        const auto begin = points.begin() + static_cast<std::ptrdiff_t>(first);
        const auto end = points.begin() + static_cast<std::ptrdiff_t>(last);
        const auto low = std::ranges::min_element(begin, end, {}, &TrendPoint::value);
        const auto high = std::ranges::max_element(begin, end, {}, &TrendPoint::value);
        ASSERT_EQ(points[found.lowest].value, low->value);
        ASSERT_EQ(points[found.highest].value, high->value);
        ASSERT_GE(found.lowest, first);
        ASSERT_LT(found.highest, last);
    }
}

TEST(TrendScaleTest, LinearLeavesRoomAboveAndLogarithmicHasDecades)
{
    const TrendScale line = linearScale(0.0, 4.0, 6);
    EXPECT_EQ(line.low, 0.0);
    EXPECT_GT(line.high, 4.0);
    EXPECT_LE(line.ticks.back(), line.high);
    EXPECT_DOUBLE_EQ(line.y(0.0, 10, 110), 110.0);
    const TrendScale log = logScale(0.03, 40.0, 5);
    EXPECT_TRUE(log.logarithmic);
    EXPECT_LE(log.low, 0.03);
    EXPECT_GT(log.high, 40.0);
    // Equal ratios are equal heights.
    EXPECT_NEAR(log.share(10.0) - log.share(1.0), log.share(1.0) - log.share(0.1), 1e-12);
    EXPECT_DOUBLE_EQ(log.share(0.0), 0.0) << "zero lies on the bottom";
    EXPECT_TRUE(std::ranges::is_sorted(log.ticks));
}

facade::TrendModel threeTanks()
{
    facade::TrendModel model;
    for (const QString& name : {u"Slate Ford"_s, u"Alder Shelf"_s, u"Mill Race"_s}) {
        facade::TrendTank tank;
        tank.tank.value = static_cast<qint64>(model.tanks.size()) + 1;
        tank.name = tank.shortName = name;
        tank.flooded = static_cast<qint64>(model.tanks.size()) * 3 * kDayMs;
        model.tanks.push_back(tank);
    }
    model.parameters = {{u"no2"_s, u"Nitrite"_s, u"NO₂"_s, u"mg/L"_s, 2, 0.2},
                        {u"ph"_s, u"pH"_s, u"pH"_s, u"pH"_s, 2, {}}};
    for (std::size_t parameter = 0; parameter < 2; ++parameter) {
        for (std::size_t tank = 0; tank < 3; ++tank) {
            facade::TrendSeries series;
            series.parameter = parameter;
            series.tank = tank;
            for (int day = 0; day < 20; ++day) {
                const double value =
                    parameter == 0 ? 0.1 * (day + 1) * static_cast<double>(tank + 1) : 6.5 + 0.02 * day;
                series.points.push_back({model.tanks[tank].flooded + day * kDayMs, value});
                series.intervals.push_back({value, value, record::Censoring::None});
                series.readings.push_back({day + 1});
            }
            model.series.push_back(std::move(series));
        }
    }
    return model;
}

class TrendLayoutTest : public ::testing::Test
{
protected:
    TrendLayoutTest()
        : m_theme(Scheme::Light)
        , m_metrics(m_theme)
        , m_drawing(threeTanks())
    {
        m_axis.to = 30 * kDayMs;
        m_axis.now = 22 * kDayMs;
    }
    TrendLayout layout(TrendArrangement arrangement, QSizeF size = {900, 800})
    {
        m_options.arrangement = arrangement;
        return layOutTrends(m_drawing, m_options, m_metrics, m_axis, size);
    }

    Theme m_theme;
    LaneMetrics m_metrics;
    TrendDrawing m_drawing;
    TrendOptions m_options;
    AxisView m_axis;
};

TEST_F(TrendLayoutTest, EachArrangementHasItsPanels)
{
    const TrendLayout overlay = layout(TrendArrangement::Overlay);
    ASSERT_EQ(overlay.panels.size(), 2u);
    EXPECT_EQ(overlay.panels[0].series.size(), 3u);
    EXPECT_EQ(overlay.events.size(), 3u);
    const TrendLayout stacked = layout(TrendArrangement::Stacked);
    ASSERT_EQ(stacked.panels.size(), 6u);
    EXPECT_EQ(stacked.panels[1].tank, std::size_t(1));
    EXPECT_EQ(stacked.columns.size(), 1u);
    const TrendLayout grid = layout(TrendArrangement::Grid);
    ASSERT_EQ(grid.panels.size(), 6u);
    ASSERT_EQ(grid.columns.size(), 3u);
    EXPECT_LT(grid.columns[0].axis.right(), grid.columns[1].axis.left);
}

TEST_F(TrendLayoutTest, PanelsOfOneParameterShareTheirScaleAndNoneOverlap)
{
    for (const auto arrangement : {TrendArrangement::Stacked, TrendArrangement::Grid}) {
        const TrendLayout made = layout(arrangement);
        for (std::size_t i = 0; i < made.panels.size(); ++i) {
            for (std::size_t j = i + 1; j < made.panels.size(); ++j) {
                const TrendPanelBox& a = made.panels[i];
                const TrendPanelBox& b = made.panels[j];
                EXPECT_FALSE(a.title.united(a.plot).intersects(b.title.united(b.plot)));
                if (a.parameter == b.parameter) {
                    EXPECT_EQ(a.scale.high, b.scale.high);
                    EXPECT_EQ(a.scale.low, b.scale.low);
                }
            }
        }
    }
}

TEST_F(TrendLayoutTest, ATooLowViewGrowsInsteadOfSquashing)
{
    const TrendLayout made = layout(TrendArrangement::Stacked, {600, 100});
    EXPECT_GT(made.height, 400.0);
    for (const TrendPanelBox& panel : made.panels) {
        EXPECT_GE(panel.plot.height(), 50.0);
    }
    EXPECT_LE(made.columns.front().axisRow.bottom(), made.height + 0.5);
}

TEST_F(TrendLayoutTest, AtEqualAgeTheSameDayIsTheSamePlace)
{
    m_axis.mode = AxisMode::Age;
    const TrendLayout made = layout(TrendArrangement::Overlay);
    const AxisView& axis = made.columns.front().axis;
    const auto& series = m_drawing.model.series;
    EXPECT_NEAR(axis.x(series[0].points[5].at, m_drawing.model.tanks[0].flooded),
                axis.x(series[2].points[5].at, m_drawing.model.tanks[2].flooded), 1e-9);
}

TEST_F(TrendLayoutTest, TanksAreToldApartWithoutColour)
{
    const TankStyle selected = tankStyle(m_drawing.model, 0, 0);
    const TankStyle second = tankStyle(m_drawing.model, 1, 0);
    const TankStyle third = tankStyle(m_drawing.model, 2, 0);
    EXPECT_GT(selected.width, second.width);
    EXPECT_NE(second.dash, third.dash);
    m_drawing.model.tanks[1].earlier = true;
    EXPECT_TRUE(tankStyle(m_drawing.model, 1, 0).open);
}

TEST(LineLabels, NamesKeepOffOneAnotherAndInsideThePlot)
{
    std::vector<NamedLine> lines(3);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        for (int x = 0; x <= 400; x += 20) {
            lines[i].points.emplace_back(x, 100.0 + static_cast<double>(i) * 8.0 + 30.0 * std::sin(x / 60.0));
        }
        lines[i].text = QSizeF(70, 14);
    }
    const QRectF plot(0, 0, 400, 220);
    const auto placed = placeLineLabels(lines, plot, 5.0);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        ASSERT_TRUE(placed[i]);
        EXPECT_TRUE(plot.contains(*placed[i]));
        for (std::size_t j = i + 1; j < placed.size(); ++j) {
            EXPECT_FALSE(placed[i]->intersects(*placed[j]));
        }
    }
}

TEST(LineLabels, ALineWithoutPointsHasNoName)
{
    const auto placed = placeLineLabels({{{}, QSizeF(60, 14)}}, QRectF(0, 0, 300, 100), 5.0);
    EXPECT_FALSE(placed.front());
}

TEST_F(TrendLayoutTest, PaintingLeavesInkInEveryPanel)
{
    TimeAxis axis;
    axis.setNow(22 * kDayMs);
    axis.setRange(0, 30 * kDayMs);
    m_axis = axis.view(0, 900);
    for (const auto arrangement : {TrendArrangement::Overlay, TrendArrangement::Stacked, TrendArrangement::Grid}) {
        const TrendLayout made = layout(arrangement);
        QImage image(900, static_cast<int>(made.height), QImage::Format_RGB32);
        image.fill(m_theme[Token::Panel]);
        {
            QPainter painter(&image);
            TrendPainter(m_theme, m_metrics, m_drawing, m_options, made, 0).paint(painter, axis);
        }
        for (const TrendPanelBox& panel : made.panels) {
            const QColor hue = m_theme.tokens().parameter(m_drawing.model.parameters[panel.parameter].key);
            int ink = 0;
            const QRect area = panel.plot.toRect() & image.rect();
            for (int y = area.top(); y <= area.bottom(); ++y) {
                for (int x = area.left(); x <= area.right(); ++x) {
                    ink += image.pixelColor(x, y) == hue ? 1 : 0;
                }
            }
            EXPECT_GT(ink, 30);
        }
    }
}

} // namespace
} // namespace littoral::ui
