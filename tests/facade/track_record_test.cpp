// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/track_record.h"

#include "tests/support/temp_store.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

namespace {

/// A tank read with a digital nitrite kit, and forecasts made up by hand.
struct HandMade
{
    HandMade()
        : layout(t.addTank(u"Slate Ford"_s, 40))
    {
        record::TestKit digital;
        digital.name = u"meter"_s;
        digital.parameter = u"no2"_s;
        digital.unit = u"mg/L N"_s;
        digital.kind = record::KitKind::Digital;
        store::Edit edit(u"kit"_s);
        kit = edit.put(digital);
        EXPECT_TRUE(t.keeper.commit(edit));
    }

    void read(double value, double day, const QString& parameter = u"no2"_s)
    {
        facade::Keeper::TypedReading reading;
        reading.layout = layout;
        reading.parameter = parameter;
        reading.typed = QString::number(value, 'f', 5);
        reading.unit = u"mg/L N"_s;
        reading.kit = parameter == u"no2"_s ? kit : record::KitId{};
        reading.at = flooded().plusDays(day);
        const auto done = t.keeper.enterReading(reading);
        ASSERT_TRUE(done) << done.error().sentence();
    }

    [[nodiscard]] record::Moment flooded() const { return t.keeper.row().layout(layout)->layout.flooded; }

    /// A forecast of day `from` that says nitrite is `value` mg N/L for 28 days, without any doubt of its own.
    [[nodiscard]] record::IssuedForecast sure(double from, double value) const
    {
        QJsonArray band;
        for (int q = 0; q < 7; ++q) {
            band.append(value);
        }
        const QJsonObject series{
            {u"parameter"_s, u"no2"_s}, {u"units_per_mgn"_s, 1.0}, {u"bands"_s, QJsonArray{band, band}}};
        const QJsonObject complete{{u"days"_s, QJsonArray{16, 18, 20, 21, 23, 25, QJsonValue()}}};
        record::IssuedForecast issued;
        issued.layout = layout;
        issued.asOf = issued.issued = flooded().plusDays(from);
        issued.model = facade::kForecastModel;
        issued.body = QJsonDocument(QJsonObject{{u"version"_s, 1},
                                                {u"flooded"_s, flooded().toIso()},
                                                {u"days"_s, QJsonArray{from, from + 28.0}},
                                                {u"series"_s, QJsonArray{series}},
                                                {u"complete"_s, complete}})
                          .toJson();
        return issued;
    }

    TempKeeper t;
    record::LayoutId layout;
    record::KitId kit;
};

// Scale of a digital reading of 1 mg/L: 9 % reading, 18 % model, 0.04 floor, added in squares.
const double kScale = std::sqrt(0.09 * 0.09 + 0.18 * 0.18 + 0.04 * 0.04);
// Student's t with four degrees of freedom, any printed table (e.g. NIST/SEMATECH e-Handbook of Statistical Methods,
// 1.3.6.7.2): 0.90, 0.95 and 0.975 quantiles.
constexpr double kT90 = 1.533, kT95 = 2.132, kT975 = 2.776;
// Standard normal, same source: 0.90 and 0.975 quantiles.
constexpr double kZ90 = 1.2816, kZ975 = 1.9600;

} // namespace

