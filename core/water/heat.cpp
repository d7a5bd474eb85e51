// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/heat.h"

#include "core/water/refusal.h"

namespace littoral::water {

namespace {
constexpr double kSecondsPerHour = 3600.0;
constexpr double kSecondsPerDay = 86400.0;
constexpr double kWarmWaterDensity = 0.9982; // kg/L at 20 °C (handbook value)
} // namespace

double coolingSurface_m2(double length_cm, double depth_cm, double height_cm)
{
    return (2.0 * (length_cm + depth_cm) * height_cm + length_cm * depth_cm) / 1.0e4;
}

double steadyPower_W(double transfer, double surface_m2, double difference_K)
{
    return transfer * surface_m2 * difference_K;
}

double warmUp_kJ(double net_L, double rise_K)
{
    return net_L * kWarmWaterDensity * kHeatCapacity * rise_K;
}

Result<double> warmUp_h(double net_L, double rise_K, double power_W)
{
    if (!(power_W > 0.0)) {
        return refuse("A heater without power never gets there.");
    }
    return warmUp_kJ(net_L, rise_K) * 1000.0 / power_W / kSecondsPerHour;
}

Result<double> coolingTime_h(double net_L, double transfer, double surface_m2)
{
    const double conductance = transfer * surface_m2;
    if (!(conductance > 0.0)) {
        return refuse("A tank that loses no heat does not cool.");
    }
    return warmUp_kJ(net_L, 1.0) * 1000.0 / conductance / kSecondsPerHour;
}

double evaporationPower_W(double litres_per_d)
{
    return litres_per_d * kWarmWaterDensity * kEvaporationHeat * 1000.0 / kSecondsPerDay;
}

double energy_kWh(double power_W, double hours_per_d, double days)
{
    return power_W * hours_per_d * days / 1000.0;
}

Result<double> turnover_per_h(double flow_L_per_h, double net_L)
{
    if (!(net_L > 0.0)) {
        return refuse("The volume must be above zero.", "Give the net litres of the tank.");
    }
    return flow_L_per_h / net_L;
}

} // namespace littoral::water
