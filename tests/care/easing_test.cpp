// SPDX-License-Identifier: GPL-3.0-or-later
// Easing the water changes: each condition by itself, and that it is asked and never done. The conditions are judgement
// from common practice.
#include "core/care/easing.h"
#include "core/wording/sentences.h"
#include "tests/care/care_row.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using care::EaseCondition;
using care::Known;
using record::EntryKind;

constexpr int kToday = 27;
constexpr double kGoodOdds = 0.9;

/// Day 27, twice a week since day 15, clear readings before the last two changes.
CareRow easeable()
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27}, 0.5);
    for (const int age : {23, 27}) {
        row.read(u"tan"_s, age, 0.2);
        row.read(u"no2"_s, age, 0.1);
    }
    return row;
}

std::optional<care::DueItem> question(CareRow& row, double odds = kGoodOdds)
{
    return care::easeQuestion(row.sorted(), row.layoutId, CareRow::at(kToday, 18), odds);
}

Known state(CareRow& row, EaseCondition condition, std::optional<double> odds = {})
{
    const auto found = care::looseningOf(row.sorted(), row.layoutId, CareRow::at(kToday, 18), odds);
    return found ? found->state(condition) : Known::Unknown;
}

TEST(Ease, IsAskedWithItsEvidenceAndNeverDone)
{
    CareRow row = easeable();
    const auto item = question(row);
    ASSERT_TRUE(item);
    EXPECT_EQ(item->kind, care::WorkKind::Decide);
    ASSERT_TRUE(item->reason.loosening);
    EXPECT_DOUBLE_EQ(item->reason.loosening->looser.everyDays, 7.0);
    EXPECT_DOUBLE_EQ(item->reason.loosening->looser.fraction, 0.5);
    EXPECT_EQ(item->reason.met.size(), 4U);
    EXPECT_FALSE(item->overdue);
    EXPECT_TRUE(row.due(u"cadence-ease"_s, kToday, kToday).empty()) << "work that is due asks nothing by itself";
    EXPECT_DOUBLE_EQ(row.due(u"water-change"_s, 26, 27, 7).front().reason.intervalDays, 3.5)
        << "the cadence stays until the keeper says so";
    const QStringList reasons = wording::dueReasons(*item, CareRow::day(kToday));
    for (const care::EaseEvidence& evidence : item->reason.loosening->evidence) {
        EXPECT_TRUE(reasons.contains(wording::easeText(evidence, CareRow::day(kToday))));
    }
}

TEST(Ease, TheForecastMustBearItOut)
{
    CareRow row = easeable();
    EXPECT_TRUE(care::easeCandidate(row.sorted(), row.layoutId, CareRow::at(kToday, 18))) << "worth a forecast";
    EXPECT_TRUE(question(row, 0.8));
    EXPECT_FALSE(question(row, 0.79));
    EXPECT_EQ(state(row, EaseCondition::ForecastOdds), Known::Unknown);
    EXPECT_EQ(state(row, EaseCondition::ForecastOdds, 0.8), Known::Met);
    EXPECT_EQ(state(row, EaseCondition::ForecastOdds, 0.5), Known::Unmet);
    const auto unasked = care::looseningOf(row.sorted(), row.layoutId, CareRow::at(kToday, 18));
    EXPECT_TRUE(unasked->isCandidate());
    EXPECT_FALSE(unasked->mayBeProposed());
}

TEST(Ease, ClearReadings)
{
    CareRow row = easeable();
    EXPECT_EQ(state(row, EaseCondition::ClearReadings), Known::Met);
    row.record().readings[0].value = 0.3; // ammonia before the first of the two changes
    EXPECT_EQ(state(row, EaseCondition::ClearReadings), Known::Unmet);
    EXPECT_FALSE(question(row));
    CareRow animals = easeable();
    animals.animals(u"snail"_s, 12, 3);
    EXPECT_EQ(state(animals, EaseCondition::ClearReadings), Known::Unmet) << "limits are stricter with animals";
    CareRow soon = easeable();
    for (record::Reading& reading : soon.record().readings) {
        reading.at = reading.at.plusDays(0.25); // six hours on: two hours after the change
    }
    EXPECT_EQ(state(soon, EaseCondition::ClearReadings), Known::Unknown) << "just after a change proves nothing";
    EXPECT_FALSE(question(soon));
}

TEST(Ease, MeltNotRising)
{
    CareRow row = easeable();
    EXPECT_EQ(state(row, EaseCondition::MeltNotRising), Known::Unknown);
    EXPECT_TRUE(question(row)) << "what nobody looked at is told, not held against it";
    row.observe(u"melt"_s, 24, 1);
    EXPECT_EQ(state(row, EaseCondition::MeltNotRising), Known::Met);
    row.observe(u"melt"_s, 26, 2, 0.1);
    EXPECT_EQ(state(row, EaseCondition::MeltNotRising), Known::Unmet);
    EXPECT_FALSE(question(row));
}

