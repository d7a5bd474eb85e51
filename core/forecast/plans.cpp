// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/plans.h"

#include "core/forecast/case_scenario.h"
#include "core/forecast/ensemble.h"
#include "core/forecast/milestones.h"
#include "core/forecast/priors.h"
#include "core/forecast/streams.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

namespace littoral::forecast {

namespace {

constexpr std::array<double, 5> kFractions{0.2, 0.3, 0.4, 0.5, 0.7};
constexpr std::array<double, 4> kIntervals_d{1.0, 2.0, 3.0, 7.0};
constexpr std::array<double, 3> kEasing_d{std::numeric_limits<double>::infinity(), 7.0, 14.0};
constexpr double kEasedTo = 0.5;

/// Plans are compared with each other: errors of a percent of a kit step do not show.
constexpr double kPlanTolerance = 4e-4;
constexpr int kPlanSteps = 12000;
/// Exposure is counted and gates are judged four times a day.
constexpr double kSample_d = 0.25;
/// How many of the frontier are shown.
constexpr std::size_t kShown = 7;
/// Differences of less than this are no reason to call one plan better: members are few and limits are judgement.
constexpr double kSameDate_d = 0.5;

/// The members as they stand on the decision day.
struct Standing
{
    std::vector<sim::Member> members; ///< start: state on the decision day; later multipliers drawn
    std::vector<double> dateNoise;
    std::vector<sim::Coefficients<double>> coefficients;
    /// The stretch before the decision day that a gate may already have been held, one after another per member.
    std::vector<double> pastDays;
    std::vector<FinePath> pasts;
    sim::Scenario later; ///< from the decision day on, without water changes
};

void put(FinePath& path, std::size_t i, const sim::Sample& sample, std::size_t lane, const sim::Member& member)
{
    path.totalAmmonia[i] = sample.totalAmmonia[lane];
    path.nitrite[i] = sample.nitrite[lane];
    path.freeAmmonia[i] = sample.totalAmmonia[lane] *
                          sim::freeShare(sample.alkalinity[lane], member.co2Off_mg_per_L, member.temperature_C);
}

FinePath pathOver(const std::vector<double>& days)
{
    FinePath path;
    path.days = days;
    path.totalAmmonia.resize(days.size());
    path.freeAmmonia.resize(days.size());
    path.nitrite.resize(days.size());
    return path;
}

sim::Scenario laterScenario(const TankCase& tank, double endDay)
{
    sim::Scenario scenario = scenarioOf(tank, endDay, true);
    for (const sim::Event& event : scenario.events) {
        if (event.day >= tank.decisionDay) {
            break;
        }
        if (event.kind == sim::EventKind::FeedRate) {
            scenario.feed_mgN_per_L_d = event.amount;
        } else if (event.kind == sim::EventKind::ExcretionChange) {
            scenario.excretion_mgN_per_L_d = std::max(scenario.excretion_mgN_per_L_d + event.amount, 0.0);
        }
    }
    std::erase_if(scenario.events, [&](const sim::Event& event) {
        return event.day < tank.decisionDay || event.kind == sim::EventKind::WaterChange;
    });
    scenario.startDay = tank.decisionDay;
    return scenario;
}

std::optional<Standing> standingOf(const Request& request, const Prior& prior, const Rows& z, double endDay,
                                   double pastDays, const std::stop_token& stop)
{
    const TankCase& tank = request.tank;
    Standing standing;
    standing.later = laterScenario(tank, endDay);
    sim::Scenario past = scenarioOf(tank, tank.decisionDay, false);
    const double since = std::max(tank.setup.startDay, tank.decisionDay - pastDays);
    for (double day = since; day < tank.decisionDay - 1e-9; day += kSample_d) {
        past.samples.push_back(day);
    }
    standing.pastDays = past.samples;
    auto control = sim::tankControl(kPlanTolerance);
    control.maxSteps = kPlanSteps;
    sim::PackTrace trace;
    Random random(request.seed, kPlanStream);
    std::array<sim::Member, sim::kLanes> members;
    for (std::size_t first = 0; first < z.count(); first += sim::kLanes) {
        if (stop.stop_requested()) {
            return std::nullopt;
        }
        const std::size_t used = std::min(sim::kLanes, z.count() - first);
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            members[lane] = prior.member(z.row(first + std::min(lane, used - 1)));
        }
        sim::runRecorded(past, members, control, trace);
        for (std::size_t lane = 0; lane < used; ++lane) {
            sim::Member& member = members[lane];
            drawLater(member, request.inflation, random);
            const double noise = request.inflation * random.normal();
            if (trace.failed[lane]) {
                continue;
            }
            for (std::size_t k = 0; k < sim::kStateCount; ++k) {
                member.start[k] = trace.end[k][lane];
            }
            FinePath path = pathOver(past.samples);
            for (std::size_t i = 0; i < path.days.size(); ++i) {
                put(path, i, trace.samples[i], lane, member);
            }
            standing.pasts.push_back(std::move(path));
            standing.coefficients.push_back(sim::coefficientsOf(member, standing.later.co2ShareOfDay));
            standing.members.push_back(member);
            standing.dateNoise.push_back(noise);
        }
    }
    return standing;
}

/// Runs one plan after the other on the same members.
class PlanRun final
{
public:
    PlanRun(const Request& request, const PlanQuestion& question, Standing standing, double lastDay)
        : m_request(request)
        , m_question(question)
        , m_standing(std::move(standing))
        , m_control(sim::tankControl(kPlanTolerance))
        , m_doses(request.tank.events)
        , m_lastDay(lastDay)
    {
        m_control.maxSteps = kPlanSteps;
        const double now = request.tank.decisionDay;
        const auto count = static_cast<std::size_t>((lastDay + kClearTail_d - now) / kSample_d);
        for (std::size_t i = 0; i <= count; ++i) {
            m_samples.push_back(now + kSample_d * static_cast<double>(i));
        }
        std::vector<double> days = m_standing.pastDays;
        days.insert(days.end(), m_samples.begin(), m_samples.end());
        m_path = pathOver(days);
    }

