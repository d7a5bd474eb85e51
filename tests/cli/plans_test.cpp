// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace littoral::test {

using namespace Qt::StringLiterals;

namespace {

QStringList about(const QString& verb, const QString& store, const QStringList& more = {})
{
    return QStringList{verb, store, u"--tank"_s, u"Heron Reach"_s} + more;
}

QJsonObject object(const QByteArray& json)
{
    return QJsonDocument::fromJson(json).object();
}

} // namespace

TEST_F(Ctl, plansAreComparedAndOneIsAdopted)
{
    const QString store = storeWithTank();
    const QJsonObject json = object(
        expect(0, about(u"plans"_s, store,
                        {u"--gate"_s, u"G2"_s, u"--max-nitrite"_s, u"5"_s, u"--under"_s, u"90"_s, u"--json"_s})));
    EXPECT_EQ(json.value(u"gate"_s).toString(), u"G2"_s);
    const QJsonArray plans = json.value(u"plans"_s).toArray();
    ASSERT_GE(plans.size(), 61);
    EXPECT_TRUE(plans[0].toObject().value(u"present"_s).toBool());
    const auto shown =
        std::ranges::count_if(plans, [](const QJsonValue& plan) { return plan.toObject().value(u"shown"_s).toBool(); });
    EXPECT_GE(shown, 2);
    EXPECT_LE(shown, 8);
    // The least water of all those that keep to it, by the numbers printed beside it.
    ASSERT_TRUE(json.value(u"cheapest"_s).isDouble());
    const int cheapest = json.value(u"cheapest"_s).toInt();
    EXPECT_GE(plans[cheapest].toObject().value(u"litres_to_gate"_s).toDouble(-1.0), 0.0);

    const QByteArray text = expect(0, about(u"plans"_s, store));
    EXPECT_TRUE(text.startsWith("Heron Reach: water-change plans")) << text.toStdString();
    EXPECT_TRUE(text.contains("as planned now"));

    const auto weekly = std::ranges::find_if(plans, [](const QJsonValue& plan) {
        const QJsonObject one = plan.toObject();
        return one.value(u"fraction"_s).toDouble() == 0.3 && one.value(u"every_days"_s).toDouble() == 7.0 &&
               !one.contains(u"ease_after_days"_s);
    });
    ASSERT_NE(weekly, plans.end());
    const QString number = QString::number((*weekly).toObject().value(u"number"_s).toInt());
    const QByteArray adopted = expect(0, about(u"plans"_s, store, {u"--gate"_s, u"G2"_s, u"--adopt"_s, number}));
    EXPECT_TRUE(adopted.startsWith("Plan adopted: 30 % every 7 days, Heron Reach")) << adopted.toStdString();
    EXPECT_TRUE(adopted.contains("put in: 5; taken out: 1")) << adopted.toStdString();

    // It is what is due, and nothing of the cadence beside it.
    const QJsonArray due = object(expect(0, {u"due"_s, store, u"--json"_s})).value(u"work"_s).toArray();
    int changes = 0;
    for (const QJsonValue& item : due) {
        if (item.toObject().value(u"work"_s).toString().contains(u"water"_s)) {
            ++changes;
            EXPECT_DOUBLE_EQ(item.toObject().value(u"fraction"_s).toDouble(), 0.3);
        }
    }
    EXPECT_EQ(changes, 2); // the last change is ten days back: one today, one in a week
    EXPECT_TRUE(expect(0, about(u"forecast"_s, store)).contains("Plan followed: what the record plans"));
}

TEST_F(Ctl, plansRefuseWhatCannotBe)
{
    const QString store = storeWithTank();
    expect(2, about(u"plans"_s, store, {u"--max-nitrite"_s, u"1"_s}));
    expect(2, about(u"plans"_s, store, {u"--gate"_s, u"G9"_s}));
    expect(2, {u"plans"_s, store});
    expect(3, {u"plans"_s, store, u"--tank"_s, u"Nowhere"_s});
    expect(3, about(u"plans"_s, store, {u"--adopt"_s, u"999"_s}));
}