TEST(Ease, AlgaeNotRising)
{
    CareRow row = easeable();
    row.observe(u"alg_hair"_s, 18, 1);
    EXPECT_EQ(state(row, EaseCondition::AlgaeNotRising), Known::Met);
    row.observe(u"alg_hair"_s, 25, 2);
    EXPECT_EQ(state(row, EaseCondition::AlgaeNotRising), Known::Unmet);
    EXPECT_FALSE(question(row));
}

TEST(Ease, TwoIntervalsAtThePresentStep)
{
    CareRow row = easeable();
    EXPECT_EQ(state(row, EaseCondition::TwoIntervals), Known::Met);
    row.row.settings[care::cadenceSettingKey(row.layoutId)] = u"1@"_s + CareRow::day(20).toString(Qt::ISODate);
    EXPECT_EQ(state(row, EaseCondition::TwoIntervals), Known::Unmet) << "an accepted step counts from its day";
    EXPECT_FALSE(question(row));
}

TEST(Ease, NothingRecent)
{
    for (const QString& subject : {u"filter-service"_s, u"bed-disturbed"_s, u"replant"_s, u"media-replaced"_s}) {
        CareRow row = easeable();
        row.enter(EntryKind::Upkeep, 24, subject);
        EXPECT_FALSE(question(row)) << subject.toStdString();
    }
    CareRow earlier = easeable();
    earlier.enter(EntryKind::Upkeep, 23, u"filter-service"_s);
    EXPECT_EQ(state(earlier, EaseCondition::NothingRecent), Known::Met) << "four days ago";
    EXPECT_TRUE(question(earlier));
    CareRow dosed = easeable();
    dosed.enter(EntryKind::Dose, 26, u"iron"_s).amount = 2.0;
    EXPECT_EQ(state(dosed, EaseCondition::NothingRecent), Known::Unmet) << "a dose of a new kind is a change";
    dosed.enter(EntryKind::Dose, 19, u"iron"_s).amount = 2.0;
    EXPECT_EQ(state(dosed, EaseCondition::NothingRecent), Known::Met) << "the usual dose is none";
}

TEST(Ease, HardnessSteady)
{
    CareRow row = easeable();
    EXPECT_EQ(state(row, EaseCondition::HardnessSteady), Known::Unknown);
    row.read(u"gh"_s, 23, 1.0);
    row.read(u"gh"_s, 27, 1.1);
    EXPECT_EQ(state(row, EaseCondition::HardnessSteady), Known::Met);
    row.record().readings.back().value = 1.3; // a German degree is 0.178 mmol/L
    EXPECT_EQ(state(row, EaseCondition::HardnessSteady), Known::Unmet);
    EXPECT_FALSE(question(row));
    row.layout().rockHardens = true;
    row.target(u"gh"_s, 0.5, 1.5);
    EXPECT_EQ(state(row, EaseCondition::HardnessSteady), Known::Met) << "rock that hardens: within its range";
}

TEST(Ease, NotWhileSomethingTightensAtOnce)
{
    CareRow row = easeable();
    row.enter(EntryKind::Loss, 26, u"snail"_s).count = 1;
    EXPECT_FALSE(question(row));
}

TEST(Ease, NotAgainForAWeekAfterANo)
{
    CareRow row = easeable();
    row.task(u"cadence-ease"_s, 25, record::TaskState::Skipped).closedAt = CareRow::at(25);
    EXPECT_FALSE(question(row));
    row.record().tasks.back().closedAt = CareRow::at(20);
    row.record().tasks.back().due = CareRow::day(20);
    EXPECT_TRUE(question(row));
}

TEST(Ease, AYesLoosensOneStepAndTightensAgainAtOnce)
{
    CareRow row = easeable();
    row.row.settings[care::cadenceSettingKey(row.layoutId)] =
        care::acceptedStepsText(care::easedSteps(row.sorted(), row.layoutId, CareRow::day(kToday)));
    row.task(u"cadence-ease"_s, kToday, record::TaskState::Done).closedAt = CareRow::at(kToday);
    EXPECT_EQ(row.due(u"water-change"_s, kToday, 40).front().due, CareRow::day(34)) << "weekly from now on";
    row.read(u"tan"_s, 29, 2.5);
    const auto tightened = row.due(u"water-change"_s, 29, 40);
    ASSERT_FALSE(tightened.empty());
    EXPECT_EQ(tightened.front().due, CareRow::day(29)) << "ammonia asks for a change the same day";
    EXPECT_EQ(tightened.front().reason.basis, care::Basis::Trigger);
}

} // namespace
