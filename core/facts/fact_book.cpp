// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/fact_book.h"

#include "core/facts/fact_reader.h"

#include <QFile>
#include <algorithm>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

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

const Term* FactBook::term(const QString& id) const
{
    return find(terms, &Term::id, id);
}

Result<FactBook> parseFacts(const FactSources& sources)
{
    FactBook book;
    auto keys = parseKeys(sources.evidence);
    auto conditions = parseConditions(sources.conditions);
    auto species = parseSpecies(sources.species);
    auto cautions = parseCautions(sources.cautions, book.aboveAll);
    auto tasks = parseTasks(sources.tasks);
    auto terms = parseTerms(sources.terms);
    for (const Error* error : {keys ? nullptr : &keys.error(), conditions ? nullptr : &conditions.error(),
                               species ? nullptr : &species.error(), cautions ? nullptr : &cautions.error(),
                               tasks ? nullptr : &tasks.error(), terms ? nullptr : &terms.error()}) {
        if (error != nullptr) {
            return *error;
        }
    }
    book.keys = std::move(keys).value();
    book.conditions = std::move(conditions).value();
    book.species = std::move(species).value();
    book.cautions = std::move(cautions).value();
    book.tasks = std::move(tasks).value();
    book.terms = std::move(terms).value();
    if (const auto proved = proveBook(book); !proved) {
        return proved.error();
    }
    return book;
}

FactSources builtInSources()
{
    return {resource(u"evidence.json"_s), resource(u"conditions.json"_s), resource(u"species.json"_s),
            resource(u"cautions.json"_s), resource(u"tasks.json"_s),      resource(u"terms.json"_s)};
}

const FactBook& builtInFacts()
{
    static const FactBook book = [] {
        auto parsed = parseFacts(builtInSources());
        return parsed ? std::move(parsed).value() : FactBook{};
    }();
    return book;
}

} // namespace littoral::facts
