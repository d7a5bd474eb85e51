// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/skill/runs.h"

#include <vector>

namespace littoral::skill {

/// What the forecaster is asked to reach on these tanks; printed beside each number as "ok" or "short".
namespace floors {
inline constexpr double kLow50 = 0.44, kHigh50 = 0.60;
inline constexpr double kLow80 = 0.76, kHigh80 = 0.88;
inline constexpr double kLow95 = 0.92;
inline constexpr double kPersistence = 0.45, kLine = 0.40, kPrior = 0.70;
inline constexpr double kDateLow80 = 0.76, kDateHigh80 = 0.90, kDatePrior = 0.78;
} // namespace floors

/// The whole report on standard output. Returns how many floors were missed.
int printReport(const Batch& batch, const std::vector<TankScores>& scores);

} // namespace littoral::skill