    void run(const std::vector<Event>& changes, PlanOutcome& outcome)
    {
        outcome.changes.clear();
        const double windowEnd = m_request.tank.decisionDay + m_question.windowDays;
        for (const Event& change : changes) {
            if (change.day <= windowEnd) {
                outcome.changes.push_back(change);
            }
        }
        sim::Scenario scenario = m_standing.later;
        for (const Event& change : changes) {
            if (change.day < scenario.endDay) {
                scenario.events.push_back({change.day, sim::EventKind::WaterChange, change.amount,
                                           static_cast<std::size_t>(std::max(change.source, 0))});
            }
        }
        std::stable_sort(scenario.events.begin(), scenario.events.end(),
                         [](const sim::Event& a, const sim::Event& b) { return a.day < b.day; });
        scenario.samples = m_samples;
        m_gates.clear();
        m_carried = 0;
        m_kept = 0;
        std::array<sim::Member, sim::kLanes> members;
        for (std::size_t first = 0; first < m_standing.members.size(); first += sim::kLanes) {
            const std::size_t used = std::min(sim::kLanes, m_standing.members.size() - first);
            for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
                members[lane] = m_standing.members[first + std::min(lane, used - 1)];
            }
            sim::runRecorded(scenario, members, m_control, m_trace);
            for (std::size_t lane = 0; lane < used; ++lane) {
                if (!m_trace.failed[lane]) {
                    file(lane, first + lane, outcome);
                }
            }
        }
        finish(outcome);
    }

private:
    void file(std::size_t lane, std::size_t index, PlanOutcome& outcome)
    {
        ++m_kept;
        const sim::Member& member = m_standing.members[index];
        const double windowEnd = m_request.tank.decisionDay + m_question.windowDays;
        double peak = 0.0;
        double overNitrite = 0.0;
        double overFree = 0.0;
        const FinePath& past = m_standing.pasts[index];
        const std::size_t before = past.days.size();
        std::copy(past.totalAmmonia.begin(), past.totalAmmonia.end(), m_path.totalAmmonia.begin());
        std::copy(past.freeAmmonia.begin(), past.freeAmmonia.end(), m_path.freeAmmonia.begin());
        std::copy(past.nitrite.begin(), past.nitrite.end(), m_path.nitrite.begin());
        for (std::size_t i = 0; i < m_samples.size(); ++i) {
            const std::size_t place = before + i;
            put(m_path, place, m_trace.samples[i], lane, member);
            if (m_samples[i] <= windowEnd) {
                peak = std::max(peak, m_path.nitrite[place]);
                overNitrite += m_path.nitrite[place] > m_question.limits.nitrite_mgN_per_L ? 24.0 * kSample_d : 0.0;
                overFree += m_path.freeAmmonia[place] > m_question.limits.free_mgN_per_L ? 24.0 * kSample_d : 0.0;
            }
        }
        outcome.nitritePeaks.push_back(peak);
        outcome.hoursNitriteOver += overNitrite;
        outcome.hoursFreeOver += overFree;
        const double now = m_request.tank.decisionDay;
        const double exact = gateDay(m_path, m_question.gate, m_doses, now, m_lastDay);
        double gate = exact;
        if (gate > now && gate <= m_lastDay) {
            gate = now + (gate - now) * std::exp(kDateDispersion * m_standing.dateNoise[index]);
            gate = std::max(gate, std::min(m_question.gate.minDay, exact));
        }
        m_gates.push_back(gate);
        for (const Event& change : outcome.changes) {
            if (change.day < gate) {
                outcome.volumesToGate += change.amount;
                outcome.changesToGate += 1.0;
            }
        }
        if (exact <= m_lastDay && carries(exact, lane, index)) {
            ++m_carried;
        }
    }

