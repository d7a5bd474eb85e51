// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sim/pack.h"

#include <array>
#include <cstddef>

namespace littoral::sim {

/// The tank as the model sees it: ten states and a ledger. Unless said otherwise mg N per litre of tank water.
enum StateIndex : std::size_t {
    kTotalAmmonia,    ///< NH3 + NH4+
    kNitrite,         ///< nitrite (HNO2 included)
    kNitrate,         ///< nitrate
    kAmmoniaCapacity, ///< ammonia-oxidising capacity, mg N/L/d saturated at 25 C
    kNitriteCapacity, ///< nitrite-oxidising capacity, mg N/L/d saturated at 25 C
    kFastSoil,        ///< soil nitrogen that leaves quickly
    kSlowSoil,        ///< soil nitrogen that leaves slowly
    kOrganic,         ///< organic nitrogen in the water and on the bottom (food, melt)
    kAlkalinity,      ///< meq/L; may fall below zero
    kPlants,          ///< plant scale, 0..1 of the grown-in stand
    kRemoved,         ///< ledger: nitrogen taken by plants and denitrification
    kStateCount
};

template <typename Real> using State = std::array<Real, kStateCount>;

inline constexpr std::size_t kMaxSources = 8;

/// What a water change brings in.
struct SourceLevels
{
    double totalAmmonia_mgN_per_L = 0.0;
    double nitrate_mgN_per_L = 0.0;
    double alkalinity_meq_per_L = 1.5;
};

/// One member: every number that sets one plausible version of the tank apart from another.
struct Member
{
    State<double> start{}; ///< at the run's first day

    double ammoniaGrowth_per_d = 0.60;   ///< specific growth of ammonia oxidisers, saturated, 25 C
    double nitriteGrowth_per_d = 0.58;   ///< the same for nitrite oxidisers
    double decay_per_d = 0.05;           ///< loss of capacity of both
    double ammoniaHalf_mgN_per_L = 0.25; ///< half-saturation
    double nitriteHalf_mgN_per_L = 0.15; ///< half-saturation
    double ceiling_mgN_per_L_d = 6.0;    ///< capacity that fills the media
    double fastSoil_per_d = 0.10;
    double slowSoil_per_d = 0.012;
    double ammonification_per_d = 0.2; ///< at 25 C
    double denitrification_per_d = 0.0;
    double uptake_mgN_per_L_d = 0.0; ///< plants, grown in
    double plantGrowth_per_d = 0.09;
    double soilBuffering_per_d = 0.0; ///< pull of the soil on alkalinity
    double lowHalf_pH = 6.2;          ///< pH at which acidity halves ammonia oxidation
    double co2Off_mg_per_L = 4.0;
    double co2On_mg_per_L = 4.0;
    double temperature_C = 25.0;

    double efficiency = 1.0;              ///< share of logged feed and excretion that arrives
    double changeGain = 0.96;             ///< true over logged water-change fraction
    double starter_mgN_per_L_d = 0.06;    ///< ammonia capacity per label dose
    double media_mgN_per_L_d = 1.2;       ///< per whole mature filter
    double squeezings_mgN_per_L_d = 0.10; ///< per whole mature filter
    double seedNitriteShare = 0.85;       ///< nitrite capacity over ammonia capacity of any seed
    std::array<SourceLevels, kMaxSources> sources{};

    // Multipliers from the decision day on: what the future may hold that the past did not show.
    double laterAmmoniaGrowth = 1.0;
    double laterNitriteGrowth = 1.0;
    double laterSoil = 1.0;
    double laterUptake = 1.0;
};

/// A member's constants in the form the rates use; one Coefficients<Pack> serves kLanes members.
/// Hydrogen and the acid constants are in umol/L, so that all products stay near one.
template <typename Real> struct Coefficients
{
    Real ammoniaGrowth{};
    Real nitriteGrowth{};
    Real decayAmmonia{}; ///< at the member's temperature
    Real decayNitrite{};
    Real ammoniaHalf{};
    Real nitriteHalf{};
    Real inverseCeiling{};
    Real fastSoil{};
    Real slowSoil{};
    Real ammonification{};
    Real denitrification{};
    Real uptake{};
    Real plantGrowth{};
    Real soilBuffering{};
    Real ammoniaTemperature{};
    Real nitriteTemperature{};
    Real inverseLowAmmonia{}; ///< 1 / Hlo, L/umol
    Real inverseLowNitrite{};
    Real ammoniumAcid{}; ///< Ka of ammonium, umol/L
    Real carbonOff{};    ///< 4 K1 [CO2], umol2/L2, injection off
    Real carbonOn{};
    Real shareOn{};   ///< share of the day with injection on
    Real feed{};      ///< organic N arriving, mg N/L/d
    Real excretion{}; ///< ammonia excreted, mg N/L/d
};

/// Calls f(a.field, b.field) for every field.
template <typename A, typename B, typename F> void eachCoefficient(A& a, B& b, F&& f)
{
    f(a.ammoniaGrowth, b.ammoniaGrowth);
    f(a.nitriteGrowth, b.nitriteGrowth);
    f(a.decayAmmonia, b.decayAmmonia);
    f(a.decayNitrite, b.decayNitrite);
    f(a.ammoniaHalf, b.ammoniaHalf);
    f(a.nitriteHalf, b.nitriteHalf);
    f(a.inverseCeiling, b.inverseCeiling);
    f(a.fastSoil, b.fastSoil);
    f(a.slowSoil, b.slowSoil);
    f(a.ammonification, b.ammonification);
    f(a.denitrification, b.denitrification);
    f(a.uptake, b.uptake);
    f(a.plantGrowth, b.plantGrowth);
    f(a.soilBuffering, b.soilBuffering);
    f(a.ammoniaTemperature, b.ammoniaTemperature);
    f(a.nitriteTemperature, b.nitriteTemperature);
    f(a.inverseLowAmmonia, b.inverseLowAmmonia);
    f(a.inverseLowNitrite, b.inverseLowNitrite);
    f(a.ammoniumAcid, b.ammoniumAcid);
    f(a.carbonOff, b.carbonOff);
    f(a.carbonOn, b.carbonOn);
    f(a.shareOn, b.shareOn);
    f(a.feed, b.feed);
    f(a.excretion, b.excretion);
}

/// The constants of a member. injectedShare: share of the day with CO2 on, 0..1.
[[nodiscard]] Coefficients<double> coefficientsOf(const Member& member, double injectedShare);

/// pKa of ammonium, 0.09018 + 2729.92 / T (K. Emerson et al., J. Fish. Res. Board Can. 32, 1975; constants as in common
/// use). Temperature in C.
[[nodiscard]] double ammoniumPKa(double temperature_C);

/// Share of total ammonia present as NH3 when CO2 is at its off level (the day's highest pH).
/// Alkalinity in meq/L, CO2 in mg/L.
[[nodiscard]] double freeShare(double alkalinity_meq_per_L, double co2_mg_per_L, double temperature_C);

/// Hydrogen ion in umol/L from charge balance; holds for any alkalinity, negative ones included.
[[nodiscard]] double hydrogen_umol_per_L(double alkalinity_meq_per_L, double co2_mg_per_L);

} // namespace littoral::sim
