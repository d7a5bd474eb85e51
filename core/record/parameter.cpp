// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/parameter.h"

#include "core/record/shown.h"
#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

#include <QCoreApplication>
#include <algorithm>
#include <atomic>
#include <memory>
#include <mutex>

namespace littoral::record {

using namespace Qt::StringLiterals;

namespace {

QString named(const char* text)
{
    return QString::fromUtf8(text);
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
         named(QT_TRANSLATE_NOOP("Parameter", "Total ammonia")),
         u"NH₃/₄"_s,
         {asN, unit(u"mg/L NH3"_s, u"mg/L NH₃"_s, 1.0 / water::kAmmoniaPerN),
          unit(u"mg/L NH4"_s, u"mg/L NH₄"_s, 1.0 / water::kAmmoniumPerN)},
         1,
         2,
         0.0,
         60.0},
        {u"no2"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Nitrite")),
         u"NO₂"_s,
         {asN, unit(u"mg/L NO2"_s, u"mg/L NO₂"_s, 1.0 / water::kNitritePerN)},
         1,
         2,
         0.0,
         60.0},
        {u"no3"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Nitrate")),
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
        {u"ph"_s, named(QT_TRANSLATE_NOOP("Parameter", "pH")), u"pH"_s, {unit(u"pH"_s, u"pH"_s)}, 0, 2, 2.0, 13.0},
        {u"kh"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Carbonate hardness (alkalinity)")),
         u"KH"_s,
         {unit(u"meq/L"_s, u"meq/L"_s), unit(u"dKH"_s, u"dKH"_s, water::kMeqPerDegree),
          unit(u"mg/L CaCO3"_s, u"mg/L CaCO₃"_s, water::kMeqPerDegree / water::kCaCO3MgPerDegree)},
         1,
         1,
         -2.0,
         20.0},
        {u"gh"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "General hardness")),
         u"GH"_s,
         {unit(u"mmol/L"_s, u"mmol/L"_s), unit(u"dGH"_s, u"dGH"_s, water::kMmolPerDegree),
          unit(u"mg/L CaCO3"_s, u"mg/L CaCO₃"_s, water::kMmolPerDegree / water::kCaCO3MgPerDegree)},
         1,
         1,
         0.0,
         20.0},
        {u"temp"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Temperature")),
         u"Temp"_s,
         {unit(u"C"_s, u"°C"_s), unit(u"F"_s, u"°F"_s, 1.0 / 1.8, -32.0 / 1.8)},
         0,
         1,
         0.0,
         45.0},
        {u"cond"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Conductivity at 25 °C")),
         u"EC"_s,
         {unit(u"uS/cm"_s, u"µS/cm"_s)},
         0,
         0,
         0.0,
         20000.0},
        {u"tds"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Dissolved solids")),
         u"TDS"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         0,
         0.0,
         10000.0},
        {u"po4"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Phosphate")),
         u"PO₄"_s,
         {unit(u"mg/L PO4"_s, u"mg/L PO₄"_s), unit(u"mg/L P"_s, u"mg/L P"_s, water::kPhosphatePerP)},
         0,
         2,
         0.0,
         100.0},
        {u"k"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Potassium")),
         u"K"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         0,
         0.0,
         500.0},
        {u"ca"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Calcium")),
         u"Ca"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         0,
         0.0,
         1000.0},
        {u"mg"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Magnesium")),
         u"Mg"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         0,
         0.0,
         1000.0},
        {u"fe"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Iron")),
         u"Fe"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         2,
         0.0,
         50.0},
        {u"cl"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Chloride")),
         u"Cl"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         0,
         0.0,
         5000.0},
        {u"cu"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Copper")),
         u"Cu"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         2,
         0.0,
         50.0},
        {u"co2"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Carbon dioxide")),
         u"CO₂"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         0,
         0.0,
         500.0},
        {u"do"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Dissolved oxygen")),
         u"O₂"_s,
         {unit(u"mg/L"_s, u"mg/L"_s)},
         0,
         1,
         0.0,
         30.0},
        {u"par"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Light at the bed")),
         u"PAR"_s,
         {unit(u"umol/m2/s"_s, u"µmol/m²/s"_s)},
         0,
         0,
         0.0,
         2500.0},
        {u"flow"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "Filter flow")),
         u"Flow"_s,
         {unit(u"L/h"_s, u"L/h"_s),
          unit(u"gal/h"_s, u"gal/h"_s, volumeMeasure({.volume = VolumeUnit::UsGallons}).canonical(1.0))},
         0,
         0,
         0.0,
         20000.0},
        {u"cylinder"_s,
         named(QT_TRANSLATE_NOOP("Parameter", "CO₂ cylinder weight")),
         u"Cylinder"_s,
         {unit(u"g"_s, u"g"_s)},
         0,
         0,
         0.0,
         100000.0},
    };
}

