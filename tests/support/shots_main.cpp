// SPDX-License-Identifier: GPL-3.0-or-later
// Renders every page of the sample row to PNG without a display: fixed clock, light and dark, 100 % and 200 % text.
// Usage: littoral_shots FOLDER [LANGUAGE]
#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "core/facade/sample_row.h"
#include "core/wording/language.h"
#include "ui/frame/file_ask.h"
#include "ui/frame/main_window.h"
#include "ui/frame/rail.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/cycle/cycle_page.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/stock/stock_cards.h"
#include "ui/pages/stock/stock_page.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/style/littoral_style.h"
#include "ui/widgets/trends/trend_view.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cstdio>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

constexpr QSize kSize(1600, 1000);
constexpr QSize kSmallest(1024, 680);
constexpr int kSettleMs = 350; // longer than any animation of the workbench

void settle()
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < kSettleMs) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

class Shooter
{
public:
    Shooter(QApplication& app, QDir folder)
        : m_app(app)
        , m_folder(std::move(folder))
    {
    }

    /// One window with its own store, photographed page by page.
    void shoot(ui::Scheme scheme, double textScale, QSize size, bool sample)
    {
        QTemporaryDir place;
        const record::FixedClock clock(record::Moment::fromIso(u"2026-11-25T07:40:00Z"_s));
        ui::Theme theme(scheme, textScale);
        ui::applyTheme(m_app, theme);
        facade::Keeper keeper(clock);
        m_keeper = &keeper;
        facade::Forecasts forecasts(keeper);
        ui::FileAsk ask;
        if (sample) {
            require(keeper.create(place.filePath(u"sample.littoral"_s)));
            require(facade::makeSampleRow(keeper, clock.now()));
        }
        ui::MainWindow window(keeper, forecasts, theme, ask);
        window.resize(size);
        window.show();
        settle();
        forecasts.refresh();
        forecasts.wait();
        settle();
        const QString suffix = u"_%1%2%3"_s.arg(scheme == ui::Scheme::Dark           ? u"dark"_s
                                                : scheme == ui::Scheme::HighContrast ? u"contrast"_s
                                                                                     : u"light"_s,
                                                textScale > 1.0 ? u"_%1"_s.arg(qRound(textScale * 100)) : QString(),
                                                size == kSize ? QString() : u"_small"_s);
        if (!sample) {
            save(window, u"first_run"_s + suffix);
            return;
        }
        window.showPage(ui::MainWindow::Page::Lanes);
        settle();
        save(window, u"lanes"_s + suffix);
        if (auto* lanes = window.findChild<ui::LanesPage*>()) {
            lanes->axis().setMode(ui::AxisMode::Age);
            settle();
            save(window, u"lanes_age"_s + suffix);
            lanes->axis().setMode(ui::AxisMode::Calendar);
        }
        trends(window, keeper, suffix);
        cycle(window, keeper, suffix);
        history(window, suffix);
        window.showPage(ui::MainWindow::Page::Rounds);
        settle();
        save(window, u"rounds"_s + suffix);
        stock(window, suffix);
        bench(window, suffix);
        window.showPage(ui::MainWindow::Page::Guide);
        window.openGuide(u"alg_cyano"_s);
        settle();
        save(window, u"guide"_s + suffix);
        window.showPage(ui::MainWindow::Page::Guide);
        window.openGuide(u"Neocaridina davidi"_s);
        settle();
        save(window, u"guide_species"_s + suffix);
        window.showPage(ui::MainWindow::Page::Rounds);
        editors(window, suffix);
    }

private:
    /// The young tank beside its earlier layout and the other young one: at equal age with a crosshair, then tank under
    /// tank, then the table.
    void trends(ui::MainWindow& window, const facade::Keeper& keeper, const QString& suffix)
    {
        window.showPage(ui::MainWindow::Page::Trends);
        ui::TrendsPage& page = *window.trends();
        if (const record::Tank* tank = keeper.row().tankNamed(u"Slate Ford"_s)) {
            page.setSelected(tank->id);
        }
        settle();
        save(window, u"trends_dates"_s + suffix);
        page.toggleMode();
        page.view().setCursor(10 * ui::kDayMs + ui::kDayMs / 2);
        settle();
        save(window, u"trends"_s + suffix);
        page.bar().setArrangement(ui::TrendArrangement::Stacked);
        settle();
        save(window, u"trends_stacked"_s + suffix);
        page.bar().setArrangement(ui::TrendArrangement::Grid);
        settle();
        save(window, u"trends_grid"_s + suffix);
        page.bar().setArrangement(ui::TrendArrangement::Overlay);
        page.toggleTable();
        settle();
        save(window, u"trends_table"_s + suffix);
        page.toggleTable();
        page.toggleMode();
    }

