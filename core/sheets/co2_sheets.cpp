// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/carbonate.h"

#include <algorithm>

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

constexpr double kWorthlessBelow_dKH = 2.0;
constexpr double kMostWithAnimals = 30.0;
const QString kMg = u"mg/L"_s;

water::Medium mediumOf(const Reckoner& in, water::MeqPerL alkalinity)
{
    const double t = in.number(u"temp"_s);
    if (const auto conductivity = in.maybe(u"cond"_s)) {
        return {t, *conductivity * water::kIonicStrengthPerMicroSiemens};
    }
    const double gh = in.maybe(u"gh"_s).value_or(in.number(u"kh"_s));
    return {t, water::ionicStrengthFromHardness(water::GermanDegrees{gh}.hardness(), alkalinity)};
}

/// The bicarbonate solution in an indicator holds nothing else.
double indicatorCo2(Reckoner& in, double pH)
{
    const water::MeqPerL alkalinity = water::GermanDegrees{in.number(u"ikh"_s)}.alkalinity();
    return in.take(u"indicator"_s, water::co2FromPh(pH, alkalinity, {in.number(u"temp"_s), alkalinity.value / 1000.0}))
        .value;
}

void byChart(Reckoner& in, water::MeqPerL alkalinity)
{
    const double pH = in.number(u"ph"_s);
    const double t = in.number(u"temp"_s);
    in.mainResult(u"co2"_s, words("By pH and KH, activities reckoned"),
                  in.take(u"ph"_s, water::co2FromPh(pH, alkalinity, mediumOf(in, alkalinity))).value, kMg);
    in.result(u"chart"_s, words("As the usual chart says"),
              in.take(u"ph"_s, water::co2FromChart(pH, alkalinity, t)).value, kMg);
    in.formula(words("CO₂ = 15.696 × KH × 10^(pK1 − pH), less what activities take off"));
    in.figures(words("15.696 × {kh} × 10^({pk1} − {ph}) = {chart} by the chart; {co2} mg/L with activities"));
    in.result(u"pk1"_s, words("pK1 at this temperature"), in.take(u"temp"_s, water::carbonateConstants(t)).pK1, {});
}

void otherWays(Reckoner& in)
{
    if (const auto base = in.maybe(u"phbase"_s)) {
        in.result(u"drop"_s, words("By the drop from the degassed sample"),
                  water::co2FromDrop({in.number(u"base"_s)}, *base - in.number(u"ph"_s)).value, kMg);
        in.note(
            words("The drop stands on what the degassed sample still held: 0.6 mg/L when it stood in fresh air for a "
                  "day, 2 to 5 in an unaerated tank at dawn (common practice)."));
    }
    if (const auto colour = in.maybe(u"indicator"_s)) {
        in.result(u"drops"_s, words("By the indicator in its reference solution"), indicatorCo2(in, *colour), kMg);
        in.note(words("An indicator lags by one to three hours and reports the past."));
    }
}

void warnings(Reckoner& in)
{
    if (in.number(u"kh"_s) < kWorthlessBelow_dKH) {
        in.note(words(
            "Below 2 dKH one drop of the kit is a large part of the KH: take the range, not the figure, or use an "
            "indicator."));
    }
    if (in.answer().find(u"co2"_s)->value > kMostWithAnimals) {
        in.note(words("Above 30 mg/L watch the animals; with animals aim at 15 to 30 (common practice)."));
    }
    in.note(words(
        "Phosphate buffers, tannins and soil acids make the first two read too high; the sample for pH and for KH "
        "must be of the same hour."));
    in.caution(u"C-CO2"_s);
    in.caution(u"C-O2"_s);
}

/// Compares the ways once all are known; each with the doubt of one step in what it rests on.
void compare(Reckoner& in)
{
    const Figure* first = in.answer().find(u"co2"_s);
    double least = first->value;
    double most = first->value;
    for (const QString& key : {u"drop"_s, u"drops"_s}) {
        if (const Figure* other = in.answer().find(key)) {
            least = std::min(least, other->value);
            most = std::max(most, other->value);
        }
    }
    if (least > 0.0 && most / least > 2.0) {
        in.note(
            words("The ways differ by more than a factor of two: something other than carbonate sets the pH, or one "
                  "figure is wrong. Trust the animals first."));
    }
}

Result<void> co2(Reckoner& in)
{
    const double kh = in.number(u"kh"_s);
    if (!(kh > 0.0)) {
        return refused(words("Without carbonate hardness the pH says nothing about carbon dioxide."),
                       words("Use an indicator in a reference solution, or weigh the cylinder."), u"kh"_s);
    }
    byChart(in, water::GermanDegrees{kh}.alkalinity());
    otherWays(in);
    if (const auto good = in.done(); !good) {
        return good;
    }
    in.result(u"air"_s, words("In balance with the air"),
              in.take(u"air-ppm"_s, water::airCo2(in.number(u"temp"_s), in.number(u"air-ppm"_s))).value, kMg);
    warnings(in);
    compare(in);
    in.write(readingWrite(u"co2"_s, u"mg/L"_s, u"{co2}"_s));
    return in.done();
}

} // namespace

std::vector<Sheet> co2Sheets()
{
    const auto optional = [](const QString& key, const QString& label, const QString& unit, double low, double high) {
        return Input::number(key, label, unit, low, high).mayBeEmpty();
    };
    return {
        {u"co2"_s,
         words("CO₂ three ways"),
         words("pH and KH, pH drop and indicator side by side, each with its doubt"),
         words("Plants"),
         {
             Input::number(u"ph"_s, words("pH"), {}, 4, 10).usually(0.1).filled(FillFrom::Reading, u"ph"_s),
             Input::number(u"kh"_s, words("KH"), u"dKH"_s, 0, 60)
                 .usually(0.5)
                 .filled(FillFrom::Reading, u"kh"_s, u"dKH"_s),
             Input::number(u"temp"_s, words("Temperature"), u"°C"_s, 0, 45)
                 .presetTo(u"25"_s)
                 .usually(0.5)
                 .filled(FillFrom::Reading, u"temp"_s),
             optional(u"phbase"_s, words("pH of the degassed sample"), {}, 4, 10).usually(0.1),
             Input::number(u"base"_s, words("Carbon dioxide left in that sample"), kMg, 0.3, 20)
                 .presetTo(u"3"_s)
                 .usually(1.5),
             optional(u"indicator"_s, words("pH by the indicator's colour"), {}, 5, 8.5).usually(0.15),
             Input::number(u"ikh"_s, words("KH of the reference solution"), u"dKH"_s, 0.5, 10)
                 .presetTo(u"4"_s)
                 .usually(0.1),
             optional(u"gh"_s, words("GH"), u"dGH"_s, 0, 60).filled(FillFrom::Reading, u"gh"_s, u"dGH"_s),
             optional(u"cond"_s, words("Conductivity at 25 °C"), u"µS/cm"_s, 0, 7000)
                 .filled(FillFrom::Reading, u"cond"_s),
             Input::number(u"air-ppm"_s, words("Carbon dioxide in the air"), u"ppm"_s, 200, 10000).presetTo(u"425"_s),
         },
         words("Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46; activities after Davies; checked against "
               "PHREEQC "
               "3. The chart agrees with Tucker 1984. Reading of a colour ±0.15 pH: common practice."),
         co2,
         u"6.6 4"_s}};
}

} // namespace littoral::sheets
