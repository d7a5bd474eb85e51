// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences: numbers, dates, odds, and what due work, alerts and gates say.
#include "core/water/nitrogen.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"
#include "tests/care/care_row.h"

#include <QLocale>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using namespace littoral::wording;

const QDate kToday(2026, 11, 25);

class Wording : public testing::Test
{
protected:
    void SetUp() override { QLocale::setDefault(QLocale::c()); }
};

TEST_F(Wording, Numbers)
{
    EXPECT_EQ(numberText(-0.5, 1), u"−0.5"_s);
    EXPECT_EQ(numberText(-0.01, 1), u"0.0"_s);
    EXPECT_EQ(numberText(12345.6, 0), u"12\u2009346"_s);
    EXPECT_EQ(numberText(1500, 0), u"1500"_s);
    EXPECT_EQ(percentText(0.4), u"40 %"_s);
    EXPECT_EQ(percentText(0.625), u"62.5 %"_s);
    EXPECT_EQ(litresText(54.87), u"55 L"_s);
    EXPECT_EQ(litresText(7.5), u"7.5 L"_s);
    EXPECT_EQ(valueWithUnit(u"no2"_s, 1.0 / water::kNitritePerN), u"1 mg/L NO₂"_s);
    EXPECT_EQ(valueWithUnit(u"nh3"_s, 0.02517), u"0.025 mg/L N"_s);
    EXPECT_EQ(valueWithUnit(u"ph"_s, 6.6), u"6.6"_s);
    EXPECT_EQ(ageText(16), u"day 16"_s);
}

TEST_F(Wording, NumbersTakeTheLocalesDecimalMark)
{
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_EQ(numberText(0.5, 1), u"0,5"_s);
    EXPECT_EQ(numberText(-12345.5, 1), u"−12\u2009345,5"_s);
}

TEST_F(Wording, Dates)
{
    EXPECT_EQ(dateText({2026, 11, 22}, kToday), u"22 Nov"_s);
    EXPECT_EQ(dateText({2025, 11, 22}, kToday), u"22 Nov 2025"_s);
    EXPECT_EQ(dateRangeText({2026, 12, 4}, {2026, 12, 9}, kToday), u"4–9 Dec"_s);
    EXPECT_EQ(dateRangeText({2026, 11, 28}, {2026, 12, 3}, kToday), u"28 Nov – 3 Dec"_s);
    EXPECT_EQ(dateRangeText({2026, 12, 30}, {2027, 1, 2}, kToday), u"30 Dec 2026 – 2 Jan 2027"_s);
    EXPECT_EQ(dateRangeText({2026, 12, 4}, {2026, 12, 4}, kToday), u"4 Dec"_s);
    EXPECT_EQ(weekdayText({2026, 11, 22}, kToday), u"Sun 22 Nov"_s);
    EXPECT_EQ(overText(1), u"1 day over"_s);
    EXPECT_EQ(overText(3), u"3 days over"_s);
    EXPECT_TRUE(overText(0).isEmpty());
}

TEST_F(Wording, Odds)
{
    EXPECT_EQ(oddsText(0.8), u"8 in 10"_s);
    EXPECT_EQ(oddsText(0.1), u"1 in 10"_s);
    EXPECT_EQ(oddsText(0.02), u"1 in 50"_s);
    EXPECT_EQ(oddsText(0.95), u"19 in 20"_s);
    EXPECT_EQ(oddsText(0.0), u"less than 1 in 100"_s);
    EXPECT_EQ(oddsText(1.0), u"more than 99 in 100"_s);
    EXPECT_EQ(forecastRange(u"Nitrite clear"_s, {2026, 12, 4}, {2026, 12, 9}, 0.8, kToday),
              u"Nitrite clear 4–9 Dec, 8 in 10"_s);
}

TEST_F(Wording, AnOverdueChangeSaysWhatWhenAndWhy)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34}, 0.4);
    row.animals(u"cherry shrimp"_s, 30, 10);
    const care::DueItem item = row.due(u"water-change"_s, 44, 44).front();
    EXPECT_EQ(dueTitle(item), u"Water change 40 %"_s);
    EXPECT_EQ(dueChip(item), u"40 %"_s);
    EXPECT_EQ(dueWhen(item, CareRow::day(44)), u"3 days over"_s);
    const QString why = dueWhy(item, CareRow::day(44));
    EXPECT_TRUE(why.startsWith(
        u"Water change 40 %. Due Sat 11 Apr, 3 days over. The last one was 4 Apr; every 7 days until 26 Apr."_s))
        << why.toStdString();
    EXPECT_TRUE(why.contains(u"That is 40 L."_s)) << why.toStdString();
    EXPECT_TRUE(why.contains(u"In the tank: cherry shrimp."_s)) << why.toStdString();
    EXPECT_TRUE(why.contains(u"Rule: common practice."_s)) << why.toStdString();
}

