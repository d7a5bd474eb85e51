// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Every number the prior is made of, in one place. theta = median * exp(sd * z) unless said otherwise.
/// "Judgement" is this project's own and was tuned on simulated tanks only; "common practice" is trade knowledge;
/// "kinetics" stands for the published ranges of two-step nitrification models (C. Hiatt and L. Grady, Water Environ.
/// Res. 80, 2008; G. Sin et al., Water Sci. Technol. 58, 2008), read as effective in-tank values.
namespace littoral::forecast::prior {

struct Spread
{
    double median;
    double sd;
};

// Filter of a new layout. Plants, soil and tap water carry cells: judgement between handbook-tuned and log-derived
// values.
inline constexpr Spread kCapacity{0.0025, 1.7};     // mg N/L/d
inline constexpr Spread kNitriteRatio{0.7, 0.9};    // kinetics
inline constexpr Spread kAmmoniaGrowth{0.60, 0.30}; // 1/d, kinetics, net of what a tank does not offer
inline constexpr Spread kNitriteGrowth{0.58, 0.30}; // 1/d, kinetics
inline constexpr Spread kDecay{0.05, 0.5};          // 1/d, low: starved films keep capacity (judgement)
inline constexpr Spread kAmmoniaHalf{0.25, 0.6};    // mg N/L, low-nutrient guilds (kinetics, lower end)
inline constexpr Spread kNitriteHalf{0.15, 0.6};    // mg N/L
inline constexpr Spread kCeiling{6.0, 0.6};         // mg N/L/d, surface limit (judgement)
inline constexpr double kLowPHMedian = 6.2;         // judgement
inline constexpr double kLowPHSd = 0.3;             // additive, pH

// Soil: 0.17 L of rich soil per litre of water; judgement, no published release figure was found.
inline constexpr double kSoilReference_L_per_L = 0.17;
inline constexpr Spread kFastSoil{7.0, 0.8};       // mg N/L
inline constexpr Spread kFastSoilRate{0.10, 0.5};  // 1/d
inline constexpr Spread kSlowSoil{4.0, 0.9};       // mg N/L
inline constexpr double kSlowSoilRate = 0.012;     // 1/d, fixed
inline constexpr double kMildShare = 0.25;         // of rich, for nitrogen and for buffering
inline constexpr Spread kSoilBuffering{0.12, 0.6}; // 1/d, rich

// Plants, dense stand; judgement.
inline constexpr Spread kMelt{0.6, 0.9};         // mg N/L of organic nitrogen
inline constexpr double kAmmonification = 0.2;   // 1/d, fixed
inline constexpr Spread kUptake{0.35, 0.8};      // mg N/L/d
inline constexpr double kUptakeFloor = 0.03;     // mg N/L/d: algae and films, with or without plants
inline constexpr Spread kPlantGrowth{0.09, 0.4}; // 1/d
inline constexpr double kPlantStart = 0.18;      // of the grown-in stand
inline constexpr double kSparseShare = 0.25;
inline constexpr double kMediumShare = 0.6;

// Water.
inline constexpr Spread kUnknownNitrate{1.4, 0.8}; // mg N/L in a source nobody measured
inline constexpr double kStatedNitrateSd = 0.2;
inline constexpr double kStatedNitrateFloor = 0.5 / 4.42680; // mg N/L: 0.5 ppm nitrate
inline constexpr Spread kChloramineYes{0.4, 0.4};            // mg N/L total ammonia
inline constexpr Spread kChloramineUnknown{0.05, 1.3};
inline constexpr Spread kChloramineNo{0.02, 0.8};
inline constexpr double kCo2Off = 4.0; // mg/L, common practice for planted tanks
inline constexpr double kCo2Sd = 0.3;
inline constexpr double kTemperatureSd = 0.7; // C, additive

// Seeds, ammonia capacity in mg N/L/d; judgement, wide because many bottles do nothing.
inline constexpr Spread kStarter{0.06, 1.8};
inline constexpr Spread kMedia{1.2, 0.7};
inline constexpr Spread kSqueezings{0.10, 0.8};
inline constexpr Spread kSeedShare{0.85, 0.8};

// Bookkeeping.
inline constexpr Spread kEfficiency{1.0, 0.3};
inline constexpr Spread kChangeGain{0.96, 0.05};

// Kits.
inline constexpr double kAmmoniaGainSd = 0.12;
inline constexpr double kNitriteGainSd = 0.12;
inline constexpr double kNitrateGainSd = 0.25;
inline constexpr Spread kCrossReading{0.35, 0.8}; // common practice: reduction chemistry reads both

// Established layouts: an extension of this project, all judgement. The filter carries its load several times over, and
// at least what a whole mature filter would bring; nitrate sits where load, uptake and water changes balance.
inline constexpr double kSettledOverLoad = 3.0;
inline constexpr double kSettledSd = 0.8;
inline constexpr Spread kSettledRatio{0.85, 0.5};
inline constexpr double kSettledAmmonia = 0.02;  // mg N/L; forgotten within hours
inline constexpr double kSettledNitrite = 0.01;  // mg N/L
inline constexpr double kSettledDilution = 0.02; // 1/d when no water change is known
inline constexpr double kSettledNitrateSd = 0.8;
inline constexpr double kSettledNitrateTop = 60.0; // mg N/L
inline constexpr double kBufferingLife_d = 180.0;  // acid soils lose their pull on alkalinity within a year

} // namespace littoral::forecast::prior
