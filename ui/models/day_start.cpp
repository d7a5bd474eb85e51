// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/day_start.h"

namespace littoral::ui {

record::Row rowAtDayStart(const record::Row& row, record::LayoutId layout, const QDate& day)
{
    record::Row start;
    start.sources = row.sources;
    start.kits = row.kits;
    start.supplies = row.supplies;
    start.templates = row.templates;
    start.targets = row.targets;
    start.settings = row.settings;
    const record::LayoutRecord* found = row.layout(layout);
    if (found == nullptr) {
        return start;
    }
    if (const record::Tank* tank = row.tank(found->layout.tank)) {
        start.tanks.push_back(*tank);
    }
    record::LayoutRecord copy = *found;
    std::erase_if(copy.readings, [&](const record::Reading& reading) { return reading.at.localDate() >= day; });
    std::erase_if(copy.entries,
                  [&](const record::Entry& entry) { return !entry.planned && entry.at.localDate() >= day; });
    for (record::Task& task : copy.tasks) {
        if (task.closedAt && task.closedAt->localDate() >= day) {
            task.state = record::TaskState::Open;
            task.closedAt.reset();
            task.closedBy = {};
        }
    }
    start.layouts.emplace(layout, std::move(copy));
    return start;
}

} // namespace littoral::ui
