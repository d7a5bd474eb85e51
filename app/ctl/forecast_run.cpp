// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/forecast_run.h"

#include "core/facade/learned.h"
#include "core/facade/next_tests.h"

#include <QCoreApplication>
#include <algorithm>
#include <atomic>
#include <thread>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

// Long enough to see a cycle through: the model states completion against day 60.
constexpr double kUsualHorizon_d = 28.0;
constexpr double kCycleSeenThroughDay = 60.0;
// Instants and grid days that agree to a tenth of a second are the same.
constexpr double kSameDay = 1e-6;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

Error notFlooded(const QString& tank, const record::Moment& flooded)
{
    return {
        Fault::BadInput,
        words("It was not flooded until %1.").arg(flooded.toDateTime().toString(u"yyyy-MM-dd HH:mm"_s)).toStdString(),
        tank.toStdString(), words("Ask for a later day with --as-of.").toStdString()};
}

TankForecast prepare(const record::Row& row, const record::Tank& tank, const ForecastQuestion& question)
{
    TankForecast out;
    out.tank = tank.name;
    const record::LayoutRecord* layout = row.currentLayout(tank.id, question.asOf);
    if (layout == nullptr) {
        out.error = Error{Fault::BadInput, words("It has no layout yet.").toStdString(), tank.name.toStdString(), {}};
        return out;
    }
    out.layoutNumber = layout->layout.number;
    if (layout->layout.flooded > question.asOf) {
        out.error = notFlooded(tank.name, layout->layout.flooded);
        return out;
    }
    const double age = record::daysBetween(layout->layout.flooded, question.asOf);
    facade::ForecastOptions options;
    options.horizonDays = question.days.value_or(std::max(kUsualHorizon_d, kCycleSeenThroughDay - age));
    options.stepDays = question.stepHours / 24.0;
    std::ranges::copy_if(question.extraDays, std::back_inserter(options.extraDays),
                         [&](double day) { return day >= age; });
    options.focusGate = question.gate;
    options.load_mgN_per_L_d = question.load_mgN_per_L_d;
    options.learn = question.learn;
    auto inputs = facade::forecastCase(row, layout->layout.id, question.asOf, options);
    if (inputs) {
        out.inputs = std::move(inputs).value();
    } else {
        out.error = inputs.error();
    }
    return out;
}

std::vector<SurprisingReading> surprisingReadings(const record::Row& row, const forecast::Diagnostics& diagnostics)
{
    std::vector<SurprisingReading> found;
    for (const forecast::FlaggedReading& flagged : diagnostics.flagged) {
        for (const auto& [id, layout] : row.layouts) {
            const auto reading =
                std::ranges::find(layout.readings, flagged.tag, [](const record::Reading& r) { return r.id.value; });
            if (reading != layout.readings.end()) {
                found.push_back({reading->parameter, reading->typed, reading->unit, reading->at, flagged.probability});
            }
        }
    }
    return found;
}

void lookForCauses(TankForecast& one, const record::Moment& asOf)
{
    if (!forecast::worthExplaining(one.forecast->diagnostics)) {
        return;
    }
    if (const auto causes = forecast::explainContradiction(one.inputs.request)) {
        one.causes = facade::causeSentences(one.inputs, *causes, asOf.localDate());
    }
}

} // namespace

std::vector<TankForecast> runForecasts(const record::Row& row, const std::vector<record::TankId>& tanks,
                                       const ForecastQuestion& question)
{
    std::vector<TankForecast> all;
    for (const record::TankId id : tanks) {
        all.push_back(prepare(row, *row.tank(id), question));
    }
    // Each worker takes the next tank and writes to that tank's place alone: no order of finishing shows in the result.
    std::atomic<std::size_t> next = 0;
    facade::Learning learning;
    const auto work = [&] {
        for (std::size_t i = next++; i < all.size(); i = next++) {
            if (all[i].error) {
                continue;
            }
            learning.teach(all[i].inputs);
            auto fitted = forecast::fit(all[i].inputs.request);
            if (!fitted) {
                all[i].error = fitted.error();
                continue;
            }
            auto answer = forecast::forecast(all[i].inputs.request, *fitted);
            if (answer) {
                all[i].forecast = std::move(answer).value();
                all[i].fit = std::move(fitted).value();
                if (question.causes) {
                    lookForCauses(all[i], question.asOf);
                }
            } else {
                all[i].error = answer.error();
            }
        }
    };
    std::vector<std::jthread> workers;
    const auto wanted = std::min<std::size_t>(static_cast<std::size_t>(std::max(question.threads, 1)), all.size());
    for (std::size_t i = 1; i < wanted; ++i) {
        workers.emplace_back(work);
    }
    work();
    workers.clear();
    for (TankForecast& one : all) {
        if (one.forecast) {
            one.surprising = surprisingReadings(row, one.forecast->diagnostics);
            one.learned = facade::learnedSentences(row, one.inputs.learned);
        }
    }
    return all;
}

double notBy(const forecast::DateOdds& odds, double day)
{
    double done = 0.0;
    for (std::size_t i = 0; i < odds.gridDays.size() && odds.gridDays[i] <= day + kSameDay; ++i) {
        done = odds.cumulative[i];
    }
    return std::clamp(1.0 - done, 0.0, 1.0);
}

} // namespace littoral::ctl
