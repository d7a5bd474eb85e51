// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/axis_slide.h"

#include <cmath>

namespace littoral::ui {

AxisView between(const AxisView& before, const AxisView& after, qint64 flooded, double done)
{
    // Both axes are straight, so every mixture of them is: px = slope * (instant - zero).
    const auto slope = [](const AxisView& view) { return view.width / static_cast<double>(view.to - view.from); };
    const auto zero = [flooded](const AxisView& view) {
        return view.mode == AxisMode::Age ? view.from + flooded : view.from;
    };
    const double first = (1.0 - done) * slope(before);
    const double second = done * slope(after);
    const double mixed = first + second;
    const double left = (1.0 - done) * before.left + done * after.left;
    const auto shift = static_cast<double>(zero(before) - zero(after)); // from the instant at the end's left edge
    AxisView made = after;
    made.left = left;
    made.from = after.from + static_cast<qint64>(std::llround(first * shift / mixed));
    made.to = made.from + static_cast<qint64>(std::llround(after.width / mixed));
    return made;
}

} // namespace littoral::ui
