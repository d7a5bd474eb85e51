// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/gas_supply.h"
#include "core/water/heat.h"
#include "core/water/light.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

Result<void> heater(Reckoner& in)
{
    const double surface =
        water::coolingSurface_m2(in.number(u"length"_s), in.number(u"depth"_s), in.number(u"height"_s));
    const double difference = in.number(u"tank"_s) - in.number(u"room"_s);
    if (difference < 0.0) {
        return refused(words("The room is warmer than the tank is meant to be."), words("A heater cannot cool."),
                       u"room"_s);
    }
    const double glass = water::steadyPower_W(in.number(u"loss"_s), surface, difference);
    const double vapour = water::evaporationPower_W(in.number(u"evaporation"_s));
    const double power = glass + vapour;
    in.formula(words("power = U × surface × difference + evaporation × 28 W per litre a day"));
    in.figures(words("power = {loss} × {surface} × ({tank} − {room}) + {vapour} = {power} W"));
    in.mainResult(u"power"_s, words("Power to hold the temperature"), power, u"W"_s);
    in.result(u"surface"_s, words("Glass and top that lose heat"), surface, u"m²"_s);
    in.result(u"vapour"_s, words("of it for evaporation"), vapour, u"W"_s);
    in.result(u"least"_s, words("Heater to buy, at least"), 1.5 * power, u"W"_s);
    in.result(u"most"_s, words("Heater to buy, at most"), 2.0 * power, u"W"_s);
    in.result(u"month"_s, words("Energy in 30 days"), water::energy_kWh(power, 24, 30), u"kWh"_s);
    const double litres = in.number(u"litres"_s);
    in.result(u"cooling"_s, words("Without heating, hours until 63 % of the difference is gone"),
              in.take(u"loss"_s, water::coolingTime_h(litres, in.number(u"loss"_s), surface)), u"h"_s);
    if (const auto own = in.maybe(u"heater"_s)) {
        in.result(u"warm-up"_s, words("Hours for one kelvin with this heater, losses apart"),
                  in.take(u"heater"_s, water::warmUp_h(litres, 1.0, *own)), u"h"_s);
        if (*own < power) {
            in.note(words("This heater cannot hold the temperature in so cool a room."));
        }
    }
    in.note(words(
        "Two heaters of half the size fail more kindly than one: one stuck on does not cook, one dead does not chill "
        "(common practice)."));
    in.caution(u"C-ELEC"_s);
    in.write(
        noteEntry(words("{power} W hold {tank} °C in a room of {room} °C; a heater of {least} to {most} W suits.")));
    return in.done();
}

Result<void> cylinder(Reckoner& in)
{
    const double use = in.take(
        u"later"_s, water::weighedUse_g_per_d(in.number(u"earlier"_s), in.number(u"later"_s), in.number(u"days"_s)));
    if (const auto good = in.done(); !good) {
        return good;
    }
    const double left = in.number(u"later"_s) - in.number(u"empty"_s);
    if (left < 0.0) {
        return refused(
            words("The cylinder weighs less than its empty weight."),
            words(
                "Read the empty weight (TW) stamped on it, and weigh the regulator with it or without it both times."),
            u"empty"_s);
    }
    in.formula(words("use = (earlier − later) / days; days left = (later − empty) / use"));
    in.figures(words("use = ({earlier} − {later}) / {days} = {use} g/d; ({later} − {empty}) / {use} = {left} d"));
    in.mainResult(u"left"_s, words("Days left"), in.take(u"later"_s, water::daysLeft(left, use)), u"d"_s);
    in.result(u"use"_s, words("Used per day"), use, u"g/d"_s);
    in.result(u"gas"_s, words("Gas left"), left, u"g"_s);
    if (const auto litres = in.maybe(u"litres"_s)) {
        in.result(u"lift"_s, words("Lifting the tank from 3 to 30 mg/L takes"), water::liftMass_g(*litres, 3, 30),
                  u"g"_s);
    }
    if (const auto room = in.maybe(u"room"_s)) {
        in.result(u"share"_s, words("In this room's air if all of it escaped"),
                  100.0 * in.take(u"room"_s, water::roomShare(left, *room)), u"%"_s);
        in.note(words("The limit for people over a working day is 0.5 % (OSHA, from a secondary page)."));
    }
    in.note(words(
        "The gauge stays flat while there is liquid; once it falls, only days are left. A jump in daily use means a "
        "leak or a drifting valve. Bubbles cannot be converted: their mass goes with the cube of their width."));
    in.caution(u"C-CO2"_s);
    in.write(readingWrite(u"cylinder"_s, u"g"_s, u"{later}"_s));
    return in.done();
}

