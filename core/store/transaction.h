// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

namespace littoral::store {

/// Rolls back unless committed. Immediate takes the write lock at once (waiting for another program up to the busy
/// timeout), so that what is read inside cannot change before it is written; Snapshot is for reading several tables as
/// of one moment.
class Transaction final
{
public:
    enum class Kind { Immediate, Snapshot };

    [[nodiscard]] static Result<Transaction> begin(Connection& connection, Kind kind);
    ~Transaction();
    Transaction(Transaction&& other) noexcept
        : m_connection(std::exchange(other.m_connection, nullptr))
    {
    }
    Transaction& operator=(Transaction&&) = delete;

    [[nodiscard]] Result<void> commit();

private:
    explicit Transaction(Connection& connection)
        : m_connection(&connection)
    {
    }
    Connection* m_connection; ///< nullptr once it is over
};

} // namespace littoral::store
