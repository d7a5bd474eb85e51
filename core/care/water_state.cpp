// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/water_state.h"

#include "core/care/events.h"
#include "core/care/limits.h"
#include "core/record/source_profile.h"
#include "core/water/ammonia.h"

#include <algorithm>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Reading;

namespace {

/// Reading of a parameter nearest in time to `at`, within `days` of it.
const Reading* nearest(const record::LayoutRecord& layout, const QString& parameter, const record::Moment& at,
                       double days)
{
    const Reading* best = nullptr;
    double bestGap = days;
    for (const Reading& reading : layout.readings) {
        const double gap = std::abs(record::daysBetween(reading.at, at));
        if (gap <= bestGap && reading.parameter == parameter) {
            best = &reading;
            bestGap = gap;
        }
    }
    return best;
}

} // namespace

std::optional<FreeAmmonia> freeAmmoniaOf(const record::LayoutRecord& layout, const Reading& totalAmmonia)
{
    const Reading* ph = nearest(layout, u"ph"_s, totalAmmonia.at, 3.0);
    if (ph == nullptr) {
        return std::nullopt;
    }
    const Reading* temperature = nearest(layout, u"temp"_s, totalAmmonia.at, 7.0);
    const double t_C = temperature != nullptr ? temperature->value : layout.layout.temperature_C;
    const auto free = water::freeAmmonia({totalAmmonia.value}, ph->value, t_C);
    return free ? std::optional(FreeAmmonia{free->value, ph, temperature}) : std::nullopt;
}

bool isPoorInChloride(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& at)
{
    const Limits limits = limitsOf(row);
    if (const Reading* chloride = layout.newest(u"cl"_s, at)) {
        return chloride->value < limits.poorChloride_mg_per_L;
    }
    const record::SourceWater* source = row.source(layout.layout.source);
    if (source == nullptr) {
        return false;
    }
    const record::SourceFigure chloride = record::sourceProfile(row.sources, *source).chloride_mg_per_L;
    return chloride.value ? *chloride.value < limits.poorChloride_mg_per_L : source->kind == record::SourceKind::Rain;
}

bool isSoonAfterChange(const record::LayoutRecord& layout, const Reading& reading, double hours)
{
    const auto change = lastChangeBefore(layout, reading.at);
    return change && record::daysBetween(*change, reading.at) * 24.0 < hours;
}

Against compare(const Reading& reading, double limit)
{
    switch (reading.censoring) {
    case record::Censoring::Below:
        return reading.value <= limit ? Against::Below : Against::Undecided;
    case record::Censoring::Between:
        if (reading.high <= limit) {
            return Against::Below;
        }
        return reading.low > limit ? Against::Above : Against::Undecided;
    case record::Censoring::Above:
        return reading.value >= limit ? Against::Above : Against::Undecided;
    case record::Censoring::None:
        break;
    }
    return reading.value <= limit ? Against::Below : Against::Above;
}

bool isRaised(const Reading& reading, const Limits& limits)
{
    const bool over = (reading.parameter == u"tan"_s && reading.value > limits.ammoniaClear) ||
                      (reading.parameter == u"no2"_s && reading.value > limits.nitriteClear);
    return over && reading.censoring != record::Censoring::Below; // "<0.25" is not above it
}

const Reading* reactionToAddition(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& now)
{
    const auto additions = occurrences(row, layout, Event::Addition, now);
    if (additions.empty()) {
        return nullptr;
    }
    const Limits limits = limitsOf(row);
    for (auto it = layout.readings.rbegin(); it != layout.readings.rend(); ++it) {
        if (it->at > now || !isRaised(*it, limits)) {
            continue;
        }
        if (record::daysBetween(it->at, now) > kReactionDays) {
            return nullptr;
        }
        const bool follows = std::ranges::any_of(additions, [&](const record::Entry* addition) {
            return addition->at < it->at && record::daysBetween(addition->at, it->at) <= kReactionDays;
        });
        if (follows) {
            return &*it;
        }
    }
    return nullptr;
}

} // namespace littoral::care
