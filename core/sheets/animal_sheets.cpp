// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/acclimation.h"
#include "core/water/ammonia.h"
#include "core/water/dilution.h"
#include "core/water/load.h"

#include <cmath>

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

constexpr double kDropsPerMl = 20.0; // common practice
constexpr double kFastTdsPerHour = 0.3;
constexpr double kLongHours = 6.0;
constexpr double kShortHours = 2.0;

/// The way to go by time under way and by difference (common practice).
QString advice(const Reckoner& in, double difference)
{
    if (in.number(u"hours"_s) > kLongHours) {
        return words(
            "Long under way: match the temperature, open the bag, and move the animals soon to clean water of like pH; "
            "no long drip in the bag's own water unless a conditioner binds its ammonia.");
    }
    if (in.number(u"hours"_s) <= kShortHours && std::abs(difference) <= 0.25) {
        return words("Short trip, small difference: float the bag for 15 to 20 minutes, then net the animals across.");
    }
    return words("Float for the temperature, then drip in a covered bucket, then net the animals across.");
}

void flip(Reckoner& in)
{
    const auto tan = in.maybe(u"tan"_s);
    if (!tan) {
        in.note(words("With the bag's total ammonia (tan=) the sheet reckons what opening it frees."));
        return;
    }
    const water::MeqPerL alkalinity = water::GermanDegrees{in.number(u"kh"_s)}.alkalinity();
    const water::Medium medium{in.number(u"temp"_s), 0.00125 * alkalinity.value};
    const auto bag =
        in.take(u"kh"_s, water::openBag({*tan}, alkalinity, {in.number(u"closed"_s)}, {in.number(u"open"_s)}, medium));
    in.result(u"ph-closed"_s, words("pH in the closed bag"), bag.pHClosed, {});
    in.result(u"ph-open"_s, words("pH minutes after opening"), bag.pHOpen, {});
    in.result(u"free-closed"_s, words("Free ammonia in the closed bag"), bag.freeClosed.value, u"mg/L N"_s);
    in.result(u"free-open"_s, words("Free ammonia after opening"), bag.freeOpen.value, u"mg/L N"_s);
    if (bag.freeOpen.value >= water::kFreeAmmoniaHarm.value) {
        in.note(words("Opening the bag frees enough ammonia to harm: out of the bag's water within minutes."));
    }
}

Result<void> acclimate(Reckoner& in)
{
    const double bag = in.number(u"bag"_s);
    const double times = in.number(u"times"_s);
    const double minutes = in.number(u"minutes"_s);
    const double own = in.number(u"bag-tds"_s);
    const double tank = in.number(u"tank-tds"_s);
    const double flow = in.take(u"times"_s, water::dripFlow_mL_per_min(bag, times, minutes));
    const double end = own / times + tank * (1.0 - 1.0 / times);
    const double rate = water::ratePerHour(own, end, minutes);
    in.formula(words("drip = (times − 1) × bag / minutes"));
    in.figures(words("drip = ({times} − 1) × {bag} L / {minutes} min = {drip} mL/min"));
    in.mainResult(u"drip"_s, words("Drip"), flow, u"mL/min"_s);
    in.result(u"drops"_s, words("In drops, 20 to the mL"), flow * kDropsPerMl / 60.0, u"/s"_s);
    in.result(u"left"_s, words("Left of the bag's water"), 100.0 / times, u"%"_s);
    in.result(u"end"_s, words("Dissolved solids at the end"), end, u"mg/L"_s);
    in.result(u"rate"_s, words("Change per hour"), rate, u"mg/L/h"_s);
    const double difference = own > 0.0 ? (tank - own) / own : 1.0;
    in.sentence(u"way"_s, words("The way to go"), advice(in, difference));
    if (std::abs(rate) > kFastTdsPerHour * std::max(own, 1.0)) {
        in.note(words("Faster than 30 % an hour: slower for shrimp and soft-water animals (common practice)."));
    }
    flip(in);
    in.note(words(
        "Not more than 2 °C an hour. Bag water never goes into the tank. Lights off for the evening, carbon dioxide "
        "lower by a fifth (common practice)."));
    in.caution(u"C-HANDS"_s);
    in.caution(u"C-ELEC"_s);
    in.caution(u"C-RELEASE"_s);
    in.caution(u"C-WASTE"_s);
    in.write(upkeepEntry(words("Write this acclimation to the record"), words("acclimation"),
                         words("Dripped {drip} mL/min for {minutes} min.")));
    return in.done();
}

