// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/forecast_output.h"
#include "app/ctl/text_table.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/instant.h"
#include "core/record/shown.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <array>
#include <cmath>

/// `forecast` for machines: CSV and JSON.
namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr std::array kReadSubstances{forecast::Substance::TotalAmmonia, forecast::Substance::Nitrite,
                                     forecast::Substance::Nitrate};

/// Six digits say all that a forecast can and stay the same under the last bits of the arithmetic.
QString value(double number)
{
    return QString::number(number, 'g', 6);
}

double rounded(double number)
{
    return value(number).toDouble();
}

/// Days to a ten-thousandth: nine seconds.
QString dayText(double day)
{
    return exchange::numberText(std::round(day * 1e4) / 1e4);
}

QString dateText(const TankForecast& one, double day)
{
    const record::Moment date = one.dateOf(day);
    // Whole seconds, in the offset of the instant asked about.
    return record::Moment((date.utcMs() + 500) / 1000 * 1000, one.inputs.asOf.offsetSeconds()).toIso();
}

const forecast::SubstanceForecast& bands(const TankForecast& one, forecast::Substance substance)
{
    return one.forecast->substances[static_cast<std::size_t>(substance)];
}

class CsvRows final
{
public:
    explicit CsvRows(std::vector<QStringList>& rows)
        : m_rows(rows)
    {
    }

    void add(const TankForecast& one)
    {
        for (const forecast::Substance substance : kReadSubstances) {
            series(one, parameterKey(substance), u"water"_s, u"mg/L N"_s, bands(one, substance).water);
            series(one, parameterKey(substance), u"kit"_s, kitUnit(one, substance), bands(one, substance).kit);
        }
        dates(one, u"cycle-complete"_s, one.forecast->complete);
        odds(one, u"cycle-not-complete-by-horizon"_s, one.forecast->complete, one.horizonDay());
        odds(one, u"cycle-not-complete-by-last-day"_s, one.forecast->complete, one.forecast->complete.lastDay);
        for (std::size_t i = 0; i < one.forecast->gates.size(); ++i) {
            const QString gate = u"gate-"_s + QString::fromStdString(one.inputs.request.gates[i].key).toLower();
            dates(one, gate, one.forecast->gates[i]);
            odds(one, gate + u"-not-open-by-horizon"_s, one.forecast->gates[i], one.horizonDay());
        }
    }

private:
    void series(const TankForecast& one, const QString& parameter, const QString& scale, const QString& unit,
                const std::vector<forecast::Band>& bands)
    {
        for (std::size_t i = 0; i < bands.size(); ++i) {
            const double day = one.forecast->days[i];
            QStringList row{one.tank, parameter, scale, unit, dayText(day), dateText(one, day)};
            for (const double quantile : bands[i]) {
                row << value(quantile);
            }
            m_rows.push_back(row << QString());
        }
    }

    void dates(const TankForecast& one, const QString& what, const forecast::DateOdds& odds)
    {
        QStringList days{one.tank, what, u"day"_s, u"d"_s, QString(), QString()};
        QStringList calendar{one.tank, what, u"calendar"_s, u"date"_s, QString(), QString()};
        for (const double quantile : odds.day) {
            days << (std::isfinite(quantile) ? dayText(quantile) : QString());
            calendar << (std::isfinite(quantile) ? dateText(one, quantile) : QString());
        }
        m_rows.push_back(days << QString());
        m_rows.push_back(calendar << QString());
    }

    void odds(const TankForecast& one, const QString& what, const forecast::DateOdds& odds, double day)
    {
        QStringList row{one.tank, what, u"odds"_s, u"probability"_s, dayText(day), dateText(one, day)};
        row += QStringList(static_cast<qsizetype>(forecast::kQuantiles.size()));
        m_rows.push_back(row << value(day >= odds.lastDay ? odds.notByLast : notBy(odds, day)));
    }

    std::vector<QStringList>& m_rows;
};

QJsonArray bandArray(const forecast::Band& band)
{
    QJsonArray array;
    for (const double quantile : band) {
        array.append(rounded(quantile));
    }
    return array;
}

