// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/calcite.h"
#include "core/water/load.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

const QString kDegree = u"°d"_s;

void ceiling(Reckoner& in)
{
    const double source = in.number(u"source"_s);
    const water::MeqPerL alkalinity = water::GermanDegrees{in.maybe(u"skh"_s).value_or(source)}.alkalinity();
    const water::MmolPerL hardness = water::GermanDegrees{source}.hardness();
    const water::Medium medium{in.number(u"temp"_s), water::ionicStrengthFromHardness(hardness, alkalinity)};
    const auto end = in.take(u"co2"_s, water::limestoneEnd(alkalinity, hardness.value, {in.number(u"co2"_s)}, medium));
    in.result(u"end-gh"_s, words("Limestone would stop at a GH of"),
              water::GermanDegrees::from(water::MmolPerL{end.calcium_mmol_per_L}).value, u"dGH"_s);
    in.result(u"end-kh"_s, words("and a KH of"), water::GermanDegrees::from(end.alkalinity).value, u"dKH"_s);
    in.note(words("That end takes weeks and much surface; what counts from day to day is the rise per interval."));
}

Result<void> rock(Reckoner& in)
{
    in.caution(u"C-ACID"_s);
    const double share = in.share(u"share"_s);
    const double source = in.number(u"source"_s);
    const double rise =
        in.take(u"share"_s, water::rockRise(in.number(u"first"_s), in.number(u"second"_s), share, source));
    in.formula(words("rise = second − (first + share × (source − first)); excess before a change = rise / share"));
    in.figures(words(
        "rise = {second} − ({first} + {share} % × ({source} − {first})) = {rise}; {rise} / {share} % = {excess}"));
    if (rise <= 0.0) {
        in.mainResult(u"rise"_s, words("Rise per interval"), rise, kDegree);
        in.figures(words("rise = {second} − ({first} + {share} % × ({source} − {first})) = {rise}"));
        in.note(words(
            "Nothing came on top of the mixture: the rock does not harden the water within what the kit can tell."));
        ceiling(in);
        in.write(noteEntry(words("The rock adds no hardness that the kit can tell between two changes.")));
        return in.done();
    }
    const auto excess = in.take(u"share"_s, water::rockExcess(rise, share));
    in.mainResult(u"excess"_s, words("Above the source just before a change, once settled"), excess.before, kDegree);
    in.result(u"after"_s, words("and just after it"), excess.after, kDegree);
    in.result(u"rise"_s, words("Rise per interval"), rise, kDegree);
    const double most = in.number(u"most"_s);
    if (rise <= most) {
        const double needed = in.take(u"most"_s, water::shareForRock(rise, most));
        in.result(u"needed"_s, words("Change at least, to stay within %1 degrees").arg(plainText(most)), 100.0 * needed,
                  u"%"_s);
        in.write(changeTask(needed));
    } else {
        in.note(
            words("The rock adds more in one interval than that: change more often, take rock out, blend with softer "
                  "water, or give less carbon dioxide."));
    }
    ceiling(in);
    in.write(
        noteEntry(words("The rock adds {rise} degrees between two changes, {excess} above the source once settled.")));
    in.note(words("GH and KH from limestone rise together, degree for degree; GH alone points to gypsum or a dose."));
    return in.done();
}

} // namespace

std::vector<Sheet> rockSheets()
{
    const auto degrees = [](const QString& key, const QString& label) {
        return Input::number(key, label, kDegree, 0, 60);
    };
    return {{u"rock"_s,
             words("Hardening rock"),
             words("what rock adds between changes, and where that ends"),
             words("Water"),
             {degrees(u"first"_s, words("GH just before one change")).usually(0.5),
              degrees(u"second"_s, words("GH just before the next"))
                  .usually(0.5)
                  .filled(FillFrom::Reading, u"gh"_s, u"dGH"_s),
              Input::number(u"share"_s, words("Share changed"), u"%"_s, 1, 100).decided(),
              degrees(u"source"_s, words("GH of the new water")).filled(FillFrom::Source, u"gh"_s, u"dGH"_s),
              degrees(u"most"_s, words("Excess allowed")).decided().presetTo(u"2"_s),
              Input::number(u"skh"_s, words("KH of the new water"), u"dKH"_s, 0, 60)
                  .mayBeEmpty()
                  .filled(FillFrom::Source, u"kh"_s, u"dKH"_s),
              Input::number(u"co2"_s, words("Carbon dioxide"), u"mg/L"_s, 0.3, 200)
                  .presetTo(u"3"_s)
                  .filled(FillFrom::Reading, u"co2"_s),
              Input::number(u"temp"_s, words("Temperature"), u"°C"_s, 0, 45)
                  .presetTo(u"24"_s)
                  .filled(FillFrom::Reading, u"temp"_s)},
             words("Mass balance; end point from Plummer and Busenberg 1982 with calcium's ion pairs, checked against "
                   "PHREEQC 3."),
             rock,
             u"8 8 40 5"_s}};
}

} // namespace littoral::sheets
