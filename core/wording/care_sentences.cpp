// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using care::Alert;
using care::AlertKind;
using care::CyclePhase;
using care::LayoutPhase;
using care::Standing;
using care::StandingReason;
using care::Status;
using care::Trigger;
using care::TriggerKind;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("CareSentences", text);
}

QString plural(const char* text, int n)
{
    return QCoreApplication::translate("CareSentences", text, nullptr, n);
}

QString readingTrigger(const Trigger& trigger, const QDate& today, const QString& pattern)
{
    return pattern.arg(parameterName(trigger.parameter), valueWithUnit(trigger.parameter, trigger.value.value_or(0.0)),
                       dateText(trigger.at.localDate(), today),
                       valueWithUnit(trigger.parameter, trigger.limit.value_or(0.0)));
}

QString stateWord(care::Known state)
{
    switch (state) {
    case care::Known::Met:
        return words("met");
    case care::Known::Unmet:
        return words("not met");
    case care::Known::Unknown:
        break;
    }
    return words("unknown");
}

QString alertLevel(const Alert& alert)
{
    return valueWithUnit(alert.parameter, alert.limit);
}

} // namespace

QString triggerText(const Trigger& trigger, const QDate& today)
{
    const QString day = dateText(trigger.at.localDate(), today);
    switch (trigger.kind) {
    case TriggerKind::FreeAmmoniaWithAnimals:
    case TriggerKind::NitriteWithAnimals:
        return readingTrigger(trigger, today, words("%1 %2 on %3: with animals the limit is %4."));
    case TriggerKind::AmmoniaWithoutAnimals:
        return readingTrigger(trigger, today, words("%1 %2 on %3: from %4 plants suffer."));
    case TriggerKind::FreeAmmoniaWithoutAnimals:
        return readingTrigger(trigger, today, words("%1 %2 on %3: from %4 nitrite oxidisers are held back."));
    case TriggerKind::AmmoniaInDarkStart:
        return readingTrigger(trigger, today, words("%1 %2 on %3: above %4 a dark start may stall."));
    case TriggerKind::HardnessAboveTarget:
        return readingTrigger(trigger, today, words("%1 %2 on %3: over %4, two degrees above its range."));
    case TriggerKind::NitrateHigh:
        return readingTrigger(trigger, today, words("%1 %2 on %3: over %4."));
    case TriggerKind::MeltHeavy:
        return words("Melt on %1 of the plants on %2: a step tighter for a week.")
            .arg(percentText(trigger.coverage.value_or(0.0)), day);
    case TriggerKind::AlgaeRising:
        return words("%1 rose from %2 to %3 by %4: a step tighter for a week.")
            .arg(subjectText(trigger.subject), severityWord(static_cast<int>(trigger.limit.value_or(0.0))),
                 severityWord(static_cast<int>(trigger.value.value_or(0.0))), day);
    case TriggerKind::BedDisturbed:
        return words("The bed was disturbed on %1: a change that day and the next.").arg(day);
    case TriggerKind::AnimalLost:
        return words("An animal was lost on %1.").arg(day);
    case TriggerKind::Overfed:
        return words("Too much food went in on %1.").arg(day);
    case TriggerKind::MedicationEnded:
        return words("A treatment ended on %1. What it was for, and what comes after, is for a veterinarian or a "
                     "fish-health professional.")
            .arg(day);
    case TriggerKind::ReactionAfterAddition:
        return readingTrigger(
            trigger, today,
            words("%1 %2 on %3, within a week of an addition and over %4: a step tighter for a week, and no more "
                  "animals."));
    case TriggerKind::HazeAndGasping:
        return words("White haze and animals at the surface on %1: aerate first.").arg(day);
    }
    return {};
}

QString easeText(const care::EaseEvidence& evidence, const QDate& today)
{
    const QString state = stateWord(evidence.state);
    const QString day = evidence.day ? dateText(*evidence.day, today) : QString();
    switch (evidence.condition) {
    case care::EaseCondition::ClearReadings:
        return words("Two readings of ammonia and nitrite in a row, taken before changes, are under the limits: %1.")
            .arg(state);
    case care::EaseCondition::MeltNotRising:
        return words("Melt is not rising: %1.").arg(state);
    case care::EaseCondition::AlgaeNotRising:
        return words("No algae rose in seven days: %1.").arg(state);
    case care::EaseCondition::ForecastOdds:
        return evidence.odds
                   ? words("At the looser cadence the forecast keeps the next peak under the limits %1; 8 in 10 "
                           "are asked for: %2.")
                         .arg(oddsText(*evidence.odds), state)
                   : words("What the forecast gives for the looser cadence: %1.").arg(state);
    case care::EaseCondition::TwoIntervals:
        return words("Two full intervals done at the present step, since %1: %2.").arg(day, state);
    case care::EaseCondition::NothingRecent:
        return words("Nothing added, disturbed, serviced or dosed anew in three days: %1.").arg(state);
    case care::EaseCondition::HardnessSteady:
        return words("GH and KH stay within a degree between changes: %1.").arg(state);
    }
    return {};
}

