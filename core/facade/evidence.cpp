// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/evidence.h"

#include <algorithm>

namespace littoral::facade {

using record::Entry;
using record::EntryKind;

namespace {

// A change planned for today whose hour has passed is taken to be done this long from now.
constexpr double kSoonDays = 1.0 / 24.0;

} // namespace

bool isIntervention(EntryKind kind)
{
    switch (kind) {
    case EntryKind::WaterChange:
    case EntryKind::TopUp:
    case EntryKind::Dose:
    case EntryKind::Feeding:
    case EntryKind::Addition:
    case EntryKind::MediaTransfer:
    case EntryKind::LightChange:
    case EntryKind::Co2Change:
        return true;
    case EntryKind::Upkeep:
    case EntryKind::Observation:
    case EntryKind::Loss:
    case EntryKind::Note:
        break;
    }
    return false;
}

std::vector<Entry> planAfter(const record::LayoutRecord& layout, const record::Moment& asOf, int* missed)
{
    std::vector<Entry> plan;
    for (const Entry& entry : layout.entries) {
        if (!isIntervention(entry.kind)) {
            continue;
        }
        Entry as = entry;
        if (!entry.planned && entry.plannedFor) {
            if (entry.at <= asOf) {
                continue; // done by then: part of the past
            }
            // Done since: what counts is what was planned, so that the answer does not know how it went.
            as.at = *entry.plannedFor;
            as.fraction = entry.plannedFraction ? entry.plannedFraction : entry.fraction;
        } else if (!entry.planned && entry.at <= asOf) {
            continue;
        }
        if (as.at <= asOf && as.kind == EntryKind::WaterChange && as.at.localDate() == asOf.localDate()) {
            as.at = asOf.plusDays(kSoonDays); // its hour has passed, its day has not
        }
        if (as.at <= asOf) {
            if (missed != nullptr) {
                ++*missed;
            }
            continue;
        }
        as.planned = true;
        as.plannedFor.reset();
        plan.push_back(std::move(as));
    }
    std::ranges::stable_sort(plan, {}, [](const Entry& e) { return e.at.utcMs(); });
    return plan;
}

record::Row asKnownAt(const record::Row& row, record::LayoutId layoutId, const record::Moment& asOf)
{
    record::Row known;
    known.tanks = row.tanks;
    known.sources = row.sources;
    known.kits = row.kits;
    known.templates = row.templates;
    known.targets = row.targets;
    known.settings = row.settings;
    std::ranges::copy_if(row.plans, std::back_inserter(known.plans),
                         [&](const record::Plan& plan) { return plan.layout == layoutId && plan.created <= asOf; });
    const record::LayoutRecord* full = row.layout(layoutId);
    if (full == nullptr) {
        return known;
    }
    record::LayoutRecord& then = known.layouts[layoutId];
    then.layout = full->layout;
    if (then.layout.ended && *then.layout.ended > asOf) {
        then.layout.ended.reset();
    }
    std::ranges::copy_if(full->readings, std::back_inserter(then.readings),
                         [&](const record::Reading& r) { return r.at <= asOf; });
    for (const Entry& entry : full->entries) {
        if (entry.at > asOf || (entry.planned && entry.at <= asOf)) {
            continue;
        }
        then.entries.push_back(entry);
    }
    // Plans that had lapsed by then stay visible as plans; those to come stand as they were planned.
    std::vector<Entry> plan = planAfter(*full, asOf, nullptr);
    for (const Entry& entry : full->entries) {
        const bool toCome = std::ranges::find(plan, entry.id, &Entry::id) != plan.end();
        if (entry.planned && entry.at <= asOf && !toCome) {
            then.entries.push_back(entry);
        }
    }
    std::ranges::move(plan, std::back_inserter(then.entries));
    for (record::Task task : full->tasks) {
        if (task.closedAt && *task.closedAt > asOf) {
            task.state = record::TaskState::Open;
            task.closedAt.reset();
            task.closedBy = {};
        }
        if (!task.enteredAt.isValid() || task.enteredAt <= asOf) {
            then.tasks.push_back(std::move(task));
        }
    }
    record::sortRow(known);
    return known;
}

} // namespace littoral::facade
