// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/forecast_sentences.h"

#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <cmath>

namespace littoral::wording {

namespace {

constexpr std::size_t kLow = 1;  // 0.1 of forecast::kQuantiles
constexpr std::size_t kHigh = 5; // 0.9
constexpr double kEightInTen = 0.8;

QString words(const char* text)
{
    return QCoreApplication::translate("Forecast", text);
}

QDate dayAt(const record::Moment& flooded, double day)
{
    return flooded.plusDays(day).localDate();
}

/// Probability that it has happened by `day`.
double oddsBy(const forecast::DateOdds& odds, double day)
{
    double reached = 0.0;
    for (std::size_t i = 0; i < odds.gridDays.size() && odds.gridDays[i] <= day + 1e-9; ++i) {
        reached = odds.cumulative[i];
    }
    return reached;
}

} // namespace

QString openingText(const QString& what, const forecast::DateOdds& odds, const record::Moment& flooded,
                    const QDate& today)
{
    const double low = odds.day[kLow];
    const double high = odds.day[kHigh];
    const double now = odds.gridDays.empty() ? 0.0 : odds.gridDays.front();
    if (std::isfinite(high)) {
        if (high <= now) {
            return words("%1 already, %2").arg(what, oddsText(oddsBy(odds, now)));
        }
        // A date already behind us says "by now".
        const QDate first = std::max(dayAt(flooded, low), today);
        return forecastRange(what, first, dayAt(flooded, high), kEightInTen, today);
    }
    const QString last = dateText(dayAt(flooded, odds.lastDay), today);
    if (std::isfinite(low)) {
        const QDate first = std::max(dayAt(flooded, low), today);
        return words("%1 from %2 at the earliest; not by %3: %4")
            .arg(what, dateText(first, today), last, oddsText(odds.notByLast));
    }
    return words("%1 not by %2: %3").arg(what, last, oddsText(odds.notByLast));
}

QString completionText(const forecast::DateOdds& odds, const record::Moment& flooded, const QDate& today)
{
    return openingText(words("Cycle complete"), odds, flooded, today);
}

QString bracketText(const QString& what, double odds)
{
    return words("%1, %2").arg(what, oddsText(odds));
}

QString causeText(const forecast::Explanation& cause, const QString& kit, const record::Moment& flooded,
                  const QDate& today)
{
    switch (cause.cause) {
    case forecast::Cause::OtherUnitBasis:
        return words("The readings would agree if %1 gave nitrogen where the ion is taken, or the other way round. See "
                     "what its leaflet says and set it in the kit.")
            .arg(kit);
    case forecast::Cause::DeadKit:
        return words("The readings would agree if %1 read low whatever is in the water. Check its date, or test a "
                     "sample of known strength.")
            .arg(kit);
    case forecast::Cause::UnloggedChange:
        break;
    }
    return words(
               "The readings would agree if about half the water had been changed about %1 without an entry. Enter it "
               "if it was.")
        .arg(dateText(dayAt(flooded, cause.day), today));
}

QString againstTarget(const record::Reading& reading, const record::Target& target)
{
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    if (parameter == nullptr) {
        return {};
    }
    const auto end = [&](const std::optional<double>& value) {
        return numberText(parameter->shown().fromCanonical(*value), parameter->decimals);
    };
    if (target.low && target.high) {
        return words("%1 %2, target %3–%4")
            .arg(parameter->name, readingWithUnit(reading), end(target.low), end(target.high));
    }
    if (target.high) {
        return words("%1 %2, target up to %3").arg(parameter->name, readingWithUnit(reading), end(target.high));
    }
    return target.low ? words("%1 %2, target from %3").arg(parameter->name, readingWithUnit(reading), end(target.low))
                      : QString();
}

} // namespace littoral::wording
