// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

namespace {

const QByteArray kGood = "tank,date,kind,parameter,value,unit,fraction\n"
                         "Heron Reach,2026-11-24,,no2,0.5,mg/L NO2,\n"
                         "Heron Reach,2026-11-24,water-change,,,,0.5\n";
const QByteArray kBad = "tank,date,parameter,value,unit\n"
                        "Heron Reach,2026-11-23,no2,0.8,mg/L NO2\n"
                        "Heron Raech,2026-11-23,no2,0.8,mg/L NO2\n"
                        "Heron Reach,2026-11-23,no2,a lot,mg/L NO2\n";

} // namespace

TEST_F(Ctl, dryRunSaysWhatItWouldWrite)
{
    const QString store = storeWithTank();
    const QByteArray before = expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s});
    const QString good = write(u"good.csv"_s, kGood);
    EXPECT_EQ(expect(0, {u"import"_s, store, good, u"--dry-run"_s}),
              "Would write: tanks 0, readings 1, entries 1. There already: 0.\n");
    EXPECT_EQ(expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s}), before);
}

TEST_F(Ctl, importTwiceChangesNothing)
{
    const QString store = storeWithTank();
    const QString good = write(u"good.csv"_s, kGood);
    EXPECT_EQ(expect(0, {u"import"_s, store, good}), "Written: tanks 0, readings 1, entries 1. There already: 0.\n");
    const QByteArray once = expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s});
    EXPECT_EQ(expect(0, {u"import"_s, store, good}), "Written: tanks 0, readings 0, entries 0. There already: 2.\n");
    EXPECT_EQ(expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s}), once);
}

TEST_F(Ctl, oneBadRowKeepsEverythingOut)
{
    const QString store = storeWithTank();
    const QByteArray before = expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s});
    const Outcome outcome = run({u"import"_s, store, write(u"good.csv"_s, kGood), write(u"bad.csv"_s, kBad),
                                 write(u"Sill.json"_s, tankFile(u"Sill"_s))});
    EXPECT_EQ(outcome.code, 3);
    EXPECT_TRUE(outcome.out.isEmpty());
    EXPECT_TRUE(outcome.err.contains(
        "bad.csv, row 3, column tank: There is no tank \"Heron Raech\". Did you mean \"Heron Reach\"?"));
    EXPECT_TRUE(outcome.err.contains("bad.csv, row 4, column value: \"a lot\""));
    EXPECT_TRUE(outcome.err.contains("Nothing was written."));
    EXPECT_EQ(expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s}), before);
    EXPECT_EQ(cells(expect(0, {u"tank"_s, u"list"_s, store, u"--csv"_s})).size(), 2u);

    const Outcome json = run({u"import"_s, store, path(u"bad.csv"_s), u"--json"_s});
    EXPECT_EQ(json.code, 3);
    const QJsonObject object = QJsonDocument::fromJson(json.out).object();
    EXPECT_FALSE(object.value(u"written"_s).toBool(true));
    EXPECT_EQ(object.value(u"problems"_s).toArray().size(), 2);
}

TEST_F(Ctl, aTableMayFollowItsTank)
{
    const QString store = path(u"row.littoral"_s);
    expect(0, {u"init"_s, store});
    const QByteArray text =
        expect(0, {u"import"_s, store, write(u"t.json"_s, tankFile(u"Heron Reach"_s)), write(u"good.csv"_s, kGood)});
    EXPECT_EQ(text, "Written: tanks 1, readings 6, entries 4. There already: 0.\n");
    EXPECT_TRUE(
        expect(3, {u"import"_s, store, path(u"t.json"_s)}).contains("There is a tank \"Heron Reach\" already."));
}

TEST_F(Ctl, watersAndKitsOfTheSameNameAreToldApart)
{
    const QString store = storeWithTank();
    expect(0, {u"import"_s, store, write(u"same.json"_s, tankFile(u"Sill"_s))});
    QByteArray other = tankFile(u"Weir"_s);
    other.replace("\"nitrate_mg_per_l\": 8", "\"nitrate_mg_per_l\": 20");
    expect(0, {u"import"_s, store, write(u"other.json"_s, other)});
    const auto source = [&](const QString& tank) {
        return QJsonDocument::fromJson(expect(0, {u"tank"_s, u"show"_s, store, tank, u"--json"_s}))
            .object()
            .value(u"source"_s)
            .toString();
    };
    EXPECT_EQ(source(u"Heron Reach"_s), u"tap"_s);
    EXPECT_EQ(source(u"Sill"_s), u"tap"_s);
    EXPECT_EQ(source(u"Weir"_s), u"tap (Weir)"_s);
}

TEST_F(Ctl, filesThatCannotBeReadAreOne)
{
    const QString store = storeWithTank();
    EXPECT_EQ(run({u"import"_s, store, path(u"none.csv"_s)}).code, 1);
    EXPECT_EQ(run({u"import"_s, store, write(u"broken.json"_s, "{\"format\": ")}).code, 3);
    EXPECT_EQ(run({u"import"_s, store, write(u"open.csv"_s, "tank,date,parameter,value\n\"x")}).code, 3);
}

} // namespace littoral::test
