// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Journey;

namespace {

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& journey)
    {
        io.field("id", journey.id);
        io.field("leaves", journey.leaves);
        io.field("returns", journey.returns);
        io.field("helper", journey.helper);
        io.field("phone", journey.phone);
        io.field("note", journey.note);
        io.field("entered", journey.enteredAt);
    }
};

} // namespace

template <> const Table& RowMapping<Journey>::table()
{
    static const Table table = describe<Fields, Journey>("journey");
    return table;
}

template <> Values RowMapping<Journey>::values(const Journey& journey)
{
    return toValues<Fields>(journey);
}

template <> Journey RowMapping<Journey>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Journey>(row);
}

template <> Result<void> RowMapping<Journey>::check(const Journey& journey)
{
    return Checks(Words::tr("Journey"))
        .rule(journey.leaves.isValid() && journey.returns.isValid(), Words::tr("A day of it is missing."),
              Words::tr("Give the day of leaving and the day of return."))
        .rule(journey.returns > journey.leaves, Words::tr("It ends before it has begun."),
              Words::tr("The day of return comes after the day of leaving."))
        .result();
}

} // namespace littoral::store
