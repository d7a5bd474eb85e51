// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QDate>
#include <optional>

namespace littoral::care {

/// Where a layout stands by its age alone. Weeks count from the day of flooding, which is day 0 and belongs to week 1.
enum class LayoutPhase {
    Planned, ///< not flooded yet
    Week1,   ///< day 0-7
    Week2,   ///< 8-14
    Weeks3To4,
    Weeks5To6,
    Weeks7To8,
    Mature, ///< 57-365
    Old,    ///< over a year
};

/// First and last day of a phase; the last of Old, and both of Planned, are nothing.
struct PhaseDays
{
    std::optional<int> first;
    std::optional<int> last;
};

/// Calendar days from flooding to `day`, each by the calendar of the place it was entered in; negative before flooding.
[[nodiscard]] int ageDays(const record::Layout& layout, const QDate& day);
[[nodiscard]] LayoutPhase phaseOfAge(int days);
[[nodiscard]] PhaseDays daysOf(LayoutPhase phase);
/// An ended layout stays in the phase in which it ended.
[[nodiscard]] LayoutPhase phase(const record::LayoutRecord& layout, const record::Moment& now);

} // namespace littoral::care
