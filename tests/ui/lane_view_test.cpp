// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/lane_demo.h"
#include "ui/widgets/lanes/lane_access.h"
#include "ui/widgets/lanes/lane_view.h"

#include <QAccessible>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace littoral::ui {
namespace {

using facade::LaneChip;
using facade::LaneModel;

class LaneViewTest : public ::testing::Test
{
protected:
    LaneViewTest()
        : theme(Scheme::Light)
        , view(theme, axis)
    {
        axis.setZone(QTimeZone(3600));
        axis.setNow(demo::now());
        axis.showAround(27, 20);
        view.resize(1392, 850);
        view.setLanes(demo::sixLanes());
        view.show();
        view.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
        view.setFocus();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers mods = Qt::NoModifier) { QTest::keyClick(&view, key, mods); }
    void toLane(int lane)
    {
        for (int i = 0; i < lane; ++i) {
            press(Qt::Key_Down);
        }
    }
    QPoint centreOf(std::size_t lane, const LaneItem& item) { return view.itemViewRect(lane, item).center(); }

    Theme theme;
    TimeAxis axis;
    LaneView view;
};

TEST_F(LaneViewTest, ArrowsWalkLanesAndEnterEachAtItsMostPressingWork)
{
    ASSERT_NE(view.selectedLane(), nullptr);
    EXPECT_EQ(view.selectedLane()->name, QStringLiteral("Slate Ford"));
    toLane(2);
    EXPECT_EQ(view.selectedLane()->name, QStringLiteral("Mill Race"));
    ASSERT_NE(view.selectedChip(), nullptr);
    EXPECT_TRUE(view.selectedChip()->overdue);
    press(Qt::Key_Up);
    EXPECT_EQ(view.selectedLane()->name, QStringLiteral("Alder Shelf"));
    toLane(20);
    EXPECT_EQ(view.selectedLane()->name, QStringLiteral("Low Weir")) << "the last lane is the end, not a wrap";
}

TEST_F(LaneViewTest, LeftAndRightGoThroughARowInTime)
{
    toLane(2);
    QList<qint64> order;
    press(Qt::Key_Home);
    for (int i = 0; i < 10; ++i) {
        order << view.cursor().item()->at;
        press(Qt::Key_Right);
    }
    EXPECT_TRUE(std::ranges::is_sorted(order));
    EXPECT_EQ(order.last(), view.cursor().item()->at) << "stops at the end";
    press(Qt::Key_Home);
    EXPECT_EQ(view.cursor().item()->at, order.first());
}

TEST_F(LaneViewTest, TabWalksTheRowsOfALaneAndThenLeaves)
{
    QWidget window;
    auto* column = new QVBoxLayout(&window);
    column->addWidget(&view);
    auto* after = new QPushButton(QStringLiteral("after"));
    column->addWidget(after);
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    view.setFocus();
    EXPECT_EQ(view.cursor().row(), LaneRow::Due);
    press(Qt::Key_Tab);
    EXPECT_EQ(view.cursor().row(), LaneRow::Events);
    press(Qt::Key_Tab);
    EXPECT_EQ(view.cursor().row(), LaneRow::Readings);
    press(Qt::Key_Tab);
    EXPECT_EQ(view.cursor().row(), LaneRow::Notices);
    press(Qt::Key_Tab, Qt::ShiftModifier);
    EXPECT_EQ(view.cursor().row(), LaneRow::Readings);
    press(Qt::Key_Tab);
    press(Qt::Key_Tab);
    EXPECT_TRUE(after->hasFocus());
    view.setParent(nullptr);
}

TEST_F(LaneViewTest, WorkKeysAskForTheFocusedChip)
{
    toLane(2);
    const QString title = view.selectedChip()->title;
    QSignalSpy done(&view, &LaneView::doneRequested);
    QSignalSpy snooze(&view, &LaneView::snoozeRequested);
    QSignalSpy skip(&view, &LaneView::skipRequested);
    QSignalSpy open(&view, &LaneView::openRequested);
    QSignalSpy water(&view, &LaneView::waterChangeRequested);
    press(Qt::Key_Space);
    press(Qt::Key_S);
    press(Qt::Key_K);
    press(Qt::Key_Return);
    press(Qt::Key_W);
    for (QSignalSpy* spy : {&done, &snooze, &skip, &open}) {
        ASSERT_EQ(spy->count(), 1);
        EXPECT_EQ(spy->first().first().value<LaneChip>().title, title);
    }
    ASSERT_EQ(water.count(), 1);
    EXPECT_EQ(water.first().first().value<record::TankId>().value, 3);
}

TEST_F(LaneViewTest, WorkKeysDoNothingOnAReading)
{
    press(Qt::Key_Tab);
    press(Qt::Key_Tab);
    ASSERT_EQ(view.cursor().row(), LaneRow::Readings);
    QSignalSpy done(&view, &LaneView::doneRequested);
    QSignalSpy reading(&view, &LaneView::readingOpenRequested);
    press(Qt::Key_Space);
    press(Qt::Key_Return);
    EXPECT_EQ(done.count(), 0);
    EXPECT_EQ(reading.count(), 1);
}

TEST_F(LaneViewTest, MovingByKeysAsksOnceAndEscapeLeavesItWhereItIs)
{
    toLane(2);
    QSignalSpy moved(&view, &LaneView::moveRequested);
    press(Qt::Key_M);
    EXPECT_TRUE(view.isMoving());
    press(Qt::Key_Right);
    press(Qt::Key_Right);
    press(Qt::Key_Escape);
    EXPECT_FALSE(view.isMoving());
    EXPECT_EQ(moved.count(), 0);
    press(Qt::Key_M);
    press(Qt::Key_Right);
    press(Qt::Key_Right, Qt::ShiftModifier);
    press(Qt::Key_Return);
    ASSERT_EQ(moved.count(), 1);
    EXPECT_EQ(moved.first().at(1).toDate(), QDate(2026, 11, 25).addDays(8))
        << "counted from today, since it is overdue";
}

TEST_F(LaneViewTest, DraggingAChipAsksForTheDayUnderThePointer)
{
    const std::size_t lane = 2;
    const auto& model = *view.lanes()[lane];
    const auto items = itemsOf(model, LaneRow::Due, view.options());
    const LaneItem last = items.back();
    const QPoint from = centreOf(lane, last);
    ASSERT_FALSE(view.itemViewRect(lane, last).isEmpty());
    QSignalSpy moved(&view, &LaneView::moveRequested);
    const int week = static_cast<int>(7 * view.box(lane).axis.pxPerDay());
    QTest::mousePress(view.viewport(), Qt::LeftButton, Qt::NoModifier, from);
    QTest::mouseMove(view.viewport(), from - QPoint(week / 2, 0));
    QTest::mouseMove(view.viewport(), from - QPoint(week, 0));
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, Qt::NoModifier, from - QPoint(week, 0));
    ASSERT_EQ(moved.count(), 1);
    const qint64 under = view.box(lane).axis.at(from.x() - week, model.flooded);
    EXPECT_EQ(moved.first().at(1).toDate(), QDateTime::fromMSecsSinceEpoch(under, axis.zone()).date());
    EXPECT_EQ(axis.from(), demo::now() - 27 * kDayMs) << "the axis stays";
}

