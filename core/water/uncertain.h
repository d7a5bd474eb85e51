// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <span>
#include <vector>

/// What the doubt about the inputs makes of a result.
///
/// Method. Each input has a value and a half-width: half a kit step, what a colour leaves open, half of the last digit
/// typed. The inputs are taken as independent. Each is moved by its half-width up and down, one at a time, and the
/// result reckoned anew; the deviations above and below the middle are each joined by the root of the sum of their
/// squares. That is the law of propagation of JCGM 100:2008 (GUM, 5.1.2) with finite differences in place of
/// derivatives, kept apart for the two sides because pH enters as a power of ten. A half-width keeps its meaning:
/// standard uncertainties in, a standard uncertainty out.
namespace littoral::water {

struct Measured
{
    double value = 0.0;
    double error = 0.0; ///< half-width, not negative
};

/// A result with how far below and above it the truth may lie.
struct Spread
{
    double value = 0.0;
    double minus = 0.0;
    double plus = 0.0;

    [[nodiscard]] double low() const { return value - minus; }
    [[nodiscard]] double high() const { return value + plus; }
};

using ScalarFunction = std::function<double(std::span<const double>)>;

/// The result at the middle values and its spread. A moved input for which the function gives NaN leaves that side out.
[[nodiscard]] Spread propagate(const ScalarFunction& function, std::span<const Measured> inputs);

/// First order only, with derivatives: the standard uncertainty of the result when the errors are standard ones. For
/// comparison with figures reckoned by hand.
[[nodiscard]] double firstOrderError(const ScalarFunction& function, std::span<const Measured> inputs);

/// Joins deviations of several inputs into one spread: `above` and `below` are how far each alone moved the result.
[[nodiscard]] double rootSumOfSquares(std::span<const double> deviations);

/// Half the way to the next lower and to the next higher colour of a kit, whichever is longer, around a reading that
/// lies on or between the steps; 0 without steps. Steps ascend.
[[nodiscard]] double kitStepError(double reading, std::span<const double> steps);

} // namespace littoral::water
