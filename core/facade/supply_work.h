// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"
#include "core/care/supplies.h"

#include <QStringList>

namespace littoral::facade {

/// Something in stock that ought to be got, as work of the whole row.
struct SupplyTask
{
    care::DueItem item; ///< its subject is the title in words; carries the first running layout, so it can be ticked
    care::SupplyStanding standing;
    QStringList why; ///< whole sentences: when, what is left, how long it lasts
};

/// Supplies that run out or are past their date, and test kits past theirs, wanted by `until`: a week before the end,
/// two weeks before the date. Ticking or skipping one keeps it quiet for two weeks, or until it is opened anew; one put
/// off comes back on its new day. Soonest first; nothing while no tank is running.
[[nodiscard]] std::vector<SupplyTask> supplyWork(const record::Row& row, const record::Moment& now, const QDate& until);

} // namespace littoral::facade
