// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/models/day_start.h"
#include "ui/models/entries_model.h"
#include "ui/models/find_model.h"
#include "ui/models/rounds_model.h"
#include "ui/models/tanks_model.h"
#include "ui/models/work_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;
constexpr auto kFail = QAbstractItemModelTester::FailureReportingMode::Fatal;

class RoundsModelTest : public FrameTest
{
protected:
    RoundsModelTest()
    {
        addKits();
        m_tank = addTank(u"Slate Ford"_s, 16);
        addTank(u"Alder Shelf"_s, 16);
    }
    [[nodiscard]] QModelIndex cell(const RoundsModel& model, const QString& parameter, int row = 0) const
    {
        return model.index(row, model.columnOf(parameter));
    }

    record::TankId m_tank;
};

TEST_F(RoundsModelTest, EveryModelHoldsItsContract)
{
    RoundsModel rounds(m_keeper, nullptr);
    WorkModel work(m_keeper);
    TanksModel tanks(m_keeper, m_forecasts);
    EntriesModel entries(m_keeper);
    FindModel find(m_keeper);
    const QAbstractItemModelTester a(&rounds, kFail);
    const QAbstractItemModelTester b(&work, kFail);
    const QAbstractItemModelTester c(&tanks, kFail);
    const QAbstractItemModelTester d(&entries, kFail);
    const QAbstractItemModelTester e(&find, kFail);
    read(m_tank, u"no2"_s, u"0.4"_s, 2);
    EXPECT_TRUE(rounds.setData(cell(rounds, u"no2"_s), u"0.8"_s, Qt::EditRole));
    rounds.setAllParameters(true);
    find.search(u"slate"_s);
    addTank(u"Mill Race"_s, 40);
    EXPECT_TRUE(m_keeper.undo());
    EXPECT_EQ(rounds.rowCount(), 2);
    EXPECT_EQ(find.rowCount(), 1);
    EXPECT_EQ(entries.rowCount(), 2);
}

TEST_F(RoundsModelTest, EachCellIsInTheStoreAsItIsLeft)
{
    RoundsModel model(m_keeper, nullptr);
    ASSERT_TRUE(model.setData(cell(model, u"no2"_s), u" 0,8 "_s, Qt::EditRole));
    // Another program opening the file sees it at once: nothing waits to be saved.
    facade::Keeper other(m_clock);
    ASSERT_TRUE(other.open(m_keeper.path(), store::Access::ReadOnly));
    const record::Reading* kept = other.row().layout(layoutOf(m_tank))->newest(u"no2"_s, m_clock.now());
    ASSERT_NE(kept, nullptr);
    EXPECT_EQ(kept->typed, u"0,8"_s);
    EXPECT_EQ(kept->unit, u"mg/L NO2"_s) << "the unit follows the kit";
    EXPECT_EQ(cell(model, u"no2"_s).data(RoundsModel::StateRole).toInt(), static_cast<int>(CellState::Entered));
}

TEST_F(RoundsModelTest, RetypingReplacesTheReadingOfThisRoundAndUndoBringsItBack)
{
    RoundsModel model(m_keeper, nullptr);
    ASSERT_TRUE(model.setData(cell(model, u"no2"_s), u"0.8"_s, Qt::EditRole));
    const std::size_t count = readingCount();
    ASSERT_TRUE(model.setData(cell(model, u"no2"_s), u"0.4"_s, Qt::EditRole));
    EXPECT_EQ(readingCount(), count);
    EXPECT_EQ(cell(model, u"no2"_s).data(RoundsModel::TypedRole).toString(), u"0.4"_s);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(cell(model, u"no2"_s).data(RoundsModel::TypedRole).toString(), u"0.8"_s);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(cell(model, u"no2"_s).data(RoundsModel::TypedRole).toString(), QString());
}

TEST_F(RoundsModelTest, WhatIsNoReadingStaysAsTyped)
{
    RoundsModel model(m_keeper, nullptr);
    const std::size_t count = readingCount();
    EXPECT_FALSE(model.setData(cell(model, u"ph"_s), u"seven"_s, Qt::EditRole));
    EXPECT_EQ(readingCount(), count);
    EXPECT_EQ(cell(model, u"ph"_s).data(RoundsModel::StateRole).toInt(), static_cast<int>(CellState::NotUnderstood));
    EXPECT_EQ(cell(model, u"ph"_s).data(Qt::EditRole).toString(), u"seven"_s);
    model.refresh();
    read(m_tank, u"kh"_s, u"4"_s, 0);
    EXPECT_EQ(cell(model, u"ph"_s).data(Qt::EditRole).toString(), u"seven"_s) << "a refresh takes no typing away";
    EXPECT_TRUE(model.setData(cell(model, u"ph"_s), u"6.8"_s, Qt::EditRole));
    EXPECT_EQ(readingCount(), count + 2);
}

