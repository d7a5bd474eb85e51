// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/easing.h"

#include "core/care/adopted_plan.h"
#include "core/care/rounds.h"

#include <QtGlobal>

namespace littoral::care {

namespace {

constexpr int kNotAgainDays = 7;

/// Was the question answered so lately that it is not put again?
bool isAnswered(const record::LayoutRecord& layout, const record::Moment& now)
{
    TaskRows answers;
    answers.add(layout.tasks, kEaseKey, now);
    const QDate today = now.localDate();
    const auto lately = [&](const QDate& day) { return day.daysTo(today) < kNotAgainDays; };
    const auto skipped = answers.lastSkip();
    return (skipped && lately(*skipped)) || (!answers.doneDays().empty() && lately(answers.doneDays().back()));
}

} // namespace

std::optional<Loosening> easeCandidate(const record::Row& row, record::LayoutId id, const record::Moment& now)
{
    const record::LayoutRecord* layout = row.layout(id);
    if (layout == nullptr || !layout->layout.followsCadence || (layout->layout.ended && *layout->layout.ended <= now) ||
        planInForce(row, *layout, now) || isAnswered(*layout, now)) {
        return std::nullopt;
    }
    auto loosening = looseningOf(row, id, now);
    return loosening && loosening->isCandidate() ? loosening : std::nullopt;
}

std::optional<DueItem> easeQuestion(const record::Row& row, record::LayoutId id, const record::Moment& now,
                                    double oddsAtLooser)
{
    if (!easeCandidate(row, id, now)) {
        return std::nullopt;
    }
    auto loosening = looseningOf(row, id, now, oddsAtLooser);
    if (!loosening || !loosening->mayBeProposed()) {
        return std::nullopt;
    }
    DueItem item;
    item.layout = id;
    item.tank = row.layout(id)->layout.tank;
    item.templateKey = kEaseKey;
    item.title = QString::fromUtf8(QT_TRANSLATE_NOOP("Templates", "Decide: ease the water changes?"));
    item.kind = WorkKind::Decide;
    item.minutes = 2;
    item.graceDays = 400; // a question is never overdue
    item.consequence = QString::fromUtf8(QT_TRANSLATE_NOOP("Templates", "More water and work than the tank may need."));
    item.source = QString::fromUtf8(QT_TRANSLATE_NOOP("Templates", "judgement from common practice"));
    item.reason.basis = Basis::Proposal;
    item.reason.intervalDays = loosening->now.everyDays;
    for (const EaseEvidence& evidence : loosening->evidence) {
        std::vector<ReadingEvidence>& side = evidence.state == Known::Unmet ? item.reason.unmet : item.reason.met;
        side.insert(side.end(), evidence.readings.begin(), evidence.readings.end());
    }
    item.reason.loosening = std::move(loosening);
    setDays(item, now.localDate(), nullptr, now.localDate());
    return item;
}

AcceptedSteps easedSteps(const record::Row& row, record::LayoutId layout, const QDate& today)
{
    return {acceptedSteps(row, layout).steps + 1, today};
}

} // namespace littoral::care
