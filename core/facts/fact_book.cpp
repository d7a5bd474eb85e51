// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/fact_book.h"

#include "core/facts/fact_reader.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonDocument>
#include <algorithm>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FactReader", text);
}

QByteArray resource(const QString& name)
{
    QFile file(u":/littoral/facts/"_s + name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

template <typename T, typename Field> const T* find(const std::vector<T>& all, Field field, const QString& wanted)
{
    const auto found = std::ranges::find(all, wanted, field);
    return found == all.end() ? nullptr : &*found;
}

template <typename T> void putOver(std::vector<T>& all, T record)
{
    const auto known = std::ranges::find(all, record.id, &T::id);
    if (known == all.end()) {
        all.push_back(std::move(record));
    } else {
        *known = std::move(record);
    }
}

/// The keeper's record of one setting, its id taken from the setting's name.
Result<QJsonObject> ownObject(const QString& setting, const QString& id, const QString& value)
{
    QJsonParseError problem;
    const QJsonDocument parsed = QJsonDocument::fromJson(value.toUtf8(), &problem);
    if (!parsed.isObject() || parsed.object()[u"id"_s].toString() != id) {
        return Error{Fault::BadInput, words("It is not one JSON object with the id \"%1\".").arg(id).toStdString(),
                     setting.toStdString(),
                     words("Write it as in the program's file, or remove the setting.").toStdString()};
    }
    return parsed.object();
}

class Overlay
{
public:
    explicit Overlay(FactSet& set)
        : m_set(set)
    {
    }

    void apply(const QString& setting, const QString& value)
    {
        static const QString condition = u"fact.condition."_s;
        static const QString species = u"fact.species."_s;
        if (setting.startsWith(condition)) {
            put(setting, setting.mid(condition.size()), value, m_set.book.conditions, readCondition);
        } else if (setting.startsWith(species)) {
            put(setting, setting.mid(species.size()), value, m_set.book.species, readSpecies);
        }
    }

private:
    template <typename T, typename Read>
    void put(const QString& setting, const QString& id, const QString& value, std::vector<T>& all, Read read)
    {
        if (value.trimmed() == u"none"_s) {
            std::erase_if(all, [&](const T& record) { return record.id == id; });
            return;
        }
        const auto object = ownObject(setting, id, value);
        if (!object) {
            m_set.problems.push_back(object.error());
            return;
        }
        Result<T> record = read(setting, *object);
        if (!record) {
            m_set.problems.push_back(record.error());
            return;
        }
        if (const auto proved = prove(*record, setting); !proved) {
            m_set.problems.push_back(proved.error());
            return;
        }
        putOver(all, std::move(record).value());
    }

    Result<void> prove(const Condition& condition, const QString& setting) const
    {
        return proveCondition(m_set.book, condition, setting);
    }
    static Result<void> prove(const Species& species, const QString& setting) { return proveSpecies(species, setting); }

    FactSet& m_set;
};

} // namespace

const EvidenceKey* FactBook::key(const QString& wanted) const
{
    return find(keys, &EvidenceKey::key, wanted);
}

const Condition* FactBook::condition(const QString& id) const
{
    return find(conditions, &Condition::id, id);
}

const Species* FactBook::speciesById(const QString& id) const
{
    return find(species, &Species::id, id);
}

const Caution* FactBook::caution(const QString& id) const
{
    return find(cautions, &Caution::id, id);
}

Result<FactBook> parseFacts(const FactSources& sources)
{
    FactBook book;
    auto keys = parseKeys(sources.evidence);
    auto conditions = parseConditions(sources.conditions);
    auto species = parseSpecies(sources.species);
    auto cautions = parseCautions(sources.cautions, book.aboveAll);
    auto tasks = parseTasks(sources.tasks);
    for (const Error* error : {keys ? nullptr : &keys.error(), conditions ? nullptr : &conditions.error(),
                               species ? nullptr : &species.error(), cautions ? nullptr : &cautions.error(),
                               tasks ? nullptr : &tasks.error()}) {
        if (error != nullptr) {
            return *error;
        }
    }
    book.keys = std::move(keys).value();
    book.conditions = std::move(conditions).value();
    book.species = std::move(species).value();
    book.cautions = std::move(cautions).value();
    book.tasks = std::move(tasks).value();
    if (const auto proved = proveBook(book); !proved) {
        return proved.error();
    }
    return book;
}

FactSources builtInSources()
{
    return {resource(u"evidence.json"_s), resource(u"conditions.json"_s), resource(u"species.json"_s),
            resource(u"cautions.json"_s), resource(u"tasks.json"_s)};
}

const FactBook& builtInFacts()
{
    static const FactBook book = [] {
        auto parsed = parseFacts(builtInSources());
        return parsed ? std::move(parsed).value() : FactBook{};
    }();
    return book;
}

FactSet factsFor(const record::Row& row)
{
    FactSet set{builtInFacts(), {}};
    Overlay overlay(set);
    for (auto it = row.settings.begin(); it != row.settings.end(); ++it) {
        overlay.apply(it.key(), it.value());
    }
    return set;
}

} // namespace littoral::facts
