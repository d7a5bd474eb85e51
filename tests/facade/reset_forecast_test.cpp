// SPDX-License-Identifier: GPL-3.0-or-later
// Carrying on against starting afresh: the same model on both ways, honest about what the fresh one rests on.
#include "core/facade/reset_forecast.h"

#include "core/facade/case_desk.h"
#include "core/facade/forecast_case.h"
#include "core/forecast/forecaster.h"
#include "tests/support/temp_store.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;
using facade::ResetForecast;

namespace {

class ResetForecastTest : public ::testing::Test
{
protected:
    ResetForecastTest()
        : m_layout(m_temp.addTank(u"Slate Ford"_s, 60))
    {
        for (const double day : {50.0, 44.0, 38.0, 30.0, 24.0, 18.0, 12.0, 6.0, 1.0}) {
            const bool early = day > 25.0;
            m_temp.read(m_layout, u"tan"_s, early ? u"0.8"_s : u"0.02"_s, day, u"mg/L N"_s);
            m_temp.read(m_layout, u"no2"_s, early ? u"0.5"_s : u"0.01"_s, day, u"mg/L N"_s);
        }
    }

    [[nodiscard]] ResetForecast made(record::StartMethod start)
    {
        auto answer = facade::resetForecast(m_temp.keeper.row(), m_layout, start, m_temp.clock.now(), m_learning);
        EXPECT_TRUE(answer) << (answer ? "" : answer.error().sentence());
        return answer ? std::move(answer).value() : ResetForecast{};
    }

    test::TempKeeper m_temp;
    record::LayoutId m_layout;
    facade::Learning m_learning;
};

} // namespace

TEST_F(ResetForecastTest, BothWaysStandOnOneAxisFromToday)
{
    const ResetForecast both = made(record::StartMethod::NewMedia);
    for (const facade::ResetWay* way : {&both.keep, &both.fresh}) {
        ASSERT_FALSE(way->days.empty());
        EXPECT_NEAR(way->days.front(), 0.0, 1e-6);
        EXPECT_NEAR(way->days.back(), facade::kResetWindow_d, 1.0);
        EXPECT_EQ(way->bands[0].size(), way->days.size());
        EXPECT_EQ(way->gates.size(), 4u);
    }
    EXPECT_NEAR(both.keep.ageNow, 60.0, 0.1);
    EXPECT_NEAR(both.fresh.ageNow, 0.0, 1e-6);
    EXPECT_EQ(both.fresh.readings, 0) << "nothing is read of what does not exist";
    EXPECT_EQ(both.keep.readings, 18);
}

TEST_F(ResetForecastTest, AFreshStartOfASettledTankTakesLongerAndMoreWork)
{
    const ResetForecast both = made(record::StartMethod::NewMedia);
    const auto middle = [](const facade::ResetWay& way) { return way.gates.front().odds.day[3] - way.ageNow; };
    EXPECT_LT(middle(both.keep), 1.0) << "its readings are clear";
    EXPECT_GT(middle(both.fresh), 10.0);
    EXPECT_GT(both.fresh.gates.front().changes, both.keep.gates.front().changes);
    EXPECT_GT(both.fresh.litres, both.keep.litres);
    EXPECT_NEAR(both.fresh.litres / both.net_L, both.fresh.changes * 0.5, both.fresh.changes * 0.35)
        << "litres are shares of the tank";
}

TEST_F(ResetForecastTest, MatureMediaBringTheDateNearer)
{
    const auto middle = [](const ResetForecast& both) { return both.fresh.gates.front().odds.day[3]; };
    EXPECT_LT(middle(made(record::StartMethod::MatureMedia)), middle(made(record::StartMethod::NewMedia)));
}

