// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/age.h"
#include "core/care/trigger.h"
#include "core/care/work_template.h"

#include <QDate>
#include <optional>
#include <vector>

namespace littoral::care {

/// How often and how much water is changed at one age.
struct Pace
{
    double everyDays = 0.0;
    double fraction = 0.0;
    std::optional<double> fractionLow; ///< the range the practice gives
    std::optional<double> fractionHigh;
    std::optional<int> lastDay; ///< tank age on which this row of the table ends

    bool operator==(const Pace&) const = default;
};

/// Steps the keeper accepted away from the table, kept in Row::settings under cadenceSettingKey(): "1@2026-11-20" is
/// one step looser since that day; negative is tighter.
struct AcceptedSteps
{
    int steps = 0;
    QDate since;
};
[[nodiscard]] QString cadenceSettingKey(record::LayoutId layout); ///< "cadence.<id>"
[[nodiscard]] AcceptedSteps acceptedSteps(const record::Row& row, record::LayoutId layout);
[[nodiscard]] QString acceptedStepsText(const AcceptedSteps& accepted);

/// One step along the ladder 1, 2, 3.5, 7 days, then the fraction down to 30 %, then (low energy only) 14 and 21 days.
/// Interval or fraction, never both. Unchanged at the end of the ladder.
[[nodiscard]] Pace loosened(const Pace& pace, bool lowEnergy);
/// One step shorter; at daily changes ten points larger, up to 70 %.
[[nodiscard]] Pace tightened(const Pace& pace);

/// The cadence of one layout's water changes as `now` sees it.
class Cadence
{
public:
    Cadence(const WorkTemplate& work, const Circumstances& at);

    /// Does any row of the table apply?
    [[nodiscard]] bool exists() const { return m_variant != nullptr; }
    [[nodiscard]] QString variantKey() const { return m_variant != nullptr ? m_variant->key : QString(); }
    /// What the table, with the steps the keeper accepted, asks for on a day; nothing before it begins.
    [[nodiscard]] std::optional<Pace> base(const QDate& day) const;
    /// The same with what has tightened it.
    [[nodiscard]] std::optional<Pace> on(const QDate& day) const;
    [[nodiscard]] const std::vector<Trigger>& triggers() const { return m_triggers; }
    [[nodiscard]] AcceptedSteps accepted() const { return m_accepted; }
    [[nodiscard]] bool lowEnergy() const;
    /// Day of the table that a calendar day counts as: the tank's age, except after a dark start, where planting is day
    /// 15 when the water was clear then and day 1 when it was not; nothing before planting.
    [[nodiscard]] std::optional<int> tableDay(const QDate& day) const;
    /// The first day of the row of the table that holds on `day`, or of the accepted step if that is later.
    [[nodiscard]] QDate stepSince(const QDate& day) const;

private:
    [[nodiscard]] std::optional<Pace> tableRow(int day) const;

    const Variant* m_variant = nullptr;
    Circumstances m_at;
    AcceptedSteps m_accepted;
    std::vector<Trigger> m_triggers;
    std::optional<QDate> m_tableStart; ///< table day 0; nothing while a dark start waits for its plants
    QDate m_begins;                    ///< nothing is asked for before it
};

/// Days after `last` on which the next round of an `every`-day cadence falls; a half day alternates with the gap
/// before.
[[nodiscard]] int gapDays(double every, const QDate& last, const std::optional<QDate>& beforeLast);

} // namespace littoral::care
