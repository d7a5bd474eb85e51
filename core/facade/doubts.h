// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecast_case.h"
#include "core/forecast/contradiction.h"

#include <QDate>
#include <QStringList>

namespace littoral::facade {

/// Whether the readings contradict each other so far that a cause should be looked for: not fitted, or two of them at
/// odds with the rest.
[[nodiscard]] bool askForCauses(const forecast::Diagnostics& diagnostics);

/// What would make them agree, one sentence a cause, most likely first.
[[nodiscard]] QStringList causeSentences(const ForecastCase& inputs, const std::vector<forecast::Explanation>& causes,
                                         const QDate& today);

} // namespace littoral::facade
