// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sim/run.h"

#include "core/sim/tank_model.h"

#include <algorithm>
#include <cmath>
#include <limits>

// The same loop is compiled for plain x86-64, for AVX2 and for AVX-512 and chosen when the program starts. Products and
// sums are never fused (-ffp-contract=off), so all of them round alike and give the same bytes.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_THREAD__) &&                \
    !defined(__SANITIZE_ADDRESS__)
#define LITTORAL_CLONES __attribute__((target_clones("default", "avx2", "avx512f")))
#else
#define LITTORAL_CLONES
#endif

namespace littoral::sim {

namespace {

/// Members' event constants, lane by lane.
struct PackEvents
{
    Pack efficiency{};
    Pack changeGain{};
    Pack starter{};
    Pack media{};
    Pack squeezings{};
    Pack seedNitriteShare{};
    Pack laterAmmoniaGrowth{};
    Pack laterNitriteGrowth{};
    Pack laterSoil{};
    Pack laterUptake{};
    std::array<Pack, kMaxSources> sourceAmmonia{};
    std::array<Pack, kMaxSources> sourceNitrate{};
    std::array<Pack, kMaxSources> sourceAlkalinity{};
};

struct PackSetup
{
    State<Pack> start{};
    Coefficients<Pack> coefficients{};
    PackEvents events{};
};

void fillLane(PackSetup& pack, std::size_t lane, const Member& m, const Scenario& scenario)
{
    for (std::size_t i = 0; i < kStateCount; ++i) {
        pack.start[i][lane] = m.start[i];
    }
    Coefficients<double> c = coefficientsOf(m, scenario.co2ShareOfDay);
    c.feed = scenario.feed_mgN_per_L_d * m.efficiency;
    c.excretion = scenario.excretion_mgN_per_L_d * m.efficiency;
    eachCoefficient(pack.coefficients, c, [lane](Pack& to, const double& from) { to[lane] = from; });

    PackEvents& e = pack.events;
    e.efficiency[lane] = m.efficiency;
    e.changeGain[lane] = m.changeGain;
    e.starter[lane] = m.starter_mgN_per_L_d;
    e.media[lane] = m.media_mgN_per_L_d;
    e.squeezings[lane] = m.squeezings_mgN_per_L_d;
    e.seedNitriteShare[lane] = m.seedNitriteShare;
    e.laterAmmoniaGrowth[lane] = m.laterAmmoniaGrowth;
    e.laterNitriteGrowth[lane] = m.laterNitriteGrowth;
    e.laterSoil[lane] = m.laterSoil;
    e.laterUptake[lane] = m.laterUptake;
    for (std::size_t i = 0; i < kMaxSources; ++i) {
        e.sourceAmmonia[i][lane] = m.sources[i].totalAmmonia_mgN_per_L;
        e.sourceNitrate[i][lane] = m.sources[i].nitrate_mgN_per_L;
        e.sourceAlkalinity[i][lane] = m.sources[i].alkalinity_meq_per_L;
    }
}

LITTORAL_INLINE void applyChange(const PackEvents& e, const Event& event, State<Pack>& y)
{
    const Pack wanted = e.changeGain * event.amount;
    const Pack f = wanted - positive(wanted - kLargestChange);
    const std::size_t s = event.source;
    y[kTotalAmmonia] += f * (e.sourceAmmonia[s] - y[kTotalAmmonia]);
    y[kNitrite] -= f * y[kNitrite];
    y[kNitrate] += f * (e.sourceNitrate[s] - y[kNitrate]);
    y[kAlkalinity] += f * (e.sourceAlkalinity[s] - y[kAlkalinity]);
    y[kOrganic] *= 1.0 - 0.5 * f; // half of it lies on the bottom
}

LITTORAL_INLINE void applySeed(const PackEvents& e, const Pack& perUnit, double amount, State<Pack>& y)
{
    y[kAmmoniaCapacity] += perUnit * amount;
    y[kNitriteCapacity] += perUnit * amount * e.seedNitriteShare;
}

LITTORAL_INLINE void applyEvent(const PackEvents& e, const Event& event, State<Pack>& y, Coefficients<Pack>& c)
{
    switch (event.kind) {
    case EventKind::WaterChange:
        applyChange(e, event, y);
        break;
    case EventKind::AmmoniaDose:
        y[kTotalAmmonia] += event.amount;
        break;
    case EventKind::FeedRate:
        c.feed = e.efficiency * event.amount;
        break;
    case EventKind::ExcretionChange:
        c.excretion = positive(c.excretion + e.efficiency * event.amount);
        break;
    case EventKind::Starter:
        applySeed(e, e.starter, event.amount, y);
        break;
    case EventKind::MatureMedia:
        applySeed(e, e.media, event.amount, y);
        break;
    case EventKind::Squeezings:
        applySeed(e, e.squeezings, event.amount, y);
        break;
    case EventKind::OutlookBegins:
        c.ammoniaGrowth *= e.laterAmmoniaGrowth;
        c.nitriteGrowth *= e.laterNitriteGrowth;
        c.fastSoil *= e.laterSoil;
        c.slowSoil *= e.laterSoil;
        c.uptake *= e.laterUptake;
        break;
    }
}

/// Does the event move the state itself, or only the rates?
LITTORAL_INLINE bool jumps(EventKind kind)
{
    return kind != EventKind::FeedRate && kind != EventKind::ExcretionChange && kind != EventKind::OutlookBegins;
}

using Curve = DenseStep<Pack, kStateCount>::Curve;

/// Fills PackTrace::samples and the daily means from the accepted steps.
class Recorder final
{
public:
    Recorder(const Scenario& scenario, PackTrace& trace)
        : m_samples(scenario.samples)
        , m_trace(trace)
    {
        m_firstDay = std::floor(scenario.startDay);
        const auto days = static_cast<std::size_t>(std::max(0.0, std::ceil(scenario.endDay - m_firstDay)));
        trace.samples.resize(m_samples.size());
        trace.meanAmmonia.assign(days, Pack{});
        trace.meanNitrite.assign(days, Pack{});
    }

