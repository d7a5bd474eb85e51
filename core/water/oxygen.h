// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/quantities.h"

/// Oxygen and carbon dioxide between water, air and plants. Temperatures in °C, pressures in standard atmospheres.
namespace littoral::water {

inline constexpr double kMillimetresPerAtmosphere = 760.0;

/// Vapour pressure of water (fit of Benson & Krause 1980, from memory; 0.1 % from printed steam tables at 20-30 °C).
[[nodiscard]] double vapourPressure_atm(double t_C);
/// Pressure of the standard atmosphere at a height (ISO 2533 barometric formula, from memory), m -500..5000. A
/// barometer reading "at sea level" must be undone first; this is the pressure on the spot.
[[nodiscard]] Result<double> standardPressure_atm(double height_m);

/// mg/L of oxygen in fresh water that stands in moist air (Benson & Krause 1980, the form of APHA 4500-O; pressure
/// after Benson & Krause 1984, equation 24). 0-40 °C, 0.5-1.1 atm.
[[nodiscard]] Result<double> oxygenSaturation_mg_per_L(double t_C, double pressure_atm = 1.0);

/// Schmidt numbers in fresh water (Wanninkhof 1992, from memory), 0-30 °C; taken up to 35.
[[nodiscard]] double schmidtCo2(double t_C);
[[nodiscard]] double schmidtOxygen(double t_C);
/// How much slower CO2 crosses the surface than oxygen: (Sc CO2 / Sc O2) ^ -1/2.
[[nodiscard]] double co2TransferPerOxygen(double t_C);

/// First order: what is left of the difference to equilibrium after `hours` at `rate` per hour.
[[nodiscard]] double relaxed(double start, double equilibrium, double rate_per_h, double hours);
/// Grams per hour that hold a level against the surface.
[[nodiscard]] double feedToHold_g_per_h(double level_mg_per_L, double equilibrium_mg_per_L, double rate_per_h,
                                        double net_L);

/// The day of a planted tank with one block of light: dO/dt = P − R + K (saturation − O), P only in the light (whole
/// stream balance of Odum 1956). mg/L/h, per hour, hours.
struct OxygenDay
{
    double production = 0.0;
    double respiration = 0.0;
    double exchange_per_h = 0.0;
    double saturation_mg_per_L = 0.0;
    double lightHours = 0.0;
};
struct OxygenSwing
{
    double lightLevel = 0.0; ///< where it would settle in endless light
    double darkLevel = 0.0;  ///< and in endless dark
    double dusk = 0.0;
    double dawn = 0.0; ///< the day's lowest
};
/// The day that repeats itself. Refuses no exchange and a day that is not within 0-24 h.
[[nodiscard]] Result<OxygenSwing> oxygenSwing(const OxygenDay& day);

/// Production in light: Pmax tanh(alpha I / Pmax) (Jassby & Platt 1976, Limnol. Oceanogr. 21:540).
[[nodiscard]] double lightResponse(double most, double slope, double light);
/// Light at which production stops rising in proportion: Pmax / alpha.
[[nodiscard]] constexpr double lightSaturation(double most, double slope)
{
    return most / slope;
}
/// g of CO2 taken up per g of oxygen made, for a photosynthetic quotient (mol O2 per mol CO2, usually 1.2).
[[nodiscard]] double co2PerOxygen_g_per_g(double quotient);

} // namespace littoral::water
