// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/ammonia.h"
#include "core/water/change_plan.h"
#include "core/water/nitrite.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

const QString kMgN = u"mg/L N"_s;

/// What the level means, by the two figures of practice and handbook.
QString meaning(double free)
{
    if (free >= water::kFreeAmmoniaHarm.value) {
        return words("At or above 0.05 mg/L N: harms fish (UF/IFAS FA16). Change water, feed nothing, aerate.");
    }
    if (free >= water::kFreeAmmoniaTradeLimit.value) {
        return words("At or above 0.02 mg/L N: with animals, change half now and test again in two to four hours "
                     "(common practice).");
    }
    return words("Below 0.02 mg/L N.");
}

void criteria(Reckoner& in, double tan, double pH, double t)
{
    const auto chronic = water::chronicCriterion(pH, t);
    const auto acute = water::acuteCriterionSalmonidsAbsent(pH, t);
    if (!chronic || !acute) {
        in.note(words("The criteria of US EPA 2013 hold from pH 6.5 to 9 and 0 to 30 °C and are left out here."));
        return;
    }
    in.result(u"chronic"_s, words("US EPA 2013 criterion, mean of 30 days, total ammonia"), chronic->value, kMgN);
    in.result(u"acute"_s, words("US EPA 2013 criterion, mean of one hour, no trout"), acute->value, kMgN);
    if (tan > chronic->value) {
        in.note(words("Total ammonia lies above the 30-day criterion, which mussels and snails set."));
    }
}

void warnOfRise(Reckoner& in, double before, double later)
{
    if (later <= before) {
        return;
    }
    if (later >= water::kFreeAmmoniaTradeLimit.value) {
        in.note(words(
            "The change lowers total ammonia and still frees more of it, because the new water raises the pH: use "
            "softer or less alkaline water, smaller steps, or a conditioner that binds ammonia."));
    } else {
        in.note(words(
            "More of it is free afterwards, because the new water raises the pH, but it stays below 0.02 mg/L N."));
    }
}

void change(Reckoner& in, double tan, double pH, double t)
{
    if (!(in.number(u"share"_s) > 0.0)) {
        return;
    }
    if (!in.has(u"kh"_s) || !in.has(u"sph"_s) || !in.has(u"skh"_s)) {
        in.note(
            words("For the effect of a change give kh, sph and skh: acid mixes by alkalinity and carbon, not by pH."));
        return;
    }
    const auto hardness = [&](const QString& gh, const QString& kh) {
        return water::GermanDegrees{in.has(gh) ? in.number(gh) : in.number(kh)}.hardness();
    };
    const water::AmmoniaWater tank{
        {tan}, pH, water::GermanDegrees{in.number(u"kh"_s)}.alkalinity(), t, hardness(u"gh"_s, u"kh"_s)};
    const water::AmmoniaWater fresh{{in.number(u"stan"_s)},
                                    in.number(u"sph"_s),
                                    water::GermanDegrees{in.number(u"skh"_s)}.alkalinity(),
                                    in.maybe(u"stemp"_s).value_or(t),
                                    hardness(u"sgh"_s, u"skh"_s)};
    const auto after = in.take(
        u"sph"_s, water::ammoniaAfterChange(tank, fresh, in.share(u"share"_s), water::Co2{in.number(u"co2"_s)}));
    in.result(u"total-after"_s, words("Total ammonia after the change"), after.total.value, kMgN);
    in.result(u"ph-after"_s, words("pH right after it"), after.pH, {});
    in.result(u"free-after"_s, words("Free ammonia right after it"), after.freeAfter.value, kMgN);
    if (after.freeAfterGas) {
        in.result(u"ph-later"_s, words("pH once carbon dioxide is back at its usual level"), after.pHAfterGas, {});
        in.result(u"free-later"_s, words("Free ammonia then"), after.freeAfterGas->value, kMgN);
        in.move(words("pH"), pH, after.pHAfterGas, {});
        in.move(words("KH"), in.number(u"kh"_s), water::GermanDegrees::from(after.alkalinity).value, u"dKH"_s);
        warnOfRise(in, after.freeBefore.value, after.freeAfterGas->value);
    }
    in.write(changeEntry(in.share(u"share"_s)));
    in.write(changeTask(in.share(u"share"_s)));
    in.caution(u"C-ELEC"_s);
    in.caution(u"C-CHLOR"_s);
}

