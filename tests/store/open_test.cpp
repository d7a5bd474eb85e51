// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"
#include "temp_store.h"

#include <QDir>
#include <QFile>
#include <sys/stat.h>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using store::Access;
using store::Store;

namespace {

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

QByteArray contents(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QStringList sideFiles(const TempStore& temp)
{
    return QDir(temp.folder()).entryList({u"*-wal"_s, u"*-shm"_s, u"*-journal"_s}, QDir::Files);
}

} // namespace

TEST(Open, FreshStoreIsEmptyAndOurs)
{
    TempStore temp;
    const auto row = temp->load();
    ASSERT_TRUE(succeeded(row));
    EXPECT_TRUE(row->tanks.empty());
    EXPECT_FALSE(temp->isReadOnly());
    EXPECT_EQ(temp->path(), temp.path());
    temp.close();
    EXPECT_EQ(ask(temp.path(), u"PRAGMA application_id"_s).toInt(), store::kApplicationId);
    EXPECT_EQ(ask(temp.path(), u"PRAGMA user_version"_s).toInt(), store::kSchemaVersion);
}

// The header fields stand where the SQLite file format description (sqlite.org/fileformat2.html, section 1.3) puts
// them: what `file` and other tools will read.
TEST(Open, HeaderCarriesIdAndVersionWhileStillOpen)
{
    const TempStore temp;
    const QByteArray bytes = contents(temp.path());
    EXPECT_EQ(bytes.mid(68, 4), QByteArray("LTRL"));
    EXPECT_EQ(bytes.mid(60, 4),
              QByteArray::fromHex(QByteArray::number(store::kSchemaVersion, 16).rightJustified(8, '0')));
}

TEST(Open, EveryGuardIsOn)
{
    TempStore temp;
    auto connection = store::Connection::open(temp.path(), store::Mode::ReadWrite);
    ASSERT_TRUE(succeeded(connection));
    const auto pragma = [&](const QString& name) {
        const auto value = (*connection)->value(u"PRAGMA "_s + name);
        return value ? value->toString() : QString();
    };
    EXPECT_EQ(pragma(u"foreign_keys"_s), u"1"_s);
    EXPECT_EQ(pragma(u"journal_mode"_s), u"wal"_s);
    EXPECT_EQ(pragma(u"synchronous"_s), u"2"_s); // FULL
    EXPECT_EQ(pragma(u"busy_timeout"_s), u"5000"_s);
    EXPECT_EQ(pragma(u"trusted_schema"_s), u"0"_s);
    EXPECT_EQ(pragma(u"cell_size_check"_s), u"1"_s);
}

TEST(Open, EveryTableIsStrictAndWrongTypesAreRefused)
{
    TempStore temp;
    temp.close();
    EXPECT_GE(
        ask(temp.path(),
            u"SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite_%' AND strict = 1"_s)
            .toInt(),
        17);
    EXPECT_EQ(
        ask(temp.path(),
            u"SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite_%' AND strict = 0"_s)
            .toInt(),
        0);
    auto connection = store::Connection::open(temp.path(), store::Mode::ReadWrite);
    ASSERT_TRUE(succeeded(connection));
    EXPECT_FALSE((*connection)->run(u"INSERT INTO tank VALUES (1, 'x', 'first', 1, 1, 1, 1, '')"_s));
    EXPECT_FALSE((*connection)->run(u"INSERT INTO tank VALUES (1, 'x', 1, 'long', 1, 1, 1, '')"_s));
    EXPECT_TRUE(succeeded((*connection)->run(u"INSERT INTO tank VALUES (1, 'x', 1, 60, 1, 1, 1, '')"_s)));
    EXPECT_FALSE((*connection)->run(u"INSERT INTO layout (id, tank) VALUES (1, 1)"_s));
    EXPECT_FALSE((*connection)->run(u"INSERT INTO target VALUES (1, 99, 'ph', 6, 7)"_s)) << "a tank that is not there";
    EXPECT_FALSE((*connection)->run(u"UPDATE tank SET name = '  '"_s));
}

TEST(Open, CatalogueExplainsItsUnits)
{
    TempStore temp;
    temp.close();
    EXPECT_EQ(ask(temp.path(), u"SELECT count(*) FROM parameter"_s).toULongLong(), record::parameters().size());
    EXPECT_EQ(ask(temp.path(), u"SELECT canonical_unit FROM parameter WHERE key = 'no3'"_s).toString(), u"mg/L N"_s);
    tamper(temp.path(), {u"UPDATE parameter SET name = 'other' WHERE key = 'ph'"_s});
    temp.reopen();
    temp.close();
    EXPECT_EQ(ask(temp.path(), u"SELECT name FROM parameter WHERE key = 'ph'"_s).toString(), u"pH"_s);
}

TEST(Open, CreateNeverOverwrites)
{
    TempStore temp;
    temp.close();
    const QByteArray before = contents(temp.path());
    const auto again = Store::create(temp.path());
    ASSERT_FALSE(again);
    EXPECT_TRUE(complete(again.error(), Fault::Conflict));
    EXPECT_EQ(contents(temp.path()), before);
}

TEST(Open, CreateInMissingFolderSaysSo)
{
    const TempStore temp;
    const auto made = Store::create(temp.path(u"no/such/folder/x.littoral"_s));
    ASSERT_FALSE(made);
    EXPECT_TRUE(complete(made.error(), Fault::Storage));
}

TEST(Open, MissingFile)
{
    const TempStore temp;
    const auto opened = Store::open(temp.path(u"none.littoral"_s));
    ASSERT_FALSE(opened);
    EXPECT_TRUE(complete(opened.error(), Fault::NotFound));
    EXPECT_FALSE(QFile::exists(temp.path(u"none.littoral"_s)));
}

TEST(Open, ForeignFilesAreLeftUntouched)
{
    const TempStore temp;
    const QString path = temp.path(u"other.littoral"_s);
    for (const QByteArray& bytes :
         {QByteArray(), QByteArray("some text that is no database\n"), QByteArray(5000, '\0')}) {
        write(path, bytes);
        const auto opened = Store::open(path);
        ASSERT_FALSE(opened);
        EXPECT_TRUE(complete(opened.error(), Fault::OtherFile));
        EXPECT_EQ(contents(path), bytes);
    }
    const auto folder = Store::open(temp.folder());
    ASSERT_FALSE(folder);
    EXPECT_TRUE(complete(folder.error(), Fault::OtherFile));
}

TEST(Open, AnotherApplicationsDatabaseIsLeftUntouched)
{
    const TempStore temp;
    const QString path = temp.path(u"other.db"_s);
    tamper(path,
           {u"CREATE TABLE tank (id INTEGER)"_s, u"PRAGMA application_id = 252006674"_s, u"PRAGMA user_version = 1"_s});
    const QByteArray before = contents(path);
    const auto opened = Store::open(path);
    ASSERT_FALSE(opened);
    EXPECT_TRUE(complete(opened.error(), Fault::OtherFile));
    EXPECT_EQ(contents(path), before);
}

TEST(Open, NewerStoreIsLeftUntouched)
{
    TempStore temp;
    temp.close();
    tamper(temp.path(), {u"PRAGMA user_version = 99"_s});
    const QByteArray before = contents(temp.path());
    const auto opened = Store::open(temp.path());
    ASSERT_FALSE(opened);
    EXPECT_TRUE(complete(opened.error(), Fault::NewerStore));
    EXPECT_NE(opened.error().what.find("99"), std::string::npos);
    EXPECT_EQ(contents(temp.path()), before);
}

TEST(Open, TruncatedFileIsDamaged)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    temp.close();
    const QByteArray whole = contents(temp.path());
    for (const qsizetype size : {qsizetype{50}, qsizetype{4096}, whole.size() / 2, whole.size() - 1}) {
        write(temp.path(), whole.left(size));
        const auto opened = Store::open(temp.path());
        ASSERT_FALSE(opened) << size;
        EXPECT_TRUE(complete(opened.error(), Fault::Damaged)) << size;
        EXPECT_NE(opened.error().mend.find("backup"), std::string::npos);
    }
}

