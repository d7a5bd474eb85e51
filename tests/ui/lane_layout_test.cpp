// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/lane_demo.h"
#include "ui/paint/lane_layout.h"
#include "ui/theme/figures.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace littoral::ui {
namespace {

using facade::Glyph;
using facade::LaneModel;

class Laid
{
public:
    explicit Laid(double scale = 1.0, double width = 1392.0, double back = 27.0, double ahead = 19.8)
        : theme(Scheme::Light, scale)
        , metrics(theme)
    {
        frame.width = width;
        const double header = metrics.headerWidth(width);
        frame.axis = {AxisMode::Calendar,
                      demo::now() - static_cast<qint64>(back * double(kDayMs)),
                      demo::now() + static_cast<qint64>(ahead * double(kDayMs)),
                      demo::now(),
                      header,
                      width - header};
        frame.outlineScale = 0.6;
    }
    LaneBox lay(const LaneModel& model, bool overview = false) const
    {
        return layOutLane(model, laneKind(model, overview), metrics, frame);
    }

    Theme theme;
    LaneMetrics metrics;
    LaneFrame frame;
};

void expectNoOverlap(const LaneBox& box, const std::string& where)
{
    for (std::size_t a = 0; a < box.chips.size(); ++a) {
        for (std::size_t b = a + 1; b < box.chips.size(); ++b) {
            EXPECT_FALSE(box.chips[a].rect.intersects(box.chips[b].rect)) << where << ": chips " << a << " and " << b;
        }
    }
    for (std::size_t a = 0; a < box.events.size(); ++a) {
        for (std::size_t b = 0; b < box.events.size(); ++b) {
            if (a != b && !box.events[a].label.isEmpty()) {
                const QRectF label = box.events[a].label.adjusted(0, 3, 0, -3);
                EXPECT_FALSE(label.intersects(box.events[b].glyph)) << where;
                EXPECT_TRUE(box.events[b].label.isEmpty() ||
                            !label.intersects(box.events[b].label.adjusted(0, 3, 0, -3)))
                    << where;
            }
        }
    }
}

/// Every chip is on show exactly once, alone or in a fold, unless it lies outside the strip.
void expectAllCounted(const LaneBox& box, const LaneModel& model, const std::string& where)
{
    for (std::size_t i = 0; i < model.chips.size(); ++i) {
        const double x = box.axis.x(model.chips[i].at, model.flooded);
        const auto seen = std::ranges::count_if(
            box.chips, [&](const ChipBox& chip) { return std::ranges::count(chip.chips, i) > 0; });
        if (model.chips[i].overdue || (x > box.nowX && x < box.strip.right() - 20)) {
            EXPECT_EQ(seen, 1) << where << " chip " << i;
        } else {
            EXPECT_LE(seen, 1) << where << " chip " << i;
        }
    }
}

TEST(LaneLayout, ChipsNeverOverlapAtAnyZoomWidthOrTextSize)
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        for (const double width : {700.0, 1000.0, 1392.0}) {
            for (const double ahead : {2.0, 7.0, 20.0, 90.0, 400.0}) {
                const Laid laid(scale, width, ahead * 1.3, ahead);
                for (const LanePtr& lane : demo::sixLanes()) {
                    const std::string where = lane->name.toStdString() + " at " + std::to_string(scale) + ", " +
                                              std::to_string(width) + ", " + std::to_string(ahead);
                    const LaneBox box = laid.lay(*lane);
                    expectNoOverlap(box, where);
                    expectAllCounted(box, *lane, where);
                }
            }
        }
    }
}

TEST(LaneLayout, OverdueChipsStackLeftwardsTheMostOverdueNearest)
{
    const Laid laid;
    const LanePtr mill = demo::sixLanes()[2];
    const LaneBox box = laid.lay(*mill);
    ASSERT_GE(box.chips.size(), 2u);
    EXPECT_TRUE(box.chips[0].overdue);
    EXPECT_EQ(mill->chips[box.chips[0].chips.front()].daysOver, 6);
    EXPECT_EQ(mill->chips[box.chips[1].chips.front()].daysOver, 3);
    EXPECT_LT(box.chips[0].rect.right(), box.nowX);
    EXPECT_LT(box.chips[1].rect.right(), box.chips[0].rect.left());
}

