// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/parameter.h"
#include "core/wording/numbers.h"
#include "ui/models/guide_shelves.h"

#include <QCoreApplication>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facts::Evidence;
using facts::KeyKind;
using facts::Relation;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Guide", text);
}

QString fact(const QString& text)
{
    return text.isEmpty() ? text : QCoreApplication::translate("Facts", text.toUtf8().constData());
}

QString unitLabel(const facts::EvidenceKey& key)
{
    if (key.kind != KeyKind::Reading) {
        return key.unit == u"d"_s ? words("days") : key.unit;
    }
    const record::Parameter* parameter = record::findParameter(key.parameter);
    const record::Unit* unit = parameter == nullptr ? nullptr : parameter->unit(key.unit);
    return unit == nullptr || unit->code == u"pH"_s ? QString() : unit->label;
}

/// As many decimals as the figure was written with, so that a limit of 0.03 stays one.
QString figure(double value)
{
    int decimals = 0;
    for (double scaled = value; decimals < 4 && std::abs(scaled - std::round(scaled)) > 1e-9; ++decimals) {
        scaled = value * std::pow(10.0, decimals + 1);
    }
    return wording::numberText(value, decimals);
}

QString withUnit(const QString& number, const QString& unit)
{
    return unit.isEmpty() ? number : words("%1 %2").arg(number, unit);
}

QString days(double count)
{
    return count < 1.0 ? words("%1 hours").arg(figure(count * 24.0)) : words("%1 days").arg(figure(count));
}

QString compared(const Evidence& item, const QString& name, const QString& unit)
{
    switch (item.relation) {
    case Relation::Below:
        return words("%1 below %2").arg(name, withUnit(figure(item.high), unit));
    case Relation::AtMost:
        return words("%1 at most %2").arg(name, withUnit(figure(item.high), unit));
    case Relation::Above:
        return words("%1 above %2").arg(name, withUnit(figure(item.low), unit));
    case Relation::AtLeast:
        return words("%1 at least %2").arg(name, withUnit(figure(item.low), unit));
    case Relation::Within:
        return words("%1 from %2 to %3").arg(name, figure(item.low), withUnit(figure(item.high), unit));
    case Relation::Is:
    case Relation::EventWithin:
    case Relation::NoEventFor:
    case Relation::SeenAtLeast:
        break;
    }
    return item.text;
}

} // namespace

QString evidenceText(const facts::FactBook& book, const Evidence& item)
{
    const facts::EvidenceKey* key = book.key(item.key);
    const facts::Condition* seen = book.condition(item.key);
    const QString name = key != nullptr && !key->name.isEmpty() ? fact(key->name)
                         : seen != nullptr                      ? fact(seen->name)
                                                                : item.key;
    switch (item.relation) {
    case Relation::Is:
        return key == nullptr ? item.text : words("%1 %2").arg(fact(key->question), fact(key->valueText(item.value)));
    case Relation::EventWithin:
        return words("%1 in the last %2").arg(name, days(item.high));
    case Relation::NoEventFor:
        return words("%1: none for %2").arg(name, days(item.high));
    case Relation::SeenAtLeast:
        return words("%1 seen, severity %2 or more").arg(name, figure(item.low));
    default:
        return compared(item, name, key == nullptr ? QString() : unitLabel(*key));
    }
}

QString weightText(int weight)
{
    return weight >= 3 ? words("strong") : weight == 2 ? words("moderate") : words("weak");
}

} // namespace littoral::ui
