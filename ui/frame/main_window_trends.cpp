// SPDX-License-Identifier: GPL-3.0-or-later
// What the window offers of the Trends page.
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/trends/trend_view.h"

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Group = ActionRegistry::Group;

void MainWindow::makeTrendsActions()
{
    // Single letters of the Trends page; switched off on the others, where they mean something else.
    m_actions->add(u"trends.table"_s, tr("The same values as a &table"), Group::Trends, {QKeySequence(Qt::Key_T)},
                   [this] { m_trends->toggleTable(); });
    m_actions->add(u"trends.export"_s, tr("E&xport what is on show"), Group::Trends, {QKeySequence(Qt::Key_X)},
                   [this] { m_trends->openExport(); });
    m_actions->add(u"trends.filter"_s, tr("&Filter tanks and parameters"), Group::Trends,
                   {QKeySequence(Qt::CTRL | Qt::Key_F)}, [this] { m_trends->openFilter(); });
    m_actions->add(u"trends.views"_s, tr("Views"), Group::Trends, {QKeySequence(Qt::Key_V)},
                   [this] { m_trends->bar().openViews(); });
    m_actions->add(u"trends.keep"_s, tr("&Keep this view"), Group::Trends, {QKeySequence(Qt::CTRL | Qt::Key_S)},
                   [this] { m_trends->bar().askViewName(); });
    m_actions->add(u"trends.mode"_s, tr("Calendar or equal &age"), Group::Trends, {QKeySequence(Qt::Key_A)},
                   [this] { m_trends->toggleMode(); });
    m_actions->add(u"trends.now"_s, tr("Go to &now"), Group::Trends, {QKeySequence(Qt::Key_N)},
                   [this] { m_trends->showNow(); });
    m_actions->add(u"trends.next"_s, tr("Next &reading"), Group::Trends, {QKeySequence(Qt::Key_Period)},
                   [this] { m_trends->view().stepReading(true); });
    m_actions->add(u"trends.previous"_s, tr("&Previous reading"), Group::Trends, {QKeySequence(Qt::Key_Comma)},
                   [this] { m_trends->view().stepReading(false); });
}

void MainWindow::showTrendsKeys()
{
    m_panels->showKeys(tr("Trends"), {{tr("← →"), tr("crosshair by a day; Ctrl by a week")},
                                      {tr(", ."), tr("previous or next reading of the chart")},
                                      {tr("↑ ↓"), tr("chart")},
                                      {tr("Home End"), tr("first or last reading")},
                                      {tr("[ ]"), tr("statistics from or to the crosshair")},
                                      {tr("Backspace"), tr("statistics of what is on show again")},
                                      {tr("T"), tr("the same values as a table")},
                                      {tr("X"), tr("export: picture, drawing, values")},
                                      {tr("V"), tr("views kept under a name")},
                                      {tr("Ctrl+S"), tr("keep this view")},
                                      {tr("Ctrl+F"), tr("filter tanks and parameters")},
                                      {tr("A"), tr("calendar or equal age")},
                                      {tr("N"), tr("go to now")},
                                      {tr("+ −"), tr("zoom")},
                                      {tr("Space"), tr("tick a tank or a parameter in its list")},
                                      {tr("Ctrl+↑ ↓"), tr("reorder the list")},
                                      {tr("Esc"), tr("take the stretch, then the crosshair away")}});
}

} // namespace littoral::ui
