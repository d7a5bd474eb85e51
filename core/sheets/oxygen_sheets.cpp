// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/oxygen.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

const QString kMg = u"mg/L"_s;
constexpr double kLowSaturation = 80.0;
constexpr double kMuchCo2 = 30.0;

void dayCurve(Reckoner& in, double saturation)
{
    if (!in.has(u"respiration"_s)) {
        return;
    }
    const water::OxygenDay day{in.number(u"production"_s), in.number(u"respiration"_s), in.number(u"exchange"_s),
                               saturation, in.number(u"light"_s)};
    const auto swing = in.take(u"exchange"_s, water::oxygenSwing(day));
    in.result(u"dusk"_s, words("At dusk"), swing.dusk, kMg);
    in.result(u"dawn"_s, words("At dawn, the lowest"), swing.dawn, kMg);
    if (swing.dusk > 1.2 * saturation) {
        in.note(words("Above 120 % of saturation bubbles carry oxygen off, and the sum reads too high."));
    }
    if (swing.dawn < 0.01 * kLowSaturation * saturation) {
        in.note(words("Dawn falls below 80 % of saturation: ripple or air at night, carbon dioxide off."));
    }
}

Result<void> oxygen(Reckoner& in)
{
    const double t = in.number(u"temp"_s);
    const double pressure = in.take(u"height"_s, water::standardPressure_atm(in.number(u"height"_s)));
    if (const auto good = in.done(); !good) {
        return good;
    }
    const double saturation = in.take(u"temp"_s, water::oxygenSaturation_mg_per_L(t, pressure));
    in.formula(words("saturation in moist air, Benson and Krause, at the pressure of the height"));
    in.figures(words("{temp} °C, {height} m ({pressure} atm): {saturation} mg/L"));
    in.mainResult(u"saturation"_s, words("Water in balance with air holds"), saturation, kMg);
    in.result(u"pressure"_s, words("Pressure of the air"), pressure, u"atm"_s);
    if (const auto measured = in.maybe(u"do"_s)) {
        const double percent = 100.0 * *measured / saturation;
        in.result(u"percent"_s, words("Measured, of saturation"), percent, u"%"_s);
        if (percent < kLowSaturation) {
            in.note(words("Below 80 % of saturation: more ripple, less feed, and look for what uses it."));
            if (in.maybe(u"co2"_s).value_or(0.0) > kMuchCo2) {
                in.note(words("Together with carbon dioxide above 30 mg/L this is dangerous: gas off, air on."));
            }
        }
    }
    dayCurve(in, saturation);
    in.note(words("Carbon dioxide does not push oxygen out; much of it makes the blood carry less. Gasping at "
                  "lights-on points to "
                  "carbon dioxide, gasping at dawn to oxygen (common practice)."));
    in.caution(u"C-O2"_s);
    if (in.has(u"do"_s)) {
        in.write(readingWrite(u"do"_s, u"mg/L"_s, u"{do}"_s));
    }
    in.write(noteEntry(words("Oxygen in balance with air at {temp} °C is {saturation} mg/L.")));
    return in.done();
}

} // namespace

std::vector<Sheet> oxygenSheets()
{
    const auto rate = [](const QString& key, const QString& label) {
        return Input::number(key, label, u"mg/L/h"_s, 0, 20);
    };
    return {
        {u"oxygen"_s,
         words("Oxygen"),
         words("what the water can hold, and the dawn"),
         words("Animals"),
         {Input::number(u"temp"_s, words("Temperature"), u"°C"_s, 0, 40)
              .usually(0.5)
              .filled(FillFrom::Reading, u"temp"_s),
          Input::number(u"do"_s, words("Oxygen measured"), kMg, 0, 30).mayBeEmpty().filled(FillFrom::Reading, u"do"_s),
          Input::number(u"height"_s, words("Height above the sea"), u"m"_s, -500, 5000).presetTo(u"0"_s),
          Input::number(u"co2"_s, words("Carbon dioxide"), kMg, 0, 500)
              .mayBeEmpty()
              .filled(FillFrom::Reading, u"co2"_s),
          rate(u"respiration"_s, words("Used by all that breathes")).mayBeEmpty(),
          rate(u"production"_s, words("Made in the light")).presetTo(u"0"_s),
          Input::number(u"exchange"_s, words("Exchange with the air"), u"/h"_s, 0.01, 10).presetTo(u"0.25"_s),
          Input::number(u"light"_s, words("Hours of light"), u"h"_s, 0, 24)
              .decided()
              .presetTo(u"8"_s)
              .filled(FillFrom::Layout, u"light-hours"_s)},
         words("Benson and Krause 1980 and 1984, the form of APHA 4500-O; agrees with EN 25814. Height: standard "
               "atmosphere "
               "(from memory). Day: Odum 1956."),
         oxygen,
         u"25"_s}};
}

} // namespace littoral::sheets
