// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/standing.h"

#include "core/care/limits.h"
#include "core/care/observations.h"
#include "core/care/stock.h"

#include <algorithm>
#include <array>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Reading;

namespace {

constexpr int kCycleAge = 60; // until then ammonia and nitrite are looked at every week
constexpr double kWeek = 7.0;
constexpr double kLittleWater_L = 30.0;

bool isCycling(CyclePhase phase)
{
    return phase == CyclePhase::AmmoniaRising || phase == CyclePhase::AmmoniaFalling ||
           phase == CyclePhase::NitriteRising || phase == CyclePhase::NitriteFalling ||
           phase == CyclePhase::MatureMediaSettling;
}

void add(QStringList& list, const QString& key)
{
    if (list.size() < 2 && !list.contains(key)) {
        list << key;
    }
}

std::vector<Reading> newestOfEach(const record::LayoutRecord& layout, const QStringList& first,
                                  const record::Moment& now)
{
    std::vector<Reading> found;
    QStringList keys = first;
    for (const record::Parameter& parameter : record::parameters()) {
        if (!keys.contains(parameter.key)) {
            keys << parameter.key;
        }
    }
    for (const QString& key : keys) {
        if (const Reading* reading = layout.newest(key, now)) {
            found.push_back(*reading);
        }
    }
    return found;
}

/// Which of ammonia and nitrite was not read for a week while that matters.
QStringList unread(const record::LayoutRecord& layout, int age, const record::Moment& now)
{
    QStringList missing;
    if (age > kCycleAge || age < 1) {
        return missing;
    }
    for (const QString& key : {u"tan"_s, u"no2"_s}) {
        const Reading* reading = layout.newest(key, now);
        // Nitrite is not asked for in the first days.
        const bool asked = key == u"tan"_s || age >= 5;
        if (asked && (reading == nullptr || record::daysBetween(reading->at, now) > kWeek)) {
            missing << key;
        }
    }
    return missing;
}

void judge(Standing& s, const record::LayoutRecord& layout, const record::Moment& now)
{
    const auto set = [&](Status status, StandingReason reason) {
        s.status = status;
        s.reason = reason;
    };
    if (layout.layout.ended && *layout.layout.ended <= now) {
        return set(Status::Unknown, StandingReason::Ended);
    }
    if (s.phase == LayoutPhase::Planned) {
        return set(Status::Waiting, StandingReason::NotFlooded);
    }
    if (!s.alerts.empty() && s.alerts.front().level == Status::Act) {
        return set(Status::Act, StandingReason::AlertStands);
    }
    if (s.overdueCount > 0) {
        return set(Status::Overdue, StandingReason::WorkOverdue);
    }
    if (!s.alerts.empty()) {
        return set(Status::Watch, StandingReason::AlertStands);
    }
    if (!isPlanted(layout, now)) {
        return set(Status::Waiting, StandingReason::BeforePlanting);
    }
    if (layout.readings.empty()) {
        return set(Status::Unknown, StandingReason::NothingRead);
    }
    if (!s.missing.isEmpty()) {
        return set(Status::Unknown, StandingReason::ReadingsOld);
    }
    if (isCycling(s.cycle)) {
        return s.animals ? set(Status::Watch, StandingReason::Cycling) : set(Status::Waiting, StandingReason::Cycling);
    }
    set(Status::Ok, StandingReason::AllWell);
}

} // namespace

QStringList chartParameters(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& now,
                            CyclePhase cycle, const std::vector<Alert>& alerts)
{
    const int age = ageDays(layout.layout, now.localDate());
    if (isCycling(cycle) || age <= 28) {
        return {u"tan"_s, u"no2"_s};
    }
    QStringList keys;
    for (const Alert& alert : alerts) {
        if (!alert.parameter.isEmpty()) {
            add(keys, alert.parameter == u"nh3"_s ? u"tan"_s : alert.parameter);
        }
    }
    const record::Tank* tank = row.tank(layout.layout.tank);
    const auto net = tank == nullptr ? std::nullopt : record::netVolume(*tank, layout.layout);
    const bool littleWater = net && net->litres < kLittleWater_L;
    if (keys.isEmpty() && littleWater && stockAt(layout, now).anyShrimp()) {
        const bool solids = layout.newest(u"cond"_s, now) == nullptr && layout.newest(u"tds"_s, now) != nullptr;
        add(keys, solids ? u"tds"_s : u"cond"_s);
        add(keys, u"gh"_s);
    }
    if (keys.isEmpty()) {
        add(keys, u"no3"_s);
    }
    return keys;
}

Standing standing(const record::Row& row, record::LayoutId id, const record::Moment& now)
{
    return standing(row, id, now, dueWork(row, id, now, now.localDate()));
}

Standing standing(const record::Row& row, record::LayoutId id, const record::Moment& now,
                  const std::vector<DueItem>& due)
{
    Standing s;
    const record::LayoutRecord* layout = row.layout(id);
    if (layout == nullptr) {
        return s;
    }
    s.phase = phase(*layout, now);
    s.ageDays = layout->layout.flooded.isValid() ? ageDays(layout->layout, now.localDate()) : 0;
    s.cycle = cyclePhase(*layout, now, limitsOf(row));
    s.animals = stockAt(*layout, now).any();
    s.alerts = alertsOf(row, id, now);
    s.missing = s.phase == LayoutPhase::Planned ? QStringList() : unread(*layout, s.ageDays, now);
    s.overdueCount = static_cast<int>(std::ranges::count_if(due, [](const DueItem& item) { return item.overdue; }));
    s.chartParameters = chartParameters(row, *layout, now, s.cycle, s.alerts);
    s.newest = newestOfEach(*layout, s.chartParameters, now);
    judge(s, *layout, now);
    return s;
}

} // namespace littoral::care