TEST_F(LaneViewTest, DraggingTheGroundPansAndReleasingStops)
{
    const qint64 from = axis.from();
    const QPoint at(700, view.laneRect(4).top() + 12);
    QTest::mousePress(view.viewport(), Qt::LeftButton, Qt::NoModifier, at);
    QTest::mouseMove(view.viewport(), at + QPoint(60, 0));
    QTest::mouseMove(view.viewport(), at + QPoint(120, 0));
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, Qt::NoModifier, at + QPoint(120, 0));
    EXPECT_LT(axis.from(), from);
    const qint64 panned = axis.from();
    QTest::mouseMove(view.viewport(), at);
    EXPECT_EQ(axis.from(), panned);
}

TEST_F(LaneViewTest, AxisKeysZoomSwitchAndComeBackToNow)
{
    const qint64 span = axis.to() - axis.from();
    press(Qt::Key_Plus);
    EXPECT_LT(axis.to() - axis.from(), span);
    press(Qt::Key_Minus);
    EXPECT_NEAR(static_cast<double>(axis.to() - axis.from()), static_cast<double>(span), 10.0);
    axis.pan(-5);
    press(Qt::Key_N);
    EXPECT_LT(axis.from(), axis.now());
    EXPECT_GT(axis.to(), axis.now());
    press(Qt::Key_A);
    EXPECT_EQ(axis.mode(), AxisMode::Age);
    press(Qt::Key_N);
    const auto age = axis.now() - view.selectedLane()->flooded;
    EXPECT_LT(axis.from(), age);
    EXPECT_GT(axis.to(), age);
}

