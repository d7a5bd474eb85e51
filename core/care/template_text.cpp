// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/template_text.h"

#include "core/care/work_template.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Templates", text);
}

constexpr std::array kFlags{"rock-hardens", "animals", "shrimp", "plants", "pure-water"};
constexpr std::array kLists{"start", "bed", "co2"};
constexpr std::array kNumbers{"net-below", "net-from"};

template <std::size_t N> bool isOneOf(const QString& key, const std::array<const char*, N>& keys)
{
    return std::ranges::any_of(keys, [&](const char* known) { return key == QLatin1String(known); });
}

QString plain(double value)
{
    return QString::number(value, 'g', 10);
}

std::optional<double> number(const QString& text)
{
    bool ok = false;
    const double value = QString(text).replace(u',', u'.').trimmed().toDouble(&ok);
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

Error wrong(const QString& where, const QString& what, const QString& mend)
{
    return {Fault::BadInput, what.toStdString(), where.toStdString(), mend.toStdString()};
}

QStringList pieces(const QString& text)
{
    static const QRegularExpression gaps(u"[\\s,;]+"_s);
    return text.split(gaps, Qt::SkipEmptyParts);
}

/// One term of a condition into the object; false when it is none.
bool addTerm(QJsonObject& condition, const QString& term)
{
    static const QRegularExpression below(u"^([a-z0-9]+)\\s*<\\s*([0-9.]+)$"_s);
    if (const auto match = below.match(term); match.hasMatch()) {
        QJsonObject limits = condition[u"reading-below"_s].toObject();
        limits.insert(match.captured(1), match.captured(2).toDouble());
        condition.insert(u"reading-below"_s, limits);
        return number(match.captured(2)).has_value();
    }
    const QString first = term.section(u' ', 0, 0);
    const QString rest = term.section(u' ', 1).trimmed();
    if (isOneOf(first, kFlags) && rest.isEmpty()) {
        condition.insert(first, true);
    } else if (first == u"no"_s && isOneOf(rest, kFlags)) {
        condition.insert(rest, false);
    } else if (isOneOf(first, kLists) && !rest.isEmpty()) {
        condition.insert(first, QJsonArray::fromStringList(rest.split(u'|', Qt::SkipEmptyParts)));
    } else if (const auto value = number(rest); isOneOf(first, kNumbers) && value) {
        condition.insert(first, *value);
    } else if (first == u"recorded"_s && !rest.isEmpty()) {
        condition.insert(first, rest);
    } else {
        return false;
    }
    return true;
}

/// Builds the JSON of a form, remembering the first thing that cannot be read.
class Builder final
{
public:
    std::optional<Error> problem;

    QJsonObject build(const TemplateText& text)
    {
        QJsonObject object{{u"key"_s, text.key.trimmed()}, {u"title"_s, text.title.trimmed()}, {u"kind"_s, text.kind}};
        if (text.wholeRow) {
            object.insert(u"scope"_s, u"row"_s);
        }
        putCondition(object, u"applies"_s, text.applies, words("Applies when"));
        putRounds(object, text);
        putClosing(object, text);
        putNumber(object, u"minutes"_s, text.minutes, words("Minutes"));
        putNumber(object, u"grace"_s, text.grace, words("Grace"));
        putNumber(object, u"priority"_s, text.priority, words("Priority"));
        putNumber(object, u"lapse"_s, text.lapse, words("Lapse"));
        if (text.rolls) {
            object.insert(u"rolls"_s, true);
        }
        object.insert(u"consequence"_s, text.consequence.trimmed());
        if (!text.caution.trimmed().isEmpty()) {
            object.insert(u"caution"_s, text.caution.trimmed());
        }
        if (!text.helper.trimmed().isEmpty()) {
            object.insert(u"helper"_s, text.helper.trimmed());
        }
        object.insert(u"source"_s, text.source.trimmed());
        return object;
    }

private:
    void complain(const Error& error)
    {
        if (!problem) {
            problem = error;
        }
    }

    void putNumber(QJsonObject& object, const QString& key, const QString& typed, const QString& where)
    {
        if (typed.trimmed().isEmpty()) {
            return;
        }
        const auto value = number(typed);
        if (!value) {
            complain(wrong(where, words("\"%1\" is not a number.").arg(typed.trimmed()),
                           words("Type a number, or leave it empty.")));
            return;
        }
        object.insert(key, *value);
    }

    void putCondition(QJsonObject& object, const QString& key, const QString& text, const QString& where)
    {
        const auto condition = conditionFrom(text);
        if (!condition) {
            Error error = condition.error();
            error.where = where.toStdString();
            complain(error);
        } else if (!condition->isEmpty()) {
            object.insert(key, *condition);
        }
    }

    QJsonObject round(const RoundText& text, const QString& where)
    {
        QJsonObject object;
        putNumber(object, u"every"_s, text.every, where);
        putNumber(object, u"from"_s, text.from, where);
        putNumber(object, u"to"_s, text.to, where);
        putNumber(object, u"once"_s, text.once, where);
        putNumber(object, u"leaves"_s, text.leaves, where);
        putNumber(object, u"returns"_s, text.returns, where);
        if (!text.ifRaised.trimmed().isEmpty()) {
            object.insert(u"if-raised"_s, true);
        }
        if (const QStringList events = pieces(text.after); !events.isEmpty()) {
            object.insert(u"after"_s, QJsonArray::fromStringList(events));
        }
        QJsonArray days;
        for (const QString& day : pieces(text.days)) {
            QJsonObject one;
            putNumber(one, u"day"_s, day, where);
            days.append(one[u"day"_s]);
        }
        if (!days.isEmpty()) {
            object.insert(u"days"_s, days);
        }
        putShares(object, text, where);
        putCondition(object, u"when"_s, text.when, where);
        return object;
    }

    /// Per cent in the form, shares in the definition.
    void putShares(QJsonObject& object, const RoundText& text, const QString& where)
    {
        const auto share = [&](const QString& typed) {
            QJsonObject one;
            putNumber(one, u"x"_s, typed, where);
            return one[u"x"_s].toDouble() / 100.0;
        };
        if (!text.share.trimmed().isEmpty()) {
            object.insert(u"fraction"_s, share(text.share));
        }
        static const QRegularExpression ends(u"\\s*[-–]\\s*"_s);
        if (!text.range.trimmed().isEmpty()) {
            const QStringList parts = text.range.trimmed().split(ends);
            object.insert(u"range"_s, QJsonArray{share(parts.value(0)), share(parts.value(1))});
        }
    }

    void putRounds(QJsonObject& object, const TemplateText& text)
    {
        int place = 0;
        std::vector<std::pair<QString, QJsonObject>> rounds;
        for (const RoundText& it : text.rounds) {
            const QString where = words("Round %1").arg(++place);
            rounds.emplace_back(it.variant.trimmed(), round(it, where));
        }
        const auto of = [&](const QString& variant) {
            QJsonArray list;
            for (const auto& [key, made] : rounds) {
                if (key == variant) {
                    list.append(made);
                }
            }
            return list;
        };
        if (text.variants.empty()) {
            QJsonArray list;
            for (const auto& [key, made] : rounds) {
                list.append(made);
            }
            object.insert(u"rounds"_s, list);
            return;
        }
        QJsonArray variants;
        for (const VariantText& variant : text.variants) {
            QJsonObject made{{u"key"_s, variant.key.trimmed()}, {u"rounds"_s, of(variant.key.trimmed())}};
            putCondition(made, u"when"_s, variant.when, words("Case \"%1\"").arg(variant.key));
            variants.append(made);
        }
        for (const auto& [key, made] : rounds) {
            if (std::ranges::none_of(text.variants, [&](const VariantText& v) { return v.key.trimmed() == key; })) {
                complain(wrong(words("Rounds"), words("There is no case \"%1\".").arg(key),
                               words("Give each round the name of one of the cases.")));
            }
        }
        object.insert(u"variants"_s, variants);
    }

    static void putClosing(QJsonObject& object, const TemplateText& text)
    {
        QJsonObject closes;
        if (!text.closesEntry.isEmpty()) {
            closes.insert(u"entry"_s, text.closesEntry);
        }
        if (!text.closesSubject.trimmed().isEmpty()) {
            closes.insert(u"subject"_s, text.closesSubject.trimmed());
        }
        if (const QStringList readings = pieces(text.closesReadings); !readings.isEmpty()) {
            closes.insert(u"readings"_s, QJsonArray::fromStringList(readings));
        }
        if (!closes.isEmpty()) {
            object.insert(u"closes"_s, closes);
        }
    }
};

QString joined(const QJsonArray& list, const QString& gap)
{
    QStringList parts;
    for (const QJsonValue& value : list) {
        parts << (value.isDouble() ? plain(value.toDouble()) : value.toString());
    }
    return parts.join(gap);
}

QString numberOf(const QJsonObject& object, const QString& key)
{
    return object[key].isDouble() ? plain(object[key].toDouble()) : QString();
}

RoundText roundText(const QJsonObject& object, const QString& variant)
{
    RoundText text;
    text.variant = variant;
    text.every = numberOf(object, u"every"_s);
    text.from = numberOf(object, u"from"_s);
    text.to = numberOf(object, u"to"_s);
    text.once = numberOf(object, u"once"_s);
    text.leaves = numberOf(object, u"leaves"_s);
    text.returns = numberOf(object, u"returns"_s);
    text.ifRaised = object[u"if-raised"_s].toBool() ? words("yes") : QString();
    text.after = joined(object[u"after"_s].toArray(), u" "_s);
    text.days = joined(object[u"days"_s].toArray(), u" "_s);
    if (object[u"fraction"_s].isDouble()) {
        text.share = plain(object[u"fraction"_s].toDouble() * 100.0);
    }
    if (const QJsonArray range = object[u"range"_s].toArray(); range.size() == 2) {
        text.range = u"%1-%2"_s.arg(plain(range[0].toDouble() * 100.0), plain(range[1].toDouble() * 100.0));
    }
    text.when = conditionText(object[u"when"_s].toObject());
    return text;
}

} // namespace

