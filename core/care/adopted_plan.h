// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QDate>
#include <optional>

namespace littoral::care {

/// A plan of water changes that the keeper adopted and that is still running: until its last day the cadence proposes
/// nothing of its own beside it; what a reading made after the adoption asks for still counts.
struct PlanInForce
{
    QDate lastDay; ///< of its last open change; of the plan itself when it changes nothing
    record::Moment adopted;
};

/// The newest adopted plan of a layout as of `now`; nothing when there is none, it has run out, or all its changes were
/// taken out by hand.
[[nodiscard]] std::optional<PlanInForce> planInForce(const record::Row& row, const record::LayoutRecord& layout,
                                                     const record::Moment& now);

/// A planned water change that is neither done nor overtaken by a later change.
[[nodiscard]] bool isOpenPlannedChange(const record::LayoutRecord& layout, const record::Entry& entry,
                                       const record::Moment& now);

} // namespace littoral::care
