// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_export.h"

#include "core/exchange/csv_table.h"
#include "core/exchange/instant.h"
#include "core/exchange/record_fields.h"

#include <QJsonValue>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString cellText(const QJsonValue& value)
{
    if (value.isBool()) {
        return value.toBool() ? u"yes"_s : u"no"_s;
    }
    return value.isDouble() ? numberText(value.toDouble()) : value.toString();
}

QString line(const QStringList& columns, QJsonObject fields, const QString& tank, int layout, const record::Moment& at,
             const record::Moment& entered)
{
    fields.insert(u"tank"_s, tank);
    fields.insert(u"layout"_s, layout);
    fields.insert(u"at"_s, instantText(at));
    fields.insert(u"entered"_s, instantText(entered.isValid() ? entered : at));
    QStringList cells;
    for (const QString& column : columns) {
        cells << cellText(fields.value(column));
    }
    return csvLine(cells);
}

} // namespace

QByteArray readingsCsv(const record::Row& row)
{
    const QStringList columns{u"tank"_s, u"layout"_s, u"at"_s,   u"parameter"_s, u"value"_s,
                              u"unit"_s, u"kit"_s,    u"note"_s, u"entered"_s};
    const NameBook names(row);
    QString text = csvLine(columns);
    for (const record::Tank& tank : row.tanks) {
        for (const record::LayoutRecord* layout : row.layoutsOf(tank.id)) {
            for (const record::Reading& reading : layout->readings) {
                text += line(columns, readingFields(reading, names), tank.name, layout->layout.number, reading.at,
                             reading.enteredAt);
            }
        }
    }
    return text.toUtf8();
}

QByteArray entriesCsv(const record::Row& row)
{
    const QStringList columns{u"tank"_s,
                              u"layout"_s,
                              u"at"_s,
                              u"kind"_s,
                              u"planned"_s,
                              u"planned_for"_s,
                              u"planned_fraction"_s,
                              u"subject"_s,
                              u"fraction"_s,
                              u"litres"_s,
                              u"amount"_s,
                              u"unit"_s,
                              u"protein"_s,
                              u"count"_s,
                              u"load_mgn_per_l_d"_s,
                              u"severity"_s,
                              u"coverage"_s,
                              u"where"_s,
                              u"source"_s,
                              u"other_tank"_s,
                              u"hours"_s,
                              u"par"_s,
                              u"target_mg_per_l"_s,
                              u"note"_s,
                              u"entered"_s};
    const NameBook names(row);
    QString text = csvLine(columns);
    for (const record::Tank& tank : row.tanks) {
        for (const record::LayoutRecord* layout : row.layoutsOf(tank.id)) {
            for (const record::Entry& entry : layout->entries) {
                text += line(columns, entryFields(entry, names), tank.name, layout->layout.number, entry.at,
                             entry.enteredAt);
            }
        }
    }
    return text.toUtf8();
}

} // namespace littoral::exchange
