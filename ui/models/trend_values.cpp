// SPDX-License-Identifier: GPL-3.0-or-later
// The values on show as a table and as a file.
#include "core/exchange/csv_table.h"
#include "core/wording/numbers.h"
#include "ui/models/trend_words.h"
#include "ui/paint/trend_layout.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <map>

namespace littoral::ui {

using namespace Qt::StringLiterals;

using facade::TrendModel;
using facade::TrendSeries;

namespace {

constexpr std::size_t kMostInCell = 6; // more readings in a day than this are told as a range

QString words(const char* text)
{
    return QCoreApplication::translate("TrendWords", text);
}

/// Number of the day a reading belongs to: days since flooding, or the Julian day of its date.
qint64 dayNumber(const AxisView& axis, qint64 at, qint64 flooded)
{
    if (axis.mode == AxisMode::Age) {
        return static_cast<qint64>(std::floor(static_cast<double>(at - flooded) / static_cast<double>(kDayMs)));
    }
    return QDateTime::fromMSecsSinceEpoch(at, axis.zone).date().toJulianDay();
}

QString valueText(const TrendSeries& series, std::size_t point, int decimals)
{
    const QString number = trendNumber(series.points[point].value, decimals);
    switch (series.intervals[point].censoring) {
    case record::Censoring::Below:
        return words("<%1").arg(number);
    case record::Censoring::Above:
        return words(">%1").arg(number);
    default:
        return number;
    }
}

/// [first, last) of the points on show.
std::pair<std::size_t, std::size_t> onShow(const TrendModel& model, const TrendSeries& series, const AxisView& axis)
{
    const qint64 flooded = model.tanks[series.tank].flooded;
    const auto first =
        std::ranges::lower_bound(series.points, instantOf(axis.mode, axis.from, flooded), {}, &facade::TrendPoint::at);
    const auto last =
        std::ranges::upper_bound(series.points, instantOf(axis.mode, axis.to, flooded), {}, &facade::TrendPoint::at);
    return {static_cast<std::size_t>(first - series.points.begin()),
            static_cast<std::size_t>(std::max(first, last) - series.points.begin())};
}

QString cellText(const TrendSeries& series, std::size_t first, std::size_t last, int decimals)
{
    if (last - first > kMostInCell) {
        const auto [low, high] = std::ranges::minmax_element(series.points.begin() + static_cast<std::ptrdiff_t>(first),
                                                             series.points.begin() + static_cast<std::ptrdiff_t>(last),
                                                             {}, &facade::TrendPoint::value);
        return words("%1–%2 (%3 readings)")
            .arg(trendNumber(low->value, decimals), trendNumber(high->value, decimals))
            .arg(last - first);
    }
    QStringList parts;
    for (std::size_t i = first; i < last; ++i) {
        parts << valueText(series, i, decimals);
    }
    return parts.join(QStringLiteral("; "));
}

} // namespace

QString expectedText(const facade::ExpectedPoint& expected, int decimals)
{
    const QString low = derivedNumber(expected.low, decimals);
    const QString high = derivedNumber(expected.high, decimals);
    return low == high ? low : words("%1–%2").arg(low, high);
}

namespace {

/// A column beside a series' readings: what was expected at noon of each day that has a row.
void addExpectedColumn(const TrendModel& model, const TrendSeries& series, const AxisView& axis, PlainTable& table,
                       const std::vector<qint64>& days)
{
    const facade::TrendParameter& parameter = model.parameters[series.parameter];
    const facade::TrendTank& tank = model.tanks[series.tank];
    table.header << words("%1, %2 expected, %3").arg(tank.shortName, parameter.symbol, parameter.unitLabel);
    for (std::size_t i = 0; i < days.size(); ++i) {
        const qint64 noon = axis.mode == AxisMode::Age
                                ? tank.flooded + days[i] * kDayMs + kDayMs / 2
                                : QDateTime(QDate::fromJulianDay(days[i]), QTime(12, 0), axis.zone).toMSecsSinceEpoch();
        const auto expected = series.expected.at(noon);
        table.rows[i] << (expected ? expectedText(*expected, parameter.decimals) : QString());
    }
}

/// One line a day of what was expected, at its noon by UTC.
QString expectedCsv(const TrendModel& model, const TrendSeries& series, const AxisView& axis)
{
    QString text;
    if (series.expected.points.empty()) {
        return text;
    }
    const facade::TrendTank& tank = model.tanks[series.tank];
    const facade::TrendParameter& parameter = model.parameters[series.parameter];
    const auto number = [](double value) { return QLocale::c().toString(value, 'g', 4); };
    const qint64 from = std::max(series.expected.points.front().at, instantOf(axis.mode, axis.from, tank.flooded));
    const qint64 to = std::min(series.expected.points.back().at, instantOf(axis.mode, axis.to, tank.flooded));
    for (qint64 at = (from / kDayMs) * kDayMs + kDayMs / 2; at <= to; at += kDayMs) {
        const auto expected = series.expected.at(at);
        if (!expected) {
            continue;
        }
        const double days = static_cast<double>(at - tank.flooded) / static_cast<double>(kDayMs);
        text += exchange::csvLine({tank.name, parameter.name, parameter.unitLabel,
                                   QDateTime::fromMSecsSinceEpoch(at, QTimeZone::utc()).toString(Qt::ISODate),
                                   QLocale::c().toString(days, 'f', 3), number(expected->mid), number(expected->low),
                                   number(expected->high), u"expected"_s});
    }
    return text;
}

} // namespace

PlainTable valuesTable(const TrendModel& model, const AxisView& axis)
{
    PlainTable table;
    table.caption = words("The values on show, day by day");
    table.header << (axis.mode == AxisMode::Age ? words("Day since flooding") : words("Date"));
    const auto columns = static_cast<qsizetype>(model.series.size());
    std::map<qint64, QStringList> days;
    for (std::size_t column = 0; column < model.series.size(); ++column) {
        const TrendSeries& series = model.series[column];
        const facade::TrendParameter& parameter = model.parameters[series.parameter];
        const facade::TrendTank& tank = model.tanks[series.tank];
        table.header << words("%1, %2, %3").arg(tank.shortName, parameter.symbol, parameter.unitLabel);
        const auto [first, last] = onShow(model, series, axis);
        for (std::size_t i = first; i < last;) {
            const qint64 day = dayNumber(axis, series.points[i].at, tank.flooded);
            std::size_t end = i + 1;
            while (end < last && dayNumber(axis, series.points[end].at, tank.flooded) == day) {
                ++end;
            }
            QStringList& row = days[day];
            row.resize(columns);
            row[static_cast<qsizetype>(column)] = cellText(series, i, end, parameter.decimals);
            i = end;
        }
    }
    const qint64 now = dayNumber(axis, axis.now, model.tanks.empty() ? 0 : model.tanks.front().flooded);
    const QDate today = QDateTime::fromMSecsSinceEpoch(axis.now, axis.zone).date();
    std::vector<qint64> numbers;
    for (auto& [day, cells] : days) {
        numbers.push_back(day);
        if (day <= now) {
            table.currentRow = static_cast<int>(table.rows.size());
        }
        QStringList row;
        row << (axis.mode == AxisMode::Age ? QString::number(day)
                                           : wording::dateText(QDate::fromJulianDay(day), today));
        row << cells;
        table.rows.push_back(std::move(row));
    }
    for (const TrendSeries& series : model.series) {
        if (!series.expected.points.empty()) {
            addExpectedColumn(model, series, axis, table, numbers);
        }
    }
    return table;
}

QByteArray trendCsv(const TrendModel& model, const AxisView& axis)
{
    QString text = exchange::csvLine({u"tank"_s, u"parameter"_s, u"unit"_s, u"at"_s, u"days_since_flooding"_s,
                                      u"value"_s, u"lowest"_s, u"highest"_s, u"kind"_s});
    const auto number = [](double value) { return QLocale::c().toString(value, 'g', 8); };
    for (const TrendSeries& series : model.series) {
        const facade::TrendTank& tank = model.tanks[series.tank];
        const facade::TrendParameter& parameter = model.parameters[series.parameter];
        const auto [first, last] = onShow(model, series, axis);
        for (std::size_t i = first; i < last; ++i) {
            const facade::TrendPoint& point = series.points[i];
            const facade::TrendInterval& interval = series.intervals[i];
            const QString kind = series.reckoned                                    ? u"reckoned"_s
                                 : interval.censoring == record::Censoring::Below   ? u"below the scale"_s
                                 : interval.censoring == record::Censoring::Above   ? u"above the scale"_s
                                 : interval.censoring == record::Censoring::Between ? u"between steps"_s
                                                                                    : u"read"_s;
            const double days = static_cast<double>(point.at - tank.flooded) / static_cast<double>(kDayMs);
            text += exchange::csvLine({tank.name, parameter.name, parameter.unitLabel,
                                       QDateTime::fromMSecsSinceEpoch(point.at, QTimeZone::utc()).toString(Qt::ISODate),
                                       QLocale::c().toString(days, 'f', 3), number(point.value), number(interval.low),
                                       number(interval.high), kind});
        }
        text += expectedCsv(model, series, axis);
    }
    return text.toUtf8();
}

} // namespace littoral::ui
