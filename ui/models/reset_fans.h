// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/reset_forecast.h"
#include "ui/paint/fan_panel.h"

namespace littoral::ui {

/// Carrying on and starting afresh on one axis from now on: total ammonia and nitrite, the fan of carrying on paler,
/// the fresh start's before it.
[[nodiscard]] FanStackModel resetFans(const facade::ResetForecast& made);
/// Instant at which that axis ends, UTC ms.
[[nodiscard]] qint64 resetEnd(const facade::ResetForecast& made);

} // namespace littoral::ui
