// SPDX-License-Identifier: GPL-3.0-or-later
// Gates at their boundaries. Limits and run lengths are defaults from common practice (resources/facts/gates.json).
#include "core/care/gates.h"
#include "core/water/nitrogen.h"
#include "tests/care/care_row.h"

#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using care::Known;
using record::EntryKind;

care::GateState gate(CareRow& row, const QString& key, int age, int hour = 18)
{
    return *care::gateState(row.sorted(), row.layoutId, key, CareRow::at(age, hour));
}

Known state(CareRow& row, const QString& key, const QString& condition, int age, int hour = 18)
{
    const care::GateState found = gate(row, key, age, hour);
    const care::GateCondition* wanted = found.condition(condition);
    return wanted == nullptr ? Known::Unknown : wanted->state;
}

void pair(CareRow& row, int age, double tan, double no2, int hour = 8)
{
    row.read(u"tan"_s, age, tan, hour);
    row.read(u"no2"_s, age, no2, hour);
}

TEST(Gate, AgeByStartMethod)
{
    CareRow fresh;
    EXPECT_EQ(state(fresh, u"G1"_s, u"age"_s, 13), Known::Unmet);
    EXPECT_EQ(state(fresh, u"G1"_s, u"age"_s, 14), Known::Met);
    CareRow mature(record::StartMethod::MatureMedia);
    EXPECT_EQ(state(mature, u"G1"_s, u"age"_s, 4), Known::Unmet);
    EXPECT_EQ(state(mature, u"G1"_s, u"age"_s, 5), Known::Met);
    EXPECT_EQ(gate(mature, u"G4"_s, 5).condition(u"age"_s)->earliest, CareRow::day(30));
}

TEST(Gate, LimitsIncludeTheirValue)
{
    CareRow row;
    pair(row, 20, 0.20, 0.06);
    EXPECT_EQ(state(row, u"G1"_s, u"tan"_s, 20), Known::Met);
    EXPECT_EQ(state(row, u"G1"_s, u"no2"_s, 20), Known::Met);
    EXPECT_EQ(state(row, u"G2"_s, u"tan"_s, 20), Known::Unmet);
    pair(row, 21, 0.201, 0.061);
    EXPECT_EQ(state(row, u"G1"_s, u"tan"_s, 21), Known::Unmet);
    EXPECT_EQ(state(row, u"G1"_s, u"no2"_s, 21), Known::Unmet);
    const care::GateState decided = gate(row, u"G1"_s, 21);
    EXPECT_TRUE(decided.condition(u"tan"_s)->reading) << "names the reading that decides";
}

TEST(Gate, FreeAmmoniaIsUnknownWithoutPh)
{
    CareRow row;
    pair(row, 20, 0.2, 0.0);
    EXPECT_EQ(state(row, u"G1"_s, u"nh3"_s, 20), Known::Unknown);
    row.read(u"ph"_s, 20, 8.0); // 5.02 % of 0.2 at 24 C: 0.010033 (UF/IFAS FA16's factor), over 0.010
    EXPECT_EQ(state(row, u"G1"_s, u"nh3"_s, 20), Known::Unmet);
    row.record().readings.back().value = 7.9;
    EXPECT_EQ(state(row, u"G1"_s, u"nh3"_s, 20), Known::Met);
}

TEST(Gate, ClearRunNeedsReadingsApartAndAfterTheChangeWearsOff)
{
    CareRow row;
    row.change(17, 0.5, 12);
    pair(row, 18, 0.1, 0.03, 9); // 21 h after the change
    EXPECT_EQ(gate(row, u"G1"_s, 18).condition(u"clear-run"_s)->have, 1);
    pair(row, 18, 0.1, 0.03, 17); // 8 h after the other
    EXPECT_EQ(gate(row, u"G1"_s, 18).condition(u"clear-run"_s)->have, 1);
    pair(row, 19, 0.1, 0.03, 17);
    EXPECT_EQ(state(row, u"G1"_s, u"clear-run"_s, 19), Known::Met);
    row.change(20, 0.5, 7);
    pair(row, 20, 0.1, 0.03, 12); // five hours after a change: does not count, does not break
    EXPECT_EQ(gate(row, u"G1"_s, 20).condition(u"clear-run"_s)->have, 2);
    pair(row, 21, 0.3, 0.03, 12);
    EXPECT_EQ(gate(row, u"G1"_s, 21).condition(u"clear-run"_s)->have, 0);
}

