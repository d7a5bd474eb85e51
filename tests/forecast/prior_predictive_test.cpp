// SPDX-License-Identifier: GPL-3.0-or-later
// What the prior says before any reading, guarded row by row. The expected numbers come from the study in which the
// prior was chosen (its own code). The study states 24 C and the schedule but not every detail of plants and water;
// those below were found by trying a few plausible ones, so a row guards against accidents and is no proof. 1200 draws:
// a quantile carries about 1 d (middle) to 3 d (tails) of sampling noise, and concentrations about 6 % (middle) to 10 %
// (tails).
#include "core/forecast/priors.h"
#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace littoral::forecast {
namespace {

constexpr std::size_t kDraws = 1200;
constexpr double kPpmAmmonia = 1.21588;
constexpr double kPpmNitrite = 3.28454;

struct Predictive
{
    std::vector<double> peakAmmoniaWeek1, ammonia7, ammonia14, nitrite7, nitrite14; // ppm
    std::vector<double> peakAmmonia, peakNitrite;                                   // ppm
    std::vector<double> nitriteFirst, nitritePeakDay, ammoniaGone, complete;        // days
    double notComplete = 0.0;                                                       // by day 57
};

void fileLane(const sim::PackTrace& trace, std::size_t lane, const DoseDays& doses, Predictive& out)
{
    double week = 0.0, peakA = 0.0, peakN = 0.0, peakDay = 0.0;
    double first = kNotByLast, gone = kNotByLast;
    for (std::size_t i = 0; i < trace.samples.size(); ++i) {
        const double day = static_cast<double>(i) / 4.0;
        const double a = trace.samples[i].totalAmmonia[lane] * kPpmAmmonia;
        const double n = trace.samples[i].nitrite[lane] * kPpmNitrite;
        week = day <= 7.0 ? std::max(week, a) : week;
        peakA = std::max(peakA, a);
        if (n > 0.25 && first == kNotByLast) {
            first = day;
        }
        if (n > peakN && day <= 57.0) {
            peakN = n;
            peakDay = day;
        }
        if (day > 0.0 && a < 0.5 && gone == kNotByLast) {
            gone = day;
        }
    }
    out.peakAmmoniaWeek1.push_back(week);
    out.peakAmmonia.push_back(peakA);
    out.peakNitrite.push_back(peakN);
    out.nitriteFirst.push_back(first);
    out.nitritePeakDay.push_back(peakDay);
    out.ammoniaGone.push_back(gone);
    out.ammonia7.push_back(trace.samples[28].totalAmmonia[lane] * kPpmAmmonia);
    out.ammonia14.push_back(trace.samples[56].totalAmmonia[lane] * kPpmAmmonia);
    out.nitrite7.push_back(trace.samples[28].nitrite[lane] * kPpmNitrite);
    out.nitrite14.push_back(trace.samples[56].nitrite[lane] * kPpmNitrite);
    std::vector<double> meanA, meanN;
    for (std::size_t i = 0; i < trace.meanAmmonia.size(); ++i) {
        meanA.push_back(trace.meanAmmonia[i][lane]);
        meanN.push_back(trace.meanNitrite[i][lane]);
    }
    out.complete.push_back(completionDay(meanA, meanN, 0.0, doses, 57.0));
}

Predictive predict(const TankCase& tank)
{
    const Prior prior(tank);
    Random random(2024);
    const Rows z = priorDraws(prior, kDraws, random);
    sim::Scenario scenario = scenarioOf(tank, 60.0, false);
    for (int i = 0; i <= 240; ++i) {
        scenario.samples.push_back(i / 4.0);
    }
    const DoseDays doses(tank.events);
    sim::PackTrace trace;
    Predictive out;
    std::array<sim::Member, sim::kLanes> members;
    for (std::size_t first = 0; first < kDraws; first += sim::kLanes) {
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            members[lane] = prior.member(z.row(first + lane));
        }
        sim::runRecorded(scenario, members, sim::tankControl(1e-4), trace);
        for (std::size_t lane = 0; lane < sim::kLanes; ++lane) {
            EXPECT_FALSE(trace.failed[lane]);
            fileLane(trace, lane, doses, out);
        }
    }
    const auto never = std::count(out.complete.begin(), out.complete.end(), kNotByLast);
    out.notComplete = static_cast<double>(never) / static_cast<double>(kDraws);
    return out;
}

