// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/adopted_plan.h"
#include "core/facade/keeper.h"
#include "core/facade/plan_desk.h"
#include "core/wording/plan_sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>

/// From a plan that was compared to work that is due.
namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

/// A change that falls on the forecast's own day, at an hour that has passed, is put this long after it.
constexpr double kSoonDays = 1.0 / 24.0;
const QTime kUsualHour(12, 0);

QJsonObject changeObject(const PlannedChange& change)
{
    QJsonObject object{{u"at"_s, change.at.toIso()}, {u"fraction"_s, change.fraction}};
    if (change.source) {
        object.insert(u"source"_s, change.source.value);
    }
    return object;
}

/// The plan as resources/formats.md describes it.
QByteArray planBody(const forecast::ChangePlan& plan, const std::vector<PlannedChange>& changes, const QDate& until)
{
    QJsonArray list;
    for (const PlannedChange& change : changes) {
        list.append(changeObject(change));
    }
    QJsonObject object{{u"version"_s, 1},
                       {u"fraction"_s, plan.fraction},
                       {u"every_days"_s, plan.everyDays},
                       {u"until"_s, until.toString(Qt::ISODate)},
                       {u"changes"_s, list}};
    if (std::isfinite(plan.easeAfterDays)) {
        object.insert(u"ease_after_days"_s, plan.easeAfterDays);
    }
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

} // namespace

std::vector<PlannedChange> plannedChanges(const ForecastResult& basis, const forecast::ChangePlan& plan,
                                          const record::LayoutRecord& layout, double windowDays)
{
    const ForecastCase& inputs = basis.inputs;
    const record::Moment& asOf = inputs.asOf;
    const record::Entry* last = layout.lastDone(record::EntryKind::WaterChange, asOf);
    const QTime hour = last == nullptr ? kUsualHour : last->at.toDateTime().time();
    const bool daily = plan.everyDays == std::floor(plan.everyDays);
    const double end = inputs.request.tank.decisionDay + windowDays;
    std::vector<PlannedChange> changes;
    for (const forecast::Event& event : forecast::changesOf(plan, inputs.request.tank, end)) {
        const record::Moment exact(inputs.flooded.plusDays(event.day).utcMs(), asOf.offsetSeconds());
        PlannedChange change;
        // Changes more often than daily keep the spacing they were reckoned with.
        change.at = daily ? record::Moment::fromDateTime(
                                QDateTime(exact.localDate(), hour, Qt::OffsetFromUTC, asOf.offsetSeconds()))
                          : exact;
        change.at = std::max(change.at, asOf.plusDays(kSoonDays));
        change.fraction = event.amount;
        const auto source = static_cast<std::size_t>(event.source);
        change.source = source < inputs.sources.size() ? inputs.sources[source] : layout.layout.source;
        changes.push_back(change);
    }
    return changes;
}

Adoption adoptionOf(const record::LayoutRecord& layout, const std::vector<PlannedChange>& changes,
                    const record::Moment& now)
{
    Adoption adoption;
    for (const record::Entry& entry : layout.entries) {
        if (care::isOpenPlannedChange(layout, entry, now) ||
            (entry.planned && entry.kind == record::EntryKind::WaterChange && entry.at > now)) {
            adoption.replaced.push_back(entry);
        }
    }
    adoption.added = changes;
    return adoption;
}

Result<void> adopt(Keeper& keeper, record::LayoutId id, const QString& name, const forecast::ChangePlan& plan,
                   const std::vector<PlannedChange>& changes)
{
    const record::LayoutRecord* layout = keeper.row().layout(id);
    if (layout == nullptr) {
        return Error{Fault::NotFound,
                     QCoreApplication::translate("Plans", "That layout is not in the store any more.").toStdString(),
                     {},
                     {}};
    }
    const record::Moment now = keeper.clock().now();
    const record::Tank* tank = keeper.row().tank(layout->layout.tank);
    store::Edit edit(wording::planAdoptedLabel(name, tank == nullptr ? QString() : tank->name));
    for (const record::Entry& entry : adoptionOf(*layout, changes, now).replaced) {
        edit.remove(entry.id);
    }
    for (const PlannedChange& change : changes) {
        record::Entry entry;
        entry.tank = layout->layout.tank;
        entry.layout = id;
        entry.kind = record::EntryKind::WaterChange;
        entry.at = change.at;
        entry.planned = true;
        entry.fraction = change.fraction;
        entry.source = change.source;
        entry.enteredAt = now;
        edit.put(std::move(entry));
    }
    record::Plan kept;
    kept.layout = id;
    kept.name = name;
    kept.created = now;
    kept.adopted = now;
    const QDate until =
        changes.empty() ? now.plusDays(forecast::PlanQuestion{}.windowDays).localDate() : changes.back().at.localDate();
    kept.body = planBody(plan, changes, until);
    edit.put(std::move(kept));
    return keeper.commit(edit);
}

} // namespace littoral::facade
