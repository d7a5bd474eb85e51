// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/keeper.h"

#include "core/care/easing.h"
#include "core/facade/row_edit.h"
#include "core/record/shown.h"
#include "core/wording/sentences.h"

#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using store::Edit;

namespace {

/// Units are the store's: everybody who listens to the signals that follow finds them in force.
void show(const record::Row& row)
{
    record::showUnits(record::unitsFrom(row.settings));
}

Error noStore()
{
    return {Fault::NotFound,
            Keeper::tr("No store is open.").toStdString(),
            {},
            Keeper::tr("Open one or make a new one first.").toStdString()};
}

/// "Water change 40 %, Slate Ford": the round as an undo label names it.
QString roundText(const record::Row& row, const care::DueItem& item)
{
    const record::Tank* tank = row.tank(item.tank);
    const QString title = wording::dueTitle(item);
    return tank == nullptr ? title : Keeper::tr("%1, %2").arg(title, tank->name);
}

} // namespace

Keeper::Keeper(const record::Clock& clock, QObject* parent)
    : QObject(parent)
    , m_clock(clock)
{
}
Keeper::~Keeper() = default;

Result<void> Keeper::create(const QString& path)
{
    auto made = store::Store::create(path);
    if (!made) {
        return made.error();
    }
    close();
    m_store = std::move(made).value();
    if (auto loaded = reload(); !loaded) {
        return loaded;
    }
    emit storeOpened();
    return {};
}

Result<void> Keeper::open(const QString& path, store::Access access)
{
    auto opened = store::Store::open(path, access);
    if (!opened) {
        return opened.error();
    }
    auto row = opened.value()->load();
    if (!row) {
        return row.error();
    }
    close();
    m_store = std::move(opened).value();
    m_row = std::move(row).value();
    ++m_revision;
    show(m_row);
    emit storeOpened();
    return {};
}

void Keeper::close()
{
    if (m_store == nullptr) {
        return;
    }
    m_store.reset();
    m_row = {};
    ++m_revision;
    emit storeClosed();
}

bool Keeper::isReadOnly() const
{
    return m_store != nullptr && m_store->isReadOnly();
}

QString Keeper::path() const
{
    return m_store == nullptr ? QString() : m_store->path();
}

Result<void> Keeper::reload()
{
    auto row = m_store->load();
    if (!row) {
        return row.error();
    }
    m_row = std::move(row).value();
    ++m_revision;
    show(m_row);
    return {};
}

Result<void> Keeper::commit(const Edit& edit)
{
    if (m_store == nullptr) {
        return noStore();
    }
    if (edit.isEmpty()) {
        return {};
    }
    if (auto applied = m_store->apply(edit); !applied) {
        return applied;
    }
    if (applyTo(m_row, edit)) {
        ++m_revision;
        show(m_row);
    } else if (auto loaded = reload(); !loaded) {
        return loaded;
    }
    emit changed();
    return {};
}

Result<QString> Keeper::undo()
{
    if (m_store == nullptr) {
        return noStore();
    }
    auto label = m_store->undo();
    if (label) {
        if (auto loaded = reload(); !loaded) {
            return loaded.error();
        }
        emit changed();
    }
    return label;
}

Result<QString> Keeper::redo()
{
    if (m_store == nullptr) {
        return noStore();
    }
    auto label = m_store->redo();
    if (label) {
        if (auto loaded = reload(); !loaded) {
            return loaded.error();
        }
        emit changed();
    }
    return label;
}

store::JournalState Keeper::journal() const
{
    return m_store == nullptr ? store::JournalState{} : m_store->journal();
}

void Keeper::refreshIfChangedOutside()
{
    if (m_store != nullptr && m_store->changedOutside() && reload()) {
        emit changed();
    }
}

Result<record::TankId> Keeper::addTank(record::Tank tank, record::Layout layout)
{
    tank.name = tank.name.trimmed();
    if (tank.name.isEmpty()) {
        return Error{Fault::BadInput,
                     tr("The tank has no name.").toStdString(),
                     {},
                     tr("Give it one that you would say aloud.").toStdString()};
    }
    if (!layout.flooded.isValid()) {
        return Error{Fault::BadInput,
                     tr("There is no day on which %1 was flooded.").arg(tank.name).toStdString(),
                     {},
                     tr("A guess will do; it can be changed later.").toStdString()};
    }
    int last = 0;
    for (const record::Tank& other : m_row.tanks) {
        last = std::max(last, other.position);
    }
    tank.position = last + 1;
    Edit edit(tr("add tank %1").arg(tank.name));
    layout.tank = edit.put(tank);
    const record::TankId id = layout.tank;
    edit.put(std::move(layout));
    if (auto done = commit(edit); !done) {
        return done.error();
    }
    return id;
}

Result<record::ReadingId> Keeper::enterReading(const TypedReading& typed)
{
    auto made = readingAsTyped(m_row, typed.layout, typed.parameter, typed.typed, typed.unit, typed.kit, typed.at);
    if (!made) {
        return made.error();
    }
    record::Reading reading = std::move(made).value();
    reading.id = typed.replaces;
    reading.note = typed.note;
    reading.enteredAt = m_clock.now();
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    const record::Tank* tank = m_row.tank(reading.tank);
    Edit edit(tr("%1 %2 %3, %4")
                  .arg(parameter->name, reading.typed, parameter->unit(reading.unit)->label,
                       tank == nullptr ? QString() : tank->name));
    const record::ReadingId id = edit.put(std::move(reading));
    if (auto done = commit(edit); !done) {
        return done.error();
    }
    return id;
}