QString conditionText(const QJsonObject& condition)
{
    QStringList terms;
    for (auto it = condition.begin(); it != condition.end(); ++it) {
        if (it.value().isBool()) {
            terms << (it.value().toBool() ? it.key() : u"no "_s + it.key());
        } else if (it.value().isArray()) {
            terms << it.key() + u' ' + joined(it.value().toArray(), u"|"_s);
        } else if (it.value().isDouble()) {
            terms << it.key() + u' ' + plain(it.value().toDouble());
        } else if (it.value().isObject()) {
            const QJsonObject limits = it.value().toObject();
            for (auto limit = limits.begin(); limit != limits.end(); ++limit) {
                terms << u"%1 < %2"_s.arg(limit.key(), plain(limit.value().toDouble()));
            }
        } else {
            terms << it.key() + u' ' + it.value().toString();
        }
    }
    return terms.join(u", "_s);
}

Result<QJsonObject> conditionFrom(const QString& text)
{
    QJsonObject condition;
    for (const QString& term : text.split(u',', Qt::SkipEmptyParts)) {
        const QString plainTerm = term.simplified();
        if (!plainTerm.isEmpty() && !addTerm(condition, plainTerm)) {
            return wrong({}, words("\"%1\" is not a condition.").arg(plainTerm),
                         words("Write animals, no shrimp, plants, bed rich|mild, start starter, co2 pressurised, "
                               "net-below 60, recorded topup or tan < 0.5, with commas between them."));
        }
    }
    return condition;
}

