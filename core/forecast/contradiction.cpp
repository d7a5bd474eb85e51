// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/contradiction.h"

#include "core/forecast/calibration.h"
#include "core/forecast/case_scenario.h"
#include "core/forecast/priors.h"
#include "core/forecast/streams.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace littoral::forecast {

namespace {

constexpr double kUnitOdds = 1.0 / 20.0;   // judgement: the commonest mistake
constexpr double kKitOdds = 1.0 / 50.0;    // judgement
constexpr double kChangeOdds = 1.0 / 20.0; // judgement, over all candidate days together
constexpr double kWorthSaying = 3.0;
constexpr double kUnlogged = 0.5;
/// A change that was forgotten longer ago leaves nothing to see.
constexpr double kLookBack_d = 21.0;
constexpr std::size_t kMostChanges = 5;
/// A dead reagent mostly shows the lowest step (common practice).
constexpr double kDeadShowsLowest = 0.7;
constexpr std::size_t kParticles = 256;

constexpr double kNitriteIon = 3.28454; // mg NO2 per mg N
constexpr double kNitrateIon = 4.42680; // mg NO3 per mg N

/// Factor the kit's unit would have on the other basis; nothing where the bases hardly differ.
std::optional<double> otherBasis(const Kit& kit)
{
    const double ion = kit.substance == Substance::Nitrite   ? kNitriteIon
                       : kit.substance == Substance::Nitrate ? kNitrateIon
                                                             : 0.0;
    if (ion == 0.0) {
        return std::nullopt;
    }
    const double middle = std::sqrt(ion);
    return kit.unitsPerMgN > middle ? kit.unitsPerMgN / ion : kit.unitsPerMgN * ion;
}

class Trial final
{
public:
    Trial(const Request& request, std::stop_token stop)
        : m_request(request)
        , m_stop(std::move(stop))
    {
    }

    /// ln of the readings' probability; nothing when stopped or when no member could be run.
    [[nodiscard]] std::optional<double> evidence(const TankCase& tank) const
    {
        const Prior prior(tank);
        Likelihood likelihood(tank, prior);
        Random random(m_request.seed, kCalibrationStream);
        const auto calibration = calibrate(prior, likelihood, kParticles, random, m_stop);
        if (!calibration || !calibration->converged) {
            return std::nullopt;
        }
        return calibration->logEvidence;
    }

private:
    const Request& m_request;
    std::stop_token m_stop;
};

double deadKitLog(const Kit& kit, const std::vector<CaseReading>& readings, int index)
{
    double sum = 0.0;
    for (const CaseReading& reading : readings) {
        if (reading.kit != index) {
            continue;
        }
        if (kit.steps.size() < 2) {
            sum += std::log(1.0 / usualTop(kit));
            continue;
        }
        const bool lowest = reading.below || reading.low < 0.5 * kit.steps[1];
        sum +=
            std::log(lowest ? kDeadShowsLowest : (1.0 - kDeadShowsLowest) / static_cast<double>(kit.steps.size() - 1));
    }
    return sum;
}

/// Middles of the latest gaps between days with readings.
std::vector<double> changeDays(const TankCase& tank)
{
    std::vector<double> days;
    double previous = tank.setup.startDay;
    for (const CaseReading& reading : usedReadings(tank)) {
        if (reading.day > previous + 0.25 && reading.day > tank.decisionDay - kLookBack_d) {
            days.push_back(0.5 * (previous + reading.day));
        }
        previous = reading.day;
    }
    if (days.size() > kMostChanges) {
        days.erase(days.begin(), days.end() - static_cast<std::ptrdiff_t>(kMostChanges));
    }
    return days;
}

} // namespace

bool worthExplaining(const Diagnostics& diagnostics)
{
    return !diagnostics.fitted || !diagnostics.flagged.empty();
}

Result<std::vector<Explanation>> explainContradiction(const Request& request, std::stop_token stop)
{
    if (const auto sound = checkRequest(request); !sound) {
        return sound.error();
    }
    const Trial trial(request, stop);
    const TankCase& tank = request.tank;
    const auto plain = trial.evidence(tank);
    if (stop.stop_requested()) {
        return cancelled();
    }
    std::vector<Explanation> found;
    const auto consider = [&](Explanation explanation, std::optional<double> evidence, double priorOdds) {
        if (!evidence) {
            return;
        }
        // Where not even one member could be run under the plain reading, any cause that runs is better.
        explanation.odds = priorOdds * (plain ? std::exp(std::min(*evidence - *plain, 700.0)) : 1e6);
        if (explanation.odds >= kWorthSaying) {
            found.push_back(explanation);
        }
    };
    for (std::size_t kit = 0; kit < tank.kits.size(); ++kit) {
        const auto index = static_cast<int>(kit);
        const auto used = std::count_if(tank.readings.begin(), tank.readings.end(),
                                        [&](const CaseReading& reading) { return reading.kit == index; });
        if (used < 2) {
            continue;
        }
        if (const auto units = otherBasis(tank.kits[kit])) {
            TankCase other = tank;
            other.kits[kit].unitsPerMgN = *units;
            consider({Cause::OtherUnitBasis, index, 0.0, 0.0}, trial.evidence(other), kUnitOdds);
        }
        TankCase without = tank;
        std::erase_if(without.readings, [&](const CaseReading& reading) { return reading.kit == index; });
        auto rest = trial.evidence(without);
        if (rest) {
            *rest += deadKitLog(tank.kits[kit], tank.readings, index);
        }
        consider({Cause::DeadKit, index, 0.0, 0.0}, rest, kKitOdds);
    }
    const std::vector<double> days = changeDays(tank);
    for (const double day : days) {
        TankCase changed = tank;
        changed.events.push_back({day, EventKind::WaterChange, kUnlogged, 0});
        consider({Cause::UnloggedChange, -1, day, 0.0}, trial.evidence(changed),
                 kChangeOdds / static_cast<double>(days.size()));
    }
    if (stop.stop_requested()) {
        return cancelled();
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Explanation& a, const Explanation& b) { return a.odds > b.odds; });
    return found;
}

} // namespace littoral::forecast
