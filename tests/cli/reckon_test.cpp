// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

TEST_F(Ctl, reckonListsAndExplains)
{
    const QByteArray list = expect(0, {u"reckon"_s});
    for (const char* sheet : {"volume", "target", "co2", "dip", "stocking"}) {
        EXPECT_TRUE(list.contains(sheet)) << sheet;
    }
    const QByteArray sheet = expect(0, {u"reckon"_s, u"co2"_s});
    EXPECT_TRUE(sheet.contains("ph") && sheet.contains("needed") && sheet.contains("25 if not given"));
    EXPECT_TRUE(expect(0, {u"reckon"_s, u"--help"_s}).startsWith("Usage: littoralctl reckon"));
    const QJsonArray all =
        QJsonDocument::fromJson(expect(0, {u"reckon"_s, u"--json"_s})).object().value(u"sheets"_s).toArray();
    EXPECT_GE(all.size(), 17);
}

TEST_F(Ctl, reckonAnswersInTextAndJson)
{
    const QByteArray text = expect(0, {u"reckon"_s, u"dip"_s, u"percent=5"_s, u"litres=2"_s});
    EXPECT_TRUE(text.contains("100 mL"));
    EXPECT_LT(text.indexOf("Caution (C-BLEACH)"), text.indexOf("Result")); // cautions come before the figures to act on
    EXPECT_TRUE(text.contains("Source: "));
    // Plummer & Busenberg 1982, chart model: 35.46 mg/L at pH 6.6, 4 dKH, 25 °C.
    const QJsonObject json =
        QJsonDocument::fromJson(expect(0, {u"reckon"_s, u"co2"_s, u"6.6"_s, u"kh=4"_s, u"--json"_s})).object();
    EXPECT_EQ(json.value(u"sheet"_s).toString(), u"co2"_s);
    bool found = false;
    for (const QJsonValue& value : json.value(u"results"_s).toArray()) {
        const QJsonObject result = value.toObject();
        if (result.value(u"key"_s).toString() == u"chart"_s) {
            found = true;
            EXPECT_NEAR(result.value(u"value"_s).toDouble(), 35.458, 0.001);
            EXPECT_LT(result.value(u"low"_s).toDouble(), 30.0);
            EXPECT_GT(result.value(u"high"_s).toDouble(), 40.0);
        }
    }
    EXPECT_TRUE(found);
}

TEST_F(Ctl, reckonFillsFromATankAndSaysSo)
{
    const QString store = storeWithTank();
    const QByteArray text = expect(
        0, {u"reckon"_s, u"ammonia"_s, u"ph=7"_s, u"tan=0.5"_s, u"--tank"_s, u"Heron Reach"_s, u"--store"_s, store});
    EXPECT_TRUE(text.contains("Temperature")) << text.toStdString();
    EXPECT_TRUE(text.contains("set for this layout") || text.contains("reading of")) << text.toStdString();
    EXPECT_TRUE(expect(3, {u"reckon"_s, u"co2"_s, u"--tank"_s, u"Nowhere"_s, u"--store"_s, store})
                    .contains("There is no tank \"Nowhere\"."));
    expect(2, {u"reckon"_s, u"co2"_s, u"6.6"_s, u"--tank"_s, u"Heron Reach"_s});
}

TEST_F(Ctl, reckonRefusesBadInputWithThree)
{
    const QList<QStringList> lines{{u"reckon"_s, u"sorcery"_s},
                                   {u"reckon"_s, u"co2"_s, u"66"_s, u"4"_s},
                                   {u"reckon"_s, u"co2"_s, u"ph=acid"_s},
                                   {u"reckon"_s, u"co2"_s, u"6.6"_s},
                                   {u"reckon"_s, u"target"_s, u"80"_s, u"4"_s, u"5"_s}};
    for (const QStringList& line : lines) {
        const Outcome outcome = run(line);
        EXPECT_EQ(outcome.code, 3) << line.join(u' ').toStdString();
        EXPECT_TRUE(outcome.out.isEmpty());
        EXPECT_FALSE(outcome.err.isEmpty());
    }
    // The blank at fault, what is wrong, how to mend it.
    const QByteArray told = run({u"reckon"_s, u"co2"_s, u"66"_s, u"4"_s}).err;
    EXPECT_TRUE(told.startsWith("littoralctl: ph: ")) << told.toStdString();
    EXPECT_TRUE(told.contains("must lie from 4 to 10") && told.contains("Check the decimal mark"))
        << told.toStdString();
}

} // namespace littoral::test
