// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QDate>
#include <optional>
#include <vector>

namespace littoral::care {

/// What the keeper decided about the rounds of one template.
class TaskRows
{
public:
    void add(const std::vector<record::Task>& tasks, const QString& templateKey, const record::Moment& now);

    /// Days on which rounds were ticked.
    [[nodiscard]] const std::vector<QDate>& doneDays() const { return m_done; }
    /// The latest day on which a round due by then was skipped: the next one counts from it. Rounds skipped ahead of
    /// their day are closed one by one (isClosed).
    [[nodiscard]] std::optional<QDate> lastSkip() const { return m_lastSkip; }
    /// Was exactly the round of that day closed (ticked early, skipped ahead)?
    [[nodiscard]] bool isClosed(const QDate& cadenceDue) const;
    /// The open row about the round of that day, within `tolerance` days of it (a cadence may have shifted since); the
    /// nearest.
    [[nodiscard]] const record::Task* openFor(const QDate& cadenceDue, int tolerance) const;
    /// Open rows that set a round by hand: those with a fraction of their own.
    [[nodiscard]] const std::vector<const record::Task*>& handSet() const { return m_handSet; }

private:
    std::vector<QDate> m_done;
    std::vector<QDate> m_closed;
    std::vector<const record::Task*> m_open;
    std::vector<const record::Task*> m_handSet;
    std::optional<QDate> m_lastSkip;
};

} // namespace littoral::care