TEST(Open, ScribbledPageIsDamaged)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    temp.close();
    QByteArray bytes = contents(temp.path());
    bytes.replace(4096 * 3, 4096, QByteArray(4096, 'x'));
    write(temp.path(), bytes);
    const auto opened = Store::open(temp.path());
    ASSERT_FALSE(opened);
    EXPECT_TRUE(complete(opened.error(), Fault::Damaged));
    EXPECT_EQ(contents(temp.path()), bytes) << "a damaged file is kept as it is";
}

TEST(Open, SideFilesGoWithTheLastClose)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    temp.close();
    EXPECT_EQ(sideFiles(temp), QStringList());
    auto opened = Store::open(temp.path(), Access::ReadOnly);
    ASSERT_TRUE(succeeded(opened));
    ASSERT_TRUE(succeeded((*opened)->load()));
    (*opened).reset();
    EXPECT_EQ(sideFiles(temp), QStringList());
}

TEST(Open, ReadOnlyReadsAndRefusesToWrite)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    temp.close();
    auto opened = Store::open(temp.path(), Access::ReadOnly);
    ASSERT_TRUE(succeeded(opened));
    Store& store = **opened;
    EXPECT_TRUE(store.isReadOnly());
    const auto row = store.load();
    ASSERT_TRUE(succeeded(row));
    EXPECT_NE(row->tank(ids.tank), nullptr);
    store::Edit edit(u"x"_s);
    edit.put(tankNamed(u"Third"_s));
    EXPECT_TRUE(complete(store.apply(edit).error(), Fault::Storage));
    EXPECT_TRUE(complete(store.undo().error(), Fault::Storage));
    EXPECT_TRUE(complete(store.redo().error(), Fault::Storage));
    ASSERT_TRUE(succeeded(store.backup(temp.path(u"copy.littoral"_s))));
    EXPECT_TRUE(complete(store.apply(edit).error(), Fault::Storage)) << "a backup must not lift the guard";
}

