// SPDX-License-Identifier: GPL-3.0-or-later
// littoral_skill [tanks per start method] [seed]
// Scores forecasts made on days 7, 14 and 21 against simulated tanks whose generator shares no equation with the
// forecaster (see independent_tank.h). Coverage allows 0.01 on the log scale and half a day on dates, because many
// truths sit at zero. The CRPS is on ln(1 + c / c0), c0 = 0.25, 0.25 and 5 ppm, approximated by the mean pinball loss
// over the seven reported quantiles weighted by the share of probability each stands for. Persistence is the last
// reading as a point; the prior is the same forecast without readings.
#include "core/forecast/forecaster.h"
#include "tests/skill/independent_tank.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <vector>

namespace {

using namespace littoral;
using namespace littoral::forecast;
using littoral::skill::SimulatedTank;
using littoral::skill::StartMethod;

constexpr std::array<double, 3> kUnits{1.21588, 3.28454, 4.42680};
constexpr std::array<double, 3> kOffset_ppm{0.25, 0.25, 5.0};
constexpr std::array<double, 3> kLeads{3.0, 7.0, 14.0};

struct Score
{
    int count = 0;
    std::array<int, 3> inside{}; // 50, 80, 95 %
    double crps = 0.0, persistence = 0.0, prior = 0.0;

    void print(const char* name) const
    {
        const double n = std::max(count, 1);
        std::printf("  %-14s n %5d  cov %.2f/%.2f/%.2f  CRPS %.3f  vs persistence %.2f  vs prior %.2f\n", name, count,
                    inside[0] / n, inside[1] / n, inside[2] / n, crps / n, crps / std::max(persistence, 1e-9),
                    crps / std::max(prior, 1e-9));
    }
};

struct DateScore
{
    int count = 0, fitted = 0;
    std::array<int, 3> inside{};
    std::vector<double> errors, widths;

    void print(const char* name)
    {
        std::sort(errors.begin(), errors.end());
        std::sort(widths.begin(), widths.end());
        const double n = std::max(count, 1);
        std::printf("  %-14s n %5d  cov %.2f/%.2f/%.2f  median error %.1f d  80 %% width %.1f d  fitted %.2f\n", name,
                    count, inside[0] / n, inside[1] / n, inside[2] / n,
                    errors.empty() ? 0.0 : errors[errors.size() / 2], widths.empty() ? 0.0 : widths[widths.size() / 2],
                    fitted / n);
    }
};

double scaled(double water, std::size_t s)
{
    return std::log1p(water * kUnits[s] / kOffset_ppm[s]);
}

double crpsOf(const Band& band, std::size_t s, double truth)
{
    // Share of probability each quantile stands for: half-way to its neighbours.
    double sum = 0.0;
    for (std::size_t i = 0; i < band.size(); ++i) {
        const double low = i == 0 ? 0.0 : 0.5 * (kQuantiles[i - 1] + kQuantiles[i]);
        const double high = i + 1 == band.size() ? 1.0 : 0.5 * (kQuantiles[i] + kQuantiles[i + 1]);
        const double error = scaled(truth, s) - scaled(band[i], s);
        sum += (high - low) * 2.0 * (error >= 0.0 ? kQuantiles[i] * error : (kQuantiles[i] - 1.0) * error);
    }
    return sum;
}

bool inside(double low, double high, double truth, double slack)
{
    return truth >= low - slack && truth <= high + slack;
}

double lastReading(const TankCase& tank, std::size_t s)
{
    double value = 0.0;
    for (const CaseReading& reading : tank.readings) {
        if (static_cast<std::size_t>(reading.kit) == s) {
            value = reading.low / kUnits[s];
        }
    }
    return value;
}

struct Board
{
    Score all;
    std::array<Score, 3> substances, leads;
    std::array<Score, skill::kStartMethods> methods;
    std::array<DateScore, 3> dates;
    std::array<DateScore, skill::kStartMethods> methodDates;
    DateScore allDates;
    std::vector<double> seconds;
};

void scoreConcentrations(const SimulatedTank& tank, const Request& request, const Forecast& made, const Forecast& prior,
                         std::size_t method, Board& board)
{
    const std::array<const std::vector<double>*, 3> truths{&tank.ammonia, &tank.nitrite, &tank.nitrate};
    for (std::size_t lead = 0; lead < kLeads.size(); ++lead) {
        const double day = request.tank.decisionDay + kLeads[lead];
        const auto row = static_cast<std::size_t>(kLeads[lead]);
        for (std::size_t s = 0; s < truths.size(); ++s) {
            const double truth = (*truths[s])[static_cast<std::size_t>(day * skill::kPerDay)];
            const Band& band = made.substances[s].water[row];
            const double x = scaled(truth, s);
            const auto at = [&](std::size_t q) { return scaled(band[q], s); };
            for (Score* score : {&board.all, &board.substances[s], &board.leads[lead], &board.methods[method]}) {
                ++score->count;
                score->inside[0] += inside(at(2), at(4), x, 0.01) ? 1 : 0;
                score->inside[1] += inside(at(1), at(5), x, 0.01) ? 1 : 0;
                score->inside[2] += inside(at(0), at(6), x, 0.01) ? 1 : 0;
                score->crps += crpsOf(band, s, truth);
                score->persistence += std::fabs(x - scaled(lastReading(request.tank, s), s));
                score->prior += crpsOf(prior.substances[s].water[row], s, truth);
            }
        }
    }
}

void scoreDate(const SimulatedTank& tank, const Forecast& made, DateScore& score)
{
    const Band& band = made.complete.day;
    ++score.count;
    score.fitted += made.diagnostics.fitted ? 1 : 0;
    score.inside[0] += inside(band[2], band[4], tank.complete, 0.5) ? 1 : 0;
    score.inside[1] += inside(band[1], band[5], tank.complete, 0.5) ? 1 : 0;
    score.inside[2] += inside(band[0], band[6], tank.complete, 0.5) ? 1 : 0;
    const double cap = skill::kLastDay + 10.0; // 'not by then' as a late day, for these two columns alone
    score.errors.push_back(std::fabs(std::min(band[3], cap) - std::min(tank.complete, cap)));
    score.widths.push_back(std::min(band[5], cap) - std::min(band[1], cap));
}

} // namespace

