// SPDX-License-Identifier: GPL-3.0-or-later
// The part of Writer that looks at other rows before and after a record is written.
#include "core/store/failure.h"
#include "core/store/writer.h"

#include <algorithm>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

QString missing(const Reference& reference)
{
    const QLatin1String target(reference.target);
    if (target == QLatin1String("tank")) {
        return Words::tr("The tank it refers to is not in the store.");
    }
    if (target == QLatin1String("layout")) {
        return Words::tr("The layout it belongs to is not in the store.");
    }
    if (target == QLatin1String("test_kit")) {
        return Words::tr("The test kit it names is not in the store.");
    }
    if (target == QLatin1String("source_water")) {
        return Words::tr("The source water it names is not in the store.");
    }
    return Words::tr("The entry that closed it is not in the store.");
}

} // namespace

Result<void> Writer::checkTankName(const record::Tank& tank)
{
    Statement query = m_connection.prepare(u"SELECT id, name FROM tank"_s);
    if (const auto done = query.exec(); !done) {
        return done;
    }
    const QString wanted = tank.name.trimmed().toCaseFolded();
    while (query.next()) {
        const QString name = query.value(1).toString();
        if (query.value(0).toLongLong() != tank.id.value && name.trimmed().toCaseFolded() == wanted) {
            return fail(Fault::Conflict, Words::tr("There is already a tank called \"%1\".").arg(name),
                        Words::tr("Choose another name."));
        }
    }
    return query.end();
}

Result<void> Writer::checkTaken(const Record& record)
{
    if (const auto* tank = std::get_if<record::Tank>(&record)) {
        return checkTankName(*tank);
    }
    if (const auto* it = std::get_if<record::TaskTemplate>(&record)) {
        const auto taken = any(u"SELECT 1 FROM task_template WHERE key = ? AND id <> ?"_s, {it->key, it->id.value});
        if (!taken) {
            return taken.error();
        }
        if (*taken) {
            return fail(Fault::Conflict,
                        Words::tr("There is already a task template with the key \"%1\".").arg(it->key),
                        Words::tr("Change that template, or choose another key."));
        }
    }
    if (const auto* target = std::get_if<record::Target>(&record)) {
        const auto taken = any(u"SELECT 1 FROM target WHERE tank = ? AND parameter = ? AND id <> ?"_s,
                               {target->tank.value, target->parameter, target->id.value});
        if (!taken) {
            return taken.error();
        }
        if (*taken) {
            return fail(Fault::Conflict, Words::tr("The tank already has a target for \"%1\".").arg(target->parameter),
                        Words::tr("Load the store again and change that target."));
        }
    }
    return {};
}

Result<void> Writer::checkBefore(const Record& record, const Values* before, Values& after) const
{
    if (const auto* layout = std::get_if<record::Layout>(&record); layout != nullptr && before != nullptr) {
        const auto column = static_cast<std::size_t>(tableOf(record).columnIndex(u"tank"_s));
        if (before->at(column) != after.at(column)) {
            return fail(
                Fault::Conflict,
                Words::tr("A layout cannot move to another tank; its readings belong to the water it stood in."),
                Words::tr("End it, and add a new layout to the other tank."));
        }
    }
    if (const auto* photo = std::get_if<record::Photo>(&record); photo != nullptr && photo->jpeg.isEmpty()) {
        if (before == nullptr) {
            return fail(Fault::BadInput, Words::tr("The photograph has no picture in it."),
                        Words::tr("Add it again from its file."));
        }
        // Lists of photographs come without their bytes: what is put back without them keeps those it has.
        after.back() = before->back();
    }
    return {};
}

void Writer::noteNeeds(const Table& table, const Values& row)
{
    qint64 layout = 0;
    for (const Reference& reference : references()) {
        if (table.name != QLatin1String(reference.table)) {
            continue;
        }
        const int column = table.columnIndex(QString::fromLatin1(reference.column));
        const qint64 id = row[static_cast<std::size_t>(column)].toLongLong();
        if (id != 0) {
            m_needs.emplace(&reference, id);
        }
        if (QLatin1String(reference.column) == QLatin1String("layout")) {
            layout = id;
        }
    }
    const int tank = table.columnIndex(u"tank"_s);
    if (layout != 0 && tank >= 0) {
        m_layoutNeeds.emplace(&table, layout, row[static_cast<std::size_t>(tank)].toLongLong());
    }
}

/// A blend of blends may hold itself only by way of another row, so this is asked once all rows are written.
Result<void> Writer::checkBlends()
{
    const bool touched = std::ranges::any_of(m_edit.steps(), [](const Edit::Step& step) {
        const auto* put = std::get_if<Edit::Put>(&step);
        return put != nullptr && std::holds_alternative<record::SourceWater>(put->record);
    });
    if (!touched) {
        return {};
    }
    const auto name = m_connection.value(blendsOfThemselves() + u" LIMIT 1"_s);
    if (!name) {
        return name.error();
    }
    if (name->isValid()) {
        return fail(Fault::BadInput, Words::tr("The blend \"%1\" would be made of itself.").arg(name->toString()),
                    Words::tr("Choose parts that do not lead back to it."));
    }
    return {};
}

Result<void> Writer::checkNeeds()
{
    // What an edit put and then removed again needs nothing: hence the second look at who still refers.
    for (const auto& [reference, id] : m_needs) {
        const auto there = any(u"SELECT 1 FROM %1 WHERE id = ?"_s.arg(QLatin1String(reference->target)), {id});
        const auto referred = any(u"SELECT 1 FROM %1 WHERE %2 = ? LIMIT 1"_s.arg(QLatin1String(reference->table),
                                                                                 QLatin1String(reference->column)),
                                  {id});
        if (!there || !referred) {
            return there ? referred.error() : there.error();
        }
        if (!*there && *referred) {
            return fail(Fault::Conflict, missing(*reference),
                        Words::tr("Nothing was changed. Load the store again; another program may have removed it."));
        }
    }
    for (const auto& [table, layout, tank] : m_layoutNeeds) {
        const auto inside = any(u"SELECT 1 FROM layout WHERE id = ? AND tank = ?"_s, {layout, tank});
        const auto referred =
            any(u"SELECT 1 FROM %1 WHERE layout = ? AND tank = ? LIMIT 1"_s.arg(table->name), {layout, tank});
        if (!inside || !referred) {
            return inside ? referred.error() : inside.error();
        }
        if (!*inside && *referred) {
            return fail(Fault::BadInput, Words::tr("The layout it names stands in another tank."),
                        Words::tr("Choose a layout of the tank it belongs to."));
        }
    }
    return {};
}

} // namespace littoral::store
