// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tank_json_reader.h"

#include "core/exchange/instant.h"
#include "core/exchange/record_fields.h"
#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <algorithm>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

/// The fields of one entry or reading as text; `at` is read apart, since it may be an object.
QHash<QString, QString> textFields(ObjectReader& item)
{
    QHash<QString, QString> fields;
    for (auto it = item.json().begin(); it != item.json().end(); ++it) {
        item.ask(it.key());
        if (it.key() == u"at"_s || it.key() == u"kind"_s) {
            continue;
        }
        const QJsonValue value = it.value();
        if (value.isString()) {
            if (const QString text = value.toString().trimmed(); !text.isEmpty()) {
                fields.insert(it.key(), text);
            }
        } else if (value.isDouble()) {
            fields.insert(it.key(), numberText(value.toDouble()));
        } else if (value.isBool()) {
            fields.insert(it.key(), value.toBool() ? u"yes"_s : u"no"_s);
        } else if (!value.isNull()) {
            item.complain(it.key(), words("A text, a number, true or false is expected here."));
        }
    }
    return fields;
}

} // namespace

TankJsonReader::TankJsonReader(const NameBook& row, record::Moment now)
    : m_names(row)
    , m_now(now)
{
}

TankDocument TankJsonReader::read(ObjectReader& top)
{
    readTank(top);
    for (ObjectReader& source : top.objects(u"sources"_s)) {
        addSource(source);
    }
    for (ObjectReader& kit : top.objects(u"kits"_s)) {
        readKit(kit);
    }
    for (ObjectReader& target : top.objects(u"targets"_s)) {
        readTarget(target);
    }
    if (top.has(u"layouts"_s)) {
        for (ObjectReader& layout : top.objects(u"layouts"_s)) {
            readLayout(layout);
            layout.refuseOthers();
        }
        if (m_document.layouts.empty()) {
            top.complain(u"layouts"_s, words("There is no layout in it."));
        }
    } else {
        readLayout(top);
    }
    settleParts(top);
    top.refuseOthers();
    std::ranges::stable_sort(m_document.layouts, {},
                             [](const record::LayoutRecord& r) { return r.layout.flooded.utcMs(); });
    return std::move(m_document);
}

void TankJsonReader::readTank(ObjectReader& top)
{
    record::Tank& tank = m_document.tank;
    tank.id.value = -1;
    m_exported = top.flag(u"exported"_s).value_or(false);
    tank.name = top.text(u"name"_s);
    if (tank.name.isEmpty()) {
        top.need(u"name"_s);
    }
    tank.length_cm = top.number(u"length_cm"_s, 1.0, 2000.0).value_or(0.0);
    tank.depth_cm = top.number(u"depth_cm"_s, 1.0, 2000.0).value_or(0.0);
    tank.height_cm = top.number(u"height_cm"_s, 1.0, 2000.0).value_or(0.0);
    tank.glass_mm = top.number(u"glass_mm"_s, 0.0, 100.0).value_or(tank.glass_mm);
    tank.note = top.text(u"note"_s);
}

record::SourceWaterId TankJsonReader::addSource(ObjectReader& object)
{
    record::SourceWater source;
    source.id.value = -static_cast<qint64>(m_document.sources.size()) - 1;
    source.name = object.text(u"name"_s);
    if (source.name.isEmpty()) {
        source.name = words("Source water of %1").arg(m_document.tank.name);
    }
    source.kind = object.choice<record::SourceKind>(u"kind"_s).value_or(record::SourceKind::Tap);
    source.chloramine = object.choice<record::YesNoUnknown>(u"chloramine"_s).value_or(record::YesNoUnknown::Unknown);
    source.nitrate_mgN_per_L = readNitrate(object);
    source.alkalinity_meq_per_L = object.number(u"alkalinity_meq_per_l"_s, 0.0, 20.0);
    if (const auto degrees = object.number(u"kh_dkh"_s, 0.0, 56.0)) {
        if (source.alkalinity_meq_per_L) {
            object.complain(u"kh_dkh"_s, words("Give either alkalinity_meq_per_l or kh_dkh."));
        }
        source.alkalinity_meq_per_L = *degrees * water::kMeqPerDegree;
    }
    source.hardness_mmol_per_L = object.number(u"hardness_mmol_per_l"_s, 0.0, 20.0);
    if (const auto degrees = object.number(u"gh_dgh"_s, 0.0, 112.0)) {
        if (source.hardness_mmol_per_L) {
            object.complain(u"gh_dgh"_s, words("Give either hardness_mmol_per_l or gh_dgh."));
        }
        source.hardness_mmol_per_L = *degrees * water::kMmolPerDegree;
    }
    source.ph = object.number(u"ph"_s, 2.0, 13.0);
    source.chloride_mg_per_L = object.number(u"chloride_mg_per_l"_s, 0.0, 5000.0);
    source.note = object.text(u"note"_s);
    m_names.add(source);
    m_document.sources.push_back(source);
    takeParts(object, m_document.sources.size() - 1);
    object.refuseOthers();
    return source.id;
}

