// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/moment.h"

namespace littoral::facade {

class Keeper;

/// Fills the keeper's open, empty store with the invented sample row, its dates moved so that `now` is today.
[[nodiscard]] Result<void> makeSampleRow(Keeper& keeper, const record::Moment& now);

} // namespace littoral::facade
