// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/change_plan.h"

#include "core/water/ammonia.h"
#include "core/water/dilution.h"
#include "core/water/refusal.h"

#include <array>
#include <cmath>

namespace littoral::water {

namespace {

Error unreachable()
{
    return refuse("The source water itself does not lie beyond the target, so no change reaches it.",
                  "Blend or treat the new water first.");
}

/// Share of the difference to the source that may be left: above 0, below 1; 1 when there is nothing to do.
Result<double> shareLeft(double start, double target, double source)
{
    const double gap = start - source;
    const double left = gap == 0.0 ? -1.0 : (target - source) / gap;
    if (start == target) {
        return 1.0;
    }
    if (!(left > 0.0) || left > 1.0) {
        return unreachable();
    }
    return left;
}

Medium mediumOf(const AmmoniaWater& water)
{
    return {water.t_C, ionicStrengthFromHardness(water.hardness, water.alkalinity)};
}

Result<CarbonatePortion> portionOf(const AmmoniaWater& water, double litres)
{
    const Medium medium = mediumOf(water);
    const auto carbon = totalCarbon(water.pH, water.alkalinity, medium);
    if (!carbon) {
        return carbon.error();
    }
    return CarbonatePortion{litres, water.alkalinity, *carbon, 0.0, medium};
}

} // namespace

Result<double> equalShareToTarget(double start, double target, double source, int count)
{
    const auto left = shareLeft(start, target, source);
    if (!left) {
        return left.error();
    }
    if (count < 1) {
        return refuse("There must be at least one change.");
    }
    return 1.0 - std::pow(*left, 1.0 / count);
}

std::vector<double> afterEachChange(double start, double source, std::span<const double> fractions)
{
    std::vector<double> levels;
    for (std::size_t i = 0; i < fractions.size(); ++i) {
        levels.push_back(afterChanges(start, source, fractions.first(i + 1)));
    }
    return levels;
}

Result<double> flowThroughToTarget_L(double start, double target, double source, double net_L)
{
    const auto left = shareLeft(start, target, source);
    if (!left) {
        return left.error();
    }
    if (!(net_L > 0.0)) {
        return refuse("The volume must be above zero.", "Give the net litres of the tank.");
    }
    return -std::log(*left) * net_L;
}

Result<AmmoniaAfter> ammoniaAfterChange(const AmmoniaWater& tank, const AmmoniaWater& fresh, double share,
                                        std::optional<Co2> settledCo2)
{
    if (!within(share, 0.0, 1.0)) {
        return refuse("The share changed lies between 0 and 100 %.");
    }
    const auto old = portionOf(tank, 1.0 - share);
    const auto added = portionOf(fresh, share);
    if (!old || !added) {
        return old ? added.error() : old.error();
    }
    const auto mix = mixPortions(std::array{*old, *added});
    if (!mix) {
        return mix.error();
    }
    const auto pH = phOf(*mix);
    if (!pH) {
        return pH.error();
    }
    AmmoniaAfter after;
    after.total = {(1.0 - share) * tank.total.value + share * fresh.total.value};
    after.pH = *pH;
    after.alkalinity = mix->alkalinity;
    after.t_C = mix->medium.t_C;
    const auto before = freeAmmonia(tank.total, tank.pH, tank.t_C);
    const auto now = freeAmmonia(after.total, after.pH, after.t_C);
    if (!before || !now) {
        return refuse("Free ammonia is reckoned from 0 to 50 °C and pH 2 to 13.");
    }
    after.freeBefore = *before;
    after.freeAfter = *now;
    if (settledCo2) {
        const auto settled = phFromCo2(*settledCo2, after.alkalinity, mix->medium);
        if (!settled) {
            return settled.error();
        }
        after.pHAfterGas = *settled;
        after.freeAfterGas = freeAmmonia(after.total, *settled, after.t_C);
    }
    return after;
}

} // namespace littoral::water
