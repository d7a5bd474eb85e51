// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds: overdue and grace, what closes them, what the keeper decided about them, clock changes.
#include "tests/care/care_row.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using care::Basis;
using care::DueItem;
using record::EntryKind;
using record::TaskState;
using testing::ElementsAre;

const QString kWater = u"water-change"_s;

TEST(Due, OverdueRoundsDoNotMultiply)
{
    CareRow row;
    row.changes({1, 2, 3});
    const auto items = row.due(kWater, 6, 9);
    ASSERT_EQ(items.size(), 3U);
    EXPECT_EQ(items[0].due, CareRow::day(4));
    EXPECT_EQ(items[0].daysOver, 2);
    EXPECT_TRUE(items[0].overdue);            // daily changes have no grace
    EXPECT_EQ(items[1].due, CareRow::day(7)); // counted from the late one being done today
    EXPECT_EQ(items[2].due, CareRow::day(9));
}

TEST(Due, GraceOfAWeeklyChangeIsTwoDays)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34}, 0.4);
    EXPECT_EQ(row.due(kWater, 41, 41).front().daysOver, 0);
    const DueItem late = row.due(kWater, 43, 43).front();
    EXPECT_EQ(late.daysOver, 2);
    EXPECT_FALSE(late.overdue);
    EXPECT_TRUE(row.due(kWater, 44, 44).front().overdue);
}

TEST(Due, AChangeClosesTheRoundAndATinyOneDoesNot)
{
    CareRow row;
    row.changes({1, 2, 3});
    row.change(4, 0.1);
    EXPECT_THAT(row.ages(kWater, 4, 5), ElementsAre(4, 5));
    row.change(4, 0.4, 15); // 10 % and 40 % are 46 % together
    EXPECT_THAT(row.ages(kWater, 4, 5), ElementsAre(5));
}

TEST(Due, APlannedEntryClosesNothing)
{
    CareRow row;
    row.changes({1, 2, 3});
    row.change(4, 0.5, 20).planned = true;
    const auto items = row.due(kWater, 4, 4);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].reason.basis, Basis::Planned);
    EXPECT_TRUE(items[0].plannedEntry);
}

TEST(Due, TheRightReadingClosesATestAndTheWrongOneDoesNot)
{
    CareRow row;
    row.read(u"tan"_s, 1, 1.0);
    row.read(u"tan"_s, 2, 1.0);
    row.read(u"no2"_s, 3, 0.1);
    EXPECT_THAT(row.ages(u"test-ammonia"_s, 3, 3), ElementsAre(3));
    row.read(u"tan"_s, 3, 1.0, 9);
    EXPECT_TRUE(row.ages(u"test-ammonia"_s, 3, 3).empty());
}

TEST(Due, ATestOfThreeParametersAsksForWhatIsMissing)
{
    CareRow row;
    row.read(u"ph"_s, 0, 6.8);
    row.read(u"kh"_s, 0, 1.0);
    row.read(u"gh"_s, 0, 1.0);
    row.read(u"ph"_s, 7, 6.6);
    auto items = row.due(u"test-ph-hardness"_s, 7, 7);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].parameters, (QStringList{u"kh"_s, u"gh"_s}));
    row.read(u"kh"_s, 7, 1.0);
    row.read(u"gh"_s, 7, 1.0);
    EXPECT_TRUE(row.due(u"test-ph-hardness"_s, 7, 7).empty());
}

TEST(Due, EitherOfTwoParametersWillDo)
{
    CareRow row;
    row.animals(u"cherry shrimp"_s, 20, 10);
    row.read(u"tds"_s, 21, 150);
    EXPECT_THAT(row.ages(u"test-solids"_s, 22, 30), ElementsAre(28));
}

TEST(Due, UpkeepIsClosedByItsOwnSubject)
{
    CareRow row;
    row.read(u"tan"_s, 1, 1.0);
    row.enter(EntryKind::Upkeep, 43, u"glass"_s);
    EXPECT_THAT(row.ages(u"filter-first"_s, 43, 43), ElementsAre(42));
    row.enter(EntryKind::Upkeep, 43, u"filter-service"_s);
    EXPECT_TRUE(row.ages(u"filter-first"_s, 43, 43).empty());
    EXPECT_THAT(row.ages(u"filter-service"_s, 43, 110), ElementsAre(103));
}

