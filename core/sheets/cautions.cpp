// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/shown.h"
#include "core/sheets/reckoner.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

QString cautionText(const QString& id)
{
    static record::PerLanguage<QMap<QString, QString>> texts([] {
        return QMap<QString, QString>{
            {u"C-BLEACH"_s,
             words(
                 "Plain, unscented household bleach only, and never together with acid, vinegar, descaler, ammonia, "
                 "alcohol or another cleaner: they set free poisonous gas. Gloves, eye protection, open window; bleach "
                 "into water, away from the tanks. Rinse, treat with a dechlorinator, and test for zero chlorine "
                 "before "
                 "anything goes back. Label and safety data sheet come first.")},
            {u"C-CHLOR"_s,
             words("Chlorine that a test can find harms fish. Treat the new water before or while it goes in; when the "
                   "tap "
                   "runs straight into the tank, follow the conditioner's label, which usually counts the whole tank. "
                   "Standing removes chlorine slowly and chloramine hardly at all.")},
            {u"C-CO2"_s,
             words(
                 "Carbon dioxide is heavier than air and can suffocate people in cellars, cabinets and small rooms. "
                 "Cylinder upright, chained, in its test date, with a regulator made for it; an alarm in small rooms; "
                 "never refill or convert cylinders at home. Animals gasping: gas off, air on, change water.")},
            {u"C-O2"_s,
             words(
                 "Fish at the surface need air at once: air stone or more ripple, gas off, feed off. Warm water, haze, "
                 "medicines and nights in dense planting all lower oxygen, most at dawn.")},
            {u"C-ELEC"_s,
             words("Unplug heaters, pumps and lamps before hands go in and before draining; a heater cools for 15 "
                   "minutes "
                   "first. Each tank circuit behind a residual-current device, tested monthly; fixed wiring is for a "
                   "qualified electrician under local rules.")},
            {u"C-LOAD"_s,
             words(
                 "This is a weight, not a verdict on a floor. Whether a floor carries it depends on joists, span and "
                 "what "
                 "else stands there: ask the local building rules and a qualified structural engineer. Lift empty, in "
                 "pairs; a 20 L bucket weighs 20 kg.")},
            {u"C-SALTS"_s,
             words(
                 "Weigh twice and reckon twice; name, strength and date on every bottle; away from food and children. "
                 "Potassium nitrate feeds fire: no heat, no fuel, and check local law on keeping it. Ammonium salts "
                 "never "
                 "together with washing soda or another alkali.")},
            {u"C-WASTE"_s,
             words(
                 "Treated, salted or bleached water goes to the foul sewer as local rules say, never to gardens, storm "
                 "drains or open water.")},
            {u"C-MED"_s, words("Sick animals are a matter for a veterinarian or a fish-health laboratory. Salt and "
                               "medicines harm some "
                               "plants and snails.")},
            {u"C-HOME"_s,
             words("Buckets, cords and chemicals out of reach of children and pets; dry the floor at once.")},
            {u"C-ACID"_s,
             words("Never lower the pH of a tank with acid over carbonate rock: the rock dissolves faster.")},
        };
    });
    return texts.get().value(id);
}

} // namespace littoral::sheets
