// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace littoral::skill {

/// Prints every published start-up figure beside what the prior says; none is left out.
void printMilestones();

} // namespace littoral::skill
