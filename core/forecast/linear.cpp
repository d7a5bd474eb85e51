// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/linear.h"

#include <algorithm>
#include <cmath>

namespace littoral::forecast {

Rows evenly(const Rows& rows, std::size_t n, double offset)
{
    const double distance = static_cast<double>(rows.count()) / static_cast<double>(n);
    Rows picked(n, rows.width());
    for (std::size_t i = 0; i < n; ++i) {
        const auto place = static_cast<std::size_t>((static_cast<double>(i) + offset) * distance);
        const auto from = rows.row(std::min(place, rows.count() - 1));
        std::copy(from.begin(), from.end(), picked.row(i).begin());
    }
    return picked;
}

FittedNormal::FittedNormal(const Rows& rows, double towardsIdentity)
    : m_width(rows.width())
    , m_mean(m_width, 0.0)
    , m_lower(m_width * m_width, 0.0)
    , m_solved(m_width, 0.0)
{
    const auto n = static_cast<double>(rows.count());
    for (std::size_t i = 0; i < rows.count(); ++i) {
        const auto z = rows.row(i);
        for (std::size_t a = 0; a < m_width; ++a) {
            m_mean[a] += z[a] / n;
        }
    }
    std::vector<double> centred(m_width);
    for (std::size_t i = 0; i < rows.count(); ++i) {
        const auto z = rows.row(i);
        for (std::size_t a = 0; a < m_width; ++a) {
            centred[a] = z[a] - m_mean[a];
            for (std::size_t b = 0; b <= a; ++b) {
                m_lower[a * m_width + b] += centred[a] * centred[b];
            }
        }
    }
    for (std::size_t a = 0; a < m_width; ++a) {
        for (std::size_t b = 0; b <= a; ++b) {
            double& entry = m_lower[a * m_width + b];
            entry *= (1.0 - towardsIdentity) / std::max(n - 1.0, 1.0);
            entry += a == b ? towardsIdentity : 0.0;
        }
    }
    // Cholesky in place; the pull towards the identity keeps every pivot positive.
    for (std::size_t a = 0; a < m_width; ++a) {
        double* rowA = &m_lower[a * m_width];
        for (std::size_t b = 0; b <= a; ++b) {
            const double* rowB = &m_lower[b * m_width];
            double sum = rowA[b];
            for (std::size_t k = 0; k < b; ++k) {
                sum -= rowA[k] * rowB[k];
            }
            rowA[b] = a == b ? std::sqrt(std::max(sum, 1e-12)) : sum / rowB[b];
        }
    }
}

void FittedNormal::correlate(std::span<const double> e, std::span<double> out) const
{
    for (std::size_t a = 0; a < m_width; ++a) {
        const double* row = &m_lower[a * m_width];
        double sum = 0.0;
        for (std::size_t b = 0; b <= a; ++b) {
            sum += row[b] * e[b];
        }
        out[a] = sum;
    }
}

double FittedNormal::logDensity(std::span<const double> z) const
{
    double squares = 0.0;
    for (std::size_t a = 0; a < m_width; ++a) {
        const double* row = &m_lower[a * m_width];
        double sum = z[a] - m_mean[a];
        for (std::size_t b = 0; b < a; ++b) {
            sum -= row[b] * m_solved[b];
        }
        m_solved[a] = sum / row[a];
        squares += m_solved[a] * m_solved[a];
    }
    return -0.5 * squares;
}

} // namespace littoral::forecast
