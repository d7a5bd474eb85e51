// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/store/statement.h"

#include <QSqlDatabase>
#include <QString>
#include <memory>
#include <unordered_map>

namespace littoral::store {

/// How long a statement waits for another program's write before it gives up with Fault::Busy.
inline constexpr int kBusyMs = 5000;

/// How a file is opened.
enum class Mode {
    ReadWrite,
    QueryOnly, ///< read-write underneath, so that side files are tidied, but every change is refused
    ReadOnly,  ///< the file may not be written
    Immutable, ///< neither may its folder: read without locks or side files
};

/// One open database with every safety setting on: foreign keys, WAL, synchronous FULL, busy timeout, schema not
/// trusted. Prepared statements are kept and reused. One thread.
class Connection final
{
public:
    [[nodiscard]] static Result<std::unique_ptr<Connection>> open(const QString& path, Mode mode, int busyMs = kBusyMs);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] Mode mode() const { return m_mode; }

    /// Lends a prepared statement; a text that does not compile fails at exec().
    [[nodiscard]] Statement prepare(const QString& sql);
    /// Runs one statement without values, unprepared: pragmas, BEGIN, schema.
    [[nodiscard]] Result<void> run(const QString& sql);
    /// First column of the first row; an invalid QVariant when there is no row.
    [[nodiscard]] Result<QVariant> value(const QString& sql);

private:
    Connection(QString path, Mode mode);
    [[nodiscard]] Result<void> configure();
    void close();

    struct Prepared
    {
        QSqlQuery query;
        bool ok = false;
    };
    QString m_path;
    Mode m_mode;
    QString m_name;
    QSqlDatabase m_database;
    std::unordered_map<QString, Prepared> m_statements;
};

} // namespace littoral::store
