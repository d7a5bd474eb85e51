// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/gate_extras.h"
#include "core/care/own_gates.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

const QString kPrefix = u"fact.gate."_s;
constexpr double kMostNitrogen = 1.0; // above it no gate would be one
constexpr int kMostDays = 400;

QString words(const char* text)
{
    return QCoreApplication::translate("Gates", text);
}

Error refused(const QString& place, const QString& field, const QString& what, const QString& mend)
{
    return {Fault::BadInput, what.toStdString(), words("%1, field \"%2\"").arg(place, field).toStdString(),
            mend.toStdString()};
}

const std::map<QString, record::StartMethod>& starts()
{
    static const std::map<QString, record::StartMethod> all{{u"new-media"_s, record::StartMethod::NewMedia},
                                                            {u"mature-media"_s, record::StartMethod::MatureMedia},
                                                            {u"starter"_s, record::StartMethod::Starter},
                                                            {u"dry-start"_s, record::StartMethod::DryStart},
                                                            {u"dark-start"_s, record::StartMethod::DarkStart}};
    return all;
}

/// Reads a gate field by field and remembers the first thing that is wrong with it.
class GateReader
{
public:
    GateReader(QString place, const QJsonObject& object)
        : m_place(std::move(place))
        , m_object(object)
    {
    }

    [[nodiscard]] const std::optional<Error>& error() const { return m_error; }

    void complain(const QString& field, const QString& what, const QString& mend)
    {
        if (!m_error) {
            m_error = refused(m_place, field, what, mend);
        }
    }

    QString text(const QString& field)
    {
        const QString found = m_object[field].toString().trimmed();
        if (found.isEmpty()) {
            complain(field, words("A text is missing here."), words("Write it in quotation marks."));
        }
        return found;
    }

    /// A positive number of mg N/L, or "first-step".
    GateLimit limit(const QString& field)
    {
        const QJsonValue value = m_object[field];
        if (value.toString() == u"first-step"_s) {
            return {};
        }
        return {number(field, 0.001, kMostNitrogen)};
    }

    double number(const QString& field, double low, double high)
    {
        const QJsonValue value = m_object[field];
        if (!value.isDouble() || value.toDouble() < low || value.toDouble() > high) {
            complain(field, words("A number from %1 to %2 is missing here.").arg(low).arg(high),
                     words("Write it without quotation marks, with a decimal point."));
        }
        return value.toDouble();
    }

    std::optional<double> optional(const QString& field, double low, double high)
    {
        return m_object.contains(field) ? std::optional(number(field, low, high)) : std::nullopt;
    }

    std::map<record::StartMethod, int> ages()
    {
        const QJsonObject ages = m_object[u"min-age"_s].toObject();
        std::map<record::StartMethod, int> found;
        for (const auto& [code, start] : starts()) {
            found[start] = ages[code].toInt(-1);
            if (found[start] < 0 || found[start] > kMostDays) {
                complain(u"min-age"_s, words("The least age is missing for \"%1\".").arg(code),
                         words("Write days as a whole number from 0 to %1.").arg(kMostDays));
            }
        }
        return found;
    }

    QStringList also()
    {
        QStringList found;
        for (const QJsonValue& value : m_object[u"also"_s].toArray()) {
            if (!GateExtras::knows(value.toString())) {
                complain(u"also"_s, words("There is no condition \"%1\".").arg(value.toString()),
                         words("Take one of: %1.").arg(GateExtras::keys().join(u", "_s)));
            }
            found << value.toString();
        }
        return found;
    }

    void only(const QStringList& known)
    {
        for (const QString& field : m_object.keys()) {
            if (!known.contains(field)) {
                complain(field, words("There is no such field."), words("Known are: %1.").arg(known.join(u", "_s)));
            }
        }
    }

private:
    QString m_place;
    const QJsonObject& m_object;
    std::optional<Error> m_error;
};

