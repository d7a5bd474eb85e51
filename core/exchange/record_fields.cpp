// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/record_fields.h"

#include "core/exchange/instant.h"

#include <QCoreApplication>

namespace littoral::exchange {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

QString sentence(const Error& error)
{
    return QString::fromStdString(error.sentence());
}

/// Subscripts and marks that keyboards avoid, folded to what the codes are made of.
QString plainUnit(QString unit)
{
    unit = unit.trimmed().toLower();
    for (int digit = 0; digit < 10; ++digit) {
        unit.replace(QChar(0x2080 + digit), QChar(u'0' + digit));
    }
    unit.replace(u"²"_s, u"2"_s)
        .replace(u'µ', u'u')
        .replace(QChar(0x03BC), u'u')
        .remove(u'°')
        .replace(u"ppm"_s, u"mg/l"_s);
    return unit.simplified();
}

QStringList unitCodes(const record::Parameter& parameter)
{
    QStringList codes;
    for (const record::Unit& unit : parameter.units) {
        codes << unit.code;
    }
    return codes;
}

/// Empty when it is neither given nor certain; the complaint has been made then.
QString readUnit(FieldReader& fields, const record::Parameter& parameter, const std::optional<NameBook::Kit>& kit)
{
    const QString written = fields.text(u"unit"_s);
    if (!written.isEmpty()) {
        return unitCode(parameter, written);
    }
    if (kit) {
        return kit->unit;
    }
    if (parameter.units.size() == 1) {
        return parameter.canonical().code;
    }
    fields.complain(
        u"unit"_s,
        words("%1 needs its unit: %2. It is not guessed.").arg(parameter.name, unitCodes(parameter).join(u", "_s)));
    return {};
}

void readFraction(FieldReader& fields, Entry& entry, std::optional<double> net_L)
{
    const int given = int(fields.has(u"fraction"_s)) + int(fields.has(u"percent"_s)) + int(fields.has(u"litres"_s));
    const std::optional<double> fraction = fields.share(u"fraction"_s);
    const std::optional<double> percent = fields.number(u"percent"_s, 0.0, 100.0);
    const std::optional<double> litres = fields.number(u"litres"_s, 0.0, 1e6);
    if (given == 0) {
        fields.complain(u"fraction"_s, words("A water change needs one of fraction, percent and litres."));
    } else if (given > 1) {
        fields.complain(u"fraction"_s, words("Give only one of fraction, percent and litres."));
    } else if (fraction) {
        entry.fraction = fraction;
    } else if (percent) {
        entry.fraction = *percent / 100.0;
    } else if (litres && !net_L) {
        fields.complain(u"litres"_s,
                        words("The tank's litres are not known. Give the fraction, or the tank's dimensions first."));
    } else if (litres && *litres > *net_L) {
        fields.complain(
            u"litres"_s,
            words("%1 L is more than the %2 L in the tank.").arg(numberText(*litres), QString::number(*net_L, 'f', 1)));
    } else if (litres) {
        entry.fraction = *litres / *net_L;
    }
}

/// An ammonia dose is kept as the rise of total ammonia in mg/L N, whatever it was typed in.
void readDose(FieldReader& fields, Entry& entry)
{
    entry.subject = fields.requiredText(u"subject"_s);
    entry.amount = fields.number(u"amount"_s, 0.0, 1e6);
    entry.unit = fields.text(u"unit"_s);
    const QString subject = entry.subject.toLower();
    if (!entry.amount && !fields.failed() && (subject == u"ammonia"_s || subject == u"starter"_s)) {
        fields.need(u"amount"_s);
    }
    if (subject == u"starter"_s) {
        entry.subject = subject;
        entry.unit = entry.unit.isEmpty() ? u"doses"_s : entry.unit;
        if (entry.unit != u"doses"_s) {
            fields.complain(u"unit"_s, words("A starter is counted in label doses: write \"doses\"."));
        }
        return;
    }
    if (subject != u"ammonia"_s) {
        if (entry.unit.isEmpty() && entry.amount) {
            fields.need(u"unit"_s);
        }
        return;
    }
    entry.subject = subject;
    const record::Parameter* ammonia = record::findParameter(u"tan"_s);
    const record::Unit* unit = ammonia->unit(unitCode(*ammonia, entry.unit));
    if (unit == nullptr) {
        fields.complain(
            u"unit"_s,
            words("An ammonia dose is the rise it makes, in one of %1.").arg(unitCodes(*ammonia).join(u", "_s)));
        return;
    }
    if (entry.amount) {
        entry.amount = unit->toCanonical(*entry.amount);
    }
    entry.unit = ammonia->canonical().code;
}

void readFeeding(FieldReader& fields, Entry& entry)
{
    entry.subject = fields.text(u"subject"_s);
    entry.amount = fields.number(u"amount"_s, 0.0, 1e4);
    entry.proteinShare = fields.share(u"protein"_s);
    const QString unit = fields.text(u"unit"_s);
    const QString plain = plainUnit(unit);
    if (plain == u"g/d"_s) {
        entry.unit = u"g/d"_s;
    } else if (plain == u"mg/l/d n"_s || plain == u"mg n/l/d"_s) {
        entry.unit = u"mg/L/d N"_s;
    } else {
        fields.complain(u"unit"_s, words("Feeding is given in \"g/d\" or in \"mg/L/d N\"."));
    }
    if (!entry.amount && !fields.failed()) {
        fields.need(u"amount"_s);
    }
}

void readObservation(FieldReader& fields, Entry& entry)
{
    entry.subject = fields.requiredText(u"subject"_s);
    entry.severity = fields.whole(u"severity"_s, 0, 4);
    entry.coverage = fields.share(u"coverage"_s);
    entry.where = fields.text(u"where"_s);
}

void readAnimals(FieldReader& fields, Entry& entry)
{
    entry.subject = fields.requiredText(u"subject"_s);
    entry.count = fields.whole(u"count"_s, 1, 100000);
    entry.load_mgN_per_L_d = fields.number(u"load_mgn_per_l_d"_s, 0.0, 100.0);
}

void readOtherTank(FieldReader& fields, Entry& entry, const NameBook& names, QStringList* strangers)
{
    const QString other = fields.text(u"other_tank"_s);
    if (other.isEmpty()) {
        return;
    }
    if (const auto id = names.tank(other)) {
        entry.otherTank = *id;
    } else if (strangers != nullptr) {
        strangers->append(other);
    } else {
        fields.complain(u"other_tank"_s, names.noTank(other));
    }
}

void readMediaTransfer(FieldReader& fields, Entry& entry, const NameBook& names, QStringList* strangers)
{
    entry.subject = fields.requiredText(u"subject"_s).toLower();
    if (!entry.subject.isEmpty() && !QStringList{u"media"_s, u"squeezings"_s, u"given"_s}.contains(entry.subject)) {
        fields.complain(u"subject"_s, words("A media transfer moves \"media\" or \"squeezings\", or is \"given\"."));
    }
    entry.fraction = fields.share(u"fraction"_s);
    if (!entry.fraction && !fields.has(u"fraction"_s)) {
        fields.need(u"fraction"_s);
    }
    readOtherTank(fields, entry, names, strangers);
}

void readLight(FieldReader& fields, Entry& entry)
{
    entry.amount = fields.number(u"hours"_s, 0.0, 24.0);
    entry.second = fields.number(u"par"_s, 0.0, 2500.0);
    entry.unit = fields.text(u"unit"_s);
    entry.subject = fields.text(u"subject"_s);
    if (!entry.amount && !entry.second && !fields.failed()) {
        fields.need(u"hours"_s);
    }
}

void readCo2(FieldReader& fields, Entry& entry)
{
    entry.amount = fields.number(u"target_mg_per_l"_s, 0.0, 200.0);
    entry.second = fields.number(u"hours"_s, 0.0, 24.0);
    entry.unit = fields.text(u"unit"_s);
    entry.subject = fields.text(u"subject"_s);
    if (!entry.amount && !entry.second && !fields.failed()) {
        fields.need(u"target_mg_per_l"_s);
    }
}

void readKind(FieldReader& fields, Entry& entry, const NameBook& names, std::optional<double> net_L,
              QStringList* strangers)
{
    switch (entry.kind) {
    case EntryKind::WaterChange:
        readFraction(fields, entry, net_L);
        entry.subject = fields.text(u"subject"_s);
        break;
    case EntryKind::TopUp:
        entry.amount = fields.number(u"litres"_s, 0.0, 1e6);
        entry.unit = u"L"_s;
        if (const QString unit = fields.text(u"unit"_s); !unit.isEmpty() && plainUnit(unit) != u"l"_s) {
            fields.complain(u"unit"_s, words("A top-up is given in litres."));
        }
        break;
    case EntryKind::Dose:
        readDose(fields, entry);
        break;
    case EntryKind::Feeding:
        readFeeding(fields, entry);
        break;
    case EntryKind::Upkeep:
        entry.subject = fields.requiredText(u"subject"_s);
        entry.amount = fields.number(u"amount"_s, 0.0, 1e6);
        entry.unit = fields.text(u"unit"_s);
        break;
    case EntryKind::Observation:
        readObservation(fields, entry);
        break;
    case EntryKind::Addition:
    case EntryKind::Loss:
        readAnimals(fields, entry);
        break;
    case EntryKind::MediaTransfer:
        readMediaTransfer(fields, entry, names, strangers);
        break;
    case EntryKind::LightChange:
        readLight(fields, entry);
        break;
    case EntryKind::Co2Change:
        readCo2(fields, entry);
        break;
    case EntryKind::Note:
        entry.subject = fields.text(u"subject"_s);
        entry.where = fields.text(u"where"_s);
        if (entry.note.isEmpty() && entry.subject.isEmpty()) {
            fields.need(u"note"_s);
        }
        break;
    }
}

void readSource(FieldReader& fields, Entry& entry, const NameBook& names)
{
    const QString source = fields.text(u"source"_s);
    if (source.isEmpty()) {
        return;
    }
    if (const auto id = names.source(source)) {
        entry.source = *id;
    } else {
        fields.complain(u"source"_s, names.noSource(source));
    }
}

struct NumberFields
{
    QString amount;
    QString second;
};

/// What the two numbers of an entry are called, by its kind.
NumberFields numberFields(EntryKind kind)
{
    switch (kind) {
    case EntryKind::LightChange:
        return {u"hours"_s, u"par"_s};
    case EntryKind::Co2Change:
        return {u"target_mg_per_l"_s, u"hours"_s};
    case EntryKind::TopUp:
        return {u"litres"_s, u"hours"_s};
    default:
        return {u"amount"_s, u"hours"_s};
    }
}

/// An entry as a store kept it: every field entryFields() writes, for any kind, and none of them needed, so that what
/// was exported comes back as it was. Only an ammonia dose's unit is still brought to nitrogen.
void readKept(FieldReader& fields, Entry& entry, const NameBook& names, QStringList* strangers)
{
    constexpr double kAny = 1e9;
    const NumberFields numbers = numberFields(entry.kind);
    entry.subject = fields.text(u"subject"_s);
    entry.fraction = fields.share(u"fraction"_s);
    entry.amount = fields.number(numbers.amount, -kAny, kAny);
    entry.second = fields.number(numbers.second, -kAny, kAny);
    entry.unit = fields.text(u"unit"_s);
    entry.proteinShare = fields.share(u"protein"_s);
    entry.count = fields.whole(u"count"_s, 0, 1000000);
    entry.load_mgN_per_L_d = fields.number(u"load_mgn_per_l_d"_s, -kAny, kAny);
    entry.severity = fields.whole(u"severity"_s, 0, 4);
    entry.coverage = fields.share(u"coverage"_s);
    entry.where = fields.text(u"where"_s);
    readSource(fields, entry, names);
    readOtherTank(fields, entry, names, strangers);
    const record::Parameter* ammonia = record::findParameter(u"tan"_s);
    const record::Unit* unit = ammonia->unit(unitCode(*ammonia, entry.unit));
    if (entry.kind == EntryKind::Dose && entry.subject == u"ammonia"_s && entry.amount && unit != nullptr) {
        entry.amount = unit->toCanonical(*entry.amount);
        entry.unit = ammonia->canonical().code;
    }
}

void put(QJsonObject& object, const QString& field, const QString& text)
{
    if (!text.isEmpty()) {
        object.insert(field, text);
    }
}

template <typename T> void put(QJsonObject& object, const QString& field, const std::optional<T>& number)
{
    if (number) {
        object.insert(field, *number);
    }
}

} // namespace

