// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/learning.h"

#include "core/base/random.h"
#include "core/forecast/forecaster.h"
#include "core/forecast/priors.h"
#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <cmath>

namespace littoral::forecast {
namespace {

TEST(Learning, NothingFromLessonsThatSayNothing)
{
    EXPECT_TRUE(learn({}).empty());
    const std::vector<Lesson> lessons{{4, 0.3, 1.0}, {4, 0.5, 0.99}};
    EXPECT_TRUE(learn(lessons).empty());
}

TEST(Learning, OneLessonByHand)
{
    // Posterior 1.0 +- 0.5 under the plain prior: measured 4/3 with variance 1/3. The common mean: prior variance 1/2,
    // measured with variance 1/3 + 1/2 = 5/6, so precision 2 + 6/5 and mean (6/5)(4/3) / (16/5) = 1/2; the next layout
    // has variance 5/16 + 1/2 = 13/16. (Normal hierarchy worked by hand.)
    const std::vector<Lesson> lessons{{4, 1.0, 0.5}};
    const auto learned = learn(lessons);
    ASSERT_EQ(learned.size(), 1U);
    EXPECT_EQ(learned[0].unknown, 4U);
    EXPECT_NEAR(learned[0].mean, 0.5, 1e-12);
    EXPECT_NEAR(learned[0].sd, std::sqrt(13.0 / 16.0), 1e-12);
}

TEST(Learning, MoreLessonsNarrowButNeverBelowTheOwnShare)
{
    std::vector<Lesson> lessons;
    double previous = 1.0;
    for (int i = 0; i < 30; ++i) {
        lessons.push_back({2, 0.8, 0.4});
        const auto learned = learn(lessons);
        EXPECT_LT(learned[0].sd, previous);
        previous = learned[0].sd;
    }
    EXPECT_GT(previous, std::sqrt(kOwnShare));
    EXPECT_LT(previous, std::sqrt(kOwnShare) + 0.02);
}

TEST(Learning, IsCalibratedWhenItsAssumptionsHold)
{
    // Draw a common mean and four layouts about it, measure three, ask where the fourth lies: z-scores must have
    // variance one. 4000 trials: sd of the variance is sqrt(2/4000) = 0.022, four of those allowed.
    Random random(8);
    double squares = 0.0;
    constexpr int kTrials = 4000;
    for (int trial = 0; trial < kTrials; ++trial) {
        const double common = std::sqrt(1.0 - kOwnShare) * random.normal();
        const auto layout = [&] { return common + std::sqrt(kOwnShare) * random.normal(); };
        std::vector<Lesson> lessons;
        for (int i = 0; i < 3; ++i) {
            const double noise = 0.5;
            const double measured = layout() + noise * random.normal();
            const double variance = 1.0 / (1.0 + 1.0 / (noise * noise));
            lessons.push_back({0, measured * variance / (noise * noise), std::sqrt(variance)});
        }
        const auto learned = learn(lessons);
        const double score = (layout() - learned[0].mean) / learned[0].sd;
        squares += score * score / kTrials;
    }
    EXPECT_NEAR(squares, 1.0, 0.09);
}

TEST(Learning, MovesTheForecast)
{
    Request request;
    request.tank = cases::richSoil(5.0);
    request.seed = 4;
    const auto plain = forecast(request);
    request.tank.learned = {{kUnknownFastSoil, 1.5, 0.6}};
    const auto richer = forecast(request);
    ASSERT_TRUE(plain && richer);
    const Band& before = plain->substances[0].water[0];
    const Band& after = richer->substances[0].water[0];
    EXPECT_GT(after[3], 1.5 * before[3]) << "a soil known to release more shows more ammonia";
    EXPECT_LT(std::log(after[5] / after[1]), std::log(before[5] / before[1])) << "and less uncertainly";
    request.tank.learned = {{999, 0.0, 1.0}};
    EXPECT_FALSE(forecast(request).has_value());
}

} // namespace
} // namespace littoral::forecast
