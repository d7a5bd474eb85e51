// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/row_plan.h"

#include "core/care/due.h"
#include "core/care/work_template.h"

#include <algorithm>

namespace littoral::facade {

namespace {

constexpr int kMostDays = 92;

/// Water changes alone: the rest of the work asks for no water.
care::TemplateSet waterTemplates(const record::Row& row)
{
    care::TemplateSet set = care::templatesFor(row);
    std::erase_if(set.all, [](const care::WorkTemplate& work) { return work.kind != care::WorkKind::WaterChange; });
    return set;
}

void addUnique(QStringList& list, const QString& name)
{
    if (!list.contains(name)) {
        list << name;
    }
}

class Planner
{
public:
    Planner(const record::Row& row, const record::Moment& now, const RowPlanOptions& options)
        : m_row(row)
        , m_now(now)
        , m_today(now.localDate())
        , m_options(options)
        , m_templates(waterTemplates(row))
    {
        const int days = std::clamp(options.days, 1, kMostDays);
        for (int i = 0; i < days; ++i) {
            m_plan.days.push_back({m_today.addDays(i), {}, 0.0, 0.0, 0.0, {}, false, {}});
        }
    }

    RowPlan run()
    {
        for (const record::Tank& tank : m_row.tanks) {
            addTank(tank);
        }
        for (WaterDay& day : m_plan.days) {
            sum(day);
        }
        m_plan.conditioner_mL = conditioner(m_plan.toTreat_L);
        findFreerDays();
        return std::move(m_plan);
    }

private:
    void addTank(const record::Tank& tank)
    {
        const record::LayoutRecord* layout = m_row.currentLayout(tank.id, m_now);
        if (layout == nullptr) {
            return;
        }
        const QDate last = m_plan.days.back().day;
        for (const care::DueItem& item : care::dueWork(m_row, layout->layout.id, m_now, last, m_templates)) {
            // Snoozed work keeps the day it was put off to; a question about the cadence carries no water.
            if (item.kind == care::WorkKind::WaterChange && item.due <= last) {
                addChange(tank, item);
            }
        }
    }

    void addChange(const record::Tank& tank, const care::DueItem& item)
    {
        PlannedWater change;
        change.tank = tank.id;
        change.tankName = tank.name;
        change.fraction = item.fraction;
        change.litres = item.litres;
        change.daysOver = item.daysOver;
        change.byHand = item.reason.basis == care::Basis::ByHand || item.reason.basis == care::Basis::Planned;
        change.large =
            item.fraction.value_or(0.0) >= m_options.largeFraction || item.litres.value_or(0.0) >= m_options.large_L;
        if (!item.litres) {
            addUnique(m_plan.volumeUnknown, tank.name);
        }
        divide(change, item);
        const auto place = std::max<qint64>(0, m_today.daysTo(item.due));
        m_plan.days[static_cast<std::size_t>(place)].changes.push_back(std::move(change));
    }

    /// What comes through the mains meets the conditioner; the rest does not. A layout that names no source, and a
    /// blend that does not name its parts, are taken to get tap water: to treat too much is the safer mistake.
    void divide(PlannedWater& change, const care::DueItem& item)
    {
        change.source = item.sourceName;
        change.parts = item.parts;
        if (item.parts.empty()) {
            change.toTreat_L = change.litres.value_or(0.0);
            change.partsUnknown = !item.sourceName.isEmpty();
            if (change.partsUnknown) {
                addUnique(m_plan.blendUnknown, item.sourceName);
            }
            return;
        }
        for (const care::WaterPart& part : item.parts) {
            change.demineralised_L += part.kind == record::SourceKind::ReverseOsmosis ? part.litres : 0.0;
            change.toTreat_L += part.kind == record::SourceKind::Tap ? part.litres : 0.0;
            const auto known = std::ranges::find(m_plan.waters, part.name, &care::WaterPart::name);
            if (known == m_plan.waters.end()) {
                m_plan.waters.push_back(part);
            } else {
                known->litres += part.litres;
            }
        }
    }

    [[nodiscard]] std::optional<double> conditioner(double litres) const
    {
        return m_options.conditioner_mL_per_100L ? std::optional(litres * *m_options.conditioner_mL_per_100L / 100.0)
                                                 : std::nullopt;
    }

    void sum(WaterDay& day)
    {
        int large = 0;
        for (const PlannedWater& change : day.changes) {
            day.litres += change.litres.value_or(0.0);
            day.demineralised_L += change.demineralised_L;
            day.toTreat_L += change.toTreat_L;
            large += change.large ? 1 : 0;
        }
        day.conditioner_mL = conditioner(day.toTreat_L);
        day.collides = large > 1;
        m_plan.collisions += day.collides ? 1 : 0;
        m_plan.litres += day.litres;
        m_plan.demineralised_L += day.demineralised_L;
        m_plan.toTreat_L += day.toTreat_L;
    }

    void findFreerDays()
    {
        const auto hasLarge = [](const WaterDay& day) {
            return std::ranges::any_of(day.changes, &PlannedWater::large);
        };
        for (WaterDay& day : m_plan.days) {
            for (const WaterDay& other : m_plan.days) {
                const auto away = std::abs(day.day.daysTo(other.day));
                if (day.collides && !hasLarge(other) &&
                    (!day.freerDay || away < std::abs(day.day.daysTo(*day.freerDay)))) {
                    day.freerDay = other.day;
                }
            }
        }
    }

    const record::Row& m_row;
    const record::Moment& m_now;
    QDate m_today;
    RowPlanOptions m_options;
    care::TemplateSet m_templates;
    RowPlan m_plan;
};

} // namespace

RowPlan rowPlan(const record::Row& row, const record::Moment& now, const RowPlanOptions& options)
{
    return Planner(row, now, options).run();
}

} // namespace littoral::facade