    [[nodiscard]] bool carries(double day, std::size_t lane, std::size_t index) const
    {
        const double place = std::max(0.0, (day - m_samples.front()) / kSample_d);
        const auto i = std::min(static_cast<std::size_t>(place), m_samples.size() - 1);
        const auto capacity = usableCapacity(m_trace.samples[i], lane, m_standing.coefficients[index]);
        return std::min(capacity[0], capacity[1]) >= m_request.load_mgN_per_L_d;
    }

    void finish(PlanOutcome& outcome)
    {
        const auto n = static_cast<double>(std::max<std::size_t>(m_kept, 1));
        outcome.volumesToGate /= n;
        outcome.changesToGate /= n;
        outcome.hoursNitriteOver /= n;
        outcome.hoursFreeOver /= n;
        std::sort(outcome.nitritePeaks.begin(), outcome.nitritePeaks.end());
        if (m_kept > 0) {
            outcome.gate = oddsOf(m_gates, m_request.tank.decisionDay, m_lastDay);
        }
        if (m_request.load_mgN_per_L_d > 0.0) {
            outcome.carriesAtGate = static_cast<double>(m_carried) / n;
        }
    }

    const Request& m_request;
    const PlanQuestion& m_question;
    Standing m_standing;
    sim::StepControl<sim::kStateCount> m_control;
    DoseDays m_doses;
    double m_lastDay;
    sim::PackTrace m_trace;
    std::vector<double> m_samples; ///< from the decision day on
    FinePath m_path;               ///< of one member, the stretch before included
    std::vector<double> m_gates;
    std::size_t m_carried = 0;
    std::size_t m_kept = 0;
};

double middleDate(const PlanOutcome& outcome)
{
    return std::min(outcome.gate.day[3], outcome.gate.lastDay + 1.0);
}

bool dominates(const PlanOutcome& a, const PlanOutcome& b)
{
    const double hoursA = a.hoursNitriteOver + a.hoursFreeOver;
    const double hoursB = b.hoursNitriteOver + b.hoursFreeOver;
    const bool noWorse =
        a.volumesToGate <= b.volumesToGate && hoursA <= hoursB && middleDate(a) <= middleDate(b) + kSameDate_d;
    return noWorse && (a.volumesToGate < b.volumesToGate || hoursA < hoursB);
}

