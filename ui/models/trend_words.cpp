// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/trend_words.h"

#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "ui/paint/trend_layout.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using facade::TrendModel;
using facade::TrendSeries;
using facade::TrendTank;

namespace {

constexpr std::size_t kTooFewTanks = 8; // below this a difference between tanks is an anecdote

QString words(const char* text)
{
    return QCoreApplication::translate("TrendWords", text);
}

QDate dateOf(qint64 at, const QTimeZone& zone)
{
    return QDateTime::fromMSecsSinceEpoch(at, zone).date();
}

qint64 wholeDays(qint64 ms)
{
    return static_cast<qint64>(std::floor(static_cast<double>(ms) / static_cast<double>(kDayMs)));
}

/// The place of an instant of one tank, in the axis' own terms: "day 10" or "19 Nov".
QString whenText(const AxisView& axis, const TrendTank& tank, qint64 at)
{
    if (axis.mode == AxisMode::Age) {
        return words("day %1").arg(wholeDays(at - tank.flooded));
    }
    return wording::dateText(dateOf(at, axis.zone), dateOf(axis.now, axis.zone));
}

TrendCell readAt(const TrendModel& model, const TrendSeries& series, const AxisView& axis, qint64 own)
{
    const int decimals = model.parameters[series.parameter].decimals;
    const qint64 at = instantOf(axis.mode, own, model.tanks[series.tank].flooded);
    const auto valueOf = [&](std::size_t i) {
        const QString number = trendNumber(series.points[i].value, decimals);
        switch (series.intervals[i].censoring) {
        case record::Censoring::Below:
            return words("<%1").arg(number);
        case record::Censoring::Above:
            return words(">%1").arg(number);
        default:
            return number;
        }
    };
    if (const auto near = series.nearest(at, kDayMs / 2)) {
        return {valueOf(*near), {}};
    }
    const qint64 latest = series.points.empty() ? at : series.points.back().at;
    if (at > std::max(latest, axis.now - kDayMs)) {
        if (const LaneBand* band = bandAt(series.forecast, at)) {
            return {derivedNumber(band->q50, decimals),
                    {words("forecast"),
                     words("%1–%2").arg(derivedNumber(band->q10, decimals), derivedNumber(band->q90, decimals))}};
        }
    }
    const facade::TrendTank& tank = model.tanks[series.tank];
    if (tank.ended && at > *tank.ended) {
        return {words("ended"), {}};
    }
    if (const auto before = series.newest(at)) {
        return {valueOf(*before),
                {words("%1 d old").arg(std::max<qint64>(1, wholeDays(at - series.points[*before].at)))}};
    }
    return {words("none"), {}};
}

TrendCell cellAt(const TrendModel& model, const TrendSeries& series, const AxisView& axis, qint64 own)
{
    TrendCell cell = readAt(model, series, axis, own);
    const qint64 at = instantOf(axis.mode, own, model.tanks[series.tank].flooded);
    if (const auto expected = series.expected.at(at)) {
        cell.notes << words("expected %1").arg(expectedText(*expected, model.parameters[series.parameter].decimals));
    }
    return cell;
}

QString tableSentence(const TrendTable& table, const TrendRow& row)
{
    QStringList parts;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const TrendCell& cell = row.cells[i];
        const QString value =
            cell.notes.isEmpty() ? cell.value : words("%1 (%2)").arg(cell.value, cell.notes.join(QStringLiteral(", ")));
        parts << words("%1 %2").arg(table.columns.value(static_cast<qsizetype>(i)), value);
    }
    return words("%1: %2").arg(row.title, parts.join(QStringLiteral(", ")));
}

/// Where another tank's highest value stands against the selected one's, by age.
QString apartSentence(const QString& tank, const QString& value, qint64 days)
{
    if (days == 0) {
        return words("%1: highest %2, the same day.").arg(tank, value);
    }
    if (std::abs(days) == 1) {
        return (days > 0 ? words("%1: highest %2, a day later in its life.")
                         : words("%1: highest %2, a day sooner in its life."))
            .arg(tank, value);
    }
    return (days > 0 ? words("%1: highest %2, %3 days later in its life.")
                     : words("%1: highest %2, %3 days sooner in its life."))
        .arg(tank, value)
        .arg(std::abs(days));
}

TrendTable tableFor(const TrendModel& model)
{
    TrendTable table;
    for (const TrendTank& tank : model.tanks) {
        table.columns << tank.shortName;
    }
    return table;
}

} // namespace

QString trendNumber(double value, int decimals)
{
    for (int places = 0; places < decimals; ++places) {
        const double scale = std::pow(10.0, places);
        if (std::abs(std::round(value * scale) / scale - value) < 0.5 * std::pow(10.0, -decimals)) {
            return wording::numberText(value, places);
        }
    }
    return wording::numberText(value, decimals);
}

