// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/observation.h"

#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numeric>

namespace littoral::forecast {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

CaseReading at(double low, double high, bool below = false)
{
    return {1.0, 0, low, high, below, 0};
}

double probability(const Kit& kit, const CaseReading& reading, double m)
{
    return std::exp(ReadingModel(kit, reading).logLikelihood(m));
}

TEST(Observation, StepMassesMatchTheWorkedExample)
{
    // Ammonia card, true value 1.5 ppm, scatter 0.3, boundaries at geometric means of neighbouring steps (half the
    // first step below): steps 1 and 2 get 0.416094 and 0.560565, computed by hand with a table of the normal integral.
    const std::vector<double> steps{0.25, 0.5, 1, 2, 4, 8};
    std::vector<double> boundaries{std::log(0.125)};
    for (std::size_t i = 0; i + 1 < steps.size(); ++i) {
        boundaries.push_back(0.5 * std::log(steps[i] * steps[i + 1]));
    }
    const auto masses = stepMasses(std::log(1.5), 0.3, boundaries);
    ASSERT_EQ(masses.size(), 7U);
    EXPECT_NEAR(masses[3], 0.416094, 1e-6);
    EXPECT_NEAR(masses[4], 0.560565, 1e-6);
    EXPECT_NEAR(std::accumulate(masses.begin(), masses.end(), 0.0), 1.0, 1e-12);
}

TEST(Observation, DistributionsMatchTables)
{
    // Standard normal table: Phi(1.96) = 0.97500; Student's t, 4 degrees of freedom: 2.776 is the 97.5 % point, 4.604
    // the 99.5 % point.
    EXPECT_NEAR(normalCdf(1.96), 0.97500, 1e-5);
    EXPECT_NEAR(studentCdf4(2.776445), 0.975, 1e-6);
    EXPECT_NEAR(studentCdf4(-4.604095), 0.005, 1e-6);
    // The density is the slope of the distribution.
    for (const double t : {-3.0, -0.4, 0.0, 1.7}) {
        EXPECT_NEAR((studentCdf4(t + 1e-5) - studentCdf4(t - 1e-5)) / 2e-5, studentPdf4(t), 1e-8);
    }
}

TEST(Observation, ProbabilitiesOfAllStepsSumToOneAndNoneIsZero)
{
    for (const Kit& kit : {cases::ammoniaCard(), cases::nitriteCard(), cases::nitrateCard()}) {
        for (const double m : {0.0, 0.01, 0.3, 1.5, 7.0, 40.0, 500.0}) {
            double sum = 0.0;
            for (const double step : kit.steps) {
                const double p = probability(kit, at(step, step), m);
                EXPECT_GE(p, kOutlierShare / static_cast<double>(kit.steps.size()) * 0.999);
                sum += p;
            }
            EXPECT_NEAR(sum, 1.0, 1e-12) << m;
        }
    }
}

TEST(Observation, StepMixesNeighboursAndOutliers)
{
    const Kit kit = cases::ammoniaCard();
    const double c0 = 0.125;
    std::vector<double> boundaries;
    for (std::size_t i = 0; i + 1 < kit.steps.size(); ++i) {
        boundaries.push_back(0.5 * (std::log(kit.steps[i] + c0) + std::log(kit.steps[i + 1] + c0)));
    }
    const double s = std::sqrt(0.15 * 0.15 + 0.18 * 0.18);
    const double m = 0.8;
    const auto p = stepMasses(std::log(m + c0), s, boundaries);
    const auto mixed = [&](double own, double down, double up) {
        return 0.97 * (0.90 * own + 0.05 * (down + up)) + 0.03 / 7.0;
    };
    EXPECT_NEAR(probability(kit, at(1, 1), m), mixed(p[3], p[2], p[4]), 1e-12);
    EXPECT_NEAR(probability(kit, at(0, 0), m), mixed(p[0], p[0], p[1]), 1e-12);
    EXPECT_NEAR(probability(kit, at(8, 8), m), mixed(p[6], p[5], p[6]), 1e-12);
}

TEST(Observation, EndsOfTheCardAreCensored)
{
    const Kit kit = cases::nitriteCard();
    // Far above the top step the top step is certain but for misreads and outliers.
    EXPECT_NEAR(probability(kit, at(5, 5), 60.0), 0.97 * 0.95 + 0.03 / 6.0, 1e-9);
    EXPECT_EQ(probability(kit, at(5, 5), 60.0), probability(kit, at(5, 5), 600.0));
    EXPECT_NEAR(probability(kit, at(0, 0), 0.0), 0.97 * 0.95 + 0.03 / 6.0, 1e-2);
    // ">5" says no more than the top step; "<0.25" no more than the zero step.
    EXPECT_EQ(probability(kit, at(5, kInfinity), 3.0), probability(kit, at(5, 5), 3.0));
    EXPECT_EQ(probability(kit, at(0, 0.25, true), 0.1), probability(kit, at(0, 0), 0.1));
    // ">1" is 2 or 5; "<1" is 0, 0.25 or 0.5.
    EXPECT_NEAR(probability(kit, at(1, kInfinity), 1.4), probability(kit, at(2, 5), 1.4), 1e-12);
    EXPECT_NEAR(probability(kit, at(0, 1, true), 0.4), probability(kit, at(0, 0.5), 0.4), 1e-12);
}

TEST(Observation, ARangeIsTheUnionOfItsSteps)
{
    const Kit kit = cases::ammoniaCard();
    for (const double m : {0.2, 1.4, 3.0}) {
        EXPECT_NEAR(probability(kit, at(1, 2), m), probability(kit, at(1, 1), m) + probability(kit, at(2, 2), m),
                    1e-12);
        EXPECT_NEAR(probability(kit, at(0, 0.5), m),
                    probability(kit, at(0, 0), m) + probability(kit, at(0.25, 0.25), m) +
                        probability(kit, at(0.5, 0.5), m),
                    1e-12);
        EXPECT_NEAR(probability(kit, at(0, 8), m), 1.0, 1e-12);
    }
}

TEST(Observation, AValueBetweenStepsCountsAsTheNearest)
{
    const Kit kit = cases::ammoniaCard();
    EXPECT_EQ(probability(kit, at(1.1, 1.1), 1.5), probability(kit, at(1, 1), 1.5));
    EXPECT_EQ(probability(kit, at(30, 30), 1.5), probability(kit, at(8, 8), 1.5));
}

TEST(Observation, StripsReadWider)
{
    Kit strip = cases::nitrateCard();
    strip.scatterFactor = 1.6;
    // Two steps off is less unlikely on a strip; on the mark it is less sure.
    EXPECT_GT(probability(strip, at(40, 40), 10.0), probability(cases::nitrateCard(), at(40, 40), 10.0));
    EXPECT_LT(probability(strip, at(10, 10), 10.0), probability(cases::nitrateCard(), at(10, 10), 10.0));
}

TEST(Observation, DigitalValuesFollowStudent)
{
    Kit meter = cases::ammoniaCard();
    meter.steps.clear();
    const double m = 1.0;
    const double scale = std::sqrt(0.09 * 0.09 + 0.18 * 0.18 + 0.04 * 0.04);
    EXPECT_NEAR(probability(meter, at(1.2, 1.2), m), 0.97 * studentPdf4(0.2 / scale) / scale + 0.03 / 8.0, 1e-9);
    // Integrates to about one over the kit's range (t tails beyond it are the rest).
    double sum = 0.0;
    for (double value = 0.005; value < 8.0; value += 0.01) {
        sum += 0.01 * probability(meter, at(value, value), m);
    }
    EXPECT_NEAR(sum, 1.0, 0.01);
    EXPECT_NEAR(probability(meter, at(0, 1.0, true), m), 0.97 * 0.5 + 0.03 / 8.0, 1e-9);
    EXPECT_NEAR(probability(meter, at(1.0, kInfinity), m), 0.97 * 0.5 + 0.03 * 7.0 / 8.0, 1e-9);
    EXPECT_GT(ReadingModel(meter, at(7.0, 7.0)).logLikelihood(0.0), std::log(0.03 / 8.0) - 1e-9);
}

TEST(Observation, TailsMeasureSurprise)
{
    const ReadingModel high(cases::ammoniaCard(), at(4, 4));
    EXPECT_LT(high.tails(0.5).atLeast, 1e-4);
    EXPECT_GT(high.tails(0.5).atMost, 0.999);
    EXPECT_GT(high.tails(4.0).atLeast, 0.9);
}

} // namespace
} // namespace littoral::forecast
