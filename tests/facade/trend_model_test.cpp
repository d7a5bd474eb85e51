// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/trend_model.h"

#include "core/facade/trend_reckoned.h"

#include <cmath>
#include <gtest/gtest.h>

namespace littoral::facade {
namespace {

using namespace Qt::StringLiterals;

const record::Moment kFlooded = record::Moment::fromIso(u"2026-11-01T10:00:00Z"_s);

/// A tank with an ended layout and a running one, a second tank, and a nitrite kit with printed steps.
class TrendModelTest : public ::testing::Test
{
protected:
    TrendModelTest()
    {
        addTank(1, u"Slate Ford"_s);
        addTank(2, u"Alder Shelf"_s);
        addLayout(10, 1, 2, kFlooded);
        addLayout(11, 1, 1, kFlooded.plusDays(-400), kFlooded.plusDays(-30));
        addLayout(20, 2, 1, kFlooded.plusDays(3));
        record::TestKit kit;
        kit.id.value = 7;
        kit.parameter = u"no2"_s;
        kit.unit = u"mg/L NO2"_s;
        kit.steps = {0, 0.05, 0.1, 0.2, 0.4};
        m_row.kits.push_back(kit);
    }
    void addTank(qint64 id, const QString& name)
    {
        record::Tank tank;
        tank.id.value = id;
        tank.name = name;
        m_row.tanks.push_back(tank);
    }
    void addLayout(qint64 id, qint64 tank, int number, const record::Moment& flooded,
                   std::optional<record::Moment> ended = {})
    {
        record::LayoutRecord layout;
        layout.layout.id.value = id;
        layout.layout.tank.value = tank;
        layout.layout.number = number;
        layout.layout.flooded = flooded;
        layout.layout.ended = ended;
        layout.layout.temperature_C = 25.0;
        m_row.layouts.emplace(layout.layout.id, layout);
    }
    void read(qint64 layout, const QString& parameter, const QString& typed, const QString& unit, double day,
              qint64 kit = 0)
    {
        record::LayoutRecord& record = m_row.layouts.at({layout});
        record::Reading reading;
        reading.id.value = ++m_next;
        reading.tank = record.layout.tank;
        reading.layout = record.layout.id;
        reading.parameter = parameter;
        reading.at = record.layout.flooded.plusDays(day);
        reading.kit.value = kit;
        const auto typedIn = record::setTypedValue(reading, typed, unit);
        ASSERT_TRUE(typedIn);
        record.readings.push_back(reading);
        record::sortRow(m_row);
    }
    [[nodiscard]] TrendModel trends(std::vector<record::LayoutId> layouts, const QStringList& parameters) const
    {
        return trendOf(m_row, {std::move(layouts), parameters}, {});
    }

