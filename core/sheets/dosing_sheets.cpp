// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/salt_words.h"
#include "core/water/dosing.h"

#include <algorithm>
#include <cmath>

namespace littoral::sheets {

using namespace Qt::StringLiterals;
using water::Nutrient;

namespace {

const QString kMg = u"mg/L"_s;
constexpr double kNearlySaturated = 0.8;

Result<void> doseToTarget(Reckoner& in)
{
    const double rise = in.number(u"target"_s) - in.number(u"now"_s);
    if (rise < 0.0) {
        return refused(words("There is more than the target already."), words("A water change lowers it."),
                       u"target"_s);
    }
    const water::Salt& salt = saltOf(in);
    const double litres = in.number(u"litres"_s);
    const double grams = in.take(u"salt"_s, water::gramsFor(salt, nutrientOf(in), rise, litres));
    const double each = water::milligramsPerGram(salt, nutrientOf(in));
    if (const auto good = in.done(); !good) {
        return good;
    }
    in.formula(words("grams = (target − now) × litres / mg per gram of salt"));
    in.figures(words("grams = ({target} − {now}) × {litres} / {each} = {grams} g"));
    in.mainResult(u"grams"_s, words("Weigh out"), grams, u"g"_s);
    in.result(u"each"_s, words("One gram holds"), each, u"mg"_s);
    const double step = in.number(u"scale"_s);
    const double weighed = std::round(grams / step) * step;
    in.result(u"reached"_s, words("Level reached with what the scale can weigh"),
              in.number(u"now"_s) + weighed * each / litres, kMg);
    moveAll(in, salt, grams, litres, nutrientOf(in));
    if (grams < 5.0 * step) {
        in.note(words("The scale is too coarse for this: make a stock solution."));
    }
    saltCautions(in, salt);
    in.write(doseEntry(in.choiceLabel(u"salt"_s), grams, u"g"_s));
    return in.done();
}

Result<void> bySalt(Reckoner& in)
{
    const water::Salt& salt = saltOf(in);
    const double grams = in.number(u"grams"_s);
    const double litres = in.number(u"litres"_s);
    in.formula(words("rise = grams × mg per gram of salt / litres"));
    bool first = true;
    for (const Nutrient nutrient : water::kNutrients) {
        const double rise = in.take(u"salt"_s, water::riseFrom(salt, nutrient, grams, litres));
        const QString name = nutrientName(nutrient);
        if (rise > 0.0 && !name.isEmpty() && nutrient != Nutrient::Nitrogen && nutrient != Nutrient::Phosphorus) {
            const QString key = u"rise-%1"_s.arg(static_cast<int>(nutrient));
            if (first) {
                in.mainResult(key, name, rise, kMg);
                in.figures(words("{grams} × %1 / {litres} = {%2}")
                               .arg(plainText(water::milligramsPerGram(salt, nutrient)), key));
                first = false;
            } else {
                in.result(key, name, rise, kMg);
            }
        }
    }
    if (first) { // urea: nitrogen only
        in.mainResult(u"rise-n"_s, words("Nitrogen, all forms"),
                      in.take(u"salt"_s, water::riseFrom(salt, Nutrient::Nitrogen, grams, litres)), kMg);
        in.figures(words("{grams} g in {litres} L = {rise-n}"));
    }
    if (const double gh = water::hardnessPerGram_dGH(salt); gh > 0.0) {
        in.result(u"gh"_s, words("GH"), grams * gh / litres, u"dGH"_s);
    }
    if (const double kh = water::alkalinityPerGram_dKH(salt); kh > 0.0) {
        in.result(u"kh"_s, words("KH"), grams * kh / litres, u"dKH"_s);
    }
    saltCautions(in, salt);
    in.write(doseEntry(in.choiceLabel(u"salt"_s), grams, u"g"_s));
    return in.done();
}

void solubility(Reckoner& in, const water::Salt& salt, const water::Stock& stock)
{
    const auto share = water::saturationShare(salt, stock);
    if (!share) {
        in.note(
            words("How much of this salt dissolves is not in the table: look for crystals after a night in the cool."));
        return;
    }
    in.result(u"saturation"_s, words("Of what dissolves at 20 °C"), 100.0 * *share, u"%"_s);
    if (*share > 1.0) {
        in.note(words("So much does not dissolve: use more water or less salt."));
    } else if (*share > kNearlySaturated) {
        in.note(words("Near the limit: a cool cupboard brings crystals. Use more water."));
    }
    in.note(words("Solubility: %1. Salts that share an ion lower each other's.")
                .arg(QCoreApplication::translate("Water", std::string(salt.solubilitySource).c_str())));
}

Result<void> byStock(Reckoner& in)
{
    const water::Salt& salt = saltOf(in);
    const water::Stock stock{in.number(u"grams"_s), in.number(u"water"_s)};
    const double litres = in.number(u"litres"_s);
    const double mL =
        in.take(u"salt"_s, water::stockMillilitresFor(salt, stock, nutrientOf(in), in.number(u"rise"_s), litres));
    if (const auto good = in.done(); !good) {
        return good;
    }
    in.formula(words("mL = rise × litres / mg per gram × bottle mL / bottle grams"));
    in.figures(words("mL = {rise} × {litres} / %1 × {water} / {grams} = {ml}")
                   .arg(plainText(water::milligramsPerGram(salt, nutrientOf(in)))));
    in.mainResult(u"ml"_s, words("Give each time"), mL, u"mL"_s);
    in.result(u"per-ml"_s, words("One mL raises the tank by"), in.number(u"rise"_s) / mL, kMg);
    in.result(u"doses"_s, words("Doses in the bottle"), stock.water_mL / mL, {});
    solubility(in, salt, stock);
    moveAll(in, salt, mL * stock.grams / stock.water_mL, litres, nutrientOf(in));
    in.note(words(
        "Dissolve in less water and fill up to the mark. Calcium apart from sulfate and phosphate, iron apart from "
        "phosphate."));
    saltCautions(in, salt);
    in.write(doseEntry(in.choiceLabel(u"salt"_s), mL, u"mL"_s));
    return in.done();
}

water::DosePlan planOf(const Reckoner& in)
{
    water::DosePlan plan;
    plan.dose = in.number(u"dose"_s);
    plan.fraction = in.share(u"share"_s);
    plan.source = in.number(u"source"_s);
    plan.start = in.number(u"now"_s);
    plan.uptake = in.number(u"uptake"_s);
    plan.uptakeRate_per_d = in.share(u"rate"_s);
    plan.intervalDays = in.number(u"days"_s);
    return plan;
}

Result<void> accumulate(Reckoner& in)
{
    const water::DosePlan plan = planOf(in);
    const auto ceiling = in.take(u"share"_s, water::doseCeiling(plan));
    if (const auto good = in.done(); !good) {
        return good;
    }
    const bool simple = plan.uptake == 0.0 && plan.uptakeRate_per_d == 0.0 && plan.fraction > 0.0;
    in.formula(
        simple
            ? words("peak = source + dose / share")
            : words("each interval: uptake as far as there is any, then the change, then the dose, until it repeats"));
    in.figures(simple ? words("peak = {source} + {dose} / {share} % = {peak}")
                      : words("{dose} given, {uptake} taken up, {share} % changed every {days} days: {peak}"));
    in.mainResult(u"peak"_s, words("Highest once settled, just after the dose"), ceiling.afterDose, kMg);
    in.result(u"trough"_s, words("Lowest, just after the change"), ceiling.afterChange, kMg);
    if (plan.fraction > 0.0) {
        in.count(u"settle"_s, words("Intervals until within 5 % of that, without uptake"),
                 in.take(u"share"_s, water::intervalsToSettle(plan.fraction)), {});
    }
    const int intervals = static_cast<int>(in.number(u"intervals"_s));
    const std::vector<water::DoseStep> steps = water::doseSteps(plan, intervals);
    in.result(u"later"_s, words("After %1 intervals").arg(intervals), steps.back().afterDose, kMg);
    QStringList peaks;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const QString key = u"peak-%1"_s.arg(i);
        in.part(key, steps[i].afterDose);
        peaks << u'{' + key + u'}';
    }
    in.sentence(u"course"_s, words("Peaks, interval by interval"), peaks.join(u", "_s));
    if (ceiling.beforeChange <= 0.0) {
        in.note(words("The plants take up all of it before each change: they could use more."));
    }
    in.note(words("The order, change before dose, moves peak and trough but not the ceiling."));
    in.caution(u"C-SALTS"_s);
    in.write(noteEntry(words("This dosing and changing settles between {trough} and {peak} mg/L.")));
    return in.done();
}

Input scaleInput()
{
    return Input::number(u"scale"_s, words("Step of the scale"), u"g"_s, 0.001, 10).decided().presetTo(u"0.1"_s);
}

} // namespace

