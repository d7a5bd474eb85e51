// SPDX-License-Identifier: GPL-3.0-or-later
// The records of each file of facts, read one by one.
#include "core/facts/fact_reader.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <set>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FactReader", text);
}

Error broken(const QString& file, const QString& what, const QString& mend)
{
    return {Fault::BadInput, what.toStdString(), file.toStdString(), mend.toStdString()};
}

Result<QJsonObject> document(const QByteArray& json, const QString& file)
{
    QJsonParseError problem;
    const QJsonDocument parsed = QJsonDocument::fromJson(json, &problem);
    if (problem.error != QJsonParseError::NoError || !parsed.isObject()) {
        return broken(file, words("It is not JSON: %1 at character %2.").arg(problem.errorString()).arg(problem.offset),
                      words("Check brackets, commas and quotation marks there."));
    }
    if (parsed.object()[u"version"_s].toInt() != 1) {
        return broken(file, words("Its version is not 1."), words("Write \"version\": 1 at the top."));
    }
    return parsed.object();
}

/// Every object of a list through `read`, refusing an id that comes twice.
template <typename T, typename Read, typename IdOf>
Result<std::vector<T>> records(const QByteArray& json, const QString& file, const QString& list, Read read, IdOf idOf)
{
    const auto top = document(json, file);
    if (!top) {
        return top.error();
    }
    std::vector<T> all;
    std::set<QString> seen;
    for (const QJsonValue& value : (*top)[list].toArray()) {
        Result<T> one = read(file, value.toObject());
        if (!one) {
            return one.error();
        }
        if (!seen.insert(idOf(*one)).second) {
            return broken(file, words("\"%1\" is there twice.").arg(idOf(*one)), words("Take one of them out."));
        }
        all.push_back(std::move(one).value());
    }
    if (all.empty()) {
        return broken(file, words("There is nothing in \"%1\".").arg(list), words("Put at least one record there."));
    }
    return all;
}

void readValues(FactReader& reader, EvidenceKey& key)
{
    const QJsonObject values = reader.object()[u"values"_s].toObject();
    for (const QString& code : values.keys()) {
        if (values[code].toString().isEmpty()) {
            reader.complain(u"values"_s, words("\"%1\" has no words.").arg(code), words("Write what it means."));
        }
        key.values.emplace_back(code, values[code].toString());
    }
    if (key.values.size() < 2) {
        reader.complain(u"values"_s, words("A tick needs two values or more."), words("Add the other answer."));
    }
    const QJsonObject hints = reader.object()[u"words"_s].toObject();
    for (const QString& code : hints.keys()) {
        if (!key.hasValue(code)) {
            reader.complain(u"words"_s, words("\"%1\" is no value of this key.").arg(code),
                            words("Use a code from \"values\"."));
        }
        for (const QJsonValue& word : hints[code].toArray()) {
            key.words[code] << word.toString();
        }
    }
}

void readEvent(FactReader& reader, EvidenceKey& key)
{
    key.event = reader.text(u"event"_s, false);
    key.subjects = reader.texts(u"subjects"_s);
    key.entries = reader.texts(u"entries"_s);
    const int ways = (key.event.isEmpty() ? 0 : 1) + (key.subjects.isEmpty() ? 0 : 1) + (key.entries.isEmpty() ? 0 : 1);
    if (ways != 1) {
        reader.complain(u"event"_s, words("It must be clear which entries tell of it."),
                        words("Give one of \"event\", \"subjects\" or \"entries\"."));
    }
}

