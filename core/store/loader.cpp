// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/loader.h"

#include "core/store/table.h"
#include "core/store/transaction.h"

#include <functional>

namespace littoral::store {

using namespace Qt::StringLiterals;
using namespace record;

namespace {

template <typename T, typename Sink> Result<void> each(Connection& connection, const QString& order, Sink&& sink)
{
    Statement query = connection.prepare(RowMapping<T>::table().select + order);
    if (const auto done = query.exec(); !done) {
        return done;
    }
    while (query.next()) {
        sink(RowMapping<T>::record(query.row()));
    }
    return query.end();
}

template <typename T> Result<void> all(Connection& connection, std::vector<T>& into)
{
    return each<T>(connection, u" ORDER BY id"_s, [&](T&& it) { into.push_back(std::move(it)); });
}

/// What belongs to a layout, put into its LayoutRecord. Rows of one layout mostly follow each other.
template <typename T> Result<void> intoLayouts(Connection& connection, Row& row, std::vector<T> LayoutRecord::*list)
{
    LayoutRecord* last = nullptr;
    return each<T>(connection, u" ORDER BY id"_s, [&](T&& it) {
        if (last == nullptr || last->layout.id != it.layout) {
            const auto found = row.layouts.find(it.layout);
            last = found == row.layouts.end() ? nullptr : &found->second;
        }
        if (last != nullptr) {
            (last->*list).push_back(std::move(it));
        }
    });
}

Result<void> loadSettings(Connection& connection, Row& row)
{
    Statement query = connection.prepare(u"SELECT key, value FROM setting"_s);
    if (const auto done = query.exec(); !done) {
        return done;
    }
    while (query.next()) {
        row.settings.insert(query.value(0).toString(), query.value(1).toString());
    }
    return query.end();
}

Result<void> loadAll(Connection& connection, Row& row)
{
    const auto layouts = [&] {
        return each<Layout>(connection, u" ORDER BY id"_s, [&](Layout&& it) {
            const LayoutId id = it.id;
            row.layouts[id].layout = std::move(it);
        });
    };
    for (const std::function<Result<void>()>& part : std::initializer_list<std::function<Result<void>()>>{
             [&] { return all(connection, row.tanks); },
             layouts,
             [&] { return all(connection, row.sources); },
             [&] { return all(connection, row.kits); },
             [&] { return all(connection, row.supplies); },
             [&] { return all(connection, row.templates); },
             [&] { return all(connection, row.targets); },
             [&] { return all(connection, row.plans); },
             [&] { return all(connection, row.journeys); },
             [&] { return intoLayouts(connection, row, &LayoutRecord::readings); },
             [&] { return intoLayouts(connection, row, &LayoutRecord::entries); },
             [&] { return intoLayouts(connection, row, &LayoutRecord::tasks); },
             [&] { return intoLayouts(connection, row, &LayoutRecord::regimens); },
             [&] { return loadSettings(connection, row); },
         }) {
        if (const auto done = part(); !done) {
            return done;
        }
    }
    return {};
}

} // namespace

Result<Row> loadRow(Connection& connection)
{
    auto snapshot = Transaction::begin(connection, Transaction::Kind::Snapshot);
    if (!snapshot) {
        return snapshot.error();
    }
    Row row;
    if (const auto loaded = loadAll(connection, row); !loaded) {
        return loaded.error();
    }
    if (const auto ended = snapshot->commit(); !ended) {
        return ended.error();
    }
    sortRow(row);
    return row;
}

} // namespace littoral::store
