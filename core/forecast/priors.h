// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/tank_case.h"
#include "core/sim/parameters.h"

#include <cstddef>
#include <span>
#include <vector>

namespace littoral::forecast {

/// Inference happens in z, all standard normal under the prior; no member lies further out than this in any direction.
inline constexpr double kLargestZ = 6.0;

/// The unknowns every case has; behind them in z come two per source water and one per kit.
enum Unknown : std::size_t {
    kUnknownCapacity,     ///< ammonia-oxidising capacity at the start
    kUnknownNitriteRatio, ///< nitrite- over ammonia-oxidising capacity at the start
    kUnknownAmmoniaGrowth,
    kUnknownNitriteGrowth,
    kUnknownDecay,
    kUnknownAmmoniaHalf,
    kUnknownNitriteHalf,
    kUnknownCeiling,
    kUnknownFastSoil,
    kUnknownFastSoilRate,
    kUnknownSlowSoil,
    kUnknownMelt,
    kUnknownUptake,
    kUnknownPlantGrowth,
    kUnknownLowPH,
    kUnknownSoilBuffering,
    kUnknownCo2,
    kUnknownTemperature,
    kUnknownStarter,
    kUnknownMedia,
    kUnknownSqueezings,
    kUnknownSeedShare,
    kUnknownEfficiency,
    kUnknownChangeGain,
    kUnknownCrossReading,
    kUnknownStartNitrate, ///< matters for established layouts only
    kUnknownFixedCount
};

/// What is believed about one tank before any reading: turns z into a member and into the errors of its kits.
class Prior final
{
public:
    explicit Prior(const TankCase& tank);

    /// Length of z: kUnknownFixedCount + 2 per source + 1 per kit.
    [[nodiscard]] std::size_t dimension() const { return m_dimension; }

    [[nodiscard]] std::size_t nitratePlace(std::size_t source) const { return kUnknownFixedCount + 2 * source; }
    [[nodiscard]] std::size_t ammoniaPlace(std::size_t source) const { return kUnknownFixedCount + 2 * source + 1; }
    [[nodiscard]] std::size_t gainPlace(std::size_t kit) const
    {
        return kUnknownFixedCount + 2 * m_setup.sources.size() + kit;
    }

    [[nodiscard]] sim::Member member(std::span<const double> z) const;

    /// What the kit shows over what is there (one gain per kit and tank).
    [[nodiscard]] double kitGain(std::size_t kit, std::span<const double> z) const;
    /// Share of nitrite N that a reduction-type nitrate test reads as nitrate N.
    [[nodiscard]] double crossReading(std::span<const double> z) const;

    /// A bare kit's reading in its unit for given water, mg N/L.
    [[nodiscard]] double shown(std::size_t kit, std::span<const double> z, double totalAmmonia, double nitrite,
                               double nitrate) const;

private:
    /// What z stands for at one place: itself, or what earlier layouts taught.
    [[nodiscard]] double believed(std::span<const double> z, std::size_t place) const
    {
        return m_learned.empty() ? z[place] : m_learned[place].mean + m_learned[place].sd * z[place];
    }
    [[nodiscard]] sim::Member memberOf(std::span<const double> believed) const;
    void setSoil(sim::Member& member, std::span<const double> z) const;
    void setPlants(sim::Member& member, std::span<const double> z) const;
    void setSources(sim::Member& member, std::span<const double> z) const;
    void setNewTank(sim::Member& member, std::span<const double> z) const;
    void setSettledTank(sim::Member& member, std::span<const double> z) const;

    Setup m_setup;
    std::vector<Kit> m_kits;
    std::vector<LearnedUnknown> m_learned; ///< empty, or one for every place of z
    std::size_t m_dimension = 0;
    double m_feed = 0.0; ///< rates in force at startDay, mg N/L/d
    double m_excretion = 0.0;
    double m_dilution = 0.0; ///< mean share of water changed per day, for established layouts
};

/// Rates in force when the run starts: the last feed rate and the sum of livestock changes logged before startDay.
struct StartRates
{
    double feed = 0.0;
    double excretion = 0.0;
};
[[nodiscard]] StartRates startRates(const TankCase& tank);

/// Largest value a kit is expected to show: the top step of the common card for its substance, in the kit's unit.
[[nodiscard]] double usualTop(const Kit& kit);

} // namespace littoral::forecast
