// SPDX-License-Identifier: GPL-3.0-or-later
// When doses fall due, what closes them, and how much is asked for in the first weeks.
#include "core/care/dosing.h"
#include "core/wording/sentences.h"
#include "tests/care/care_row.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using care::DueItem;
using care::LeanDose;
using record::EntryKind;
using testing::ElementsAre;
using testing::IsEmpty;

const QString kMix = u"dose:green mix"_s;

/// A grown-in tank with one fertiliser every `every` days (0: on `weekdays`) from an age on.
class DoseRow : public CareRow
{
public:
    explicit DoseRow(int every, int fromAge = 60, int weekdays = 0)
    {
        record::DoseRegimen regimen;
        regimen.id.value = 900;
        regimen.tank = tankId;
        regimen.layout = layoutId;
        regimen.name = u"green mix"_s;
        regimen.nitrate_mg_per_mL = 10.0;
        regimen.potassium_mg_per_mL = 5.0;
        regimen.amount = 4.0;
        regimen.everyDays = every;
        regimen.weekdays = weekdays;
        regimen.from = day(fromAge);
        record().regimens.push_back(regimen);
    }
    record::DoseRegimen& regimen() { return record().regimens.front(); }
    void dose(int age) { enter(EntryKind::Dose, age, u"green mix"_s); }
};

TEST(DoseRounds, FallEverySoManyDaysAfterTheLastDose)
{
    DoseRow row(3);
    row.dose(61);
    EXPECT_THAT(row.ages(kMix, 62, 72), ElementsAre(64, 67, 70));
    const DueItem item = row.due(kMix, 64, 64).front();
    EXPECT_EQ(item.kind, care::WorkKind::Dose);
    EXPECT_DOUBLE_EQ(*item.amount, 4.0);
    EXPECT_EQ(item.unit, u"mL"_s);
    EXPECT_EQ(item.subject, u"green mix"_s);
    EXPECT_EQ(wording::dueTitle(item), u"Dose 4 mL of green mix"_s);
}

TEST(DoseRounds, FallOnTheWeekdaysChosen)
{
    // 1 March 2026 is a Sunday, so is age 63, and 62 is a Saturday.
    DoseRow row(0, 60, 0b0010101); // Monday, Wednesday, Friday
    EXPECT_THAT(row.ages(kMix, 63, 72), ElementsAre(61, 64, 66, 68, 71)) << "Friday's has not been done";
    row.dose(61);
    EXPECT_THAT(row.ages(kMix, 63, 72), ElementsAre(64, 66, 68, 71));
    EXPECT_TRUE(wording::dueWhy(row.due(kMix, 64, 64).front(), CareRow::day(64)).contains(u"Mon, Wed"_s));
}

TEST(DoseRounds, MissedOnesGiveWayAndAreNeverDoubled)
{
    DoseRow row(2);
    row.dose(60);
    const auto items = row.due(kMix, 69, 71);
    ASSERT_EQ(items.size(), 2U);
    EXPECT_EQ(items[0].due, CareRow::day(68)) << "the newest round not after today stands for all that were missed";
    EXPECT_DOUBLE_EQ(*items[0].amount, 4.0);
    EXPECT_EQ(items[0].reason.dose->missed, 3); // those of 62, 64 and 66
    EXPECT_EQ(items[1].due, CareRow::day(71));
    const QString why = wording::dueWhy(items[0], CareRow::day(69));
    EXPECT_TRUE(why.contains(u"not doubled"_s)) << why.toStdString();
    row.dose(69);
    EXPECT_THAT(row.ages(kMix, 69, 73), ElementsAre(71, 73));
}

TEST(DoseRounds, KeepWithinTheirFirstAndLastDay)
{
    DoseRow row(1, 70);
    row.regimen().until = CareRow::day(72);
    EXPECT_THAT(row.ages(kMix, 65, 90), ElementsAre(70, 71, 72));
    EXPECT_THAT(row.ages(kMix, 80, 90), IsEmpty());
}

TEST(DoseRounds, AreSkippedAndSnoozedLikeOtherWork)
{
    DoseRow row(2);
    row.dose(60);
    record::Task& skipped = row.task(kMix, 62, record::TaskState::Skipped);
    skipped.closedAt = CareRow::at(62);
    EXPECT_THAT(row.ages(kMix, 62, 66), ElementsAre(64, 66));
    record::Task& snoozed = row.task(kMix, 64, record::TaskState::Open);
    snoozed.movedTo = CareRow::day(65);
    snoozed.snoozed = true;
    EXPECT_THAT(row.ages(kMix, 64, 68), ElementsAre(65, 67));
}

TEST(DoseRounds, LeanStartOnAmmoniaRichSoil)
{
    // Weeks 1-2 no nitrogen or phosphorus and a quarter of the rest, weeks 3-4 a quarter to a half, then all (common
    // practice).
    DoseRow row(1, 0);
    EXPECT_THAT(row.ages(kMix, 3, 15), ElementsAre(14, 15)) << "it brings nitrogen";
    EXPECT_DOUBLE_EQ(*row.due(kMix, 15, 15).front().amount, 1.0);
    EXPECT_DOUBLE_EQ(*row.due(kMix, 22, 22).front().amount, 2.0);
    EXPECT_EQ(row.due(kMix, 22, 22).front().reason.dose->lean, LeanDose::Half);
    EXPECT_DOUBLE_EQ(*row.due(kMix, 28, 28).front().amount, 4.0);
    row.regimen().nitrate_mg_per_mL = 0.0; // potassium alone
    EXPECT_DOUBLE_EQ(*row.due(kMix, 3, 3).front().amount, 1.0);
    row.regimen().leanStart = false;
    EXPECT_DOUBLE_EQ(*row.due(kMix, 3, 3).front().amount, 4.0);
}

TEST(DoseRounds, LowNitrateEndsTheLeanWeeksAndInertBedsHaveNone)
{
    DoseRow row(1, 0);
    row.read(u"no3"_s, 16, 4.0 / 4.427); // mg/L of the ion over 4.427 (molar masses, IUPAC)
    EXPECT_EQ(row.due(kMix, 17, 17).front().reason.dose->lean, LeanDose::NitrateSpent);
    EXPECT_DOUBLE_EQ(*row.due(kMix, 17, 17).front().amount, 4.0);
    row.layout().bed = record::Bed::Inert;
    EXPECT_DOUBLE_EQ(*row.due(kMix, 3, 3).front().amount, 4.0);
}

TEST(DoseRounds, AnUnfinishedRegimenAsksForNothing)
{
    DoseRow row(1);
    row.regimen().amount = 0.0;
    EXPECT_THAT(row.ages(kMix, 62, 66), IsEmpty());
    EXPECT_FALSE(record::regimenProblem(row.regimen()).isEmpty());
}

} // namespace
