// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/speed_ratio.h"

#include "core/forecast/calibration.h"
#include "core/forecast/milestones.h"
#include "core/sim/tank_model.h"
#include "tests/forecast/cases.h"
#include "tests/forecast/reference_tank.h"

#include <boost/numeric/odeint.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <optional>
#include <string>

namespace littoral::bench {

namespace {

namespace ode = boost::numeric::odeint;

/// Our rates for one member.
struct OwnRates
{
    using Vector = sim::State<double>;
    sim::TankModel<double, sim::WaterFactors<false>> model;

    explicit OwnRates(const sim::Member& member)
        : model(sim::coefficientsOf(member, 0.0))
    {
    }
    void operator()(const Vector& y, Vector& rate, double) const { model(y, rate); }
    void feed(double rate) { model.coefficients().feed = rate; }
};

/// The equations as written a second time for the tests; its states come in our order, without the ledger.
struct PlainRates
{
    using Vector = forecast::reference::Vector;
    forecast::reference::Tank tank;

    explicit PlainRates(const sim::Member& member)
        : tank{member, 0.0, 0.0, 0.0}
    {
    }
    void operator()(const Vector& y, Vector& rate, double t) const { tank(y, rate, t); }
    void feed(double rate) { tank.feed = rate; }
};

double threadSeconds()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

template <typename System>
void apply(const sim::Event& event, const sim::Member& member, typename System::Vector& y, System& system)
{
    if (event.kind == sim::EventKind::WaterChange) {
        const double f = std::min(member.changeGain * event.amount, sim::kLargestChange);
        const sim::SourceLevels& source = member.sources[event.source];
        y[sim::kTotalAmmonia] += f * (source.totalAmmonia_mgN_per_L - y[sim::kTotalAmmonia]);
        y[sim::kNitrite] -= f * y[sim::kNitrite];
        y[sim::kNitrate] += f * (source.nitrate_mgN_per_L - y[sim::kNitrate]);
        y[sim::kAlkalinity] += f * (source.alkalinity_meq_per_L - y[sim::kAlkalinity]);
        y[sim::kOrganic] *= 1.0 - 0.5 * f;
    } else if (event.kind == sim::EventKind::FeedRate) {
        system.feed(member.efficiency * event.amount);
    }
}

template <typename System>
void runSystem(const Ensemble& ensemble, const sim::Member& member, const Tolerance& tolerance, Course* kept)
{
    using Vector = typename System::Vector;
    System system(member);
    const auto rates = [&system](const Vector& y, Vector& rate, double t) { system(y, rate, t); };
    Vector y{};
    std::copy_n(member.start.begin(), y.size(), y.begin());
    double t = 0.0;
    const auto stepTo = [&](double end) {
        auto stepper = ode::make_controlled(tolerance.absolute, tolerance.relative, ode::runge_kutta_dopri5<Vector>());
        ode::integrate_adaptive(stepper, rates, y, t, end, std::min(0.1, end - t));
        t = end;
        if (kept) {
            kept->ammonia.push_back(y[sim::kTotalAmmonia]);
            kept->nitrite.push_back(y[sim::kNitrite]);
        }
    };
    for (const sim::Event& event : ensemble.scenario.events) {
        stepTo(event.day);
        apply(event, member, y, system);
    }
    stepTo(ensemble.scenario.endDay);
}

Course coursesOfLanes(const Ensemble& ensemble, double tolerance)
{
    Course course;
    sim::PackTrace trace;
    for (std::size_t first = 0; first < ensemble.members.size(); first += sim::kLanes) {
        runLanes(ensemble, first, tolerance, trace);
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            for (const auto& y : trace.atStops) {
                course.ammonia.push_back(y[sim::kTotalAmmonia][lane]);
                course.nitrite.push_back(y[sim::kNitrite][lane]);
            }
        }
    }
    return course;
}

Course coursesOfOdeint(const Ensemble& ensemble, Rates rates, const Tolerance& tolerance)
{
    Course course;
    for (std::size_t i = 0; i < ensemble.members.size(); ++i) {
        runOdeint(ensemble, i, rates, tolerance, &course);
    }
    return course;
}

Accuracy accuracyOf(const Course& course, const Course& exact)
{
    std::vector<double> errors;
    for (std::size_t i = 0; i < exact.ammonia.size(); ++i) {
        errors.push_back(100.0 * std::fabs(course.ammonia[i] - exact.ammonia[i]) / forecast::kClearAmmonia_mgN_per_L);
        errors.push_back(100.0 * std::fabs(course.nitrite[i] - exact.nitrite[i]) / forecast::kClearNitrite_mgN_per_L);
    }
    std::sort(errors.begin(), errors.end());
    const auto at = [&](double p) {
        return errors[static_cast<std::size_t>(p * static_cast<double>(errors.size() - 1))];
    };
    return {at(0.5), at(0.99), errors.back()};
}

/// Microseconds per single run, the best of several passes over the ensemble.
template <typename Pass> double bestTime(const Ensemble& ensemble, Pass&& pass)
{
    double best = 1e300;
    for (int repeat = 0; repeat < 7; ++repeat) {
        const double start = threadSeconds();
        pass();
        best = std::min(best, threadSeconds() - start);
    }
    return 1e6 * best / static_cast<double>(ensemble.members.size());
}

double timeOfOdeint(const Ensemble& ensemble, Rates rates, const Tolerance& tolerance)
{
    return bestTime(ensemble, [&] {
        for (std::size_t i = 0; i < ensemble.members.size(); ++i) {
            runOdeint(ensemble, i, rates, tolerance, nullptr);
        }
    });
}

struct Fitting
{
    Tolerance tolerance;
    Accuracy accuracy;
    double time_us = 0.0;
};

/// The fastest tolerance at which odeint, on our rates, is no less accurate than we are.
std::optional<Fitting> fastestOdeint(const Ensemble& ensemble, const Accuracy& ours, const Course& exact)
{
    std::optional<Fitting> best;
    for (const double relative : {1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 3e-7, 1e-7}) {
        if (best && relative < 0.05 * best->tolerance.relative) {
            break; // tighter only costs more
        }
        for (const double share : {1.0, 0.1, 0.01}) {
            const Tolerance tolerance{share * relative, relative};
            const Accuracy theirs = accuracyOf(coursesOfOdeint(ensemble, Rates::Ours, tolerance), exact);
            if (theirs.high > ours.high) {
                continue;
            }
            const double time = timeOfOdeint(ensemble, Rates::Ours, tolerance);
            if (!best || time < best->time_us) {
                best = Fitting{tolerance, theirs, time};
            }
        }
    }
    return best;
}

} // namespace