Result<record::EntryId> Keeper::enter(record::Entry entry)
{
    if (!entry.layout) {
        const record::LayoutRecord* layout = m_row.layoutAt(entry.tank, entry.at);
        if (layout == nullptr) {
            return Error{Fault::NotFound,
                         tr("This tank has no layout to write to.").toStdString(),
                         {},
                         tr("Add a layout first.").toStdString()};
        }
        entry.layout = layout->layout.id;
    }
    const record::LayoutRecord* layout = m_row.layout(entry.layout);
    if (layout == nullptr) {
        return Error{Fault::NotFound, tr("That layout is not in the store any more.").toStdString(), {}, {}};
    }
    if (!entry.at.isValid()) {
        return Error{Fault::BadInput, tr("The entry has no date.").toStdString(), {}, {}};
    }
    entry.tank = layout->layout.tank;
    if (!entry.enteredAt.isValid()) {
        entry.enteredAt = m_clock.now();
    }
    const record::Tank* tank = m_row.tank(entry.tank);
    const QString what = entry.subject.isEmpty() ? record::entryKindName(entry.kind)
                                                 : record::entryKindName(entry.kind) + u": "_s + entry.subject;
    Edit edit(tr("%1, %2").arg(what, tank == nullptr ? QString() : tank->name));
    const record::EntryId id = edit.put(std::move(entry));
    if (auto done = commit(edit); !done) {
        return done.error();
    }
    return id;
}

/// The planned entry a round stands for; nullptr when it stands for none.
const record::Entry* Keeper::plannedFor(const care::DueItem& item) const
{
    const record::LayoutRecord* layout = item.plannedEntry ? m_row.layout(item.layout) : nullptr;
    if (layout == nullptr) {
        return nullptr;
    }
    const auto found = std::ranges::find(layout->entries, item.plannedEntry, &record::Entry::id);
    return found == layout->entries.end() || !found->planned ? nullptr : &*found;
}

/// A plan is moved by moving what is planned: there is no cadence to come back to.
Result<void> Keeper::movePlanned(record::Entry entry, const QDate& day, const QString& label)
{
    const QDateTime at = entry.at.toDateTime();
    entry.at = record::Moment::fromDateTime(QDateTime(day, at.time(), Qt::OffsetFromUTC, entry.at.offsetSeconds()));
    Edit edit(label);
    edit.put(std::move(entry));
    return commit(edit);
}

Result<void> Keeper::markDone(const care::DueItem& item, const record::Moment& at)
{
    Edit edit(item.templateKey == care::kEaseKey ? tr("water changes eased")
                                                 : tr("done: %1").arg(roundText(m_row, item)));
    record::Task task = taskFor(m_row, item, m_clock.now());
    task.state = record::TaskState::Done;
    task.closedAt = at;
    std::optional<record::Entry> entry = entryThatCloses(m_row, item, at);
    if (entry) {
        entry->enteredAt = m_clock.now();
        task.closedBy = edit.put(std::move(*entry));
    }
    edit.put(std::move(task));
    if (item.templateKey == care::kEaseKey) {
        edit.set(care::cadenceSettingKey(item.layout),
                 care::acceptedStepsText(care::easedSteps(m_row, item.layout, at.localDate())));
    }
    return commit(edit);
}

Result<void> Keeper::skip(const care::DueItem& item, const QString& reason)
{
    if (reason.trimmed().isEmpty()) {
        return Error{Fault::BadInput,
                     tr("Skipping needs a reason.").toStdString(),
                     {},
                     tr("A few words are enough; they stay with the round.").toStdString()};
    }
    record::Task task = taskFor(m_row, item, m_clock.now());
    task.state = record::TaskState::Skipped;
    task.closedAt = m_clock.now();
    task.reason = reason.trimmed();
    Edit edit(tr("skipped: %1").arg(roundText(m_row, item)));
    if (const record::Entry* planned = plannedFor(item)) {
        edit.remove(planned->id);
    }
    edit.put(std::move(task));
    return commit(edit);
}

Result<void> Keeper::snooze(const care::DueItem& item, const QDate& until)
{
    if (!until.isValid() || until <= m_clock.today()) {
        return Error{Fault::BadInput, tr("Snoozing needs a day after today.").toStdString(), {}, {}};
    }
    if (const record::Entry* planned = plannedFor(item)) {
        return movePlanned(*planned, until, tr("snoozed: %1").arg(roundText(m_row, item)));
    }
    record::Task task = taskFor(m_row, item, m_clock.now());
    task.movedTo = until;
    task.snoozed = true;
    Edit edit(tr("snoozed: %1").arg(roundText(m_row, item)));
    edit.put(std::move(task));
    return commit(edit);
}

Result<void> Keeper::moveTo(const care::DueItem& item, const QDate& day)
{
    if (!day.isValid()) {
        return Error{Fault::BadInput, tr("That is not a day.").toStdString(), {}, {}};
    }
    if (const record::Entry* planned = plannedFor(item)) {
        return movePlanned(*planned, day, tr("moved: %1").arg(roundText(m_row, item)));
    }
    record::Task task = taskFor(m_row, item, m_clock.now());
    task.movedTo = day;
    task.snoozed = false;
    Edit edit(tr("moved: %1").arg(roundText(m_row, item)));
    edit.put(std::move(task));
    return commit(edit);
}

QString Keeper::lastChangeText() const
{
    return journal().undoLabel.value_or(QString());
}

} // namespace littoral::facade
