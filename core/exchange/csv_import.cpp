// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_import.h"

#include "core/exchange/instant.h"
#include "core/exchange/record_fields.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

constexpr std::array kColumns{
    "tank",     "layout",  "kind",   "at",         "date",    "time",        "entered",          "parameter",
    "value",    "unit",    "kit",    "note",       "planned", "planned_for", "planned_fraction", "subject",
    "fraction", "percent", "litres", "amount",     "protein", "count",       "load_mgn_per_l_d", "severity",
    "coverage", "where",   "source", "other_tank", "hours",   "par",         "target_mg_per_l"};

struct Alias
{
    const char* written;
    const char* column;
};
constexpr std::array kAliases{Alias{"datetime", "at"},           Alias{"date_time", "at"},
                              Alias{"load", "load_mgn_per_l_d"}, Alias{"target", "target_mg_per_l"},
                              Alias{"liters", "litres"},         Alias{"day", "date"}};

/// The column's own name, or nothing: "Other tank" and "other_tank" are the same.
QString columnName(const QString& header)
{
    const QString plain = header.toLower().simplified().replace(u' ', u'_').replace(u'-', u'_');
    for (const Alias& alias : kAliases) {
        if (plain == QLatin1String(alias.written)) {
            return QLatin1String(alias.column);
        }
    }
    const bool known =
        std::ranges::any_of(kColumns, [&](const char* column) { return plain == QLatin1String(column); });
    return known ? plain : QString();
}

QString instantKey(record::TankId tank, const record::Moment& at)
{
    return QString::number(tank.value) + u'|' + QString::number(at.utcMs()) + u'|';
}

QString keyOf(const record::Reading& reading)
{
    return u"r|"_s + instantKey(reading.tank, reading.at) + reading.parameter + u'|' + reading.typed + u'|' +
           reading.unit;
}

QString keyOf(const record::Entry& entry)
{
    const auto number = [](const auto& value) { return value ? numberText(double(*value)) : QString(); };
    const QStringList parts{record::entryKindCode(entry.kind),
                            entry.planned ? u"planned"_s : QString(),
                            entry.subject,
                            number(entry.fraction),
                            number(entry.amount),
                            entry.unit,
                            number(entry.second),
                            number(entry.count),
                            number(entry.severity),
                            number(entry.coverage),
                            entry.where,
                            entry.note};
    return u"e|"_s + instantKey(entry.tank, entry.at) + parts.join(QChar(0x1f));
}

/// A planned entry stays known after it has been done at another time or in another measure.
QString planKey(const record::Entry& entry, const record::Moment& plannedFor)
{
    return u"p|"_s + instantKey(entry.tank, plannedFor) + record::entryKindCode(entry.kind) + u'|' + entry.subject;
}

} // namespace

CsvImport::CsvImport(const record::Row& row, record::Moment now)
    : m_row(row)
    , m_now(now)
    , m_names(row)
{
    m_known.reserve(static_cast<qsizetype>(row.recordCount()));
    for (const auto& [id, layout] : row.layouts) {
        for (const record::Reading& reading : layout.readings) {
            m_known.insert(keyOf(reading));
        }
        for (const record::Entry& entry : layout.entries) {
            m_known.insert(keyOf(entry));
            if (entry.plannedFor && !entry.planned) {
                m_known.insert(planKey(entry, *entry.plannedFor));
            }
        }
    }
}

void CsvImport::read(const QByteArray& bytes, const QString& fileName)
{
    const Result<CsvTable> table = readCsv(bytes, fileName);
    if (!table) {
        m_problems.add(QString::fromStdString(table.error().where),
                       QString::fromStdString(table.error().what + ' ' + table.error().mend));
        return;
    }
    const int before = m_problems.count();
    const std::vector<QString> columns = columnsOf(*table, fileName);
    if (m_problems.count() > before) {
        return; // without its columns every row would be wrong in the same way
    }
    for (const CsvRecord& record : table->records) {
        readRecord(record, columns, fileName);
    }
}

