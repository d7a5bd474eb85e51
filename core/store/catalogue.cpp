// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/catalogue.h"

#include "core/record/parameter.h"
#include "core/record/shown.h"
#include "core/store/row_io.h"
#include "core/store/table.h"
#include "core/store/transaction.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

constexpr std::size_t kColumns = 6;

QString unitsText(const record::Parameter& parameter)
{
    QJsonArray units;
    for (const record::Unit& unit : parameter.units) {
        units.append(QJsonObject{{u"code"_s, unit.code}, {u"factor"_s, unit.factor}, {u"offset"_s, unit.offset}});
    }
    return QString::fromUtf8(QJsonDocument(units).toJson(QJsonDocument::Compact));
}

Values rowOf(const record::Parameter& parameter)
{
    return {QVariant(parameter.key),
            QVariant(record::inUsualUnits(parameter).name),
            QVariant(parameter.canonical().code),
            QVariant(unitsText(parameter)),
            QVariant(parameter.lowest),
            QVariant(parameter.highest)};
}

Result<std::vector<Values>> missing(Connection& connection)
{
    std::vector<Values> rows;
    for (const record::Parameter& parameter : record::parameters()) {
        const Values wanted = rowOf(parameter);
        Statement query = connection.prepare(
            u"SELECT key, name, canonical_unit, units, lowest, highest FROM parameter WHERE key = ?"_s);
        if (const auto done = query.bind(parameter.key).exec(); !done) {
            return done.error();
        }
        if (!query.next() || valuesOf(query.row(), kColumns) != wanted) {
            rows.push_back(wanted);
        }
        if (const auto sound = query.end(); !sound) {
            return sound.error();
        }
    }
    return rows;
}

} // namespace

Result<void> syncCatalogue(Connection& connection)
{
    const auto rows = missing(connection);
    if (!rows) {
        return rows.error();
    }
    if (rows->empty()) {
        return {};
    }
    auto transaction = Transaction::begin(connection, Transaction::Kind::Immediate);
    if (!transaction) {
        return transaction.error();
    }
    for (const Values& row : *rows) {
        Statement upsert = connection.prepare(u"INSERT INTO parameter (key, name, canonical_unit, units, lowest, "
                                              u"highest) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (key) DO UPDATE "
                                              "SET name = excluded.name, canonical_unit = excluded.canonical_unit, "
                                              "units = excluded.units, lowest = excluded.lowest, "
                                              "highest = excluded.highest"_s);
        for (const QVariant& value : row) {
            upsert.bind(value);
        }
        if (const auto done = upsert.exec(); !done) {
            return done;
        }
    }
    return transaction->commit();
}

} // namespace littoral::store
