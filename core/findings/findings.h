// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/findings/judge.h"

#include <optional>
#include <vector>

namespace littoral::findings {

/// Support in words. Strong: 4 points or more with a sign of weight 3; fair: 1.5 or more with a sign; against: under
/// -1.5; weak: all between, and whatever rests on circumstances alone.
enum class Support { Strong, Fair, Weak, Against };
[[nodiscard]] QString supportCode(Support support); ///< "strong", "fair", "weak", "against"

/// A condition suggested by the evidence, with what speaks for and against it.
struct Finding
{
    const facts::Condition* condition = nullptr; ///< lives in the book the findings were made from
    Weighing weighing;
    Support support = Support::Weak;
    double bar = 0.0;  ///< 0..1, length of the bar: 1 / (1 + 2^(-points/2)); at most 0.35 without a sign
    bool seen = false; ///< rests on a sign of the thing itself
    /// Item that would weigh most if it were known, for the list of what is unknown.
    [[nodiscard]] std::vector<const Judged*> holding() const;  ///< for, largest first
    [[nodiscard]] std::vector<const Judged*> opposing() const; ///< against, largest first
    [[nodiscard]] std::vector<const Judged*> unknown() const;  ///< not looked at, heaviest first, supporting items only
};

/// One answer a check may give, and the finding that would then come first.
struct Answer
{
    QString tick; ///< code of the value; empty: none of those asked for, or a number
    bool number = false;
    double low = 0.0;  ///< a number from low
    double high = 0.0; ///< to high; equal to low at the open ends
    bool openLow = false;
    bool openHigh = false;
    const facts::Condition* first = nullptr;
};

/// The look or reading that would change the ranking most.
struct Check
{
    const facts::EvidenceKey* key = nullptr;
    double expectedShift = 0.0; ///< 0..1: expected change of the shares of those in contest, see decidingCheck
    bool changesFirst = false;  ///< some answer would put another finding first
    std::vector<Answer> answers;
};

struct Report
{
    std::vector<Finding> ranked; ///< those something speaks for; best first
    std::optional<Check> check;  ///< nothing when no look would change the ranking
};

/// Weighs every condition of the book for one layout at one time. Ranked: those that rest on a sign first, then by
/// points, then by weight of signs, urgency and id, so the same record always gives the same order.
[[nodiscard]] Report findings(const facts::FactBook& book, const record::Row& row, const record::LayoutRecord& layout,
                              const record::Moment& at);
[[nodiscard]] Report findings(const CaseView& view);

/// Among the first finding, its lookalikes and what else stands close (six at most) each has a share proportional to
/// 2^(points/2). For every key nobody has looked at, each possible answer is tried: how much likelier it is under each
/// condition follows from the same points, the shares are turned over accordingly, and the change (half the sum of
/// absolute differences) is averaged over the answers. The key with the largest average wins, among those of which some
/// answer would put another finding first if there are any. The shares serve this
/// comparison only and are never shown.
[[nodiscard]] std::optional<Check> decidingCheck(const CaseView& view, const std::vector<Finding>& ranked);

} // namespace littoral::findings
