// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/limits.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <algorithm>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

const QString kPrefix = u"fact.limit."_s;

QString words(const char* text)
{
    return QCoreApplication::translate("Limits", text);
}

Error refused(const QString& place, const QString& field, const QString& what, const QString& mend)
{
    return {Fault::BadInput, what.toStdString(), words("%1, field \"%2\"").arg(place, field).toStdString(),
            mend.toStdString()};
}

std::vector<LimitFact> makeFacts()
{
    const QString n = u"mg/L N"_s;
    const QString practice = QString::fromUtf8(QT_TRANSLATE_NOOP("Limits", "common practice"));
    const auto text = [](const char* source) { return QString::fromUtf8(source); };
    return {
        {u"free-ammonia-animals"_s, text(QT_TRANSLATE_NOOP("Limits", "Free ammonia with animals")),
         text(QT_TRANSLATE_NOOP("Limits", "From here on a water change is asked for at once.")), u"nh3"_s, n,
         &Limits::freeAmmoniaAnimals, 0.001, 0.05,
         text(QT_TRANSLATE_NOOP("Limits", "trade limit; UF/IFAS FA16 puts harm above 0.05 mg/L")), true},
        {u"nitrite-animals"_s, text(QT_TRANSLATE_NOOP("Limits", "Nitrite with animals")),
         text(QT_TRANSLATE_NOOP("Limits", "From here on a water change is asked for at once.")), u"no2"_s, n,
         &Limits::nitriteAnimals, 0.01, 0.15, text(QT_TRANSLATE_NOOP("Limits", "SRAC 462")), false},
        {u"nitrite-animals-soft"_s, text(QT_TRANSLATE_NOOP("Limits", "Nitrite with animals, water poor in chloride")),
         text(QT_TRANSLATE_NOOP("Limits", "Takes the place of the other where chloride is low.")), u"no2"_s, n,
         &Limits::nitriteAnimalsPoorChloride, 0.01, 0.15,
         text(QT_TRANSLATE_NOOP("Limits", "MSD/Merck Veterinary Manual, table of environmental diseases")), false},
        {u"chloride-poor"_s,
         text(QT_TRANSLATE_NOOP("Limits", "Water poor in chloride")),
         text(QT_TRANSLATE_NOOP("Limits", "Below it the stricter limit for nitrite counts.")),
         {},
         u"mg/L Cl"_s,
         &Limits::poorChloride_mg_per_L,
         2.0,
         50.0,
         text(QT_TRANSLATE_NOOP("Limits", "highest band of the British Columbia guideline, from memory")),
         false},
        {u"ammonia-plants"_s, text(QT_TRANSLATE_NOOP("Limits", "Total ammonia without animals")),
         text(QT_TRANSLATE_NOOP("Limits", "From here on a large water change is asked for, for the plants' sake.")),
         u"tan"_s, n, &Limits::ammoniaPlants, 0.5, 5.0,
         text(QT_TRANSLATE_NOOP("Limits", "judgement after Cao et al. 2007; stem plants bear more")), true},
        {u"free-ammonia-filter"_s, text(QT_TRANSLATE_NOOP("Limits", "Free ammonia that slows the filter")),
         text(QT_TRANSLATE_NOOP("Limits", "From here on a change is asked for while a tank cycles.")), u"nh3"_s, n,
         &Limits::freeAmmoniaOxidisers, 0.05, 1.0,
         text(QT_TRANSLATE_NOOP("Limits", "common practice; nitrite oxidisers are held back first")), true},
        {u"nitrite-watch"_s, text(QT_TRANSLATE_NOOP("Limits", "Nitrite while a tank cycles without animals")),
         text(QT_TRANSLATE_NOOP("Limits", "Above it the lane says so.")), u"no2"_s, n, &Limits::nitriteWatch, 0.1, 5.0,
         text(QT_TRANSLATE_NOOP("Limits", "judgement")), true},
        {u"nitrate-animals"_s, text(QT_TRANSLATE_NOOP("Limits", "Nitrate with animals")),
         text(QT_TRANSLATE_NOOP("Limits", "Above it a water change is asked for.")), u"no3"_s, n,
         &Limits::nitrateAnimals, 1.0, 40.0,
         text(QT_TRANSLATE_NOOP("Limits", "trade limit over source water; common practice")), true},
        {u"nitrate-any"_s, text(QT_TRANSLATE_NOOP("Limits", "Nitrate in any tank")),
         text(QT_TRANSLATE_NOOP("Limits", "Above it a water change is asked for, animals or not.")), u"no3"_s, n,
         &Limits::nitrateAny, 2.0, 60.0, practice, true},
        {u"nitrate-aim"_s, text(QT_TRANSLATE_NOOP("Limits", "Where a change for nitrate aims")),
         text(QT_TRANSLATE_NOOP("Limits", "Used where the tank has no target band of its own.")), u"no3"_s, n,
         &Limits::nitrateAim, 0.5, 30.0, practice, true},
        {u"hardness-over-target"_s,
         text(QT_TRANSLATE_NOOP("Limits", "Hardness above the target band")),
         text(QT_TRANSLATE_NOOP("Limits", "With hardening rock, more changes are asked for above it.")),
         {},
         u"°d"_s,
         &Limits::hardnessOverTarget_deg,
         0.5,
         10.0,
         practice,
         true},
        {u"ammonia-clear"_s, text(QT_TRANSLATE_NOOP("Limits", "Total ammonia that counts as clear")),
         text(QT_TRANSLATE_NOOP("Limits", "Tells the phases of a cycle; with animals the lane says so above it.")),
         u"tan"_s, n, &Limits::ammoniaClear, 0.01, 0.5, practice, true},
        {u"nitrite-clear"_s, text(QT_TRANSLATE_NOOP("Limits", "Nitrite that counts as clear")),
         text(QT_TRANSLATE_NOOP("Limits", "Tells the phases of a cycle.")), u"no2"_s, n, &Limits::nitriteClear, 0.01,
         0.3, practice, true},
        {u"co2-animals"_s, text(QT_TRANSLATE_NOOP("Limits", "Carbon dioxide with animals")),
         text(QT_TRANSLATE_NOOP("Limits", "Above it the lane says so, and no animal goes in.")), u"co2"_s, u"mg/L"_s,
         &Limits::co2Animals_mg_per_L, 5.0, 40.0,
         text(QT_TRANSLATE_NOOP("Limits", "common practice; fish medicine texts aim below 20, toxic above 40")), true},
        {u"warm"_s, text(QT_TRANSLATE_NOOP("Limits", "Warm")),
         text(QT_TRANSLATE_NOOP("Limits", "Above it gates stay shut and the lane says so.")), u"temp"_s, u"°C"_s,
         &Limits::warm_C, 24.0, 32.0, practice, true},
        {u"cool"_s, text(QT_TRANSLATE_NOOP("Limits", "Cool")),
         text(QT_TRANSLATE_NOOP("Limits", "Below it gates stay shut and the lane says so.")), u"temp"_s, u"°C"_s,
         &Limits::cool_C, 10.0, 23.0, practice, true},
        {u"low-alkalinity"_s, text(QT_TRANSLATE_NOOP("Limits", "Low carbonate hardness")),
         text(QT_TRANSLATE_NOOP("Limits", "Below it the lane says so: pH may fall and nitrification stall.")), u"kh"_s,
         u"meq/L"_s, &Limits::lowAlkalinity, 0.05, 3.0, practice, true},
    };
}

} // namespace