QString alertText(const Alert& alert, const QDate& today)
{
    const QString since = dateText(alert.since.localDate(), today);
    switch (alert.kind) {
    case AlertKind::AboveLimit:
        return words("%1 above %2 since %3").arg(parameterName(alert.parameter), alertLevel(alert), since);
    case AlertKind::BelowLimit:
        return words("%1 below %2 since %3").arg(parameterName(alert.parameter), alertLevel(alert), since);
    case AlertKind::AboveTarget:
        return words("%1 above its range (%2) since %3").arg(parameterName(alert.parameter), alertLevel(alert), since);
    case AlertKind::BelowTarget:
        return words("%1 below its range (%2) since %3").arg(parameterName(alert.parameter), alertLevel(alert), since);
    case AlertKind::Severity:
        return words("%1, %2, since %3")
            .arg(subjectText(alert.subject), severityWord(static_cast<int>(alert.value)), since);
    case AlertKind::Losses:
        return alert.value == 1.0 ? words("1 animal lost, %1").arg(since)
                                  : words("%1 animals lost since %2").arg(numberText(alert.value, 0), since);
    }
    return {};
}

QString layoutPhaseName(LayoutPhase phase)
{
    switch (phase) {
    case LayoutPhase::Planned:
        return words("planned");
    case LayoutPhase::Week1:
        return words("week 1");
    case LayoutPhase::Week2:
        return words("week 2");
    case LayoutPhase::Weeks3To4:
        return words("weeks 3–4");
    case LayoutPhase::Weeks5To6:
        return words("weeks 5–6");
    case LayoutPhase::Weeks7To8:
        return words("weeks 7–8");
    case LayoutPhase::Mature:
        return words("mature");
    case LayoutPhase::Old:
        return words("over a year old");
    }
    return {};
}

QString cyclePhaseName(CyclePhase phase)
{
    switch (phase) {
    case CyclePhase::Unknown:
        return words("Cycle not known");
    case CyclePhase::AmmoniaRising:
        return words("Ammonia rising");
    case CyclePhase::AmmoniaFalling:
        return words("Ammonia falling");
    case CyclePhase::NitriteRising:
        return words("Nitrite at its height");
    case CyclePhase::NitriteFalling:
        return words("Nitrite falling");
    case CyclePhase::Clear:
        return words("Ammonia and nitrite clear");
    case CyclePhase::GrowingIn:
        return words("Growing in");
    case CyclePhase::Settled:
        return words("Settled");
    case CyclePhase::MatureMediaSettling:
        return words("Mature media settling");
    }
    return {};
}

QString phaseLine(const Standing& standing)
{
    if (standing.phase == LayoutPhase::Planned) {
        return words("Not flooded yet");
    }
    return standing.reason == StandingReason::Ended ? words("Ended") : cyclePhaseName(standing.cycle);
}

QString statusLine(const Standing& standing, const QDate& today)
{
    switch (standing.reason) {
    case StandingReason::AlertStands: {
        const Alert& alert = standing.alerts.front();
        const QString text = alertText(alert, today);
        return alert.forbidsAnimals && !standing.animals ? words("%1: no animals yet").arg(text) : text;
    }
    case StandingReason::WorkOverdue: {
        const int overdue = static_cast<int>(standing.overdueCount);
        return plural("%n task(s) overdue", overdue);
    }
    case StandingReason::NotFlooded:
        return words("Waiting for its flooding");
    case StandingReason::Cycling:
        return standing.animals ? words("The cycle is running with animals in")
                                : words("The cycle is running; no animals yet");
    case StandingReason::BeforePlanting:
        return words("Dark start: waiting for its plants");
    case StandingReason::NothingRead:
        return words("Nothing read yet: ammonia and nitrite tests would tell");
    case StandingReason::ReadingsOld: {
        QStringList names;
        for (const QString& key : standing.missing) {
            names << parameterSymbol(key);
        }
        return words("Not known: a test of %1 would tell").arg(names.join(words(" and ")));
    }
    case StandingReason::Ended:
        return words("Ended");
    case StandingReason::AllWell:
        break;
    }
    return words("Nothing out of range");
}

QString statusWord(const Standing& standing)
{
    switch (standing.status) {
    case Status::Ok:
        return words("ok");
    case Status::Watch:
    case Status::Act:
        if (!standing.alerts.empty() && !standing.alerts.front().parameter.isEmpty()) {
            const Alert& alert = standing.alerts.front();
            const bool low = alert.kind == AlertKind::BelowLimit || alert.kind == AlertKind::BelowTarget;
            return (low ? words("%1 low") : words("%1 high")).arg(parameterName(alert.parameter));
        }
        return standing.status == Status::Act ? words("act") : words("watch");
    case Status::Overdue:
        return words("%1 overdue").arg(standing.overdueCount);
    case Status::Waiting:
        return words("waiting");
    case Status::Unknown:
        break;
    }
    return standing.reason == StandingReason::Ended ? words("ended") : words("unknown");
}

QString forecastRange(const QString& what, const QDate& first, const QDate& last, double odds, const QDate& today)
{
    return words("%1 %2, %3").arg(what, dateRangeText(first, last, today), oddsText(odds));
}

} // namespace littoral::wording
