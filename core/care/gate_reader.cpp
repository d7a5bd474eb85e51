// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/gate_extras.h"
#include "core/care/gates.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Gates", text);
}

Error refused(const QString& gate, const QString& what)
{
    return {Fault::BadInput, what.toStdString(), words("gate \"%1\"").arg(gate).toStdString(), {}};
}

/// A positive number of mg N/L, or "first-step".
Result<GateLimit> limitOf(const QJsonObject& object, const QString& gate, const QString& field)
{
    const QJsonValue value = object[field];
    if (value.isDouble() && value.toDouble() > 0.0) {
        return GateLimit{value.toDouble()};
    }
    if (value.toString() == u"first-step"_s) {
        return GateLimit{};
    }
    return refused(gate, words("\"%1\" must be a concentration or \"first-step\".").arg(field));
}

Result<std::map<record::StartMethod, int>> agesOf(const QJsonObject& object, const QString& gate)
{
    static const std::map<QString, record::StartMethod> starts{{u"new-media"_s, record::StartMethod::NewMedia},
                                                               {u"mature-media"_s, record::StartMethod::MatureMedia},
                                                               {u"starter"_s, record::StartMethod::Starter},
                                                               {u"dry-start"_s, record::StartMethod::DryStart},
                                                               {u"dark-start"_s, record::StartMethod::DarkStart}};
    const QJsonObject ages = object[u"min-age"_s].toObject();
    std::map<record::StartMethod, int> found;
    for (const auto& [code, start] : starts) {
        const int days = ages[code].toInt(-1);
        if (days < 0) {
            return refused(gate, words("\"min-age\" lacks days for \"%1\".").arg(code));
        }
        found[start] = days;
    }
    return found;
}

std::optional<double> optional(const QJsonObject& object, const QString& field)
{
    return object[field].isDouble() ? std::optional(object[field].toDouble()) : std::nullopt;
}

Result<GateDefinition> gateOf(const QJsonObject& object)
{
    GateDefinition gate;
    gate.key = object[u"key"_s].toString();
    gate.title = object[u"title"_s].toString();
    gate.who = object[u"who"_s].toString();
    gate.source = object[u"source"_s].toString();
    const auto ages = agesOf(object, gate.key);
    if (!ages) {
        return ages.error();
    }
    const auto tan = limitOf(object, gate.key, u"tan"_s);
    const auto no2 = limitOf(object, gate.key, u"no2"_s);
    if (!tan || !no2) {
        return tan ? no2.error() : tan.error();
    }
    gate.minAge = *ages;
    gate.tan = *tan;
    gate.no2 = *no2;
    gate.nh3_mgN_per_L = object[u"nh3"_s].toDouble();
    gate.readings = object[u"readings"_s].toInt();
    gate.apartHours = object[u"apart-hours"_s].toDouble(24.0);
    gate.withinDays = optional(object, u"within-days"_s);
    gate.spanDays = optional(object, u"span-days"_s);
    for (const QJsonValue& value : object[u"also"_s].toArray()) {
        if (!GateExtras::knows(value.toString())) {
            return refused(gate.key, words("There is no condition \"%1\".").arg(value.toString()));
        }
        gate.also << value.toString();
    }
    if (gate.key.isEmpty() || gate.title.isEmpty() || gate.source.isEmpty() || gate.nh3_mgN_per_L <= 0.0 ||
        gate.readings < 1) {
        return refused(gate.key,
                       words("It needs a key, a title, a source, a limit for free ammonia and a number of readings."));
    }
    return gate;
}

} // namespace

Result<GateBook> parseGates(const QByteArray& json)
{
    QJsonParseError problem;
    const QJsonDocument document = QJsonDocument::fromJson(json, &problem);
    if (problem.error != QJsonParseError::NoError) {
        return Error{Fault::BadInput,
                     words("It is not JSON: %1.").arg(problem.errorString()).toStdString(),
                     words("gates").toStdString(),
                     {}};
    }
    GateBook book;
    book.hoursAfterChange = document[u"hours-after-change"_s].toDouble(20.0);
    for (const QJsonValue& value : document[u"gates"_s].toArray()) {
        auto gate = gateOf(value.toObject());
        if (!gate) {
            return gate.error();
        }
        book.gates.push_back(std::move(gate).value());
    }
    return book;
}

const GateBook& builtInGates()
{
    static const GateBook book = [] {
        QFile file(u":/littoral/facts/gates.json"_s);
        if (!file.open(QIODevice::ReadOnly)) {
            return GateBook{};
        }
        auto parsed = parseGates(file.readAll());
        return parsed ? std::move(parsed).value() : GateBook{};
    }();
    return book;
}

} // namespace littoral::care
