// SPDX-License-Identifier: GPL-3.0-or-later
// Every sheet against a published or independently reckoned figure; the source stands beside the line.
#include "core/wording/caution_words.h"
#include "tests/sheets/reckon_line.h"

#include <set>

namespace littoral::test {

using namespace Qt::StringLiterals;

struct Case
{
    const char* line;
    const char* key;
    double expected;
    double tolerance; ///< absolute
    const char* source;
};

void PrintTo(const Case& one, std::ostream* out)
{
    *out << one.line << " -> " << one.key << " (" << one.source << ")";
}

class SheetFigure : public testing::TestWithParam<Case>
{
};

TEST_P(SheetFigure, AgreesWithItsSource)
{
    EXPECT_NEAR(valueOf(GetParam().line, GetParam().key), GetParam().expected, GetParam().tolerance)
        << GetParam().source;
}

INSTANTIATE_TEST_SUITE_P(
    Water, SheetFigure,
    testing::Values(
        Case{"volume 60 30 36 6 3 8.2944 40 4", "net", 48.381, 0.001, "plane geometry, by hand"},
        Case{"volume 60 30 36 6 3 8.2944 40 4", "label", 64.8, 1e-9, "60 x 30 x 36 cm"},
        Case{"volume 32 32 35.1 10 0 shape=cylinder", "net", 3.14159265 * 15 * 15 * 34.1 / 1000, 1e-4,
             "circle of 30 cm, 34.1 cm of water"},
        Case{"volume 92 37 44 10 3 shape=bow bow=10", "net", 150.2354, 0.001,
             "segment of a circle, 90 and 10 cm, 40 cm deep"},
        Case{"change 80 30 5", "after", 57.5, 1e-9, "mass balance"},
        Case{"changes now=60 shares=50/20/30 source=10", "after", 24.0, 1e-9, "mass balance, product of what is left"},
        Case{"changes now=60 shares=25;25", "single", 43.75, 1e-9, "two quarters are not a half"},
        Case{"target 80 20 5 litres=100 each=30", "share", 80.0, 1e-9, "mass balance"},
        Case{"target 80 20 5 litres=100 each=30", "count", 5, 0, "ln(15/75)/ln(0.7) = 4.51"},
        Case{"target 33 20 8 litres=470", "water", 244.4, 0.05, "13/25 of 470 L"},
        Case{"target 100 50 0 litres=1", "drip", 0.693147, 1e-5, "ln 2 volumes for half"},
        Case{"topup 6 60 0.42857143 6 15 6", "settled", 7.2, 1e-6, "6 (1 + 3/15)"},
        Case{"topup 6 60 0.42857143 6 15 6", "creep", 9.0, 1e-6, "6 + 3 x 6 x 10 / 60"},
        Case{"blend gh=14 sgh=0.2 tgh=6 kh=10 skh=0.1 tds=420 stds=8", "share", 57.971, 0.001, "linear mixing"},
        Case{"blend gh=14 sgh=0.2 tgh=6 kh=10 skh=0.1 tds=420 stds=8", "blend-kh", 4.2609, 0.001, "linear mixing"},
        Case{"raise kh 2 3 100 nahco3", "grams", 2.9961, 0.001, "IUPAC abridged atomic weights"},
        Case{"raise gh 4 5 100", "grams", 3.0701, 0.001, "gypsum, IUPAC abridged atomic weights"},
        Case{"raise gh 4 5 100 mgso4", "grams", 4.3951, 0.001, "IUPAC abridged atomic weights"},
        Case{"remineralise 1000 cl=0 scale=0.001", "caso4", 128.8717, 0.05, "Ca 30 mg/L from gypsum alone"},
        Case{"remineralise 1000 cl=0 scale=0.001", "mgso4", 81.1244, 0.01, "Mg 8 mg/L from Epsom salt"},
        Case{"remineralise 1000 cl=0 scale=0.001", "nahco3", 57.6538, 0.05, "the rest of 3 degrees after K 15 mg/L"},
        Case{"rock 8 8 40 5", "excess", 3.0, 1e-9, "r / f"},
        Case{"rock 8 8 40 0 co2=29.94 temp=25", "end-kh", 11.869, 0.12,
             "PHREEQC 3, calcite in pure water, 0.02 atm CO2"},
        Case{"rock 8 8 40 0 co2=0.615 temp=25", "end-gh", 3.024, 0.075, "PHREEQC 3, calcite in pure water, air"},
        Case{"heater 25 19 60 30 36 60", "power", 34.776, 1e-6, "7 x 0.828 x 6"},
        Case{"heater 25 19 60 30 36 60", "cooling", 12.004, 0.03, "m c / (U A)"},
        Case{"heater 25 19 60 30 36 60 evaporation=0.5", "vapour", 14.095, 0.03, "2440 kJ/kg, from memory"}));

INSTANTIATE_TEST_SUITE_P(
    NitrogenAndPlants, SheetFigure,
    testing::Values(
        Case{"ammonia 1 8 24", "free", 0.0502, 0.0001, "UF/IFAS FA16, worked example"},
        Case{"ammonia 1 7 20", "chronic", 1.9, 0.05, "US EPA 822-R-13-001"},
        Case{"ammonia 1 7 20", "acute", 17.0, 0.5, "US EPA 822-R-13-001"},
        // 10 dKH of pH 7.8 and 1 dKH of pH 6.0, half and half: 6.975 by PHREEQC's MIX; hardness as there.
        Case{"ammonia 1 6.0 25 50 kh=1 sph=7.8 skh=10 gh=0.56 sgh=6.73", "ph-after", 6.975, 0.02, "PHREEQC 3, MIX"},
        Case{"nitrite 2 8 100", "salt", 1.97822, 0.0002, "SRAC 462, ten to one"},
        Case{"co2 6.6 4", "chart", 35.4577, 0.004, "Plummer and Busenberg 1982, chart model"},
        Case{"co2 6.8 2.80145 25", "chart", 15.65, 0.16, "Tucker 1984, 50 mg/L as CaCO3 at pH 6.8"},
        Case{"co2 6.6 4 25 gh=6.0 phbase=7.6 base=3", "co2", 32.765, 0.66, "PHREEQC 3, tank water of 4 dKH and 6 dGH"},
        Case{"co2 6.6 4 25 phbase=7.6 base=3", "drop", 30.0, 1e-9, "one unit is a factor of ten"},
        Case{"co2 6.6 4 25 indicator=6.6538", "drops", 30.007, 0.15, "PHREEQC 3, 4 dKH reference"},
        Case{"co2 6.6 4 20 indicator=6.6840", "drops", 30.0, 0.2, "PHREEQC 3, 4 dKH reference at 20 degrees"},
        Case{"co2 6.6 4 25", "air", 0.6165, 0.002, "PHREEQC 3, 425 ppm"},
        Case{"dose 10 50", "grams", 10 * 50 / 613.28, 1e-4, "IUPAC abridged atomic weights"},
        Case{"salt 1 1 kno3", "rise-1", 613.28, 0.01, "IUPAC abridged atomic weights"},
        Case{"salt 1 1 khco3", "rise-5", 390.535, 0.01, "IUPAC abridged atomic weights"},
        Case{"stock 2 60 30 500", "ml", 2 * 60 / 613.28 * 500 / 30, 1e-4, "IUPAC abridged atomic weights"},
        Case{"stock 2 60 31.6 100", "saturation", 100.0, 1e-6, "handbook: 31.6 g in 100 g of water at 20 degrees"},
        Case{"accumulate 2 50", "peak", 4.0, 1e-9, "geometric series"},
        Case{"accumulate 2 50 intervals=4", "later", 3.75, 1e-9, "geometric series"},
        Case{"accumulate 15 30 uptake=8", "peak", 31.33333, 1e-4, "(d - u (1 - f)) / f"},
        Case{"accumulate 15 25", "settle", 11, 0, "ln 0.05 / ln 0.75 = 10.4"},
        Case{"light 38.1 12", "sum", 1.6, 0.05, "example of an instrument maker"},
        Case{"light 50 8", "sum", 1.44, 1e-9, "50 x 8 x 0.0036"},
        Case{"cylinder 2121 2100 7 1600", "left", 166.667, 0.001, "500 g at 3 g a day"},
        Case{"cylinder 2670 2600 7 1600 room=25", "share", 2.22, 0.03, "1 kg of ideal gas in 25 cubic metres"}));

INSTANTIATE_TEST_SUITE_P(
    AnimalsAndHygiene, SheetFigure,
    testing::Values(
        Case{"acclimate 0.5 300 120 100 3", "drip", 10.0, 1e-9, "(3 - 1) x 500 mL / 100 min"},
        Case{"acclimate 0.5 300 120 100 3", "end", 180.0, 1e-9, "a third old, two thirds new"},
        Case{"acclimate 0.5 300 120 tan=3 kh=5.6077 temp=24", "free-open", 0.0963, 0.001, "Emerson 1975 at pH 7.80"},
        Case{"acclimate 0.5 300 120 tan=3 kh=5.6077 temp=24", "ph-closed", 6.4998, 0.005, "Davies model, 60 mg/L CO2"},
        Case{"stocking 1 100 45", "load", 0.414, 1e-6, "Timmons and Ebeling 2013 as quoted: 41.4 mg N of 1 g"},
        Case{"oxygen 25", "saturation", 8.26, 0.006, "EN 25814"},
        Case{"oxygen 16", "saturation", 9.87, 0.006, "EN 25814"},
        Case{"oxygen 25 height=1000", "saturation", 7.300, 0.002, "Benson and Krause 1984, standard atmosphere"},
        Case{"oxygen 26 6.5", "percent", 80.11, 0.01, "Benson and Krause 1984"},
        Case{"oxygen 25 respiration=0.4 production=1.2", "dawn", 6.7397, 0.001, "Odum 1956, closed form"},
        Case{"chlorine 2 50", "grams", 0.700, 0.001, "an instrument maker: 7.0 mg per mg"},
        Case{"chlorine 4 50 chloramine tank=100", "ammonia", 0.7902, 0.0002, "one NH2Cl counts as one Cl2"},
        Case{"chlorine 4 50 chloramine tank=100", "rise", 0.3951, 0.0002, "half of the tank changed"},
        Case{"dip 5 19 1", "strength", 2381.14, 0.1, "50 g/L of hypochlorite, 1 + 19"},
        Case{"dip 5 20 1", "strength", 2267.76, 0.1, "1 + 20"},
        Case{"dip 5 19 2", "bleach", 100.0, 1e-9, "a twentieth of 2 L"},
        Case{"dip 5 19 1", "quench", 16.669, 0.01, "7.00 mg per mg"}));

TEST(Sheets, AreAllThereAndSound)
{
    std::set<QString> keys;
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        EXPECT_TRUE(keys.insert(sheet.key).second) << sheet.key.toStdString();
        EXPECT_FALSE(sheet.title.isEmpty() || sheet.purpose.isEmpty() || sheet.group.isEmpty() ||
                     sheet.source.isEmpty())
            << sheet.key.toStdString();
        std::set<QString> blanks;
        for (const sheets::Input& input : sheet.inputs) {
            EXPECT_TRUE(blanks.insert(input.key).second) << sheet.key.toStdString() << ' ' << input.key.toStdString();
            EXPECT_FALSE(input.label.isEmpty());
            if (!input.preset.isEmpty()) {
                const auto preset = sheets::parseValue(input, input.preset);
                ASSERT_TRUE(preset) << input.key.toStdString();
                if (input.kind == sheets::InputKind::Number) {
                    EXPECT_GE(preset->number, input.lowest) << input.key.toStdString();
                    EXPECT_LE(preset->number, input.highest) << input.key.toStdString();
                }
            }
            if (input.kind != sheets::InputKind::Choice) {
                EXPECT_LT(input.lowest, input.highest) << input.key.toStdString();
            }
        }
    }
    for (const char* key : {"volume", "change",     "changes", "target",   "ammonia", "co2",      "dose", "salt",
                            "stock",  "accumulate", "blend",   "raise",    "rock",    "chlorine", "dip",  "acclimate",
                            "oxygen", "heater",     "topup",   "cylinder", "light",   "stocking"}) {
        EXPECT_TRUE(keys.contains(QString::fromLatin1(key))) << key;
    }
}

