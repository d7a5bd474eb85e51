// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/own_facts.h"

#include "core/care/limits.h"
#include "core/care/own_gates.h"
#include "core/facts/fact_reader.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <algorithm>
#include <array>
#include <set>
#include <string>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

const QString kPrefix = u"fact."_s;
const QString kTakenOut = u"none"_s;
const std::array kCodes{u"condition"_s, u"species"_s, u"caution"_s, u"gate"_s, u"limit"_s};

QString words(const char* text)
{
    return QCoreApplication::translate("FactReader", text);
}

Error refused(const QString& setting, const QString& what, const QString& mend)
{
    return {Fault::BadInput, what.toStdString(), setting.toStdString(), mend.toStdString()};
}

/// The keeper's record of one setting, its id taken from the setting's name.
Result<QJsonObject> parsed(const QString& setting, const QString& id, const QString& value)
{
    const QJsonDocument document = QJsonDocument::fromJson(value.toUtf8());
    if (!document.isObject() || document.object()[u"id"_s].toString() != id) {
        return refused(setting, words("It is not one JSON object with the id \"%1\".").arg(id),
                       words("Write it as in the program's file, or remove the setting."));
    }
    return document.object();
}

template <typename T> T* found(std::vector<T>& all, const QString& id)
{
    const auto place = std::ranges::find(all, id, &T::id);
    return place == all.end() ? nullptr : &*place;
}

template <typename T> void putOver(std::vector<T>& all, T record)
{
    record.own = true;
    if (T* known = found(all, record.id)) {
        *known = std::move(record);
    } else {
        all.push_back(std::move(record));
    }
}

/// The program's own record again, or none.
template <typename T> void takeBack(std::vector<T>& all, const std::vector<T>& builtIn, const QString& id)
{
    const auto own = std::ranges::find(all, id, &T::id);
    const auto original = std::ranges::find(builtIn, id, &T::id);
    if (own != all.end() && original != builtIn.end()) {
        *own = *original;
    } else if (own != all.end()) {
        all.erase(own);
    }
}

/// Puts the keeper's records over a book. Conditions may name each other, so all are read before any is proved.
class Overlay
{
public:
    explicit Overlay(FactSet& set)
        : m_set(set)
    {
    }

    void read(const QString& setting, const QString& value)
    {
        const QString code = setting.section(u'.', 1, 1);
        const QString id = setting.section(u'.', 2);
        const auto kind = factKindFromCode(code);
        if (!kind || *kind == FactKind::Gate || *kind == FactKind::Limit) {
            return; // core/care reads those
        }
        if (value.trimmed() == kTakenOut) {
            takeOut(*kind, setting, id);
            return;
        }
        const auto object = parsed(setting, id, value);
        if (!object) {
            m_set.problems.push_back(object.error());
        } else if (*kind == FactKind::Condition) {
            auto condition = readCondition(setting, *object);
            if (condition) {
                keepCautions(*condition);
            }
            put(std::move(condition), m_set.book.conditions);
        } else if (*kind == FactKind::Species) {
            put(readSpecies(setting, *object), m_set.book.species);
        } else {
            putCaution(setting, *object);
        }
    }

    /// Proves what was read; a record that does not fit is left out, and then whatever rests on it alone.
    void settle()
    {
        bool again = true;
        while (again) {
            again = false;
            for (const Condition& condition : std::vector(m_set.book.conditions)) {
                const QString setting = factSetting(FactKind::Condition, condition.id);
                if (!condition.own) {
                    continue;
                }
                if (const auto proved = proveCondition(m_set.book, condition, setting); !proved) {
                    m_set.problems.push_back(proved.error());
                    takeBack(m_set.book.conditions, builtInFacts().conditions, condition.id);
                    again = true;
                }
            }
        }
        for (const Species& species : std::vector(m_set.book.species)) {
            const auto proved = proveSpecies(species, factSetting(FactKind::Species, species.id));
            if (species.own && !proved) {
                m_set.problems.push_back(proved.error());
                takeBack(m_set.book.species, builtInFacts().species, species.id);
            }
        }
    }

private:
    void takeOut(FactKind kind, const QString& setting, const QString& id)
    {
        if (kind == FactKind::Condition) {
            std::erase_if(m_set.book.conditions, [&](const Condition& one) { return one.id == id; });
        } else if (kind == FactKind::Species) {
            std::erase_if(m_set.book.species, [&](const Species& one) { return one.id == id; });
        } else {
            m_set.problems.push_back(
                refused(setting, words("A caution is not taken out."), words("Remove the setting.")));
        }
    }

    /// A caution of the program's own stays with its condition, however the keeper writes it.
    static void keepCautions(Condition& condition)
    {
        if (const Condition* builtIn = builtInFacts().condition(condition.id)) {
            for (const QString& caution : builtIn->cautions) {
                if (!condition.cautions.contains(caution)) {
                    condition.cautions << caution;
                }
            }
        }
    }

    template <typename T> void put(Result<T> record, std::vector<T>& all)
    {
        if (record) {
            putOver(all, std::move(record).value());
        } else {
            m_set.problems.push_back(record.error());
        }
    }