Result<void> lightSum(Reckoner& in)
{
    const double par = in.number(u"par"_s);
    const double hours = in.number(u"hours"_s);
    const double sum = in.take(u"ramp"_s, water::dailyLightWithRamps_mol(par, hours, in.number(u"ramp"_s)));
    in.formula(words("sum = PAR × (hours − ramp) × 0.0036"));
    in.figures(words("sum = {par} × ({hours} − {ramp}) × 0.0036 = {sum}"));
    in.mainResult(u"sum"_s, words("Light of a day"), sum, u"mol/m²"_s);
    if (const auto wanted = in.maybe(u"target"_s)) {
        in.result(u"needed"_s, words("Hours at full light for the sum wanted"),
                  in.take(u"target"_s, water::hoursForDailyLight(*wanted, par)), u"h"_s);
    }
    in.sentence(u"class"_s, words("Common practice calls it"),
                sum < 1.5   ? words("very little")
                : sum < 2.5 ? words("low light")
                : sum < 4.0 ? words("medium light")
                            : words("high light: needs carbon dioxide and steady dosing"));
    in.note(
        words("PAR at the bed, not at the surface: it falls with depth and away from the middle. Lux and watts do not "
              "convert without the lamp's spectrum. Change hours or intensity, one at a time and once a week."));
    record::Entry entry;
    entry.kind = record::EntryKind::LightChange;
    entry.amount = hours;
    entry.second = par;
    in.write({words("Write this light to the record"), entry, std::nullopt, std::nullopt});
    in.caution(u"C-ELEC"_s);
    return in.done();
}

} // namespace

std::vector<Sheet> energySheets()
{
    const auto glass = [](const QString& key, const QString& label, double most) {
        return Input::number(key, label, u"cm"_s, 5, most).filled(FillFrom::Glass, key);
    };
    const auto grams = [](const QString& key, const QString& label) {
        return Input::number(key, label, u"g"_s, 1, 100000);
    };
    return {
        {u"light"_s,
         words("Light sum"),
         words("what a day of this lamp comes to"),
         words("Plants"),
         {Input::number(u"par"_s, words("Light at the bed"), u"µmol/m²/s"_s, 1, 2500)
              .filled(FillFrom::Layout, u"par"_s),
          Input::number(u"hours"_s, words("Hours of light"), u"h"_s, 0.1, 24)
              .decided()
              .filled(FillFrom::Layout, u"light-hours"_s),
          Input::number(u"ramp"_s, words("Ramp at each end, part of the hours"), u"h"_s, 0, 12)
              .decided()
              .presetTo(u"0"_s),
          Input::number(u"target"_s, words("Sum wanted"), u"mol/m²"_s, 0.1, 60).decided().mayBeEmpty()},
         words("Arithmetic: µmol/m²/s × 3600 s/h. Classes: common practice."),
         lightSum,
         u"50 8"_s},
        {u"cylinder"_s,
         words("Cylinder: days left"),
         words("from two weighings, the only honest measure"),
         words("Plants"),
         {grams(u"earlier"_s, words("Weight then")).usually(5),
          grams(u"later"_s, words("Weight now")).usually(5).filled(FillFrom::Reading, u"cylinder"_s),
          Input::number(u"days"_s, words("Days between"), u"d"_s, 0.1, 1000).decided(),
          grams(u"empty"_s, words("Empty weight, with what is weighed along")).usually(5),
          Input::number(u"room"_s, words("Air in the room"), u"m³"_s, 1, 10000).mayBeEmpty(),
          Input::number(u"litres"_s, words("Water in the tank"), u"L"_s, 0.5, 100000)
              .mayBeEmpty()
              .filled(FillFrom::NetVolume)},
         words("Arithmetic; ideal gas for the room. Weighing to 5 g: common practice."),
         cylinder,
         u"2121 2100 7 1600"_s},
        {u"heater"_s,
         words("Heater"),
         words("power to hold a temperature, and what a power cut does"),
         words("Water"),
         {Input::number(u"tank"_s, words("Tank"), u"°C"_s, 5, 40).decided().filled(FillFrom::Layout, u"temperature"_s),
          Input::number(u"room"_s, words("Room at its coolest"), u"°C"_s, -10, 40).usually(1),
          glass(u"length"_s, words("Length"), 1000), glass(u"depth"_s, words("Depth"), 500),
          glass(u"height"_s, words("Height"), 300),
          Input::number(u"litres"_s, words("Water in the tank"), u"L"_s, 0.5, 100000).filled(FillFrom::NetVolume),
          Input::number(u"loss"_s, words("Loss U: 5 covered, 7 lidded, 10 open"), u"W/m²K"_s, 1, 30)
              .presetTo(u"7"_s)
              .usually(2),
          Input::number(u"evaporation"_s, words("Evaporation"), u"L/d"_s, 0, 500).presetTo(u"0"_s),
          Input::number(u"heater"_s, words("Heater in hand"), u"W"_s, 1, 5000).mayBeEmpty()},
         words("P = U A ΔT; heat of evaporation 2440 kJ/kg (from memory); U and the margin of 1.5 to 2: common "
               "practice."),
         heater,
         u"25 19 60 30 36 60"_s},
    };
}

} // namespace littoral::sheets
