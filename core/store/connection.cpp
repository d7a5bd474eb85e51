// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include "core/store/failure.h"

#include <QDir>
#include <QSqlError>
#include <QUrl>
#include <QUuid>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

QString databaseName(const QString& path, Mode mode)
{
    return mode == Mode::Immutable ? QUrl::fromLocalFile(path).toString(QUrl::FullyEncoded) + u"?immutable=1"_s : path;
}

QString options(Mode mode, int busyMs)
{
    QString text = u"QSQLITE_BUSY_TIMEOUT=%1"_s.arg(busyMs);
    if (mode == Mode::ReadOnly || mode == Mode::Immutable) {
        text += u";QSQLITE_OPEN_READONLY"_s;
    }
    if (mode == Mode::Immutable) {
        text += u";QSQLITE_OPEN_URI"_s;
    }
    return text;
}

} // namespace

Connection::Connection(QString path, Mode mode)
    : m_path(std::move(path))
    , m_mode(mode)
    , m_name(u"littoral-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces))
{
}

Connection::~Connection()
{
    close();
}

void Connection::close()
{
    // Queries and every copy of the handle go first, or Qt reports a connection still in use.
    m_statements.clear();
    if (m_database.isValid()) {
        m_database.close();
        m_database = QSqlDatabase();
        QSqlDatabase::removeDatabase(m_name);
    }
}

Result<std::unique_ptr<Connection>> Connection::open(const QString& path, Mode mode, int busyMs)
{
    std::unique_ptr<Connection> made(new Connection(path, mode));
    made->m_database = QSqlDatabase::addDatabase(u"QSQLITE"_s, made->m_name);
    made->m_database.setDatabaseName(databaseName(path, mode));
    made->m_database.setConnectOptions(options(mode, busyMs));
    if (!made->m_database.open()) {
        return sqlFailure(made->m_database.lastError(), path);
    }
    if (const auto ready = made->configure(); !ready) {
        return ready.error();
    }
    return made;
}

Result<void> Connection::configure()
{
    for (const QString& pragma :
         {u"PRAGMA trusted_schema = OFF"_s, u"PRAGMA foreign_keys = ON"_s, u"PRAGMA cell_size_check = ON"_s}) {
        if (const auto done = run(pragma); !done) {
            return done;
        }
    }
    if (m_mode == Mode::QueryOnly) {
        return run(u"PRAGMA query_only = ON"_s);
    }
    if (m_mode != Mode::ReadWrite) {
        return {};
    }
    const auto journalMode = value(u"PRAGMA journal_mode = WAL"_s);
    if (!journalMode) {
        return journalMode.error();
    }
    if (journalMode->toString() != u"wal"_s) {
        return failure(
            Fault::Storage, Words::tr("This folder's file system cannot hold a store safely."),
            QDir::toNativeSeparators(m_path),
            Words::tr("Move the store to a disk of this computer; network folders often lack what is needed."));
    }
    return run(u"PRAGMA synchronous = FULL"_s);
}

Statement Connection::prepare(const QString& sql)
{
    auto found = m_statements.find(sql);
    if (found == m_statements.end()) {
        QSqlQuery query(m_database);
        query.setForwardOnly(true);
        const bool ok = query.prepare(sql);
        found = m_statements.emplace(sql, Prepared{std::move(query), ok}).first;
    }
    return Statement(found->second.query, found->second.ok, m_path);
}

Result<void> Connection::run(const QString& sql)
{
    QSqlQuery query(m_database);
    query.setForwardOnly(true);
    if (!query.exec(sql)) {
        return sqlFailure(query.lastError(), m_path);
    }
    return {};
}

Result<QVariant> Connection::value(const QString& sql)
{
    QSqlQuery query(m_database);
    query.setForwardOnly(true);
    if (!query.exec(sql)) {
        return sqlFailure(query.lastError(), m_path);
    }
    if (query.next()) {
        return query.value(0);
    }
    if (query.lastError().isValid()) {
        return sqlFailure(query.lastError(), m_path);
    }
    return QVariant();
}

} // namespace littoral::store
