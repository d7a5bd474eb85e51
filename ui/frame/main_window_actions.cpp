// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/main_window.h"

#include "ui/frame/panels.h"
#include "ui/frame/rail.h"
#include "ui/frame/store_desk.h"
#include "ui/frame/top_bar.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/cycle/cycle_page.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/style/littoral_style.h"
#include "ui/widgets/find_field.h"

#include <QActionGroup>
#include <QMenu>
#include <QPushButton>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Group = ActionRegistry::Group;

namespace {

/// Ctrl and the page's place in the bar.
QKeySequence pageKey(MainWindow::Page page)
{
    return {Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(page))};
}

} // namespace

void MainWindow::makePageActions()
{
    m_actions->add(u"page.lanes"_s, tr("&Lanes"), Group::Pages, {pageKey(Page::Lanes)},
                   [this] { showPage(Page::Lanes); });
    m_actions->add(u"page.trends"_s, tr("&Trends"), Group::Pages, {pageKey(Page::Trends)},
                   [this] { showPage(Page::Trends); });
    m_actions->add(u"page.cycle"_s, tr("&Cycle"), Group::Pages, {pageKey(Page::Cycle)},
                   [this] { showPage(Page::Cycle); });
    m_actions->add(u"page.history"_s, tr("&History"), Group::Pages, {pageKey(Page::History)},
                   [this] { showPage(Page::History); });
    m_actions->add(u"page.rounds"_s, tr("&Rounds"), Group::Pages, {pageKey(Page::Rounds)},
                   [this] { showPage(Page::Rounds); });
    m_actions->add(u"page.stock"_s, tr("St&ock"), Group::Pages, {pageKey(Page::Stock)},
                   [this] { showPage(Page::Stock); });
    m_actions->add(u"page.bench"_s, tr("&Bench"), Group::Pages, {pageKey(Page::Bench)},
                   [this] { showPage(Page::Bench); });
    m_actions->add(u"page.guide"_s, tr("&Guide"), Group::Pages, {pageKey(Page::Guide)},
                   [this] { showPage(Page::Guide); });
    // A caller may put a topic's id into the action's data; it counts once.
    m_actions->add(u"guide.open"_s, tr("Guide at &what is focused"), Group::Help, {QKeySequence(Qt::Key_F1)}, [this] {
        QAction* action = m_actions->action(u"guide.open"_s);
        const QString topic = action->data().toString();
        action->setData({});
        openGuide(topic);
    });
    m_actions->add(u"region.next"_s, tr("Next region"), Group::Pages, {QKeySequence(Qt::Key_F6)},
                   [this] { goToRegion(true); });
    m_actions->add(u"region.previous"_s, tr("Previous region"), Group::Pages, {QKeySequence(Qt::SHIFT | Qt::Key_F6)},
                   [this] { goToRegion(false); });
    m_actions->add(u"find"_s, tr("&Find or do anything"), Group::Edit, {QKeySequence(Qt::CTRL | Qt::Key_K)},
                   [this] { m_top->find()->open(); });
    m_actions->add(u"menu"_s, tr("Menu"), Group::Help, {QKeySequence(Qt::Key_F10)}, [this] {
        QPushButton* button = m_top->menuButton();
        m_menu->popup(button->mapToGlobal(QPoint(button->width() - m_menu->sizeHint().width(), button->height() + 2)));
        m_menu->setActiveAction(m_menu->actions().value(0));
    });
    m_actions->add(u"keys"_s, tr("&Keys"), Group::Help,
                   {QKeySequence(Qt::Key_Question), QKeySequence(Qt::SHIFT | Qt::Key_Question)},
                   [this] { showKeys(); });
}

