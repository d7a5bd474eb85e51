// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sim/pack.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace littoral::sim {

/// Error control of one component: tolerated error per step = absolute + relative * |y|. relative < 0: not controlled.
/// mayBeNegative: outside the positivity rule.
struct ComponentControl
{
    double absolute = 1e-6;
    double relative = 1e-6;
    bool mayBeNegative = false;
};

template <std::size_t N> struct StepControl
{
    std::array<ComponentControl, N> components{};
    double firstStep = 0.1;   ///< also the longest first step after an event, days
    double longestStep = 3.0; ///< days
    int maxSteps = 4000;      ///< tried steps per run; a run that needs more has failed
};

/// One accepted step as a polynomial: the fourth-order interpolant of E. Hairer, S. Norsett and G. Wanner, Solving
/// Ordinary Differential Equations I (2nd ed., 1993), II.6, that comes free with the Dormand-Prince pair.
template <typename Real, std::size_t N> struct DenseStep
{
    double start = 0.0;
    double length = 0.0;
    double end = 0.0; ///< start + length, but exactly the day asked for where that was the aim
    const std::array<Real, N>* from = nullptr;
    const std::array<Real, N>* to = nullptr;
    const std::array<std::array<Real, N>, 7>* slopes = nullptr;

    struct Curve
    {
        Real r0, r1, r2, r3, r4;
        LITTORAL_INLINE Real at(double theta) const
        {
            const double rest = 1.0 - theta;
            return r0 + theta * (r1 + rest * (r2 + theta * (r3 + rest * r4)));
        }
    };

    /// The polynomial of one component; theta = (day - start) / length.
    LITTORAL_INLINE Curve curve(std::size_t i) const
    {
        const auto& k = *slopes;
        const Real rise = (*to)[i] - (*from)[i];
        const Real bend = length * k[0][i] - rise;
        const Real last =
            length * ((-12715105075.0 / 11282082432.0) * k[0][i] + (87487479700.0 / 32700410799.0) * k[2][i] -
                      (10690763975.0 / 1880347072.0) * k[3][i] + (701980252875.0 / 199316789632.0) * k[4][i] -
                      (1453857185.0 / 822651844.0) * k[5][i] + (69997945.0 / 29380423.0) * k[6][i]);
        return {(*from)[i], rise, bend, rise - length * k[6][i] - bend, last};
    }
};

/// Does nothing with the steps it is shown.
struct NoObserver
{
    template <typename Step> LITTORAL_INLINE void operator()(const Step&) {}
};

