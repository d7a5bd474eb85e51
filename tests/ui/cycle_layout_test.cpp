// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/cycle_model.h"
#include "ui/paint/fan_layout.h"
#include "ui/paint/plan_scatter.h"

#include <QTimeZone>
#include <gtest/gtest.h>

namespace littoral::ui {
namespace {

using namespace Qt::StringLiterals;

constexpr qint64 kFlooded = 1'800'000'000'000;
constexpr qint64 kNow = kFlooded + 16 * kDayMs;

FanPanel panelOf(const QString& parameter, double peak)
{
    FanPanel panel;
    panel.parameter = parameter;
    panel.title = parameter;
    panel.unit = u"mg/L"_s;
    panel.decimals = 1;
    FanSeries series;
    series.parameter = parameter;
    for (int day = 0; day <= 16; ++day) {
        const double v = peak * day / 16.0;
        series.fitted.push_back({kFlooded + day * kDayMs, v, v, v, v, v});
    }
    for (int day = 16; day <= 44; ++day) {
        const double v = peak * (44 - day) / 28.0;
        series.future.push_back({kFlooded + day * kDayMs, v * 0.5, v * 0.8, v, v * 1.2, v * 1.5});
    }
    panel.series.push_back(series);
    return panel;
}

FanStackModel stack()
{
    FanStackModel model;
    model.flooded = kFlooded;
    for (const QString& key : {u"tan"_s, u"no2"_s, u"no3"_s}) {
        model.panels.push_back(panelOf(key, 4.0));
    }
    model.panels[1].share = 2.0;
    model.panels[1].readings.push_back({kNow - kDayMs, 6.0, 5.0, 7.0, record::Censoring::None, {}, false, u"six"_s});
    model.changes.push_back({kNow - 2 * kDayMs, 0.5, false, u"done"_s});
    model.changes.push_back({kNow + 2 * kDayMs, 0.3, true, u"planned"_s});
    return model;
}

AxisView axisView(qint64 from, qint64 to)
{
    return {AxisMode::Calendar, from, to, kNow, 0, 1000, QTimeZone::utc()};
}

class FanLayoutTest : public ::testing::TestWithParam<double>
{
protected:
    Theme m_theme{Scheme::Light, GetParam()};
    LaneMetrics m_metrics{m_theme};
};

TEST_P(FanLayoutTest, PanelsFollowOneAnotherWithoutOverlap)
{
    const FanStackModel model = stack();
    const FanStackLayout layout =
        layOutFans(model, m_metrics, axisView(kNow - 28 * kDayMs, kNow + 21 * kDayMs), {900, 700});
    ASSERT_EQ(layout.panels.size(), 3u);
    double above = layout.flagHeight;
    for (const FanBox& box : layout.panels) {
        EXPECT_GE(box.title.top(), above - 1e-9);
        EXPECT_GE(box.plot.top(), box.title.bottom() - 1e-9);
        EXPECT_GT(box.plot.height(), 20.0);
        above = box.plot.bottom();
    }
    EXPECT_GE(layout.changeTitle.top(), above);
    EXPECT_GE(layout.axisRow.top(), layout.changeRow.bottom() - 1e-9);
    EXPECT_LE(layout.axisRow.bottom(), layout.height + 1.0);
}

TEST_P(FanLayoutTest, AStackThatDoesNotFitAsksForMoreHeightInsteadOfCrushingPlots)
{
    const FanStackModel model = stack();
    const double least = leastFanHeight(model, m_metrics);
    const FanStackLayout layout =
        layOutFans(model, m_metrics, axisView(kNow - 28 * kDayMs, kNow + 21 * kDayMs), {900, 50});
    EXPECT_GE(layout.height, least);
    EXPECT_GT(layout.panels[0].plot.height(), 30.0);
}

INSTANTIATE_TEST_SUITE_P(Scales, FanLayoutTest, ::testing::Values(1.0, 1.5, 2.0));

TEST(FanLayout, SharesDivideTheHeightOfThePlots)
{
    const Theme theme(Scheme::Light);
    const FanStackModel model = stack();
    const FanStackLayout layout =
        layOutFans(model, LaneMetrics(theme), axisView(kNow - 28 * kDayMs, kNow + 21 * kDayMs), {900, 900});
    EXPECT_NEAR(layout.panels[1].plot.height() / layout.panels[0].plot.height(), 2.0, 0.1);
}

TEST(FanLayout, TheScaleHoldsReadingsWithTheirBarsAndTheOuterEdgeOfTheFan)
{
    const Theme theme(Scheme::Light);
    const FanStackModel model = stack();
    const FanStackLayout layout =
        layOutFans(model, LaneMetrics(theme), axisView(kNow - 28 * kDayMs, kNow + 21 * kDayMs), {900, 700});
    EXPECT_GE(layout.panels[1].scale.high, 7.0); // upper end of the reading's bar
    EXPECT_GE(layout.panels[0].scale.high, 6.0); // 1.5 x 4 at the first row of the fan
    EXPECT_GE(layout.panels[0].y(6.0), layout.panels[0].plot.top() - 1e-6);
}

TEST(FanLayout, WhatLiesBeforeTheFloodingIsLeftOutAndTheRestOfTheAxisKept)
{
    const AxisView wide = axisView(kNow - 28 * kDayMs, kNow + 21 * kDayMs);
    const AxisView cut = fromFlooding(wide, kFlooded);
    EXPECT_EQ(cut.to, wide.to);
    EXPECT_GT(cut.from, kFlooded - kDayMs);
    EXPECT_LT(cut.from, kFlooded);
    const AxisView late = axisView(kNow - 5 * kDayMs, kNow + 21 * kDayMs);
    EXPECT_EQ(fromFlooding(late, kFlooded), late);
}

TEST(FanLayout, AgeModePutsTheSameInstantAtTheSamePlaceForEqualRanges)
{
    AxisView age = axisView(0, 44 * kDayMs);
    age.mode = AxisMode::Age;
    const AxisView dates = axisView(kFlooded, kFlooded + 44 * kDayMs);
    EXPECT_NEAR(age.x(kNow, kFlooded), dates.x(kNow, kFlooded), 1e-9);
}

TEST(FanTable, EveryDayOfTheForecastHasItsMiddleAndRange)
{
    const FanStackModel model = stack();
    const PlainTable table = fanTable(model, QTimeZone::utc(), kNow);
    // Days 0 to 44, and the columns day, date, three panels by two, one of readings, changes.
    ASSERT_EQ(table.rows.size(), 45u);
    ASSERT_EQ(table.header.size(), 2 + 6 + 1 + 1);
    ASSERT_EQ(table.currentRow, 16);
    for (const QStringList& row : table.rows) {
        ASSERT_EQ(row.size(), table.header.size());
    }
    const QStringList& today = table.rows[16];
    EXPECT_EQ(today[0], u"16"_s);
    EXPECT_EQ(today[2], u"4.0"_s);
    EXPECT_EQ(today[3], u"2.0–6.0"_s);
    // A day of the past has the fitted middle and no range.
    EXPECT_EQ(table.rows[4][3], QString());
    EXPECT_FALSE(table.rows[4][2].isEmpty());
    // The reading stands on its own day, the planned change on its day.
    EXPECT_EQ(table.rows[15][6], u"6.0"_s);
    EXPECT_EQ(table.rows[14].back(), u"50 %"_s);
    EXPECT_EQ(table.rows[18].back(), u"30 % planned"_s);
}

TEST(FanTable, APlanThatIsLookedAtTakesThePlaceOfTheOneFollowed)
{
    FanStackModel model = stack();
    model.panels[0].series[0].preview = model.panels[0].series[0].future;
    for (LaneBand& band : model.panels[0].series[0].preview) {
        band.q50 = 9.0;
    }
    model.previewText = u"30 % every 3 days"_s;
    model.previewChanges.push_back({kNow + 3 * kDayMs, 0.2, true, u"looked at"_s});
    const PlainTable table = fanTable(model, QTimeZone::utc(), kNow);
    EXPECT_EQ(table.rows[20][2], u"9.0"_s);
    EXPECT_EQ(table.rows[18].back(), QString());
    EXPECT_EQ(table.rows[19].back(), u"20 % planned"_s);
}

TEST(PlanScatterLayout, MoreLitresStandFurtherRightAndMoreHoursHigher)
{
    const Theme theme(Scheme::Light);
    ScatterModel model;
    model.points = {{100, 50, false, true, u"A"_s, u"a"_s}, {300, 20, false, true, u"B"_s, u"b"_s}};
    const ScatterLayout layout = layOutScatter(model, LaneMetrics(theme), QRectF(0, 0, 400, 220));
    ASSERT_EQ(layout.at.size(), 2u);
    EXPECT_LT(layout.at[0].x(), layout.at[1].x());
    EXPECT_LT(layout.at[0].y(), layout.at[1].y());
    for (const QPointF& at : layout.at) {
        EXPECT_TRUE(layout.plot.adjusted(-1, -1, 1, 1).contains(at));
    }
    EXPECT_EQ(layout.hit(layout.at[1] + QPointF(3, 3), 12.0), std::optional<std::size_t>(1));
    EXPECT_FALSE(layout.hit(layout.at[1] + QPointF(60, 60), 12.0).has_value());
}

} // namespace
} // namespace littoral::ui
