// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/gas_supply.h"

#include "core/water/carbonate.h"
#include "core/water/refusal.h"

#include <algorithm>
#include <numbers>

namespace littoral::water {

namespace {
// Litres per mole of an ideal gas at 1 atm (101.325 kPa) and 25 °C; R = 8.314462618 J/(mol K).
constexpr double kMolarVolume_L = 8.314462618 * (25.0 + kZeroCelsius_K) / 101.325;
} // namespace

double bubbleVolume_mL(double diameter_mm)
{
    return std::numbers::pi / 6.0 * diameter_mm * diameter_mm * diameter_mm / 1000.0;
}

double bubbleMass_ug(double diameter_mm)
{
    return bubbleVolume_mL(diameter_mm) / 1000.0 / kMolarVolume_L * kMolarMassCO2 * 1.0e6;
}

double bubbleUse_g_per_d(double bubbles_per_s, double hours_per_d, double diameter_mm)
{
    return bubbles_per_s * hours_per_d * 3600.0 * bubbleMass_ug(diameter_mm) / 1.0e6;
}

Result<double> weighedUse_g_per_d(double earlier_g, double later_g, double days)
{
    if (!(days > 0.0)) {
        return refuse("The two weighings must be some days apart.");
    }
    if (!(later_g < earlier_g)) {
        return refuse("The cylinder did not get lighter between the weighings.",
                      "Weigh it again, closed, with the same regulator on it.");
    }
    return (earlier_g - later_g) / days;
}

Result<double> daysLeft(double left_g, double use_g_per_d)
{
    if (!(use_g_per_d > 0.0)) {
        return refuse("Without use the cylinder lasts for ever.");
    }
    return std::max(0.0, left_g) / use_g_per_d;
}

double liftMass_g(double net_L, double from_mg_per_L, double to_mg_per_L)
{
    return net_L * std::max(0.0, to_mg_per_L - from_mg_per_L) / 1000.0;
}

Result<double> roomShare(double gas_g, double room_m3)
{
    const double gas_m3 = gas_g / kMolarMassCO2 * kMolarVolume_L / 1000.0;
    if (!(room_m3 > 0.0) || !(gas_g >= 0.0)) {
        return refuse("The room must have a volume.");
    }
    return std::min(1.0, gas_m3 / room_m3);
}

} // namespace littoral::water
