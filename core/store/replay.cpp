// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/failure.h"
#include "core/store/journal.h"
#include "core/store/transaction.h"

#include <QDir>
#include <QJsonDocument>
#include <QStringList>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

/// One row of a change, on the way from `from` to `to`; no object where there is no row.
struct Step
{
    const Table* table = nullptr;
    qint64 id = 0;
    std::optional<QJsonObject> from;
    std::optional<QJsonObject> to;
};

std::optional<QJsonObject> image(const QVariant& text)
{
    return text.isNull() || !text.isValid() ? std::nullopt
                                            : std::optional(QJsonDocument::fromJson(text.toString().toUtf8()).object());
}

QVariant valueFromJson(const QJsonValue& value, Column::Type type)
{
    if (value.isNull()) {
        return {};
    }
    switch (type) {
    case Column::Type::Integer:
        return value.toInteger();
    case Column::Type::Real:
        return value.toDouble();
    case Column::Type::Blob: {
        const QByteArray bytes = QByteArray::fromBase64(value.toString().toLatin1());
        return bytes.isNull() ? QByteArray("") : bytes;
    }
    case Column::Type::Text:
        break;
    }
    const QString text = value.toString();
    return text.isNull() ? u""_s : text;
}

Error noLongerSo(const Connection& connection, const QString& label)
{
    return failure(
        Fault::Conflict,
        Words::tr("\"%1\" cannot be taken back or repeated: what it changed has been changed since.").arg(label),
        QDir::toNativeSeparators(connection.path()),
        Words::tr("Nothing was changed. Load the store again and make the change by hand."));
}

class Replayer final
{
public:
    Replayer(Connection& connection, QString label)
        : m_connection(connection)
        , m_label(std::move(label))
    {
    }

    Result<void> run(const Step& step)
    {
        const auto same = isStill(step);
        if (!same) {
            return same.error();
        }
        if (!*same) {
            return noLongerSo(m_connection, m_label);
        }
        if (step.to) {
            return step.from ? update(step) : insert(step);
        }
        if (step.table->name == u"layout"_s) {
            // Forecasts are kept beside the journal, so no step of it takes them out before their layout.
            const auto gone = m_connection.prepare(u"DELETE FROM forecast WHERE layout = ?"_s).bind(step.id).exec();
            if (!gone) {
                return gone;
            }
        }
        return m_connection.prepare(step.table->remove).bind(step.id).exec();
    }

private:
    /// Columns added since the change was journalled are no part of it and are not compared.
    Result<bool> isStill(const Step& step)
    {
        Statement query = m_connection.prepare(step.table->selectById);
        if (const auto done = query.bind(step.id).exec(); !done) {
            return done.error();
        }
        if (!query.next()) {
            return !step.from.has_value();
        }
        if (!step.from) {
            return false;
        }
        const QJsonObject now = rowToJson(*step.table, valuesOf(query.row(), step.table->columns.size()));
        for (auto it = step.from->begin(); it != step.from->end(); ++it) {
            if (now.value(it.key()) != it.value()) {
                return false;
            }
        }
        return true;
    }

    Result<void> insert(const Step& step)
    {
        QStringList names;
        QStringList marks;
        Values values;
        for (const Column& column : step.table->columns) {
            if (step.to->contains(column.name)) {
                names << column.name;
                marks << u"?"_s;
                values.push_back(valueFromJson(step.to->value(column.name), column.type));
            }
        }
        return bound(
            u"INSERT INTO %1 (%2) VALUES (%3)"_s.arg(step.table->name, names.join(u", "_s), marks.join(u", "_s)),
            values);
    }

    Result<void> update(const Step& step)
    {
        QStringList assignments;
        Values values;
        for (const Column& column : step.table->columns) {
            if (column.name != u"id"_s && step.to->contains(column.name)) {
                assignments << column.name + u" = ?"_s;
                values.push_back(valueFromJson(step.to->value(column.name), column.type));
            }
        }
        values.emplace_back(step.id);
        return bound(u"UPDATE %1 SET %2 WHERE id = ?"_s.arg(step.table->name, assignments.join(u", "_s)), values);
    }

    Result<void> bound(const QString& sql, const Values& values)
    {
        Statement statement = m_connection.prepare(sql);
        for (const QVariant& value : values) {
            statement.bind(value);
        }
        return statement.exec();
    }

    Connection& m_connection;
    QString m_label;
};

struct Change
{
    qint64 id = 0;
    QString label;
};

Result<std::optional<Change>> nextChange(Connection& connection, Direction direction)
{
    Statement query = connection.prepare(
        direction == Direction::Undo ? u"SELECT id, label FROM journal WHERE state = 'done' ORDER BY id DESC LIMIT 1"_s
                                     : u"SELECT id, label FROM journal WHERE state = 'undone' ORDER BY id LIMIT 1"_s);
    if (const auto done = query.exec(); !done) {
        return done.error();
    }
    return query.next() ? std::optional(Change{query.value(0).toLongLong(), query.value(1).toString()}) : std::nullopt;
}

Result<std::vector<Step>> stepsOf(Connection& connection, const Change& change, Direction direction)
{
    const bool undo = direction == Direction::Undo;
    Statement query = connection.prepare(
        undo ? u"SELECT of_table, of_id, after_row, before_row FROM journal_row WHERE change = ? ORDER BY step DESC"_s
             : u"SELECT of_table, of_id, before_row, after_row FROM journal_row WHERE change = ? ORDER BY step"_s);
    if (const auto done = query.bind(change.id).exec(); !done) {
        return done.error();
    }
    std::vector<Step> steps;
    while (query.next()) {
        Step step{findTable(query.value(0).toString()), query.value(1).toLongLong(), image(query.value(2)),
                  image(query.value(3))};
        if (step.table == nullptr) {
            return noLongerSo(connection, change.label);
        }
        steps.push_back(std::move(step));
    }
    if (const auto sound = query.end(); !sound) {
        return sound.error();
    }
    return steps;
}

Error nothingToDo(const Connection& connection, Direction direction)
{
    return failure(
        Fault::NotFound,
        direction == Direction::Undo ? Words::tr("There is nothing to undo.") : Words::tr("There is nothing to redo."),
        QDir::toNativeSeparators(connection.path()),
        direction == Direction::Undo ? Words::tr("Changes older than the journal keeps can be taken back by hand.")
                                     : Words::tr("A new change after an undo ends what could be redone."));
}

} // namespace

Result<QString> replay(Connection& connection, Direction direction)
{
    auto transaction = Transaction::begin(connection, Transaction::Kind::Immediate);
    if (!transaction) {
        return transaction.error();
    }
    const auto change = nextChange(connection, direction);
    if (!change) {
        return change.error();
    }
    if (!*change) {
        return nothingToDo(connection, direction);
    }
    const auto steps = stepsOf(connection, **change, direction);
    if (!steps) {
        return steps.error();
    }
    Replayer replayer(connection, (*change)->label);
    for (const Step& step : *steps) {
        if (const auto done = replayer.run(step); !done) {
            return done.error();
        }
    }
    const QString state = direction == Direction::Undo ? u"undone"_s : u"done"_s;
    const auto marked =
        connection.prepare(u"UPDATE journal SET state = ? WHERE id = ?"_s).bind(state).bind((*change)->id).exec();
    if (!marked) {
        return marked.error();
    }
    if (const auto committed = transaction->commit(); !committed) {
        return committed.error();
    }
    return (*change)->label;
}

} // namespace littoral::store
