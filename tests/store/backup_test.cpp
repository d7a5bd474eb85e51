// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"
#include "temp_store.h"

#include <QDir>
#include <QFile>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using store::Store;

TEST(Backup, IsTheWholeStoreAndOpens)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    const QString copy = temp.path(u"backup.littoral"_s);
    ASSERT_TRUE(succeeded(temp->backup(copy)));
    EXPECT_EQ(dump(copy), dump(temp.path()));
    EXPECT_EQ(ask(copy, u"PRAGMA application_id"_s).toInt(), store::kApplicationId);
    EXPECT_EQ(ask(copy, u"PRAGMA user_version"_s).toInt(), store::kSchemaVersion);
    auto opened = Store::open(copy);
    ASSERT_TRUE(succeeded(opened));
    EXPECT_EQ(*(*opened)->undo(), u"one of everything"_s) << "the journal comes along";
    EXPECT_FALSE(QFile::exists(copy + u".part"_s));
}

TEST(Backup, OfAStoreThatAnotherProgramHolds)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    auto writer = store::Connection::open(temp.path(), store::Mode::ReadWrite);
    ASSERT_TRUE(succeeded((*writer)->run(u"BEGIN IMMEDIATE"_s)));
    ASSERT_TRUE(succeeded((*writer)->run(u"UPDATE tank SET note = 'half'"_s)));
    const QString copy = temp.path(u"backup.littoral"_s);
    ASSERT_TRUE(succeeded(temp->backup(copy)));
    EXPECT_EQ(ask(copy, u"SELECT count(*) FROM tank WHERE note = 'half'"_s).toInt(), 0) << "only what is committed";
    ASSERT_TRUE(succeeded((*writer)->run(u"ROLLBACK"_s)));
}

TEST(Backup, NeverOverwrites)
{
    TempStore temp;
    const QString copy = temp.path(u"backup.littoral"_s);
    QFile file(copy);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("mine");
    file.close();
    EXPECT_TRUE(complete(temp->backup(copy).error(), Fault::Conflict));
    EXPECT_TRUE(complete(temp->backup(temp.path()).error(), Fault::Conflict));
    EXPECT_EQ(QFile(copy).size(), 4);
}

TEST(Backup, IntoAFolderThatIsNotThere)
{
    TempStore temp;
    EXPECT_TRUE(complete(temp->backup(temp.path(u"no/such/backup.littoral"_s)).error(), Fault::Storage));
}

TEST(Verify, SoundStoreIsCounted)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    const auto report = temp->verify();
    ASSERT_TRUE(succeeded(report));
    EXPECT_TRUE(report->problems.empty());
    EXPECT_EQ(report->schemaVersion, store::kSchemaVersion);
    EXPECT_EQ(report->tanks, 2);
    EXPECT_EQ(report->layouts, 2);
    EXPECT_EQ(report->readings, 1);
    EXPECT_EQ(report->entries, 2);
    EXPECT_EQ(report->tasks, 1);
    EXPECT_EQ(report->photos, 1);
    EXPECT_EQ(report->journal, 1);
}

TEST(Verify, FindsWhatAnotherToolBroke)
{
    const std::pair<QStringList, int> cases[] = {
        {{u"UPDATE reading SET tank = (SELECT max(id) FROM tank)"_s},
         2}, // a broken reference and a stranger in the layout
        {{u"UPDATE reading SET value = 50"_s}, 1},
        {{u"INSERT INTO parameter VALUES ('zz', 'z', 'z', '[]', 0, 1)"_s, u"UPDATE reading SET parameter = 'zz'"_s}, 1},
        {{u"UPDATE journal_row SET of_table = 'zz'"_s}, 1},
        {{u"DROP INDEX tank_name"_s, u"UPDATE tank SET name = 'Same'"_s}, 1},
        {{u"INSERT INTO journal VALUES (0, 0, 0, 'x', 'undone', 0)"_s}, 1},
        {{u"DELETE FROM test_kit"_s}, 1},
    };
    for (const auto& [statements, problems] : cases) {
        TempStore temp;
        static_cast<void>(fill(*temp));
        temp.close();
        tamper(temp.path(), statements);
        temp.reopen();
        const auto report = temp->verify();
        ASSERT_TRUE(succeeded(report));
        EXPECT_EQ(static_cast<int>(report->problems.size()), problems) << statements.join(u';').toStdString();
    }
}