Result<void> ammonia(Reckoner& in)
{
    const double tan = in.number(u"tan"_s);
    const double pH = in.number(u"ph"_s);
    const double t = in.number(u"temp"_s);
    const auto share = water::unionisedFraction(pH, t);
    if (!share) {
        return refused(words("Free ammonia is reckoned from 0 to 50 °C and pH 2 to 13."),
                       words("Check the decimal mark of the pH."), u"ph"_s);
    }
    const double free = tan * *share;
    in.formula(words("pKa = 0.09018 + 2729.92 / (t + 273.15); free = total / (1 + 10^(pKa − pH))"));
    in.figures(
        words("pKa = 0.09018 + 2729.92 / ({temp} + 273.15) = {pka}; free = {tan} / (1 + 10^({pka} − {ph})) = {free}"));
    in.mainResult(u"free"_s, words("Free ammonia now"), free, kMgN);
    in.result(u"percent"_s, words("Share of the total that is free"), 100.0 * *share, u"%"_s);
    in.result(u"pka"_s, words("pKa"), *water::pKa(t), {});
    in.sentence(u"meaning"_s, words("What it means"), meaning(free));
    criteria(in, tan, pH, t);
    change(in, tan, pH, t);
    in.note(
        words("Dissolved salts lower the true share by 4 to 9 % in tap water: the figure errs on the cautious side. A "
              "conditioner that binds ammonia still shows in the kit."));
    return in.done();
}

Result<void> nitrite(Reckoner& in)
{
    const water::NitriteIon ion{in.number(u"no2"_s)};
    const double chloride = in.number(u"cl"_s);
    const double litres = in.number(u"litres"_s);
    const double ratio = in.number(u"ratio"_s);
    in.formula(words("salt = (ratio × nitrite − chloride) × 1.6485 × litres / 1000, never below 0"));
    in.figures(words("salt = ({ratio} × {no2} − {cl}) × 1.6485 × {litres} / 1000 = {salt} g"));
    in.mainResult(u"salt"_s, words("Sodium chloride"), water::saltNeeded_g(ion, chloride, litres, ratio), u"g"_s);
    in.result(u"needed"_s, words("Chloride to add"), water::chlorideNeeded_mg_per_L(ion, chloride, ratio), u"mg/L"_s);
    in.result(u"as-n"_s, words("Nitrite as nitrogen"), ion.asN().value, kMgN);
    const auto limits = water::nitriteLimits(chloride);
    if (limits) {
        in.result(u"limit"_s, words("Highest by the chloride of this water"), limits->highest.value, kMgN);
    }
    const double added = water::chlorideNeeded_mg_per_L(ion, chloride, ratio);
    in.move(words("Chloride"), chloride, chloride + added, u"mg/L"_s);
    in.move(words("Sodium"), std::nullopt, added * (water::kSaltPerChloride - 1.0), u"mg/L"_s,
            words("That much more than before."));
    in.note(words(
        "Kits print nitrite as the ion or as nitrogen: a factor of 3.28. Write \"no2=0.3 mg/L N\" for the second."));
    in.note(
        words("Chloride does not protect every fish; water changes do. Salt stays until it is changed out, and some "
              "plants and snails suffer (common practice)."));
    in.write(doseEntry(words("sodium chloride"), water::saltNeeded_g(ion, chloride, litres, ratio), u"g"_s));
    in.caution(u"C-SALTS"_s);
    in.caution(u"C-MED"_s);
    return in.done();
}

} // namespace