TEST(Gate, SecondGateNeedsASpanOfFourDaysWithinTen)
{
    CareRow row;
    for (const int age : {20, 21, 22}) {
        pair(row, age, 0.05, 0.02);
    }
    EXPECT_EQ(state(row, u"G2"_s, u"clear-run"_s, 22), Known::Unmet) << "three readings, two days";
    pair(row, 24, 0.05, 0.02);
    EXPECT_EQ(state(row, u"G2"_s, u"clear-run"_s, 24), Known::Met);
    EXPECT_EQ(state(row, u"G2"_s, u"clear-run"_s, 33), Known::Unmet) << "by then too old";
}

TEST(Gate, BelowTheFirstStepOfTheKit)
{
    CareRow row;
    record::TestKit kit;
    kit.id = {7};
    kit.parameter = u"tan"_s;
    kit.unit = u"mg/L NH4"_s;
    kit.steps = {0.0, 0.05, 0.1};
    row.row.kits.push_back(kit);
    record::Reading& reading = row.read(u"tan"_s, 30, 0.0);
    reading.kit = kit.id;
    EXPECT_EQ(state(row, u"G3"_s, u"tan"_s, 30), Known::Met);
    const double step = 0.05 / water::kAmmoniumPerN;
    row.record().readings.back().value = step;
    EXPECT_EQ(state(row, u"G3"_s, u"tan"_s, 30), Known::Unmet) << "the first step is not below it";
    record::Reading& between = row.record().readings.back();
    between.censoring = record::Censoring::Between;
    between.low = 0.0;
    between.high = step;
    between.value = step / 2;
    EXPECT_EQ(state(row, u"G3"_s, u"tan"_s, 30), Known::Unmet) << "a colour was seen";
    between.censoring = record::Censoring::Below;
    EXPECT_EQ(state(row, u"G3"_s, u"tan"_s, 30), Known::Met);
    between.high = 4 * step;
    EXPECT_EQ(state(row, u"G3"_s, u"tan"_s, 30), Known::Unknown) << "\"<0.2\" cannot tell";
}

TEST(Gate, FurtherConditions)
{
    CareRow row;
    EXPECT_EQ(state(row, u"G1"_s, u"copper-free"_s, 20), Known::Unknown);
    row.read(u"cu"_s, 15, 0.05);
    EXPECT_EQ(state(row, u"G1"_s, u"copper-free"_s, 20), Known::Unmet);
    EXPECT_EQ(state(row, u"G1"_s, u"melt-not-rising"_s, 20), Known::Unknown);
    row.observe(u"melt"_s, 12, 2);
    row.observe(u"melt"_s, 16, 2);
    EXPECT_EQ(state(row, u"G1"_s, u"melt-not-rising"_s, 20), Known::Met);
    row.observe(u"melt"_s, 18, 3);
    EXPECT_EQ(state(row, u"G1"_s, u"melt-not-rising"_s, 20), Known::Unmet);
    EXPECT_EQ(state(row, u"G1"_s, u"algae-to-eat"_s, 20), Known::Unknown);
    row.observe(u"alg_diatom"_s, 18, 1);
    EXPECT_EQ(state(row, u"G1"_s, u"algae-to-eat"_s, 20), Known::Met);
    row.enter(EntryKind::Co2Change, 18);
    EXPECT_EQ(state(row, u"G1"_s, u"co2-steady"_s, 20), Known::Unmet);
    EXPECT_EQ(state(row, u"G1"_s, u"co2-steady"_s, 22), Known::Unknown);
    row.enter(EntryKind::Upkeep, 22, u"co2-curve"_s);
    EXPECT_EQ(state(row, u"G1"_s, u"co2-steady"_s, 23), Known::Met);
    row.read(u"temp"_s, 22, 28.5);
    EXPECT_EQ(state(row, u"G1"_s, u"temperature"_s, 23), Known::Unmet);
}

