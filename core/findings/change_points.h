// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <optional>
#include <span>
#include <vector>

namespace littoral::findings {

/// Pettitt's test for one change in level (A. N. Pettitt 1979, Applied Statistics 28, 126-135): U(t) is the sum of
/// sgn(x_i - x_j) over i <= t < j, K the largest |U|, p about 2 exp(-6 K² / (n³ + n²)), at most 1. By ranks, so an
/// outlier counts no more than any other value. It asks about one change and takes the values as independent: readings
/// a day apart are not, so a trend or a slow swing also gives a small p.
struct Pettitt
{
    std::size_t last = 0; ///< index of the last value before the change
    double statistic = 0.0;
    double probability = 1.0;
};
/// Nothing with fewer than 4 values, or when all are the same.
[[nodiscard]] std::optional<Pettitt> pettitt(std::span<const double> values);

struct ChangePoint
{
    record::Moment before;    ///< last reading at the old level
    record::Moment after;     ///< first at the new one
    double levelBefore = 0.0; ///< medians, canonical
    double levelAfter = 0.0;
    double statistic = 0.0;
    double probability = 1.0;
};

/// Change points of one parameter up to `at`, oldest first: the test is made on the whole series and, where it finds
/// one with p at most `level`, again on either side. Needs eight readings, and four on either side of a change. The p
/// of later splits is not corrected for their number.
[[nodiscard]] std::vector<ChangePoint> changePoints(const record::LayoutRecord& layout, const QString& parameter,
                                                    const record::Moment& at, double level = 0.05);

} // namespace littoral::findings