QJsonObject seriesObject(const TankForecast& one, forecast::Substance substance)
{
    const forecast::SubstanceForecast& found = bands(one, substance);
    QJsonArray rows;
    for (std::size_t i = 0; i < found.water.size(); ++i) {
        const double day = one.forecast->days[i];
        QJsonObject row{{u"day"_s, dayText(day).toDouble()},
                        {u"date"_s, dateText(one, day)},
                        {u"water"_s, bandArray(found.water[i])}};
        if (i < found.kit.size()) {
            row.insert(u"kit"_s, bandArray(found.kit[i]));
        }
        rows.append(row);
    }
    QJsonObject object{{u"parameter"_s, parameterKey(substance)}, {u"water_unit"_s, u"mg/L N"_s}, {u"rows"_s, rows}};
    if (!found.kit.empty()) {
        object.insert(u"kit_unit"_s, kitUnit(one, substance));
    }
    return object;
}

QJsonObject oddsObject(const TankForecast& one, const forecast::DateOdds& odds)
{
    QJsonArray days;
    QJsonArray dates;
    for (const double quantile : odds.day) {
        const bool finite = std::isfinite(quantile);
        days.append(finite ? QJsonValue(dayText(quantile).toDouble()) : QJsonValue());
        dates.append(finite ? QJsonValue(dateText(one, quantile)) : QJsonValue());
    }
    const double horizon = one.horizonDay();
    return {{u"days"_s, days},
            {u"dates"_s, dates},
            {u"not_by_horizon"_s, rounded(horizon >= odds.lastDay ? odds.notByLast : notBy(odds, horizon))},
            {u"horizon_day"_s, dayText(horizon).toDouble()},
            {u"not_by_last_day"_s, rounded(odds.notByLast)},
            {u"last_day"_s, dayText(odds.lastDay).toDouble()}};
}

QJsonArray capacityRows(const TankForecast& one)
{
    QJsonArray rows;
    const auto& capacity = one.forecast->capacity;
    for (std::size_t i = 0; i < one.forecast->days.size() && i < capacity[0].future.size(); ++i) {
        const double day = one.forecast->days[i];
        rows.append(QJsonObject{{u"day"_s, dayText(day).toDouble()},
                                {u"date"_s, dateText(one, day)},
                                {u"ammonia_oxidisers"_s, bandArray(capacity[0].future[i])},
                                {u"nitrite_oxidisers"_s, bandArray(capacity[1].future[i])}});
    }
    return rows;
}

QString planWord(facade::PlanFollowed plan)
{
    switch (plan) {
    case facade::PlanFollowed::Recorded:
        return u"recorded"_s;
    case facade::PlanFollowed::Cadence:
        return u"cadence"_s;
    case facade::PlanFollowed::None:
        break;
    }
    return u"none"_s;
}

QJsonObject diagnosticsObject(const TankForecast& one)
{
    const forecast::Diagnostics& diagnostics = one.forecast->diagnostics;
    QJsonArray flagged;
    for (const SurprisingReading& reading : one.surprising) {
        flagged.append(QJsonObject{{u"parameter"_s, reading.parameter},
                                   {u"at"_s, exchange::instantText(reading.at)},
                                   {u"value"_s, reading.typed},
                                   {u"unit"_s, reading.unit},
                                   {u"probability"_s, rounded(reading.probability)}});
    }
    return {{u"fitted"_s, diagnostics.fitted},
            {u"stages"_s, diagnostics.stages},
            {u"runs"_s, diagnostics.runs},
            {u"final_acceptance"_s, rounded(diagnostics.finalAcceptance)},
            {u"final_ess"_s, rounded(diagnostics.finalEss)},
            {u"failed_share"_s, rounded(diagnostics.failedShare)},
            {u"shrinkage"_s, rounded(diagnostics.shrinkage)},
            {u"surprising_readings"_s, flagged},
            {u"causes"_s, QJsonArray::fromStringList(one.causes)}};
}