TEST(Gate, LossesAndWaitingAfterAdditions)
{
    CareRow row;
    EXPECT_EQ(state(row, u"G2"_s, u"first-grazers-well"_s, 25), Known::Unknown);
    row.animals(u"nerite"_s, 20, 10);
    EXPECT_EQ(state(row, u"G2"_s, u"first-grazers-well"_s, 26), Known::Unmet);
    EXPECT_EQ(state(row, u"G2"_s, u"first-grazers-well"_s, 27), Known::Met);
    EXPECT_EQ(state(row, u"G3"_s, u"week-since-addition"_s, 26), Known::Unmet);
    EXPECT_EQ(state(row, u"G3"_s, u"week-since-addition"_s, 27), Known::Met);
    pair(row, 24, 0.1, 0.2);
    EXPECT_EQ(state(row, u"G3"_s, u"week-since-addition"_s, 27), Known::Unmet) << "nitrite rose after it";
    row.enter(EntryKind::Loss, 26, u"nerite"_s).count = 1;
    EXPECT_EQ(state(row, u"G2"_s, u"first-grazers-well"_s, 27), Known::Unmet) << "one in ten is not under a tenth";
    EXPECT_EQ(state(row, u"G4"_s, u"no-recent-loss"_s, 39), Known::Unmet);
    EXPECT_EQ(state(row, u"G4"_s, u"no-recent-loss"_s, 41), Known::Met);
}

TEST(Gate, NothingGoesInWhileAmmoniaOrNitriteReactsToAnAddition)
{
    CareRow row;
    row.animals(u"nerite"_s, 20, 10);
    EXPECT_EQ(state(row, u"G2"_s, u"no-reaction"_s, 24), Known::Met);
    pair(row, 24, 0.1, 0.2);
    for (const QString& key : {u"G1"_s, u"G2"_s, u"G4"_s}) {
        EXPECT_EQ(state(row, key, u"no-reaction"_s, 25), Known::Unmet) << key.toStdString();
    }
    EXPECT_TRUE(gate(row, u"G1"_s, 25).condition(u"no-reaction"_s)->reading) << "names the reading";
    EXPECT_EQ(state(row, u"G2"_s, u"no-reaction"_s, 32), Known::Met) << "a week later";
    CareRow before;
    pair(before, 19, 0.1, 0.2);
    before.animals(u"nerite"_s, 20, 10);
    EXPECT_EQ(state(before, u"G2"_s, u"no-reaction"_s, 21), Known::Met) << "it was so before they came";
}

TEST(Gate, NoneOpensAroundAJourney)
{
    CareRow row;
    row.row.journeys.push_back({{1}, CareRow::day(60), CareRow::day(70), {}, {}, {}, {}});
    for (const QString& key : {u"G1"_s, u"G2"_s, u"G3"_s, u"G4"_s}) {
        EXPECT_EQ(state(row, key, u"keeper-there"_s, 56), Known::Met) << key.toStdString();
        EXPECT_EQ(state(row, key, u"keeper-there"_s, 57), Known::Unmet) << "three days before";
        EXPECT_EQ(state(row, key, u"keeper-there"_s, 69), Known::Unmet);
        EXPECT_EQ(state(row, key, u"keeper-there"_s, 70), Known::Met) << "back";
    }
    EXPECT_EQ(gate(row, u"G1"_s, 60).condition(u"keeper-there"_s)->earliest, CareRow::day(70));
}

