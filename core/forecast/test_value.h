// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/ensemble.h"
#include "core/forecast/tank_case.h"

#include <vector>

namespace littoral::forecast {

/// Odds of reading each step of the substance's newest kit at the rows up to kStepOddsDays ahead and at the extra days.
/// Fills SubstanceForecast::steps and stepOdds.
void fillStepOdds(const Request& request, const Timetable& timetable, const EnsembleOutcome& outcome,
                  SubstanceForecast& substance);

/// Candidate tests of the coming week (each kit's substance on each row day), with the expected width of the 8-in-10
/// range of the focused date after the answer: members are weighted by how likely each makes each answer, the widths
/// averaged by how likely the answer is (preposterior analysis; D. V. Lindley, Ann. Math. Statist. 27, 1956, with the
/// width of a range in place of entropy). Most telling first.
[[nodiscard]] std::vector<TestValue> nextTests(const Request& request, const Timetable& timetable,
                                               const EnsembleOutcome& outcome);

} // namespace littoral::forecast
