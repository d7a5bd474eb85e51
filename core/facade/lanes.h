// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/lane_model.h"
#include "core/record/row.h"

namespace littoral::facade {

/// One layout's lane as of `now`, due work reckoned to `until`. `forecast` may be null. `question` is the one about
/// easing the water changes, if it is to be put (see EaseDesk).
[[nodiscard]] LaneModel laneOf(const record::Row& row, record::LayoutId layout, const record::Moment& now,
                               const QDate& until, const ForecastResult* forecast, ForecastState state,
                               const std::optional<care::DueItem>& question = {});

} // namespace littoral::facade
