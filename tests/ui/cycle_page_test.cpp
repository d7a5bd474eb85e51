// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/sample_row.h"
#include "core/store/edit.h"
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/rail.h"
#include "ui/pages/cycle/cycle_page.h"
#include "ui/pages/cycle/plans_card.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/fan_stack.h"
#include "ui/widgets/plan_scatter_view.h"
#include "ui/widgets/table_twin.h"

#include <QAccessible>
#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSlider>
#include <QTest>

#include <algorithm>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

std::size_t plannedChangesOf(const record::LayoutRecord& layout)
{
    return static_cast<std::size_t>(std::ranges::count_if(layout.entries, [](const record::Entry& entry) {
        return entry.planned && entry.kind == record::EntryKind::WaterChange;
    }));
}

} // namespace

/// The sample row's young tank on the Cycle page, its forecast and plans worked out.
class CyclePageTest : public FrameTest
{
protected:
    CyclePageTest()
    {
        const auto made = facade::makeSampleRow(m_keeper, m_clock.now());
        EXPECT_TRUE(made) << (made ? std::string() : made.error().sentence());
        keepOnly(u"Slate Ford"_s);
        m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, m_theme, m_ask);
        m_window->resize(1600, 1000);
        m_window->show();
        m_window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
        m_forecasts.refresh();
        m_forecasts.wait();
        m_window->showPage(MainWindow::Page::Cycle);
        page().setSelected(m_keeper.row().tankNamed(u"Slate Ford"_s)->id);
        page().wait();
    }

    /// One tank is one forecast to wait for, not six.
    void keepOnly(const QString& name)
    {
        store::Edit edit(u"the other tanks go"_s);
        for (const record::Tank& tank : m_keeper.row().tanks) {
            if (tank.name != name) {
                edit.remove(tank.id);
            }
        }
        EXPECT_TRUE(m_keeper.commit(edit));
    }
    CyclePage& page() { return *m_window->cycle(); }
    const record::LayoutRecord& layout() const { return *m_keeper.row().layout(m_window->cycle()->model().layout); }
    void press(Qt::Key key, Qt::KeyboardModifiers mods = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), key, mods);
        QCoreApplication::processEvents();
    }

    std::unique_ptr<MainWindow> m_window;
};

TEST_F(CyclePageTest, ShowsEveryQuantityWithItsFanAndItsPast)
{
    const CycleModel& model = page().model();
    ASSERT_EQ(model.state, CycleModel::State::Ready);
    ASSERT_EQ(model.fans.panels.size(), 5u);
    for (const FanPanel& panel : model.fans.panels) {
        ASSERT_FALSE(panel.series.empty()) << panel.title.toStdString();
        for (const FanSeries& series : panel.series) {
            EXPECT_GT(series.future.size(), 20u) << panel.title.toStdString();
            EXPECT_GT(series.fitted.size(), 5u) << panel.title.toStdString();
            for (const LaneBand& band : series.future) {
                EXPECT_LE(band.q10, band.q50);
                EXPECT_LE(band.q50, band.q90);
            }
        }
    }
    EXPECT_EQ(model.fans.panels.back().series.size(), 2u); // both guilds of the filter
    EXPECT_FALSE(model.fans.panels[1].readings.empty());
    EXPECT_FALSE(model.headline.isEmpty());
    EXPECT_FALSE(model.nextTest.isEmpty());
    EXPECT_EQ(model.gates.size(), 4u);
}

TEST_F(CyclePageTest, PlanAIsWhatIsPlannedNowAndTheSameLettersStandInTableAndChart)
{
    const CycleModel& model = page().model();
    ASSERT_GE(model.plans.size(), 3u);
    EXPECT_EQ(model.plans.front().letter, u"A"_s);
    EXPECT_FALSE(model.plans.front().plan.has_value());
    EXPECT_EQ(model.selected, 0u);
    EXPECT_GE(model.scatter.points.size(), 40u);
    QStringList inChart;
    for (const ScatterPoint& point : model.scatter.points) {
        if (!point.letter.isEmpty()) {
            inChart << point.letter;
        }
        EXPECT_FALSE(point.sentence.isEmpty());
    }
    QStringList inTable;
    for (const CyclePlan& plan : model.plans) {
        inTable << plan.letter;
    }
    inChart.sort();
    EXPECT_EQ(inChart, inTable);
    EXPECT_FALSE(page().canAdopt());
}