void wheel(LaneView& view, QPointF at, QPoint angle, Qt::KeyboardModifiers mods = Qt::NoModifier)
{
    QWheelEvent event(at, view.viewport()->mapToGlobal(at), {}, angle, Qt::NoButton, mods, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(view.viewport(), &event);
}

TEST_F(LaneViewTest, TheWheelPansScrollsOrZoomsByWhereAndHow)
{
    const QPointF strip(900, 400);
    const qint64 from = axis.from();
    view.resize(1392, 1600);
    ASSERT_EQ(view.verticalScrollBar()->maximum(), 0);
    wheel(view, strip, {0, -120});
    EXPECT_GT(axis.from(), from);
    view.resize(1392, 400);
    ASSERT_GT(view.verticalScrollBar()->maximum(), 0);
    const qint64 still = axis.from();
    wheel(view, strip, {0, -120});
    EXPECT_EQ(axis.from(), still);
    EXPECT_GT(view.verticalScrollBar()->value(), 0);
    wheel(view, strip, {0, -120}, Qt::ShiftModifier);
    EXPECT_GT(axis.from(), still);
    const qint64 span = axis.to() - axis.from();
    const qint64 under = view.box(0).axis.at(strip.x(), 0);
    wheel(view, strip, {0, 120}, Qt::ControlModifier);
    EXPECT_LT(axis.to() - axis.from(), span);
    EXPECT_NEAR(static_cast<double>(view.box(0).axis.at(strip.x(), 0)), static_cast<double>(under), 5e3);
}

TEST_F(LaneViewTest, TheFocusStaysOnTheSameWorkAfterTheRowIsReadAgain)
{
    toLane(2);
    press(Qt::Key_Right);
    const QString title = view.selectedChip()->title;
    auto lanes = demo::sixLanes();
    LaneModel changed = *lanes[2];
    changed.chips.insert(changed.chips.begin(),
                         demo::chip(1, facade::Glyph::Note, QStringLiteral("New work"), QStringLiteral("new")));
    lanes[2] = std::make_shared<const LaneModel>(changed);
    std::swap(lanes[0], lanes[5]);
    view.setLanes(lanes);
    EXPECT_EQ(view.selectedLane()->name, QStringLiteral("Mill Race"));
    ASSERT_NE(view.selectedChip(), nullptr);
    EXPECT_EQ(view.selectedChip()->title, title);
}

TEST_F(LaneViewTest, WhenTheFocusedWorkIsDoneItsNeighbourHasTheFocus)
{
    toLane(2);
    auto lanes = demo::sixLanes();
    LaneModel changed = *lanes[2];
    changed.chips.erase(changed.chips.begin());
    lanes[2] = std::make_shared<const LaneModel>(changed);
    view.setLanes(lanes);
    EXPECT_EQ(view.selectedLane()->name, QStringLiteral("Mill Race"));
    EXPECT_NE(view.selectedChip(), nullptr);
    changed.chips.clear();
    lanes[2] = std::make_shared<const LaneModel>(changed);
    view.setLanes(lanes);
    EXPECT_EQ(view.selectedLane()->name, QStringLiteral("Mill Race"));
    EXPECT_EQ(view.selectedChip(), nullptr);
    view.setLanes({});
    EXPECT_EQ(view.selectedLane(), nullptr);
}

TEST_F(LaneViewTest, AnItemOutsideTheRangeIsBroughtIntoIt)
{
    toLane(2);
    press(Qt::Key_Tab);
    press(Qt::Key_Home);
    axis.showAround(2, 5);
    press(Qt::Key_Right);
    EXPECT_FALSE(view.itemViewRect(view.cursor().lane(), *view.cursor().item()).isEmpty());
}

TEST_F(LaneViewTest, TheFocusIsDrawn)
{
    toLane(2);
    const QImage with = view.grab().toImage();
    const QRect chip = view.itemViewRect(2, *view.cursor().item());
    ASSERT_FALSE(chip.isEmpty());
    int accent = 0;
    for (int x = chip.left() - 6; x < chip.right() + 6; ++x) {
        accent += with.pixelColor(x, chip.top() - 3) == theme[Token::Accent] ? 1 : 0;
    }
    EXPECT_GT(accent, chip.width() / 2);
}

TEST_F(LaneViewTest, ManyLanesAreOverviewLanesAndTheSelectedOneIsFull)
{
    view.setLanes(demo::manyLanes(24, 60));
    EXPECT_EQ(view.box(5).kind, LaneKind::Overview);
    toLane(5);
    EXPECT_NE(view.box(5).kind, LaneKind::Overview);
    EXPECT_EQ(view.box(0).kind, LaneKind::Overview);
    EXPECT_TRUE(view.viewport()->rect().contains(view.laneRect(5).center()));
}

void visit(QAccessibleInterface* node, int depth, const std::function<void(QAccessibleInterface*, int)>& each)
{
    each(node, depth);
    for (int i = 0; i < node->childCount(); ++i) {
        ASSERT_NE(node->child(i), nullptr);
        EXPECT_EQ(node->child(i)->parent(), node);
        EXPECT_EQ(node->indexOfChild(node->child(i)), i);
        visit(node->child(i), depth + 1, each);
    }
}

TEST_F(LaneViewTest, TheAccessibleTreeNamesLanesRowsAndItems)
{
    QAccessible::setActive(true);
    QAccessibleInterface* root = QAccessible::queryAccessibleInterface(&view);
    ASSERT_NE(root, nullptr);
    ASSERT_EQ(root->childCount(), 6);
    int items = 0;
    visit(root, 0, [&](QAccessibleInterface* node, int depth) {
        EXPECT_TRUE(node->isValid());
        EXPECT_FALSE(node->text(QAccessible::Name).isEmpty()) << depth;
        items += depth == 3 ? 1 : 0;
    });
    EXPECT_GT(items, 60);
    toLane(2);
    QAccessibleInterface* focus = root->focusChild();
    ASSERT_NE(focus, nullptr);
    EXPECT_TRUE(focus->state().focused);
    EXPECT_EQ(focus->text(QAccessible::Name),
              QStringLiteral("Mill Race, Filter service, overdue 6 days, due 19 November"));
    EXPECT_FALSE(focus->rect().isEmpty());
    view.setLanes(demo::manyLanes(3, 10));
    EXPECT_EQ(root->childCount(), 3);
    QAccessible::setActive(false);
}

TEST_F(LaneViewTest, TheViewSurvivesEverySizeAndScale)
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        theme.setTextScale(scale);
        for (const QSize size : {QSize(300, 200), QSize(960, 560), QSize(1920, 1100)}) {
            view.resize(size);
            EXPECT_EQ(view.grab().toImage().size(), size);
        }
    }
}

} // namespace
} // namespace littoral::ui
