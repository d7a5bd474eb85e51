// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/forecaster.h"

#include "core/forecast/calibration.h"
#include "core/forecast/case_scenario.h"
#include "core/forecast/ensemble.h"
#include "core/forecast/milestones.h"
#include "core/forecast/priors.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace littoral::forecast {

namespace {

/// Streams of the request's seed, so that more of one kind of number does not shift the others.
enum Stream : std::uint64_t {
    kCalibrationStream = 1,
    kDrawStream = 2,
    kPriorStream = 3,
    kEnsembleStream = 4,
    kFallbackStream = 5
};

/// A reading this unlikely deserves a second test.
constexpr double kFlagBelow = 0.01;
/// The fit is not trusted below this acceptance, above this share of failed runs, or when so many readings are flagged.
constexpr double kLeastAcceptance = 0.1;
constexpr double kMostFailed = 0.2;
constexpr std::size_t kFewestContradictions = 3;
constexpr double kContradictingShare = 0.2;
constexpr std::size_t kSpreadSample = 128; ///< prior members run for Diagnostics::shrinkage

Error cancelled()
{
    return {Fault::Cancelled, "The forecast was stopped.", "", ""};
}

double deviation(const std::vector<double>& values)
{
    if (values.size() < 2) {
        return 0.0;
    }
    const auto n = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / n;
    double sum = 0.0;
    for (const double value : values) {
        sum += (value - mean) * (value - mean);
    }
    return std::sqrt(sum / (n - 1.0));
}

/// n rows picked evenly from equally weighted particles.
Rows pickDraws(const Rows& particles, std::size_t n, double offset)
{
    Rows draws(n, particles.width());
    const auto picks = systematicPicks(std::vector<double>(particles.count(), 1.0), n, offset);
    for (std::size_t i = 0; i < n; ++i) {
        const auto from = particles.row(picks[i]);
        std::copy(from.begin(), from.end(), draws.row(i).begin());
    }
    return draws;
}

/// sd of ln ammonia capacity at the decision day before any reading.
double priorSpread(const TankCase& tank, const Prior& prior, Random& random)
{
    const Rows z = priorDraws(prior, kSpreadSample, random);
    sim::Scenario scenario = scenarioOf(tank, tank.decisionDay, false);
    auto control = sim::tankControl(1e-3);
    sim::PackTrace trace;
    std::vector<double> values;
    std::array<sim::Member, sim::kLanes> members;
    for (std::size_t first = 0; first < z.count(); first += sim::kLanes) {
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            members[lane] = prior.member(z.row(first + lane));
        }
        sim::runToStops(scenario, members, control, trace);
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            if (!trace.failed[lane]) {
                values.push_back(std::log(std::max(trace.end[sim::kAmmoniaCapacity][lane], 1e-300)));
            }
        }
    }
    return deviation(values);
}

std::vector<FlaggedReading> surprises(const TankCase& tank, const EnsembleOutcome& outcome)
{
    std::vector<FlaggedReading> flagged;
    const std::vector<CaseReading> readings = usedReadings(tank);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const ReadingModel::Tails& tails = outcome.readingTails[i];
        const double probability = std::min(1.0, 2.0 * std::min(tails.atMost, tails.atLeast));
        if (probability < kFlagBelow) {
            flagged.push_back({readings[i].tag, probability});
        }
    }
    return flagged;
}

bool contradicted(std::size_t flagged, std::size_t readings)
{
    return flagged >= kFewestContradictions &&
           static_cast<double>(flagged) >= kContradictingShare * static_cast<double>(readings);
}

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
    for (std::size_t s = 0; s < result.substances.size(); ++s) {
        SubstanceForecast& substance = result.substances[s];
        substance.substance = static_cast<Substance>(s);
        substance.water = bandsOf(outcome.water[s]);
        substance.fitted = bandsOf(outcome.fitted[s]);
        if (s < outcome.kit.size()) {
            substance.kit = bandsOf(outcome.kit[s]);
        }
    }
    const double now = request.tank.decisionDay;
    result.complete = oddsOf(outcome.complete, now, timetable.lastDay);
    for (auto& days : outcome.gates) {
        result.gates.push_back(oddsOf(std::move(days), now, timetable.lastDay));
    }
    return result;
}

} // namespace

Result<Forecast> forecast(const Request& request, std::stop_token stop)
{
    if (const auto sound = checkRequest(request); !sound) {
        return sound.error();
    }
    const TankCase& tank = request.tank;
    const Prior prior(tank);
    const Timetable timetable = timetableOf(request);
    const auto draws = static_cast<std::size_t>(request.draws);
    Likelihood likelihood(tank, prior);

    Random calibrationRandom(request.seed, kCalibrationStream);
    Random drawRandom(request.seed, kDrawStream);
    Random ensembleRandom(request.seed, kEnsembleStream);
    Diagnostics diagnostics;

    Rows z;
    if (likelihood.empty()) {
        z = priorDraws(prior, draws, drawRandom);
        diagnostics.finalAcceptance = 1.0;
        diagnostics.finalEss = static_cast<double>(draws);
    } else {
        auto calibration =
            calibrate(prior, likelihood, static_cast<std::size_t>(request.particles), calibrationRandom, stop);
        if (!calibration) {
            return cancelled();
        }
        z = pickDraws(calibration->particles, draws, drawRandom.uniform());
        diagnostics.stages = calibration->stages;
        diagnostics.finalAcceptance = calibration->finalAcceptance;
        diagnostics.finalEss = calibration->finalEss;
        diagnostics.failedShare = calibration->failedShare;
        diagnostics.runs = calibration->runs;
        diagnostics.fitted = calibration->converged && calibration->finalAcceptance >= kLeastAcceptance &&
                             calibration->failedShare <= kMostFailed;
    }

    auto outcome = runEnsemble(request, prior, z, timetable, ensembleRandom, stop);
    if (!outcome) {
        return cancelled();
    }
    diagnostics.runs += request.draws;
    if (!likelihood.empty()) {
        diagnostics.flagged = surprises(tank, *outcome);
        if (contradicted(diagnostics.flagged.size(), outcome->readingTails.size())) {
            diagnostics.fitted = false;
        }
        if (diagnostics.fitted) {
            Random spreadRandom(request.seed, kPriorStream);
            const double before = priorSpread(tank, prior, spreadRandom);
            diagnostics.shrinkage = before > 0.0 ? 1.0 - deviation(outcome->logCapacity) / before : 0.0;
        }
    }
    if (!diagnostics.fitted) {
        // Wide and honest: what would have been said without readings.
        Random fallbackRandom(request.seed, kFallbackStream);
        const Rows unread = priorDraws(prior, draws, fallbackRandom);
        outcome = runEnsemble(request, prior, unread, timetable, ensembleRandom, stop);
        if (!outcome) {
            return cancelled();
        }
        diagnostics.runs += request.draws;
    }
    if (outcome->complete.empty()) {
        return Error{Fault::NotConverged, "No member of the ensemble could be run to the end.", "forecast",
                     "Check temperature, soil and events for values no tank can have."};
    }
    Forecast result = assemble(request, timetable, *outcome);
    result.diagnostics = std::move(diagnostics);
    return result;
}

} // namespace littoral::forecast
