// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <vector>

namespace littoral::water {

/// Rows of coefficients; all rows of one length.
using Matrix = std::vector<std::vector<double>>;

struct NonnegativeSolution
{
    std::vector<double> x;         ///< none below zero
    std::vector<double> residuals; ///< wanted minus reached, one per row
    double norm = 0.0;             ///< root of the sum of their squares
};

/// The x, none of them negative, that brings a·x nearest to b (active-set method of Lawson & Hanson 1974, "Solving
/// Least Squares Problems", chapter 23). Small and dense. Refuses shapes that do not fit and figures that are not
/// finite. Where several x do equally well it takes one of them: compare what is reached, not the recipe.
[[nodiscard]] Result<NonnegativeSolution> nonnegativeLeastSquares(const Matrix& a, const std::vector<double>& b);

} // namespace littoral::water