TEST_F(CyclePageTest, TheKeyboardAloneAdoptsAPlanAndUndoTakesItBack)
{
    const auto before = layout().entries;
    const std::size_t plansBefore = m_keeper.row().plans.size();
    page().plans().table().setFocus();
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    page().wait();
    ASSERT_EQ(page().model().selected, 2u);
    ASSERT_TRUE(page().canAdopt());
    EXPECT_FALSE(page().model().adoptionList.isEmpty());
    const std::optional<forecast::ChangePlan> plan = page().model().plans[2].plan;
    press(Qt::Key_A);
    EXPECT_FALSE(page().canAdopt());
    if (plan->fraction > 0.0) {
        EXPECT_GT(plannedChangesOf(layout()), 0u);
    }
    EXPECT_FALSE(layout().entries == before);
    EXPECT_EQ(m_keeper.row().plans.size(), plansBefore + 1);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(layout().entries == before);
    EXPECT_EQ(m_keeper.row().plans.size(), plansBefore);
}

TEST_F(CyclePageTest, TheSliderLooksAtAPlanAndKeepGoesBack)
{
    PlansCard& card = page().plans();
    card.slider().setFocus();
    press(Qt::Key_Right);
    page().wait();
    const CycleModel& model = page().model();
    ASSERT_TRUE(model.plans[model.selected].plan.has_value());
    EXPECT_FALSE(model.fans.previewText.isEmpty());
    EXPECT_FALSE(model.fans.previewQuick);
    EXPECT_FALSE(model.fans.panels[1].series[0].preview.empty());
    page().choosePlan(std::nullopt);
    EXPECT_EQ(page().model().selected, 0u);
    EXPECT_TRUE(page().model().fans.previewText.isEmpty());
}

TEST_F(CyclePageTest, TheTableTwinHoldsTheSameNumbersAsTheCharts)
{
    page().charts().setFocus();
    press(Qt::Key_T);
    ASSERT_TRUE(page().isTable());
    const PlainTable expected = fanTable(page().model().fans, QTimeZone::systemTimeZone(), m_clock.now().utcMs());
    EXPECT_EQ(page().twin().table().header, expected.header);
    EXPECT_EQ(page().twin().table().rows, expected.rows);
    ASSERT_GE(expected.currentRow, 0);
    EXPECT_EQ(page().twin().currentIndex().row(), expected.currentRow);
    EXPECT_EQ(page().twin().model()->rowCount(), static_cast<int>(expected.rows.size()));
    press(Qt::Key_T);
    EXPECT_FALSE(page().isTable());
    EXPECT_TRUE(page().charts().hasFocus());
}

TEST_F(CyclePageTest, AnotherGateIsWhatPlansAreCountedTo)
{
    const QString before = page().model().gateTitle;
    page().gates().table().setFocus();
    const int row = page().gates().table().chosenRow();
    press(row == 3 ? Qt::Key_Up : Qt::Key_Down);
    page().wait();
    EXPECT_NE(page().model().gateTitle, before);
    EXPECT_EQ(page().model().gate, page().model().gates[static_cast<std::size_t>(row == 3 ? 2 : row + 1)].key);
    EXPECT_FALSE(page().model().plans.empty());
}

TEST_F(CyclePageTest, TheCheapestPlanIsFoundAndChosenOrSaidNotToExist)
{
    page().plans().findCheapest();
    page().wait();
    EXPECT_FALSE(page().plans().answerText().isEmpty());
}

TEST_F(CyclePageTest, SingleLettersBelongToThePageThatIsShown)
{
    EXPECT_TRUE(m_window->actions().action(u"cycle.table"_s)->isEnabled());
    m_window->showPage(MainWindow::Page::Lanes);
    EXPECT_FALSE(m_window->actions().action(u"cycle.table"_s)->isEnabled());
    EXPECT_FALSE(m_window->actions().action(u"cycle.adopt"_s)->isEnabled());
}

