// SPDX-License-Identifier: GPL-3.0-or-later
// Trends inside the window: its place among the pages, its keys, what it shares with the others.
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/rail.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/trends/trend_view.h"

#include <QApplication>
#include <QListView>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

class TrendsWindowTest : public FrameTest
{
protected:
    void SetUp() override
    {
        addKits();
        m_slate = addTank(u"Slate Ford"_s, 16);
        m_mill = addTank(u"Mill Race"_s, 200);
        read(m_slate, u"no2"_s, u"0.8"_s, 2);
        read(m_mill, u"no3"_s, u"20"_s, 2);
        m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, m_theme, m_ask);
        m_window->resize(1600, 1000);
        m_window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus == nullptr ? m_window.get() : focus, key, modifiers);
    }

    record::TankId m_slate, m_mill;
    std::unique_ptr<MainWindow> m_window;
};

TEST_F(TrendsWindowTest, IsTheSecondPageAndItsLettersActThereAlone)
{
    press(Qt::Key_T);
    EXPECT_FALSE(m_window->trends()->isTable()) << "T means nothing to Trends while Lanes is open";
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(m_window->page(), MainWindow::Page::Trends);
    EXPECT_TRUE(m_window->trends()->view().hasFocus());
    press(Qt::Key_T);
    EXPECT_TRUE(m_window->trends()->isTable());
    press(Qt::Key_T);
    EXPECT_FALSE(m_window->trends()->isTable());
    press(Qt::Key_Comma);
    EXPECT_TRUE(m_window->trends()->view().hasCursor());
}

TEST_F(TrendsWindowTest, SharesItsAxisWithLanes)
{
    press(Qt::Key_2, Qt::ControlModifier);
    press(Qt::Key_A);
    EXPECT_EQ(m_window->findChild<LanesPage*>()->axis().mode(), AxisMode::Age);
    press(Qt::Key_A);
    EXPECT_EQ(m_window->findChild<LanesPage*>()->axis().mode(), AxisMode::Calendar);
}

TEST_F(TrendsWindowTest, FollowsTheTankPickedInTheRail)
{
    press(Qt::Key_2, Qt::ControlModifier);
    const auto selected = [this] {
        const TrendView& view = m_window->trends()->view();
        return view.model().tanks.at(view.selected()).name;
    };
    EXPECT_EQ(selected(), u"Slate Ford"_s);
    m_window->rail()->list()->setFocus();
    press(Qt::Key_Down);
    EXPECT_EQ(selected(), u"Mill Race"_s);
}

} // namespace littoral::ui::test
