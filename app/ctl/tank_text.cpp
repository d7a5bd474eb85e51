// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/tank_text.h"

#include "app/ctl/text_table.h"
#include "core/exchange/codes.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/instant.h"
#include "core/record/shown.h"
#include "core/wording/dose_sentences.h"
#include "core/wording/entry_words.h"
#include "core/wording/source_words.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <cmath>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr std::ptrdiff_t kEntriesShown = 10;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

struct Line
{
    QString tank;
    const record::LayoutRecord* layout = nullptr;
    std::optional<double> litres;
    std::optional<int> ageDays;
};

std::vector<Line> lines(const record::Row& row, const record::Moment& now)
{
    std::vector<Line> all;
    for (const record::Tank& tank : row.tanks) {
        Line line{tank.name, row.currentLayout(tank.id, now), std::nullopt, std::nullopt};
        if (line.layout != nullptr) {
            if (const auto net = record::netVolume(tank, line.layout->layout)) {
                line.litres = std::round(net->litres * 10.0) / 10.0;
            }
            line.ageDays = static_cast<int>(std::floor(record::daysBetween(line.layout->layout.flooded, now)));
        }
        all.push_back(line);
    }
    return all;
}

template <typename T> QString orEmpty(const std::optional<T>& value)
{
    return value ? exchange::numberText(double(*value)) : QString();
}

QString dayText(const record::Moment& moment)
{
    return moment.toDateTime().toString(u"yyyy-MM-dd HH:mm"_s);
}

QString layoutText(const record::Tank& tank, const record::LayoutRecord& record, const record::Row& row,
                   const record::Moment& now)
{
    const record::Layout& layout = record.layout;
    QString text = words("Layout %1, flooded %2, day %3.")
                       .arg(QString::number(layout.number), dayText(layout.flooded),
                            QString::number(static_cast<int>(std::floor(record::daysBetween(layout.flooded, now))))) +
                   u'\n';
    text += words("Start: %1. Bed: %2. Plants: %3. CO2: %4.")
                .arg(exchange::code(layout.start), exchange::code(layout.bed), exchange::code(layout.plants),
                     exchange::code(layout.co2)) +
            u'\n';
    const auto net = record::netVolume(tank, layout);
    if (net) {
        const record::Measure volume = record::volumeMeasure(record::shownUnits());
        const QString water = QString::number(volume.shown(net->litres), 'f', 1);
        text += (net->reckoned ? words("Water: %1 %2, reckoned from the dimensions.").arg(water, volume.label)
                               : words("Water: %1 %2, measured.").arg(water, volume.label)) +
                u'\n';
    }
    if (const record::SourceWater* source = row.source(layout.source)) {
        text +=
            words("Source water: %1. %2").arg(source->name, wording::sourceProfileText(row.sources, *source)) + u'\n';
    }
    for (const record::DoseRegimen& regimen : record.regimens) {
        text +=
            words("Dosed: %1.")
                .arg(wording::regimenLine(regimen, net ? std::optional(net->litres) : std::nullopt, now.localDate())) +
            u'\n';
    }
    return text;
}

} // namespace

QStringList tankColumns()
{
    return {u"tank"_s,  u"layout"_s, u"flooded"_s,  u"age_days"_s, u"litres"_s,
            u"start"_s, u"bed"_s,    u"readings"_s, u"entries"_s};
}

std::vector<QStringList> tankListRows(const record::Row& row, const record::Moment& now)
{
    std::vector<QStringList> rows;
    for (const Line& line : lines(row, now)) {
        if (line.layout == nullptr) {
            rows.push_back({line.tank});
            continue;
        }
        const record::Layout& layout = line.layout->layout;
        rows.push_back({line.tank, QString::number(layout.number), exchange::instantText(layout.flooded),
                        orEmpty(line.ageDays), orEmpty(line.litres), exchange::code(layout.start),
                        exchange::code(layout.bed), QString::number(line.layout->readings.size()),
                        QString::number(line.layout->entries.size())});
    }
    return rows;
}

QByteArray tankListJson(const record::Row& row, const record::Moment& now)
{
    QJsonArray tanks;
    for (const Line& line : lines(row, now)) {
        QJsonObject object{{u"tank"_s, line.tank}};
        if (line.layout != nullptr) {
            const record::Layout& layout = line.layout->layout;
            object.insert(u"layout"_s, layout.number);
            object.insert(u"flooded"_s, exchange::instantText(layout.flooded));
            object.insert(u"age_days"_s, *line.ageDays);
            object.insert(u"litres"_s, line.litres ? QJsonValue(*line.litres) : QJsonValue());
            object.insert(u"start"_s, exchange::code(layout.start));
            object.insert(u"bed"_s, exchange::code(layout.bed));
            object.insert(u"readings"_s, static_cast<qint64>(line.layout->readings.size()));
            object.insert(u"entries"_s, static_cast<qint64>(line.layout->entries.size()));
        }
        tanks.append(object);
    }
    return QJsonDocument(tanks).toJson();
}

QString tankListText(const record::Row& row, const record::Moment& now)
{
    if (row.tanks.empty()) {
        return words("There are no tanks in this store yet.") + u'\n';
    }
    std::vector<QStringList> rows;
    for (const Line& line : lines(row, now)) {
        if (line.layout == nullptr) {
            rows.push_back({line.tank});
            continue;
        }
        const record::Layout& layout = line.layout->layout;
        rows.push_back({line.tank, line.litres ? QString::number(*line.litres, 'f', 1) : QString(),
                        orEmpty(line.ageDays), dayText(layout.flooded), exchange::code(layout.start),
                        exchange::code(layout.bed)});
    }
    return textTable({words("Tank"), words("Litres"), words("Day"), words("Flooded"), words("Start"), words("Bed")},
                     rows);
}

QString tankText(const record::Row& row, const record::Tank& tank, const record::Moment& now)
{
    QString text = tank.name + u'\n';
    const record::LayoutRecord* record = row.currentLayout(tank.id, now);
    if (record == nullptr) {
        return text + words("It has no layout yet.") + u'\n';
    }
    text += layoutText(tank, *record, row, now);
    std::vector<QStringList> readings;
    for (const record::Parameter& parameter : record::parameters()) {
        if (const record::Reading* newest = record->newest(parameter.key, now)) {
            readings.push_back(
                {parameter.name, record::valueText(*newest), parameter.shown().label, dayText(newest->at)});
        }
    }
    if (!readings.empty()) {
        text += u'\n' + textTable({words("Newest reading"), words("Value"), words("Unit"), words("When")}, readings);
    }
    std::vector<QStringList> entries;
    const auto count = static_cast<std::ptrdiff_t>(record->entries.size());
    std::for_each(record->entries.end() - std::min(count, kEntriesShown), record->entries.end(),
                  [&](const record::Entry& entry) {
                      entries.push_back({dayText(entry.at), entry.planned ? words("planned") : words("done"),
                                         wording::entryText(entry), entry.note.simplified()});
                  });
    if (!entries.empty()) {
        text += u'\n' + textTable({words("When"), words("State"), words("Last entries"), words("Note")}, entries);
    }
    return text;
}

} // namespace littoral::ctl