void MainWindow::makeCycleActions()
{
    // Single letters of the Cycle page; switched off on the others, where they mean something else.
    m_actions->add(u"cycle.adopt"_s, tr("&Adopt the plan looked at"), Group::Cycle, {QKeySequence(Qt::Key_A)},
                   [this] { m_cycle->adopt(); });
    m_actions->add(u"cycle.table"_s, tr("Charts as a &table"), Group::Cycle, {QKeySequence(Qt::Key_T)},
                   [this] { m_cycle->toggleTable(); });
    m_actions->add(u"cycle.refit"_s, tr("&Refit the forecast"), Group::Cycle, {QKeySequence(Qt::Key_R)},
                   [this] { m_cycle->refit(); });
    m_actions->add(u"cycle.mode"_s, tr("&Dates or days since flooding"), Group::Cycle, {QKeySequence(Qt::Key_D)},
                   [this] { m_cycle->toggleMode(); });
    m_actions->add(u"cycle.now"_s, tr("Go to &now"), Group::Cycle, {QKeySequence(Qt::Key_N)},
                   [this] { m_cycle->showNow(); });
}

void MainWindow::showBenchKeys()
{
    m_panels->showKeys(tr("Bench"), {{tr("↑ ↓"), tr("worksheet in the list")},
                                     {tr("Enter"), tr("from the list into the sheet")},
                                     {tr("Ctrl+F"), tr("filter the list")},
                                     {tr("Tab"), tr("next blank")},
                                     {tr("P"), tr("pin the sheet beside the others")},
                                     {tr("W"), tr("write to the record")},
                                     {tr("M"), tr("make it a task")},
                                     {tr("T"), tr("charts as tables")},
                                     {tr("F1"), tr("the sheet explained in the guide")},
                                     {tr("Enter"), tr("in a blank: to the one the sheet waits for")},
                                     {tr("Ctrl+P"), tr("print to a PDF file")},
                                     {tr("Ctrl+Shift+P"), tr("print on a printer")},
                                     {tr("Esc"), tr("back to the list; what was typed stays")}});
}

void MainWindow::makeRowActions()
{
    const auto tank = [this] { return m_rail->selected(); };
    m_actions->add(u"entry.new"_s, tr("&New entry"), Group::Row,
                   {QKeySequence(Qt::CTRL | Qt::Key_E), QKeySequence(Qt::Key_E)},
                   [this, tank] { m_panels->newEntry(tank(), record::EntryKind::WaterChange); });
    m_actions->add(u"entry.change"_s, tr("&Water change..."), Group::Row, {},
                   [this, tank] { m_panels->newEntry(tank(), record::EntryKind::WaterChange); });
    m_actions->add(u"entries"_s, tr("Entries of the tank..."), Group::Row, {QKeySequence(Qt::CTRL | Qt::Key_L)},
                   [this, tank] { m_panels->showEntries(tank()); });
    m_actions->add(u"tank.add"_s, tr("&Add a tank..."), Group::Row, {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T)},
                   [this] { m_panels->addTank(); });
    m_actions->add(u"tank.edit"_s, tr("Edit the &tank..."), Group::Row, {QKeySequence(Qt::CTRL | Qt::Key_T)},
                   [this, tank] { m_panels->editTank(tank()); });
    m_actions->add(u"targets"_s, tr("Target &bands..."), Group::Row, {},
                   [this, tank] { m_panels->showTargets(tank()); });
    m_actions->add(u"doses"_s, tr("&Doses of the tank..."), Group::Row, {}, [this, tank] {
        if (const auto* layout = m_keeper.row().currentLayout(tank(), m_keeper.clock().now())) {
            m_panels->showDoses(layout->layout.id);
        }
    });
    m_actions->add(u"kits"_s, tr("Test &kits..."), Group::Row, {}, [this] { m_panels->showKits(); });
    makeRecordActions();
    m_actions->add(u"source"_s, tr("New &source water..."), Group::Row, {}, [this] { m_panels->showSource({}); });
    m_actions->add(u"journey"_s, tr("&Journey and helper..."), Group::Row,
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_J)}, [this] { m_panels->showJourney(); });
}

void MainWindow::makeEditActions()
{
    m_actions->add(u"undo"_s, tr("&Undo"), Group::Edit, {QKeySequence(Qt::CTRL | Qt::Key_Z)}, [this] { undo(false); });
    m_actions->add(u"redo"_s, tr("Re&do"), Group::Edit,
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)},
                   [this] { undo(true); });
}

