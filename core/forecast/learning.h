// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/tank_case.h"

#include <cstddef>
#include <span>
#include <vector>

namespace littoral::forecast {

/// How alike layouts that share something are: of the prior's variance this share is each layout's own, the rest is
/// common to all that share (the same soil, source water, media). Judgement: half.
inline constexpr double kOwnShare = 0.5;

/// One unknown a finished layout has in common with the one to be forecast, as its own readings left it: mean and
/// deviation of z over its calibrated members, under the plain prior.
struct Lesson
{
    std::size_t unknown = 0; ///< place in the new case's z
    double mean = 0.0;
    double sd = 1.0;
};

/// What the lessons say together about each unknown they name, by a normal hierarchy: a common mean with variance
/// 1 - kOwnShare, each layout about it with variance kOwnShare, each lesson a measurement of its layout (the posterior
/// with the prior divided out). A lesson no narrower than the prior says nothing. Ascending by unknown; unknowns about
/// which nothing was learned are left out.
[[nodiscard]] std::vector<LearnedUnknown> learn(std::span<const Lesson> lessons);

} // namespace littoral::forecast