QString derivedNumber(double value, int decimals)
{
    if (value == 0.0) {
        return wording::numberText(0.0, 0);
    }
    const int places = 1 - static_cast<int>(std::floor(std::log10(std::abs(value))));
    return trendNumber(value, std::clamp(places, 0, decimals + 1));
}

QString ownPlaceText(const AxisView& axis, qint64 own)
{
    if (axis.mode == AxisMode::Age) {
        return words("day %1").arg(wholeDays(own));
    }
    return wording::weekdayText(dateOf(own, axis.zone), dateOf(axis.now, axis.zone));
}

QString pointSentence(const TrendModel& model, const TrendSeries& series, std::size_t point, const QTimeZone& zone)
{
    const facade::TrendParameter& parameter = model.parameters[series.parameter];
    const TrendTank& tank = model.tanks[series.tank];
    const facade::TrendPoint& at = series.points[point];
    const QString value = trendNumber(at.value, parameter.decimals);
    const QString when = wording::fullDateTimeText(QDateTime::fromMSecsSinceEpoch(at.at, zone));
    const qint64 day = wholeDays(at.at - tank.flooded);
    switch (series.intervals[point].censoring) {
    case record::Censoring::Below:
        return words("%1, %2 below %3 %4, %5, day %6")
            .arg(tank.name, parameter.name, value, parameter.unitLabel, when)
            .arg(day);
    case record::Censoring::Above:
        return words("%1, %2 above %3 %4, %5, day %6")
            .arg(tank.name, parameter.name, value, parameter.unitLabel, when)
            .arg(day);
    default:
        break;
    }
    return series.reckoned ? words("%1, %2 %3 %4 reckoned from other readings, %5, day %6")
                                 .arg(tank.name, parameter.name, value, parameter.unitLabel, when)
                                 .arg(day)
                           : words("%1, %2 %3 %4, %5, day %6")
                                 .arg(tank.name, parameter.name, value, parameter.unitLabel, when)
                                 .arg(day);
}

TrendTable readoutTable(const TrendModel& model, const AxisView& axis, qint64 own)
{
    TrendTable table = tableFor(model);
    table.caption = ownPlaceText(axis, own);
    for (std::size_t parameter = 0; parameter < model.parameters.size(); ++parameter) {
        TrendRow row;
        row.title = model.parameters[parameter].symbol;
        row.parameter = model.parameters[parameter].key;
        for (std::size_t tank = 0; tank < model.tanks.size(); ++tank) {
            const TrendSeries* series = model.find(parameter, tank);
            row.cells.push_back(series == nullptr ? TrendCell{words("none"), {}} : cellAt(model, *series, axis, own));
        }
        row.sentence = tableSentence(table, row);
        table.rows.push_back(std::move(row));
    }
    return table;
}

QStringList expectedSentences(const TrendModel& model, std::size_t parameter, std::size_t selected)
{
    const TrendSeries* series = model.find(parameter, selected);
    if (series == nullptr || series->expected.points.empty()) {
        return {};
    }
    QStringList sentences;
    if (!series->expectedSentence.isEmpty()) {
        sentences << series->expectedSentence;
    }
    return sentences << words("Expected from doses and changes: %1").arg(series->expected.assumptions.join(u' '));
}

QStringList eventSentences(const TrendModel& model, const AxisView& axis, qint64 own)
{
    QStringList sentences;
    for (const TrendTank& tank : model.tanks) {
        QStringList parts;
        for (const facade::LaneEvent& event : tank.events) {
            const bool sameDay = axis.mode == AxisMode::Age ? wholeDays(event.at - tank.flooded) == wholeDays(own)
                                                            : dateOf(event.at, axis.zone) == dateOf(own, axis.zone);
            if (sameDay) {
                parts << event.sentence;
            }
        }
        if (!parts.isEmpty()) {
            sentences << words("%1: %2.").arg(tank.name, parts.join(QStringLiteral("; ")));
        }
    }
    return sentences;
}

namespace {

/// The figures of one series, added row by row.
class StatisticsColumn
{
public:
    StatisticsColumn(const TrendModel& model, const TrendSeries* series, std::size_t tank, std::size_t parameter,
                     const AxisView& axis, qint64 from, qint64 to)
        : m_model(model)
        , m_series(series)
        , m_tank(model.tanks[tank])
        , m_axis(axis)
        , m_decimals(model.parameters[parameter].decimals)
        , m_clear(model.parameters[parameter].clear)
    {
        if (series == nullptr) {
            return;
        }
        m_question.from = instantOf(axis.mode, from, m_tank.flooded);
        m_question.to = std::min(instantOf(axis.mode, to, m_tank.flooded), axis.now);
        m_question.bandLow = series->targetLow;
        m_question.bandHigh = series->targetHigh;
        m_now = facade::statisticsOf(series->points, series->intervals, m_question);
        m_before = facade::statisticsOf(series->points, series->intervals, facade::spanBefore(m_question));
    }

