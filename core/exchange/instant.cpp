// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/instant.h"

#include <QRegularExpression>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

const QRegularExpression& shape()
{
    static const QRegularExpression pattern(
        uR"(^(\d{4}-\d{2}-\d{2})(?:[T ](\d{2}:\d{2}(?::\d{2}(?:\.\d{1,3})?)?)(Z|[+-]\d{2}:?\d{2})?)?$)"_s);
    return pattern;
}

} // namespace

std::optional<QTime> parseTime(const QString& text)
{
    QTime time = QTime::fromString(text, Qt::ISODateWithMs);
    if (!time.isValid() && text.size() == 4) {
        time = QTime::fromString(text, u"h:mm"_s);
    }
    return time.isValid() ? std::optional(time) : std::nullopt;
}

std::optional<record::Moment> parseInstant(const QString& text)
{
    const QRegularExpressionMatch match = shape().match(text.trimmed());
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const QDate day = QDate::fromString(match.captured(1), Qt::ISODate);
    if (!day.isValid()) {
        return std::nullopt;
    }
    if (match.capturedLength(2) == 0) {
        return record::Moment::fromLocal(day, QTime(12, 0));
    }
    const std::optional<QTime> time = parseTime(match.captured(2));
    if (!time) {
        return std::nullopt;
    }
    const QString offset = match.captured(3);
    if (offset.isEmpty()) {
        return record::Moment::fromLocal(day, *time);
    }
    int seconds = 0;
    if (offset != u"Z"_s) {
        const int hours = offset.mid(1, 2).toInt();
        const int minutes = offset.right(2).toInt();
        if (hours > 14 || minutes > 59) {
            return std::nullopt;
        }
        seconds = (hours * 60 + minutes) * 60 * (offset.front() == u'-' ? -1 : 1);
    }
    return record::Moment::fromDateTime(QDateTime(day, *time, Qt::OffsetFromUTC, seconds));
}

QString instantText(const record::Moment& moment)
{
    return moment.isValid() && moment.utcMs() % 1000 != 0 ? moment.toDateTime().toString(Qt::ISODateWithMs)
                                                          : moment.toIso();
}

} // namespace littoral::exchange
