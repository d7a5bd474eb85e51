// SPDX-License-Identifier: GPL-3.0-or-later
// What the window puts on paper.
#include "ui/frame/main_window.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/rounds/rounds_page.h"

#include <QStackedWidget>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Group = ActionRegistry::Group;

void MainWindow::makePaperActions()
{
    // Bench and History have the key themselves, since they print what is on show there.
    m_actions->add(u"paper.page"_s, tr("&Print this page..."), Group::Paper, {QKeySequence(Qt::CTRL | Qt::Key_P)},
                   [this] { printPage(PaperTo::File); });
    m_actions->add(u"paper.printer"_s, tr("Print this page on a prin&ter..."), Group::Paper,
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P)}, [this] { printPage(PaperTo::Printer); });
    m_actions->add(u"paper.row"_s, tr("Report of the whole &row..."), Group::Paper, {},
                   [this] { printRow(PaperTo::File); });
    m_actions->add(u"paper.case"_s, tr("Report of this tank's &case..."), Group::Paper, {}, [this] {
        showPage(Page::History);
        m_history->wait();
        m_history->print(PaperTo::File);
    });
    m_actions->add(u"paper.round"_s, tr("R&ound sheet to write on..."), Group::Paper, {}, [this] {
        m_rounds->model().refresh();
        m_rounds->print(PaperTo::File);
    });
}

void MainWindow::refreshPaperActions()
{
    const bool any = m_keeper.hasStore() && !m_keeper.row().tanks.empty();
    const QWidget* shown = m_stack->currentWidget();
    const bool own = shown == m_lanes || shown == m_rounds;
    const bool elsewhere = shown == m_bench || shown == m_history;
    m_actions->action(u"paper.page"_s)->setEnabled(any && own);
    m_actions->action(u"paper.printer"_s)->setEnabled(any && (own || elsewhere));
    for (const QString& id : {u"paper.row"_s, u"paper.case"_s, u"paper.round"_s}) {
        m_actions->action(id)->setEnabled(any);
    }
}

void MainWindow::printPage(PaperTo to)
{
    switch (m_page) {
    case Page::Lanes:
        printRow(to);
        break;
    case Page::Rounds:
        m_rounds->print(to);
        break;
    case Page::Bench:
        m_bench->print(to);
        break;
    case Page::History:
        m_history->print(to);
        break;
    case Page::Trends:
    case Page::Cycle:
    case Page::Stock:
    case Page::Guide:
        break; // not offered there: see refreshPaperActions
    }
}

void MainWindow::printRow(PaperTo to)
{
    const QString proposed = tr("row %1", "file name, date").arg(m_keeper.clock().today().toString(Qt::ISODate));
    const auto done = putOnPaper(m_ask, this, m_lanes->paper(), proposed, to);
    if (done && *done) {
        tell(**done);
    } else if (done) {
        fail(done->error(), tr("The record is as it was."));
    }
}

} // namespace littoral::ui
