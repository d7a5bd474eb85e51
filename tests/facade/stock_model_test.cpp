// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/stock_model.h"

#include "core/facade/acclimation_plan.h"
#include "core/facade/stock_desk.h"
#include "tests/support/temp_store.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::EntryKind;

namespace {

class StockModelTest : public ::testing::Test
{
protected:
    StockModelTest()
        : m_layout(m_temp.addTank(u"Slate Ford"_s, 60))
    {
    }

    record::EntryId put(EntryKind kind, const QString& subject, std::optional<int> count, double daysAgo,
                        const QString& unit = {}, bool planned = false)
    {
        record::Entry entry;
        entry.layout = m_layout;
        entry.kind = kind;
        entry.subject = subject;
        entry.count = count;
        entry.unit = unit;
        entry.planned = planned;
        entry.at = m_temp.clock.now().plusDays(-daysAgo);
        const auto done = m_temp.keeper.enter(entry);
        EXPECT_TRUE(done);
        return done ? *done : record::EntryId{};
    }
    void see(const QString& subject, std::optional<double> cover, std::optional<int> severity, double daysAgo,
             const QString& where = {})
    {
        record::Entry entry;
        entry.layout = m_layout;
        entry.kind = EntryKind::Observation;
        entry.subject = subject;
        entry.coverage = cover;
        entry.severity = severity;
        entry.where = where;
        entry.at = m_temp.clock.now().plusDays(-daysAgo);
        EXPECT_TRUE(m_temp.keeper.enter(entry));
    }
    [[nodiscard]] StockModel stock(const std::optional<StockWish>& wish = {}) const
    {
        return stockOf(m_temp.keeper.row(), m_layout, m_temp.clock.now(), facts::builtInFacts(), nullptr, wish);
    }
    [[nodiscard]] static const facts::Species& species(const QString& id)
    {
        return *facts::builtInFacts().speciesById(id);
    }
    [[nodiscard]] static bool worries(const AnimalRow& row, ConcernKind kind)
    {
        return std::ranges::count(row.concerns, kind, &StockConcern::kind) > 0;
    }

    test::TempKeeper m_temp;
    record::LayoutId m_layout;
};

} // namespace

TEST_F(StockModelTest, SubjectsNameTheirSpecies)
{
    const facts::FactBook& book = facts::builtInFacts();
    const auto id = [&](const QString& subject) {
        const facts::Species* found = speciesNamed(book, subject);
        return found == nullptr ? QString() : found->id;
    };
    EXPECT_EQ(id(u"Neocaridina davidi"_s), u"A002"_s);
    EXPECT_EQ(id(u"Cherry shrimps"_s), u"A002"_s);
    EXPECT_EQ(id(u"algae-eating shrimp"_s), u"A001"_s);
    EXPECT_TRUE(id(u"snails"_s).isEmpty()) << "many species have that word";
    EXPECT_TRUE(id(u"small tetras"_s).isEmpty());
    EXPECT_TRUE(id({}).isEmpty());
}

TEST_F(StockModelTest, CountsAndLossesAddUp)
{
    put(EntryKind::Addition, u"cherry shrimp"_s, 12, 20);
    put(EntryKind::Addition, u"Cherry shrimp"_s, 5, 10);
    put(EntryKind::Loss, u"cherry shrimp"_s, 2, 3);
    put(EntryKind::Addition, u"ember tetra"_s, 10, -3, {}, true);
    put(EntryKind::Addition, u"assassin snail"_s, 1, 9);
    put(EntryKind::Loss, u"assassin snail"_s, 1, 8);
    const StockModel model = stock(StockWish{u"A036"_s, 10});
    ASSERT_EQ(model.animals.size(), 3u) << "what is gone has no row";
    EXPECT_EQ(model.animals[0].count, 15);
    EXPECT_EQ(model.animals[0].lost, 2);
    EXPECT_TRUE(worries(model.animals[0], ConcernKind::RecentLoss));
    EXPECT_EQ(model.animals[1].place, StockPlace::Planned);
    EXPECT_EQ(model.animals[2].place, StockPlace::Considered);
    EXPECT_EQ(model.animalCount(), 15);
}

