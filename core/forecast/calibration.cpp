// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/calibration.h"

#include "core/forecast/case_scenario.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace littoral::forecast {

namespace {

constexpr double kNever = -std::numeric_limits<double>::infinity();

/// Enough inside a calibration: errors of about 1 % of a kit step.
constexpr double kCalibrationTolerance = 4e-4;
/// A sound run to day 60 takes 100 to 600 steps.
constexpr int kCalibrationSteps = 6000;

constexpr double kEssShare = 0.5;
constexpr double kTowardsIdentity = 0.05;
constexpr int kMovesPerStage = 3;
constexpr int kMovesLast = 6;
constexpr int kMostStages = 40;
constexpr double kWantedAcceptance = 0.3;

double effectiveSample(const std::vector<double>& logLikelihood, double step, double top)
{
    double sum = 0.0;
    double squares = 0.0;
    for (const double value : logLikelihood) {
        const double w = std::exp(step * (value - top));
        sum += w;
        squares += w * w;
    }
    return squares > 0.0 ? sum * sum / squares : 0.0;
}

double squaredLength(std::span<const double> z)
{
    return std::inner_product(z.begin(), z.end(), z.begin(), 0.0);
}

bool inReach(std::span<const double> z)
{
    return std::all_of(z.begin(), z.end(), [](double value) { return std::fabs(value) <= kLargestZ; });
}

/// The particles, their likelihoods and the moves on them.
class Sampler final
{
public:
    Sampler(Rows particles, Likelihood& likelihood, Random& random)
        : m_z(std::move(particles))
        , m_proposal(m_z.count(), m_z.width())
        , m_likelihood(likelihood)
        , m_random(random)
        , m_outOfReach(m_z.count(), false)
    {
        m_likelihood.evaluate(m_z, m_log);
    }

    [[nodiscard]] bool anySound() const
    {
        return std::any_of(m_log.begin(), m_log.end(), [](double value) { return value > kNever; });
    }

    /// Lets in more of the likelihood: the largest step that keeps the effective sample.
    void temper()
    {
        const double top = *std::max_element(m_log.begin(), m_log.end());
        const auto sound = std::count_if(m_log.begin(), m_log.end(), [](double value) { return value > kNever; });
        const double wanted = kEssShare * static_cast<double>(sound);
        double step = 1.0 - m_beta;
        m_ess = effectiveSample(m_log, step, top);
        if (m_ess < wanted) {
            double low = 0.0;
            double high = step;
            for (int i = 0; i < 50; ++i) {
                step = 0.5 * (low + high);
                m_ess = effectiveSample(m_log, step, top);
                (m_ess < wanted ? high : low) = step;
            }
            m_beta += step;
        } else {
            m_beta = 1.0;
        }
        double sum = 0.0;
        for (const double value : m_log) {
            sum += std::exp(step * (value - top));
        }
        m_logEvidence += std::log(sum / static_cast<double>(m_log.size())) + step * top;
        resample(step, top);
    }

    /// One proposal per particle.
    void move()
    {
        const FittedNormal reference(m_z, kTowardsIdentity);
        const std::size_t width = m_z.width();
        std::vector<double> noise(width);
        std::vector<double> turned(width);
        const double keep = std::sqrt(1.0 - m_reach * m_reach);
        for (std::size_t i = 0; i < m_z.count(); ++i) {
            for (double& e : noise) {
                e = m_random.normal();
            }
            reference.correlate(noise, turned);
            const auto from = m_z.row(i);
            const auto to = m_proposal.row(i);
            for (std::size_t k = 0; k < width; ++k) {
                const double mean = reference.mean()[k];
                to[k] = mean + keep * (from[k] - mean) + m_reach * turned[k];
            }
            // Nothing out of reach is run: extreme members make the step control crawl.
            m_outOfReach[i] = !inReach(to);
            if (m_outOfReach[i]) {
                std::copy(from.begin(), from.end(), to.begin());
            }
        }
        m_likelihood.evaluate(m_proposal, m_proposalLog);
        std::size_t accepted = 0;
        for (std::size_t i = 0; i < m_z.count(); ++i) {
            accepted += acceptOne(i, reference) ? 1 : 0;
        }
        m_acceptance = static_cast<double>(accepted) / static_cast<double>(m_z.count());
        m_reach = std::clamp(m_reach * std::exp(m_acceptance - kWantedAcceptance), 0.05, 0.98);
    }

    [[nodiscard]] double beta() const { return m_beta; }
    [[nodiscard]] double ess() const { return m_ess; }
    [[nodiscard]] double acceptance() const { return m_acceptance; }
    [[nodiscard]] double logEvidence() const { return m_logEvidence; }
    [[nodiscard]] Rows take() { return std::move(m_z); }

private:
    void resample(double step, double top)
    {
        std::vector<double> weights(m_log.size());
        std::transform(m_log.begin(), m_log.end(), weights.begin(),
                       [&](double value) { return std::exp(step * (value - top)); });
        const auto picks = systematicPicks(weights, m_z.count(), m_random.uniform());
        Rows kept(m_z.count(), m_z.width());
        std::vector<double> keptLog(m_log.size());
        for (std::size_t i = 0; i < picks.size(); ++i) {
            const auto from = m_z.row(picks[i]);
            std::copy(from.begin(), from.end(), kept.row(i).begin());
            keptLog[i] = m_log[picks[i]];
        }
        m_z = std::move(kept);
        m_log = std::move(keptLog);
    }

