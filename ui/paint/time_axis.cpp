// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/time_axis.h"

#include <QDateTime>
#include <algorithm>

namespace littoral::ui {

namespace {

constexpr qint64 kShortest = kDayMs / 2;
constexpr qint64 kLongest = 40 * 366 * kDayMs;

} // namespace

qint64 AxisView::ageInDays(qint64 flooded) const
{
    const auto day = [this](qint64 at) { return QDateTime::fromMSecsSinceEpoch(at, zone).date(); };
    return day(flooded).daysTo(day(now));
}

TimeAxis::TimeAxis(QObject* parent)
    : QObject(parent)
    , m_now(QDateTime::currentMSecsSinceEpoch())
{
    m_dates = {m_now - 28 * kDayMs, m_now + 21 * kDayMs};
}

AxisView TimeAxis::view(double left, double width) const
{
    return {m_mode, from(), to(), m_now, left, std::max(1.0, width), m_zone};
}

AxisTicks TimeAxis::ticks(double width, double labelPx) const
{
    const double pxPerDay = view(0, width).pxPerDay();
    if (m_mode == AxisMode::Age) {
        return ageTicks(from(), to(), pxPerDay, labelPx);
    }
    const int thisYear = QDateTime::fromMSecsSinceEpoch(m_now, m_zone).date().year();
    return calendarTicks(from(), to(), m_zone, pxPerDay, labelPx, thisYear);
}

void TimeAxis::setMode(AxisMode mode)
{
    if (mode != m_mode) {
        m_mode = mode;
        emit modeChanged();
        emit rangeChanged();
    }
}

void TimeAxis::setNow(qint64 now)
{
    if (now != m_now) {
        m_now = now;
        emit nowChanged();
    }
}

void TimeAxis::setZone(const QTimeZone& zone)
{
    if (zone.isValid() && zone != m_zone) {
        m_zone = zone;
        emit rangeChanged();
    }
}

void TimeAxis::setRange(qint64 from, qint64 to)
{
    const qint64 span = std::clamp(to - from, kShortest, kLongest);
    const qint64 middle = from + (to - from) / 2;
    const Range wanted = span == to - from ? Range{from, to} : Range{middle - span / 2, middle - span / 2 + span};
    Range& current = m_mode == AxisMode::Age ? m_ages : m_dates;
    if (!(wanted == current)) {
        current = wanted;
        emit rangeChanged();
    }
}

void TimeAxis::showAround(double daysBack, double daysAhead)
{
    const auto ms = [](double days) { return static_cast<qint64>(days * static_cast<double>(kDayMs)); };
    setRange(m_now - ms(daysBack), m_now + ms(daysAhead));
}

void TimeAxis::pan(double spans)
{
    const auto shift = static_cast<qint64>(spans * static_cast<double>(to() - from()));
    setRange(from() + shift, to() + shift);
}

void TimeAxis::zoom(double share, double factor)
{
    const double span = static_cast<double>(to() - from());
    const double wanted = std::clamp(span * factor, static_cast<double>(kShortest), static_cast<double>(kLongest));
    const double fixed = static_cast<double>(from()) + share * span;
    const auto start = static_cast<qint64>(fixed - share * wanted);
    setRange(start, start + static_cast<qint64>(wanted));
}

void TimeAxis::centre(qint64 at, double share)
{
    const qint64 span = to() - from();
    const qint64 start = at - static_cast<qint64>(share * static_cast<double>(span));
    setRange(start, start + span);
}

} // namespace littoral::ui
