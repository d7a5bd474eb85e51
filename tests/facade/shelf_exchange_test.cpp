// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/supplies.h"
#include "core/care/template_text.h"
#include "core/care/work_template.h"
#include "core/facade/export.h"
#include "core/facade/import.h"
#include "core/facade/shelf_exchange.h"
#include "tests/support/temp_store.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

namespace {

QString fileWith(const TempKeeper& t, const QString& name, const QByteArray& bytes)
{
    const QString path = t.dir.filePath(name);
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    return path;
}

void fill(TempKeeper& t)
{
    t.addTank(u"Long Reach"_s, 20);
    store::Edit edit(u"shelf"_s);
    record::SourceWater tap;
    tap.name = u"tap"_s;
    tap.id = edit.put(tap);
    record::Supply supply;
    supply.name = u"Conditioner"_s;
    supply.kind = u"conditioner"_s;
    supply.amount = 250.0;
    supply.unit = u"mL"_s;
    supply.opened = QDate(2026, 10, 1);
    supply.expires = QDate(2028, 1, 31);
    supply.lot = u"7"_s;
    supply.note = u"shelf"_s;
    const record::SupplyId id = edit.put(supply);
    care::SupplyUse use;
    use.perLitre = 0.05;
    use.source = tap.id;
    edit.set(care::supplyUseKey(id), care::supplyUseText(use));
    record::TaskTemplate own;
    own.key = u"glass"_s;
    own.definition = care::builtInDefinition(care::builtInTemplates().back().key);
    own.key = care::builtInTemplates().back().key;
    edit.put(own);
    record::TaskTemplate off;
    off.key = care::builtInTemplates().front().key;
    off.definition = "{}";
    off.disabled = true;
    edit.put(off);
    ASSERT_TRUE(t.keeper.commit(edit));
}

} // namespace

TEST(ShelfExchange, SuppliesAndTemplatesGoOutAndComeBack)
{
    TempKeeper from;
    fill(from);
    const auto written = facade::exportRow(from.keeper.row(), from.dir.filePath(u"out"_s), false);
    ASSERT_TRUE(written);
    EXPECT_EQ(written->filter(u".json"_s).size(), 3) << "one tank, supplies, knowledge with the task templates";

    TempKeeper to;
    to.addTank(u"Long Reach"_s, 20);
    store::Edit water(u"water"_s);
    record::SourceWater tap;
    tap.name = u"Tap"_s;
    tap.id = water.put(tap);
    ASSERT_TRUE(to.keeper.commit(water));
    const QStringList files{from.dir.filePath(u"out/supplies.json"_s), from.dir.filePath(u"out/knowledge.json"_s)};
    const auto summary = facade::importFiles(to.keeper, files, false);
    ASSERT_TRUE(summary);
    EXPECT_TRUE(summary->problems.isEmpty()) << summary->problems.join(u'\n').toStdString();
    EXPECT_EQ(summary->shelf, 1);
    EXPECT_EQ(summary->facts, 2) << "the two templates";
    ASSERT_EQ(to.keeper.row().supplies.size(), 1U);
    record::Supply copy = to.keeper.row().supplies[0];
    EXPECT_EQ(care::supplyUse(to.keeper.row(), copy.id).source, tap.id) << "by name";
    EXPECT_EQ(care::supplyUse(to.keeper.row(), copy.id).perLitre, 0.05);
    copy.id = from.keeper.row().supplies[0].id;
    EXPECT_EQ(copy, from.keeper.row().supplies[0]);
    ASSERT_EQ(to.keeper.row().templates.size(), 2U);
    EXPECT_EQ(care::templatesFor(to.keeper.row()).problems.size(), 0U);
    // Again: nothing doubles. One undo takes the first import back.
    const auto again = facade::importFiles(to.keeper, files, false);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->shelf, 0);
    ASSERT_TRUE(to.keeper.undo());
    EXPECT_TRUE(to.keeper.row().supplies.empty());
    EXPECT_TRUE(to.keeper.row().templates.empty());
}

TEST(ShelfExchange, WhatIsWrongIsNamedAndNothingIsWritten)
{
    TempKeeper t;
    const auto problemsOf = [&](const QByteArray& bytes) {
        const auto summary = facade::importFiles(t.keeper, {fileWith(t, u"shelf.json"_s, bytes)}, false);
        return summary ? summary->problems.join(u'\n') : QString::fromStdString(summary.error().sentence());
    };
    const QByteArray head = R"({"format": "littoral-supplies", "version": 1, "supplies": )";
    EXPECT_TRUE(problemsOf(head + R"([{"name": "x", "kind": "gold"}]})").contains(u"\"gold\" is not one of"_s));
    EXPECT_TRUE(problemsOf(head + R"([{"name": "x", "kind": "salt", "opend": "2026-01-01"}]})").contains(u"opend"_s));
    EXPECT_TRUE(problemsOf(head + R"([{"name": "x", "kind": "salt", "opened": "soon"}]})").contains(u"\"soon\""_s));
    EXPECT_TRUE(problemsOf(head + R"([{"name": "x", "kind": "salt", "source": "well"}]})").contains(u"\"well\""_s));
    EXPECT_TRUE(problemsOf(R"({"format": "littoral-supplies", "version": 9})").contains(u"version 1"_s));
    EXPECT_TRUE(t.keeper.row().supplies.empty());
    EXPECT_TRUE(t.keeper.row().templates.empty());
}