/// Marks the plans nobody beats, and of those the few that stand furthest apart in water and exposure.
void markFrontier(std::vector<PlanOutcome>& outcomes)
{
    std::vector<PlanOutcome*> frontier;
    for (PlanOutcome& candidate : outcomes) {
        candidate.onFrontier = std::none_of(outcomes.begin(), outcomes.end(), [&](const PlanOutcome& other) {
            return &other != &candidate && dominates(other, candidate);
        });
        if (candidate.onFrontier) {
            frontier.push_back(&candidate);
        }
        candidate.shown = candidate.present;
    }
    if (frontier.empty()) {
        return;
    }
    std::sort(frontier.begin(), frontier.end(), [](const PlanOutcome* a, const PlanOutcome* b) {
        return std::tie(a->volumesToGate, a->hoursNitriteOver) < std::tie(b->volumesToGate, b->hoursNitriteOver);
    });
    const double water = std::max(frontier.back()->volumesToGate - frontier.front()->volumesToGate, 1e-9);
    double most = 1e-9;
    for (const PlanOutcome* outcome : frontier) {
        most = std::max(most, outcome->hoursNitriteOver + outcome->hoursFreeOver);
    }
    const auto distance = [&](const PlanOutcome& a, const PlanOutcome& b) {
        const double x = (a.volumesToGate - b.volumesToGate) / water;
        const double y = (a.hoursNitriteOver + a.hoursFreeOver - b.hoursNitriteOver - b.hoursFreeOver) / most;
        return x * x + y * y;
    };
    // The two ends first, then always the plan furthest from those chosen.
    frontier.front()->shown = true;
    frontier.back()->shown = true;
    const auto shownCount = [&] {
        return static_cast<std::size_t>(
            std::count_if(outcomes.begin(), outcomes.end(), [](const PlanOutcome& o) { return o.shown; }));
    };
    while (shownCount() < kShown) {
        PlanOutcome* furthest = nullptr;
        double best = 1e-3; // closer than this two plans are one dot on the chart
        for (PlanOutcome* candidate : frontier) {
            double nearest = std::numeric_limits<double>::infinity();
            for (const PlanOutcome& chosen : outcomes) {
                if (chosen.shown) {
                    nearest = std::min(nearest, distance(*candidate, chosen));
                }
            }
            if (!candidate->shown && nearest > best) {
                best = nearest;
                furthest = candidate;
            }
        }
        if (furthest == nullptr) {
            break;
        }
        furthest->shown = true;
    }
}

bool sameSchedule(const std::vector<Event>& a, const std::vector<Event>& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Event& x, const Event& y) {
        return x.source == y.source && std::fabs(x.day - y.day) < 1e-6 && std::fabs(x.amount - y.amount) < 1e-9;
    });
}

bool possible(const ChangePlan& plan, const TankCase& tank)
{
    return plan.fraction >= 0.0 && plan.fraction <= 0.95 && plan.everyDays >= 0.5 && plan.everyDays <= 60.0 &&
           plan.easeAfterDays > 0.0 && plan.source >= 0 &&
           static_cast<std::size_t>(plan.source) < tank.setup.sources.size();
}

std::vector<Event> presentChanges(const TankCase& tank)
{
    std::vector<Event> changes;
    for (const Event& event : tank.events) {
        if (event.kind == EventKind::WaterChange && event.day >= tank.decisionDay) {
            changes.push_back(event);
        }
    }
    std::stable_sort(changes.begin(), changes.end(), [](const Event& a, const Event& b) { return a.day < b.day; });
    return changes;
}

} // namespace

double PlanOutcome::nitriteAbove(double mgN_per_L) const
{
    if (nitritePeaks.empty()) {
        return 1.0;
    }
    const auto above = nitritePeaks.end() - std::upper_bound(nitritePeaks.begin(), nitritePeaks.end(), mgN_per_L);
    return static_cast<double>(above) / static_cast<double>(nitritePeaks.size());
}

std::vector<ChangePlan> planGrid(const TankCase& tank)
{
    std::vector<ChangePlan> plans{{0.0, 7.0}};
    for (const double fraction : kFractions) {
        for (const double interval : kIntervals_d) {
            for (const double ease : kEasing_d) {
                plans.push_back({fraction, interval, ease, 0});
            }
        }
    }
    for (std::size_t source = 1; source < tank.setup.sources.size(); ++source) {
        for (const double fraction : {0.3, 0.5}) {
            for (const double interval : kIntervals_d) {
                plans.push_back(
                    {fraction, interval, std::numeric_limits<double>::infinity(), static_cast<int>(source)});
            }
        }
    }
    return plans;
}

