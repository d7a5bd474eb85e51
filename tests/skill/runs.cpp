// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/runs.h"

#include "core/forecast/forecaster.h"
#include "tests/skill/scores.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <ctime>
#include <thread>

namespace littoral::skill {

namespace {

using forecast::Band;
using forecast::Forecast;
using forecast::Request;

/// Lowest and highest quantile of the 50, 80 and 95 % bands.
constexpr std::array<std::pair<std::size_t, std::size_t>, 3> kBands{{{2, 4}, {1, 5}, {0, 6}}};
/// Many truths sit at zero, where a band is a point: coverage allows a hair on the log scale and half a day on dates.
constexpr double kScaleSlack = 0.01;
constexpr double kDaySlack = 0.5;
constexpr double kNotByThen = kLastDay + 10.0;

double threadSeconds()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

std::array<bool, 3> insideOf(const Band& band, double truth, double slack)
{
    std::array<bool, 3> inside{};
    for (std::size_t i = 0; i < inside.size(); ++i) {
        inside[i] = truth >= band[kBands[i].first] - slack && truth <= band[kBands[i].second] + slack;
    }
    return inside;
}

Band scaled(const Band& water, std::size_t substance)
{
    Band band{};
    std::transform(water.begin(), water.end(), band.begin(), [&](double w) { return scaledWater(w, substance); });
    return band;
}

void scoreWater(const SimulatedTank& tank, const Request& request, const Forecast& made, const Forecast& prior,
                std::size_t decision, TankScores& out)
{
    for (std::size_t lead = 0; lead < kLeads_d.size(); ++lead) {
        const double day = request.tank.decisionDay + kLeads_d[lead];
        const auto row = static_cast<std::size_t>(kLeads_d[lead]); // one row a day
        for (std::size_t s = 0; s < tank.water.size(); ++s) {
            const double truth = scaledWater(tank.water[s][static_cast<std::size_t>(day * kPerDay)], s);
            const Band band = scaled(made.substances[s].water[row], s);
            WaterScore score;
            score.substance = s;
            score.lead = lead;
            score.decision = decision;
            score.inside = insideOf(band, truth, kScaleSlack);
            score.held = heldShares(band, truth, kScaleSlack);
            score.wide = band[4] - band[2] > 2.0 * kScaleSlack;
            score.crps = crpsOf(band, truth);
            score.prior = crpsOf(scaled(prior.substances[s].water[row], s), truth);
            if (const auto sheet = spreadsheetOf(request.tank, s, day)) {
                score.read = true;
                score.persistence = std::fabs(truth - scaledCard(sheet->last, s));
                score.line = crpsOfLine(*sheet, s, truth);
                score.lineWithSpread = crpsOfLineWithSpread(*sheet, s, truth);
            }
            out.water.push_back(score);
        }
    }
}

void scoreDate(const SimulatedTank& tank, const Forecast& made, const Forecast& prior, std::size_t decision,
               TankScores& out)
{
    const double now = kDecisionDays[decision];
    const Band& band = made.complete.day;
    DateScore score;
    score.decision = decision;
    score.inside = insideOf(band, tank.complete, kDaySlack);
    score.crps = crpsOfDate(made.complete, 0.0, tank.complete);
    score.prior = crpsOfDate(prior.complete, 0.0, tank.complete);
    score.crpsAhead = crpsOfDate(made.complete, now, tank.complete);
    score.priorAhead = crpsOfDate(prior.complete, now, tank.complete);
    score.error_d = std::fabs(std::min(band[3], kNotByThen) - std::min(tank.complete, kNotByThen));
    score.width80_d = std::min(band[5], kNotByThen) - std::min(band[1], kNotByThen);
    score.withinWeek = probabilityBy(made.complete, now + 7.0);
    score.wasWithinWeek = tank.complete <= now + 7.0;
    score.open = tank.complete > now;
    score.fitted = made.diagnostics.fitted;
    out.dates.push_back(score);
}

TankScores scoreTank(std::size_t method, std::uint64_t seed, std::uint64_t index)
{
    TankScores out;
    out.method = method;
    const SimulatedTank tank = simulate(static_cast<StartMethod>(method), seed, index);
    out.complete = tank.complete;
    for (std::size_t d = 0; d < kDecisionDays.size(); ++d) {
        const Request request = requestOf(tank, method, index, d);
        Request unread = request;
        unread.tank.readings.clear();
        const double start = threadSeconds();
        const auto made = forecast::forecast(request);
        out.seconds.push_back(threadSeconds() - start);
        const auto prior = forecast::forecast(unread);
        if (!made || !prior) {
            out.failure = (made ? prior : made).error().sentence();
            return out;
        }
        scoreWater(tank, request, *made, *prior, d, out);
        scoreDate(tank, *made, *prior, d, out);
    }
    return out;
}

} // namespace

Request requestOf(const SimulatedTank& tank, std::size_t method, std::uint64_t index, std::size_t decision)
{
    Request request;
    request.tank = tank.log;
    request.tank.decisionDay = kDecisionDays[decision];
    request.seed = mixSeed(mixSeed(index, method), decision);
    std::erase_if(request.tank.readings, [&](const auto& r) { return r.day > request.tank.decisionDay; });
    return request;
}

std::vector<TankScores> scoreBatch(const Batch& batch)
{
    const auto perMethod = static_cast<std::size_t>(batch.tanksPerMethod);
    std::vector<TankScores> scores(perMethod * kStartMethods);
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < scores.size(); i = next++) {
            scores[i] = scoreTank(i / perMethod, batch.seed, i % perMethod);
        }
    };
    {
        std::vector<std::jthread> threads;
        for (unsigned i = 0; i < std::max(batch.threads, 1U); ++i) {
            threads.emplace_back(work);
        }
    }
    return scores;
}

} // namespace littoral::skill
