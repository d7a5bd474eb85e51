// SPDX-License-Identifier: GPL-3.0-or-later
// States of the pages: a tank without readings, a store that may only be read, a failure, a forecast out of date.
#include "core/facade/lanes.h"
#include "tests/ui/frame_fixture.h"
#include "tests/ui/support/text_fit.h"
#include "ui/frame/main_window.h"
#include "ui/widgets/notice_strip.h"

#include <QAction>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;
using Page = MainWindow::Page;

namespace {

constexpr Page kPages[] = {Page::Lanes,  Page::Trends, Page::Cycle, Page::History,
                           Page::Rounds, Page::Stock,  Page::Bench, Page::Guide};

} // namespace

class PageStatesTest : public FrameTest
{
protected:
    void open()
    {
        m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, m_theme, m_ask);
        m_window->resize(1600, 1000);
        m_window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    }
    /// All that can be read on the window, in one line.
    QString shown(Page page)
    {
        m_window->showPage(page);
        QTest::qWait(120);
        QStringList words;
        for (const PaintedText& text : paintedTexts(*m_window)) {
            words << text.text;
        }
        return words.join(u' ').simplified();
    }

    std::unique_ptr<MainWindow> m_window;
};

TEST_F(PageStatesTest, WithoutReadingsEachPageSaysWhatWillBeThere)
{
    addTank(u"Slate Ford"_s, 3);
    open();
    m_forecasts.wait();
    const std::pair<Page, QStringList> expected[] = {
        {Page::Lanes, {u"Cycle not known"_s}},
        {Page::Trends, {u"as they are typed"_s, u"Type readings"_s}},
        {Page::Cycle, {u"Nitrite"_s, u"Gates"_s}},
        {Page::History, {u"Nothing is recorded"_s}},
        {Page::Rounds, {u"Round of"_s}},
        {Page::Stock, {u"No animals are recorded here"_s}},
        {Page::Bench, {u"Source"_s}},
        {Page::Guide, {u"Guide"_s}},
    };
    for (const auto& [page, fragments] : expected) {
        const QString text = shown(page);
        for (const QString& fragment : fragments) {
            EXPECT_TRUE(text.contains(fragment))
                << static_cast<int>(page) << " lacks \"" << fragment.toStdString() << "\":\n"
                << text.toStdString();
        }
    }
}

TEST_F(PageStatesTest, AReadOnlyStoreIsSaidAboveEveryPage)
{
    addTank(u"Slate Ford"_s, 16);
    const QString place = m_keeper.path();
    m_keeper.close();
    ASSERT_TRUE(m_keeper.open(place, store::Access::ReadOnly));
    open();
    for (const Page page : kPages) {
        EXPECT_TRUE(shown(page).contains(u"open for reading only"_s)) << static_cast<int>(page);
        EXPECT_TRUE(m_window->banner()->isVisible());
    }
}

TEST_F(PageStatesTest, AFailureSaysWhatFailedAndStaysUntilItIsPutAway)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    QFile other(path(u"other.littoral"_s));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("this is no store");
    other.close();
    m_ask.open = other.fileName();
    m_window->actions().action(u"store.open"_s)->trigger();
    for (const Page page : {Page::Lanes, Page::Rounds, Page::Stock}) {
        shown(page);
        EXPECT_TRUE(m_window->errorStrip()->isVisible()) << static_cast<int>(page);
    }
}

TEST_F(PageStatesTest, AForecastOutOfDateKeepsItsBandAndSaysItsTime)
{
    const record::TankId tank = addTank(u"Slate Ford"_s, 16);
    addKits();
    read(tank, u"no2"_s, u"0.8"_s, 2);
    m_forecasts.refresh();
    m_forecasts.wait();
    const record::LayoutId layout = layoutOf(tank);
    const auto result = m_forecasts.result(layout);
    ASSERT_NE(result, nullptr);
    const auto lane = [&](const facade::ForecastResult* forecast, facade::ForecastState state) {
        return facade::laneOf(m_keeper.row(), layout, m_clock.now(), m_clock.today().addDays(20), forecast, state);
    };
    EXPECT_TRUE(lane(result.get(), facade::ForecastState::Ready).forecastNote.isEmpty());
    for (const auto state : {facade::ForecastState::Stale, facade::ForecastState::Running}) {
        const facade::LaneModel old = lane(result.get(), state);
        EXPECT_TRUE(old.forecastNote.contains(u"25 Nov 07:30"_s)) << old.forecastNote.toStdString();
        EXPECT_FALSE(old.series.front().forecast.empty());
    }
    EXPECT_FALSE(lane(nullptr, facade::ForecastState::Running).forecastNote.isEmpty());
}

} // namespace littoral::ui::test