    record::Row m_row;
    qint64 m_next = 100;
};

TEST_F(TrendModelTest, ReadingsStandInTheShownUnitInTheOrderAskedFor)
{
    read(10, u"no2"_s, u"0.2"_s, u"mg/L NO2"_s, 2, 7);
    read(10, u"no2"_s, u"0.1"_s, u"mg/L NO2"_s, 1, 7);
    read(20, u"ph"_s, u"6.8"_s, u"pH"_s, 1);
    const TrendModel model = trends({{20}, {10}}, {u"ph"_s, u"no2"_s, u"no such thing"_s});
    ASSERT_EQ(model.parameters.size(), 2u);
    EXPECT_EQ(model.parameters[0].key, u"ph"_s);
    EXPECT_EQ(model.tanks[0].name, u"Alder Shelf"_s);
    EXPECT_EQ(model.pointCount(), 3u);
    const TrendSeries* nitrite = model.find(1, 1);
    ASSERT_NE(nitrite, nullptr);
    ASSERT_EQ(nitrite->points.size(), 2u);
    EXPECT_NEAR(nitrite->points[0].value, 0.1, 1e-9);
    EXPECT_LT(nitrite->points[0].at, nitrite->points[1].at);
    EXPECT_EQ(model.find(0, 1), nullptr) << "no pH of Slate Ford";
    EXPECT_EQ(nitrite->newest(kFlooded.plusDays(1.5).utcMs()), std::size_t(0));
    EXPECT_FALSE(nitrite->newest(kFlooded.utcMs()));
    EXPECT_EQ(nitrite->nearest(kFlooded.plusDays(1.8).utcMs(), 86'400'000), std::size_t(1));
    EXPECT_FALSE(nitrite->nearest(kFlooded.plusDays(5).utcMs(), 86'400'000));
}

TEST_F(TrendModelTest, AnEarlierLayoutIsNamedByItsNumberBesideItsTank)
{
    const TrendModel both = trends({{10}, {11}}, {u"no2"_s});
    EXPECT_EQ(both.tanks[1].name, u"Slate Ford, layout 1"_s);
    EXPECT_EQ(both.tanks[1].shortName, u"Layout 1"_s);
    EXPECT_TRUE(both.tanks[1].earlier);
    const TrendModel alone = trends({{11}}, {u"no2"_s});
    EXPECT_EQ(alone.tanks[0].shortName, u"Slate Ford, layout 1"_s);
}

TEST_F(TrendModelTest, AReadingStandsForHalfAStepEitherSide)
{
    read(10, u"no2"_s, u"0.1"_s, u"mg/L NO2"_s, 1, 7);
    read(10, u"no2"_s, u"0.4"_s, u"mg/L NO2"_s, 2, 7);
    read(10, u"no2"_s, u"<0.05"_s, u"mg/L NO2"_s, 3, 7);
    read(10, u"no2"_s, u"0.1-0.2"_s, u"mg/L NO2"_s, 4, 7);
    read(10, u"no2"_s, u"0.3"_s, u"mg/L NO2"_s, 5);
    const TrendModel model = trends({{10}}, {u"no2"_s});
    const TrendSeries& series = *model.find(0, 0);
    EXPECT_NEAR(series.intervals[0].low, 0.075, 1e-9);
    EXPECT_NEAR(series.intervals[0].high, 0.15, 1e-9);
    EXPECT_NEAR(series.intervals[1].low, 0.3, 1e-9);
    EXPECT_NEAR(series.intervals[1].high, 0.4, 1e-9) << "above the highest step nothing is known";
    EXPECT_EQ(series.intervals[2].censoring, record::Censoring::Below);
    EXPECT_NEAR(series.points[2].value, 0.05, 1e-9) << "drawn at its bound";
    EXPECT_NEAR(series.intervals[2].low, 0.0, 1e-9);
    EXPECT_NEAR(series.intervals[3].low, 0.1, 1e-9);
    EXPECT_NEAR(series.intervals[3].high, 0.2, 1e-9);
    EXPECT_NEAR(series.intervals[4].high - series.intervals[4].low, 0.0, 1e-12) << "no kit, no steps";
}

TEST_F(TrendModelTest, TargetsComeInTheShownUnit)
{
    record::Target target;
    target.tank.value = 1;
    target.parameter = u"kh"_s;
    const record::Parameter* kh = record::findParameter(u"kh"_s);
    target.low = kh->shown().toCanonical(3.0);
    m_row.targets.push_back(target);
    read(10, u"kh"_s, u"4"_s, u"dKH"_s, 1);
    const TrendModel model = trends({{10}}, {u"kh"_s});
    ASSERT_TRUE(model.find(0, 0)->targetLow);
    EXPECT_NEAR(*model.find(0, 0)->targetLow, 3.0, 1e-9);
    EXPECT_FALSE(model.find(0, 0)->targetHigh);
}

TEST_F(TrendModelTest, FreeAmmoniaIsReckonedFromReadingsOfTheSameDay)
{
    read(10, u"tan"_s, u"1"_s, u"mg/L N"_s, 1);
    read(10, u"ph"_s, u"8"_s, u"pH"_s, 1.2);
    read(10, u"tan"_s, u"1"_s, u"mg/L N"_s, 9);
    const TrendModel model = trends({{10}}, {u"nh3"_s});
    const TrendSeries* free = model.find(0, 0);
    ASSERT_NE(free, nullptr);
    EXPECT_TRUE(free->reckoned);
    ASSERT_EQ(free->points.size(), 1u) << "no pH within a day of the second";
    // Emerson, Russo, Lund & Thurston 1975, table of per cent un-ionised ammonia: 5.38 at 25 °C and pH 8.0 (from
    // memory).
    EXPECT_NEAR(free->points[0].value, 0.0538, 0.0002);
    EXPECT_FALSE(free->readings[0]) << "nothing to open: no reading of its own";
}

TEST_F(TrendModelTest, CarbonDioxideIsReckonedOnlyWhereNoneWasRead)
{
    read(10, u"ph"_s, u"7"_s, u"pH"_s, 1);
    read(10, u"kh"_s, u"4"_s, u"dKH"_s, 3);
    const TrendModel model = trends({{10}}, {u"co2"_s});
    ASSERT_NE(model.find(0, 0), nullptr);
    // Common practice: 3 x KH x 10^(7 - pH) = 12 mg/L; that chart reads up to 12 % high (carbonate.h).
    EXPECT_NEAR(model.find(0, 0)->points[0].value, 12.0, 0.12 * 12.0);
    read(10, u"co2"_s, u"20"_s, u"mg/L"_s, 2);
    const TrendModel read = trends({{10}}, {u"co2"_s});
    EXPECT_FALSE(read.find(0, 0)->reckoned);
    EXPECT_EQ(read.find(0, 0)->points.size(), 1u);
}

TEST_F(TrendModelTest, OffersCountWhatThereIs)
{
    read(10, u"no2"_s, u"0.1"_s, u"mg/L NO2"_s, 1);
    read(20, u"no2"_s, u"0.1"_s, u"mg/L NO2"_s, 1);
    read(20, u"tan"_s, u"1"_s, u"mg/L N"_s, 1);
    read(20, u"ph"_s, u"7"_s, u"pH"_s, 1);
    const auto offers = trendOffers(m_row, {{10}, {20}});
    const auto count = [&](const QString& key) {
        const auto found = std::ranges::find(offers, key, &TrendOffer::key);
        return found == offers.end() ? std::size_t(999) : found->readings;
    };
    EXPECT_EQ(count(u"no2"_s), 2u);
    EXPECT_EQ(count(u"nh3"_s), 1u);
    EXPECT_EQ(count(u"gh"_s), 0u);
}

} // namespace
} // namespace littoral::facade
