// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/scores.h"

#include <algorithm>
#include <cmath>

namespace littoral::skill {

namespace {

using forecast::kQuantiles;

constexpr std::array<double, 3> kOffset_ppm{0.25, 0.25, 5.0};
constexpr std::size_t kLineReadings = 5;

/// Standard normal quantiles at forecast::kQuantiles (printed tables: 1.960, 1.282, 0.674).
constexpr std::array<double, 7> kNormal{-1.959964, -1.281552, -0.674490, 0.0, 0.674490, 1.281552, 1.959964};

/// Distribution function between seven quantiles, zero below the first.
double pastProbability(const forecast::Band& quantiles, double day)
{
    const auto above =
        static_cast<std::size_t>(std::upper_bound(quantiles.begin(), quantiles.end(), day + 1e-9) - quantiles.begin());
    if (above == 0) {
        return 0.0;
    }
    if (above == quantiles.size() || std::isinf(quantiles[above])) {
        return kQuantiles[above - 1];
    }
    const double share = (day - quantiles[above - 1]) / (quantiles[above] - quantiles[above - 1]);
    return kQuantiles[above - 1] + share * (kQuantiles[above] - kQuantiles[above - 1]);
}

/// Distribution function of seven quantiles: linear between them, 0 below the first and 1 from the last on.
double distribution(const forecast::Band& quantiles, double value)
{
    const auto above =
        static_cast<std::size_t>(std::upper_bound(quantiles.begin(), quantiles.end(), value) - quantiles.begin());
    if (above == 0 || above == quantiles.size()) {
        return above == 0 ? 0.0 : 1.0;
    }
    const double share = (value - quantiles[above - 1]) / (quantiles[above] - quantiles[above - 1]);
    return kQuantiles[above - 1] + share * (kQuantiles[above] - kQuantiles[above - 1]);
}

} // namespace

std::array<double, 3> heldShares(const forecast::Band& band, double truth, double resolution)
{
    constexpr std::array<double, 3> kTails{0.25, 0.10, 0.025};
    const double low = distribution(band, truth - resolution);
    const double high = distribution(band, truth + resolution);
    std::array<double, 3> held{};
    for (std::size_t i = 0; i < held.size(); ++i) {
        const double from = kTails[i];
        const double to = 1.0 - kTails[i];
        const double within = std::min(high, to) - std::max(low, from);
        held[i] = high > low ? std::max(within, 0.0) / (high - low) : (low >= from && low <= to ? 1.0 : 0.0);
    }
    return held;
}

double scaledCard(double value_ppm, std::size_t substance)
{
    return std::log1p(std::max(value_ppm, 0.0) / kOffset_ppm[substance]);
}

double scaledWater(double water_mgN_per_L, std::size_t substance)
{
    return scaledCard(water_mgN_per_L * kCardUnits[substance], substance);
}

double crpsOf(const forecast::Band& quantiles, double truth)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < quantiles.size(); ++i) {
        const double low = i == 0 ? 0.0 : 0.5 * (kQuantiles[i - 1] + kQuantiles[i]);
        const double high = i + 1 == quantiles.size() ? 1.0 : 0.5 * (kQuantiles[i] + kQuantiles[i + 1]);
        const double error = truth - quantiles[i];
        sum += (high - low) * 2.0 * (error >= 0.0 ? kQuantiles[i] * error : (kQuantiles[i] - 1.0) * error);
    }
    return sum;
}

double probabilityBy(const forecast::DateOdds& odds, double day)
{
    const auto next = std::upper_bound(odds.gridDays.begin(), odds.gridDays.end(), day + 1e-9);
    if (next != odds.gridDays.begin()) {
        return odds.cumulative[static_cast<std::size_t>(next - odds.gridDays.begin()) - 1];
    }
    return std::min(pastProbability(odds.day, day), odds.cumulative.front());
}

double crpsOfDate(const forecast::DateOdds& odds, double from, double truth)
{
    // The odds come one a day and true dates are whole days, so the integrand is taken as constant over each day.
    double sum = 0.0;
    for (double day = from; day < kLastDay; day += 1.0) {
        const double happened = day >= truth ? 1.0 : 0.0;
        const double off = probabilityBy(odds, day) - happened;
        sum += off * off;
    }
    return sum;
}

std::optional<Spreadsheet> spreadsheetOf(const forecast::TankCase& tank, std::size_t kit, double day)
{
    std::vector<std::pair<double, double>> points;
    for (const forecast::CaseReading& reading : tank.readings) {
        if (static_cast<std::size_t>(reading.kit) == kit) {
            points.emplace_back(reading.day, reading.low);
        }
    }
    if (points.empty()) {
        return std::nullopt;
    }
    Spreadsheet sheet;
    sheet.last = points.back().second;
    sheet.line = sheet.last;
    if (points.size() > kLineReadings) {
        points.erase(points.begin(), points.end() - static_cast<std::ptrdiff_t>(kLineReadings));
    }
    const auto n = static_cast<double>(points.size());
    double meanX = 0.0, meanY = 0.0;
    for (const auto& [x, y] : points) {
        meanX += x / n;
        meanY += y / n;
    }
    double sxx = 0.0, sxy = 0.0;
    for (const auto& [x, y] : points) {
        sxx += (x - meanX) * (x - meanX);
        sxy += (x - meanX) * (y - meanY);
    }
    if (points.size() < 2 || !(sxx > 0.0)) {
        return sheet;
    }
    const double slope = sxy / sxx;
    sheet.line = std::max(meanY + slope * (day - meanX), 0.0);
    if (points.size() >= 3) {
        double squares = 0.0;
        for (const auto& [x, y] : points) {
            const double off = y - (meanY + slope * (x - meanX));
            squares += off * off;
        }
        const double s = std::sqrt(squares / (n - 2.0));
        sheet.spread = s * std::sqrt(1.0 + 1.0 / n + (day - meanX) * (day - meanX) / sxx);
    }
    return sheet;
}

double crpsOfLine(const Spreadsheet& sheet, std::size_t substance, double scaledTruth)
{
    return std::fabs(scaledTruth - scaledCard(sheet.line, substance));
}

double crpsOfLineWithSpread(const Spreadsheet& sheet, std::size_t substance, double scaledTruth)
{
    forecast::Band band{};
    for (std::size_t i = 0; i < band.size(); ++i) {
        band[i] = scaledCard(sheet.line + sheet.spread * kNormal[i], substance);
    }
    return crpsOf(band, scaledTruth);
}

} // namespace littoral::skill