TEST(Sheets, RefuseAllEmptyBlanksWithTheirNameUnlessNothingIsNeeded)
{
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        const auto answer = sheets::evaluate(sheet, {});
        ASSERT_FALSE(answer) << sheet.key.toStdString();
        EXPECT_FALSE(answer.error().mend.empty()) << sheet.key.toStdString();
    }
}

/// What people are shown must not hold a blank that was not filled, nor a figure that is not a number.
TEST(Sheets, TextIsWhole)
{
    for (const char* line : {"volume 60 30 36",
                             "change 80 30",
                             "changes 60 50/20",
                             "target 80 20",
                             "ammonia 1 7 25",
                             "nitrite 2 8 100",
                             "co2 6.6 4",
                             "dose 10 50",
                             "salt 1 100",
                             "salt 1 100 urea",
                             "stock 2 60 30 500",
                             "accumulate 2 50",
                             "accumulate 2 50 uptake=1",
                             "blend 14 0 6",
                             "blend 14 0 6 kh=10 tkh=4",
                             "raise gh 4 6 100",
                             "remineralise 100",
                             "rock 8 8 40 5",
                             "rock 6 5 40 5",
                             "chlorine 2 50",
                             "dip 5",
                             "acclimate 0.5 300 120",
                             "oxygen 25",
                             "heater 25 19 60 30 36 60",
                             "topup 6 60 0.4",
                             "cylinder 2121 2100 7 1600",
                             "light 50 8",
                             "stocking 1 100"}) {
        const sheets::Answer answer = reckon(line);
        EXPECT_FALSE(answer.formula.isEmpty() || answer.figures.isEmpty() || answer.source.isEmpty()) << line;
        EXPECT_FALSE(answer.figures.contains(u'{')) << line << ": " << answer.figures.toStdString();
        EXPECT_FALSE(answer.figures.contains(u"%1"_s)) << line;
        EXPECT_EQ(std::ranges::count(answer.results, true, &sheets::Figure::main), 1) << line;
        for (const sheets::Figure& figure : answer.results) {
            EXPECT_FALSE(figure.text.isEmpty()) << line << ' ' << figure.key.toStdString();
            EXPECT_FALSE(figure.text.contains(u"nan"_s)) << line;
        }
        EXPECT_EQ(wording::cautionsBefore(facts::builtInFacts(), answer.cautions).size(),
                  static_cast<std::size_t>(answer.cautions.size()))
            << line << ' ' << answer.cautions.join(u' ').toStdString();
        for (const QString& note : answer.notes) {
            EXPECT_TRUE(note.endsWith(u'.')) << note.toStdString();
        }
    }
}