QByteArray builtInDefinition(const QString& key)
{
    QFile file(u":/littoral/facts/task_templates.json"_s);
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    for (const QJsonValue& value : QJsonDocument::fromJson(file.readAll()).object()[u"templates"_s].toArray()) {
        if (value[u"key"_s].toString() == key) {
            return QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact);
        }
    }
    return {};
}

TemplateText templateText(const QByteArray& definition)
{
    const QJsonObject object = QJsonDocument::fromJson(definition).object();
    TemplateText text;
    text.key = object[u"key"_s].toString();
    text.title = object[u"title"_s].toString();
    text.kind = object[u"kind"_s].toString();
    text.wholeRow = object[u"scope"_s].toString() == u"row"_s;
    text.applies = conditionText(object[u"applies"_s].toObject());
    for (const QJsonValue& round : object[u"rounds"_s].toArray()) {
        text.rounds.push_back(roundText(round.toObject(), {}));
    }
    for (const QJsonValue& value : object[u"variants"_s].toArray()) {
        const QJsonObject variant = value.toObject();
        const QString key = variant[u"key"_s].toString();
        text.variants.push_back({key, conditionText(variant[u"when"_s].toObject())});
        for (const QJsonValue& round : variant[u"rounds"_s].toArray()) {
            text.rounds.push_back(roundText(round.toObject(), key));
        }
    }
    const QJsonObject closes = object[u"closes"_s].toObject();
    text.closesEntry = closes[u"entry"_s].toString();
    text.closesSubject = closes[u"subject"_s].toString();
    text.closesReadings = joined(closes[u"readings"_s].toArray(), u" "_s);
    text.minutes = numberOf(object, u"minutes"_s);
    text.grace = numberOf(object, u"grace"_s);
    text.priority = numberOf(object, u"priority"_s);
    text.lapse = numberOf(object, u"lapse"_s);
    text.rolls = object[u"rolls"_s].toBool();
    text.consequence = object[u"consequence"_s].toString();
    text.caution = object[u"caution"_s].toString();
    text.helper = object[u"helper"_s].toString();
    text.source = object[u"source"_s].toString();
    return text;
}

Result<QByteArray> definitionFrom(const TemplateText& text)
{
    Builder builder;
    const QByteArray definition = QJsonDocument(builder.build(text)).toJson(QJsonDocument::Compact);
    if (builder.problem) {
        return *builder.problem;
    }
    if (const auto proved = parseTemplate(definition); !proved) {
        return proved.error();
    }
    return definition;
}

} // namespace littoral::care
