// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/robust.h"

#include <algorithm>
#include <cmath>

namespace littoral::findings {

namespace {

constexpr double kNormalConsistency = 1.4826;

} // namespace

double medianOf(std::vector<double> values)
{
    if (values.empty()) {
        return 0.0;
    }
    std::ranges::sort(values);
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2.0;
}

double spreadOf(const std::vector<double>& values)
{
    const double middle = medianOf(values);
    std::vector<double> away;
    away.reserve(values.size());
    for (const double value : values) {
        away.push_back(std::abs(value - middle));
    }
    return kNormalConsistency * medianOf(std::move(away));
}

} // namespace littoral::findings
