// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/loosening.h"
#include "core/care/trigger.h"
#include "core/care/work_template.h"
#include "core/record/row.h"

#include <QDate>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace littoral::care {

/// What put a round where it is.
enum class Basis {
    Cadence,  ///< so many days after the last one
    Once,     ///< at one age
    Event,    ///< days after something happened
    Journey,  ///< a day of leaving or of return
    Trigger,  ///< a reading or observation asks for it at once
    ByHand,   ///< the keeper's own task, or a change set by hand
    Planned,  ///< an entry planned for that day
    Proposal, ///< evidence for changing the cadence
};

/// What of the full dose is given in the first weeks on ammonia-rich soil.
enum class LeanDose {
    Full,
    Quarter,      ///< potassium and trace in weeks 1 and 2, everything in week 3
    Half,         ///< week 4
    NitrateSpent, ///< full before its time: nitrate was read below 5 mg/L
};

/// How a dose of a regimen comes to be due.
struct DoseReason
{
    double full = 0.0; ///< amount of the whole dose, in the item's unit
    LeanDose lean = LeanDose::Full;
    QDate leanUntil;  ///< last day of the reduced dose
    int weekdays = 0; ///< bit 0 is Monday; 0: counted in days
    int missed = 0;   ///< rounds that passed without a dose since the last one; none of them is made up for
};

/// Why a round is due when it is: data; core/wording makes the sentence.
struct Reason
{
    Basis basis = Basis::Cadence;
    double intervalDays = 0.0;         ///< 0: not a repeating round
    QString phaseKey;                  ///< which variant of the cadence's table
    std::optional<QDate> cadenceUntil; ///< last day of that row of the table
    std::optional<QDate> last;         ///< the round before this one was done on
    std::optional<double> lastFraction;
    std::vector<ReadingEvidence> tightened; ///< what makes it sooner or larger than the base cadence
    std::vector<Trigger> triggers;          ///< the same with observations and events among them
    QString trigger;       ///< key of the rule that set it off ("after-addition", "melt" ...); may be empty
    QDate eventDay;        ///< of the event it follows; of leaving or return
    int dayAfter = 0;      ///< days after that event; negative: before it
    bool raised = false;   ///< counted from the reading in `tightened`, which was over its limit after the event
    int acceptedSteps = 0; ///< steps away from the table that the keeper accepted
    bool movedByHand = false;
    bool snoozed = false;
    QString moveReason;
    QStringList animalsAtRisk;               ///< of a water change or test past its day
    std::vector<ReadingEvidence> met, unmet; ///< readings for and against a proposal to loosen
    std::optional<Loosening> loosening;      ///< of a proposal
    std::optional<DoseReason> dose;
};

/// Litres of one water that goes in at a change.
struct WaterPart
{
    QString name;
    record::SourceKind kind = record::SourceKind::Tap;
    double litres = 0.0;
};

/// One round of work that is open: overdue, due or still to come.
struct DueItem
{
    record::TankId tank;
    record::LayoutId layout;
    record::TaskId task;          ///< set when the keeper has already touched this round
    record::EntryId plannedEntry; ///< set when it is an entry planned for that day
    QString templateKey;          ///< empty: a task of the keeper's own; "dose:NAME" for a regimen's
    QString title;                ///< source text of the template, translated in the context "Templates"
    WorkKind kind = WorkKind::Own;
    QString subject;                                 ///< upkeep subject, or the title of a task of the keeper's own
    QStringList parameters;                          ///< of a test: those still to be read
    std::optional<double> fraction;                  ///< of a water change
    std::optional<double> fractionLow, fractionHigh; ///< the range the practice gives
    std::optional<double> litres;
    QString sourceName;           ///< of a water change: the water that goes in; empty when none is named
    std::vector<WaterPart> parts; ///< what it is poured together from; empty when no source or its parts are not known
    std::optional<double> amount; ///< of a dose, in `unit`
    QString unit;
    QDate due;        ///< after moving or snoozing
    QDate cadenceDue; ///< by the cadence: identifies the round
    bool snoozed = false;
    int daysOver = 0; ///< whole days past `due`; zero when due today or later
    int graceDays = 0;
    bool overdue = false; ///< past the grace; never for lesser periodic work that was not once entered for this tank
    int minutes = 0;
    int priority = 3; ///< 1 highest
    Reason reason;
    QString consequence; ///< source text as title
    QString caution;     ///< id, e.g. "C-ELEC"; may be empty
    QString source;      ///< source text as title
};

/// Periodic work that was never once entered and is not of what matters most: offered on its days, since the keeper may
/// not do it or not write it down, and neither held to be overdue nor counted as the day's work.
[[nodiscard]] bool isOffered(const DueItem& item);

/// Every open round of a layout: the oldest overdue one of each template, then the rounds to come up to `until`, taking
/// it that what is due is done on time. Days are the keeper's own (the date at `now`'s offset). Soonest first. Nothing
/// for a layout that has ended or is not in the row.
[[nodiscard]] std::vector<DueItem> dueWork(const record::Row& row, record::LayoutId layout, const record::Moment& now,
                                           const QDate& until);
/// The same for callers that ask for many layouts and keep the templates.
[[nodiscard]] std::vector<DueItem> dueWork(const record::Row& row, record::LayoutId layout, const record::Moment& now,
                                           const QDate& until, const TemplateSet& templates);

/// Work asked for once for the whole row (backup, residual-current device ...). An upkeep entry in any tank closes it,
/// and so does the setting "care.done.<template key>" with an ISO date. Items carry the first running layout, so that
/// they can be ticked like any other.
[[nodiscard]] std::vector<DueItem> rowWork(const record::Row& row, const record::Moment& now, const QDate& until);

} // namespace littoral::care
