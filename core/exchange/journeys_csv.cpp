// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/journeys_csv.h"

#include "core/exchange/csv_table.h"
#include "core/exchange/instant.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

constexpr std::array kColumns{"leaves", "returns", "helper", "phone", "note", "entered"};

QString words(const char* text)
{
    return QCoreApplication::translate("Import", text);
}

QStringList columnsOf(const CsvTable& table)
{
    QStringList columns;
    for (const QString& header : table.columns) {
        columns << header.trimmed().toLower();
    }
    return columns;
}

bool isKnown(const std::vector<record::Journey>& all, const record::Journey& journey)
{
    return std::ranges::any_of(all, [&](const record::Journey& other) {
        return other.leaves == journey.leaves && other.returns == journey.returns && other.helper == journey.helper;
    });
}

/// Names what the header has that no journey has.
bool checkColumns(const QStringList& columns, const QString& fileName, Problems& problems)
{
    bool sound = true;
    for (const QString& column : columns) {
        const bool known =
            column.isEmpty() || column.startsWith(u'#') ||
            std::ranges::any_of(kColumns, [&](const char* name) { return column == QLatin1String(name); });
        if (!known) {
            problems.add(words("%1, row 1").arg(fileName), words("There is no column \"%1\".").arg(column));
            sound = false;
        }
    }
    return sound;
}

} // namespace

QByteArray journeysCsv(const record::Row& row)
{
    QStringList head;
    for (const char* column : kColumns) {
        head << QLatin1String(column);
    }
    QString text = csvLine(head);
    for (const record::Journey& journey : row.journeys) {
        text += csvLine({journey.leaves.toString(Qt::ISODate), journey.returns.toString(Qt::ISODate), journey.helper,
                         journey.phone, journey.note,
                         journey.enteredAt.isValid() ? instantText(journey.enteredAt) : QString()});
    }
    return text.toUtf8();
}

bool isJourneysCsv(const QByteArray& bytes)
{
    const auto table = readCsv(bytes, {});
    const QStringList columns = table ? columnsOf(*table) : QStringList();
    return columns.contains(u"leaves"_s) && columns.contains(u"returns"_s);
}

std::vector<record::Journey> readJourneysCsv(const QByteArray& bytes, const QString& fileName, const record::Row& row,
                                             const record::Moment& now, Problems& problems, int& skipped)
{
    std::vector<record::Journey> found;
    const auto table = readCsv(bytes, fileName);
    if (!table) {
        problems.add(QString::fromStdString(table.error().where),
                     QString::fromStdString(table.error().what + ' ' + table.error().mend));
        return found;
    }
    const QStringList columns = columnsOf(*table);
    if (!checkColumns(columns, fileName, problems)) {
        return found;
    }
    for (const CsvRecord& line : table->records) {
        const auto cell = [&](const QString& column) {
            return line.cells.value(static_cast<int>(columns.indexOf(column))).trimmed();
        };
        record::Journey journey;
        journey.leaves = QDate::fromString(cell(u"leaves"_s), Qt::ISODate);
        journey.returns = QDate::fromString(cell(u"returns"_s), Qt::ISODate);
        journey.helper = columns.contains(u"helper"_s) ? cell(u"helper"_s) : QString();
        journey.phone = columns.contains(u"phone"_s) ? cell(u"phone"_s) : QString();
        journey.note = columns.contains(u"note"_s) ? cell(u"note"_s) : QString();
        const QString entered = columns.contains(u"entered"_s) ? cell(u"entered"_s) : QString();
        journey.enteredAt = entered.isEmpty() ? now : record::Moment::fromIso(entered);
        if (!journey.leaves.isValid() || !journey.returns.isValid() || journey.returns <= journey.leaves ||
            !journey.enteredAt.isValid()) {
            problems.add(words("%1, row %2").arg(fileName).arg(line.row),
                         words("A journey needs a day of leaving and a later day of return, as 2026-12-23."));
            continue;
        }
        if (isKnown(row.journeys, journey) || isKnown(found, journey)) {
            ++skipped;
            continue;
        }
        found.push_back(std::move(journey));
    }
    return found;
}

} // namespace littoral::exchange