void MainWindow::makeStoreActions()
{
    m_actions->add(u"store.new"_s, tr("&New store..."), Group::Store, {QKeySequence(Qt::CTRL | Qt::Key_N)},
                   [this] { m_desk->askNew(); });
    m_actions->add(u"store.open"_s, tr("&Open a store..."), Group::Store, {QKeySequence(Qt::CTRL | Qt::Key_O)},
                   [this] { m_desk->askOpen(); });
    m_actions->add(u"store.sample"_s, tr("Open the &sample row"), Group::Store, {}, [this] { m_desk->openSample(); });
    m_actions->add(u"store.import"_s, tr("&Import CSV..."), Group::Store, {QKeySequence(Qt::CTRL | Qt::Key_I)},
                   [this] { m_desk->askImport(); });
    m_actions->add(u"store.export"_s, tr("&Export..."), Group::Store, {}, [this] { m_desk->askExport(); });
    m_actions->add(u"store.calendar"_s, tr("Due work as a &calendar..."), Group::Store, {},
                   [this] { m_desk->askCalendar(); });
    m_actions->add(u"store.backup"_s, tr("&Back up..."), Group::Store, {QKeySequence(Qt::CTRL | Qt::Key_B)},
                   [this] { m_desk->askBackup(); });
    m_actions->add(u"quit"_s, tr("&Quit"), Group::Store, {QKeySequence(Qt::CTRL | Qt::Key_Q)}, [this] { close(); });
}

void MainWindow::makeLookActions()
{
    auto* looks = new QActionGroup(this);
    const auto look = [&](const QString& id, const QString& text, Look which) {
        QAction* action = m_actions->add(id, text, Group::View, {}, [this, which] { setLook(which); });
        action->setCheckable(true);
        action->setChecked(m_session.look() == which);
        looks->addAction(action);
    };
    look(u"look.light"_s, tr("&Light"), Look::Light);
    look(u"look.dark"_s, tr("&Dark"), Look::Dark);
    look(u"look.contrast"_s, tr("High &contrast"), Look::HighContrast);
    look(u"look.system"_s, tr("Follow the &system"), Look::System);
    auto* sizes = new QActionGroup(this);
    for (const int percent : {100, 125, 150, 175, 200}) {
        QAction* action = m_actions->add(u"text.%1"_s.arg(percent), tr("Text size %1 %").arg(percent), Group::View, {},
                                         [this, percent] { setTextScale(percent / 100.0); });
        action->setCheckable(true);
        action->setChecked(qRound(m_theme.textScale() * 100.0) == percent);
        sizes->addAction(action);
    }
    auto* motions = new QActionGroup(this);
    const auto motion = [&](const QString& id, const QString& text, MotionChoice which) {
        QAction* action = m_actions->add(id, text, Group::View, {}, [this, which] { setMotion(which); });
        action->setCheckable(true);
        action->setChecked(m_session.motion() == which);
        motions->addAction(action);
    };
    motion(u"motion.full"_s, tr("&Motion: charts ease to their place"), MotionChoice::Full);
    motion(u"motion.reduced"_s, tr("Reduced motion"), MotionChoice::Reduced);
    motion(u"motion.system"_s, tr("Motion as the system &asks"), MotionChoice::System);
}

void MainWindow::makeReminderActions()
{
    QAction* remind = m_actions->add(u"remind"_s, tr("&Remind me of overdue work"), Group::View, {}, [this] {
        m_reminder.setOn(m_actions->action(u"remind"_s)->isChecked());
        tell(m_reminder.isOn() ? tr("Overdue work is told of while the program runs, at most once a day for each tank")
                               : tr("Overdue work is no longer told of outside the window"));
    });
    remind->setCheckable(true);
    remind->setChecked(m_reminder.isOn());
    auto* hours = new QActionGroup(this);
    const auto quiet = [&](const QString& id, const QString& text, int from, int to) {
        QAction* action = m_actions->add(id, text, Group::View, {}, [this, from, to] {
            m_session.setQuietHours(from, to);
            m_reminder.check();
        });
        action->setCheckable(true);
        action->setChecked(m_session.quietHours() == std::pair(from, to));
        hours->addAction(action);
    };
    quiet(u"quiet.night"_s, tr("No reminders from 21 to 8 o'clock"), 21, 8);
    quiet(u"quiet.long"_s, tr("No reminders from 19 to 10 o'clock"), 19, 10);
    quiet(u"quiet.none"_s, tr("Reminders at any hour"), 0, 0);
}

