// SPDX-License-Identifier: GPL-3.0-or-later
// The tests and looks that follow something: which, how long, with which reason, and what closes them. Days and lengths
// are common practice.
#include "core/care/work_template.h"
#include "core/wording/sentences.h"
#include "tests/care/care_row.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using record::EntryKind;
using testing::ElementsAre;
using testing::IsEmpty;

constexpr int kOld = 200; // past all tests that follow from age alone
constexpr auto kTest = "test-after-event";

QString key(const char* text)
{
    return QString::fromLatin1(text);
}

void readBoth(CareRow& row, int age, double tan = 0.0, double no2 = 0.0)
{
    row.read(u"tan"_s, age, tan, 20);
    row.read(u"no2"_s, age, no2, 20);
}

/// A settled tank: read and changed of late.
CareRow settled()
{
    CareRow row;
    readBoth(row, kOld - 30);
    row.change(kOld - 3, 0.4);
    return row;
}

TEST(TriggeredRuns, DaysOneThreeSevenAfterWhatTheFilterFeels)
{
    for (const char* event : {"filter-service", "media-replaced", "power-cut", "bed-disturbed", "replant"}) {
        CareRow row = settled();
        row.enter(EntryKind::Upkeep, kOld, key(event));
        EXPECT_THAT(row.ages(key(kTest), kOld, kOld + 14), ElementsAre(kOld + 1, kOld + 3, kOld + 7)) << event;
    }
    CareRow animals = settled();
    animals.animals(u"nerite"_s, kOld, 4);
    EXPECT_THAT(animals.ages(key(kTest), kOld, kOld + 14), ElementsAre(kOld + 1, kOld + 3, kOld + 7));
    EXPECT_THAT(animals.ages(u"after-adding"_s, kOld, kOld + 14), ElementsAre(kOld, kOld + 1, kOld + 2, kOld + 7));
}

TEST(TriggeredRuns, ReadingsCloseThemAndNothingElse)
{
    CareRow row = settled();
    row.enter(EntryKind::Upkeep, kOld, u"filter-service"_s);
    row.read(u"tan"_s, kOld + 1, 0.0, 20);
    EXPECT_THAT(row.ages(key(kTest), kOld + 1, kOld + 2, 21), ElementsAre(kOld + 1)) << "nitrite is still to be read";
    row.read(u"no2"_s, kOld + 1, 0.0, 20);
    EXPECT_THAT(row.ages(key(kTest), kOld + 1, kOld + 14, 21), ElementsAre(kOld + 3, kOld + 7));
}

TEST(TriggeredRuns, AmmoniaBackAfterAServiceAsksForAWeekOfDays)
{
    CareRow row = settled();
    row.enter(EntryKind::Upkeep, kOld, u"filter-service"_s);
    readBoth(row, kOld + 1, 0.5, 0.0);
    const auto items = row.due(key(kTest), kOld + 1, kOld + 14, 21);
    std::vector<int> ages;
    for (const care::DueItem& item : items) {
        ages.push_back(static_cast<int>(CareRow::day(0).daysTo(item.due)));
    }
    EXPECT_THAT(ages, ElementsAre(kOld + 2, kOld + 3, kOld + 4, kOld + 5, kOld + 6, kOld + 7, kOld + 8));
    EXPECT_TRUE(items.front().reason.raised);
    ASSERT_EQ(items.front().reason.tightened.size(), 1U);
    EXPECT_TRUE(wording::dueWhy(items.front(), CareRow::day(kOld + 1)).contains(u"read every day for a week"_s));
}

