// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QString>
#include <QTimeZone>
#include <vector>

namespace littoral::ui {

inline constexpr qint64 kDayMs = 86'400'000;

/// One line or label of the time header. `at` is UTC ms on the calendar, ms since flooding on the age axis.
struct AxisTick
{
    qint64 at = 0;
    QString label; ///< empty: a line only
};

/// What the header shows: an upper row of long spans, a lower row of labelled ticks, and unlabelled ticks between.
struct AxisTicks
{
    std::vector<AxisTick> upper;
    std::vector<AxisTick> lower;
    std::vector<AxisTick> minor;
};

/// Start of a local calendar day as an instant: the first moment of that day, which is not always 24 h after the last.
[[nodiscard]] qint64 startOfDay(const QDate& day, const QTimeZone& zone);

/// Ticks of the calendar axis at local midnights. `pxPerDay` decides how fine; `labelPx` is the room one label of the
/// lower row takes. The year is named when it is not `thisYear`.
[[nodiscard]] AxisTicks calendarTicks(qint64 from, qint64 to, const QTimeZone& zone, double pxPerDay, double labelPx,
                                      int thisYear);
/// Ticks of the age axis: whole days of 24 h since flooding.
[[nodiscard]] AxisTicks ageTicks(qint64 from, qint64 to, double pxPerDay, double labelPx);

} // namespace littoral::ui
