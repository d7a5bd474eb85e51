// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/calendar.h"

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

constexpr qsizetype kLineOctets = 75;

bool isContinuation(char octet)
{
    return (static_cast<unsigned char>(octet) & 0xC0U) == 0x80U;
}

class Writer
{
public:
    void line(const char* name, const QString& value)
    {
        m_text += foldedCalendarLine(QByteArray(name) + ':' + value.toUtf8());
    }
    void text(const char* name, const QString& value) { line(name, escapedCalendarText(value)); }

    [[nodiscard]] QByteArray take() { return std::move(m_text); }

private:
    QByteArray m_text;
};

QString dayText(const QDate& day)
{
    return day.toString(u"yyyyMMdd"_s);
}

void writeItem(Writer& out, const CalendarItem& item, const QString& stamp)
{
    out.line("BEGIN", u"VEVENT"_s);
    out.text("UID", item.uid);
    out.line("DTSTAMP", stamp);
    out.line("DTSTART;VALUE=DATE", dayText(item.day));
    out.line("DTEND;VALUE=DATE", dayText(item.day.addDays(1)));
    out.text("SUMMARY", item.summary);
    if (!item.description.isEmpty()) {
        out.text("DESCRIPTION", item.description);
    }
    if (!item.categories.isEmpty()) {
        QStringList escaped;
        for (const QString& category : item.categories) {
            escaped << escapedCalendarText(category);
        }
        out.line("CATEGORIES", escaped.join(u','));
    }
    if (item.priority > 0) {
        out.line("PRIORITY", QString::number(item.priority));
    }
    out.line("TRANSP", u"TRANSPARENT"_s);
    out.line("END", u"VEVENT"_s);
}

} // namespace

QString escapedCalendarText(const QString& text)
{
    QString escaped;
    escaped.reserve(text.size());
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        if (c == u'\\' || c == u';' || c == u',') {
            escaped += u'\\';
            escaped += c;
        } else if (c == u'\r' || c == u'\n') {
            escaped += u"\\n"_s;
            i += c == u'\r' && i + 1 < text.size() && text[i + 1] == u'\n' ? 1 : 0;
        } else if (c == u'\t' || (c.unicode() >= 0x20 && c.unicode() != 0x7F)) {
            escaped += c;
        }
    }
    return escaped;
}

QByteArray foldedCalendarLine(const QByteArray& line)
{
    QByteArray folded;
    qsizetype from = 0;
    while (line.size() - from > kLineOctets - (from > 0 ? 1 : 0)) {
        // The space that begins a folded line counts among its octets.
        qsizetype end = from + kLineOctets - (from > 0 ? 1 : 0);
        while (isContinuation(line[end])) {
            --end;
        }
        folded += line.mid(from, end - from) + "\r\n ";
        from = end;
    }
    return folded + line.mid(from) + "\r\n";
}

QByteArray calendarText(const QString& name, const std::vector<CalendarItem>& items, const QDateTime& stamp)
{
    Writer out;
    out.line("BEGIN", u"VCALENDAR"_s);
    out.line("VERSION", u"2.0"_s);
    out.line("PRODID", u"-//Littoral//Due work//EN"_s);
    out.line("CALSCALE", u"GREGORIAN"_s);
    out.text("X-WR-CALNAME", name);
    const QString stamped = stamp.toUTC().toString(u"yyyyMMdd'T'HHmmss'Z'"_s);
    for (const CalendarItem& item : items) {
        writeItem(out, item, stamped);
    }
    out.line("END", u"VCALENDAR"_s);
    return out.take();
}

} // namespace littoral::exchange
