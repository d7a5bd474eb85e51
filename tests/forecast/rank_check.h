// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/calibration.h"
#include "core/forecast/case_scenario.h"
#include "tests/forecast/cases.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <optional>
#include <vector>

/// Simulation-based calibration (S. Talts, M. Betancourt, D. Simpson, A. Vehtari and A. Gelman, arXiv:1804.06788,
/// 2018): a truth is drawn from the prior, run by the model and read through the observation model itself; if the
/// sampler draws from the posterior, the rank of the truth among posterior draws is uniform for every quantity. It
/// tests the sampler and the likelihood, not whether model or prior are right. No inflation or dispersion takes part.
namespace littoral::forecast::ranks {

enum Quantity : std::size_t {
    kLogAmmoniaCapacity, ///< ln of the capacity on the decision day
    kLogNitriteCapacity,
    kAmmoniaLater, ///< mg N/L seven days later
    kNitriteLater,
    kNitrateLater,
    kZCapacity,
    kZNitriteGrowth,
    kZUptake,
    kZNitrateGain,
    kQuantityCount
};
inline constexpr std::array<const char*, kQuantityCount> kQuantityNames{
    "ln ammonia capacity", "ln nitrite capacity", "ammonia in 7 d", "nitrite in 7 d",    "nitrate in 7 d",
    "z capacity at start", "z nitrite growth",    "z plant uptake", "z nitrate kit gain"};

struct Settings
{
    std::size_t particles = 512;
    double decisionDay = 14.0;
    double readEvery_d = 2.0;
    std::uint64_t seed = 6;
    double kitError =
        1.0; ///< factor on what the kits see that the likelihood is not told; 1 unless a test wants failure
};

inline constexpr std::size_t kRankDraws = 99; ///< ranks run from 0 to 99
inline constexpr std::size_t kBins = 10;
inline constexpr double kLater_d = 7.0;

/// The tank of one index: four kinds in turn.
inline TankCase caseOf(std::uint64_t index, const Settings& settings)
{
    TankCase tank = cases::richSoil(settings.decisionDay);
    const std::uint64_t kind = index % 4;
    if (kind == 1) {
        tank.events.push_back({0.2, EventKind::MatureMedia, 0.3, 0});
    } else if (kind == 2) {
        tank.setup.soil = SoilKind::Mild;
        tank.events.push_back({0.2, EventKind::StarterDose, 1.0, 0});
    } else if (kind == 3) {
        tank.setup.soil = SoilKind::Inert;
        tank.setup.plants = PlantDensity::None;
        tank.setup.sources[0].alkalinity_meq_per_L = 2.5;
        tank.events = {{0.4, EventKind::AmmoniaDose, 2.5, 0}};
    }
    std::stable_sort(tank.events.begin(), tank.events.end(),
                     [](const Event& a, const Event& b) { return a.day < b.day; });
    return tank;
}

/// Runs rows of z to the decision day and seven days on; empty entries for runs that failed.
inline std::vector<std::optional<std::array<double, kQuantityCount>>> quantitiesOf(const TankCase& tank,
                                                                                   const Prior& prior, const Rows& z)
{
    const double later = tank.decisionDay + kLater_d;
    sim::Scenario scenario = scenarioOf(tank, later, false);
    scenario.stops = {tank.decisionDay, later};
    auto control = sim::tankControl(4e-4);
    control.maxSteps = 60000;
    sim::PackTrace trace;
    std::array<sim::Member, sim::kLanes> members;
    std::vector<std::optional<std::array<double, kQuantityCount>>> all(z.count());
    const std::size_t gain = prior.dimension() - 1; // kits come last, nitrate is the last kit
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
            const auto& now = trace.atStops[0];
            const auto& then = trace.atStops[1];
            const auto row = z.row(first + lane);
            all[first + lane] = {std::log(std::max(now[sim::kAmmoniaCapacity][lane], 1e-300)),
                                 std::log(std::max(now[sim::kNitriteCapacity][lane], 1e-300)),
                                 then[sim::kTotalAmmonia][lane],
                                 then[sim::kNitrite][lane],
                                 then[sim::kNitrate][lane],
                                 row[kUnknownCapacity],
                                 row[kUnknownNitriteGrowth],
                                 row[kUnknownUptake],
                                 row[gain]};
        }
    }
    return all;
}

