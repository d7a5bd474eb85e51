// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/ensemble.h"

#include "core/forecast/case_scenario.h"
#include "core/forecast/milestones.h"

#include <algorithm>
#include <cmath>

namespace littoral::forecast {

namespace {

constexpr double kDisplayTolerance = 1e-4;
constexpr int kDisplaySteps = 60000;
/// Gates are judged eight times a day.
constexpr double kFineStep_d = 0.125;
/// A long past is shown at up to this many instants.
constexpr double kMostPastSteps = 400.0;

/// ppm per mg N/L of the common cards: ammonia as NH3, nitrite and nitrate as the ion.
constexpr std::array<double, 3> kCommonUnits{1.21588, 3.28454, 4.42680};
/// Offsets of the dispersion, in the same ppm.
constexpr std::array<double, 3> kDispersionOffset_ppm{0.05, 0.05, 1.0};

/// Random numbers of one draw that do not come from z.
struct DrawNoise
{
    std::array<double, 3> dispersion{}; ///< standard normal, by Substance; one per draw so that paths stay smooth
    double date = 0.0;
};

double dispersed(double water, std::size_t substance, double e, double daysAhead)
{
    const double offset = kDispersionOffset_ppm[substance] / kCommonUnits[substance];
    const double sd = kDispersionBase + kDispersionSlope * std::sqrt(std::max(daysAhead, 0.0));
    return std::max((water + offset) * std::exp(sd * e) - offset, 0.0);
}

/// Every instant the runs are sampled at, sorted, and where each kind of instant lies in it.
class SamplePlan final
{
public:
    SamplePlan(const Timetable& timetable, const sim::Scenario& scenario, bool gates)
    {
        days = timetable.rows;
        days.insert(days.end(), timetable.past.begin(), timetable.past.end());
        days.insert(days.end(), timetable.load.begin(), timetable.load.end());
        std::vector<double> fineDays;
        if (gates) {
            const auto count = static_cast<std::size_t>((scenario.endDay - scenario.startDay) / kFineStep_d + 1e-9);
            for (std::size_t i = 0; i <= count; ++i) {
                fineDays.push_back(scenario.startDay + kFineStep_d * static_cast<double>(i));
            }
        }
        days.insert(days.end(), fineDays.begin(), fineDays.end());
        std::sort(days.begin(), days.end());
        days.erase(std::unique(days.begin(), days.end()), days.end());
        rows = find(timetable.rows);
        past = find(timetable.past);
        load = find(timetable.load);
        fine = find(fineDays);
    }

    std::vector<double> days;
    std::vector<std::size_t> rows;
    std::vector<std::size_t> past;
    std::vector<std::size_t> load;
    std::vector<std::size_t> fine;

private:
    [[nodiscard]] std::vector<std::size_t> find(const std::vector<double>& wanted) const
    {
        std::vector<std::size_t> indices;
        indices.reserve(wanted.size());
        for (const double day : wanted) {
            indices.push_back(static_cast<std::size_t>(std::lower_bound(days.begin(), days.end(), day) - days.begin()));
        }
        return indices;
    }
};

/// Runs the draws pack by pack and files what each did.
class EnsembleRun final
{
public:
    EnsembleRun(const Request& request, const Prior& prior, const Timetable& timetable)
        : m_request(request)
        , m_prior(prior)
        , m_timetable(timetable)
        , m_scenario(scenarioOf(request.tank, timetable.lastDay + kClearTail_d, true))
        , m_plan(timetable, m_scenario, !request.gates.empty())
        , m_control(sim::tankControl(kDisplayTolerance))
        , m_doses(request.tank.events)
    {
        m_control.maxSteps = kDisplaySteps;
        m_scenario.samples = m_plan.days;
        for (const std::size_t i : m_plan.fine) {
            m_path.days.push_back(m_plan.days[i]);
        }
        m_path.totalAmmonia.resize(m_path.days.size());
        m_path.freeAmmonia.resize(m_path.days.size());
        m_path.nitrite.resize(m_path.days.size());
        for (std::size_t s = 0; s < m_newest.size(); ++s) {
            m_newest[s] = newestKit(request.tank, static_cast<Substance>(s));
        }
        for (auto& columns : m_out.water) {
            columns.resize(timetable.rows.size());
        }
        for (auto& columns : m_out.kit) {
            columns.resize(timetable.rows.size());
        }
        for (auto& columns : m_out.fitted) {
            columns.resize(timetable.past.size());
        }
        for (auto& columns : m_out.capacity) {
            columns.resize(timetable.rows.size());
        }
        for (auto& columns : m_out.fittedCapacity) {
            columns.resize(timetable.past.size());
        }
        m_out.gates.resize(request.gates.size());
    }

