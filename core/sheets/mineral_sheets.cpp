// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/salt_words.h"
#include "core/water/blend.h"
#include "core/water/hardness.h"

#include <array>
#include <cmath>

namespace littoral::sheets {

using namespace Qt::StringLiterals;
using water::Nutrient;

namespace {

constexpr double kMostPerDay = 2.0; // degrees a day with animals (common practice: 1 to 2)

/// Salts that raise either, the usual one first.
std::vector<Choice> raisers()
{
    std::vector<Choice> choices{{u"usual"_s, words("calcium sulfate for GH, sodium bicarbonate for KH")}};
    for (const Choice& choice : saltChoices()) {
        const water::Salt& salt = *water::findSalt(choice.code.toStdString());
        if (water::hardnessPerGram_dGH(salt) > 0.0 || water::alkalinityPerGram_dKH(salt) > 0.0) {
            choices.push_back(choice);
        }
    }
    return choices;
}

Result<void> raise(Reckoner& in)
{
    const double rise = in.number(u"target"_s) - in.number(u"now"_s);
    if (rise < 0.0) {
        return refused(words("It is above the target already."),
                       words("Blend with softer water: see the sheet \"blend\"."), u"target"_s);
    }
    const bool carbonate = in.choice(u"what"_s) == u"kh"_s;
    const bool usual = in.choice(u"salt"_s) == u"usual"_s;
    const water::Salt& salt = usual ? *water::findSalt(carbonate ? "nahco3" : "caso4") : saltOf(in);
    const QString saltName =
        usual ? QCoreApplication::translate("Water", std::string(salt.name).c_str()) : in.choiceLabel(u"salt"_s);
    const double litres = in.number(u"litres"_s);
    const double grams = in.take(u"salt"_s, carbonate ? water::gramsForAlkalinity(salt, rise, litres)
                                                      : water::gramsForHardness(salt, rise, litres));
    if (const auto good = in.done(); !good) {
        return good;
    }
    const double per = carbonate ? water::alkalinityPerGram_dKH(salt) : water::hardnessPerGram_dGH(salt);
    in.formula(words("grams = (target − now) × litres / degrees that a gram gives one litre"));
    in.figures(words("grams = ({target} − {now}) × {litres} / %1 = {grams} g").arg(plainText(per)));
    in.mainResult(u"grams"_s, words("Weigh out"), grams, u"g"_s);
    in.sentence(u"of"_s, words("Of"), saltName);
    in.result(u"degree"_s, words("For one degree"), litres / per, u"g"_s);
    moveAll(in, salt, grams, litres, std::nullopt);
    if (rise > kMostPerDay) {
        in.count(u"days"_s, words("Days to spread it over with animals"),
                 static_cast<int>(std::ceil(rise / kMostPerDay)), {});
    }
    if (salt.key == "caco3") {
        in.note(words("Calcium carbonate dissolves only slowly and only with carbon dioxide."));
    }
    if (salt.key == "k2co3") {
        in.note(words("Carbonate lifts the pH sharply: dissolve it well and give it in small parts."));
    }
    if (salt.key == "caso4") {
        in.note(words("Gypsum needs long stirring: about 2.6 g dissolve in a litre."));
    }
    in.note(words("At most one or two degrees a day with animals (common practice)."));
    saltCautions(in, salt);
    in.write(doseEntry(saltName, grams, u"g"_s));
    return in.done();
}

struct Line
{
    const char* key;
    const char* label;
};
constexpr std::array kRecipe{
    Line{"caso4", QT_TRANSLATE_NOOP("Sheets", "Calcium sulfate dihydrate")},
    Line{"cacl2", QT_TRANSLATE_NOOP("Sheets", "Calcium chloride dihydrate")},
    Line{"mgso4", QT_TRANSLATE_NOOP("Sheets", "Magnesium sulfate heptahydrate")},
    Line{"khco3", QT_TRANSLATE_NOOP("Sheets", "Potassium bicarbonate")},
    Line{"nahco3", QT_TRANSLATE_NOOP("Sheets", "Sodium bicarbonate")},
};

std::vector<water::MineralTarget> targetsOf(const Reckoner& in)
{
    std::vector<water::MineralTarget> targets{
        {Nutrient::Calcium, in.number(u"ca"_s), 0.0, 1.0},
        {Nutrient::Magnesium, in.number(u"mg"_s), 0.0, 1.0},
        {Nutrient::Potassium, in.number(u"k"_s), 0.0, 1.0},
        {Nutrient::Bicarbonate, in.number(u"kh"_s) * water::kBicarbonateMgPerDegree, 0.0, 1.0}};
    // Chloride decides between the two calcium salts; a wish, so that it does not push calcium aside.
    targets.push_back({Nutrient::Chloride, in.number(u"cl"_s), 0.0, 0.1});
    return targets;
}

Result<void> remineralise(Reckoner& in)
{
    std::vector<const water::Salt*> salts;
    for (const Line& line : kRecipe) {
        salts.push_back(water::findSalt(line.key));
    }
    const auto recipe = in.take(u"ca"_s, water::remineralise(salts, targetsOf(in)));
    if (const auto good = in.done(); !good) {
        return good;
    }
    const double litres = in.number(u"litres"_s);
    const double step = in.number(u"scale"_s);
    const std::vector<double> grams = water::weighable_g(recipe, litres, step);
    in.formula(words("the salts, none negative, that come nearest to all targets, each miss as a part of its target"));
    in.figures(words("for Ca {ca}, Mg {mg}, K {k} mg/L and KH {kh} in {litres} L"));
    for (std::size_t i = 0; i < kRecipe.size(); ++i) {
        const QString key = QString::fromLatin1(kRecipe[i].key);
        if (i == 0) {
            in.mainResult(key, words(kRecipe[i].label), recipe.salts_mg_per_L[i] * litres / 1000.0, u"g"_s);
        } else {
            in.result(key, words(kRecipe[i].label), recipe.salts_mg_per_L[i] * litres / 1000.0, u"g"_s);
        }
    }
    const auto reached = [&](Nutrient nutrient) {
        double sum = 0.0;
        for (std::size_t i = 0; i < salts.size(); ++i) {
            sum += grams[i] * water::milligramsPerGram(*salts[i], nutrient) / litres;
        }
        return sum;
    };
    const QString note = words("With what the scale can weigh.");
    for (const Nutrient nutrient : {Nutrient::Calcium, Nutrient::Magnesium, Nutrient::Potassium, Nutrient::Sulfate,
                                    Nutrient::Chloride, Nutrient::Sodium}) {
        in.move(nutrientName(nutrient), std::nullopt, reached(nutrient), u"mg/L"_s, note);
    }
    in.move(words("KH"), std::nullopt, water::carbonateHardness_dKH(reached(Nutrient::Bicarbonate)), u"dKH"_s, note);
    in.move(words("GH"), std::nullopt,
            water::generalHardness_dGH(reached(Nutrient::Calcium), reached(Nutrient::Magnesium)), u"dGH"_s, note);
    if (reached(Nutrient::Chloride) < 10.0) {
        in.note(words("Water with little chloride leaves fish open to nitrite: ask for some, with cl=."));
    }
    in.note(words("Its pH follows from the KH and the carbon dioxide it meets, not from the recipe."));
    in.caution(u"C-SALTS"_s);
    in.write(upkeepEntry(words("Write this recipe to the record"), words("demineralised water made up"),
                         words("In {litres} L, g: calcium sulfate {caso4}, calcium chloride {cacl2}, magnesium sulfate "
                               "{mgso4}, potassium bicarbonate {khco3}, sodium bicarbonate {nahco3}.")));
    return in.done();
}

} // namespace

std::vector<Sheet> mineralSheets()
{
    const auto mg = [](const QString& key, const QString& label) {
        return Input::number(key, label, u"mg/L"_s, 0, 500).decided();
    };
    return {
        {u"raise"_s,
         words("Raise GH or KH"),
         words("grams of a salt for so many degrees"),
         words("Water"),
         {Input::choice(u"what"_s, words("Raise"), {{u"gh"_s, words("GH")}, {u"kh"_s, words("KH")}}),
          Input::number(u"now"_s, words("Now"), u"°d"_s, 0, 60).filled(FillFrom::Reading, u"@what"_s),
          Input::number(u"target"_s, words("Target"), u"°d"_s, 0, 60).decided(), netLitres(),
          Input::choice(u"salt"_s, words("Salt"), raisers())},
         words("Stoichiometry with IUPAC abridged atomic weights; one German degree is 10 mg/L of CaO (DIN)."),
         raise,
         u"gh 4 6 100"_s},
        {u"remineralise"_s,
         words("Minerals for demineralised water"),
         words("a recipe of five salts"),
         words("Water"),
         {Input::number(u"litres"_s, words("Demineralised water"), u"L"_s, 0.1, 100000),
          mg(u"ca"_s, words("Calcium")).presetTo(u"30"_s), mg(u"mg"_s, words("Magnesium")).presetTo(u"8"_s),
          mg(u"k"_s, words("Potassium")).presetTo(u"15"_s),
          Input::number(u"kh"_s, words("KH"), u"dKH"_s, 0, 20).decided().presetTo(u"3"_s),
          mg(u"cl"_s, words("Chloride, if it can be had")).presetTo(u"15"_s),
          Input::number(u"scale"_s, words("Step of the scale"), u"g"_s, 0.001, 10).decided().presetTo(u"0.1"_s)},
         words("Least squares without negative amounts (Lawson and Hanson 1974); IUPAC abridged atomic weights."),
         remineralise,
         u"100"_s},
    };
}

} // namespace littoral::sheets