void expectRow(std::vector<double> values, double q10, double q50, double q90, double relative, double days,
               const char* what)
{
    const Band band = bandOf(values);
    const auto near = [&](double got, double wanted, double slack, const char* which) {
        EXPECT_NEAR(got, wanted, slack * (relative * wanted + days)) << what << " " << which;
    };
    near(band[1], q10, 1.0, "q10");
    near(band[3], q50, 1.0, "q50");
    if (std::isfinite(q90)) {
        near(band[5], q90, 1.5, "q90");
    }
}

TEST(PriorPredictive, RichSoilUnseeded)
{
    // A planted tank with CO2 in soft water; every other day for three weeks, then weekly.
    TankCase tank;
    tank.setup.co2.injected = true;
    tank.setup.sources[0].alkalinity_meq_per_L = 1.0;
    cases::addChanges(tank, 2.0, 2.0, 0.5, 23.0);
    cases::addChanges(tank, 29.0, 7.0, 0.5);
    const Predictive p = predict(tank);
    expectRow(p.peakAmmoniaWeek1, 0.9, 2.3, 6.4, 0.12, 0.0, "ammonia peak in week 1, ppm");
    expectRow(p.nitriteFirst, 5.0, 13.0, kNotByLast, 0.15, 1.5, "nitrite above 0.25 ppm, day");
    expectRow(p.nitritePeakDay, 9.0, 17.0, 35.0, 0.10, 1.5, "nitrite peak, day");
    expectRow(p.complete, 12.0, 27.0, 50.0, 0.10, 1.5, "complete, day");
    EXPECT_NEAR(p.notComplete, 0.05, 0.04); // water and plants as found, see above
}

TEST(PriorPredictive, RichSoilWithAWholeMatureFilter)
{
    TankCase tank = cases::richSoil(0.0);
    tank.events.push_back({0.0, EventKind::MatureMedia, 1.0, 0});
    Predictive p = predict(tank);
    EXPECT_NEAR(bandOf(p.ammonia7)[3], 0.12, 0.05);
    EXPECT_NEAR(bandOf(p.ammonia14)[3], 0.04, 0.02);
    const Band complete = bandOf(p.complete);
    EXPECT_EQ(complete[1], 0.0);
    EXPECT_NEAR(complete[3], 6.0, 1.5);
    EXPECT_NEAR(complete[5], 14.0, 3.0);
}

TEST(PriorPredictive, MildSoilWithAMatureFilterAndAnimals)
{
    TankCase tank;
    tank.setup.soil = SoilKind::Mild;
    tank.events = {{0.0, EventKind::MatureMedia, 1.0, 0},
                   {7.0, EventKind::LivestockRate, 0.03, 0},
                   {14.0, EventKind::LivestockRate, 0.1, 0}};
    cases::addChanges(tank, 7.0, 7.0, 0.5);
    Predictive p = predict(tank);
    for (auto* values : {&p.ammonia7, &p.ammonia14, &p.nitrite7, &p.nitrite14}) {
        EXPECT_LT(bandOf(*values)[3], 0.07);
    }
    EXPECT_NEAR(bandOf(p.peakAmmonia)[3], 0.2, 0.06);
    EXPECT_NEAR(bandOf(p.peakNitrite)[3], 0.2, 0.06);
}

TankCase dosed()
{
    TankCase tank;
    tank.setup.soil = SoilKind::Inert;
    tank.setup.plants = PlantDensity::None;
    tank.setup.sources[0].alkalinity_meq_per_L = 2.5;
    tank.events = {{0.0, EventKind::AmmoniaDose, 3.0 / kPpmAmmonia, 0}};
    return tank;
}

TEST(PriorPredictive, OneDoseWithoutSoil)
{
    const Predictive p = predict(dosed());
    expectRow(p.ammoniaGone, 10.0, 17.0, 28.0, 0.05, 1.0, "ammonia below 0.5 ppm, day");
    expectRow(p.nitritePeakDay, 10.0, 17.0, 30.0, 0.05, 1.0, "nitrite peak, day");
    expectRow(p.complete, 16.0, 27.0, 46.0, 0.05, 1.5, "complete, day");
}

TEST(PriorPredictive, WeeklyRepeatsPushTheNitritePeakBack)
{
    TankCase tank = dosed();
    for (double day = 7.0; day < 30.0; day += 7.0) {
        tank.events.push_back({day, EventKind::AmmoniaDose, 1.0 / kPpmAmmonia, 0});
    }
    const Predictive p = predict(tank);
    expectRow(p.nitritePeakDay, 11.0, 22.0, 32.0, 0.05, 1.5, "nitrite peak, day");
}

} // namespace
} // namespace littoral::forecast
