// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "core/record/shown.h"
#include "ui/frame/action_registry.h"
#include "ui/frame/reminder.h"
#include "ui/frame/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/paper_out.h"

#include <QTimer>
#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

class QMenu;
class QStackedWidget;

namespace littoral::ui {

class BenchPage;
class CyclePage;
class FirstRunPage;
class GuidePage;
class HistoryPage;
class LanesPage;
class NoticeStrip;
class Panels;
class Rail;
class RoundsPage;
class StatusLine;
class StockPage;
class StoreDesk;
class TopBar;
class TrendsPage;

/// The window: puts bars, rail, pages and panels together and connects them; what they do is their own business.
class MainWindow final : public QWidget
{
    Q_OBJECT

public:
    /// In the order of the top bar; Ctrl+1 .. in the same order.
    enum class Page { Lanes, Trends, Cycle, History, Rounds, Stock, Bench, Guide };
    Q_ENUM(Page)

    /// All references outlive the window.
    MainWindow(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// A path given, the sample row, or whatever was open last; with none of them the first-run page stays. Asks
    /// nothing.
    void openAtStart(const std::optional<QString>& path, bool sample);
    /// The desktop's own look, for "follow the system"; see systemScheme().
    void setSystemScheme(Scheme scheme);
    /// The same for "reduce motion"; see systemReducesMotion().
    void setSystemMotion(bool reduced);

    [[nodiscard]] ActionRegistry& actions() { return *m_actions; }
    [[nodiscard]] RoundsPage* rounds() { return m_rounds; }
    [[nodiscard]] TrendsPage* trends() { return m_trends; }
    [[nodiscard]] CyclePage* cycle() { return m_cycle; }
    [[nodiscard]] HistoryPage* history() { return m_history; }
    [[nodiscard]] StockPage* stock() { return m_stock; }
    [[nodiscard]] BenchPage* bench() { return m_bench; }
    [[nodiscard]] GuidePage* guide() { return m_guide; }
    [[nodiscard]] FirstRunPage* firstRun() { return m_firstRun; }
    [[nodiscard]] Panels* panels() { return m_panels; }
    [[nodiscard]] Rail* rail() { return m_rail; }
    [[nodiscard]] StatusLine* statusLine() { return m_status; }
    [[nodiscard]] NoticeStrip* errorStrip() { return m_error; }
    [[nodiscard]] NoticeStrip* banner() { return m_banner; }
    [[nodiscard]] TopBar* topBar() { return m_top; }
    [[nodiscard]] Reminder& reminder() { return m_reminder; }
    [[nodiscard]] Page page() const { return m_page; }
    void showPage(Page page);
    /// The guide beside the page at what is focused; at a topic, if one is given (a topic's id, a caution's id, a
    /// subject of observations, a species). On the Guide page itself it opens there.
    void openGuide(const QString& topic = {});
    /// Puts what is half typed on the pages into the record or the program's memory.
    void settle();
    /// Goes on where another window left off.
    void takeUp(Page page, record::TankId tank);

signals:
    /// Empty: the desktop's.
    void languageWanted(const QString& tag);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void assemble();
    void addPage(Page page, const QString& name);
    void makeStoreActions();
    void makeRowActions();
    void makeEditActions();
    void makePageActions();
    void makeTrendsActions();
    void makeCycleActions();
    void makePaperActions();
    void makeLookActions();
    struct UnitChoice;
    void addUnitChoices(const std::vector<UnitChoice>& choices);
    void makeUnitActions();
    void makeUnitsMenu();
    void refreshUnits();
    void makeLanguageActions();
    void askLanguage(const QString& tag);
    [[nodiscard]] bool panelIsOpen();
    void makeReminderActions();
    void makeMenu();
    void connectStore();
    void connectPages();
    void storeChanged();
    void refreshActions();
    void refreshPages();
    [[nodiscard]] QWidget* widgetOf(Page page) const;
    /// What F1 may be about, the closest first.
    [[nodiscard]] QStringList focusedTopics() const;
    void connectGuide();
    void select(record::TankId tank);
    void openWork(const care::DueItem& item);
    void showKeys();
    void showTrendsKeys();
    void showHistoryKeys();
    void connectHistory();
    void connectRounds();
    void makeRecordActions();
    void showBenchKeys();
    void printPage(PaperTo to);
    void printRow(PaperTo to);
    void refreshPaperActions();
    void connectBench();
    void undo(bool redo);
    void tell(const QString& sentence);
    void fail(const Error& error, const QString& safe);
    void setLook(Look look);
    void setTextScale(double scale);
    void setMotion(MotionChoice choice);
    void arrange();
    void goToRegion(bool next);

    facade::Keeper& m_keeper;
    facade::Forecasts& m_forecasts;
    Theme& m_theme;
    Ask& m_ask;
    Session m_session;
    TrayNotifier m_tray;
    Reminder m_reminder;
    Scheme m_system = Scheme::Light;
    bool m_systemReduces = false;
    Page m_page = Page::Lanes;
    Page m_beforeGuide = Page::Lanes;
    ActionRegistry* m_actions;
    FindModel* m_find;
    StoreDesk* m_desk;
    TopBar* m_top;
    Rail* m_rail;
    NoticeStrip* m_banner;
    NoticeStrip* m_error;
    QStackedWidget* m_stack;
    FirstRunPage* m_firstRun;
    LanesPage* m_lanes;
    TrendsPage* m_trends;
    CyclePage* m_cycle;
    HistoryPage* m_history;
    RoundsPage* m_rounds;
    StockPage* m_stock;
    BenchPage* m_bench;
    GuidePage* m_guide;
    Panels* m_panels;
    StatusLine* m_status;
    QMenu* m_menu;
    QMenu* m_unitsMenu;
    std::vector<std::pair<QAction*, std::function<void(record::Units&)>>> m_unitChoices;
    QTimer m_forecastSoon;
    QTimer m_minute;
};

} // namespace littoral::ui
