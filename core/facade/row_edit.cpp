// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/row_edit.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

// Each record put in by time searches its layout; beyond this many a fresh reading of the store is quicker.
constexpr std::size_t kWorthReloading = 200;

template <typename T> void putById(std::vector<T>& all, const T& record)
{
    const auto found = std::ranges::find(all, record.id, &T::id);
    if (found == all.end()) {
        all.push_back(record);
    } else {
        *found = record;
    }
}

/// Keeps `all` oldest first: the record is taken out where it was and put in where it belongs.
template <typename T> void putByTime(std::vector<T>& all, const T& record)
{
    std::erase_if(all, [&](const T& other) { return other.id == record.id; });
    const auto place = std::ranges::upper_bound(all, std::pair(record.at.utcMs(), record.id), {},
                                                [](const T& other) { return std::pair(other.at.utcMs(), other.id); });
    all.insert(place, record);
}

/// Puts one record; false when the row in memory cannot take it by itself.
struct Putter
{
    record::Row& row;

    bool operator()(const record::Tank& tank) const
    {
        putById(row.tanks, tank);
        std::ranges::stable_sort(row.tanks, {}, &record::Tank::position);
        return true;
    }
    bool operator()(const record::Layout& layout) const
    {
        row.layouts[layout.id].layout = layout;
        return true;
    }
    bool operator()(const record::Reading& reading) const
    {
        const auto found = row.layouts.find(reading.layout);
        if (found == row.layouts.end()) {
            return false;
        }
        forgetElsewhere(reading.id, reading.layout, &record::LayoutRecord::readings);
        putByTime(found->second.readings, reading);
        return true;
    }
    bool operator()(const record::Entry& entry) const
    {
        const auto found = row.layouts.find(entry.layout);
        if (found == row.layouts.end()) {
            return false;
        }
        forgetElsewhere(entry.id, entry.layout, &record::LayoutRecord::entries);
        putByTime(found->second.entries, entry);
        return true;
    }
    bool operator()(const record::Task& task) const
    {
        const auto found = row.layouts.find(task.layout);
        if (found == row.layouts.end()) {
            return false;
        }
        putById(found->second.tasks, task);
        return true;
    }
    bool operator()(const record::DoseRegimen& regimen) const
    {
        const auto found = row.layouts.find(regimen.layout);
        if (found == row.layouts.end()) {
            return false;
        }
        putById(found->second.regimens, regimen);
        return true;
    }
    bool operator()(const record::SourceWater& water) const { return putById(row.sources, water), true; }
    bool operator()(const record::TestKit& kit) const { return putById(row.kits, kit), true; }
    bool operator()(const record::Supply& supply) const { return putById(row.supplies, supply), true; }
    bool operator()(const record::TaskTemplate& made) const { return putById(row.templates, made), true; }
    bool operator()(const record::Target& target) const { return putById(row.targets, target), true; }
    bool operator()(const record::Plan& plan) const { return putById(row.plans, plan), true; }
    bool operator()(const record::Journey& journey) const { return putById(row.journeys, journey), true; }
    bool operator()(const record::Photo&) const { return true; }
    bool operator()(const record::IssuedForecast&) const { return true; }

    template <typename Id, typename List> void forgetElsewhere(Id id, record::LayoutId home, List list) const
    {
        for (auto& [layoutId, record] : row.layouts) {
            if (layoutId != home) {
                std::erase_if(record.*list, [&](const auto& other) { return other.id == id; });
            }
        }
    }
};

/// Removes a record that nothing hangs on; false for those that take others with them.
struct Remover
{
    record::Row& row;

    bool operator()(record::ReadingId id) const
    {
        for (auto& [layoutId, record] : row.layouts) {
            std::erase_if(record.readings, [&](const record::Reading& r) { return r.id == id; });
        }
        return true;
    }
    bool operator()(record::JourneyId id) const
    {
        std::erase_if(row.journeys, [&](const record::Journey& j) { return j.id == id; });
        return true;
    }
    template <typename Other> bool operator()(Other) const { return false; }
};

} // namespace

bool applyTo(record::Row& row, const store::Edit& edit)
{
    if (edit.steps().size() > kWorthReloading) {
        return false;
    }
    for (const store::Edit::Step& step : edit.steps()) {
        bool done = true;
        if (const auto* put = std::get_if<store::Edit::Put>(&step)) {
            done = std::visit(Putter{row}, put->record);
        } else if (const auto* removal = std::get_if<store::Edit::Remove>(&step)) {
            done = std::visit(Remover{row}, removal->id);
        } else if (const auto* setting = std::get_if<store::Setting>(&step)) {
            if (setting->value.isEmpty()) {
                row.settings.remove(setting->key);
            } else {
                row.settings.insert(setting->key, setting->value);
            }
        }
        if (!done) {
            return false;
        }
    }
    return true;
}

