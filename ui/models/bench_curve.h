// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "ui/models/bench_sheet.h"
#include "ui/models/plain_table.h"
#include "ui/paint/curve.h"

#include <optional>

namespace littoral::ui {

/// How the sheet's result answers to the input that is turned most: the same sheet reckoned at many values of it.
/// Nothing for sheets whose answer is a plain product, and while there is no answer.
[[nodiscard]] std::optional<Curve> benchCurve(const BenchSheet& open, const record::Row& row);

/// Results that measure the same thing in several ways, side by side, with what is still needed for those that are
/// missing.
[[nodiscard]] std::optional<Measures> benchMeasures(const BenchSheet& open);

/// The same values to read: of the curve, else of the measures; empty without either.
[[nodiscard]] PlainTable benchTable(const std::optional<Curve>& curve, const std::optional<Measures>& measures);

} // namespace littoral::ui
