// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/due_calendar.h"

#include "core/exchange/calendar.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using exchange::CalendarItem;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("DueCalendar", text);
}

/// Which round it is: the layout, the work, and the day the cadence gave it.
QString uidOf(const care::DueItem& item, bool wholeRow)
{
    const QString work = item.templateKey.isEmpty() ? item.subject : item.templateKey;
    const QString owner = wholeRow ? u"row"_s : QString::number(item.layout.value);
    const QString what =
        u"%1/%2/%3/%4"_s.arg(owner, work, item.cadenceDue.toString(Qt::ISODate)).arg(item.plannedEntry.value);
    const QByteArray digest = QCryptographicHash::hash(what.toUtf8(), QCryptographicHash::Sha256).toHex().left(32);
    return QString::fromLatin1(digest) + u"@littoral.invalid"_s;
}

QString categoryOf(const care::DueItem& item)
{
    switch (item.kind) {
    case care::WorkKind::WaterChange:
        return words("Water change");
    case care::WorkKind::Test:
        return words("Test");
    case care::WorkKind::Upkeep:
        return words("Upkeep");
    case care::WorkKind::Dose:
        return words("Dose");
    case care::WorkKind::Look:
    case care::WorkKind::Decide:
        return words("Look");
    case care::WorkKind::Own:
        break;
    }
    return words("Own work");
}

/// iCalendar's priorities go from 1 to 9 (RFC 5545, 3.8.1.9): high, medium, low.
int priorityOf(int priority)
{
    return priority <= 1 ? 1 : priority == 2 ? 5 : 9;
}

void add(std::vector<CalendarItem>& items, const std::vector<care::DueItem>& work, const QString& tank,
         const QDate& today)
{
    for (const care::DueItem& item : work) {
        CalendarItem made;
        made.uid = uidOf(item, tank.isEmpty());
        made.day = std::max(item.due, today);
        made.summary = tank.isEmpty() ? wording::dueTitle(item) : words("%1: %2").arg(tank, wording::dueTitle(item));
        made.description = wording::dueReasons(item, today).join(u'\n');
        made.categories = QStringList{categoryOf(item)};
        if (!tank.isEmpty()) {
            made.categories << tank;
        }
        made.priority = priorityOf(item.priority);
        items.push_back(std::move(made));
    }
}

} // namespace

QByteArray dueCalendar(const record::Row& row, const record::Moment& now, const QDate& until, record::TankId only)
{
    const QDate today = now.localDate();
    std::vector<CalendarItem> items;
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout != nullptr && (!only || tank.id == only)) {
            add(items, care::dueWork(row, layout->layout.id, now, until), tank.name, today);
        }
    }
    if (!only) {
        add(items, care::rowWork(row, now, until), {}, today);
    }
    std::ranges::stable_sort(items, {}, &CalendarItem::day);
    return exchange::calendarText(words("Due work of the tanks"), items, now.toDateTime());
}

} // namespace littoral::facade
