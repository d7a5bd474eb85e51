// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

namespace {

QByteArray looks()
{
    return "tank,at,kind,subject,severity,where\n"
           "Heron Reach,2026-11-24T08:00Z,observation,strands=yes,,\n"
           "Heron Reach,2026-11-24T08:00Z,observation,colour=bright_green,,\n"
           "Heron Reach,2026-11-24T08:00Z,observation,branches=no,,\n";
}

} // namespace

TEST_F(Ctl, findingsWeighWhatWasSeen)
{
    const QString store = storeWithTank();
    expect(0, {u"import"_s, store, write(u"looks.csv"_s, looks())});
    const QByteArray out = expect(0, {u"findings"_s, store, u"--tank"_s, u"Heron Reach"_s, u"--json"_s});
    const QJsonObject json = QJsonDocument::fromJson(out).object();
    EXPECT_EQ(json[u"tank"_s].toString(), u"Heron Reach"_s);
    EXPECT_EQ(json[u"age_days"_s].toInt(), 16);
    const QJsonArray all = json[u"findings"_s].toArray();
    ASSERT_FALSE(all.isEmpty());
    const QJsonObject first = all[0].toObject();
    EXPECT_EQ(first[u"condition"_s].toString(), u"alg_hair"_s);
    EXPECT_TRUE(first[u"seen"_s].toBool());
    EXPECT_FALSE(first[u"for"_s].toArray().isEmpty());
    EXPECT_FALSE(first[u"actions"_s].toArray().isEmpty());
    EXPECT_FALSE(first[u"source"_s].toString().isEmpty());
    EXPECT_FALSE(json[u"check"_s][u"key"_s].toString().isEmpty());
    EXPECT_FALSE(out.contains("probab"));

    const QByteArray text = expect(0, {u"findings"_s, store, u"--tank"_s, u"heron reach"_s});
    EXPECT_TRUE(text.startsWith("Heron Reach, day 16\n"));
    EXPECT_TRUE(text.contains("1. Soft green hair"));
    EXPECT_TRUE(text.contains("What decides best: "));
    // The caution stands before the first action.
    const qsizetype caution = text.indexOf("Before anything is done");
    ASSERT_GE(caution, 0);
    EXPECT_LT(caution, text.indexOf("   First\n"));
    EXPECT_FALSE(text.contains('!'));
}

TEST_F(Ctl, findingsOfAnUneventfulTankSayNothing)
{
    const QString store = storeWithTank();
    const QByteArray text =
        expect(0, {u"findings"_s, store, u"--tank"_s, u"Heron Reach"_s, u"--on"_s, u"2026-11-10"_s});
    EXPECT_TRUE(text.contains("Nothing on record points to any condition.")) << text.toStdString();
}

TEST_F(Ctl, findingsAndReviewRefuseWhatTheyCannotAnswer)
{
    const QString store = storeWithTank();
    for (const QString& verb : {u"findings"_s, u"review"_s}) {
        EXPECT_EQ(run({verb}).code, 2);
        EXPECT_EQ(run({verb, store}).code, 2);
        EXPECT_TRUE(expect(3, {verb, store, u"--tank"_s, u"Nowhere"_s}).contains("There is no tank \"Nowhere\"."));
        EXPECT_EQ(run({verb, path(u"none.littoral"_s), u"--tank"_s, u"x"_s}).code, 1);
        EXPECT_TRUE(expect(0, {verb, u"--help"_s}).startsWith("Usage: littoralctl " + verb.toUtf8() + " FILE"));
    }
    EXPECT_EQ(run({u"review"_s, store, u"--tank"_s, u"Heron Reach"_s, u"--onset"_s, u"soon"_s}).code, 2);
    EXPECT_EQ(run({u"review"_s, store, u"--tank"_s, u"Heron Reach"_s, u"--onset"_s, u"2025-01-01"_s}).code, 3);
}

// The sample row's bad tank had its blend of waters replaced by tap water; crypts melted days later.
TEST_F(Ctl, theSamplesBadTankIsReadRight)
{
    const QString store = path(u"sample.littoral"_s);
    expect(0, {u"sample"_s, store});
    const QJsonObject review =
        QJsonDocument::fromJson(expect(0, {u"review"_s, store, u"--tank"_s, u"Fen Corner"_s, u"--json"_s})).object();
    EXPECT_TRUE(review[u"onset_found"_s].toBool());
    QStringList done;
    QStringList read;
    for (const QJsonValue& change : review[u"changes"_s].toArray()) {
        (change[u"done"_s].toBool() ? done : read) << change[u"key"_s].toString();
    }
    ASSERT_FALSE(done.isEmpty());
    EXPECT_TRUE(done.contains(u"source-change"_s)) << done.join(u' ').toStdString();
    EXPECT_TRUE(read.contains(u"gh"_s) || read.contains(u"cond"_s) || read.contains(u"kh"_s))
        << read.join(u' ').toStdString();
    EXPECT_FALSE(review[u"exposures"_s].toArray().isEmpty());

    const QJsonObject found =
        QJsonDocument::fromJson(expect(0, {u"findings"_s, store, u"--tank"_s, u"Fen Corner"_s, u"--json"_s})).object();
    const QJsonArray all = found[u"findings"_s].toArray();
    ASSERT_FALSE(all.isEmpty());
    EXPECT_EQ(all[0][u"condition"_s].toString(), u"pl_crypt_melt"_s);

    const QByteArray text = expect(0, {u"review"_s, store, u"--tank"_s, u"Fen Corner"_s});
    EXPECT_TRUE(text.contains("What changed from"));
    EXPECT_TRUE(text.contains("Source water changed"));
    EXPECT_TRUE(text.contains("Exposure since flooding"));
}

} // namespace littoral::test