Result<EvidenceKey> readKey(const QString& file, const QJsonObject& object)
{
    FactReader reader(file, object[u"key"_s].toString(), object);
    reader.only({u"key"_s, u"kind"_s, u"name"_s, u"question"_s, u"parameter"_s, u"unit"_s, u"low"_s, u"high"_s,
                 u"days"_s, u"background"_s, u"reckoned"_s, u"values"_s, u"words"_s, u"event"_s, u"subjects"_s,
                 u"entries"_s});
    EvidenceKey key;
    key.key = reader.text(u"key"_s);
    const QStringList kinds{u"reading"_s, u"number"_s, u"tick"_s, u"event"_s, u"sight"_s};
    key.kind = static_cast<KeyKind>(std::max<qsizetype>(0, kinds.indexOf(reader.oneOf(u"kind"_s, kinds))));
    key.name = reader.text(u"name"_s, key.kind != KeyKind::Tick);
    key.question = reader.text(u"question"_s, key.kind == KeyKind::Tick || key.kind == KeyKind::Number);
    key.background = reader.flag(u"background"_s);
    key.reckoned = reader.text(u"reckoned"_s, false);
    if (key.kind != KeyKind::Event) {
        key.days = reader.whole(u"days"_s, 0, 4000);
    }
    if (key.kind == KeyKind::Reading) {
        key.parameter = reader.text(u"parameter"_s);
        key.unit = reader.text(u"unit"_s);
    } else if (key.kind == KeyKind::Number) {
        key.unit = object[u"unit"_s].toString();
        const auto low = reader.number(u"low"_s, -1e6, 1e6);
        const auto high = reader.number(u"high"_s, -1e6, 1e6);
        key.low = low.value_or(0.0);
        key.high = high.value_or(0.0);
    } else if (key.kind == KeyKind::Tick) {
        readValues(reader, key);
    } else if (key.kind == KeyKind::Event) {
        readEvent(reader, key);
    }
    if (reader.failed()) {
        return reader.error();
    }
    return key;
}

Result<ReferenceTask> readTask(const QString& file, const QJsonObject& object)
{
    FactReader reader(file, object[u"key"_s].toString(), object);
    reader.only({u"key"_s, u"title"_s, u"when"_s, u"consequence"_s, u"closes"_s, u"minutes"_s, u"priority"_s,
                 u"helper"_s, u"cautions"_s, u"source"_s});
    ReferenceTask task;
    task.key = reader.text(u"key"_s);
    task.title = reader.text(u"title"_s);
    task.when = reader.text(u"when"_s);
    task.consequence = reader.text(u"consequence"_s);
    task.closes = reader.text(u"closes"_s);
    task.minutes = reader.whole(u"minutes"_s, 1, 600);
    task.priority = reader.whole(u"priority"_s, 1, 3);
    task.helper = reader.flag(u"helper"_s);
    task.cautions = reader.texts(u"cautions"_s);
    task.source = reader.text(u"source"_s);
    if (reader.failed()) {
        return reader.error();
    }
    return task;
}

Result<Term> readTerm(const QString& file, const QJsonObject& object)
{
    FactReader reader(file, object[u"id"_s].toString(), object);
    reader.only({u"id"_s, u"name"_s, u"text"_s, u"see"_s, u"source"_s});
    Term term;
    term.id = reader.text(u"id"_s);
    term.name = reader.text(u"name"_s);
    term.text = reader.text(u"text"_s);
    term.see = reader.texts(u"see"_s);
    term.source = reader.text(u"source"_s);
    if (reader.failed()) {
        return reader.error();
    }
    return term;
}

void readAge(FactReader& reader, Condition& condition)
{
    const QJsonArray age = reader.object()[u"age"_s].toArray();
    condition.ageLow = age.at(0).toInt(-1);
    if (age.size() == 2) {
        condition.ageHigh = age.at(1).toInt(-1);
    }
    if (age.isEmpty() || age.size() > 2 || condition.ageLow < 0 ||
        condition.ageHigh.value_or(9999) < condition.ageLow) {
        reader.complain(u"age"_s, words("The usual tank age is missing here."),
                        words("Write [from] or [from, to] in days."));
    }
}

} // namespace

