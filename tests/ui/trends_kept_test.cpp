// SPDX-License-Identifier: GPL-3.0-or-later
// What Trends remembers, and its filter.
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/models/kept_trends.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/call_field.h"
#include "ui/widgets/trends/tick_list.h"
#include "ui/widgets/trends/trend_view.h"

#include <QAction>
#include <QMenu>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

class TrendsKeptTest : public FrameTest
{
protected:
    void SetUp() override
    {
        addKits();
        m_slate = addTank(u"Slate Ford"_s, 16);
        m_mill = addTank(u"Mill Race"_s, 200);
        for (const auto& [tank, parameter, typed] :
             {std::tuple(m_slate, u"no2"_s, u"0.8"_s), std::tuple(m_mill, u"no3"_s, u"20"_s)}) {
            read(tank, parameter, typed, 2);
        }
        open();
    }
    void open()
    {
        m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, m_theme, m_ask);
        m_window->resize(1600, 1000);
        m_window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
        m_window->showPage(MainWindow::Page::Trends);
        QApplication::processEvents();
    }
    TrendsPage& page() { return *m_window->trends(); }
    QStringList viewNames() { return names(keptTrends(m_keeper.row())); }
    static QStringList names(const std::vector<KeptTrend>& views)
    {
        QStringList all;
        for (const KeptTrend& one : views) {
            all << one.name;
        }
        return all;
    }

    record::TankId m_slate, m_mill;
    std::unique_ptr<MainWindow> m_window;
};

TEST_F(TrendsKeptTest, AViewComesBackAsItWasKept)
{
    page().choose({layoutOf(m_mill)}, {u"no3"_s, u"kh"_s});
    page().bar().setArrangement(TrendArrangement::Grid);
    page().toggleMode();
    page().saveView(u"  Nitrate  of Mill Race "_s);
    EXPECT_EQ(viewNames(), QStringList{u"Nitrate of Mill Race"_s});
    page().choose({layoutOf(m_slate)}, {u"no2"_s});
    page().bar().setArrangement(TrendArrangement::Overlay);
    page().toggleMode();
    page().useView(u"Nitrate of Mill Race"_s);
    EXPECT_EQ(page().tanks().ticked(), QStringList{QString::number(layoutOf(m_mill).value)});
    EXPECT_TRUE(page().parameters().ticked().contains(u"no3"_s));
    EXPECT_TRUE(page().parameters().ticked().contains(u"kh"_s));
    EXPECT_EQ(page().view().options().arrangement, TrendArrangement::Grid);
    EXPECT_EQ(page().bar().options().arrangement, TrendArrangement::Grid);
}

TEST_F(TrendsKeptTest, ViewsAreOfTheStoreAndUndoLikeEverythingElse)
{
    page().saveView(u"One"_s);
    page().saveView(u"Two"_s);
    page().removeView(u"One"_s);
    EXPECT_EQ(viewNames(), QStringList{u"Two"_s});
    m_window->actions().action(u"undo"_s)->trigger();
    EXPECT_EQ(viewNames(), (QStringList{u"One"_s, u"Two"_s}));
    ASSERT_TRUE(m_keeper.create(path(u"other.littoral"_s)));
    EXPECT_TRUE(viewNames().isEmpty());
    ASSERT_TRUE(m_keeper.open(path(u"test.littoral"_s)));
    EXPECT_EQ(viewNames(), (QStringList{u"One"_s, u"Two"_s}));
}

TEST_F(TrendsKeptTest, OneOfTheSameNameIsReplacedAndANamelessOneIsNotKept)
{
    page().choose({layoutOf(m_mill)}, {u"no3"_s});
    page().saveView(u"Mine"_s);
    page().choose({layoutOf(m_mill)}, {u"kh"_s});
    page().saveView(u"Mine"_s);
    page().saveView(u"   "_s);
    const auto views = keptTrends(m_keeper.row());
    ASSERT_EQ(views.size(), 1U);
    EXPECT_EQ(views.front().parameters, QStringList{u"kh"_s});
}

