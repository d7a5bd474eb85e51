// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <compare>
#include <optional>

namespace littoral::record {

/// An instant, kept with the offset from UTC it was typed in, so that "the evening of the 25th" stays the evening of
/// the 25th after a move or a clock change. Order and equality are those of the instant alone.
class Moment final
{
public:
    Moment() = default; ///< not valid
    Moment(qint64 utcMilliseconds, int offsetSeconds)
        : m_utcMs(utcMilliseconds)
        , m_offset(offsetSeconds)
        , m_valid(true)
    {
    }
    /// Keeps the instant and the offset that `time` has at that instant; an invalid time gives an invalid Moment.
    [[nodiscard]] static Moment fromDateTime(const QDateTime& time);
    /// Local clock time in the system's zone on that day (the offset is the zone's on that day, summer time included).
    /// A time that a clock change skips counts as read off a clock not yet put forward.
    [[nodiscard]] static Moment fromLocal(const QDate& day, const QTime& time);
    /// ISO 8601 with offset or Z ("2026-11-25T07:40:00+01:00"); without offset the system's zone is taken. Invalid if
    /// it does not parse.
    [[nodiscard]] static Moment fromIso(const QString& text);

    [[nodiscard]] bool isValid() const { return m_valid; }
    [[nodiscard]] qint64 utcMs() const { return m_utcMs; }
    [[nodiscard]] int offsetSeconds() const { return m_offset; }
    [[nodiscard]] QDateTime toDateTime() const; ///< with the offset as typed
    [[nodiscard]] QDate localDate() const { return toDateTime().date(); }
    [[nodiscard]] QString toIso() const; ///< seconds, with offset; empty when not valid
    [[nodiscard]] Moment plusMs(qint64 ms) const { return {m_utcMs + ms, m_offset}; }
    [[nodiscard]] Moment plusDays(double days) const;

    [[nodiscard]] friend bool operator==(const Moment& a, const Moment& b)
    {
        return a.m_valid == b.m_valid && a.m_utcMs == b.m_utcMs;
    }
    [[nodiscard]] friend std::strong_ordering operator<=>(const Moment& a, const Moment& b)
    {
        return a.m_utcMs <=> b.m_utcMs;
    }

private:
    qint64 m_utcMs = 0;
    int m_offset = 0;
    bool m_valid = false;
};

/// Elapsed days from `a` to `b`, by the instants (24 h each, whatever the clocks did).
[[nodiscard]] double daysBetween(const Moment& a, const Moment& b);

/// Where the program learns what time it is: the system's clock in the programs, a fixed one in tests and pictures.
class Clock
{
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Moment now() const = 0;
    [[nodiscard]] QDate today() const { return now().localDate(); }
};

class SystemClock final : public Clock
{
public:
    [[nodiscard]] Moment now() const override;
};

class FixedClock final : public Clock
{
public:
    explicit FixedClock(Moment at)
        : m_at(at)
    {
    }
    [[nodiscard]] Moment now() const override { return m_at; }
    void set(Moment at) { m_at = at; }

private:
    Moment m_at;
};

} // namespace littoral::record