int main(int argc, char** argv)
{
    const int tanks = argc > 1 ? std::max(1, std::atoi(argv[1])) : 30;
    const auto seed = static_cast<std::uint64_t>(argc > 2 ? std::atoll(argv[2]) : 1);
    constexpr std::array<double, 3> decisionDays{7.0, 14.0, 21.0};
    constexpr std::array<const char*, skill::kStartMethods> names{"new media", "mature media", "starter",
                                                                  "dosed, inert"};
    Board board;
    std::array<std::vector<double>, skill::kStartMethods> completions;
    for (std::size_t method = 0; method < names.size(); ++method) {
        for (int i = 0; i < tanks; ++i) {
            Random random(mixSeed(seed, method), static_cast<std::uint64_t>(i));
            const SimulatedTank tank = simulate(static_cast<StartMethod>(method), random);
            completions[method].push_back(tank.complete);
            for (std::size_t d = 0; d < decisionDays.size(); ++d) {
                Request request;
                request.tank = tank.log;
                request.tank.decisionDay = decisionDays[d];
                request.seed = mixSeed(static_cast<std::uint64_t>(i), d);
                std::erase_if(request.tank.readings, [&](const auto& r) { return r.day > decisionDays[d]; });
                Request unread = request;
                unread.tank.readings.clear();
                const auto start = std::chrono::steady_clock::now();
                const auto made = forecast::forecast(request);
                board.seconds.push_back(
                    std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
                const auto prior = forecast::forecast(unread);
                if (!made || !prior) {
                    std::printf("failed: %s\n", (made ? prior : made).error().sentence().c_str());
                    return 1;
                }
                scoreConcentrations(tank, request, *made, *prior, method, board);
                for (DateScore* score : {&board.allDates, &board.dates[d], &board.methodDates[method]}) {
                    scoreDate(tank, *made, *score);
                }
            }
        }
    }
    std::puts("Simulated tanks: true completion day 10/50/90 %");
    for (std::size_t m = 0; m < names.size(); ++m) {
        auto& days = completions[m];
        std::sort(days.begin(), days.end());
        const auto q = [&](double p) {
            return days[static_cast<std::size_t>(p * static_cast<double>(days.size() - 1))];
        };
        std::printf("  %-14s %.0f/%.0f/%.0f\n", names[m], q(0.1), q(0.5), q(0.9));
    }
    std::puts("Concentrations (coverage 50/80/95)");
    board.all.print("all");
    board.substances[0].print("ammonia");
    board.substances[1].print("nitrite");
    board.substances[2].print("nitrate");
    board.leads[0].print("3 d");
    board.leads[1].print("7 d");
    board.leads[2].print("14 d");
    for (std::size_t m = 0; m < names.size(); ++m) {
        board.methods[m].print(names[m]);
    }
    std::puts("Completion date");
    board.allDates.print("all");
    board.dates[0].print("from day 7");
    board.dates[1].print("from day 14");
    board.dates[2].print("from day 21");
    for (std::size_t m = 0; m < names.size(); ++m) {
        board.methodDates[m].print(names[m]);
    }
    std::sort(board.seconds.begin(), board.seconds.end());
    std::printf("Seconds per forecast: median %.3f, worst %.3f\n", board.seconds[board.seconds.size() / 2],
                board.seconds.back());
    return 0;
}
