// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/shown.h"

#include <QDateTime>
#include <QString>

/// Measures and times as people read them, in the units and the language on show. Readings: core/wording/numbers.h.
namespace littoral::wording {

/// "5 L", "1.32 US gal": an amount that was typed; no digit of it is lost.
[[nodiscard]] QString typedLitresText(double litres);
/// "60 cm", "23.6 in".
[[nodiscard]] QString lengthText(double cm);
/// "24 °C", "75 °F".
[[nodiscard]] QString temperatureText(double celsius);
/// A difference: no zero to shift. "2 °C", "3.6 °F".
[[nodiscard]] QString temperatureStepText(double celsius);
/// Unit of free ammonia, which is always reckoned as N: "mg/L N".
[[nodiscard]] QString freeAmmoniaUnit();
/// "mg/L as ion · dKH, dGH · °C · litres · cm"
[[nodiscard]] QString unitsText(const record::Units& units);

/// "25 Nov 07:30", "25 Nov 2025 07:30" when the year is not today's.
[[nodiscard]] QString dateTimeText(const QDateTime& time, const QDate& today);
/// "25 Nov 2026 07:30": where the year always counts.
[[nodiscard]] QString fullDateTimeText(const QDateTime& time);

} // namespace littoral::wording
