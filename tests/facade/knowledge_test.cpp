// SPDX-License-Identifier: GPL-3.0-or-later
// A keeper's knowledge goes out as JSON and comes back the same, is checked on the way in, and undoes as one change.
#include "core/facade/knowledge.h"

#include "core/facade/export.h"
#include "core/facade/import.h"
#include "core/facts/own_facts.h"
#include "tests/support/temp_store.h"

#include <QFile>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

void putOwn(facade::Keeper& keeper)
{
    QJsonObject dust = *facts::builtInObject(facts::FactKind::Condition, u"alg_dust"_s);
    dust[u"name"_s] = u"Dust of my own"_s;
    store::Edit edit(u"own"_s);
    edit.set(u"fact.condition.alg_dust"_s, facts::settingText(dust));
    edit.set(u"fact.condition.duckweed"_s, u"none"_s);
    edit.set(u"fact.limit.nitrate-animals"_s,
             u"{\"id\":\"nitrate-animals\",\"source\":\"own experience\",\"value\":6}"_s);
    edit.set(u"guide.note.condition:alg_dust"_s, u"Fades by itself."_s);
    edit.set(u"unrelated"_s, u"kept at home"_s);
    ASSERT_TRUE(keeper.commit(edit));
}

} // namespace

TEST(Knowledge, GoesOutAndComesBackTheSame)
{
    test::TempKeeper from;
    EXPECT_TRUE(facade::knowledgeJson(from.keeper.row()).isEmpty());
    putOwn(from.keeper);
    from.addTank(u"Slate Ford"_s, 10);
    const QString folder = from.dir.filePath(u"out"_s);
    const auto written = facade::exportRow(from.keeper.row(), folder, false);
    ASSERT_TRUE(written);
    EXPECT_TRUE(written->contains(folder + u"/knowledge.json"_s));

    test::TempKeeper to;
    const auto read = facade::importFiles(to.keeper, {folder + u"/knowledge.json"_s}, false);
    ASSERT_TRUE(read);
    EXPECT_TRUE(read->problems.isEmpty()) << read->problems.join(u'\n').toStdString();
    EXPECT_EQ(read->facts, 4);
    EXPECT_EQ(facade::knowledgeJson(to.keeper.row()), facade::knowledgeJson(from.keeper.row()));
    EXPECT_FALSE(to.keeper.row().settings.contains(u"unrelated"_s));
    const facts::FactSet set = facts::factsFor(to.keeper.row());
    EXPECT_EQ(set.book.condition(u"alg_dust"_s)->name, u"Dust of my own"_s);
    EXPECT_EQ(set.book.condition(u"duckweed"_s), nullptr);
    const auto again = facade::importFiles(to.keeper, {folder + u"/knowledge.json"_s}, false);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->facts, 0);
    EXPECT_EQ(again->skipped, 4);
    ASSERT_TRUE(to.keeper.undo());
    EXPECT_TRUE(facade::knowledgeJson(to.keeper.row()).isEmpty()) << "one undo takes it all back";
}

TEST(Knowledge, ASlipWritesNothingAndSaysWhere)
{
    test::TempKeeper t;
    const QString path = t.dir.filePath(u"knowledge.json"_s);
    write(path, R"({"format": "littoral-knowledge", "version": 1, "facts":
                    {"species.X1": {"id": "X1", "kind": "fish"}, "limit.warm": {"id": "warm", "value": 99, "source": "x"}}})");
    const auto read = facade::importFiles(t.keeper, {path}, false);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->problems.size(), 2);
    EXPECT_TRUE(read->problems[0].contains(u"knowledge.json"_s) && read->problems[0].contains(u"fact.species.X1"_s));
    EXPECT_TRUE(read->problems[1].contains(u"A number from"_s));
    EXPECT_TRUE(facade::knowledgeJson(t.keeper.row()).isEmpty());
    write(path, R"({"format": "littoral-knowledge", "version": 2, "fatcs": {}})");
    const auto other = facade::importFiles(t.keeper, {path}, true);
    ASSERT_TRUE(other);
    EXPECT_EQ(other->problems.size(), 2) << "version, and a key there is not";
}
