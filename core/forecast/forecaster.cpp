// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/forecaster.h"

#include "core/forecast/case_scenario.h"
#include "core/forecast/ensemble.h"
#include "core/forecast/milestones.h"
#include "core/forecast/priors.h"
#include "core/forecast/streams.h"
#include "core/forecast/test_value.h"

namespace littoral::forecast {

namespace {

std::vector<Band> bandsOf(EnsembleOutcome::Columns& columns)
{
    std::vector<Band> bands;
    bands.reserve(columns.size());
    for (auto& column : columns) {
        bands.push_back(bandOf(column));
    }
    return bands;
}

Forecast assemble(const Request& request, const Timetable& timetable, EnsembleOutcome& outcome)
{
    Forecast result;
    result.days = timetable.rows;
    result.pastDays = timetable.past;
    // Before the columns are sorted into bands: these need each draw's values side by side.
    result.nextTests = nextTests(request, timetable, outcome);
    for (std::size_t s = 0; s < result.substances.size(); ++s) {
        SubstanceForecast& substance = result.substances[s];
        substance.substance = static_cast<Substance>(s);
        substance.water = bandsOf(outcome.water[s]);
        substance.fitted = bandsOf(outcome.fitted[s]);
        if (s < outcome.kit.size()) {
            fillStepOdds(request, timetable, outcome, substance);
            substance.kit = bandsOf(outcome.kit[s]);
        }
    }
    for (std::size_t guild = 0; guild < result.capacity.size(); ++guild) {
        result.capacity[guild].future = bandsOf(outcome.capacity[guild]);
        result.capacity[guild].fitted = bandsOf(outcome.fittedCapacity[guild]);
    }
    const double now = request.tank.decisionDay;
    if (!outcome.carries.empty()) {
        result.carriesLoad = oddsOf(outcome.carries, now, timetable.lastDay);
    }
    result.complete = oddsOf(outcome.complete, now, timetable.lastDay);
    for (auto& days : outcome.gates) {
        result.gates.push_back(oddsOf(std::move(days), now, timetable.lastDay));
    }
    return result;
}

} // namespace

Result<Forecast> forecast(const Request& request, const Fit& fit, std::stop_token stop)
{
    if (const auto sound = checkRequest(request); !sound) {
        return sound.error();
    }
    const Prior prior(request.tank);
    if (prior.dimension() != fit.members->width()) {
        return Error{Fault::BadInput, "The calibrated members belong to another case.", "forecast", ""};
    }
    const Timetable timetable = timetableOf(request);
    Random random(request.seed, kEnsembleStream);
    const auto members = static_cast<std::size_t>(request.draws) < fit.members->count()
                             ? evenly(*fit.members, static_cast<std::size_t>(request.draws), 0.0)
                             : *fit.members;
    auto outcome = runEnsemble(request, prior, members, timetable, random, stop);
    if (!outcome) {
        return cancelled();
    }
    if (outcome->complete.empty()) {
        return Error{Fault::NotConverged, "No member of the ensemble could be run to the end.", "forecast",
                     "Check temperature, soil and events for values no tank can have."};
    }
    Forecast result = assemble(request, timetable, *outcome);
    result.diagnostics = fit.diagnostics;
    result.diagnostics.runs += static_cast<int>(members.count());
    return result;
}

Result<Forecast> forecast(const Request& request, std::stop_token stop)
{
    const auto members = fit(request, stop);
    return members ? forecast(request, members.value(), stop) : Result<Forecast>(members.error());
}

} // namespace littoral::forecast
