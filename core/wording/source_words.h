// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/source_profile.h"

#include <QString>

namespace littoral::wording {

/// "30 % tap, 70 % osmosis", or why the parts of a blend cannot be told; the water's own name when it is no blend.
[[nodiscard]] QString sourcePartsText(std::span<const record::SourceWater> all, const record::SourceWater& water);
/// What the water comes to, each figure with where it is from: "Nitrate 3 mg/L NO₃ (reckoned); KH unknown ...".
[[nodiscard]] QString sourceProfileText(std::span<const record::SourceWater> all, const record::SourceWater& water);

} // namespace littoral::wording
