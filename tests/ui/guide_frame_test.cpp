// SPDX-License-Identifier: GPL-3.0-or-later
// F1 on each page opens the article on what is focused beside it; the page stays as it was.
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/frame/rail.h"
#include "ui/pages/cycle/cycle_cards.h"
#include "ui/pages/cycle/cycle_page.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/guide/reading_pane.h"
#include "ui/pages/history/findings_card.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/history/reset_card.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/rounds/rounds_grid.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/rounds/work_panel.h"
#include "ui/pages/stock/stock_page.h"
#include "ui/pages/stock/stock_tables.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/lanes/lane_view.h"
#include "ui/widgets/trends/trend_view.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListView>
#include <QTest>
#include <deque>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;
using Page = MainWindow::Page;

namespace {

class GuideFrameTest : public FrameTest
{
protected:
    void SetUp() override
    {
        addKits();
        m_tank = addTank(u"Slate Ford"_s, 40);
        read(m_tank, u"tan"_s, u"0.2"_s, 2);
        read(m_tank, u"no2"_s, u"0.1"_s, 2);
        enter(record::EntryKind::Observation, u"alg_dust"_s).severity = 2;
        enter(record::EntryKind::Addition, u"cherry shrimp"_s).count = 12;
        for (record::Entry& entry : m_entries) {
            ASSERT_TRUE(m_keeper.enter(entry));
        }
        m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, m_theme, m_ask);
        m_window->resize(1600, 1000);
        m_window->show();
        m_window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    }
    record::Entry& enter(record::EntryKind kind, const QString& subject)
    {
        record::Entry entry;
        entry.tank = m_tank;
        entry.layout = layoutOf(m_tank);
        entry.kind = kind;
        entry.subject = subject;
        entry.at = m_clock.now().plusDays(-1);
        m_entries.push_back(entry);
        return m_entries.back();
    }
    /// The topic that F1 opens beside this page.
    QString f1(Page page)
    {
        m_window->actions().action(u"guide.open"_s)->trigger();
        EXPECT_EQ(m_window->page(), page) << "the page stays";
        EXPECT_EQ(m_window->panels()->host()->current(), m_window->panels()->guide());
        return m_window->panels()->guide()->topic();
    }

