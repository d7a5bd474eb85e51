// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

namespace littoral::facade {

/// The row as it was known at `asOf`, for one layout: readings, observations, losses, other entries and closings of
/// later are taken out; what was planned for later stays, as it was planned.
[[nodiscard]] record::Row asKnownAt(const record::Row& row, record::LayoutId layout, const record::Moment& asOf);

/// Whether an entry of this kind is the keeper's own doing (and so may stand in a plan) rather than something seen.
[[nodiscard]] bool isIntervention(record::EntryKind kind);

/// Entries of later than `asOf` as a plan: what was planned as it was planned, the rest as recorded. Open plans whose
/// date is past are left out and counted in `missed` (may be null); a water change planned for asOf's own day is still
/// to come whatever its hour.
[[nodiscard]] std::vector<record::Entry> planAfter(const record::LayoutRecord& layout, const record::Moment& asOf,
                                                   int* missed);

} // namespace littoral::facade