    /// The tank whose cycle is open: what is planned, another plan looked at, and the table.
    void cycle(ui::MainWindow& window, const facade::Keeper& keeper, const QString& suffix)
    {
        window.showPage(ui::MainWindow::Page::Cycle);
        ui::CyclePage& page = *window.cycle();
        if (const record::Tank* tank = keeper.row().tankNamed(u"Slate Ford"_s)) {
            page.setSelected(tank->id);
        }
        page.wait();
        settle();
        save(window, u"cycle"_s + suffix);
        page.choosePlan(forecast::ChangePlan{0.3, 3.0});
        page.wait();
        settle();
        save(window, u"cycle_plan"_s + suffix);
        page.toggleTable();
        settle();
        save(window, u"cycle_table"_s + suffix);
        page.toggleTable();
        page.choosePlan(std::nullopt);
    }

    /// The tank whose crypts melted, with the first line of evidence pointed at.
    void history(ui::MainWindow& window, const QString& suffix)
    {
        const record::Tank* tank = m_keeper->row().tankNamed(u"Fen Corner"_s);
        if (tank == nullptr) {
            return;
        }
        window.rail()->select(tank->id);
        emit window.rail()->selectedChanged(tank->id);
        window.showPage(ui::MainWindow::Page::History);
        window.history()->waitForReset();
        settle();
        window.history()->begin();
        settle();
        save(window, u"history"_s + suffix);
    }

    /// With a shoal thought about, run through the forecast.
    void stock(ui::MainWindow& window, const QString& suffix)
    {
        if (const record::Tank* tank = m_keeper->row().tankNamed(u"Heron Sill"_s)) {
            window.rail()->select(tank->id);
            emit window.rail()->selectedChanged(tank->id);
            window.showPage(ui::MainWindow::Page::Stock);
            window.stock()->addition()->choose(u"A024"_s, 18);
            window.stock()->desk().wait();
            settle();
            save(window, u"stock"_s + suffix);
            window.stock()->addition()->choose({}, 1);
        }
    }

    void bench(ui::MainWindow& window, const QString& suffix)
    {
        window.showPage(ui::MainWindow::Page::Bench);
        window.bench()->open(u"target"_s, {{u"now"_s, u"33"_s}, {u"target"_s, u"20"_s}, {u"source"_s, u"8"_s}});
        settle();
        save(window, u"bench"_s + suffix);
        window.bench()->open(u"co2"_s, {{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}, {u"phbase"_s, u"7.5"_s}});
        settle();
        save(window, u"bench_co2"_s + suffix);
    }

    void editors(ui::MainWindow& window, const QString& suffix)
    {
        for (const auto& [action, name] :
             {std::pair(u"entry.new"_s, u"entry_editor"_s), std::pair(u"tank.edit"_s, u"tank_editor"_s),
              std::pair(u"keys"_s, u"keys"_s)}) {
            if (QAction* open = window.actions().action(action)) {
                open->trigger();
                settle();
                save(window, name + suffix);
            }
        }
    }

    static void require(const Result<void>& done)
    {
        if (!done) {
            std::fprintf(stderr, "%s\n", done.error().sentence().c_str());
            std::exit(1);
        }
    }

    void save(QWidget& window, const QString& name)
    {
        const QString path = m_folder.filePath(name + u".png"_s);
        if (!window.grab().save(path)) {
            std::fprintf(stderr, "cannot write %s\n", qPrintable(path));
            std::exit(1);
        }
        std::printf("%s\n", qPrintable(path));
    }

    QApplication& m_app;
    QDir m_folder;
    facade::Keeper* m_keeper = nullptr;
};

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    // The keeper's own window size and look stay out of the pictures.
    QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
    QApplication app(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QStringList arguments = QApplication::arguments();
    wording::Translation translation;
    translation.use(arguments.value(2, u"en"_s));
    if (translation.tag() != u"en"_s) {
        QLocale::setDefault(wording::localeFor(translation.tag()));
    }
    QDir folder(arguments.size() > 1 ? arguments[1] : u"build/shots"_s);
    if (!folder.mkpath(u"."_s)) {
        std::fprintf(stderr, "cannot make %s\n", qPrintable(folder.path()));
        return 1;
    }
    Shooter shooter(app, folder);
    for (const ui::Scheme scheme : {ui::Scheme::Light, ui::Scheme::Dark}) {
        for (const double scale : {1.0, 2.0}) {
            shooter.shoot(scheme, scale, kSize, true);
            shooter.shoot(scheme, scale, kSize, false);
        }
    }
    shooter.shoot(ui::Scheme::HighContrast, 1.0, kSize, true);
    shooter.shoot(ui::Scheme::Light, 1.0, kSmallest, true);
    return 0;
}