TEST_F(StockModelTest, RangesAreHeldAgainstTheLastFortnight)
{
    put(EntryKind::Addition, u"bee shrimp"_s, 20, 5); // pH 5.5-6.5 or the like, from the facts
    const facts::Span ph = species(u"A003"_s).ph;
    m_temp.read(m_layout, u"ph"_s, QString::number(ph.high + 1.0), 20); // too old to count
    m_temp.read(m_layout, u"ph"_s, QString::number(ph.high + 0.4), 9);
    m_temp.read(m_layout, u"ph"_s, QString::number(ph.high - 0.1), 1);
    const auto cell = [this](const QString& parameter) {
        const StockModel model = stock();
        const auto column = std::ranges::find(model.columns, parameter, &StockColumn::parameter);
        return model.animals.front().cells[static_cast<std::size_t>(column - model.columns.begin())];
    };
    EXPECT_EQ(cell(u"ph"_s).suits, Suits::Partly);
    EXPECT_EQ(cell(u"temp"_s).suits, Suits::Unknown);
    m_temp.read(m_layout, u"ph"_s, QString::number(ph.high + 0.3), 0.2);
    EXPECT_EQ(cell(u"ph"_s).suits, Suits::No);
    EXPECT_EQ(stock().animals.front().status, Status::Act);
    EXPECT_FALSE(stock().animals.front().waterSuits());
}

TEST_F(StockModelTest, NitrateIsHeldAgainstTheLimitForAnimals)
{
    // 50 mg/L as the ion over source water: trade limit for tanks with animals (second hand).
    put(EntryKind::Addition, u"zebra danio"_s, 8, 5);
    m_temp.read(m_layout, u"no3"_s, u"60"_s, 1, u"mg/L NO3"_s);
    const StockModel model = stock();
    EXPECT_EQ(model.columns.back().parameter, u"no3"_s);
    EXPECT_NEAR(*model.columns.back().newest, 60.0, 0.01);
    EXPECT_EQ(model.animals.front().cells.back().suits, Suits::No);
}

TEST_F(StockModelTest, CompanyGroupAndTankAreJudged)
{
    put(EntryKind::Addition, u"cherry shrimp"_s, 12, 20);
    const StockModel angel = stock(StockWish{u"A050"_s, 2}); // angelfish: eats shrimp, four together, 200 L
    const AnimalRow& row = angel.animals.back();
    EXPECT_TRUE(worries(row, ConcernKind::EatsShrimp));
    EXPECT_TRUE(worries(row, ConcernKind::SmallGroup));
    EXPECT_TRUE(worries(row, ConcernKind::SmallTank));
    EXPECT_TRUE(row.concerns.front().serious);
    EXPECT_FALSE(worries(angel.animals.front(), ConcernKind::EatsShrimp))
        << "what is only thought about is no trouble of those that live here";
    put(EntryKind::Addition, u"ember tetra"_s, 8, 10);
    const StockModel more = stock(StockWish{u"A024"_s, 4});
    EXPECT_FALSE(worries(more.animals.back(), ConcernKind::SmallGroup)) << "those that live here count";
    EXPECT_TRUE(worries(more.animals[1], ConcernKind::SmallGroup)) << "8 of 10, whatever is thought about";
}

TEST_F(StockModelTest, UnknownSubjectsSayNothingAboutWater)
{
    put(EntryKind::Addition, u"snails"_s, 20, 20);
    const AnimalRow row = stock().animals.front();
    EXPECT_FALSE(row.species);
    EXPECT_EQ(row.status, Status::Unknown);
    EXPECT_EQ(row.cells.size(), stock().columns.size());
}

TEST_F(StockModelTest, PlantsHaveCoverConditionAndNeed)
{
    put(EntryKind::Addition, u"Rotala macrandra"_s, 20, 60, u"stems"_s); // much light, CO2 needed
    put(EntryKind::Addition, u"Cryptocoryne wendtii"_s, 7, 60, u"plants"_s);
    see(u"Rotala macrandra"_s, 0.2, {}, 40);
    see(u"Rotala macrandra"_s, 0.5, {}, 5);
    see(u"melt"_s, 0.2, 2, 6, u"Cryptocoryne, old leaves"_s);
    const StockModel model = stock();
    ASSERT_EQ(model.plants.size(), 2u);
    EXPECT_TRUE(model.animals.empty());
    const PlantRow& rotala = model.plants[0];
    ASSERT_EQ(rotala.cover.size(), 2u);
    EXPECT_DOUBLE_EQ(rotala.cover.back().share, 0.5);
    EXPECT_EQ(rotala.severity, 0);
    EXPECT_TRUE(rotala.co2Short) << "no CO2 is added to this tank";
    EXPECT_EQ(model.plants[1].trouble, u"melt"_s);
    EXPECT_EQ(model.plants[1].severity, 2);
    EXPECT_TRUE(model.plants[1].cover.empty()) << "the share of melt is not the cover";
}

