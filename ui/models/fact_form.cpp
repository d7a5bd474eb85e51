// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/fact_form.h"

#include "core/care/limits.h"
#include "ui/models/number_text.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QRegularExpression>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facts::FactKind;
using Shape = FactField::Shape;
using Choices = std::vector<std::pair<QString, QString>>;

namespace {

constexpr int kFigures = 5;
const QString kPoints = u"points"_s;
const QString kPointsSource = u"points/source"_s;

QString words(const char* text)
{
    return QCoreApplication::translate("FactForm", text);
}

FactField source()
{
    return {u"source"_s, words("Where this comes from"), Shape::Text, words("a publication, or: own experience")};
}

std::vector<FactField> conditionFields()
{
    const Choices kinds{{u"algae"_s, words("algae")},         {u"bacteria"_s, words("bacteria")},
                        {u"water"_s, words("water")},         {u"fungus"_s, words("fungus")},
                        {u"deposit"_s, words("deposit")},     {u"bed"_s, words("bed")},
                        {u"pest"_s, words("pest")},           {u"plant"_s, words("plant")},
                        {u"animal"_s, words("animal")},       {u"disease"_s, words("disease")},
                        {u"shrimp"_s, words("shrimp")},       {u"snail"_s, words("snail")},
                        {u"equipment"_s, words("equipment")}, {u"measurement"_s, words("measurement")}};
    const QString evidence = words("po4<0.3 ::2\ncolour=brown ::3\nev:light_change<14d ::1");
    return {{u"name"_s, words("Name")},
            {u"kind"_s, words("Kind"), Shape::Choice, {}, kinds},
            {u"look"_s, words("How it looks"), Shape::Paragraph},
            {u"where"_s, words("Where it is seen, one a line"), Shape::Lines, words("glass")},
            {u"age"_s, words("Usual tank age in days, from and to"), Shape::Days, words("14 60")},
            {u"prior"_s,
             words("How often"),
             Shape::Choice,
             {},
             {{u"1"_s, words("rare")}, {u"2"_s, words("occasional")}, {u"3"_s, words("common")}}},
            {u"urgency"_s,
             words("How soon it has to be seen to"),
             Shape::Choice,
             {},
             {{u"now"_s, words("at once")},
              {u"today"_s, words("today")},
              {u"week"_s, words("within the week")},
              {u"watch"_s, words("watch it")}}},
            {u"for"_s, words("What speaks for it, one a line, with its weight 1 to 3"), Shape::Lines, evidence},
            {u"against"_s, words("What speaks against it, one a line"), Shape::Lines, evidence},
            {u"actions"_s, words("First actions, one a line"), Shape::Lines},
            {u"avoid"_s, words("Avoid, one a line"), Shape::Lines},
            {u"check"_s, words("What to look at next"), Shape::Paragraph},
            {u"cautions"_s, words("Cautions, one a line; the program's own stay"), Shape::Names},
            {u"lookalikes"_s, words("Easily taken for, one a line"), Shape::Names},
            source()};
}

std::vector<FactField> plantFields()
{
    return {{u"light"_s,
             words("Light it needs"),
             Shape::Choice,
             {},
             {{u"low"_s, words("little")}, {u"medium"_s, words("middling")}, {u"high"_s, words("much")}}},
            {u"co2"_s,
             words("Carbon dioxide"),
             Shape::Choice,
             {},
             {{u"none"_s, words("takes it from the air")},
              {u"optional"_s, words("does without")},
              {u"helpful"_s, words("helps much")},
              {u"needed"_s, words("needed")}}},
            {u"form"_s, words("Form, one a line"), Shape::Lines, words("rosette")},
            {u"growth"_s,
             words("Growth"),
             Shape::Choice,
             {},
             {{u"slow"_s, words("slow")}, {u"medium"_s, words("medium")}, {u"fast"_s, words("fast")}}}};
}

std::vector<FactField> speciesFields(const QJsonObject& object)
{
    const bool plant = object[u"kind"_s].toString() == u"plant"_s;
    std::vector<FactField> fields{
        {u"kind"_s,
         words("Kind"),
         Shape::Choice,
         {},
         {{u"plant"_s, words("plant")},
          {u"shrimp"_s, words("shrimp")},
          {u"snail"_s, words("snail")},
          {u"fish"_s, words("fish")}}},
        {u"scientific"_s, words("Scientific name")},
        {u"name"_s, words("Common name")},
        {u"position"_s, words("Place in the tank, one a line"), Shape::Lines, words("middle")},
        {u"sensitivity"_s, words("Touchiness, 1 tough to 4 touchy"), Shape::Number},
        {u"temp"_s, words("Temperature it bears, °C, from and to"), Shape::Span, words("20 26")},
        {u"ph"_s, words("pH it bears, from and to"), Shape::Span, words("6 7.5")},
        {u"gh"_s, words("General hardness it bears, dGH, from and to"), Shape::Span, words("2 12")},
        {u"kh"_s, words("Carbonate hardness it bears, dKH, from and to"), Shape::Span, words("1 8")},
        {u"size_cm"_s, words("Size when grown, cm"), Shape::Number}};
    if (plant) {
        const std::vector<FactField> more = plantFields();
        fields.insert(fields.end(), more.begin(), more.end());
    } else {
        fields.push_back({u"mass_g"_s, words("Mass when grown, g, for the load of feeding"), Shape::Number});
        fields.push_back({u"group"_s, words("Least group"), Shape::Number});
        fields.push_back({u"tank_l"_s, words("Least water, litres net"), Shape::Number});
    }
    const Choices plantGates{{u"P0"_s, words("from flood day")}, {u"P1"_s, words("once ammonia is low")}};
    const Choices animalGates{{u"G1"_s, words("G1, first grazers")},
                              {u"G2"_s, words("G2, hardy fish and shrimp")},
                              {u"G3"_s, words("G3, most community animals")},
                              {u"G4"_s, words("G4, sensitive animals")}};
    fields.push_back({u"gate"_s, words("Goes in"), Shape::Choice, {}, plant ? plantGates : animalGates});
    fields.push_back({u"flags"_s, words("To know before buying, one a line"), Shape::Lines, words("eats_shrimp")});
    fields.push_back({u"note"_s, words("In a sentence"), Shape::Paragraph});
    fields.push_back(source());
    return fields;
}

std::vector<FactField> cautionFields(bool hasBuiltIn)
{
    std::vector<FactField> fields;
    if (!hasBuiltIn) {
        fields.push_back({u"title"_s, words("Title")});
        fields.push_back({u"when"_s, words("What it counts for")});
    }
    fields.push_back({kPoints, words("Your points, one a line"), Shape::Lines});
    fields.push_back(
        {kPointsSource, words("Where they come from"), Shape::Text, words("a publication, or: own experience")});
    return fields;
}

std::vector<FactField> gateFields()
{
    const QString first = words("a number, or: first step");
    return {{u"min-age/new-media"_s, words("Least age with new media, days"), Shape::Number},
            {u"min-age/mature-media"_s, words("Least age with mature media, days"), Shape::Number},
            {u"min-age/starter"_s, words("Least age with a starter, days"), Shape::Number},
            {u"min-age/dry-start"_s, words("Least age after a dry start, days"), Shape::Number},
            {u"min-age/dark-start"_s, words("Least age after a dark start, days"), Shape::Number},
            {u"tan"_s, words("Total ammonia at most, mg/L N"), Shape::Limit, first},
            {u"nh3"_s, words("Free ammonia at most, mg/L N"), Shape::Number},
            {u"no2"_s, words("Nitrite at most, mg/L N"), Shape::Limit, first},
            {u"readings"_s, words("Clear readings in a row"), Shape::Number},
            {u"apart-hours"_s, words("Hours between two of them, at least"), Shape::Number},
            {u"within-days"_s, words("All of them within days; empty for any"), Shape::Number},
            {u"span-days"_s, words("Days from the first to the last, at least; empty for any"), Shape::Number},
            {u"also"_s, words("Besides, one key a line"), Shape::Lines},
            source()};
}

std::vector<FactField> limitFields(const QJsonObject& object)
{
    const care::LimitFact* fact = care::limitFact(object[u"id"_s].toString());
    const QString label =
        fact == nullptr
            ? words("Figure")
            : words("%1 (from %2 to %3)").arg(fact->unit, numberText(fact->low, 4), numberText(fact->high, 4));
    return {{u"value"_s, label, Shape::Number}, source()};
}

/// The object a path leads to and the field's name in it.
QJsonValue valueAt(const QJsonObject& object, const QString& path)
{
    return path.contains(u'/') ? object[path.section(u'/', 0, 0)].toObject()[path.section(u'/', 1)] : object[path];
}

void put(QJsonObject& object, const QString& path, const QJsonValue& value)
{
    if (!path.contains(u'/')) {
        if (value.isUndefined()) {
            object.remove(path);
        } else {
            object[path] = value;
        }
        return;
    }
    QJsonObject inner = object[path.section(u'/', 0, 0)].toObject();
    put(inner, path.section(u'/', 1), value);
    object[path.section(u'/', 0, 0)] = inner;
}

QString nameOfId(const FactField& field, const QString& id, const facts::FactBook& book)
{
    if (field.path == u"cautions"_s) {
        const facts::Caution* caution = book.caution(id);
        return caution == nullptr ? id : caution->title;
    }
    const facts::Condition* condition = book.condition(id);
    return condition == nullptr ? id : condition->name;
}

QString idOfName(const FactField& field, const QString& name, const facts::FactBook& book)
{
    const auto same = [&](const QString& other) { return other.compare(name, Qt::CaseInsensitive) == 0; };
    if (field.path == u"cautions"_s) {
        const auto found = std::ranges::find_if(book.cautions, [&](const auto& one) { return same(one.title); });
        return found == book.cautions.end() ? name : found->id;
    }
    const auto found = std::ranges::find_if(book.conditions, [&](const auto& one) { return same(one.name); });
    return found == book.conditions.end() ? name : found->id;
}

QStringList linesOf(const QString& text)
{
    QStringList lines;
    for (const QString& line : text.split(u'\n')) {
        if (!line.trimmed().isEmpty()) {
            lines << line.trimmed();
        }
    }
    return lines;
}

QString valueText(const QJsonValue& value)
{
    return value.isDouble() ? numberText(value.toDouble(), kFigures) : value.toString();
}

/// A number where it is one, else the text itself.
QJsonValue numberOr(const QString& text)
{
    const auto number = numberFrom(text);
    return number ? QJsonValue(*number) : QJsonValue(text.trimmed());
}

/// The numbers of "20 26", "20–26", "6 to 7,5".
QJsonArray numbersIn(const QString& text)
{
    static const QRegularExpression between(u"\\s*[–;/]\\s*|\\s+-\\s+|(?<=\\d)-(?=\\d)|\\s+(?:\\p{L}+\\s+)?"_s);
    QJsonArray numbers;
    for (const QString& part : text.trimmed().split(between, Qt::SkipEmptyParts)) {
        numbers.append(numberOr(part));
    }
    return numbers;
}

QJsonValue pointsValue(const QJsonObject& object, const QStringList& lines)
{
    const QString from = object[kPoints].toArray().at(0).toObject()[u"source"_s].toString();
    QJsonArray points;
    for (const QString& line : lines) {
        points.append(QJsonObject{{u"text"_s, line}, {u"source"_s, from}});
    }
    return points;
}

} // namespace

