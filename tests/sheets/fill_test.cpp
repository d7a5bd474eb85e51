// SPDX-License-Identifier: GPL-3.0-or-later
// Blanks filled from the record of a tank, and said to be.
#include "core/sheets/fill.h"
#include "tests/sheets/reckon_line.h"

namespace littoral::test {

using namespace Qt::StringLiterals;
using record::Moment;

namespace {

const Moment kNow = Moment::fromIso(u"2026-11-25T08:00:00Z"_s);

record::Reading reading(const QString& parameter, const QString& typed, const QString& unit, double daysAgo,
                        record::KitId kit = {})
{
    record::Reading made;
    made.parameter = parameter;
    made.at = kNow.plusDays(-daysAgo);
    made.kit = kit;
    EXPECT_TRUE(record::setTypedValue(made, typed, unit));
    return made;
}

/// One tank of 60 x 30 x 36 cm with readings, a kit of steps, and a hard tap.
record::Row sampleRow()
{
    record::Row row;
    record::Tank tank;
    tank.id = {1};
    tank.name = u"Otter Pool"_s;
    tank.length_cm = 60;
    tank.depth_cm = 30;
    tank.height_cm = 36;
    row.tanks.push_back(tank);
    record::SourceWater tap;
    tap.id = {5};
    tap.name = u"Village tap"_s;
    tap.alkalinity_meq_per_L = 3.5665246;
    tap.hardness_mmol_per_L = 2.4965672;
    tap.ph = 7.8;
    tap.nitrate_mgN_per_L = 2.0;
    row.sources.push_back(tap);
    record::TestKit kit;
    kit.id = {7};
    kit.parameter = u"no2"_s;
    kit.unit = u"mg/L NO2"_s;
    kit.steps = {0, 0.25, 0.5, 1, 2};
    row.kits.push_back(kit);
    record::LayoutRecord layout;
    layout.layout.id = {2};
    layout.layout.tank = {1};
    layout.layout.flooded = kNow.plusDays(-20);
    layout.layout.source = {5};
    layout.layout.measuredNet_L = 47.5;
    layout.layout.temperature_C = 23.5;
    layout.readings = {
        reading(u"no3"_s, u"30"_s, u"mg/L NO3"_s, 5),     reading(u"ph"_s, u"6.9"_s, u"pH"_s, 2),
        reading(u"no3"_s, u"20"_s, u"mg/L NO3"_s, 1),     reading(u"kh"_s, u"4"_s, u"dKH"_s, 1),
        reading(u"no2"_s, u"1"_s, u"mg/L NO2"_s, 1, {7}), reading(u"tan"_s, u"<0.2"_s, u"mg/L NH4"_s, 1)};
    row.layouts[{2}] = layout;
    record::sortRow(row);
    return row;
}

sheets::Values filled(const char* key, const sheets::Values& typed = {})
{
    return sheets::fillFromRecord(*sheets::findSheet(QString::fromLatin1(key)), sampleRow(), {1}, kNow, typed);
}

} // namespace

TEST(Fill, NewestReadingInTheSheetsUnit)
{
    const sheets::Values values = filled("co2");
    EXPECT_DOUBLE_EQ(values.value(u"ph"_s).number, 6.9);
    EXPECT_NEAR(values.value(u"kh"_s).number, 4.0, 1e-9);
    EXPECT_DOUBLE_EQ(values.value(u"temp"_s).number, 23.5); // what the layout is set to, without a reading
    EXPECT_TRUE(values.value(u"ph"_s).origin.contains(u"23 Nov"_s)) << values.value(u"ph"_s).origin.toStdString();
    const auto answer = sheets::evaluate(*sheets::findSheet(u"co2"_s), values);
    ASSERT_TRUE(answer);
    EXPECT_TRUE(answer->origins.join(u'|').contains(u"pH 6.9"_s)) << answer->origins.join(u'|').toStdString();
}

TEST(Fill, ParameterOfAChoiceVolumeAndSource)
{
    const sheets::Values nitrate = filled("target");
    EXPECT_NEAR(nitrate.value(u"now"_s).number, 20.0, 1e-9);
    EXPECT_NEAR(nitrate.value(u"source"_s).number, 8.853, 0.001); // 2 mg/L N as the ion
    EXPECT_DOUBLE_EQ(nitrate.value(u"litres"_s).number, 47.5);
    EXPECT_TRUE(nitrate.value(u"source"_s).origin.contains(u"Village tap"_s));
    sheets::Value nitrite;
    nitrite.text = u"no2"_s;
    EXPECT_NEAR(filled("target", {{u"parameter"_s, nitrite}}).value(u"now"_s).number, 1.0, 1e-9);
}

TEST(Fill, TheKitsStepsAreItsDoubt)
{
    // Read 1 between 0.5 and 2: half the way to the further neighbour.
    EXPECT_NEAR(filled("nitrite").value(u"no2"_s).error.value_or(0), 0.5, 1e-9);
    // "<0.2 mg/L NH4" lies between nothing and 0.155 mg/L N.
    const sheets::Value tan = filled("ammonia").value(u"tan"_s);
    EXPECT_NEAR(tan.number, 0.0776, 0.0005);
    EXPECT_NEAR(tan.error.value_or(0), 0.0776, 0.0005);
}

TEST(Fill, WhatWasTypedStays)
{
    sheets::Value typed;
    typed.number = 7.5;
    typed.text = u"7.5"_s;
    EXPECT_DOUBLE_EQ(filled("co2", {{u"ph"_s, typed}}).value(u"ph"_s).number, 7.5);
}

TEST(Fill, AnUnknownTankAddsNothing)
{
    EXPECT_TRUE(sheets::fillFromRecord(*sheets::findSheet(u"co2"_s), sampleRow(), {99}, kNow, {}).isEmpty());
}

} // namespace littoral::test
