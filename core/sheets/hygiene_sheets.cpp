// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/chlorine.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

Result<void> chlorine(Reckoner& in)
{
    const water::ChlorineAsCl2 residual{in.number(u"chlorine"_s)};
    const double litres = in.number(u"litres"_s);
    const double grams = in.take(u"chlorine"_s, water::thiosulfate_g(residual, litres));
    in.formula(words("thiosulfate = 7.00 × chlorine × litres / 1000"));
    in.figures(words("7.00 × {chlorine} × {litres} / 1000 = {grams} g"));
    in.mainResult(u"grams"_s, words("Sodium thiosulfate pentahydrate"), grams, u"g"_s);
    in.result(u"sulfate-way"_s, words("If all went on to sulfate, as little as"),
              grams * water::kThiosulfatePerChlorineSulfate / water::kThiosulfatePerChlorine, u"g"_s);
    if (in.choice(u"kind"_s) == u"chloramine"_s) {
        const double freed = water::ammoniaFromChloramine(residual).value;
        in.result(u"ammonia"_s, words("Ammonia left in the new water"), freed, u"mg/L N"_s);
        if (const auto tank = in.maybe(u"tank"_s)) {
            in.result(u"rise"_s, words("Ammonia it brings to the tank"), freed * litres / *tank, u"mg/L N"_s);
        }
        in.note(words("Thiosulfate breaks chloramine and leaves its ammonia: use a conditioner that binds it, and "
                      "count it in the "
                      "sheet \"ammonia\"."));
    }
    in.note(words(
        "Dose by 7.0 mg per mg of chlorine; pages that say 1 or 3.5 reckon with reactions that do not happen at the pH "
        "of a tank. A conditioner from the shop is dosed by its label."));
    in.caution(u"C-CHLOR"_s);
    in.caution(u"C-SALTS"_s);
    in.write(doseEntry(words("sodium thiosulfate"), grams, u"g"_s));
    return in.done();
}

water::BleachBasis basisOf(const Reckoner& in)
{
    const QString basis = in.choice(u"basis"_s);
    if (basis == u"weight"_s) {
        return water::BleachBasis::HypochloriteByWeight;
    }
    return basis == u"available"_s ? water::BleachBasis::AvailableChlorine : water::BleachBasis::HypochloriteByVolume;
}

Result<void> dip(Reckoner& in)
{
    const auto bleach =
        in.take(u"percent"_s, water::bleachStrength(in.number(u"percent"_s), basisOf(in), in.number(u"density"_s)));
    const auto strength = in.take(u"parts"_s, water::dipStrength(bleach, in.number(u"parts"_s)));
    const double litres = in.number(u"litres"_s);
    const double mL = in.take(u"parts"_s, water::bleachFor_mL(bleach, strength, litres));
    if (const auto good = in.done(); !good) {
        return good;
    }
    in.formula(words("bleach = volume / (1 + parts of water); chlorine = strength / (1 + parts)"));
    in.figures(words("{litres} L / (1 + {parts}) = {bleach} mL; {strength} mg/L of chlorine"));
    in.mainResult(u"bleach"_s, words("Bleach"), mL, u"mL"_s);
    in.result(u"water"_s, words("Cold water, into which the bleach goes"), litres * 1000.0 - mL, u"mL"_s);
    in.result(u"strength"_s, words("Available chlorine in the dip"), strength.value, u"mg/L"_s);
    in.result(u"quench"_s, words("Sodium thiosulfate pentahydrate to quench all of it"),
              in.take(u"parts"_s, water::thiosulfate_g(strength, litres)), u"g"_s);
    in.sentence(u"tough"_s, words("Tough leaves, wood, rock"),
                words("2 to 3 minutes for plants, 15 to 30 for bare rock"));
    in.sentence(u"stems"_s, words("Stems"), words("about 1 minute, one stem first"));
    in.sentence(u"fine"_s, words("Mosses and thin leaves"), words("do not dip; quarantine instead"));
    in.note(words("\"1:20\" may mean 19 or 20 parts of water: this sheet counts parts of water to one of bleach. "
                  "Bleach loses half "
                  "its strength in months. Times: common practice, no published source."));
    in.caution(u"C-BLEACH"_s);
    in.caution(u"C-WASTE"_s);
    in.caution(u"C-HOME"_s);
    in.write(upkeepEntry(words("Write this dip to the record"), words("disinfectant dip"),
                         words("{bleach} mL of bleach in {litres} L.")));
    return in.done();
}

} // namespace

std::vector<Sheet> hygieneSheets()
{
    return {
        {u"chlorine"_s,
         words("Chlorine and conditioner"),
         words("what the new water needs, and the ammonia it brings"),
         words("Hygiene"),
         {Input::number(u"chlorine"_s, words("Chlorine, as Cl₂"), u"mg/L"_s, 0, 20),
          Input::number(u"litres"_s, words("New water"), u"L"_s, 0.1, 100000),
          Input::choice(u"kind"_s, words("Kind"),
                        {{u"chlorine"_s, words("chlorine")}, {u"chloramine"_s, words("chloramine")}}),
          Input::number(u"tank"_s, words("Water in the tank"), u"L"_s, 0.5, 100000)
              .mayBeEmpty()
              .filled(FillFrom::NetVolume)},
         words("Stoichiometry, two thiosulfate to one chlorine (tetrathionate); an instrument maker prints 7.0. "
               "Ammonia of "
               "chloramine: one NH2Cl counts as one Cl2."),
         chlorine,
         u"2 50"_s},
        {u"dip"_s,
         words("Disinfectant dip"),
         words("for plants and hardscape before they go in"),
         words("Hygiene"),
         {Input::number(u"percent"_s, words("Bleach, as the label says"), u"%"_s, 0.5, 20),
          Input::number(u"parts"_s, words("Parts of water to one of bleach"), {}, 1, 200).decided().presetTo(u"19"_s),
          Input::number(u"litres"_s, words("Dip"), u"L"_s, 0.05, 500).decided().presetTo(u"2"_s),
          Input::choice(u"basis"_s, words("The label's per cent is"),
                        {{u"volume"_s, words("g of hypochlorite in 100 mL")},
                         {u"weight"_s, words("g of hypochlorite in 100 g")},
                         {u"available"_s, words("g of available chlorine in 100 g")}}),
          Input::number(u"density"_s, words("Density of the bleach"), u"kg/L"_s, 1.0, 1.3)
              .presetTo(u"1.1"_s)
              .usually(0.05)},
         words("Stoichiometry: 0.9525 g of available chlorine per g of hypochlorite. Strength and times: common "
               "practice."),
         dip,
         u"5"_s},
    };
}

} // namespace littoral::sheets
