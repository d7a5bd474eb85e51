// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/verify.h"

#include "core/record/parameter.h"
#include "core/store/failure.h"
#include "core/store/table.h"
#include "core/store/transaction.h"

#include <QSet>
#include <algorithm>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

using Verification = Store::Verification;

/// More findings of one kind than this tell nothing new.
constexpr int kMostFindings = 20;

/// Runs a query whose rows are findings, and words each.
template <typename Say>
Result<void> findings(Connection& connection, const QString& sql, std::vector<QString>& problems, Say&& say)
{
    Statement query = connection.prepare(sql + u" LIMIT %1"_s.arg(kMostFindings));
    if (const auto done = query.exec(); !done) {
        return done;
    }
    while (query.next()) {
        const QString said = say(query);
        if (!said.isEmpty()) {
            problems.push_back(said);
        }
    }
    return query.end();
}

Result<void> sqliteChecks(Connection& connection, Verification& report)
{
    const auto whole = findings(connection, u"SELECT integrity_check FROM pragma_integrity_check"_s, report.problems,
                                [](const Statement& row) {
                                    const QString said = row.value(0).toString();
                                    return said == u"ok"_s ? QString() : Words::tr("SQLite reports: %1.").arg(said);
                                });
    if (!whole) {
        return whole;
    }
    return findings(connection, u"SELECT \"table\", rowid, parent FROM pragma_foreign_key_check"_s, report.problems,
                    [](const Statement& row) {
                        return Words::tr("Row %2 of table %1 refers to a row of table %3 that is missing.")
                            .arg(row.value(0).toString(), row.value(1).toString(), row.value(2).toString());
                    });
}

Result<void> readingChecks(Connection& connection, Verification& report)
{
    const auto strangers = findings(
        connection,
        u"SELECT r.id FROM reading r LEFT JOIN layout l ON l.id = r.layout WHERE l.id IS NULL OR l.tank <> r.tank"_s,
        report.problems, [](const Statement& row) {
            return Words::tr("Reading %1 names a layout that is not in its tank.").arg(row.value(0).toLongLong());
        });
    if (!strangers) {
        return strangers;
    }
    const auto bounds =
        findings(connection, u"SELECT id FROM reading WHERE NOT (value BETWEEN low AND high)"_s, report.problems,
                 [](const Statement& row) {
                     return Words::tr("Reading %1 lies outside its own bounds.").arg(row.value(0).toLongLong());
                 });
    if (!bounds) {
        return bounds;
    }
    return findings(connection, u"SELECT DISTINCT parameter FROM reading"_s, report.problems, [](const Statement& row) {
        const QString key = row.value(0).toString();
        const record::Parameter* known = record::findParameter(key);
        return known != nullptr && known->key == key
                   ? QString()
                   : Words::tr("There are readings of \"%1\", a parameter this program does not know.").arg(key);
    });
}

Result<void> blendChecks(Connection& connection, Verification& report)
{
    return findings(connection, blendsOfThemselves(), report.problems, [](const Statement& row) {
        return Words::tr("The blend \"%1\" is made of itself.").arg(row.value(0).toString());
    });
}

Result<void> nameChecks(Connection& connection, Verification& report)
{
    Statement query = connection.prepare(u"SELECT name FROM tank ORDER BY id"_s);
    if (const auto done = query.exec(); !done) {
        return done;
    }
    QSet<QString> seen;
    while (query.next()) {
        const QString name = query.value(0).toString();
        const QString folded = name.trimmed().toCaseFolded();
        if (seen.contains(folded)) {
            report.problems.push_back(Words::tr("Two tanks are called \"%1\".").arg(name));
        }
        seen.insert(folded);
    }
    return query.end();
}

Result<void> journalChecks(Connection& connection, Verification& report)
{
    const auto tables =
        findings(connection, u"SELECT DISTINCT of_table FROM journal_row"_s, report.problems, [](const Statement& row) {
            const QString name = row.value(0).toString();
            return findTable(name) != nullptr
                       ? QString()
                       : Words::tr("The journal speaks of a table \"%1\" that does not exist.").arg(name);
        });
    if (!tables) {
        return tables;
    }
    return findings(
        connection,
        u"SELECT id FROM journal WHERE state = 'done' AND id > (SELECT min(id) FROM journal WHERE state = 'undone')"_s,
        report.problems, [](const Statement& row) {
            return Words::tr("Change %1 of the journal is done although an earlier one is undone.")
                .arg(row.value(0).toLongLong());
        });
}

Result<void> counts(Connection& connection, Verification& report)
{
    const std::initializer_list<std::pair<const char*, qint64*>> tables{
        {"tank", &report.tanks}, {"layout", &report.layouts}, {"reading", &report.readings}, {"entry", &report.entries},
        {"task", &report.tasks}, {"photo", &report.photos},   {"journal", &report.journal}};
    for (const auto& [table, count] : tables) {
        const auto counted = connection.value(u"SELECT count(*) FROM %1"_s.arg(QLatin1String(table)));
        if (!counted) {
            return counted.error();
        }
        *count = counted->toLongLong();
    }
    const auto version = connection.value(u"PRAGMA user_version"_s);
    if (!version) {
        return version.error();
    }
    report.schemaVersion = version->toInt();
    return {};
}

} // namespace

Result<Verification> verifyStore(Connection& connection)
{
    auto snapshot = Transaction::begin(connection, Transaction::Kind::Snapshot);
    if (!snapshot) {
        return snapshot.error();
    }
    Verification report;
    for (const auto part : {counts, sqliteChecks, readingChecks, blendChecks, nameChecks, journalChecks}) {
        if (const auto done = part(connection, report); !done) {
            return done.error();
        }
    }
    return report;
}

} // namespace littoral::store
