// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/reading.h"

#include <gtest/gtest.h>

using namespace littoral;
using namespace littoral::record;
using namespace Qt::StringLiterals;

namespace {

struct Typed
{
    const char* text;
    Censoring censoring;
    double low;
    double high;
};

Reading readingOf(const char* parameter)
{
    Reading reading;
    reading.parameter = QString::fromLatin1(parameter);
    return reading;
}

/// The canonical value of what was typed; NaN when it was refused.
double canonical(const char* parameter, const char* typed, const char* unit)
{
    Reading reading = readingOf(parameter);
    const auto set = setTypedValue(reading, QString::fromUtf8(typed), QString::fromLatin1(unit));
    EXPECT_TRUE(set) << set.error().sentence();
    return reading.value;
}

bool refused(const char* parameter, const char* typed, const char* unit)
{
    Reading reading = readingOf(parameter);
    const Reading before = reading;
    const auto set = setTypedValue(reading, QString::fromUtf8(typed), QString::fromLatin1(unit));
    EXPECT_EQ(reading, before) << "a refused value changes nothing";
    return !set && set.error().fault == Fault::BadInput && !set.error().what.empty();
}

} // namespace

class ParseTyped : public ::testing::TestWithParam<Typed>
{
};

TEST_P(ParseTyped, IsUnderstood)
{
    const Typed& typed = GetParam();
    const auto parsed = parseTypedValue(QString::fromUtf8(typed.text));
    ASSERT_TRUE(parsed) << parsed.error().sentence();
    EXPECT_EQ(*parsed, (TypedValue{typed.censoring, typed.low, typed.high}));
}

INSTANTIATE_TEST_SUITE_P(
    Forms, ParseTyped,
    ::testing::Values(Typed{"0.25", Censoring::None, 0.25, 0.25}, Typed{"0,25", Censoring::None, 0.25, 0.25},
                      Typed{"  7.4 ", Censoring::None, 7.4, 7.4}, Typed{"0", Censoring::None, 0.0, 0.0},
                      Typed{".5", Censoring::None, 0.5, 0.5}, Typed{"-5", Censoring::None, -5.0, -5.0},
                      Typed{"−5", Censoring::None, -5.0, -5.0}, Typed{"1e-3", Censoring::None, 0.001, 0.001},
                      Typed{"1E-3", Censoring::None, 0.001, 0.001}, Typed{"1250", Censoring::None, 1250.0, 1250.0},
                      Typed{"0,250", Censoring::None, 0.25, 0.25}, Typed{"<0.05", Censoring::Below, 0.0, 0.05},
                      Typed{"< 0,05", Censoring::Below, 0.0, 0.05}, Typed{"> 8", Censoring::Above, 8.0, 8.0},
                      Typed{">8", Censoring::Above, 8.0, 8.0}, Typed{"5–10", Censoring::Between, 5.0, 10.0},
                      Typed{"5-10", Censoring::Between, 5.0, 10.0}, Typed{"5 - 10", Censoring::Between, 5.0, 10.0},
                      Typed{"5/10", Censoring::Between, 5.0, 10.0}, Typed{"0,1-0,2", Censoring::Between, 0.1, 0.2},
                      Typed{"1e-3-2e-3", Censoring::Between, 0.001, 0.002},
                      Typed{"-2 - -1", Censoring::Between, -2.0, -1.0}, Typed{"5-5", Censoring::None, 5.0, 5.0}));

class ParseRefused : public ::testing::TestWithParam<const char*>
{
};

TEST_P(ParseRefused, SaysWhatAndHow)
{
    const auto parsed = parseTypedValue(QString::fromUtf8(GetParam()));
    ASSERT_FALSE(parsed);
    EXPECT_EQ(parsed.error().fault, Fault::BadInput);
    EXPECT_FALSE(parsed.error().what.empty());
    EXPECT_FALSE(parsed.error().mend.empty());
}

INSTANTIATE_TEST_SUITE_P(Forms, ParseRefused,
                         ::testing::Values("", "   ", "abc", "0.5 - 0.25", "<", ">", "< <1", "5-", "/10", "5-10-15",
                                           "1.2.3", "1.250,5", "nan", "inf", "1,250", "<1,250", "1,000-2,000", "0x10",
                                           "7.4 pH", "1 2"));

TEST(TypedValue, KeepsWhatWasTyped)
{
    Reading reading = readingOf("no2");
    ASSERT_TRUE(setTypedValue(reading, u" 0,25 "_s, u"mg/l no2"_s));
    EXPECT_EQ(reading.typed, u"0,25"_s);
    EXPECT_EQ(reading.unit, u"mg/L NO2"_s) << "the code as in files, however it was cased";
    EXPECT_EQ(valueText(reading), u"0,25"_s);
}

// Factors by the IUPAC abridged standard atomic weights of 2021 (N 14.007, O 15.999, H 1.008): NO2/N 3.284,
// NO3/N 4.427, NH3/N 1.216, NH4/N 1.288, PO4/P 3.066.
TEST(Conversions, NitrogenAndPhosphorusBases)
{
    EXPECT_NEAR(canonical("no2", "3.284", "mg/L NO2"), 1.0, 2e-4);
    EXPECT_NEAR(canonical("no3", "4.427", "mg/L NO3"), 1.0, 2e-4);
    EXPECT_NEAR(canonical("tan", "1.216", "mg/L NH3"), 1.0, 2e-4);
    EXPECT_NEAR(canonical("tan", "1.288", "mg/L NH4"), 1.0, 2e-4);
    EXPECT_NEAR(canonical("po4", "1", "mg/L P"), 3.066, 5e-4);
    EXPECT_EQ(canonical("no3", "10", "mg/L N"), 10.0);
}

