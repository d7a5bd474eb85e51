// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/carbonate.h"

/// Conductivity and temperature scales.
namespace littoral::water {

/// Share of conductivity per kelvin by which meters correct to 25 °C (APHA 2510, from memory; meters use 0.019-0.021).
inline constexpr double kConductivityPerKelvin = 0.0191;

/// Conductivity at 25 °C, µS/cm, from one read without compensation at `t_C` (0..40 °C; linear rule, 2 % at the ends).
[[nodiscard]] constexpr double conductivityAt25_uS(double read_uS, double t_C)
{
    return read_uS / (1.0 + kConductivityPerKelvin * (t_C - 25.0));
}

/// Dissolved solids, mg/L, as a meter with the given scale would show them (0.5 for a sodium chloride scale, 0.7 for
/// another common one, both from memory; natural waters 0.55-0.75).
[[nodiscard]] constexpr double dissolvedSolids_mg_per_L(double at25_uS, double scale)
{
    return at25_uS * scale;
}

/// Conductivity at 25 °C, µS/cm, from the main ions (limiting conductivities with Onsager's and Falkenhagen's
/// retardation). Within 5 % of PHREEQC 3 in four fresh waters.
[[nodiscard]] double conductivityOf_uS(const Ions& ions);

[[nodiscard]] constexpr double fahrenheitFromCelsius(double t_C)
{
    return 1.8 * t_C + 32.0;
}
[[nodiscard]] constexpr double celsiusFromFahrenheit(double t_F)
{
    return (t_F - 32.0) / 1.8;
}

} // namespace littoral::water