TEST_F(TrendsKeptTest, TheMenuOffersWhatIsKeptAndAsksForANameInTheBar)
{
    page().saveView(u"Salts & hardness"_s);
    QApplication::processEvents();
    EXPECT_EQ(page().bar().viewsMenu()->actions().front()->text(), u"Salts && hardness"_s) << "no mnemonic by chance";
    m_window->actions().action(u"trends.keep"_s)->trigger();
    ASSERT_TRUE(page().bar().viewName()->hasFocus());
    QTest::keyClicks(page().bar().viewName(), u"Second"_s);
    QTest::keyClick(page().bar().viewName(), Qt::Key_Return);
    EXPECT_TRUE(viewNames().contains(u"Second"_s));
    EXPECT_FALSE(page().bar().viewName()->isVisible());
}

TEST_F(TrendsKeptTest, TheLastChoiceIsThereAgainAfterAStart)
{
    QTest::mouseClick(page().parameters().viewport(), Qt::LeftButton, Qt::NoModifier, [this] {
        for (int row = 0; row < page().parameters().model()->rowCount(); ++row) {
            if (page().parameters().lines()[static_cast<std::size_t>(row)].key == u"gh"_s) {
                return page().parameters().visualRect(page().parameters().model()->index(row, 0)).center();
            }
        }
        return QPoint();
    }());
    ASSERT_TRUE(page().parameters().ticked().contains(u"gh"_s));
    page().bar().setArrangement(TrendArrangement::Stacked);
    m_window.reset();
    ASSERT_TRUE(m_keeper.open(path(u"test.littoral"_s)));
    open();
    EXPECT_TRUE(page().parameters().ticked().contains(u"gh"_s));
    EXPECT_EQ(page().bar().options().arrangement, TrendArrangement::Stacked);
}

TEST_F(TrendsKeptTest, TheFilterHidesLinesAndKeepsTicks)
{
    page().choose({layoutOf(m_slate), layoutOf(m_mill)}, {u"no2"_s, u"no3"_s});
    const QStringList tanks = page().tanks().ticked();
    QTest::keyClick(&page().view(), Qt::Key_F, Qt::ControlModifier);
    ASSERT_TRUE(page().filter().hasFocus());
    QTest::keyClicks(&page().filter(), u"mill"_s);
    int shown = 0;
    for (int row = 0; row < page().tanks().model()->rowCount(); ++row) {
        shown += page().tanks().isRowHidden(row) ? 0 : 1;
    }
    EXPECT_EQ(shown, 2) << "the heading and the tank";
    EXPECT_TRUE(page().parameters().isEmpty());
    EXPECT_EQ(page().tanks().ticked(), tanks) << "what is hidden stays on show in the charts";
    QTest::keyClick(&page().filter(), Qt::Key_Return);
    EXPECT_TRUE(page().tanks().hasFocus());
    QTest::keyClick(&page().tanks(), Qt::Key_Space);
    EXPECT_EQ(page().tanks().ticked().size(), tanks.size() - 1);
    page().filter().leave();
    EXPECT_FALSE(page().parameters().isEmpty());
}

TEST(KeptTrends, RefusesWhatIsNoView)
{
    EXPECT_FALSE(trendFromJson({}));
    KeptTrend trend;
    trend.name = u"x"_s;
    trend.layouts = {record::LayoutId{1'764'055'200'000'001}};
    trend.parameters = {u"no2"_s, u"nonsense"_s};
    const auto again = trendFromJson(toJson(trend));
    ASSERT_TRUE(again);
    EXPECT_EQ(again->layouts, trend.layouts) << "all digits of an id";
    EXPECT_EQ(again->parameters, QStringList{u"no2"_s});
    trend.to_d = trend.from_d;
    EXPECT_FALSE(trendFromJson(toJson(trend)));
}

} // namespace littoral::ui::test
