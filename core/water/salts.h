// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>

/// The dry salts keepers weigh: what a gram of each brings, from its formula, and how much of it dissolves.
namespace littoral::water {

/// What a test or a target counts. Bicarbonate stands for alkalinity: mg/L of HCO3 with the same charge.
enum class Nutrient {
    Nitrogen,
    Nitrate,
    Ammonium,
    Phosphorus,
    Phosphate,
    Potassium,
    Calcium,
    Magnesium,
    Sodium,
    Sulfate,
    Chloride,
    Iron,
    Bicarbonate
};
inline constexpr std::array kNutrients{
    Nutrient::Nitrogen,  Nutrient::Nitrate, Nutrient::Ammonium,   Nutrient::Phosphorus, Nutrient::Phosphate,
    Nutrient::Potassium, Nutrient::Calcium, Nutrient::Magnesium,  Nutrient::Sodium,     Nutrient::Sulfate,
    Nutrient::Chloride,  Nutrient::Iron,    Nutrient::Bicarbonate};

/// g/mol of a formula such as "MgSO4.7H2O", "Ca(NO3)2.4H2O"; nothing when it does not parse or names an element that is
/// not in the table (H C N O Na Mg P S Cl K Ca Mn Fe Cu Zn B Mo).
[[nodiscard]] std::optional<double> molarMass(std::string_view formula);
/// Atoms of one element in a formula; nothing when it does not parse.
[[nodiscard]] std::optional<double> atomsOf(std::string_view element, std::string_view formula);

struct Salt
{
    std::string_view key;     ///< "kno3"
    std::string_view formula; ///< with its crystal water: forget it and magnesium sulfate is out by 2.05
    std::string_view name;    ///< English, for a caller to translate
    double charges = 0.0;     ///< mol of alkalinity per mol
    bool nitrateNitrogen = false;
    bool ammoniaNitrogen = false; ///< urea counts as neither
    /// Grams that dissolve in 100 g of added water at 20 °C, as this salt; 0 unknown.
    double solubility_g_per_100g = 0.0;
    std::string_view solubilitySource;
};

[[nodiscard]] std::span<const Salt> salts();
[[nodiscard]] const Salt* findSalt(std::string_view keyOrFormula); ///< nullptr when unknown

/// mg of the nutrient per gram of salt: also the rise in mg/L of one gram in one litre. 0 when the salt has none of it.
[[nodiscard]] double milligramsPerGram(const Salt& salt, Nutrient nutrient);

/// Rise in mg/L.
[[nodiscard]] Result<double> riseFrom(const Salt& salt, Nutrient nutrient, double grams, double net_L);
/// Grams for a rise; refuses a salt without that nutrient and a volume that is not above zero.
[[nodiscard]] Result<double> gramsFor(const Salt& salt, Nutrient nutrient, double rise_mg_per_L, double net_L);

/// Grams that raise alkalinity or general hardness by this many German degrees.
[[nodiscard]] Result<double> gramsForAlkalinity(const Salt& salt, double rise_dKH, double net_L);
[[nodiscard]] Result<double> gramsForHardness(const Salt& salt, double rise_dGH, double net_L);
/// German degrees per gram in one litre.
[[nodiscard]] double alkalinityPerGram_dKH(const Salt& salt);
[[nodiscard]] double hardnessPerGram_dGH(const Salt& salt);

/// mg/L of iron (or another metal) from a powder whose label states its share, 0..1.
[[nodiscard]] Result<double> riseFromShare(double milligrams, double share, double net_L);

/// Anhydrous solubility, g per 100 g of water, as grams of a hydrate per 100 g of *added* water: the crystals bring
/// their own water. `ratio`: molar mass of hydrate over anhydrous.
[[nodiscard]] Result<double> hydrateSolubility_g_per_100g(double anhydrous_g_per_100g, double ratio);

/// A bottle of dissolved salt, made by adding `grams` to `water_mL` of water.
struct Stock
{
    double grams = 0.0;
    double water_mL = 0.0;
};
/// Part of what could dissolve at 20 °C, one salt alone, 0..; above 0.8 a cool cupboard brings crystals. Nothing
/// when the salt's solubility is not known.
[[nodiscard]] std::optional<double> saturationShare(const Salt& salt, const Stock& stock);
/// mL of stock for a rise of `rise` mg/L. The bottle is taken to hold `water_mL`: filled up to that mark.
[[nodiscard]] Result<double> stockMillilitresFor(const Salt& salt, const Stock& stock, Nutrient nutrient,
                                                 double rise_mg_per_L, double net_L);

} // namespace littoral::water
