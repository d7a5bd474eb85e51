// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sim/run.h"

#include <boost/numeric/odeint.hpp>

#include <algorithm>
#include <array>
#include <cmath>

/// The same tank written a second time from the equations, one member, logarithms and all, and integrated by
/// Boost.odeint's controlled Dormand-Prince method. Shares only the names of things with the code under test.
namespace littoral::forecast::reference {

using Vector = std::array<double, 10>; // A N Z VA VN F G O K P

struct Tank
{
    sim::Member m;
    double share = 0.0;
    double feed = 0.0;
    double excretion = 0.0;

    void factors(double A, double N, double K, double co2, double& fA, double& fN) const
    {
        const double kelvin = m.temperature_C + 273.15;
        const double k = K / 1000.0;
        const double h = 0.5 * (-k + std::sqrt(k * k + 4.0 * std::pow(10.0, -6.36) * co2 / 44009.5));
        const double ka = std::pow(10.0, -(0.09018 + 2729.92 / kelvin));
        const double fa = A * ka / (ka + h);
        const double fna = N * h / (h + std::pow(10.0, -3.3));
        const double lo = std::pow(10.0, -m.lowHalf_pH);
        const double loN = std::pow(10.0, -(m.lowHalf_pH - 0.3));
        const double hi = std::pow(10.0, -9.4);
        const double alk = std::max(K, 0.0);
        fA = std::exp(0.077 * (m.temperature_C - 25.0)) * alk / (0.1 + alk) /
             ((1.0 + h / lo + hi / h) * (1.0 + fa / 15.0) * (1.0 + fna / 0.35));
        fN = std::exp(0.06 * (m.temperature_C - 25.0)) /
             ((1.0 + h / loN + hi / h) * (1.0 + fa / 0.8) * (1.0 + fna / 0.35));
    }

    void operator()(const Vector& y, Vector& d, double) const
    {
        const double A = std::max(y[0], 0.0), N = std::max(y[1], 0.0), Z = std::max(y[2], 0.0);
        const double VA = y[3], VN = y[4], F = y[5], G = y[6], O = y[7], K = y[8], P = y[9];
        double fA = 0.0, fN = 0.0;
        factors(A, N, K, m.co2Off_mg_per_L, fA, fN);
        if (share > 0.0) {
            double onA = 0.0, onN = 0.0;
            factors(A, N, K, m.co2On_mg_per_L, onA, onN);
            fA = (1.0 - share) * fA + share * onA;
            fN = (1.0 - share) * fN + share * onN;
        }
        const double TA = std::exp(0.077 * (m.temperature_C - 25.0));
        const double TN = std::exp(0.06 * (m.temperature_C - 25.0));
        const double a = fA * A / (m.ammoniaHalf_mgN_per_L + A);
        const double n = fN * N / (m.nitriteHalf_mgN_per_L + N);
        const double r1 = VA * a, r2 = VN * n;
        const double U = m.uptake_mgN_per_L_d * P;
        const double sA = A / (0.08 + A);
        const double uA = U * sA, uZ = U * (1.0 - sA) * Z / (0.5 + Z);
        const double lF = m.fastSoil_per_d * F, lG = m.slowSoil_per_d * G, lO = m.ammonification_per_d * TN * O;
        const double den = m.denitrification_per_d * Z;
        d[0] = lF + lG + lO + excretion - r1 - uA;
        d[1] = r1 - r2;
        d[2] = r2 - uZ - den;
        d[3] = VA * (m.ammoniaGrowth_per_d * a * (1.0 - VA / m.ceiling_mgN_per_L_d) - m.decay_per_d * TA);
        d[4] = VN * (m.nitriteGrowth_per_d * n * (1.0 - VN / m.ceiling_mgN_per_L_d) - m.decay_per_d * TN);
        d[5] = -lF;
        d[6] = -lG;
        d[7] = feed - lO;
        d[8] = (-2.0 * r1 + lO - uA + uZ + den) / 14.0 - m.soilBuffering_per_d * (K - 0.3);
        d[9] = m.plantGrowth_per_d * P * (1.0 - P);
    }
};

/// Runs one member through water changes and rate events; visit(day, state) at whole days, before that instant's
/// events.
template <typename Visit>
void run(const sim::Scenario& scenario, const sim::Member& member, double tolerance, Visit&& visit)
{
    namespace ode = boost::numeric::odeint;
    Tank tank{member, scenario.co2ShareOfDay, scenario.feed_mgN_per_L_d * member.efficiency,
              scenario.excretion_mgN_per_L_d * member.efficiency};
    Vector y{};
    std::copy_n(member.start.begin(), y.size(), y.begin());
    std::size_t event = 0;
    double t = scenario.startDay;
    const auto stepTo = [&](double end) {
        if (end > t) {
            auto stepper = ode::make_controlled(tolerance, tolerance, ode::runge_kutta_dopri5<Vector>());
            ode::integrate_adaptive(stepper, tank, y, t, end, std::min(0.01, end - t));
            t = end;
        }
    };
    const auto apply = [&](const sim::Event& e) {
        if (e.kind == sim::EventKind::WaterChange) {
            const double f = std::min(0.98, member.changeGain * e.amount);
            const sim::SourceLevels& s = member.sources[e.source];
            y[0] += f * (s.totalAmmonia_mgN_per_L - y[0]);
            y[1] += f * (0.0 - y[1]);
            y[2] += f * (s.nitrate_mgN_per_L - y[2]);
            y[8] += f * (s.alkalinity_meq_per_L - y[8]);
            y[7] *= 1.0 - f / 2.0;
        } else if (e.kind == sim::EventKind::AmmoniaDose) {
            y[0] += e.amount;
        } else if (e.kind == sim::EventKind::MatureMedia) {
            y[3] += e.amount * member.media_mgN_per_L_d;
            y[4] += e.amount * member.media_mgN_per_L_d * member.seedNitriteShare;
        } else if (e.kind == sim::EventKind::FeedRate) {
            tank.feed = e.amount * member.efficiency;
        }
    };
    for (double day = scenario.startDay; day <= scenario.endDay; day += 1.0) {
        while (event < scenario.events.size() && scenario.events[event].day < day) {
            stepTo(scenario.events[event].day);
            apply(scenario.events[event++]);
        }
        stepTo(day);
        visit(day, y);
    }
}

} // namespace littoral::forecast::reference
