// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"
#include "core/record/moment.h"

#include <QByteArray>
#include <QDate>
#include <QSqlQuery>
#include <QString>
#include <QVariant>
#include <array>
#include <optional>
#include <vector>

namespace littoral::store {

/// The values of one row, in the order of its table's columns: qlonglong, double, QString, QByteArray, or invalid for
/// NULL.
using Values = std::vector<QVariant>;

struct Column
{
    enum class Type { Integer, Real, Text, Blob };
    QString name;
    Type type = Type::Text;
};

/// Text codes of an enum, in the order of its enumerators, as they stand in the schema's CHECKs.
template <std::size_t N> using Codes = std::array<const char*, N>;

// A record's mapping is one function template, visit(io, record), that names every column once. Handed one of the three
// classes below it lists the columns, turns a record into values, or fills a record from a row, so the three cannot
// disagree.

/// Lists the columns.
class ColumnIo final
{
public:
    std::vector<Column> columns;

    template <typename Tag> void field(const char* name, const record::Id<Tag>&) { add(name, Column::Type::Integer); }
    void field(const char* name, const QString&) { add(name, Column::Type::Text); }
    void field(const char* name, double) { add(name, Column::Type::Real); }
    void field(const char* name, const std::optional<double>&) { add(name, Column::Type::Real); }
    void field(const char* name, int) { add(name, Column::Type::Integer); }
    void field(const char* name, const std::optional<int>&) { add(name, Column::Type::Integer); }
    void field(const char* name, bool) { add(name, Column::Type::Integer); }
    void field(const char* name, const QDate&) { add(name, Column::Type::Text); }
    void field(const char* name, const std::optional<QDate>&) { add(name, Column::Type::Text); }
    void field(const char* name, const record::Moment&) { addMoment(name); }
    void field(const char* name, const std::optional<record::Moment>&) { addMoment(name); }
    void numbers(const char* name, const std::vector<double>&) { add(name, Column::Type::Text); }
    void json(const char* name, const QByteArray&) { add(name, Column::Type::Text); }
    void blob(const char* name, const QByteArray&) { add(name, Column::Type::Blob); }
    template <typename E, std::size_t N> void code(const char* name, const E&, const Codes<N>&)
    {
        add(name, Column::Type::Text);
    }

private:
    void add(const char* name, Column::Type type) { columns.push_back({QString::fromLatin1(name), type}); }
    void addMoment(const char* name);
};

/// Turns a record into values: no text is NULL, no zero is negative, no number is NaN (those were refused before).
class ValuesIo final
{
public:
    Values values;

    template <typename Tag> void field(const char*, const record::Id<Tag>& id)
    {
        values.push_back(id ? QVariant(id.value) : QVariant());
    }
    void field(const char*, const QString& text);
    void field(const char*, double number) { values.emplace_back(number + 0.0); }
    void field(const char*, const std::optional<double>& number)
    {
        values.push_back(number ? QVariant(*number + 0.0) : QVariant());
    }
    void field(const char*, int number) { values.emplace_back(qlonglong{number}); }
    void field(const char*, const std::optional<int>& number)
    {
        values.push_back(number ? QVariant(qlonglong{*number}) : QVariant());
    }
    void field(const char*, bool flag) { values.emplace_back(qlonglong{flag ? 1 : 0}); }
    void field(const char*, const QDate& day);
    void field(const char* name, const std::optional<QDate>& day) { field(name, day.value_or(QDate())); }
    void field(const char*, const record::Moment& moment);
    void field(const char* name, const std::optional<record::Moment>& moment)
    {
        field(name, moment.value_or(record::Moment()));
    }
    void numbers(const char*, const std::vector<double>& numbers);
    void json(const char* name, const QByteArray& text) { field(name, QString::fromUtf8(text)); }
    void blob(const char*, const QByteArray& bytes) { values.emplace_back(bytes.isNull() ? QByteArray("") : bytes); }
    template <typename E, std::size_t N> void code(const char* name, const E& value, const Codes<N>& codes)
    {
        field(name, QString::fromLatin1(codes.at(static_cast<std::size_t>(value))));
    }
};

/// Fills a record from the row a query stands on, which selects the table's columns in order.
class RowIo final
{
public:
    explicit RowIo(const QSqlQuery& row)
        : m_row(row)
    {
    }

    template <typename Tag> void field(const char*, record::Id<Tag>& id) { id.value = take().toLongLong(); }
    void field(const char*, QString& text) { text = take().toString(); }
    void field(const char*, double& number) { number = take().toDouble(); }
    void field(const char*, std::optional<double>& number);
    void field(const char*, int& number) { number = take().toInt(); }
    void field(const char*, std::optional<int>& number);
    void field(const char*, bool& flag) { flag = take().toLongLong() != 0; }
    void field(const char*, QDate& day);
    void field(const char*, std::optional<QDate>& day);
    void field(const char*, record::Moment& moment);
    void field(const char*, std::optional<record::Moment>& moment);
    void numbers(const char*, std::vector<double>& numbers);
    void json(const char*, QByteArray& text) { text = take().toString().toUtf8(); }
    void blob(const char*, QByteArray& bytes) { bytes = take().toByteArray(); }
    /// A code outside the list cannot be stored (the schema's CHECK); the first enumerator stands in for it.
    template <typename E, std::size_t N> void code(const char*, E& value, const Codes<N>& codes)
    {
        const QString text = take().toString();
        value = E{};
        for (std::size_t i = 0; i < N; ++i) {
            if (text == QLatin1String(codes[i])) {
                value = static_cast<E>(i);
            }
        }
    }

private:
    QVariant take() { return m_row.value(m_column++); }

    const QSqlQuery& m_row;
    int m_column = 0;
};

} // namespace littoral::store