TEST(TrackRecord, DigitalReadingsAgainstThePrintedTable)
{
    HandMade made;
    made.read(2.0, 9.0); // before the forecast: persistence
    made.read(1.0, 11.0);
    made.read(1.0 + kT95 * kScale, 12.0);
    made.read(1.0 + 4.0 * kT975 * kScale, 13.0);
    made.read(1.0, 39.0); // more than 28 days ahead: not scored
    const auto record = facade::trackRecord(made.t.keeper.row(), {made.sure(10.0, 1.0)});
    EXPECT_EQ(record.forecasts, 1);
    ASSERT_EQ(record.all.readings, 3);
    EXPECT_NEAR(record.all.pit[0], 0.5, 1e-6);
    EXPECT_NEAR(record.all.pit[1], 0.95, 1e-3);
    EXPECT_GT(record.all.pit[2], 0.99);
    EXPECT_EQ(record.all.inside50, 1);
    EXPECT_EQ(record.all.inside80, 1);
    EXPECT_EQ(record.all.inside95, 2);
    EXPECT_EQ(record.all.compared, 3);
    // ln(1 + c / c0) with c0 = 0.25 mg/L NO2 = 0.25 / 3.28454 mg/L N (molar masses 46.0055 and 14.0067).
    const auto scaled = [](double c) { return std::log(1.0 + c * 3.28454 / 0.25); };
    const double a = 1.0 + kT95 * kScale;
    const double b = 1.0 + 4.0 * kT975 * kScale;
    EXPECT_NEAR(record.all.error, scaled(a) - scaled(1.0) + scaled(b) - scaled(1.0), 1e-4);
    EXPECT_NEAR(record.all.persistence, scaled(2.0) - scaled(1.0) + scaled(2.0) - scaled(a) + scaled(b) - scaled(2.0),
                1e-4);
    EXPECT_EQ(record.layouts.at(made.layout).readings, 3);
    EXPECT_EQ(record.parameters.at(u"no2"_s).inside95, 2);
    EXPECT_DOUBLE_EQ(record.inflation, 1.0); // far fewer than thirty readings
}

TEST(TrackRecord, WideningNeedsThirtyReadings)
{
    HandMade made;
    for (int i = 0; i < 29; ++i) {
        made.read(1.0 + (i % 2 == 0 ? kT975 : -kT975) * kScale, 11.0 + 0.5 * i);
    }
    EXPECT_DOUBLE_EQ(facade::trackRecord(made.t.keeper.row(), {made.sure(10.0, 1.0)}).inflation, 1.0);
    made.read(1.0 + kT975 * kScale, 30.0);
    // Every reading sits where 97.5 % lies below it: the 80 % band should have reached as far as the 95 % band did.
    const auto record = facade::trackRecord(made.t.keeper.row(), {made.sure(10.0, 1.0)});
    EXPECT_NEAR(record.inflation, kZ975 / kZ90, 2e-3);
    EXPECT_EQ(record.all.inside80, 0);
}

TEST(TrackRecord, AReadingWhereNineInTenLieBelowIsAtTheEdgeOfTheBand)
{
    HandMade made;
    made.read(1.0 + (kT90 - 0.02) * kScale, 11.0);
    made.read(1.0 + (kT90 + 0.02) * kScale, 12.0);
    const auto record = facade::trackRecord(made.t.keeper.row(), {made.sure(10.0, 1.0)});
    EXPECT_EQ(record.all.readings, 2);
    EXPECT_EQ(record.all.inside80, 1);
}

TEST(TrackRecord, CardReadingsCountHalfOfTheirOwnStep)
{
    // Without a kit a reading counts as one of the common card 0, 0.25, 0.5, 1, 2, 5 mg/L NO2. The ideal value stands
    // on the step 1: by the card's odds four in five read it, one in twenty a step off to either side from slips alone.
    HandMade made;
    made.kit = {};
    for (const double ppm : {1.0, 2.0, 5.0}) {
        facade::Keeper::TypedReading reading;
        reading.layout = made.layout;
        reading.parameter = u"no2"_s;
        reading.typed = QString::number(ppm);
        reading.unit = u"mg/L NO2"_s;
        reading.at = made.flooded().plusDays(10.0 + ppm);
        ASSERT_TRUE(made.t.keeper.enterReading(reading));
    }
    const record::Row& row = made.t.keeper.row();
    // The kit the store has for nitrite is the digital one; take its mark off the readings.
    record::Row bare = row;
    for (record::Reading& reading : bare.layouts.at(made.layout).readings) {
        reading.kit = {};
    }
    const auto record = facade::trackRecord(bare, {made.sure(10.0, 1.0 / 3.28454)});
    ASSERT_EQ(record.all.readings, 3);
    EXPECT_NEAR(record.all.pit[0], 0.5, 0.05);
    EXPECT_GT(record.all.pit[1], 0.90);
    EXPECT_LT(record.all.pit[1], 0.975);
    EXPECT_GT(record.all.pit[2], 0.975);
    EXPECT_EQ(record.all.inside50, 1);
    EXPECT_EQ(record.all.inside80, 1);
    EXPECT_EQ(record.all.inside95, 2);
}

