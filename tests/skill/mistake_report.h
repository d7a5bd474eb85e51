// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/skill/runs.h"

namespace littoral::skill {

/// Plants keepers' mistakes in copies of simulated tanks and prints how many are named on day 21, and how often a cause
/// is named where nothing went wrong.
void printMistakes(const Batch& batch);

} // namespace littoral::skill
