// SPDX-License-Identifier: GPL-3.0-or-later
// The files of facts are whole, fit each other, and each kind of slip in them is refused with its place and its remedy.
#include "core/facts/fact_book.h"

#include "core/care/gates.h"
#include "core/care/work_template.h"
#include "core/facts/entry_cautions.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <gtest/gtest.h>
#include <set>

using namespace littoral;
using namespace Qt::StringLiterals;
using facts::FactSources;
using facts::Relation;

namespace {

std::string refusal(const FactSources& sources)
{
    const auto parsed = facts::parseFacts(sources);
    EXPECT_FALSE(parsed.has_value());
    return parsed ? std::string() : parsed.error().sentence();
}

/// The program's files with `before` changed to `after`, once, in one of them.
FactSources changed(QByteArray FactSources::*file, const QByteArray& before, const QByteArray& after)
{
    FactSources sources = facts::builtInSources();
    QByteArray& text = sources.*file;
    const qsizetype at = text.indexOf(before);
    EXPECT_GE(at, 0) << before.toStdString();
    text.replace(at, before.size(), after);
    return sources;
}

void expectRefused(QByteArray FactSources::*file, const QByteArray& before, const QByteArray& after,
                   const std::vector<std::string>& saying)
{
    const std::string sentence = refusal(changed(file, before, after));
    for (const std::string& part : saying) {
        EXPECT_NE(sentence.find(part), std::string::npos) << part << " is not in: " << sentence;
    }
}

} // namespace

TEST(Facts, TheProgramsOwnAreWhole)
{
    const auto parsed = facts::parseFacts(facts::builtInSources());
    ASSERT_TRUE(parsed.has_value()) << parsed.error().sentence();
    EXPECT_EQ(parsed->conditions.size(), 72u);
    EXPECT_EQ(parsed->species.size(), 116u);
    EXPECT_EQ(parsed->cautions.size(), 18u);
    EXPECT_EQ(facts::builtInFacts().conditions.size(), 72u);
}

TEST(Facts, EveryRecordNamesItsSource)
{
    const facts::FactBook& book = facts::builtInFacts();
    for (const facts::Condition& condition : book.conditions) {
        EXPECT_FALSE(condition.source.isEmpty()) << condition.id.toStdString();
        EXPECT_FALSE(condition.actions.isEmpty()) << condition.id.toStdString();
    }
    for (const facts::Caution& caution : book.cautions) {
        for (const facts::CautionPoint& point : caution.points) {
            EXPECT_FALSE(point.source.isEmpty()) << caution.id.toStdString();
        }
    }
}

TEST(Facts, DiseaseIsLeftToProfessionals)
{
    const facts::FactBook& book = facts::builtInFacts();
    for (const facts::Condition& condition : book.conditions) {
        if (condition.kind != u"disease"_s) {
            continue;
        }
        const QString all = condition.actions.join(u' ') + condition.avoid.join(u' ') + condition.check;
        const bool defers = all.contains(u"veterinar"_s) || all.contains(u"laboratory"_s);
        EXPECT_TRUE(defers) << condition.id.toStdString();
        EXPECT_TRUE(condition.cautions.contains(u"C-MED"_s) || condition.cautions.contains(u"C-KILL"_s))
            << condition.id.toStdString();
    }
}

TEST(Facts, DangerousActionsNameTheirCaution)
{
    const std::vector<std::pair<QString, QString>> dangers{
        {u"peroxide"_s, u"C-H2O2"_s},  {u"bleach"_s, u"C-BLEACH"_s}, {u"acid"_s, u"C-ACID"_s},
        {u"unplug"_s, u"C-ELEC"_s},    {u"cylinder"_s, u"C-CO2"_s},  {u"veterinarian"_s, u"C-MED"_s},
        {u"change 50"_s, u"C-ELEC"_s}, {u"change 30"_s, u"C-ELEC"_s}};
    int found = 0;
    for (const facts::Condition& condition : facts::builtInFacts().conditions) {
        const QString actions = condition.actions.join(u' ').toLower();
        for (const auto& [word, caution] : dangers) {
            if (actions.contains(word)) {
                ++found;
                EXPECT_TRUE(condition.cautions.contains(caution))
                    << condition.id.toStdString() << " says " << word.toStdString() << " without "
                    << caution.toStdString();
            }
        }
    }
    EXPECT_GE(found, 20);
}

