// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/observation.h"

#include "core/forecast/priors.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::forecast {

namespace {

// Digital kits, in their unit: share of the value from reading it, share from the model, and a floor.
constexpr double kDigitalScatter = 0.09;
constexpr double kDigitalFloor = 0.04;

double digitalScale(double m)
{
    const double reading = kDigitalScatter * m;
    const double model = kDiscrepancy * m;
    return std::sqrt(reading * reading + model * model + kDigitalFloor * kDigitalFloor);
}

/// Index of the step whose logarithm is nearest.
std::ptrdiff_t nearestStep(const std::vector<double>& steps, double value, double offset)
{
    std::ptrdiff_t best = 0;
    double distance = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const double d = std::fabs(std::log((steps[i] + offset) / (std::max(value, 0.0) + offset)));
        if (d < distance) {
            distance = d;
            best = static_cast<std::ptrdiff_t>(i);
        }
    }
    return best;
}

/// Midpoints of neighbouring steps on the scale ln(step + half the first step).
std::vector<double> boundariesOf(const std::vector<double>& steps)
{
    const double offset = 0.5 * steps[1];
    std::vector<double> boundaries;
    for (std::size_t i = 0; i + 1 < steps.size(); ++i) {
        boundaries.push_back(0.5 * (std::log(steps[i] + offset) + std::log(steps[i + 1] + offset)));
    }
    return boundaries;
}

double cardScatter(const Kit& kit)
{
    const double reader = kReadingScatter * kit.scatterFactor;
    return std::sqrt(reader * reader + kDiscrepancy * kDiscrepancy);
}

} // namespace

double normalCdf(double x)
{
    if (x > 7.0) {
        return 1.0;
    }
    if (x < -7.0) {
        return 0.0;
    }
    return 0.5 * std::erfc(-x * 0.70710678118654752);
}

double studentCdf4(double t)
{
    const double q = 1.0 + 0.25 * t * t;
    return 0.5 + 0.375 * t / std::sqrt(q) * (1.0 - t * t / (12.0 * q));
}

double studentPdf4(double t)
{
    return 0.375 * std::pow(1.0 + 0.25 * t * t, -2.5);
}

std::vector<double> stepMasses(double x, double s, std::span<const double> boundaries)
{
    std::vector<double> masses;
    masses.reserve(boundaries.size() + 1);
    double below = 0.0;
    for (const double boundary : boundaries) {
        const double upTo = normalCdf((boundary - x) / s);
        masses.push_back(upTo - below);
        below = upTo;
    }
    masses.push_back(1.0 - below);
    return masses;
}

CardOdds::CardOdds(const Kit& kit)
    : m_boundaries(boundariesOf(kit.steps))
    , m_offset(0.5 * kit.steps[1])
    , m_scatter(cardScatter(kit))
{
}

void CardOdds::operator()(double m, std::span<double> out) const
{
    const std::size_t n = count();
    const double x = std::log(m + m_offset);
    double below = 0.0;
    for (std::size_t k = 0; k + 1 < n; ++k) {
        const double upTo = normalCdf((m_boundaries[k] - x) / m_scatter);
        out[k] = upTo - below;
        below = upTo;
    }
    out[n - 1] = 1.0 - below;
    // A reading slips to a neighbouring step; at the ends of the card the slip stays where it is.
    double before = out[0];
    for (std::size_t k = 0; k < n; ++k) {
        const double here = out[k];
        const double after = k + 1 < n ? out[k + 1] : here;
        const double read = (1.0 - 2.0 * kNeighbourShare) * here + kNeighbourShare * (before + after);
        out[k] = (1.0 - kOutlierShare) * read + kOutlierShare / static_cast<double>(n);
        before = here;
    }
}

ReadingModel::ReadingModel(const Kit& kit, const CaseReading& reading)
{
    if (kit.steps.size() >= 2) {
        placeOnCard(kit, reading);
        return;
    }
    m_low = reading.below ? -std::numeric_limits<double>::infinity() : reading.low;
    m_high = reading.high;
    m_outlierDensity = 1.0 / usualTop(kit);
}

