// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/gate_dates.h"

#include "core/care/water_state.h"

#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using care::Against;
using record::Moment;
using record::Reading;

namespace {

/// Limits and readings go through unit factors; a hair more is not over.
constexpr double kRounding = 1e-9;

/// A stretch of readings of one parameter that kept its limits.
struct Stretch
{
    Moment from;                 ///< halfway from the reading before it that did not
    Moment last;                 ///< newest reading in it
    std::optional<Moment> until; ///< halfway to the reading that ended it
};

Moment halfway(const Moment& a, const Moment& b)
{
    return a.plusDays(0.5 * record::daysBetween(a, b));
}

/// Does the reading keep the limit? free_mgN_per_L: infinite where it does not apply.
Against judged(const record::LayoutRecord& layout, const Reading& reading, double limit, double free_mgN_per_L)
{
    const Against total = std::isfinite(limit) ? care::compare(reading, limit * (1.0 + kRounding)) : Against::Below;
    if (total != Against::Below || !std::isfinite(free_mgN_per_L)) {
        return total;
    }
    const auto free = care::freeAmmoniaOf(layout, reading);
    return free && free->mgN_per_L > free_mgN_per_L ? Against::Above : Against::Below;
}

std::vector<Stretch> stretchesOf(const record::LayoutRecord& layout, const QString& parameter, double limit,
                                 double free_mgN_per_L)
{
    std::vector<Stretch> stretches;
    const Reading* over = nullptr;
    bool inside = false;
    for (const Reading* reading : layout.readingsOf(parameter)) {
        switch (judged(layout, *reading, limit, free_mgN_per_L)) {
        case Against::Undecided:
            break;
        case Against::Above:
            if (inside) {
                stretches.back().until = halfway(stretches.back().last, reading->at);
            }
            inside = false;
            over = reading;
            break;
        case Against::Below:
            if (!inside) {
                stretches.push_back({over == nullptr ? reading->at : halfway(over->at, reading->at), {}, {}});
                inside = true;
            }
            stretches.back().last = reading->at;
            break;
        }
    }
    return stretches;
}

} // namespace

std::vector<GateOpening> gateOpenings(const record::LayoutRecord& layout, const forecast::GateRule& gate)
{
    std::vector<GateOpening> openings;
    const auto ammonia = stretchesOf(layout, u"tan"_s, gate.total_mgN_per_L, gate.free_mgN_per_L);
    const auto nitrite = stretchesOf(layout, u"no2"_s, gate.nitrite_mgN_per_L, std::numeric_limits<double>::infinity());
    const Moment ofAge = layout.layout.flooded.plusDays(gate.minDay);
    for (const Stretch& a : ammonia) {
        for (const Stretch& n : nitrite) {
            const Moment opened = std::max(std::max(a.from, n.from).plusDays(gate.spanDays), ofAge);
            if (std::min(a.last, n.last) < opened) {
                continue; // too short, or not yet read to its end
            }
            std::optional<Moment> shut = a.until;
            if (n.until && (!shut || *n.until < *shut)) {
                shut = n.until;
            }
            openings.push_back({opened, shut});
        }
    }
    std::ranges::sort(openings, {}, &GateOpening::opened);
    return openings;
}

} // namespace littoral::facade
