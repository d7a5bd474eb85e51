// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/units.h"

#include <optional>

/// Free (un-ionised) ammonia and the ammonia criteria of the US EPA. Temperatures in °C. Outside the range for which a
/// formula was published the answer is nothing, not a guess.
namespace littoral::water {

/// Acid constant of ammonium at zero ionic strength, 0..50 °C: pKa = 0.09018 + 2729.92 / T (Emerson, Russo, Lund &
/// Thurston 1975, J. Fish. Res. Board Can. 32:2379). One software manual prints 2727.92, which is 1.5 % too much free
/// ammonia.
[[nodiscard]] std::optional<double> pKa(double t_C);

/// Share of total ammonia that is free, 0..1; 0..50 °C, pH 2..13. Leaves out the effect of dissolved salts, which
/// lowers the true share by 4-9 % in tap water: the error is on the cautious side.
[[nodiscard]] std::optional<double> unionisedFraction(double pH, double t_C);

/// The same with the activity of ammonium by the Davies equation: what a meter's pH means in water of that ionic
/// strength, 0..0.1 mol/L. Within half a per cent of full speciation at 0.005 and 0.010 mol/L.
[[nodiscard]] std::optional<double> unionisedFractionInSalt(double pH, double t_C, double ionicStrength);

/// Free ammonia for a total, same basis (mg N/L) in and out.
[[nodiscard]] std::optional<MgNPerL> freeAmmonia(MgNPerL total, double pH, double t_C);

/// Free ammonia above which fish are harmed, and towards which they begin to die (UF/IFAS circular FA16). The trade
/// acts at 0.02 mg N/L.
inline constexpr MgNPerL kFreeAmmoniaHarm{0.05};
inline constexpr MgNPerL kFreeAmmoniaLethal{2.0};
inline constexpr MgNPerL kFreeAmmoniaTradeLimit{0.02};

/// Freshwater criteria of EPA 822-R-13-001 (2013), mg N/L of total ammonia: CMC is an average over an hour, CCC over 30
/// days. pH 6.5..9.0, 0..30 °C. They are averages that protect the most sensitive tenth of species (mussels and snails
/// for the chronic one), not instant alarms.
[[nodiscard]] std::optional<MgNPerL> acuteCriterionSalmonidsAbsent(double pH, double t_C);
[[nodiscard]] std::optional<MgNPerL> acuteCriterionSalmonidsPresent(double pH, double t_C);
[[nodiscard]] std::optional<MgNPerL> chronicCriterion(double pH, double t_C);
/// Highest 4-day mean within the 30 days: 2.5 times the chronic criterion.
[[nodiscard]] std::optional<MgNPerL> chronicFourDayLimit(double pH, double t_C);

} // namespace littoral::water
