// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_reader.h"

#include "core/exchange/instant.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

} // namespace

std::optional<double> parseNumber(const QString& text)
{
    QString plain = text.trimmed();
    if (plain.count(u'.') + plain.count(u',') > 1) {
        return std::nullopt;
    }
    plain.replace(u',', u'.');
    bool ok = false;
    QLocale locale = QLocale::c();
    locale.setNumberOptions(QLocale::RejectGroupSeparator);
    const double value = locale.toDouble(plain, &ok);
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

QString numberText(double value)
{
    return QLocale::c().toString(value, 'g', QLocale::FloatingPointShortest);
}

FieldReader::FieldReader(QHash<QString, QString> fields, Complain complain)
    : m_fields(std::move(fields))
    , m_complain(std::move(complain))
{
}

void FieldReader::complain(const QString& field, const QString& sentence)
{
    m_failed = true;
    m_complain(field, sentence);
}

QString FieldReader::text(const QString& field)
{
    m_asked.insert(field);
    return m_fields.value(field);
}

void FieldReader::need(const QString& field)
{
    m_asked.insert(field);
    complain(field, words("This is needed and is empty."));
}

QString FieldReader::requiredText(const QString& field)
{
    const QString value = text(field);
    if (value.isEmpty()) {
        need(field);
    }
    return value;
}

std::optional<double> FieldReader::number(const QString& field, double lowest, double highest)
{
    const QString typed = text(field);
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    const std::optional<double> value = parseNumber(typed);
    if (!value) {
        complain(field, words("\"%1\" is not a number.").arg(typed));
        return std::nullopt;
    }
    if (*value < lowest || *value > highest) {
        complain(field, words("%1 is outside %2 to %3.").arg(typed, numberText(lowest), numberText(highest)));
        return std::nullopt;
    }
    return value;
}

std::optional<double> FieldReader::share(const QString& field)
{
    const QString typed = text(field);
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    const bool percent = typed.endsWith(u'%');
    const std::optional<double> value = parseNumber(percent ? typed.chopped(1) : typed);
    if (!value) {
        complain(field, words("\"%1\" is not a number.").arg(typed));
        return std::nullopt;
    }
    const double share = percent ? *value / 100.0 : *value;
    if (share < 0.0 || share > 1.0) {
        complain(field, words("%1 is not a share from 0 to 1. Write 0.4, or 40 %.").arg(typed));
        return std::nullopt;
    }
    return share;
}

std::optional<int> FieldReader::whole(const QString& field, int lowest, int highest)
{
    const std::optional<double> value = number(field, lowest, highest);
    if (value && *value != std::floor(*value)) {
        complain(field, words("%1 is not a whole number.").arg(m_fields.value(field)));
        return std::nullopt;
    }
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

std::optional<bool> FieldReader::yesNo(const QString& field)
{
    const QString typed = text(field).toLower();
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    if (typed == u"yes"_s || typed == u"true"_s || typed == u"1"_s) {
        return true;
    }
    if (typed == u"no"_s || typed == u"false"_s || typed == u"0"_s) {
        return false;
    }
    complain(field, words("\"%1\" is neither yes nor no.").arg(m_fields.value(field)));
    return std::nullopt;
}

std::optional<record::Moment> FieldReader::instant(const QString& field)
{
    const QString typed = text(field);
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    const std::optional<record::Moment> moment = parseInstant(typed);
    if (!moment) {
        complain(field, words("\"%1\" is not a date. Write it as 2026-11-25 or 2026-11-25 07:40.").arg(typed));
    }
    return moment;
}

void FieldReader::refuseOthers(const QString& kindCode)
{
    QStringList strays;
    for (auto it = m_fields.cbegin(); it != m_fields.cend(); ++it) {
        if (!m_asked.contains(it.key())) {
            strays << it.key();
        }
    }
    strays.sort();
    for (const QString& field : std::as_const(strays)) {
        complain(field, words("This does not belong to an entry of the kind \"%1\".").arg(kindCode));
    }
}

} // namespace littoral::exchange
