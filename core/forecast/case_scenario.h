// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/forecast/tank_case.h"
#include "core/sim/run.h"

#include <vector>

namespace littoral::forecast {

/// The case as the simulation runs it, from startDay to endDay. outlook: from the decision day on the members' `later`
/// multipliers apply. Stops and samples are left empty.
[[nodiscard]] sim::Scenario scenarioOf(const TankCase& tank, double endDay, bool outlook);

/// Readings the calibration uses: from startDay to decisionDay, by day. Earlier ones belong to weeks a settled layout's
/// run leaves out.
[[nodiscard]] std::vector<CaseReading> usedReadings(const TankCase& tank);

/// BadInput when the request contradicts itself or holds a number no tank can have.
[[nodiscard]] Result<void> checkRequest(const Request& request);

} // namespace littoral::forecast
