// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/case_kits.h"
#include "core/facade/lane_parts.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

// Places of forecast::kQuantiles used for the 8-in-10 and 5-in-10 bands and the middle member.
enum Quantile : std::size_t { k10 = 1, k25 = 2, k50 = 3, k75 = 4, k90 = 5 };

std::vector<LaneBand> bandsOf(const std::vector<double>& days, const std::vector<forecast::Band>& bands,
                              const record::Moment& flooded, const record::Unit& unit)
{
    std::vector<LaneBand> made;
    made.reserve(bands.size());
    for (std::size_t i = 0; i < bands.size() && i < days.size(); ++i) {
        const forecast::Band& band = bands[i];
        made.push_back({flooded.plusDays(days[i]).utcMs(), unit.fromCanonical(band[k10]), unit.fromCanonical(band[k25]),
                        unit.fromCanonical(band[k50]), unit.fromCanonical(band[k75]), unit.fromCanonical(band[k90])});
    }
    return made;
}

QString readingSentence(const record::Parameter& parameter, const record::Reading& reading)
{
    const QString when = wording::fullDateTimeText(reading.at.toDateTime());
    const QString base = QCoreApplication::translate("Lane", "%1 %2 %3, %4")
                             .arg(parameter.name, record::valueText(reading), parameter.shown().label, when);
    return reading.note.isEmpty() ? base : QCoreApplication::translate("Lane", "%1. %2").arg(base, reading.note);
}

} // namespace

LaneSeries seriesOf(const record::Row& row, const record::LayoutRecord& layout, const QString& key,
                    const ForecastResult* result)
{
    LaneSeries series;
    const record::Parameter* parameter = record::findParameter(key);
    if (parameter == nullptr) {
        return series;
    }
    const record::Unit& unit = parameter->shown();
    series.parameter = key;
    series.name = parameter->name;
    series.unitLabel = unit.label;
    series.decimals = parameter->decimals;
    for (const record::Reading* reading : layout.readingsOf(key)) {
        const double shown = reading->censoring == record::Censoring::Below ? reading->high : reading->value;
        series.marks.push_back({reading->at.utcMs(), unit.fromCanonical(shown), reading->censoring, reading->id,
                                readingSentence(*parameter, *reading)});
    }
    if (const record::Target* target = row.target(layout.layout.tank, key)) {
        const auto shown = [&](const std::optional<double>& end) {
            return end ? std::optional(unit.fromCanonical(*end)) : std::nullopt;
        };
        series.targetLow = shown(target->low);
        series.targetHigh = shown(target->high);
    }
    if (const auto substance = substanceOf(key); substance && result != nullptr) {
        const auto& part = result->forecast.substances[static_cast<std::size_t>(*substance)];
        series.forecast = bandsOf(result->forecast.days, part.water, result->inputs.flooded, unit);
        series.fitted = bandsOf(result->forecast.pastDays, part.fitted, result->inputs.flooded, unit);
    }
    return series;
}

std::optional<LaneSeries> freeAmmoniaOf(const ForecastResult* result)
{
    if (result == nullptr) {
        return std::nullopt;
    }
    const record::Unit asN{u"mg/L N"_s, wording::freeAmmoniaUnit(), 1.0, 0.0};
    const auto& part = result->forecast.substances[static_cast<std::size_t>(forecast::Substance::FreeAmmonia)];
    LaneSeries series;
    series.parameter = u"nh3"_s;
    series.name = QCoreApplication::translate("Lane", "Free ammonia");
    series.unitLabel = asN.label;
    series.decimals = 3;
    series.forecast = bandsOf(result->forecast.days, part.water, result->inputs.flooded, asN);
    series.fitted = bandsOf(result->forecast.pastDays, part.fitted, result->inputs.flooded, asN);
    return series;
}

} // namespace littoral::facade
