// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/constants.h"

/// Mass of an ion (or oxide) per mass of the element in it: what turns a reading "as N" into one "as the ion". Computed
/// from atomic weights; the rounded pairs printed in guidelines (45 mg/L nitrate for 10 mg/L N) differ by up to 10 %.
namespace littoral::water {

inline constexpr double kNitratePerN = (atomic::kN + 3.0 * atomic::kO) / atomic::kN;
inline constexpr double kNitritePerN = (atomic::kN + 2.0 * atomic::kO) / atomic::kN;
inline constexpr double kAmmoniumPerN = (atomic::kN + 4.0 * atomic::kH) / atomic::kN;
inline constexpr double kAmmoniaPerN = (atomic::kN + 3.0 * atomic::kH) / atomic::kN;
inline constexpr double kPhosphatePerP = (atomic::kP + 4.0 * atomic::kO) / atomic::kP;
/// Element per mass of the oxide that fertiliser labels print.
inline constexpr double kPhosphorusPerP2O5 = 2.0 * atomic::kP / (2.0 * atomic::kP + 5.0 * atomic::kO);
inline constexpr double kPotassiumPerK2O = 2.0 * atomic::kK / (2.0 * atomic::kK + atomic::kO);

} // namespace littoral::water