TEST_F(StockModelTest, StepsOfLightAndGasFollowThePractice)
{
    // Edges by the daily sum (common practice): little to 2.5, middling to 4, much to 6 mol/m2.
    EXPECT_DOUBLE_EQ(lightLevel(2.5), 1.0);
    EXPECT_DOUBLE_EQ(lightLevel(3.25), 1.5);
    EXPECT_DOUBLE_EQ(lightLevel(6.0), 3.0);
    EXPECT_DOUBLE_EQ(lightLevel(100.0), 4.0);
    EXPECT_DOUBLE_EQ(lightLevel(0.0), 0.0);
    EXPECT_DOUBLE_EQ(co2Level(15.0), 2.0);
}

TEST_F(StockModelTest, MediaMovesStandOnceWhicheverTankToldOfThem)
{
    const record::LayoutId other = m_temp.addTank(u"Mill Race"_s, 400);
    const auto tankOf = [&](record::LayoutId id) { return m_temp.keeper.row().layout(id)->layout.tank; };
    const auto move = [&](record::LayoutId at, record::TankId with, const QString& subject) {
        record::Entry entry;
        entry.layout = at;
        entry.kind = EntryKind::MediaTransfer;
        entry.subject = subject;
        entry.otherTank = with;
        entry.fraction = 0.35;
        entry.at = m_temp.clock.now().plusDays(-30);
        EXPECT_TRUE(m_temp.keeper.enter(entry));
    };
    move(m_layout, tankOf(other), u"media"_s);
    move(other, tankOf(m_layout), u"given"_s);
    const StockModel model = stock();
    ASSERT_EQ(model.moves.size(), 1u);
    EXPECT_EQ(model.moves.front().from, tankOf(other));
    EXPECT_EQ(model.moves.front().to, tankOf(m_layout));
}

TEST_F(StockModelTest, TheQuarantineClockStartsAnewWithEachSign)
{
    EXPECT_FALSE(stock().clock);
    put(EntryKind::Addition, u"ember tetra"_s, 10, 20);
    EXPECT_EQ(stock().clock->days, 20);
    put(EntryKind::Upkeep, u"quarantine"_s, {}, 12);
    EXPECT_TRUE(stock().clock->done);
    see(u"dz_ich"_s, {}, 1, 5);
    ASSERT_TRUE(stock().clock);
    EXPECT_EQ(stock().clock->days, 5);
    EXPECT_EQ(stock().clock->cause, QuarantineClock::Cause::Sign);
    EXPECT_FALSE(stock().clock->done) << "what was done before the sign does not count";
}

TEST_F(StockModelTest, TheLoadIsTheForecastsOwnConversion)
{
    // Feed x 0.45 protein x 0.092 g N per g protein (Timmons & Ebeling 2013, second hand): 1 g of feed a day is
    // 41.4 mg N, 0.414 mg/L in 100 L.
    Addition addition;
    addition.species = species(u"A024"_s);
    addition.species.mass_g = 1.0;
    addition.count = 50;
    addition.feedOfMass = 0.02;
    EXPECT_DOUBLE_EQ(addition.feed_g_per_d(), 1.0);
    EXPECT_NEAR(additionLoad(addition, 50, 100.0), 0.414, 1e-9);
    EXPECT_DOUBLE_EQ(additionLoad(addition, 50, 0.0), 0.0);
    addition.count = 10;
    addition.lots = 3;
    EXPECT_EQ(addition.inLot(0) + addition.inLot(1) + addition.inLot(2), 10);
    EXPECT_EQ(addition.inLot(0), 4);
}