QString Limits::sourceOf(double Limits::*which, const QString& builtIn) const
{
    if (ownSources.empty()) {
        return builtIn;
    }
    const auto fact = std::ranges::find(limitFacts(), which, &LimitFact::value);
    const auto own = fact == limitFacts().end() ? ownSources.end() : ownSources.find(fact->key);
    return own == ownSources.end() ? builtIn : words("your own limit: %1").arg(own->second);
}

const std::vector<LimitFact>& limitFacts()
{
    static const std::vector<LimitFact> all = makeFacts();
    return all;
}

const LimitFact* limitFact(const QString& key)
{
    const auto found = std::ranges::find(limitFacts(), key, &LimitFact::key);
    return found == limitFacts().end() ? nullptr : &*found;
}

QString limitSetting(const QString& key)
{
    return kPrefix + key;
}

Result<double> readLimit(const QString& place, const QString& key, const QJsonObject& object)
{
    const LimitFact* fact = limitFact(key);
    if (fact == nullptr || object[u"id"_s].toString() != key) {
        return refused(place, u"id"_s, words("There is no limit \"%1\".").arg(key),
                       words("Take one of those the guide lists."));
    }
    if (!fact->practice) {
        return refused(place, u"value"_s, words("This limit is published and not the keeper's to set."),
                       words("Set a stricter gate or a target band instead."));
    }
    for (const QString& field : object.keys()) {
        if (field != u"id"_s && field != u"value"_s && field != u"source"_s) {
            return refused(place, field, words("There is no such field."), words("Known are: id, value, source."));
        }
    }
    const QJsonValue value = object[u"value"_s];
    if (!value.isDouble() || value.toDouble() < fact->low || value.toDouble() > fact->high) {
        return refused(
            place, u"value"_s,
            words("A number from %1 to %2 %3 is missing here.").arg(fact->low).arg(fact->high).arg(fact->unit),
            words("Write it without quotation marks, with a decimal point."));
    }
    if (object[u"source"_s].toString().trimmed().isEmpty()) {
        return refused(place, u"source"_s, words("It is not said where the figure comes from."),
                       words("Name a publication, or write that it is your own experience."));
    }
    return value.toDouble();
}

LimitSet limitSet(const record::Row& row)
{
    LimitSet set;
    for (auto it = row.settings.lowerBound(kPrefix); it != row.settings.end() && it.key().startsWith(kPrefix); ++it) {
        const QString key = it.key().mid(kPrefix.size());
        const QJsonObject object = QJsonDocument::fromJson(it.value().toUtf8()).object();
        const auto value = readLimit(it.key(), key, object);
        if (!value) {
            set.problems.push_back(value.error());
            continue;
        }
        set.limits.*(limitFact(key)->value) = *value;
        set.limits.ownSources[key] = object[u"source"_s].toString();
    }
    if (set.limits.cool_C >= set.limits.warm_C) {
        const Limits builtIn;
        set.limits.cool_C = builtIn.cool_C;
        set.limits.warm_C = builtIn.warm_C;
        set.limits.ownSources.erase(u"cool"_s);
        set.limits.ownSources.erase(u"warm"_s);
        set.problems.push_back(refused(limitSetting(u"cool"_s), u"value"_s,
                                       words("It lies above the limit for warm water."),
                                       words("Set one of the two so that they leave a range between them.")));
    }
    return set;
}

Limits limitsOf(const record::Row& row)
{
    return limitSet(row).limits;
}

} // namespace littoral::care