TEST(Sheets, CautionsStandWhereHarmIsPossible)
{
    const auto cautions = [](const char* line) { return reckon(line).cautions; };
    EXPECT_TRUE(cautions("dip 5").contains(u"C-BLEACH"_s));
    EXPECT_TRUE(cautions("co2 6.6 4").contains(u"C-CO2"_s));
    EXPECT_TRUE(cautions("cylinder 2121 2100 7 1600").contains(u"C-CO2"_s));
    EXPECT_TRUE(cautions("volume 60 30 36").contains(u"C-LOAD"_s));
    EXPECT_TRUE(cautions("change 80 30").contains(u"C-ELEC"_s));
    EXPECT_TRUE(cautions("heater 25 19 60 30 36 60").contains(u"C-ELEC"_s));
    EXPECT_TRUE(cautions("chlorine 2 50").contains(u"C-CHLOR"_s));
    EXPECT_TRUE(cautions("dose 10 50").contains(u"C-SALTS"_s));
    EXPECT_TRUE(cautions("acclimate 0.5 300 120").contains(u"C-WASTE"_s));
}

TEST(Sheets, WhatTheyWriteIsWhatTheyReckoned)
{
    const sheets::Answer target = reckon("target 33 20 8 litres=470");
    ASSERT_TRUE(target.writes[0].task);
    EXPECT_NEAR(*target.writes[0].task->fraction, 0.52, 1e-12);
    ASSERT_TRUE(target.writes[1].entry);
    EXPECT_EQ(target.writes[1].entry->kind, record::EntryKind::WaterChange);
    const sheets::Answer dose = reckon("dose 10 50");
    EXPECT_EQ(dose.writes[0].entry->kind, record::EntryKind::Dose);
    EXPECT_EQ(dose.writes[0].entry->unit, u"g"_s);
    EXPECT_NEAR(*dose.writes[0].entry->amount, 0.8153, 1e-4);
    const sheets::Answer co2 = reckon("co2 6.6 4");
    ASSERT_TRUE(co2.writes[0].reading);
    EXPECT_EQ(co2.writes[0].reading->parameter, u"co2"_s);
    EXPECT_NEAR(co2.writes[0].reading->value, 34.0, 0.5);
    const sheets::Answer light = reckon("light 50 8");
    EXPECT_EQ(*light.writes[0].entry->amount, 8.0);
    EXPECT_EQ(*light.writes[0].entry->second, 50.0);
    EXPECT_NEAR(*reckon("stocking 2 100 40").writes[0].entry->proteinShare, 0.4, 1e-12);
}

