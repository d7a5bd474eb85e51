// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <vector>

namespace littoral::care {

/// Newest done observation of a subject not after `at`; nullptr when there is none.
[[nodiscard]] const record::Entry* newestObservation(const record::LayoutRecord& layout, const QString& subject,
                                                     const record::Moment& at);
/// All of them, oldest first.
[[nodiscard]] std::vector<const record::Entry*> observationsOf(const record::LayoutRecord& layout,
                                                               const QString& subject, const record::Moment& at);
/// Subjects observed, each once.
[[nodiscard]] QStringList observedSubjects(const record::LayoutRecord& layout, const record::Moment& at);

/// Kinds of observation by the key of the condition: algae ("alg_..."), animals' signs and diseases ("an_", "dz_",
/// "sh_").
[[nodiscard]] bool isAlgae(const QString& subject);
[[nodiscard]] bool isAnimalSign(const QString& subject);

/// An observation of higher severity than the one before it.
struct Rise
{
    const record::Entry* before = nullptr;
    const record::Entry* now = nullptr;
};
/// For each algae whose newest observation is more severe than an earlier one at most `days` before it: that pair.
[[nodiscard]] std::vector<Rise> risesOfAlgae(const record::LayoutRecord& layout, const record::Moment& at, double days);

/// Has a dark start been planted: the first addition of plants or the first light? Nothing: not yet. Any other start is
/// planted when it is flooded.
[[nodiscard]] std::optional<record::Moment> plantedAt(const record::LayoutRecord& layout, const record::Moment& at);
[[nodiscard]] bool isPlanted(const record::LayoutRecord& layout, const record::Moment& at);

} // namespace littoral::care
