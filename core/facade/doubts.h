// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecast_case.h"
#include "core/forecast/contradiction.h"

#include <QDate>
#include <QStringList>

namespace littoral::facade {

/// What would make contradicting readings agree, one sentence a cause, most likely first.
[[nodiscard]] QStringList causeSentences(const ForecastCase& inputs, const std::vector<forecast::Explanation>& causes,
                                         const QDate& today);

} // namespace littoral::facade
