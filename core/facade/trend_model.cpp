// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/trend_model.h"

#include "core/care/limits.h"
#include "core/facade/case_kits.h"
#include "core/facade/lane_parts.h"
#include "core/facade/trend_reckoned.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

const QString kFree = u"nh3"_s;
const QString kCo2 = u"co2"_s;

QString words(const char* text)
{
    return QCoreApplication::translate("Trend", text);
}

std::optional<TrendParameter> parameterOf(const QString& key, const care::Limits& limits)
{
    if (key == kFree) {
        return TrendParameter{key, wording::parameterName(key), u"NH₃"_s, wording::freeAmmoniaUnit(), 3, {}};
    }
    const record::Parameter* known = record::findParameter(key);
    if (known == nullptr) {
        return std::nullopt;
    }
    TrendParameter made{known->key, known->name, known->symbol, known->shown().label, known->decimals, {}};
    if (known->key == u"tan"_s) {
        made.clear = known->shown().fromCanonical(limits.ammoniaClear);
    } else if (known->key == u"no2"_s) {
        made.clear = known->shown().fromCanonical(limits.nitriteClear);
    }
    return made;
}

/// A tank's earlier layout is named by its number alone where the tank is on show as well.
std::vector<TrendTank> tanksOf(const record::Row& row, const std::vector<record::LayoutId>& layouts)
{
    std::vector<TrendTank> made;
    for (const record::LayoutId id : layouts) {
        const record::LayoutRecord* record = row.layout(id);
        const record::Tank* tank = record == nullptr ? nullptr : row.tank(record->layout.tank);
        if (tank == nullptr) {
            continue;
        }
        TrendTank one;
        one.tank = tank->id;
        one.layout = id;
        one.earlier = record->layout.ended.has_value();
        const QString layout = record::layoutName(record->layout);
        one.name = one.earlier ? words("%1, %2").arg(tank->name, layout) : tank->name;
        one.shortName = one.name;
        one.flooded = record->layout.flooded.utcMs();
        if (record->layout.ended) {
            one.ended = record->layout.ended->utcMs();
        }
        one.events = eventsOf(*record);
        made.push_back(std::move(one));
    }
    for (TrendTank& one : made) {
        const auto sameTank = std::ranges::count(made, one.tank, &TrendTank::tank);
        const record::LayoutRecord* record = row.layout(one.layout);
        if (one.earlier && sameTank > 1 && record != nullptr) {
            QString name = record::layoutName(record->layout);
            name.replace(0, 1, name.left(1).toUpper());
            one.shortName = name;
        }
    }
    return made;
}

void addPoint(TrendSeries& series, const record::Moment& at, double value, const TrendInterval& interval,
              record::ReadingId reading)
{
    series.points.push_back({at.utcMs(), value});
    series.intervals.push_back(interval);
    series.readings.push_back(reading);
}

void addReadings(const record::Row& row, const record::LayoutRecord& layout, const record::Parameter& parameter,
                 TrendSeries& series)
{
    const record::Unit& unit = parameter.shown();
    for (const record::Reading* reading : layout.readingsOf(parameter.key)) {
        const TrendInterval canonical = stepInterval(*reading, row.kit(reading->kit));
        const double drawn = reading->censoring == record::Censoring::Below ? reading->high : reading->value;
        addPoint(series, reading->at, unit.fromCanonical(drawn),
                 {unit.fromCanonical(canonical.low), unit.fromCanonical(canonical.high), canonical.censoring},
                 reading->id);
    }
}

void addReckoned(const std::vector<ReckonedValue>& values, TrendSeries& series)
{
    series.reckoned = true;
    for (const ReckonedValue& one : values) {
        addPoint(series, one.at, one.value, {one.value, one.value, record::Censoring::None}, {});
    }
}

void addTargets(const record::Row& row, record::TankId tank, const record::Parameter& parameter, TrendSeries& series)
{
    const record::Target* target = row.target(tank, parameter.key);
    if (target == nullptr) {
        return;
    }
    const auto shown = [&](const std::optional<double>& end) {
        return end ? std::optional(parameter.shown().fromCanonical(*end)) : std::nullopt;
    };
    series.targetLow = shown(target->low);
    series.targetHigh = shown(target->high);
}

TrendSeries seriesFor(const record::Row& row, const TrendTank& tank, const QString& key, const ForecastResult* result,
                      const std::optional<record::Moment>& expectedAt)
{
    TrendSeries series;
    const record::LayoutRecord* layout = row.layout(tank.layout);
    const record::Parameter* parameter = record::findParameter(key);
    if (layout == nullptr) {
        return series;
    }
    if (key == kFree) {
        addReckoned(reckonedFreeAmmonia(*layout), series);
    } else if (parameter != nullptr) {
        addReadings(row, *layout, *parameter, series);
        addTargets(row, tank.tank, *parameter, series);
        if (key == kCo2 && series.points.empty()) {
            addReckoned(reckonedCo2(*layout), series);
        }
    }
    if (expectedAt) {
        series.expected = expectedCourse(row, *layout, key, *expectedAt);
        series.expectedSentence = expectedSentence(row, *layout, key, series.expected, *expectedAt);
    }
    if (result != nullptr && !tank.earlier) {
        if (key == kFree) {
            const auto free = freeAmmoniaOf(result);
            series.forecast = free ? free->forecast : std::vector<LaneBand>{};
        } else if (substanceOf(key)) {
            series.forecast = seriesOf(row, *layout, key, result).forecast;
        }
    }
    return series;
}

} // namespace

