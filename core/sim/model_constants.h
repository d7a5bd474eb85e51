// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Fixed numbers of the nitrogen-cycle model. Each carries its source; "judgement" marks a choice of this project.
namespace littoral::sim {

/// Temperature slopes, 1/C: activation energies 68 and 44 kJ/mol (S. Vannecke and E. Volcke, supplement to their
/// biofilm competition study) near 25 C, rounded by judgement. Ammonification takes the nitrite slope.
inline constexpr double kAmmoniaWarmth_per_C = 0.077;
inline constexpr double kNitriteWarmth_per_C = 0.060;

/// First dissociation of carbonic acid, 10^-6.36 mol/L (handbook value near 25 C), in umol/L.
inline constexpr double kCarbonicAcid_umol_per_L = 0.43651583224016594;
inline constexpr double kCo2_umol_per_mg = 1000.0 / 44.0095;

/// Acidity halving nitrite oxidation lies 0.3 pH below the one for ammonia oxidation (judgement): 1/H grows by 10^-0.3.
inline constexpr double kNitriteAcidShift = 0.50118723362727228;
/// High-pH half factor at pH 9.4 (judgement), umol/L.
inline constexpr double kHighHalf_umol_per_L = 3.9810717055349725e-4;
/// Nitrous acid, pKa 3.3 near 25 C (handbook, rounded), umol/L.
inline constexpr double kNitrousAcid_umol_per_L = 501.18723362727228;

/// Inhibition, mg N/L: free ammonia on ammonia oxidisers (M. Park and J. Bae, Process Biochem. 44, 2009, order of
/// magnitude) and on nitrite oxidisers (same, 0.6; raised by judgement); free nitrous acid on both (judgement).
inline constexpr double kFreeAmmoniaOnAmmonia_mgN_per_L = 15.0;
inline constexpr double kFreeAmmoniaOnNitrite_mgN_per_L = 0.8;
inline constexpr double kNitrousOnBoth_mgN_per_L = 0.35;

/// Half-saturations: alkalinity for ammonia oxidation, meq/L; plants' ammonia preference and nitrate uptake, mg N/L
/// (judgement, within the measured range of submerged plants).
inline constexpr double kAlkalinityHalf_meq_per_L = 0.1;
inline constexpr double kPlantAmmoniaHalf_mgN_per_L = 0.08;
inline constexpr double kPlantNitrateHalf_mgN_per_L = 0.5;

/// Alkalinity an acid soil pulls towards, meq/L (judgement).
inline constexpr double kSoilAlkalinity_meq_per_L = 0.3;
/// mg N per mmol of charge.
inline constexpr double kNitrogen_mg_per_meq = 14.0;

} // namespace littoral::sim
