// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace littoral::skill {

/// Runs and prints the simulation-based calibration of tests/forecast/rank_check.h on `tanks` tanks.
void printRanks(int tanks, unsigned threads);

} // namespace littoral::skill
