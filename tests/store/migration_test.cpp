// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migrations.h"
#include "core/store/store_file.h"
#include "temp_store.h"

#include <QDir>
#include <QFile>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using store::Access;
using store::Migration;

namespace {

constexpr int kNext = store::kSchemaVersion + 1;

/// The ladder with one rung more.
std::vector<Migration> ladderWith(const QString& next)
{
    std::vector<Migration> ladder = store::builtInMigrations();
    ladder.push_back({kNext, next});
    return ladder;
}

/// The copy that is set aside when a store of this program's version is upgraded; `n` from the second on.
QString copyName(int n = 1)
{
    const QString stem = u"row.before-upgrade-v%1"_s.arg(store::kSchemaVersion);
    return n == 1 ? stem + u".littoral"_s : u"%1-%2.littoral"_s.arg(stem).arg(n);
}

QStringList copies(const TempStore& temp)
{
    return QDir(temp.folder()).entryList({u"*before-upgrade*"_s}, QDir::Files, QDir::Name);
}

} // namespace

TEST(Migrations, BuiltInLadderClimbsToTheSchemaVersion)
{
    const auto ladder = store::builtInMigrations();
    ASSERT_FALSE(ladder.empty());
    EXPECT_EQ(ladder.front().version, 1);
    EXPECT_EQ(ladder.back().version, store::kSchemaVersion);
    for (std::size_t i = 0; i < ladder.size(); ++i) {
        EXPECT_TRUE(i == 0 || ladder[i].version > ladder[i - 1].version);
        EXPECT_FALSE(store::statementsOf(ladder[i].sql).isEmpty());
    }
}

TEST(Migrations, ScriptIsSplitOutsideTextAndComments)
{
    EXPECT_EQ(store::statementsOf(u"-- a; b\nSELECT 'x;y' ; /* ; */ SELECT \"c;d\", 'it''s;' -- end;\n;;\n"_s),
              (QStringList{u"SELECT 'x;y'"_s, u"SELECT \"c;d\", 'it''s;'"_s}));
    EXPECT_EQ(store::statementsOf(u"SELECT 4 - 2 / 1"_s), QStringList{u"SELECT 4 - 2 / 1"_s});
    EXPECT_TRUE(store::statementsOf(u"-- nothing"_s).isEmpty());
}

TEST(Migrations, UpgradeKeepsACopyAndTheRecords)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    const QString before = dump(temp.path());
    temp.close();
    const auto ladder = ladderWith(
        u"ALTER TABLE tank ADD COLUMN lid TEXT NOT NULL DEFAULT 'open'; CREATE TABLE extra (a INTEGER) STRICT;"_s);
    {
        const auto opened = store::openFile(temp.path(), Access::ReadWrite, ladder);
        ASSERT_TRUE(succeeded(opened));
        EXPECT_EQ(copies(temp), QStringList{copyName()});
        EXPECT_EQ(QDir::cleanPath(opened->copyBeforeUpgrade), temp.path(copyName()));
    }
    EXPECT_EQ(ask(temp.path(), u"PRAGMA user_version"_s).toInt(), kNext);
    EXPECT_EQ(ask(temp.path(), u"SELECT lid FROM tank WHERE id = %1"_s.arg(ids.tank.value)).toString(), u"open"_s);
    EXPECT_EQ(dump(temp.path()), before);
    // The copy is a store of its own, as it was: the program of its time opens it and can still undo.
    auto copy = store::Store::open(temp.path(copyName()));
    ASSERT_TRUE(succeeded(copy));
    EXPECT_EQ(dump((*copy)->path()), before);
    EXPECT_EQ((*copy)->journal().undoLabel, u"one of everything"_s);
    EXPECT_TRUE((*copy)->copyBeforeUpgrade().isEmpty());
    // What this program knows only as its own version is now too new for it.
    EXPECT_TRUE(complete(store::Store::open(temp.path()).error(), Fault::NewerStore));
}

TEST(Migrations, FailingRungIsRolledBackAndNamesTheCopy)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    const QString before = dump(temp.path());
    temp.close();
    const auto ladder = ladderWith(
        u"CREATE TABLE extra (a INTEGER) STRICT; DELETE FROM reading; INSERT INTO no_such_table VALUES (1);"_s);
    const auto opened = store::openFile(temp.path(), Access::ReadWrite, ladder);
    ASSERT_FALSE(opened);
    EXPECT_TRUE(complete(opened.error(), Fault::Storage));
    EXPECT_NE(opened.error().mend.find(copyName().toStdString()), std::string::npos) << opened.error().sentence();
    EXPECT_EQ(copies(temp).size(), 1);
    EXPECT_EQ(ask(temp.path(), u"PRAGMA user_version"_s).toInt(), store::kSchemaVersion);
    EXPECT_EQ(ask(temp.path(), u"SELECT count(*) FROM sqlite_schema WHERE name = 'extra'"_s).toInt(), 0);
    EXPECT_EQ(dump(temp.path()), before);
    EXPECT_TRUE(succeeded(store::Store::open(temp.path())));
    // A second try does not write over the first copy.
    EXPECT_FALSE(store::openFile(temp.path(), Access::ReadWrite, ladder));
    EXPECT_EQ(copies(temp), (QStringList{copyName(2), copyName()}));
}

TEST(Migrations, RungThatBreaksReferencesIsRolledBack)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    const QString before = dump(temp.path());
    temp.close();
    const auto opened = store::openFile(temp.path(), Access::ReadWrite, ladderWith(u"DELETE FROM tank;"_s));
    ASSERT_FALSE(opened);
    EXPECT_TRUE(complete(opened.error(), Fault::Damaged));
    EXPECT_EQ(dump(temp.path()), before);
}

TEST(Migrations, ReadingAloneDoesNotUpgrade)
{
    TempStore temp;
    temp.close();
    const auto opened =
        store::openFile(temp.path(), Access::ReadOnly, ladderWith(u"CREATE TABLE extra (a INTEGER) STRICT;"_s));
    ASSERT_FALSE(opened);
    EXPECT_TRUE(complete(opened.error(), Fault::Storage));
    EXPECT_TRUE(copies(temp).isEmpty());
    EXPECT_EQ(ask(temp.path(), u"PRAGMA user_version"_s).toInt(), store::kSchemaVersion);
}

TEST(Migrations, FailedCreateLeavesNoFile)
{
    const TempStore temp;
    const QString path = temp.path(u"new.littoral"_s);
    const auto made = store::createFile(path, {{1, u"CREATE TABLE broken ("_s}});
    ASSERT_FALSE(made);
    EXPECT_TRUE(complete(made.error(), Fault::Storage));
    EXPECT_FALSE(QFile::exists(path));
}
