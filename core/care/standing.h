// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/age.h"
#include "core/care/cycle_phase.h"
#include "core/care/due.h"
#include "core/record/row.h"

#include <QStringList>
#include <optional>
#include <vector>

/// How a layout stands, at a glance: what the header of its lane is made from.
namespace littoral::care {

enum class Status { Ok, Watch, Act, Overdue, Waiting, Unknown };

enum class AlertKind {
    AboveLimit, ///< a reading over one of the limits of limits.h
    BelowLimit,
    AboveTarget, ///< outside the keeper's own range
    BelowTarget,
    Severity, ///< an observation
    Losses,   ///< animals lost in the last week
};

/// Something out of order, and since when without a break.
struct Alert
{
    AlertKind kind = AlertKind::AboveLimit;
    Status level = Status::Watch; ///< Watch or Act
    QString parameter;            ///< key; "nh3" for free ammonia
    QString subject;              ///< of an observation
    double value = 0.0;           ///< newest, canonical; severity; count of losses
    double limit = 0.0;
    record::Moment since; ///< first reading or observation of the run that reaches to the newest
    record::Moment newest;
    record::ReadingId reading;
    record::EntryId entry;
    bool forbidsAnimals = false; ///< no animals go in while it lasts
    QString source;              ///< source text, translated in the context "Templates"
};

/// What made the status.
enum class StandingReason {
    AllWell,
    AlertStands, ///< see alerts.front()
    WorkOverdue, ///< see overdueCount
    NotFlooded,
    Cycling,        ///< no animals yet, nothing to do but wait
    BeforePlanting, ///< a dark start without its plants
    NothingRead,    ///< no reading at all
    ReadingsOld,    ///< ammonia or nitrite not read for a week while it matters: see missing
    Ended,
};

struct Standing
{
    Status status = Status::Unknown;
    StandingReason reason = StandingReason::NothingRead;
    LayoutPhase phase = LayoutPhase::Planned;
    CyclePhase cycle = CyclePhase::Unknown;
    int ageDays = 0;
    bool animals = false;
    int overdueCount = 0;      ///< rounds past their grace
    std::vector<Alert> alerts; ///< the most serious first
    QStringList missing;       ///< parameters a test of which would settle what is unknown
    std::vector<record::Reading>
        newest;                  ///< one of each parameter, in the order in which they are shown, the charted first
    QStringList chartParameters; ///< the one or two that matter now
};

/// `due` is dueWork() of the same layout and instant, for a caller that has it already.
[[nodiscard]] Standing standing(const record::Row& row, record::LayoutId layout, const record::Moment& now);
[[nodiscard]] Standing standing(const record::Row& row, record::LayoutId layout, const record::Moment& now,
                                const std::vector<DueItem>& due);

/// The alerts alone. Ammonia and nitrite count for two weeks after they were read, other parameters for 45 days,
/// observations for three weeks.
[[nodiscard]] std::vector<Alert> alertsOf(const record::Row& row, record::LayoutId layout, const record::Moment& now);

/// The one or two parameters that matter now: ammonia and nitrite while the cycle runs; then what is out of range; for
/// shrimp in little water conductivity and GH; else nitrate.
[[nodiscard]] QStringList chartParameters(const record::Row& row, const record::LayoutRecord& layout,
                                          const record::Moment& now, CyclePhase cycle,
                                          const std::vector<Alert>& alerts);

} // namespace littoral::care
