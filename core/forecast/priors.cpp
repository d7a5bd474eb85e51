// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/priors.h"

#include "core/forecast/prior_table.h"

#include <algorithm>
#include <cmath>

namespace littoral::forecast {

namespace {

double draw(const prior::Spread& spread, double z)
{
    return spread.median * std::exp(spread.sd * z);
}

double densityShare(PlantDensity density)
{
    switch (density) {
    case PlantDensity::None:
        return 0.0;
    case PlantDensity::Sparse:
        return prior::kSparseShare;
    case PlantDensity::Medium:
        return prior::kMediumShare;
    case PlantDensity::Dense:
        return 1.0;
    }
    return 1.0;
}

double soilShare(SoilKind soil)
{
    switch (soil) {
    case SoilKind::Inert:
        return 0.0;
    case SoilKind::Mild:
        return prior::kMildShare;
    case SoilKind::Rich:
        return 1.0;
    }
    return 1.0;
}

prior::Spread chloramineSpread(Chloramine chloramine)
{
    switch (chloramine) {
    case Chloramine::No:
        return prior::kChloramineNo;
    case Chloramine::Unknown:
        return prior::kChloramineUnknown;
    case Chloramine::Yes:
        return prior::kChloramineYes;
    }
    return prior::kChloramineUnknown;
}

/// Mean share of water changed per day over what is logged and planned from startDay on.
double meanDilution(const TankCase& tank)
{
    double fraction = 0.0;
    double last = tank.decisionDay;
    for (const Event& event : tank.events) {
        if (event.kind == EventKind::WaterChange && event.day >= tank.setup.startDay) {
            fraction += event.amount;
            last = std::max(last, event.day);
        }
    }
    const double span = std::max(last - tank.setup.startDay, 7.0);
    return fraction > 0.0 ? fraction / span : prior::kSettledDilution;
}

/// Nitrate at which income, uptake and water changes balance. excess: income less plant demand, mg N/L/d.
double balancedNitrate(double source, double excess, double dilution)
{
    if (excess >= 0.0) {
        return std::min(source + excess / dilution, prior::kSettledNitrateTop);
    }
    // dilution (z - source) = excess z / (half + z)
    const double half = 0.5;
    const double b = dilution * (half - source) - excess;
    return (-b + std::sqrt(b * b + 4.0 * dilution * dilution * half * source)) / (2.0 * dilution);
}

} // namespace

StartRates startRates(const TankCase& tank)
{
    StartRates rates;
    double feedDay = -1.0;
    for (const Event& event : tank.events) {
        if (event.day >= tank.setup.startDay) {
            continue;
        }
        if (event.kind == EventKind::FeedRate && event.day >= feedDay) {
            rates.feed = event.amount;
            feedDay = event.day;
        } else if (event.kind == EventKind::LivestockRate) {
            rates.excretion += event.amount;
        }
    }
    rates.excretion = std::max(rates.excretion, 0.0);
    return rates;
}

double usualTop(const Kit& kit)
{
    switch (kit.substance) {
    case Substance::Nitrite:
        return 5.0 / 3.28454 * kit.unitsPerMgN;
    case Substance::Nitrate:
        return 160.0 / 4.42680 * kit.unitsPerMgN;
    default:
        return 8.0 / 1.21588 * kit.unitsPerMgN;
    }
}

Prior::Prior(const TankCase& tank)
    : m_setup(tank.setup)
    , m_kits(tank.kits)
    , m_dimension(kUnknownFixedCount + 2 * tank.setup.sources.size() + tank.kits.size())
{
    if (!tank.learned.empty()) {
        for (std::size_t place = 0; place < m_dimension; ++place) {
            m_learned.push_back({place, 0.0, 1.0});
        }
        for (const LearnedUnknown& learned : tank.learned) {
            m_learned[learned.unknown] = learned;
        }
    }
    const StartRates rates = startRates(tank);
    m_feed = rates.feed;
    m_excretion = rates.excretion;
    if (m_setup.established) {
        // Rates logged on the first day of the run count as in force: a settled tank was fed before, too.
        for (const Event& event : tank.events) {
            if (event.day == m_setup.startDay && event.kind == EventKind::FeedRate) {
                m_feed = event.amount;
            } else if (event.day == m_setup.startDay && event.kind == EventKind::LivestockRate) {
                m_excretion = std::max(m_excretion + event.amount, 0.0);
            }
        }
        m_dilution = meanDilution(tank);
    }
}

sim::Member Prior::member(std::span<const double> z) const
{
    if (m_learned.empty()) {
        return memberOf(z);
    }
    std::vector<double> shifted(m_dimension);
    for (std::size_t place = 0; place < m_dimension; ++place) {
        shifted[place] = believed(z, place);
    }
    return memberOf(shifted);
}

sim::Member Prior::memberOf(std::span<const double> z) const
{
    sim::Member m;
    m.ammoniaGrowth_per_d = draw(prior::kAmmoniaGrowth, z[kUnknownAmmoniaGrowth]);
    m.nitriteGrowth_per_d = draw(prior::kNitriteGrowth, z[kUnknownNitriteGrowth]);
    m.decay_per_d = draw(prior::kDecay, z[kUnknownDecay]);
    m.ammoniaHalf_mgN_per_L = draw(prior::kAmmoniaHalf, z[kUnknownAmmoniaHalf]);
    m.nitriteHalf_mgN_per_L = draw(prior::kNitriteHalf, z[kUnknownNitriteHalf]);
    m.ceiling_mgN_per_L_d = draw(prior::kCeiling, z[kUnknownCeiling]);
    m.ammonification_per_d = prior::kAmmonification;
    m.lowHalf_pH = prior::kLowPHMedian + prior::kLowPHSd * z[kUnknownLowPH];
    m.temperature_C = m_setup.temperature_C + prior::kTemperatureSd * z[kUnknownTemperature];
    const double co2 = std::exp(prior::kCo2Sd * z[kUnknownCo2]);
    m.co2Off_mg_per_L = prior::kCo2Off * co2;
    m.co2On_mg_per_L = m_setup.co2.injected ? m_setup.co2.level_mg_per_L * co2 : m.co2Off_mg_per_L;
    m.efficiency = draw(prior::kEfficiency, z[kUnknownEfficiency]);
    m.changeGain = draw(prior::kChangeGain, z[kUnknownChangeGain]);
    m.starter_mgN_per_L_d = draw(prior::kStarter, z[kUnknownStarter]);
    m.media_mgN_per_L_d = draw(prior::kMedia, z[kUnknownMedia]);
    m.squeezings_mgN_per_L_d = draw(prior::kSqueezings, z[kUnknownSqueezings]);
    m.seedNitriteShare = draw(prior::kSeedShare, z[kUnknownSeedShare]);
    setSources(m, z);
    setSoil(m, z);
    setPlants(m, z);
    if (m_setup.established) {
        setSettledTank(m, z);
    } else {
        setNewTank(m, z);
    }
    return m;
}

void Prior::setSoil(sim::Member& m, std::span<const double> z) const
{
    const double kind = soilShare(m_setup.soil);
    const double amount = kind * m_setup.soil_L_per_L / prior::kSoilReference_L_per_L;
    m.fastSoil_per_d = draw(prior::kFastSoilRate, z[kUnknownFastSoilRate]);
    m.slowSoil_per_d = prior::kSlowSoilRate;
    m.start[sim::kFastSoil] = amount * draw(prior::kFastSoil, z[kUnknownFastSoil]);
    m.start[sim::kSlowSoil] = amount * draw(prior::kSlowSoil, z[kUnknownSlowSoil]);
    m.soilBuffering_per_d = kind * draw(prior::kSoilBuffering, z[kUnknownSoilBuffering]);
}

void Prior::setPlants(sim::Member& m, std::span<const double> z) const
{
    const double density = densityShare(m_setup.plants);
    m.uptake_mgN_per_L_d = std::max(density * draw(prior::kUptake, z[kUnknownUptake]), prior::kUptakeFloor);
    m.plantGrowth_per_d = draw(prior::kPlantGrowth, z[kUnknownPlantGrowth]);
    m.start[sim::kPlants] = prior::kPlantStart;
    m.start[sim::kOrganic] = density * draw(prior::kMelt, z[kUnknownMelt]);
}

void Prior::setSources(sim::Member& m, std::span<const double> z) const
{
    for (std::size_t i = 0; i < m_setup.sources.size(); ++i) {
        const SourceWater& source = m_setup.sources[i];
        const double zNitrate = z[nitratePlace(i)];
        const double zAmmonia = z[ammoniaPlace(i)];
        sim::SourceLevels& levels = m.sources[i];
        levels.totalAmmonia_mgN_per_L = draw(chloramineSpread(source.chloramine), zAmmonia);
        if (source.nitrate_mgN_per_L) {
            const double stated = std::max(*source.nitrate_mgN_per_L, prior::kStatedNitrateFloor);
            levels.nitrate_mgN_per_L = stated * std::exp(prior::kStatedNitrateSd * zNitrate);
        } else {
            levels.nitrate_mgN_per_L = draw(prior::kUnknownNitrate, zNitrate);
        }
        levels.alkalinity_meq_per_L = source.alkalinity_meq_per_L;
    }
}

void Prior::setNewTank(sim::Member& m, std::span<const double> z) const
{
    m.start[sim::kTotalAmmonia] = m.sources[0].totalAmmonia_mgN_per_L;
    m.start[sim::kNitrate] = m.sources[0].nitrate_mgN_per_L;
    m.start[sim::kAlkalinity] = m.sources[0].alkalinity_meq_per_L;
    m.start[sim::kAmmoniaCapacity] = draw(prior::kCapacity, z[kUnknownCapacity]);
    m.start[sim::kNitriteCapacity] =
        m.start[sim::kAmmoniaCapacity] * draw(prior::kNitriteRatio, z[kUnknownNitriteRatio]);
}

void Prior::setSettledTank(sim::Member& m, std::span<const double> z) const
{
    const double age = m_setup.startDay;
    const double income = m_feed + m_excretion;
    const prior::Spread capacity{std::max(prior::kSettledOverLoad * income, prior::kMedia.median), prior::kSettledSd};
    m.start[sim::kAmmoniaCapacity] = draw(capacity, z[kUnknownCapacity]);
    m.start[sim::kNitriteCapacity] =
        m.start[sim::kAmmoniaCapacity] * draw(prior::kSettledRatio, z[kUnknownNitriteRatio]);
    m.start[sim::kTotalAmmonia] = prior::kSettledAmmonia;
    m.start[sim::kNitrite] = prior::kSettledNitrite;

    m.start[sim::kFastSoil] *= std::exp(-m.fastSoil_per_d * age);
    m.start[sim::kSlowSoil] *= std::exp(-m.slowSoil_per_d * age);
    m.soilBuffering_per_d *= std::exp(-age / prior::kBufferingLife_d);
    const double unplanted = (1.0 / prior::kPlantStart - 1.0) * std::exp(-m.plantGrowth_per_d * age);
    m.start[sim::kPlants] = 1.0 / (1.0 + unplanted);
    m.start[sim::kOrganic] = m_feed * m.efficiency / m.ammonification_per_d;

    const sim::SourceLevels& source = m.sources[0];
    const double leached = m.fastSoil_per_d * m.start[sim::kFastSoil] + m.slowSoil_per_d * m.start[sim::kSlowSoil];
    const double excess = income * m.efficiency + leached - m.uptake_mgN_per_L_d * m.start[sim::kPlants];
    const double centre = balancedNitrate(source.nitrate_mgN_per_L, excess, m_dilution);
    m.start[sim::kNitrate] = centre * std::exp(prior::kSettledNitrateSd * z[kUnknownStartNitrate]);
    // Each mg N that became nitrate and stayed cost one charge of alkalinity.
    const double charge = source.alkalinity_meq_per_L - (centre - source.nitrate_mgN_per_L) / 14.0;
    m.start[sim::kAlkalinity] = std::max(charge, std::min(source.alkalinity_meq_per_L, 0.3));
}

double Prior::kitGain(std::size_t kit, std::span<const double> z) const
{
    const double sd = m_kits[kit].substance == Substance::Nitrate   ? prior::kNitrateGainSd
                      : m_kits[kit].substance == Substance::Nitrite ? prior::kNitriteGainSd
                                                                    : prior::kAmmoniaGainSd;
    return std::exp(sd * believed(z, gainPlace(kit)));
}

double Prior::crossReading(std::span<const double> z) const
{
    return draw(prior::kCrossReading, believed(z, kUnknownCrossReading));
}

double Prior::shown(std::size_t kit, std::span<const double> z, double totalAmmonia, double nitrite,
                    double nitrate) const
{
    const Kit& k = m_kits[kit];
    double water = totalAmmonia;
    if (k.substance == Substance::Nitrite) {
        water = nitrite;
    } else if (k.substance == Substance::Nitrate) {
        water = nitrate + (k.readsNitriteToo ? crossReading(z) * nitrite : 0.0);
    }
    return kitGain(kit, z) * k.unitsPerMgN * std::max(water, 0.0);
}

} // namespace littoral::forecast
