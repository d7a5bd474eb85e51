// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/shown.h"
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/change_plan.h"
#include "core/water/dilution.h"
#include "core/wording/numbers.h"

#include <array>

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

// A step that animals used to the water notice (common practice): degrees, and kelvin.
constexpr double kStepDegrees = 1.0;
constexpr double kStepKelvin = 2.0;
constexpr double kLargeShare = 0.5;

std::vector<Choice> dissolved()
{
    std::vector<Choice> choices;
    for (const char16_t* key : {u"no3", u"no2", u"tan", u"po4", u"k", u"gh", u"kh", u"tds", u"cond", u"cl", u"fe"}) {
        const QString code = QString::fromUtf16(key);
        choices.push_back({code, wording::parameterName(code)});
    }
    return choices;
}

QString unitOf(const Reckoner& in)
{
    return record::inUsualUnits(*record::findParameter(in.choice(u"parameter"_s))).shown().label;
}

Input parameterInput()
{
    return Input::choice(u"parameter"_s, words("Parameter"), dissolved());
}
Input nowInput()
{
    return Input::number(u"now"_s, words("Now"), {}, 0, 20000).filled(FillFrom::Reading, u"@parameter"_s);
}
Input sourceInput()
{
    return Input::number(u"source"_s, words("In the new water"), {}, 0, 20000)
        .presetTo(u"0"_s)
        .filled(FillFrom::Source, u"@parameter"_s);
}
Input litresInput()
{
    return Input::number(u"litres"_s, words("Water in the tank"), u"L"_s, 0.5, 100000)
        .mayBeEmpty()
        .filled(FillFrom::NetVolume);
}

/// What else a change may move: hardness, alkalinity, potassium, warmth, each with its figure in the new water.
std::vector<Input> companions()
{
    return {
        Input::number(u"gh"_s, words("GH now"), u"dGH"_s, 0, 60)
            .mayBeEmpty()
            .filled(FillFrom::Reading, u"gh"_s, u"dGH"_s),
        Input::number(u"sgh"_s, words("GH of the new water"), u"dGH"_s, 0, 60)
            .mayBeEmpty()
            .filled(FillFrom::Source, u"gh"_s, u"dGH"_s),
        Input::number(u"kh"_s, words("KH now"), u"dKH"_s, 0, 60)
            .mayBeEmpty()
            .filled(FillFrom::Reading, u"kh"_s, u"dKH"_s),
        Input::number(u"skh"_s, words("KH of the new water"), u"dKH"_s, 0, 60)
            .mayBeEmpty()
            .filled(FillFrom::Source, u"kh"_s, u"dKH"_s),
        Input::number(u"k"_s, words("Potassium now"), u"mg/L"_s, 0, 500).mayBeEmpty().filled(FillFrom::Reading, u"k"_s),
        Input::number(u"sk"_s, words("Potassium in the new water"), u"mg/L"_s, 0, 500).mayBeEmpty(),
        Input::number(u"temp"_s, words("Temperature of the tank"), u"°C"_s, 0, 45)
            .mayBeEmpty()
            .filled(FillFrom::Reading, u"temp"_s),
        Input::number(u"stemp"_s, words("Temperature of the new water"), u"°C"_s, 0, 45).mayBeEmpty(),
    };
}

void moveBoth(Reckoner& in, const QString& key, const QString& label, const QString& unit, double share)
{
    const auto now = in.maybe(key);
    const auto source = in.maybe(u's' + key);
    if (!now || !source) {
        return;
    }
    const double after = water::afterChanges(*now, *source, std::array{share});
    const double step = after - *now;
    const bool warmth = key == u"temp"_s;
    QString note;
    if (warmth && step < -kStepKelvin) {
        note = words("Warm the new water first.");
    } else if (!warmth && key != u"k"_s && std::abs(step) > kStepDegrees) {
        note = words("More than a degree at once: split it for sensitive animals.");
    } else if (key == u"k"_s && step < 0.0) {
        in.part(u"dose-k"_s, -step);
        note = words("Dose {dose-k} mg/L to keep it.");
    }
    in.move(label, now, after, unit, note);
}

void moveCompanions(Reckoner& in, double share)
{
    moveBoth(in, u"gh"_s, words("GH"), u"dGH"_s, share);
    moveBoth(in, u"kh"_s, words("KH"), u"dKH"_s, share);
    moveBoth(in, u"k"_s, words("Potassium"), u"mg/L"_s, share);
    moveBoth(in, u"temp"_s, words("Temperature"), u"°C"_s, share);
    if (share > kLargeShare) {
        in.note(
            words("More than half at once is a large step for animals used to the water; two smaller changes some days "
                  "apart do the same with half the step (common practice)."));
    }
    in.note(words("pH is not mixed by its number: see the sheet \"ammonia\" when ammonia is present."));
    in.caution(u"C-ELEC"_s);
    in.caution(u"C-CHLOR"_s);
    in.caution(u"C-LOAD"_s);
}