/// Nitrate mistaken between its two bases is wrong by 4.4 times, so the basis has to be there.
std::optional<double> TankJsonReader::readNitrate(ObjectReader& object)
{
    const std::optional<double> nitrate = object.number(u"nitrate_mg_per_l"_s, 0.0, 1000.0);
    const QString key = object.has(u"as"_s) ? u"as"_s : u"nitrate_as"_s;
    const QString basis = object.text(key).toUpper();
    if (!nitrate) {
        return std::nullopt;
    }
    if (basis == u"N"_s) {
        return nitrate;
    }
    if (basis == u"NO3"_s) {
        return *nitrate / water::kNitratePerN;
    }
    object.complain(key, words("Say what the nitrate is counted as: \"NO3\" or \"N\"."));
    return std::nullopt;
}

void TankJsonReader::readKit(ObjectReader& object)
{
    record::TestKit kit;
    kit.id.value = -static_cast<qint64>(m_document.kits.size()) - 1;
    kit.name = object.text(u"name"_s);
    if (kit.name.isEmpty()) {
        object.need(u"name"_s);
    }
    const QString parameterName = object.text(u"parameter"_s);
    const QString unit = object.text(u"unit"_s);
    if (const record::Parameter* parameter = record::findParameter(parameterName)) {
        kit.parameter = parameter->key;
        const record::Unit* known = parameter->unit(
            unit.isEmpty() && parameter->units.size() == 1 ? parameter->canonical().code : unitCode(*parameter, unit));
        if (known != nullptr) {
            kit.unit = known->code;
        } else {
            object.complain(u"unit"_s, words("%1 has no unit \"%2\".").arg(parameter->name, unit));
        }
    } else {
        object.complain(u"parameter"_s, words("There is no parameter \"%1\".").arg(parameterName));
    }
    kit.kind = object.choice<record::KitKind>(u"kind"_s).value_or(record::KitKind::Card);
    kit.steps = readSteps(object);
    kit.readsNitriteToo = object.flag(u"reads_nitrite_too"_s).value_or(false);
    kit.waitMinutes = static_cast<int>(object.number(u"wait_minutes"_s, 0.0, 1440.0).value_or(0.0));
    kit.lot = object.text(u"lot"_s);
    kit.opened = readDay(object, u"opened"_s);
    kit.expires = readDay(object, u"expires"_s);
    kit.note = object.text(u"note"_s);
    kit.retired = object.flag(u"retired"_s).value_or(false);
    object.refuseOthers();
    m_names.add(kit);
    m_document.kits.push_back(std::move(kit));
}

std::vector<double> TankJsonReader::readSteps(ObjectReader& object)
{
    std::vector<double> steps;
    const QJsonArray items = object.array(u"steps"_s);
    for (const QJsonValue& item : items) {
        if (!item.isDouble() || item.toDouble() < 0.0 || (!steps.empty() && item.toDouble() <= steps.back())) {
            object.complain(u"steps"_s, words("The steps are numbers from 0 up, each larger than the one before."));
            return {};
        }
        steps.push_back(item.toDouble());
    }
    if (!steps.empty() && (steps.size() < 2 || steps.front() != 0.0)) {
        object.complain(u"steps"_s, words("The steps begin with 0 and are at least two."));
        return {};
    }
    return steps;
}

QDate TankJsonReader::readDay(ObjectReader& object, const QString& key)
{
    const QString text = object.text(key);
    const QDate day = QDate::fromString(text, Qt::ISODate);
    if (!text.isEmpty() && !day.isValid()) {
        object.complain(key, words("\"%1\" is not a date. Write it as 2026-11-25.").arg(text));
    }
    return day;
}

