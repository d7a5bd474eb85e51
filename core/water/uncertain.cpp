// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/uncertain.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {
// Step of the central difference: the cube root of the machine's precision, where its two errors balance.
constexpr double kDerivativeStep = 6.0e-6;

std::vector<double> valuesOf(std::span<const Measured> inputs)
{
    std::vector<double> values;
    values.reserve(inputs.size());
    std::ranges::transform(inputs, std::back_inserter(values), &Measured::value);
    return values;
}
} // namespace

double rootSumOfSquares(std::span<const double> deviations)
{
    double sum = 0.0;
    for (const double deviation : deviations) {
        sum += deviation * deviation;
    }
    return std::sqrt(sum);
}

Spread propagate(const ScalarFunction& function, std::span<const Measured> inputs)
{
    std::vector<double> values = valuesOf(inputs);
    Spread spread{function(values), 0.0, 0.0};
    std::vector<double> above;
    std::vector<double> below;
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        double most = 0.0;
        double least = 0.0;
        for (const double moved : {inputs[i].value - inputs[i].error, inputs[i].value + inputs[i].error}) {
            values[i] = moved;
            const double deviation = function(values) - spread.value;
            if (!std::isnan(deviation)) {
                most = std::max(most, deviation);
                least = std::max(least, -deviation);
            }
        }
        values[i] = inputs[i].value;
        above.push_back(most);
        below.push_back(least);
    }
    spread.plus = rootSumOfSquares(above);
    spread.minus = rootSumOfSquares(below);
    return spread;
}

double firstOrderError(const ScalarFunction& function, std::span<const Measured> inputs)
{
    std::vector<double> values = valuesOf(inputs);
    std::vector<double> parts;
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        const double step = kDerivativeStep * std::max(1.0, std::abs(inputs[i].value));
        values[i] = inputs[i].value + step;
        const double up = function(values);
        values[i] = inputs[i].value - step;
        const double down = function(values);
        values[i] = inputs[i].value;
        parts.push_back((up - down) / (2.0 * step) * inputs[i].error);
    }
    return rootSumOfSquares(parts);
}

double kitStepError(double reading, std::span<const double> steps)
{
    if (steps.size() < 2) {
        return 0.0;
    }
    const auto above = std::ranges::upper_bound(steps, reading);
    const auto below = std::ranges::lower_bound(steps, reading);
    double widest = 0.0;
    if (above != steps.end()) {
        widest = *above - reading;
    }
    if (below != steps.begin()) {
        widest = std::max(widest, reading - *std::prev(below));
    }
    return widest / 2.0;
}

} // namespace littoral::water
