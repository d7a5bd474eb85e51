// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

TEST_F(Ctl, helpAndVersion)
{
    EXPECT_TRUE(expect(0, {u"--help"_s}).contains("Exit codes: 0 done"));
    EXPECT_TRUE(expect(0, {u"--version"_s}).startsWith("littoralctl "));
    for (const char* verb :
         {"init", "sample", "import", "due", "forecast", "findings", "review", "export", "verify", "backup"}) {
        const QByteArray help = expect(0, {QString::fromLatin1(verb), u"--help"_s});
        EXPECT_TRUE(help.startsWith(QByteArray("Usage: littoralctl ") + verb + " FILE")) << help.toStdString();
        EXPECT_TRUE(help.contains("Examples:\n  littoralctl ")) << verb;
    }
    for (const char* what : {"add", "list", "show"}) {
        EXPECT_TRUE(expect(0, {u"tank"_s, QString::fromLatin1(what), u"--help"_s})
                        .startsWith(QByteArray("Usage: littoralctl tank ") + what));
    }
    EXPECT_TRUE(expect(0, {u"tank"_s, u"--help"_s}).contains("add|list|show"));
}

TEST_F(Ctl, usageIsTwo)
{
    const QList<QStringList> lines{
        {},
        {u"frobnicate"_s},
        {u"init"_s},
        {u"init"_s, u"a"_s, u"b"_s},
        {u"init"_s, u"a"_s, u"--loud"_s},
        {u"tank"_s},
        {u"tank"_s, u"sell"_s},
        {u"tank"_s, u"add"_s, u"a"_s},
        {u"tank"_s, u"add"_s, u"a"_s, u"--name"_s, u"x"_s},
        {u"tank"_s, u"add"_s, u"a"_s, u"--name"_s, u"x"_s, u"--net-litres"_s, u"many"_s},
        {u"tank"_s, u"add"_s, u"a"_s, u"--name"_s, u"x"_s, u"--net-litres"_s, u"9"_s, u"--bed"_s, u"mud"_s},
        {u"tank"_s, u"list"_s, u"a"_s, u"--json"_s, u"--csv"_s},
        {u"import"_s, u"a"_s},
        {u"due"_s, u"a"_s, u"--on"_s, u"soon"_s},
        {u"forecast"_s, u"a"_s},
        {u"forecast"_s, u"a"_s, u"--all"_s, u"--tank"_s, u"x"_s},
        {u"forecast"_s, u"a"_s, u"--all"_s, u"--days"_s, u"-1"_s},
        {u"forecast"_s, u"a"_s, u"--all"_s, u"--at"_s, u"3,x"_s},
        {u"forecast"_s, u"a"_s, u"--all"_s, u"--as-of"_s, u"25.11.2026"_s}};
    for (const QStringList& line : lines) {
        const Outcome outcome = run(line);
        EXPECT_EQ(outcome.code, 2) << line.join(u' ').toStdString();
        EXPECT_TRUE(outcome.out.isEmpty());
        EXPECT_FALSE(outcome.err.isEmpty());
    }
    EXPECT_TRUE(run({u"forcast"_s, u"a"_s}).err.contains("Did you mean \"forecast\"?"));
    EXPECT_FALSE(QFile::exists(path(u"a"_s)));
}

TEST_F(Ctl, aStoreThatIsNotThereIsOne)
{
    const QString none = path(u"none.littoral"_s);
    for (const QStringList& line :
         QList<QStringList>{{u"tank"_s, u"list"_s, none},
                            {u"due"_s, none},
                            {u"forecast"_s, none, u"--all"_s},
                            {u"export"_s, none, path(u"out"_s)},
                            {u"verify"_s, none},
                            {u"backup"_s, none, path(u"copy.littoral"_s)},
                            {u"import"_s, none, write(u"x.csv"_s, "tank,date,parameter,value\n")}}) {
        const Outcome outcome = run(line);
        EXPECT_EQ(outcome.code, 1) << line.join(u' ').toStdString() << outcome.err.toStdString();
        EXPECT_TRUE(outcome.err.startsWith("littoralctl: "));
        EXPECT_TRUE(outcome.out.isEmpty());
    }
    EXPECT_FALSE(QFile::exists(none));
}

