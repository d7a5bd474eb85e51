// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/priors.h"

#include "core/forecast/prior_table.h"
#include "tests/forecast/cases.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace littoral::forecast {
namespace {

sim::Member medianMember(const TankCase& tank)
{
    const Prior prior(tank);
    return prior.member(std::vector<double>(prior.dimension(), 0.0));
}

TEST(Prior, EverythingUncertainIsFree)
{
    TankCase tank = cases::richSoil(7.0);
    const Prior prior(tank);
    EXPECT_EQ(prior.dimension(), kUnknownFixedCount + 2 + 3);
    // 25 unknowns of a new tank (the twenty-sixth is an established tank's nitrate), source nitrate and ammonia, and a
    // gain per kit: each of them must change the member or what a kit shows.
    const std::vector<double> zero(prior.dimension(), 0.0);
    const auto view = [&](const std::vector<double>& z) {
        const sim::Member m = prior.member(z);
        std::vector<double> all(m.start.begin(), m.start.end());
        for (const double value : {m.ammoniaGrowth_per_d,
                                   m.nitriteGrowth_per_d,
                                   m.decay_per_d,
                                   m.ammoniaHalf_mgN_per_L,
                                   m.nitriteHalf_mgN_per_L,
                                   m.ceiling_mgN_per_L_d,
                                   m.fastSoil_per_d,
                                   m.uptake_mgN_per_L_d,
                                   m.plantGrowth_per_d,
                                   m.lowHalf_pH,
                                   m.soilBuffering_per_d,
                                   m.co2Off_mg_per_L,
                                   m.temperature_C,
                                   m.starter_mgN_per_L_d,
                                   m.media_mgN_per_L_d,
                                   m.squeezings_mgN_per_L_d,
                                   m.seedNitriteShare,
                                   m.efficiency,
                                   m.changeGain,
                                   m.sources[0].nitrate_mgN_per_L,
                                   m.sources[0].totalAmmonia_mgN_per_L,
                                   prior.shown(0, z, 1, 1, 1),
                                   prior.shown(1, z, 1, 1, 1),
                                   prior.shown(2, z, 1, 1, 1)}) {
            all.push_back(value);
        }
        return all;
    };
    for (std::size_t i = 0; i < prior.dimension(); ++i) {
        std::vector<double> z = zero;
        z[i] = 1.0;
        if (i == kUnknownStartNitrate) {
            EXPECT_EQ(view(z), view(zero));
        } else {
            EXPECT_NE(view(z), view(zero)) << "unknown " << i;
        }
    }
}

TEST(Prior, SoilScalesWithKindAndAmount)
{
    TankCase tank = cases::richSoil(7.0);
    tank.setup.soil_L_per_L = 0.17;
    const sim::Member rich = medianMember(tank);
    EXPECT_NEAR(rich.start[sim::kFastSoil], 7.0, 1e-12);
    EXPECT_NEAR(rich.start[sim::kSlowSoil], 4.0, 1e-12);
    tank.setup.soil_L_per_L = 0.34;
    EXPECT_NEAR(medianMember(tank).start[sim::kFastSoil], 14.0, 1e-12);
    tank.setup.soil = SoilKind::Mild;
    EXPECT_NEAR(medianMember(tank).start[sim::kFastSoil], 3.5, 1e-12);
    EXPECT_NEAR(medianMember(tank).soilBuffering_per_d, 0.03, 1e-12);
    tank.setup.soil = SoilKind::Inert;
    EXPECT_EQ(medianMember(tank).start[sim::kFastSoil], 0.0);
    EXPECT_EQ(medianMember(tank).soilBuffering_per_d, 0.0);
}

TEST(Prior, PlantsScaleWithDensityAboveAFloor)
{
    TankCase tank = cases::richSoil(7.0);
    tank.setup.plants = PlantDensity::Dense;
    EXPECT_NEAR(medianMember(tank).uptake_mgN_per_L_d, 0.35, 1e-12);
    EXPECT_NEAR(medianMember(tank).start[sim::kOrganic], 0.6, 1e-12);
    tank.setup.plants = PlantDensity::Sparse;
    EXPECT_NEAR(medianMember(tank).uptake_mgN_per_L_d, 0.0875, 1e-12);
    tank.setup.plants = PlantDensity::None;
    EXPECT_NEAR(medianMember(tank).uptake_mgN_per_L_d, 0.03, 1e-12);
    EXPECT_EQ(medianMember(tank).start[sim::kOrganic], 0.0);
}

TEST(Prior, SourceWaterFillsTheTank)
{
    TankCase tank = cases::richSoil(7.0);
    tank.setup.sources = {
        {2.0, Chloramine::Yes, 2.2}, {std::nullopt, Chloramine::No, 0.5}, {0.0, Chloramine::Unknown, 0.0}};
    const sim::Member m = medianMember(tank);
    EXPECT_NEAR(m.start[sim::kNitrate], 2.0, 1e-12);
    EXPECT_NEAR(m.start[sim::kTotalAmmonia], 0.4, 1e-12);
    EXPECT_EQ(m.start[sim::kAlkalinity], 2.2);
    EXPECT_NEAR(m.sources[1].nitrate_mgN_per_L, 1.4, 1e-12);
    EXPECT_NEAR(m.sources[1].totalAmmonia_mgN_per_L, 0.02, 1e-12);
    EXPECT_NEAR(m.sources[2].nitrate_mgN_per_L, 0.5 / 4.4268, 1e-6) << "a stated zero is below half a ppm";
}

TEST(Prior, NitrateCardsSeeNitrite)
{
    const TankCase tank = cases::richSoil(7.0);
    const Prior prior(tank);
    const std::vector<double> z(prior.dimension(), 0.0);
    EXPECT_NEAR(prior.shown(2, z, 0.0, 1.0, 2.0), 4.42680 * 2.35, 1e-9);
    EXPECT_NEAR(prior.shown(1, z, 0.0, 1.0, 2.0), 3.28454, 1e-9);
    EXPECT_NEAR(prior.shown(0, z, 1.0, 1.0, 2.0), 1.21588, 1e-9);
}

TEST(Prior, SettledTankCarriesItsLoad)
{
    TankCase tank = cases::settled();
    const sim::Member m = medianMember(tank);
    EXPECT_NEAR(m.start[sim::kAmmoniaCapacity], 1.2, 1e-9) << "three times 0.25 is less than a mature filter";
    EXPECT_LT(m.start[sim::kFastSoil], 1e-9);
    EXPECT_NEAR(m.start[sim::kSlowSoil], 4.0 * std::exp(-0.012 * 370.0), 1e-9);
    EXPECT_GT(m.start[sim::kPlants], 0.99);
    tank.events[0].amount = 0.9;
    EXPECT_NEAR(medianMember(tank).start[sim::kAmmoniaCapacity], 2.7, 1e-9);
    // Nitrate where income, uptake and changes balance: more food, more nitrate.
    EXPECT_GT(medianMember(tank).start[sim::kNitrate], m.start[sim::kNitrate]);
    EXPECT_GT(m.start[sim::kNitrate], 1.0);
}

TEST(Prior, RatesInForceAtTheStart)
{
    TankCase tank;
    tank.setup.startDay = 50.0;
    tank.events = {{30, EventKind::FeedRate, 0.4, 0},
                   {10, EventKind::FeedRate, 0.1, 0},
                   {20, EventKind::LivestockRate, 0.2, 0},
                   {40, EventKind::LivestockRate, -0.05, 0},
                   {60, EventKind::FeedRate, 9.0, 0}};
    const StartRates rates = startRates(tank);
    EXPECT_EQ(rates.feed, 0.4);
    EXPECT_NEAR(rates.excretion, 0.15, 1e-12);
}

} // namespace
} // namespace littoral::forecast
