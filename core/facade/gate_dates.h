// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/tank_case.h"
#include "core/record/row.h"

#include <optional>
#include <vector>

namespace littoral::facade {

/// A stretch in which a gate's limits on the water were read as kept for as long as the gate asks.
struct GateOpening
{
    record::Moment opened;
    std::optional<record::Moment> shut; ///< when a limit was read as broken again; nothing while none was
};

/// When the readings say that a gate came about, oldest first. Limits are those a forecast's gate has
/// (care::gateRules); what is not about ammonia and nitrite is left out, as it is there. A limit counts as kept from
/// halfway between the last reading over it and the first under it; a reading that decides neither way changes nothing,
/// and free ammonia counts where a pH goes with the reading. A stretch counts once both are read as kept at its end or
/// later. Without any reading over a limit the beginning is the first reading.
[[nodiscard]] std::vector<GateOpening> gateOpenings(const record::LayoutRecord& layout, const forecast::GateRule& gate);

} // namespace littoral::facade
