// SPDX-License-Identifier: GPL-3.0-or-later
// The hand-over of a journey: whose each round is, what the sheets say, and what is typed in afterwards. The rules are
// common practice.
#include "core/care/work_template.h"
#include "core/facade/hand_over.h"
#include "core/facade/keeper.h"
#include "core/facade/sample_row.h"

#include <QTemporaryDir>
#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using facade::Hand;
using facade::HandOver;
using facade::HandOverTask;
using record::EntryKind;
using record::Moment;

/// A clock the test puts forward.
class HandClock final : public record::Clock
{
public:
    [[nodiscard]] Moment now() const override { return at; }
    Moment at = Moment::fromIso(u"2026-11-25T08:00:00Z"_s);
};

Moment on(const QDate& day, int hour = 12)
{
    return Moment::fromDateTime(QDateTime(day, QTime(hour, 0), Qt::UTC));
}

class HandOverTest : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_keeper.create(m_folder.filePath(u"row.littoral"_s)));
        m_settled = addTank(u"Slate Ford"_s, 300);
        m_young = addTank(u"Fern Hollow"_s, 10);
    }

    record::LayoutId addTank(const QString& name, int age)
    {
        record::Tank tank;
        tank.name = name;
        record::Layout layout;
        layout.flooded = on(today().addDays(-age), 10);
        layout.measuredNet_L = 60.0;
        layout.co2 = record::Co2Mode::Pressurised;
        const auto made = m_keeper.addTank(tank, layout);
        EXPECT_TRUE(made);
        return m_keeper.row().layoutsOf(*made).front()->layout.id;
    }

    [[nodiscard]] QDate today() const { return m_clock.at.localDate(); }

    void enter(record::LayoutId layout, EntryKind kind, const QDate& day, const QString& subject = {},
               std::optional<double> fraction = {})
    {
        record::Entry entry;
        entry.layout = layout;
        entry.kind = kind;
        entry.at = on(day, 9);
        entry.subject = subject;
        entry.fraction = fraction;
        if (kind == EntryKind::Addition) {
            entry.count = 6;
        }
        ASSERT_TRUE(m_keeper.enter(entry));
    }

    void read(record::LayoutId layout, const QString& parameter, const QDate& day)
    {
        facade::Keeper::TypedReading typed;
        typed.layout = layout;
        typed.parameter = parameter;
        typed.typed = u"0"_s;
        typed.at = on(day, 8);
        ASSERT_TRUE(m_keeper.enterReading(typed));
    }

    [[nodiscard]] record::Journey journey(int leavesIn, int days) const
    {
        record::Journey made;
        made.leaves = today().addDays(leavesIn);
        made.returns = made.leaves.addDays(days);
        made.helper = u"Ida"_s;
        made.phone = u"+00 12; +00 13"_s;
        return made;
    }

    [[nodiscard]] HandOver over(const record::Journey& journey) const
    {
        auto made = facade::handOver(m_keeper.row(), journey, m_clock.at);
        EXPECT_TRUE(made);
        return made ? *made : HandOver();
    }

    static std::vector<HandOverTask> all(const HandOver& over)
    {
        std::vector<HandOverTask> tasks = over.before;
        for (const facade::HelperSheet& sheet : over.sheets) {
            tasks.insert(tasks.end(), sheet.tasks.begin(), sheet.tasks.end());
        }
        tasks.insert(tasks.end(), over.after.begin(), over.after.end());
        return tasks;
    }

    [[nodiscard]] std::vector<HandOverTask> of(const HandOver& over, record::LayoutId layout, const QString& key) const
    {
        std::vector<HandOverTask> found = all(over);
        std::erase_if(found,
                      [&](const HandOverTask& t) { return t.item.layout != layout || t.item.templateKey != key; });
        return found;
    }

    QTemporaryDir m_folder;
    HandClock m_clock;
    facade::Keeper m_keeper{m_clock};
    record::LayoutId m_settled, m_young;
};

TEST_F(HandOverTest, NeedsTwoDaysInOrder)
{
    EXPECT_FALSE(facade::handOver(m_keeper.row(), {}, m_clock.at));
    record::Journey turned = journey(10, 5);
    std::swap(turned.leaves, turned.returns);
    const auto made = facade::handOver(m_keeper.row(), turned, m_clock.at);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().fault, Fault::BadInput);
}