std::vector<FactField> factFields(FactKind kind, const QJsonObject& object, bool hasBuiltIn)
{
    switch (kind) {
    case FactKind::Condition:
        return conditionFields();
    case FactKind::Species:
        return speciesFields(object);
    case FactKind::Caution:
        return cautionFields(hasBuiltIn);
    case FactKind::Gate:
        return gateFields();
    case FactKind::Limit:
        break;
    }
    return limitFields(object);
}

QString fieldText(const QJsonObject& object, const FactField& field, const facts::FactBook& book)
{
    const QJsonArray points = object[kPoints].toArray();
    if (field.path == kPointsSource) {
        return points.at(0).toObject()[u"source"_s].toString();
    }
    QStringList lines;
    const QJsonValue value = valueAt(object, field.path);
    switch (field.shape) {
    case Shape::Lines:
    case Shape::Names:
        for (const QJsonValue& one : value.toArray()) {
            lines << (field.path == kPoints         ? one.toObject()[u"text"_s].toString()
                      : field.shape == Shape::Names ? nameOfId(field, one.toString(), book)
                                                    : one.toString());
        }
        return lines.join(u'\n');
    case Shape::Span:
    case Shape::Days:
        for (const QJsonValue& one : value.toArray()) {
            lines << valueText(one);
        }
        return lines.join(u" – "_s);
    case Shape::Limit:
        return value.toString() == u"first-step"_s ? words("first step") : valueText(value);
    case Shape::Choice:
        return value.isDouble() ? QString::number(value.toInt()) : value.toString();
    default:
        return valueText(value);
    }
}

