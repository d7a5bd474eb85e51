// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QString>
#include <QStringList>
#include <vector>

/// iCalendar (RFC 5545) for work that falls on days: what calendar programs read.
namespace littoral::exchange {

/// One all-day event. It takes up no time in the calendar (TRANSP:TRANSPARENT) and rings no bell.
struct CalendarItem
{
    QString
        uid; ///< the same for the same round each time it is written, so that a calendar replaces and does not double
    QDate day;
    QString summary;
    QString description;
    QStringList categories;
    int priority = 0; ///< 1 highest to 9; 0: none
};

/// A calendar of these items, in their order. `stamp` is when they were reckoned (DTSTAMP). Lines end in CR LF and are
/// folded at 75 octets, never inside a character.
[[nodiscard]] QByteArray calendarText(const QString& name, const std::vector<CalendarItem>& items,
                                      const QDateTime& stamp);

/// A value of type TEXT (RFC 5545, 3.3.11): backslash, semicolon, comma and line break escaped; control characters that
/// it does not allow are left out.
[[nodiscard]] QString escapedCalendarText(const QString& text);
/// One content line folded (3.1), its end included.
[[nodiscard]] QByteArray foldedCalendarLine(const QByteArray& line);

} // namespace littoral::exchange
