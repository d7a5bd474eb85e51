// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does for the History page.
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/pages/history/history_page.h"

namespace littoral::ui {

void MainWindow::connectHistory()
{
    connect(m_history, &HistoryPage::told, this, &MainWindow::tell);
    connect(m_history, &HistoryPage::failed, this, &MainWindow::fail);
    connect(m_history, &HistoryPage::entryOpenWanted, m_panels, &Panels::editEntry);
    connect(m_history, &HistoryPage::readingOpenWanted, m_panels, &Panels::editReading);
    connect(m_history, &HistoryPage::roundsWanted, this, [this] { showPage(Page::Rounds); });
    connect(m_history, &HistoryPage::guideWanted, this, &MainWindow::openGuide);
}

void MainWindow::showHistoryKeys()
{
    m_panels->showKeys(tr("History"),
                       {{tr("Tab ↑ ↓"), tr("next or previous line of evidence; it is marked where it rests")},
                        {tr("→"), tr("bring what it rests on into view; open an unknown one")},
                        {tr("Enter"), tr("answer what is unknown; open a line of the record")},
                        {tr("← →"), tr("on the strip: reading or event before, after")},
                        {tr("+ −"), tr("on the strip: zoom")},
                        {tr("Del"), tr("remove a line of the record")},
                        {tr("M"), tr("make tasks of the first finding's actions")},
                        {tr("T"), tr("the comparison as a table; the strip's values stand in the record")},
                        {tr("A"), tr("dates or days since flooding")},
                        {tr("N"), tr("go to now")},
                        {tr("Ctrl+F"), tr("find in the record")},
                        {tr("Ctrl+P"), tr("the case as a PDF file")},
                        {tr("Esc"), tr("take the marks away")}});
}

} // namespace littoral::ui
