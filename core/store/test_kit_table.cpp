// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

#include <algorithm>
#include <cmath>

namespace littoral::store {

using record::TestKit;

namespace {

constexpr Codes<4> kKinds{"card", "drops", "strip", "digital"};

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& kit)
    {
        io.field("id", kit.id);
        io.field("name", kit.name);
        io.field("parameter", kit.parameter);
        io.field("unit", kit.unit);
        io.code("kind", kit.kind, kKinds);
        io.numbers("steps", kit.steps);
        io.field("reads_nitrite_too", kit.readsNitriteToo);
        io.field("wait_minutes", kit.waitMinutes);
        io.field("lot", kit.lot);
        io.field("opened", kit.opened);
        io.field("expires", kit.expires);
        io.field("note", kit.note);
        io.field("retired", kit.retired);
    }
};

} // namespace

template <> const Table& RowMapping<TestKit>::table()
{
    static const Table table = describe<Fields, TestKit>("test_kit");
    return table;
}

template <> Values RowMapping<TestKit>::values(const TestKit& kit)
{
    return toValues<Fields>(kit);
}

template <> TestKit RowMapping<TestKit>::record(const QSqlQuery& row)
{
    return toRecord<Fields, TestKit>(row);
}

template <> Result<void> RowMapping<TestKit>::check(const TestKit& kit)
{
    const bool sound = std::ranges::all_of(kit.steps, [](double step) { return std::isfinite(step); });
    return Checks(Words::tr("Test kit"))
        .hasParameter(kit.parameter)
        .hasUnit(kit.parameter, kit.unit)
        .rule(sound && std::ranges::is_sorted(kit.steps), Words::tr("The kit's steps do not rise."),
              Words::tr("Type them from the lowest to the highest, as its card prints them."))
        .rule(kit.waitMinutes >= 0, Words::tr("The waiting time is below zero."), Words::tr("Type the minutes again."))
        .result();
}

} // namespace littoral::store
