// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Reading;

namespace {

constexpr Codes<4> kCensoring{"none", "below", "above", "between"};

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& reading)
    {
        io.field("id", reading.id);
        io.field("tank", reading.tank);
        io.field("layout", reading.layout);
        io.field("parameter", reading.parameter);
        io.field("at", reading.at);
        io.field("typed", reading.typed);
        io.field("unit", reading.unit);
        io.code("censoring", reading.censoring, kCensoring);
        io.field("value", reading.value);
        io.field("low", reading.low);
        io.field("high", reading.high);
        io.field("kit", reading.kit);
        io.field("note", reading.note);
        io.field("entered", reading.enteredAt);
    }
};

} // namespace

template <> const Table& RowMapping<Reading>::table()
{
    static const Table table = describe<Fields, Reading>("reading");
    return table;
}

template <> Values RowMapping<Reading>::values(const Reading& reading)
{
    return toValues<Fields>(reading);
}

template <> Reading RowMapping<Reading>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Reading>(row);
}

template <> Result<void> RowMapping<Reading>::check(const Reading& reading)
{
    return Checks(Words::tr("Reading"))
        .hasTank(reading.tank)
        .hasLayout(reading.layout)
        .hasTime(reading.at)
        .hasParameter(reading.parameter)
        .hasUnit(reading.parameter, reading.unit)
        .finite({reading.value, reading.low, reading.high})
        .rule(reading.low <= reading.high, Words::tr("Its lower bound lies above its upper bound."),
              Words::tr("Type the reading again."))
        .result();
}

} // namespace littoral::store
