// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/row_io.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace littoral::store {

using namespace Qt::StringLiterals;

void ColumnIo::addMoment(const char* name)
{
    columns.push_back({QString::fromLatin1(name) + u"_utc"_s, Column::Type::Integer});
    columns.push_back({QString::fromLatin1(name) + u"_offset"_s, Column::Type::Integer});
}

void ValuesIo::field(const char*, const QString& text)
{
    if (text.isNull()) {
        values.emplace_back(QString(u""_s));
    } else if (!text.isValidUtf16()) {
        // A lone surrogate cannot be stored; as it would come back, so it is compared.
        values.emplace_back(QString::fromUtf8(text.toUtf8()));
    } else {
        values.emplace_back(text);
    }
}

void ValuesIo::field(const char*, const QDate& day)
{
    values.push_back(day.isValid() ? QVariant(day.toString(Qt::ISODate)) : QVariant());
}

void ValuesIo::field(const char*, const record::Moment& moment)
{
    values.push_back(moment.isValid() ? QVariant(moment.utcMs()) : QVariant());
    values.push_back(moment.isValid() ? QVariant(qlonglong{moment.offsetSeconds()}) : QVariant());
}

void ValuesIo::numbers(const char*, const std::vector<double>& numbers)
{
    QJsonArray array;
    for (const double number : numbers) {
        array.append(number);
    }
    values.emplace_back(QString::fromUtf8(QJsonDocument(array).toJson(QJsonDocument::Compact)));
}

void RowIo::field(const char*, std::optional<double>& number)
{
    const bool absent = m_row.isNull(m_column);
    const double value = take().toDouble();
    number = absent ? std::nullopt : std::optional(value);
}

void RowIo::field(const char*, std::optional<int>& number)
{
    const bool absent = m_row.isNull(m_column);
    const int value = take().toInt();
    number = absent ? std::nullopt : std::optional(value);
}

void RowIo::field(const char*, QDate& day)
{
    const bool absent = m_row.isNull(m_column);
    const QString text = take().toString();
    day = absent ? QDate() : QDate::fromString(text, Qt::ISODate);
}

void RowIo::field(const char* name, std::optional<QDate>& day)
{
    QDate read;
    field(name, read);
    day = read.isValid() ? std::optional(read) : std::nullopt;
}

void RowIo::field(const char*, record::Moment& moment)
{
    const bool absent = m_row.isNull(m_column);
    const qint64 utc = take().toLongLong();
    const int offset = take().toInt();
    moment = absent ? record::Moment() : record::Moment(utc, offset);
}

void RowIo::field(const char* name, std::optional<record::Moment>& moment)
{
    record::Moment read;
    field(name, read);
    moment = read.isValid() ? std::optional(read) : std::nullopt;
}

void RowIo::numbers(const char*, std::vector<double>& numbers)
{
    numbers.clear();
    for (const QJsonValue& value : QJsonDocument::fromJson(take().toString().toUtf8()).array()) {
        numbers.push_back(value.toDouble());
    }
}

} // namespace littoral::store
