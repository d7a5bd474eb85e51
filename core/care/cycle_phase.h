// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <vector>

namespace littoral::care {

/// Where the nitrogen cycle stands, as far as readings tell.
enum class CyclePhase {
    Unknown,
    AmmoniaRising,
    AmmoniaFalling,
    NitriteRising, ///< rising or high
    NitriteFalling,
    Clear,     ///< both clear, for less than a week
    GrowingIn, ///< clear for a week or more, not yet 57 days old
    Settled,
    MatureMediaSettling, ///< mature media in the first two weeks, small amounts left
};

/// By readings not after `at`. Readings older than three weeks say nothing, except that a tank of 57 days or more that
/// read clear stays settled until a reading says otherwise.
[[nodiscard]] CyclePhase cyclePhase(const record::LayoutRecord& layout, const record::Moment& at);

struct CyclePhaseSpan
{
    CyclePhase phase = CyclePhase::Unknown;
    record::Moment from;
    record::Moment to;
};

/// The phases from flooding to `until` (or the layout's end), without gaps, neighbours differing. Empty before
/// flooding.
[[nodiscard]] std::vector<CyclePhaseSpan> cyclePhases(const record::LayoutRecord& layout, const record::Moment& until);

} // namespace littoral::care