TEST_F(RoundsModelTest, AHalfDoneRoundIsThereAgain)
{
    QStringList before;
    RoundsModel::Progress progress;
    const auto texts = [&](const RoundsModel& model) {
        QStringList all;
        for (int row = 0; row < model.rowCount(); ++row) {
            for (int column = 0; column < model.columnCount(); ++column) {
                const QModelIndex at = model.index(row, column);
                all << u"%1 %2 %3"_s
                           .arg(at.data(RoundsModel::ParameterRole).toString(),
                                at.data(RoundsModel::TypedRole).toString())
                           .arg(at.data(RoundsModel::DueRole).toBool());
            }
        }
        return all;
    };
    {
        RoundsModel model(m_keeper, nullptr);
        ASSERT_GT(model.progress().all, 2) << "a sixteen day old tank has tests due";
        ASSERT_TRUE(model.setData(cell(model, u"tan"_s), u"<0.05"_s, Qt::EditRole));
        ASSERT_TRUE(model.setData(cell(model, u"no2"_s), u"0.8"_s, Qt::EditRole));
        before = texts(model);
        progress = model.progress();
    }
    facade::Keeper later(m_clock);
    const QString place = m_keeper.path();
    m_keeper.close();
    ASSERT_TRUE(later.open(place));
    const RoundsModel again(later, nullptr);
    EXPECT_EQ(texts(again), before);
    EXPECT_EQ(again.progress().done, progress.done);
    EXPECT_EQ(again.progress().all, progress.all);
}

TEST_F(RoundsModelTest, NextDueFollowsTheOrderAndEnds)
{
    RoundsModel model(m_keeper, nullptr);
    for (const auto order : {RoundsModel::Order::AlongRow, RoundsModel::Order::ByKit}) {
        QModelIndex at;
        std::set<std::pair<int, int>> seen;
        for (int i = 0; i < model.progress().all; ++i) {
            at = model.nextDue(at, order);
            ASSERT_TRUE(at.isValid());
            EXPECT_TRUE(seen.insert({at.row(), at.column()}).second) << "no cell twice";
            EXPECT_EQ(model.placeOf(at, order), i + 1);
        }
    }
    const QModelIndex first = model.nextDue({}, RoundsModel::Order::AlongRow);
    const QModelIndex second = model.nextDue(first, RoundsModel::Order::ByKit);
    EXPECT_EQ(second.column(), first.column()) << "by kit, the same bottle serves the next tank";
}

TEST_F(RoundsModelTest, AdviceNamesWhatItComparedWithAndNeverRefuses)
{
    read(m_tank, u"cond"_s, u"312"_s, 1);
    read(m_tank, u"no3"_s, u"10"_s, 1);
    RoundsModel model(m_keeper, nullptr);
    EXPECT_EQ(model.advise(cell(model, u"cond"_s), u"318"_s).level, Advice::Level::None);
    const Advice tenfold = model.advise(cell(model, u"cond"_s), u"3120"_s);
    EXPECT_EQ(tenfold.level, Advice::Level::Unlikely);
    EXPECT_TRUE(tenfold.headline.contains(u"312"_s));
    EXPECT_EQ(model.advise(cell(model, u"ph"_s), u"68"_s).level, Advice::Level::Impossible) << "beyond what pH can be";
    const Advice stale = model.advise(cell(model, u"no3"_s), u"10"_s);
    EXPECT_EQ(stale.level, Advice::Level::Note);
    EXPECT_TRUE(stale.headline.contains(u"3 Oct"_s)) << stale.headline.toStdString();
    EXPECT_TRUE(model.setData(cell(model, u"cond"_s), u"3120"_s, Qt::EditRole)) << "kept as typed";
    EXPECT_EQ(cell(model, u"cond"_s).data(RoundsModel::StateRole).toInt(), static_cast<int>(CellState::LookAgain));
}