QString unitCode(const record::Parameter& parameter, const QString& written)
{
    QString plain = plainUnit(written);
    for (const record::Unit& unit : parameter.units) {
        if (plain == plainUnit(unit.code)) {
            return unit.code;
        }
    }
    // "mg/L NO3-N" and its like: the nitrogen of the ion.
    if (plain.endsWith(u"-n"_s) && parameter.unit(u"mg/L N"_s) != nullptr && plain.startsWith(u"mg/l "_s)) {
        return u"mg/L N"_s;
    }
    return written;
}

std::optional<record::Reading> readReading(FieldReader& fields, const NameBook& names)
{
    record::Reading reading;
    const QString name = fields.requiredText(u"parameter"_s);
    const QString typed = fields.requiredText(u"value"_s);
    const QString kitName = fields.text(u"kit"_s);
    reading.note = fields.text(u"note"_s);
    const record::Parameter* parameter = record::findParameter(name);
    if (parameter == nullptr) {
        fields.ignore(u"unit"_s);
        if (!name.isEmpty()) {
            fields.complain(u"parameter"_s, words("There is no parameter \"%1\".").arg(name));
        }
        return std::nullopt;
    }
    reading.parameter = parameter->key;
    std::optional<NameBook::Kit> kit;
    if (!kitName.isEmpty()) {
        kit = names.kit(kitName, parameter->key);
        if (kit) {
            reading.kit = kit->id;
        } else {
            fields.complain(u"kit"_s, names.noKit(kitName, parameter->key));
        }
    }
    const QString unit = readUnit(fields, *parameter, kit);
    if (fields.failed()) {
        return std::nullopt;
    }
    if (const auto set = record::setTypedValue(reading, typed, unit); !set) {
        fields.complain(parameter->unit(unit) == nullptr ? u"unit"_s : u"value"_s, sentence(set.error()));
        return std::nullopt;
    }
    return reading;
}

