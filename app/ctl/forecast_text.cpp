// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/forecast_output.h"
#include "app/ctl/text_table.h"
#include "core/care/gates.h"
#include "core/record/shown.h"
#include "core/wording/numbers.h"
#include "core/wording/plan_sentences.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

/// `forecast` for people: the verdict first, then the ranges, then what they rest on.
namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

// Rows of a table: close together at first, where the keeper acts.
constexpr std::array kShownAhead{0.0, 1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 14.0, 21.0, 28.0, 42.0};
// Places in kQuantiles.
constexpr std::size_t kLow8 = 1, kLow5 = 2, kHigh5 = 4, kHigh8 = 5;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QDate today(const TankForecast& one)
{
    return one.inputs.asOf.localDate();
}

/// The calendar day of a day since flooding, where the question was asked.
QDate calendarDay(const TankForecast& one, double day)
{
    return record::Moment(one.dateOf(day).utcMs(), one.inputs.asOf.offsetSeconds()).localDate();
}

QString dayMonth(const TankForecast& one, double day)
{
    return wording::dateText(calendarDay(one, day), today(one));
}

QString gateName(const std::string& key)
{
    const QString wanted = QString::fromStdString(key);
    for (const care::GateDefinition& gate : care::builtInGates().gates) {
        if (gate.key == wanted) {
            care::GateState state;
            state.key = gate.key;
            state.title = gate.title;
            return words("Readings clear for %1, %2:").arg(gate.key, wording::gateTitle(state));
        }
    }
    return words("Readings clear for %1:").arg(wanted);
}

QString datesSentence(const TankForecast& one, const QString& what, const forecast::DateOdds& odds)
{
    const double now = one.inputs.request.tank.decisionDay;
    const QString last = dayMonth(one, odds.lastDay);
    const QString notByLast = wording::oddsText(odds.notByLast);
    const double high = odds.day[kHigh8];
    if (high <= now) {
        return words("%1 by now, 9 in 10.").arg(what);
    }
    if (!std::isfinite(high)) {
        return words("%1 by %2: %3; not by then: %4.")
            .arg(what, last, wording::oddsText(1.0 - odds.notByLast), notByLast);
    }
    if (odds.day[kLow8] <= now) {
        return words("%1 by %2, 9 in 10; not by %3: %4.").arg(what, dayMonth(one, high), last, notByLast);
    }
    const QString range =
        wording::forecastRange(what, calendarDay(one, odds.day[kLow8]), calendarDay(one, high), 0.8, today(one));
    return words("%1; not by %2: %3.").arg(range, last, notByLast);
}

QString horizonSentence(const TankForecast& one)
{
    const forecast::DateOdds& odds = one.forecast->complete;
    const double horizon = one.horizonDay();
    if (horizon >= odds.lastDay) {
        return {};
    }
    return words("Not complete within the horizon, by %1: %2.")
               .arg(dayMonth(one, horizon), wording::oddsText(notBy(odds, horizon))) +
           u'\n';
}

QString planSentence(const facade::ForecastCase& inputs)
{
    const QString count = QString::number(inputs.plannedChanges);
    switch (inputs.plan) {
    case facade::PlanFollowed::Recorded:
        return words("Plan followed: what the record plans (water changes: %1).").arg(count);
    case facade::PlanFollowed::Cadence:
        return words("Plan followed: the cadence (water changes: %1).").arg(count);
    case facade::PlanFollowed::None:
        break;
    }
    return words("Plan followed: no water changes are planned.");
}

/// What the weaker guild could take now, and when both carry the load that is given or planned.
QString capacityLines(const TankForecast& one)
{
    const auto& capacity = one.forecast->capacity;
    if (capacity[0].future.empty() || capacity[1].future.empty()) {
        return {};
    }
    const forecast::Band& ammonia = capacity[0].future.front();
    const forecast::Band& nitrite = capacity[1].future.front();
    const forecast::Band& weaker = ammonia[3] < nitrite[3] ? ammonia : nitrite;
    QString text = wording::capacityText(weaker[kLow8], weaker[kHigh8]) + u'\n';
    const QString load = wording::carriesLoadText(one.forecast->carriesLoad, one.inputs.request.load_mgN_per_L_d,
                                                  one.inputs.flooded, today(one));
    return load.isEmpty() ? text : text + words("%1.").arg(load) + u'\n';
}

