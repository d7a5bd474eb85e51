// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/track_record.h"
#include "core/forecast/ensemble.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <array>
#include <cmath>

/// What of a forecast is kept, so that later readings can be held against it.
namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

/// Rows kept: all of the first week, then about one a day. A forecast is some kilobytes that way.
constexpr double kEveryRowDays = 7.0;
constexpr double kThenEveryDays = 1.0;
constexpr double kKeptDays = 28.0;
constexpr double kSameDay = 1e-6;

constexpr std::array kParameters{"tan", "no2", "no3"};
/// Units of the bands where the tank has no kit: those of the common colour cards, per mg N/L.
constexpr std::array kCommonUnits{1.21588, 3.28454, 4.42680};

/// Four figures: less than any kit could tell.
double kept(double value)
{
    return QString::number(value, 'g', 4).toDouble();
}

double keptDay(double day)
{
    return std::round(day * 1e4) / 1e4;
}

std::vector<std::size_t> keptRows(const ForecastResult& result)
{
    std::vector<std::size_t> rows;
    const double now = result.inputs.request.tank.decisionDay;
    double last = -kThenEveryDays;
    for (std::size_t i = 0; i < result.forecast.days.size(); ++i) {
        const double ahead = result.forecast.days[i] - now;
        if (ahead <= kEveryRowDays + kSameDay ||
            (ahead <= kKeptDays + kSameDay && ahead - last >= kThenEveryDays - kSameDay)) {
            rows.push_back(i);
            last = ahead;
        }
    }
    return rows;
}

QJsonArray bandArray(const forecast::Band& band)
{
    QJsonArray array;
    for (const double quantile : band) {
        array.append(kept(quantile));
    }
    return array;
}

QJsonObject datesObject(const forecast::DateOdds& odds)
{
    QJsonArray days;
    for (const double day : odds.day) {
        days.append(std::isfinite(day) ? QJsonValue(keptDay(day)) : QJsonValue());
    }
    return {{u"days"_s, days}, {u"not_by_last"_s, kept(odds.notByLast)}, {u"last_day"_s, keptDay(odds.lastDay)}};
}

QJsonArray seriesArray(const ForecastResult& result, const std::vector<std::size_t>& rows)
{
    QJsonArray series;
    for (std::size_t s = 0; s < kParameters.size(); ++s) {
        const forecast::TankCase& tank = result.inputs.request.tank;
        const auto kit = forecast::newestKit(tank, static_cast<forecast::Substance>(s));
        const std::vector<forecast::Band>& bands = result.forecast.substances[s].kit;
        QJsonArray list;
        for (const std::size_t row : rows) {
            if (row < bands.size()) {
                list.append(bandArray(bands[row]));
            }
        }
        series.append(QJsonObject{{u"parameter"_s, QLatin1String(kParameters[s])},
                                  {u"units_per_mgn"_s, kit ? tank.kits[*kit].unitsPerMgN : kCommonUnits[s]},
                                  {u"bands"_s, list}});
    }
    return series;
}

QString printText(quint64 fingerprint)
{
    return QString::number(fingerprint, 16);
}

} // namespace

record::IssuedForecast issuedOf(const ForecastResult& result)
{
    const std::vector<std::size_t> rows = keptRows(result);
    QJsonArray days;
    for (const std::size_t row : rows) {
        days.append(keptDay(result.forecast.days[row]));
    }
    QJsonArray gates;
    for (std::size_t i = 0; i < result.forecast.gates.size() && i < result.inputs.request.gates.size(); ++i) {
        QJsonObject gate = datesObject(result.forecast.gates[i]);
        gate.insert(u"gate"_s, QString::fromStdString(result.inputs.request.gates[i].key));
        gates.append(gate);
    }
    const QJsonObject body{{u"version"_s, 1},
                           {u"fingerprint"_s, printText(result.inputs.fingerprint)},
                           {u"flooded"_s, result.inputs.flooded.toIso()},
                           {u"decision_day"_s, keptDay(result.inputs.request.tank.decisionDay)},
                           {u"fitted"_s, result.forecast.diagnostics.fitted},
                           {u"inflation"_s, result.inputs.request.inflation},
                           {u"days"_s, days},
                           {u"series"_s, seriesArray(result, rows)},
                           {u"complete"_s, datesObject(result.forecast.complete)},
                           {u"gates"_s, gates}};
    record::IssuedForecast issued;
    issued.layout = result.inputs.layout;
    issued.issued = result.inputs.asOf;
    issued.asOf = result.inputs.asOf;
    issued.model = kForecastModel;
    issued.body = QJsonDocument(body).toJson(QJsonDocument::Compact);
    return issued;
}

Result<void> keepIssued(store::Store& store, const ForecastResult& result)
{
    if (store.isReadOnly()) {
        return {};
    }
    const auto newest = store.newestIssued(result.inputs.layout);
    if (!newest) {
        return newest.error();
    }
    if (*newest) {
        const QJsonObject body = QJsonDocument::fromJson((*newest)->body).object();
        if (body.value(u"fingerprint"_s).toString() == printText(result.inputs.fingerprint)) {
            return {};
        }
    }
    const auto kept = store.keepIssued(issuedOf(result));
    return kept ? Result<void>{} : Result<void>(kept.error());
}

} // namespace littoral::facade
