// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/trend_model.h"
#include "ui/models/plain_table.h"
#include "ui/paint/time_axis.h"

#include <QByteArray>

/// What the Trends page says in words and tables. Own places are those of the axis: UTC ms on the calendar, ms since
/// flooding at equal age.
namespace littoral::ui {

struct TrendCell
{
    QString value;
    QStringList notes; ///< smaller, under the value
};

struct TrendRow
{
    QString title;
    QString parameter; ///< key, where the row is about one
    std::vector<TrendCell> cells;
    QString sentence; ///< the row read aloud
};

/// One column of values for each tank.
struct TrendTable
{
    QString caption;
    QStringList columns;
    std::vector<TrendRow> rows;
};

/// A value in as few decimals as say it, at most `decimals`.
[[nodiscard]] QString trendNumber(double value, int decimals);
/// A figure that was worked out and not read: two significant figures, one decimal more than the kit reads at most.
[[nodiscard]] QString derivedNumber(double value, int decimals);
/// "18–24".
[[nodiscard]] QString expectedText(const facade::ExpectedPoint& expected, int decimals);
/// "day 10", "Thu 19 Nov".
[[nodiscard]] QString ownPlaceText(const AxisView& axis, qint64 own);
/// "Slate Ford, nitrite 0.8 mg/L NO₂, 19 Nov 2026 07:30, day 10".
[[nodiscard]] QString pointSentence(const facade::TrendModel& model, const facade::TrendSeries& series,
                                    std::size_t point, const QTimeZone& zone);

/// Each parameter's value in each tank at an own place: the reading within half a day, else the newest before with its
/// age, else the forecast with its 8-in-10 range.
[[nodiscard]] TrendTable readoutTable(const facade::TrendModel& model, const AxisView& axis, qint64 own);

/// Figures of one parameter over [from, to] (own places), beside the span of the same length before.
[[nodiscard]] TrendTable statisticsTable(const facade::TrendModel& model, std::size_t parameter, const AxisView& axis,
                                         qint64 from, qint64 to);

/// What the tanks on show have in common and what not, for one parameter; says on how few tanks it rests.
[[nodiscard]] QStringList comparisonSentences(const facade::TrendModel& model, std::size_t parameter,
                                              std::size_t selected, const AxisView& axis, qint64 from, qint64 to,
                                              std::optional<qint64> cursor);

/// What doses should have come to against the newest reading, for the selected tank, with what was taken for granted.
[[nodiscard]] QStringList expectedSentences(const facade::TrendModel& model, std::size_t parameter,
                                            std::size_t selected);

/// What was done and seen on the day at an own place, tank by tank.
[[nodiscard]] QStringList eventSentences(const facade::TrendModel& model, const AxisView& axis, qint64 own);

/// Every day on show that has a reading as a row, every series as a column; several readings of a day in one cell.
[[nodiscard]] PlainTable valuesTable(const facade::TrendModel& model, const AxisView& axis);

/// Every reading on show, a line each; instants in ISO 8601 UTC, the decimal mark a point.
[[nodiscard]] QByteArray trendCsv(const facade::TrendModel& model, const AxisView& axis);

} // namespace littoral::ui
