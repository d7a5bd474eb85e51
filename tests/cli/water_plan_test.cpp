// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

TEST_F(Ctl, waterPlanSumsTheRow)
{
    const QString store = storeWithTank();
    const QByteArray out = expect(0, {u"water-plan"_s, store, u"--conditioner"_s, u"5"_s, u"--json"_s});
    const QJsonObject all = QJsonDocument::fromJson(out).object();
    const QJsonArray days = all.value(u"days"_s).toArray();
    ASSERT_EQ(days.size(), 14);
    EXPECT_EQ(days.first().toObject().value(u"day"_s).toString(), u"2026-11-25"_s);
    double litres = 0.0;
    double treated = 0.0;
    for (const QJsonValue& value : days) {
        const QJsonObject day = value.toObject();
        litres += day.value(u"litres"_s).toDouble();
        treated += day.value(u"to_treat_L"_s).toDouble();
        for (const QJsonValue& change : day.value(u"changes"_s).toArray()) {
            EXPECT_EQ(change.toObject().value(u"tank"_s).toString(), u"Heron Reach"_s);
        }
    }
    EXPECT_GT(litres, 0.0);
    EXPECT_NEAR(all.value(u"litres"_s).toDouble(), litres, 1.0); // each day is rounded to tenths
    EXPECT_NEAR(all.value(u"conditioner_mL"_s).toDouble(), treated * 0.05, 0.2);
}

TEST_F(Ctl, waterPlanAsTableAndText)
{
    const QString store = storeWithTank();
    const auto rows = cells(expect(0, {u"water-plan"_s, store, u"--days"_s, u"7"_s, u"--csv"_s}));
    ASSERT_EQ(rows.size(), 8U);
    EXPECT_EQ(rows[0].join(u','), u"day,litres,to_treat_L,demineralised_L,conditioner_mL,collides,tanks"_s);
    const QByteArray text = expect(0, {u"water-plan"_s, store});
    EXPECT_TRUE(text.contains("Heron Reach")) << text.constData();
    EXPECT_TRUE(text.contains("In all")) << text.constData();
}

TEST_F(Ctl, waterPlanRefusesWhatItCannotMean)
{
    const QString store = storeWithTank();
    expect(2, {u"water-plan"_s, store, u"--days"_s, u"0"_s});
    expect(2, {u"water-plan"_s, store, u"--conditioner"_s, u"many"_s});
    expect(2, {u"water-plan"_s});
}

} // namespace littoral::test
