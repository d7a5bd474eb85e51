// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/random.h"
#include "core/forecast/linear.h"
#include "core/forecast/observation.h"
#include "core/forecast/priors.h"
#include "core/sim/run.h"

#include <optional>
#include <stop_token>
#include <vector>

namespace littoral::forecast {

/// Log likelihood of a tank's readings, kLanes members at a time. Not for sharing between threads: it owns the buffers
/// of its runs.
class Likelihood final
{
public:
    Likelihood(const TankCase& tank, const Prior& prior);

    [[nodiscard]] bool empty() const { return m_readings.empty(); }

    /// One value per row of z; minus infinity for a run that failed.
    void evaluate(const Rows& z, std::vector<double>& logLikelihood);

    [[nodiscard]] int runs() const { return m_runs; }
    [[nodiscard]] int failures() const { return m_failures; }

private:
    struct Placed
    {
        ReadingModel model;
        std::size_t kit = 0;
        std::size_t stop = 0;
    };

    const Prior& m_prior;
    sim::Scenario m_scenario;
    sim::StepControl<sim::kStateCount> m_control;
    std::vector<Placed> m_readings;
    sim::PackTrace m_trace;
    int m_runs = 0;
    int m_failures = 0;
};

struct Calibration
{
    Rows particles; ///< equally weighted
    int stages = 0; ///< tempering steps; 0 without readings
    double finalAcceptance = 1.0;
    double finalEss = 0.0; ///< of the last stage's weights
    double failedShare = 0.0;
    double logEvidence = 0.0; ///< ln of the readings' probability under the prior (product of the stages' mean weights)
    int runs = 0;
    bool converged = true; ///< reached the full likelihood
};

/// n draws of z from the prior, none further out than kLargestZ.
[[nodiscard]] Rows priorDraws(const Prior& prior, std::size_t n, Random& random);

/// Adaptive tempered sequential Monte Carlo: the likelihood is let in by steps that keep half the effective sample;
/// after each the particles are resampled and moved by preconditioned Crank-Nicolson proposals around a normal fitted
/// to them. Nothing when stopped.
[[nodiscard]] std::optional<Calibration> calibrate(const Prior& prior, Likelihood& likelihood, std::size_t particles,
                                                   Random& random, const std::stop_token& stop);

/// Indices of n equally spaced picks from weights (systematic resampling). Weights need not be normalised.
[[nodiscard]] std::vector<std::size_t> systematicPicks(const std::vector<double>& weights, std::size_t n,
                                                       double offset);

} // namespace littoral::forecast
