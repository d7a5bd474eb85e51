// SPDX-License-Identifier: GPL-3.0-or-later
// A small simulation-based calibration; `littoral_skill --sbc` does the large one and prints the histograms.
#include "tests/forecast/rank_check.h"

#include <gtest/gtest.h>

namespace littoral::forecast::ranks {
namespace {

Settings quick()
{
    Settings settings;
    settings.particles = 128;
    settings.decisionDay = 6.0;
    settings.readEvery_d = 2.5; // three days, nine readings
    return settings;
}

std::vector<Ranks> ranksOf(std::size_t tanks, const Settings& settings)
{
    std::vector<Ranks> all;
    for (std::uint64_t i = 0; i < tanks; ++i) {
        const auto ranks = rankOf(i, settings);
        EXPECT_TRUE(ranks.has_value()) << "tank " << i;
        if (ranks) {
            all.push_back(*ranks);
        }
    }
    return all;
}

TEST(Ranks, ChiSquareTailAgreesWithPrintedTables)
{
    // Upper points of chi-square with nine degrees of freedom, as in any statistics handbook (from memory).
    EXPECT_NEAR(chiSquareTail9(16.919), 0.05, 5e-5);
    EXPECT_NEAR(chiSquareTail9(21.666), 0.01, 1e-5);
    EXPECT_NEAR(chiSquareTail9(27.877), 0.001, 1e-6);
    EXPECT_NEAR(chiSquareTail9(4.168), 0.90, 1e-4);
}

TEST(Ranks, OfTheTruthAmongPosteriorDrawsAreEven)
{
    // Nine quantities are looked at, so one of them falls below 1e-4 by luck alone for fewer than 1 of 1000 seeds. Few
    // particles are worth fewer independent draws still, which lifts the outermost ranks a little; with 128 the least p
    // of 27 looks (other seeds) was 0.003, with 96 it was 0.0001. The large run uses 512.
    const auto all = ranksOf(100, quick());
    for (std::size_t q = 0; q < kQuantityCount; ++q) {
        const Evenness even = evennessOf(all, q);
        EXPECT_GT(even.p, 1e-4) << kQuantityNames[q] << ", chi-square " << even.chiSquare;
    }
}

TEST(Ranks, GiveAwayKitsThatReadFarMoreThanThePriorAllows)
{
    // The check must be able to fail: kits that show 2.5 times what is there, unknown to the likelihood.
    Settings settings = quick();
    settings.kitError = 2.5;
    EXPECT_LT(evennessOf(ranksOf(24, settings), kNitrateLater).p, 1e-6);
}

} // namespace
} // namespace littoral::forecast::ranks