TEST(Gate, RockThatHardensMustKeepToItsRangeForAWeek)
{
    CareRow row;
    EXPECT_EQ(state(row, u"G4"_s, u"hardness-in-range"_s, 50), Known::Met) << "no such rock";
    row.layout().rockHardens = true;
    EXPECT_EQ(state(row, u"G4"_s, u"hardness-in-range"_s, 50), Known::Unknown) << "no range, no readings";
    row.target(u"gh"_s, 0.5, 1.0);
    row.target(u"kh"_s, 0.5, 1.5);
    for (const int age : {42, 49}) {
        row.read(u"gh"_s, age, 0.9);
        row.read(u"kh"_s, age, 1.0);
    }
    EXPECT_EQ(state(row, u"G4"_s, u"hardness-in-range"_s, 50), Known::Met);
    row.read(u"gh"_s, 50, 1.1);
    EXPECT_EQ(state(row, u"G4"_s, u"hardness-in-range"_s, 50), Known::Unmet);
}

TEST(Gate, HeatHoldsTheFourthGateToo)
{
    CareRow row;
    row.read(u"temp"_s, 60, 28.5);
    EXPECT_EQ(state(row, u"G4"_s, u"temperature"_s, 60), Known::Unmet);
}

TEST(Gate, CadenceMustBeWeekly)
{
    CareRow row;
    EXPECT_EQ(state(row, u"G3"_s, u"weekly-cadence"_s, 28), Known::Unmet);
    EXPECT_EQ(state(row, u"G3"_s, u"weekly-cadence"_s, 29), Known::Met);
}

TEST(Gate, OpensWhenAllIsMet)
{
    CareRow row(record::StartMethod::NewMedia, record::Bed::RichSoil, record::Co2Mode::None);
    for (const int age : {14, 16}) {
        pair(row, age, 0.1, 0.03);
    }
    row.read(u"ph"_s, 16, 6.8);
    row.read(u"temp"_s, 16, 24.0);
    row.read(u"cu"_s, 16, 0.0);
    row.observe(u"melt"_s, 12, 1);
    row.observe(u"melt"_s, 16, 1);
    EXPECT_EQ(gate(row, u"G1"_s, 16).state(), Known::Unknown) << "algae to eat was not looked at";
    row.observe(u"alg_diatom"_s, 16, 1);
    EXPECT_EQ(gate(row, u"G1"_s, 16).state(), Known::Met);
    EXPECT_EQ(gate(row, u"G1"_s, 13).state(), Known::Unmet);
}

TEST(Gate, NoStateBeforeFlooding)
{
    CareRow row;
    EXPECT_TRUE(care::gateStates(row.row, row.layoutId, CareRow::at(-1)).empty());
    EXPECT_FALSE(care::gateState(row.row, row.layoutId, u"G9"_s, CareRow::at(20)));
}

TEST(Gate, RulesForTheForecaster)
{
    CareRow row;
    const auto rules = care::gateRules(row.row, row.layoutId);
    ASSERT_EQ(rules.size(), 4U);
    EXPECT_EQ(rules[0].key, "G1");
    EXPECT_DOUBLE_EQ(rules[0].minDay, 14.0);
    EXPECT_DOUBLE_EQ(rules[0].total_mgN_per_L, 0.20);
    EXPECT_DOUBLE_EQ(rules[0].nitrite_mgN_per_L, 0.06);
    EXPECT_DOUBLE_EQ(rules[0].spanDays, 1.0);
    EXPECT_DOUBLE_EQ(rules[1].spanDays, 4.0);
    EXPECT_DOUBLE_EQ(rules[3].spanDays, 14.0);
    EXPECT_LT(rules[2].total_mgN_per_L, rules[1].total_mgN_per_L);
    EXPECT_TRUE(care::gateRules(row.row, record::LayoutId{99}).empty());
}

} // namespace
