// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"
#include "core/care/gates.h"
#include "core/care/standing.h"

#include <QDate>
#include <QString>
#include <QStringList>

/// The sentences of the workbench and the command line, made from the reasons that core/care gives as data.
namespace littoral::wording {

/// "Water change 40 %", "Test nitrite", "Filter service, half the media in tank water".
[[nodiscard]] QString dueTitle(const care::DueItem& item);
/// For a chip: "40 %", "Test NH₃/₄ NO₂", the title otherwise.
[[nodiscard]] QString dueChip(const care::DueItem& item);
/// "3 days over", "today", "tomorrow", "Sun 29 Nov".
[[nodiscard]] QString dueWhen(const care::DueItem& item, const QDate& today);
/// The foot strip: what, when, why, what follows from leaving it. Whole sentences.
[[nodiscard]] QString dueWhy(const care::DueItem& item, const QDate& today);
/// The same as sentences one by one, without the first (what is due).
[[nodiscard]] QStringList dueReasons(const care::DueItem& item, const QDate& today);
/// "Next change 50 %, tomorrow".
[[nodiscard]] QString nextLine(const care::DueItem& item, const QDate& today);

/// Why one thing tightens the cadence: "Nitrite 0.8 mg/L NO₂ on 24 Nov, at or above 0.5 mg/L NO₂ with animals."
[[nodiscard]] QString triggerText(const care::Trigger& trigger, const QDate& today);
/// One line of the evidence for easing the cadence, with how it stands.
[[nodiscard]] QString easeText(const care::EaseEvidence& evidence, const QDate& today);
/// "Every 7 days instead of twice a week, 40 % as before."
[[nodiscard]] QString easeProposal(const care::Loosening& loosening);

/// "Large changes meet: Slate Ford, Fen Corner. Free of them: Fri 27 Nov."; empty when none meet.
[[nodiscard]] QString collisionText(const QStringList& tanks, const std::optional<QDate>& freerDay, const QDate& today);
/// "Today 45 min, 36 L; seven days 3 h 30 min, 180 L."
[[nodiscard]] QString rowLoadText(int minutesToday, double litresToday, int minutesWeek, double litresWeek);

/// "Nitrite above 1 mg/L NO₂ since 17 Nov".
[[nodiscard]] QString alertText(const care::Alert& alert, const QDate& today);
/// Lane header, bold: "Nitrite at its height", "Grown in".
[[nodiscard]] QString phaseLine(const care::Standing& standing);
/// Lane header, the line under it: the alert that counts most, or what is overdue, or what is not known and the test
/// for it.
[[nodiscard]] QString statusLine(const care::Standing& standing, const QDate& today);
/// Rail: "ok", "watch", "2 overdue", "no readings".
[[nodiscard]] QString statusWord(const care::Standing& standing);
[[nodiscard]] QString layoutPhaseName(care::LayoutPhase phase);
[[nodiscard]] QString cyclePhaseName(care::CyclePhase phase);

/// "Hardy fish and shrimp".
[[nodiscard]] QString gateTitle(const care::GateState& gate);
/// One condition as a sentence, with the reading that decides it.
[[nodiscard]] QString gateConditionText(const care::GateCondition& condition, const QDate& today);
/// "Open", "Not yet: 2 of 10 conditions stand against it", "Unknown: copper was not looked at".
[[nodiscard]] QString gateVerdict(const care::GateState& gate);
/// "Nitrite clear 4–9 Dec, 8 in 10".
[[nodiscard]] QString forecastRange(const QString& what, const QDate& first, const QDate& last, double odds,
                                    const QDate& today);

/// Where a rule comes from, for display: "Common practice", "UF/IFAS FA16 ...".
[[nodiscard]] QString sourceText(const QString& source);

} // namespace littoral::wording
