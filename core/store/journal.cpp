// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/journal.h"

#include "core/record/moment.h"
#include "core/store/failure.h"

#include <QJsonDocument>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

QVariant imageText(const Table& table, const Values* values)
{
    if (values == nullptr) {
        return {};
    }
    return QString::fromUtf8(QJsonDocument(rowToJson(table, *values)).toJson(QJsonDocument::Compact));
}

QJsonValue valueToJson(const QVariant& value, Column::Type type)
{
    if (!value.isValid()) {
        return QJsonValue::Null;
    }
    switch (type) {
    case Column::Type::Integer:
        return value.toLongLong();
    case Column::Type::Real:
        return value.toDouble();
    case Column::Type::Blob:
        return QString::fromLatin1(value.toByteArray().toBase64());
    case Column::Type::Text:
        break;
    }
    return value.toString();
}

} // namespace

QJsonObject rowToJson(const Table& table, const Values& values)
{
    QJsonObject object;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        object.insert(table.columns[i].name, valueToJson(values[i], table.columns[i].type));
    }
    return object;
}

Result<void> JournalWriter::start()
{
    // A new change after undo ends the branch that could have been redone.
    for (const QString& sql :
         {u"DELETE FROM journal_row WHERE change IN (SELECT id FROM journal WHERE state = 'undone')"_s,
          u"DELETE FROM journal WHERE state = 'undone'"_s}) {
        if (const auto done = m_connection.prepare(sql).exec(); !done) {
            return done;
        }
    }
    const auto newest = m_connection.value(u"SELECT coalesce(max(id), 0) FROM journal"_s);
    if (!newest) {
        return newest.error();
    }
    m_change = newest->toLongLong() + 1;
    const record::Moment now = record::SystemClock().now();
    return m_connection
        .prepare(u"INSERT INTO journal (id, at_utc, at_offset, label, state, bytes) VALUES (?, ?, ?, ?, 'done', 0)"_s)
        .bind(m_change)
        .bind(now.utcMs())
        .bind(now.offsetSeconds())
        .bind(m_label.isNull() ? u""_s : m_label)
        .exec();
}

Result<void> JournalWriter::add(const Table& table, qint64 id, const Values* before, const Values* after)
{
    if (m_change == 0) {
        if (const auto started = start(); !started) {
            return started;
        }
    }
    const QVariant was = imageText(table, before);
    const QVariant is = imageText(table, after);
    m_bytes += was.toString().size() + is.toString().size();
    return m_connection
        .prepare(
            u"INSERT INTO journal_row (change, step, of_table, of_id, before_row, after_row) VALUES (?, ?, ?, ?, ?, ?)"_s)
        .bind(m_change)
        .bind(++m_steps)
        .bind(table.name)
        .bind(id)
        .bind(was)
        .bind(is)
        .exec();
}

Result<void> JournalWriter::finish()
{
    if (m_change == 0) {
        return {};
    }
    const auto sealed =
        m_connection.prepare(u"UPDATE journal SET bytes = ? WHERE id = ?"_s).bind(m_bytes).bind(m_change).exec();
    return sealed ? prune() : sealed;
}

Result<void> JournalWriter::prune()
{
    qint64 oldestKept = m_change;
    {
        Statement newestFirst = m_connection.prepare(u"SELECT id, bytes FROM journal ORDER BY id DESC LIMIT ?"_s);
        if (const auto done = newestFirst.bind(kJournalChanges).exec(); !done) {
            return done;
        }
        qint64 bytes = 0;
        while (newestFirst.next()) {
            bytes += newestFirst.value(1).toLongLong();
            if (bytes > kJournalBytes) {
                break;
            }
            oldestKept = newestFirst.value(0).toLongLong();
        }
        if (const auto sound = newestFirst.end(); !sound) {
            return sound;
        }
    }
    for (const QString& sql : {u"DELETE FROM journal_row WHERE change < ?"_s, u"DELETE FROM journal WHERE id < ?"_s}) {
        if (const auto done = m_connection.prepare(sql).bind(oldestKept).exec(); !done) {
            return done;
        }
    }
    return {};
}

JournalState journalState(Connection& connection)
{
    const auto label = [&](const QString& sql) -> std::optional<QString> {
        Statement query = connection.prepare(sql);
        if (!query.exec() || !query.next()) {
            return std::nullopt;
        }
        return query.value(0).toString();
    };
    return {label(u"SELECT label FROM journal WHERE state = 'done' ORDER BY id DESC LIMIT 1"_s),
            label(u"SELECT label FROM journal WHERE state = 'undone' ORDER BY id LIMIT 1"_s)};
}

} // namespace littoral::store
