// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/fit.h"

#include "core/forecast/calibration.h"
#include "core/forecast/case_scenario.h"
#include "core/forecast/priors.h"
#include "core/forecast/streams.h"
#include "core/sim/run.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace littoral::forecast {

namespace {

/// A reading this unlikely deserves a second test.
constexpr double kFlagBelow = 0.01;
/// The fit is not trusted below this acceptance, above this share of failed runs, or when so many readings are flagged.
constexpr double kLeastAcceptance = 0.1;
constexpr double kMostFailed = 0.2;
constexpr std::size_t kFewestContradictions = 3;
constexpr double kContradictingShare = 0.2;
constexpr std::size_t kSpreadSample = 128; ///< prior members run for Diagnostics::shrinkage
/// When even the best member finds the new readings less likely than this, each, none of them is a guide to the water.
constexpr double kLeastUpdateChance = 0.02;
constexpr double kLeastUpdateShare = 0.1; ///< of the members, effective, for an update without calibration

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

/// What members do up to the decision day: how surprising they find each reading, and their filter.
struct PastCheck
{
    std::vector<ReadingModel::Tails> tails; ///< mean over members, one per used reading
    std::vector<double> logCapacity;        ///< ln of ammonia-oxidising capacity at the decision day
};

PastCheck checkPast(const TankCase& tank, const Prior& prior, const Rows& z, bool withReadings)
{
    PastCheck check;
    const std::vector<CaseReading> readings = withReadings ? usedReadings(tank) : std::vector<CaseReading>{};
    sim::Scenario scenario = scenarioOf(tank, tank.decisionDay, false);
    std::vector<ReadingModel> models;
    std::vector<std::size_t> stops;
    for (const CaseReading& reading : readings) {
        if (scenario.stops.empty() || scenario.stops.back() < reading.day) {
            scenario.stops.push_back(reading.day);
        }
        stops.push_back(scenario.stops.size() - 1);
        models.emplace_back(tank.kits[static_cast<std::size_t>(reading.kit)], reading);
    }
    check.tails.resize(readings.size());
    auto control = sim::tankControl(1e-3);
    sim::PackTrace trace;
    std::array<sim::Member, sim::kLanes> members;
    for (std::size_t first = 0; first < z.count(); first += sim::kLanes) {
        const std::size_t used = std::min(sim::kLanes, z.count() - first);
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            members[lane] = prior.member(z.row(first + std::min(lane, used - 1)));
        }
        sim::runToStops(scenario, members, control, trace);
        for (std::size_t lane = 0; lane < used; ++lane) {
            if (trace.failed[lane]) {
                continue;
            }
            check.logCapacity.push_back(std::log(std::max(trace.end[sim::kAmmoniaCapacity][lane], 1e-300)));
            for (std::size_t i = 0; i < models.size(); ++i) {
                const auto& y = trace.atStops[stops[i]];
                const auto tails = models[i].tails(prior.shown(static_cast<std::size_t>(readings[i].kit),
                                                               z.row(first + lane), y[sim::kTotalAmmonia][lane],
                                                               y[sim::kNitrite][lane], y[sim::kNitrate][lane]));
                check.tails[i].atMost += tails.atMost;
                check.tails[i].atLeast += tails.atLeast;
            }
        }
    }
    const auto kept = static_cast<double>(std::max<std::size_t>(check.logCapacity.size(), 1));
    for (auto& tails : check.tails) {
        tails.atMost /= kept;
        tails.atLeast /= kept;
    }
    return check;
}

std::vector<FlaggedReading> surprises(const TankCase& tank, const std::vector<ReadingModel::Tails>& allTails)
{
    std::vector<FlaggedReading> flagged;
    const std::vector<CaseReading> readings = usedReadings(tank);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const double probability = std::min(1.0, 2.0 * std::min(allTails[i].atMost, allTails[i].atLeast));
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

void summarise(Fit& fit)
{
    const Rows& z = *fit.members;
    const auto n = static_cast<double>(z.count());
    fit.mean.assign(z.width(), 0.0);
    fit.sd.assign(z.width(), 0.0);
    for (std::size_t i = 0; i < z.count(); ++i) {
        for (std::size_t k = 0; k < z.width(); ++k) {
            fit.mean[k] += z.row(i)[k] / n;
        }
    }
    for (std::size_t i = 0; i < z.count(); ++i) {
        for (std::size_t k = 0; k < z.width(); ++k) {
            const double d = z.row(i)[k] - fit.mean[k];
            fit.sd[k] += d * d / (n - 1.0);
        }
    }
    for (double& sd : fit.sd) {
        sd = std::sqrt(sd);
    }
}

/// Looks at the calibrated members from the readings' side; swaps them for the prior's when they contradict each other.
void judge(Fit& fit, const Request& request, const Prior& prior)
{
    Diagnostics& diagnostics = fit.diagnostics;
    const PastCheck past = checkPast(request.tank, prior, *fit.members, true);
    diagnostics.flagged = surprises(request.tank, past.tails);
    if (contradicted(diagnostics.flagged.size(), past.tails.size())) {
        diagnostics.fitted = false;
    }
    if (diagnostics.fitted) {
        Random spreadRandom(request.seed, kPriorStream);
        const Rows unread = priorDraws(prior, kSpreadSample, spreadRandom);
        const double before = deviation(checkPast(request.tank, prior, unread, false).logCapacity);
        diagnostics.shrinkage = before > 0.0 ? 1.0 - deviation(past.logCapacity) / before : 0.0;
        return;
    }
    // Wide and honest: what would have been said without readings.
    Random fallbackRandom(request.seed, kFallbackStream);
    fit.members = std::make_shared<Rows>(priorDraws(prior, static_cast<std::size_t>(request.draws), fallbackRandom));
}

} // namespace