Result<GateDefinition> gateOf(const QString& place, const QString& key, const QJsonObject& object)
{
    GateReader reader(place, object);
    reader.only({u"key"_s, u"id"_s, u"title"_s, u"who"_s, u"min-age"_s, u"tan"_s, u"nh3"_s, u"no2"_s, u"readings"_s,
                 u"apart-hours"_s, u"within-days"_s, u"span-days"_s, u"also"_s, u"source"_s});
    GateDefinition gate;
    gate.key = key;
    gate.title = reader.text(u"title"_s);
    gate.who = reader.text(u"who"_s);
    gate.source = reader.text(u"source"_s);
    gate.minAge = reader.ages();
    gate.tan = reader.limit(u"tan"_s);
    gate.no2 = reader.limit(u"no2"_s);
    gate.nh3_mgN_per_L = reader.number(u"nh3"_s, 0.0005, 0.05);
    const double readings = reader.number(u"readings"_s, 1.0, 20.0);
    gate.readings = static_cast<int>(readings);
    gate.apartHours = reader.optional(u"apart-hours"_s, 1.0, 336.0).value_or(24.0);
    gate.withinDays = reader.optional(u"within-days"_s, 1.0, 120.0);
    gate.spanDays = reader.optional(u"span-days"_s, 0.5, 120.0);
    gate.also = reader.also();
    if (readings != gate.readings) {
        reader.complain(u"readings"_s, words("%1 is not a whole number.").arg(readings),
                        words("Leave out the decimals."));
    }
    if (reader.error()) {
        return *reader.error();
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
        const QString key = value.toObject()[u"key"_s].toString();
        if (key.isEmpty()) {
            return refused(words("gates"), u"key"_s, words("A gate has no key."), words("Write one, such as \"G1\"."));
        }
        auto gate = gateOf(words("gate \"%1\"").arg(key), key, value.toObject());
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

QString gateSetting(const QString& key)
{
    return kPrefix + key;
}

Result<GateDefinition> readGate(const QString& place, const QString& key, const QJsonObject& object)
{
    const auto& known = builtInGates().gates;
    if (object[u"id"_s].toString() != key || std::ranges::find(known, key, &GateDefinition::key) == known.end()) {
        return refused(place, u"id"_s, words("There is no gate \"%1\".").arg(key), words("Take one of G1 to G4."));
    }
    return gateOf(place, key, object);
}

QJsonObject gateObject(const GateDefinition& gate)
{
    const auto limit = [](const GateLimit& of) {
        return of.mgN_per_L ? QJsonValue(*of.mgN_per_L) : QJsonValue(u"first-step"_s);
    };
    QJsonObject ages;
    for (const auto& [code, start] : starts()) {
        ages[code] = gate.minAge.at(start);
    }
    QJsonObject object{{u"id"_s, gate.key},
                       {u"title"_s, gate.title},
                       {u"who"_s, gate.who},
                       {u"min-age"_s, ages},
                       {u"tan"_s, limit(gate.tan)},
                       {u"nh3"_s, gate.nh3_mgN_per_L},
                       {u"no2"_s, limit(gate.no2)},
                       {u"readings"_s, gate.readings},
                       {u"apart-hours"_s, gate.apartHours},
                       {u"also"_s, QJsonArray::fromStringList(gate.also)},
                       {u"source"_s, gate.source}};
    if (gate.withinDays) {
        object[u"within-days"_s] = *gate.withinDays;
    }
    if (gate.spanDays) {
        object[u"span-days"_s] = *gate.spanDays;
    }
    return object;
}

GateSet gateSet(const record::Row& row)
{
    GateSet set{builtInGates(), {}, {}};
    for (auto it = row.settings.lowerBound(kPrefix); it != row.settings.end() && it.key().startsWith(kPrefix); ++it) {
        const QString key = it.key().mid(kPrefix.size());
        auto gate = readGate(it.key(), key, QJsonDocument::fromJson(it.value().toUtf8()).object());
        if (!gate) {
            set.problems.push_back(gate.error());
            continue;
        }
        *std::ranges::find(set.book.gates, key, &GateDefinition::key) = std::move(gate).value();
        set.own << key;
    }
    return set;
}

GateBook gatesOf(const record::Row& row)
{
    return gateSet(row).book;
}

} // namespace littoral::care