Result<Caution> readCaution(const QString& file, const QJsonObject& object, bool whole)
{
    FactReader reader(file, object[u"id"_s].toString(), object);
    reader.only(whole ? QStringList{u"id"_s, u"title"_s, u"when"_s, u"words"_s, u"work"_s, u"points"_s}
                      : QStringList{u"id"_s, u"points"_s});
    Caution caution;
    caution.id = reader.text(u"id"_s);
    caution.title = reader.text(u"title"_s, whole);
    caution.when = reader.text(u"when"_s, whole);
    caution.words = reader.texts(u"words"_s);
    caution.work = reader.texts(u"work"_s);
    for (const QJsonValue& value : object[u"points"_s].toArray()) {
        FactReader point(file, caution.id, value.toObject());
        point.only({u"text"_s, u"source"_s, u"before"_s});
        caution.points.push_back({point.text(u"text"_s), point.text(u"source"_s)});
        caution.points.back().before = point.flag(u"before"_s);
        if (point.failed()) {
            reader.take(point.error());
        }
    }
    if (caution.points.empty()) {
        reader.complain(u"points"_s, words("It says nothing."), words("Write at least one point."));
    } else if (whole && !caution.points.front().before) {
        reader.complain(u"points"_s, words("Its first point does not stand before the action."),
                        words("Put the most telling point first and mark it \"before\": true."));
    }
    if (reader.failed()) {
        return reader.error();
    }
    return caution;
}

Result<Condition> readCondition(const QString& file, const QJsonObject& object)
{
    static const QStringList urgencies{u"now"_s, u"today"_s, u"week"_s, u"watch"_s};
    static const QStringList kinds{u"algae"_s,  u"bacteria"_s, u"water"_s,     u"fungus"_s,     u"deposit"_s,
                                   u"bed"_s,    u"pest"_s,     u"plant"_s,     u"animal"_s,     u"disease"_s,
                                   u"shrimp"_s, u"snail"_s,    u"equipment"_s, u"measurement"_s};
    FactReader reader(file, object[u"id"_s].toString(), object);
    reader.only({u"id"_s, u"kind"_s, u"name"_s, u"look"_s, u"where"_s, u"age"_s, u"prior"_s, u"urgency"_s, u"for"_s,
                 u"against"_s, u"actions"_s, u"avoid"_s, u"check"_s, u"cautions"_s, u"lookalikes"_s, u"source"_s});
    Condition c;
    c.id = reader.text(u"id"_s);
    c.kind = reader.oneOf(u"kind"_s, kinds);
    c.name = reader.text(u"name"_s);
    c.look = reader.text(u"look"_s);
    c.where = reader.texts(u"where"_s, true);
    readAge(reader, c);
    c.prior = reader.whole(u"prior"_s, 1, 3);
    c.urgency = static_cast<Urgency>(std::max<qsizetype>(0, urgencies.indexOf(reader.oneOf(u"urgency"_s, urgencies))));
    c.supporting = reader.evidence(u"for"_s);
    c.against = reader.evidence(u"against"_s);
    c.actions = reader.texts(u"actions"_s, true);
    c.avoid = reader.texts(u"avoid"_s);
    c.check = reader.text(u"check"_s);
    c.cautions = reader.texts(u"cautions"_s);
    c.lookalikes = reader.texts(u"lookalikes"_s);
    c.source = reader.text(u"source"_s);
    if (c.supporting.empty()) {
        reader.complain(u"for"_s, words("Nothing speaks for it."), words("Write at least one item of evidence."));
    }
    if (reader.failed()) {
        return reader.error();
    }
    return c;
}

