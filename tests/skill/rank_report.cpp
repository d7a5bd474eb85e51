// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/rank_report.h"

#include "tests/forecast/rank_check.h"

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <string>
#include <thread>

namespace littoral::skill {

namespace {

namespace ranks = forecast::ranks;

std::vector<std::optional<ranks::Ranks>> rankAll(std::size_t tanks, unsigned threads)
{
    std::vector<std::optional<ranks::Ranks>> all(tanks);
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < all.size(); i = next++) {
            all[i] = ranks::rankOf(i, {});
        }
    };
    std::vector<std::jthread> workers;
    for (unsigned i = 0; i < std::max(threads, 1U); ++i) {
        workers.emplace_back(work);
    }
    workers.clear();
    return all;
}

void printOne(const std::vector<ranks::Ranks>& all, std::size_t quantity)
{
    const ranks::Evenness even = ranks::evennessOf(all, quantity);
    const double expected = static_cast<double>(all.size()) / static_cast<double>(ranks::kBins);
    std::printf("%s: chi-square %.1f of 9, p %.3f\n", ranks::kQuantityNames[quantity], even.chiSquare, even.p);
    for (std::size_t bin = 0; bin < even.bins.size(); ++bin) {
        const auto length = static_cast<std::size_t>(20.0 * even.bins[bin] / expected + 0.5);
        std::printf("  %2zu-%2zu %4d %s\n", 10 * bin, 10 * bin + 9, even.bins[bin], std::string(length, '#').c_str());
    }
}

} // namespace

void printRanks(int tanks, unsigned threads)
{
    const auto found = rankAll(static_cast<std::size_t>(tanks), threads);
    std::vector<ranks::Ranks> all;
    for (const auto& one : found) {
        if (one) {
            all.push_back(*one);
        }
    }
    std::printf(
        "Simulation-based calibration: %zu tanks of four kinds with truths from the prior (%zu more could not be "
        "run or fitted),\n21 card readings to day 14; rank of the truth among %zu posterior draws. Even bars "
        "are right (20 signs each); a heap\nin the middle means bands too wide, heaps at both ends too narrow, "
        "a slope a bias.\n\n",
        all.size(), found.size() - all.size(), ranks::kRankDraws);
    double least = 1.0;
    for (std::size_t q = 0; q < ranks::kQuantityCount; ++q) {
        printOne(all, q);
        least = std::min(least, ranks::evennessOf(all, q).p);
    }
    std::printf("\nSmallest p %.4f; of %zu quantities one below %.4f is expected in 1 of 20 runs of a right sampler.\n",
                least, static_cast<std::size_t>(ranks::kQuantityCount),
                0.05 / static_cast<double>(ranks::kQuantityCount));
}

} // namespace littoral::skill