    record::TankId m_tank;
    std::deque<record::Entry> m_entries;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(GuideFrameTest, RoundsParameterAndTask)
{
    m_window->showPage(Page::Rounds);
    RoundsPage* rounds = m_window->rounds();
    rounds->grid()->setFocus();
    rounds->grid()->setCurrentIndex(rounds->model().index(0, rounds->model().columnOf(u"no2"_s)));
    EXPECT_EQ(f1(Page::Rounds), u"term:no2"_s);
    const auto& model = rounds->work()->model();
    for (int row = 0; row < model.rowCount(); ++row) {
        if (const care::DueItem* item = model.item(model.index(row)); item != nullptr && !item->templateKey.isEmpty()) {
            rounds->work()->list()->setFocus();
            rounds->work()->list()->setCurrentIndex(model.index(row));
            EXPECT_EQ(f1(Page::Rounds), u"task:"_s + item->templateKey);
            return;
        }
    }
    ADD_FAILURE() << "there is work in a tank left for weeks";
}

TEST_F(GuideFrameTest, LanesTask)
{
    m_window->showPage(Page::Lanes);
    LaneView& view = m_window->findChild<LanesPage*>()->view();
    view.setFocus();
    QTest::keyClick(&view, Qt::Key_Home);
    ASSERT_NE(view.selectedChip(), nullptr);
    EXPECT_EQ(f1(Page::Lanes), u"task:"_s + view.selectedChip()->item.templateKey);
}

TEST_F(GuideFrameTest, TrendsParameter)
{
    m_window->showPage(Page::Trends);
    m_window->trends()->choose({layoutOf(m_tank)}, {u"no2"_s, u"tan"_s});
    m_window->trends()->view().setFocus();
    const auto& view = m_window->trends()->view();
    EXPECT_EQ(f1(Page::Trends), u"term:"_s + view.model().parameters[view.currentParameter()].key);
}

TEST_F(GuideFrameTest, CycleGateAndPanel)
{
    m_forecasts.refresh();
    m_forecasts.wait();
    m_window->showPage(Page::Cycle);
    m_window->cycle()->setSelected(m_tank);
    m_window->cycle()->wait();
    CardTable& table = m_window->cycle()->gates().table();
    ASSERT_GE(table.rows().size(), 2u);
    table.setFocus();
    table.setChosenRow(1);
    EXPECT_EQ(f1(Page::Cycle), u"rule:G2"_s);
    EXPECT_TRUE(m_window->panels()->guide()->pane()->article().title.contains(u"G2"_s));
}

TEST_F(GuideFrameTest, HistoryFindingAndTalk)
{
    m_window->showPage(Page::History);
    m_window->history()->setSelected(m_tank);
    m_window->history()->wait();
    m_window->history()->begin();
    EXPECT_EQ(f1(Page::History), u"condition:alg_dust"_s);
    m_window->history()->reset().startField()->setFocus();
    EXPECT_EQ(f1(Page::History), u"task:recover-or-reset"_s);
}

TEST_F(GuideFrameTest, StockSpecies)
{
    m_window->showPage(Page::Stock);
    m_window->stock()->setSelected(m_tank);
    QTest::qWait(1);
    StockTable* animals = m_window->stock()->animals();
    animals->setFocus();
    animals->setCurrentIndex(animals->model()->index(1, 0));
    EXPECT_EQ(f1(Page::Stock), u"species:A002"_s);
}

TEST_F(GuideFrameTest, ACautionCanBeNamedAndEscapeGivesThePageBack)
{
    m_window->showPage(Page::Rounds);
    m_window->rounds()->grid()->setFocus();
    QWidget* before = QApplication::focusWidget();
    m_window->actions().action(u"guide.open"_s)->setData(u"C-BLEACH"_s);
    EXPECT_EQ(f1(Page::Rounds), u"caution:C-BLEACH"_s);
    GuidePanel* panel = m_window->panels()->guide();
    EXPECT_TRUE(panel->pane()->hasFocus());
    panel->open(u"caution:C-CO2"_s);
    panel->back();
    EXPECT_EQ(panel->topic(), u"caution:C-BLEACH"_s);
    QTest::keyClick(panel->pane(), Qt::Key_Escape);
    EXPECT_EQ(m_window->panels()->host()->current(), nullptr);
    EXPECT_EQ(QApplication::focusWidget(), before);
    EXPECT_EQ(m_window->page(), Page::Rounds);
}

TEST_F(GuideFrameTest, TheWholePageOpensAtTheSameTopicAndF1StaysThere)
{
    m_window->showPage(Page::Rounds);
    m_window->openGuide(u"alg_spot"_s);
    emit m_window->panels()->guide()->pageWanted(m_window->panels()->guide()->topic());
    EXPECT_EQ(m_window->page(), Page::Guide);
    EXPECT_EQ(m_window->guide()->topic(), u"condition:alg_spot"_s);
    EXPECT_EQ(m_window->panels()->host()->current(), nullptr);
    m_window->openGuide(u"C-CO2"_s);
    EXPECT_EQ(m_window->guide()->topic(), u"caution:C-CO2"_s);
    EXPECT_EQ(m_window->panels()->host()->current(), nullptr) << "no second guide beside the first";
    m_window->guide()->field()->clear();
    emit m_window->guide()->leaveWanted();
    EXPECT_EQ(m_window->page(), Page::Rounds);
}

TEST_F(GuideFrameTest, WhatTheGuideDoesNotHaveIsSearchedForAndNothingFocusedIsExplained)
{
    GuidePanel* panel = m_window->panels()->guide();
    panel->openAbout({u"staghorn"_s});
    EXPECT_TRUE(panel->topic().isEmpty());
    EXPECT_FALSE(panel->pane()->article().blocks.front().lines.empty());
    panel->openAbout({u"xyzzy"_s});
    EXPECT_TRUE(panel->pane()->article().blocks.front().lines.empty());
    EXPECT_FALSE(panel->pane()->article().lead.isEmpty());
    panel->openAbout({});
    EXPECT_GT(panel->pane()->article().blocks.front().lines.size(), 20u) << "the terms";
}

TEST_F(GuideFrameTest, EditingOpensBesideTheGuide)
{
    m_window->showPage(Page::Guide);
    m_window->guide()->open(u"rule:warm"_s);
    emit m_window->guide()->editWanted(facts::FactKind::Limit, u"warm"_s);
    EXPECT_EQ(m_window->panels()->host()->current(), m_window->panels()->facts());
    EXPECT_EQ(m_window->page(), Page::Guide);
}

} // namespace littoral::ui::test
