// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/row.h"

#include <algorithm>
#include <ranges>

namespace littoral::record {

namespace {

template <typename T, typename Key> const T* findById(const std::vector<T>& all, Key id)
{
    const auto found = std::ranges::find(all, id, &T::id);
    return found == all.end() ? nullptr : &*found;
}

} // namespace

const Reading* LayoutRecord::newest(const QString& parameter, const Moment& at) const
{
    for (auto it = readings.rbegin(); it != readings.rend(); ++it) {
        if (it->at <= at && it->parameter == parameter) {
            return &*it;
        }
    }
    return nullptr;
}

std::vector<const Reading*> LayoutRecord::readingsOf(const QString& parameter) const
{
    std::vector<const Reading*> found;
    for (const Reading& reading : readings) {
        if (reading.parameter == parameter) {
            found.push_back(&reading);
        }
    }
    return found;
}

const Entry* LayoutRecord::lastDone(EntryKind kind, const Moment& at, const QString& subject) const
{
    for (auto it = entries.rbegin(); it != entries.rend(); ++it) {
        if (it->kind == kind && !it->planned && it->at <= at && (subject.isEmpty() || it->subject == subject)) {
            return &*it;
        }
    }
    return nullptr;
}

const Tank* Row::tank(TankId id) const
{
    return findById(tanks, id);
}

const Tank* Row::tankNamed(const QString& name) const
{
    const auto found = std::ranges::find_if(
        tanks, [&](const Tank& t) { return t.name.compare(name.trimmed(), Qt::CaseInsensitive) == 0; });
    return found == tanks.end() ? nullptr : &*found;
}

const SourceWater* Row::source(SourceWaterId id) const
{
    return findById(sources, id);
}

const TestKit* Row::kit(KitId id) const
{
    return findById(kits, id);
}

const LayoutRecord* Row::layout(LayoutId id) const
{
    const auto found = layouts.find(id);
    return found == layouts.end() ? nullptr : &found->second;
}

const LayoutRecord* Row::currentLayout(TankId tankId, const Moment& at) const
{
    const std::vector<const LayoutRecord*> all = layoutsOf(tankId);
    const LayoutRecord* best = nullptr;
    for (const LayoutRecord* candidate : all) {
        const bool running =
            candidate->layout.flooded <= at && (!candidate->layout.ended || *candidate->layout.ended > at);
        if (running) {
            best = candidate;
        }
    }
    if (best != nullptr) {
        return best;
    }
    for (const LayoutRecord* candidate : all) {
        if (candidate->layout.flooded > at) {
            return candidate;
        }
    }
    return all.empty() ? nullptr : all.back();
}

const LayoutRecord* Row::layoutAt(TankId tankId, const Moment& at) const
{
    const LayoutRecord* before = nullptr;
    const LayoutRecord* after = nullptr;
    for (const LayoutRecord* candidate : layoutsOf(tankId)) {
        if (candidate->layout.flooded <= at) {
            before = candidate;
        } else if (after == nullptr) {
            after = candidate;
        }
    }
    if (before == nullptr || after == nullptr || !before->layout.ended || *before->layout.ended > at) {
        return before != nullptr ? before : after;
    }
    const qint64 sinceEnd = at.utcMs() - before->layout.ended->utcMs();
    const qint64 untilFlooding = after->layout.flooded.utcMs() - at.utcMs();
    return sinceEnd <= untilFlooding ? before : after;
}

std::vector<const LayoutRecord*> Row::layoutsOf(TankId tankId) const
{
    std::vector<const LayoutRecord*> found;
    for (const auto& [id, record] : layouts) {
        if (record.layout.tank == tankId) {
            found.push_back(&record);
        }
    }
    std::ranges::stable_sort(
        found, [](const LayoutRecord* a, const LayoutRecord* b) { return a->layout.flooded < b->layout.flooded; });
    return found;
}

const TestKit* Row::kitFor(const LayoutRecord& record, const QString& parameter) const
{
    for (auto it = record.readings.rbegin(); it != record.readings.rend(); ++it) {
        if (it->parameter == parameter && it->kit) {
            return kit(it->kit);
        }
    }
    const auto found =
        std::ranges::find_if(kits, [&](const TestKit& k) { return k.parameter == parameter && !k.retired; });
    return found == kits.end() ? nullptr : &*found;
}

const Target* Row::target(TankId tankId, const QString& parameter) const
{
    const auto found =
        std::ranges::find_if(targets, [&](const Target& t) { return t.tank == tankId && t.parameter == parameter; });
    return found == targets.end() ? nullptr : &*found;
}

std::size_t Row::recordCount() const
{
    std::size_t count = 0;
    for (const auto& [id, record] : layouts) {
        count += record.readings.size() + record.entries.size();
    }
    return count;
}

void sortRow(Row& row)
{
    std::ranges::stable_sort(row.tanks, [](const Tank& a, const Tank& b) {
        return std::pair(a.position, a.id) < std::pair(b.position, b.id);
    });
    for (auto& [id, record] : row.layouts) {
        std::ranges::sort(record.readings, [](const Reading& a, const Reading& b) {
            return std::pair(a.at.utcMs(), a.id) < std::pair(b.at.utcMs(), b.id);
        });
        std::ranges::sort(record.entries, [](const Entry& a, const Entry& b) {
            return std::pair(a.at.utcMs(), a.id) < std::pair(b.at.utcMs(), b.id);
        });
    }
}

} // namespace littoral::record
