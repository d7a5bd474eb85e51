// SPDX-License-Identifier: GPL-3.0-or-later
// The files of facts: that they are sound, and that faults in them are refused by name.
#include "core/care/gates.h"
#include "core/care/work_template.h"
#include "tests/care/care_row.h"

#include <QFile>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;

QByteArray with(const QByteArray& rounds, const QByteArray& more = {})
{
    return R"({"key":"x","title":"X","kind":"upkeep","consequence":"c","source":"common practice",)" + more +
           R"("rounds":)" + rounds + "}";
}

void refuses(const QByteArray& json, const std::string& what)
{
    const auto parsed = care::parseTemplate(json);
    ASSERT_FALSE(parsed) << json.toStdString();
    EXPECT_NE(parsed.error().sentence().find(what), std::string::npos) << parsed.error().sentence();
    EXPECT_NE(parsed.error().where.find("x"), std::string::npos) << "names the template";
}

TEST(Templates, BuiltInFileIsSound)
{
    QFile file(QStringLiteral(LITTORAL_SOURCE_DIR "/resources/facts/task_templates.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto parsed = care::parseTemplates(file.readAll());
    ASSERT_TRUE(parsed) << parsed.error().sentence();
    EXPECT_EQ(care::builtInTemplates().size(), parsed->size());
    EXPECT_GT(parsed->size(), 45U);
}

TEST(Templates, MoreThanATableOfWaterChanges)
{
    const care::TemplateSet set{care::builtInTemplates(), {}};
    for (const QString& key :
         {u"water-change"_s, u"test-ammonia"_s, u"test-after-event"_s, u"filter-first"_s, u"rcd-test"_s, u"backup"_s}) {
        EXPECT_NE(set.find(key), nullptr) << key.toStdString();
    }
}

TEST(Templates, FaultsAreRefusedByName)
{
    refuses(with("[{\"every\":7}]", R"("closes":{"readings":["tan","ammonium"]},)"), "no parameter \"ammonium\"");
    refuses(with("[{\"every\":0}]"), "\"every\"");
    refuses(with("[{\"every\":1.3}]"), "half days");
    refuses(with("[{\"every\":7,\"from\":20,\"to\":10}]"), "before it begins");
    refuses(with("[{\"every\":7,\"once\":3}]"), "needs one of");
    refuses(with("[{}]"), "needs one of");
    refuses(with("[]"), "");
    refuses(with("[{\"after\":[\"full-moon\"],\"days\":[1]}]"), "no event \"full-moon\"");
    refuses(with("[{\"after\":[\"loss\"],\"days\":[3,1]}]"), "rising");
    refuses(with("[{\"after\":[\"loss\"]}]"), "belong together");
    refuses(with("[{\"every\":7}]", R"("graze":3,)"), "no field \"graze\"");
    refuses(with("[{\"every\":7}]", R"("caution":"BLEACH",)"), "not the id of a caution");
    refuses(with("[{\"every\":7}]", R"("applies":{"bed":["gravel"]},)"), "not a value of \"bed\"");
    refuses(with("[{\"every\":7,\"fraction\":0.5,\"range\":[0.6,0.7]}]"), "\"range\"");
    refuses(R"({"key":"x","title":"","kind":"upkeep","consequence":"c","source":"s","rounds":[{"every":7}]})", "empty");
    refuses(R"({"key":"x","title":"X","kind":"water-change","consequence":"c","source":"s","rounds":[{"every":7}]})",
            "fraction");
    refuses(R"({"key":"x","title":"X","kind":"test","consequence":"c","source":"s","rounds":[{"every":7}]})",
            "closed by readings");
    EXPECT_TRUE(care::parseTemplate(with("[{\"every\":7}]")));
    EXPECT_FALSE(care::parseTemplate("{"));
    EXPECT_FALSE(care::parseTemplates(R"({"templates":[]})"));
}

TEST(Templates, AKeyTwiceIsRefused)
{
    const QByteArray one = with("[{\"every\":7}]");
    const auto parsed = care::parseTemplates("{\"templates\":[" + one + "," + one + "]}");
    ASSERT_FALSE(parsed);
    EXPECT_NE(parsed.error().sentence().find("twice"), std::string::npos);
}

TEST(Templates, TheKeeperOverridesDisablesAndAdds)
{
    CareRow row;
    row.read(u"tan"_s, 1, 1.0);
    row.row.templates.push_back({{1}, u"photo"_s, {}, true});
    row.row.templates.push_back({{2}, u"glass"_s, with("[{\"every\":10}]"), false});
    row.row.templates.push_back({{3}, u"wipe-lid"_s, with("[{\"every\":5}]"), false});
    row.row.templates.push_back({{4}, u"broken"_s, with("[{\"every\":0}]"), false});
    EXPECT_TRUE(row.due(u"photo"_s, 7, 30).empty());
    EXPECT_EQ(row.due(u"glass"_s, 7, 12).front().due, CareRow::day(10));
    EXPECT_EQ(row.due(u"wipe-lid"_s, 4, 6).front().due, CareRow::day(5));
    const care::TemplateSet set = care::templatesFor(row.row);
    ASSERT_EQ(set.problems.size(), 1U);
    EXPECT_NE(set.find(u"glass"_s), nullptr);
}

TEST(Gates, FileIsSoundAndItsFaultsAreRefused)
{
    ASSERT_EQ(care::builtInGates().gates.size(), 4U);
    QFile file(QStringLiteral(LITTORAL_SOURCE_DIR "/resources/facts/gates.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray sound = file.readAll();
    ASSERT_TRUE(care::parseGates(sound));
    const auto fails = [&](const QByteArray& from, const QByteArray& to) {
        QByteArray broken = sound;
        broken.replace(from, to);
        return broken != sound && !care::parseGates(broken);
    };
    EXPECT_TRUE(fails("\"copper-free\"", "\"cooper-free\""));
    EXPECT_TRUE(fails("\"starter\": 18", "\"starter\": \"18\""));
    EXPECT_TRUE(fails("\"no2\": 0.06", "\"no2\": \"low\""));
    EXPECT_TRUE(fails("\"readings\": 4", "\"readings\": 0"));
    EXPECT_FALSE(care::parseGates("["));
}

} // namespace
