// SPDX-License-Identifier: GPL-3.0-or-later
// The chemistry that modifies the rates, against published constants and against the formulas written out the slow way.
#include "core/sim/run.h"
#include "core/sim/tank_model.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::sim {
namespace {

double ammoniaShare(double pH, double temperature)
{
    return 1.0 / (1.0 + std::pow(10.0, ammoniumPKa(temperature) - pH));
}

TEST(WaterFactors, FreeAmmoniaShareFollowsEmerson)
{
    // K. Emerson et al. 1975, J. Fish. Res. Board Can. 32, 2379: shares at 25 and 20 C.
    EXPECT_NEAR(ammoniaShare(7.0, 25.0), 0.005639, 1e-6);
    EXPECT_NEAR(ammoniaShare(7.5, 25.0), 0.017616, 1e-6);
    EXPECT_NEAR(ammoniaShare(8.0, 25.0), 0.053662, 1e-6);
    EXPECT_NEAR(ammoniaShare(8.5, 25.0), 0.152052, 1e-6);
    EXPECT_NEAR(ammoniaShare(7.0, 20.0), 0.003942, 1e-6);
    EXPECT_NEAR(ammoniaShare(8.0, 20.0), 0.038071, 1e-6);
    EXPECT_NEAR(3.29 * ammoniaShare(7.6, 25.0), 0.072631, 2e-6);
    EXPECT_NEAR(3.29 * ammoniaShare(8.2, 25.0), 0.271296, 2e-6);
}

TEST(WaterFactors, AlkalinityAndCo2SetThePH)
{
    // 1 dKH = 0.35696 meq/L holds pH 6.5 with 11.1729 mg/L CO2 and pH 7.0 with 3.53318 (pK1 6.352). The model's pK1 of
    // 6.36 shifts pH by 0.008; charge balance adds the hydrogen ion itself, below 0.001 here.
    const auto pH = [](double k, double co2) { return 6.0 - std::log10(hydrogen_umol_per_L(k, co2)); };
    EXPECT_NEAR(pH(0.35696, 11.1729), 6.5, 0.01);
    EXPECT_NEAR(pH(0.35696, 3.53318), 7.0, 0.01);
    // No alkalinity: H = sqrt(K1 CO2), about pH 5.2 in equilibrium with 4 mg/L.
    EXPECT_NEAR(pH(0.0, 4.0), 0.5 * (6.36 - std::log10(4.0 / 44009.5)), 1e-9);
    // Negative alkalinity is strong acid: H nearly equals it.
    EXPECT_NEAR(hydrogen_umol_per_L(-1.0, 4.0), 1000.0, 0.1);
    EXPECT_NEAR(freeShare(0.35696, 3.53318, 25.0), ammoniaShare(7.008, 25.0), 2e-5);
}

/// The factors as one would write them on paper, with pH as a logarithm.
struct Slow
{
    double ammonia;
    double nitrite;
};

Slow slowFactors(const Member& m, double tan, double nitrite, double k, double co2)
{
    const double c = co2 / 44009.5;
    const double k1 = std::pow(10.0, -6.36);
    const double h = 0.5 * (-k / 1000.0 + std::sqrt(k * k / 1e6 + 4.0 * k1 * c));
    const double pH = -std::log10(h);
    const double free = tan / (1.0 + std::pow(10.0, ammoniumPKa(m.temperature_C) - pH));
    const double nitrous = nitrite / (1.0 + std::pow(10.0, pH - 3.3));
    const double bell = std::pow(10.0, pH - 9.4);
    const double positive = std::max(k, 0.0);
    const double ammonia =
        std::exp(0.077 * (m.temperature_C - 25.0)) * positive / (0.1 + positive) /
        ((1.0 + std::pow(10.0, m.lowHalf_pH - pH) + bell) * (1.0 + free / 15.0) * (1.0 + nitrous / 0.35));
    const double oxidised =
        std::exp(0.06 * (m.temperature_C - 25.0)) /
        ((1.0 + std::pow(10.0, m.lowHalf_pH - 0.3 - pH) + bell) * (1.0 + free / 0.8) * (1.0 + nitrous / 0.35));
    return {ammonia, oxidised};
}

TEST(WaterFactors, OneDivisionFormEqualsTheWrittenOutForm)
{
    Member m;
    m.lowHalf_pH = 6.35;
    m.co2Off_mg_per_L = 3.5;
    m.co2On_mg_per_L = 28.0;
    for (const double temperature : {19.0, 25.0, 29.0}) {
        m.temperature_C = temperature;
        for (const double share : {0.0, 0.35}) {
            const Coefficients<double> c = coefficientsOf(m, share);
            for (const double k : {-0.2, 0.0, 0.05, 0.4, 1.5, 4.0}) {
                for (const double tan : {0.0, 0.3, 5.0}) {
                    for (const double nitrite : {0.0, 0.4, 8.0}) {
                        const Slow off = slowFactors(m, tan, nitrite, k, m.co2Off_mg_per_L);
                        const Slow on = slowFactors(m, tan, nitrite, k, m.co2On_mg_per_L);
                        const auto both = WaterFactors<true>::of(c, tan, nitrite, k);
                        const double ammonia = share * on.ammonia + (1.0 - share) * off.ammonia;
                        const double oxidised = share * on.nitrite + (1.0 - share) * off.nitrite;
                        EXPECT_NEAR(both.ammonia.over / both.ammonia.under, ammonia, 1e-9 * ammonia);
                        EXPECT_NEAR(both.nitrite.over / both.nitrite.under, oxidised, 1e-9 * oxidised);
                        const auto single = WaterFactors<false>::of(c, tan, nitrite, k);
                        EXPECT_NEAR(single.ammonia.over / single.ammonia.under, off.ammonia, 1e-9 * off.ammonia);
                    }
                }
            }
        }
    }
}

TEST(WaterFactors, TemperatureFactorsLieNearArrhenius)
{
    // Activation energies 68 and 44 kJ/mol (S. Vannecke and E. Volcke) give 0.626/0.739 at 20 C and 1.314/1.193 at 28
    // C; the model's rounded exponents may differ by 10 %.
    Member m;
    m.temperature_C = 20.0;
    EXPECT_NEAR(coefficientsOf(m, 0.0).ammoniaTemperature, 0.626338, 0.1 * 0.626338);
    EXPECT_NEAR(coefficientsOf(m, 0.0).nitriteTemperature, 0.738794, 0.1 * 0.738794);
    m.temperature_C = 28.0;
    EXPECT_NEAR(coefficientsOf(m, 0.0).ammoniaTemperature, 1.314244, 0.1 * 1.314244);
    EXPECT_NEAR(coefficientsOf(m, 0.0).nitriteTemperature, 1.193412, 0.1 * 1.193412);
}

TEST(WaterFactors, NitrificationEatsItsAlkalinity)
{
    // 3 mg N/L fully nitrified costs 21.42 mg/L as CaCO3, 7.14 per mg N (US EPA nitrogen-control manual, as quoted in
    // the aquaculture literature). 50.04 mg CaCO3 per meq; 7.14 is itself rounded.
    Member m;
    m.start[kTotalAmmonia] = 3.0;
    m.start[kAmmoniaCapacity] = m.start[kNitriteCapacity] = 2.0;
    m.start[kAlkalinity] = 2.0;
    std::array<Member, kLanes> members;
    members.fill(m);
    Scenario scenario;
    scenario.endDay = 20.0;
    PackTrace trace;
    runToStops(scenario, members, tankControl(1e-8), trace);
    EXPECT_NEAR(trace.end[kNitrate][0], 3.0, 1e-5);
    EXPECT_NEAR((2.0 - trace.end[kAlkalinity][0]) * 50.04, 21.42, 0.05);
}

} // namespace
} // namespace littoral::sim
