// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/table.h"

#include <QStringList>
#include <algorithm>
#include <array>

namespace littoral::store {

using namespace Qt::StringLiterals;
using namespace record;

namespace {

// Tasks come before entries, which they refer to: what is removed anyway need not forget first.
constexpr std::array kReferences{
    Reference{"layout", "tank", "tank", WhenGone::RemoveToo},
    Reference{"target", "tank", "tank", WhenGone::RemoveToo},
    Reference{"entry", "other_tank", "tank", WhenGone::Forget},
    Reference{"reading", "layout", "layout", WhenGone::RemoveToo},
    Reference{"task", "layout", "layout", WhenGone::RemoveToo},
    Reference{"entry", "layout", "layout", WhenGone::RemoveToo},
    Reference{"photo", "layout", "layout", WhenGone::RemoveToo},
    Reference{"plan", "layout", "layout", WhenGone::RemoveToo},
    Reference{"dose_regimen", "layout", "layout", WhenGone::RemoveToo},
    Reference{"forecast", "layout", "layout", WhenGone::RemoveToo},
    Reference{"task", "closed_by", "entry", WhenGone::Forget},
    Reference{"reading", "kit", "test_kit", WhenGone::Forget},
    Reference{"layout", "source", "source_water", WhenGone::Forget},
    Reference{"entry", "source", "source_water", WhenGone::Forget},
    Reference{"source_water", "first_part", "source_water", WhenGone::Forget},
    Reference{"source_water", "second_part", "source_water", WhenGone::Forget},
};

template <typename... T> std::vector<const Table*> tablesOf(const std::variant<T...>*)
{
    return {&RowMapping<T>::table()...};
}

} // namespace

int Table::columnIndex(const QString& column) const
{
    const auto found = std::ranges::find(columns, column, &Column::name);
    return found == columns.end() ? -1 : static_cast<int>(found - columns.begin());
}

Table makeTable(const QString& name, std::vector<Column> columns)
{
    QStringList names;
    QStringList marks;
    QStringList assignments;
    for (const Column& column : columns) {
        names << column.name;
        marks << u"?"_s;
        if (column.name != u"id"_s) {
            assignments << column.name + u" = ?"_s;
        }
    }
    const QString list = names.join(u", "_s);
    Table table;
    table.name = name;
    table.columns = std::move(columns);
    table.select = u"SELECT %1 FROM %2"_s.arg(list, name);
    table.selectById = table.select + u" WHERE id = ?"_s;
    table.insert = u"INSERT INTO %1 (%2) VALUES (%3)"_s.arg(name, list, marks.join(u", "_s));
    table.update = u"UPDATE %1 SET %2 WHERE id = ?"_s.arg(name, assignments.join(u", "_s));
    table.remove = u"DELETE FROM %1 WHERE id = ?"_s.arg(name);
    return table;
}

std::span<const Table* const> recordTables()
{
    static const std::vector<const Table*> all = tablesOf(static_cast<const Record*>(nullptr));
    return all;
}

const Table& tableOf(const Record& record)
{
    return *recordTables()[record.index()];
}

static_assert(std::variant_size_v<Record> == std::variant_size_v<RecordId>,
              "an id for each kind of record, in the same order");

const Table& tableOf(const RecordId& id)
{
    return *recordTables()[id.index()];
}

const Table& settingTable()
{
    static const Table table =
        makeTable(u"setting"_s,
                  {{u"id"_s, Column::Type::Integer}, {u"key"_s, Column::Type::Text}, {u"value"_s, Column::Type::Text}});
    return table;
}

const Table* findTable(const QString& name)
{
    if (name == settingTable().name) {
        return &settingTable();
    }
    const auto found = std::ranges::find_if(recordTables(), [&](const Table* table) { return table->name == name; });
    return found == recordTables().end() ? nullptr : *found;
}

std::span<const Reference> references()
{
    return kReferences;
}

QString blendsOfThemselves()
{
    return u"WITH RECURSIVE step (whole, part) AS ("
           "SELECT id, first_part FROM source_water WHERE first_part IS NOT NULL "
           "UNION SELECT id, second_part FROM source_water WHERE second_part IS NOT NULL), "
           "inside (whole, part) AS (SELECT whole, part FROM step "
           "UNION SELECT inside.whole, step.part FROM inside JOIN step ON step.whole = inside.part) "
           "SELECT name FROM source_water JOIN inside ON inside.whole = source_water.id AND inside.part = "
           "source_water.id"_s;
}

Values valuesOf(const Record& record)
{
    return std::visit([]<typename T>(const T& it) { return RowMapping<T>::values(it); }, record);
}

Result<void> checkRecord(const Record& record)
{
    return std::visit([]<typename T>(const T& it) { return RowMapping<T>::check(it); }, record);
}

qint64 idOf(const Record& record)
{
    return std::visit([](const auto& it) { return it.id.value; }, record);
}

qint64 idOf(const RecordId& id)
{
    return std::visit([](const auto& it) { return it.value; }, id);
}

Values valuesOf(const QSqlQuery& row, std::size_t count)
{
    Values values;
    values.reserve(count);
    for (int i = 0; i < static_cast<int>(count); ++i) {
        values.push_back(row.isNull(i) ? QVariant() : row.value(i));
    }
    return values;
}

} // namespace littoral::store
