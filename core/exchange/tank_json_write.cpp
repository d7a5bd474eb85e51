// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/codes.h"
#include "core/exchange/instant.h"
#include "core/exchange/record_fields.h"
#include "core/exchange/tank_document.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

void put(QJsonObject& object, const QString& key, const QString& text)
{
    if (!text.isEmpty()) {
        object.insert(key, text);
    }
}

void put(QJsonObject& object, const QString& key, const std::optional<double>& number)
{
    if (number) {
        object.insert(key, *number);
    }
}

void put(QJsonObject& object, const QString& key, const QDate& day)
{
    if (day.isValid()) {
        object.insert(key, day.toString(Qt::ISODate));
    }
}

/// Zero stands for "not given" in the record and is left out.
void putPositive(QJsonObject& object, const QString& key, double number)
{
    if (number > 0.0) {
        object.insert(key, number);
    }
}

QJsonObject sourceObject(const record::SourceWater& source, const NameBook& names)
{
    QJsonObject object{
        {u"name"_s, source.name}, {u"kind"_s, code(source.kind)}, {u"chloramine"_s, code(source.chloramine)}};
    if (source.nitrate_mgN_per_L) {
        object.insert(u"nitrate_mg_per_l"_s, *source.nitrate_mgN_per_L);
        object.insert(u"nitrate_as"_s, u"N"_s);
    }
    put(object, u"alkalinity_meq_per_l"_s, source.alkalinity_meq_per_L);
    put(object, u"hardness_mmol_per_l"_s, source.hardness_mmol_per_L);
    put(object, u"ph"_s, source.ph);
    put(object, u"chloride_mg_per_l"_s, source.chloride_mg_per_L);
    QJsonArray parts;
    for (const auto& [part, share] :
         {std::pair{source.firstPart, source.firstShare},
          std::pair{source.secondPart, source.firstShare ? std::optional(1.0 - *source.firstShare) : std::nullopt}}) {
        if (part) {
            QJsonObject one{{u"source"_s, names.nameOf(part)}};
            put(one, u"share"_s, share);
            parts.append(one);
        }
    }
    if (!parts.isEmpty()) {
        object.insert(u"parts"_s, parts);
    }
    put(object, u"note"_s, source.note);
    return object;
}

QJsonObject regimenObject(const record::DoseRegimen& regimen)
{
    QJsonObject object{{u"name"_s, regimen.name},
                       {u"form"_s, code(regimen.form)},
                       {u"amount"_s, regimen.amount},
                       {u"lean_start"_s, regimen.leanStart}};
    put(object, u"salt"_s, regimen.salt);
    putPositive(object, u"stock_g"_s, regimen.stock_g);
    putPositive(object, u"stock_ml"_s, regimen.stock_mL);
    QJsonObject contents;
    putPositive(contents, u"no3"_s, regimen.nitrate_mg_per_mL);
    putPositive(contents, u"po4"_s, regimen.phosphate_mg_per_mL);
    putPositive(contents, u"k"_s, regimen.potassium_mg_per_mL);
    putPositive(contents, u"mg"_s, regimen.magnesium_mg_per_mL);
    putPositive(contents, u"fe"_s, regimen.iron_mg_per_mL);
    if (!contents.isEmpty()) {
        object.insert(u"contents_mg_per_ml"_s, contents);
    }
    if (regimen.everyDays > 0) {
        object.insert(u"every_days"_s, regimen.everyDays);
    } else {
        object.insert(u"weekdays"_s, QJsonArray::fromStringList(weekdayCodes(regimen.weekdays)));
    }
    put(object, u"from"_s, regimen.from);
    put(object, u"until"_s, regimen.until);
    put(object, u"note"_s, regimen.note);
    return object;
}

QJsonObject kitObject(const record::TestKit& kit)
{
    QJsonObject object{
        {u"name"_s, kit.name}, {u"parameter"_s, kit.parameter}, {u"unit"_s, kit.unit}, {u"kind"_s, code(kit.kind)}};
    QJsonArray steps;
    for (const double step : kit.steps) {
        steps.append(step);
    }
    if (!steps.isEmpty()) {
        object.insert(u"steps"_s, steps);
    }
    if (kit.readsNitriteToo) {
        object.insert(u"reads_nitrite_too"_s, true);
    }
    if (kit.waitMinutes > 0) {
        object.insert(u"wait_minutes"_s, kit.waitMinutes);
    }
    if (kit.retired) {
        object.insert(u"retired"_s, true);
    }
    put(object, u"lot"_s, kit.lot);
    put(object, u"opened"_s, kit.opened);
    put(object, u"expires"_s, kit.expires);
    put(object, u"note"_s, kit.note);
    return object;
}

QJsonObject targetObject(const record::Target& target)
{
    QJsonObject object{{u"parameter"_s, target.parameter}};
    if (const record::Parameter* parameter = record::findParameter(target.parameter)) {
        object.insert(u"unit"_s, parameter->canonical().code);
    }
    put(object, u"low"_s, target.low);
    put(object, u"high"_s, target.high);
    return object;
}

QJsonObject taskObject(const record::Task& task, const record::LayoutRecord& layout)
{
    QJsonObject object{{u"state"_s, code(task.state)}, {u"entered"_s, instantText(task.enteredAt)}};
    put(object, u"template"_s, task.templateKey);
    put(object, u"title"_s, task.title);
    put(object, u"due"_s, task.due);
    put(object, u"moved_to"_s, task.movedTo.value_or(QDate()));
    if (task.snoozed) {
        object.insert(u"snoozed"_s, true);
    }
    if (task.closedAt) {
        object.insert(u"closed_at"_s, instantText(*task.closedAt));
    }
    const auto closing = std::ranges::find(layout.entries, task.closedBy, &record::Entry::id);
    if (task.closedBy && closing != layout.entries.end()) {
        object.insert(u"closed_by_entry"_s, static_cast<int>(closing - layout.entries.begin()));
    }
    put(object, u"reason"_s, task.reason);
    put(object, u"fraction"_s, task.fraction);
    return object;
}

