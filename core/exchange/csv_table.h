// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <vector>

namespace littoral::exchange {

/// One record of a CSV file. `row` counts as spreadsheets do: the header is row 1, blank rows count, a line break
/// inside quotes does not.
struct CsvRecord
{
    int row = 0;
    QStringList cells;

    bool operator==(const CsvRecord&) const = default;
};

struct CsvTable
{
    QStringList columns;            ///< header cells, trimmed
    std::vector<CsvRecord> records; ///< without blank ones
    QChar separator;
};

/// Reads a CSV file with a header. Quoting as in RFC 4180 (2005), section 2: quoted fields may hold separators, doubled
/// quotes and line breaks; line ends CRLF, LF or CR. Beyond it: the separator is found from the header (comma,
/// semicolon or tab), a byte-order mark is taken off, UTF-16 with a mark is read. Faults: BadInput for text that is not
/// UTF-8, an empty file, a quote that is never closed, text after a closing quote; the error's `where` names file and
/// row.
[[nodiscard]] Result<CsvTable> readCsv(const QByteArray& bytes, const QString& fileName);

/// One line in RFC 4180 form with its CRLF: commas, quotes where they are needed.
[[nodiscard]] QString csvLine(const QStringList& cells);

} // namespace littoral::exchange