QString diagnosticsText(const TankForecast& one)
{
    QString text;
    const forecast::Diagnostics& diagnostics = one.forecast->diagnostics;
    if (!diagnostics.fitted) {
        text += words("Not fitted: the readings contradict the model, so the ranges are those of a tank without "
                      "readings. Repeat the tests below.") +
                u'\n';
    }
    for (const SurprisingReading& reading : one.surprising) {
        const record::Parameter* parameter = record::findParameter(reading.parameter);
        text += words("Check this test: %1 %2 %3, %4, is hard to explain.")
                    .arg(parameter == nullptr ? reading.parameter : parameter->name, reading.typed, reading.unit,
                         reading.at.toDateTime().toString(u"yyyy-MM-dd HH:mm"_s)) +
                u'\n';
    }
    for (const QString& cause : one.causes) {
        text += cause + u'\n';
    }
    return text;
}

QString range(const forecast::Band& band, std::size_t low, std::size_t high, int decimals)
{
    const QString a = QString::number(band[low], 'f', decimals);
    const QString b = QString::number(band[high], 'f', decimals);
    return a == b ? a : a + u'–' + b;
}

std::vector<std::size_t> shownRows(const TankForecast& one)
{
    std::vector<std::size_t> rows;
    const std::vector<double>& days = one.forecast->days;
    for (const double ahead : kShownAhead) {
        const double day = one.inputs.request.tank.decisionDay + ahead;
        const auto nearest = std::ranges::min_element(days, {}, [&](double d) { return std::abs(d - day); });
        if (nearest != days.end() && std::abs(*nearest - day) <= 0.5) {
            const auto index = static_cast<std::size_t>(nearest - days.begin());
            if (rows.empty() || rows.back() != index) {
                rows.push_back(index);
            }
        }
    }
    return rows;
}

QString substanceTable(const TankForecast& one, forecast::Substance substance)
{
    const forecast::SubstanceForecast& found = one.forecast->substances[static_cast<std::size_t>(substance)];
    const record::Parameter* parameter = record::findParameter(parameterKey(substance));
    const QString name = parameter == nullptr ? parameterKey(substance) : parameter->name;
    const int decimals = parameter == nullptr ? 2 : record::inUsualUnits(*parameter).decimals;
    std::vector<QStringList> rows;
    for (const std::size_t i : shownRows(one)) {
        if (i < found.kit.size()) {
            const double day = one.forecast->days[i];
            rows.push_back({QString::number(std::lround(day)), dayMonth(one, day),
                            range(found.kit[i], kLow5, kHigh5, decimals),
                            range(found.kit[i], kLow8, kHigh8, decimals)});
        }
    }
    return u'\n' + words("%1, %2 as the kit would show").arg(name, kitUnit(one, substance)) + u'\n' +
           textTable({words("Day"), words("Date"), words("5 in 10"), words("8 in 10")}, rows, 2);
}

} // namespace

QString forecastText(const TankForecast& one)
{
    const record::Moment& asOf = one.inputs.asOf;
    QString text = words("%1, layout %2, day %3 (%4)")
                       .arg(one.tank, QString::number(one.layoutNumber),
                            QString::number(static_cast<int>(std::floor(one.inputs.request.tank.decisionDay))),
                            asOf.toDateTime().toString(u"yyyy-MM-dd HH:mm"_s)) +
                   u'\n';
    text += datesSentence(one, words("Cycle complete"), one.forecast->complete) + u'\n' + horizonSentence(one);
    for (std::size_t i = 0; i < one.forecast->gates.size(); ++i) {
        text += datesSentence(one, gateName(one.inputs.request.gates[i].key), one.forecast->gates[i]) + u'\n';
    }
    text += capacityLines(one) + planSentence(one.inputs) + u'\n';
    for (const QString& remark : one.inputs.remarks) {
        text += words("Assumed: %1").arg(remark) + u'\n';
    }
    for (const QString& sentence : one.learned) {
        text += words("Learned: %1").arg(sentence) + u'\n';
    }
    text += diagnosticsText(one);
    for (const auto substance :
         {forecast::Substance::TotalAmmonia, forecast::Substance::Nitrite, forecast::Substance::Nitrate}) {
        text += substanceTable(one, substance);
    }
    return text;
}

} // namespace littoral::ctl
