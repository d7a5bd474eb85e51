// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/trend_statistics.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::facade {

namespace {

constexpr double kDay = 86'400'000.0;

double mean(std::span<const double> values)
{
    double sum = 0.0;
    for (const double value : values) {
        sum += value;
    }
    return sum / static_cast<double>(values.size());
}

/// Points of [from, to], both ends included.
std::span<const TrendPoint> within(std::span<const TrendPoint> points, qint64 from, qint64 to)
{
    const auto first = std::ranges::lower_bound(points, from, {}, &TrendPoint::at);
    const auto last = std::ranges::upper_bound(points, to, {}, &TrendPoint::at);
    return first < last ? std::span(first, last) : std::span<const TrendPoint>{};
}

/// Adds the time of one segment between readings, cut to the question's span.
void addSegment(const TrendPoint& a, const TrendPoint& b, const StatisticsQuestion& question, double& known,
                double& inside)
{
    const double length = static_cast<double>(b.at - a.at);
    if (length <= 0.0 || length > kLongestGap_d * kDay) {
        return;
    }
    const double from = static_cast<double>(std::max(a.at, question.from) - a.at) / length;
    const double to = static_cast<double>(std::min(b.at, question.to) - a.at) / length;
    if (to <= from) {
        return;
    }
    const auto at = [&](double share) { return a.value + (b.value - a.value) * share; };
    const double days = (to - from) * length / kDay;
    known += days;
    inside += days * shareWithin(at(from), at(to), question.bandLow, question.bandHigh);
}

void addTimeInBand(std::span<const TrendPoint> points, const StatisticsQuestion& question, TrendStatistics& made)
{
    double inside = 0.0;
    // One reading before the span and one after it say how the lines enter and leave.
    auto first = std::ranges::lower_bound(points, question.from, {}, &TrendPoint::at);
    first = first == points.begin() ? first : first - 1;
    for (auto it = first; it != points.end() && it + 1 != points.end() && it->at < question.to; ++it) {
        addSegment(*it, *(it + 1), question, made.known_d, inside);
    }
    if ((question.bandLow || question.bandHigh) && made.known_d > 0.0) {
        made.inBand = std::clamp(inside / made.known_d, 0.0, 1.0);
    }
}

} // namespace

std::optional<LineFit> fitLine(std::span<const double> x, std::span<const double> y)
{
    if (x.size() != y.size() || x.size() < 3) {
        return std::nullopt;
    }
    const double meanX = mean(x);
    const double meanY = mean(y);
    double sxx = 0.0, sxy = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        sxx += (x[i] - meanX) * (x[i] - meanX);
        sxy += (x[i] - meanX) * (y[i] - meanY);
    }
    if (!(sxx > 0.0)) {
        return std::nullopt;
    }
    LineFit fit;
    fit.count = x.size();
    fit.slope = sxy / sxx;
    fit.intercept = meanY - fit.slope * meanX;
    double squares = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double off = (y[i] - meanY) - fit.slope * (x[i] - meanX);
        squares += off * off;
    }
    const double count = static_cast<double>(x.size());
    fit.scatter = std::sqrt(squares / (count - 2.0));
    fit.slopeError = fit.scatter / std::sqrt(sxx);
    fit.interceptError = fit.scatter * std::sqrt(1.0 / count + meanX * meanX / sxx);
    return fit;
}

double shareWithin(double a, double b, const std::optional<double>& low, const std::optional<double>& high)
{
    const double bottom = low.value_or(-std::numeric_limits<double>::infinity());
    const double top = high.value_or(std::numeric_limits<double>::infinity());
    const double from = std::min(a, b);
    const double to = std::max(a, b);
    if (to <= from) {
        return from >= bottom && from <= top ? 1.0 : 0.0;
    }
    return std::max(0.0, std::min(to, top) - std::max(from, bottom)) / (to - from);
}

StatisticsQuestion spanBefore(const StatisticsQuestion& question)
{
    StatisticsQuestion before = question;
    // A reading on the border belongs to the later span.
    before.to = question.from - 1;
    before.from = question.from - (question.to - question.from);
    return before;
}

TrendStatistics statisticsOf(std::span<const TrendPoint> points, std::span<const TrendInterval> intervals,
                             const StatisticsQuestion& question)
{
    TrendStatistics made;
    addTimeInBand(points, question, made);
    const std::span<const TrendPoint> inside = within(points, question.from, question.to);
    if (inside.empty()) {
        return made;
    }
    const auto offset = static_cast<std::size_t>(inside.data() - points.data());
    made.count = inside.size();
    made.first = made.lowest = made.highest = inside.front();
    made.last = inside.back();
    std::vector<double> days, values;
    days.reserve(inside.size());
    values.reserve(inside.size());
    double low = 0.0, high = 0.0;
    for (std::size_t i = 0; i < inside.size(); ++i) {
        const TrendPoint& point = inside[i];
        days.push_back(static_cast<double>(point.at - inside.front().at) / kDay);
        values.push_back(point.value);
        made.lowest = point.value < made.lowest.value ? point : made.lowest;
        made.highest = point.value > made.highest.value ? point : made.highest;
        const TrendInterval* interval = intervals.empty() ? nullptr : &intervals[offset + i];
        const bool censored = interval != nullptr && interval->censoring != record::Censoring::None;
        made.censored += censored ? 1 : 0;
        low += censored ? interval->low : point.value;
        high += censored ? interval->high : point.value;
    }
    made.mean = mean(values);
    made.meanLow = low / static_cast<double>(inside.size());
    made.meanHigh = high / static_cast<double>(inside.size());
    made.line = fitLine(days, values);
    return made;
}

std::optional<qint64> clearSince(std::span<const TrendPoint> points, double limit, std::size_t needed)
{
    std::size_t count = 0;
    std::optional<qint64> since;
    for (auto it = points.rbegin(); it != points.rend() && it->value <= limit; ++it) {
        since = it->at;
        ++count;
    }
    return count >= std::max<std::size_t>(needed, 1) ? since : std::nullopt;
}

} // namespace littoral::facade
