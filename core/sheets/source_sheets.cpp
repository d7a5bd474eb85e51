// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/blend.h"
#include "core/water/evaporation.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

struct Pair
{
    const char16_t* key;
    const char* label;
    const char16_t* unit;
};
constexpr Pair kMixed[] = {
    {u"gh", QT_TRANSLATE_NOOP("Sheets", "GH of the blend"), u"dGH"},
    {u"kh", QT_TRANSLATE_NOOP("Sheets", "KH of the blend"), u"dKH"},
    {u"tds", QT_TRANSLATE_NOOP("Sheets", "Dissolved solids of the blend"), u"mg/L"},
    {u"cl", QT_TRANSLATE_NOOP("Sheets", "Chloride of the blend"), u"mg/L"},
};

/// The soft share by one target exactly, by two as near as least squares come.
double softShareFor(Reckoner& in)
{
    const double hard = in.number(u"gh"_s);
    const double soft = in.number(u"sgh"_s);
    if (!in.has(u"tkh"_s)) {
        return in.take(u"tgh"_s, water::softShare(hard, soft, in.number(u"tgh"_s)));
    }
    if (!in.has(u"kh"_s)) {
        return in.take(u"kh"_s, Result<double>(refused(words("A target for KH needs the KH of the hard water."),
                                                       words("Give kh= as well."))));
    }
    const std::vector<water::BlendTarget> targets{
        {{hard, soft}, in.number(u"tgh"_s), 0.0},
        {{in.number(u"kh"_s), in.number(u"skh"_s)}, in.number(u"tkh"_s), 0.0}};
    const water::Blend blend = in.take(u"tkh"_s, water::blendSources(targets));
    return blend.shares.size() == 2 ? blend.shares[1] : 0.0;
}

Result<void> blend(Reckoner& in)
{
    const double soft = softShareFor(in);
    if (const auto good = in.done(); !good) {
        return good;
    }
    const double litres = in.number(u"litres"_s);
    if (in.has(u"tkh"_s)) {
        in.formula(
            words("the share that brings GH and KH nearest to their targets, each miss as a part of its target"));
        in.figures(words("soft {share} %, for GH {tgh} and KH {tkh}"));
        in.note(words("One share cannot meet two targets in general: see what GH and KH become, and mend the rest with "
                      "salts."));
    } else {
        in.formula(words("soft share = 1 − (target − soft) / (hard − soft)"));
        in.figures(words("soft share = 1 − ({tgh} − {sgh}) / ({gh} − {sgh}) = {share} %"));
    }
    in.mainResult(u"share"_s, words("Soft water"), 100.0 * soft, u"%"_s);
    in.result(u"soft"_s, words("Soft water to measure out"), soft * litres, u"L"_s);
    in.result(u"hard"_s, words("Hard water to measure out"), (1.0 - soft) * litres, u"L"_s);
    for (const Pair& pair : kMixed) {
        const QString key = QString::fromUtf16(pair.key);
        if (const auto hard = in.maybe(key)) {
            in.result(u"blend-"_s + key, words(pair.label), (1.0 - soft) * *hard + soft * in.number(u's' + key),
                      QString::fromUtf16(pair.unit));
        }
    }
    in.note(words("Conductivity mixes in proportion only roughly, pH not at all."));
    if (in.has(u"cl"_s) && in.answer().find(u"blend-cl"_s)->value < 10.0) {
        in.note(words("Water with little chloride leaves fish open to nitrite."));
    }
    in.caution(u"C-CHLOR"_s);
    in.write(upkeepEntry(words("Write this blend to the record"), words("source water blended"),
                         words("{soft} L of soft and {hard} L of hard water.")));
    return in.done();
}

