// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/round_advice.h"

#include "core/record/shown.h"
#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/models/number_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Advice", text);
}

std::optional<forecast::Substance> substanceOf(const QString& parameter)
{
    if (parameter == "tan"_L1) {
        return forecast::Substance::TotalAmmonia;
    }
    if (parameter == "no2"_L1) {
        return forecast::Substance::Nitrite;
    }
    if (parameter == "no3"_L1) {
        return forecast::Substance::Nitrate;
    }
    return std::nullopt;
}

std::vector<TrendBand> bandsOf(const std::vector<double>& days, const std::vector<forecast::Band>& bands,
                               const record::Moment& flooded, const record::Parameter& parameter)
{
    std::vector<TrendBand> points;
    const std::size_t count = std::min(days.size(), bands.size());
    points.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        const record::Unit& shown = parameter.shown();
        points.push_back({flooded.plusDays(days[i]).utcMs(), shown.fromCanonical(bands[i][1]),
                          shown.fromCanonical(bands[i][3]), shown.fromCanonical(bands[i][5])});
    }
    return points;
}

/// The 19-in-20 range of a parameter at `at`, canonical, between the two rows about it; nothing outside the forecast.
std::optional<std::pair<double, double>> wideBandAt(const facade::ForecastResult& result, forecast::Substance substance,
                                                    const record::Moment& at)
{
    const forecast::Forecast& f = result.forecast;
    const auto& bands = f.substances[static_cast<std::size_t>(substance)].water;
    const double day = record::daysBetween(result.inputs.flooded, at);
    if (f.days.empty() || bands.size() != f.days.size() || day < f.days.front() - 0.5 || day > f.days.back()) {
        return std::nullopt;
    }
    const auto next = std::ranges::lower_bound(f.days, day);
    const auto index = static_cast<std::size_t>(next - f.days.begin());
    const std::size_t a = index == 0 ? 0 : index - 1;
    const std::size_t b = std::min(index, f.days.size() - 1);
    return std::pair{std::min(bands[a][0], bands[b][0]), std::max(bands[a][6], bands[b][6])};
}

/// A change in a day that is worth a second look, canonical units. Common practice among keepers, not a limit of any
/// standard.
struct DailyChange
{
    QLatin1String parameter;
    double perDay;
    const char* often;
};
constexpr std::array kDailyChanges{
    DailyChange{
        "ph"_L1, 0.8,
        QT_TRANSLATE_NOOP("Advice", "Often: read at another time of the CO₂ day, or a probe due for its buffer.")},
    DailyChange{"kh"_L1, 0.72,
                QT_TRANSLATE_NOOP("Advice", "Often: a drop too many, or the bottles for KH and GH exchanged.")},
    DailyChange{"gh"_L1, 0.36,
                QT_TRANSLATE_NOOP("Advice", "Often: a drop too many, or the bottles for KH and GH exchanged.")},
    DailyChange{"temp"_L1, 2.5,
                QT_TRANSLATE_NOOP("Advice", "Often: read just after a water change; else look at the heater.")},
    DailyChange{"cond"_L1, 60.0,
                QT_TRANSLATE_NOOP("Advice",
                                  "Often: water lost to the air, a dose just given, or a probe due for its standard.")},
    DailyChange{
        "tan"_L1, 1.5,
        QT_TRANSLATE_NOOP("Advice", "Often: read before the colour was ready, or another kit's card held beside it.")},
    DailyChange{
        "no2"_L1, 1.0,
        QT_TRANSLATE_NOOP("Advice", "Often: read before the colour was ready, or another kit's card held beside it.")},
    DailyChange{
        "no3"_L1, 5.0,
        QT_TRANSLATE_NOOP("Advice", "Often: a bottle not shaken long enough, or another kit's card held beside it.")},
};

const record::Reading* readingBefore(const record::LayoutRecord& layout, const AdviceQuestion& q)
{
    const record::Reading* before = nullptr;
    for (const record::Reading& reading : layout.readings) {
        if (reading.parameter == q.parameter && reading.id != q.replaces && reading.at < q.at) {
            before = &reading;
        }
    }
    return before;
}

bool changedWaterBetween(const record::LayoutRecord& layout, const record::Moment& from, const record::Moment& to)
{
    return std::ranges::any_of(layout.entries, [&](const record::Entry& e) {
        return e.kind == record::EntryKind::WaterChange && !e.planned && from < e.at && e.at < to;
    });
}

QString shown(const record::Parameter& parameter, double canonical)
{
    return wording::numberText(std::max(0.0, parameter.shown().fromCanonical(canonical)), parameter.decimals);
}

/// How far the next step of the kit is from the reading, up or down, canonical: what lies between two steps is read as
/// one of them. Zero for a kit without steps.
double stepGap(const record::TestKit* kit, const record::Parameter& parameter, const record::Reading& reading, bool up)
{
    const record::Unit* unit = kit == nullptr ? nullptr : parameter.unit(kit->unit);
    if (unit == nullptr) {
        return 0.0;
    }
    double gap = 0.0;
    for (double step : kit->steps) {
        const double away = up ? unit->toCanonical(step) - reading.high : reading.low - unit->toCanonical(step);
        if (away > 1e-9 && (gap == 0.0 || away < gap)) {
            gap = away;
        }
    }
    return gap;
}