    bool acceptOne(std::size_t i, const FittedNormal& reference)
    {
        const double u = m_random.uniform();
        const auto from = m_z.row(i);
        const auto to = m_proposal.row(i);
        if (m_proposalLog[i] == kNever || m_outOfReach[i]) {
            return false;
        }
        // The proposal is reversible for the fitted normal, so that density enters the ratio in place of a proposal's.
        const double gain = m_beta * (m_proposalLog[i] - m_log[i]) - 0.5 * (squaredLength(to) - squaredLength(from)) +
                            reference.logDensity(from) - reference.logDensity(to);
        if (!(std::log(u) < gain)) {
            return false;
        }
        std::copy(to.begin(), to.end(), from.begin());
        m_log[i] = m_proposalLog[i];
        return true;
    }

    Rows m_z;
    Rows m_proposal;
    Likelihood& m_likelihood;
    Random& m_random;
    std::vector<bool> m_outOfReach;
    std::vector<double> m_log;
    std::vector<double> m_proposalLog;
    double m_beta = 0.0;
    double m_reach = 0.5;
    double m_ess = 0.0;
    double m_logEvidence = 0.0;
    double m_acceptance = 0.0;
};

} // namespace

Likelihood::Likelihood(const TankCase& tank, const Prior& prior)
    : m_prior(prior)
    , m_control(sim::tankControl(kCalibrationTolerance))
{
    const std::vector<CaseReading> readings = usedReadings(tank);
    m_control.maxSteps = kCalibrationSteps;
    m_scenario = scenarioOf(tank, readings.empty() ? tank.setup.startDay : readings.back().day, false);
    for (const CaseReading& reading : readings) {
        if (m_scenario.stops.empty() || m_scenario.stops.back() < reading.day) {
            m_scenario.stops.push_back(reading.day);
        }
        const auto kit = static_cast<std::size_t>(reading.kit);
        m_readings.push_back({ReadingModel(tank.kits[kit], reading), kit, m_scenario.stops.size() - 1});
    }
}

void Likelihood::evaluate(const Rows& z, std::vector<double>& logLikelihood)
{
    logLikelihood.assign(z.count(), kNever);
    std::array<sim::Member, sim::kLanes> members;
    for (std::size_t first = 0; first < z.count(); first += sim::kLanes) {
        const std::size_t used = std::min(sim::kLanes, z.count() - first);
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            members[lane] = m_prior.member(z.row(first + std::min(lane, used - 1)));
        }
        sim::runToStops(m_scenario, members, m_control, m_trace);
        for (std::size_t lane = 0; lane < used; ++lane) {
            ++m_runs;
            if (m_trace.failed[lane]) {
                ++m_failures;
                continue;
            }
            double sum = 0.0;
            for (const Placed& reading : m_readings) {
                const auto& y = m_trace.atStops[reading.stop];
                sum += reading.model.logLikelihood(m_prior.shown(reading.kit, z.row(first + lane),
                                                                 y[sim::kTotalAmmonia][lane], y[sim::kNitrite][lane],
                                                                 y[sim::kNitrate][lane]));
            }
            logLikelihood[first + lane] = std::isfinite(sum) ? sum : kNever;
        }
    }
}

Rows priorDraws(const Prior& prior, std::size_t n, Random& random)
{
    Rows draws(n, prior.dimension());
    for (std::size_t i = 0; i < n; ++i) {
        for (double& z : draws.row(i)) {
            do {
                z = random.normal();
            } while (std::fabs(z) > kLargestZ);
        }
    }
    return draws;
}

std::vector<std::size_t> systematicPicks(const std::vector<double>& weights, std::size_t n, double offset)
{
    const double total = std::accumulate(weights.begin(), weights.end(), 0.0);
    std::vector<std::size_t> picks;
    picks.reserve(n);
    double reached = 0.0;
    std::size_t next = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        reached += weights[i] / total;
        while (next < n && (static_cast<double>(next) + offset) / static_cast<double>(n) < reached) {
            picks.push_back(i);
            ++next;
        }
    }
    while (picks.size() < n) {
        // Rounding left the sum a hair below one.
        picks.push_back(picks.empty() ? 0 : picks.back());
    }
    return picks;
}

std::optional<Calibration> calibrate(const Prior& prior, Likelihood& likelihood, std::size_t particles, Random& random,
                                     const std::stop_token& stop)
{
    Calibration result;
    Rows start = priorDraws(prior, particles, random);
    if (likelihood.empty()) {
        result.particles = std::move(start);
        result.finalEss = static_cast<double>(particles);
        return result;
    }
    Sampler sampler(std::move(start), likelihood, random);
    result.converged = sampler.anySound();
    while (result.converged && sampler.beta() < 1.0) {
        if (++result.stages > kMostStages) {
            result.converged = false;
            break;
        }
        sampler.temper();
        const int moves = sampler.beta() < 1.0 ? kMovesPerStage : kMovesLast;
        for (int i = 0; i < moves; ++i) {
            if (stop.stop_requested()) {
                return std::nullopt;
            }
            sampler.move();
        }
    }
    result.finalAcceptance = sampler.acceptance();
    result.finalEss = sampler.ess();
    result.logEvidence = sampler.logEvidence();
    result.runs = likelihood.runs();
    result.failedShare = likelihood.runs() > 0
                             ? static_cast<double>(likelihood.failures()) / static_cast<double>(likelihood.runs())
                             : 0.0;
    result.particles = sampler.take();
    return result;
}

} // namespace littoral::forecast