TEST(Facts, EveryCautionIsReachedFromSomewhere)
{
    const facts::FactBook& book = facts::builtInFacts();
    std::set<QString> named;
    for (const facts::Condition& condition : book.conditions) {
        named.insert(condition.cautions.begin(), condition.cautions.end());
    }
    for (const facts::ReferenceTask& task : book.tasks) {
        named.insert(task.cautions.begin(), task.cautions.end());
    }
    for (const care::WorkTemplate& work : care::builtInTemplates()) {
        for (const QString& id : facts::cautionsFor(book, work)) {
            EXPECT_NE(book.caution(id), nullptr) << work.key.toStdString();
            named.insert(id);
        }
    }
    for (const facts::Caution& caution : book.cautions) {
        EXPECT_TRUE(named.contains(caution.id)) << caution.id.toStdString();
    }
}

TEST(Facts, EveryJobOfTheTradeIsAskedForOrToBeRead)
{
    QFile file(QStringLiteral(LITTORAL_SOURCE_DIR "/tests/data/facts/jobs.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QJsonObject jobs = QJsonDocument::fromJson(file.readAll())[u"covers"_s].toObject();
    EXPECT_EQ(jobs.size(), 91);
    std::set<QString> known;
    for (const care::WorkTemplate& work : care::builtInTemplates()) {
        known.insert(work.key);
    }
    for (const facts::ReferenceTask& task : facts::builtInFacts().tasks) {
        EXPECT_TRUE(known.insert(task.key).second) << task.key.toStdString();
    }
    for (const QString& job : jobs.keys()) {
        EXPECT_TRUE(known.contains(jobs[job].toString())) << job.toStdString();
    }
}

// MSD/Merck Veterinary Manual, table of environmental diseases: carbon dioxide above 40 mg/L, un-ionised ammonia;
// UF/IFAS FA16: harm from about 0.05 mg/L free ammonia. SRAC 462: nitrite with little chloride. The rules have to sit
// at or below those figures, never above.
TEST(Facts, LimitsAreNotLaxerThanThePublishedOnes)
{
    const auto strictest = [](const char* condition, const QString& key) {
        const facts::Condition* found = facts::builtInFacts().condition(QString::fromLatin1(condition));
        if (found == nullptr) {
            return 1e9;
        }
        double least = 1e9;
        for (const facts::Evidence& item : found->supporting) {
            if (item.key == key && (item.relation == Relation::AtLeast || item.relation == Relation::Above ||
                                    item.relation == Relation::Within)) {
                least = std::min(least, item.low);
            }
        }
        return least;
    };
    EXPECT_LE(strictest("an_nh3", u"nh3_n"_s), 0.05);
    EXPECT_LE(strictest("an_co2", u"co2"_s), 40.0);
    EXPECT_LE(strictest("an_no2", u"no2_n"_s), 0.15);
    EXPECT_LE(strictest("an_copper", u"copper"_s), 0.031); // 96 h LC50 of a freshwater shrimp, abstract
}

TEST(Facts, SpeciesKeepTheirGatesAndRanges)
{
    const facts::FactBook& book = facts::builtInFacts();
    const facts::Species* oto = book.speciesById(u"A038"_s);
    ASSERT_NE(oto, nullptr);
    EXPECT_EQ(oto->scientific, u"Otocinclus vittatus"_s);
    EXPECT_EQ(oto->gate, u"G4"_s);
    EXPECT_EQ(oto->group, 6);
    for (const facts::Species& species : book.species) {
        EXPECT_LT(species.temperature_C.low, species.temperature_C.high) << species.id.toStdString();
        EXPECT_EQ(species.mass_g.has_value(), !species.isPlant()) << species.id.toStdString();
    }
}

TEST(EvidenceGrammar, EachFormIsRead)
{
    const auto read = [](const QString& text) { return facts::parseEvidence(text, u"here"_s).value(); };
    const facts::Evidence age = read(u"age_d in 5..45 ::3"_s);
    EXPECT_EQ(age.relation, Relation::Within);
    EXPECT_EQ(age.low, 5.0);
    EXPECT_EQ(age.high, 45.0);
    EXPECT_EQ(age.weight, 3);
    const facts::Evidence light = read(u"ev:light_change<14d ::2"_s);
    EXPECT_EQ(light.relation, Relation::EventWithin);
    EXPECT_EQ(light.key, u"light_change"_s);
    EXPECT_EQ(light.high, 14.0);
    EXPECT_DOUBLE_EQ(read(u"ev:wc<6h ::3"_s).high, 0.25);
    EXPECT_EQ(read(u"ev:filter_service>90d ::2"_s).relation, Relation::NoEventFor);
    EXPECT_EQ(read(u"po4<0.3 ::2"_s).relation, Relation::Below);
    EXPECT_EQ(read(u"hair_len_mm<=5 ::2"_s).relation, Relation::AtMost);
    EXPECT_EQ(read(u"nh3_n>=0.05 ::3"_s).relation, Relation::AtLeast);
    EXPECT_EQ(read(u"temp_minus_set<-2 ::3"_s).high, -2.0);
    const facts::Evidence colour = read(u"colour=brown ::2"_s);
    EXPECT_EQ(colour.relation, Relation::Is);
    EXPECT_EQ(colour.value, u"brown"_s);
    const facts::Evidence sight = read(u"obs:alg_tuft>=2 ::1"_s);
    EXPECT_EQ(sight.relation, Relation::SeenAtLeast);
    EXPECT_EQ(sight.low, 2.0);
}

TEST(EvidenceGrammar, WhatDoesNotParseIsRefusedWithItsPlace)
{
    for (const QString& text : {u"po4<0.3"_s, u"po4<0.3 ::4"_s, u"po4<0.3 ::0"_s, u"po4 < 0.3 ::1"_s,
                                u"age_d in 45..5 ::3"_s, u"ev:light_change ::2"_s, u"ev:light_change<14w ::2"_s,
                                u"obs:melt>=7 ::1"_s, u"colour=3 ::1"_s, u"::2"_s, QString(), u"po4<<3 ::1"_s}) {
        const auto parsed = facts::parseEvidence(text, u"conditions.json, \"x\""_s);
        ASSERT_FALSE(parsed.has_value()) << text.toStdString();
        EXPECT_EQ(parsed.error().where, "conditions.json, \"x\"");
        EXPECT_FALSE(parsed.error().mend.empty());
    }
}

TEST(FactSlips, UnknownParameterUnitEventAndEntry)
{
    expectRefused(&FactSources::evidence, "\"parameter\": \"tan\"", "\"parameter\": \"tannin\"",
                  {"evidence.json", "tan_n", "parameter", "There is no parameter \"tannin\"", "Take a key"});
    expectRefused(&FactSources::evidence, "\"unit\": \"mg/L N\"", "\"unit\": \"mg/L O\"", {"has no unit \"mg/L O\""});
    expectRefused(&FactSources::evidence, "\"event\": \"addition\"", "\"event\": \"adition\"",
                  {"There is no event \"adition\""});
    expectRefused(&FactSources::evidence, "\"water-change\"", "\"water-swap\"", {"There is no kind of entry"});
}

TEST(FactSlips, UnknownKeyAndValueInEvidence)
{
    expectRefused(&FactSources::conditions, "colour=brown ::2", "colour=mauve ::2",
                  {"conditions.json, \"alg_diatom\", field \"for\"", "\"mauve\" is no value of \"colour\""});
    expectRefused(&FactSources::conditions, "wipes_off=easy ::3", "rubs_off=easy ::3",
                  {"There is no key \"rubs_off\""});
    expectRefused(&FactSources::conditions, "tan_n>=0.1 ::1", "colour>=0.1 ::1", {"\"colour\" is not a number"});
    expectRefused(&FactSources::conditions, "ev:source_change<21d", "ev:colour<21d", {"\"colour\" is not an event"});
    expectRefused(&FactSources::conditions, "obs:melt>=1", "obs:meltdown>=1", {"no observation \"meltdown\""});
    expectRefused(&FactSources::conditions, "colour=brown ::2", "colour=brown", {"lacks a weight"});
}

TEST(FactSlips, DanglingIds)
{
    expectRefused(&FactSources::conditions, "\"mic_mulm\"\n", "\"mic_mulch\"\n",
                  {"lookalikes", "There is no other condition \"mic_mulch\""});
    expectRefused(&FactSources::conditions, "\"C-HANDS\"", "\"C-FEET\"", {"There is no caution \"C-FEET\""});
    expectRefused(&FactSources::tasks, "\"C-LOAD\"", "\"C-LOADS\"", {"tasks.json", "There is no caution \"C-LOADS\""});
    expectRefused(&FactSources::species, "\"gate\": \"G4\"", "\"gate\": \"G9\"",
                  {"species.json", "There is no gate \"G9\"", "G1, G2, G3, G4"});
    expectRefused(&FactSources::species, "\"gate\": \"P0\"", "\"gate\": \"G1\"", {"P0, P1"});
}

TEST(FactSlips, FieldsTypesAndTwins)
{
    expectRefused(&FactSources::conditions, "\"urgency\": \"watch\"", "\"urgency\": \"someday\"",
                  {"\"someday\" is not known here", "now, today, week, watch"});
    expectRefused(&FactSources::conditions, "\"look\":", "\"looks\":", {"field \"looks\"", "There is no such field"});
    expectRefused(&FactSources::conditions, "\"prior\": 3", "\"prior\": 9", {"A number from 1 to 3"});
    expectRefused(&FactSources::conditions, "\"id\": \"alg_dust\"", "\"id\": \"alg_diatom\"", {"is there twice"});
    expectRefused(&FactSources::species, "[22, 28]", "[28, 22]", {"Write them as [low, high]"});
    expectRefused(&FactSources::species, "\"source\": \"from memory\"", "\"source\": \"\"", {"A text is missing here"});
    expectRefused(&FactSources::cautions, "\"version\": 1", "\"version\": 2", {"cautions.json", "version"});
    expectRefused(&FactSources::cautions, "\"diffuser\"", "\"diffusor\"",
                  {"There is no work \"diffusor\"", "\"work\""});
    expectRefused(&FactSources::cautions, "\"before\": true", "\"before\": false", {"cautions.json", "first point"});
    expectRefused(&FactSources::tasks, "{", "[", {"tasks.json", "not JSON"});
}

TEST(OwnFacts, TheKeepersRecordsGoOverTheProgramsOwn)
{
    record::Row row;
    row.settings[u"fact.condition.alg_dust"_s] =
        u"{\"id\":\"alg_dust\",\"kind\":\"algae\",\"name\":\"Dust of my own\",\"look\":\"green\",\"where\":[\"glass\"],"
        "\"age\":[1],\"prior\":2,\"urgency\":\"watch\",\"for\":[\"where=glass ::3\"],\"actions\":[\"Wipe.\"],"
        "\"check\":\"Look.\",\"source\":\"own experience\"}"_s;
    row.settings[u"fact.condition.duckweed"_s] = u"none"_s;
    row.settings[u"fact.species.Z1"_s] = u"{\"id\":\"Z1\",\"kind\":\"fish\"}"_s;
    row.settings[u"fact.condition.own_x"_s] = u"{\"id\":\"other\"}"_s;
    const facts::FactSet set = facts::factsFor(row);
    EXPECT_EQ(set.book.condition(u"alg_dust"_s)->name, u"Dust of my own"_s);
    EXPECT_EQ(set.book.condition(u"duckweed"_s), nullptr);
    EXPECT_EQ(set.book.conditions.size(), 71u);
    ASSERT_EQ(set.problems.size(), 2u);
    EXPECT_NE(set.problems[0].sentence().find("fact.condition.own_x"), std::string::npos);
    EXPECT_NE(set.problems[1].sentence().find("fact.species.Z1"), std::string::npos);
    EXPECT_EQ(facts::builtInFacts().conditions.size(), 72u);
}
