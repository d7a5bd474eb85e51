// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/row_plan.h"

#include <gtest/gtest.h>

namespace littoral::facade::test {

using namespace Qt::StringLiterals;

namespace {

const record::Moment kNow = record::Moment::fromIso(u"2026-11-25T08:00:00Z"_s);
const QDate kToday(2026, 11, 25);

/// A row whose changes are all set by hand: what is due is what the test put down.
class RowPlanTest : public ::testing::Test
{
protected:
    record::SourceWaterId source(const QString& name, record::SourceKind kind, std::optional<double> alkalinity = {},
                                 std::optional<double> hardness = {})
    {
        record::SourceWater water;
        water.id = record::SourceWaterId{nextId()};
        water.name = name;
        water.kind = kind;
        water.alkalinity_meq_per_L = alkalinity;
        water.hardness_mmol_per_L = hardness;
        m_row.sources.push_back(water);
        return water.id;
    }

    record::SourceWaterId blend(const QString& name, record::SourceWaterId first, record::SourceWaterId second,
                                double share)
    {
        const auto id = source(name, record::SourceKind::Blend);
        record::SourceWater& water = m_row.sources.back();
        water.firstPart = first;
        water.secondPart = second;
        water.firstShare = share;
        return id;
    }

    record::LayoutRecord& tank(const QString& name, double litres, record::SourceWaterId water = {})
    {
        record::Tank tank;
        tank.id = record::TankId{nextId()};
        tank.name = name;
        m_row.tanks.push_back(tank);
        record::LayoutRecord layout;
        layout.layout.id = record::LayoutId{nextId()};
        layout.layout.tank = tank.id;
        layout.layout.flooded = kNow.plusDays(-400);
        layout.layout.followsCadence = false;
        layout.layout.source = water;
        if (litres > 0.0) {
            layout.layout.measuredNet_L = litres;
        }
        return m_row.layouts.emplace(layout.layout.id, layout).first->second;
    }

    void change(record::LayoutRecord& layout, int inDays, double fraction, record::SourceWaterId water = {})
    {
        record::Entry entry;
        entry.id = record::EntryId{nextId()};
        entry.tank = layout.layout.tank;
        entry.layout = layout.layout.id;
        entry.kind = record::EntryKind::WaterChange;
        entry.at = kNow.plusDays(inDays);
        entry.planned = true;
        entry.fraction = fraction;
        entry.source = water;
        layout.entries.push_back(entry);
    }

    [[nodiscard]] RowPlan plan(RowPlanOptions options = {}) { return rowPlan(m_row, kNow, options); }

