// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/store.h"
#include "core/store/table.h"

#include <QJsonObject>
#include <optional>

namespace littoral::store {

/// How far undo reaches back: the newest changes up to this many, and up to this many bytes of them (the newest change
/// is always kept, however large). Older ones are dropped as new ones come.
inline constexpr int kJournalChanges = 5000;
inline constexpr qint64 kJournalBytes = 256LL * 1024 * 1024;

/// A row as a JSON object by column name; bytes as base64.
[[nodiscard]] QJsonObject rowToJson(const Table& table, const Values& values);

/// Writes one change to the journal, row by row, inside the caller's transaction. Nothing is written for a change that
/// touched no row.
class JournalWriter final
{
public:
    JournalWriter(Connection& connection, QString label)
        : m_connection(connection)
        , m_label(std::move(label))
    {
    }

    /// A row of `table` as it was and as it is now; nullptr where there is none.
    [[nodiscard]] Result<void> add(const Table& table, qint64 id, const Values* before, const Values* after);
    /// Seals the change and drops what lies beyond the journal's bounds.
    [[nodiscard]] Result<void> finish();

private:
    [[nodiscard]] Result<void> start();
    [[nodiscard]] Result<void> prune();

    Connection& m_connection;
    QString m_label;
    qint64 m_change = 0;
    qint64 m_steps = 0;
    qint64 m_bytes = 0;
};

enum class Direction { Undo, Redo };

/// Takes back the newest done change, or repeats the oldest undone one, in a transaction of its own. Conflict, and
/// nothing changed, when a row is no longer as the journal left it.
[[nodiscard]] Result<QString> replay(Connection& connection, Direction direction);

[[nodiscard]] JournalState journalState(Connection& connection);

} // namespace littoral::store
