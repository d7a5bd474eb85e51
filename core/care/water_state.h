// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/limits.h"
#include "core/record/row.h"

#include <optional>

namespace littoral::care {

/// Free ammonia reckoned from one reading of total ammonia with the pH and temperature nearest to it in time.
struct FreeAmmonia
{
    double mgN_per_L = 0.0;
    const record::Reading* ph = nullptr;
    const record::Reading* temperature = nullptr; ///< nullptr: the layout's set temperature was taken
};

/// Nothing without a pH within three days. Temperature counts within seven.
[[nodiscard]] std::optional<FreeAmmonia> freeAmmoniaOf(const record::LayoutRecord& layout,
                                                       const record::Reading& totalAmmonia);

/// Is the water poor in chloride, so that nitrite is worse? By the newest chloride reading, else by the source water;
/// reverse osmosis and rain count as poor when nothing is known of them.
[[nodiscard]] bool isPoorInChloride(const record::Row& row, const record::LayoutRecord& layout,
                                    const record::Moment& at);

/// Was the reading taken so soon after a change that it flatters the tank?
[[nodiscard]] bool isSoonAfterChange(const record::LayoutRecord& layout, const record::Reading& reading, double hours);

/// What a reading says about a limit.
enum class Against { Below, Above, Undecided };
/// Undecided for "<x" with x over twice the limit, and for a range with the limit inside.
[[nodiscard]] Against compare(const record::Reading& reading, double limit);

/// Days after an event for which ammonia or nitrite is laid to it (common practice).
inline constexpr double kReactionDays = 7.0;
/// Is it ammonia or nitrite over what counts as clear?
[[nodiscard]] bool isRaised(const record::Reading& reading, const Limits& limits);
/// The newest raised reading that was taken within a week after animals were added, and is no older than a week;
/// nullptr when there is none.
[[nodiscard]] const record::Reading* reactionToAddition(const record::Row& row, const record::LayoutRecord& layout,
                                                        const record::Moment& now);

} // namespace littoral::care
