// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/row_load.h"

#include "core/care/work_template.h"

#include <algorithm>

namespace littoral::facade {

namespace {

void add(RowLoad& load, const std::vector<care::DueItem>& items)
{
    const QDate today = load.days.front().day;
    for (const care::DueItem& item : items) {
        const qint64 place = std::max<qint64>(0, today.daysTo(item.due));
        if (care::isOffered(item) || place >= static_cast<qint64>(load.days.size())) {
            continue;
        }
        LoadDay& day = load.days[static_cast<std::size_t>(place)];
        ++day.tasks;
        day.minutes += item.minutes;
    }
}

} // namespace

int RowLoad::minutes(int wanted) const
{
    int sum = 0;
    for (std::size_t i = 0; i < days.size() && i < static_cast<std::size_t>(std::max(0, wanted)); ++i) {
        sum += days[i].minutes;
    }
    return sum;
}

double RowLoad::litres(int wanted) const
{
    double sum = 0.0;
    for (std::size_t i = 0; i < days.size() && i < static_cast<std::size_t>(std::max(0, wanted)); ++i) {
        sum += days[i].litres;
    }
    return sum;
}

const LoadDay* RowLoad::firstCollision() const
{
    const auto found = std::ranges::find(days, true, &LoadDay::collides);
    return found == days.end() ? nullptr : &*found;
}

RowLoad rowLoad(const record::Row& row, const record::Moment& now, int days)
{
    RowPlanOptions options;
    options.days = days;
    const RowPlan water = rowPlan(row, now, options);
    RowLoad load;
    for (const WaterDay& day : water.days) {
        LoadDay made{day.day, 0, 0, day.litres, day.collides, {}, day.freerDay};
        for (const PlannedWater& change : day.changes) {
            if (day.collides && change.large) {
                made.large << change.tankName;
            }
        }
        load.days.push_back(std::move(made));
    }
    const QDate last = load.days.back().day;
    const care::TemplateSet templates = care::templatesFor(row);
    for (const record::Tank& tank : row.tanks) {
        if (const record::LayoutRecord* layout = row.currentLayout(tank.id, now)) {
            add(load, care::dueWork(row, layout->layout.id, now, last, templates));
        }
    }
    add(load, care::rowWork(row, now, last));
    return load;
}

} // namespace littoral::facade
