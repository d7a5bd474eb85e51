// SPDX-License-Identifier: GPL-3.0-or-later
// iCalendar against RFC 5545 (B. Desruisseaux, September 2009; sections named beside the checks) and against libical, a
// reader that is none of ours.
#include "core/exchange/calendar.h"

#include <gtest/gtest.h>
#include <libical/ical.h>
#include <memory>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using exchange::CalendarItem;

struct Release
{
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, Release>;

CalendarItem item(const QString& uid, const QDate& day, const QString& summary)
{
    return {uid,
            day,
            summary,
            u"The last one was 18 Nov; every 7 days.\nRule: common practice."_s,
            {u"Water change"_s, u"Fen, Corner"_s},
            1};
}

const QDateTime kStamp(QDate(2026, 11, 25), QTime(8, 40, 5), Qt::OffsetFromUTC, 3600);

QByteArray unfolded(QByteArray text)
{
    text.replace("\r\n ", "");
    return text;
}

// 3.1: "SHOULD NOT be longer than 75 octets, excluding the line break", folded by CRLF and one white space.
TEST(Calendar, LinesAreFoldedAtSeventyFiveOctets)
{
    const QByteArray line = "DESCRIPTION:" + QByteArray(400, 'x');
    const QByteArray folded = exchange::foldedCalendarLine(line);
    for (const QByteArray& part : folded.split('\n')) {
        EXPECT_LE(QByteArray(part).replace("\r", "").size(), 75);
    }
    EXPECT_TRUE(folded.endsWith("\r\n"));
    EXPECT_EQ(unfolded(folded), line + "\r\n");
    EXPECT_EQ(exchange::foldedCalendarLine(QByteArray(75, 'a')), QByteArray(75, 'a') + "\r\n") << "75 is not too long";
    EXPECT_EQ(exchange::foldedCalendarLine(QByteArray(76, 'a')), QByteArray(75, 'a') + "\r\n a\r\n");
    EXPECT_EQ(exchange::foldedCalendarLine({}), "\r\n");
}

// 3.1 warns of readers that fold inside a UTF-8 sequence; this writer never does.
TEST(Calendar, FoldingNeverCutsACharacter)
{
    for (int lead = 0; lead < 8; ++lead) {
        const QByteArray line = QByteArray(lead, 'a') + QString(u"ä℃𝛼"_s).repeated(40).toUtf8();
        const QByteArray folded = exchange::foldedCalendarLine(line);
        for (const QByteArray& part : folded.split('\n')) {
            const QByteArray bare = QByteArray(part).replace("\r", "");
            EXPECT_LE(bare.size(), 75);
            EXPECT_FALSE(QString::fromUtf8(bare).contains(QChar(QChar::ReplacementCharacter)));
        }
        EXPECT_EQ(unfolded(folded), line + "\r\n");
    }
}

// 3.3.11, with its own example: "Project XYZ Final Review\nConference Room - 3B\nCome Prepared."
TEST(Calendar, TextIsEscaped)
{
    EXPECT_EQ(exchange::escapedCalendarText(u"Project XYZ Final Review\nConference Room - 3B\nCome Prepared."_s),
              u"Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared."_s);
    EXPECT_EQ(exchange::escapedCalendarText(u"a;b,c\\d"_s), u"a\\;b\\,c\\\\d"_s);
    EXPECT_EQ(exchange::escapedCalendarText(u"a\r\nb\rc"_s), u"a\\nb\\nc"_s);
    EXPECT_EQ(exchange::escapedCalendarText(QString(u"a%1b%2c"_s).arg(QChar(7)).arg(QChar(0x7F))), u"abc"_s)
        << "3.1 allows no control characters";
    EXPECT_EQ(exchange::escapedCalendarText(u"pH: 6.8"_s), u"pH: 6.8"_s) << "a colon is not escaped in TEXT";
}

TEST(Calendar, LibicalReadsItBackWhole)
{
    std::vector<CalendarItem> items{item(u"a@littoral.invalid"_s, {2026, 11, 27}, u"Slate Ford: water change 40 %"_s),
                                    item(u"b@littoral.invalid"_s, {2026, 12, 31}, u"Tank \"Ä; ö, \\ü\""_s)};
    const QByteArray text = exchange::calendarText(u"Due work"_s, items, kStamp);
    const Component calendar(icalparser_parse_string(text.constData()));
    ASSERT_NE(calendar, nullptr);
    EXPECT_EQ(icalcomponent_isa(calendar.get()), ICAL_VCALENDAR_COMPONENT);
    EXPECT_EQ(icalcomponent_count_errors(calendar.get()), 0);
    EXPECT_TRUE(icalrestriction_check(calendar.get())) << "3.6: UID, DTSTAMP, PRODID, VERSION ... as often as asked";
    ASSERT_EQ(icalcomponent_count_components(calendar.get(), ICAL_VEVENT_COMPONENT), 2);
    EXPECT_EQ(icalcomponent_count_components(calendar.get(), ICAL_VALARM_COMPONENT), 0);
    std::size_t place = 0;
    for (icalcomponent* event = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
         event != nullptr; event = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT)) {
        const CalendarItem& wanted = items[place++];
        EXPECT_EQ(QString::fromUtf8(icalcomponent_get_uid(event)), wanted.uid);
        EXPECT_EQ(QString::fromUtf8(icalcomponent_get_summary(event)), wanted.summary);
        EXPECT_EQ(QString::fromUtf8(icalcomponent_get_description(event)), wanted.description);
        const icaltimetype start = icalcomponent_get_dtstart(event);
        EXPECT_TRUE(start.is_date) << "3.3.4: a whole day";
        EXPECT_EQ(QDate(start.year, start.month, start.day), wanted.day);
        const icaltimetype end = icalcomponent_get_dtend(event);
        EXPECT_EQ(QDate(end.year, end.month, end.day), wanted.day.addDays(1)) << "3.6.1: the end is not in it";
        const icaltimetype stamp = icalcomponent_get_dtstamp(event);
        EXPECT_EQ(stamp.hour, 7) << "3.8.7.2: in UTC";
        EXPECT_TRUE(icaltime_is_utc(stamp));
        icalproperty* categories = icalcomponent_get_first_property(event, ICAL_CATEGORIES_PROPERTY);
        ASSERT_NE(categories, nullptr);
        EXPECT_NE(QString::fromUtf8(icalproperty_get_value_as_string(categories)).indexOf(u"Water change"_s), -1);
    }
}

TEST(Calendar, AnEmptyOneIsSoundToo)
{
    const QByteArray text = exchange::calendarText(u"Due work"_s, {}, kStamp);
    EXPECT_TRUE(text.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    EXPECT_TRUE(text.endsWith("END:VCALENDAR\r\n"));
    const Component calendar(icalparser_parse_string(text.constData()));
    ASSERT_NE(calendar, nullptr);
    EXPECT_EQ(icalcomponent_count_errors(calendar.get()), 0);
}

} // namespace
