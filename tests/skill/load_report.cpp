// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/load_report.h"

#include "core/forecast/ensemble.h"
#include "core/forecast/fit.h"
#include "core/forecast/streams.h"
#include "tests/skill/independent_tank.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cstdio>
#include <functional>
#include <thread>

namespace littoral::skill {

namespace {

using forecast::EnsembleOutcome;

/// A few small animals, a stocked nano tank, a stocked tank, heavy stock, more than a young filter ever takes.
constexpr std::array<double, 5> kLoads_mgN_per_L_d{0.02, 0.05, 0.10, 0.20, 0.40};
constexpr std::array<double, 3> kAhead_d{0.0, 7.0, 14.0};
constexpr int kWatchedDays = 7;
constexpr std::array<double, 7> kBinEnds{0.05, 0.20, 0.40, 0.60, 0.80, 0.95, 1.0};

struct LoadScore
{
    std::size_t decision = 0, ahead = 0;
    double odds = 0.0;
    bool carried = false; ///< the filter could turn the load over with the water at the clear limits
    bool clear = false;   ///< put in, daily means stayed below them for a week, water changes as logged
};

double shareCarrying(const EnsembleOutcome& outcome, std::size_t row, double load)
{
    const auto& ammonia = outcome.capacity[0][row];
    const auto& nitrite = outcome.capacity[1][row];
    double carrying = 0.0;
    for (std::size_t i = 0; i < ammonia.size(); ++i) {
        carrying += std::min(ammonia[i], nitrite[i]) >= load ? 1.0 : 0.0;
    }
    return carrying / static_cast<double>(ammonia.size());
}

bool staysClear(const SimulatedTank& tank, double day)
{
    for (int d = 1; d <= kWatchedDays; ++d) {
        double ammonia = 0.0;
        double nitrite = 0.0;
        for (int i = 0; i < kPerDay; ++i) {
            const auto sample = static_cast<std::size_t>((static_cast<int>(day) + d) * kPerDay + i);
            ammonia += tank.water[0][sample] * kCardUnits[0] / kPerDay;
            nitrite += tank.water[1][sample] * kCardUnits[1] / kPerDay;
        }
        if (ammonia >= 0.25 || nitrite >= 0.25) {
            return false;
        }
    }
    return true;
}

std::vector<LoadScore> scoresOf(std::size_t method, std::uint64_t seed, std::uint64_t index)
{
    std::vector<LoadScore> scores;
    const auto start = static_cast<StartMethod>(method);
    const SimulatedTank tank = simulate(start, seed, index);
    for (std::size_t d = 0; d < kDecisionDays.size(); ++d) {
        const forecast::Request request = requestOf(tank, method, index, d);
        const auto fitted = forecast::fit(request);
        const forecast::Prior prior(request.tank);
        const forecast::Timetable timetable = forecast::timetableOf(request);
        Random random(request.seed, forecast::kEnsembleStream);
        const auto outcome =
            fitted ? forecast::runEnsemble(request, prior, *fitted->members, timetable, random, {}) : std::nullopt;
        if (!outcome) {
            continue;
        }
        for (std::size_t a = 0; a < kAhead_d.size(); ++a) {
            const double day = kDecisionDays[d] + kAhead_d[a];
            for (const double load : kLoads_mgN_per_L_d) {
                Mishap stocked;
                stocked.unlogged = {{day, forecast::EventKind::LivestockRate, load, 0}};
                LoadScore score{d, a, shareCarrying(*outcome, static_cast<std::size_t>(kAhead_d[a]), load)};
                score.carried = tank.carries[static_cast<std::size_t>(day * kPerDay)] >= load;
                score.clear = staysClear(simulate(start, seed, index, stocked), day);
                scores.push_back(score);
            }
        }
    }
    return scores;
}

void printBins(const std::vector<LoadScore>& scores)
{
    std::printf("  %-12s %6s %10s %10s %16s\n", "odds stated", "n", "mean odds", "carried", "clear for a week");
    double low = 0.0;
    for (const double high : kBinEnds) {
        double n = 0.0, odds = 0.0, carried = 0.0, clear = 0.0;
        for (const LoadScore& score : scores) {
            if (score.odds >= low && (score.odds < high || high == 1.0)) {
                n += 1.0;
                odds += score.odds;
                carried += score.carried ? 1.0 : 0.0;
                clear += score.clear ? 1.0 : 0.0;
            }
        }
        const double divisor = std::max(n, 1.0);
        std::printf("  %.2f to %.2f %6.0f %10.2f %10.2f %16.2f\n", low, high, n, odds / divisor, carried / divisor,
                    clear / divisor);
        low = high;
    }
}

void printBrier(const char* name, const std::vector<LoadScore>& scores,
                const std::function<bool(const LoadScore&)>& wanted)
{
    double n = 0.0, carried = 0.0, clear = 0.0, brierCarried = 0.0, brierClear = 0.0, odds = 0.0;
    for (const LoadScore& score : scores) {
        if (!wanted(score)) {
            continue;
        }
        n += 1.0;
        odds += score.odds;
        const double wasCarried = score.carried ? 1.0 : 0.0;
        const double wasClear = score.clear ? 1.0 : 0.0;
        carried += wasCarried;
        clear += wasClear;
        brierCarried += (score.odds - wasCarried) * (score.odds - wasCarried);
        brierClear += (score.odds - wasClear) * (score.odds - wasClear);
    }
    n = std::max(n, 1.0);
    std::printf("  %-20s %5.0f  odds %.2f, carried %.2f: Brier %.3f / %.3f;  clear for a week %.2f: %.3f / %.3f\n",
                name, n, odds / n, carried / n, brierCarried / n, carried / n * (1.0 - carried / n), clear / n,
                brierClear / n, clear / n * (1.0 - clear / n));
}

} // namespace

void printLoads(const Batch& batch)
{
    const auto perMethod = static_cast<std::size_t>(batch.tanksPerMethod);
    std::vector<std::vector<LoadScore>> each(perMethod * kStartMethods);
    std::atomic<std::size_t> next{0};
    {
        std::vector<std::jthread> threads;
        for (unsigned i = 0; i < std::max(batch.threads, 1U); ++i) {
            threads.emplace_back([&] {
                for (std::size_t k = next++; k < each.size(); k = next++) {
                    each[k] = scoresOf(k / perMethod, batch.seed, k % perMethod);
                }
            });
        }
    }
    std::vector<LoadScore> scores;
    for (const auto& one : each) {
        scores.insert(scores.end(), one.begin(), one.end());
    }
    std::printf(
        "\nLoad: odds that the filter carries 0.02 to 0.40 mg/L N a day, now and 7 and 14 days after days 7, 14 "
        "and 21, %d tanks per\nstart method, seed %llu. Carried: the simulated filter could turn the load over "
        "with the water at 0.25 ppm. Clear: the load\nwas put in and daily means stayed below that for a week, "
        "water changes as logged. Brier beside that of always saying\nhow often it happened\n",
        batch.tanksPerMethod, static_cast<unsigned long long>(batch.seed));
    printBins(scores);
    printBrier("all", scores, [](const LoadScore&) { return true; });
    for (std::size_t a = 0; a < kAhead_d.size(); ++a) {
        char name[32];
        std::snprintf(name, sizeof name, "%g days ahead", kAhead_d[a]);
        printBrier(name, scores, [a](const LoadScore& score) { return score.ahead == a; });
    }
}

} // namespace littoral::skill
