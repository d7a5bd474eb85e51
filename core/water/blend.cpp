// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/blend.h"

#include "core/water/least_squares.h"
#include "core/water/refusal.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {
// Weight of "the shares add up to one" beside targets of weight one: misses it by less than a millionth.
constexpr double kSumWeight = 1.0e4;

double scaleOf(const BlendTarget& target)
{
    if (target.scale > 0.0) {
        return target.scale;
    }
    if (target.wanted != 0.0) {
        return std::abs(target.wanted);
    }
    double largest = 0.0;
    for (const double value : target.inSources) {
        largest = std::max(largest, std::abs(value));
    }
    return largest > 0.0 ? largest : 1.0;
}

double mixed(const std::vector<double>& shares, const std::vector<double>& values)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        sum += shares[i] * values[i];
    }
    return sum;
}
} // namespace

double mixedLevel(double first, double second, double firstShare)
{
    return firstShare * first + (1.0 - firstShare) * second;
}

Result<double> softShare(double hard, double soft, double target)
{
    if (hard == soft) {
        return refuse("The two waters do not differ in this, so no blend changes it.");
    }
    if (!within(target, std::min(hard, soft), std::max(hard, soft))) {
        return refuse("The target lies outside the two waters.", "Add salts, or use a softer or harder water.");
    }
    return 1.0 - (target - soft) / (hard - soft);
}

Result<Blend> blendSources(std::span<const BlendTarget> targets)
{
    if (targets.empty() || targets.front().inSources.empty()) {
        return refuse("A blend needs at least one source water and one target.");
    }
    const std::size_t sources = targets.front().inSources.size();
    Matrix rows;
    std::vector<double> wanted;
    for (const BlendTarget& target : targets) {
        if (target.inSources.size() != sources) {
            return refuse("A target does not say what every source water has of it.");
        }
        const double scale = scaleOf(target);
        std::vector<double> row = target.inSources;
        std::ranges::transform(row, row.begin(), [scale](double value) { return value / scale; });
        rows.push_back(std::move(row));
        wanted.push_back(target.wanted / scale);
    }
    rows.emplace_back(sources, kSumWeight);
    wanted.push_back(kSumWeight);
    auto solved = nonnegativeLeastSquares(rows, wanted);
    if (!solved) {
        return solved.error();
    }
    Blend blend;
    blend.shares = std::move(solved->x);
    double sum = 0.0;
    for (const double share : blend.shares) {
        sum += share;
    }
    std::ranges::transform(blend.shares, blend.shares.begin(), [sum](double share) { return share / sum; });
    for (const BlendTarget& target : targets) {
        blend.reached.push_back(mixed(blend.shares, target.inSources));
    }
    return blend;
}

Result<MineralRecipe> remineralise(std::span<const Salt* const> salts, std::span<const MineralTarget> targets)
{
    if (salts.empty() || targets.empty()) {
        return refuse("A recipe needs at least one salt and one target.");
    }
    Matrix rows;
    std::vector<double> wanted;
    for (const MineralTarget& target : targets) {
        const double scale = (target.wanted_mg_per_L > 0.0 ? target.wanted_mg_per_L : 1.0) / target.weight;
        std::vector<double> row;
        for (const Salt* salt : salts) {
            row.push_back(milligramsPerGram(*salt, target.nutrient) / 1000.0 / scale);
        }
        rows.push_back(std::move(row));
        wanted.push_back((target.wanted_mg_per_L - target.present_mg_per_L) / scale);
    }
    auto solved = nonnegativeLeastSquares(rows, wanted);
    if (!solved) {
        return solved.error();
    }
    MineralRecipe recipe;
    recipe.salts_mg_per_L = std::move(solved->x);
    for (const MineralTarget& target : targets) {
        double reached = target.present_mg_per_L;
        for (std::size_t i = 0; i < salts.size(); ++i) {
            reached += recipe.salts_mg_per_L[i] * milligramsPerGram(*salts[i], target.nutrient) / 1000.0;
        }
        recipe.reached_mg_per_L.push_back(reached);
    }
    return recipe;
}

std::vector<double> weighable_g(const MineralRecipe& recipe, double litres, double scaleStep_g)
{
    std::vector<double> grams;
    for (const double each : recipe.salts_mg_per_L) {
        const double exact = each * litres / 1000.0;
        grams.push_back(scaleStep_g > 0.0 ? std::round(exact / scaleStep_g) * scaleStep_g : exact);
    }
    return grams;
}

} // namespace littoral::water