std::vector<QString> CsvImport::columnsOf(const CsvTable& table, const QString& fileName)
{
    std::vector<QString> columns;
    const QString place = words("%1, row 1").arg(fileName);
    for (const QString& header : table.columns) {
        const QString name = columnName(header);
        const bool aside = header.startsWith(u'#') || header.isEmpty();
        if (header.startsWith(u'#')) {
            m_remarks << words("%1: column \"%2\" is left out.").arg(fileName, header);
        } else if (name.isEmpty() && !aside) {
            QStringList known;
            std::ranges::transform(kColumns, std::back_inserter(known),
                                   [](const char* column) { return QString::fromLatin1(column); });
            const auto near = nearestName(header, known);
            m_problems.add(
                place, near ? words("There is no column \"%1\". Did you mean \"%2\"?").arg(header, *near)
                            : words("There is no column \"%1\". Put # before its name to leave it out.").arg(header));
        } else if (!aside && std::ranges::find(columns, name) != columns.end()) {
            m_problems.add(place, words("The column \"%1\" is there twice.").arg(header));
        }
        columns.push_back(aside ? QString() : name);
    }
    const auto has = [&](const QString& name) { return std::ranges::find(columns, name) != columns.end(); };
    if (!has(u"tank"_s)) {
        m_problems.add(place, words("There is no column \"tank\"."));
    }
    if (!has(u"at"_s) && !has(u"date"_s)) {
        m_problems.add(place, words("There is no column \"date\"."));
    }
    if (!has(u"kind"_s) && !has(u"parameter"_s)) {
        m_problems.add(
            place, words("There is neither a column \"parameter\" for readings nor a column \"kind\" for entries."));
    }
    return columns;
}

void CsvImport::readRecord(const CsvRecord& record, const std::vector<QString>& columns, const QString& fileName)
{
    const QString row = QString::number(record.row);
    QHash<QString, QString> cells;
    cells.reserve(static_cast<qsizetype>(columns.size()));
    for (qsizetype i = 0; i < record.cells.size(); ++i) {
        const QString cell = record.cells[i].trimmed();
        if (cell.isEmpty()) {
            continue;
        }
        const auto column = static_cast<std::size_t>(i);
        if (column >= columns.size()) {
            m_problems.add(
                words("%1, row %2").arg(fileName, row),
                words("There are %1 cells under %2 columns. Put cells that hold the separator in quotation marks.")
                    .arg(QString::number(record.cells.size()), QString::number(columns.size())));
            return;
        }
        if (!columns[column].isEmpty()) {
            cells.insert(columns[column], cell);
        }
    }
    FieldReader fields(std::move(cells), [&](const QString& field, const QString& sentence) {
        m_problems.add(words("%1, row %2, column %3").arg(fileName, row, field), sentence);
    });
    const QString kind = fields.text(u"kind"_s);
    const std::optional<Place> place = placeOf(fields);
    if (kind.compare(u"reading"_s, Qt::CaseInsensitive) == 0 || (kind.isEmpty() && fields.has(u"parameter"_s))) {
        takeReading(fields, place);
    } else if (kind.isEmpty()) {
        fields.need(u"kind"_s);
    } else if (const auto entryKind = record::entryKindFromCode(kind)) {
        takeEntry(fields, *entryKind, place);
    } else {
        fields.complain(u"kind"_s, words("There is no kind \"%1\".").arg(kind));
    }
}