TEST(Open, FolderAndFileWithoutWriteRightsOpenForReading)
{
    TempStore temp;
    static_cast<void>(fill(*temp));
    temp.close();
    const QByteArray path = QFile::encodeName(temp.path());
    const QByteArray folder = QFile::encodeName(temp.folder());
    ASSERT_EQ(::chmod(path.constData(), 0444), 0);
    ASSERT_EQ(::chmod(folder.constData(), 0555), 0);
    EXPECT_TRUE(asCommonUser([&] {
        auto opened = Store::open(temp.path());
        if (!opened) {
            std::fprintf(stderr, "%s\n", opened.error().sentence().c_str());
            return false;
        }
        const auto row = (*opened)->load();
        store::Edit edit(u"x"_s);
        edit.put(tankNamed(u"Third"_s));
        return (*opened)->isReadOnly() && row && row->tanks.size() == 2 && !(*opened)->apply(edit);
    }));
    EXPECT_TRUE(asCommonUser([&] {
        const auto made = Store::create(temp.path(u"new.littoral"_s));
        return !made && complete(made.error(), Fault::Storage);
    }));
    ASSERT_EQ(::chmod(folder.constData(), 0755), 0);
    EXPECT_EQ(sideFiles(temp), QStringList());
}

TEST(Open, UnreadableFileSaysSo)
{
    TempStore temp;
    temp.close();
    ASSERT_EQ(::chmod(QFile::encodeName(temp.folder()).constData(), 0755), 0);
    ASSERT_EQ(::chmod(QFile::encodeName(temp.path()).constData(), 0000), 0);
    EXPECT_TRUE(asCommonUser([&] {
        const auto opened = Store::open(temp.path());
        return !opened && complete(opened.error(), Fault::Storage);
    }));
}