Result<Fit> fit(const Request& request, std::stop_token stop)
{
    if (const auto sound = checkRequest(request); !sound) {
        return sound.error();
    }
    const Prior prior(request.tank);
    const auto draws = static_cast<std::size_t>(request.draws);
    Likelihood likelihood(request.tank, prior);
    Random calibrationRandom(request.seed, kCalibrationStream);
    Random drawRandom(request.seed, kDrawStream);
    Fit result;
    Diagnostics& diagnostics = result.diagnostics;
    if (likelihood.empty()) {
        result.members = std::make_shared<Rows>(priorDraws(prior, draws, drawRandom));
        diagnostics.finalAcceptance = 1.0;
        diagnostics.finalEss = static_cast<double>(draws);
        summarise(result);
        return result;
    }
    const auto calibration =
        calibrate(prior, likelihood, static_cast<std::size_t>(request.particles), calibrationRandom, stop);
    if (!calibration) {
        return cancelled();
    }
    result.members = std::make_shared<Rows>(evenly(calibration->particles, draws, drawRandom.uniform()));
    diagnostics.stages = calibration->stages;
    diagnostics.finalAcceptance = calibration->finalAcceptance;
    diagnostics.finalEss = calibration->finalEss;
    diagnostics.failedShare = calibration->failedShare;
    diagnostics.runs = calibration->runs;
    diagnostics.fitted = calibration->converged && calibration->finalAcceptance >= kLeastAcceptance &&
                         calibration->failedShare <= kMostFailed;
    judge(result, request, prior);
    summarise(result);
    return result;
}

Result<std::optional<Fit>> updated(const Fit& earlier, const Request& request, const std::vector<std::size_t>& fresh)
{
    if (const auto sound = checkRequest(request); !sound) {
        return sound.error();
    }
    TankCase news = request.tank;
    news.readings.clear();
    for (const std::size_t place : fresh) {
        if (place >= request.tank.readings.size()) {
            return Error{Fault::BadInput, "A new reading is not among the readings.", "readings", ""};
        }
        news.readings.push_back(request.tank.readings[place]);
    }
    const Prior prior(news);
    if (prior.dimension() != earlier.members->width()) {
        return std::optional<Fit>{}; // a kit or a source water has come in: other unknowns
    }
    Likelihood likelihood(news, prior);
    std::vector<double> weights;
    likelihood.evaluate(*earlier.members, weights);
    const double top = *std::max_element(weights.begin(), weights.end());
    if (!(top >= static_cast<double>(fresh.size()) * std::log(kLeastUpdateChance))) {
        return std::optional<Fit>{};
    }
    double sum = 0.0;
    double squares = 0.0;
    for (double& weight : weights) {
        weight = std::exp(weight - top);
        sum += weight;
        squares += weight * weight;
    }
    const double effective = sum * sum / squares;
    if (effective < kLeastUpdateShare * static_cast<double>(weights.size())) {
        return std::optional<Fit>{};
    }
    Random random(request.seed, kDrawStream);
    const auto picks = systematicPicks(weights, weights.size(), random.uniform());
    auto members = std::make_shared<Rows>(weights.size(), earlier.members->width());
    for (std::size_t i = 0; i < picks.size(); ++i) {
        const auto from = earlier.members->row(picks[i]);
        std::copy(from.begin(), from.end(), members->row(i).begin());
    }
    Fit result;
    result.members = members;
    result.diagnostics = earlier.diagnostics;
    result.diagnostics.finalEss = effective;
    summarise(result);
    return std::optional<Fit>{std::move(result)};
}

} // namespace littoral::forecast