    [[nodiscard]] TrendCell count() const { return {QString::number(m_now.count), {}}; }
    [[nodiscard]] TrendCell censored() const { return {QString::number(m_now.censored), {}}; }
    [[nodiscard]] bool anyCensored() const { return m_now.censored > 0; }
    [[nodiscard]] TrendCell last() const { return at(m_now.last); }
    [[nodiscard]] TrendCell lowest() const { return at(m_now.lowest); }
    [[nodiscard]] TrendCell highest() const { return at(m_now.highest); }
    [[nodiscard]] TrendCell mean() const
    {
        if (m_now.empty()) {
            return none();
        }
        const QString low = derivedNumber(m_now.meanLow, m_decimals);
        const QString high = derivedNumber(m_now.meanHigh, m_decimals);
        return {derivedNumber(m_now.mean, m_decimals),
                low == high ? QStringList() : QStringList{words("%1–%2").arg(low, high)}};
    }
    [[nodiscard]] TrendCell slope() const
    {
        if (!m_now.line) {
            return {QStringLiteral("–"), {words("needs 3")}};
        }
        const double perWeek = m_now.line->slope * 7.0;
        const double error = m_now.line->slopeError * 7.0;
        // The error to two figures, the slope to as many places.
        const int places =
            error > 0.0 ? std::clamp(1 - static_cast<int>(std::floor(std::log10(error))), 0, 4) : m_decimals + 1;
        const QString number = wording::numberText(perWeek, places);
        return {perWeek > 0.0 && number.front().isDigit() ? words("+%1").arg(number) : number,
                {words("± %1").arg(wording::numberText(error, places))}};
    }
    [[nodiscard]] TrendCell inBand() const
    {
        if (m_series == nullptr || (!m_series->targetLow && !m_series->targetHigh)) {
            return {words("none"), {}};
        }
        if (!m_now.inBand) {
            return {QStringLiteral("–"), {words("needs 2")}};
        }
        return {words("%1 %").arg(std::lround(*m_now.inBand * 100.0)),
                {words("of %1 d").arg(std::lround(m_now.known_d))}};
    }
    [[nodiscard]] TrendCell clearSince() const
    {
        if (m_series == nullptr || !m_clear) {
            return none();
        }
        const auto [first, last] = PointIndex(m_series->points).run(m_question.from, m_question.to);
        const auto inside = std::span(m_series->points).subspan(first, last - first);
        const auto since = facade::clearSince(inside, *m_clear * (1.0 + 1e-9), 2);
        return since ? TrendCell{whenText(m_axis, m_tank, *since), {}} : TrendCell{words("none"), {}};
    }
    [[nodiscard]] TrendCell before() const
    {
        if (m_before.empty()) {
            return {words("none"), {}};
        }
        const double change = m_now.mean - m_before.mean;
        const QString number = derivedNumber(change, m_decimals);
        const QString sign = change > 0.0 && number != QStringLiteral("0") ? words("+%1").arg(number) : number;
        return {derivedNumber(m_before.mean, m_decimals),
                m_now.empty() ? QStringList() : QStringList{words("now %1").arg(sign)}};
    }
    [[nodiscard]] bool hasBand() const
    {
        return m_series != nullptr && (m_series->targetLow.has_value() || m_series->targetHigh.has_value());
    }

private:
    [[nodiscard]] static TrendCell none() { return {QStringLiteral("–"), {}}; }
    [[nodiscard]] TrendCell at(const facade::TrendPoint& point) const
    {
        return m_now.empty() ? none()
                             : TrendCell{trendNumber(point.value, m_decimals), {whenText(m_axis, m_tank, point.at)}};
    }

    const TrendModel& m_model;
    const TrendSeries* m_series;
    const TrendTank& m_tank;
    const AxisView& m_axis;
    int m_decimals;
    std::optional<double> m_clear;
    facade::StatisticsQuestion m_question;
    facade::TrendStatistics m_now, m_before;
};

} // namespace

