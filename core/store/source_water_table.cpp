// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::SourceWater;

namespace {

constexpr Codes<4> kKinds{"tap", "reverse-osmosis", "blend", "rain"};
constexpr Codes<3> kChloramine{"no", "unknown", "yes"};

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& source)
    {
        io.field("id", source.id);
        io.field("name", source.name);
        io.code("kind", source.kind, kKinds);
        io.field("nitrate_mgn_per_l", source.nitrate_mgN_per_L);
        io.code("chloramine", source.chloramine, kChloramine);
        io.field("alkalinity_meq_per_l", source.alkalinity_meq_per_L);
        io.field("hardness_mmol_per_l", source.hardness_mmol_per_L);
        io.field("ph", source.ph);
        io.field("chloride_mg_per_l", source.chloride_mg_per_L);
        io.field("note", source.note);
        io.field("first_part", source.firstPart);
        io.field("second_part", source.secondPart);
        io.field("first_share", source.firstShare);
    }
};

} // namespace

template <> const Table& RowMapping<SourceWater>::table()
{
    static const Table table = describe<Fields, SourceWater>("source_water");
    return table;
}

template <> Values RowMapping<SourceWater>::values(const SourceWater& source)
{
    return toValues<Fields>(source);
}

template <> SourceWater RowMapping<SourceWater>::record(const QSqlQuery& row)
{
    return toRecord<Fields, SourceWater>(row);
}

template <> Result<void> RowMapping<SourceWater>::check(const SourceWater& source)
{
    return Checks(Words::tr("Source water"))
        .finite({source.nitrate_mgN_per_L, source.alkalinity_meq_per_L, source.hardness_mmol_per_L, source.ph,
                 source.chloride_mg_per_L, source.firstShare})
        .share(source.firstShare)
        .rule(!source.id || (source.firstPart != source.id && source.secondPart != source.id),
              Words::tr("A blend cannot be made of itself."), Words::tr("Choose two other waters as its parts."))
        .rule(!source.firstPart || source.firstPart != source.secondPart,
              Words::tr("Both parts of the blend are the same water."), Words::tr("Choose two different waters."))
        .result();
}

} // namespace littoral::store
