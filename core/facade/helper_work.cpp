// SPDX-License-Identifier: GPL-3.0-or-later
// What was done while the keeper was away, written down afterwards.
#include "core/facade/hand_over.h"
#include "core/facade/keeper.h"
#include "core/facade/row_edit.h"
#include "core/wording/hand_over_words.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using care::WorkKind;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("HandOver", text);
}

bool isSameDay(const record::Moment& at, const QDate& day)
{
    return at.localDate() == day;
}

/// Was the round closed since, by the list, by a tick, or by an entry or reading of that very day?
bool isClosed(const record::LayoutRecord& layout, const HandOverTask& task)
{
    const care::DueItem& item = task.item;
    const bool decided = std::ranges::any_of(layout.tasks, [&](const record::Task& row) {
        return row.templateKey == item.templateKey && row.due == item.cadenceDue &&
               row.state != record::TaskState::Open;
    });
    if (decided || item.kind != WorkKind::Test) {
        const bool changed =
            item.kind == WorkKind::WaterChange && std::ranges::any_of(layout.entries, [&](const record::Entry& entry) {
                return entry.kind == record::EntryKind::WaterChange && !entry.planned && isSameDay(entry.at, task.day);
            });
        return decided || changed;
    }
    return std::ranges::all_of(item.parameters, [&](const QString& parameter) {
        return std::ranges::any_of(layout.readings, [&](const record::Reading& reading) {
            return reading.parameter == parameter && isSameDay(reading.at, task.day);
        });
    });
}

/// Turns the lines into one edit; the first line that cannot be written stops it.
class Writer
{
public:
    Writer(const Keeper& keeper, const record::Journey& journey)
        : m_row(keeper.row())
        , m_journey(journey)
        , m_now(keeper.clock().now())
        , m_edit(words("what the helper did, %1").arg(wording::journeyTitle(journey, m_now.localDate())))
    {
    }

    [[nodiscard]] const store::Edit& edit() const { return m_edit; }

    Result<void> write(const HelperDone& line)
    {
        const bool away = line.day >= m_journey.leaves && line.day <= m_journey.returns;
        if (!line.day.isValid() || !away || line.day > m_now.localDate()) {
            return refused(line, words("%1 is not a day of the journey that has passed.")
                                     .arg(wording::dateText(line.day, m_now.localDate())));
        }
        return line.done ? done(line) : leftOut(line);
    }

private:
    [[nodiscard]] Error refused(const HelperDone& line, const QString& what, const QString& mend = {}) const
    {
        const record::Tank* tank = m_row.tank(line.item.tank);
        const QString where =
            words("%1, %2").arg(tank == nullptr ? QString() : tank->name, wording::dueTitle(line.item));
        return {Fault::BadInput, what.toStdString(), where.toStdString(), mend.toStdString()};
    }

    [[nodiscard]] record::Moment noon(const QDate& day) const
    {
        return record::Moment::fromDateTime(QDateTime(day, QTime(12, 0), Qt::OffsetFromUTC, m_now.offsetSeconds()));
    }

    Result<void> leftOut(const HelperDone& line)
    {
        if (line.note.trimmed().isEmpty()) {
            return refused(line, words("It was left out, and nothing says why."), words("A word is enough."));
        }
        record::Task task = taskFor(m_row, line.item, m_now);
        task.state = record::TaskState::Skipped;
        task.closedAt = noon(line.day);
        task.reason = line.note.trimmed();
        m_edit.put(std::move(task));
        return {};
    }

    Result<void> done(const HelperDone& line)
    {
        // Not later than now: what was done today at eleven is not written for noon.
        const record::Moment at = std::min(noon(line.day), m_now);
        if (line.item.kind == WorkKind::Test) {
            if (const auto read = readings(line, at); !read) {
                return read;
            }
        }
        record::Task task = taskFor(m_row, line.item, m_now);
        task.state = record::TaskState::Done;
        task.closedAt = at;
        if (auto entry = entryThatCloses(m_row, line.item, at)) {
            if (line.fraction) {
                entry->fraction = line.fraction;
            }
            entry->note = line.note.trimmed();
            entry->enteredAt = m_now;
            task.closedBy = m_edit.put(std::move(*entry));
        } else {
            task.reason = line.note.trimmed();
        }
        m_edit.put(std::move(task));
        return {};
    }

    Result<void> readings(const HelperDone& line, const record::Moment& at)
    {
        bool any = false;
        for (const HelperDone::Value& value : line.values) {
            if (value.typed.trimmed().isEmpty()) {
                continue;
            }
            auto reading = readingAsTyped(m_row, line.item.layout, value.parameter, value.typed, value.unit, {}, at);
            if (!reading) {
                return refused(line, QString::fromStdString(reading.error().what),
                               QString::fromStdString(reading.error().mend));
            }
            reading->note = line.note.trimmed();
            reading->enteredAt = m_now;
            m_edit.put(std::move(reading).value());
            any = true;
        }
        if (!any) {
            return refused(line, words("A test without a number shows nothing."),
                           words("Type what was read, or mark it as left out."));
        }
        return {};
    }

    const record::Row& m_row;
    const record::Journey& m_journey;
    record::Moment m_now;
    store::Edit m_edit;
};

} // namespace

std::vector<HandOverTask> openHelperTasks(const record::Row& row, const record::Journey& journey,
                                          const record::Moment& now)
{
    std::vector<HandOverTask> open;
    const auto made = handOver(row, journey, now);
    if (!made) {
        return open;
    }
    for (const HelperSheet& sheet : made->sheets) {
        const record::LayoutRecord* layout = row.layout(sheet.layout);
        for (const HandOverTask& task : sheet.tasks) {
            if (layout != nullptr && task.day <= now.localDate() && !isClosed(*layout, task)) {
                open.push_back(task);
            }
        }
    }
    return open;
}

Result<int> writeHelperWork(Keeper& keeper, const record::Journey& journey, const std::vector<HelperDone>& lines)
{
    Writer writer(keeper, journey);
    for (const HelperDone& line : lines) {
        if (const auto written = writer.write(line); !written) {
            return written.error();
        }
    }
    if (const auto committed = keeper.commit(writer.edit()); !committed) {
        return committed.error();
    }
    return static_cast<int>(lines.size());
}

Result<record::JourneyId> keepJourney(Keeper& keeper, record::Journey journey)
{
    const record::Moment now = keeper.clock().now();
    journey.helper = journey.helper.trimmed();
    journey.phone = journey.phone.trimmed();
    journey.note = journey.note.trimmed();
    if (!journey.enteredAt.isValid()) {
        journey.enteredAt = now;
    }
    store::Edit edit(words("journey, %1").arg(wording::journeyTitle(journey, now.localDate())));
    const record::JourneyId id = edit.put(std::move(journey));
    if (const auto done = keeper.commit(edit); !done) {
        return done.error();
    }
    return id;
}

Result<void> dropJourney(Keeper& keeper, record::JourneyId id)
{
    store::Edit edit(words("journey taken out"));
    edit.remove(id);
    return keeper.commit(edit);
}

} // namespace littoral::facade