Result<void> topUp(Reckoner& in)
{
    const double net = in.number(u"litres"_s);
    const double lost = in.number(u"lost"_s) * 7.0;
    const double gh = in.number(u"gh"_s);
    const double fill = in.number(u"top"_s);
    const double changed = in.number(u"change"_s);
    in.result(u"unreplaced"_s, words("GH after a week without topping up"),
              in.take(u"lost"_s, water::afterEvaporation(gh, net, lost)), u"dGH"_s);
    const double creep = in.take(u"lost"_s, water::afterTopUps(gh, fill, lost, net, 10));
    const QString creepLabel = words("GH after ten weeks of topping up, no changes");
    if (changed > 0.0) {
        in.result(u"creep"_s, creepLabel, creep, u"dGH"_s);
    } else {
        in.mainResult(u"creep"_s, creepLabel, creep, u"dGH"_s);
    }
    in.formula(words("settles at source + top-up × evaporated / changed"));
    if (changed > 0.0) {
        in.figures(words("{source} + {top} × {week} / {change} = {settled} dGH"));
        in.result(u"week"_s, words("Evaporated per week"), lost, u"L"_s);
        in.mainResult(u"settled"_s, words("GH just before a change, once settled"),
                      in.take(u"change"_s, water::topUpSteadyState(fill, in.number(u"source"_s), lost, changed)),
                      u"dGH"_s);
    } else {
        in.figures(words("{creep} dGH after ten weeks, {gh} now"));
        in.note(words("Without changes hard top-up piles up without end."));
    }
    if (fill > 1.0) {
        in.note(words("Topping up with demineralised water ends the creep. Write top-ups apart from changes: they do "
                      "opposite things."));
    }
    record::Entry entry;
    entry.kind = record::EntryKind::TopUp;
    entry.amount = in.number(u"lost"_s);
    in.write({words("Write a day's top-up to the record"), entry, std::nullopt, std::nullopt});
    in.caution(u"C-HOME"_s);
    return in.done();
}

Input degrees(const QString& key, const QString& label, const QString& unit)
{
    return Input::number(key, label, unit, 0, 60);
}

} // namespace

std::vector<Sheet> sourceSheets()
{
    return {{u"blend"_s,
             words("Blend two source waters"),
             words("hard and soft water for one or two targets"),
             words("Water"),
             {
                 degrees(u"gh"_s, words("GH of the hard water"), u"dGH"_s).filled(FillFrom::Source, u"gh"_s, u"dGH"_s),
                 degrees(u"sgh"_s, words("GH of the soft water"), u"dGH"_s).presetTo(u"0"_s),
                 degrees(u"tgh"_s, words("GH wanted"), u"dGH"_s).decided(),
                 Input::number(u"litres"_s, words("Litres to mix"), u"L"_s, 0.1, 100000).presetTo(u"100"_s).decided(),
                 degrees(u"kh"_s, words("KH of the hard water"), u"dKH"_s)
                     .mayBeEmpty()
                     .filled(FillFrom::Source, u"kh"_s, u"dKH"_s),
                 degrees(u"skh"_s, words("KH of the soft water"), u"dKH"_s).presetTo(u"0"_s),
                 degrees(u"tkh"_s, words("KH wanted"), u"dKH"_s).decided().mayBeEmpty(),
                 Input::number(u"tds"_s, words("Dissolved solids of the hard water"), u"mg/L"_s, 0, 10000).mayBeEmpty(),
                 Input::number(u"stds"_s, words("Dissolved solids of the soft water"), u"mg/L"_s, 0, 10000)
                     .presetTo(u"0"_s),
                 Input::number(u"cl"_s, words("Chloride of the hard water"), u"mg/L"_s, 0, 5000)
                     .mayBeEmpty()
                     .filled(FillFrom::Source, u"cl"_s),
                 Input::number(u"scl"_s, words("Chloride of the soft water"), u"mg/L"_s, 0, 5000).presetTo(u"0"_s),
             },
             words("Linear mixing by volume; two targets by least squares without negative shares (Lawson and Hanson "
                   "1974)."),
             blend,
             u"14 0 6"_s}};
}

std::vector<Sheet> evaporationSheets()
{
    return {
        {u"topup"_s,
         words("Evaporation and top-up"),
         words("where hardness creeps to"),
         words("Water"),
         {
             degrees(u"gh"_s, words("GH now"), u"dGH"_s).filled(FillFrom::Reading, u"gh"_s, u"dGH"_s),
             Input::number(u"litres"_s, words("Water in the tank"), u"L"_s, 0.5, 100000).filled(FillFrom::NetVolume),
             Input::number(u"lost"_s, words("Evaporated per day"), u"L/d"_s, 0, 1000),
             degrees(u"top"_s, words("GH of the top-up"), u"dGH"_s).presetTo(u"0"_s),
             Input::number(u"change"_s, words("Changed per week"), u"L"_s, 0, 100000).presetTo(u"0"_s),
             degrees(u"source"_s, words("GH of the new water"), u"dGH"_s)
                 .presetTo(u"0"_s)
                 .filled(FillFrom::Source, u"gh"_s, u"dGH"_s),
         },
         words("Mass balance: minerals stay, water leaves. Topped up to full first, then changed."),
         topUp,
         u"6 60 0.4"_s}};
}

} // namespace littoral::sheets