TEST(TriggeredRuns, MedicineAsksForDailyReadingsAndLeavesTheTreatmentToAProfessional)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 100, 8);
    row.enter(EntryKind::Dose, kOld, u"medication"_s);
    EXPECT_THAT(row.ages(key(kTest), kOld, kOld + 14),
                ElementsAre(kOld + 1, kOld + 2, kOld + 3, kOld + 4, kOld + 5, kOld + 6, kOld + 7));
    const auto watch = row.due(u"medication-watch"_s, kOld, kOld + 14);
    ASSERT_EQ(watch.size(), 8U);
    EXPECT_EQ(watch.front().caution, u"C-MED"_s);
    EXPECT_TRUE(wording::dueWhy(watch.front(), CareRow::day(kOld)).contains(u"veterinarian"_s));
    row.change(kOld + 4, 0.4);
    row.enter(EntryKind::Note, kOld + 7, u"medication-end"_s);
    const auto change = row.due(u"water-change"_s, kOld + 7, kOld + 7);
    ASSERT_EQ(change.size(), 1U);
    EXPECT_EQ(change.front().reason.trigger, u"medication-end"_s);
    EXPECT_GE(*change.front().fraction, 0.3);
    EXPECT_TRUE(wording::dueWhy(change.front(), CareRow::day(kOld + 7)).contains(u"veterinarian"_s));
}

TEST(TriggeredRuns, APowerCutAsksForTheFilterFirst)
{
    CareRow row = settled();
    row.enter(EntryKind::Note, kOld, u"power-cut"_s);
    const auto items = row.due(u"power-after"_s, kOld, kOld + 3);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items.front().due, CareRow::day(kOld));
    EXPECT_EQ(items.front().caution, u"C-O2"_s);
    row.enter(EntryKind::Upkeep, kOld, u"power-after"_s, 15);
    EXPECT_THAT(row.due(u"power-after"_s, kOld, kOld + 3), IsEmpty());
}

TEST(TriggeredRuns, AGatePassedOverAsksForAWeekOfDays)
{
    CareRow row = settled();
    row.enter(EntryKind::Note, kOld, u"gate-overridden"_s, 10).where = u"tetra"_s;
    const record::Entry note = row.record().entries.back();
    EXPECT_THAT(row.ages(key(kTest), kOld, kOld + 14), IsEmpty()) << "nothing has gone in yet";
    row.animals(u"tetra"_s, kOld, 8);
    EXPECT_THAT(row.ages(key(kTest), kOld, kOld + 14),
                ElementsAre(kOld + 1, kOld + 2, kOld + 3, kOld + 4, kOld + 5, kOld + 6, kOld + 7));
    EXPECT_THAT(row.ages(u"override-watch"_s, kOld, kOld + 14), ElementsAre(kOld + 3, kOld + 4, kOld + 5, kOld + 6));
    CareRow other = settled();
    other.record().entries.push_back(note);
    other.animals(u"nerite"_s, kOld, 3);
    EXPECT_THAT(other.ages(u"override-watch"_s, kOld, kOld + 14), IsEmpty()) << "the note is about other animals";
}

TEST(TriggeredRuns, ASecondLossWithinAWeekAsksForAProfessional)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, 100, 8);
    row.enter(EntryKind::Loss, kOld - 8, u"tetra"_s).count = 1;
    row.enter(EntryKind::Loss, kOld, u"tetra"_s).count = 1;
    EXPECT_THAT(row.due(u"ask-veterinarian"_s, kOld, kOld), IsEmpty()) << "eight days apart";
    row.enter(EntryKind::Loss, kOld + 6, u"tetra"_s).count = 1;
    const auto asked = row.due(u"ask-veterinarian"_s, kOld + 6, kOld + 6);
    ASSERT_EQ(asked.size(), 1U);
    EXPECT_EQ(asked.front().caution, u"C-MED"_s);
}

TEST(TriggeredRuns, TwoEventsAskForOneTest)
{
    CareRow row;
    row.change(19, 0.5);
    readBoth(row, 19);
    row.animals(u"nerite"_s, 20, 4); // day 21 is a day of the ammonia tests of a young tank, too
    int tests = 0;
    for (const care::DueItem& item : row.due(21, 21)) {
        tests +=
            item.kind == care::WorkKind::Test && item.due == CareRow::day(21) && item.parameters.contains(u"tan"_s);
    }
    EXPECT_EQ(tests, 1);
}