    bool run(const Rows& z, Random& random, const std::stop_token& stop)
    {
        std::array<sim::Member, sim::kLanes> members;
        std::array<DrawNoise, sim::kLanes> noise;
        for (std::size_t first = 0; first < z.count(); first += sim::kLanes) {
            if (stop.stop_requested()) {
                return false;
            }
            const std::size_t used = std::min(sim::kLanes, z.count() - first);
            for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
                members[lane] = m_prior.member(z.row(first + std::min(lane, used - 1)));
                drawNoise(members[lane], noise[lane], random);
            }
            sim::runRecorded(m_scenario, members, m_control, m_trace);
            for (std::size_t lane = 0; lane < used; ++lane) {
                if (m_trace.failed[lane]) {
                    ++m_out.failed;
                    continue;
                }
                file(lane, members[lane], z.row(first + lane), noise[lane]);
            }
        }
        return true;
    }

    [[nodiscard]] EnsembleOutcome take() { return std::move(m_out); }

private:
    void drawNoise(sim::Member& member, DrawNoise& noise, Random& random) const
    {
        drawLater(member, m_request.inflation, random);
        for (double& e : noise.dispersion) {
            e = m_request.inflation * random.normal();
        }
        noise.date = m_request.inflation * random.normal();
    }

    void file(std::size_t lane, const sim::Member& member, std::span<const double> z, const DrawNoise& noise)
    {
        const sim::Coefficients<double> coefficients = sim::coefficientsOf(member, m_scenario.co2ShareOfDay);
        fileRows(lane, member, z, noise);
        filePast(lane, member);
        fileCapacity(lane, coefficients);
        fileDates(lane, member, noise);
        if (!m_plan.load.empty()) {
            m_out.carries.push_back(carryingDay(lane, coefficients));
        }
    }

    [[nodiscard]] std::array<double, 2> usable(std::size_t sample, std::size_t lane,
                                               const sim::Coefficients<double>& coefficients) const
    {
        return usableCapacity(m_trace.samples[sample], lane, coefficients);
    }

    void fileCapacity(std::size_t lane, const sim::Coefficients<double>& coefficients)
    {
        for (std::size_t i = 0; i < m_plan.rows.size(); ++i) {
            const auto capacity = usable(m_plan.rows[i], lane, coefficients);
            m_out.capacity[0][i].push_back(capacity[0]);
            m_out.capacity[1][i].push_back(capacity[1]);
        }
        for (std::size_t i = 0; i < m_plan.past.size(); ++i) {
            const auto capacity = usable(m_plan.past[i], lane, coefficients);
            m_out.fittedCapacity[0][i].push_back(capacity[0]);
            m_out.fittedCapacity[1][i].push_back(capacity[1]);
        }
    }

    [[nodiscard]] double carryingDay(std::size_t lane, const sim::Coefficients<double>& coefficients) const
    {
        for (std::size_t i = 0; i < m_plan.load.size(); ++i) {
            const auto capacity = usable(m_plan.load[i], lane, coefficients);
            if (std::min(capacity[0], capacity[1]) >= m_request.load_mgN_per_L_d) {
                return m_timetable.load[i];
            }
        }
        return kNotByLast;
    }

