// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

/// Water that leaves as vapour and leaves its minerals behind. Topping up and changing water do opposite things to
/// them, so their litres are kept apart.
namespace littoral::water {

/// Concentration when `lost_L` of `net_L` have gone and nothing was replaced.
[[nodiscard]] Result<double> afterEvaporation(double concentration, double net_L, double lost_L);
/// Concentration after `intervals` of topping up `lost_L` each with water of `topUp`, no changes.
[[nodiscard]] Result<double> afterTopUps(double start, double topUp, double lost_L, double net_L, int intervals);
/// Where it settles, just before the change, with `lost_L` topped up with `topUp` water and `changed_L` replaced by
/// `source` water per interval: topped up to full first, then changed.
[[nodiscard]] Result<double> topUpSteadyState(double topUp, double source, double lost_L, double changed_L);

} // namespace littoral::water
