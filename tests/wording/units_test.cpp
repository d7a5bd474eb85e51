// SPDX-License-Identifier: GPL-3.0-or-later
// The switches of units, against published factors named beside each check.
#include "core/record/parameter.h"
#include "core/record/reading.h"
#include "core/record/shown.h"
#include "core/wording/entry_words.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"

#include <gtest/gtest.h>
#include <thread>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using namespace record;

namespace {

class Shown : public ::testing::Test
{
protected:
    void TearDown() override { showUnits({}); }

    static double shown(const QString& parameter, double usual)
    {
        const Parameter* found = findParameter(parameter);
        return found->shown().fromCanonical(inUsualUnits(*found).shown().toCanonical(usual));
    }
};

} // namespace

/// NIST Special Publication 811, appendix B.8: inch 2.54 E-02 m, gallon (U.S.) 3.785 412 E-03 m³; B.9: t/°F = 1.8 t/°C
/// + 32.
TEST_F(Shown, MeasuresHaveThePublishedFactors)
{
    EXPECT_NEAR(volumeMeasure({.volume = VolumeUnit::UsGallons}).canonical(1.0), 3.785412, 1e-6);
    EXPECT_NEAR(lengthMeasure({.length = LengthUnit::Inches}).canonical(1.0), 2.54, 1e-12);
    const Measure fahrenheit = temperatureMeasure({.temperature = TemperatureUnit::Fahrenheit});
    EXPECT_NEAR(fahrenheit.shown(25.0), 77.0, 1e-12);
    EXPECT_NEAR(fahrenheit.shown(-40.0), -40.0, 1e-12);
    EXPECT_NEAR(fahrenheit.canonical(fahrenheit.shown(24.3)), 24.3, 1e-12);
}

/// US EPA, drinking water: 10 mg/L nitrate as N is 44 mg/L (45 in some guidelines) as the ion; 1 mg/L nitrite as N
/// is 3.3.
TEST_F(Shown, NitrogenAsIonAndAsN)
{
    EXPECT_EQ(findParameter(u"no3"_s)->shown().label, u"mg/L NO₃"_s);
    showUnits({.nitrogen = NitrogenUnit::AsNitrogen});
    EXPECT_EQ(findParameter(u"no3"_s)->shown().label, u"mg/L N"_s);
    EXPECT_NEAR(shown(u"no3"_s, 44.27), 10.0, 0.01);
    EXPECT_NEAR(shown(u"no2"_s, 3.284), 1.0, 0.001);
    EXPECT_NEAR(shown(u"tan"_s, 1.216), 1.0, 0.001);
    EXPECT_EQ(findParameter(u"no3"_s)->decimals, 1) << "one more than as the ion, which is 4.4 times as large";
    EXPECT_EQ(findParameter(u"po4"_s)->shown().label, u"mg/L PO₄"_s) << "phosphate has no nitrogen";
}

/// A milligram in a kilogram of dilute water is one part per million.
TEST_F(Shown, PpmKeepsTheNumberAndTheBasis)
{
    showUnits({.nitrogen = NitrogenUnit::Ppm});
    EXPECT_EQ(findParameter(u"no3"_s)->shown().label, u"ppm NO₃"_s);
    EXPECT_EQ(findParameter(u"k"_s)->shown().label, u"ppm"_s);
    EXPECT_EQ(findParameter(u"po4"_s)->shown().label, u"ppm PO₄"_s);
    EXPECT_DOUBLE_EQ(shown(u"no3"_s, 25.0), 25.0);
    EXPECT_EQ(valueWithUnit(u"nh3"_s, 0.02), u"0.020 ppm N"_s);
}

