// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"
#include "core/record/moment.h"

#include <QByteArray>
#include <QDate>
#include <QString>
#include <optional>

namespace littoral::record {

/// A template the keeper added or edited; the built-in ones live in the program's resources and are overridden by key.
struct TaskTemplate
{
    TaskTemplateId id;
    QString key;
    QByteArray definition; ///< JSON, same shape as the built-in file
    bool disabled = false;

    bool operator==(const TaskTemplate&) const = default;
};

enum class TaskState {
    Open,   ///< planned or moved by hand
    Done,   ///< closed, by an entry or a reading where there is one
    Skipped ///< with its reason
};

/// What the keeper decided about one round of a cadence, or a task set by hand. A round nobody has touched has no row:
/// it is reckoned from its cadence each time.
struct Task
{
    TaskId id;
    TankId tank;
    LayoutId layout;
    QString templateKey; ///< empty: a task of its own, titled `title`
    QString title;
    QDate due;                    ///< by the cadence, or as set
    std::optional<QDate> movedTo; ///< moved by hand or snoozed until
    bool snoozed = false;         ///< movedTo came from a snooze, not a move
    TaskState state = TaskState::Open;
    std::optional<Moment> closedAt;
    EntryId closedBy;
    QString reason;                 ///< for skipping; for a move, if one was given
    std::optional<double> fraction; ///< of a water change set by hand
    Moment enteredAt;

    bool operator==(const Task&) const = default;
};

/// The keeper's wanted range of one parameter in one tank, canonical units; either end may be open.
struct Target
{
    TargetId id;
    TankId tank;
    QString parameter;
    std::optional<double> low;
    std::optional<double> high;

    bool operator==(const Target&) const = default;
};

/// A list of future changes, kept to compare or adopt. The body is JSON.
struct Plan
{
    PlanId id;
    LayoutId layout;
    QString name;
    Moment created;
    std::optional<Moment> adopted;
    QByteArray body;

    bool operator==(const Plan&) const = default;
};

/// A forecast as it was issued, kept for the track record. The body is JSON: rows, bands and odds.
struct IssuedForecast
{
    ForecastId id;
    LayoutId layout;
    Moment issued;
    Moment asOf;
    QString model; ///< version of the model and its priors
    QByteArray body;

    bool operator==(const IssuedForecast&) const = default;
};

} // namespace littoral::record
