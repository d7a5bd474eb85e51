// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does for the guide: F1 beside any page, and records of the keeper's own.
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/models/guide_sheets.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/cycle/cycle_page.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/stock/stock_page.h"
#include "ui/pages/trends/trends_page.h"

#include <QStackedWidget>

namespace littoral::ui {

using namespace Qt::StringLiterals;

void MainWindow::connectGuide()
{
    connect(m_guide, &GuidePage::told, this, &MainWindow::tell);
    connect(m_guide, &GuidePage::failed, this, &MainWindow::fail);
    connect(m_guide, &GuidePage::leaveWanted, this, [this] { showPage(m_beforeGuide); });
    connect(m_guide, &GuidePage::editWanted, m_panels, &Panels::editFact);
    connect(m_guide, &GuidePage::addWanted, m_panels, &Panels::addFact);
    connect(m_panels->facts(), &FactEditor::kept, m_guide, &GuidePage::open);
    connect(m_panels->guide(), &GuidePanel::pageWanted, this, [this](const QString& topic) {
        m_panels->host()->close();
        showPage(Page::Guide);
        m_guide->open(topic);
    });
}

void MainWindow::openGuide(const QString& topic)
{
    const QStringList wanted = topic.isEmpty() ? focusedTopics() : QStringList{topic};
    if (m_page == Page::Guide) {
        m_guide->openAbout(wanted.value(0));
        return;
    }
    m_rounds->settle();
    m_panels->showGuide(wanted);
}

QStringList MainWindow::focusedTopics() const
{
    QStringList topics;
    QWidget* page = m_stack->currentWidget();
    // Lists and charts know what their cursor stands on.
    if (page == m_lanes) {
        topics << m_lanes->focusedTopics();
    } else if (page == m_trends) {
        topics << m_trends->focusedTopic();
    } else if (page == m_cycle) {
        topics << m_cycle->focusedTopic();
    } else if (page == m_rounds) {
        topics << m_rounds->focusedTopic();
    } else if (page == m_stock) {
        topics << m_stock->focusedSpecies();
    } else if (page == m_bench) {
        const QString sheet = m_bench->focusedSheet();
        topics << (sheet.isEmpty() ? QString() : sheetTopic(sheet));
    }
    // A widget may say what it is about; so may a card for all that is in it.
    for (QWidget* at = page->focusWidget(); at != nullptr && at != page; at = at->parentWidget()) {
        topics << at->property("topic").toString();
    }
    if (page == m_history) {
        topics << m_history->focusedTopic();
    }
    topics.removeAll(QString());
    return topics;
}

} // namespace littoral::ui