/// Nothing when the forecast does not reach the reading; an advice without a level when it agrees with it.
std::optional<Advice> againstForecast(const record::Reading& reading, const record::Parameter& parameter,
                                      const facade::ForecastResult& result, const record::TestKit* kit)
{
    const auto substance = substanceOf(reading.parameter);
    const auto band = substance ? wideBandAt(result, *substance, reading.at) : std::nullopt;
    if (!band) {
        return std::nullopt;
    }
    // The band is of the water; the kit adds its steps and its scatter: a quarter either way, the distance to the next
    // step, and never less than the last digit shown.
    const double least = std::max(0.25 * reading.value, record::leastDigit(parameter));
    const bool low = reading.high + std::max(least, stepGap(kit, parameter, reading, true)) < band->first;
    const bool high = reading.low - std::max(least, stepGap(kit, parameter, reading, false)) > band->second;
    if (!low && !high) {
        return Advice{};
    }
    Advice advice;
    advice.level = Advice::Level::Unlikely;
    advice.headline = (low ? words("Lower than expected: %1, forecast %2 to %3")
                           : words("Higher than expected: %1, forecast %2 to %3"))
                          .arg(reading.typed, shown(parameter, band->first), shown(parameter, band->second));
    advice.body = words("The forecast range holds 19 in 20; it rests on the readings up to %1.")
                      .arg(momentText(result.inputs.asOf, reading.at.localDate()));
    for (const DailyChange& change : kDailyChanges) {
        if (change.parameter == reading.parameter) {
            advice.often = words(change.often);
        }
    }
    return advice;
}

Advice againstLast(const record::Reading& reading, const record::Parameter& parameter,
                   const record::LayoutRecord& layout, const AdviceQuestion& q)
{
    const record::Reading* before = readingBefore(layout, q);
    if (before == nullptr || reading.censoring != record::Censoring::None ||
        before->censoring != record::Censoring::None) {
        return {};
    }
    const QDate today = q.at.localDate();
    const double ratio = before->value > 0.0 ? reading.value / before->value : 0.0;
    Advice advice;
    const bool tenfold = (ratio > 8.0 && ratio < 12.0) || (ratio > 0.08 && ratio < 0.12);
    if (tenfold && parameter.key != "ph"_L1) {
        advice.level = Advice::Level::Unlikely;
        advice.headline =
            words("About ten times off the last reading: %1, it was %2 on %3")
                .arg(reading.typed, record::valueText(*before), wording::dateText(before->at.localDate(), today));
        advice.body = words("Look at the place of the decimal mark and at the unit (%1).").arg(parameter.shown().label);
        return advice;
    }
    const auto rule =
        std::ranges::find_if(kDailyChanges, [&](const DailyChange& c) { return c.parameter == q.parameter; });
    if (rule == kDailyChanges.end()) {
        return {};
    }
    const double days = std::max(1.0, record::daysBetween(before->at, q.at));
    const double allowed = std::max(rule->perDay, q.parameter == "cond"_L1 ? 0.1 * before->value : 0.0) * days;
    const bool fallAfterChange = reading.value < before->value && changedWaterBetween(layout, before->at, q.at);
    if (std::abs(reading.value - before->value) <= allowed || fallAfterChange) {
        return {};
    }
    advice.level = Advice::Level::Unlikely;
    advice.headline =
        words("A large step from the last reading: %1, it was %2 on %3")
            .arg(reading.typed, record::valueText(*before), wording::dateText(before->at.localDate(), today));
    advice.body = words("More than is usual for %1 in that time.").arg(parameter.name);
    advice.often = words(rule->often);
    return advice;
}

Advice kitDate(const record::Row& row, const AdviceQuestion& q)
{
    const record::TestKit* kit = row.kit(q.kit);
    if (kit == nullptr || !kit->expires.isValid() || kit->expires >= q.at.localDate()) {
        return {};
    }
    Advice advice;
    advice.level = Advice::Level::Note;
    advice.headline =
        words("Kit past its date: %1, good until %2").arg(kit->name, wording::dateText(kit->expires, q.at.localDate()));
    advice.body = words("The value is kept. Read it against a fresh kit before acting on it.");
    return advice;
}

} // namespace

Advice adviseReading(const record::Row& row, const record::LayoutRecord& layout, const AdviceQuestion& question,
                     const facade::ForecastResult* forecast)
{
    const record::Parameter* parameter = record::findParameter(question.parameter);
    if (parameter == nullptr || question.typed.trimmed().isEmpty()) {
        return {};
    }
    record::Reading reading;
    reading.parameter = question.parameter;
    reading.at = question.at;
    if (const auto parsed = record::setTypedValue(reading, question.typed, question.unit); !parsed) {
        Advice advice;
        advice.level = Advice::Level::Impossible;
        advice.headline = QString::fromStdString(parsed.error().what);
        advice.body = QString::fromStdString(parsed.error().mend);
        return advice;
    }
    // Where the forecast speaks, a large step since the last reading is no news of its own: it is in the band or out of
    // it.
    const auto foreseen =
        forecast == nullptr ? std::nullopt : againstForecast(reading, *parameter, *forecast, row.kit(question.kit));
    const Advice advice = foreseen ? *foreseen : againstLast(reading, *parameter, layout, question);
    if (advice.level != Advice::Level::None) {
        return advice;
    }
    return kitDate(row, question);
}

std::vector<TrendBand> trendBands(const facade::ForecastResult& forecast, const record::Parameter& parameter)
{
    const auto substance = substanceOf(parameter.key);
    if (!substance) {
        return {};
    }
    return bandsOf(forecast.forecast.days, forecast.forecast.substances[static_cast<std::size_t>(*substance)].water,
                   forecast.inputs.flooded, parameter);
}

std::vector<TrendBand> fittedBands(const facade::ForecastResult& forecast, const record::Parameter& parameter)
{
    const auto substance = substanceOf(parameter.key);
    if (!substance) {
        return {};
    }
    return bandsOf(forecast.forecast.pastDays,
                   forecast.forecast.substances[static_cast<std::size_t>(*substance)].fitted, forecast.inputs.flooded,
                   parameter);
}

} // namespace littoral::ui
