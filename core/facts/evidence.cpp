// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/evidence.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <array>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FactReader", text);
}

Error refused(const QString& what, const QString& where)
{
    return {Fault::BadInput, what.toStdString(), where.toStdString(),
            words("Write it as \"po4<0.3 ::2\", \"age_d in 5..45 ::3\", \"colour=brown ::2\", \"ev:light_change<14d "
                  "::2\" or \"obs:alg_tuft>=2 ::1\".")
                .toStdString()};
}

/// "ev:wc<6h", "ev:filter_service>90d".
Result<Evidence> eventItem(Evidence item, const QString& where)
{
    static const QRegularExpression form(u"^ev:([a-z0-9_]+)([<>])(\\d+(?:\\.\\d+)?)([dh])$"_s);
    const auto match = form.match(item.text);
    if (!match.hasMatch()) {
        return refused(words("\"%1\" is not an event with a time.").arg(item.text), where);
    }
    item.key = match.captured(1);
    item.relation = match.captured(2) == u"<"_s ? Relation::EventWithin : Relation::NoEventFor;
    item.high = match.captured(3).toDouble() / (match.captured(4) == u"h"_s ? 24.0 : 1.0);
    return item;
}

Result<Evidence> sightItem(Evidence item, const QString& where)
{
    static const QRegularExpression form(u"^obs:([a-z0-9_]+)>=([0-4])$"_s);
    const auto match = form.match(item.text);
    if (!match.hasMatch()) {
        return refused(words("\"%1\" is not an observation with a severity of 0 to 4.").arg(item.text), where);
    }
    item.key = match.captured(1);
    item.relation = Relation::SeenAtLeast;
    item.low = match.captured(2).toDouble();
    return item;
}

Result<Evidence> rangeItem(Evidence item, const QString& where)
{
    static const QRegularExpression form(u"^([a-z0-9_]+) in (-?\\d+(?:\\.\\d+)?)\\.\\.(-?\\d+(?:\\.\\d+)?)$"_s);
    const auto match = form.match(item.text);
    if (!match.hasMatch() || match.captured(3).toDouble() < match.captured(2).toDouble()) {
        return refused(words("\"%1\" is not a range.").arg(item.text), where);
    }
    item.key = match.captured(1);
    item.relation = Relation::Within;
    item.low = match.captured(2).toDouble();
    item.high = match.captured(3).toDouble();
    return item;
}

Result<Evidence> comparison(Evidence item, const QString& where)
{
    static const QRegularExpression number(u"^([a-z0-9_]+)(<=|>=|<|>)(-?\\d+(?:\\.\\d+)?)$"_s);
    static const QRegularExpression tick(u"^([a-z0-9_]+)=([A-Za-z][A-Za-z_]*)$"_s);
    if (const auto match = tick.match(item.text); match.hasMatch()) {
        item.key = match.captured(1);
        item.relation = Relation::Is;
        item.value = match.captured(2);
        return item;
    }
    const auto match = number.match(item.text);
    if (!match.hasMatch()) {
        return refused(words("\"%1\" is not understood.").arg(item.text), where);
    }
    item.key = match.captured(1);
    const QString sign = match.captured(2);
    const double limit = match.captured(3).toDouble();
    item.relation = sign == u"<"_s    ? Relation::Below
                    : sign == u"<="_s ? Relation::AtMost
                    : sign == u">"_s  ? Relation::Above
                                      : Relation::AtLeast;
    (sign.startsWith(u'<') ? item.high : item.low) = limit;
    return item;
}

} // namespace

Result<Evidence> parseEvidence(const QString& text, const QString& where)
{
    static const QRegularExpression form(u"^\\s*(.+?)\\s*::\\s*([0-9]+)\\s*$"_s);
    const auto match = form.match(text);
    const int weight = match.captured(2).toInt();
    if (!match.hasMatch() || weight < 1 || weight > 3) {
        return refused(words("\"%1\" lacks a weight of 1, 2 or 3.").arg(text), where);
    }
    Evidence item;
    item.text = match.captured(1);
    item.weight = weight;
    if (item.text.startsWith(u"ev:"_s)) {
        return eventItem(std::move(item), where);
    }
    if (item.text.startsWith(u"obs:"_s)) {
        return sightItem(std::move(item), where);
    }
    return item.text.contains(u" in "_s) ? rangeItem(std::move(item), where) : comparison(std::move(item), where);
}

bool EvidenceKey::hasValue(const QString& code) const
{
    return std::ranges::any_of(values, [&](const auto& value) { return value.first == code; });
}

QString EvidenceKey::valueText(const QString& code) const
{
    const auto found = std::ranges::find_if(values, [&](const auto& value) { return value.first == code; });
    return found == values.end() ? code : found->second;
}

} // namespace littoral::facts