LaneModel withOverdue(int count)
{
    LaneModel model = *demo::sixLanes()[4];
    model.chips.clear();
    for (int i = 0; i < count; ++i) {
        facade::LaneChip chip =
            demo::chip(-2 - i, Glyph::Upkeep, QStringLiteral("Round %1").arg(i), QStringLiteral("R%1").arg(i));
        chip.overdue = true;
        chip.daysOver = 2 + i;
        model.chips.push_back(chip);
    }
    return model;
}

TEST(LaneLayout, BeyondThreeTheRestFoldsToANumber)
{
    const Laid laid;
    const LaneModel model = withOverdue(5);
    const LaneBox box = laid.lay(model);
    const auto more = std::ranges::find(box.chips, ChipForm::More, &ChipBox::form);
    ASSERT_NE(more, box.chips.end());
    EXPECT_EQ(more->chips.size(), 2u);
    EXPECT_EQ(more->text, QStringLiteral("+2"));
    EXPECT_TRUE(more->overdue);
    EXPECT_EQ(std::ranges::count(box.chips, ChipForm::Full, &ChipBox::form), 3);
    const auto three = laid.lay(withOverdue(3)).chips;
    EXPECT_EQ(std::ranges::count(three, ChipForm::More, &ChipBox::form), 0);
}

TEST(LaneLayout, WithoutRoomLeftOfNowOverdueWorkIsCountedNotLost)
{
    const Laid laid(1.0, 1392.0, 1.5, 40.0);
    const LaneModel model = withOverdue(5);
    const LaneBox box = laid.lay(model);
    expectNoOverlap(box, "little past");
    std::size_t counted = 0;
    for (const ChipBox& chip : box.chips) {
        counted += chip.chips.size();
        EXPECT_LT(chip.rect.right(), box.nowX);
    }
    EXPECT_EQ(counted, 5u);
}

TEST(LaneLayout, CrowdedWorkIsShortenedThenCounted)
{
    LaneModel model = *demo::sixLanes()[4];
    model.chips.clear();
    for (int day = 1; day <= 12; ++day) {
        model.chips.push_back(
            demo::chip(day, Glyph::WaterChange, QStringLiteral("Water change 40 %"), QStringLiteral("40 %")));
    }
    const auto forms = [&](double ahead) {
        const LaneBox box = Laid(1.0, 1392.0, ahead, ahead).lay(model);
        expectNoOverlap(box, "crowd");
        expectAllCounted(box, model, "crowd");
        return std::pair(std::ranges::count(box.chips, ChipForm::Short, &ChipBox::form),
                         std::ranges::count(box.chips, ChipForm::Count, &ChipBox::form));
    };
    EXPECT_GT(forms(10).first, 0);
    EXPECT_EQ(forms(3).second, 0);
    EXPECT_GT(forms(120).second, 0);
}

TEST(LaneLayout, HeightsAreThoseOfTheThreeKinds)
{
    const Laid laid;
    const auto lanes = demo::sixLanes();
    EXPECT_NEAR(laid.lay(*lanes[0]).height, 190, 20);
    EXPECT_EQ(laid.lay(*lanes[0]).dueTops.size(), 2u);
    EXPECT_NEAR(laid.lay(*lanes[4]).height, 110, 15);
    EXPECT_NEAR(laid.lay(*lanes[4], true).height, 44, 4);
    for (const LanePtr& lane : lanes) {
        for (const bool overview : {false, true}) {
            const LaneKind kind = laneKind(*lane, overview);
            EXPECT_EQ(laid.lay(*lane, overview).height, laneHeight(*lane, kind, laid.metrics, laid.frame))
                << lane->name.toStdString();
        }
    }
}

TEST(LaneLayout, PanningNeverMovesALaneUpOrDown)
{
    const auto lanes = demo::sixLanes();
    for (const LanePtr& lane : lanes) {
        const double here = Laid(1.0, 1392, 27, 20).lay(*lane).height;
        const double there = Laid(1.0, 1392, 400, -300).lay(*lane).height;
        EXPECT_EQ(here, there) << lane->name.toStdString();
    }
}

/// Words of a text and of its wrapped lines are the same ones: nothing was cut.
void expectWhole(const LaneBox& box, HeaderRole role, const QString& text, const std::string& where)
{
    QStringList lines;
    for (const HeaderLine& line : box.header.lines) {
        if (line.role == role) {
            lines << line.text;
        }
    }
    EXPECT_EQ(lines.join(QLatin1Char(' ')), text) << where;
}