TEST_F(CyclePageTest, PaintedPanelsAreReadAloudAsSentences)
{
    for (ChartWidget* chart : page().findChildren<ChartWidget*>()) {
        EXPECT_FALSE(chart->accessibleName().isEmpty()) << chart->metaObject()->className();
        QAccessibleInterface* node = QAccessible::queryAccessibleInterface(chart);
        ASSERT_NE(node, nullptr);
        EXPECT_EQ(node->childCount(), chart->partCount());
        for (int i = 0; i < node->childCount(); ++i) {
            EXPECT_FALSE(node->child(i)->text(QAccessible::Name).isEmpty());
        }
    }
    page().charts().setFocus();
    press(Qt::Key_Right);
    const QString sentence = page().charts().partSentence(1);
    EXPECT_TRUE(sentence.contains(u"8 in 10"_s)) << sentence.toStdString();
    for (const QWidget* widget : page().findChildren<QWidget*>()) {
        if ((widget->focusPolicy() & Qt::TabFocus) != 0 && widget->isVisible()) {
            const QAccessibleInterface* node = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
            const bool inner = widget->objectName().startsWith(u"qt_"_s);
            EXPECT_TRUE(inner || (node != nullptr && !node->text(QAccessible::Name).isEmpty()))
                << widget->metaObject()->className();
        }
    }
}

TEST_F(CyclePageTest, ADisclosureOpensByKeyOnWhatATestWouldTell)
{
    const auto& tests = page().verdict().tests();
    if (page().model().tests.empty()) {
        EXPECT_TRUE(tests.front()->isHidden());
        return;
    }
    ASSERT_FALSE(page().model().tests.front().outcomes.isEmpty());
    tests.front()->line()->setFocus();
    press(Qt::Key_Right);
    EXPECT_TRUE(tests.front()->isOpen());
    EXPECT_FALSE(tests.front()->details().isEmpty());
    press(Qt::Key_Left);
    EXPECT_FALSE(tests.front()->isOpen());
}

TEST_F(CyclePageTest, NothingClipsAtTwiceTheTextSizeNorInTheSmallestWindow)
{
    for (const auto& [scale, size] : {std::pair(2.0, QSize(1600, 1000)), std::pair(1.0, QSize(1024, 680))}) {
        m_theme.setTextScale(scale);
        m_window->resize(size);
        QCoreApplication::processEvents();
        page().wait();
        QCoreApplication::processEvents();
        EXPECT_GE(page().charts().height(), page().charts().minimumSizeHint().height());
        for (const QLabel* label : page().findChildren<QLabel*>()) {
            if (!label->isVisible() || label->text().isEmpty()) {
                continue;
            }
            const int needed =
                label->hasHeightForWidth() ? label->heightForWidth(label->width()) : label->sizeHint().height();
            EXPECT_GE(label->height() + 1, needed) << scale << ' ' << label->text().toStdString();
            if (!label->wordWrap()) {
                EXPECT_GE(label->width() + 1, label->sizeHint().width()) << scale << ' ' << label->text().toStdString();
            }
        }
        for (const QPushButton* button : page().findChildren<QPushButton*>()) {
            if (button->isVisible()) {
                EXPECT_GE(button->width() + 1, button->sizeHint().width()) << button->text().toStdString();
                EXPECT_GE(button->height(), 24);
            }
        }
        for (const CardTable* table : page().findChildren<CardTable*>()) {
            if (!table->isVisible()) {
                continue;
            }
            int height = table->horizontalHeader()->height();
            for (int row = 0; row < table->model()->rowCount(); ++row) {
                EXPECT_GE(table->rowHeight(row), table->heightOfRow(row));
                height += table->rowHeight(row);
            }
            EXPECT_GE(table->height(), height);
        }
        for (const QScrollArea* area : page().findChildren<QScrollArea*>()) {
            if (area->isVisible() && area->widget() != nullptr) {
                EXPECT_LE(area->widget()->minimumSizeHint().width(), area->viewport()->width() + 1);
            }
        }
    }
    m_theme.setTextScale(1.0);
}

TEST(CyclePageEmpty, SaysWhatWillBeHereBeforeThereIsALayout)
{
    record::Row row;
    record::Tank tank;
    tank.id.value = 1;
    tank.name = u"Bare Glass"_s;
    row.tanks.push_back(tank);
    CycleQuestion question{row, tank.id, record::Moment::fromIso(u"2026-11-25T07:30:00Z"_s)};
    const CycleModel none = cycleModel(question);
    EXPECT_EQ(none.state, CycleModel::State::NoLayout);
    EXPECT_TRUE(none.message.contains(u"Bare Glass"_s));
    question.tank = {};
    EXPECT_EQ(cycleModel(question).state, CycleModel::State::NoTank);
}

} // namespace littoral::ui::test