std::optional<Entry> readEntry(FieldReader& fields, EntryKind kind, const NameBook& names, std::optional<double> net_L,
                               QStringList* strangers)
{
    Entry entry;
    entry.kind = kind;
    entry.planned = fields.yesNo(u"planned"_s).value_or(false);
    entry.plannedFor = fields.instant(u"planned_for"_s);
    entry.plannedFraction = fields.share(u"planned_fraction"_s);
    entry.note = fields.text(u"note"_s);
    if (fields.has(u"entered"_s)) {
        readKept(fields, entry, names, strangers);
    } else {
        if (kind == EntryKind::WaterChange || kind == EntryKind::TopUp) {
            readSource(fields, entry, names);
        }
        readKind(fields, entry, names, net_L, strangers);
    }
    fields.refuseOthers(record::entryKindCode(kind));
    return fields.failed() ? std::nullopt : std::optional(entry);
}

QJsonObject readingFields(const record::Reading& reading, const NameBook& names)
{
    QJsonObject object;
    put(object, u"parameter"_s, reading.parameter);
    put(object, u"value"_s, reading.typed);
    put(object, u"unit"_s, reading.unit);
    put(object, u"kit"_s, names.nameOf(reading.kit));
    put(object, u"note"_s, reading.note);
    return object;
}

