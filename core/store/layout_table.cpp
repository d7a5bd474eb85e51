// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Layout;

namespace {

constexpr Codes<5> kStarts{"new-media", "mature-media", "starter", "dry-start", "dark-start"};
constexpr Codes<4> kBeds{"rich-soil", "mild-soil", "spent-soil", "inert"};
constexpr Codes<4> kPlants{"none", "sparse", "medium", "dense"};
constexpr Codes<3> kCo2{"none", "pressurised", "other"};

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& layout)
    {
        io.field("id", layout.id);
        io.field("tank", layout.tank);
        io.field("number", layout.number);
        io.field("name", layout.name);
        io.field("flooded", layout.flooded);
        io.field("ended", layout.ended);
        io.code("start", layout.start, kStarts);
        io.code("bed", layout.bed, kBeds);
        io.field("bed_l", layout.bed_L);
        io.field("rock_kg", layout.rock_kg);
        io.field("rock_hardens", layout.rockHardens);
        io.field("gap_cm", layout.gap_cm);
        io.field("measured_net_l", layout.measuredNet_L);
        io.code("plants", layout.plants, kPlants);
        io.field("source", layout.source);
        io.code("co2", layout.co2, kCo2);
        io.field("co2_target_mg_per_l", layout.co2Target_mg_per_L);
        io.field("co2_hours", layout.co2Hours);
        io.field("light_hours", layout.lightHours);
        io.field("light_par", layout.lightPar);
        io.field("filter_flow_l_per_h", layout.filterFlow_L_per_h);
        io.field("temperature_c", layout.temperature_C);
        io.field("follows_cadence", layout.followsCadence);
        io.field("note", layout.note);
        io.field("uptake_low_mg_per_l_wk", layout.uptakeLow_mg_per_L_wk);
        io.field("uptake_high_mg_per_l_wk", layout.uptakeHigh_mg_per_L_wk);
    }
};

} // namespace

template <> const Table& RowMapping<Layout>::table()
{
    static const Table table = describe<Fields, Layout>("layout");
    return table;
}

template <> Values RowMapping<Layout>::values(const Layout& layout)
{
    return toValues<Fields>(layout);
}

template <> Layout RowMapping<Layout>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Layout>(row);
}

template <> Result<void> RowMapping<Layout>::check(const Layout& layout)
{
    return Checks(Words::tr("Layout"))
        .hasTank(layout.tank)
        .hasTime(layout.flooded)
        .rule(layout.number > 0, Words::tr("A tank's layouts are numbered from 1."),
              Words::tr("Number it 1 or higher."))
        .rule(!layout.ended || *layout.ended >= layout.flooded, Words::tr("The layout ends before it was flooded."),
              Words::tr("Correct one of the two dates."))
        .notNegative({layout.bed_L, layout.rock_kg, layout.uptakeLow_mg_per_L_wk.value_or(0.0),
                      layout.uptakeHigh_mg_per_L_wk.value_or(0.0)})
        .rule(layout.uptakeLow_mg_per_L_wk.value_or(0.0) <=
                  layout.uptakeHigh_mg_per_L_wk.value_or(layout.uptakeLow_mg_per_L_wk.value_or(0.0)),
              Words::tr("The lower end of what the plants take up lies above its upper end."),
              Words::tr("Swap or correct the two numbers."))
        .finite({layout.gap_cm, layout.measuredNet_L, layout.co2Target_mg_per_L, layout.co2Hours, layout.lightHours,
                 layout.lightPar, layout.filterFlow_L_per_h, layout.temperature_C})
        .result();
}

} // namespace littoral::store