TEST_F(HandOverTest, AGrownTankIsChangedOnTheDayOfLeavingAndWaits)
{
    enter(m_settled, EntryKind::WaterChange, today().addDays(-1), {}, 0.4);
    // Weekly: 1, 8 ... December. Leaving on the 5th, back on the 13th: changed on the 5th, the next is due on the 12th
    // and may wait two days.
    const HandOver made = over(journey(10, 8));
    const auto changes = of(made, m_settled, u"water-change"_s);
    ASSERT_EQ(changes.size(), 2U);
    EXPECT_EQ(changes[0].hand, Hand::Before);
    EXPECT_EQ(changes[0].day, made.journey.leaves);
    EXPECT_EQ(changes[1].hand, Hand::After);
}

TEST_F(HandOverTest, ALongJourneyNeedsTheHelpersChange)
{
    enter(m_settled, EntryKind::WaterChange, today().addDays(-1), {}, 0.4);
    const HandOver made = over(journey(10, 15));
    const auto changes = of(made, m_settled, u"water-change"_s);
    const auto helper = std::ranges::find(changes, Hand::Helper, &HandOverTask::hand);
    ASSERT_NE(helper, changes.end());
    EXPECT_EQ(helper->day, made.journey.leaves.addDays(7));
    EXPECT_FALSE(helper->how.isEmpty());
    EXPECT_TRUE(helper->howMuch.contains(u"24"_s)) << helper->howMuch.toStdString(); // 40 % of 60 L
    EXPECT_EQ(helper->cautions.front(), u"C-ELEC"_s) << "hands, mains and water: said before the work";
    EXPECT_GE(made.helperLitres(), 24.0);
}

TEST_F(HandOverTest, AYoungTankIsSaidToBeBetterNotLeftAndKeepsItsChanges)
{
    const HandOver made = over(journey(5, 6));
    const auto sheet = std::ranges::find(made.sheets, m_young, &facade::HelperSheet::layout);
    ASSERT_NE(sheet, made.sheets.end());
    EXPECT_TRUE(sheet->young);
    EXPECT_TRUE(std::ranges::any_of(made.preparations, [](const facade::Preparation& p) {
        return p.key == u"young"_s && p.tank == u"Fern Hollow"_s;
    }));
    const auto changes = of(made, m_young, u"water-change"_s);
    EXPECT_TRUE(std::ranges::any_of(changes, [](const HandOverTask& t) { return t.hand == Hand::Helper; }));
}

TEST_F(HandOverTest, OnlyWhatIsMarkedAsSimpleGoesToTheHelper)
{
    const HandOver made = over(journey(3, 25));
    const care::TemplateSet templates = care::templatesFor(m_keeper.row());
    int tasks = 0;
    for (const facade::HelperSheet& sheet : made.sheets) {
        for (const HandOverTask& task : sheet.tasks) {
            const care::WorkTemplate* work = templates.find(task.item.templateKey);
            ASSERT_NE(work, nullptr);
            EXPECT_FALSE(work->helper.isEmpty()) << work->key.toStdString();
            EXPECT_FALSE(task.how.isEmpty());
            EXPECT_TRUE(made.journey.covers(task.day));
            ++tasks;
        }
    }
    EXPECT_GT(tasks, 5);
    // No filter, no gas, no dose, no scissors, no decision (common practice: a helper's sheet is short and safe).
    for (const QString& key :
         {u"filter-first"_s, u"filter-service"_s, u"prefilter"_s, u"diffuser"_s, u"hoses"_s, u"trim-stems"_s,
          u"co2-curve"_s, u"light-step"_s, u"root-feed"_s, u"gate-review"_s, u"heater-replace"_s, u"rcd-test"_s}) {
        const care::WorkTemplate* work = templates.find(key);
        ASSERT_NE(work, nullptr) << key.toStdString();
        EXPECT_TRUE(work->helper.isEmpty()) << key.toStdString();
    }
}

TEST_F(HandOverTest, FilterServiceIsBroughtForwardByFiveToSevenDays)
{
    enter(m_settled, EntryKind::Upkeep, today().addDays(-45), u"filter-service"_s); // again on day 15
    const HandOver made = over(journey(10, 25));                                    // overdue before the return
    const auto service = of(made, m_settled, u"filter-service"_s);
    ASSERT_FALSE(service.empty());
    EXPECT_EQ(service.front().hand, Hand::Before);
    EXPECT_GE(service.front().day, made.journey.leaves.addDays(-7));
    EXPECT_LE(service.front().day, made.journey.leaves.addDays(-5));
    // The tests that follow a service follow this one, too; the seventh day is the helper's.
    const auto tests = of(made, m_settled, u"test-after-event"_s);
    EXPECT_TRUE(std::ranges::any_of(tests, [](const HandOverTask& t) { return t.hand == Hand::Helper; }));
}