std::vector<Event> changesOf(const ChangePlan& plan, const TankCase& tank, double endDay)
{
    std::vector<Event> changes;
    if (plan.fraction <= 0.0) {
        return changes;
    }
    double last = -std::numeric_limits<double>::infinity();
    for (const Event& event : tank.events) {
        if (event.kind == EventKind::WaterChange && event.day < tank.decisionDay) {
            last = std::max(last, event.day);
        }
    }
    const double now = tank.decisionDay;
    // Whole days from now, so that all plans keep to one time of day.
    double day = std::isfinite(last) ? now + std::max(0.0, std::round(last + plan.everyDays - now)) : now;
    for (; day < endDay; day += plan.everyDays) {
        const bool eased = day - now >= plan.easeAfterDays;
        changes.push_back({day, EventKind::WaterChange, eased ? kEasedTo * plan.fraction : plan.fraction, plan.source});
    }
    return changes;
}

TankCase withChanges(TankCase tank, const std::vector<Event>& changes)
{
    std::erase_if(tank.events, [&](const Event& event) {
        return event.kind == EventKind::WaterChange && event.day >= tank.decisionDay;
    });
    tank.events.insert(tank.events.end(), changes.begin(), changes.end());
    std::stable_sort(tank.events.begin(), tank.events.end(),
                     [](const Event& a, const Event& b) { return a.day < b.day; });
    return tank;
}

Result<PlanTable> comparePlans(const Request& request, const Fit& fit, const PlanQuestion& question,
                               std::stop_token stop)
{
    if (const auto sound = checkRequest(request); !sound) {
        return sound.error();
    }
    for (const ChangePlan& plan : question.plans) {
        if (!possible(plan, request.tank)) {
            return Error{Fault::BadInput, "A plan changes more water, or more often, than can be done.", "plan",
                         "Use fractions up to 95 % and intervals between half a day and 60 days."};
        }
    }
    if (question.draws < 16 || !(question.windowDays > 0.0) || question.windowDays > 3650.0) {
        return Error{Fault::BadInput, "Plans need at least 16 members and a window of some days.", "plan", ""};
    }
    const Prior prior(request.tank);
    if (prior.dimension() != fit.members->width()) {
        return Error{Fault::BadInput, "The calibrated members belong to another case.", "plan", ""};
    }
    const double lastDay = std::max(timetableOf(request).lastDay, request.tank.decisionDay + question.windowDays);
    const Rows z = evenly(*fit.members, std::min(static_cast<std::size_t>(question.draws), fit.members->count()), 0.5);
    auto standing = standingOf(request, prior, z, lastDay + kClearTail_d, question.gate.spanDays, stop);
    if (!standing) {
        return cancelled();
    }
    PlanRun run(request, question, std::move(*standing), lastDay);
    PlanTable table;
    table.windowDays = question.windowDays;
    std::vector<std::vector<Event>> seen{presentChanges(request.tank)};
    table.outcomes.push_back({});
    table.outcomes.back().present = true;
    run.run(seen.back(), table.outcomes.back());
    for (const ChangePlan& plan : question.plans) {
        if (stop.stop_requested()) {
            return cancelled();
        }
        const auto changes = changesOf(plan, request.tank, lastDay + kClearTail_d);
        const auto known = std::find_if(seen.begin() + 1, seen.end(),
                                        [&](const std::vector<Event>& other) { return sameSchedule(changes, other); });
        if (known != seen.end()) {
            continue;
        }
        seen.push_back(changes);
        PlanOutcome outcome;
        outcome.plan = plan;
        run.run(changes, outcome);
        table.outcomes.push_back(std::move(outcome));
    }
    markFrontier(table.outcomes);
    return table;
}

std::optional<std::size_t> cheapestPlan(const PlanTable& table, double nitrite_mgN_per_L, double most)
{
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < table.outcomes.size(); ++i) {
        const PlanOutcome& outcome = table.outcomes[i];
        if (outcome.nitriteAbove(nitrite_mgN_per_L) <= most &&
            (!best || outcome.volumesToGate < table.outcomes[*best].volumesToGate)) {
            best = i;
        }
    }
    return best;
}

} // namespace littoral::forecast
