// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"

#include <optional>

/// The question whether the water changes may become rarer or smaller: asked with its evidence, never acted on by
/// itself.
namespace littoral::care {

/// Key of the question: a task row of this template is the keeper's answer.
inline constexpr QLatin1String kEaseKey("cadence-ease");

/// The case for one step looser as far as the record tells, the forecast not yet asked. Nothing when the readings do
/// not bear it, the layout follows a plan of its own, or the question was answered in the last week.
[[nodiscard]] std::optional<Loosening> easeCandidate(const record::Row& row, record::LayoutId layout,
                                                     const record::Moment& now);

/// The question as due work, when the forecast's odds at the looser cadence bear it out; nothing when they do not.
[[nodiscard]] std::optional<DueItem> easeQuestion(const record::Row& row, record::LayoutId layout,
                                                  const record::Moment& now, double oddsAtLooser);

/// The steps away from the table after accepting one step looser on `today`, as the setting is kept.
[[nodiscard]] AcceptedSteps easedSteps(const record::Row& row, record::LayoutId layout, const QDate& today);

} // namespace littoral::care