TEST(Sheets, SayWhenAFigureIsOutsideItsReach)
{
    EXPECT_NE(refusal("co2 66 4").find("must lie from 4 to 10"), std::string::npos);
    EXPECT_NE(refusal("co2 6.6 0").find("says nothing about carbon dioxide"), std::string::npos);
    EXPECT_NE(refusal("target 80 4 5").find("source water itself"), std::string::npos);
    EXPECT_NE(refusal("blend 14 0 16").find("outside the two waters"), std::string::npos);
    EXPECT_NE(refusal("blend 14 0 6 tkh=4").find("needs the KH"), std::string::npos);
    EXPECT_NE(refusal("dose 10 50 now=20").find("more than the target already"), std::string::npos);
    EXPECT_NE(refusal("raise gh 4 6 100 khco3").find("brings none of that"), std::string::npos);
    EXPECT_NE(refusal("accumulate 15 0").find("without end"), std::string::npos);
    EXPECT_NE(refusal("cylinder 2100 2121 7 1600").find("did not get lighter"), std::string::npos);
    EXPECT_NE(refusal("cylinder 2100 2000 7 2050").find("empty weight"), std::string::npos);
    EXPECT_NE(refusal("volume 60 30 36 bed=200").find("Nothing is left"), std::string::npos);
    EXPECT_NE(refusal("volume 60 30 36 shape=bow bow=40").find("bow"), std::string::npos);
    EXPECT_NE(refusal("heater 20 25 60 30 36 60").find("room is warmer"), std::string::npos);
    EXPECT_NE(refusal("light 5 8 target=20").find("24 hours"), std::string::npos);
    const sheets::Answer soft = reckon("co2 6.6 1");
    EXPECT_TRUE(soft.notes.join(u' ').contains(u"Below 2 dKH"_s));
    EXPECT_TRUE(reckon("ammonia 1 6 24").notes.join(u' ').contains(u"criteria of US EPA 2013 hold"_s));
}

TEST(Sheets, AChangeThatFreesAmmoniaIsNamed)
{
    const sheets::Answer answer = reckon("ammonia 3 6.3 24 50 kh=1.1 sph=8 skh=11");
    EXPECT_GT(answer.find(u"free-later"_s)->value, answer.find(u"free"_s)->value);
    EXPECT_TRUE(answer.notes.join(u' ').contains(u"still frees more"_s));
}

} // namespace littoral::test
