// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/reading.h"

#include <optional>
#include <span>
#include <vector>

/// Figures about a stretch of readings. They describe what was read; nothing here is a forecast.
namespace littoral::facade {

/// A reading as a point: its place in time, the value it is drawn at, and the interval it stands for.
struct TrendPoint
{
    qint64 at = 0; ///< UTC ms
    double value = 0.0;
};

struct TrendInterval
{
    double low = 0.0; ///< low == high: nothing known about the step
    double high = 0.0;
    record::Censoring censoring = record::Censoring::None;
};

/// Straight line by ordinary least squares, y = intercept + slope x.
struct LineFit
{
    double slope = 0.0;
    double intercept = 0.0;
    double slopeError = 0.0;     ///< standard error
    double interceptError = 0.0; ///< standard error
    double scatter = 0.0;        ///< residual standard deviation, n - 2 degrees of freedom
    std::size_t count = 0;
};

/// Sums about the means, so that large abscissae lose no digits. Nothing with fewer than three points, sizes that
/// differ, or no spread in x: then no error of the slope can be given.
[[nodiscard]] std::optional<LineFit> fitLine(std::span<const double> x, std::span<const double> y);

/// Two readings further apart than this say nothing about the time between them.
inline constexpr double kLongestGap_d = 21.0;

/// What to reckon over; [from, to] in UTC ms.
struct StatisticsQuestion
{
    qint64 from = 0;
    qint64 to = 0;
    std::optional<double> bandLow, bandHigh; ///< both empty: no time in band
};

/// Values in the unit of the points. Censored readings count with the value they are drawn at; meanLow and meanHigh say
/// how far that choice can move the mean.
struct TrendStatistics
{
    std::size_t count = 0;
    std::size_t censored = 0;
    double mean = 0.0; ///< of the readings, each counting once
    double meanLow = 0.0;
    double meanHigh = 0.0;
    TrendPoint lowest, highest, first, last; ///< earliest where several are equal
    std::optional<LineFit> line;             ///< per day
    /// Share of the known time in the band, 0..1, with straight lines between readings; nothing without a band or with
    /// fewer than two readings near enough.
    std::optional<double> inBand;
    double known_d = 0.0; ///< days of the span between readings near enough to one another

    [[nodiscard]] bool empty() const { return count == 0; }
};

/// `points` ascending in time; `intervals` as many, or none.
[[nodiscard]] TrendStatistics statisticsOf(std::span<const TrendPoint> points, std::span<const TrendInterval> intervals,
                                           const StatisticsQuestion& question);

/// The stretch of the same length that ends where `question` begins.
[[nodiscard]] StatisticsQuestion spanBefore(const StatisticsQuestion& question);

/// Share of a straight line from a to b that lies within the band, 0..1.
[[nodiscard]] double shareWithin(double a, double b, const std::optional<double>& low,
                                 const std::optional<double>& high);

/// First instant from which every later point (at least `needed` of them) is at or below `limit`; nothing while that
/// has not come.
[[nodiscard]] std::optional<qint64> clearSince(std::span<const TrendPoint> points, double limit, std::size_t needed);

} // namespace littoral::facade
