// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::IssuedForecast;
using record::Plan;

namespace {

struct PlanFields
{
    template <typename Io, typename T> static void visit(Io& io, T& plan)
    {
        io.field("id", plan.id);
        io.field("layout", plan.layout);
        io.field("name", plan.name);
        io.field("created", plan.created);
        io.field("adopted", plan.adopted);
        io.json("body", plan.body);
    }
};

struct ForecastFields
{
    template <typename Io, typename T> static void visit(Io& io, T& forecast)
    {
        io.field("id", forecast.id);
        io.field("layout", forecast.layout);
        io.field("issued", forecast.issued);
        io.field("as_of", forecast.asOf);
        io.field("model", forecast.model);
        io.json("body", forecast.body);
    }
};

} // namespace

template <> const Table& RowMapping<Plan>::table()
{
    static const Table table = describe<PlanFields, Plan>("plan");
    return table;
}

template <> Values RowMapping<Plan>::values(const Plan& plan)
{
    return toValues<PlanFields>(plan);
}

template <> Plan RowMapping<Plan>::record(const QSqlQuery& row)
{
    return toRecord<PlanFields, Plan>(row);
}

template <> Result<void> RowMapping<Plan>::check(const Plan& plan)
{
    return Checks(Words::tr("Plan")).hasLayout(plan.layout).hasTime(plan.created).isJson(plan.body).result();
}

template <> const Table& RowMapping<IssuedForecast>::table()
{
    static const Table table = describe<ForecastFields, IssuedForecast>("forecast");
    return table;
}

template <> Values RowMapping<IssuedForecast>::values(const IssuedForecast& forecast)
{
    return toValues<ForecastFields>(forecast);
}

template <> IssuedForecast RowMapping<IssuedForecast>::record(const QSqlQuery& row)
{
    return toRecord<ForecastFields, IssuedForecast>(row);
}

template <> Result<void> RowMapping<IssuedForecast>::check(const IssuedForecast& forecast)
{
    return Checks(Words::tr("Forecast"))
        .hasLayout(forecast.layout)
        .hasTime(forecast.issued)
        .hasTime(forecast.asOf)
        .isJson(forecast.body)
        .result();
}

} // namespace littoral::store
