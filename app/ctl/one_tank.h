// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/ctl/arguments.h"
#include "app/ctl/forecast_run.h"

#include <optional>

namespace littoral::ctl {

/// Declares FILE, --tank, --gate, --load and --no-learning, which the verbs about one tank's future share.
void declareOneTank(Arguments& arguments);

/// The forecast of the tank named on the line, as of the clock's now, or the exit code after a sentence has been
/// written.
struct OneTank
{
    const record::Tank* tank = nullptr;
    std::optional<TankForecast> answer;
    int code = kDone;

    explicit operator bool() const { return answer.has_value(); }
};
[[nodiscard]] OneTank forecastOneTank(Context& context, const Arguments& arguments, const facade::Keeper& keeper);

/// A day since flooding as an ISO date; empty beyond the days reckoned.
[[nodiscard]] QString isoDay(const TankForecast& one, double day);

} // namespace littoral::ctl