TEST_F(StockModelTest, WhateverTheForecastCarriesIsHeldAgainstTheComingFortnight)
{
    put(EntryKind::Addition, u"zebra danio"_s, 8, 5);
    for (const double day : {20.0, 10.0, 5.0, 1.0}) {
        m_temp.read(m_layout, u"tan"_s, u"0.05"_s, day, u"mg/L N"_s);
        m_temp.read(m_layout, u"no2"_s, u"0.02"_s, day, u"mg/L N"_s);
        m_temp.read(m_layout, u"ph"_s, u"7"_s, day);
    }
    Forecasts forecasts(m_temp.keeper);
    forecasts.refresh();
    forecasts.wait();
    const auto basis = forecasts.result(m_layout);
    ASSERT_NE(basis, nullptr);
    const StockModel model =
        stockOf(m_temp.keeper.row(), m_layout, m_temp.clock.now(), facts::builtInFacts(), basis.get(), {});
    QStringList carried;
    for (const StockColumn& column : model.columns) {
        EXPECT_EQ(column.isForecast, column.ahead.has_value()) << column.parameter.toStdString();
        if (column.ahead) {
            carried << column.parameter;
            EXPECT_LE(column.ahead->low, column.ahead->high);
        }
    }
    EXPECT_EQ(carried, (QStringList{u"tan"_s, u"nh3"_s, u"no2"_s, u"no3"_s}));
    const auto free = std::ranges::find(model.columns, u"nh3"_s, &StockColumn::parameter);
    EXPECT_EQ(free->readings, 3) << "reckoned from ammonia with its pH, in the last fortnight";
    // 0.05 mg/L N at pH 7 and 25 degrees is 0.6 % free (Emerson et al. 1975).
    EXPECT_NEAR(*free->newest, 0.05 * 0.0057, 0.05 * 0.002);
}

TEST_F(StockModelTest, TheKeepersLimitCountsAtOnce)
{
    put(EntryKind::Addition, u"zebra danio"_s, 8, 5);
    m_temp.read(m_layout, u"no3"_s, u"20"_s, 1, u"mg/L NO3"_s);
    EXPECT_EQ(stock().animals.front().cells.back().suits, Suits::Yes);
    store::Edit edit(u"limit"_s);
    edit.set(care::limitSetting(u"nitrate-animals"_s),
             u"{\"id\":\"nitrate-animals\",\"value\":3,\"source\":\"own experience\"}"_s);
    ASSERT_TRUE(m_temp.keeper.commit(edit));
    EXPECT_EQ(stock().animals.front().cells.back().suits, Suits::No) << "13 mg/L as the ion";
}

TEST_F(StockModelTest, ATrialRaisesTheLoadAndNeverTheOddsOfClearWater)
{
    for (const double day : {50.0, 40.0, 30.0, 20.0, 10.0, 5.0, 1.0}) {
        m_temp.read(m_layout, u"tan"_s, u"0.05"_s, day, u"mg/L N"_s);
        m_temp.read(m_layout, u"no2"_s, u"0.02"_s, day, u"mg/L N"_s);
    }
    Forecasts forecasts(m_temp.keeper);
    forecasts.refresh();
    forecasts.wait();
    const auto basis = forecasts.result(m_layout);
    ASSERT_NE(basis, nullptr);
    Addition addition;
    addition.species = species(u"A024"_s);
    addition.count = 18;
    addition.first = m_temp.clock.now().plusDays(2);
    const auto few = tryAddition(basis, addition, 60.0, {});
    ASSERT_TRUE(few);
    addition.species.mass_g = 30.0;
    const auto many = tryAddition(basis, addition, 60.0, {});
    ASSERT_TRUE(many);
    EXPECT_GT(many->loadAdded, few->loadAdded);
    EXPECT_GE(many->ammoniaOver, few->ammoniaOver);
    EXPECT_GE(few->ammoniaOver + 1e-9, few->ammoniaOverBefore);
    EXPECT_GT(many->ammonia.back()[3], few->ammonia.back()[3]);
    EXPECT_EQ(many->days.size(), many->ammonia.size());
    for (const AdditionTrial::GateOdds& gate : many->gates) {
        EXPECT_LE(gate.after, gate.before + 1e-9) << gate.key.toStdString();
    }
    const auto again = tryAddition(basis, addition, 60.0, {});
    ASSERT_TRUE(again);
    EXPECT_EQ(again->ammonia.back(), many->ammonia.back()) << "same question, same answer";
    EXPECT_FALSE(tryAddition(basis, addition, 0.0, {}));
}

