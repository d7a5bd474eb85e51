// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/quantities.h"

#include <span>

/// Carbon dioxide, bicarbonate and carbonate in fresh water.
///
/// Two models. "Chart": activities taken as concentrations and all alkalinity as bicarbonate, as in every printed
/// table of CO2 by pH and KH; it reads 8-11 % high in real tap water. "Davies": single-ion activities by the Davies
/// equation, good to an ionic strength of about 0.1 mol/L (a tank has 0.001-0.01), within 1-3 % of full speciation.
/// Both take all alkalinity as carbonate: phosphate buffers, humic acids and borate count in the kit and not here.
namespace littoral::water {

inline constexpr double kMolarMassCO2 = atomic::kC + 2.0 * atomic::kO;

/// Constants as negative decimal logarithms, mol/kg and atm.
struct CarbonateConstants
{
    double pKH = 0.0; ///< CO2 gas to dissolved
    double pK1 = 0.0;
    double pK2 = 0.0;
    double pKw = 0.0;
    double pKcalcite = 0.0;
    double pKaragonite = 0.0;
    double logPairBicarbonate = 0.0; ///< Ca + HCO3 = CaHCO3+, decimal logarithm
    double logPairCarbonate = 0.0;   ///< Ca + CO3 = CaCO3 dissolved
};

/// L. N. Plummer & E. Busenberg 1982, Geochim. Cosmochim. Acta 46:1011, published for 0-90 °C; taken here for 0-50 °C.
[[nodiscard]] Result<CarbonateConstants> carbonateConstants(double t_C);

/// Temperature and ionic strength (mol/L) of a water.
struct Medium
{
    double t_C = 25.0;
    double ionicStrength = 0.0;
};

/// Activity coefficient of an ion of this charge (Davies equation; Debye-Hückel slope from the density and the
/// permittivity of water after Malmberg & Maryott 1956, both from memory: 0.511 at 25 °C).
[[nodiscard]] double activityCoefficient(int charge, const Medium& medium);

/// mmol/L of the main ions.
struct Ions
{
    double calcium = 0.0;
    double magnesium = 0.0;
    double sodium = 0.0;
    double potassium = 0.0;
    double bicarbonate = 0.0;
    double sulfate = 0.0;
    double chloride = 0.0;
    double nitrate = 0.0;
};
/// Half the sum of concentration times charge squared, mol/L.
[[nodiscard]] double ionicStrength(const Ions& ions);
/// mol/L per µS/cm at 25 °C: 1.1e-5 to 1.55e-5 in four fresh waters reckoned with PHREEQC 3.
inline constexpr double kIonicStrengthPerMicroSiemens = 1.3e-5;
/// From hardness and alkalinity alone, mol/L, when there is no conductivity: two-charged hardness balanced by
/// bicarbonate and by single-charged ions for the rest.
[[nodiscard]] double ionicStrengthFromHardness(MmolPerL hardness, MeqPerL alkalinity);

/// Chart model: CO2 = alkalinity × 10^(pK1 − pH). pH 4-10. Alkalinity must be above zero.
[[nodiscard]] Result<Co2> co2FromChart(double pH, MeqPerL alkalinity, double t_C);
[[nodiscard]] Result<double> phFromChart(Co2 co2, MeqPerL alkalinity, double t_C);

/// Davies model. pH is what a calibrated meter shows. Refuses pH outside 2-13, an alkalinity that such a pH rules out,
/// an ionic strength outside 0-0.1.
[[nodiscard]] Result<Co2> co2FromPh(double pH, MeqPerL alkalinity, const Medium& medium);
/// Any alkalinity of −1 to 50 meq/L, CO2 above zero to 2000 mg/L.
[[nodiscard]] Result<double> phFromCo2(Co2 co2, MeqPerL alkalinity, const Medium& medium);
[[nodiscard]] Result<TotalCarbon> totalCarbon(double pH, MeqPerL alkalinity, const Medium& medium);
/// The pH at which alkalinity and total carbon agree, by bisection on pH 2-13.
[[nodiscard]] Result<double> phFromCarbon(TotalCarbon carbon, MeqPerL alkalinity, const Medium& medium);

/// A portion of water for mixing. Carbon, not pH, is what mixes.
struct CarbonatePortion
{
    double litres = 0.0;
    MeqPerL alkalinity;
    TotalCarbon carbon;
    double calcium_mmol_per_L = 0.0;
    Medium medium;
};
/// Everything added up by volume; ionic strength and temperature likewise. Refuses no water at all.
[[nodiscard]] Result<CarbonatePortion> mixPortions(std::span<const CarbonatePortion> portions);
[[nodiscard]] Result<double> phOf(const CarbonatePortion& portion);

/// CO2 in water that has stood in air of `ppm` (dry) at `pressure_atm` until nothing moved any more. 425 ppm is the
/// open air of 2024-25; rooms have 800-1200.
[[nodiscard]] Result<Co2> airCo2(double t_C, double ppm, double pressure_atm = 1.0);

/// CO2 from the drop of pH against a sample of known CO2, the same water: alkalinity cancels.
[[nodiscard]] Co2 co2FromDrop(Co2 base, double drop);
/// The drop that takes `base` to `target`.
[[nodiscard]] Result<double> dropForCo2(Co2 base, Co2 target);

} // namespace littoral::water