void setFieldText(QJsonObject& object, const FactField& field, const QString& text, const facts::FactBook& book)
{
    const QStringList lines = linesOf(text);
    const QJsonValue none(QJsonValue::Undefined);
    if (field.path == kPoints) {
        object[kPoints] = pointsValue(object, lines);
        return;
    }
    if (field.path == kPointsSource) {
        QJsonArray points = object[kPoints].toArray();
        for (QJsonValueRef point : points) {
            QJsonObject changed = point.toObject();
            changed[u"source"_s] = text.trimmed();
            point = changed;
        }
        object[kPoints] = points;
        return;
    }
    // A list that is there stays one when it is emptied.
    const QJsonValue emptied = valueAt(object, field.path).isArray() ? QJsonValue(QJsonArray()) : none;
    QStringList ids;
    switch (field.shape) {
    case Shape::Names:
        for (const QString& line : lines) {
            ids << idOfName(field, line, book);
        }
        put(object, field.path, ids.isEmpty() ? emptied : QJsonValue(QJsonArray::fromStringList(ids)));
        break;
    case Shape::Lines:
        put(object, field.path, lines.isEmpty() ? emptied : QJsonValue(QJsonArray::fromStringList(lines)));
        break;
    case Shape::Span:
    case Shape::Days:
        put(object, field.path, numbersIn(text));
        break;
    case Shape::Limit: {
        const bool first = text.trimmed().compare(words("first step"), Qt::CaseInsensitive) == 0;
        put(object, field.path, first ? QJsonValue(u"first-step"_s) : numberOr(text));
        break;
    }
    case Shape::Choice: {
        bool number = false;
        const int whole = text.toInt(&number);
        put(object, field.path, number ? QJsonValue(whole) : QJsonValue(text));
        break;
    }
    case Shape::Number:
        put(object, field.path, text.trimmed().isEmpty() ? none : numberOr(text));
        break;
    case Shape::Text:
    case Shape::Paragraph:
        put(object, field.path, text.trimmed().isEmpty() ? none : QJsonValue(text.trimmed()));
        break;
    }
}

QJsonObject newFact(FactKind kind)
{
    if (kind == FactKind::Condition) {
        return {{u"kind"_s, u"algae"_s}, {u"age"_s, QJsonArray{0}}, {u"prior"_s, 2}, {u"urgency"_s, u"watch"_s}};
    }
    if (kind == FactKind::Species) {
        return {{u"kind"_s, u"fish"_s}, {u"gate"_s, u"G3"_s}, {u"sensitivity"_s, 2}};
    }
    return {};
}

QString factName(FactKind kind, const QJsonObject& object)
{
    if (kind == FactKind::Limit) {
        const care::LimitFact* fact = care::limitFact(object[u"id"_s].toString());
        return fact == nullptr ? QString() : QCoreApplication::translate("Limits", fact->name.toUtf8().constData());
    }
    const QString field = kind == FactKind::Species     ? u"scientific"_s
                          : kind == FactKind::Condition ? u"name"_s
                                                        : u"title"_s;
    return object[field].toString();
}

} // namespace littoral::ui
