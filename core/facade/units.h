// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "core/record/shown.h"

namespace littoral::facade {

/// The units the open store is shown and typed in; undone like any change.
[[nodiscard]] Result<void> setUnits(Keeper& keeper, const record::Units& units);

} // namespace littoral::facade
