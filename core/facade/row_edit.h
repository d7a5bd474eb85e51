// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/care/due.h"
#include "core/store/edit.h"

namespace littoral::facade {

/// Brings the row in memory to where the store is after `edit`. False when the edit holds something that only a fresh
/// reading of the store can show (a removal that takes other records with it); the row is then untouched or must be
/// reloaded.
[[nodiscard]] bool applyTo(record::Row& row, const store::Edit& edit);

/// The entry that closes a round done at `at`: a water change, an upkeep or a top-up; nothing for work that only a
/// reading or the keeper's word can close. A planned change of the same day is taken over, its plan kept beside it.
[[nodiscard]] std::optional<record::Entry> entryThatCloses(const record::Row& row, const care::DueItem& item,
                                                           const record::Moment& at);

/// The row that keeps what was decided about a round: the one there is, or a new one entered at `now`.
[[nodiscard]] record::Task taskFor(const record::Row& row, const care::DueItem& item, const record::Moment& now);

/// A reading from what was typed. An empty unit is the kit's, else the parameter's shown unit; without a kit the one
/// the parameter is usually read with is taken. The error says what cannot be read.
[[nodiscard]] Result<record::Reading> readingAsTyped(const record::Row& row, record::LayoutId layout,
                                                     const QString& parameter, const QString& typed,
                                                     const QString& unit, record::KitId kit, const record::Moment& at);

} // namespace littoral::facade