// Health Canada, Guidelines for Canadian Drinking Water Quality: nitrate 45 mg/L as ion is 10 mg/L as N, nitrite 3 mg/L
// is 1 mg/L as N. Both are printed rounded, hence the tolerances.
TEST(Conversions, AgreeWithPrintedDrinkingWaterLimits)
{
    EXPECT_NEAR(canonical("no3", "45", "mg/L NO3"), 10.0, 0.2);
    EXPECT_NEAR(canonical("no2", "3", "mg/L NO2"), 1.0, 0.1);
}

// The German degree is 10 mg/L CaO: 0.1783 mmol/L, or 17.85 mg/L as CaCO3 (DIN 38409-6). One meq/L of alkalinity
// is 50.04 mg/L as CaCO3. The Fahrenheit scale: 77 °F is 25 °C.
TEST(Conversions, HardnessAlkalinityTemperature)
{
    EXPECT_NEAR(canonical("gh", "1", "dGH"), 0.1783, 5e-5);
    EXPECT_NEAR(canonical("gh", "17.85", "mg/L CaCO3"), 0.1783, 5e-5);
    EXPECT_NEAR(canonical("kh", "2.804", "dKH"), 1.0, 1e-3);
    EXPECT_NEAR(canonical("kh", "50.04", "mg/L CaCO3"), 1.0, 1e-3);
    EXPECT_NEAR(canonical("temp", "77", "F"), 25.0, 1e-9);
}

TEST(Conversions, EveryUnitGoesThereAndBack)
{
    for (const Parameter& parameter : parameters()) {
        EXPECT_EQ(parameter.canonical().factor, 1.0) << parameter.key.toStdString();
        EXPECT_EQ(parameter.canonical().offset, 0.0) << parameter.key.toStdString();
        ASSERT_LT(static_cast<std::size_t>(parameter.shownUnit), parameter.units.size());
        EXPECT_LT(parameter.lowest, parameter.highest);
        EXPECT_EQ(findParameter(parameter.key), &parameter);
        EXPECT_EQ(findParameter(parameter.name.toUpper()), &parameter);
        for (const Unit& unit : parameter.units) {
            EXPECT_NEAR(unit.fromCanonical(unit.toCanonical(7.25)), 7.25, 1e-12) << unit.code.toStdString();
            EXPECT_EQ(parameter.unit(unit.code), &unit);
        }
    }
    EXPECT_EQ(findParameter(u"unheard-of"_s), nullptr);
}

TEST(Censored, BoundsAndValue)
{
    Reading reading = readingOf("no3");
    ASSERT_TRUE(setTypedValue(reading, u"<5"_s, u"mg/L N"_s));
    EXPECT_EQ(reading.censoring, Censoring::Below);
    EXPECT_EQ(reading.low, 0.0);
    EXPECT_EQ(reading.high, 5.0);
    EXPECT_EQ(reading.value, 2.5);
    EXPECT_EQ(valueText(reading), u"<22"_s); // 5 x 4.427, shown as mg/L NO3 without decimals
    ASSERT_TRUE(setTypedValue(reading, u">8"_s, u"mg/L N"_s));
    EXPECT_EQ(reading.value, 8.0);
    EXPECT_EQ(reading.low, 8.0);
    EXPECT_EQ(valueText(reading), u">35"_s);
    ASSERT_TRUE(setTypedValue(reading, u"5/10"_s, u"mg/L N"_s));
    EXPECT_EQ(reading.value, 7.5);
    EXPECT_EQ(valueText(reading), u"22–44"_s);
}

TEST(Censored, ScalesThatDoNotStartAtNothingTakeTheBound)
{
    Reading reading = readingOf("ph");
    ASSERT_TRUE(setTypedValue(reading, u"<6.0"_s, u"pH"_s));
    EXPECT_EQ(reading.value, 6.0) << "half of a pH is another water altogether";
    EXPECT_LE(reading.low, reading.value);
    reading = readingOf("temp");
    ASSERT_TRUE(setTypedValue(reading, u"<68"_s, u"F"_s));
    EXPECT_NEAR(reading.value, 20.0, 1e-9);
    EXPECT_LE(reading.low, reading.value);
    EXPECT_TRUE(refused("ph", "<2", "pH")) << "nothing lies below the lowest possible value";
    EXPECT_TRUE(refused("no2", "<0", "mg/L N"));
    EXPECT_TRUE(refused("no2", "<-1", "mg/L N"));
}

TEST(Impossible, IsRefusedWithTheUnitAndTheRange)
{
    EXPECT_TRUE(refused("no2", "-5", "mg/L N"));
    EXPECT_TRUE(refused("ph", "74", "pH"));
    EXPECT_TRUE(refused("ph", "0.74", "pH"));
    EXPECT_TRUE(refused("temp", "77", "C"));
    EXPECT_TRUE(refused("temp", "240", "F"));
    EXPECT_TRUE(refused("no3", "10", "mg/L"));
    EXPECT_TRUE(refused("unheard-of", "1", "mg/L"));
    EXPECT_TRUE(refused("no3", "abc", "mg/L N"));
    Reading reading = readingOf("ph");
    const auto set = setTypedValue(reading, u"74"_s, u"pH"_s);
    EXPECT_NE(set.error().mend.find("13"), std::string::npos) << set.error().sentence();
    reading = readingOf("no3");
    EXPECT_NE(setTypedValue(reading, u"10"_s, u"mg/L"_s).error().mend.find("mg/L NO3"), std::string::npos);
}