TEST_F(StockModelTest, PlanningIsOneChangeThatUndoTakesBack)
{
    Addition addition;
    addition.species = species(u"A024"_s);
    addition.count = 9;
    addition.lots = 2;
    addition.first = m_temp.clock.now().plusDays(3);
    ASSERT_TRUE(planAddition(m_temp.keeper, m_layout, addition, u"the shop holds them"_s));
    std::vector<record::Entry> entries = m_temp.keeper.row().layout(m_layout)->entries;
    ASSERT_EQ(entries.size(), 3u) << "two lots, and why the gate was passed";
    EXPECT_EQ(std::erase_if(entries, [](const record::Entry& e) { return e.kind == record::EntryKind::Note; }), 1u);
    EXPECT_TRUE(entries[0].planned);
    EXPECT_EQ(*entries[0].count + *entries[1].count, 9);
    EXPECT_GT(entries[0].load_mgN_per_L_d.value_or(0.0), 0.0);
    EXPECT_NEAR(record::daysBetween(entries[0].at, entries[1].at), 7.0, 1e-6);
    ASSERT_TRUE(m_temp.keeper.undo());
    EXPECT_TRUE(m_temp.keeper.row().layout(m_layout)->entries.empty());
    ASSERT_TRUE(recordAddition(m_temp.keeper, m_layout, addition));
    ASSERT_EQ(m_temp.keeper.row().layout(m_layout)->entries.size(), 1u);
    EXPECT_FALSE(m_temp.keeper.row().layout(m_layout)->entries.front().planned);
    addition.lots = 10;
    EXPECT_FALSE(planAddition(m_temp.keeper, m_layout, addition)) << "more lots than animals";
}

TEST(AcclimationPlan, TheWayFollowsTravelAndDifference)
{
    const facts::Species& tetra = *facts::builtInFacts().speciesById(u"A024"_s);
    const facts::Species& shrimp = *facts::builtInFacts().speciesById(u"A003"_s);
    const TankWater tank{6.8, 6.0, 24.0};
    EXPECT_EQ(acclimationPlan(tetra, {7.0, 7.0, 23.0, 1.0, 1.0}, tank).way, AcclimationWay::Float);
    EXPECT_EQ(acclimationPlan(tetra, {7.6, 9.0, 23.0, 1.0, 1.0}, tank).way, AcclimationWay::Drip);
    EXPECT_EQ(acclimationPlan(shrimp, {6.8, 6.0, 24.0, 1.0, 1.0}, tank).way, AcclimationWay::Drip);
    EXPECT_EQ(acclimationPlan(tetra, {6.2, 7.0, 23.0, 12.0, 1.0}, tank).way, AcclimationWay::Quick);
    EXPECT_EQ(acclimationPlan(tetra, {7.6, 14.0, 23.0, 1.0, 1.0}, tank).way, AcclimationWay::OverDays);
    const AcclimationPlan unknown = acclimationPlan(tetra, {}, tank);
    EXPECT_EQ(unknown.way, AcclimationWay::Drip) << "what is not known is taken carefully";
    EXPECT_TRUE(unknown.phUnknown);
}

TEST(AcclimationPlan, TheDripReachesThreeTimesTheVolumeInItsTime)
{
    const facts::Species& tetra = *facts::builtInFacts().speciesById(u"A024"_s);
    const AcclimationPlan plan = acclimationPlan(tetra, {7.6, 9.0, 23.0, 1.0, 1.5}, {6.8, 6.0, 24.0});
    const auto drip = std::ranges::find(plan.steps, AcclimationAct::StartDrip, &AcclimationStep::act);
    ASSERT_NE(drip, plan.steps.end());
    // 1.5 L to 4.5 L in an hour: 3000 mL / 60 min.
    EXPECT_NEAR(drip->value, 50.0, 1e-9);
    EXPECT_NEAR(*plan.ghPerHour, -2.0, 1e-9); // two thirds of 3 dGH
    EXPECT_TRUE(std::ranges::is_sorted(plan.steps, {}, &AcclimationStep::minute));
}

} // namespace littoral::facade