std::optional<record::Moment> CsvImport::momentOf(FieldReader& fields)
{
    const bool both = fields.has(u"at"_s) && fields.has(u"date"_s);
    const QString timeText = fields.text(u"time"_s);
    if (both) {
        fields.complain(u"at"_s, words("Give either at or date, not both."));
        return std::nullopt;
    }
    if (fields.has(u"at"_s)) {
        if (!timeText.isEmpty()) {
            fields.complain(u"time"_s, words("The time goes into the column at."));
        }
        return fields.instant(u"at"_s);
    }
    if (!fields.has(u"date"_s)) {
        fields.need(u"date"_s);
        return std::nullopt;
    }
    if (timeText.isEmpty()) {
        return fields.instant(u"date"_s);
    }
    const std::optional<QTime> time = parseTime(timeText);
    const QDate day = QDate::fromString(fields.text(u"date"_s), Qt::ISODate);
    if (!time) {
        fields.complain(u"time"_s, words("\"%1\" is not a time. Write it as 07:40.").arg(timeText));
        return std::nullopt;
    }
    if (!day.isValid()) {
        fields.complain(
            u"date"_s,
            words("\"%1\" is not a date. Write it as 2026-11-25 beside a time.").arg(fields.text(u"date"_s)));
        return std::nullopt;
    }
    return record::Moment::fromLocal(day, *time);
}

std::optional<CsvImport::Place> CsvImport::placeOf(FieldReader& fields)
{
    const QString name = fields.requiredText(u"tank"_s);
    const std::optional<int> number = fields.whole(u"layout"_s, 1, 10000);
    const std::optional<record::Moment> at = momentOf(fields);
    if (name.isEmpty()) {
        return std::nullopt;
    }
    const std::optional<record::TankId> tank = m_names.tank(name);
    if (!tank) {
        fields.complain(u"tank"_s, m_names.noTank(name));
        return std::nullopt;
    }
    if (!at) {
        return std::nullopt;
    }
    const record::LayoutRecord* layout = m_row.layoutAt(*tank, *at);
    if (number) {
        const std::vector<const record::LayoutRecord*> all = m_row.layoutsOf(*tank);
        const auto found =
            std::ranges::find(all, *number, [](const record::LayoutRecord* r) { return r->layout.number; });
        layout = found == all.end() ? nullptr : *found;
    }
    if (layout == nullptr) {
        fields.complain(number ? u"layout"_s : u"tank"_s,
                        number ? words("%1 has no layout %2.").arg(name, QString::number(*number))
                               : words("%1 has no layout yet.").arg(name));
        return std::nullopt;
    }
    Place place{*tank, layout->layout.id, *at, std::nullopt};
    if (const auto net = record::netVolume(*m_row.tank(*tank), layout->layout)) {
        place.net_L = net->litres;
    }
    return place;
}

bool CsvImport::isNew(const QString& key)
{
    if (m_known.contains(key)) {
        ++m_skipped;
        return false;
    }
    m_known.insert(key);
    return true;
}

void CsvImport::takeReading(FieldReader& fields, const std::optional<Place>& place)
{
    const std::optional<record::Moment> entered = fields.instant(u"entered"_s);
    std::optional<record::Reading> reading = readReading(fields, m_names);
    fields.refuseOthers(u"reading"_s);
    if (!reading || !place || fields.failed()) {
        return;
    }
    reading->tank = place->tank;
    reading->layout = place->layout;
    reading->at = place->at;
    reading->enteredAt = entered.value_or(m_now);
    if (isNew(keyOf(*reading))) {
        m_readings.push_back(std::move(*reading));
    }
}

void CsvImport::takeEntry(FieldReader& fields, record::EntryKind kind, const std::optional<Place>& place)
{
    const std::optional<record::Moment> entered = fields.instant(u"entered"_s);
    const std::optional<double> net_L = place ? place->net_L : std::nullopt;
    std::optional<record::Entry> entry = readEntry(fields, kind, m_names, net_L);
    if (!entry || !place || fields.failed()) {
        return;
    }
    entry->tank = place->tank;
    entry->layout = place->layout;
    entry->at = place->at;
    entry->enteredAt = entered.value_or(m_now);
    if (entry->planned && !entry->plannedFor && !entered) {
        entry->plannedFor = entry->at;
        entry->plannedFraction = entry->fraction;
    }
    if (entry->planned && m_known.contains(planKey(*entry, entry->plannedFor.value_or(entry->at)))) {
        ++m_skipped;
        return;
    }
    if (isNew(keyOf(*entry))) {
        m_entries.push_back(std::move(*entry));
    }
}

} // namespace littoral::exchange
