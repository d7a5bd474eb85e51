// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Physical and chemical constants. Each states its unit and where it comes from; everything else is computed from
/// them.
namespace littoral::water {

/// Abridged standard atomic weights, g/mol (IUPAC Commission on Isotopic Abundances and Atomic Weights, abridged
/// table).
namespace atomic {
inline constexpr double kH = 1.008;
inline constexpr double kC = 12.011;
inline constexpr double kN = 14.007;
inline constexpr double kO = 15.999;
inline constexpr double kNa = 22.990;
inline constexpr double kMg = 24.305;
inline constexpr double kP = 30.974;
inline constexpr double kS = 32.06;
inline constexpr double kCl = 35.45;
inline constexpr double kK = 39.098;
inline constexpr double kCa = 40.078;
} // namespace atomic

/// 0 °C in kelvin (SI definition).
inline constexpr double kZeroCelsius_K = 273.15;
/// Standard acceleration of gravity, m/s² (3rd CGPM, 1901).
inline constexpr double kGravity = 9.80665;
/// Soda-lime float glass, kg/m³ (nominal density of EN 572-1, from memory).
inline constexpr double kGlassDensity = 2500.0;

} // namespace littoral::water
