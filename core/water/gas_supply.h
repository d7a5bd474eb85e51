// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

/// Carbon dioxide from a cylinder. Weight is the only honest measure: the gauge of a cylinder with liquid in it stays
/// flat, and bubbles differ by the cube of their width.
namespace littoral::water {

/// mL of a bubble of this width.
[[nodiscard]] double bubbleVolume_mL(double diameter_mm);
/// Micrograms of CO2 in it: ideal gas at 1 atm and 25 °C, dry.
[[nodiscard]] double bubbleMass_ug(double diameter_mm);
/// Grams a day at a bubble rate: an order of magnitude, not a dose.
[[nodiscard]] double bubbleUse_g_per_d(double bubbles_per_s, double hours_per_d, double diameter_mm);

/// Grams a day from two weighings. Refuses no time between them and a cylinder that got heavier.
[[nodiscard]] Result<double> weighedUse_g_per_d(double earlier_g, double later_g, double days);
/// Days until what is left is gone.
[[nodiscard]] Result<double> daysLeft(double left_g, double use_g_per_d);
/// Grams that lift a tank from one level to another, without what escapes meanwhile.
[[nodiscard]] double liftMass_g(double net_L, double from_mg_per_L, double to_mg_per_L);

/// Share of a room's air, 0..1, if all of it were let out at once and spread evenly (25 °C).
[[nodiscard]] Result<double> roomShare(double gas_g, double room_m3);
/// 8-hour average limit for people, as a share: 5000 ppm (OSHA, as quoted by a secondary page).
inline constexpr double kWorkplaceShare = 0.005;

} // namespace littoral::water
