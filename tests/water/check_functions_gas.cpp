// SPDX-License-Identifier: GPL-3.0-or-later
// Functions by the names the check rows use: oxygen, exchange with air, heat, light, gas supply, evaporation.
#include "tests/water/check_functions.h"

#include "core/water/evaporation.h"
#include "core/water/gas_supply.h"
#include "core/water/heat.h"
#include "core/water/light.h"
#include "core/water/oxygen.h"

namespace littoral::test {

using namespace littoral::water;

namespace {

OxygenSwing swing(const Inputs& i)
{
    return oxygenSwing({i[0], i[1], i[2], oxygenSaturation_mg_per_L(i[3]).value(), i[4]}).value();
}

FunctionMap supplyFunctions()
{
    return {
        {"surface", [](const Inputs& i) { return coolingSurface_m2(i[0], i[1], i[2]); }},
        {"power", [](const Inputs& i) { return steadyPower_W(i[0], coolingSurface_m2(i[1], i[2], i[3]), i[4]); }},
        {"warm_kJ", [](const Inputs& i) { return warmUp_kJ(i[0], i[1]); }},
        {"warm_h", [](const Inputs& i) { return orNothing(warmUp_h(i[0], i[1], i[2])); }},
        {"cooling_h",
         [](const Inputs& i) { return orNothing(coolingTime_h(i[0], i[1], coolingSurface_m2(i[2], i[3], i[4]))); }},
        {"evap_W", [](const Inputs& i) { return evaporationPower_W(i[0]); }},
        {"after_evap", [](const Inputs& i) { return orNothing(afterEvaporation(i[0], i[1], i[2])); }},
        {"topups",
         [](const Inputs& i) { return orNothing(afterTopUps(i[0], i[1], i[2], i[3], static_cast<int>(i[4]))); }},
        {"topup_steady", [](const Inputs& i) { return orNothing(topUpSteadyState(i[0], i[1], i[2], i[3])); }},
        {"dli", [](const Inputs& i) { return dailyLight_mol(i[0], i[1]); }},
        {"turnover", [](const Inputs& i) { return orNothing(turnover_per_h(i[0], i[1])); }},
        {"bubble_mL", [](const Inputs& i) { return bubbleVolume_mL(i[0]); }},
        {"bubble_ug", [](const Inputs& i) { return bubbleMass_ug(i[0]); }},
        {"bubble_g", [](const Inputs& i) { return bubbleUse_g_per_d(i[0], i[1], i[2]); }},
        {"bubble_days", [](const Inputs& i) { return orNothing(daysLeft(i[0], bubbleUse_g_per_d(i[1], i[2], i[3]))); }},
        {"lift", [](const Inputs& i) { return liftMass_g(i[0], i[1], i[2]); }},
        {"kwh", [](const Inputs& i) { return energy_kWh(i[0], i[1], i[2]); }},
    };
}

} // namespace

FunctionMap gasFunctions()
{
    FunctionMap all{
        {"oxygen", [](const Inputs& i) { return orNothing(oxygenSaturation_mg_per_L(i[0], i[1])); }},
        {"oxygen_height",
         [](const Inputs& i) {
             return orNothing(oxygenSaturation_mg_per_L(i[0], standardPressure_atm(i[1]).value()));
         }},
        {"oxygen_percent", [](const Inputs& i) { return 100.0 * i[0] / oxygenSaturation_mg_per_L(i[1]).value(); }},
        {"height_mmHg",
         [](const Inputs& i) { return kMillimetresPerAtmosphere * orNothing(standardPressure_atm(i[0])); }},
        {"vapour_mmHg", [](const Inputs& i) { return kMillimetresPerAtmosphere * vapourPressure_atm(i[0]); }},
        {"schmidt_co2", [](const Inputs& i) { return schmidtCo2(i[0]); }},
        {"schmidt_o2", [](const Inputs& i) { return schmidtOxygen(i[0]); }},
        {"transfer_ratio", [](const Inputs& i) { return co2TransferPerOxygen(i[0]); }},
        {"relaxed", [](const Inputs& i) { return relaxed(i[0], i[1], i[2], i[3]); }},
        {"feed_to_hold", [](const Inputs& i) { return feedToHold_g_per_h(i[0], i[1], i[2], i[3]); }},
        {"swing_light", [](const Inputs& i) { return swing(i).lightLevel; }},
        {"swing_dark", [](const Inputs& i) { return swing(i).darkLevel; }},
        {"swing_dusk", [](const Inputs& i) { return swing(i).dusk; }},
        {"swing_dawn", [](const Inputs& i) { return swing(i).dawn; }},
        {"light_response", [](const Inputs& i) { return lightResponse(i[0], i[1], i[2]); }},
        {"ik", [](const Inputs& i) { return lightSaturation(i[0], i[1]); }},
        {"co2_per_o2", [](const Inputs& i) { return co2PerOxygen_g_per_g(i[0]); }},
    };
    all.merge(supplyFunctions());
    return all;
}

} // namespace littoral::test
