// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QByteArray>

/// The row as CSV that CsvImport reads back: tanks in row order, oldest first.
namespace littoral::exchange {

[[nodiscard]] QByteArray readingsCsv(const record::Row& row);
[[nodiscard]] QByteArray entriesCsv(const record::Row& row);

} // namespace littoral::exchange