std::vector<Sheet> nitrogenSheets()
{
    const auto degrees = [](const QString& key, const QString& label, const QString& unit) {
        return Input::number(key, label, unit, 0, 60).mayBeEmpty();
    };
    const auto ph = [](const QString& key, const QString& label) { return Input::number(key, label, {}, 4, 11); };
    return {
        {u"ammonia"_s,
         words("Free ammonia, and what a change does to it"),
         words("how much of the total is poisonous, now and after refilling"),
         words("Nitrogen"),
         {
             Input::number(u"tan"_s, words("Total ammonia"), kMgN, 0, 60)
                 .filled(FillFrom::Reading, u"tan"_s, u"mg/L N"_s),
             ph(u"ph"_s, words("pH")).usually(0.1).filled(FillFrom::Reading, u"ph"_s),
             Input::number(u"temp"_s, words("Temperature"), u"°C"_s, 0, 45)
                 .usually(0.5)
                 .filled(FillFrom::Reading, u"temp"_s),
             Input::number(u"share"_s, words("Share changed"), u"%"_s, 0, 100).decided().presetTo(u"0"_s),
             degrees(u"kh"_s, words("KH of the tank"), u"dKH"_s)
                 .usually(0.5)
                 .filled(FillFrom::Reading, u"kh"_s, u"dKH"_s),
             ph(u"sph"_s, words("pH of the new water")).usually(0.1).mayBeEmpty().filled(FillFrom::Source, u"ph"_s),
             degrees(u"skh"_s, words("KH of the new water"), u"dKH"_s)
                 .usually(0.5)
                 .filled(FillFrom::Source, u"kh"_s, u"dKH"_s),
             Input::number(u"stan"_s, words("Total ammonia in the new water"), kMgN, 0, 60).presetTo(u"0"_s),
             Input::number(u"stemp"_s, words("Temperature of the new water"), u"°C"_s, 0, 45).mayBeEmpty(),
             degrees(u"gh"_s, words("GH of the tank"), u"dGH"_s).filled(FillFrom::Reading, u"gh"_s, u"dGH"_s),
             degrees(u"sgh"_s, words("GH of the new water"), u"dGH"_s).filled(FillFrom::Source, u"gh"_s, u"dGH"_s),
             Input::number(u"co2"_s, words("Carbon dioxide the tank returns to"), u"mg/L"_s, 0.3, 100).presetTo(u"3"_s),
         },
         words("Emerson, Russo, Lund and Thurston 1975, J. Fish. Res. Board Can. 32; US EPA 822-R-13-001 (2013); 0.05 "
               "mg/L: "
               "UF/IFAS FA16; 0.02 mg/L: common practice. Mixing by alkalinity and total carbon."),
         ammonia,
         u"1 7 25 50 kh=4 sph=7.5 skh=6"_s},
        {u"nitrite"_s,
         words("Salt against nitrite"),
         words("chloride keeps nitrite out of the gills"),
         words("Nitrogen"),
         {
             Input::number(u"no2"_s, words("Nitrite"), u"mg/L NO₂"_s, 0, 100)
                 .filled(FillFrom::Reading, u"no2"_s, u"mg/L NO2"_s),
             Input::number(u"cl"_s, words("Chloride in the water"), u"mg/L"_s, 0, 5000)
                 .presetTo(u"0"_s)
                 .filled(FillFrom::Reading, u"cl"_s),
             Input::number(u"litres"_s, words("Water in the tank"), u"L"_s, 0.5, 100000).filled(FillFrom::NetVolume),
             Input::number(u"ratio"_s, words("Chloride to nitrite, by mass"), {}, 1, 20).decided().presetTo(u"10"_s),
         },
         words("Durborow, Crosby and Brunson 1997, SRAC 462 (10 to 1, catfish); Tomasso 1986 (no protection in bass); "
               "limits "
               "by chloride: British Columbia, Nordin and Pommen, from memory."),
         nitrite,
         u"2 8 100"_s},
    };
}

} // namespace littoral::sheets