Result<void> oneChange(Reckoner& in)
{
    const double share = in.share(u"share"_s);
    const double after = water::afterChanges(in.number(u"now"_s), in.number(u"source"_s), std::array{share});
    in.formula(words("after = source + (now − source) × (1 − share)"));
    in.figures(words("after = {source} + ({now} − {source}) × (1 − {share} %) = {after}"));
    in.mainResult(u"after"_s, words("After the change"), after, unitOf(in));
    if (const auto litres = in.maybe(u"litres"_s)) {
        in.result(u"change"_s, words("Water to change"), share * *litres, u"L"_s);
    }
    moveCompanions(in, share);
    in.write(changeEntry(share));
    in.write(changeTask(share));
    return in.done();
}

Result<void> sequence(Reckoner& in)
{
    std::vector<double> shares;
    for (const double percent : in.series(u"shares"_s)) {
        shares.push_back(percent / 100.0);
    }
    const double now = in.number(u"now"_s);
    const double source = in.number(u"source"_s);
    const std::vector<double> levels = water::afterEachChange(now, source, shares);
    QStringList each;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const QString key = u"level-%1"_s.arg(i);
        in.part(key, levels[i]);
        each << u'{' + key + u'}';
    }
    in.formula(words("after = source + (now − source) × product of all (1 − share)"));
    in.figures(words("after = {source} + ({now} − {source}) × {left} % = {after}"));
    in.mainResult(u"after"_s, words("After all of them"), levels.back(), unitOf(in));
    in.result(u"left"_s, words("Left of the old water"), 100.0 * water::remainingFraction(shares), u"%"_s);
    in.result(u"single"_s, words("One change of the same effect"), 100.0 * water::equivalentSingleChange(shares),
              u"%"_s);
    in.sentence(u"each"_s, words("After each"), each.join(u", "_s));
    double total = 0.0;
    for (const double share : shares) {
        total += share;
    }
    if (const auto litres = in.maybe(u"litres"_s)) {
        in.result(u"water"_s, words("Water needed in all"), total * *litres, u"L"_s);
    }
    in.note(words("Their order does not matter. Two halves are three quarters, not the whole."));
    moveCompanions(in, water::equivalentSingleChange(shares));
    for (const double share : shares) {
        in.write(changeTask(share));
    }
    return in.done();
}

void steps(Reckoner& in, double now, double target, double source)
{
    for (const int count : {2, 3}) {
        const double share = 100.0 * in.take(u"target"_s, water::equalShareToTarget(now, target, source, count));
        const QString key = u"in%1"_s.arg(count);
        in.result(key, words("Or %1 changes of").arg(count), share, u"%"_s);
    }
}

Result<void> toTarget(Reckoner& in)
{
    const double now = in.number(u"now"_s);
    const double target = in.number(u"target"_s);
    const double source = in.number(u"source"_s);
    const double share = in.take(u"target"_s, water::equalShareToTarget(now, target, source, 1));
    if (const auto good = in.done(); !good) {
        return good;
    }
    in.formula(words("share = (now − target) / (now − source)"));
    in.figures(words("share = ({now} − {target}) / ({now} − {source}) = {share} %"));
    in.mainResult(u"share"_s, words("Change once"), 100.0 * share, u"%"_s);
    if (const auto litres = in.maybe(u"litres"_s)) {
        in.result(u"water"_s, words("Water to change"), share * *litres, u"L"_s);
        in.result(u"drip"_s, words("Flowing through, the same takes"),
                  in.take(u"target"_s, water::flowThroughToTarget_L(now, target, source, *litres)), u"L"_s);
    }
    steps(in, now, target, source);
    if (in.has(u"each"_s)) {
        if (const auto count = water::changesToTarget(now, target, source, in.share(u"each"_s))) {
            in.count(u"count"_s, words("Changes of that size until it is reached"), *count, {});
        }
    }
    moveCompanions(in, share);
    in.write(changeTask(share));
    in.write(changeEntry(share));
    return in.done();
}

std::vector<Input> joined(std::vector<Input> first, std::vector<Input> second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

} // namespace

std::vector<Sheet> changeSheets()
{
    const QString balance = words("Mass balance of a well-mixed tank. Steps that animals notice: common practice.");
    const Input share = Input::number(u"share"_s, words("Share changed, of the net volume"), u"%"_s, 0, 100).decided();
    return {
        {u"change"_s, words("One water change"), words("what a change of this size leaves"), words("Water"),
         joined({nowInput(), share, sourceInput(), litresInput(), parameterInput()}, companions()), balance, oneChange,
         u"80 30"_s},
        {u"changes"_s, words("A sequence of changes"), words("what several changes in a row leave"), words("Water"),
         joined({nowInput(), Input::series(u"shares"_s, words("Shares, one after another"), u"%"_s, 0, 100),
                 sourceInput(), litresInput(), parameterInput()},
                companions()),
         balance, sequence, u"60 50/20"_s},
        {u"target"_s, words("Water change to a target"),
         words("how much to change to bring one value where you want it"), words("Water"),
         joined({nowInput(), Input::number(u"target"_s, words("Target"), {}, 0, 20000).decided(), sourceInput(),
                 litresInput(), parameterInput(),
                 Input::number(u"each"_s, words("In changes of this size"), u"%"_s, 1, 99).decided().mayBeEmpty()},
                companions()),
         balance, toTarget, u"80 20"_s},
    };
}

} // namespace littoral::sheets
