// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/fact_reader.h"

#include <QCoreApplication>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FactReader", text);
}

} // namespace

FactReader::FactReader(QString file, QString record, QJsonObject object)
    : m_file(std::move(file))
    , m_record(std::move(record))
    , m_object(std::move(object))
{
}

QString FactReader::place(const QString& field) const
{
    return words("%1, \"%2\", field \"%3\"").arg(m_file, m_record, field);
}

void FactReader::complain(const QString& field, const QString& what, const QString& mend)
{
    if (!m_error) {
        m_error = Error{Fault::BadInput, what.toStdString(), place(field).toStdString(), mend.toStdString()};
    }
}

void FactReader::take(const Error& error)
{
    if (!m_error) {
        m_error = error;
    }
}

void FactReader::only(const QStringList& known)
{
    for (const QString& field : m_object.keys()) {
        if (!known.contains(field)) {
            complain(field, words("There is no such field."), words("Known are: %1.").arg(known.join(u", "_s)));
        }
    }
}

QString FactReader::text(const QString& field, bool needed)
{
    const QJsonValue value = m_object.value(field);
    if (value.isUndefined() && !needed) {
        return {};
    }
    if (!value.isString() || value.toString().trimmed().isEmpty()) {
        complain(field, words("A text is missing here."), words("Write it in quotation marks."));
    }
    return value.toString();
}

QStringList FactReader::texts(const QString& field, bool needed)
{
    const QJsonValue value = m_object.value(field);
    if (value.isUndefined() && !needed) {
        return {};
    }
    QStringList found;
    for (const QJsonValue& item : value.toArray()) {
        if (!item.isString() || item.toString().trimmed().isEmpty()) {
            complain(field, words("Something in this list is not a text."), words("Write each in quotation marks."));
        }
        found << item.toString();
    }
    if (!value.isArray() || (needed && found.isEmpty())) {
        complain(field, words("A list of texts is missing here."), words("Write it in square brackets."));
    }
    return found;
}

QString FactReader::oneOf(const QString& field, const QStringList& known, bool needed)
{
    const QString found = text(field, needed);
    if (!found.isEmpty() && !known.contains(found)) {
        complain(field, words("\"%1\" is not known here.").arg(found),
                 words("Take one of: %1.").arg(known.join(u", "_s)));
    }
    return found;
}

std::optional<double> FactReader::number(const QString& field, double low, double high, bool needed)
{
    const QJsonValue value = m_object.value(field);
    if (value.isUndefined() && !needed) {
        return std::nullopt;
    }
    if (!value.isDouble() || value.toDouble() < low || value.toDouble() > high) {
        complain(field, words("A number from %1 to %2 is missing here.").arg(low).arg(high),
                 words("Write it without quotation marks, with a decimal point."));
        return std::nullopt;
    }
    return value.toDouble();
}

int FactReader::whole(const QString& field, int low, int high)
{
    const double found = number(field, low, high).value_or(low);
    if (found != static_cast<int>(found)) {
        complain(field, words("%1 is not a whole number.").arg(found), words("Leave out the decimals."));
    }
    return static_cast<int>(found);
}

bool FactReader::flag(const QString& field)
{
    const QJsonValue value = m_object.value(field);
    if (!value.isUndefined() && !value.isBool()) {
        complain(field, words("This is neither true nor false."), words("Write true or false, or leave it out."));
    }
    return value.toBool();
}

Span FactReader::span(const QString& field, double low, double high)
{
    const QJsonArray pair = m_object.value(field).toArray();
    const Span found{pair.at(0).toDouble(low - 1.0), pair.at(1).toDouble(low - 1.0)};
    if (pair.size() != 2 || found.low < low || found.high > high || found.low > found.high) {
        complain(field, words("Two numbers from %1 to %2 are missing here.").arg(low).arg(high),
                 words("Write them as [low, high]."));
    }
    return found;
}

std::vector<Evidence> FactReader::evidence(const QString& field)
{
    std::vector<Evidence> found;
    for (const QString& item : texts(field)) {
        auto parsed = parseEvidence(item, place(field));
        if (!parsed) {
            take(parsed.error());
            continue;
        }
        found.push_back(std::move(parsed).value());
    }
    return found;
}

} // namespace littoral::facts