    LITTORAL_INLINE void begin(double day, const State<Pack>& y)
    {
        while (m_next < m_samples.size() && m_samples[m_next] <= day) {
            m_trace.samples[m_next++] = {y[kTotalAmmonia], y[kNitrite],         y[kNitrate],
                                         y[kAlkalinity],   y[kAmmoniaCapacity], y[kNitriteCapacity]};
        }
    }

    LITTORAL_INLINE void operator()(const DenseStep<Pack, kStateCount>& step)
    {
        const Curve tan = step.curve(kTotalAmmonia);
        const Curve nitrite = step.curve(kNitrite);
        addMeans(step.start, step.end, step.length, tan, nitrite);
        if (m_next < m_samples.size() && m_samples[m_next] <= step.end) {
            const Curve nitrate = step.curve(kNitrate);
            const Curve alkalinity = step.curve(kAlkalinity);
            const Curve capacityA = step.curve(kAmmoniaCapacity);
            const Curve capacityN = step.curve(kNitriteCapacity);
            do {
                const double theta = std::clamp((m_samples[m_next] - step.start) / step.length, 0.0, 1.0);
                m_trace.samples[m_next++] = {positive(tan.at(theta)),       positive(nitrite.at(theta)),
                                             positive(nitrate.at(theta)),   alkalinity.at(theta),
                                             positive(capacityA.at(theta)), positive(capacityN.at(theta))};
            } while (m_next < m_samples.size() && m_samples[m_next] <= step.end);
        }
    }

private:
    /// Simpson's rule on the step's own polynomial, cut at midnights.
    LITTORAL_INLINE void addMeans(double start, double end, double length, const Curve& tan, const Curve& nitrite)
    {
        double from = start;
        while (from < end) {
            const double midnight = std::floor(from) + 1.0;
            const double to = std::min(midnight, end);
            const auto bin = static_cast<std::size_t>(std::floor(from) - m_firstDay);
            if (bin < m_trace.meanAmmonia.size()) {
                const double a = (from - start) / length;
                const double b = (to - start) / length;
                const double mid = 0.5 * (a + b);
                const double weight = (to - from) / 6.0;
                m_trace.meanAmmonia[bin] += weight * (tan.at(a) + 4.0 * tan.at(mid) + tan.at(b));
                m_trace.meanNitrite[bin] += weight * (nitrite.at(a) + 4.0 * nitrite.at(mid) + nitrite.at(b));
            }
            from = to;
        }
    }

