// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/time_ticks.h"

#include <QObject>

namespace littoral::ui {

enum class AxisMode { Calendar, Age };

/// A part of the axis as a plain value: enough to turn an instant into a pixel. In age mode `from` and `to` count from
/// the flooding of the lane that is asked about; on the calendar they are UTC ms.
struct AxisView
{
    AxisMode mode = AxisMode::Calendar;
    qint64 from = 0;
    qint64 to = 1;
    qint64 now = 0;    ///< UTC ms
    double left = 0.0; ///< px of `from`
    double width = 1.0;
    QTimeZone zone = QTimeZone::utc(); ///< whose calendar days are meant

    [[nodiscard]] double x(qint64 at, qint64 flooded) const
    {
        const qint64 own = mode == AxisMode::Age ? at - flooded : at;
        return left + static_cast<double>(own - from) / static_cast<double>(to - from) * width;
    }
    /// UTC ms under a pixel.
    [[nodiscard]] qint64 at(double px, qint64 flooded) const
    {
        const auto own = from + static_cast<qint64>((px - left) / width * static_cast<double>(to - from));
        return mode == AxisMode::Age ? own + flooded : own;
    }
    [[nodiscard]] double pxPerDay() const
    {
        return width * static_cast<double>(kDayMs) / static_cast<double>(to - from);
    }
    [[nodiscard]] double right() const { return left + width; }
    /// Age in calendar days, as a keeper counts: the day after flooding is day 1, whatever the hour.
    [[nodiscard]] qint64 ageInDays(qint64 flooded) const;

    bool operator==(const AxisView&) const = default;
};

/// The one time axis every page shares: range, mode and now. Dates and ages each keep their own range, so that
/// switching there and back loses nothing.
class TimeAxis final : public QObject
{
    Q_OBJECT

public:
    explicit TimeAxis(QObject* parent = nullptr);

    [[nodiscard]] AxisMode mode() const { return m_mode; }
    [[nodiscard]] qint64 from() const { return range().from; }
    [[nodiscard]] qint64 to() const { return range().to; }
    [[nodiscard]] qint64 now() const { return m_now; }
    [[nodiscard]] const QTimeZone& zone() const { return m_zone; }
    [[nodiscard]] AxisView view(double left, double width) const;
    [[nodiscard]] AxisTicks ticks(double width, double labelPx) const;

    void setMode(AxisMode mode);
    void setNow(qint64 now);
    void setZone(const QTimeZone& zone);
    /// Of the mode in force. Spans are kept between half a day and 40 years.
    void setRange(qint64 from, qint64 to);
    /// The calendar's range from whole days around now.
    void showAround(double daysBack, double daysAhead);
    /// Moves the range by a part of its span; positive shows later times.
    void pan(double spans);
    /// `factor` below 1 comes nearer; the instant at `share` (0..1 of the width) stays where it is.
    void zoom(double share, double factor);
    /// Range that has `at` (UTC ms on the calendar, age otherwise) at `share` of the width, same span.
    void centre(qint64 at, double share);

signals:
    void rangeChanged();
    void modeChanged();
    void nowChanged();

private:
    struct Range
    {
        qint64 from = 0;
        qint64 to = 1;
        bool operator==(const Range&) const = default;
    };
    [[nodiscard]] const Range& range() const { return m_mode == AxisMode::Age ? m_ages : m_dates; }

    AxisMode m_mode = AxisMode::Calendar;
    Range m_dates;
    Range m_ages{-kDayMs / 4, 63 * kDayMs + kDayMs / 4};
    qint64 m_now = 0;
    QTimeZone m_zone = QTimeZone::systemTimeZone();
};

} // namespace littoral::ui