TEST(Due, SkippingCountsTheNextRoundFromTheSkip)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34}, 0.4);
    record::Task& skip = row.task(kWater, 41, TaskState::Skipped);
    skip.closedAt = CareRow::at(42);
    skip.reason = u"away"_s;
    const auto items = row.due(kWater, 43, 50);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].due, CareRow::day(49));
    EXPECT_EQ(items[0].reason.last, CareRow::day(34)) << "a skipped round is not a done one";
}

TEST(Due, ASkipOfTomorrowLeavesTheRest)
{
    CareRow row;
    row.changes({1, 2, 3});
    row.task(kWater, 5, TaskState::Skipped).closedAt = CareRow::at(3);
    EXPECT_THAT(row.ages(kWater, 3, 7), ElementsAre(4, 6, 7));
}

TEST(Due, MovedAndSnoozedRoundsStandWhereTheyWerePut)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34}, 0.4);
    record::Task& move = row.task(kWater, 41, TaskState::Open);
    move.movedTo = CareRow::day(43);
    auto items = row.due(kWater, 42, 51);
    ASSERT_EQ(items.size(), 2U);
    EXPECT_EQ(items[0].due, CareRow::day(43));
    EXPECT_EQ(items[0].cadenceDue, CareRow::day(41));
    EXPECT_TRUE(items[0].task);
    EXPECT_TRUE(items[0].reason.movedByHand);
    EXPECT_EQ(items[0].daysOver, 0);
    EXPECT_EQ(items[1].due, CareRow::day(50));
    row.record().tasks.front().snoozed = true;
    items = row.due(kWater, 45, 45);
    EXPECT_TRUE(items[0].snoozed);
    EXPECT_EQ(items[0].daysOver, 2);
}

TEST(Due, ADoneMoveDoesNotHauntTheNextRound)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34}, 0.4);
    row.task(kWater, 41, TaskState::Open).movedTo = CareRow::day(43);
    row.change(42, 0.4);
    EXPECT_THAT(row.ages(kWater, 42, 50), ElementsAre(49));
}

TEST(Due, TicksCloseWorkThatNoEntryCloses)
{
    CareRow row;
    row.read(u"tan"_s, 1, 1.0);
    EXPECT_THAT(row.ages(u"photo"_s, 7, 8), ElementsAre(7));
    row.task(u"photo"_s, 7, TaskState::Done).closedAt = CareRow::at(7, 13);
    EXPECT_THAT(row.ages(u"photo"_s, 7, 14), ElementsAre(14));
}

TEST(Due, AMissedRoundOfRollingWorkGivesWayToTheNext)
{
    CareRow row;
    row.read(u"tan"_s, 1, 1.0);
    const auto items = row.due(u"algae-score"_s, 23, 23);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].due, CareRow::day(21));
}

TEST(Due, LesserWorkNeverOnceEnteredIsOfferedNotOverdue)
{
    CareRow row;
    row.read(u"tan"_s, 1, 1.0);
    DueItem item = row.due(u"heater-check"_s, 85, 85).front();
    EXPECT_EQ(item.due, CareRow::day(60));
    EXPECT_FALSE(item.overdue);
    row.enter(EntryKind::Upkeep, 40, u"heater-check"_s);
    item = row.due(u"heater-check"_s, 85, 85).front();
    EXPECT_EQ(item.due, CareRow::day(70));
    EXPECT_TRUE(item.overdue);
}

TEST(Due, AParameterTheKeeperNeverReadsIsLeftOut)
{
    CareRow row;
    row.read(u"kh"_s, 7, 1.0);
    row.read(u"kh"_s, 14, 1.0);
    const DueItem item = row.due(u"test-ph-hardness"_s, 21, 21).front();
    EXPECT_EQ(item.parameters, QStringList{u"kh"_s});
    EXPECT_EQ(item.due, CareRow::day(21));
    row.read(u"tan"_s, 14, 0.1);
    row.read(u"tan"_s, 20, 0.1);
    row.animals(u"snail"_s, 20, 2);
    EXPECT_TRUE(row.due(u"test-after-event"_s, 21, 21).front().parameters.contains(u"no2"_s))
        << "nitrite is never left out";
}