    const std::vector<double>& m_samples;
    PackTrace& m_trace;
    double m_firstDay = 0.0;
    std::size_t m_next = 0;
};

struct NoRecorder
{
    LITTORAL_INLINE void begin(double, const State<Pack>&) {}
    LITTORAL_INLINE void operator()(const DenseStep<Pack, kStateCount>&) {}
};

/// Fills PackTrace::atStops from the accepted steps, so that a stop between events costs no step of its own.
class StopReader final
{
public:
    StopReader(const std::vector<double>& stops, PackTrace& trace)
        : m_stops(stops)
        , m_trace(trace)
    {
    }

    LITTORAL_INLINE void begin(double day, const State<Pack>& y)
    {
        while (m_next < m_stops.size() && m_stops[m_next] <= day) {
            m_trace.atStops[m_next++] = y;
        }
    }

    LITTORAL_INLINE void operator()(const DenseStep<Pack, kStateCount>& step)
    {
        for (; m_next < m_stops.size() && m_stops[m_next] <= step.end; ++m_next) {
            const double theta = std::clamp((m_stops[m_next] - step.start) / step.length, 0.0, 1.0);
            State<Pack>& y = m_trace.atStops[m_next];
            for (std::size_t i = 0; i < kStateCount; ++i) {
                const Pack value = step.curve(i).at(theta);
                y[i] = i == kAlkalinity ? value : positive(value);
            }
        }
    }

private:
    const std::vector<double>& m_stops;
    PackTrace& m_trace;
    std::size_t m_next = 0;
};

/// Shows each accepted step to both. A struct and not a lambda, which would be compiled once, for the plainest machine.
template <typename Observer> struct Watch
{
    StopReader& stops;
    Observer& observer;
    LITTORAL_INLINE void operator()(const DenseStep<Pack, kStateCount>& step)
    {
        stops(step);
        observer(step);
    }
};

template <bool Injected, typename Observer>
LITTORAL_INLINE bool loop(const Scenario& scenario, const PackSetup& setup, const StepControl<kStateCount>& control,
                          PackTrace& trace, Observer& observer)
{
    TankModel<Pack, WaterFactors<Injected>> model(setup.coefficients);
    DormandPrince<Pack, kStateCount> integrator(control);
    State<Pack> y = setup.start;
    double t = scenario.startDay;
    std::size_t event = 0;
    StopReader stops(scenario.stops, trace);
    Watch<Observer> watch{stops, observer};
    while (event < scenario.events.size() && scenario.events[event].day < t) {
        ++event;
    }
    stops.begin(t, y);
    observer.begin(t, y);
    bool sound = true;
    for (;;) {
        const double eventDay = event < scenario.events.size() ? scenario.events[event].day : scenario.endDay;
        const double next = std::min(eventDay, scenario.endDay);
        if (next > t && !integrator.advance(model, t, y, next, watch)) {
            sound = false;
            break;
        }
        // Events at the very end are not applied: whoever asks for that day wants the value before them.
        if (t >= scenario.endDay) {
            break;
        }
        bool changed = false;
        bool jumped = false;
        while (event < scenario.events.size() && scenario.events[event].day <= t) {
            jumped = jumped || jumps(scenario.events[event].kind);
            applyEvent(setup.events, scenario.events[event++], y, model.coefficients());
            changed = true;
        }
        if (changed) {
            integrator.restart(jumped);
        }
    }
    trace.end = y;
    trace.steps += integrator.steps();
    return sound;
}

LITTORAL_CLONES bool runPlain(const Scenario& scenario, const PackSetup& setup, const StepControl<kStateCount>& control,
                              PackTrace& trace)
{
    NoRecorder none;
    return scenario.co2Injected ? loop<true>(scenario, setup, control, trace, none)
                                : loop<false>(scenario, setup, control, trace, none);
}

LITTORAL_CLONES bool runWatched(const Scenario& scenario, const PackSetup& setup,
                                const StepControl<kStateCount>& control, PackTrace& trace)
{
    Recorder recorder(scenario, trace);
    return scenario.co2Injected ? loop<true>(scenario, setup, control, trace, recorder)
                                : loop<false>(scenario, setup, control, trace, recorder);
}

using RunFunction = bool (*)(const Scenario&, const PackSetup&, const StepControl<kStateCount>&, PackTrace&);

void keepLane(PackTrace& whole, const PackTrace& single, std::size_t lane)
{
    const auto copy = [lane](Pack& to, const Pack& from) { to[lane] = from[lane]; };
    for (std::size_t i = 0; i < whole.atStops.size(); ++i) {
        for (std::size_t k = 0; k < kStateCount; ++k) {
            copy(whole.atStops[i][k], single.atStops[i][k]);
        }
    }
    for (std::size_t i = 0; i < whole.samples.size(); ++i) {
        copy(whole.samples[i].totalAmmonia, single.samples[i].totalAmmonia);
        copy(whole.samples[i].nitrite, single.samples[i].nitrite);
        copy(whole.samples[i].nitrate, single.samples[i].nitrate);
        copy(whole.samples[i].alkalinity, single.samples[i].alkalinity);
        copy(whole.samples[i].ammoniaCapacity, single.samples[i].ammoniaCapacity);
        copy(whole.samples[i].nitriteCapacity, single.samples[i].nitriteCapacity);
    }
    for (std::size_t i = 0; i < whole.meanAmmonia.size(); ++i) {
        copy(whole.meanAmmonia[i], single.meanAmmonia[i]);
        copy(whole.meanNitrite[i], single.meanNitrite[i]);
    }
    for (std::size_t k = 0; k < kStateCount; ++k) {
        copy(whole.end[k], single.end[k]);
    }
}

void finishMeans(const Scenario& scenario, PackTrace& trace)
{
    const double first = std::floor(scenario.startDay);
    for (std::size_t i = 0; i < trace.meanAmmonia.size(); ++i) {
        const double from = std::max(scenario.startDay, first + static_cast<double>(i));
        const double to = std::min(scenario.endDay, first + static_cast<double>(i) + 1.0);
        const double span = std::max(to - from, 1e-12);
        trace.meanAmmonia[i] /= span;
        trace.meanNitrite[i] /= span;
    }
}

void run(RunFunction function, const Scenario& scenario, std::span<const Member, kLanes> members,
         const StepControl<kStateCount>& control, PackTrace& trace)
{
    trace.atStops.resize(scenario.stops.size());
    trace.steps = 0;
    trace.failed.fill(false);
    PackSetup setup;
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        fillLane(setup, lane, members[lane], scenario);
    }
    if (!function(scenario, setup, control, trace)) {
        // Rare: one member drags the others down. Each alone then, the others' results must not depend on it.
        PackTrace single;
        single.atStops.resize(scenario.stops.size());
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            PackSetup alone;
            for (std::size_t copy = 0; copy < kLanes; ++copy) {
                fillLane(alone, copy, members[lane], scenario);
            }
            single.steps = 0;
            trace.failed[lane] = !function(scenario, alone, control, single);
            trace.steps += single.steps;
            keepLane(trace, single, lane);
        }
    }
    finishMeans(scenario, trace);
}

} // namespace

