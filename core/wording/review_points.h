// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <array>
#include <optional>
#include <vector>

/// The nine questions a keeper and a helper talk over before a layout is kept or taken down. Each counts 0 (good), 1
/// (doubtful) or 2 (bad). Points and their limits are judgement (common practice), not a measure.
namespace littoral::wording {

struct ReviewPoint
{
    QString key; ///< an answer is kept as an observation "key=0", "key=1" or "key=2"
    QString title;
    std::array<QString, 3> answers; ///< good, doubtful, bad
};

[[nodiscard]] const std::vector<ReviewPoint>& reviewPoints();
[[nodiscard]] const ReviewPoint* reviewPoint(const QString& key);
/// "Living plants against those planted: over 60 %" of "review_plants=0"; nothing when it is no such answer.
[[nodiscard]] std::optional<QString> reviewAnswerText(const QString& subject);

} // namespace littoral::wording
