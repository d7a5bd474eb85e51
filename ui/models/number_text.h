// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

namespace littoral::ui {

/// A number as people type it: '.' or ',' as the decimal mark, '-' or the true minus, spaces around it. Nothing when
/// the text is no number, or not a finite one.
[[nodiscard]] std::optional<double> numberFrom(const QString& text);

/// The shortest text that reads back as `value` to `digits` significant figures: "0.05", "12", "1500".
[[nodiscard]] QString numberText(double value, int digits = 6);

/// As numberText, empty for nothing; numberOrEmpty is empty for zero, which many
/// record fields use for "not given".
[[nodiscard]] QString numberText(const std::optional<double>& value);
[[nodiscard]] QString numberOrEmpty(double value);

} // namespace littoral::ui