TEST_F(HandOverTest, EveryRoundOfTheJourneyIsSomebodys)
{
    enter(m_settled, EntryKind::WaterChange, today().addDays(-1), {}, 0.4);
    read(m_settled, u"no3"_s, today().addDays(-1));
    const record::Journey away = journey(4, 12);
    const HandOver made = over(away);
    std::set<std::pair<qint64, QString>> seen;
    for (const HandOverTask& task : all(made)) {
        seen.insert({task.item.layout.value, task.item.templateKey});
        EXPECT_FALSE(task.what.isEmpty());
        EXPECT_FALSE(task.why.isEmpty());
    }
    for (const record::LayoutId layout : {m_settled, m_young}) {
        for (const care::DueItem& item : care::dueWork(m_keeper.row(), layout, m_clock.at, away.returns.addDays(-1))) {
            if (away.covers(item.due) && !care::isOffered(item)) {
                EXPECT_TRUE(seen.contains({layout.value, item.templateKey})) << item.templateKey.toStdString();
            }
        }
    }
}

TEST_F(HandOverTest, SheetsSayWhatNotToDoAndWhenToCall)
{
    enter(m_settled, EntryKind::Addition, today().addDays(-100), u"ember tetra"_s);
    const HandOver made = over(journey(10, 8));
    ASSERT_EQ(made.sheets.size(), 2U);
    const facade::HelperSheet& sheet = made.sheets.front();
    EXPECT_EQ(sheet.name, u"Slate Ford"_s);
    EXPECT_TRUE(sheet.known.join(u' ').contains(u"ember tetra"_s));
    const QString doNot = sheet.doNot.join(u' ');
    for (const QString& word : {u"medicine"_s, u"filter"_s, u"animals"_s, u"CO₂"_s, u"plugs"_s}) {
        EXPECT_TRUE(doNot.contains(word)) << word.toStdString();
    }
    for (const QString& caution : {u"C-CO2"_s, u"C-ELEC"_s, u"C-O2"_s, u"C-HANDS"_s}) {
        EXPECT_TRUE(sheet.cautions.contains(caution)) << caution.toStdString();
    }
    for (const facade::CallSign& sign : sheet.signs) {
        EXPECT_FALSE(sign.steps.isEmpty()) << sign.sign.toStdString();
        EXPECT_FALSE(sign.caution.isEmpty());
    }
    EXPECT_EQ(made.call.first(2), (QStringList{u"Call +00 12."_s, u"Call +00 13."_s}));
    EXPECT_TRUE(made.call.last().contains(u"veterinarian"_s));
    EXPECT_FALSE(made.onReturn.isEmpty());
}

TEST_F(HandOverTest, WhatWasNotKeptIsSaid)
{
    enter(m_settled, EntryKind::Addition, today().addDays(-2), u"ember tetra"_s);
    const HandOver made = over(journey(5, 8));
    const auto quiet = std::ranges::find(made.preparations, u"no-additions"_s, &facade::Preparation::key);
    ASSERT_NE(quiet, made.preparations.end());
    EXPECT_TRUE(quiet->broken);
    EXPECT_TRUE(quiet->remark.contains(u"Slate Ford"_s));
    const HandOver later = over(journey(20, 8));
    const auto kept = std::ranges::find(later.preparations, u"no-additions"_s, &facade::Preparation::key);
    EXPECT_FALSE(kept->broken) << "three weeks on";
}