void TankJsonReader::readTarget(ObjectReader& object)
{
    record::Target target;
    target.id.value = -static_cast<qint64>(m_document.targets.size()) - 1;
    target.tank = m_document.tank.id;
    const QString name = object.text(u"parameter"_s);
    const QString written = object.text(u"unit"_s);
    const std::optional<double> low = object.number(u"low"_s, -1e6, 1e6);
    const std::optional<double> high = object.number(u"high"_s, -1e6, 1e6);
    object.refuseOthers();
    const record::Parameter* parameter = record::findParameter(name);
    if (parameter == nullptr) {
        object.complain(u"parameter"_s, words("There is no parameter \"%1\".").arg(name));
        return;
    }
    const record::Unit* unit = parameter->unit(unitCode(*parameter, written));
    if (unit == nullptr) {
        object.complain(u"unit"_s, words("%1 has no unit \"%2\".").arg(parameter->name, written));
        return;
    }
    target.parameter = parameter->key;
    target.low = low ? std::optional(unit->toCanonical(*low)) : std::nullopt;
    target.high = high ? std::optional(unit->toCanonical(*high)) : std::nullopt;
    m_document.targets.push_back(std::move(target));
}

void TankJsonReader::readLayout(ObjectReader& object)
{
    record::LayoutRecord record;
    record::Layout& layout = record.layout;
    layout.id.value = -static_cast<qint64>(m_document.layouts.size()) - 1;
    layout.tank = m_document.tank.id;
    layout.number = static_cast<int>(
        object.number(u"layout_number"_s, 1.0, 10000.0).value_or(double(m_document.layouts.size() + 1)));
    readSetup(object, layout);
    readWater(object, layout);
    const std::optional<record::NetVolume> net = record::netVolume(m_document.tank, layout);
    if (!net && !m_exported) {
        object.complain(u"net_litres"_s,
                        words("Give the litres of water in it, or length_cm, depth_cm and height_cm."));
    }
    for (ObjectReader& item : object.objects(u"readings"_s)) {
        takeReading(item, record);
    }
    const std::optional<double> net_L = net ? std::optional(net->litres) : std::nullopt;
    for (ObjectReader& item : object.objects(u"entries"_s)) {
        takeEntry(item, record, net_L);
    }
    for (ObjectReader& item : object.objects(u"tasks"_s)) {
        takeTask(item, record);
    }
    for (ObjectReader& item : object.objects(u"regimens"_s)) {
        takeRegimen(item, record);
    }
    m_document.layouts.push_back(std::move(record));
}

void TankJsonReader::readSetup(ObjectReader& object, record::Layout& layout)
{
    layout.name = object.text(u"layout_name"_s);
    layout.note = object.text(u"layout_note"_s);
    layout.flooded = readInstant(object, u"flooded"_s, {}).value_or(record::Moment());
    if (!object.has(u"flooded"_s)) {
        object.need(u"flooded"_s);
    }
    if (object.has(u"ended"_s)) {
        layout.ended = readInstant(object, u"ended"_s, layout.flooded);
        if (layout.ended && layout.flooded.isValid() && *layout.ended < layout.flooded) {
            object.complain(u"ended"_s, words("The layout would have ended before it was flooded."));
        }
    }
    if (const auto start = object.choice<record::StartMethod>(u"start"_s)) {
        layout.start = *start;
    } else if (object.text(u"start"_s).isEmpty()) {
        object.need(u"start"_s);
    }
    layout.gap_cm = object.number(u"gap_cm"_s, 0.0, 200.0).value_or(layout.gap_cm);
    layout.measuredNet_L = object.number(u"net_litres"_s, 0.1, 100000.0);
    layout.plants = object.choice<record::PlantDensity>(u"plants"_s).value_or(layout.plants);
    readBed(object, layout);
    if (auto light = object.object(u"light"_s)) {
        layout.lightHours = light->number(u"hours"_s, 0.0, 24.0).value_or(layout.lightHours);
        layout.lightPar = light->number(u"par"_s, 0.0, 2500.0).value_or(0.0);
        light->refuseOthers();
    }
    layout.filterFlow_L_per_h = object.number(u"filter_flow_l_per_h"_s, 0.0, 20000.0).value_or(0.0);
    const std::optional<double> temperature = object.number(u"temperature_c"_s, 0.0, 45.0);
    layout.temperature_C = temperature.value_or(layout.temperature_C);
    if (!temperature) {
        m_document.remarks
            << words("The temperature is not given: %1 °C is taken.").arg(numberText(layout.temperature_C));
    }
    if (auto uptake = object.object(u"uptake_mg_no3_per_l_wk"_s)) {
        layout.uptakeLow_mg_per_L_wk = uptake->number(u"low"_s, 0.0, 1000.0);
        layout.uptakeHigh_mg_per_L_wk = uptake->number(u"high"_s, 0.0, 1000.0);
        uptake->refuseOthers();
    }
    layout.followsCadence = object.flag(u"follow_cadence"_s).value_or(false);
}