void putSetup(QJsonObject& object, const record::Layout& layout)
{
    object.insert(u"flooded"_s, instantText(layout.flooded));
    if (layout.ended) {
        object.insert(u"ended"_s, instantText(*layout.ended));
    }
    put(object, u"layout_name"_s, layout.name);
    object.insert(u"layout_number"_s, layout.number);
    object.insert(u"start"_s, code(layout.start));
    object.insert(u"gap_cm"_s, layout.gap_cm);
    put(object, u"net_litres"_s, layout.measuredNet_L);
    QJsonObject bed{{u"kind"_s, code(layout.bed)}};
    putPositive(bed, u"litres"_s, layout.bed_L);
    object.insert(u"bed"_s, bed);
    object.insert(u"rock"_s, QJsonObject{{u"kg"_s, layout.rock_kg}, {u"hardens"_s, layout.rockHardens}});
    object.insert(u"plants"_s, code(layout.plants));
    object.insert(u"co2"_s, QJsonObject{{u"on"_s, layout.co2 != record::Co2Mode::None},
                                        {u"mode"_s, code(layout.co2)},
                                        {u"target_mg_per_l"_s, layout.co2Target_mg_per_L},
                                        {u"hours"_s, layout.co2Hours}});
    QJsonObject light{{u"hours"_s, layout.lightHours}};
    putPositive(light, u"par"_s, layout.lightPar);
    object.insert(u"light"_s, light);
    putPositive(object, u"filter_flow_l_per_h"_s, layout.filterFlow_L_per_h);
    object.insert(u"temperature_c"_s, layout.temperature_C);
    if (layout.uptakeLow_mg_per_L_wk || layout.uptakeHigh_mg_per_L_wk) {
        QJsonObject uptake;
        put(uptake, u"low"_s, layout.uptakeLow_mg_per_L_wk);
        put(uptake, u"high"_s, layout.uptakeHigh_mg_per_L_wk);
        object.insert(u"uptake_mg_no3_per_l_wk"_s, uptake);
    }
    object.insert(u"follow_cadence"_s, layout.followsCadence);
    put(object, u"layout_note"_s, layout.note);
}

void putLayout(QJsonObject& object, const record::LayoutRecord& record, const NameBook& names,
               const QHash<qint64, QString>& otherTanks)
{
    putSetup(object, record.layout);
    put(object, u"source"_s, names.nameOf(record.layout.source));
    QJsonArray readings;
    for (const record::Reading& reading : record.readings) {
        QJsonObject item = readingFields(reading, names);
        item.insert(u"at"_s, instantText(reading.at));
        put(item, u"entered"_s, instantText(reading.enteredAt));
        readings.append(item);
    }
    QJsonArray entries;
    for (const record::Entry& entry : record.entries) {
        QJsonObject item = entryFields(entry, names);
        item.insert(u"at"_s, instantText(entry.at));
        put(item, u"entered"_s, instantText(entry.enteredAt.isValid() ? entry.enteredAt : entry.at));
        put(item, u"other_tank"_s, otherTanks.value(entry.id.value));
        entries.append(item);
    }
    QJsonArray tasks;
    for (const record::Task& task : record.tasks) {
        tasks.append(taskObject(task, record));
    }
    object.insert(u"readings"_s, readings);
    object.insert(u"entries"_s, entries);
    if (!tasks.isEmpty()) {
        object.insert(u"tasks"_s, tasks);
    }
    QJsonArray regimens;
    for (const record::DoseRegimen& regimen : record.regimens) {
        regimens.append(regimenObject(regimen));
    }
    if (!regimens.isEmpty()) {
        object.insert(u"regimens"_s, regimens);
    }
}

template <typename T, typename Make>
void putList(QJsonObject& object, const QString& key, const std::vector<T>& items, Make make)
{
    QJsonArray list;
    for (const T& item : items) {
        list.append(make(item));
    }
    if (!list.isEmpty()) {
        object.insert(key, list);
    }
}

} // namespace

QByteArray tankJson(const TankDocument& document, const NameBook& row)
{
    NameBook names = row;
    for (const record::SourceWater& source : document.sources) {
        names.add(source);
    }
    for (const record::TestKit& kit : document.kits) {
        names.add(kit);
    }
    const record::Tank& tank = document.tank;
    QJsonObject top{{u"format"_s, u"littoral-tank"_s},
                    {u"version"_s, kTankFormatVersion},
                    {u"exported"_s, true},
                    {u"name"_s, tank.name}};
    putPositive(top, u"length_cm"_s, tank.length_cm);
    putPositive(top, u"depth_cm"_s, tank.depth_cm);
    putPositive(top, u"height_cm"_s, tank.height_cm);
    top.insert(u"glass_mm"_s, tank.glass_mm);
    put(top, u"note"_s, tank.note);
    putList(top, u"sources"_s, document.sources,
            [&](const record::SourceWater& source) { return sourceObject(source, names); });
    putList(top, u"kits"_s, document.kits, kitObject);
    putList(top, u"targets"_s, document.targets, targetObject);
    if (document.layouts.size() == 1) {
        putLayout(top, document.layouts.front(), names, document.otherTanks);
    } else {
        putList(top, u"layouts"_s, document.layouts, [&](const record::LayoutRecord& layout) {
            QJsonObject object;
            putLayout(object, layout, names, document.otherTanks);
            return object;
        });
    }
    return QJsonDocument(top).toJson(QJsonDocument::Indented);
}

} // namespace littoral::exchange