    /// Points are added below the program's; a caution of the keeper's own stands by itself.
    void putCaution(const QString& setting, const QJsonObject& object)
    {
        Caution* known = found(m_set.book.cautions, object[u"id"_s].toString());
        auto own = readCaution(setting, object, known == nullptr);
        if (!own) {
            m_set.problems.push_back(own.error());
            return;
        }
        for (CautionPoint& point : own->points) {
            point.own = true;
        }
        if (known == nullptr) {
            putOver(m_set.book.cautions, std::move(own).value());
            return;
        }
        known->own = true;
        known->points.insert(known->points.end(), own->points.begin(), own->points.end());
    }

    FactSet& m_set;
};

QByteArray fileOf(FactKind kind)
{
    const FactSources sources = builtInSources();
    return kind == FactKind::Condition ? sources.conditions
           : kind == FactKind::Species ? sources.species
                                       : sources.cautions;
}

QString listOf(FactKind kind)
{
    return kind == FactKind::Condition ? u"conditions"_s : kind == FactKind::Species ? u"species"_s : u"cautions"_s;
}

std::optional<QJsonObject> limitObject(const QString& id)
{
    const care::LimitFact* fact = care::limitFact(id);
    if (fact == nullptr) {
        return std::nullopt;
    }
    return QJsonObject{{u"id"_s, id}, {u"value"_s, care::Limits{}.*(fact->value)}, {u"source"_s, fact->source}};
}

} // namespace

FactSet factsFor(const record::Row& row)
{
    FactSet set{builtInFacts(), {}};
    Overlay overlay(set);
    bool any = false;
    for (auto it = row.settings.lowerBound(kPrefix); it != row.settings.end() && it.key().startsWith(kPrefix); ++it) {
        overlay.read(it.key(), it.value());
        any = true;
    }
    if (any) {
        overlay.settle();
    }
    return set;
}

QString factKindCode(FactKind kind)
{
    return kCodes[static_cast<std::size_t>(kind)];
}

std::optional<FactKind> factKindFromCode(const QString& code)
{
    const auto place = std::ranges::find(kCodes, code);
    return place == kCodes.end() ? std::nullopt : std::optional(static_cast<FactKind>(place - kCodes.begin()));
}

QString factSetting(FactKind kind, const QString& id)
{
    return kPrefix + factKindCode(kind) + u'.' + id;
}

std::optional<QJsonObject> builtInObject(FactKind kind, const QString& id)
{
    if (kind == FactKind::Limit) {
        return limitObject(id);
    }
    if (kind == FactKind::Gate) {
        const auto& gates = care::builtInGates().gates;
        const auto gate = std::ranges::find(gates, id, &care::GateDefinition::key);
        return gate == gates.end() ? std::nullopt : std::optional(care::gateObject(*gate));
    }
    const QJsonArray all = QJsonDocument::fromJson(fileOf(kind)).object()[listOf(kind)].toArray();
    for (const QJsonValue& value : all) {
        if (value.toObject()[u"id"_s].toString() == id) {
            return value.toObject();
        }
    }
    return std::nullopt;
}

std::optional<QJsonObject> ownObject(const record::Row& row, FactKind kind, const QString& id)
{
    const QJsonDocument document = QJsonDocument::fromJson(row.settings.value(factSetting(kind, id)).toUtf8());
    return document.isObject() ? std::optional(document.object()) : std::nullopt;
}

bool isOwn(const record::Row& row, FactKind kind, const QString& id)
{
    return row.settings.contains(factSetting(kind, id));
}

Result<void> checkFact(const record::Row& row, FactKind kind, const QString& id, const QJsonObject& object)
{
    const auto problemsOf = [&](const record::Row& tried) {
        return kind == FactKind::Gate    ? care::gateSet(tried).problems
               : kind == FactKind::Limit ? care::limitSet(tried).problems
                                         : factsFor(tried).problems;
    };
    record::Row tried;
    tried.settings = row.settings;
    tried.settings.remove(factSetting(kind, id));
    std::set<std::string> before;
    for (const Error& problem : problemsOf(tried)) {
        before.insert(problem.sentence());
    }
    tried.settings.insert(factSetting(kind, id), settingText(object));
    for (const Error& problem : problemsOf(tried)) {
        // Records that were broken before are no reason to refuse this one.
        if (!before.contains(problem.sentence())) {
            return problem;
        }
    }
    return {};
}

QString settingText(const QJsonObject& object)
{
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

QString freshId(const record::Row& row, FactKind kind, const QString& name)
{
    QString stem;
    for (const QChar c : name.normalized(QString::NormalizationForm_KD).toLower()) {
        const bool plain = (c >= u'a' && c <= u'z') || (c >= u'0' && c <= u'9');
        if (plain) {
            stem += c;
        } else if (!stem.isEmpty() && !stem.endsWith(u'_') && c.category() != QChar::Mark_NonSpacing) {
            stem += u'_';
        }
    }
    while (stem.endsWith(u'_')) {
        stem.chop(1);
    }
    stem = u"own_"_s + (stem.isEmpty() ? factKindCode(kind) : stem.left(40));
    QString id = stem;
    for (int n = 2; isOwn(row, kind, id) || builtInObject(kind, id); ++n) {
        id = u"%1_%2"_s.arg(stem).arg(n);
    }
    return id;
}

} // namespace littoral::facts