Result<Species> readSpecies(const QString& file, const QJsonObject& object)
{
    FactReader reader(file, object[u"id"_s].toString(), object);
    reader.only({u"id"_s,   u"kind"_s,   u"scientific"_s, u"name"_s,        u"light"_s, u"co2"_s,
                 u"form"_s, u"growth"_s, u"position"_s,   u"sensitivity"_s, u"temp"_s,  u"ph"_s,
                 u"gh"_s,   u"kh"_s,     u"size_cm"_s,    u"mass_g"_s,      u"group"_s, u"tank_l"_s,
                 u"gate"_s, u"flags"_s,  u"note"_s,       u"source"_s});
    Species s;
    s.id = reader.text(u"id"_s);
    s.kind = reader.oneOf(u"kind"_s, {u"plant"_s, u"shrimp"_s, u"snail"_s, u"fish"_s});
    s.scientific = reader.text(u"scientific"_s);
    s.name = reader.text(u"name"_s);
    const bool plant = s.isPlant();
    s.light = reader.oneOf(u"light"_s, {u"low"_s, u"medium"_s, u"high"_s}, plant);
    s.co2 = reader.oneOf(u"co2"_s, {u"none"_s, u"optional"_s, u"helpful"_s, u"needed"_s}, plant);
    s.form = reader.texts(u"form"_s, plant);
    s.growth = reader.oneOf(u"growth"_s, {u"slow"_s, u"medium"_s, u"fast"_s}, plant);
    s.position = reader.texts(u"position"_s, true);
    s.sensitivity = reader.whole(u"sensitivity"_s, 1, 4);
    s.temperature_C = reader.span(u"temp"_s, 0.0, 40.0);
    s.ph = reader.span(u"ph"_s, 3.0, 10.0);
    s.gh_deg = reader.span(u"gh"_s, 0.0, 40.0);
    s.kh_deg = reader.span(u"kh"_s, 0.0, 40.0);
    s.size_cm = reader.number(u"size_cm"_s, 0.1, 300.0).value_or(0.0);
    s.mass_g = reader.number(u"mass_g"_s, 0.001, 50000.0, !plant);
    if (!plant) {
        s.group = reader.whole(u"group"_s, 1, 100);
        s.tank_L = reader.number(u"tank_l"_s, 1.0, 100000.0);
    }
    s.gate = reader.text(u"gate"_s);
    s.flags = reader.texts(u"flags"_s);
    s.note = reader.text(u"note"_s, false);
    s.source = reader.text(u"source"_s);
    if (reader.failed()) {
        return reader.error();
    }
    return s;
}

Result<std::vector<EvidenceKey>> parseKeys(const QByteArray& json)
{
    return records<EvidenceKey>(json, u"evidence.json"_s, u"keys"_s, readKey,
                                [](const EvidenceKey& k) { return k.key; });
}

Result<std::vector<Condition>> parseConditions(const QByteArray& json)
{
    return records<Condition>(json, u"conditions.json"_s, u"conditions"_s, readCondition,
                              [](const Condition& c) { return c.id; });
}

Result<std::vector<Species>> parseSpecies(const QByteArray& json)
{
    return records<Species>(json, u"species.json"_s, u"species"_s, readSpecies, [](const Species& s) { return s.id; });
}

Result<std::vector<Caution>> parseCautions(const QByteArray& json, QString& aboveAll)
{
    const auto top = document(json, u"cautions.json"_s);
    if (!top) {
        return top.error();
    }
    aboveAll = (*top)[u"above-all"_s].toString();
    if (aboveAll.isEmpty()) {
        return broken(u"cautions.json"_s, words("\"above-all\" is missing."), words("Say what outranks the cautions."));
    }
    return records<Caution>(
        json, u"cautions.json"_s, u"cautions"_s,
        [](const QString& file, const QJsonObject& object) { return readCaution(file, object, true); },
        [](const Caution& c) { return c.id; });
}

Result<std::vector<ReferenceTask>> parseTasks(const QByteArray& json)
{
    return records<ReferenceTask>(json, u"tasks.json"_s, u"tasks"_s, readTask,
                                  [](const ReferenceTask& t) { return t.key; });
}

Result<std::vector<Term>> parseTerms(const QByteArray& json)
{
    return records<Term>(json, u"terms.json"_s, u"terms"_s, readTerm, [](const Term& term) { return term.id; });
}

} // namespace littoral::facts
