// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv_table.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/name_book.h"
#include "core/exchange/problems.h"
#include "core/record/row.h"

#include <QByteArray>
#include <QHash>
#include <QSet>
#include <QString>
#include <optional>
#include <vector>

namespace littoral::exchange {

/// Turns CSV files into readings and entries of a row, without writing anything. Files may be read one after another;
/// what the row or an earlier line already holds is skipped and counted, so that the same file can be brought in twice.
class CsvImport final
{
public:
    /// `row` outlives the import; `now` is when the new records count as entered.
    CsvImport(const record::Row& row, record::Moment now);

    void read(const QByteArray& bytes, const QString& fileName);

    [[nodiscard]] const std::vector<record::Reading>& readings() const { return m_readings; }
    [[nodiscard]] const std::vector<record::Entry>& entries() const { return m_entries; }
    [[nodiscard]] int skipped() const { return m_skipped; }
    [[nodiscard]] const Problems& problems() const { return m_problems; }
    /// Said, but not in the way: columns left out because their name begins with '#'.
    [[nodiscard]] const QStringList& remarks() const { return m_remarks; }

private:
    struct Place
    {
        record::TankId tank;
        record::LayoutId layout;
        record::Moment at;
        std::optional<double> net_L;
    };
    std::vector<QString> columnsOf(const CsvTable& table, const QString& fileName);
    void readRecord(const CsvRecord& record, const std::vector<QString>& columns, const QString& fileName);
    [[nodiscard]] std::optional<Place> placeOf(FieldReader& fields);
    [[nodiscard]] std::optional<record::Moment> momentOf(FieldReader& fields);
    void takeReading(FieldReader& fields, const std::optional<Place>& place);
    void takeEntry(FieldReader& fields, record::EntryKind kind, const std::optional<Place>& place);
    [[nodiscard]] bool isNew(const QString& key);

    const record::Row& m_row;
    record::Moment m_now;
    NameBook m_names;
    QSet<QString> m_known;
    std::vector<record::Reading> m_readings;
    std::vector<record::Entry> m_entries;
    int m_skipped = 0;
    Problems m_problems;
    QStringList m_remarks;
};

} // namespace littoral::exchange
