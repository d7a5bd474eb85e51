// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/adopted_plan.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace littoral::care {

using namespace Qt::StringLiterals;

bool isOpenPlannedChange(const record::LayoutRecord& layout, const record::Entry& entry, const record::Moment& now)
{
    if (!entry.planned || entry.kind != record::EntryKind::WaterChange) {
        return false;
    }
    const record::Entry* last = layout.lastDone(record::EntryKind::WaterChange, now);
    return last == nullptr || entry.at.localDate() > last->at.localDate();
}

std::optional<PlanInForce> planInForce(const record::Row& row, const record::LayoutRecord& layout,
                                       const record::Moment& now)
{
    const record::Plan* newest = nullptr;
    for (const record::Plan& plan : row.plans) {
        if (plan.layout == layout.layout.id && plan.adopted && *plan.adopted <= now &&
            (newest == nullptr || *plan.adopted >= *newest->adopted)) {
            newest = &plan;
        }
    }
    if (newest == nullptr) {
        return std::nullopt;
    }
    const QJsonObject body = QJsonDocument::fromJson(newest->body).object();
    PlanInForce force{{}, *newest->adopted};
    if (body.value(u"changes"_s).toArray().isEmpty()) {
        force.lastDay = QDate::fromString(body.value(u"until"_s).toString(), Qt::ISODate);
    }
    for (const record::Entry& entry : layout.entries) {
        if (isOpenPlannedChange(layout, entry, now)) {
            const QDate day = entry.at.localDate();
            force.lastDay = force.lastDay.isValid() ? std::max(force.lastDay, day) : day;
        }
    }
    return force.lastDay.isValid() && force.lastDay >= now.localDate() ? std::optional(force) : std::nullopt;
}

} // namespace littoral::care