TrendTable statisticsTable(const TrendModel& model, std::size_t parameter, const AxisView& axis, qint64 from, qint64 to)
{
    TrendTable table = tableFor(model);
    table.caption =
        words("%1, %2 to %3").arg(model.parameters[parameter].name, ownPlaceText(axis, from), ownPlaceText(axis, to));
    std::vector<StatisticsColumn> columns;
    for (std::size_t tank = 0; tank < model.tanks.size(); ++tank) {
        columns.emplace_back(model, model.find(parameter, tank), tank, parameter, axis, from, to);
    }
    const auto add = [&](const QString& title, TrendCell (StatisticsColumn::*figure)() const) {
        TrendRow row;
        row.title = title;
        for (const StatisticsColumn& column : columns) {
            row.cells.push_back((column.*figure)());
        }
        row.sentence = tableSentence(table, row);
        table.rows.push_back(std::move(row));
    };
    add(words("Readings"), &StatisticsColumn::count);
    if (std::ranges::any_of(columns, &StatisticsColumn::anyCensored)) {
        add(words("Off the scale"), &StatisticsColumn::censored);
    }
    add(words("Last"), &StatisticsColumn::last);
    add(words("Mean"), &StatisticsColumn::mean);
    add(words("Lowest"), &StatisticsColumn::lowest);
    add(words("Highest"), &StatisticsColumn::highest);
    add(words("Slope, a week"), &StatisticsColumn::slope);
    if (std::ranges::any_of(columns, &StatisticsColumn::hasBand)) {
        add(words("In target"), &StatisticsColumn::inBand);
    }
    if (model.parameters[parameter].clear) {
        add(words("Clear since"), &StatisticsColumn::clearSince);
    }
    add(words("Mean before"), &StatisticsColumn::before);
    return table;
}

QStringList comparisonSentences(const TrendModel& model, std::size_t parameter, std::size_t selected,
                                const AxisView& axis, qint64 from, qint64 to, std::optional<qint64> cursor)
{
    QStringList sentences;
    const facade::TrendParameter& what = model.parameters[parameter];
    struct Peak
    {
        std::size_t tank;
        facade::TrendPoint point;
    };
    std::vector<Peak> peaks;
    for (std::size_t tank = 0; tank < model.tanks.size(); ++tank) {
        const TrendSeries* series = model.find(parameter, tank);
        if (series == nullptr) {
            continue;
        }
        const qint64 flooded = model.tanks[tank].flooded;
        const facade::StatisticsQuestion question{
            instantOf(axis.mode, from, flooded), instantOf(axis.mode, to, flooded), {}, {}};
        if (const auto found = facade::statisticsOf(series->points, series->intervals, question); !found.empty()) {
            peaks.push_back({tank, found.highest});
        }
    }
    if (peaks.size() < 2) {
        sentences << words("A comparison needs readings of two tanks in the span.");
        return sentences;
    }
    if (axis.mode == AxisMode::Calendar) {
        sentences << words("By date, tanks of different age stand side by side. A compares them at equal age.");
        return sentences;
    }
    const auto own = std::ranges::find(peaks, selected, &Peak::tank);
    for (const Peak& peak : peaks) {
        const TrendTank& tank = model.tanks[peak.tank];
        const QString value = trendNumber(peak.point.value, what.decimals);
        const qint64 day = wholeDays(peak.point.at - tank.flooded);
        if (own == peaks.end() || peak.tank == selected) {
            sentences << words("%1: highest %2, day %3.").arg(tank.name, value).arg(day);
            continue;
        }
        const TrendTank& mine = model.tanks[own->tank];
        const qint64 apart = day - wholeDays(own->point.at - mine.flooded);
        sentences << apartSentence(tank.name, value, apart);
    }
    if (cursor && own != peaks.end()) {
        std::optional<double> mine;
        std::vector<double> others;
        for (const Peak& peak : peaks) {
            const TrendSeries* series = model.find(parameter, peak.tank);
            const qint64 at = *cursor + model.tanks[peak.tank].flooded;
            const auto near = series->nearest(at, 2 * kDayMs);
            if (near && peak.tank == selected) {
                mine = series->points[*near].value;
            } else if (near) {
                others.push_back(series->points[*near].value);
            }
        }
        if (mine && !others.empty()) {
            const auto [low, high] = std::ranges::minmax(others);
            const QString range =
                low == high ? trendNumber(low, what.decimals)
                            : words("%1–%2").arg(trendNumber(low, what.decimals), trendNumber(high, what.decimals));
            sentences << (others.size() == 1 ? words("About day %1: %2 here, %3 in the other tank.")
                                                   .arg(wholeDays(*cursor))
                                                   .arg(trendNumber(*mine, what.decimals), range)
                                             : words("About day %1: %2 here, %3 in %4 other tanks.")
                                                   .arg(wholeDays(*cursor))
                                                   .arg(trendNumber(*mine, what.decimals), range)
                                                   .arg(others.size()));
        }
    }
    sentences << (peaks.size() < kTooFewTanks
                      ? words("This rests on %1 tanks: too few to call a difference a cause.").arg(peaks.size())
                      : words("This rests on %1 tanks.").arg(peaks.size()));
    return sentences;
}

} // namespace littoral::ui
