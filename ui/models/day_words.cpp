// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/day_words.h"

#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace littoral::ui {

using namespace Qt::StringLiterals;

QString momentText(const record::Moment& at, const QDate& today)
{
    const QDateTime time = at.toDateTime();
    return QCoreApplication::translate("Day", "%1 %2", "day, time of day")
        .arg(wording::dateText(time.date(), today), time.time().toString(u"HH:mm"_s));
}

QString agoText(const QDate& day, const QDate& today)
{
    const qint64 days = day.daysTo(today);
    return days <= 0 ? QCoreApplication::translate("Day", "today")
                     : QCoreApplication::translate("Day", "%1 d", "days ago").arg(days);
}

namespace {

QDate dateFrom(const QString& text, const QDate& today)
{
    for (const QString& form :
         {u"yyyy-MM-dd"_s, u"d.M.yyyy"_s, u"d MMM yyyy"_s, u"d MMMM yyyy"_s, u"d. MMM yyyy"_s, u"d. MMMM yyyy"_s}) {
        for (const QLocale& locale : {QLocale(), QLocale::c()}) {
            if (const QDate day = locale.toDate(text, form); day.isValid()) {
                return day;
            }
        }
    }
    const QString year = QString::number(today.year());
    for (const QLocale& locale : {QLocale(), QLocale::c()}) {
        for (const QString& form : {u"d MMM yyyy"_s, u"d. MMM yyyy"_s}) {
            if (const QDate day = locale.toDate(text + u' ' + year, form); day.isValid()) {
                return day;
            }
        }
    }
    return {};
}

} // namespace

record::Moment momentFrom(const QString& text, const record::Moment& now)
{
    static const QRegularExpression clock(u"(?:^|[ T,])(\\d{1,2}):(\\d{2})$"_s);
    const QString trimmed = text.simplified();
    const QDate today = now.localDate();
    const auto match = clock.match(trimmed);
    QString dayPart = trimmed;
    QTime time(12, 0);
    if (match.hasMatch()) {
        time = QTime(match.captured(1).toInt(), match.captured(2).toInt());
        dayPart = trimmed.left(match.capturedStart()).trimmed();
        if (dayPart.endsWith(u',')) {
            dayPart.chop(1);
        }
    }
    const QDate day = dayPart.isEmpty() && match.hasMatch() ? today : dateFrom(dayPart, today);
    if (!day.isValid() || !time.isValid()) {
        return {};
    }
    return record::Moment::fromLocal(day, time);
}

QString momentEditText(const record::Moment& at)
{
    return at.isValid() ? at.toDateTime().toString(u"yyyy-MM-dd HH:mm"_s) : QString();
}

} // namespace littoral::ui