TEST(LaneLayout, HeaderTextIsWholeAndInItsBoxAtEveryTextSize)
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        for (const double width : {960.0, 1392.0}) {
            const Laid laid(scale, width);
            for (const LanePtr& lane : demo::sixLanes()) {
                const LaneBox box = laid.lay(*lane);
                const std::string where = lane->name.toStdString() + " at " + std::to_string(scale);
                expectWhole(box, HeaderRole::Name, lane->name, where);
                expectWhole(box, HeaderRole::Phase, lane->phaseLine, where);
                expectWhole(box, HeaderRole::Verdict, lane->verdict, where);
                expectWhole(box, HeaderRole::Status, lane->statusLine, where);
                double bottom = 0.0;
                for (const HeaderLine& line : box.header.lines) {
                    EXPECT_GE(line.rect.top(), bottom - 0.5) << where;
                    bottom = line.rect.bottom();
                    EXPECT_LE(line.rect.right(), laid.frame.axis.left) << where;
                    EXPECT_GE(line.rect.height(), LaneMetrics::lineHeight(laid.metrics.body) * 0.99) << where;
                }
                for (const PresentBox& present : box.header.present) {
                    EXPECT_GE(present.value.top(), bottom - 0.5) << where;
                    EXPECT_LE(present.value.right(), laid.frame.axis.left) << where;
                    EXPECT_LE(present.value.bottom(), box.height) << where;
                }
            }
        }
    }
}

TEST(LaneLayout, ChipTextFitsItsChip)
{
    for (const double scale : {1.0, 2.0}) {
        const Laid laid(scale);
        for (const LanePtr& lane : demo::sixLanes()) {
            for (const ChipBox& chip : laid.lay(*lane).chips) {
                const double room =
                    chip.withGlyph ? chip.rect.width() - laid.metrics.glyph - laid.metrics.px(10) : chip.rect.width();
                EXPECT_LE(figuresWidth(laid.metrics.chipStrong, chip.text), room) << chip.text.toStdString();
                EXPECT_GE(chip.rect.height(), std::max(24.0, LaneMetrics::lineHeight(laid.metrics.chip)));
            }
        }
    }
}

TEST(LaneLayout, AlertsEndAtTheNowLineAndGatesSpanTheirDates)
{
    const Laid laid;
    const LanePtr slate = demo::sixLanes()[0];
    const LaneBox box = laid.lay(*slate);
    ASSERT_EQ(box.alerts.size(), 1u);
    EXPECT_EQ(box.alerts[0].bar.right(), box.nowX);
    EXPECT_EQ(box.alerts[0].bar.height(), 3.0);
    EXPECT_LT(box.alerts[0].label.right(), box.nowX);
    ASSERT_EQ(box.gates.size(), 1u);
    EXPECT_NEAR(box.gates[0].area.left(), laid.frame.axis.x(slate->gates[0].from, slate->flooded), 1.0);
    EXPECT_NEAR(box.gates[0].area.right(), laid.frame.axis.x(slate->gates[0].to, slate->flooded), 1.0);
}

TEST(LaneLayout, WaterChangeBarsGrowWithTheirFraction)
{
    const Laid laid;
    const LanePtr fen = demo::sixLanes()[3];
    const LaneBox box = laid.lay(*fen);
    double quarter = 0.0;
    double half = 0.0;
    for (const ChangeBar& bar : box.changes) {
        (fen->events[bar.event].fraction == 0.5 ? half : quarter) = bar.bar.height();
    }
    EXPECT_NEAR(half, 2 * quarter, 1.0);
}

TEST(LaneLayout, ScalesFollowWhatIsInTheRangeShown)
{
    LaneModel model = *demo::sixLanes()[0];
    const LaneBox near = Laid(1.0, 1392, 27, 20).lay(model);
    EXPECT_GE(near.scales.front().high, 6.0);
    EXPECT_EQ(near.scales.front().low, 0.0);
    EXPECT_GE(near.scales.front().ticks.size(), 3u);
    // A value far off in time does not flatten what is on show.
    facade::LaneMark far;
    far.at = demo::day(-400);
    far.value = 500;
    model.series.front().marks.insert(model.series.front().marks.begin(), far);
    EXPECT_EQ(Laid(1.0, 1392, 27, 20).lay(model).scales.front().high, near.scales.front().high);
    EXPECT_GT(Laid(1.0, 1392, 500, 20).lay(model).scales.front().high, 400.0);
}