QJsonObject tankObject(const TankForecast& one)
{
    QJsonObject object{{u"tank"_s, one.tank}, {u"layout"_s, one.layoutNumber}};
    if (!one.forecast) {
        object.insert(u"error"_s, QString::fromStdString(one.error->sentence()));
        return object;
    }
    QJsonArray parameters;
    for (std::size_t i = 0; i < one.forecast->substances.size(); ++i) {
        parameters.append(seriesObject(one, static_cast<forecast::Substance>(i)));
    }
    QJsonArray gates;
    for (std::size_t i = 0; i < one.forecast->gates.size(); ++i) {
        QJsonObject gate = oddsObject(one, one.forecast->gates[i]);
        gate.insert(u"gate"_s, QString::fromStdString(one.inputs.request.gates[i].key));
        gates.append(gate);
    }
    object.insert(u"as_of"_s, exchange::instantText(one.inputs.asOf));
    object.insert(u"flooded"_s, exchange::instantText(one.inputs.flooded));
    object.insert(u"plan"_s, planWord(one.inputs.plan));
    object.insert(u"planned_changes"_s, one.inputs.plannedChanges);
    object.insert(u"remarks"_s, QJsonArray::fromStringList(one.inputs.remarks));
    object.insert(u"parameters"_s, parameters);
    object.insert(u"cycle_complete"_s, oddsObject(one, one.forecast->complete));
    object.insert(u"gates"_s, gates);
    object.insert(u"capacity_mgn_per_l_d"_s, capacityRows(one));
    object.insert(u"load_mgn_per_l_d"_s, rounded(one.inputs.request.load_mgN_per_L_d));
    if (!one.forecast->carriesLoad.gridDays.empty()) {
        object.insert(u"carries_load"_s, oddsObject(one, one.forecast->carriesLoad));
    }
    object.insert(u"learned"_s, QJsonArray::fromStringList(one.learned));
    object.insert(u"diagnostics"_s, diagnosticsObject(one));
    return object;
}

} // namespace

QString parameterKey(forecast::Substance substance)
{
    switch (substance) {
    case forecast::Substance::TotalAmmonia:
        return u"tan"_s;
    case forecast::Substance::Nitrite:
        return u"no2"_s;
    case forecast::Substance::Nitrate:
        return u"no3"_s;
    case forecast::Substance::FreeAmmonia:
        break;
    }
    return u"nh3"_s;
}

QString kitUnit(const TankForecast& one, forecast::Substance substance)
{
    const forecast::TankCase& tank = one.inputs.request.tank;
    std::optional<std::size_t> kit;
    for (std::size_t i = 0; i < tank.kits.size(); ++i) {
        if (tank.kits[i].substance == substance) {
            kit = i;
        }
    }
    double latest = -std::numeric_limits<double>::infinity();
    for (const forecast::CaseReading& reading : tank.readings) {
        const auto index = static_cast<std::size_t>(reading.kit);
        if (tank.kits[index].substance == substance && reading.day >= latest) {
            latest = reading.day;
            kit = index;
        }
    }
    if (kit && *kit < one.inputs.kits.size()) {
        return one.inputs.kits[*kit].unit;
    }
    const record::Parameter* parameter = record::findParameter(parameterKey(substance));
    return parameter == nullptr ? u"mg/L N"_s : record::inUsualUnits(*parameter).shown().code;
}

QString forecastCsv(const std::vector<TankForecast>& all)
{
    QStringList head{u"tank"_s, u"parameter"_s, u"scale"_s, u"unit"_s, u"day"_s, u"date"_s};
    for (const double quantile : forecast::kQuantiles) {
        head << u"q"_s + exchange::numberText(quantile);
    }
    std::vector<QStringList> rows;
    CsvRows add(rows);
    for (const TankForecast& one : all) {
        if (one.forecast) {
            add.add(one);
        }
    }
    return csvTable(head << u"odds"_s, rows);
}

QByteArray forecastJson(const std::vector<TankForecast>& all)
{
    QJsonArray quantiles;
    for (const double quantile : forecast::kQuantiles) {
        quantiles.append(quantile);
    }
    QJsonArray tanks;
    for (const TankForecast& one : all) {
        tanks.append(tankObject(one));
    }
    return QJsonDocument(QJsonObject{{u"quantiles"_s, quantiles}, {u"tanks"_s, tanks}}).toJson();
}

} // namespace littoral::ctl
