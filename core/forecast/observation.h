// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/tank_case.h"

#include <cstddef>
#include <span>
#include <vector>

namespace littoral::forecast {

/// Lognormal scatter of reading a card and of the model against the truth; they add in squares.
inline constexpr double kReadingScatter = 0.15;
inline constexpr double kDiscrepancy = 0.18;
/// Share of readings taken one step off, to each side; share that say nothing at all.
inline constexpr double kNeighbourShare = 0.05;
inline constexpr double kOutlierShare = 0.03;

[[nodiscard]] double normalCdf(double x);
/// Student's t with four degrees of freedom (closed form).
[[nodiscard]] double studentCdf4(double t);
[[nodiscard]] double studentPdf4(double t);

/// Probability of each step of a card before misreads and outliers: normal mass of mean x and spread s between the
/// boundaries, open at both ends. n boundaries make n + 1 steps.
[[nodiscard]] std::vector<double> stepMasses(double x, double s, std::span<const double> boundaries);

/// Probability of reading each step of a card (misreads and outliers included) when its ideal value is m (kit unit).
/// Built once per kit, asked for many members.
class CardOdds final
{
public:
    /// kit must have steps.
    explicit CardOdds(const Kit& kit);
    [[nodiscard]] std::size_t count() const { return m_boundaries.size() + 1; }
    /// out has count() places.
    void operator()(double m, std::span<double> out) const;

private:
    std::vector<double> m_boundaries;
    double m_offset = 0.0;
    double m_scatter = 1.0;
};

/// How likely one reading is for a value the kit would ideally show. Never zero.
class ReadingModel final
{
public:
    ReadingModel(const Kit& kit, const CaseReading& reading);

    /// Log likelihood of the reading when the kit's ideal value is m (kit unit, not negative).
    [[nodiscard]] double logLikelihood(double m) const;

    /// Probabilities of a reading at most, and at least, as high as this one, misreads and outliers left out: how
    /// surprising it is. Both include the reading itself.
    struct Tails
    {
        double atMost = 0.0;
        double atLeast = 0.0;
    };
    [[nodiscard]] Tails tails(double m) const;

private:
    void placeOnCard(const Kit& kit, const CaseReading& reading);
    [[nodiscard]] double cardLikelihood(double m) const;
    [[nodiscard]] double digitalLikelihood(double m) const;
    /// Mass of steps 0..k.
    [[nodiscard]] double upTo(std::ptrdiff_t k, double x) const;

    // Card: steps first..last were reported.
    std::vector<double> m_boundaries;
    double m_offset = 0.0;
    double m_inverseScatter = 1.0;
    std::ptrdiff_t m_first = 0;
    std::ptrdiff_t m_last = 0;
    std::ptrdiff_t m_steps = 0;
    // Digital: the reported interval; low == high is a value.
    double m_low = 0.0;
    double m_high = 0.0;
    double m_outlierDensity = 0.0;
};

} // namespace littoral::forecast
