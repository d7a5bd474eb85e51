// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/forecast/tank_case.h"
#include "core/record/row.h"

namespace littoral::facade {

struct ForecastOptions
{
    double horizonDays = 28.0;
    double stepDays = 1.0;
    std::vector<double> extraDays; ///< days since flooding
    bool withGates = true;
};

/// Which future changes the forecast followed.
enum class PlanFollowed { Recorded, Cadence, None };

struct ForecastCase
{
    forecast::Request request;
    record::Moment asOf;
    record::Moment flooded;
    PlanFollowed plan = PlanFollowed::None;
    int plannedChanges = 0;
    /// Kits in request.tank.kits order, for the units of the 'kit' bands; key empty where a standard card was assumed.
    std::vector<record::TestKit> kits;
    QStringList remarks; ///< what had to be assumed, in words ("source nitrate not stated: a wide range was taken")
    quint64 fingerprint =
        0; ///< of everything that decides the answer, the time of day apart: equal means no need to run again
};

/// The record of one layout as the forecaster sees it at `asOf`. Evidence (readings, observations, losses, closings)
/// dated later is not looked at. Changes, doses, feeding and additions dated later are the plan: one that was planned
/// and has been done since counts as it was planned; one that was never planned counts as recorded. Where the layout
/// follows its cadence and nothing is planned by hand, the cadence's rounds are the plan.
[[nodiscard]] Result<ForecastCase> forecastCase(const record::Row& row, record::LayoutId layout,
                                                const record::Moment& asOf, const ForecastOptions& options = {});

} // namespace littoral::facade
