// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Target;

namespace {

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& target)
    {
        io.field("id", target.id);
        io.field("tank", target.tank);
        io.field("parameter", target.parameter);
        io.field("low", target.low);
        io.field("high", target.high);
    }
};

} // namespace

template <> const Table& RowMapping<Target>::table()
{
    static const Table table = describe<Fields, Target>("target");
    return table;
}

template <> Values RowMapping<Target>::values(const Target& target)
{
    return toValues<Fields>(target);
}

template <> Target RowMapping<Target>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Target>(row);
}

template <> Result<void> RowMapping<Target>::check(const Target& target)
{
    return Checks(Words::tr("Target"))
        .hasTank(target.tank)
        .hasParameter(target.parameter)
        .finite({target.low, target.high})
        .rule(!target.low || !target.high || *target.low <= *target.high,
              Words::tr("Its lower end lies above its upper end."), Words::tr("Swap or correct the two numbers."))
        .result();
}

} // namespace littoral::store