TEST_F(HandOverTest, WhatWasDoneIsTypedInAfterwardsOnItsDay)
{
    enter(m_settled, EntryKind::WaterChange, today().addDays(-1), {}, 0.4);
    record::Journey away = journey(10, 15);
    const auto id = facade::keepJourney(m_keeper, away);
    ASSERT_TRUE(id);
    away.id = *id;
    EXPECT_TRUE(facade::openHelperTasks(m_keeper.row(), away, m_clock.at).empty()) << "nothing is past yet";
    m_clock.at = on(away.returns, 18);
    const auto open = facade::openHelperTasks(m_keeper.row(), away, m_clock.at);
    ASSERT_FALSE(open.empty());
    const auto change = std::ranges::find_if(open, [&](const HandOverTask& t) {
        return t.item.layout == m_settled && t.item.kind == care::WorkKind::WaterChange;
    });
    ASSERT_NE(change, open.end());

    facade::HelperDone line;
    line.item = change->item;
    line.day = change->day.addDays(1); // a day late
    line.note = u"all well"_s;
    line.fraction = 0.35;
    const auto test = std::ranges::find_if(open, [](const HandOverTask& t) {
        return t.item.kind == care::WorkKind::Test && t.item.parameters.contains(u"tan"_s);
    });
    ASSERT_NE(test, open.end());
    facade::HelperDone read;
    read.item = test->item;
    read.day = test->day;
    for (const QString& parameter : test->item.parameters) {
        read.values.push_back({parameter, u"0.25"_s, {}});
    }
    const std::size_t before = m_keeper.row().recordCount();
    const auto written = facade::writeHelperWork(m_keeper, away, {line, read});
    ASSERT_TRUE(written) << written.error().sentence();
    EXPECT_EQ(*written, 2);
    const record::LayoutRecord& layout = *m_keeper.row().layout(m_settled);
    const record::Entry* entry = layout.lastDone(EntryKind::WaterChange, m_clock.at);
    ASSERT_NE(entry, nullptr);
    EXPECT_EQ(entry->at.localDate(), line.day);
    EXPECT_DOUBLE_EQ(*entry->fraction, 0.35);
    EXPECT_EQ(entry->note, u"all well"_s);
    EXPECT_EQ(m_keeper.row().recordCount(), before + 1 + read.values.size());
    const auto left = facade::openHelperTasks(m_keeper.row(), away, m_clock.at);
    EXPECT_EQ(left.size(), open.size() - 2);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(m_keeper.row().recordCount(), before) << "one change, undone as one";
}

TEST_F(HandOverTest, ALineThatCannotBeWrittenStopsTheListAndIsNamed)
{
    enter(m_settled, EntryKind::WaterChange, today().addDays(-1), {}, 0.4);
    record::Journey away = journey(10, 15);
    away.id = *facade::keepJourney(m_keeper, away);
    m_clock.at = on(away.returns, 18);
    const auto open = facade::openHelperTasks(m_keeper.row(), away, m_clock.at);
    ASSERT_GE(open.size(), 2U);
    const std::size_t before = m_keeper.row().recordCount();
    const auto refused = [&](const facade::HelperDone& line) {
        facade::HelperDone good;
        good.item = open.front().item;
        good.done = false;
        good.day = open.front().day;
        good.note = u"ill"_s;
        const auto written = facade::writeHelperWork(m_keeper, away, {good, line});
        EXPECT_FALSE(written);
        EXPECT_EQ(m_keeper.row().recordCount(), before);
        return written ? std::string() : written.error().where;
    };
    facade::HelperDone line;
    line.item = open.back().item;
    line.day = away.returns.addDays(1);
    EXPECT_NE(refused(line).find(open.back().tank.toStdString()), std::string::npos) << "a day after the journey";
    line.day = open.back().day;
    line.done = false;
    EXPECT_FALSE(refused(line).empty()) << "left out without a reason";
    const auto test =
        std::ranges::find_if(open, [](const HandOverTask& t) { return t.item.kind == care::WorkKind::Test; });
    ASSERT_NE(test, open.end());
    line.item = test->item;
    line.done = true;
    EXPECT_FALSE(refused(line).empty()) << "a test without a number";
    line.values = {{test->item.parameters.front(), u"blue"_s, {}}};
    EXPECT_FALSE(refused(line).empty()) << "no number";
}

TEST_F(HandOverTest, TheJourneyThatCounts)
{
    EXPECT_EQ(facade::journeyAround(m_keeper.row(), today()), nullptr);
    record::Journey past = journey(-20, 5);
    record::Journey next = journey(30, 5);
    ASSERT_TRUE(facade::keepJourney(m_keeper, past));
    EXPECT_EQ(facade::journeyAround(m_keeper.row(), today())->leaves, past.leaves) << "to type in what was done";
    ASSERT_TRUE(facade::keepJourney(m_keeper, next));
    EXPECT_EQ(facade::journeyAround(m_keeper.row(), today())->leaves, next.leaves);
    record::Journey now = journey(-2, 5);
    const auto kept = facade::keepJourney(m_keeper, now);
    ASSERT_TRUE(kept);
    EXPECT_EQ(facade::journeyAround(m_keeper.row(), today())->leaves, now.leaves);
    ASSERT_TRUE(facade::dropJourney(m_keeper, *kept));
    EXPECT_EQ(facade::journeyAround(m_keeper.row(), today())->leaves, next.leaves);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(facade::journeyAround(m_keeper.row(), today())->leaves, now.leaves);
}

} // namespace
