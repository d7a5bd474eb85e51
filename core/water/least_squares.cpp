// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/least_squares.h"

#include "core/water/refusal.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace littoral::water {

namespace {

constexpr double kRelativeZero = 1.0e-12;

double dot(const std::vector<double>& a, const std::vector<double>& b)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        sum += a[i] * b[i];
    }
    return sum;
}

/// Columns, because everything here is about columns.
Matrix transposed(const Matrix& a)
{
    Matrix columns(a.front().size(), std::vector<double>(a.size()));
    for (std::size_t r = 0; r < a.size(); ++r) {
        for (std::size_t c = 0; c < a[r].size(); ++c) {
            columns[c][r] = a[r][c];
        }
    }
    return columns;
}

/// Least squares on the chosen columns by modified Gram-Schmidt; a column that depends on those before it gets zero.
std::vector<double> solveOn(const Matrix& columns, const std::vector<std::size_t>& chosen, std::vector<double> b)
{
    const std::size_t n = chosen.size();
    Matrix q;
    Matrix r(n, std::vector<double>(n, 0.0));
    std::vector<double> y(n, 0.0);
    std::vector<bool> usable(n, true);
    for (std::size_t j = 0; j < n; ++j) {
        std::vector<double> column = columns[chosen[j]];
        const double before = std::sqrt(dot(column, column));
        for (std::size_t i = 0; i < j; ++i) {
            r[i][j] = usable[i] ? dot(q[i], column) : 0.0;
            for (std::size_t k = 0; k < column.size(); ++k) {
                column[k] -= r[i][j] * q[i][k];
            }
        }
        r[j][j] = std::sqrt(dot(column, column));
        usable[j] = r[j][j] > kRelativeZero * before;
        if (usable[j]) {
            std::ranges::transform(column, column.begin(), [&](double value) { return value / r[j][j]; });
            y[j] = dot(column, b);
            for (std::size_t k = 0; k < b.size(); ++k) {
                b[k] -= y[j] * column[k];
            }
        }
        q.push_back(std::move(column));
    }
    std::vector<double> x(n, 0.0);
    for (std::size_t j = n; j-- > 0;) {
        if (!usable[j]) {
            continue;
        }
        double value = y[j];
        for (std::size_t k = j + 1; k < n; ++k) {
            value -= r[j][k] * x[k];
        }
        x[j] = value / r[j][j];
    }
    return x;
}

std::vector<double> residualsOf(const Matrix& a, const std::vector<double>& b, const std::vector<double>& x)
{
    std::vector<double> residuals;
    residuals.reserve(b.size());
    for (std::size_t row = 0; row < b.size(); ++row) {
        residuals.push_back(b[row] - dot(a[row], x));
    }
    return residuals;
}

bool sound(const Matrix& a, const std::vector<double>& b)
{
    if (a.empty() || a.size() != b.size() || a.front().empty()) {
        return false;
    }
    const auto finite = [](double value) { return std::isfinite(value); };
    return std::ranges::all_of(b, finite) && std::ranges::all_of(a, [&](const std::vector<double>& row) {
               return row.size() == a.front().size() && std::ranges::all_of(row, finite);
           });
}

/// The state of the active-set walk.
class Walk
{
public:
    Walk(const Matrix& a, const std::vector<double>& b)
        : m_a(a)
        , m_b(b)
        , m_columns(transposed(a))
        , m_x(m_columns.size(), 0.0)
    {
        for (const std::vector<double>& column : m_columns) {
            m_zero.push_back(kRelativeZero * std::sqrt(dot(column, column)) * std::max(1.0, std::sqrt(dot(b, b))));
        }
    }

    std::vector<double> run()
    {
        const std::size_t mostRounds = 10 * m_columns.size() + 10;
        for (std::size_t round = 0; round < mostRounds && admit(); ++round) {
            while (!settle()) {
            }
        }
        return m_x;
    }

private:
    [[nodiscard]] bool isFree(std::size_t column) const { return std::ranges::find(m_free, column) != m_free.end(); }

    /// Frees the column along which the misfit falls fastest; false when there is none left.
    bool admit()
    {
        const std::vector<double> residuals = residualsOf(m_a, m_b, m_x);
        std::size_t best = m_columns.size();
        double steepest = 0.0;
        for (std::size_t j = 0; j < m_columns.size(); ++j) {
            const double slope = dot(m_columns[j], residuals);
            if (!isFree(j) && slope > m_zero[j] && slope > steepest) {
                steepest = slope;
                best = j;
            }
        }
        if (best == m_columns.size()) {
            return false;
        }
        m_free.push_back(best);
        return true;
    }

    /// Goes to the free columns' best point, or as far towards it as nothing turns negative; true when it got there.
    bool settle()
    {
        const std::vector<double> wanted = solveOn(m_columns, m_free, m_b);
        double step = 1.0;
        for (std::size_t i = 0; i < m_free.size(); ++i) {
            if (wanted[i] <= 0.0) {
                const double now = m_x[m_free[i]];
                step = std::min(step, now > 0.0 ? now / (now - wanted[i]) : 0.0);
            }
        }
        std::vector<std::size_t> kept;
        for (std::size_t i = 0; i < m_free.size(); ++i) {
            double& value = m_x[m_free[i]];
            value += step * (wanted[i] - value);
            if (value > 0.0 && (step == 1.0 || value > kRelativeZero)) {
                kept.push_back(m_free[i]);
            } else {
                value = 0.0;
            }
        }
        const bool arrived = step == 1.0 || kept.size() == m_free.size();
        m_free = std::move(kept);
        return arrived;
    }

    const Matrix& m_a;
    const std::vector<double>& m_b;
    Matrix m_columns;
    std::vector<double> m_x;
    std::vector<double> m_zero;
    std::vector<std::size_t> m_free;
};

} // namespace

Result<NonnegativeSolution> nonnegativeLeastSquares(const Matrix& a, const std::vector<double>& b)
{
    if (!sound(a, b)) {
        return refuse("The table of coefficients does not fit the list of targets, or holds a figure that is not one.");
    }
    NonnegativeSolution solution;
    solution.x = Walk(a, b).run();
    solution.residuals = residualsOf(a, b, solution.x);
    solution.norm = std::sqrt(dot(solution.residuals, solution.residuals));
    return solution;
}

} // namespace littoral::water
