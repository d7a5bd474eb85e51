// SPDX-License-Identifier: GPL-3.0-or-later
// Gates and limits as the keeper set them are what alerts, triggers, gates and the forecast go by at once.
#include "core/care/limits.h"
#include "core/care/own_gates.h"
#include "core/care/standing.h"
#include "core/care/trigger.h"
#include "tests/care/care_row.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

QString limitJson(const QString& key, double value)
{
    return u"{\"id\":\"%1\",\"value\":%2,\"source\":\"own tanks since 2019\"}"_s.arg(key).arg(value);
}

} // namespace

TEST(OwnRules, ALimitMovesAlertAndTriggerAndNamesItsSource)
{
    CareRow row;
    row.animals(u"neocaridina shrimp"_s, 30, 10);
    row.read(u"no3"_s, 60, 6.0); // mg N/L: 27 mg/L as the ion, under the trade limit of 50
    EXPECT_TRUE(care::alertsOf(row.sorted(), row.layoutId, CareRow::at(60)).empty());
    row.row.settings[care::limitSetting(u"nitrate-animals"_s)] = limitJson(u"nitrate-animals"_s, 5.0);
    const auto alerts = care::alertsOf(row.sorted(), row.layoutId, CareRow::at(60));
    ASSERT_EQ(alerts.size(), 1u);
    EXPECT_EQ(alerts[0].parameter, u"no3"_s);
    EXPECT_DOUBLE_EQ(alerts[0].limit, 5.0);
    EXPECT_TRUE(alerts[0].source.contains(u"own tanks since 2019"_s)) << alerts[0].source.toStdString();
    const auto at = care::circumstances(row.row, row.record(), CareRow::at(60));
    const auto triggers = care::activeTriggers(at);
    const auto nitrate = std::ranges::find(triggers, care::TriggerKind::NitrateHigh, &care::Trigger::kind);
    ASSERT_NE(nitrate, triggers.end());
    EXPECT_TRUE(nitrate->source.contains(u"own tanks since 2019"_s));
}

TEST(OwnRules, ABrokenLimitLeavesTheProgramsOwnAndIsReported)
{
    record::Row row;
    row.settings[u"fact.limit.nitrate-animals"_s] = limitJson(u"nitrate-animals"_s, 4000.0);
    row.settings[u"fact.limit.nitrite-animals"_s] = limitJson(u"nitrite-animals"_s, 0.1);
    row.settings[u"fact.limit.cool"_s] = limitJson(u"cool"_s, 23.0);
    const care::LimitSet set = care::limitSet(row);
    EXPECT_EQ(set.problems.size(), 2u);
    EXPECT_DOUBLE_EQ(set.limits.nitrateAnimals, care::Limits{}.nitrateAnimals);
    EXPECT_DOUBLE_EQ(set.limits.nitriteAnimals, care::Limits{}.nitriteAnimals) << "published, not to be set";
    EXPECT_DOUBLE_EQ(set.limits.cool_C, 23.0);
}

TEST(OwnRules, AGateOfTheKeepersDecidesAndReachesTheForecast)
{
    CareRow row;
    for (const int day : {16, 18, 20}) {
        row.read(u"tan"_s, day, 0.05);
        row.read(u"no2"_s, day, 0.01);
        row.read(u"ph"_s, day, 6.8);
    }
    const auto age = [&] {
        return care::gateState(row.sorted(), row.layoutId, u"G1"_s, CareRow::at(20))->condition(u"age"_s)->state;
    };
    EXPECT_EQ(age(), care::Known::Met);
    QJsonObject gate = care::gateObject(care::builtInGates().gates.front());
    QJsonObject ages = gate[u"min-age"_s].toObject();
    ages[u"new-media"_s] = 40;
    gate[u"min-age"_s] = ages;
    gate[u"tan"_s] = 0.1;
    gate[u"source"_s] = u"own experience"_s;
    row.row.settings[care::gateSetting(u"G1"_s)] = QString::fromUtf8(QJsonDocument(gate).toJson());
    EXPECT_EQ(age(), care::Known::Unmet);
    const auto rules = care::gateRules(row.row, row.layoutId);
    EXPECT_DOUBLE_EQ(rules.front().minDay, 40.0);
    EXPECT_DOUBLE_EQ(rules.front().total_mgN_per_L, 0.1);
    EXPECT_EQ(care::gateState(row.row, row.layoutId, u"G1"_s, CareRow::at(20))->source, u"own experience"_s);
    row.row.settings[care::gateSetting(u"G1"_s)] = u"{\"id\":\"G1\"}"_s;
    EXPECT_EQ(age(), care::Known::Met) << "a broken one leaves the program's own";
    EXPECT_EQ(care::gateSet(row.row).problems.size(), 1u);
}

TEST(OwnRules, TheDefaultsAreTheFiguresNamedInTheirSources)
{
    // 0.02 mg/L free ammonia: trade limit; 50 mg/L nitrate as the ion: trade limit over source water; 28 and 20
    // degrees: common practice. SRAC 462: 0.5 mg/L nitrite as the ion is 0.15 as N.
    const care::Limits limits;
    EXPECT_DOUBLE_EQ(limits.freeAmmoniaAnimals, 0.02);
    EXPECT_NEAR(limits.nitrateAnimals * 4.42664, 50.0, 0.01);
    EXPECT_NEAR(limits.nitriteAnimals * 3.28454, 0.5, 0.01);
    EXPECT_DOUBLE_EQ(limits.warm_C, 28.0);
    EXPECT_DOUBLE_EQ(limits.cool_C, 20.0);
    for (const care::LimitFact& fact : care::limitFacts()) {
        EXPECT_GE(limits.*(fact.value), fact.low) << fact.key.toStdString();
        EXPECT_LE(limits.*(fact.value), fact.high) << fact.key.toStdString();
        EXPECT_FALSE(fact.source.isEmpty());
    }
}
