// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::DoseRegimen;

namespace {

constexpr Codes<3> kForms{"salt", "stock", "fertiliser"};

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& regimen)
    {
        io.field("id", regimen.id);
        io.field("tank", regimen.tank);
        io.field("layout", regimen.layout);
        io.field("name", regimen.name);
        io.code("form", regimen.form, kForms);
        io.field("salt", regimen.salt);
        io.field("stock_g", regimen.stock_g);
        io.field("stock_ml", regimen.stock_mL);
        io.field("nitrate_mg_per_ml", regimen.nitrate_mg_per_mL);
        io.field("phosphate_mg_per_ml", regimen.phosphate_mg_per_mL);
        io.field("potassium_mg_per_ml", regimen.potassium_mg_per_mL);
        io.field("magnesium_mg_per_ml", regimen.magnesium_mg_per_mL);
        io.field("iron_mg_per_ml", regimen.iron_mg_per_mL);
        io.field("amount", regimen.amount);
        io.field("every_days", regimen.everyDays);
        io.field("weekdays", regimen.weekdays);
        io.field("from_day", regimen.from);
        io.field("until_day", regimen.until);
        io.field("lean_start", regimen.leanStart);
        io.field("note", regimen.note);
    }
};

} // namespace

template <> const Table& RowMapping<DoseRegimen>::table()
{
    static const Table table = describe<Fields, DoseRegimen>("dose_regimen");
    return table;
}

template <> Values RowMapping<DoseRegimen>::values(const DoseRegimen& regimen)
{
    return toValues<Fields>(regimen);
}

template <> DoseRegimen RowMapping<DoseRegimen>::record(const QSqlQuery& row)
{
    return toRecord<Fields, DoseRegimen>(row);
}

template <> Result<void> RowMapping<DoseRegimen>::check(const DoseRegimen& regimen)
{
    const QString problem = record::regimenProblem(regimen);
    return Checks(Words::tr("Dosing"))
        .hasLayout(regimen.layout)
        .notNegative({regimen.stock_g, regimen.stock_mL, regimen.nitrate_mg_per_mL, regimen.phosphate_mg_per_mL,
                      regimen.potassium_mg_per_mL, regimen.magnesium_mg_per_mL, regimen.iron_mg_per_mL, regimen.amount})
        .rule(problem.isEmpty(), problem, Words::tr("Complete it where doses are set for the tank."))
        .rule(regimen.everyDays <= 365, Words::tr("More than a year lies between two doses."),
              Words::tr("Give days between doses from 1 to 365."))
        .result();
}

} // namespace littoral::store
