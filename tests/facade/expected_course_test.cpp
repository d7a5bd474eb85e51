// SPDX-License-Identifier: GPL-3.0-or-later
// What doses should have come to, followed through a record.
#include "core/facade/expected_course.h"

#include "core/facade/trend_model.h"
#include "core/water/nitrogen.h"

#include <gtest/gtest.h>

namespace littoral::facade {
namespace {

using namespace Qt::StringLiterals;
using record::EntryKind;

const record::Moment kFlooded = record::Moment::fromIso(u"2026-03-01T10:00:00Z"_s);

/// 100 L over an inert bed, dosed with a fertiliser of 20 mg NO3, 2 mg PO4 and 10 mg K in a mL.
class ExpectedTest : public ::testing::Test
{
protected:
    ExpectedTest()
    {
        record::Tank tank;
        tank.id.value = 1;
        tank.name = u"Slate Ford"_s;
        m_row.tanks.push_back(tank);
        record::SourceWater tap;
        tap.id.value = 5;
        tap.name = u"tap"_s;
        tap.nitrate_mgN_per_L = 0.0;
        m_row.sources.push_back(tap);
        record::LayoutRecord layout;
        layout.layout.id.value = 10;
        layout.layout.tank = tank.id;
        layout.layout.flooded = kFlooded;
        layout.layout.bed = record::Bed::Inert;
        layout.layout.measuredNet_L = 100.0;
        layout.layout.source = tap.id;
        layout.layout.uptakeLow_mg_per_L_wk = 0.0;
        layout.layout.uptakeHigh_mg_per_L_wk = 0.0;
        record::DoseRegimen mix;
        mix.id.value = 900;
        mix.tank = tank.id;
        mix.layout = layout.layout.id;
        mix.name = u"green mix"_s;
        mix.nitrate_mg_per_mL = 20.0;
        mix.phosphate_mg_per_mL = 2.0;
        mix.potassium_mg_per_mL = 10.0;
        mix.amount = 10.0; // 2 mg/L NO3
        mix.everyDays = 7;
        mix.from = kFlooded.localDate();
        layout.regimens.push_back(mix);
        m_row.layouts.emplace(layout.layout.id, layout);
    }
    record::LayoutRecord& layout() { return m_row.layouts.at({10}); }
    void enter(EntryKind kind, double day, std::optional<double> fraction, const QString& subject = {},
               std::optional<double> amount = {}, const QString& unit = {})
    {
        record::Entry entry;
        entry.id.value = ++m_next;
        entry.tank.value = 1;
        entry.layout.value = 10;
        entry.kind = kind;
        entry.at = kFlooded.plusDays(day);
        entry.fraction = fraction;
        entry.subject = subject;
        entry.amount = amount;
        entry.unit = unit;
        layout().entries.push_back(entry);
        record::sortRow(m_row);
    }
    void read(const QString& parameter, const QString& typed, const QString& unit, double day)
    {
        record::Reading reading;
        reading.id.value = ++m_next;
        reading.tank.value = 1;
        reading.layout.value = 10;
        reading.parameter = parameter;
        reading.at = kFlooded.plusDays(day);
        ASSERT_TRUE(record::setTypedValue(reading, typed, unit));
        layout().readings.push_back(reading);
        record::sortRow(m_row);
    }
    /// So many weeks of a half change and then a dose.
    void weeks(int count)
    {
        for (int week = 1; week <= count; ++week) {
            enter(EntryKind::WaterChange, 7.0 * week, 0.5);
            enter(EntryKind::Dose, 7.0 * week + 0.01, {}, u"green mix"_s, 10.0, u"mL"_s);
        }
    }
    [[nodiscard]] ExpectedCourse course(const QString& parameter, double day)
    {
        return expectedCourse(m_row, layout(), parameter, kFlooded.plusDays(day));
    }
    [[nodiscard]] ExpectedPoint at(const ExpectedCourse& course, double day)
    {
        const auto point = course.at(kFlooded.plusDays(day).utcMs());
        EXPECT_TRUE(point) << day;
        return point.value_or(ExpectedPoint{});
    }

