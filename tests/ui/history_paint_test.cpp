// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/age_chart.h"
#include "ui/paint/history_strip.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr qint64 kNoon = 1'764'072'000'000; // 2025-11-25 12:00 UTC

facade::CaseStrip strip()
{
    facade::CaseStrip made;
    made.flooded = kNoon - 90 * kDayMs;
    made.from = kNoon - 30 * kDayMs;
    made.onset = kNoon - 9 * kDayMs;
    made.bracket = u"What changed, 26 Oct to 16 Nov"_s;
    made.onsetText = u"first seen 16 Nov"_s;
    facade::StripSeries series;
    series.series.parameter = u"kh"_s;
    series.series.name = u"Carbonate hardness"_s;
    series.series.unitLabel = u"dKH"_s;
    for (int day = -40; day <= 0; day += 5) {
        facade::LaneMark mark;
        mark.at = kNoon + day * kDayMs;
        mark.value = day < -12 ? 3.1 : 4.6;
        mark.sentence = u"KH"_s;
        series.series.marks.push_back(mark);
        series.refs.push_back({{}, record::ReadingId{100 + day}, mark.at});
    }
    made.series.push_back(series);
    facade::LaneEvent change;
    change.at = kNoon - 12 * kDayMs;
    change.glyph = facade::Glyph::WaterChange;
    change.fraction = 0.5;
    change.word = u"50"_s;
    change.sentence = u"Water change 50 %"_s;
    change.entry = record::EntryId{7};
    made.events.push_back(change);
    return made;
}

QImage painted(const Theme& theme, const TimeAxis& axis, const facade::CaseStrip& what,
               const std::vector<facade::RecordRef>& marked, double width)
{
    const LaneMetrics metrics(theme);
    const StripLayout layout = layOutStrip(what, metrics, axis.view(0, 1), width);
    QImage image(QSize(static_cast<int>(width), static_cast<int>(layout.height)), QImage::Format_RGB32);
    image.fill(theme[Token::Panel]);
    QPainter painter(&image);
    const StripPainter strip(theme, metrics, what, layout);
    strip.paint(painter, axis);
    strip.paintMarked(painter, marked);
    return image;
}

class HistoryPaintTest : public ::testing::Test
{
protected:
    HistoryPaintTest()
    {
        m_axis.setZone(QTimeZone::utc());
        m_axis.setNow(kNoon);
        m_axis.showAround(45, 14);
    }
    TimeAxis m_axis;
};

} // namespace

TEST_F(HistoryPaintTest, LayoutKeepsEveryPartOnItsTimeAndInsideTheHeightAskedFor)
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        const Theme theme(Scheme::Light, scale);
        const LaneMetrics metrics(theme);
        const facade::CaseStrip what = strip();
        const StripLayout layout = layOutStrip(what, metrics, m_axis.view(0, 1), 900);
        EXPECT_LE(layout.height, stripHeight(what, metrics) + 0.5) << scale;
        ASSERT_EQ(layout.parts.size(), 10U);
        for (const StripPart& part : layout.parts) {
            EXPECT_NEAR(part.box.center().x(), layout.axis.x(part.ref.at, what.flooded), 0.01);
            EXPECT_GE(part.box.top(), 0.0);
            EXPECT_LE(part.box.bottom(), layout.height);
        }
        for (const StripPanel& panel : layout.panels) {
            EXPECT_LE(panel.scale.low, 3.1);
            EXPECT_GE(panel.scale.high, 4.6);
            EXPECT_LT(panel.title.right(), panel.plot.left());
        }
    }
}

TEST_F(HistoryPaintTest, TheWindowIsTintedAndMarksChangeThePicture)
{
    const Theme theme(Scheme::Light);
    const LaneMetrics metrics(theme);
    const facade::CaseStrip what = strip();
    const StripLayout layout = layOutStrip(what, metrics, m_axis.view(0, 1), 900);
    const QImage plain = painted(theme, m_axis, what, {}, 900);
    // A pixel of the ground between two grid lines, in the window and before it.
    const auto count = [&](qint64 from, qint64 to, const QColor& colour) {
        int found = 0;
        for (int x = static_cast<int>(layout.axis.x(from, 0)) + 3; x < static_cast<int>(layout.axis.x(to, 0)) - 3;
             ++x) {
            found += plain.pixelColor(x, static_cast<int>(layout.plotsTop) + 2) == colour ? 1 : 0;
        }
        return found;
    };
    EXPECT_GT(count(what.from, what.onset, theme[Token::InfoTint]), 100);
    EXPECT_EQ(count(what.from - 10 * kDayMs, what.from, theme[Token::InfoTint]), 0);
    EXPECT_NE(painted(theme, m_axis, what, {what.series[0].refs[3]}, 900), plain);
    // What lies outside the stretch on show is pointed to at its edge.
    EXPECT_NE(painted(theme, m_axis, what, {{record::EntryId{9}, {}, kNoon - 80 * kDayMs}}, 900), plain);
}

TEST_F(HistoryPaintTest, TheAgeChartTellsEveryPoint)
{
    const Theme theme(Scheme::Dark, 2.0);
    const LaneMetrics metrics(theme);
    facade::Comparison made;
    made.key = u"kh"_s;
    made.unitLabel = u"dKH"_s;
    made.own = {u"Fen Corner"_s, {{10, 3}, {50, 3.2}, {96, 4.4}}};
    made.other = {u"Low Weir"_s, {{20, 3}, {140, 3.5}, {200, 4}}};
    made.nowAge = 96;
    const AgeChart chart(theme, metrics, made, QRectF(0, 0, 400, AgeChart::height(metrics)));
    ASSERT_EQ(chart.points().size(), 6U);
    EXPECT_TRUE(chart.points()[2].sentence.contains(u"Fen Corner"_s));
    EXPECT_LT(chart.points()[0].at.x(), chart.points()[2].at.x());
    EXPECT_GT(chart.points()[0].at.y(), chart.points()[2].at.y());
    QImage image(QSize(400, static_cast<int>(AgeChart::height(metrics))), QImage::Format_RGB32);
    image.fill(theme[Token::Panel]);
    const QImage blank = image;
    QPainter painter(&image);
    chart.paint(painter);
    painter.end();
    EXPECT_NE(image, blank);
}

} // namespace littoral::ui
