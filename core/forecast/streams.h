// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>

namespace littoral::forecast {

/// Streams of a request's seed, so that more of one kind of number does not shift the others.
enum Stream : std::uint64_t {
    kCalibrationStream = 1,
    kDrawStream = 2,
    kPriorStream = 3,
    kEnsembleStream = 4,
    kFallbackStream = 5,
    kPlanStream = 6
};

[[nodiscard]] inline Error cancelled()
{
    return {Fault::Cancelled, "The forecast was stopped.", "", ""};
}

} // namespace littoral::forecast