TEST(TrackRecord, ADateComesAboutWhenReadingsStayClear)
{
    HandMade made;
    for (const double day : {10.0, 24.0, 28.0, 33.0}) {
        made.read(0.0, day, u"tan"_s);
    }
    made.read(0.5, 20.0);
    made.read(0.01, 24.0);
    made.read(0.01, 28.0);
    EXPECT_EQ(facade::trackRecord(made.t.keeper.row(), {made.sure(12.0, 0.1)}).dates.closed, 0);
    made.read(0.02, 33.0);
    // Not clear on day 20, clear on day 24: taken as day 22. Said 18 to 25, middle 21. That of day 23 came too late.
    const auto record = facade::trackRecord(made.t.keeper.row(), {made.sure(12.0, 0.1), made.sure(23.0, 0.1)});
    EXPECT_EQ(record.dates.closed, 1);
    EXPECT_EQ(record.dates.inside80, 1);
    ASSERT_EQ(record.dates.errors_d.size(), 1u);
    EXPECT_NEAR(record.dates.errors_d[0], -1.0, 1e-6);
    made.read(0.9, 36.0); // nitrite is back: it was not over after all
    EXPECT_EQ(facade::trackRecord(made.t.keeper.row(), {made.sure(12.0, 0.1)}).dates.closed, 0);
}

TEST(TrackRecord, ForecastsAreKeptOnceBesideTheJournal)
{
    TempKeeper t;
    facade::Forecasts forecasts(t.keeper);
    const auto layout = t.addTank(u"Slate Ford"_s, 3);
    const QString last = t.keeper.lastChangeText();
    forecasts.refresh();
    forecasts.wait();
    const auto result = forecasts.result(layout);
    ASSERT_NE(result, nullptr);
    ASSERT_TRUE(facade::keepIssued(*t.keeper.store(), *result)); // the same record state: not once more
    const auto kept = t.keeper.store()->issuedForecasts(layout);
    ASSERT_TRUE(kept);
    ASSERT_EQ(kept->size(), 1u);
    EXPECT_LT(kept->front().body.size(), 16000);
    EXPECT_EQ(t.keeper.lastChangeText(), last);

    // What was kept scores a reading that comes in later.
    t.clock.set(t.clock.now().plusDays(2.0));
    t.read(layout, u"tan"_s, u"1"_s, 0.0);
    const auto record = facade::trackRecord(t.keeper.row(), *t.keeper.store());
    ASSERT_TRUE(record);
    EXPECT_EQ(record->forecasts, 1);
    EXPECT_EQ(record->all.readings, 1);

    // A second state, a second forecast; and the tank it hangs on can still be taken back.
    forecasts.refresh();
    forecasts.wait();
    EXPECT_EQ(t.keeper.store()->issuedForecasts(layout)->size(), 2u);
    ASSERT_TRUE(t.keeper.undo());
    const auto undone = t.keeper.undo();
    ASSERT_TRUE(undone) << undone.error().sentence();
    EXPECT_TRUE(t.keeper.row().tanks.empty());
    EXPECT_TRUE(t.keeper.store()->issuedForecasts(layout)->empty());
    EXPECT_TRUE(t.keeper.store()->verify()->problems.empty());
}

TEST(TrackRecord, AReadOnlyStoreKeepsNothingAndSaysNothing)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Slate Ford"_s, 3);
    facade::Keeper reader(t.clock);
    ASSERT_TRUE(reader.open(t.path(), store::Access::ReadOnly));
    facade::Forecasts forecasts(reader);
    forecasts.refresh();
    forecasts.wait();
    ASSERT_NE(forecasts.result(layout), nullptr);
    EXPECT_TRUE(facade::keepIssued(*reader.store(), *forecasts.result(layout)));
    EXPECT_TRUE(reader.store()->issuedForecasts(layout)->empty());
}