TEST_F(RoundsModelTest, AgainstAForecastTheStepsOfTheKitCount)
{
    // A hand-made forecast: nitrite between 1 and 2 mg N/L (3.3 to 6.6 mg/L of the ion) for the next days.
    facade::ForecastResult result;
    result.inputs.asOf = m_clock.now();
    result.inputs.flooded = m_keeper.row().layout(layoutOf(m_tank))->layout.flooded;
    result.forecast.days = {16.0, 17.0};
    forecast::SubstanceForecast& nitrite =
        result.forecast.substances[static_cast<std::size_t>(forecast::Substance::Nitrite)];
    nitrite.substance = forecast::Substance::Nitrite;
    const forecast::Band band{1.0, 1.1, 1.3, 1.5, 1.7, 1.9, 2.0};
    nitrite.water = {band, band};
    read(m_tank, u"no2"_s, u"0.4"_s, 1);
    const record::LayoutRecord& layout = *m_keeper.row().layout(layoutOf(m_tank));
    const record::TestKit* kit = m_keeper.row().kitFor(layout, u"no2"_s);
    ASSERT_NE(kit, nullptr);
    const auto advise = [&](const QString& typed) {
        return adviseReading(m_keeper.row(), layout, {u"no2"_s, typed, kit->unit, m_clock.now(), kit->id, {}}, &result);
    };
    EXPECT_EQ(advise(u"4"_s).level, Advice::Level::None) << "ten times the last reading, and foreseen";
    EXPECT_EQ(advise(u"3"_s).level, Advice::Level::None) << "the next step of the card lies in the band";
    const Advice low = advise(u"0.8"_s);
    EXPECT_EQ(low.level, Advice::Level::Unlikely);
    EXPECT_TRUE(low.headline.contains(u"3.28"_s)) << low.headline.toStdString();
    EXPECT_EQ(trendBands(result, *record::findParameter(u"no2"_s)).size(), 2U);
}

TEST_F(RoundsModelTest, ReadAtIsTheWholeRounds)
{
    RoundsModel model(m_keeper, nullptr);
    const record::Moment early = m_clock.now().plusMs(-30 * 60'000);
    model.setReadAt(early);
    ASSERT_TRUE(model.setData(cell(model, u"temp"_s), u"24.1"_s, Qt::EditRole));
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->newest(u"temp"_s, m_clock.now())->at, early);
}

TEST_F(RoundsModelTest, TickedWorkStaysStruckThroughAndComesBackWithUndo)
{
    WorkModel model(m_keeper);
    const WorkModel::Progress before = model.progress();
    ASSERT_GT(before.all, 0);
    int row = 0;
    while (model.item(model.index(row)) == nullptr ||
           model.item(model.index(row))->kind != care::WorkKind::WaterChange) {
        ++row;
        ASSERT_LT(row, model.rowCount()) << "a young tank has a water change due";
    }
    const QString title = model.index(row).data().toString();
    ASSERT_TRUE(model.setData(model.index(row), static_cast<int>(Qt::Checked), Qt::CheckStateRole));
    EXPECT_EQ(model.progress().done, before.done + 1);
    EXPECT_EQ(model.progress().all, before.all);
    bool struck = false;
    for (int i = 0; i < model.rowCount(); ++i) {
        struck = struck || (model.index(i).data().toString() == title &&
                            model.index(i).data(Qt::CheckStateRole).toInt() == static_cast<int>(Qt::Checked));
    }
    EXPECT_TRUE(struck);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(model.progress().done, before.done);
}

TEST_F(RoundsModelTest, DayStartLeavesOutTodayOnly)
{
    read(m_tank, u"no2"_s, u"0.4"_s, 1);
    read(m_tank, u"no2"_s, u"0.8"_s, 0);
    const record::Row start = rowAtDayStart(m_keeper.row(), layoutOf(m_tank), m_clock.today());
    ASSERT_EQ(start.layouts.size(), 1U);
    ASSERT_EQ(start.layouts.begin()->second.readings.size(), 1U);
    EXPECT_EQ(start.layouts.begin()->second.readings.front().typed, u"0.4"_s);
}

TEST_F(RoundsModelTest, FindLooksInTanksCommandsAndEntries)
{
    record::Entry entry;
    entry.tank = m_tank;
    entry.kind = record::EntryKind::Note;
    entry.at = m_clock.now();
    entry.subject = u"hairgrass replanted"_s;
    ASSERT_TRUE(m_keeper.enter(entry));
    FindModel model(m_keeper);
    bool ran = false;
    model.setOffers([&] {
        return std::vector<FindModel::Offer>{{u"Command"_s, u"Back up..."_s, u"Ctrl+B"_s, [&] { ran = true; }}};
    });
    QSignalSpy tank(&model, &FindModel::tankChosen);
    QSignalSpy found(&model, &FindModel::entryChosen);
    model.search(u"ford"_s);
    ASSERT_EQ(model.rowCount(), 1 + 1) << "the tank, and the entry that names it";
    model.choose(0);
    EXPECT_EQ(tank.count(), 1);
    model.search(u"hairgrass"_s);
    ASSERT_EQ(model.rowCount(), 1);
    model.choose(0);
    EXPECT_EQ(found.count(), 1);
    model.search(u"up"_s);
    model.choose(0);
    EXPECT_TRUE(ran);
}

} // namespace littoral::ui::test
