// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/change_points.h"

#include "core/findings/robust.h"

#include <algorithm>
#include <cmath>

namespace littoral::findings {

namespace {

constexpr std::size_t kFewest = 8;
constexpr std::size_t kFewestOnASide = 4;

std::vector<double> valuesOf(std::span<const record::Reading* const> readings)
{
    std::vector<double> values;
    for (const record::Reading* reading : readings) {
        values.push_back(reading->value);
    }
    return values;
}

void split(std::span<const record::Reading* const> readings, double level, std::vector<ChangePoint>& found)
{
    if (readings.size() < kFewest) {
        return;
    }
    const std::vector<double> values = valuesOf(readings);
    const auto test = pettitt(values);
    if (!test || test->probability > level || test->last + 1 < kFewestOnASide ||
        readings.size() - test->last - 1 < kFewestOnASide) {
        return;
    }
    const auto left = readings.first(test->last + 1);
    const auto right = readings.subspan(test->last + 1);
    split(left, level, found);
    found.push_back({left.back()->at, right.front()->at, medianOf(valuesOf(left)), medianOf(valuesOf(right)),
                     test->statistic, test->probability});
    split(right, level, found);
}

} // namespace

std::optional<Pettitt> pettitt(std::span<const double> values)
{
    const std::size_t count = values.size();
    if (count < kFewestOnASide) {
        return std::nullopt;
    }
    // U(t) grows from U(t-1) by the signs of x_t against all values: those before cancel, those after come in.
    Pettitt test;
    double u = 0.0;
    for (std::size_t t = 0; t + 1 < count; ++t) {
        for (const double other : values) {
            u += values[t] > other ? 1.0 : values[t] < other ? -1.0 : 0.0;
        }
        if (std::abs(u) > test.statistic) {
            test.statistic = std::abs(u);
            test.last = t;
        }
    }
    if (test.statistic == 0.0) {
        return std::nullopt;
    }
    const auto n = static_cast<double>(count);
    test.probability = std::min(1.0, 2.0 * std::exp(-6.0 * test.statistic * test.statistic / (n * n * n + n * n)));
    return test;
}

std::vector<ChangePoint> changePoints(const record::LayoutRecord& layout, const QString& parameter,
                                      const record::Moment& at, double level)
{
    std::vector<const record::Reading*> readings;
    for (const record::Reading* reading : layout.readingsOf(parameter)) {
        if (reading->at <= at) {
            readings.push_back(reading);
        }
    }
    std::vector<ChangePoint> found;
    split(readings, level, found);
    return found;
}

} // namespace littoral::findings