std::optional<std::size_t> TrendSeries::newest(qint64 at) const
{
    const auto after = std::ranges::upper_bound(points, at, {}, &TrendPoint::at);
    return after == points.begin() ? std::nullopt : std::optional(static_cast<std::size_t>(after - points.begin() - 1));
}

std::optional<std::size_t> TrendSeries::nearest(qint64 at, qint64 reach) const
{
    const auto after = std::ranges::lower_bound(points, at, {}, &TrendPoint::at);
    std::optional<std::size_t> best;
    qint64 off = reach;
    const auto consider = [&](auto it) {
        const qint64 distance = std::abs(it->at - at);
        if (distance <= off) {
            off = distance;
            best = static_cast<std::size_t>(it - points.begin());
        }
    };
    if (after != points.end()) {
        consider(after);
    }
    if (after != points.begin()) {
        consider(after - 1);
    }
    return best;
}

const TrendSeries* TrendModel::find(std::size_t parameter, std::size_t tank) const
{
    const auto found = std::ranges::find_if(
        series, [&](const TrendSeries& one) { return one.parameter == parameter && one.tank == tank; });
    return found == series.end() ? nullptr : &*found;
}

std::size_t TrendModel::pointCount() const
{
    std::size_t count = 0;
    for (const TrendSeries& one : series) {
        count += one.points.size();
    }
    return count;
}

TrendModel trendOf(const record::Row& row, const TrendChoice& choice, const ForecastOf& forecasts)
{
    const care::Limits limits = care::limitsOf(row);
    TrendModel model;
    model.tanks = tanksOf(row, choice.layouts);
    std::vector<std::shared_ptr<const ForecastResult>> results;
    for (TrendTank& tank : model.tanks) {
        results.push_back(forecasts && !tank.earlier ? forecasts(tank.layout) : nullptr);
        tank.hasForecast = results.back() != nullptr;
    }
    for (const QString& key : choice.parameters) {
        const auto parameter = parameterOf(key, limits);
        if (!parameter) {
            continue;
        }
        const std::size_t place = model.parameters.size();
        model.parameters.push_back(*parameter);
        for (std::size_t tank = 0; tank < model.tanks.size(); ++tank) {
            TrendSeries series =
                seriesFor(row, model.tanks[tank], parameter->key, results[tank].get(), choice.expectedAt);
            series.parameter = place;
            series.tank = tank;
            if (!series.points.empty() || !series.forecast.empty()) {
                model.series.push_back(std::move(series));
            }
        }
    }
    return model;
}

std::vector<TrendOffer> trendOffers(const record::Row& row, const std::vector<record::LayoutId>& layouts)
{
    std::vector<TrendOffer> offers;
    const auto count = [&](auto reckon) {
        std::size_t all = 0;
        for (const record::LayoutId id : layouts) {
            if (const record::LayoutRecord* layout = row.layout(id)) {
                all += reckon(*layout);
            }
        }
        return all;
    };
    for (const record::Parameter& parameter : record::parameters()) {
        TrendOffer offer{parameter.key, parameter.name, 0, false};
        offer.readings = count([&](const auto& layout) { return layout.readingsOf(parameter.key).size(); });
        if (parameter.key == kCo2 && offer.readings == 0) {
            offer.reckoned = true;
            offer.readings = count([](const auto& layout) { return reckonedCo2(layout).size(); });
        }
        offers.push_back(std::move(offer));
        if (parameter.key == u"tan"_s) {
            offers.push_back({kFree, wording::parameterName(kFree),
                              count([](const auto& layout) { return reckonedFreeAmmonia(layout).size(); }), true});
        }
    }
    return offers;
}

TrendInterval stepInterval(const record::Reading& reading, const record::TestKit* kit)
{
    TrendInterval made{reading.value, reading.value, reading.censoring};
    if (reading.censoring != record::Censoring::None) {
        made.low = reading.low;
        made.high = reading.high;
        return made;
    }
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    const record::Unit* unit = parameter == nullptr || kit == nullptr ? nullptr : parameter->unit(kit->unit);
    if (unit == nullptr || kit->steps.size() < 2) {
        return made;
    }
    const double value = unit->fromCanonical(reading.value);
    const double tolerance = 1e-6 * std::max(1.0, std::abs(value));
    const auto above = std::ranges::upper_bound(kit->steps, value + tolerance);
    const auto below = std::ranges::lower_bound(kit->steps, value - tolerance);
    made.low = below == kit->steps.begin() ? reading.value : unit->toCanonical((*(below - 1) + value) / 2.0);
    made.high = above == kit->steps.end() ? reading.value : unit->toCanonical((*above + value) / 2.0);
    return made;
}

} // namespace littoral::facade
