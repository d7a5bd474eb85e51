// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/cycle_phase.h"

#include "core/care/age.h"
#include "core/care/limits.h"

#include <algorithm>
#include <set>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Moment;
using record::Reading;

namespace {

constexpr double kStaleDays = 21.0;
constexpr double kClearRunDays = 7.0;
constexpr int kSettledAge = 57;
constexpr int kMatureMediaDays = 14;
constexpr int kSilentStartDays = 14; // both low this early says nothing yet: the ammonia may still be to come
constexpr double kNearPeak = 0.75;   // water changes make readings saw: within a quarter of the peak is still "rising"

/// One substance as seen from `at`.
struct Seen
{
    const Reading* newest = nullptr;
    double peak = 0.0; ///< in the last three weeks
    bool everRaised = false;
    std::optional<Moment> clearSince; ///< first reading of the run of clear ones that lasts to the newest

    [[nodiscard]] bool raised(double clear) const { return newest->value > clear; }
    [[nodiscard]] bool nearPeak() const { return newest->value >= kNearPeak * peak; }
};

Seen look(const std::vector<const Reading*>& readings, const Moment& at, double clear)
{
    Seen seen;
    for (const Reading* reading : readings) {
        if (reading->at > at) {
            break;
        }
        seen.newest = reading;
        const bool raised = reading->value > clear;
        seen.everRaised = seen.everRaised || raised;
        if (raised) {
            seen.clearSince.reset();
        } else if (!seen.clearSince) {
            seen.clearSince = reading->at;
        }
        if (record::daysBetween(reading->at, at) <= kStaleDays) {
            seen.peak = std::max(seen.peak, reading->value);
        }
    }
    return seen;
}

bool isFresh(const Seen& seen, const Moment& at)
{
    return seen.newest != nullptr && record::daysBetween(seen.newest->at, at) <= kStaleDays;
}

CyclePhase whenStale(const Seen& ammonia, const Seen& nitrite, int age)
{
    const bool wasClear =
        ammonia.newest != nullptr && nitrite.newest != nullptr && ammonia.clearSince && nitrite.clearSince;
    return wasClear && age >= kSettledAge ? CyclePhase::Settled : CyclePhase::Unknown;
}

CyclePhase whenClear(const Seen& ammonia, const Seen& nitrite, const record::Layout& layout, int age, const Moment& at)
{
    const bool sawCycle = ammonia.everRaised || nitrite.everRaised;
    if (!sawCycle && age < kSilentStartDays && layout.start != record::StartMethod::MatureMedia) {
        return CyclePhase::Unknown;
    }
    const Moment since = std::max(*ammonia.clearSince, *nitrite.clearSince);
    if (record::daysBetween(since, at) < kClearRunDays) {
        return CyclePhase::Clear;
    }
    return age >= kSettledAge ? CyclePhase::Settled : CyclePhase::GrowingIn;
}

CyclePhase judge(const record::Layout& layout, const std::vector<const Reading*>& tan,
                 const std::vector<const Reading*>& no2, const Limits& limits, const Moment& at)
{
    if (!layout.flooded.isValid() || layout.flooded > at) {
        return CyclePhase::Unknown;
    }
    const int age = ageDays(layout, at.localDate());
    const Seen ammonia = look(tan, at, limits.ammoniaClear);
    const Seen nitrite = look(no2, at, limits.nitriteClear);
    const bool ammoniaFresh = isFresh(ammonia, at);
    const bool nitriteFresh = isFresh(nitrite, at);
    const bool ammoniaUp = ammoniaFresh && ammonia.raised(limits.ammoniaClear);
    const bool nitriteUp = nitriteFresh && nitrite.raised(limits.nitriteClear);
    if (layout.start == record::StartMethod::MatureMedia && age <= kMatureMediaDays && (ammoniaUp || nitriteUp) &&
        (!nitriteUp || nitrite.newest->value < limits.nitriteAnimals) && (!ammoniaUp || ammonia.newest->value < 1.0)) {
        return CyclePhase::MatureMediaSettling;
    }
    if (nitriteUp && (!ammoniaUp || nitrite.newest->value >= limits.nitriteAnimals)) {
        return nitrite.nearPeak() ? CyclePhase::NitriteRising : CyclePhase::NitriteFalling;
    }
    if (ammoniaUp) {
        return ammonia.nearPeak() ? CyclePhase::AmmoniaRising : CyclePhase::AmmoniaFalling;
    }
    if (!ammoniaFresh || !nitriteFresh) {
        return whenStale(ammonia, nitrite, age);
    }
    return whenClear(ammonia, nitrite, layout, age, at);
}

/// Instants at which the phase can change: each reading and its going stale, the clear run's week, the ages that
/// matter.
std::set<qint64> turningPoints(const record::Layout& layout, const std::vector<const Reading*>& readings)
{
    std::set<qint64> points{layout.flooded.utcMs()};
    for (const Reading* reading : readings) {
        points.insert(reading->at.utcMs());
        points.insert(reading->at.plusDays(kClearRunDays).utcMs());
        points.insert(reading->at.plusDays(kStaleDays).utcMs() + 1);
    }
    const Moment flooded = layout.flooded;
    for (const int age : {kSilentStartDays, kMatureMediaDays + 1, kSettledAge}) {
        const QDateTime midnight(flooded.localDate().addDays(age), QTime(0, 0), Qt::OffsetFromUTC,
                                 flooded.offsetSeconds());
        points.insert(midnight.toMSecsSinceEpoch());
    }
    return points;
}

} // namespace

CyclePhase cyclePhase(const record::LayoutRecord& layout, const Moment& at)
{
    return cyclePhase(layout, at, Limits{});
}

std::vector<CyclePhaseSpan> cyclePhases(const record::LayoutRecord& layout, const Moment& until)
{
    return cyclePhases(layout, until, Limits{});
}

CyclePhase cyclePhase(const record::LayoutRecord& layout, const Moment& at, const Limits& limits)
{
    return judge(layout.layout, layout.readingsOf(u"tan"_s), layout.readingsOf(u"no2"_s), limits, at);
}

std::vector<CyclePhaseSpan> cyclePhases(const record::LayoutRecord& layout, const Moment& until, const Limits& limits)
{
    const record::Layout& l = layout.layout;
    const Moment end = l.ended && *l.ended < until ? *l.ended : until;
    if (!l.flooded.isValid() || l.flooded >= end) {
        return {};
    }
    const auto tan = layout.readingsOf(u"tan"_s);
    const auto no2 = layout.readingsOf(u"no2"_s);
    std::vector<const Reading*> both = tan;
    both.insert(both.end(), no2.begin(), no2.end());
    std::vector<CyclePhaseSpan> spans;
    for (const qint64 ms : turningPoints(l, both)) {
        const Moment at(ms, l.flooded.offsetSeconds());
        if (at < l.flooded || at >= end) {
            continue;
        }
        const CyclePhase now = judge(l, tan, no2, limits, at);
        if (spans.empty() || spans.back().phase != now) {
            if (!spans.empty()) {
                spans.back().to = at;
            }
            spans.push_back({now, at, end});
        }
    }
    return spans;
}

} // namespace littoral::care
