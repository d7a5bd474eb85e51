// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/reading.h"

#include <QDate>
#include <QString>

/// Numbers, dates and odds as people read them: the locale's decimal mark, a true minus, thin spaces in thousands, en
/// dashes in ranges, the year only when it is not this one.
namespace littoral::wording {

[[nodiscard]] QString numberText(double value, int decimals);
/// "50 %" of 0.5; a tenth of a percent where there is one.
[[nodiscard]] QString percentText(double fraction);
/// "36 L"; one decimal under ten.
[[nodiscard]] QString litresText(double litres);
/// A canonical value in the parameter's shown unit, with the unit: "1 mg/L NO₂", "6.4 dGH". Free ammonia is "nh3", in
/// mg/L N, to two significant figures. Decimals never exceed the parameter's.
[[nodiscard]] QString valueWithUnit(const QString& parameter, double canonical);
[[nodiscard]] QString readingWithUnit(const record::Reading& reading);
/// "Nitrite", "Free ammonia"; the key itself when unknown. `symbol` for chips: "NO₂".
[[nodiscard]] QString parameterName(const QString& parameter);
[[nodiscard]] QString parameterSymbol(const QString& parameter);

/// "22 Nov", "22 Nov 2025" when the year is not today's.
[[nodiscard]] QString dateText(const QDate& day, const QDate& today);
/// "Sun 22 Nov": for due work.
[[nodiscard]] QString weekdayText(const QDate& day, const QDate& today);
/// "4–9 Dec", "28 Nov – 3 Dec", "30 Dec 2026 – 2 Jan 2027".
[[nodiscard]] QString dateRangeText(const QDate& first, const QDate& last, const QDate& today);
/// "day 16".
[[nodiscard]] QString ageText(int days);
/// "every day", "every 2 days", "twice a week", "every 7 days".
[[nodiscard]] QString intervalText(double days);
/// "3 days over", "1 day over"; empty for none.
[[nodiscard]] QString overText(int days);
/// "8 in 10", "1 in 50", "19 in 20", "less than 1 in 100".
[[nodiscard]] QString oddsText(double probability);

} // namespace littoral::wording