Ensemble ensembleOf(std::size_t members)
{
    forecast::TankCase tank = forecast::cases::richSoil(7.0); // 29 water changes
    tank.events.push_back({30.5, forecast::EventKind::FeedRate, 0.1, 0});
    const forecast::Prior prior(tank);
    Random random(3);
    const forecast::Rows z = forecast::priorDraws(prior, members, random);
    Ensemble ensemble;
    ensemble.scenario = forecast::scenarioOf(tank, 60.0, false);
    for (const sim::Event& event : ensemble.scenario.events) {
        ensemble.scenario.stops.push_back(event.day);
    }
    ensemble.scenario.stops.push_back(60.0);
    for (std::size_t i = 0; i < z.count(); ++i) {
        ensemble.members.push_back(prior.member(z.row(i)));
    }
    return ensemble;
}

void runLanes(const Ensemble& ensemble, std::size_t first, double tolerance, sim::PackTrace& trace)
{
    std::array<sim::Member, sim::kLanes> pack;
    for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
        pack[lane] = ensemble.members[(first + lane) % ensemble.members.size()];
    }
    auto control = sim::tankControl(tolerance);
    control.maxSteps = 100000;
    sim::runToStops(ensemble.scenario, pack, control, trace);
}

void runOdeint(const Ensemble& ensemble, std::size_t member, Rates rates, const Tolerance& tolerance, Course* kept)
{
    if (rates == Rates::Ours) {
        runSystem<OwnRates>(ensemble, ensemble.members[member], tolerance, kept);
    } else {
        runSystem<PlainRates>(ensemble, ensemble.members[member], tolerance, kept);
    }
}

Tolerance reportSpeedRatio(const Ensemble& ensemble, double ourTolerance)
{
    const Course exact = coursesOfOdeint(ensemble, Rates::Plain, {1e-11, 1e-11});
    const Accuracy ours = accuracyOf(coursesOfLanes(ensemble, ourTolerance), exact);
    sim::PackTrace trace;
    const double ourTime = bestTime(ensemble, [&] {
        for (std::size_t first = 0; first < ensemble.members.size(); first += sim::kLanes) {
            runLanes(ensemble, first, ourTolerance, trace);
        }
    });
    std::printf(
        "One 60-day run with %zu events, mean over %zu members; errors of ammonia and nitrite in %% of the card's "
        "first step,\nbefore every event and at the end, against odeint at 1e-11\n",
        ensemble.scenario.events.size(), ensemble.members.size());
    const std::string name = "our " + std::to_string(sim::kLanes) + " lanes, 1e-4";
    std::printf("  %-44s %7.1f us  error: median %.4f, 99 of 100 below %.3f (%s 1), worst %.2f\n", name.c_str(),
                ourTime, ours.median, ours.high, ours.high < 1.0 ? "below" : "not below", ours.worst);
    const std::optional<Fitting> fitting = fastestOdeint(ensemble, ours, exact);
    if (!fitting) {
        std::puts("  odeint reached our accuracy at none of the tolerances tried");
        return {};
    }
    for (const Rates rates : {Rates::Ours, Rates::Plain}) {
        const double time = rates == Rates::Ours ? fitting->time_us : timeOfOdeint(ensemble, rates, fitting->tolerance);
        std::printf("  odeint, %-36s %7.1f us  error: median %.4f, 99 of 100 below %.3f, worst %.2f\n",
                    rates == Rates::Ours ? "our rates for one member" : "the equations written out plainly", time,
                    fitting->accuracy.median, fitting->accuracy.high, fitting->accuracy.worst);
        std::printf("  %-44s %7.1f times ours (wanted: 5)\n", "", time / ourTime);
    }
    std::printf("  (odeint at absolute %.0e, relative %.0e, the fastest that is no less accurate)\n\n",
                fitting->tolerance.absolute, fitting->tolerance.relative);
    return fitting->tolerance;
}

} // namespace littoral::bench
