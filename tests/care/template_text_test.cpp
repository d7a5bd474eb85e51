// SPDX-License-Identifier: GPL-3.0-or-later
// Templates as the words of a form: every built-in one must come back from its form unchanged.
#include "core/care/template_text.h"

#include "core/care/work_template.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

care::TemplateText weekly()
{
    care::TemplateText text;
    text.key = u"wipe-lamps"_s;
    text.title = u"Wipe the lamps"_s;
    text.kind = u"upkeep"_s;
    text.consequence = u"Less light reaches the plants."_s;
    text.source = u"my own practice"_s;
    care::RoundText round;
    round.every = u"7"_s;
    text.rounds.push_back(round);
    return text;
}

void expectProblem(const care::TemplateText& text, const char* what)
{
    const auto made = care::definitionFrom(text);
    ASSERT_FALSE(made) << what;
    const Error error = made.error();
    EXPECT_NE(error.what.find(what), std::string::npos) << error.what;
    EXPECT_FALSE(error.where.empty()) << error.what;
    EXPECT_FALSE(error.mend.empty()) << error.what;
}

} // namespace

TEST(TemplateText, EveryBuiltInTemplateComesBackFromItsForm)
{
    ASSERT_FALSE(care::builtInTemplates().empty());
    for (const care::WorkTemplate& work : care::builtInTemplates()) {
        const QByteArray definition = care::builtInDefinition(work.key);
        const care::TemplateText form = care::templateText(definition);
        const auto again = care::definitionFrom(form);
        ASSERT_TRUE(again) << work.key.toStdString() << ": " << again.error().sentence();
        EXPECT_EQ(care::templateText(*again), form) << work.key.toStdString();
        QJsonObject before = QJsonDocument::fromJson(definition).object();
        QJsonObject after = QJsonDocument::fromJson(*again).object();
        for (const QString& key : {u"variants"_s, u"rounds"_s, u"applies"_s, u"closes"_s}) {
            EXPECT_EQ(QJsonDocument(after[key].toObject()).toJson(), QJsonDocument(before[key].toObject()).toJson());
            const QJsonArray was = before[key].toArray();
            const QJsonArray is = after[key].toArray();
            ASSERT_EQ(is.size(), was.size()) << work.key.toStdString();
        }
        const auto parsed = care::parseTemplate(*again);
        ASSERT_TRUE(parsed);
        ASSERT_EQ(parsed->variants.size(), work.variants.size());
        for (std::size_t v = 0; v < work.variants.size(); ++v) {
            ASSERT_EQ(parsed->variants[v].rounds.size(), work.variants[v].rounds.size());
            for (std::size_t r = 0; r < work.variants[v].rounds.size(); ++r) {
                const care::Round& a = work.variants[v].rounds[r];
                const care::Round& b = parsed->variants[v].rounds[r];
                EXPECT_EQ(a.every, b.every);
                EXPECT_EQ(a.from, b.from);
                EXPECT_EQ(a.to, b.to);
                EXPECT_EQ(a.once, b.once);
                EXPECT_EQ(a.after, b.after);
                EXPECT_EQ(a.days, b.days);
                EXPECT_NEAR(a.fraction.value_or(0), b.fraction.value_or(0), 1e-12);
                EXPECT_EQ(a.when.readingBelow, b.when.readingBelow);
            }
        }
    }
}

TEST(TemplateText, ConditionsReadBack)
{
    for (const QString& text : {u"animals"_s, u"no shrimp"_s, u"bed rich|mild"_s, u"net-below 60"_s,
                                u"recorded topup"_s, u"tan < 0.5"_s, u"animals, bed inert, no2 < 0.1, tan < 0.5"_s}) {
        const auto read = care::conditionFrom(text);
        ASSERT_TRUE(read) << text.toStdString();
        const auto again = care::conditionFrom(care::conditionText(*read));
        ASSERT_TRUE(again);
        EXPECT_EQ(*again, *read) << text.toStdString();
    }
    const auto bad = care::conditionFrom(u"animals, when I feel like it"_s);
    ASSERT_FALSE(bad);
    EXPECT_NE(bad.error().what.find("when I feel like it"), std::string::npos);
    EXPECT_FALSE(bad.error().mend.empty());
}

TEST(TemplateText, WhatIsWrongIsNamedWithItsPlaceAndItsRemedy)
{
    EXPECT_TRUE(care::definitionFrom(weekly()));
    care::TemplateText text = weekly();
    text.rounds[0].every = u"often"_s;
    expectProblem(text, "\"often\" is not a number");
    text = weekly();
    text.rounds[0].once = u"12"_s;
    expectProblem(text, "needs one of");
    text = weekly();
    text.rounds.clear();
    expectProblem(text, "no rounds");
    text = weekly();
    text.kind = u"test"_s;
    expectProblem(text, "closed by readings");
    text = weekly();
    text.kind = u"test"_s;
    text.closesReadings = u"tan nonsense"_s;
    expectProblem(text, "no parameter \"nonsense\"");
    text = weekly();
    text.kind = u"water-change"_s;
    expectProblem(text, "needs its fraction");
    text = weekly();
    text.title.clear();
    expectProblem(text, "\"title\" is empty");
    text = weekly();
    text.applies = u"bed concrete"_s;
    expectProblem(text, "\"concrete\" is not a value");
    text = weekly();
    text.variants.push_back({u"a"_s, {}});
    expectProblem(text, "no case \"\"");
}
