// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/time_axis.h"

namespace littoral::ui {

/// The axis on which every instant of one tank is `done` (0..1) of its straight way from its place on `before` to its
/// place on `after`, in the mode of `after`.
[[nodiscard]] AxisView between(const AxisView& before, const AxisView& after, qint64 flooded, double done);

} // namespace littoral::ui
