// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/forecast/fit.h"
#include "core/forecast/tank_case.h"

#include <stop_token>

namespace littoral::forecast {

/// Calibrates an ensemble to the readings up to decisionDay and runs it through the planned events. Deterministic in
/// the request (seed included); safe to call from several threads at once. Fails with BadInput for a case that
/// contradicts itself (reading after decisionDay, fraction outside 0..1, kit index out of range) and Cancelled when
/// stopped.
[[nodiscard]] Result<Forecast> forecast(const Request& request, std::stop_token stop = {});

/// The same with members calibrated before: what a slider or a plan asks. request.draws may be fewer than the fit's
/// members for a quick answer.
[[nodiscard]] Result<Forecast> forecast(const Request& request, const Fit& fit, std::stop_token stop = {});

} // namespace littoral::forecast