    record::Row m_row;
    qint64 m_next = 1000;
};

TEST_F(ExpectedTest, SettlesAtDoseOverFraction)
{
    // Geometric series d/f: 2 mg/L a week and half changed weekly settle at 4 mg/L just after the dose (arithmetic).
    read(u"no3"_s, u"0"_s, u"mg/L NO3"_s, 0.5);
    weeks(40);
    const ExpectedCourse no3 = course(u"no3"_s, 282);
    EXPECT_NEAR(at(no3, 281).mid, 4.0, 1e-6);
    EXPECT_NEAR(at(no3, 281).low, 4.0, 1e-6);
    EXPECT_NEAR(at(no3, 281).high, 4.0, 1e-6);
    // Phosphate: a tenth of it; the source is taken to hold none, and that is said.
    read(u"po4"_s, u"0"_s, u"mg/L PO4"_s, 0.5);
    const ExpectedCourse po4 = course(u"po4"_s, 282);
    EXPECT_NEAR(at(po4, 281).mid, 0.4, 1e-6);
    EXPECT_TRUE(po4.assumptions.join(u' ').contains(u"source water"_s));
}

TEST_F(ExpectedTest, TheSourceProfileOfABlendCounts)
{
    // c_s + d/f: half tap of 20 mg/L NO3 gives 10, and 10 + 2/0.5 = 14 (arithmetic).
    m_row.sources.front().nitrate_mgN_per_L = 20.0 / water::kNitratePerN;
    record::SourceWater pure;
    pure.id.value = 6;
    pure.name = u"osmosis"_s;
    pure.kind = record::SourceKind::ReverseOsmosis;
    record::SourceWater blend;
    blend.id.value = 7;
    blend.name = u"half"_s;
    blend.kind = record::SourceKind::Blend;
    blend.firstPart.value = 5;
    blend.secondPart.value = 6;
    blend.firstShare = 0.5;
    m_row.sources.push_back(pure);
    m_row.sources.push_back(blend);
    layout().layout.source = blend.id;
    read(u"no3"_s, u"0"_s, u"mg/L NO3"_s, 0.5);
    weeks(40);
    EXPECT_NEAR(at(course(u"no3"_s, 282), 281).mid, 14.0, 1e-6);
}

TEST_F(ExpectedTest, UptakeOpensARange)
{
    // (d - u(1-f))/f with d 2, u 0.5, f 0.5: 3.5 (arithmetic); without uptake 4.
    layout().layout.uptakeHigh_mg_per_L_wk = 0.5;
    read(u"no3"_s, u"0"_s, u"mg/L NO3"_s, 0.5);
    weeks(40);
    const ExpectedCourse no3 = course(u"no3"_s, 280.02);
    EXPECT_NEAR(at(no3, 280.02).low, 3.5, 0.01);
    EXPECT_NEAR(at(no3, 280.02).high, 4.0, 1e-6);
    EXPECT_NEAR(at(no3, 280.02).mid, 3.75, 0.01);
    EXPECT_TRUE(no3.assumptions.join(u' ').contains(u"as declared"_s));
}

TEST_F(ExpectedTest, WithoutADeclarationTheDensityIsTakenAndSaid)
{
    layout().layout.uptakeLow_mg_per_L_wk.reset();
    layout().layout.uptakeHigh_mg_per_L_wk.reset();
    layout().layout.plants = record::PlantDensity::Dense;
    const UptakeRange dense = uptakeRange(layout().layout, u"no3"_s);
    layout().layout.plants = record::PlantDensity::None;
    EXPECT_EQ(uptakeRange(layout().layout, u"no3"_s).high_per_d, 0.0);
    EXPECT_GT(dense.high_per_d, dense.low_per_d);
    EXPECT_FALSE(dense.declared);
    EXPECT_EQ(uptakeRange(layout().layout, u"kh"_s).high_per_d, 0.0);
}

TEST_F(ExpectedTest, SaysHowTheNewestReadingCompares)
{
    read(u"no3"_s, u"20"_s, u"mg/L NO3"_s, 0.5);
    read(u"no3"_s, u"20"_s, u"mg/L NO3"_s, 6.0);
    const auto sentence = [&](double day) {
        const ExpectedCourse no3 = course(u"no3"_s, day);
        return expectedSentence(m_row, layout(), u"no3"_s, no3, kFlooded.plusDays(day));
    };
    EXPECT_TRUE(sentence(6.5).contains(u"they agree"_s)) << sentence(6.5).toStdString();
    read(u"no3"_s, u"5"_s, u"mg/L NO3"_s, 8.0);
    EXPECT_TRUE(sentence(8.5).contains(u"take up more"_s)) << sentence(8.5).toStdString();
    read(u"no3"_s, u"60"_s, u"mg/L NO3"_s, 9.0);
    EXPECT_TRUE(sentence(9.5).contains(u"reads high"_s)) << sentence(9.5).toStdString();
}

TEST_F(ExpectedTest, NothingWhereNothingIsKnown)
{
    EXPECT_TRUE(course(u"no3"_s, 30).points.empty()) << "no reading to begin from";
    read(u"no3"_s, u"10"_s, u"mg/L NO3"_s, 0.5);
    EXPECT_FALSE(course(u"no3"_s, 30).points.empty());
    EXPECT_TRUE(course(u"fe"_s, 30).points.empty()) << "the mixture brings no iron";
    EXPECT_TRUE(course(u"kh"_s, 30).points.empty());
    layout().layout.measuredNet_L.reset();
    EXPECT_TRUE(course(u"no3"_s, 30).points.empty()) << "no litres";
}

TEST_F(ExpectedTest, StrangersAreLeftOutAndNamed)
{
    read(u"no3"_s, u"10"_s, u"mg/L NO3"_s, 0.5);
    enter(EntryKind::Dose, 2.0, {}, u"mystery"_s, 5.0, u"mL"_s);
    const ExpectedCourse no3 = course(u"no3"_s, 5);
    EXPECT_NEAR(at(no3, 4).mid, 10.0, 1e-9);
    EXPECT_TRUE(no3.assumptions.join(u' ').contains(u"mystery"_s));
}

TEST_F(ExpectedTest, FeedBecomesNitrate)
{
    // 0.01 mg N per litre and day is 0.0443 mg/L NO3 a day (molar masses 62.005 and 14.007, IUPAC): 0.443 in ten days.
    read(u"no3"_s, u"10"_s, u"mg/L NO3"_s, 0.5);
    enter(EntryKind::Feeding, 1.0, {}, {}, 0.01, u"mg/L/d N"_s);
    EXPECT_NEAR(at(course(u"no3"_s, 12), 11.0).mid, 10.443, 0.001);
}

TEST_F(ExpectedTest, RichSoilBeginsAfterItsFirstWeeks)
{
    layout().layout.bed = record::Bed::RichSoil;
    read(u"no3"_s, u"10"_s, u"mg/L NO3"_s, 10);
    read(u"no3"_s, u"15"_s, u"mg/L NO3"_s, 35);
    const ExpectedCourse no3 = course(u"no3"_s, 40);
    ASSERT_FALSE(no3.points.empty());
    EXPECT_EQ(no3.points.front().at, kFlooded.plusDays(35).utcMs());
}

TEST_F(ExpectedTest, TrendsCarryItWhereAskedAndGoOnByTheRegimen)
{
    read(u"no3"_s, u"10"_s, u"mg/L NO3"_s, 0.5);
    const record::Moment now = kFlooded.plusDays(6);
    const TrendModel plain = trendOf(m_row, {{record::LayoutId{10}}, {u"no3"_s}}, {});
    EXPECT_TRUE(plain.series.front().expected.points.empty());
    const TrendModel asked = trendOf(m_row, {{record::LayoutId{10}}, {u"no3"_s}, now}, {});
    const ExpectedCourse& expected = asked.series.front().expected;
    ASSERT_FALSE(expected.points.empty());
    EXPECT_GT(expected.points.back().at, now.plusDays(13).utcMs());
    // Two doses are due by then, the late one and the next: without them the level ends lower.
    layout().regimens.front().until = now.localDate().addDays(-1);
    const TrendModel stopped = trendOf(m_row, {{record::LayoutId{10}}, {u"no3"_s}, now}, {});
    EXPECT_GT(at(expected, 19.0).mid, at(stopped.series.front().expected, 19.0).mid + 1.0);
}

} // namespace
} // namespace littoral::facade
