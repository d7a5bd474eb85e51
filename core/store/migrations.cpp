// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migrations.h"

#include "core/store/failure.h"
#include "core/store/store.h"
#include "core/store/transaction.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

/// How far the quoted text or comment that starts at `at` reaches; `at` itself when none starts there.
qsizetype skipped(const QString& script, qsizetype at)
{
    const auto past = [&](QStringView mark, qsizetype from) {
        const qsizetype found = script.indexOf(mark, from);
        return found < 0 ? script.size() : found + mark.size();
    };
    const QChar c = script[at];
    if (c == u'\'' || c == u'"') {
        return past(QStringView(&script.constData()[at], 1), at + 1);
    }
    if (c == u'-' && script.mid(at, 2) == u"--"_s) {
        return past(u"\n", at);
    }
    if (c == u'/' && script.mid(at, 2) == u"/*"_s) {
        return past(u"*/", at + 2);
    }
    return at;
}

Result<int> versionOf(Connection& connection)
{
    const auto version = connection.value(u"PRAGMA user_version"_s);
    if (!version) {
        return version.error();
    }
    return version->toInt();
}

QString copyPath(const QString& path, int version)
{
    const QFileInfo file(path);
    const QString stem = u"%1/%2.before-upgrade-v%3"_s.arg(file.absolutePath(), file.completeBaseName()).arg(version);
    QString candidate = stem + u".littoral"_s;
    for (int n = 2; QFile::exists(candidate); ++n) {
        candidate = u"%1-%2.littoral"_s.arg(stem).arg(n);
    }
    return candidate;
}

Result<QString> setAside(Connection& connection, int version)
{
    const QString copy = copyPath(connection.path(), version);
    const auto made = connection.prepare(u"VACUUM INTO ?"_s).bind(copy).exec();
    if (!made) {
        QFile::remove(copy);
        return failure(Fault::Storage,
                       Words::tr("The store needs an upgrade, but no copy of it could be set aside first."),
                       QDir::toNativeSeparators(copy),
                       Words::tr("Nothing was changed. Free some space, or move the store to a folder you may write "
                                 "to, then open it again."));
    }
    return copy;
}

Result<void> checkForeignKeys(Connection& connection)
{
    const auto broken = connection.value(u"SELECT \"table\" FROM pragma_foreign_key_check LIMIT 1"_s);
    if (!broken) {
        return broken.error();
    }
    if (broken->isValid()) {
        return damagedFailure(connection.path(),
                              Words::tr("a row of table %1 refers to one that is missing").arg(broken->toString()));
    }
    return {};
}

/// One rung, whole or not at all.
Result<void> climb(Connection& connection, const Migration& rung)
{
    auto transaction = Transaction::begin(connection, Transaction::Kind::Immediate);
    if (!transaction) {
        return transaction.error();
    }
    const auto version = versionOf(connection);
    if (!version) {
        return version.error();
    }
    if (*version >= rung.version) {
        return {}; // another program was faster
    }
    QStringList statements = statementsOf(rung.sql);
    statements << u"PRAGMA user_version = %1"_s.arg(rung.version)
               << u"PRAGMA application_id = %1"_s.arg(kApplicationId);
    for (const QString& statement : statements) {
        if (const auto done = connection.run(statement); !done) {
            return done;
        }
    }
    if (const auto sound = checkForeignKeys(connection); !sound) {
        return sound;
    }
    return transaction->commit();
}

Error upgradeFailed(const Connection& connection, const Migration& rung, const QString& copy, const Error& why)
{
    const QString mend =
        copy.isEmpty() ? Words::tr("Nothing was changed. Free some space, or choose another folder, then try again.")
                       : Words::tr("The step was taken back. A copy of the store as it was before lies at %1; keep it, "
                                   "and open the store "
                                   "with the version of the program that wrote it.")
                             .arg(QDir::toNativeSeparators(copy));
    return failure(why.fault,
                   Words::tr("The store could not be brought to format %1: %2")
                       .arg(rung.version)
                       .arg(QString::fromStdString(why.what)),
                   QDir::toNativeSeparators(connection.path()), mend);
}

/// Turns foreign keys off for its lifetime: a migration may rebuild tables, and SQLite takes this pragma only outside a
/// transaction.
class WithoutForeignKeys final
{
public:
    explicit WithoutForeignKeys(Connection& connection)
        : m_connection(connection)
    {
        set(u"PRAGMA foreign_keys = OFF"_s);
    }
    ~WithoutForeignKeys() { set(u"PRAGMA foreign_keys = ON"_s); }
    WithoutForeignKeys(const WithoutForeignKeys&) = delete;
    WithoutForeignKeys& operator=(const WithoutForeignKeys&) = delete;

private:
    void set(const QString& pragma) { static_cast<void>(m_connection.run(pragma).has_value()); }
    Connection& m_connection;
};

} // namespace

std::vector<Migration> builtInMigrations()
{
    std::vector<Migration> ladder;
    const QDir folder(u":/schema"_s);
    for (const QString& name : folder.entryList({u"*.sql"_s}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (file.open(QIODevice::ReadOnly)) {
            ladder.push_back({name.section(u'_', 0, 0).toInt(), QString::fromUtf8(file.readAll())});
        }
    }
    return ladder;
}

QStringList statementsOf(const QString& script)
{
    QStringList statements;
    QString current;
    for (qsizetype i = 0; i < script.size();) {
        const qsizetype end = skipped(script, i);
        if (end > i) {
            const bool comment = script[i] == u'-' || script[i] == u'/';
            current += comment ? u" "_s : script.mid(i, end - i);
            i = end;
            continue;
        }
        if (script[i] == u';') {
            statements << current.trimmed();
            current.clear();
        } else {
            current += script[i];
        }
        ++i;
    }
    statements << current.trimmed();
    statements.removeAll(QString(u""_s));
    return statements;
}

Result<Migrated> migrate(Connection& connection, const std::vector<Migration>& ladder)
{
    const auto version = versionOf(connection);
    if (!version) {
        return version.error();
    }
    const int top = ladder.empty() ? 0 : ladder.back().version;
    if (*version > top) {
        return newerFailure(connection.path(), *version, top);
    }
    Migrated migrated;
    migrated.from = *version;
    if (*version == top) {
        return migrated;
    }
    migrated.outcome = *version == 0 ? Migrated::Outcome::Created : Migrated::Outcome::Upgraded;
    if (*version > 0) {
        const auto copy = setAside(connection, *version);
        if (!copy) {
            return copy.error();
        }
        migrated.copy = *copy;
    }
    const WithoutForeignKeys guard(connection);
    for (const Migration& rung : ladder) {
        if (rung.version > *version) {
            if (const auto done = climb(connection, rung); !done) {
                return upgradeFailed(connection, rung, migrated.copy, done.error());
            }
        }
    }
    return migrated;
}

} // namespace littoral::store
