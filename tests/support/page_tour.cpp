// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/page_tour.h"

#include "core/facade/sample_row.h"
#include "ui/frame/rail.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/cycle/cycle_page.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/stock/stock_cards.h"
#include "ui/pages/stock/stock_page.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/trends/trend_view.h"

#include <QAction>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <cstdio>
#include <cstdlib>

namespace littoral::test {

using namespace Qt::StringLiterals;
using ui::MainWindow;

namespace {

constexpr int kSettleMs = 220; // longer than any motion of the workbench

void require(const Result<void>& done)
{
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().sentence().c_str());
        std::exit(1);
    }
}

} // namespace

PageTour::PageTour(ui::Theme& theme, QSize size, bool sample)
    : m_clock(record::Moment::fromIso(u"2026-11-25T07:40:00Z"_s))
    , m_keeper(m_clock)
    , m_forecasts(m_keeper)
{
    // Settings and data of its own: nothing of the person at the machine is read or written.
    qputenv("XDG_CONFIG_HOME", m_place.path().toUtf8());
    qputenv("XDG_DATA_HOME", m_place.path().toUtf8());
    if (sample) {
        require(m_keeper.create(m_place.filePath(u"sample.littoral"_s)));
        require(facade::makeSampleRow(m_keeper, m_clock.now()));
    }
    m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, theme, m_ask);
    m_window->resize(size);
    m_window->show();
    settle();
    m_forecasts.refresh();
    m_forecasts.wait();
    settle();
}

void PageTour::settle()
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < kSettleMs) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

void PageTour::select(const QString& tank)
{
    if (const record::Tank* found = m_keeper.row().tankNamed(tank)) {
        m_window->rail()->select(found->id);
        emit m_window->rail()->selectedChanged(found->id);
    }
}

void PageTour::pages(const Look& look)
{
    if (!m_keeper.hasStore()) {
        look(u"first_run"_s);
        return;
    }
    lanes(look);
    trends(look);
    cycle(look);
    history(look);
    m_window->showPage(MainWindow::Page::Rounds);
    settle();
    look(u"rounds"_s);
    stock(look);
    bench(look);
    guide(look);
}

void PageTour::lanes(const Look& look)
{
    m_window->showPage(MainWindow::Page::Lanes);
    settle();
    look(u"lanes"_s);
    if (auto* page = m_window->findChild<ui::LanesPage*>()) {
        page->axis().setMode(ui::AxisMode::Age);
        settle();
        look(u"lanes_age"_s);
        page->axis().setMode(ui::AxisMode::Calendar);
    }
}

/// The young tank beside its earlier layout and the other young one: at equal age with a crosshair, then tank under
/// tank, then the table.
void PageTour::trends(const Look& look)
{
    m_window->showPage(MainWindow::Page::Trends);
    ui::TrendsPage& page = *m_window->trends();
    if (const record::Tank* tank = m_keeper.row().tankNamed(u"Slate Ford"_s)) {
        page.setSelected(tank->id);
    }
    settle();
    look(u"trends_dates"_s);
    page.toggleMode();
    page.view().setCursor(10 * ui::kDayMs + ui::kDayMs / 2);
    settle();
    look(u"trends"_s);
    page.bar().setArrangement(ui::TrendArrangement::Stacked);
    settle();
    look(u"trends_stacked"_s);
    page.bar().setArrangement(ui::TrendArrangement::Grid);
    settle();
    look(u"trends_grid"_s);
    page.bar().setArrangement(ui::TrendArrangement::Overlay);
    page.toggleTable();
    settle();
    look(u"trends_table"_s);
    page.toggleTable();
    page.toggleMode();
}

/// The tank whose cycle is open: what is planned, another plan looked at, and the table.
void PageTour::cycle(const Look& look)
{
    m_window->showPage(MainWindow::Page::Cycle);
    ui::CyclePage& page = *m_window->cycle();
    if (const record::Tank* tank = m_keeper.row().tankNamed(u"Slate Ford"_s)) {
        page.setSelected(tank->id);
    }
    page.wait();
    settle();
    look(u"cycle"_s);
    page.choosePlan(forecast::ChangePlan{0.3, 3.0});
    page.wait();
    settle();
    look(u"cycle_plan"_s);
    page.toggleTable();
    settle();
    look(u"cycle_table"_s);
    page.toggleTable();
    page.choosePlan(std::nullopt);
}

/// The tank whose crypts melted, with the first line of evidence pointed at.
void PageTour::history(const Look& look)
{
    select(u"Fen Corner"_s);
    m_window->showPage(MainWindow::Page::History);
    m_window->history()->waitForReset();
    settle();
    m_window->history()->begin();
    settle();
    look(u"history"_s);
}

/// With a shoal thought about, run through the forecast.
void PageTour::stock(const Look& look)
{
    select(u"Heron Sill"_s);
    m_window->showPage(MainWindow::Page::Stock);
    m_window->stock()->addition()->choose(u"A024"_s, 18);
    m_window->stock()->desk().wait();
    settle();
    look(u"stock"_s);
    m_window->stock()->addition()->choose({}, 1);
}

void PageTour::bench(const Look& look)
{
    m_window->showPage(MainWindow::Page::Bench);
    m_window->bench()->open(u"target"_s, {{u"now"_s, u"33"_s}, {u"target"_s, u"20"_s}, {u"source"_s, u"8"_s}});
    settle();
    look(u"bench"_s);
    m_window->bench()->open(u"co2"_s, {{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}, {u"phbase"_s, u"7.5"_s}});
    settle();
    look(u"bench_co2"_s);
}

void PageTour::guide(const Look& look)
{
    m_window->showPage(MainWindow::Page::Guide);
    m_window->openGuide(u"alg_cyano"_s);
    settle();
    look(u"guide"_s);
    m_window->openGuide(u"Neocaridina davidi"_s);
    settle();
    look(u"guide_species"_s);
}

void PageTour::panels(const Look& look)
{
    m_window->showPage(MainWindow::Page::Rounds);
    for (const auto& [action, name] : {std::pair(u"entry.new"_s, u"entry_editor"_s),
                                       std::pair(u"tank.edit"_s, u"tank_editor"_s), std::pair(u"keys"_s, u"keys"_s)}) {
        if (QAction* open = m_window->actions().action(action)) {
            open->trigger();
            settle();
            look(name);
        }
    }
}

} // namespace littoral::test
