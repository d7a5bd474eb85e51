// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/contradiction.h"
#include "core/forecast/tank_case.h"
#include "core/record/reading.h"
#include "core/record/task.h"

#include <QDate>
#include <QString>

namespace littoral::wording {

/// When the cycle will be complete, as a range with its odds: "Cycle complete 4–9 Dec, 8 in 10", or what is known when
/// the range has no end yet. `flooded` is day 0 by the keeper's calendar.
[[nodiscard]] QString completionText(const forecast::DateOdds& odds, const record::Moment& flooded, const QDate& today);

/// The same for a gate: "Hardy grazers 27–30 Nov, 8 in 10".
[[nodiscard]] QString openingText(const QString& what, const forecast::DateOdds& odds, const record::Moment& flooded,
                                  const QDate& today);

/// For the bracket on a lane: "Cycle complete, 8 in 10".
[[nodiscard]] QString bracketText(const QString& what, double odds);

/// What would make readings agree that contradict each other, with what to check: "They would agree if the nitrite card
/// reads low whatever is there: check its date, or test a known sample." `kit`: its name; not used for a change.
[[nodiscard]] QString causeText(const forecast::Explanation& cause, const QString& kit, const record::Moment& flooded,
                                const QDate& today);

/// "Nitrate 33 mg/L NO₃, target 10–25".
[[nodiscard]] QString againstTarget(const record::Reading& reading, const record::Target& target);

} // namespace littoral::wording
