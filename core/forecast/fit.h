// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/forecast/linear.h"
#include "core/forecast/tank_case.h"

#include <memory>
#include <stop_token>
#include <vector>

namespace littoral::forecast {

/// The members calibrated to one tank's readings, kept so that plans, sliders and further questions need no new
/// calibration. Valid for any request whose tank differs only in events after decisionDay. Cheap to copy.
struct Fit
{
    std::shared_ptr<const Rows> members; ///< Request::draws equally weighted rows of z; the prior's when not fitted
    std::vector<double> mean;            ///< of z over the calibrated members
    std::vector<double> sd;
    Diagnostics diagnostics;
};

/// Calibrates to the readings up to decisionDay. Deterministic in the request; safe to call from several threads.
/// Fails with BadInput (see checkRequest) and Cancelled.
[[nodiscard]] Result<Fit> fit(const Request& request, std::stop_token stop = {});

/// A fit brought up to date with readings that `earlier` had not seen, by weighting its members anew: a preview while a
/// round is typed, not a calibration. `request` holds all readings, old and new; `fresh` their places in
/// request.tank.readings. Nothing when too few members agree with the new readings (effective sample under a
/// tenth), which asks for a calibration.
[[nodiscard]] Result<std::optional<Fit>> updated(const Fit& earlier, const Request& request,
                                                 const std::vector<std::size_t>& fresh);

} // namespace littoral::forecast