QJsonObject entryFields(const Entry& entry, const NameBook& names)
{
    QJsonObject object;
    put(object, u"kind"_s, record::entryKindCode(entry.kind));
    if (entry.planned) {
        object.insert(u"planned"_s, true);
    }
    if (entry.plannedFor) {
        put(object, u"planned_for"_s, instantText(*entry.plannedFor));
    }
    put(object, u"planned_fraction"_s, entry.plannedFraction);
    put(object, u"subject"_s, entry.subject);
    put(object, u"fraction"_s, entry.fraction);
    const NumberFields numbers = numberFields(entry.kind);
    put(object, numbers.amount, entry.amount);
    put(object, numbers.second, entry.second);
    put(object, u"unit"_s, entry.unit);
    put(object, u"protein"_s, entry.proteinShare);
    put(object, u"count"_s, entry.count);
    put(object, u"load_mgn_per_l_d"_s, entry.load_mgN_per_L_d);
    put(object, u"severity"_s, entry.severity);
    put(object, u"coverage"_s, entry.coverage);
    put(object, u"where"_s, entry.where);
    put(object, u"source"_s, names.nameOf(entry.source));
    put(object, u"other_tank"_s, names.nameOf(entry.otherTank));
    put(object, u"note"_s, entry.note);
    return object;
}

} // namespace littoral::exchange
