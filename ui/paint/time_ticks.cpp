// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/time_ticks.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace littoral::ui {

namespace {

QDate dateAt(qint64 at, const QTimeZone& zone)
{
    return QDateTime::fromMSecsSinceEpoch(at, zone).date();
}

QDate mondayOf(const QDate& day)
{
    return day.addDays(1 - day.dayOfWeek());
}

QString monthName(const QDate& month, bool longForm, int thisYear)
{
    const QString name =
        QLocale().standaloneMonthName(month.month(), longForm ? QLocale::LongFormat : QLocale::ShortFormat);
    return month.year() == thisYear ? name
                                    : QCoreApplication::translate("TimeAxis", "%1 %2").arg(name).arg(month.year());
}

QString dayName(const QDate& day)
{
    return QCoreApplication::translate("TimeAxis", "%1 %2", "weekday and day of the month: Mon 23")
        .arg(QLocale().dayName(day.dayOfWeek(), QLocale::ShortFormat))
        .arg(day.day());
}

/// Where days begin. Asking the zone for each of a thousand ticks took longer than drawing the chart: between two of
/// its transitions days are 24 hours apart, so it is asked once for each stretch.
class DayStarts final
{
public:
    explicit DayStarts(const QTimeZone& zone)
        : m_zone(zone)
    {
    }

    qint64 of(const QDate& day)
    {
        if (m_day.isValid() && day >= m_day) {
            const qint64 at = m_at + m_day.daysTo(day) * kDayMs;
            if (at < m_until) {
                return at;
            }
        }
        m_day = day;
        m_at = startOfDay(day, m_zone);
        m_until = std::numeric_limits<qint64>::max();
        if (QDateTime::fromMSecsSinceEpoch(m_at, m_zone).time() != QTime(0, 0)) {
            m_until = m_at; // a day without its midnight: the next one begins sooner than 24 hours later
            return m_at;
        }
        if (m_zone.hasTransitions()) {
            const QTimeZone::OffsetData next = m_zone.nextTransition(QDateTime::fromMSecsSinceEpoch(m_at, Qt::UTC));
            m_until = next.atUtc.isValid() ? next.atUtc.toMSecsSinceEpoch() : m_until;
        }
        return m_at;
    }

private:
    const QTimeZone& m_zone;
    QDate m_day;
    qint64 m_at = 0;
    qint64 m_until = 0;
};

/// Adds a tick for each day from `first` by `step(day)` until past `to`.
template <typename Step, typename Label>
void addDates(std::vector<AxisTick>& ticks, QDate day, qint64 to, const QTimeZone& zone, Step step, Label label)
{
    DayStarts starts(zone);
    for (qint64 at = starts.of(day); at <= to; at = starts.of(day)) {
        ticks.push_back({at, label(day)});
        day = step(day);
    }
}

void addMonths(std::vector<AxisTick>& ticks, const QDate& first, qint64 to, const QTimeZone& zone, int step,
               bool longForm, int thisYear)
{
    addDates(
        ticks, QDate(first.year(), (first.month() - 1) / step * step + 1, 1), to, zone,
        [step](const QDate& d) { return d.addMonths(step); },
        [&](const QDate& d) { return monthName(d, longForm, thisYear); });
}

void addYears(std::vector<AxisTick>& ticks, const QDate& first, qint64 to, const QTimeZone& zone)
{
    addDates(
        ticks, QDate(first.year(), 1, 1), to, zone, [](const QDate& d) { return d.addYears(1); },
        [](const QDate& d) { return QString::number(d.year()); });
}

} // namespace

qint64 startOfDay(const QDate& day, const QTimeZone& zone)
{
    return day.startOfDay(zone).toMSecsSinceEpoch();
}

AxisTicks calendarTicks(qint64 from, qint64 to, const QTimeZone& zone, double pxPerDay, double labelPx, int thisYear)
{
    AxisTicks ticks;
    const QDate first = dateAt(from, zone);
    const auto nextDay = [](const QDate& d) { return d.addDays(1); };
    const auto nextWeek = [](const QDate& d) { return d.addDays(7); };
    const auto bare = [](const QDate&) { return QString(); };
    if (pxPerDay * 7 >= labelPx) {
        addMonths(ticks.upper, first, to, zone, 1, true, thisYear);
        if (pxPerDay >= labelPx) {
            addDates(ticks.lower, first, to, zone, nextDay, dayName);
        } else {
            addDates(ticks.lower, mondayOf(first), to, zone, nextWeek, dayName);
            if (pxPerDay >= 5.0) {
                addDates(ticks.minor, first, to, zone, nextDay, bare);
            }
        }
        return ticks;
    }
    addYears(ticks.upper, first, to, zone);
    // The month row leaves the year to the row above it.
    for (const int step : {1, 3, 6, 12}) {
        if (pxPerDay * 30.4 * step >= labelPx * 0.9 || step == 12) {
            if (step < 12) {
                addDates(
                    ticks.lower, QDate(first.year(), (first.month() - 1) / step * step + 1, 1), to, zone,
                    [step](const QDate& d) { return d.addMonths(step); },
                    [](const QDate& d) { return QLocale().standaloneMonthName(d.month(), QLocale::ShortFormat); });
            }
            break;
        }
    }
    if (pxPerDay * 7 >= 7.0) {
        addDates(ticks.minor, mondayOf(first), to, zone, nextWeek, bare);
    }
    return ticks;
}

AxisTicks ageTicks(qint64 from, qint64 to, double pxPerDay, double labelPx)
{
    AxisTicks ticks;
    constexpr std::array<int, 9> kSteps{1, 7, 14, 28, 56, 91, 182, 364, 728};
    int step = kSteps.back();
    for (const int candidate : kSteps) {
        if (candidate * pxPerDay >= labelPx) {
            step = candidate;
            break;
        }
    }
    const auto floorTo = [](qint64 at, qint64 size) {
        return static_cast<qint64>(std::floor(static_cast<double>(at) / static_cast<double>(size))) * size;
    };
    for (qint64 at = floorTo(from, step * kDayMs); at <= to; at += step * kDayMs) {
        ticks.lower.push_back({at, QCoreApplication::translate("TimeAxis", "day %1").arg(at / kDayMs)});
    }
    if (step == 7 && pxPerDay >= 5.0) {
        for (qint64 at = floorTo(from, kDayMs); at <= to; at += kDayMs) {
            ticks.minor.push_back({at, {}});
        }
    }
    const qint64 week = 7 * kDayMs;
    if (static_cast<double>(step) <= 7.0) {
        for (qint64 at = std::max<qint64>(0, floorTo(from, week)); at <= to; at += week) {
            ticks.upper.push_back({at, QCoreApplication::translate("TimeAxis", "week %1").arg(at / week + 1)});
        }
    }
    return ticks;
}

} // namespace littoral::ui
