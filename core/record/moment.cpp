// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/moment.h"

#include <cmath>

namespace littoral::record {

namespace {
constexpr double kMsPerDay = 86'400'000.0;

/// An hour that a clock change skips is no valid local time in Qt, but it is what a clock shows that nobody has put
/// forward: the instant is the one that clock means.
QDateTime throughSkippedHour(const QDateTime& local)
{
    const bool skipped =
        !local.isValid() && local.timeSpec() == Qt::LocalTime && local.date().isValid() && local.time().isValid();
    return skipped ? QDateTime::fromMSecsSinceEpoch(local.toMSecsSinceEpoch()) : local;
}

} // namespace

Moment Moment::fromDateTime(const QDateTime& time)
{
    return time.isValid() ? Moment(time.toMSecsSinceEpoch(), time.offsetFromUtc()) : Moment();
}

Moment Moment::fromLocal(const QDate& day, const QTime& time)
{
    return fromDateTime(throughSkippedHour(QDateTime(day, time, Qt::LocalTime)));
}

Moment Moment::fromIso(const QString& text)
{
    return fromDateTime(throughSkippedHour(QDateTime::fromString(text.trimmed(), Qt::ISODateWithMs)));
}

QDateTime Moment::toDateTime() const
{
    return m_valid ? QDateTime::fromMSecsSinceEpoch(m_utcMs, Qt::OffsetFromUTC, m_offset) : QDateTime();
}

QString Moment::toIso() const
{
    return m_valid ? toDateTime().toString(Qt::ISODate) : QString();
}

Moment Moment::plusDays(double days) const
{
    return plusMs(static_cast<qint64>(std::llround(days * kMsPerDay)));
}

double daysBetween(const Moment& a, const Moment& b)
{
    return static_cast<double>(b.utcMs() - a.utcMs()) / kMsPerDay;
}

Moment SystemClock::now() const
{
    return Moment::fromDateTime(QDateTime::currentDateTime());
}

} // namespace littoral::record