    void fileRows(std::size_t lane, const sim::Member& member, std::span<const double> z, const DrawNoise& noise)
    {
        for (std::size_t i = 0; i < m_plan.rows.size(); ++i) {
            const sim::Sample& sample = m_trace.samples[m_plan.rows[i]];
            const double ahead = m_timetable.rows[i] - m_request.tank.decisionDay;
            const std::array<double, 3> water{dispersed(sample.totalAmmonia[lane], 0, noise.dispersion[0], ahead),
                                              dispersed(sample.nitrite[lane], 1, noise.dispersion[1], ahead),
                                              dispersed(sample.nitrate[lane], 2, noise.dispersion[2], ahead)};
            for (std::size_t s = 0; s < water.size(); ++s) {
                m_out.water[s][i].push_back(water[s]);
                m_out.kit[s][i].push_back(m_newest[s] ? m_prior.shown(*m_newest[s], z, water[0], water[1], water[2])
                                                      : kCommonUnits[s] * water[s]);
            }
            const double share = sim::freeShare(sample.alkalinity[lane], member.co2Off_mg_per_L, member.temperature_C);
            m_out.water[static_cast<std::size_t>(Substance::FreeAmmonia)][i].push_back(water[0] * share);
        }
    }

    void filePast(std::size_t lane, const sim::Member& member)
    {
        for (std::size_t i = 0; i < m_plan.past.size(); ++i) {
            const sim::Sample& sample = m_trace.samples[m_plan.past[i]];
            const double share = sim::freeShare(sample.alkalinity[lane], member.co2Off_mg_per_L, member.temperature_C);
            m_out.fitted[0][i].push_back(sample.totalAmmonia[lane]);
            m_out.fitted[1][i].push_back(sample.nitrite[lane]);
            m_out.fitted[2][i].push_back(sample.nitrate[lane]);
            m_out.fitted[3][i].push_back(sample.totalAmmonia[lane] * share);
        }
    }

    [[nodiscard]] double dispersedDate(double day, double e) const
    {
        const double now = m_request.tank.decisionDay;
        return day > now ? now + (day - now) * std::exp(kDateDispersion * e) : day;
    }

    void fileDates(std::size_t lane, const sim::Member& member, const DrawNoise& noise)
    {
        m_meanAmmonia.resize(m_trace.meanAmmonia.size());
        m_meanNitrite.resize(m_trace.meanNitrite.size());
        for (std::size_t i = 0; i < m_meanAmmonia.size(); ++i) {
            m_meanAmmonia[i] = m_trace.meanAmmonia[i][lane];
            m_meanNitrite[i] = m_trace.meanNitrite[i][lane];
        }
        const double first = std::floor(m_scenario.startDay);
        m_out.complete.push_back(dispersedDate(
            completionDay(m_meanAmmonia, m_meanNitrite, first, m_doses, m_timetable.lastDay), noise.date));
        if (m_request.gates.empty()) {
            return;
        }
        for (std::size_t i = 0; i < m_plan.fine.size(); ++i) {
            const sim::Sample& sample = m_trace.samples[m_plan.fine[i]];
            m_path.totalAmmonia[i] = sample.totalAmmonia[lane];
            m_path.nitrite[i] = sample.nitrite[lane];
            m_path.freeAmmonia[i] =
                sample.totalAmmonia[lane] *
                sim::freeShare(sample.alkalinity[lane], member.co2Off_mg_per_L, member.temperature_C);
        }
        for (std::size_t i = 0; i < m_request.gates.size(); ++i) {
            const GateRule& gate = m_request.gates[i];
            const double day = gateDay(m_path, gate, m_doses, m_request.tank.decisionDay, m_timetable.lastDay);
            // Age is a calendar matter: the spread of a date may not bring it below the gate's age.
            m_out.gates[i].push_back(std::max(dispersedDate(day, noise.date), std::min(gate.minDay, day)));
        }
    }

