// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/problems.h"
#include "core/record/row.h"

#include <QByteArray>
#include <vector>

/// Journeys as CSV: leaves, returns, helper, phone, note.
namespace littoral::exchange {

[[nodiscard]] QByteArray journeysCsv(const record::Row& row);

/// Is this CSV a list of journeys, by its header?
[[nodiscard]] bool isJourneysCsv(const QByteArray& bytes);

/// Those that the row has not got yet (the same two days and helper). What cannot be read is added to `problems`.
[[nodiscard]] std::vector<record::Journey> readJourneysCsv(const QByteArray& bytes, const QString& fileName,
                                                           const record::Row& row, const record::Moment& now,
                                                           Problems& problems, int& skipped);

} // namespace littoral::exchange
