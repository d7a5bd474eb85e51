// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/due.h"

#include "core/care/rounds.h"
#include "core/record/source_profile.h"

#include <algorithm>
#include <tuple>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

bool isRunning(const record::LayoutRecord& layout, const record::Moment& now)
{
    return layout.layout.flooded.isValid() && (!layout.layout.ended || *layout.layout.ended > now);
}

void addOwnTasks(std::vector<DueItem>& items, const Desk& desk)
{
    for (const record::Task& task : desk.at.layout->tasks) {
        if (!task.templateKey.isEmpty() || task.state != record::TaskState::Open) {
            continue;
        }
        DueItem item;
        item.tank = desk.at.layout->layout.tank;
        item.layout = desk.at.layout->layout.id;
        item.kind = WorkKind::Own;
        item.subject = task.title;
        item.minutes = 5;
        item.priority = 2;
        item.reason.basis = Basis::ByHand;
        setDays(item, task.due, &task, desk.today);
        if (item.due <= std::max(desk.until, desk.today)) {
            items.push_back(std::move(item));
        }
    }
}

/// Planned entries other than water changes, which have their own rounds.
void addPlanned(std::vector<DueItem>& items, const Desk& desk)
{
    for (const record::Entry& entry : desk.at.layout->entries) {
        const QDate day = entry.at.localDate();
        if (!entry.planned || entry.kind == record::EntryKind::WaterChange || day > std::max(desk.until, desk.today)) {
            continue;
        }
        DueItem item;
        item.tank = desk.at.layout->layout.tank;
        item.layout = desk.at.layout->layout.id;
        item.kind = WorkKind::Own;
        item.plannedEntry = entry.id;
        item.subject = entry.subject.isEmpty() ? record::entryKindName(entry.kind) : entry.subject;
        item.minutes = 5;
        item.priority = 2;
        item.reason.basis = Basis::Planned;
        setDays(item, day, nullptr, desk.today);
        items.push_back(std::move(item));
    }
}

/// A test that follows an event is the same test as those already due that day, and two that follow different events
/// are one test.
void dropDoubledTests(std::vector<DueItem>& items)
{
    const auto coveredBy = [&](const DueItem& item, const QString& parameter) {
        return std::ranges::any_of(items, [&](const DueItem& other) {
            return &other != &item && other.kind == WorkKind::Test && other.templateKey != item.templateKey &&
                   other.due == item.due && other.parameters.contains(parameter);
        });
    };
    for (auto item = items.begin(); item != items.end();) {
        const bool doubled =
            item->reason.basis == Basis::Event && item->kind == WorkKind::Test &&
            std::ranges::all_of(item->parameters, [&](const QString& p) { return coveredBy(*item, p); });
        item = doubled ? items.erase(item) : item + 1;
    }
}

/// The water a planned entry names, else the layout's own, and what it is made of.
void nameWater(DueItem& item, const Desk& desk)
{
    const record::LayoutRecord& layout = *desk.at.layout;
    const auto entry = std::ranges::find(layout.entries, item.plannedEntry, &record::Entry::id);
    const bool named = item.plannedEntry && entry != layout.entries.end() && entry->source;
    const record::SourceWater* source = desk.at.row->source(named ? entry->source : layout.layout.source);
    if (source == nullptr) {
        return;
    }
    item.sourceName = source->name;
    const auto parts = record::sourceParts(desk.at.row->sources, *source);
    for (const record::SourcePart& part : parts ? *parts : std::vector<record::SourcePart>{}) {
        item.parts.push_back({part.water->name, part.water->kind, part.share * item.litres.value_or(0.0)});
    }
}

void soonestFirst(std::vector<DueItem>& items)
{
    std::ranges::stable_sort(items, [](const DueItem& a, const DueItem& b) {
        return std::tie(a.due, a.priority) < std::tie(b.due, b.priority);
    });
}

} // namespace

bool isOffered(const DueItem& item)
{
    return item.reason.basis == Basis::Cadence && !item.reason.last && item.priority > 1 &&
           item.kind != WorkKind::WaterChange;
}

std::vector<DueItem> dueWork(const record::Row& row, record::LayoutId id, const record::Moment& now, const QDate& until)
{
    return dueWork(row, id, now, until, templatesFor(row));
}

std::vector<DueItem> dueWork(const record::Row& row, record::LayoutId id, const record::Moment& now, const QDate& until,
                             const TemplateSet& templates)
{
    const record::LayoutRecord* layout = row.layout(id);
    if (layout == nullptr || !isRunning(*layout, now)) {
        return {};
    }
    const Desk desk = deskFor(row, *layout, now, until);
    std::vector<DueItem> items;
    for (const WorkTemplate& work : templates.all) {
        if (work.wholeRow) {
            continue;
        }
        std::ranges::move(work.kind == WorkKind::WaterChange ? waterRounds(work, desk) : roundsOf(work, desk),
                          std::back_inserter(items));
    }
    for (DueItem& item : items) {
        if (item.kind == WorkKind::WaterChange) {
            nameWater(item, desk);
        }
    }
    std::ranges::move(doseRounds(desk), std::back_inserter(items));
    addOwnTasks(items, desk);
    addPlanned(items, desk);
    dropDoubledTests(items);
    soonestFirst(items);
    return items;
}

std::vector<DueItem> rowWork(const record::Row& row, const record::Moment& now, const QDate& until)
{
    const record::LayoutRecord* host = nullptr;
    std::optional<record::Moment> oldest;
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout == nullptr || !isRunning(*layout, now) || layout->layout.flooded > now) {
            continue;
        }
        host = host == nullptr ? layout : host;
        oldest = oldest ? std::min(*oldest, layout->layout.flooded) : layout->layout.flooded;
    }
    if (host == nullptr) {
        return {};
    }
    Desk desk = deskFor(row, *host, now, until);
    desk.flooded = oldest->localDate();
    desk.recordFrom = std::max(desk.recordFrom, desk.flooded);
    std::vector<DueItem> items;
    for (const WorkTemplate& work : templatesFor(row).all) {
        if (work.wholeRow) {
            std::ranges::move(rowRoundsOf(work, desk), std::back_inserter(items));
        }
    }
    soonestFirst(items);
    return items;
}

} // namespace littoral::care