TEST_F(Ctl, initLeavesAnExistingFileAlone)
{
    const QString store = path(u"row.littoral"_s);
    expect(0, {u"init"_s, store});
    const QByteArray before = read(u"row.littoral"_s);
    expect(1, {u"init"_s, store});
    expect(1, {u"sample"_s, store});
    EXPECT_EQ(read(u"row.littoral"_s), before);
}

TEST_F(Ctl, tanksAreAddedListedAndShown)
{
    const QString store = path(u"row.littoral"_s);
    expect(0, {u"init"_s, store});
    EXPECT_TRUE(expect(0, {u"tank"_s, u"list"_s, store}).contains("no tanks"));
    expect(0, {u"tank"_s, u"add"_s, store, u"--name"_s, u"Fen Corner"_s, u"--length-cm"_s, u"60"_s, u"--depth-cm"_s,
               u"45"_s, u"--height-cm"_s, u"40"_s, u"--flooded"_s, u"2026-11-09"_s, u"--bed"_s, u"rich-soil"_s,
               u"--bed-litres"_s, u"14"_s});
    expect(0, {u"tank"_s, u"add"_s, store, u"--name"_s, u"Sill"_s, u"--net-litres"_s, u"18"_s, u"--start"_s,
               u"mature-media"_s, u"--bed"_s, u"inert"_s});
    EXPECT_TRUE(
        expect(3, {u"tank"_s, u"add"_s, store, u"--name"_s, u"sill"_s, u"--net-litres"_s, u"9"_s}).contains("already"));
    EXPECT_TRUE(expect(3, {u"tank"_s, u"add"_s, store, u"--name"_s, u"New"_s, u"--net-litres"_s, u"9"_s, u"--source"_s,
                           u"well"_s})
                    .contains("well"));

    const auto rows = cells(expect(0, {u"tank"_s, u"list"_s, store, u"--csv"_s}));
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[0].join(u','), u"tank,layout,flooded,age_days,litres,start,bed,readings,entries"_s);
    EXPECT_EQ(rows[1].mid(0, 4), (QStringList{u"Fen Corner"_s, u"1"_s, u"2026-11-09T12:00:00Z"_s, u"15"_s}));
    EXPECT_EQ(rows[2].mid(4, 3), (QStringList{u"18"_s, u"mature-media"_s, u"inert"_s}));

    const QJsonArray json = QJsonDocument::fromJson(expect(0, {u"tank"_s, u"list"_s, store, u"--json"_s})).array();
    ASSERT_EQ(json.size(), 2);
    EXPECT_EQ(json[1].toObject().value(u"litres"_s).toDouble(), 18.0);

    EXPECT_TRUE(expect(0, {u"tank"_s, u"show"_s, store, u"fen corner"_s}).contains("rich-soil"));
    EXPECT_EQ(QJsonDocument::fromJson(expect(0, {u"tank"_s, u"show"_s, store, u"Sill"_s, u"--json"_s}))
                  .object()
                  .value(u"net_litres"_s)
                  .toDouble(),
              18.0);
    EXPECT_TRUE(expect(3, {u"tank"_s, u"show"_s, store, u"Fen Croner"_s}).contains("Did you mean \"Fen Corner\"?"));
}

