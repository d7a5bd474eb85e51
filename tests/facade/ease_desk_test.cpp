// SPDX-License-Identifier: GPL-3.0-or-later
// The forecast's word on easing: reckoned on the members at the looser cadence, put as a question, acted on only by the
// keeper.
#include "core/care/cadence.h"
#include "core/facade/ease_desk.h"
#include "tests/support/temp_store.h"

#include <QCoreApplication>

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

namespace {

/// Day 27, twice a week of late, clear before the last two changes: the record would bear easing.
struct EaseableTank
{
    EaseableTank()
        : forecasts(t.keeper)
        , layout(t.addTank(u"Slate Ford"_s, 27))
    {
        for (const double ago : {26.0, 25.0, 24.0, 23.0, 22.0, 21.0, 20.0, 18.0, 16.0, 14.0, 11.0, 7.0, 4.0}) {
            t.change(layout, 0.5, ago);
        }
        for (const double ago : {4.1, 0.1}) {
            t.read(layout, u"tan"_s, u"0.05"_s, ago);
            t.read(layout, u"no2"_s, u"0.02"_s, ago, u"mg/L N"_s);
        }
        for (const double ago : {12.0, 8.0}) {
            t.read(layout, u"tan"_s, u"0.1"_s, ago);
        }
    }

    TempKeeper t;
    facade::Forecasts forecasts;
    record::LayoutId layout;
};

} // namespace

TEST(EaseDesk, AsksTheForecastAndPutsTheQuestionWithItsOdds)
{
    EaseableTank tank;
    facade::EaseDesk desk(tank.t.keeper, tank.forecasts);
    int weighed = 0;
    QObject::connect(&desk, &facade::EaseDesk::weighed, [&] { ++weighed; });
    const record::Moment now = tank.t.clock.now();
    ASSERT_TRUE(care::easeCandidate(tank.t.keeper.row(), tank.layout, now));
    EXPECT_FALSE(desk.odds(tank.layout)) << "no forecast yet";
    EXPECT_FALSE(desk.question(tank.layout));
    tank.forecasts.refresh();
    tank.forecasts.wait();
    QCoreApplication::processEvents();
    desk.wait();
    EXPECT_EQ(weighed, 1);
    const auto odds = desk.odds(tank.layout);
    ASSERT_TRUE(odds);
    EXPECT_GE(*odds, 0.0);
    EXPECT_LE(*odds, 1.0);
    const auto question = desk.question(tank.layout);
    EXPECT_EQ(question.has_value(), *odds >= care::kEaseOdds);
}

TEST(EaseDesk, RarerChangesNeverMakeTheOddsBetterForAHigherLimit)
{
    EaseableTank tank;
    tank.forecasts.refresh();
    tank.forecasts.wait();
    const auto basis = tank.forecasts.result(tank.layout);
    ASSERT_NE(basis, nullptr);
    const care::Pace weekly{7.0, 0.5, {}, {}, {}};
    const auto strict = facade::oddsAtLooser(*basis, weekly, care::easeLimits(true));
    const auto mild = facade::oddsAtLooser(*basis, weekly, care::easeLimits(false));
    const auto any = facade::oddsAtLooser(*basis, weekly, {1e6, 1e6});
    ASSERT_TRUE(strict && mild && any);
    EXPECT_LE(*strict, *mild) << "the stricter limits are kept less often";
    EXPECT_LE(*mild, *any);
    EXPECT_DOUBLE_EQ(*any, 1.0);
    EXPECT_DOUBLE_EQ(*strict, *facade::oddsAtLooser(*basis, weekly, care::easeLimits(true))) << "the same draws again";
    std::stop_source stop;
    stop.request_stop();
    const auto stopped = facade::oddsAtLooser(*basis, weekly, care::easeLimits(true), stop.get_token());
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().fault, Fault::Cancelled);
}

TEST(EaseDesk, AYesChangesTheCadenceAndUndoTakesItBack)
{
    EaseableTank tank;
    facade::Keeper& keeper = tank.t.keeper;
    const auto question = care::easeQuestion(keeper.row(), tank.layout, tank.t.clock.now(), 0.95);
    ASSERT_TRUE(question);
    EXPECT_EQ(care::acceptedSteps(keeper.row(), tank.layout).steps, 0) << "asking changes nothing";
    ASSERT_TRUE(keeper.markDone(*question, tank.t.clock.now()));
    EXPECT_EQ(care::acceptedSteps(keeper.row(), tank.layout).steps, 1);
    EXPECT_EQ(care::acceptedSteps(keeper.row(), tank.layout).since, tank.t.clock.today());
    EXPECT_FALSE(care::easeQuestion(keeper.row(), tank.layout, tank.t.clock.now(), 0.95)) << "not again for a while";
    const auto undone = keeper.undo();
    ASSERT_TRUE(undone);
    EXPECT_EQ(*undone, u"water changes eased"_s);
    EXPECT_EQ(care::acceptedSteps(keeper.row(), tank.layout).steps, 0);
    EXPECT_TRUE(care::easeQuestion(keeper.row(), tank.layout, tank.t.clock.now(), 0.95));
}

TEST(EaseDesk, ANoKeepsTheCadenceAndItsReason)
{
    EaseableTank tank;
    facade::Keeper& keeper = tank.t.keeper;
    const auto question = care::easeQuestion(keeper.row(), tank.layout, tank.t.clock.now(), 0.95);
    ASSERT_TRUE(question);
    EXPECT_FALSE(keeper.skip(*question, u"  "_s)) << "a no has its reason, too";
    ASSERT_TRUE(keeper.skip(*question, u"guests next week"_s));
    EXPECT_EQ(care::acceptedSteps(keeper.row(), tank.layout).steps, 0);
    EXPECT_FALSE(care::easeQuestion(keeper.row(), tank.layout, tank.t.clock.now(), 0.95));
}