std::vector<Sheet> dosingSheets()
{
    const auto level = [](const QString& key, const QString& label) { return Input::number(key, label, kMg, 0, 5000); };
    const Input salt = Input::choice(u"salt"_s, words("Salt"), saltChoices());
    const Input nutrient = Input::choice(u"nutrient"_s, words("Counted as"), nutrientChoices());
    const QString weights = words("Stoichiometry with IUPAC abridged atomic weights.");
    return {
        {u"dose"_s,
         words("Dose to a target"),
         words("grams of a salt for the level you want"),
         words("Plants"),
         {level(u"target"_s, words("Target")).decided(), netLitres(), salt, nutrient,
          level(u"now"_s, words("Now")).presetTo(u"0"_s).filled(FillFrom::Reading, u"@nutrient"_s), scaleInput()},
         weights,
         doseToTarget,
         u"10 50"_s},
        {u"salt"_s,
         words("What a weighed salt brings"),
         words("everything a dose raises, not only what it was meant for"),
         words("Plants"),
         {Input::number(u"grams"_s, words("Weighed"), u"g"_s, 0.001, 100000).decided(), netLitres(), salt},
         weights,
         bySalt,
         u"1 100"_s},
        {u"stock"_s,
         words("Dose from a stock solution"),
         words("how much of the bottle, and whether it all dissolves"),
         words("Plants"),
         {Input::number(u"rise"_s, words("Rise per dose"), kMg, 0.0001, 500).decided(), netLitres(),
          Input::number(u"grams"_s, words("Salt in the bottle"), u"g"_s, 0.001, 100000),
          Input::number(u"water"_s, words("Bottle filled up to"), u"mL"_s, 1, 100000), salt, nutrient},
         words("Stoichiometry with IUPAC abridged atomic weights; solubilities from handbooks, most from memory."),
         byStock,
         u"2 60 30 500"_s},
        {u"accumulate"_s,
         words("What accumulates"),
         words("where regular doses and changes end"),
         words("Plants"),
         {level(u"dose"_s, words("Rise per interval, all doses together")),
          Input::number(u"share"_s, words("Changed per interval"), u"%"_s, 0, 100).decided(),
          level(u"source"_s, words("In the new water")).presetTo(u"0"_s),
          level(u"uptake"_s, words("Taken up per interval")).presetTo(u"0"_s),
          level(u"now"_s, words("Now")).presetTo(u"0"_s),
          Input::number(u"days"_s, words("Interval"), u"d"_s, 0.1, 365).decided().presetTo(u"7"_s),
          Input::number(u"rate"_s, words("Taken up per day, of what is there"), u"%"_s, 0, 99).presetTo(u"0"_s),
          Input::number(u"intervals"_s, words("Intervals to look ahead"), {}, 1, 104).decided().presetTo(u"8"_s)},
         words("Geometric series; with uptake by running the plan on until it repeats."),
         accumulate,
         u"2 50"_s},
    };
}

} // namespace littoral::sheets