void TankJsonReader::readBed(ObjectReader& object, record::Layout& layout)
{
    if (auto bed = object.object(u"bed"_s)) {
        if (const auto kind = bed->choice<record::Bed>(u"kind"_s)) {
            layout.bed = *kind;
        } else if (bed->text(u"kind"_s).isEmpty()) {
            bed->need(u"kind"_s);
        }
        layout.bed_L = bed->number(u"litres"_s, 0.0, 10000.0).value_or(0.0);
        bed->refuseOthers();
    } else if (!object.has(u"bed"_s)) {
        object.need(u"bed"_s);
    }
    if (auto rock = object.object(u"rock"_s)) {
        layout.rock_kg = rock->number(u"kg"_s, 0.0, 10000.0).value_or(0.0);
        layout.rockHardens = rock->flag(u"hardens"_s).value_or(false);
        rock->refuseOthers();
    }
}

void TankJsonReader::readWater(ObjectReader& object, record::Layout& layout)
{
    if (auto co2 = object.object(u"co2"_s)) {
        const std::optional<bool> on = co2->flag(u"on"_s);
        const std::optional<record::Co2Mode> mode = co2->choice<record::Co2Mode>(u"mode"_s);
        layout.co2 = mode.value_or(on.value_or(false) ? record::Co2Mode::Pressurised : record::Co2Mode::None);
        if (on && mode && *on == (*mode == record::Co2Mode::None)) {
            co2->complain(u"mode"_s, words("\"on\" and \"mode\" contradict each other."));
        }
        if (!on && !mode) {
            co2->need(u"on"_s);
        }
        layout.co2Target_mg_per_L = co2->number(u"target_mg_per_l"_s, 0.0, 200.0).value_or(layout.co2Target_mg_per_L);
        layout.co2Hours = co2->number(u"hours"_s, 0.0, 24.0).value_or(layout.co2Hours);
        co2->refuseOthers();
    }
    if (!object.has(u"source"_s)) {
        m_document.remarks << words("The source water is not given: nothing is taken as measured.");
        return;
    }
    if (!object.value(u"source"_s).isString()) {
        if (auto source = object.object(u"source"_s)) {
            layout.source = addSource(*source);
        }
        return;
    }
    const QString name = object.text(u"source"_s);
    if (const auto id = m_names.source(name)) {
        layout.source = *id;
    } else {
        object.complain(u"source"_s, m_names.noSource(name));
    }
}

std::optional<record::Moment> TankJsonReader::readInstant(ObjectReader& object, const QString& key,
                                                          const record::Moment& flooded)
{
    const QJsonValue value = object.value(key);
    if (value.isUndefined()) {
        return std::nullopt;
    }
    if (value.isObject() && flooded.isValid()) {
        auto day = object.object(key);
        const std::optional<double> days = day->number(u"day"_s, -400.0, 20000.0);
        if (!day->has(u"day"_s)) {
            day->need(u"day"_s);
        }
        day->refuseOthers();
        return days ? std::optional(flooded.plusDays(*days)) : std::nullopt;
    }
    const std::optional<record::Moment> moment = value.isString() ? parseInstant(value.toString()) : std::nullopt;
    if (!moment) {
        object.complain(
            key,
            words("This is not an instant. Write \"2026-11-25T07:40\", or {\"day\": 3.5} for days since flooding."));
    }
    return moment;
}

void TankJsonReader::takeReading(ObjectReader& item, record::LayoutRecord& layout)
{
    if (!item.has(u"at"_s)) {
        item.need(u"at"_s);
    }
    const std::optional<record::Moment> at = readInstant(item, u"at"_s, layout.layout.flooded);
    FieldReader fields(textFields(item),
                       [&](const QString& field, const QString& sentence) { item.complain(field, sentence); });
    const std::optional<record::Moment> entered = fields.instant(u"entered"_s);
    std::optional<record::Reading> reading = readReading(fields, m_names);
    fields.refuseOthers(u"reading"_s);
    if (!reading || !at) {
        return;
    }
    reading->id.value = --m_lastReading;
    reading->tank = m_document.tank.id;
    reading->layout = layout.layout.id;
    reading->at = *at;
    reading->enteredAt = entered.value_or(m_now);
    layout.readings.push_back(std::move(*reading));
}

