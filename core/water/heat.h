// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

/// Heat: what a tank loses, what a heater needs, how fast it cools without one.
namespace littoral::water {

/// Specific heat of water, kJ/(kg K), at tank temperatures, and heat of evaporation at 24 °C, kJ/kg (from memory).
inline constexpr double kHeatCapacity = 4.182;
inline constexpr double kEvaporationHeat = 2440.0;
/// W/(m² K) of a lidded glass tank: common practice; 5 well covered, 10 with an open top.
inline constexpr double kUsualHeatTransfer = 7.0;

/// Four sides and the top, m²; the base stands on its mat. Lengths in cm.
[[nodiscard]] double coolingSurface_m2(double length_cm, double depth_cm, double height_cm);
/// Watts to hold a temperature difference.
[[nodiscard]] double steadyPower_W(double transfer, double surface_m2, double difference_K);
/// kJ to warm the water.
[[nodiscard]] double warmUp_kJ(double net_L, double rise_K);
/// Hours with this power and no losses. Refuses no power.
[[nodiscard]] Result<double> warmUp_h(double net_L, double rise_K, double power_W);
/// Hours in which a tank without heating loses 63 % of its difference to the room.
[[nodiscard]] Result<double> coolingTime_h(double net_L, double transfer, double surface_m2);
/// Watts that evaporation takes.
[[nodiscard]] double evaporationPower_W(double litres_per_d);
/// Kilowatt-hours of a device.
[[nodiscard]] double energy_kWh(double power_W, double hours_per_d, double days);
/// Water turned over per hour by a filter; what the label states falls to about half when loaded (common practice).
[[nodiscard]] Result<double> turnover_per_h(double flow_L_per_h, double net_L);

} // namespace littoral::water
