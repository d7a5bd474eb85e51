// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does for the record as a whole: entries of the row, photographs, supplies, task templates, and the
// timers of a round, which go on whatever page is on show.
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/frame/rail.h"
#include "ui/frame/status_line.h"
#include "ui/models/round_timers.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/widgets/lanes/lane_view.h"

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Group = ActionRegistry::Group;

void MainWindow::makeRecordActions()
{
    m_actions->add(u"entries.row"_s, tr("Ent&ries of the whole row..."), Group::Row,
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L)}, [this] { m_panels->showEntries({}); });
    m_actions->add(u"photos"_s, tr("&Photographs of the tank..."), Group::Row,
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I)},
                   [this] { m_panels->showPhotos(m_rail->selected()); });
    m_actions->add(u"supplies"_s, tr("S&upplies..."), Group::Row, {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_U)},
                   [this] { m_panels->showSupplies(); });
    // At the rule of the work the keyboard is on, if it is on any.
    m_actions->add(u"templates"_s, tr("Task te&mplates..."), Group::Row,
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_M)}, [this] {
                       const facade::LaneChip* chip = m_page == Page::Lanes ? m_lanes->view().selectedChip() : nullptr;
                       m_panels->showTemplates(chip == nullptr ? QString() : chip->item.templateKey);
                   });
    m_actions->add(u"rounds.timer"_s, tr("Start the timer of the kit"), Group::Edit,
                   {QKeySequence(Qt::CTRL | Qt::Key_J)}, [this] { m_rounds->startTimer(); });
}

void MainWindow::connectRounds()
{
    connect(m_rounds, &RoundsPage::photosWanted, this, [this](record::TankId tank) { m_panels->showPhotos(tank); });
    connect(m_lanes, &LanesPage::ruleWanted, m_panels, &Panels::showTemplates);
    RoundTimers& timers = m_rounds->timers();
    connect(&timers, &RoundTimers::changed, this, [this, &timers] { m_status->setTimers(timers.summary()); });
    connect(m_status, &StatusLine::timersWanted, this, [this, &timers] {
        if (timers.timers().empty()) {
            return;
        }
        const RoundTimers::Timer first = timers.timers().front();
        showPage(Page::Rounds);
        m_rounds->goToCell(first.tank, first.parameter);
    });
}

} // namespace littoral::ui