namespace {

/// The planned change that a round stands for, taken over as done, its plan kept beside it.
std::optional<record::Entry> plannedChange(const record::LayoutRecord& layout, const care::DueItem& item)
{
    const auto planned = std::ranges::find_if(layout.entries, [&](const record::Entry& e) {
        return item.plannedEntry
                   ? e.id == item.plannedEntry
                   : e.planned && e.kind == record::EntryKind::WaterChange && e.at.localDate() == item.due;
    });
    if (planned == layout.entries.end()) {
        return std::nullopt;
    }
    record::Entry entry = *planned;
    entry.planned = false;
    entry.plannedFor = planned->at;
    entry.plannedFraction = planned->fraction;
    return entry;
}

} // namespace

std::optional<record::Entry> entryThatCloses(const record::Row& row, const care::DueItem& item,
                                             const record::Moment& at)
{
    const record::LayoutRecord* layout = row.layout(item.layout);
    if (layout == nullptr) {
        return std::nullopt;
    }
    if (item.kind == care::WorkKind::WaterChange || item.plannedEntry) {
        if (std::optional<record::Entry> entry = plannedChange(*layout, item)) {
            entry->at = at;
            return entry;
        }
    }
    record::Entry entry;
    entry.tank = item.tank;
    entry.layout = item.layout;
    entry.at = at;
    if (item.kind == care::WorkKind::WaterChange) {
        entry.kind = record::EntryKind::WaterChange;
        entry.fraction = item.fraction;
        entry.source = layout->layout.source;
        return entry;
    }
    if (item.kind == care::WorkKind::Dose) {
        entry.kind = record::EntryKind::Dose;
        entry.subject = item.subject;
        entry.amount = item.amount;
        entry.unit = item.unit;
        return entry;
    }
    const care::TemplateSet templates = care::templatesFor(row);
    const care::WorkTemplate* work = templates.find(item.templateKey);
    if (work == nullptr || !work->closes.kind || work->closes.byReadings()) {
        return std::nullopt;
    }
    entry.kind = *work->closes.kind;
    entry.subject = work->closes.subject;
    if (entry.kind == record::EntryKind::TopUp) {
        entry.amount = item.litres;
        entry.unit = u"L"_s;
    }
    return entry;
}

record::Task taskFor(const record::Row& row, const care::DueItem& item, const record::Moment& now)
{
    const record::LayoutRecord* layout = item.task ? row.layout(item.layout) : nullptr;
    if (layout != nullptr) {
        const auto found = std::ranges::find(layout->tasks, item.task, &record::Task::id);
        if (found != layout->tasks.end()) {
            return *found;
        }
    }
    record::Task task;
    task.tank = item.tank;
    task.layout = item.layout;
    task.templateKey = item.templateKey;
    task.title = item.templateKey.isEmpty() ? item.subject : QString();
    task.due = item.cadenceDue;
    task.enteredAt = now;
    return task;
}

Result<record::Reading> readingAsTyped(const record::Row& row, record::LayoutId id, const QString& parameterKey,
                                       const QString& typed, const QString& unit, record::KitId kitId,
                                       const record::Moment& at)
{
    const record::LayoutRecord* layout = row.layout(id);
    const record::Parameter* parameter = record::findParameter(parameterKey);
    if (layout == nullptr || parameter == nullptr) {
        return Error{Fault::NotFound,
                     QCoreApplication::translate("littoral::facade::Keeper",
                                                 "That tank or parameter is not in the store any more.")
                         .toStdString(),
                     {},
                     {}};
    }
    const record::TestKit* kit = kitId ? row.kit(kitId) : row.kitFor(*layout, parameter->key);
    record::Reading reading;
    reading.tank = layout->layout.tank;
    reading.layout = id;
    reading.parameter = parameter->key;
    reading.at = at;
    reading.kit = kit == nullptr ? record::KitId{} : kit->id;
    const QString given = !unit.isEmpty() ? unit : kit != nullptr ? kit->unit : parameter->shown().code;
    if (auto set = record::setTypedValue(reading, typed, given); !set) {
        return set.error();
    }
    return reading;
}

} // namespace littoral::facade
