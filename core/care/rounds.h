// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/cadence.h"
#include "core/care/due.h"
#include "core/care/task_rows.h"

namespace littoral::care {

/// What the makers of due items share about one layout.
struct Desk
{
    Circumstances at;
    QDate today;
    QDate until;
    QDate flooded;
    QDate recordFrom; ///< rounds before it are not asked for: the record of an older tank begins here
};

[[nodiscard]] Desk deskFor(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& now,
                           const QDate& until);

/// The item of a template with everything but its dates and reason.
[[nodiscard]] DueItem itemOf(const WorkTemplate& work, const Desk& desk);
/// Sets due, cadenceDue, daysOver, overdue, task and the moves of a row about it; `row` may be null.
void setDays(DueItem& item, const QDate& cadenceDue, const record::Task* row, const QDate& today);

/// Rounds of one template other than water changes.
[[nodiscard]] std::vector<DueItem> roundsOf(const WorkTemplate& work, const Desk& desk);
/// Rounds of a template that is asked once for the row.
[[nodiscard]] std::vector<DueItem> rowRoundsOf(const WorkTemplate& work, const Desk& desk);
/// Doses of the layout's regimens: of each the newest round not after today, then those to come.
[[nodiscard]] std::vector<DueItem> doseRounds(const Desk& desk);
/// Water changes, with what tightened or set them by hand, and the retest that follows an emergency change.
[[nodiscard]] std::vector<DueItem> waterRounds(const WorkTemplate& work, const Desk& desk);

} // namespace littoral::care