TEST(TriggeredRuns, AReactionToAnAdditionTightensAndHoldsTheGates)
{
    CareRow row = settled();
    row.animals(u"tetra"_s, kOld, 8);
    readBoth(row, kOld + 3, 0.0, 0.1); // over the first gate's 0.06 mg N/L
    const auto change = row.due(u"water-change"_s, kOld + 3, kOld + 14, 21);
    ASSERT_FALSE(change.empty());
    EXPECT_LT(change.front().reason.intervalDays, 7.0) << "one step tighter";
    const auto tightened = std::ranges::any_of(change.front().reason.triggers, [](const care::Trigger& t) {
        return t.kind == care::TriggerKind::ReactionAfterAddition;
    });
    EXPECT_TRUE(tightened);
}

// Every rule can say why it asks and where it comes from.
TEST(TriggeredRuns, EveryTemplateSaysItsReasonAndSource)
{
    for (const care::WorkTemplate& work : care::builtInTemplates()) {
        care::DueItem item;
        item.templateKey = work.key;
        item.title = work.title;
        item.kind = work.kind;
        item.consequence = work.consequence;
        item.source = work.source;
        item.due = item.cadenceDue = CareRow::day(10);
        for (const care::Variant& variant : work.variants) {
            for (const care::Round& round : variant.rounds) {
                item.reason = {};
                if (round.every > 0.0) {
                    item.reason.intervalDays = round.every;
                } else if (round.once) {
                    item.reason.basis = care::Basis::Once;
                } else if (round.leaves || round.returns) {
                    item.reason.basis = care::Basis::Journey;
                    item.reason.trigger = round.leaves ? u"leaves"_s : u"returns"_s;
                    item.reason.eventDay = CareRow::day(9);
                } else {
                    item.reason.basis = care::Basis::Event;
                    item.reason.eventDay = CareRow::day(9);
                    item.reason.dayAfter = 1;
                }
                for (const care::Event event : round.after.empty() ? std::vector{care::Event::Addition} : round.after) {
                    item.reason.trigger =
                        round.after.empty() ? item.reason.trigger : u"after-"_s + care::eventCode(event);
                    const QStringList reasons = wording::dueReasons(item, CareRow::day(10));
                    EXPECT_GE(reasons.size(), 4)
                        << work.key.toStdString() << ": when, why, what follows, by which rule";
                    EXPECT_TRUE(reasons.last().contains(wording::sourceText(work.source))) << work.key.toStdString();
                    EXPECT_FALSE(reasons.join(u' ').contains(u"after-"_s)) << reasons.join(u' ').toStdString();
                }
            }
        }
        EXPECT_FALSE(work.consequence.isEmpty());
    }
}

// And every item that is due in a tank that has seen much.
TEST(TriggeredRuns, EveryDueItemSaysItsReasonAndSource)
{
    CareRow row = settled();
    row.animals(u"nerite shrimp"_s, kOld - 2, 6);
    for (const QString& subject : {u"power-cut"_s, u"prefilter"_s, u"rocks"_s, u"trim-stems"_s, u"trim-carpet"_s,
                                   u"floating-plants"_s, u"root-feed"_s, u"dose-review"_s, u"ph-probe"_s}) {
        row.enter(EntryKind::Upkeep, kOld - 1, subject);
    }
    row.enter(EntryKind::Dose, kOld - 1, u"medication"_s);
    row.row.journeys.push_back({{1}, CareRow::day(kOld + 5), CareRow::day(kOld + 12), u"Ida"_s, {}, {}, {}});
    std::vector<care::DueItem> all = row.due(kOld, kOld + 400);
    std::ranges::move(care::rowWork(row.sorted(), CareRow::at(kOld), CareRow::day(kOld + 400)),
                      std::back_inserter(all));
    EXPECT_GT(all.size(), 100U);
    int journey = 0;
    for (const care::DueItem& item : all) {
        const QStringList reasons = wording::dueReasons(item, CareRow::day(kOld));
        EXPECT_GE(reasons.size(), 3) << item.templateKey.toStdString();
        EXPECT_FALSE(item.source.isEmpty()) << item.templateKey.toStdString();
        EXPECT_FALSE(wording::sourceText(item.source).isEmpty());
        journey += item.reason.basis == care::Basis::Journey ? 1 : 0;
    }
    EXPECT_EQ(journey, 3) << "made ready, sheets walked through, back";
}

} // namespace
