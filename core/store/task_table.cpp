// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Task;
using record::TaskTemplate;

namespace {

constexpr Codes<3> kStates{"open", "done", "skipped"};

struct TaskFields
{
    template <typename Io, typename T> static void visit(Io& io, T& task)
    {
        io.field("id", task.id);
        io.field("tank", task.tank);
        io.field("layout", task.layout);
        io.field("template_key", task.templateKey);
        io.field("title", task.title);
        io.field("due", task.due);
        io.field("moved_to", task.movedTo);
        io.field("snoozed", task.snoozed);
        io.code("state", task.state, kStates);
        io.field("closed", task.closedAt);
        io.field("closed_by", task.closedBy);
        io.field("reason", task.reason);
        io.field("fraction", task.fraction);
        io.field("entered", task.enteredAt);
    }
};

struct TemplateFields
{
    template <typename Io, typename T> static void visit(Io& io, T& it)
    {
        io.field("id", it.id);
        io.field("key", it.key);
        io.json("definition", it.definition);
        io.field("disabled", it.disabled);
    }
};

} // namespace

template <> const Table& RowMapping<Task>::table()
{
    static const Table table = describe<TaskFields, Task>("task");
    return table;
}

template <> Values RowMapping<Task>::values(const Task& task)
{
    return toValues<TaskFields>(task);
}

template <> Task RowMapping<Task>::record(const QSqlQuery& row)
{
    return toRecord<TaskFields, Task>(row);
}

template <> Result<void> RowMapping<Task>::check(const Task& task)
{
    return Checks(Words::tr("Task"))
        .hasTank(task.tank)
        .hasLayout(task.layout)
        .finite({task.fraction})
        .share(task.fraction)
        .result();
}

template <> const Table& RowMapping<TaskTemplate>::table()
{
    static const Table table = describe<TemplateFields, TaskTemplate>("task_template");
    return table;
}

template <> Values RowMapping<TaskTemplate>::values(const TaskTemplate& it)
{
    return toValues<TemplateFields>(it);
}

template <> TaskTemplate RowMapping<TaskTemplate>::record(const QSqlQuery& row)
{
    return toRecord<TemplateFields, TaskTemplate>(row);
}

template <> Result<void> RowMapping<TaskTemplate>::check(const TaskTemplate& it)
{
    return Checks(Words::tr("Task template"))
        .rule(!it.key.isEmpty(), Words::tr("The template has no key."),
              Words::tr("Give it a short key of its own, such as \"trim-stems\"."))
        .isJson(it.definition)
        .result();
}

} // namespace littoral::store
