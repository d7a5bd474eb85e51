// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/facts/evidence.h"
#include "core/record/row.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

/// What the program knows of the trade, as data: conditions, species, cautions, and work without a cadence of its own.
/// Every record carries its source or the words "common practice", "from memory". All texts are source texts,
/// translated in the context "Facts".
namespace littoral::facts {

enum class Urgency { Now, Today, Week, Watch };

/// Something a keeper may find: an algae, a melt, a shortage, an illness, a fault.
struct Condition
{
    QString id;
    QString kind; ///< algae, bacteria, plant, animal, disease ...
    QString name;
    QString look;
    QStringList where;
    int ageLow = 0; ///< tank age at which it is usual, days
    std::optional<int> ageHigh;
    int prior = 1; ///< 1 rare, 2 occasional, 3 common
    Urgency urgency = Urgency::Watch;
    std::vector<Evidence> supporting;
    std::vector<Evidence> against;
    QStringList actions;
    QStringList avoid;
    QString check; ///< what to look at next, in words
    QStringList cautions;
    QStringList lookalikes;
    QString source;
    bool own = false; ///< the keeper's
};

struct Span
{
    double low = 0.0;
    double high = 0.0;
};

/// A plant or animal. Ranges are what it bears, not what is best for it.
struct Species
{
    QString id;
    QString kind; ///< plant, shrimp, snail, fish
    QString scientific;
    QString name;
    QString light; ///< plants: low, medium, high
    QString co2;   ///< plants: none, optional, helpful, needed
    QStringList form;
    QString growth;
    QStringList position;
    int sensitivity = 1; ///< 1 tough to 4 touchy
    Span temperature_C;
    Span ph;
    Span gh_deg;
    Span kh_deg;
    double size_cm = 0.0;
    std::optional<double> mass_g; ///< animals; an estimate, for the load of feeding only
    std::optional<int> group;     ///< least number
    std::optional<double> tank_L; ///< least net volume
    QString gate;                 ///< P0 from flooding, P1 once ammonia is low; G1..G4 as in gates.json
    QStringList flags;
    QString note;
    QString source;
    bool own = false; ///< the keeper's

    [[nodiscard]] bool isPlant() const { return kind == QStringLiteral("plant"); }
};

struct CautionPoint
{
    QString text;
    QString source;
    bool own = false;    ///< the keeper's
    bool before = false; ///< read before the action itself; the others stand in the guide
};

struct Caution
{
    QString id;
    QString title;
    QString when;
    QStringList words;                ///< what an entry's subject says where this counts: beginnings of its words
    QStringList work;                 ///< keys of task templates it belongs to besides the one each names itself
    std::vector<CautionPoint> points; ///< the most telling first
    bool own = false;                 ///< the keeper's, or with points of the keeper's
};

/// Work that has no cadence the program could keep, to read in the guide.
struct ReferenceTask
{
    QString key;
    QString title;
    QString when;
    QString consequence;
    QString closes;
    int minutes = 0;
    int priority = 3;
    bool helper = false; ///< may go on a helper's sheet
    QStringList cautions;
    QString source;
};

/// A word of the trade or of the program, explained. Parameters are terms under their keys.
struct Term
{
    QString id;
    QString name;
    QString text;
    QStringList see; ///< topics of the guide, "condition:alg_dust"
    QString source;
};

struct FactBook
{
    std::vector<EvidenceKey> keys;
    std::vector<Condition> conditions;
    std::vector<Species> species;
    QString aboveAll; ///< what outranks every caution
    std::vector<Caution> cautions;
    std::vector<ReferenceTask> tasks;
    std::vector<Term> terms;

    [[nodiscard]] const EvidenceKey* key(const QString& key) const;
    [[nodiscard]] const Condition* condition(const QString& id) const;
    [[nodiscard]] const Species* speciesById(const QString& id) const;
    [[nodiscard]] const Caution* caution(const QString& id) const;
    [[nodiscard]] const Term* term(const QString& id) const;
};

/// The six files as bytes.
struct FactSources
{
    QByteArray evidence;
    QByteArray conditions;
    QByteArray species;
    QByteArray cautions;
    QByteArray tasks;
    QByteArray terms;
};

/// Reads all of them and proves that they fit: every key, parameter, unit, value, event, gate and id that is named is
/// there. The error says file, record, field and how to mend it.
[[nodiscard]] Result<FactBook> parseFacts(const FactSources& sources);

/// The files in the program, unread.
[[nodiscard]] FactSources builtInSources();
/// The same, read once; empty only if they are broken, which the tests would show.
[[nodiscard]] const FactBook& builtInFacts();

/// The program's own with what the keeper changed or added put over it.
struct FactSet
{
    FactBook book;
    std::vector<Error> problems; ///< the keeper's records that could not be used
};
/// The keeper's records are settings of the store: "fact.condition.ID", "fact.species.ID" and "fact.caution.ID", each
/// one JSON object as in the files; the value "none" takes a condition or species out. See own_facts.h.
[[nodiscard]] FactSet factsFor(const record::Row& row);

} // namespace littoral::facts