    record::Row m_row;

private:
    qint64 nextId() { return ++m_id; }
    qint64 m_id = 100;
};

TEST_F(RowPlanTest, AnEmptyRowHasFourteenEmptyDays)
{
    const RowPlan all = plan();
    ASSERT_EQ(all.days.size(), 14U);
    EXPECT_EQ(all.days.front().day, kToday);
    EXPECT_EQ(all.days.back().day, kToday.addDays(13));
    EXPECT_EQ(all.litres, 0.0);
    EXPECT_FALSE(all.conditioner_mL.has_value());
}

TEST_F(RowPlanTest, LitresConditionerAndDemineralisedWaterByHand)
{
    // Arithmetic by hand: 30 % of 100 L of tap, 50 % of 60 L of demineralised water, both in two days.
    const auto tap = source(u"tap"_s, record::SourceKind::Tap, 4.0);
    const auto pure = source(u"pure"_s, record::SourceKind::ReverseOsmosis);
    change(tank(u"A"_s, 100, tap), 2, 0.3);
    change(tank(u"B"_s, 60, pure), 2, 0.5);
    RowPlanOptions options;
    options.conditioner_mL_per_100L = 5.0;
    const RowPlan all = plan(options);
    const WaterDay& day = all.days[2];
    ASSERT_EQ(day.changes.size(), 2U);
    EXPECT_NEAR(day.litres, 60.0, 1e-9);
    EXPECT_NEAR(day.demineralised_L, 30.0, 1e-9);
    EXPECT_NEAR(day.toTreat_L, 30.0, 1e-9);
    EXPECT_NEAR(day.conditioner_mL.value_or(0.0), 1.5, 1e-9);
    EXPECT_NEAR(all.conditioner_mL.value_or(0.0), 1.5, 1e-9);
    EXPECT_TRUE(day.changes[0].byHand);
    EXPECT_FALSE(day.collides); // one of them is large, not both
}

TEST_F(RowPlanTest, ABlendIsPouredTogetherFromItsPartsAndTheTapAloneIsTreated)
{
    // Arithmetic by hand: a fifth of 100 L, 30 % of it tap.
    const auto tap = source(u"tap"_s, record::SourceKind::Tap, 4.0, 3.0);
    const auto pure = source(u"pure"_s, record::SourceKind::ReverseOsmosis);
    const auto mixed = blend(u"blend"_s, tap, pure, 0.3);
    change(tank(u"A"_s, 100, mixed), 1, 0.2);
    RowPlanOptions options;
    options.conditioner_mL_per_100L = 10.0;
    const RowPlan all = plan(options);
    EXPECT_NEAR(all.demineralised_L, 14.0, 1e-9);
    EXPECT_NEAR(all.toTreat_L, 6.0, 1e-9);
    EXPECT_NEAR(all.conditioner_mL.value_or(0.0), 0.6, 1e-9);
    ASSERT_EQ(all.waters.size(), 2U);
    EXPECT_EQ(all.waters[0].name, u"tap"_s);
    EXPECT_NEAR(all.waters[0].litres, 6.0, 1e-9);
    EXPECT_NEAR(all.waters[1].litres, 14.0, 1e-9);
    EXPECT_TRUE(all.blendUnknown.isEmpty());
}

TEST_F(RowPlanTest, ABlendOfBlendsIsTakenApart)
{
    const auto tap = source(u"tap"_s, record::SourceKind::Tap);
    const auto rain = source(u"rain"_s, record::SourceKind::Rain);
    const auto pure = source(u"pure"_s, record::SourceKind::ReverseOsmosis);
    const auto inner = blend(u"inner"_s, tap, pure, 0.5);
    const auto outer = blend(u"outer"_s, inner, rain, 0.4);
    change(tank(u"A"_s, 100, outer), 1, 0.5);
    const RowPlan all = plan();
    EXPECT_NEAR(all.toTreat_L, 10.0, 1e-9);
    EXPECT_NEAR(all.demineralised_L, 10.0, 1e-9);
    ASSERT_EQ(all.waters.size(), 3U);
    EXPECT_NEAR(all.waters[2].litres, 30.0, 1e-9);
}

TEST_F(RowPlanTest, ABlendWithoutPartsIsNotGuessed)
{
    source(u"tap"_s, record::SourceKind::Tap, 4.0);
    const auto unstated = source(u"blend"_s, record::SourceKind::Blend, 1.0);
    change(tank(u"A"_s, 100, unstated), 1, 0.2);
    const RowPlan all = plan();
    EXPECT_EQ(all.blendUnknown, QStringList{u"blend"_s});
    EXPECT_TRUE(all.days[1].changes.front().partsUnknown);
    EXPECT_NEAR(all.toTreat_L, 20.0, 1e-9); // the safer mistake
}

TEST_F(RowPlanTest, TheWaterAnEntryNamesGoesBeforeTheLayouts)
{
    const auto tap = source(u"tap"_s, record::SourceKind::Tap);
    const auto pure = source(u"pure"_s, record::SourceKind::ReverseOsmosis);
    change(tank(u"A"_s, 100, tap), 1, 0.2, pure);
    EXPECT_NEAR(plan().demineralised_L, 20.0, 1e-9);
}

TEST_F(RowPlanTest, TwoLargeChangesCollideAndAFreerDayIsNamed)
{
    record::LayoutRecord& a = tank(u"A"_s, 200);
    record::LayoutRecord& b = tank(u"B"_s, 20);
    record::LayoutRecord& c = tank(u"C"_s, 20);
    change(a, 3, 0.35); // 70 L: large by litres
    change(b, 3, 0.5);  // large by share
    change(c, 4, 0.5);  // takes the next day
    const RowPlan all = plan();
    EXPECT_TRUE(all.days[3].collides);
    EXPECT_EQ(all.collisions, 1);
    EXPECT_EQ(all.days[3].freerDay, kToday.addDays(2));
    EXPECT_FALSE(all.days[4].collides);
    RowPlanOptions lenient;
    lenient.large_L = 100.0;
    EXPECT_EQ(plan(lenient).collisions, 0);
}

TEST_F(RowPlanTest, OverdueChangesCountForToday)
{
    change(tank(u"A"_s, 100), -3, 0.3);
    const RowPlan all = plan();
    ASSERT_EQ(all.days[0].changes.size(), 1U);
    EXPECT_EQ(all.days[0].changes[0].daysOver, 3);
    EXPECT_NEAR(all.days[0].litres, 30.0, 1e-9);
}

TEST_F(RowPlanTest, ATankWithoutMeasuresIsNamed)
{
    change(tank(u"No measures"_s, 0), 1, 0.3);
    const RowPlan all = plan();
    EXPECT_EQ(all.volumeUnknown, QStringList{u"No measures"_s});
    EXPECT_EQ(all.litres, 0.0);
    ASSERT_EQ(all.days[1].changes.size(), 1U);
    EXPECT_FALSE(all.days[1].changes[0].litres.has_value());
}

TEST_F(RowPlanTest, SumsOfDaysAreTheSumOfTheRow)
{
    const auto tap = source(u"tap"_s, record::SourceKind::Tap, 4.0);
    const auto blend = source(u"blend"_s, record::SourceKind::Blend, 2.0);
    for (int i = 0; i < 6; ++i) {
        record::LayoutRecord& layout = tank(u"T%1"_s.arg(i), 40.0 + 30.0 * i, i % 2 == 0 ? tap : blend);
        change(layout, i, 0.1 + 0.1 * i);
        change(layout, i + 5, 0.25);
    }
    const RowPlan all = plan();
    double litres = 0.0;
    double parts = 0.0;
    for (const WaterDay& day : all.days) {
        litres += day.litres;
        parts += day.demineralised_L + day.toTreat_L;
    }
    EXPECT_GT(litres, 0.0);
    EXPECT_NEAR(all.litres, litres, 1e-9);
    EXPECT_NEAR(parts, litres, 1e-9);
}

TEST_F(RowPlanTest, TheCadenceFillsInWhatNobodyPlanned)
{
    record::LayoutRecord& layout = tank(u"A"_s, 100);
    layout.layout.followsCadence = true;
    layout.layout.flooded = kNow.plusDays(-3);
    const RowPlan all = plan();
    EXPECT_GT(all.litres, 0.0);
    for (const WaterDay& day : all.days) {
        for (const PlannedWater& change : day.changes) {
            EXPECT_FALSE(change.byHand);
        }
    }
}

} // namespace

} // namespace littoral::facade::test
