// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/store/edit.h"
#include "core/store/row_io.h"

#include <QSqlQuery>
#include <QString>
#include <span>
#include <vector>

namespace littoral::store {

/// One table as the program sees it; the first column is `id`. Its statements are written once.
struct Table
{
    QString name;
    std::vector<Column> columns;
    QString select;     ///< every column, no condition
    QString selectById; ///< one '?': the id
    QString insert;     ///< a '?' per column
    QString update;     ///< a '?' per column after the id, then the id
    QString remove;     ///< one '?': the id

    [[nodiscard]] int columnIndex(const QString& column) const; ///< -1 when it has no such column
};

/// What becomes of a row when the row it refers to is removed.
enum class WhenGone { RemoveToo, Forget };

/// `column` of `table` holds the id of a row of `target`.
struct Reference
{
    const char* table;
    const char* column;
    const char* target;
    WhenGone whenGone;
};

/// How one kind of record lies in its table. Specialised in <kind>_table.cpp.
template <typename T> struct RowMapping
{
    static const Table& table();
    static Values values(const T& record);
    static T record(const QSqlQuery& row);
    /// What the record itself must fulfil, whatever else is in the store. The Error's `where` is left to the caller.
    static Result<void> check(const T& record);
};

/// Every kind of Record, in the order of the variant's alternatives.
[[nodiscard]] std::span<const Table* const> recordTables();
[[nodiscard]] const Table& tableOf(const Record& record);
[[nodiscard]] const Table& tableOf(const RecordId& id);
[[nodiscard]] const Table& settingTable();
/// Any table that the journal covers; nullptr when there is none of that name.
[[nodiscard]] const Table* findTable(const QString& name);

/// SQL for the names of source waters that are, at first or second hand, a part of themselves.
[[nodiscard]] QString blendsOfThemselves();

/// All references, in the order in which dependants are to be removed.
[[nodiscard]] std::span<const Reference> references();

[[nodiscard]] Values valuesOf(const Record& record);
[[nodiscard]] Result<void> checkRecord(const Record& record);
[[nodiscard]] qint64 idOf(const Record& record);
[[nodiscard]] qint64 idOf(const RecordId& id);

/// The row a query stands on, `count` columns from the first.
[[nodiscard]] Values valuesOf(const QSqlQuery& row, std::size_t count);

/// A Table with its statements from a list of columns.
[[nodiscard]] Table makeTable(const QString& name, std::vector<Column> columns);

// What the specialisations are made of: `Fields` has the visit(io, record) that names every column once.

template <typename Fields, typename T> [[nodiscard]] Table describe(const char* name)
{
    ColumnIo io;
    const T blank{};
    Fields::visit(io, blank);
    return makeTable(QString::fromLatin1(name), std::move(io.columns));
}

template <typename Fields, typename T> [[nodiscard]] Values toValues(const T& record)
{
    ValuesIo io;
    io.values.reserve(32);
    Fields::visit(io, record);
    return std::move(io.values);
}

template <typename Fields, typename T> [[nodiscard]] T toRecord(const QSqlQuery& row)
{
    RowIo io(row);
    T record;
    Fields::visit(io, record);
    return record;
}

} // namespace littoral::store
