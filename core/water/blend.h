// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/salts.h"

#include <span>
#include <vector>

/// Mixing source waters, and putting minerals back into demineralised water.
namespace littoral::water {

/// A conservative quantity of two waters poured together, by volume; `firstShare` 0..1 of the litres. Alkalinity,
/// hardness and dissolved ions mix so; pH does not (see mixPortions).
[[nodiscard]] double mixedLevel(double first, double second, double firstShare);

/// Share of the softer water (demineralised) that brings one conservative quantity to `target`; refuses a target
/// outside the two and two waters that do not differ.
[[nodiscard]] Result<double> softShare(double hard, double soft, double target);

/// One wanted quantity of a blend. Rows are divided by their scale, so that milligrams do not outweigh degrees.
struct BlendTarget
{
    std::vector<double> inSources; ///< one figure per source water
    double wanted = 0.0;
    double scale = 0.0; ///< what counts as a miss of one; 0: the target itself, or the largest figure if that is 0
};

struct Blend
{
    std::vector<double> shares;  ///< one per source, none negative, 1 together
    std::vector<double> reached; ///< one per target
};
/// The shares that come nearest to all targets by least squares.
[[nodiscard]] Result<Blend> blendSources(std::span<const BlendTarget> targets);

/// A wanted concentration, mg/L (alkalinity as mg/L HCO3).
struct MineralTarget
{
    Nutrient nutrient = Nutrient::Calcium;
    double wanted_mg_per_L = 0.0;
    double present_mg_per_L = 0.0;
    double weight = 1.0; ///< 0.1 for "rather", 1 for "wanted"
};

struct MineralRecipe
{
    std::vector<double> salts_mg_per_L;   ///< one per salt
    std::vector<double> reached_mg_per_L; ///< one per target, with what was there
};
/// Salts by nonnegative least squares, each row divided by its target. Refuses an empty list of either.
[[nodiscard]] Result<MineralRecipe> remineralise(std::span<const Salt* const> salts,
                                                 std::span<const MineralTarget> targets);

/// The recipe for `litres` as it can be weighed: grams rounded to the scale's step.
[[nodiscard]] std::vector<double> weighable_g(const MineralRecipe& recipe, double litres, double scaleStep_g);

} // namespace littoral::water
