// SPDX-License-Identifier: GPL-3.0-or-later
// What is doubtful stays doubtful: ranges by propagation, and no digit that the inputs do not deserve.
#include "core/sheets/reckoner.h"
#include "tests/sheets/reckon_line.h"

namespace littoral::test {

using namespace Qt::StringLiterals;
using sheets::deservedText;

// First-order propagation by hand: pH ±0.1 and KH 4 ±0.5 make 26.2 % (root of 0.2303² + 0.125²).
TEST(Doubt, Co2FromPhAndKh)
{
    const sheets::Answer answer = reckon("co2 6.6±0.1 4±0.5 25±0");
    const sheets::Figure chart = *answer.find(u"chart"_s);
    ASSERT_TRUE(chart.low && chart.high);
    const double mean = 0.5 * (*chart.high - *chart.low) / chart.value;
    EXPECT_NEAR(mean, 0.262, 0.01);
    EXPECT_GT(*chart.high - chart.value, chart.value - *chart.low); // a power of ten reaches further up
    EXPECT_EQ(chart.text, u"35"_s);
}

// And pH ±0.2, KH 1 ±0.5 make 68 %: one figure at the most.
TEST(Doubt, SoftWater)
{
    const sheets::Answer answer = reckon("co2 6.6±0.2 1±0.5 25±0");
    const sheets::Figure chart = *answer.find(u"chart"_s);
    EXPECT_NEAR(0.5 * (*chart.high - *chart.low) / chart.value, 0.68, 0.04);
    EXPECT_LE(chart.text.size(), 1);
}

TEST(Doubt, SmallerErrorsGiveMoreDigitsAndNarrowerRanges)
{
    const auto width = [](const char* line) {
        const sheets::Answer answer = reckon(line);
        const sheets::Figure* figure = answer.find(u"co2"_s);
        return *figure->high - *figure->low;
    };
    EXPECT_LT(width("co2 6.6±0.02 4±0.1"), width("co2 6.6±0.1 4±0.5"));
    EXPECT_LT(width("co2 6.6±0.1 4±0.5"), width("co2 6.6±0.3 4±0.5"));
}

TEST(Doubt, DigitsFollowIt)
{
    EXPECT_EQ(deservedText(33.677, 9.0), u"34"_s);
    EXPECT_EQ(deservedText(33.677, 0.4), u"33.7"_s);
    EXPECT_EQ(deservedText(33.677, 14.0), u"34"_s); // a doubt of 1 or 2 keeps one digit more
    EXPECT_EQ(deservedText(1252.3, 40.0), u"1250"_s);
    EXPECT_EQ(deservedText(1252.3, 0.0), u"1250"_s); // never more than three figures
    EXPECT_EQ(deservedText(0.0501713, 0.02), u"0.050"_s);
    EXPECT_EQ(deservedText(50.0, 0.0), u"50"_s); // no idle zeros
    EXPECT_EQ(deservedText(0.06, 0.0), u"0.06"_s);
    EXPECT_EQ(deservedText(0.0, 0.0), u"0"_s);
    EXPECT_EQ(deservedText(-72.04, 0.0), u"−72"_s);
}

TEST(Doubt, TypedDigitsAreTakenAtTheirWord)
{
    // 10 mg/L into 50 L: a target is exact, litres to half a litre: 1 % of 0.8153 g.
    EXPECT_EQ(reckon("dose 10 50").find(u"grams"_s)->text, u"0.815"_s);
    EXPECT_EQ(reckon("dose 10 5").find(u"grams"_s)->text, u"0.082"_s);
    EXPECT_EQ(reckon("nitrite 2 8 100").find(u"salt"_s)->text, u"1.98"_s);
    // Only a known doubt is shown as a range; typed digits are not evidence of one.
    EXPECT_TRUE(reckon("dose 10 50").find(u"grams"_s)->range.isEmpty());
    EXPECT_FALSE(reckon("dose 10 50±5").find(u"grams"_s)->range.isEmpty());
}

TEST(Doubt, AlsoOfWhatElseMoves)
{
    const sheets::Answer answer = reckon("change 80 50 5 gh=8±0.5 sgh=14");
    ASSERT_EQ(answer.moves.size(), 1u);
    EXPECT_EQ(answer.moves[0].after, u"11.0"_s);
    EXPECT_EQ(answer.moves[0].before, u"8.0"_s);
}

TEST(Doubt, CylinderWeighedToFiveGrams)
{
    // 21 ±7.07 g in a week: 3.0 ±1.0 g a day.
    const sheets::Answer answer = reckon("cylinder 2121 2100 7 1600");
    const sheets::Figure use = *answer.find(u"use"_s);
    EXPECT_NEAR(*use.high - use.value, 1.01, 0.01);
    EXPECT_EQ(use.text, u"3.0"_s);
}

} // namespace littoral::test
