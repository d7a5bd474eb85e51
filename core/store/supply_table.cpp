// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Supply;

namespace {

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& supply)
    {
        io.field("id", supply.id);
        io.field("name", supply.name);
        io.field("kind", supply.kind);
        io.field("amount", supply.amount);
        io.field("unit", supply.unit);
        io.field("opened", supply.opened);
        io.field("expires", supply.expires);
        io.field("lot", supply.lot);
        io.field("note", supply.note);
    }
};

} // namespace

template <> const Table& RowMapping<Supply>::table()
{
    static const Table table = describe<Fields, Supply>("supply");
    return table;
}

template <> Values RowMapping<Supply>::values(const Supply& supply)
{
    return toValues<Fields>(supply);
}

template <> Supply RowMapping<Supply>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Supply>(row);
}

template <> Result<void> RowMapping<Supply>::check(const Supply& supply)
{
    return Checks(Words::tr("Supply")).finite({supply.amount}).result();
}

} // namespace littoral::store
