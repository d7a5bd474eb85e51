// SPDX-License-Identifier: GPL-3.0-or-later
// Invented readings, worked through by hand with the limits of resources/facts/gates.json (common practice): G1 0.20
// mg/L N of ammonia, 0.06 of nitrite, held a day, from day 14; G3 below the kit's first step for a week, from day 28.
#include "core/facade/gate_dates.h"

#include "core/care/gates.h"
#include "core/facade/track_record.h"
#include "core/wording/plan_sentences.h"
#include "tests/support/temp_store.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

struct Tank
{
    Tank()
        : layout(t.addTank(u"Slate Ford"_s, 40))
    {
    }

    void read(const QString& parameter, double day, const QString& typed, const QString& unit = u"mg/L N"_s)
    {
        facade::Keeper::TypedReading reading;
        reading.layout = layout;
        reading.parameter = parameter;
        reading.typed = typed;
        reading.unit = unit;
        reading.at = flooded().plusDays(day);
        const auto done = t.keeper.enterReading(reading);
        ASSERT_TRUE(done) << done.error().sentence();
    }

    /// Nitrite over every limit on day 20, under them from day 24 to the last of `clear`; ammonia never seen.
    void runIn(std::initializer_list<double> clear)
    {
        read(u"tan"_s, 10.0, u"0"_s);
        read(u"no2"_s, 20.0, u"0.5"_s);
        for (const double day : clear) {
            read(u"tan"_s, day, u"0"_s);
            read(u"no2"_s, day, u"0"_s);
        }
    }

    [[nodiscard]] record::Moment flooded() const { return record().layout.flooded; }
    [[nodiscard]] const record::LayoutRecord& record() const { return *t.keeper.row().layout(layout); }

    [[nodiscard]] std::vector<facade::GateOpening> openings(const std::string& key) const
    {
        for (const forecast::GateRule& gate : care::gateRules(t.keeper.row(), layout)) {
            if (gate.key == key) {
                return facade::gateOpenings(record(), gate);
            }
        }
        ADD_FAILURE() << "no gate " << key;
        return {};
    }

    [[nodiscard]] double day(const record::Moment& at) const { return record::daysBetween(flooded(), at); }

    /// A forecast of day `from` for two gates: G1 around day 22, G3 around day 40.
    [[nodiscard]] record::IssuedForecast forecastOf(double from) const
    {
        const QJsonObject first{{u"gate"_s, u"G1"_s}, {u"days"_s, QJsonArray{19, 20, 21, 22, 23, 24, 25}}};
        const QJsonObject third{{u"gate"_s, u"G3"_s}, {u"days"_s, QJsonArray{36, 37, 38, 40, 44, QJsonValue()}}};
        record::IssuedForecast issued;
        issued.layout = layout;
        issued.asOf = issued.issued = flooded().plusDays(from);
        issued.model = facade::kForecastModel;
        issued.body = QJsonDocument(QJsonObject{{u"version"_s, 1},
                                                {u"flooded"_s, flooded().toIso()},
                                                {u"days"_s, QJsonArray{from, from + 28.0}},
                                                {u"gates"_s, QJsonArray{first, third}}})
                          .toJson();
        return issued;
    }

    test::TempKeeper t;
    record::LayoutId layout;
};

} // namespace

TEST(GateDates, OpenTheSpanAfterHalfwayToTheFirstClearReading)
{
    Tank tank;
    tank.runIn({24.0, 28.0});
    const auto first = tank.openings("G1");
    ASSERT_EQ(first.size(), 1u);
    EXPECT_NEAR(tank.day(first[0].opened), 23.0, 1e-6); // (20 + 24) / 2 + 1
    EXPECT_FALSE(first[0].shut.has_value());
    EXPECT_TRUE(tank.openings("G3").empty()); // due on day 29, last read on day 28
    tank.read(u"tan"_s, 33.0, u"0"_s);
    tank.read(u"no2"_s, 33.0, u"0"_s);
    ASSERT_EQ(tank.openings("G3").size(), 1u);
    EXPECT_NEAR(tank.day(tank.openings("G3")[0].opened), 29.0, 1e-6);
}

TEST(GateDates, ShutWithTheReadingThatBreaksALimit)
{
    Tank tank;
    tank.runIn({24.0, 28.0});
    tank.read(u"no2"_s, 30.0, u"0.3"_s);
    tank.read(u"no2"_s, 34.0, u"0"_s);
    tank.read(u"no2"_s, 38.0, u"0"_s);
    tank.read(u"tan"_s, 38.0, u"0"_s);
    const auto openings = tank.openings("G1");
    ASSERT_EQ(openings.size(), 2u);
    ASSERT_TRUE(openings[0].shut.has_value());
    EXPECT_NEAR(tank.day(*openings[0].shut), 29.0, 1e-6);
    EXPECT_NEAR(tank.day(openings[1].opened), 33.0, 1e-6);
}

TEST(GateDates, FreeAmmoniaCountsWhereAPHGoesWithIt)
{
    // 0.15 mg/L N at pH 9 and 24 C is about a third free (K. Emerson et al. 1975: pKa 9.28): over 0.010.
    Tank tank;
    tank.read(u"tan"_s, 20.0, u"0.15"_s);
    tank.read(u"tan"_s, 24.0, u"0.15"_s);
    tank.read(u"no2"_s, 20.0, u"0"_s);
    tank.read(u"no2"_s, 24.0, u"0"_s);
    EXPECT_EQ(tank.openings("G1").size(), 1u);
    tank.read(u"ph"_s, 20.0, u"9.0"_s, {});
    tank.read(u"ph"_s, 24.0, u"9.0"_s, {});
    EXPECT_TRUE(tank.openings("G1").empty());
}

TEST(GateDates, AreScoredAsCompletionDatesAre)
{
    Tank tank;
    tank.runIn({24.0, 28.0, 33.0});
    // G1 opened on day 23, G3 on day 29. On day 26 G1 stood open: nothing to forecast.
    const auto record = facade::trackRecord(tank.t.keeper.row(), {tank.forecastOf(12.0), tank.forecastOf(26.0)});
    const facade::HeldDates& first = record.gates.at(u"G1"_s);
    EXPECT_EQ(first.closed, 1);
    EXPECT_EQ(first.inside80, 1);
    ASSERT_EQ(first.errors_d.size(), 1u);
    EXPECT_NEAR(first.errors_d[0], -1.0, 1e-6);
    const facade::HeldDates& third = record.gates.at(u"G3"_s);
    EXPECT_EQ(third.closed, 2);
    EXPECT_EQ(third.inside80, 0);
    EXPECT_FALSE(record.gates.contains(u"G2"_s)); // no forecast of it was kept
}

TEST(GateDates, AreToldInASentence)
{
    EXPECT_TRUE(wording::heldGateText(u"G1"_s, 0, 0).isEmpty());
    EXPECT_EQ(wording::heldGateText(u"G1"_s, 1, 1),
              u"Of 1 date of G1 that has come about, the 8-in-10 range held it."_s);
    EXPECT_EQ(wording::heldGateText(u"G2"_s, 6, 5),
              u"Of 6 dates of G2 that have come about, the 8-in-10 ranges held 5."_s);
}