void ReadingModel::placeOnCard(const Kit& kit, const CaseReading& reading)
{
    const std::vector<double>& steps = kit.steps;
    m_steps = static_cast<std::ptrdiff_t>(steps.size());
    m_offset = 0.5 * steps[1];
    m_boundaries = boundariesOf(steps);
    m_inverseScatter = 1.0 / cardScatter(kit);

    const std::ptrdiff_t top = m_steps - 1;
    if (reading.below) {
        // "<high": the steps below it, at least the zero step.
        m_first = 0;
        m_last = 0;
        while (m_last < top && steps[static_cast<std::size_t>(m_last + 1)] < reading.high) {
            ++m_last;
        }
    } else if (std::isinf(reading.high)) {
        // ">low": the steps above it, at least the top one.
        m_last = top;
        m_first = top;
        while (m_first > 0 && steps[static_cast<std::size_t>(m_first - 1)] > reading.low) {
            --m_first;
        }
    } else {
        m_first = nearestStep(steps, reading.low, m_offset);
        m_last = std::max(m_first, nearestStep(steps, reading.high, m_offset));
    }
}

double ReadingModel::upTo(std::ptrdiff_t k, double x) const
{
    if (k < 0) {
        return 0.0;
    }
    if (k >= m_steps - 1) {
        return 1.0;
    }
    return normalCdf((m_boundaries[static_cast<std::size_t>(k)] - x) * m_inverseScatter);
}

double ReadingModel::cardLikelihood(double m) const
{
    const double x = std::log(m + m_offset);
    // Mostly one step was read: each of these is an integral of the normal, and this is where calibrations spend time.
    const bool single = m_first == m_last;
    const double last = upTo(m_last, x);
    const double first = single ? last : upTo(m_first, x);
    const double beforeFirst = upTo(m_first - 1, x);
    const double beforeLast = single ? beforeFirst : upTo(m_last - 1, x);
    // A reading slips to a neighbouring step; at the ends of the card the slip stays where it is.
    double slippedUp = beforeLast - upTo(m_first - 2, x);
    if (m_first == 0) {
        slippedUp += first;
    }
    double slippedDown = upTo(m_last + 1, x) - first;
    if (m_last == m_steps - 1) {
        slippedDown += 1.0 - beforeLast;
    }
    const double read =
        (1.0 - 2.0 * kNeighbourShare) * (last - beforeFirst) + kNeighbourShare * (slippedUp + slippedDown);
    const double outlier = static_cast<double>(m_last - m_first + 1) / static_cast<double>(m_steps);
    return (1.0 - kOutlierShare) * read + kOutlierShare * outlier;
}

double ReadingModel::digitalLikelihood(double m) const
{
    const double scale = digitalScale(m);
    if (m_low == m_high) {
        return (1.0 - kOutlierShare) * studentPdf4((m_low - m) / scale) / scale + kOutlierShare * m_outlierDensity;
    }
    const double below = std::isinf(m_low) ? 0.0 : studentCdf4((m_low - m) / scale);
    const double upTo = std::isinf(m_high) ? 1.0 : studentCdf4((m_high - m) / scale);
    const double top = 1.0 / m_outlierDensity;
    const double share = std::clamp((std::min(m_high, top) - std::max(m_low, 0.0)) / top, 0.01, 1.0);
    return (1.0 - kOutlierShare) * std::max(upTo - below, 0.0) + kOutlierShare * share;
}

double ReadingModel::logLikelihood(double m) const
{
    return std::log(m_steps > 0 ? cardLikelihood(m) : digitalLikelihood(m));
}

ReadingModel::Tails ReadingModel::tails(double m) const
{
    if (m_steps > 0) {
        const double x = std::log(m + m_offset);
        return {upTo(m_last, x), 1.0 - upTo(m_first - 1, x)};
    }
    const double scale = digitalScale(m);
    Tails tails{1.0, 1.0};
    if (!std::isinf(m_high)) {
        tails.atMost = studentCdf4((m_high - m) / scale);
    }
    if (!std::isinf(m_low)) {
        tails.atLeast = 1.0 - studentCdf4((m_low - m) / scale);
    }
    return tails;
}

} // namespace littoral::forecast
