// SPDX-License-Identifier: GPL-3.0-or-later
// Functions by the names the check rows use: salts, doses, chlorine, blending, acclimation.
#include "tests/water/check_functions.h"

#include "core/water/acclimation.h"
#include "core/water/blend.h"
#include "core/water/chlorine.h"
#include "core/water/dosing.h"
#include "core/water/least_squares.h"
#include "core/water/salts.h"

#include <sstream>

namespace littoral::test {

using namespace littoral::water;

namespace {

Nutrient nutrientOf(const std::string& symbol)
{
    static const std::map<std::string, Nutrient> kSymbols{
        {"N", Nutrient::Nitrogen},    {"NO3", Nutrient::Nitrate}, {"P", Nutrient::Phosphorus},
        {"PO4", Nutrient::Phosphate}, {"K", Nutrient::Potassium}, {"Ca", Nutrient::Calcium},
        {"Mg", Nutrient::Magnesium},  {"SO4", Nutrient::Sulfate}, {"Cl", Nutrient::Chloride}};
    return kSymbols.at(symbol);
}

/// dose; share; source; uptake; uptake per day, the last three if given
DosePlan plan(const Inputs& i)
{
    DosePlan p;
    p.dose = i[0];
    p.fraction = i[1];
    p.source = i.size() > 2 ? i[2] : 0.0;
    p.start = p.source;
    p.uptake = i.size() > 3 ? i[3] : 0.0;
    p.uptakeRate_per_d = i.size() > 4 ? i[4] : 0.0;
    return p;
}

double dip_mg_per_L(const Inputs& i)
{
    return dipStrength(bleachStrength(i[0], BleachBasis::HypochloriteByVolume, 1.1).value(), i[1])->value;
}

/// Bicarbonate of soda for what potassium bicarbonate leaves of a carbonate hardness, mg/L.
double restOfAlkalinity(const Inputs& i)
{
    const double kFirst_g = gramsFor(*findSalt("khco3"), Nutrient::Potassium, i[0], 1.0).value();
    const double rest = i[1] - kFirst_g * alkalinityPerGram_dKH(*findSalt("khco3"));
    return 1000.0 * gramsForAlkalinity(*findSalt("nahco3"), rest, 1.0).value();
}

double misfitOfFiveSalts(const Inputs& i)
{
    const std::vector<const Salt*> salts{findSalt("caso4"), findSalt("cacl2"), findSalt("mgso4"), findSalt("khco3"),
                                         findSalt("nahco3")};
    const std::vector<MineralTarget> targets{{Nutrient::Calcium, i[0], 0, 1},
                                             {Nutrient::Magnesium, i[1], 0, 1},
                                             {Nutrient::Potassium, i[2], 0, 1},
                                             {Nutrient::Bicarbonate, i[3] * kBicarbonateMgPerDegree, 0, 1}};
    const MineralRecipe recipe = remineralise(salts, targets).value();
    double worst = 0.0;
    for (std::size_t t = 0; t < targets.size(); ++t) {
        worst = std::max(worst, std::abs(recipe.reached_mg_per_L[t] - targets[t].wanted_mg_per_L));
    }
    return worst;
}

double potassiumBicarbonateAlone(const Inputs& i)
{
    const std::vector<const Salt*> salts{findSalt("khco3")};
    const std::vector<MineralTarget> targets{{Nutrient::Potassium, i[0], 0, 1},
                                             {Nutrient::Bicarbonate, i[1] * kBicarbonateMgPerDegree, 0, 1}};
    return remineralise(salts, targets)->salts_mg_per_L[0];
}

BagOpening bagOf(const Inputs& i)
{
    return openBag({i[0]}, MeqPerL{i[1]}, {i[2]}, {i[3]}, {i[4], i[5]}).value();
}

FunctionMap chlorineFunctions()
{
    return {
        {"thio_tetra", [](const Inputs&) { return kThiosulfatePerChlorine; }},
        {"thio_sulfate", [](const Inputs&) { return kThiosulfatePerChlorineSulfate; }},
        {"thio_sulfur", [](const Inputs&) { return kThiosulfatePerChlorineSulfur; }},
        {"thio_g", [](const Inputs& i) { return orNothing(thiosulfate_g({i[0]}, i[1])); }},
        {"chloramine_n", [](const Inputs& i) { return ammoniaFromChloramine({i[0]}).value; }},
        {"nh2cl", [](const Inputs& i) { return asCl2(Monochloramine{i[0]}).value; }},
        {"bleach_g_per_L",
         [](const Inputs& i) { return bleachStrength(i[0], BleachBasis::HypochloriteByVolume, 1.1)->value / 1000.0; }},
        {"dip", dip_mg_per_L},
        {"quench_g", [](const Inputs& i) { return orNothing(thiosulfate_g({dip_mg_per_L(i)}, i[2])); }},
    };
}

} // namespace

FunctionMap dosingFunctions()
{
    FunctionMap all{
        {"rise_share", [](const Inputs& i) { return orNothing(riseFromShare(i[0], i[1], i[2])); }},
        {"k_per_dkh",
         [](const Inputs&) {
             const Salt& salt = *findSalt("khco3");
             return riseFrom(salt, Nutrient::Potassium, gramsForAlkalinity(salt, 1.0, 1.0).value(), 1.0).value();
         }},
        {"ceiling_peak", [](const Inputs& i) { return doseCeiling(plan(i))->afterDose; }},
        {"ceiling_trough", [](const Inputs& i) { return doseCeiling(plan(i))->afterChange; }},
        {"peak_after",
         [](const Inputs& i) {
             // The rows count the first dose into water that has none of it.
             return doseSteps(plan({i[0], i[1]}), static_cast<int>(i[2])).back().afterDose;
         }},
        {"settle", [](const Inputs& i) { return static_cast<double>(intervalsToSettle(i[0]).value()); }},
        {"dose_to_hold", [](const Inputs& i) { return orNothing(doseToHold(i[0], i[1], i[2], i[3])); }},
        {"soft_share", [](const Inputs& i) { return orNothing(softShare(i[0], i[1], i[2])); }},
        {"soft_mix",
         [](const Inputs& i) {
             const double soft = softShare(i[0], i[1], i[2]).value();
             return (1.0 - soft) * i[3] + soft * i[4];
         }},
        {"rest_nahco3", restOfAlkalinity},
        {"nnls_misfit", misfitOfFiveSalts},
        {"nnls_khco3", potassiumBicarbonateAlone},
        {"bag", [](const Inputs& i) { return orNothing(bagShare(i[0], std::span(i).subspan(1))); }},
        {"bag_replace", [](const Inputs& i) { return orNothing(bagShareReplacing(i[0], static_cast<int>(i[1]))); }},
        {"drip_min", [](const Inputs& i) { return orNothing(dripTime_min(i[0], i[1], i[2])); }},
        {"blend_linear", [](const Inputs& i) { return i[0] * i[1] + (1.0 - i[0]) * i[2]; }},
        {"rate_per_h", [](const Inputs& i) { return ratePerHour(i[0], i[1], i[2]); }},
        {"bag_ph_closed", [](const Inputs& i) { return bagOf(i).pHClosed; }},
        {"bag_ph_open", [](const Inputs& i) { return bagOf(i).pHOpen; }},
        {"bag_nh3_closed", [](const Inputs& i) { return bagOf(i).freeClosed.value; }},
        {"bag_nh3_open", [](const Inputs& i) { return bagOf(i).freeOpen.value; }},
    };
    all.merge(chlorineFunctions());
    return all;
}

std::map<std::string, NamedFunction> saltFunctions()
{
    using Words = std::vector<std::string>;
    return {
        {"rise", [](const Words& w,
                    const Inputs& i) { return orNothing(riseFrom(*findSalt(w[1]), nutrientOf(w[2]), i[0], i[1])); }},
        {"alk",
         [](const Words& w, const Inputs& i) { return orNothing(gramsForAlkalinity(*findSalt(w[1]), i[0], i[1])); }},
        {"hard",
         [](const Words& w, const Inputs& i) { return orNothing(gramsForHardness(*findSalt(w[1]), i[0], i[1])); }},
        {"solubility", [](const Words& w, const Inputs&) { return findSalt(w[1])->solubility_g_per_100g; }},
        {"solubility_g_per_kg",
         [](const Words& w, const Inputs&) { return 10.0 * findSalt(w[1])->solubility_g_per_100g; }},
        {"grams",
         [](const Words& w, const Inputs& i) {
             return 1000.0 * orNothing(gramsFor(*findSalt(w[1]), nutrientOf(w[2]), i[0], 1.0));
         }},
    };
}

Function functionNamed(const std::string& name)
{
    static const FunctionMap plain = [] {
        FunctionMap all = basicFunctions();
        all.merge(carbonateFunctions());
        all.merge(gasFunctions());
        all.merge(dosingFunctions());
        return all;
    }();
    static const std::map<std::string, NamedFunction> named = saltFunctions();
    if (const auto found = plain.find(name); found != plain.end()) {
        return found->second;
    }
    std::vector<std::string> words;
    std::istringstream in(name);
    for (std::string word; std::getline(in, word, ':');) {
        words.push_back(word);
    }
    const auto found = named.find(words.front());
    if (found == named.end()) {
        return {};
    }
    return [words, call = found->second](const Inputs& inputs) { return call(words, inputs); };
}

} // namespace littoral::test
