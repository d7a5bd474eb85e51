// SPDX-License-Identifier: GPL-3.0-or-later
// What people type: bare numbers, names, doubts, units, slips.
#include "tests/sheets/reckon_line.h"

namespace littoral::test {

using namespace Qt::StringLiterals;
using sheets::parseLine;

sheets::Values valuesOf(const char* line)
{
    const auto request = parseLine(QString::fromUtf8(line));
    EXPECT_TRUE(request) << (request ? "" : request.error().sentence());
    return request ? request->values : sheets::Values{};
}

TEST(TextInput, BareNumbersGoToTheBlanksInOrder)
{
    const sheets::Values values = valuesOf("co2 6.6 4");
    EXPECT_EQ(values.value(u"ph"_s).number, 6.6);
    EXPECT_EQ(values.value(u"kh"_s).number, 4.0);
    EXPECT_EQ(values.size(), 2);
    // A named one is skipped by those that follow.
    const sheets::Values mixed = valuesOf("CO2 kh=4 6.6 24");
    EXPECT_EQ(mixed.value(u"ph"_s).number, 6.6);
    EXPECT_EQ(mixed.value(u"temp"_s).number, 24.0);
}

TEST(TextInput, DoubtsAndDecimalMarks)
{
    for (const char* line : {"co2 6,6±0,1", "co2 6.6+-0.1", "co2 ph=6.6+/-0.1", "co2 PH=\"6.6 ± 0.1\""}) {
        const sheets::Value value = valuesOf(line).value(u"ph"_s);
        EXPECT_DOUBLE_EQ(value.number, 6.6) << line;
        EXPECT_DOUBLE_EQ(value.error.value_or(0), 0.1) << line;
        EXPECT_DOUBLE_EQ(value.step, 0.1) << line;
    }
    EXPECT_FALSE(valuesOf("co2 6.6").value(u"ph"_s).error);
}

TEST(TextInput, UnitsAreConverted)
{
    EXPECT_NEAR(valuesOf("co2 6.6 temp=77F").value(u"temp"_s).number, 25.0, 1e-9);
    EXPECT_NEAR(valuesOf("co2 6.6 \"1.42661 meq/L\"").value(u"kh"_s).number, 4.0, 1e-4);
    EXPECT_NEAR(valuesOf("co2 6.6 \"71.4 mg/L CaCO3\"").value(u"kh"_s).number, 4.0, 1e-3);
    EXPECT_NEAR(valuesOf("nitrite \"1 mg/L N\"").value(u"no2"_s).number, 3.284429, 1e-5);
    EXPECT_NEAR(valuesOf("nitrite \"1 mg/L NO₂\"").value(u"no2"_s).number, 1.0, 1e-12);
    EXPECT_NEAR(valuesOf("nitrite 1 litres=20gal").value(u"litres"_s).number, 75.70823568, 1e-9);
    EXPECT_NEAR(valuesOf("nitrite 1 litres=20impgal").value(u"litres"_s).number, 90.9218, 1e-9);
    EXPECT_NEAR(valuesOf("target 80 20 litres=470L").value(u"litres"_s).number, 470.0, 1e-12);
    EXPECT_NEAR(valuesOf("change 80 30%").value(u"share"_s).number, 30.0, 1e-12);
    EXPECT_NE(refusal("co2 6.6 4furlong").find("has no unit \"furlong\""), std::string::npos);
}

TEST(TextInput, ChoicesAndSeries)
{
    EXPECT_EQ(valuesOf("dose 10 50 KH2PO4").value(u"salt"_s).text, u"kh2po4"_s);
    EXPECT_EQ(valuesOf("changes 60 50/20/30").value(u"shares"_s).series, (std::vector<double>{50, 20, 30}));
    EXPECT_EQ(valuesOf("changes 60 shares=50;20").value(u"shares"_s).series.size(), 2u);
    EXPECT_NE(refusal("dose 10 50 sugar").find("cannot be \"sugar\""), std::string::npos);
    EXPECT_NE(refusal("changes 60 50/200").find("must lie from 0 to 100"), std::string::npos);
}

TEST(TextInput, SlipsAreNamed)
{
    EXPECT_NE(refusal("c02 6.6 4").find("Did you mean \"co2\"?"), std::string::npos);
    EXPECT_NE(refusal("nonesuch").find("There is no sheet"), std::string::npos);
    EXPECT_NE(refusal("co2 tmp=25").find("Did you mean \"temp\"?"), std::string::npos);
    EXPECT_NE(refusal("co2 acid").find("is no number for \"pH\""), std::string::npos);
    EXPECT_NE(refusal("change 1,250 30").find("read in two ways"), std::string::npos);
    EXPECT_NE(refusal("light 50 8 0 2 9").find("one too many"), std::string::npos);
    EXPECT_NE(refusal("").find("Nothing was typed"), std::string::npos);
    EXPECT_NE(refusal("co2 6.6").find("\"KH\" is missing. Give kh="), std::string::npos);
}

} // namespace littoral::test