TEST(Due, TestsFollowAnEventOnDaysOneThreeSeven)
{
    CareRow row;
    row.read(u"tan"_s, 75, 0.0);
    row.read(u"no2"_s, 75, 0.0);
    row.enter(EntryKind::Upkeep, 80, u"filter-service"_s);
    EXPECT_THAT(row.ages(u"test-after-event"_s, 80, 90), ElementsAre(81, 83, 87));
    row.read(u"tan"_s, 81, 0.0);
    EXPECT_THAT(row.ages(u"test-after-event"_s, 81, 90), ElementsAre(81, 83, 87));
    row.read(u"no2"_s, 81, 0.0);
    const auto items = row.due(u"test-after-event"_s, 81, 90);
    ASSERT_EQ(items.size(), 2U);
    EXPECT_EQ(items[0].due, CareRow::day(83));
    EXPECT_EQ(items[0].reason.trigger, u"after-filter-service"_s);
    EXPECT_EQ(items[0].reason.dayAfter, 3);
    // A late reading closes the round it is nearest to, not the one still to come.
    row.read(u"tan"_s, 84, 0.0);
    row.read(u"no2"_s, 84, 0.0);
    EXPECT_THAT(row.ages(u"test-after-event"_s, 84, 90), ElementsAre(87));
}

TEST(Due, OwnTasksAndPlannedEntriesAreListed)
{
    CareRow row;
    row.changes({1, 2, 3});
    record::Task& own = row.task({}, 5, TaskState::Open);
    own.title = u"fetch wood"_s;
    row.enter(EntryKind::Dose, 6, u"potassium"_s).planned = true;
    std::set<QString> subjects;
    for (const DueItem& item : row.due(4, 8)) {
        if (item.kind == care::WorkKind::Own) {
            subjects.insert(item.subject);
        }
    }
    EXPECT_EQ(subjects, (std::set<QString>{u"fetch wood"_s, u"potassium"_s}));
}

TEST(Due, AHandSetChangeTakesThePlaceOfTheNearbyRound)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27, 34}, 0.4);
    record::Entry& plan = row.change(43, 0.6);
    plan.planned = true;
    const auto items = row.due(kWater, 38, 51);
    ASSERT_EQ(items.size(), 2U);
    EXPECT_EQ(items[0].due, CareRow::day(43));
    EXPECT_DOUBLE_EQ(*items[0].fraction, 0.6);
    EXPECT_EQ(items[1].due, CareRow::day(50));
}

TEST(Due, ALayoutThatFollowsNoCadenceHasOnlyItsPlan)
{
    CareRow row;
    row.layout().followsCadence = false;
    row.changes({1, 2, 3});
    row.change(9, 0.3).planned = true;
    EXPECT_THAT(row.ages(kWater, 4, 20), ElementsAre(9));
}

TEST(Due, AnOlderTankIsNotAskedForThePast)
{
    CareRow row;
    row.read(u"no3"_s, 400, 5.0);
    for (const DueItem& item : row.due(401, 401)) {
        EXPECT_GE(item.cadenceDue, CareRow::day(400)) << item.templateKey.toStdString();
    }
}

TEST(Due, EndedAndUnknownLayoutsHaveNoWork)
{
    CareRow row;
    row.layout().ended = CareRow::at(30);
    EXPECT_TRUE(row.due(31, 40).empty());
    EXPECT_TRUE(care::dueWork(row.row, record::LayoutId{99}, CareRow::at(3), CareRow::day(9)).empty());
}

TEST(Due, APlannedLayoutHasWorkOnlyAfterItsFlooding)
{
    CareRow row;
    for (const DueItem& item : row.due(-5, 2)) {
        EXPECT_GE(item.due, CareRow::day(0)) << item.templateKey.toStdString();
    }
    EXPECT_THAT(row.ages(kWater, -5, 2), ElementsAre(1, 2));
}