void MainWindow::makeMenu()
{
    m_menu->setAccessibleName(tr("Menu"));
    for (const Group group :
         {Group::Store, Group::Row, Group::Trends, Group::Cycle, Group::Paper, Group::View, Group::Units}) {
        QMenu* part = m_menu->addMenu(ActionRegistry::groupName(group));
        part->setAccessibleName(ActionRegistry::groupName(group));
        part->addActions(m_actions->actions(group));
    }
    m_menu->addSeparator();
    m_menu->addActions(m_actions->actions(Group::Edit));
    m_menu->addSeparator();
    m_menu->addAction(m_actions->action(u"page.lanes"_s));
    m_menu->addAction(m_actions->action(u"page.trends"_s));
    m_menu->addAction(m_actions->action(u"page.cycle"_s));
    m_menu->addAction(m_actions->action(u"page.history"_s));
    m_menu->addAction(m_actions->action(u"page.rounds"_s));
    m_menu->addAction(m_actions->action(u"page.stock"_s));
    m_menu->addAction(m_actions->action(u"page.bench"_s));
    m_menu->addAction(m_actions->action(u"page.guide"_s));
    m_menu->addAction(m_actions->action(u"guide.open"_s));
    m_menu->addAction(m_actions->action(u"keys"_s));
}

void MainWindow::refreshActions()
{
    const bool open = m_keeper.hasStore();
    const bool writable = open && !m_keeper.isReadOnly();
    const bool tank = open && static_cast<bool>(m_rail->selected());
    const auto enable = [this](const QString& id, bool on) { m_actions->action(id)->setEnabled(on); };
    for (const QString& id : {u"entry.new"_s, u"entry.change"_s, u"tank.edit"_s, u"targets"_s, u"doses"_s}) {
        enable(id, writable && tank);
    }
    enable(u"entries"_s, tank);
    enable(u"photos"_s, tank);
    for (const QString& id : {u"entries.row"_s, u"supplies"_s, u"templates"_s}) {
        enable(id, open);
    }
    enable(u"rounds.timer"_s, open && m_page == Page::Rounds);
    enable(u"tank.add"_s, writable);
    enable(u"kits"_s, open);
    enable(u"source"_s, writable);
    enable(u"store.export"_s, open);
    enable(u"store.calendar"_s, open);
    enable(u"journey"_s, open);
    enable(u"store.backup"_s, open);
    refreshUnits();
    const bool trends = m_page == Page::Trends && m_stack->currentWidget() == m_trends;
    for (QAction* action : m_actions->actions(Group::Trends)) {
        action->setEnabled(trends);
    }
    const bool cycle = m_page == Page::Cycle && m_stack->currentWidget() == m_cycle;
    const bool charts = cycle && m_cycle->model().layout.value != 0;
    enable(u"cycle.adopt"_s, cycle && m_cycle->canAdopt());
    for (const QString& id : {u"cycle.table"_s, u"cycle.refit"_s, u"cycle.mode"_s, u"cycle.now"_s}) {
        enable(id, charts);
    }
    refreshPaperActions();
    const store::JournalState journal = m_keeper.journal();
    QAction* undo = m_actions->action(u"undo"_s);
    QAction* redo = m_actions->action(u"redo"_s);
    undo->setText(journal.undoLabel ? tr("&Undo %1").arg(*journal.undoLabel) : tr("&Undo"));
    redo->setText(journal.redoLabel ? tr("Re&do %1").arg(*journal.redoLabel) : tr("Re&do"));
    undo->setEnabled(writable && journal.undoLabel.has_value());
    redo->setEnabled(writable && journal.redoLabel.has_value());
}

void MainWindow::setSystemScheme(Scheme scheme)
{
    m_system = scheme;
    if (m_session.look() == Look::System) {
        m_theme.setScheme(scheme);
    }
}

void MainWindow::setLook(Look look)
{
    m_session.setLook(look);
    m_theme.setScheme(schemeOf(look, m_system));
}

void MainWindow::setSystemMotion(bool reduced)
{
    m_systemReduces = reduced;
    setMotion(m_session.motion());
}

