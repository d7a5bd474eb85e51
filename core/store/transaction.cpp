// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/transaction.h"

namespace littoral::store {

using namespace Qt::StringLiterals;

Result<Transaction> Transaction::begin(Connection& connection, Kind kind)
{
    const auto begun = connection.run(kind == Kind::Immediate ? u"BEGIN IMMEDIATE"_s : u"BEGIN DEFERRED"_s);
    if (!begun) {
        return begun.error();
    }
    return Transaction(connection);
}

Transaction::~Transaction()
{
    if (m_connection != nullptr) {
        // A rollback that fails leaves nothing to roll back: SQLite has done it already (disk full, I/O error).
        static_cast<void>(m_connection->run(u"ROLLBACK"_s).has_value());
    }
}

Result<void> Transaction::commit()
{
    const auto done = m_connection->run(u"COMMIT"_s);
    if (done) {
        m_connection = nullptr;
    }
    return done;
}

} // namespace littoral::store