TEST_F(Ctl, exportComesBackIn)
{
    const QString store = storeWithTank();
    const QByteArray listed = expect(0, {u"export"_s, store, path(u"out"_s)});
    EXPECT_EQ(listed.count('\n'), 3);
    EXPECT_TRUE(read(u"out/readings.csv"_s).startsWith("tank,layout,at,parameter,value,unit,kit,note,entered\r\n"));
    expect(1, {u"export"_s, store, path(u"out"_s)});
    expect(0, {u"export"_s, store, path(u"out"_s), u"--overwrite"_s});

    const QString copy = path(u"copy.littoral"_s);
    expect(0, {u"init"_s, copy});
    expect(0, {u"import"_s, copy, path(u"out/tanks/Heron-Reach.json"_s)});
    expect(0, {u"export"_s, copy, path(u"again"_s)});
    for (const QString& file : {u"readings.csv"_s, u"entries.csv"_s, u"tanks/Heron-Reach.json"_s}) {
        EXPECT_EQ(read(u"out/"_s + file), read(u"again/"_s + file)) << file.toStdString();
    }
    // The tables say nothing that the tank file has not brought already.
    const QByteArray twice = expect(0, {u"import"_s, copy, path(u"out/readings.csv"_s), path(u"out/entries.csv"_s)});
    EXPECT_TRUE(twice.contains("tanks 0, readings 0, entries 0. There already: 8.")) << twice.toStdString();
}

TEST_F(Ctl, verifyAndBackup)
{
    const QString store = storeWithTank();
    EXPECT_TRUE(expect(0, {u"verify"_s, store}).contains("The store is sound."));
    const QJsonObject json = QJsonDocument::fromJson(expect(0, {u"verify"_s, store, u"--json"_s})).object();
    EXPECT_EQ(json.value(u"readings"_s).toInt(), 5);
    EXPECT_TRUE(json.value(u"problems"_s).toArray().isEmpty());

    const QString copy = path(u"copy.littoral"_s);
    expect(0, {u"backup"_s, store, copy});
    EXPECT_EQ(expect(0, {u"tank"_s, u"show"_s, copy, u"Heron Reach"_s}),
              expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s}));
    expect(1, {u"backup"_s, store, copy});
}

TEST_F(Ctl, verifyFindsDamage)
{
    const QString store = storeWithTank();
    QByteArray bytes = read(u"row.littoral"_s);
    // Everything after the first page, which holds the header and the schema, overwritten.
    for (qsizetype i = 4096; i < bytes.size(); ++i) {
        bytes[i] = static_cast<char>(0x5a);
    }
    const QString damaged = write(u"damaged.littoral"_s, bytes);
    EXPECT_EQ(run({u"verify"_s, damaged}).code, 4);
    EXPECT_EQ(run({u"verify"_s, write(u"text.littoral"_s, "not a store at all")}).code, 1);
}

TEST_F(Ctl, sampleMakesARowThatIsSound)
{
    const QString store = path(u"sample.littoral"_s);
    expect(0, {u"sample"_s, store});
    EXPECT_TRUE(expect(0, {u"verify"_s, store}).contains("sound"));
    EXPECT_GE(cells(expect(0, {u"tank"_s, u"list"_s, store, u"--csv"_s})).size(), 5u);
    // All of it comes back from its export, media moved between tanks included, whichever tank's file comes first.
    const QString again = path(u"again.littoral"_s);
    expect(0, {u"export"_s, store, path(u"out"_s)});
    expect(0, {u"init"_s, again});
    QStringList import{u"import"_s, again};
    QStringList byName;
    const auto listed = cells(expect(0, {u"tank"_s, u"list"_s, store, u"--csv"_s}));
    for (std::size_t i = 1; i < listed.size(); ++i) {
        byName << path(u"out/tanks/%1.json"_s.arg(QString(listed[i][0]).replace(u' ', u'-')));
    }
    expect(0, import + byName);
    expect(0, {u"export"_s, again, path(u"out2"_s)});
    EXPECT_EQ(read(u"out/entries.csv"_s), read(u"out2/entries.csv"_s));
    EXPECT_EQ(read(u"out/readings.csv"_s), read(u"out2/readings.csv"_s));
    const auto due = cells(expect(0, {u"due"_s, store, u"--csv"_s}));
    EXPECT_GE(due.size(), 2u);
}

} // namespace littoral::test