/// One step of a card with the probabilities the likelihood gives the steps: misreads and outliers included.
inline double drawReading(const Kit& kit, double shown, Random& random)
{
    double left = random.uniform();
    for (const double step : kit.steps) {
        left -= std::exp(ReadingModel(kit, {0.0, 0, step, step, false, 0}).logLikelihood(shown));
        if (left <= 0.0) {
            return step;
        }
    }
    return kit.steps.back();
}

/// Reads the truth with every kit, every few days up to the decision day.
inline void drawReadings(TankCase& tank, const Prior& prior, const Rows& truth, const Settings& settings,
                         Random& random)
{
    sim::Scenario scenario = scenarioOf(tank, tank.decisionDay, false);
    for (double day = 1.0; day <= tank.decisionDay; day += settings.readEvery_d) {
        scenario.stops.push_back(day);
    }
    std::array<sim::Member, sim::kLanes> members;
    members.fill(prior.member(truth.row(0)));
    auto control = sim::tankControl(1e-4);
    control.maxSteps = 60000;
    sim::PackTrace trace;
    sim::runToStops(scenario, members, control, trace);
    for (std::size_t i = 0; i < scenario.stops.size(); ++i) {
        const auto& y = trace.atStops[i];
        for (std::size_t kit = 0; kit < tank.kits.size(); ++kit) {
            const double shown = settings.kitError * prior.shown(kit, truth.row(0), y[sim::kTotalAmmonia][0],
                                                                 y[sim::kNitrite][0], y[sim::kNitrate][0]);
            cases::addReading(tank, scenario.stops[i], static_cast<int>(kit),
                              drawReading(tank.kits[kit], shown, random));
        }
    }
}

using Ranks = std::array<std::size_t, kQuantityCount>;

/// Ranks of one truth; nothing when its run or the calibration failed.
inline std::optional<Ranks> rankOf(std::uint64_t index, const Settings& settings)
{
    const std::uint64_t own = mixSeed(settings.seed, index);
    TankCase tank = caseOf(index, settings);
    const Prior prior(tank);
    Random truthRandom(own, 1);
    Random readingRandom(own, 2);
    Random samplerRandom(own, 3);
    const Rows truth = priorDraws(prior, 1, truthRandom);
    drawReadings(tank, prior, truth, settings, readingRandom);
    Likelihood likelihood(tank, prior);
    const auto fit = calibrate(prior, likelihood, settings.particles, samplerRandom, {});
    const auto real = quantitiesOf(tank, prior, truth)[0];
    if (!fit || !fit->converged || !real) {
        return std::nullopt;
    }
    const auto picks =
        systematicPicks(std::vector<double>(fit->particles.count(), 1.0), kRankDraws, samplerRandom.uniform());
    Rows draws(kRankDraws, prior.dimension());
    for (std::size_t i = 0; i < picks.size(); ++i) {
        std::copy(fit->particles.row(picks[i]).begin(), fit->particles.row(picks[i]).end(), draws.row(i).begin());
    }
    Ranks ranks{};
    for (const auto& drawn : quantitiesOf(tank, prior, draws)) {
        for (std::size_t q = 0; q < kQuantityCount; ++q) {
            ranks[q] += drawn && (*drawn)[q] < (*real)[q] ? 1 : 0;
        }
    }
    return ranks;
}

/// Chance of a chi-square of nine degrees of freedom above x (M. Abramowitz and I. Stegun, Handbook of Mathematical
/// Functions, 26.4.4).
inline double chiSquareTail9(double x)
{
    double term = std::sqrt(x);
    double sum = 0.0;
    for (int r = 1; r <= 4; ++r) {
        sum += term;
        term *= x / (2.0 * r + 1.0);
    }
    constexpr double kRootTwoOverPi = 0.79788456080286536;
    return std::erfc(std::sqrt(0.5 * x)) + kRootTwoOverPi * std::exp(-0.5 * x) * sum;
}

/// Ten bins of ranks against evenness.
struct Evenness
{
    std::array<int, kBins> bins{};
    double chiSquare = 0.0;
    double p = 1.0;
};

inline Evenness evennessOf(const std::vector<Ranks>& all, std::size_t quantity)
{
    Evenness even;
    for (const Ranks& ranks : all) {
        ++even.bins[ranks[quantity] * kBins / (kRankDraws + 1)];
    }
    const double expected = static_cast<double>(all.size()) / static_cast<double>(kBins);
    for (const int n : even.bins) {
        even.chiSquare += (n - expected) * (n - expected) / expected;
    }
    even.p = chiSquareTail9(even.chiSquare);
    return even;
}

} // namespace littoral::forecast::ranks