TEST_F(Wording, TestsAndTriggers)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34, 41, 48}, 0.4);
    row.animals(u"tetra"_s, 40, 8);
    row.read(u"no2"_s, 50, 0.8 / water::kNitritePerN);
    const care::DueItem change = row.due(u"water-change"_s, 50, 50).front();
    const QString why = dueWhy(change, CareRow::day(50));
    EXPECT_TRUE(why.contains(u"Nitrite 0.8 mg/L NO₂ on 20 Apr: with animals the limit is 0.49 mg/L NO₂."_s))
        << why.toStdString();
    const care::DueItem test = row.due(u"test-after-event"_s, 41, 41).front();
    EXPECT_EQ(dueChip(test), u"Test NH₃/₄ NO₂"_s);
    EXPECT_EQ(dueTitle(test), u"Test total ammonia and nitrite"_s);
    EXPECT_TRUE(dueWhy(test, CareRow::day(41)).contains(u"Day 1 after animals were added, 10 Apr."_s));
}

TEST_F(Wording, AlertsGatesAndStanding)
{
    CareRow row;
    row.read(u"no2"_s, 14, 1.2 / water::kNitritePerN);
    row.read(u"no2"_s, 16, 2.0 / water::kNitritePerN);
    row.read(u"tan"_s, 16, 0.1);
    const QDate today = CareRow::day(16);
    const care::Standing s = care::standing(row.sorted(), row.layoutId, CareRow::at(16, 18), {});
    ASSERT_FALSE(s.alerts.empty());
    EXPECT_EQ(alertText(s.alerts.front(), today), u"Nitrite above 1 mg/L NO₂ since 15 Mar"_s);
    EXPECT_EQ(statusLine(s, today), u"Nitrite above 1 mg/L NO₂ since 15 Mar: no animals yet"_s);
    EXPECT_EQ(statusWord(s), u"Nitrite high"_s);
    EXPECT_EQ(phaseLine(s), u"Nitrite at its height"_s);
    const auto gate = care::gateState(row.row, row.layoutId, u"G1"_s, CareRow::at(16, 18));
    EXPECT_EQ(gateConditionText(*gate->condition(u"no2"_s), today),
              u"Nitrite at most 0.2 mg/L NO₂: 2 mg/L NO₂ on 17 Mar."_s);
    EXPECT_EQ(gateConditionText(*gate->condition(u"age"_s), today), u"At least day 14: reached 15 Mar."_s);
    EXPECT_TRUE(gateVerdict(*gate).startsWith(u"Not yet: "_s));
}

TEST_F(Wording, EverySentenceIsPlain)
{
    // No blame, no praise, no exclamation marks, no place left unfilled, for a tank with all sorts going on.
    CareRow row;
    row.changes({1, 2, 3}, 0.5);
    row.animals(u"tetra"_s, 20, 8);
    row.enter(record::EntryKind::Loss, 22, u"tetra"_s).count = 1;
    row.observe(u"melt"_s, 22, 3, 0.4);
    row.observe(u"alg_hair"_s, 19, 1);
    row.observe(u"alg_hair"_s, 22, 3);
    row.read(u"no2"_s, 22, 0.5);
    row.read(u"tan"_s, 22, 1.0);
    row.read(u"ph"_s, 22, 8.2);
    const QDate today = CareRow::day(23);
    QStringList all;
    for (const care::DueItem& item : row.due(23, 60)) {
        all << dueWhy(item, today) << dueChip(item) << nextLine(item, today);
    }
    for (const care::Alert& alert : care::alertsOf(row.row, row.layoutId, CareRow::at(23))) {
        all << alertText(alert, today);
    }
    for (const care::GateState& gate : care::gateStates(row.row, row.layoutId, CareRow::at(23))) {
        all << gateVerdict(gate) << gateTitle(gate);
        for (const care::GateCondition& condition : gate.conditions) {
            all << gateConditionText(condition, today);
        }
    }
    EXPECT_GT(all.size(), 100);
    for (const QString& text : all) {
        EXPECT_FALSE(text.trimmed().isEmpty());
        EXPECT_FALSE(text.contains(u'!')) << text.toStdString();
        EXPECT_FALSE(text.contains(u"forgot"_s) || text.contains(u"should have"_s)) << text.toStdString();
        for (const QString& place : {u"%1"_s, u"%2"_s, u"%3"_s, u"%4"_s, u"  "_s, u" ."_s, u".."_s}) {
            EXPECT_FALSE(text.contains(place)) << text.toStdString();
        }
    }
}

} // namespace
