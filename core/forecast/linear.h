// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace littoral::forecast {

/// Rows of equal length in one block: one z per particle.
class Rows final
{
public:
    Rows() = default;
    Rows(std::size_t count, std::size_t width)
        : m_width(width)
        , m_values(count * width, 0.0)
    {
    }

    [[nodiscard]] std::size_t count() const { return m_width == 0 ? 0 : m_values.size() / m_width; }
    [[nodiscard]] std::size_t width() const { return m_width; }
    [[nodiscard]] std::span<double> row(std::size_t i) { return {m_values.data() + i * m_width, m_width}; }
    [[nodiscard]] std::span<const double> row(std::size_t i) const { return {m_values.data() + i * m_width, m_width}; }

private:
    std::size_t m_width = 0;
    std::vector<double> m_values;
};

/// n rows picked at equal distances, the first `offset` (0 to 1) of a distance in: few stand for many, many for few.
[[nodiscard]] Rows evenly(const Rows& rows, std::size_t n, double offset);

/// A normal distribution fitted to rows, its covariance pulled towards the identity so that it is never singular.
class FittedNormal final
{
public:
    /// C <- (1 - towardsIdentity) C + towardsIdentity I.
    FittedNormal(const Rows& rows, double towardsIdentity);

    [[nodiscard]] std::span<const double> mean() const { return m_mean; }
    /// out = L e, where L L^T is the covariance.
    void correlate(std::span<const double> e, std::span<double> out) const;
    /// Log density up to a constant.
    [[nodiscard]] double logDensity(std::span<const double> z) const;

private:
    std::size_t m_width;
    std::vector<double> m_mean;
    std::vector<double> m_lower; ///< Cholesky factor, row by row
    mutable std::vector<double> m_solved;
};

} // namespace littoral::forecast