StepControl<kStateCount> tankControl(double relative)
{
    StepControl<kStateCount> control;
    const double absolute = 0.1 * relative;
    for (ComponentControl& component : control.components) {
        component = {absolute, relative, false};
    }
    for (const std::size_t capacity : {std::size_t{kAmmoniaCapacity}, std::size_t{kNitriteCapacity}}) {
        // Filters start near 1e-4 mg N/L/d and what grows from there decides the dates.
        control.components[capacity].absolute = 1e-9;
    }
    for (const std::size_t slow :
         {std::size_t{kFastSoil}, std::size_t{kSlowSoil}, std::size_t{kOrganic}, std::size_t{kAlkalinity}}) {
        control.components[slow].absolute *= 3.0;
        control.components[slow].relative *= 3.0;
    }
    control.components[kAlkalinity].mayBeNegative = true;
    control.components[kRemoved].relative = -1.0; // a ledger: follows from the others
    return control;
}

UsableShare usableShare(const Coefficients<double>& c, double tan, double nitrite, double alkalinity_meq_per_L)
{
    const auto factor = WaterFactors<true>::of(c, tan, nitrite, alkalinity_meq_per_L);
    return {factor.ammonia.over * tan / (factor.ammonia.under * (c.ammoniaHalf + tan)),
            factor.nitrite.over * nitrite / (factor.nitrite.under * (c.nitriteHalf + nitrite))};
}

void runToStops(const Scenario& scenario, std::span<const Member, kLanes> members,
                const StepControl<kStateCount>& control, PackTrace& trace)
{
    trace.samples.clear();
    trace.meanAmmonia.clear();
    trace.meanNitrite.clear();
    run(&runPlain, scenario, members, control, trace);
}

void runRecorded(const Scenario& scenario, std::span<const Member, kLanes> members,
                 const StepControl<kStateCount>& control, PackTrace& trace)
{
    run(&runWatched, scenario, members, control, trace);
}

} // namespace littoral::sim
