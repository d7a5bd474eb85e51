// SPDX-License-Identifier: GPL-3.0-or-later
// Reference runs and closed forms of two-step nitrification with every environmental factor one. The two tables were
// computed beforehand with a fixed-step fourth-order Runge-Kutta method at two step lengths (agreeing to 1e-12) and
// with a separately written adaptive method; they are independent of the code under test.
#include "core/sim/integrator.h"
#include "core/sim/tank_model.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <vector>

namespace littoral::sim {
namespace {

using Model = TankModel<double, UnitFactors>;

StepControl<kStateCount> tight()
{
    StepControl<kStateCount> control;
    for (auto& component : control.components) {
        component = {1e-12, 1e-10, false};
    }
    control.components[kAlkalinity].mayBeNegative = true;
    control.firstStep = 0.001;
    control.longestStep = 1.0;
    control.maxSteps = 1000000;
    return control;
}

/// Growth 0.8 and 0.7 /d, decay 0.1 /d, half-saturation 0.5 and 0.3 mg N/L; nothing else happens.
Coefficients<double> plain()
{
    Coefficients<double> c;
    c.ammoniaGrowth = 0.8;
    c.nitriteGrowth = 0.7;
    c.decayAmmonia = 0.1;
    c.decayNitrite = 0.1;
    c.ammoniaHalf = 0.5;
    c.nitriteHalf = 0.3;
    return c;
}

/// Integrates through the given days and keeps the state at each.
std::vector<State<double>> statesAt(const Coefficients<double>& c, State<double> y, const std::vector<double>& days)
{
    const Model model(c);
    DormandPrince<double, kStateCount> integrator(tight());
    std::vector<State<double>> states;
    double t = 0.0;
    for (const double day : days) {
        EXPECT_TRUE(integrator.advance(model, t, y, day, NoObserver{}));
        states.push_back(y);
    }
    return states;
}

struct GoldenRow
{
    double day, ammonia, nitrite, nitrate, capacityA, capacityN;
};

void expectRow(const GoldenRow& row, const State<double>& y)
{
    // The table has seven decimals; the runs behind it agreed to 1e-7.
    const double tolerance = 1.5e-7;
    EXPECT_NEAR(y[kTotalAmmonia], row.ammonia, tolerance) << "day " << row.day;
    EXPECT_NEAR(y[kNitrite], row.nitrite, tolerance) << "day " << row.day;
    EXPECT_NEAR(y[kNitrate], row.nitrate, tolerance) << "day " << row.day;
    EXPECT_NEAR(y[kAmmoniaCapacity], row.capacityA, tolerance) << "day " << row.day;
    EXPECT_NEAR(y[kNitriteCapacity], row.capacityN, tolerance) << "day " << row.day;
}

TEST(GoldenRun, BatchWithoutLoad)
{
    const std::vector<GoldenRow> table{
        {5, 2.9741266, 0.0257894, 0.0000841, 0.0186783, 0.0006584},
        {10, 2.5035700, 0.4950879, 0.0013420, 0.3394563, 0.0011621},
        {12, 1.5145607, 1.4814330, 0.0040063, 1.0066331, 0.0026728},
        {14, 0.0621106, 2.9256491, 0.0122403, 1.8636500, 0.0075082},
        {18, 0.0000002, 2.8921134, 0.1078863, 1.2835411, 0.0639192},
        {21, 0.0000000, 2.4672666, 0.5327334, 0.9508708, 0.3140611},
        {24, 0.0000000, 0.6584582, 2.3415418, 0.7044224, 1.3597172},
        {28, 0.0000000, 0.0000000, 3.0000000, 0.4721885, 1.2338357},
    };
    State<double> start{};
    start[kTotalAmmonia] = 3.0;
    start[kAmmoniaCapacity] = start[kNitriteCapacity] = 1e-3;
    std::vector<double> days;
    for (const auto& row : table) {
        days.push_back(row.day);
    }
    const auto states = statesAt(plain(), start, days);
    for (std::size_t i = 0; i < table.size(); ++i) {
        expectRow(table[i], states[i]);
    }
}

TEST(GoldenRun, ConstantLoadWithWeeklyChanges)
{
    const std::vector<GoldenRow> table{
        {7, 2.0790649, 0.0208689, 2.0000662, 0.0148554, 0.0005363},
        {14, 2.5336197, 1.0342950, 2.0020853, 0.7099444, 0.0014852},
        {21, 0.0728459, 4.4282014, 2.0979528, 2.3603162, 0.0586012},
        {28, 0.0724339, 1.0538233, 6.1930428, 2.3716833, 2.4794118},
        {35, 0.0722335, 0.0402623, 7.7110141, 2.3772622, 2.5293707},
        {56, 0.0720641, 0.0492126, 8.4751872, 2.3820053, 2.1287165},
    };
    Coefficients<double> c = plain();
    c.excretion = 0.3;
    const Model model(c);
    DormandPrince<double, kStateCount> integrator(tight());
    State<double> y{};
    y[kNitrate] = 2.0;
    y[kAmmoniaCapacity] = y[kNitriteCapacity] = 1e-3;
    double t = 0.0;
    std::size_t next = 0;
    double taken = 0.0;
    for (int week = 1; week <= 8; ++week) {
        ASSERT_TRUE(integrator.advance(model, t, y, 7.0 * week, NoObserver{}));
        if (table[next].day == 7.0 * week) {
            expectRow(table[next++], y);
        }
        taken += 0.3 * (y[kTotalAmmonia] + y[kNitrite] + y[kNitrate]);
        y[kTotalAmmonia] *= 0.7;
        y[kNitrite] *= 0.7;
        y[kNitrate] += 0.3 * (2.0 - y[kNitrate]);
        integrator.restart(true);
    }
    EXPECT_EQ(next, table.size());
    // Nitrogen in the water after the last change equals what came in less what the changes took.
    const double total = y[kTotalAmmonia] + y[kNitrite] + y[kNitrate];
    EXPECT_NEAR(total, 6.6175248, 1e-7);
    EXPECT_NEAR(total, 2.0 + 0.3 * 56.0 + 8 * 0.3 * 2.0 - taken, 1e-9);
}

TEST(ClosedForm, AttachedFilterUnderConstantLoadLeavesAResidual)
{
    // Steady state of growth = decay: S = K b / (mu - b), capacity = load mu / b.
    Coefficients<double> c = plain();
    c.excretion = 0.3;
    State<double> start{};
    start[kAmmoniaCapacity] = start[kNitriteCapacity] = 0.5;
    const auto y = statesAt(c, start, {400.0}).front();
    EXPECT_NEAR(y[kTotalAmmonia], 0.0714286, 1e-6);
    EXPECT_NEAR(y[kNitrite], 0.0500000, 1e-6);
    EXPECT_NEAR(y[kAmmoniaCapacity], 2.40000, 1e-5);
    EXPECT_NEAR(y[kNitriteCapacity], 2.10000, 1e-5);
}

TEST(ClosedForm, SaturatedGrowthIsExponential)
{
    Coefficients<double> c = plain();
    State<double> start{};
    start[kTotalAmmonia] = 1e9; // far above half-saturation
    start[kAmmoniaCapacity] = 1e-4;
    const auto states = statesAt(c, start, {0.9902103, 14.0});
    EXPECT_NEAR(states[0][kAmmoniaCapacity], 2e-4, 1e-10);
    EXPECT_NEAR(states[1][kAmmoniaCapacity], 1.8033745, 2e-7);
}

TEST(ClosedForm, ZeroOrderBatchIsUsedUpOnTime)
{
    // K -> 0: S = S0 - A0 (e^(g t) - 1) / g, gone at ln(1 + S0 g / A0) / g.
    const double s0 = 3.2897880;
    const double g = 0.7;
    const std::array<double, 4> capacity{1e-4, 3e-4, 1e-3, 0.24};
    const std::array<double, 4> gone{14.349331, 12.780009, 11.060482, 3.3720035};
    for (std::size_t i = 0; i < capacity.size(); ++i) {
        EXPECT_NEAR(std::log(1.0 + s0 * g / capacity[i]) / g, gone[i], 2e-6);
        Coefficients<double> c = plain();
        c.ammoniaHalf = 1e-7;
        State<double> start{};
        start[kTotalAmmonia] = s0;
        start[kAmmoniaCapacity] = capacity[i];
        const double t = gone[i] - 0.2;
        const auto states = statesAt(c, start, {t, gone[i] + 0.01});
        EXPECT_NEAR(states[0][kTotalAmmonia], s0 - capacity[i] * std::expm1(g * t) / g, 2e-6);
        EXPECT_LT(states[1][kTotalAmmonia], 1e-4);
    }
}

TEST(ClosedForm, BatchMonodWithConstantCapacity)
{
    // S = K W((S0/K) exp((S0 - A t)/K)), Lambert's W; check values computed beforehand.
    Coefficients<double> c;
    c.ammoniaHalf = 0.5;
    c.nitriteHalf = 0.3;
    State<double> start{};
    start[kTotalAmmonia] = 3.0;
    start[kAmmoniaCapacity] = 2.0;
    const auto states = statesAt(c, start, {0.5, 1.0, 1.5, 2.0, 2.3002993});
    const std::array<double, 5> expected{2.1634533, 1.3860700, 0.7162024, 0.2474929, 0.1};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(states[i][kTotalAmmonia], expected[i], 1e-7);
    }
}

TEST(ClosedForm, SequentialFirstOrderSteps)
{
    // H. Bateman's equations with k1 = 0.5, k2 = 0.2: half-saturation far above the concentrations makes rates linear.
    Coefficients<double> c;
    c.ammoniaHalf = c.nitriteHalf = 1e9;
    State<double> start{};
    start[kTotalAmmonia] = 3.0;
    start[kAmmoniaCapacity] = 0.5e9;
    start[kNitriteCapacity] = 0.2e9;
    const auto states = statesAt(c, start, {2.0, 3.0543024, 7.0});
    EXPECT_NEAR(states[0][kNitrite], 1.5122030, 1e-6);
    EXPECT_NEAR(states[1][kTotalAmmonia], 0.6514602, 1e-6);
    EXPECT_NEAR(states[1][kNitrite], 1.6286506, 1e-6);
    EXPECT_NEAR(states[1][kNitrate], 0.7198892, 1e-6);
    EXPECT_NEAR(states[2][kNitrite], 1.0819979, 1e-6);
}

TEST(Integrator, KnowsNothingOfTanks)
{
    // A chemostat: D = 0.2, feed 10, yield 0.15, mu 0.8, b 0.1, K 0.5 settles at S = K (b + D) / (mu - b - D) = 0.3 and
    // X = Y D (feed - S) / (D + b) = 0.97.
    const auto rates = [](const std::array<double, 2>& y, std::array<double, 2>& rate) {
        const double growth = 0.8 * y[0] / (0.5 + y[0]);
        rate[0] = 0.2 * (10.0 - y[0]) - growth * y[1] / 0.15;
        rate[1] = (growth - 0.1 - 0.2) * y[1];
    };
    StepControl<2> control;
    control.components = {ComponentControl{1e-12, 1e-10, false}, ComponentControl{1e-12, 1e-10, false}};
    control.maxSteps = 100000;
    DormandPrince<double, 2> integrator(control);
    std::array<double, 2> y{10.0, 0.01};
    double t = 0.0;
    ASSERT_TRUE(integrator.advance(rates, t, y, 300.0, NoObserver{}));
    EXPECT_EQ(t, 300.0);
    EXPECT_NEAR(y[0], 0.300000, 1e-8);
    EXPECT_NEAR(y[1], 0.970000, 1e-8);
}

TEST(Integrator, InterpolantIsOfFourthOrder)
{
    // y' = -y from 1: the interpolant in mid-step must follow exp(-t) about as well as the step's ends.
    const auto rates = [](const std::array<double, 1>& y, std::array<double, 1>& rate) { rate[0] = -y[0]; };
    StepControl<1> control;
    control.components = {ComponentControl{1e-8, 1e-8, false}};
    DormandPrince<double, 1> integrator(control);
    std::array<double, 1> y{1.0};
    double t = 0.0;
    double worst = 0.0;
    int steps = 0;
    ASSERT_TRUE(integrator.advance(rates, t, y, 5.0, [&](const DenseStep<double, 1>& step) {
        for (const double theta : {0.0, 0.25, 0.5, 0.75, 1.0}) {
            const double day = step.start + theta * step.length;
            worst = std::max(worst, std::fabs(step.curve(0).at(theta) - std::exp(-day)));
        }
        ++steps;
    }));
    EXPECT_LT(worst, 2e-7);
    EXPECT_LT(steps, 100);
}

TEST(Integrator, GivesUpRatherThanCrawl)
{
    const auto explodes = [](const std::array<double, 1>& y, std::array<double, 1>& rate) { rate[0] = y[0] * y[0]; };
    StepControl<1> control;
    control.components = {ComponentControl{1e-9, 1e-9, false}};
    control.maxSteps = 2000;
    DormandPrince<double, 1> integrator(control);
    std::array<double, 1> y{1.0};
    double t = 0.0;
    EXPECT_FALSE(integrator.advance(explodes, t, y, 2.0, NoObserver{})); // 1 / (1 - t) has no value at 2
}

TEST(Integrator, ToleratesAnInheritedNegative)
{
    // A tiny negative that was there before must not be refused for ever; a new one must not appear.
    const auto rates = [](const std::array<double, 2>& y, std::array<double, 2>& rate) {
        rate[0] = 0.0 * y[0];
        rate[1] = -50.0 * std::max(y[1], 0.0);
    };
    StepControl<2> control;
    control.components = {ComponentControl{1e-3, 1e-3, false}, ComponentControl{1e-3, 1e-3, false}};
    DormandPrince<double, 2> integrator(control);
    std::array<double, 2> y{-1e-9, 1.0};
    double t = 0.0;
    ASSERT_TRUE(integrator.advance(rates, t, y, 10.0, NoObserver{}));
    EXPECT_EQ(y[0], -1e-9);
    EXPECT_GE(y[1], -1e-13);
}

} // namespace
} // namespace littoral::sim
