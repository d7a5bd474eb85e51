// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace littoral::findings {

[[nodiscard]] double medianOf(std::vector<double> values); ///< 0 of nothing
/// Median absolute deviation times 1.4826: the standard deviation if the values were normal (Hampel 1974, J. Am. Stat.
/// Assoc. 69, 383-393; from memory).
[[nodiscard]] double spreadOf(const std::vector<double>& values);

} // namespace littoral::findings
