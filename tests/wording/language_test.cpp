// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/gates.h"
#include "core/record/parameter.h"
#include "core/record/shown.h"
#include "core/wording/language.h"
#include "core/wording/numbers.h"
#include "core/wording/review_points.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <gtest/gtest.h>

namespace littoral::wording {

using namespace Qt::StringLiterals;

namespace {

class Languages : public ::testing::Test
{
protected:
    void TearDown() override
    {
        m_translation.use(u"en"_s);
        QLocale::setDefault(QLocale::c());
    }

    void speak(const QString& tag)
    {
        m_translation.use(tag);
        QLocale::setDefault(localeFor(tag));
    }

    Translation m_translation;
};

QJsonObject factsAt(const QString& name)
{
    QFile file(u":/littoral/facts/"_s + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
    QJsonParseError slip;
    const QJsonDocument document = QJsonDocument::fromJson(file.readAll(), &slip);
    EXPECT_EQ(slip.error, QJsonParseError::NoError) << name.toStdString() << " at " << slip.offset;
    return document.object();
}

QString idOf(const QJsonValue& record)
{
    const QJsonObject object = record.toObject();
    return object.value(object.contains("id"_L1) ? "id"_L1 : "key"_L1).toString();
}

/// Every text of the other language stands where English has one; ids and keys are the same; lists are as long.
void expectFits(const QJsonValue& english, const QJsonValue& other, const QString& where)
{
    if (other.isString()) {
        EXPECT_TRUE(english.isString()) << where.toStdString();
        EXPECT_FALSE(other.toString().trimmed().isEmpty()) << where.toStdString();
        return;
    }
    if (other.isObject()) {
        const QJsonObject from = english.toObject();
        const QJsonObject to = other.toObject();
        for (auto it = to.begin(); it != to.end(); ++it) {
            ASSERT_TRUE(from.contains(it.key())) << where.toStdString() << ": no field " << it.key().toStdString();
            if (it.key() == "id"_L1 || it.key() == "key"_L1 || it.key() == "version"_L1) {
                EXPECT_EQ(from.value(it.key()), it.value()) << where.toStdString();
            } else {
                expectFits(from.value(it.key()), it.value(), where + u'/' + it.key());
            }
        }
        return;
    }
    ASSERT_TRUE(other.isArray() && english.isArray()) << where.toStdString();
    const QJsonArray from = english.toArray();
    const QJsonArray to = other.toArray();
    const bool records = !to.isEmpty() && !idOf(to.first()).isEmpty();
    if (!records) {
        ASSERT_EQ(from.size(), to.size()) << where.toStdString();
    }
    QStringList seen;
    for (qsizetype place = 0; place < to.size(); ++place) {
        const QString id = idOf(to[place]);
        const auto found =
            records ? std::find_if(from.begin(), from.end(), [&](const QJsonValue& one) { return idOf(one) == id; })
                    : from.begin() + place;
        ASSERT_NE(found, from.end()) << where.toStdString() << ": there is no \"" << id.toStdString() << '"';
        EXPECT_FALSE(records && seen.contains(id)) << where.toStdString() << ": twice " << id.toStdString();
        seen << id;
        expectFits(*found, to[place], where + u'/' + (records ? id : QString::number(place)));
    }
}

/// Source text and its translation, wherever they stand: one source must not have two, since texts are looked up by it.
void collect(const QJsonValue& english, const QJsonValue& other, QMap<QString, QSet<QString>>& pairs)
{
    if (other.isString()) {
        pairs[english.toString()].insert(other.toString());
    } else if (other.isObject()) {
        const QJsonObject to = other.toObject();
        for (auto it = to.begin(); it != to.end(); ++it) {
            collect(english.toObject().value(it.key()), it.value(), pairs);
        }
    } else if (other.isArray()) {
        const QJsonArray from = english.toArray();
        const QJsonArray to = other.toArray();
        for (qsizetype place = 0; place < to.size(); ++place) {
            const QString id = idOf(to[place]);
            const auto found = id.isEmpty() ? from.begin() + std::min(place, from.size())
                                            : std::find_if(from.begin(), from.end(),
                                                           [&](const QJsonValue& one) { return idOf(one) == id; });
            if (found != from.end()) {
                collect(*found, to[place], pairs);
            }
        }
    }
}

QStringList otherFacts()
{
    return QDir(u":/littoral/facts/de"_s).entryList({u"*.json"_s});
}

} // namespace

TEST_F(Languages, FactsInGermanFitTheEnglishOnes)
{
    ASSERT_TRUE(otherFacts().contains(u"gates.json"_s));
    ASSERT_TRUE(otherFacts().contains(u"task_templates.json"_s));
    QMap<QString, QSet<QString>> pairs;
    for (const QString& name : otherFacts()) {
        expectFits(factsAt(name), factsAt(u"de/"_s + name), name);
        collect(factsAt(name), factsAt(u"de/"_s + name), pairs);
    }
    for (auto it = pairs.begin(); it != pairs.end(); ++it) {
        EXPECT_EQ(it->size(), 1) << it.key().toStdString() << " is translated in two ways";
    }
}

TEST_F(Languages, EveryGateAndTaskTemplateHasAGermanTitle)
{
    const auto count = [](const QString& name, const QString& list) {
        return factsAt(name).value(list).toArray().size();
    };
    EXPECT_EQ(count(u"de/gates.json"_s, u"gates"_s), count(u"gates.json"_s, u"gates"_s));
    EXPECT_EQ(count(u"de/task_templates.json"_s, u"templates"_s), count(u"task_templates.json"_s, u"templates"_s));
    speak(u"de"_s);
    for (const care::GateDefinition& gate : care::builtInGates().gates) {
        EXPECT_NE(QCoreApplication::translate("Gates", gate.title.toUtf8().constData()), gate.title);
    }
    EXPECT_EQ(QCoreApplication::translate("Templates", "Water change"), u"Wasserwechsel"_s);
    EXPECT_EQ(QCoreApplication::translate("Templates", "common practice"), u"gängige Praxis"_s);
}

TEST_F(Languages, SentencesNumbersAndDatesFollow)
{
    const QDate day(2026, 11, 25);
    speak(u"de"_s);
    EXPECT_EQ(intervalText(2), u"alle 2 Tage"_s);
    EXPECT_EQ(overText(1), u"1 Tag über"_s);
    EXPECT_EQ(overText(3), u"3 Tage über"_s);
    EXPECT_EQ(oddsText(0.8), u"8 von 10"_s);
    EXPECT_EQ(numberText(0.25, 2), u"0,25"_s);
    EXPECT_TRUE(dateText(day, day).startsWith(u"25. Nov"_s)) << dateText(day, day).toStdString();
    EXPECT_TRUE(weekdayText(day, day).startsWith(u"Mi"_s)) << weekdayText(day, day).toStdString();
    EXPECT_EQ(record::findParameter(u"tan"_s)->name, u"Gesamtammonium"_s);
    EXPECT_EQ(record::findParameter(u"kh"_s)->name, u"Karbonathärte (Säurebindung)"_s);
    EXPECT_EQ(reviewPoints().front().answers.front(), u"über 60 %"_s);
    speak(u"en"_s);
    EXPECT_EQ(overText(1), u"1 day over"_s);
    EXPECT_EQ(overText(3), u"3 days over"_s);
    EXPECT_EQ(record::findParameter(u"tan"_s)->name, u"Total ammonia"_s);
    EXPECT_EQ(reviewPoints().front().answers.front(), u"over 60 %"_s);
}

/// Files name parameters in English; they are understood in every language, and the language on show as well.
TEST_F(Languages, ParametersAreFoundByEitherName)
{
    speak(u"de"_s);
    EXPECT_EQ(record::findParameter(u"nitrate"_s), record::findParameter(u"no3"_s));
    EXPECT_EQ(record::findParameter(u"Nitrat"_s), record::findParameter(u"no3"_s));
    EXPECT_EQ(record::inUsualUnits(*record::findParameter(u"nitrite"_s)).name, u"Nitrite"_s);
}

TEST_F(Languages, WhatWasHandedOutStaysValid)
{
    const record::Parameter* before = record::findParameter(u"no2"_s);
    const std::vector<ReviewPoint>& points = reviewPoints();
    speak(u"de"_s);
    (void)record::parameters();
    (void)reviewPoints();
    EXPECT_EQ(before->name, u"Nitrite"_s);
    EXPECT_EQ(points.front().answers.size(), 3U);
    EXPECT_NE(record::findParameter(u"no2"_s), before);
}

TEST_F(Languages, AnUnknownTagMeansEnglish)
{
    m_translation.use(u"tlh"_s);
    EXPECT_EQ(m_translation.tag(), u"en"_s);
    EXPECT_EQ(intervalText(1), u"every day"_s);
    EXPECT_TRUE(std::ranges::any_of(languages(), [](const Language& one) { return one.tag == systemLanguage(); }));
}

TEST(Pseudo, LengthensByTwoFifthsAndKeepsPlaceholders)
{
    EXPECT_EQ(pseudoText(u"%1 days over"_s), u"[%1 dåýs övér~~~]"_s);
    EXPECT_EQ(pseudoText(u"&New entry"_s), u"[&Ñéw éñtrý~~~]"_s);
    EXPECT_EQ(pseudoText(u"+%1"_s), u"+%1"_s);
    const QString text = u"Nothing is due within %1 days."_s;
    EXPECT_GE(pseudoText(text).size(), text.size() * 13 / 10);
    EXPECT_EQ(PseudoTranslator().translate("x", "%n tanks", nullptr, 3), u"[3 tåñks~~]"_s);
}

} // namespace littoral::wording
