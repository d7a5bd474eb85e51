// SPDX-License-Identifier: GPL-3.0-or-later
// The keeper's records: put over the program's, checked as the program's are, and the program's own beneath them.
#include "core/facts/own_facts.h"

#include "core/care/gates.h"
#include "core/care/limits.h"

#include <QJsonArray>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;
using facts::FactKind;

namespace {

QJsonObject builtIn(FactKind kind, const QString& id)
{
    const auto object = facts::builtInObject(kind, id);
    EXPECT_TRUE(object) << id.toStdString();
    return object.value_or(QJsonObject());
}

void put(record::Row& row, FactKind kind, const QJsonObject& object)
{
    row.settings[facts::factSetting(kind, object[u"id"_s].toString())] = facts::settingText(object);
}

std::string refusal(const record::Row& row, FactKind kind, const QJsonObject& object)
{
    const auto checked = facts::checkFact(row, kind, object[u"id"_s].toString(), object);
    return checked ? std::string() : checked.error().sentence();
}

} // namespace

TEST(OwnFacts, EveryRecordOfTheProgramPassesAsOneOfTheKeepers)
{
    const record::Row row;
    for (const facts::Condition& one : facts::builtInFacts().conditions) {
        EXPECT_EQ(refusal(row, FactKind::Condition, builtIn(FactKind::Condition, one.id)), "") << one.id.toStdString();
    }
    for (const facts::Species& one : facts::builtInFacts().species) {
        EXPECT_EQ(refusal(row, FactKind::Species, builtIn(FactKind::Species, one.id)), "") << one.id.toStdString();
    }
    for (const care::GateDefinition& one : care::builtInGates().gates) {
        EXPECT_EQ(refusal(row, FactKind::Gate, builtIn(FactKind::Gate, one.key)), "") << one.key.toStdString();
    }
    for (const care::LimitFact& one : care::limitFacts()) {
        EXPECT_EQ(refusal(row, FactKind::Limit, builtIn(FactKind::Limit, one.key)).empty(), one.practice)
            << one.key.toStdString() << ": published limits are not the keeper's to set";
    }
}

TEST(OwnFacts, SlipsAreRefusedWithFieldAndRemedy)
{
    const record::Row row;
    const auto expect = [&](FactKind kind, const QString& id, const QString& field, const QJsonValue& value,
                            const std::vector<std::string>& saying) {
        QJsonObject object = builtIn(kind, id);
        object[field] = value;
        const std::string sentence = refusal(row, kind, object);
        EXPECT_NE(sentence.find("\"" + field.toStdString() + "\""), std::string::npos) << sentence;
        for (const std::string& part : saying) {
            EXPECT_NE(sentence.find(part), std::string::npos) << part << " is not in: " << sentence;
        }
    };
    expect(FactKind::Condition, u"alg_dust"_s, u"for"_s, QJsonArray{u"po4 below 1 ::2"_s}, {"po4<0.3 ::2"});
    expect(FactKind::Condition, u"alg_dust"_s, u"for"_s, QJsonArray{u"nosuch<1 ::2"_s}, {"There is no key \"nosuch\""});
    expect(FactKind::Condition, u"alg_dust"_s, u"lookalikes"_s, QJsonArray{u"nothing"_s},
           {"There is no other condition \"nothing\""});
    expect(FactKind::Condition, u"alg_dust"_s, u"source"_s, u""_s, {"A text is missing here"});
    expect(FactKind::Species, u"A002"_s, u"temp"_s, QJsonArray{28, 20}, {"Two numbers"});
    expect(FactKind::Species, u"A002"_s, u"gate"_s, u"G9"_s, {"There is no gate \"G9\"", "G1, G2, G3, G4"});
    expect(FactKind::Gate, u"G1"_s, u"nh3"_s, 0.5, {"A number from 0.0005 to 0.05"});
    expect(FactKind::Gate, u"G1"_s, u"also"_s, QJsonArray{u"full moon"_s},
           {"There is no condition \"full moon\"", "co2-steady"});
    expect(FactKind::Gate, u"G1"_s, u"min-age"_s, QJsonObject{{u"new-media"_s, 3}}, {"The least age is missing"});
    expect(FactKind::Limit, u"nitrate-animals"_s, u"value"_s, u"50"_s, {"A number from 1 to 40 mg/L N"});
    expect(FactKind::Limit, u"nitrate-animals"_s, u"source"_s, u" "_s, {"It is not said where"});
    QJsonObject warm = builtIn(FactKind::Limit, u"cool"_s);
    warm[u"value"_s] = 22.9;
    EXPECT_EQ(refusal(row, FactKind::Limit, warm), "");
    record::Row mild;
    put(mild, FactKind::Limit, warm);
    QJsonObject low = builtIn(FactKind::Limit, u"warm"_s);
    low[u"value"_s] = 24.0;
    EXPECT_EQ(refusal(mild, FactKind::Limit, low), "");
}

