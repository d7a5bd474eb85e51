// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/writer.h"

#include "core/store/failure.h"

#include <QDir>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

template <typename... F> struct Overloaded : F...
{
    using F::operator()...;
};
template <typename... F> Overloaded(F...) -> Overloaded<F...>;

const Values* pointer(const std::optional<Values>& values)
{
    return values ? &*values : nullptr;
}

} // namespace

Writer::Writer(Connection& connection, const Edit& edit)
    : m_connection(connection)
    , m_edit(edit)
    , m_journal(connection, edit.label())
{
}

Error Writer::fail(Fault fault, const QString& what, const QString& mend) const
{
    return failure(fault, what,
                   m_edit.label().isEmpty() ? QDir::toNativeSeparators(m_connection.path()) : m_edit.label(), mend);
}

Result<void> Writer::run()
{
    for (const Edit::Step& step : m_edit.steps()) {
        const Result<void> done = std::visit(Overloaded{
                                                 [this](const Edit::Put& it) { return put(it); },
                                                 [this](const Edit::Remove& it) { return remove(it.id); },
                                                 [this](const Setting& it) { return set(it); },
                                             },
                                             step);
        if (!done) {
            return done;
        }
    }
    if (const auto sound = checkNeeds(); !sound) {
        return sound;
    }
    if (const auto sound = checkBlends(); !sound) {
        return sound;
    }
    return m_journal.finish();
}

Result<void> Writer::put(const Edit::Put& put)
{
    if (const auto sound = checkRecord(put.record); !sound) {
        return sound;
    }
    if (const auto free = checkTaken(put.record); !free) {
        return free;
    }
    const Table& table = tableOf(put.record);
    const qint64 id = idOf(put.record);
    std::optional<Values> before;
    if (!put.fresh) {
        auto now = rowNow(table, id);
        if (!now) {
            return now.error();
        }
        before = std::move(*now);
    }
    Values after = valuesOf(put.record);
    if (const auto sound = checkBefore(put.record, pointer(before), after); !sound) {
        return sound;
    }
    if (before && *before == after) {
        return {};
    }
    noteNeeds(table, after);
    return writeRow(table, id, pointer(before), after);
}

Result<void> Writer::remove(const RecordId& id)
{
    const Table& table = tableOf(id);
    const auto there = any(u"SELECT 1 FROM %1 WHERE id = ?"_s.arg(table.name), {idOf(id)});
    if (!there) {
        return there.error();
    }
    if (!*there) {
        return fail(Fault::Conflict, Words::tr("What is to be removed is no longer in the store."),
                    Words::tr("Load the store again; another program may have removed it."));
    }
    return removeRow(table, idOf(id));
}

Result<void> Writer::set(const Setting& setting)
{
    if (setting.key.isEmpty()) {
        return fail(Fault::BadInput, Words::tr("A setting has no key."),
                    Words::tr("Name the setting that is to be kept."));
    }
    const Table& table = settingTable();
    std::optional<Values> before;
    {
        Statement query = m_connection.prepare(table.select + u" WHERE key = ?"_s);
        if (const auto done = query.bind(setting.key).exec(); !done) {
            return done;
        }
        if (query.next()) {
            before = valuesOf(query.row(), table.columns.size());
        }
    }
    if (setting.value.isEmpty()) {
        return before ? removeRow(table, before->front().toLongLong()) : Result<void>();
    }
    const qint64 id = before ? before->front().toLongLong() : Edit::nextId();
    const Values after{QVariant(id), QVariant(setting.key), QVariant(setting.value)};
    return before && *before == after ? Result<void>() : writeRow(table, id, pointer(before), after);
}

Result<std::optional<Values>> Writer::rowNow(const Table& table, qint64 id)
{
    Statement query = m_connection.prepare(table.selectById);
    if (const auto done = query.bind(id).exec(); !done) {
        return done.error();
    }
    if (query.next()) {
        return std::optional(valuesOf(query.row(), table.columns.size()));
    }
    if (const auto sound = query.end(); !sound) {
        return sound.error();
    }
    return std::optional<Values>();
}

Result<void> Writer::writeRow(const Table& table, qint64 id, const Values* before, const Values& after)
{
    Statement statement = m_connection.prepare(before != nullptr ? table.update : table.insert);
    for (std::size_t i = before != nullptr ? 1 : 0; i < after.size(); ++i) {
        statement.bind(after[i]);
    }
    if (before != nullptr) {
        statement.bind(id);
    }
    if (const auto done = statement.exec(); !done) {
        return done;
    }
    return m_journal.add(table, id, before, &after);
}

Result<void> Writer::removeRow(const Table& table, qint64 id)
{
    for (const Reference& reference : references()) {
        if (table.name == QLatin1String(reference.target)) {
            if (const auto done = letGo(reference, id); !done) {
                return done;
            }
        }
    }
    const auto before = rowNow(table, id);
    if (!before) {
        return before.error();
    }
    if (!*before) {
        return {};
    }
    if (const auto done = m_connection.prepare(table.remove).bind(id).exec(); !done) {
        return done;
    }
    return m_journal.add(table, id, pointer(*before), nullptr);
}

Result<std::vector<qint64>> Writer::dependants(const Reference& reference, qint64 target)
{
    Statement query = m_connection.prepare(u"SELECT id FROM %1 WHERE %2 = ? ORDER BY id"_s.arg(
        QLatin1String(reference.table), QLatin1String(reference.column)));
    if (const auto done = query.bind(target).exec(); !done) {
        return done.error();
    }
    std::vector<qint64> ids;
    while (query.next()) {
        ids.push_back(query.value(0).toLongLong());
    }
    if (const auto sound = query.end(); !sound) {
        return sound.error();
    }
    return ids;
}

Result<void> Writer::letGo(const Reference& reference, qint64 target)
{
    const Table& table = *findTable(QString::fromLatin1(reference.table));
    const auto ids = dependants(reference, target);
    if (!ids) {
        return ids.error();
    }
    const auto column = static_cast<std::size_t>(table.columnIndex(QString::fromLatin1(reference.column)));
    for (const qint64 id : *ids) {
        if (reference.whenGone == WhenGone::RemoveToo) {
            if (const auto done = removeRow(table, id); !done) {
                return done;
            }
            continue;
        }
        const auto before = rowNow(table, id);
        if (!before) {
            return before.error();
        }
        if (!*before) {
            continue;
        }
        Values after = **before;
        after[column] = QVariant();
        if (const auto done = writeRow(table, id, pointer(*before), after); !done) {
            return done;
        }
    }
    return {};
}

Result<bool> Writer::any(const QString& sql, std::initializer_list<QVariant> values)
{
    Statement query = m_connection.prepare(sql);
    for (const QVariant& value : values) {
        query.bind(value);
    }
    if (const auto done = query.exec(); !done) {
        return done.error();
    }
    const bool found = query.next();
    if (const auto sound = query.end(); !sound) {
        return sound.error();
    }
    return found;
}

} // namespace littoral::store
