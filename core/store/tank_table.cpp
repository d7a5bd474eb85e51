// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Tank;

namespace {

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& tank)
    {
        io.field("id", tank.id);
        io.field("name", tank.name);
        io.field("position", tank.position);
        io.field("length_cm", tank.length_cm);
        io.field("depth_cm", tank.depth_cm);
        io.field("height_cm", tank.height_cm);
        io.field("glass_mm", tank.glass_mm);
        io.field("note", tank.note);
    }
};

} // namespace

template <> const Table& RowMapping<Tank>::table()
{
    static const Table table = describe<Fields, Tank>("tank");
    return table;
}

template <> Values RowMapping<Tank>::values(const Tank& tank)
{
    return toValues<Fields>(tank);
}

template <> Tank RowMapping<Tank>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Tank>(row);
}

template <> Result<void> RowMapping<Tank>::check(const Tank& tank)
{
    return Checks(Words::tr("Tank"))
        .rule(!tank.name.trimmed().isEmpty(), Words::tr("The tank has no name."),
              Words::tr("Give it a name; it is how you find it again."))
        .notNegative({tank.length_cm, tank.depth_cm, tank.height_cm, tank.glass_mm})
        .result();
}

} // namespace littoral::store