TEST_F(Ctl, nextTestSaysWhatEachAnswerWouldTell)
{
    const QString store = storeWithTank();
    const QJsonObject json = object(expect(0, about(u"next-test"_s, store, {u"--gate"_s, u"complete"_s, u"--json"_s})));
    EXPECT_EQ(json.value(u"about"_s).toString(), u"complete"_s);
    const QJsonArray tests = json.value(u"tests"_s).toArray();
    EXPECT_LE(tests.size(), 3);
    double before = 1e9;
    for (const QJsonValue& value : tests) {
        const QJsonObject test = value.toObject();
        const double narrowing =
            test.value(u"width_days"_s).toDouble() - test.value(u"expected_width_days"_s).toDouble();
        EXPECT_GE(narrowing, 0.5);
        EXPECT_LE(narrowing, before);
        before = narrowing;
        double sum = 0.0;
        for (const QJsonValue& outcome : test.value(u"outcomes"_s).toArray()) {
            sum += outcome.toObject().value(u"probability"_s).toDouble();
        }
        EXPECT_GT(sum, 0.9); // answers under 1 in 100 are left out
        EXPECT_LE(sum, 1.0 + 1e-4);
    }
    EXPECT_TRUE(expect(0, about(u"next-test"_s, store)).startsWith("Heron Reach\n"));
}

TEST_F(Ctl, recordScoresWhatForecastKept)
{
    const QString store = storeWithTank();
    EXPECT_EQ(object(expect(0, {u"record"_s, store, u"--json"_s})).value(u"forecasts"_s).toInt(), 0);
    expect(0, about(u"forecast"_s, store));
    EXPECT_EQ(object(expect(0, {u"record"_s, store, u"--json"_s})).value(u"forecasts"_s).toInt(), 0);
    expect(0, about(u"forecast"_s, store, {u"--keep"_s}));
    expect(0, about(u"forecast"_s, store, {u"--keep"_s})); // nothing new: kept once
    expect(2, about(u"forecast"_s, store, {u"--keep"_s, u"--as-of"_s, u"2026-11-20"_s}));
    expect(0, {u"import"_s, store,
               write(u"later.csv"_s, "tank,at,parameter,value,unit,kit\n"
                                     "Heron Reach,2026-11-27T10:00:00Z,no2,1,mg/L NO2,card\n"
                                     "Heron Reach,2026-11-28T10:00:00Z,no2,1,mg/L NO2,card\n")});
    const QJsonObject json = object(expect(0, {u"record"_s, store, u"--json"_s}));
    EXPECT_EQ(json.value(u"forecasts"_s).toInt(), 1);
    EXPECT_EQ(json.value(u"all"_s).toObject().value(u"readings"_s).toInt(), 2);
    EXPECT_EQ(json.value(u"parameters"_s).toObject().value(u"no2"_s).toObject().value(u"pit"_s).toArray().size(), 2);
    const QByteArray text = expect(0, about(u"record"_s, store));
    EXPECT_TRUE(text.startsWith("Kept forecasts: 1.")) << text.toStdString();
    EXPECT_TRUE(text.contains("Of 2 readings, the 8-in-10 bands held")) << text.toStdString();
    expect(3, {u"record"_s, store, u"--tank"_s, u"Nowhere"_s});
    EXPECT_TRUE(expect(0, {u"verify"_s, store}).size() > 0);
}

TEST_F(Ctl, forecastTellsCapacityAndLoad)
{
    const QString store = storeWithTank();
    const QByteArray text = expect(0, about(u"forecast"_s, store, {u"--load"_s, u"0.1"_s}));
    EXPECT_TRUE(text.contains("The filter could take")) << text.toStdString();
    EXPECT_TRUE(text.contains("Filter carries 0.10 mg/L N a day")) << text.toStdString();
    EXPECT_TRUE(text.contains("Assumed: The filter is held against the load that was given"));
    const QJsonObject tank = object(expect(0, about(u"forecast"_s, store, {u"--load"_s, u"0.1"_s, u"--json"_s})))
                                 .value(u"tanks"_s)
                                 .toArray()[0]
                                 .toObject();
    EXPECT_DOUBLE_EQ(tank.value(u"load_mgn_per_l_d"_s).toDouble(), 0.1);
    EXPECT_TRUE(tank.contains(u"carries_load"_s));
    EXPECT_FALSE(tank.value(u"capacity_mgn_per_l_d"_s).toArray().isEmpty());
}

} // namespace littoral::test
