// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/supply_work.h"

#include "core/care/rounds.h"
#include "core/wording/sentences.h"
#include "core/wording/supply_sentences.h"

#include <algorithm>

namespace littoral::facade {

namespace {

// A thing ordered is not asked for again while it is on its way (judgement).
constexpr int kQuietDays = 14;
constexpr int kGraceDays = 7; // it is wanted a week before it is needed

/// What the keeper decided about one thing in stock.
struct Decision
{
    bool settled = false;                ///< ticked or skipped lately
    const record::Task* moved = nullptr; ///< the newest open row about it
};

Decision decisionOn(const record::Row& row, const care::SupplyStanding& standing, const QDate& today)
{
    Decision decision;
    for (const auto& [id, layout] : row.layouts) {
        for (const record::Task& task : layout.tasks) {
            if (task.templateKey != standing.key()) {
                continue;
            }
            if (task.state == record::TaskState::Open) {
                const bool newer = decision.moved == nullptr || decision.moved->enteredAt < task.enteredAt;
                decision.moved = newer ? &task : decision.moved;
                continue;
            }
            const QDate closed = task.closedAt ? task.closedAt->localDate() : task.due;
            const bool sinceOpened = standing.kit || !standing.since.isValid() || closed >= standing.since;
            decision.settled = decision.settled || (sinceOpened && closed.daysTo(today) < kQuietDays);
        }
    }
    return decision;
}

const record::LayoutRecord* firstRunning(const record::Row& row, const record::Moment& now)
{
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout != nullptr && layout->layout.flooded <= now &&
            (!layout->layout.ended || *layout->layout.ended > now)) {
            return layout;
        }
    }
    return nullptr;
}

} // namespace

std::vector<SupplyTask> supplyWork(const record::Row& row, const record::Moment& now, const QDate& until)
{
    const record::LayoutRecord* host = firstRunning(row, now);
    if (host == nullptr) {
        return {};
    }
    const QDate today = now.localDate();
    std::vector<SupplyTask> tasks;
    for (care::SupplyStanding& standing : care::supplyStandings(row, now)) {
        const Decision decision = decisionOn(row, standing, today);
        const QDate day = standing.wanted();
        if (!day.isValid() || decision.settled) {
            continue;
        }
        SupplyTask task;
        task.item.tank = host->layout.tank;
        task.item.layout = host->layout.id;
        task.item.kind = care::WorkKind::Own;
        task.item.templateKey = standing.key();
        task.item.subject = wording::supplyTitle(standing);
        task.item.minutes = 5;
        task.item.priority = 2;
        task.item.graceDays = kGraceDays;
        // One put off is asked for on its new day; once that is past, by its reckoning again.
        const bool putOff = decision.moved != nullptr && decision.moved->movedTo && *decision.moved->movedTo >= today;
        care::setDays(task.item, day, putOff ? decision.moved : nullptr, today);
        if (task.item.due > std::max(until, today)) {
            continue;
        }
        task.why = wording::dueReasons(task.item, today) + wording::supplyReasons(standing, today);
        task.standing = std::move(standing);
        tasks.push_back(std::move(task));
    }
    std::ranges::stable_sort(tasks, {}, [](const SupplyTask& task) { return task.item.due; });
    return tasks;
}

} // namespace littoral::facade
