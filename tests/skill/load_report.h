// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/skill/runs.h"

namespace littoral::skill {

/// Puts loads into simulated tanks and prints how often the filter carried them beside the odds stated for it.
void printLoads(const Batch& batch);

} // namespace littoral::skill