TEST(OwnFacts, BuiltInCautionsStayWithAConditionAndPointsAreOnlyAdded)
{
    record::Row row;
    QJsonObject tuft = builtIn(FactKind::Condition, u"alg_tuft"_s);
    tuft.remove(u"cautions"_s);
    tuft[u"name"_s] = u"Tuft as I see it"_s;
    put(row, FactKind::Condition, tuft);
    const qsizetype before = qsizetype(facts::builtInFacts().caution(u"C-H2O2"_s)->points.size());
    put(row, FactKind::Caution,
        {{u"id"_s, u"C-H2O2"_s},
         {u"points"_s, QJsonArray{QJsonObject{{u"text"_s, u"Mine foams."_s}, {u"source"_s, u"own experience"_s}}}}});
    const facts::FactSet set = facts::factsFor(row);
    EXPECT_TRUE(set.problems.empty());
    const facts::Condition* own = set.book.condition(u"alg_tuft"_s);
    EXPECT_TRUE(own->own);
    EXPECT_EQ(own->name, u"Tuft as I see it"_s);
    EXPECT_EQ(own->cautions, facts::builtInFacts().condition(u"alg_tuft"_s)->cautions);
    const facts::Caution* caution = set.book.caution(u"C-H2O2"_s);
    ASSERT_EQ(qsizetype(caution->points.size()), before + 1);
    EXPECT_FALSE(caution->points.front().own);
    EXPECT_TRUE(caution->points.back().own);
    row.settings[u"fact.caution.C-H2O2"_s] = u"none"_s;
    EXPECT_EQ(facts::factsFor(row).problems.size(), 1u) << "a caution cannot be taken out";
    EXPECT_EQ(qsizetype(facts::factsFor(row).book.caution(u"C-H2O2"_s)->points.size()), before);
}

TEST(OwnFacts, RecordsMayNameEachOtherAndABrokenOneTakesNothingElseWithIt)
{
    record::Row row;
    const auto made = [&](const QString& id, const QString& other) {
        QJsonObject object = builtIn(FactKind::Condition, u"alg_dust"_s);
        object[u"id"_s] = id;
        object[u"lookalikes"_s] = QJsonArray{other};
        return object;
    };
    put(row, FactKind::Condition, made(u"own_a"_s, u"own_b"_s));
    put(row, FactKind::Condition, made(u"own_b"_s, u"own_a"_s));
    EXPECT_TRUE(facts::factsFor(row).problems.empty());
    EXPECT_EQ(facts::factsFor(row).book.conditions.size(), facts::builtInFacts().conditions.size() + 2);
    row.settings[u"fact.condition.own_b"_s] = u"{}"_s;
    const facts::FactSet set = facts::factsFor(row);
    EXPECT_EQ(set.problems.size(), 2u) << "the broken one, and the one that names it";
    EXPECT_EQ(set.book.conditions.size(), facts::builtInFacts().conditions.size());
}

TEST(OwnFacts, FreshIdsArePlainAndNew)
{
    record::Row row;
    EXPECT_EQ(facts::freshId(row, FactKind::Condition, u"Grüner Flaum, dicht"_s), u"own_gruner_flaum_dicht"_s);
    row.settings[u"fact.condition.own_gruner_flaum_dicht"_s] = u"{}"_s;
    EXPECT_EQ(facts::freshId(row, FactKind::Condition, u"Grüner Flaum, dicht"_s), u"own_gruner_flaum_dicht_2"_s);
    EXPECT_EQ(facts::freshId(row, FactKind::Species, u"???"_s), u"own_species"_s);
}

TEST(Terms, EveryParameterIsExplained)
{
    for (const record::Parameter& parameter : record::parameters()) {
        EXPECT_NE(facts::builtInFacts().term(parameter.key), nullptr) << parameter.key.toStdString();
    }
    EXPECT_NE(facts::builtInFacts().term(u"nh3"_s), nullptr);
}
