// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecast_case.h"

#include <QString>
#include <vector>

namespace littoral::facade {

/// Narrowing below this is not worth a test of its own, days.
inline constexpr double kWorthATest_d = 0.5;

/// The tests of the coming week that tell most about the date in question: at most `most`, none that narrows it by less
/// than half a day, no two of one parameter within two days of each other. Most telling first.
[[nodiscard]] std::vector<forecast::TestValue> tellingTests(const forecast::Forecast& forecast, std::size_t most = 3);

/// Key of the gate whose date the next tests narrow; "complete" for the end of the cycle.
[[nodiscard]] QString focusKey(const ForecastCase& inputs);

/// "Fen Corner", with the layout's number where the tank has had several: "Fen Corner (layout 2)".
[[nodiscard]] QString layoutTitle(const record::Row& row, record::LayoutId layout);

/// What was learned, sentence by sentence, the layouts named.
[[nodiscard]] QStringList learnedSentences(const record::Row& row, const Learned& learned);

/// A plan's name as people read it, from the day of its forecast on.
[[nodiscard]] QString planTitle(const record::Row& row, const ForecastCase& inputs,
                                const forecast::PlanOutcome& outcome);

} // namespace littoral::facade
