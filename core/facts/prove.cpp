// SPDX-License-Identifier: GPL-3.0-or-later
// Proof that what one record names, another one is.
#include "core/care/events.h"
#include "core/care/gates.h"
#include "core/care/work_template.h"
#include "core/facts/fact_reader.h"
#include "core/record/parameter.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FactReader", text);
}

Error dangling(const QString& file, const QString& record, const QString& field, const QString& what,
               const QString& mend)
{
    return {Fault::BadInput, what.toStdString(),
            words("%1, \"%2\", field \"%3\"").arg(file, record, field).toStdString(), mend.toStdString()};
}

Result<void> proveKey(const EvidenceKey& key)
{
    const QString file = u"evidence.json"_s;
    if (key.kind == KeyKind::Reading) {
        const record::Parameter* parameter = record::findParameter(key.parameter);
        if (parameter == nullptr || parameter->key != key.parameter) {
            return dangling(file, key.key, u"parameter"_s, words("There is no parameter \"%1\".").arg(key.parameter),
                            words("Take a key from the list of parameters."));
        }
        if (parameter->unit(key.unit) == nullptr) {
            return dangling(file, key.key, u"unit"_s, words("%1 has no unit \"%2\".").arg(parameter->name, key.unit),
                            words("Take one of the parameter's units."));
        }
    }
    if (!key.event.isEmpty() && !care::eventFromCode(key.event)) {
        return dangling(file, key.key, u"event"_s, words("There is no event \"%1\".").arg(key.event),
                        words("Take a code of core/care/events.h, or name subjects."));
    }
    for (const QString& code : key.entries) {
        if (!record::entryKindFromCode(code)) {
            return dangling(file, key.key, u"entries"_s, words("There is no kind of entry \"%1\".").arg(code),
                            words("Take a code of core/record/entry.h."));
        }
    }
    return {};
}

/// Why an item of evidence cannot be judged; empty when it can.
QString faultOf(const FactBook& book, const Evidence& item)
{
    if (item.relation == Relation::SeenAtLeast) {
        const EvidenceKey* sight = book.key(item.key);
        const bool known = book.condition(item.key) != nullptr || (sight != nullptr && sight->kind == KeyKind::Sight);
        return known ? QString() : words("There is no observation \"%1\".").arg(item.key);
    }
    const EvidenceKey* key = book.key(item.key);
    if (key == nullptr) {
        return words("There is no key \"%1\" in evidence.json.").arg(item.key);
    }
    switch (item.relation) {
    case Relation::EventWithin:
    case Relation::NoEventFor:
        return key->kind == KeyKind::Event ? QString() : words("\"%1\" is not an event.").arg(item.key);
    case Relation::Is:
        if (key->kind != KeyKind::Tick) {
            return words("\"%1\" has no values to tick.").arg(item.key);
        }
        return key->hasValue(item.value) ? QString() : words("\"%1\" is no value of \"%2\".").arg(item.value, item.key);
    default:
        return key->kind == KeyKind::Reading || key->kind == KeyKind::Number
                   ? QString()
                   : words("\"%1\" is not a number.").arg(item.key);
    }
}

Result<void> proveCautions(const FactBook& book, const QString& file, const QString& record, const QStringList& ids)
{
    for (const QString& id : ids) {
        if (book.caution(id) == nullptr) {
            return dangling(file, record, u"cautions"_s, words("There is no caution \"%1\".").arg(id),
                            words("Take an id from cautions.json."));
        }
    }
    return {};
}

Result<void> proveWork(const Caution& caution)
{
    for (const QString& key : caution.work) {
        if (std::ranges::find(care::builtInTemplates(), key, &care::WorkTemplate::key) ==
            care::builtInTemplates().end()) {
            return dangling(u"cautions.json"_s, caution.id, u"work"_s, words("There is no work \"%1\".").arg(key),
                            words("Take a key from task_templates.json."));
        }
    }
    return {};
}

} // namespace

Result<void> proveCondition(const FactBook& book, const Condition& condition, const QString& file)
{
    for (const auto* side : {&condition.supporting, &condition.against}) {
        for (const Evidence& item : *side) {
            if (const QString fault = faultOf(book, item); !fault.isEmpty()) {
                return dangling(file, condition.id, side == &condition.supporting ? u"for"_s : u"against"_s,
                                words("\"%1\" cannot be judged. %2").arg(item.text, fault),
                                words("Use a key of evidence.json, or add it there."));
            }
        }
    }
    for (const QString& id : condition.lookalikes) {
        if (book.condition(id) == nullptr || id == condition.id) {
            return dangling(file, condition.id, u"lookalikes"_s, words("There is no other condition \"%1\".").arg(id),
                            words("Take an id from conditions.json."));
        }
    }
    return proveCautions(book, file, condition.id, condition.cautions);
}

Result<void> proveSpecies(const Species& species, const QString& file)
{
    QStringList gates = species.isPlant() ? QStringList{u"P0"_s, u"P1"_s} : QStringList();
    if (!species.isPlant()) {
        for (const care::GateDefinition& gate : care::builtInGates().gates) {
            gates << gate.key;
        }
    }
    if (!gates.contains(species.gate)) {
        return dangling(file, species.id, u"gate"_s, words("There is no gate \"%1\" for it.").arg(species.gate),
                        words("Take one of: %1.").arg(gates.join(u", "_s)));
    }
    return {};
}

Result<void> proveBook(const FactBook& book)
{
    for (const EvidenceKey& key : book.keys) {
        if (const auto proved = proveKey(key); !proved) {
            return proved.error();
        }
    }
    for (const Condition& condition : book.conditions) {
        if (const auto proved = proveCondition(book, condition, u"conditions.json"_s); !proved) {
            return proved.error();
        }
    }
    for (const Species& species : book.species) {
        if (const auto proved = proveSpecies(species, u"species.json"_s); !proved) {
            return proved.error();
        }
    }
    for (const ReferenceTask& task : book.tasks) {
        if (const auto proved = proveCautions(book, u"tasks.json"_s, task.key, task.cautions); !proved) {
            return proved.error();
        }
    }
    for (const Caution& caution : book.cautions) {
        if (const auto proved = proveWork(caution); !proved) {
            return proved.error();
        }
    }
    return {};
}

} // namespace littoral::facts
