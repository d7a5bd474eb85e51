// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Entry;

namespace {

/// The codes are the record module's own, so that files and store agree.
constexpr Codes<12> kKinds{"water-change", "top-up", "dose",           "feeding",      "upkeep",     "observation",
                           "addition",     "loss",   "media-transfer", "light-change", "co2-change", "note"};

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& entry)
    {
        io.field("id", entry.id);
        io.field("tank", entry.tank);
        io.field("layout", entry.layout);
        io.code("kind", entry.kind, kKinds);
        io.field("at", entry.at);
        io.field("planned", entry.planned);
        io.field("planned_for", entry.plannedFor);
        io.field("planned_fraction", entry.plannedFraction);
        io.field("subject", entry.subject);
        io.field("fraction", entry.fraction);
        io.field("amount", entry.amount);
        io.field("unit", entry.unit);
        io.field("second", entry.second);
        io.field("protein_share", entry.proteinShare);
        io.field("count", entry.count);
        io.field("load_mgn_per_l_d", entry.load_mgN_per_L_d);
        io.field("severity", entry.severity);
        io.field("coverage", entry.coverage);
        io.field("place", entry.where);
        io.field("source", entry.source);
        io.field("other_tank", entry.otherTank);
        io.field("note", entry.note);
        io.field("entered", entry.enteredAt);
    }
};

} // namespace

template <> const Table& RowMapping<Entry>::table()
{
    static const Table table = describe<Fields, Entry>("entry");
    return table;
}

template <> Values RowMapping<Entry>::values(const Entry& entry)
{
    return toValues<Fields>(entry);
}

template <> Entry RowMapping<Entry>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Entry>(row);
}

template <> Result<void> RowMapping<Entry>::check(const Entry& entry)
{
    return Checks(record::entryKindName(entry.kind))
        .hasTank(entry.tank)
        .hasLayout(entry.layout)
        .hasTime(entry.at)
        .finite({entry.plannedFraction, entry.fraction, entry.amount, entry.second, entry.proteinShare,
                 entry.load_mgN_per_L_d, entry.coverage})
        .share(entry.fraction)
        .share(entry.plannedFraction)
        .share(entry.proteinShare)
        .share(entry.coverage)
        .rule(!entry.severity || (*entry.severity >= 0 && *entry.severity <= 4),
              Words::tr("Severity goes from 0 (gone) to 4 (out of hand)."), Words::tr("Choose one of the five steps."))
        .result();
}

} // namespace littoral::store
