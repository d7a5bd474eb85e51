// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/findings/case_view.h"

namespace littoral::findings {

enum class Verdict {
    Holds,
    Fails,  ///< looked at, and it is not so
    Unknown ///< not looked at, not on record, or a reading too coarse to decide
};

/// One item of evidence against what is known.
struct Judged
{
    const facts::Evidence* item = nullptr; ///< nullptr for what the keeper's own naming says, in `named`
    QString named;                         ///< condition the keeper saw by name
    Verdict verdict = Verdict::Unknown;
    double points = 0.0; ///< what it adds, with its sign
    bool sign = false;   ///< the thing itself, not only circumstances that favour it
    Known known;         ///< what was known, when it was
};

[[nodiscard]] Judged judge(const facts::Evidence& item, const CaseView& view);

/// Everything for and against one condition.
struct Weighing
{
    std::vector<Judged> supporting;
    std::vector<Judged> against;
    double points = 0.0;
    double signPoints = 0.0; ///< of items that hold and are signs of the thing itself
};

/// The calculation (judgement; the weights are those of the facts):
///   start        prior - 4: common -1, occasional -2, rare -3
///   supporting   + weight where it holds; - weight/2 where it was looked at and does not hold, counted once for each
///                key and only if no other item of that key holds
///   against      - weight where it holds
///   named        + 3 when the keeper saw it by name in 14 days, - 3 when it was seen to be gone, + 1 for what it is
///                often taken for; as a sign a name counts 2, so that it alone is never strong support
///   age          - 1 outside the ages at which it is usual
/// Unknown counts for neither side. Points are like logarithms of odds with half a doubling to a point, so two points
/// double what speaks for it against what speaks for another; they are not probabilities, since the items are neither
/// independent nor measured.
[[nodiscard]] Weighing weigh(const facts::Condition& condition, const CaseView& view);

} // namespace littoral::findings