/// Adaptive explicit Runge-Kutta 5(4) of J. Dormand and P. Prince (J. Comput. Appl. Math. 6, 1980), with the last slope
/// of a step reused as the first of the next. Real = Pack advances several systems in lockstep, the most demanding lane
/// setting the step. A step that takes a component below -1e-13 is tried again at half the length, unless that
/// component was no less negative before (otherwise a tiny inherited negative would be refused for ever).
template <typename Real, std::size_t N> class DormandPrince final
{
public:
    using Vector = std::array<Real, N>;

    explicit DormandPrince(const StepControl<N>& control)
        : m_control(control)
        , m_next(control.firstStep)
    {
    }

    /// Call after the rates changed other than by integration; jumped: the state, too, so that what the last steps told
    /// about the next one's length no longer holds.
    LITTORAL_INLINE void restart(bool jumped)
    {
        m_haveSlope = false;
        if (jumped) {
            m_next = std::min(m_next, m_control.firstStep);
        }
    }

    [[nodiscard]] int steps() const { return m_steps; }

    /// Integrates y from t to exactly `end`. observer(DenseStep) sees every accepted step. False: the step cap was
    /// reached or the values stopped being finite; y is then not meaningful.
    template <typename Rates, typename Observer>
    LITTORAL_INLINE bool advance(const Rates& rates, double& t, Vector& y, double end, Observer&& observer)
    {
        while (t < end) {
            if (!m_haveSlope) {
                rates(y, m_slopes[0]);
                m_haveSlope = true;
            }
            if (++m_steps > m_control.maxSteps) {
                return false;
            }
            const double left = end - t;
            // Stretch or split the last step rather than leave a sliver.
            const bool last = left <= m_next * 1.01;
            const double h = last ? left : (left < 1.8 * m_next ? 0.5 * left : m_next);
            attempt(rates, y, h);
            const double error = errorOf(y, h);
            if (!(error <= 1.0)) {
                m_next = h * (std::isfinite(error) ? std::max(0.2, 0.9 * std::pow(error, -0.2)) : 0.2);
                if (!(m_next > 1e-10)) {
                    return false;
                }
                continue;
            }
            if (turnsNegative(y)) {
                m_next = 0.5 * h;
                if (!(m_next > 1e-10)) {
                    return false;
                }
                continue;
            }
            const double reached = last ? end : t + h;
            observer(DenseStep<Real, N>{t, h, reached, &y, &m_trial, &m_slopes});
            const double grown = h * std::clamp(0.9 * std::pow(std::max(error, 1e-8), -0.2), 0.2, 5.0);
            // A step cut short by the end of the stretch says little about how long the next may be.
            m_next = std::min(last && grown < m_next ? std::max(grown, std::min(m_next, 5.0 * h)) : grown,
                              m_control.longestStep);
            y = m_trial;
            m_slopes[0] = m_slopes[6];
            t = reached;
        }
        return true;
    }

private:
    template <typename Rates> LITTORAL_INLINE void attempt(const Rates& rates, const Vector& y, double h)
    {
        auto& k = m_slopes;
        for (std::size_t i = 0; i < N; ++i) {
            m_trial[i] = y[i] + (h * (1.0 / 5.0)) * k[0][i];
        }
        rates(m_trial, k[1]);
        for (std::size_t i = 0; i < N; ++i) {
            m_trial[i] = y[i] + h * ((3.0 / 40.0) * k[0][i] + (9.0 / 40.0) * k[1][i]);
        }
        rates(m_trial, k[2]);
        for (std::size_t i = 0; i < N; ++i) {
            m_trial[i] = y[i] + h * ((44.0 / 45.0) * k[0][i] - (56.0 / 15.0) * k[1][i] + (32.0 / 9.0) * k[2][i]);
        }
        rates(m_trial, k[3]);
        for (std::size_t i = 0; i < N; ++i) {
            m_trial[i] = y[i] + h * ((19372.0 / 6561.0) * k[0][i] - (25360.0 / 2187.0) * k[1][i] +
                                     (64448.0 / 6561.0) * k[2][i] - (212.0 / 729.0) * k[3][i]);
        }
        rates(m_trial, k[4]);
        for (std::size_t i = 0; i < N; ++i) {
            m_trial[i] =
                y[i] + h * ((9017.0 / 3168.0) * k[0][i] - (355.0 / 33.0) * k[1][i] + (46732.0 / 5247.0) * k[2][i] +
                            (49.0 / 176.0) * k[3][i] - (5103.0 / 18656.0) * k[4][i]);
        }
        rates(m_trial, k[5]);
        for (std::size_t i = 0; i < N; ++i) {
            m_trial[i] = y[i] + h * ((35.0 / 384.0) * k[0][i] + (500.0 / 1113.0) * k[2][i] + (125.0 / 192.0) * k[3][i] -
                                     (2187.0 / 6784.0) * k[4][i] + (11.0 / 84.0) * k[5][i]);
        }
        rates(m_trial, k[6]);
    }

    /// Root mean square over the controlled components of error over tolerance, of the worst lane.
    LITTORAL_INLINE double errorOf(const Vector& y, double h) const
    {
        const auto& k = m_slopes;
        Real sum{};
        double counted = 0.0;
        for (std::size_t i = 0; i < N; ++i) {
            const ComponentControl& control = m_control.components[i];
            if (control.relative < 0.0) {
                continue;
            }
            const Real e = h * ((71.0 / 57600.0) * k[0][i] - (71.0 / 16695.0) * k[2][i] + (71.0 / 1920.0) * k[3][i] -
                                (17253.0 / 339200.0) * k[4][i] + (22.0 / 525.0) * k[5][i] - (1.0 / 40.0) * k[6][i]);
            const Real tolerated = control.absolute + control.relative * larger(magnitude(y[i]), magnitude(m_trial[i]));
            const Real scaled = e / tolerated;
            sum += scaled * scaled;
            counted += 1.0;
        }
        return std::sqrt(largestLane(sum) / counted);
    }

    LITTORAL_INLINE bool turnsNegative(const Vector& y) const
    {
        Real worst{};
        for (std::size_t i = 0; i < N; ++i) {
            if (!m_control.components[i].mayBeNegative) {
                // Above zero when the trial lies below both the limit and where it came from.
                const Real was = positive(-y[i]);
                const Real allowed = was + positive(1e-13 - was);
                worst += positive(-m_trial[i] - allowed);
            }
        }
        return largestLane(worst) > 0.0;
    }

    StepControl<N> m_control;
    std::array<Vector, 7> m_slopes{};
    Vector m_trial{};
    double m_next;
    int m_steps = 0;
    bool m_haveSlope = false;
};

} // namespace littoral::sim