/// DIN 38409-6 degree of 10 mg/L CaO: 0.1783 mmol/L of Ca + Mg, 0.357 meq/L, 17.8 mg/L CaCO3 (water-works tables).
TEST_F(Shown, HardnessInDegreesMolesAndCalciumCarbonate)
{
    showUnits({.hardness = HardnessUnit::Molar});
    EXPECT_EQ(findParameter(u"gh"_s)->shown().label, u"mmol/L"_s);
    EXPECT_EQ(findParameter(u"kh"_s)->shown().label, u"meq/L"_s);
    EXPECT_NEAR(shown(u"gh"_s, 1.0), 0.1783, 5e-5);
    EXPECT_NEAR(shown(u"kh"_s, 1.0), 0.3567, 1e-4);
    EXPECT_EQ(findParameter(u"gh"_s)->decimals, 2);
    showUnits({.hardness = HardnessUnit::PpmCaCO3});
    EXPECT_EQ(findParameter(u"gh"_s)->shown().label, u"ppm CaCO₃"_s);
    EXPECT_NEAR(shown(u"gh"_s, 1.0), 17.85, 0.01);
    EXPECT_NEAR(shown(u"kh"_s, 1.0), 17.85, 0.01);
    EXPECT_EQ(findParameter(u"kh"_s)->decimals, 0);
}

TEST_F(Shown, SentencesAreInTheChosenUnit)
{
    EXPECT_EQ(litresText(36), u"36 L"_s);
    EXPECT_EQ(lengthText(60), u"60 cm"_s);
    EXPECT_EQ(temperatureText(24), u"24 °C"_s);
    showUnits({NitrogenUnit::AsNitrogen, HardnessUnit::PpmCaCO3, TemperatureUnit::Fahrenheit, VolumeUnit::UsGallons,
               LengthUnit::Inches});
    EXPECT_EQ(litresText(36), u"9.5 US gal"_s);
    EXPECT_EQ(litresText(200), u"53 US gal"_s);
    EXPECT_EQ(lengthText(60), u"23.6 in"_s);
    EXPECT_EQ(temperatureText(25), u"77 °F"_s);
    EXPECT_EQ(valueWithUnit(u"temp"_s, 25.0), u"77 °F"_s);
    Entry topUp;
    topUp.kind = EntryKind::TopUp;
    topUp.amount = 5.0;
    EXPECT_TRUE(entryText(topUp).endsWith(u"1.32 US gal"_s)) << entryText(topUp).toStdString();
}

TEST_F(Shown, WhatWasTypedStaysAsTyped)
{
    Reading reading;
    reading.parameter = u"no2"_s;
    ASSERT_TRUE(setTypedValue(reading, u"0.8"_s, u"mg/L NO2"_s));
    const double canonical = reading.value;
    EXPECT_EQ(valueText(reading), u"0.8"_s);
    showUnits({.nitrogen = NitrogenUnit::Ppm});
    EXPECT_EQ(valueText(reading), u"0.8"_s) << "the same number in another name: no digit is made up";
    showUnits({.nitrogen = NitrogenUnit::AsNitrogen});
    EXPECT_EQ(valueText(reading), u"0.244"_s);
    EXPECT_EQ(reading.typed, u"0.8"_s);
    EXPECT_EQ(reading.unit, u"mg/L NO2"_s);
    EXPECT_DOUBLE_EQ(reading.value, canonical);
}

TEST_F(Shown, SettingsGoThereAndBack)
{
    const Units all{NitrogenUnit::Ppm, HardnessUnit::Molar, TemperatureUnit::Fahrenheit, VolumeUnit::UsGallons,
                    LengthUnit::Inches};
    EXPECT_EQ(unitsFrom(settingsOf(all)), all);
    EXPECT_EQ(unitsFrom(settingsOf({})), Units{});
    EXPECT_EQ(unitsFrom({}), Units{});
    EXPECT_EQ(unitsFrom({{u"units.volume"_s, u"barrels"_s}}), Units{}) << "an unknown word changes nothing";
}

/// Workers read parameters while the window changes units; what they hold stays whole.
TEST_F(Shown, ReadersAreNotDisturbed)
{
    std::atomic<bool> stop = false;
    std::atomic<int> wrong = 0;
    std::thread reader([&] {
        while (!stop) {
            const Parameter* nitrate = findParameter(u"no3"_s);
            wrong += nitrate == nullptr || nitrate->units.empty() || nitrate->shown().factor <= 0.0 ? 1 : 0;
        }
    });
    for (int i = 0; i < 40; ++i) {
        showUnits({.nitrogen = static_cast<NitrogenUnit>(i % 3)});
        (void)parameters();
    }
    stop = true;
    reader.join();
    EXPECT_EQ(wrong, 0);
}

} // namespace littoral::wording
