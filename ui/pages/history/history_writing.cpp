// SPDX-License-Identifier: GPL-3.0-or-later
// What the History page writes: answers and tasks into the record, the case onto paper.
#include "ui/pages/history/case_paper.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/history/reset_card.h"

namespace littoral::ui {

using namespace Qt::StringLiterals;

void HistoryPage::answer(const QString& subject)
{
    const auto entry =
        facade::answerEntry(m_keeper.row(), m_file.request.question.layout, subject, m_keeper.clock().now());
    if (const auto done = m_keeper.enter(entry); !done) {
        emit failed(done.error(), tr("The record is as it was."));
        return;
    }
    emit told(tr("Written down as an observation; Ctrl+Z takes it back."));
}

void HistoryPage::makeTasks()
{
    if (!m_file.findings.empty()) {
        tasksOf(m_file.findings.front().actions);
    }
}

void HistoryPage::tasksOf(const QStringList& actions)
{
    if (!isWritable() || actions.isEmpty()) {
        return;
    }
    const record::Moment now = m_keeper.clock().now();
    store::Edit edit(tr("%1 tasks from a finding").arg(actions.size()));
    for (const QString& action : actions) {
        record::Task task;
        task.tank = m_tank;
        task.layout = m_file.request.question.layout;
        task.title = action;
        task.due = now.localDate();
        task.enteredAt = now;
        edit.put(std::move(task));
    }
    if (const auto done = m_keeper.commit(edit); !done) {
        emit failed(done.error(), tr("The record is as it was."));
        return;
    }
    emit told(tr("%1 tasks made, due today; Ctrl+Z takes them back.").arg(actions.size()));
}

void HistoryPage::print(PaperTo to)
{
    if (m_questions.empty()) {
        return;
    }
    const QString proposed = u"%1 %2"_s.arg(m_file.tankName, m_keeper.clock().today().toString(Qt::ISODate));
    const auto done =
        putOnPaper(m_ask, this, casePaper(m_file, m_reset->forecast(), m_keeper.row(), m_axis), proposed, to);
    if (done && *done) {
        emit told(**done);
    } else if (done) {
        emit failed(done->error(), tr("The record is as it was."));
    }
}

} // namespace littoral::ui