void MainWindow::setMotion(MotionChoice choice)
{
    m_session.setMotion(choice);
    reduceMotion(isMotionReduced(choice, m_systemReduces));
}

void MainWindow::setTextScale(double scale)
{
    m_session.setTextScale(scale);
    m_theme.setTextScale(scale);
}

void MainWindow::showKeys()
{
    if (m_page == Page::Rounds) {
        m_panels->showKeys(tr("Rounds"), {{tr("Enter"), tr("save the cell, go to the next due one")},
                                          {tr("Tab"), tr("next column; Shift+Tab the one before")},
                                          {tr("↑ ↓"), tr("kit step while a cell is open, else the row above or below")},
                                          {tr("<"), tr("below the lowest step")},
                                          {tr("/"), tr("between two steps")},
                                          {tr("Del"), tr("take the reading out of the cell")},
                                          {tr("Esc"), tr("leave the cell; what was typed stays")},
                                          {tr("Space"), tr("tick a task of the work list")},
                                          {tr("Ctrl+P"), tr("a round sheet to write on, as a PDF file")},
                                          {tr("Ctrl+J"), tr("start the timer of the cell's kit")},
                                          {tr("Ctrl+Enter"), tr("finish the round")}});
        return;
    }
    if (m_page == Page::Stock) {
        m_panels->showKeys(tr("Stock"), {{tr("↑ ↓"), tr("row")},
                                         {tr("Enter"), tr("open the row's entry")},
                                         {tr("F1"), tr("the species in the guide")},
                                         {tr("Ctrl+F"), tr("filter")},
                                         {tr("F6"), tr("next part of the page")}});
        return;
    }
    if (m_page == Page::Bench) {
        showBenchKeys();
        return;
    }
    if (m_page == Page::Guide) {
        m_panels->showKeys(tr("Guide"), {{tr("Ctrl+F"), tr("search")},
                                         {tr("↓ Enter"), tr("from the search to the list")},
                                         {tr("↑ ↓"), tr("topic")},
                                         {tr("Tab"), tr("next link of the article")},
                                         {tr("Enter"), tr("follow the link")},
                                         {tr("Alt+←"), tr("back")},
                                         {tr("Alt+→"), tr("forward")},
                                         {tr("Esc"), tr("empty the search, then the page before")}});
        return;
    }
    if (m_page == Page::History) {
        showHistoryKeys();
        return;
    }
    if (m_page == Page::Trends) {
        showTrendsKeys();
        return;
    }
    if (m_page == Page::Cycle) {
        m_panels->showKeys(tr("Cycle"), {{tr("← →"), tr("cursor by a day; Ctrl by a week; on the slider the share")},
                                         {tr("↑ ↓"), tr("plan or gate in its table; panel in the charts")},
                                         {tr(", ."), tr("previous or next reading")},
                                         {tr("Home End"), tr("flooding, end of the axis")},
                                         {tr("A"), tr("adopt the plan looked at")},
                                         {tr("T"), tr("charts as a table")},
                                         {tr("R"), tr("refit")},
                                         {tr("D"), tr("dates or days since flooding")},
                                         {tr("N"), tr("go to now")},
                                         {tr("+ −"), tr("zoom")},
                                         {tr("Enter"), tr("open or close a line; choose a ring of the chart")},
                                         {tr("Esc"), tr("take the cursor away")}});
        return;
    }
    m_panels->showKeys(tr("Lanes"), {{tr("↑ ↓"), tr("lane")},
                                     {tr("← →"), tr("item in time")},
                                     {tr("Tab"), tr("row within the lane")},
                                     {tr("Space"), tr("mark done")},
                                     {tr("S"), tr("snooze")},
                                     {tr("K"), tr("skip with a reason")},
                                     {tr("M"), tr("move by days")},
                                     {tr("Enter"), tr("open")},
                                     {tr("N"), tr("go to now")},
                                     {tr("A"), tr("dates or days since flooding")},
                                     {tr("+ −"), tr("zoom")},
                                     {tr("Home End"), tr("first or last entry")},
                                     {tr("Ctrl+P"), tr("the whole row as a PDF file")}});
}

} // namespace littoral::ui