void TankJsonReader::takeEntry(ObjectReader& item, record::LayoutRecord& layout, std::optional<double> net_L)
{
    if (!item.has(u"at"_s)) {
        item.need(u"at"_s);
    }
    const std::optional<record::Moment> at = readInstant(item, u"at"_s, layout.layout.flooded);
    const QString word = item.text(u"kind"_s);
    const std::optional<record::EntryKind> kind = record::entryKindFromCode(word);
    if (!kind) {
        item.complain(u"kind"_s, word.isEmpty() ? words("This is needed and is missing.")
                                                : words("There is no kind \"%1\".").arg(word));
        textFields(item);
        return;
    }
    FieldReader fields(textFields(item),
                       [&](const QString& field, const QString& sentence) { item.complain(field, sentence); });
    const std::optional<record::Moment> entered = fields.instant(u"entered"_s);
    QStringList strangers;
    std::optional<record::Entry> entry = readEntry(fields, *kind, m_names, net_L, &strangers);
    if (!entry || !at) {
        return;
    }
    entry->id.value = --m_lastEntry;
    if (!strangers.isEmpty()) {
        m_document.otherTanks.insert(entry->id.value, strangers.front());
    }
    entry->tank = m_document.tank.id;
    entry->layout = layout.layout.id;
    entry->at = *at;
    entry->enteredAt = entered.value_or(m_now);
    if (entry->planned && !entry->plannedFor && !entered) {
        entry->plannedFor = entry->at;
        entry->plannedFraction = entry->fraction;
    }
    layout.entries.push_back(std::move(*entry));
}

void TankJsonReader::takeTask(ObjectReader& item, record::LayoutRecord& layout)
{
    record::Task task;
    task.id.value = -static_cast<qint64>(layout.tasks.size()) - 1;
    task.tank = m_document.tank.id;
    task.layout = layout.layout.id;
    task.templateKey = item.text(u"template"_s);
    task.title = item.text(u"title"_s);
    if (task.templateKey.isEmpty() && task.title.isEmpty()) {
        item.need(u"title"_s);
    }
    task.due = readDay(item, u"due"_s);
    if (!item.has(u"due"_s)) {
        item.need(u"due"_s);
    }
    if (const QDate moved = readDay(item, u"moved_to"_s); moved.isValid()) {
        task.movedTo = moved;
    }
    task.snoozed = item.flag(u"snoozed"_s).value_or(false);
    task.state = item.choice<record::TaskState>(u"state"_s).value_or(record::TaskState::Open);
    task.closedAt = readInstant(item, u"closed_at"_s, layout.layout.flooded);
    if (const auto index = item.number(u"closed_by_entry"_s, 0.0, double(layout.entries.size()) - 1.0)) {
        task.closedBy = layout.entries[static_cast<std::size_t>(*index)].id;
    }
    task.reason = item.text(u"reason"_s);
    task.fraction = item.number(u"fraction"_s, 0.0, 1.0);
    task.enteredAt = readInstant(item, u"entered"_s, layout.layout.flooded).value_or(m_now);
    item.refuseOthers();
    layout.tasks.push_back(std::move(task));
}

std::optional<TankDocument> readTankJson(const QByteArray& bytes, const QString& fileName, const NameBook& row,
                                         const record::Moment& now, Problems& problems)
{
    QJsonParseError trouble;
    const QJsonDocument json = QJsonDocument::fromJson(bytes, &trouble);
    if (trouble.error != QJsonParseError::NoError) {
        const int line = static_cast<int>(bytes.left(trouble.offset).count('\n')) + 1;
        problems.add(words("%1, line %2").arg(fileName, QString::number(line)),
                     words("This is not JSON: %1.").arg(trouble.errorString()));
        return std::nullopt;
    }
    if (!json.isObject()) {
        problems.add(fileName, words("An object in braces is expected here."));
        return std::nullopt;
    }
    const int before = problems.count();
    ObjectReader top(json.object(), fileName, QString(), problems);
    if (top.text(u"format"_s) != u"littoral-tank"_s) {
        top.complain(u"format"_s, words("\"format\": \"littoral-tank\" is expected here."));
        return std::nullopt;
    }
    const std::optional<double> version = top.number(u"version"_s, 1.0, 1e6);
    if (version != kTankFormatVersion) {
        top.complain(u"version"_s, words("This program reads version %1 of the format.").arg(kTankFormatVersion));
        return std::nullopt;
    }
    TankDocument document = TankJsonReader(row, now).read(top);
    return problems.count() == before ? std::optional(std::move(document)) : std::nullopt;
}

} // namespace littoral::exchange