TEST(Due, ClockChangeNeitherDoublesNorDropsADay)
{
    // Summer time begins on 29 March 2026 (day 28): entries before it carry +01:00, those after +02:00.
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 16, 20, 23, 27}, 0.5);
    record::Entry& late = row.change(34, 0.4);
    late.at = record::Moment::fromDateTime(QDateTime(CareRow::day(34), QTime(0, 20), Qt::OffsetFromUTC, 7200));
    const record::Moment now =
        record::Moment::fromDateTime(QDateTime(CareRow::day(41), QTime(0, 10), Qt::OffsetFromUTC, 7200));
    const auto items = care::dueWork(row.sorted(), row.layoutId, now, CareRow::day(41));
    const auto water = std::ranges::find(items, kWater, &DueItem::templateKey);
    ASSERT_NE(water, items.end());
    EXPECT_EQ(water->due, CareRow::day(41));
    EXPECT_EQ(water->reason.last, CareRow::day(34));
    EXPECT_EQ(water->daysOver, 0);
}

TEST(Due, NoRoundStandsTwice)
{
    for (const int age : {0, 3, 12, 30, 60, 200}) {
        CareRow row;
        row.layout().rockHardens = true;
        row.changes({1, 2, 3});
        row.animals(u"cherry shrimp"_s, 2, 5);
        row.enter(EntryKind::Upkeep, 2, u"filter-service"_s);
        std::set<std::pair<QString, QDate>> seen;
        for (const DueItem& item : row.due(age, age + 30)) {
            EXPECT_TRUE(seen.insert({item.templateKey, item.due}).second)
                << item.templateKey.toStdString() << " age " << age;
        }
    }
}

TEST(Due, IsSortedAndExplained)
{
    CareRow row;
    row.changes({1, 2, 3});
    const auto items = row.due(20, 40);
    EXPECT_TRUE(std::ranges::is_sorted(items, {}, &DueItem::due));
    for (const DueItem& item : items) {
        EXPECT_GT(item.minutes, 0) << item.templateKey.toStdString();
        EXPECT_FALSE(item.source.isEmpty()) << item.templateKey.toStdString();
        EXPECT_FALSE(item.consequence.isEmpty()) << item.templateKey.toStdString();
    }
}

TEST(RowWork, IsAskedOnceForTheRowAndClosedFromAnyTank)
{
    CareRow row;
    row.read(u"tan"_s, 1, 1.0);
    const auto count = [&](int age, const QString& key) {
        const auto items = care::rowWork(row.sorted(), CareRow::at(age), CareRow::day(age));
        return std::ranges::count(items, key, &DueItem::templateKey);
    };
    EXPECT_EQ(count(7, u"backup"_s), 1);
    row.row.settings[u"care.done.backup"_s] = CareRow::day(7).toString(Qt::ISODate);
    EXPECT_EQ(count(7, u"backup"_s), 0);
    EXPECT_EQ(count(30, u"rcd-test"_s), 1);
    row.enter(EntryKind::Upkeep, 30, u"rcd-test"_s, 9);
    EXPECT_EQ(count(30, u"rcd-test"_s), 0);
    const auto work = row.due(30, 30);
    EXPECT_EQ(std::ranges::count(work, u"backup"_s, &DueItem::templateKey), 0);
}

TEST(Due, TwentyFourLayoutsOfFiveYears)
{
    CareRow one;
    for (int age = 1; age < 5 * 365; age += 7) {
        one.change(age, 0.4);
        one.read(u"no3"_s, age, 3.0);
        one.read(u"ph"_s, age, 6.7);
        one.observe(u"alg_dust"_s, age, age % 3);
        one.enter(EntryKind::Upkeep, age, u"glass"_s);
    }
    (void)one.sorted();
    for (int tank = 2; tank <= 24; ++tank) {
        record::LayoutRecord copy = one.record();
        copy.layout.id = {10 + tank};
        copy.layout.tank = {tank};
        record::Tank box = one.row.tanks.front();
        box.id = {tank};
        one.row.tanks.push_back(box);
        one.row.layouts[copy.layout.id] = copy;
    }
    std::size_t items = 0;
    for (const auto& [id, layout] : one.row.layouts) {
        items += care::dueWork(one.row, id, CareRow::at(5 * 365), CareRow::day(5 * 365 + 28)).size();
    }
    EXPECT_GT(items, 24U * 4U);
    EXPECT_LT(items, 24U * 120U);
}

} // namespace
