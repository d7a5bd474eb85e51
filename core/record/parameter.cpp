// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/parameter.h"

#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::record {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Parameter", text);
}

Unit unit(const QString& code, const QString& label, double factor = 1.0, double offset = 0.0)
{
    return {code, label, factor, offset};
}

std::vector<Parameter> nitrogenParameters()
{
    const Unit asN = unit(u"mg/L N"_s, u"mg/L N"_s);
    return {
        {u"tan"_s,
         words("Total ammonia"),
         u"NH₃/₄"_s,
         {asN, unit(u"mg/L NH3"_s, u"mg/L NH₃"_s, 1.0 / water::kAmmoniaPerN),
          unit(u"mg/L NH4"_s, u"mg/L NH₄"_s, 1.0 / water::kAmmoniumPerN)},
         1,
         2,
         0.0,
         60.0},
        {u"no2"_s,
         words("Nitrite"),
         u"NO₂"_s,
         {asN, unit(u"mg/L NO2"_s, u"mg/L NO₂"_s, 1.0 / water::kNitritePerN)},
         1,
         2,
         0.0,
         60.0},
        {u"no3"_s,
         words("Nitrate"),
         u"NO₃"_s,
         {asN, unit(u"mg/L NO3"_s, u"mg/L NO₃"_s, 1.0 / water::kNitratePerN)},
         1,
         0,
         0.0,
         250.0},
    };
}

std::vector<Parameter> otherParameters()
{
    // Hardness and alkalinity are kept as mmol/L and meq/L; the degree is the German one (10 mg/L CaO).
    return {
        {u"ph"_s, words("pH"), u"pH"_s, {unit(u"pH"_s, u"pH"_s)}, 0, 2, 2.0, 13.0},
        {u"kh"_s,
         words("Carbonate hardness (alkalinity)"),
         u"KH"_s,
         {unit(u"meq/L"_s, u"meq/L"_s), unit(u"dKH"_s, u"dKH"_s, water::kMeqPerDegree),
          unit(u"mg/L CaCO3"_s, u"mg/L CaCO₃"_s, water::kMeqPerDegree / water::kCaCO3MgPerDegree)},
         1,
         1,
         -2.0,
         20.0},
        {u"gh"_s,
         words("General hardness"),
         u"GH"_s,
         {unit(u"mmol/L"_s, u"mmol/L"_s), unit(u"dGH"_s, u"dGH"_s, water::kMmolPerDegree),
          unit(u"mg/L CaCO3"_s, u"mg/L CaCO₃"_s, water::kMmolPerDegree / water::kCaCO3MgPerDegree)},
         1,
         1,
         0.0,
         20.0},
        {u"temp"_s,
         words("Temperature"),
         u"Temp"_s,
         {unit(u"C"_s, u"°C"_s), unit(u"F"_s, u"°F"_s, 1.0 / 1.8, -32.0 / 1.8)},
         0,
         1,
         0.0,
         45.0},
        {u"cond"_s, words("Conductivity at 25 °C"), u"EC"_s, {unit(u"uS/cm"_s, u"µS/cm"_s)}, 0, 0, 0.0, 20000.0},
        {u"tds"_s, words("Dissolved solids"), u"TDS"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 0, 0.0, 10000.0},
        {u"po4"_s,
         words("Phosphate"),
         u"PO₄"_s,
         {unit(u"mg/L PO4"_s, u"mg/L PO₄"_s), unit(u"mg/L P"_s, u"mg/L P"_s, water::kPhosphatePerP)},
         0,
         2,
         0.0,
         100.0},
        {u"k"_s, words("Potassium"), u"K"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 0, 0.0, 500.0},
        {u"ca"_s, words("Calcium"), u"Ca"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 0, 0.0, 1000.0},
        {u"mg"_s, words("Magnesium"), u"Mg"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 0, 0.0, 1000.0},
        {u"fe"_s, words("Iron"), u"Fe"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 2, 0.0, 50.0},
        {u"cl"_s, words("Chloride"), u"Cl"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 0, 0.0, 5000.0},
        {u"cu"_s, words("Copper"), u"Cu"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 2, 0.0, 50.0},
        {u"co2"_s, words("Carbon dioxide"), u"CO₂"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 0, 0.0, 500.0},
        {u"do"_s, words("Dissolved oxygen"), u"O₂"_s, {unit(u"mg/L"_s, u"mg/L"_s)}, 0, 1, 0.0, 30.0},
        {u"par"_s, words("Light at the bed"), u"PAR"_s, {unit(u"umol/m2/s"_s, u"µmol/m²/s"_s)}, 0, 0, 0.0, 2500.0},
        {u"flow"_s, words("Filter flow"), u"Flow"_s, {unit(u"L/h"_s, u"L/h"_s)}, 0, 0, 0.0, 20000.0},
        {u"cylinder"_s, words("CO₂ cylinder weight"), u"Cylinder"_s, {unit(u"g"_s, u"g"_s)}, 0, 0, 0.0, 100000.0},
    };
}

std::vector<Parameter> catalogue()
{
    std::vector<Parameter> all = nitrogenParameters();
    std::ranges::move(otherParameters(), std::back_inserter(all));
    return all;
}

} // namespace

const Unit* Parameter::unit(const QString& code) const
{
    const auto found =
        std::ranges::find_if(units, [&](const Unit& u) { return u.code.compare(code, Qt::CaseInsensitive) == 0; });
    return found == units.end() ? nullptr : &*found;
}

std::span<const Parameter> parameters()
{
    static const std::vector<Parameter> all = catalogue();
    return all;
}

const Parameter* findParameter(const QString& keyOrName)
{
    const QString wanted = keyOrName.trimmed();
    for (const Parameter& parameter : parameters()) {
        for (const QString& name : {parameter.key, parameter.name, parameter.symbol}) {
            if (name.compare(wanted, Qt::CaseInsensitive) == 0) {
                return &parameter;
            }
        }
    }
    return nullptr;
}

} // namespace littoral::record
