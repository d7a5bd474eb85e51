// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/task_rows.h"

#include <algorithm>
#include <cstdlib>

namespace littoral::care {

using record::Task;
using record::TaskState;

void TaskRows::add(const std::vector<Task>& tasks, const QString& templateKey, const record::Moment& now)
{
    for (const Task& task : tasks) {
        if (task.templateKey != templateKey) {
            continue;
        }
        if (task.state == TaskState::Open) {
            (task.fraction && !task.movedTo ? m_handSet : m_open).push_back(&task);
            continue;
        }
        const QDate closed = task.closedAt ? task.closedAt->localDate() : task.due;
        if (closed > now.localDate()) {
            continue; // not yet, as seen from `now`
        }
        m_closed.push_back(task.due);
        if (task.state == TaskState::Done) {
            m_done.push_back(closed);
        } else if (closed >= task.due) {
            m_lastSkip = m_lastSkip ? std::max(*m_lastSkip, closed) : closed;
        }
    }
    std::ranges::sort(m_done);
}

bool TaskRows::isClosed(const QDate& cadenceDue) const
{
    return std::ranges::find(m_closed, cadenceDue) != m_closed.end();
}

const Task* TaskRows::openFor(const QDate& cadenceDue, int tolerance) const
{
    const Task* best = nullptr;
    qint64 bestGap = tolerance + 1;
    for (const Task* task : m_open) {
        const qint64 gap = std::abs(task->due.daysTo(cadenceDue));
        if (gap < bestGap) {
            best = task;
            bestGap = gap;
        }
    }
    return best;
}

} // namespace littoral::care