    const Request& m_request;
    const Prior& m_prior;
    const Timetable& m_timetable;
    sim::Scenario m_scenario;
    SamplePlan m_plan;
    sim::StepControl<sim::kStateCount> m_control;
    DoseDays m_doses;
    std::array<std::optional<std::size_t>, 3> m_newest;
    sim::PackTrace m_trace;
    FinePath m_path;
    std::vector<double> m_meanAmmonia;
    std::vector<double> m_meanNitrite;
    EnsembleOutcome m_out;
};

} // namespace

std::optional<std::size_t> newestKit(const TankCase& tank, Substance substance)
{
    std::optional<std::size_t> kit;
    for (std::size_t i = 0; i < tank.kits.size(); ++i) {
        if (tank.kits[i].substance == substance) {
            kit = i;
        }
    }
    double latest = -kNotByLast;
    for (const CaseReading& reading : tank.readings) {
        const auto index = static_cast<std::size_t>(reading.kit);
        if (tank.kits[index].substance == substance && reading.day >= latest) {
            latest = reading.day;
            kit = index;
        }
    }
    return kit;
}

void drawLater(sim::Member& member, double inflation, Random& random)
{
    member.laterAmmoniaGrowth = std::exp(inflation * kLaterGrowthSd * random.normal());
    member.laterNitriteGrowth = std::exp(inflation * kLaterGrowthSd * random.normal());
    member.laterSoil = std::exp(inflation * kLaterSoilSd * random.normal());
    member.laterUptake = std::exp(inflation * kLaterUptakeSd * random.normal());
}

std::array<double, 2> usableCapacity(const sim::Sample& sample, std::size_t lane,
                                     const sim::Coefficients<double>& coefficients)
{
    const sim::UsableShare share =
        sim::usableShare(coefficients, kClearAmmonia_mgN_per_L, kClearNitrite_mgN_per_L, sample.alkalinity[lane]);
    return {sample.ammoniaCapacity[lane] * share.ammonia, sample.nitriteCapacity[lane] * share.nitrite};
}

Timetable timetableOf(const Request& request)
{
    const double now = request.tank.decisionDay;
    const double start = request.tank.setup.startDay;
    Timetable timetable;
    const auto rows = static_cast<std::size_t>(request.horizonDays / request.stepDays + 1e-9);
    for (std::size_t i = 0; i <= rows; ++i) {
        timetable.rows.push_back(now + request.stepDays * static_cast<double>(i));
    }
    timetable.rows.insert(timetable.rows.end(), request.extraDays.begin(), request.extraDays.end());
    std::sort(timetable.rows.begin(), timetable.rows.end());
    timetable.rows.erase(std::unique(timetable.rows.begin(), timetable.rows.end()), timetable.rows.end());

    const double step = std::max(1.0, std::ceil((now - start) / kMostPastSteps));
    for (double day = start; day < now - 1e-9; day += step) {
        timetable.past.push_back(day);
    }
    timetable.past.push_back(now);
    const double extra = timetable.rows.back();
    timetable.lastDay = std::ceil(std::max({60.0, now + request.horizonDays, now + 14.0, extra}));
    if (request.load_mgN_per_L_d > 0.0) {
        for (double day = now; day <= timetable.lastDay; day += 1.0) {
            timetable.load.push_back(day);
        }
    }
    return timetable;
}

std::optional<EnsembleOutcome> runEnsemble(const Request& request, const Prior& prior, const Rows& z,
                                           const Timetable& timetable, Random& random, const std::stop_token& stop)
{
    EnsembleRun run(request, prior, timetable);
    if (!run.run(z, random, stop)) {
        return std::nullopt;
    }
    return run.take();
}

} // namespace littoral::forecast