/// Milligrams in a litre of dilute water are parts per million; the code keeps the basis.
void addPartsPerMillion(Parameter& parameter)
{
    const Unit usual = parameter.shown();
    if (usual.code.startsWith(u"mg/L"_s)) {
        parameter.units.push_back(unit(u"ppm"_s + usual.code.mid(4), u"ppm"_s + usual.label.mid(4), usual.factor));
    }
    if (const Unit* carbonate = parameter.unit(u"mg/L CaCO3"_s)) {
        parameter.units.push_back(unit(u"ppm CaCO3"_s, u"ppm CaCO₃"_s, carbonate->factor));
    }
}

/// Code of the unit that stands for the choice; empty where the usual one, which is on show yet, stays.
QString chosenUnit(const Parameter& parameter, const Units& units)
{
    if (parameter.key == u"kh"_s || parameter.key == u"gh"_s) {
        return units.hardness == HardnessUnit::Degrees ? QString()
               : units.hardness == HardnessUnit::Molar ? parameter.canonical().code
                                                       : u"ppm CaCO3"_s;
    }
    if (parameter.key == u"temp"_s) {
        return units.temperature == TemperatureUnit::Celsius ? QString() : u"F"_s;
    }
    if (parameter.key == u"flow"_s) {
        return units.volume == VolumeUnit::Litres ? QString() : u"gal/h"_s;
    }
    if (units.nitrogen == NitrogenUnit::Ppm && parameter.shown().code.startsWith(u"mg/L"_s)) {
        return u"ppm"_s + parameter.shown().code.mid(4);
    }
    const bool nitrogen = parameter.canonical().code == u"mg/L N"_s;
    return units.nitrogen == NitrogenUnit::AsNitrogen && nitrogen ? parameter.canonical().code : QString();
}

/// As many decimals as tell apart what the usual unit tells apart, one digit of doubt either way.
int decimalsOf(const Parameter& parameter, const Unit& chosen)
{
    const double ratio = chosen.factor / parameter.shown().factor;
    const int more = ratio > 3.0 ? 1 : ratio < 1.0 / 3.0 ? -1 : 0;
    return std::max(0, parameter.decimals + more);
}

/// In the usual units and with the names of files.
std::vector<Parameter> plainCatalogue()
{
    std::vector<Parameter> all = nitrogenParameters();
    std::ranges::move(otherParameters(), std::back_inserter(all));
    std::ranges::for_each(all, addPartsPerMillion);
    return all;
}

const std::vector<Parameter>& plainParameters()
{
    static const std::vector<Parameter> all = plainCatalogue();
    return all;
}

std::vector<Parameter> catalogue(const Units& units)
{
    std::vector<Parameter> all = plainParameters();
    for (Parameter& parameter : all) {
        parameter.name = QCoreApplication::translate("Parameter", parameter.name.toUtf8().constData());
        if (const Unit* chosen = parameter.unit(chosenUnit(parameter, units))) {
            parameter.decimals = decimalsOf(parameter, *chosen);
            parameter.shownUnit = static_cast<int>(chosen - parameter.units.data());
        }
    }
    return all;
}

struct Catalogue
{
    unsigned choice = 0; ///< shownChoice() it was made for
    std::vector<Parameter> parameters;
};

/// The catalogue of the present choice, made when first asked for. None is ever let go: readers hold on to parameters,
/// and a person chooses seldom.
const Catalogue& makeCurrent(std::atomic<const Catalogue*>& current)
{
    static std::mutex lock;
    static std::vector<std::unique_ptr<const Catalogue>> kept;
    const std::scoped_lock guard(lock);
    const unsigned choice = shownChoice(); // first: a choice made meanwhile is then met by the next caller
    kept.push_back(std::make_unique<const Catalogue>(Catalogue{choice, catalogue(shownUnits())}));
    current.store(kept.back().get(), std::memory_order_release);
    return *kept.back();
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
    static std::atomic<const Catalogue*> current = nullptr;
    const Catalogue* made = current.load(std::memory_order_acquire);
    return (made != nullptr && made->choice == shownChoice() ? *made : makeCurrent(current)).parameters;
}

const Parameter& inUsualUnits(const Parameter& parameter)
{
    return *std::ranges::find(plainParameters(), parameter.key, &Parameter::key);
}

const Parameter* findParameter(const QString& keyOrName)
{
    const QString wanted = keyOrName.trimmed();
    const std::span<const Parameter> all = parameters();
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const QString& name : {all[i].key, all[i].name, all[i].symbol, plainParameters()[i].name}) {
            if (name.compare(wanted, Qt::CaseInsensitive) == 0) {
                return &all[i];
            }
        }
    }
    return nullptr;
}

} // namespace littoral::record