TEST(LaneLayout, UnitsThatDifferGetScalesOfTheirOwn)
{
    LaneModel model = *demo::sixLanes()[2];
    facade::LaneSeries ph;
    ph.parameter = QStringLiteral("ph");
    ph.marks = {{demo::day(-3), 6.8, record::Censoring::None, {}, {}},
                {demo::day(-1), 6.9, record::Censoring::None, {}, {}}};
    model.series.push_back(ph);
    const LaneBox box = Laid().lay(model);
    ASSERT_EQ(box.scales.size(), 2u);
    EXPECT_NE(box.series[0].scale, box.series[1].scale);
    EXPECT_GT(box.scales[1].low, 5.0);
    EXPECT_EQ(Laid().lay(*demo::sixLanes()[0]).scales.size(), 1u) << "ammonia and nitrite share mg/L";
}

TEST(LaneLayout, TheAgeFlagCountsAsTheHeaderDoesAndCoversNoPhaseName)
{
    Laid laid;
    laid.frame.axis.mode = AxisMode::Age;
    laid.frame.axis.from = -kDayMs / 4;
    laid.frame.axis.to = 63 * kDayMs;
    laid.frame.axis.zone = QTimeZone(3600);
    const LanePtr slate = demo::sixLanes()[0];
    // Flooded at 10:00, looked at 07:40 sixteen calendar days later: day 16, although not yet 16 times 24 hours.
    const LaneBox box = laid.lay(*slate);
    EXPECT_EQ(box.nowText, QStringLiteral("day 16"));
    EXPECT_TRUE(slate->litresAndAge.endsWith(box.nowText));
    ASSERT_FALSE(box.phases.empty());
    for (const PhaseBox& phase : box.phases) {
        EXPECT_FALSE(phase.label.intersects(box.nowFlag));
        EXPECT_LE(figuresWidth(laid.metrics.small, phase.text), phase.label.width());
    }
}

TEST(LaneLayout, ValueLabelsStandBesideTheReadingsWhereTheLaneBeginsInTheRange)
{
    const Laid laid;
    const LanePtr slate = demo::sixLanes()[0];
    const LaneBox box = laid.lay(*slate);
    ASSERT_GE(box.ticks.size(), 3u);
    for (const TickLabel& tick : box.ticks) {
        EXPECT_LT(tick.rect.right(), box.floodedX);
        EXPECT_GE(tick.rect.left(), box.strip.left());
    }
    EXPECT_TRUE(box.ticks.back().text.endsWith(QStringLiteral("mg/L")));
}

TEST(LaneLayout, HitTestingFindsWhatIsDrawn)
{
    const Laid laid;
    for (const LanePtr& lane : demo::sixLanes()) {
        const LaneBox box = laid.lay(*lane);
        for (const ChipBox& chip : box.chips) {
            const auto found = itemAt(box, *lane, chip.rect.center(), laid.metrics, laid.frame.options);
            ASSERT_TRUE(found.has_value());
            EXPECT_EQ(found->row, LaneRow::Due);
            EXPECT_EQ(std::ranges::count(chip.chips, found->index), 1);
        }
        for (const LaneItem& item : itemsOf(*lane, LaneRow::Readings, laid.frame.options)) {
            const QRectF rect = itemRect(box, *lane, item, laid.metrics);
            if (!rect.isEmpty()) {
                EXPECT_TRUE(itemAt(box, *lane, rect.center(), laid.metrics, laid.frame.options).has_value());
            }
        }
        EXPECT_FALSE(itemAt(box, *lane, {-50, -50}, laid.metrics, laid.frame.options).has_value());
    }
}

TEST(LaneLayout, TwentyFourLanesFitByScrollingLittle)
{
    const Laid laid;
    double total = 0.0;
    for (const LanePtr& lane : demo::manyLanes(24, 60)) {
        const LaneBox box = laid.lay(*lane, true);
        expectNoOverlap(box, "overview");
        EXPECT_LE(box.dueTops.front() + laid.metrics.chipHeight, box.height);
        total += box.height;
    }
    EXPECT_LE(total, 24 * 48.0);
}

} // namespace
} // namespace littoral::ui