TEST_F(ResetForecastTest, CarryingOnIsTheForecastEveryOtherPageShows)
{
    const ResetForecast both = made(record::StartMethod::NewMedia);
    facade::ForecastOptions options;
    options.horizonDays = facade::kResetWindow_d;
    auto inputs = facade::forecastCase(m_temp.keeper.row(), m_layout, m_temp.clock.now(), options);
    ASSERT_TRUE(inputs);
    m_learning.teach(*inputs);
    const auto plain = forecast::forecast(inputs->request);
    ASSERT_TRUE(plain);
    EXPECT_EQ(both.keep.bands[1].back(), plain->substances[1].water.back());
    EXPECT_EQ(made(record::StartMethod::NewMedia).fresh.bands[1], both.fresh.bands[1]) << "same question, same answer";
}

TEST_F(ResetForecastTest, TheOwnRowTeachesTheFreshStart)
{
    // The layout itself is finished in the question, so its first sixty days teach.
    for (double day = 58.0; day > 0.0; day -= 4.0) {
        m_temp.read(m_layout, u"tan"_s, u"0.1"_s, day, u"mg/L N"_s);
        m_temp.read(m_layout, u"no2"_s, u"0.1"_s, day, u"mg/L N"_s);
    }
    EXPECT_FALSE(made(record::StartMethod::NewMedia).fresh.learned.isEmpty());
    store::Edit off(u"no learning"_s);
    off.set(facade::kLearnSetting, u"off"_s);
    ASSERT_TRUE(m_temp.keeper.commit(off));
    const ResetForecast both = made(record::StartMethod::NewMedia);
    EXPECT_TRUE(both.fresh.learned.isEmpty());
    const QStringList said = facade::resetTable(both).sentences;
    EXPECT_TRUE(std::ranges::any_of(said, [](const QString& s) { return s.contains(u"Nothing was learned"_s); }));
}

TEST_F(ResetForecastTest, WordsSayWhatIsAssumedAndGiveOddsWithDates)
{
    const facade::ResetTable table = facade::resetTable(made(record::StartMethod::NewMedia));
    ASSERT_EQ(table.rows.size(), 4u);
    EXPECT_TRUE(table.headline.contains(u"later"_s)) << table.headline.toStdString();
    for (const QStringList& row : table.rows) {
        EXPECT_EQ(row.size(), table.heads.size());
        EXPECT_TRUE(row[3].contains(u" in "_s)) << "odds beside the date: " << row[3].toStdString();
    }
    const QString all = table.sentences.join(u' ');
    EXPECT_TRUE(all.contains(u"no animals and no feed"_s));
    EXPECT_TRUE(all.contains(u"prior"_s));
    EXPECT_TRUE(all.contains(u"yours to weigh"_s));
}

TEST_F(ResetForecastTest, WhatCannotBeComparedIsRefused)
{
    const auto ask = [this](record::LayoutId layout) {
        return facade::resetForecast(m_temp.keeper.row(), layout, record::StartMethod::NewMedia, m_temp.clock.now(),
                                     m_learning);
    };
    EXPECT_FALSE(ask({}));
    record::Layout ended = m_temp.keeper.row().layout(m_layout)->layout;
    ended.ended = m_temp.clock.now().plusDays(-1);
    store::Edit edit(u"ended"_s);
    edit.put(ended);
    ASSERT_TRUE(m_temp.keeper.commit(edit));
    EXPECT_FALSE(ask(m_layout));
}

TEST_F(ResetForecastTest, TheDeskAnswersOffTheThreadAndOnceForEachRecord)
{
    facade::CaseDesk desk(m_temp.keeper);
    int answers = 0;
    QObject::connect(&desk, &facade::CaseDesk::resetReady, &desk, [&] { ++answers; });
    desk.weighReset(m_layout, record::StartMethod::NewMedia);
    EXPECT_TRUE(desk.isWeighing());
    desk.wait(true);
    EXPECT_EQ(answers, 1);
    ASSERT_NE(desk.reset(), nullptr);
    desk.weighReset(m_layout, record::StartMethod::NewMedia);
    EXPECT_FALSE(desk.isWeighing()) << "it has been asked of this record";
    m_temp.change(m_layout, 0.3, 0.5);
    desk.weighReset(m_layout, record::StartMethod::NewMedia);
    EXPECT_TRUE(desk.isWeighing());
    desk.wait(true);
    EXPECT_EQ(answers, 2);
}
