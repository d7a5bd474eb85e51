// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/edit.h"
#include "core/store/journal.h"
#include "core/store/table.h"

#include <optional>
#include <set>
#include <tuple>
#include <vector>

namespace littoral::store {

/// Carries out one Edit inside the caller's transaction: checks each record, writes it, removes what hangs on a removed
/// one, and journals every row it touches. On an Error the transaction is to be rolled back.
class Writer final
{
public:
    Writer(Connection& connection, const Edit& edit);

    [[nodiscard]] Result<void> run();

private:
    [[nodiscard]] Result<void> put(const Edit::Put& put);
    [[nodiscard]] Result<void> remove(const RecordId& id);
    [[nodiscard]] Result<void> set(const Setting& setting);

    [[nodiscard]] Result<std::optional<Values>> rowNow(const Table& table, qint64 id);
    [[nodiscard]] Result<void> writeRow(const Table& table, qint64 id, const Values* before, const Values& after);
    [[nodiscard]] Result<void> removeRow(const Table& table, qint64 id);
    [[nodiscard]] Result<void> letGo(const Reference& reference, qint64 target);
    [[nodiscard]] Result<std::vector<qint64>> dependants(const Reference& reference, qint64 target);

    // Rules that need other rows.
    [[nodiscard]] Result<void> checkTaken(const Record& record);
    [[nodiscard]] Result<void> checkTankName(const record::Tank& tank);
    [[nodiscard]] Result<void> checkBefore(const Record& record, const Values* before, Values& after) const;
    void noteNeeds(const Table& table, const Values& row);
    /// After all steps: everything referred to is there, and a layout's records name that layout's tank.
    [[nodiscard]] Result<void> checkNeeds();
    [[nodiscard]] Result<void> checkBlends();
    [[nodiscard]] Result<bool> any(const QString& sql, std::initializer_list<QVariant> values);

    [[nodiscard]] Error fail(Fault fault, const QString& what, const QString& mend) const;

    Connection& m_connection;
    const Edit& m_edit;
    JournalWriter m_journal;
    std::set<std::pair<const Reference*, qint64>> m_needs;            ///< reference, id referred to
    std::set<std::tuple<const Table*, qint64, qint64>> m_layoutNeeds; ///< table, layout, tank
};

} // namespace littoral::store
