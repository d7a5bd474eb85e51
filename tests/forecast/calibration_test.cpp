// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/calibration.h"

#include "core/forecast/ensemble.h"
#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace littoral::forecast {
namespace {

Calibration fit(const TankCase& tank, std::uint64_t seed, std::size_t particles = 512)
{
    const Prior prior(tank);
    Likelihood likelihood(tank, prior);
    Random random(seed, 1);
    auto calibration = calibrate(prior, likelihood, particles, random, {});
    EXPECT_TRUE(calibration.has_value());
    return std::move(*calibration);
}

struct Moments
{
    std::vector<double> mean;
    std::vector<double> sd;
};

Moments momentsOf(const Rows& z, const std::vector<double>& weights)
{
    const double total = std::accumulate(weights.begin(), weights.end(), 0.0);
    Moments m{std::vector<double>(z.width(), 0.0), std::vector<double>(z.width(), 0.0)};
    for (std::size_t i = 0; i < z.count(); ++i) {
        for (std::size_t k = 0; k < z.width(); ++k) {
            m.mean[k] += weights[i] / total * z.row(i)[k];
        }
    }
    for (std::size_t i = 0; i < z.count(); ++i) {
        for (std::size_t k = 0; k < z.width(); ++k) {
            const double d = z.row(i)[k] - m.mean[k];
            m.sd[k] += weights[i] / total * d * d;
        }
    }
    for (double& sd : m.sd) {
        sd = std::sqrt(sd);
    }
    return m;
}

EnsembleOutcome outcomeOf(const TankCase& tank, const Rows& z)
{
    Request request;
    request.tank = tank;
    const Prior prior(tank);
    Random random(5);
    auto outcome = runEnsemble(request, prior, z, timetableOf(request), random, {});
    EXPECT_TRUE(outcome.has_value());
    return std::move(*outcome);
}

/// ln of what the ammonia oxidisers could do on the decision day, one per draw.
std::vector<double> logCapacityOf(const EnsembleOutcome& outcome)
{
    std::vector<double> logs;
    for (const double capacity : outcome.capacity[0].front()) {
        logs.push_back(std::log(std::max(capacity, 1e-300)));
    }
    return logs;
}

double mean(const std::vector<double>& values)
{
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

double shareBy(const std::vector<double>& days, double day)
{
    return static_cast<double>(std::count_if(days.begin(), days.end(), [&](double d) { return d <= day; })) /
           static_cast<double>(days.size());
}

TEST(Calibration, AgreesWithImportanceSampling)
{
    // Plain importance sampling from the prior is exact up to noise and shares nothing with tempering and moves.
    const TankCase tank = cases::fiveReadings();
    const Prior prior(tank);
    Likelihood likelihood(tank, prior);
    Random random(77);
    const Rows draws = priorDraws(prior, 50000, random);
    std::vector<double> weights;
    likelihood.evaluate(draws, weights);
    const double top = *std::max_element(weights.begin(), weights.end());
    double sum = 0.0;
    double squares = 0.0;
    for (double& w : weights) {
        w = std::exp(w - top);
        sum += w;
        squares += w * w;
    }
    const double ess = sum * sum / squares;
    ASSERT_GT(ess, 400.0);
    const Moments oracle = momentsOf(draws, weights);
    const auto picks = systematicPicks(weights, 600, 0.5);
    Rows picked(600, draws.width());
    for (std::size_t i = 0; i < picks.size(); ++i) {
        std::copy(draws.row(picks[i]).begin(), draws.row(picks[i]).end(), picked.row(i).begin());
    }
    const EnsembleOutcome oracleOutcome = outcomeOf(tank, picked);

    constexpr int kSeeds = 4;
    std::vector<double> means(draws.width(), 0.0);
    double logCapacity = 0.0;
    std::array<double, 3> odds{};
    const std::array<double, 3> days{17.0, 24.0, 40.0};
    for (int seed = 0; seed < kSeeds; ++seed) {
        const Calibration calibration = fit(tank, static_cast<std::uint64_t>(seed) + 1);
        const Moments moments =
            momentsOf(calibration.particles, std::vector<double>(calibration.particles.count(), 1.0));
        for (std::size_t k = 0; k < means.size(); ++k) {
            means[k] += moments.mean[k] / kSeeds;
        }
        const EnsembleOutcome outcome = outcomeOf(tank, calibration.particles);
        logCapacity += mean(logCapacityOf(outcome)) / kSeeds;
        for (std::size_t i = 0; i < days.size(); ++i) {
            odds[i] += shareBy(outcome.complete, days[i]) / kSeeds;
        }
    }
    // Moved particles are worth about a quarter of their number: four seeds about 500, the oracle about 400 or more. A
    // mean is then good to sd * sqrt(2/450) = 0.067 sd; 31 of them are compared, so four of those are allowed.
    for (std::size_t k = 0; k < means.size(); ++k) {
        EXPECT_NEAR(means[k], oracle.mean[k], 4.0 * 0.067 * oracle.sd[k]) << "unknown " << k;
    }
    double spread = 0.0;
    const std::vector<double> oracleLogs = logCapacityOf(oracleOutcome);
    const double centre = mean(oracleLogs);
    for (const double value : oracleLogs) {
        spread += (value - centre) * (value - centre);
    }
    spread = std::sqrt(spread / static_cast<double>(oracleLogs.size()));
    EXPECT_NEAR(logCapacity, centre, 3.5 * 0.067 * spread);
    // Odds: sqrt(p (1 - p) 2 / 450) is at most 0.033.
    for (std::size_t i = 0; i < days.size(); ++i) {
        EXPECT_NEAR(odds[i], shareBy(oracleOutcome.complete, days[i]), 0.11) << "by day " << days[i];
    }
}

TEST(Calibration, IsHealthyWithManyReadings)
{
    const Calibration calibration = fit(cases::manyReadings(15, 21.0), 3);
    EXPECT_TRUE(calibration.converged);
    EXPECT_GE(calibration.stages, 3);
    EXPECT_LE(calibration.stages, 12);
    EXPECT_GT(calibration.finalAcceptance, 0.15);
    EXPECT_GT(calibration.finalEss, 200.0);
    EXPECT_LT(calibration.failedShare, 0.01);
    for (std::size_t i = 0; i < calibration.particles.count(); ++i) {
        for (const double z : calibration.particles.row(i)) {
            EXPECT_LE(std::fabs(z), kLargestZ);
        }
    }
}

TEST(Calibration, WithoutReadingsIsThePrior)
{
    const TankCase tank = cases::richSoil(5.0);
    const Calibration calibration = fit(tank, 9, 4000);
    EXPECT_EQ(calibration.stages, 0);
    EXPECT_EQ(calibration.runs, 0);
    const Moments m = momentsOf(calibration.particles, std::vector<double>(4000, 1.0));
    for (std::size_t k = 0; k < m.mean.size(); ++k) {
        EXPECT_NEAR(m.mean[k], 0.0, 4.5 / std::sqrt(4000.0));
        EXPECT_NEAR(m.sd[k], 1.0, 4.5 / std::sqrt(8000.0));
    }
}

TEST(Calibration, StopsWhenAsked)
{
    const TankCase tank = cases::fiveReadings();
    const Prior prior(tank);
    Likelihood likelihood(tank, prior);
    Random random(1);
    std::stop_source source;
    source.request_stop();
    EXPECT_FALSE(calibrate(prior, likelihood, 64, random, source.get_token()).has_value());
}

TEST(Resampling, PicksInProportion)
{
    const auto picks = systematicPicks({1.0, 0.0, 2.0, 1.0}, 8, 0.5);
    EXPECT_EQ(picks, (std::vector<std::size_t>{0, 0, 2, 2, 2, 2, 3, 3}));
    EXPECT_EQ(systematicPicks({0.0, 5.0}, 3, 0.999).size(), 3U);
}

TEST(FittedNormal, ReproducesMeanAndCovariance)
{
    Random random(4);
    Rows rows(4000, 3);
    for (std::size_t i = 0; i < rows.count(); ++i) {
        const double a = random.normal();
        const double b = random.normal();
        rows.row(i)[0] = 1.0 + a;
        rows.row(i)[1] = -2.0 + 0.5 * a + 0.2 * b;
        rows.row(i)[2] = random.normal() * 2.0;
    }
    const FittedNormal fitted(rows, 0.0);
    EXPECT_NEAR(fitted.mean()[0], 1.0, 0.07);
    EXPECT_NEAR(fitted.mean()[1], -2.0, 0.04);
    // L e_1 is the first column of the factor: (sd0, cov01 / sd0, ...) = (1, 0.5, 0).
    std::vector<double> column(3);
    fitted.correlate(std::vector<double>{1, 0, 0}, column);
    EXPECT_NEAR(column[0], 1.0, 0.05);
    EXPECT_NEAR(column[1], 0.5, 0.03);
    // Density: at mean + L e the exponent is -|e|^2 / 2.
    const std::vector<double> e{0.3, -1.0, 2.0};
    std::vector<double> at(3);
    fitted.correlate(e, at);
    for (std::size_t k = 0; k < 3; ++k) {
        at[k] += fitted.mean()[k];
    }
    EXPECT_NEAR(fitted.logDensity(at), -0.5 * (0.09 + 1.0 + 4.0), 1e-9);
}

} // namespace
} // namespace littoral::forecast