Result<void> stocking(Reckoner& in)
{
    const double litres = in.number(u"litres"_s);
    const double nitrogen =
        in.take(u"feed"_s, water::feedNitrogen_mg_per_d(in.number(u"feed"_s), in.share(u"protein"_s)));
    const double perDay = nitrogen / litres;
    const double nitrate = in.take(u"litres"_s, water::nitratePerDay(nitrogen, litres)).mg_per_L * 7.0;
    in.formula(words("ammonia per day = feed × protein × 0.092 / litres"));
    in.figures(words("{feed} g × {protein} % × 0.092 × 1000 / {litres} L = {load} mg/L N a day"));
    in.mainResult(u"load"_s, words("Total ammonia that the filter and plants must take"), perDay, u"mg/L N/d"_s);
    in.result(u"mass"_s, words("As nitrogen"), nitrogen, u"mg/d"_s);
    in.result(u"nitrate"_s, words("Nitrate per week if plants take none"), nitrate, u"mg/L NO₃"_s);
    in.result(u"alkalinity"_s, words("KH used per week by nitrification"),
              7.0 *
                  water::GermanDegrees::from(in.take(u"litres"_s, water::alkalinityUsedPerDay(nitrogen, litres))).value,
              u"dKH"_s);
    if (const double share = in.share(u"share"_s); share > 0.0) {
        const auto level = water::steadyState(nitrate, share, in.number(u"source"_s));
        in.result(u"peak"_s, words("Nitrate just before a weekly change, once settled, without plants"), level->peak,
                  u"mg/L NO₃"_s);
    }
    in.note(words(
        "Growing fish excrete about 58 % of the nitrogen fed as ammonia; adults that no longer grow up to 72 %. Feed "
        "that nobody eats comes later and whole."));
    in.note(words("Add at most a quarter of the planned stock a week, the first fish a tenth to a seventh; test total "
                  "ammonia and "
                  "nitrite on days 1, 3 and 7 (common practice). Centimetres of fish per litre say nothing."));
    record::Entry entry;
    entry.kind = record::EntryKind::Feeding;
    entry.amount = in.number(u"feed"_s);
    entry.unit = u"g/d"_s;
    entry.proteinShare = in.share(u"protein"_s);
    in.write({words("Write this feeding to the record"), entry, std::nullopt, std::nullopt});
    in.caution(u"C-O2"_s);
    return in.done();
}

} // namespace

std::vector<Sheet> animalSheets()
{
    const auto solids = [](const QString& key, const QString& label) {
        return Input::number(key, label, u"mg/L"_s, 0, 10000);
    };
    return {
        {u"acclimate"_s,
         words("Acclimation"),
         words("drip, differences, and the ammonia in a long-closed bag"),
         words("Animals"),
         {Input::number(u"bag"_s, words("Water in the bag"), u"L"_s, 0.05, 200),
          solids(u"bag-tds"_s, words("Dissolved solids in the bag")),
          solids(u"tank-tds"_s, words("Dissolved solids in the tank")).filled(FillFrom::Reading, u"tds"_s),
          Input::number(u"minutes"_s, words("Time"), u"min"_s, 1, 1440).decided().presetTo(u"90"_s),
          Input::number(u"times"_s, words("End volume, times the bag"), {}, 1.1, 20).decided().presetTo(u"3"_s),
          Input::number(u"hours"_s, words("Under way"), u"h"_s, 0, 200).decided().presetTo(u"2"_s),
          Input::number(u"tan"_s, words("Total ammonia in the bag"), u"mg/L N"_s, 0, 60).mayBeEmpty(),
          Input::number(u"kh"_s, words("KH of the bag's water"), u"dKH"_s, 0.1, 30).presetTo(u"4"_s).usually(0.5),
          Input::number(u"closed"_s, words("Carbon dioxide in the closed bag"), u"mg/L"_s, 1, 500).presetTo(u"60"_s),
          Input::number(u"open"_s, words("Carbon dioxide once open"), u"mg/L"_s, 0.3, 100).presetTo(u"3"_s),
          Input::number(u"temp"_s, words("Temperature"), u"°C"_s, 0, 45)
              .presetTo(u"24"_s)
              .filled(FillFrom::Reading, u"temp"_s)},
         words("Dilution; carbonate system after Plummer and Busenberg 1982, free ammonia after Emerson et al. 1975. "
               "Rates and "
               "steps: common practice."),
         acclimate,
         u"0.5 300 120"_s},
        {u"stocking"_s,
         words("Stocking load"),
         words("what the feed puts into the water"),
         words("Animals"),
         {Input::number(u"feed"_s, words("Feed per day"), u"g/d"_s, 0, 5000),
          Input::number(u"litres"_s, words("Water in the tank"), u"L"_s, 0.5, 100000).filled(FillFrom::NetVolume),
          Input::number(u"protein"_s, words("Protein in the feed"), u"%"_s, 0, 100).presetTo(u"45"_s).usually(3),
          Input::number(u"share"_s, words("Changed per week"), u"%"_s, 0, 100).decided().presetTo(u"30"_s),
          Input::number(u"source"_s, words("Nitrate in the new water"), u"mg/L NO₃"_s, 0, 200)
              .presetTo(u"0"_s)
              .filled(FillFrom::Source, u"no3"_s, u"mg/L NO3"_s)},
         words("0.092 g of ammonia nitrogen per g of protein: Timmons and Ebeling 2013, as quoted in an aquaponics "
               "manual of 2021."),
         stocking,
         u"1 100"_s},
    };
}

} // namespace littoral::sheets
