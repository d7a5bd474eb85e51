// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/bulk_edit.h"

#include "core/facade/photos.h"
#include "core/wording/entry_words.h"

#include <QCoreApplication>
#include <QSet>
#include <cstdlib>
#include <functional>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

constexpr qint64 kMinuteMs = 60'000;
constexpr qint64 kHourMs = 60 * kMinuteMs;
constexpr qint64 kDayMs = 24 * kHourMs;

QString words(const char* text, int n = -1)
{
    return QCoreApplication::translate("BulkEdit", text, nullptr, n);
}

/// "2 days later", "90 minutes earlier": in the largest unit that says it whole.
QString shiftText(qint64 ms)
{
    const qint64 size = std::abs(ms);
    const int days = static_cast<int>(size / kDayMs);
    const int hours = static_cast<int>(size / kHourMs);
    const int minutes = static_cast<int>(size / kMinuteMs);
    const QString span = size % kDayMs == 0    ? words("%n day(s)", days)
                         : size % kHourMs == 0 ? words("%n hour(s)", hours)
                                               : words("%n minute(s)", minutes);
    return ms < 0 ? words("%1 earlier").arg(span) : words("%1 later").arg(span);
}

/// Works out the new records and puts them into one edit.
class Changer final
{
public:
    Changer(Keeper& keeper, const std::vector<DatedRef>& records, const BulkChange& change)
        : m_keeper(keeper)
        , m_row(keeper.row())
        , m_change(change)
    {
        for (const DatedRef& record : records) {
            std::visit([this](auto id) { wanted(id).insert(id.value); }, record);
        }
        m_asked = static_cast<int>(m_readings.size() + m_entries.size() + m_photos.size());
    }

    Result<void> run()
    {
        for (const auto& [id, layout] : m_row.layouts) {
            takeAll(layout.readings, m_readings);
            takeAll(layout.entries, m_entries);
            if (!m_photos.isEmpty()) {
                takeAll(photosOfLayout(m_keeper, id), m_photos);
            }
        }
        return m_problem ? Result<void>(*m_problem) : Result<void>();
    }

    [[nodiscard]] int changed() const { return static_cast<int>(m_steps.size()); }
    [[nodiscard]] int asked() const { return m_asked; }

    [[nodiscard]] store::Edit edit(const QString& label) const
    {
        store::Edit edit(label);
        for (const auto& step : m_steps) {
            step(edit);
        }
        for (const record::Task& task : m_tasks) {
            edit.put(task);
        }
        return edit;
    }

    /// Undo names what was done to how many.
    [[nodiscard]] QString label() const
    {
        const int n = changed();
        if (m_change.remove) {
            return words("remove %n record(s)", n);
        }
        if (m_change.shift_ms) {
            return words("move %n record(s) %1", n).arg(shiftText(*m_change.shift_ms));
        }
        if (m_change.tank) {
            const record::Tank* tank = m_row.tank(m_change.tank);
            return words("put %n record(s) into %1", n).arg(tank == nullptr ? QString() : tank->name);
        }
        if (m_change.kit) {
            const record::TestKit* kit = m_row.kit(*m_change.kit);
            return kit == nullptr ? words("no kit for %n reading(s)", n)
                                  : words("kit %1 for %n reading(s)", n).arg(kit->name);
        }
        return words("subject \"%1\" for %n record(s)", n)
            .arg(wording::subjectText(m_change.subject.value_or(QString())));
    }

private:
    QSet<qint64>& wanted(record::ReadingId) { return m_readings; }
    QSet<qint64>& wanted(record::EntryId) { return m_entries; }
    QSet<qint64>& wanted(record::PhotoId) { return m_photos; }

    template <typename T> void takeAll(const std::vector<T>& all, const QSet<qint64>& wanted)
    {
        for (const T& record : all) {
            if (!wanted.contains(record.id.value)) {
                continue;
            }
            if (m_change.remove) {
                m_steps.push_back([id = record.id](store::Edit& edit) { edit.remove(id); });
                continue;
            }
            T changed = record;
            move(changed);
            setKit(changed);
            setSubject(changed);
            if (!(changed == record)) {
                reopen(record, changed);
                m_steps.push_back([changed](store::Edit& edit) { edit.put(changed); });
            }
        }
    }

    template <typename T> void move(T& record)
    {
        if (m_change.shift_ms) {
            const record::LayoutRecord* before = m_row.layoutAt(record.tank, record.at);
            record.at = record.at.plusMs(*m_change.shift_ms);
            refuseFuture(record);
            const record::LayoutRecord* after = m_row.layoutAt(record.tank, record.at);
            // A record put into a layout by hand, between two of them, stays in it.
            if (before != nullptr && after != nullptr && before->layout.id == record.layout) {
                record.layout = after->layout.id;
            }
        }
        if (m_change.tank && record.tank != m_change.tank) {
            const record::LayoutRecord* home = m_row.layoutAt(m_change.tank, record.at);
            if (home == nullptr) {
                refuse(words("That tank has no layout to put records into."), words("Add a layout to it first."));
                return;
            }
            record.tank = m_change.tank;
            record.layout = home->layout.id;
        }
    }

    static bool isPlanned(const record::Entry& entry) { return entry.planned; }
    template <typename T> static bool isPlanned(const T&) { return false; }

    template <typename T> void refuseFuture(const T& record)
    {
        if (!isPlanned(record) && record.at > m_keeper.clock().now()) {
            refuse(words("Some of these would be done after now."), words("Move them by less."));
        }
    }

    void setKit(record::Reading& reading)
    {
        if (!m_change.kit) {
            return;
        }
        const record::TestKit* kit = m_row.kit(*m_change.kit);
        if (kit == nullptr || kit->parameter == reading.parameter) {
            reading.kit = *m_change.kit;
        }
    }
    template <typename T> void setKit(T&) {}

    void setSubject(record::Entry& entry)
    {
        // A water change or a top-up is about water, whatever it is called.
        if (m_change.subject && entry.kind != record::EntryKind::WaterChange &&
            entry.kind != record::EntryKind::TopUp) {
            entry.subject = *m_change.subject;
        }
    }
    template <typename T> void setSubject(T&) {}

    /// Work closed by an entry that turns out to be another tank's was not done here.
    void reopen(const record::Entry& before, const record::Entry& after)
    {
        if (before.tank == after.tank) {
            return;
        }
        for (record::Task task : m_row.layouts.at(before.layout).tasks) {
            if (task.closedBy == before.id) {
                task.state = record::TaskState::Open;
                task.closedAt.reset();
                task.closedBy = {};
                m_tasks.push_back(task);
            }
        }
    }
    template <typename T> void reopen(const T&, const T&) {}

    void refuse(const QString& what, const QString& mend)
    {
        if (!m_problem) {
            m_problem = Error{Fault::BadInput, what.toStdString(), {}, mend.toStdString()};
        }
    }

    Keeper& m_keeper;
    const record::Row& m_row;
    const BulkChange& m_change;
    QSet<qint64> m_readings, m_entries, m_photos;
    int m_asked = 0;
    std::vector<std::function<void(store::Edit&)>> m_steps;
    std::vector<record::Task> m_tasks;
    std::optional<Error> m_problem;
};

} // namespace

Result<BulkOutcome> changeAll(Keeper& keeper, const std::vector<DatedRef>& records, const BulkChange& change)
{
    Changer changer(keeper, records, change);
    if (auto worked = changer.run(); !worked) {
        return worked.error();
    }
    BulkOutcome outcome;
    outcome.changed = changer.changed();
    outcome.left = changer.asked() - outcome.changed;
    if (outcome.changed > 0) {
        outcome.label = changer.label();
        if (auto done = keeper.commit(changer.edit(outcome.label)); !done) {
            return done.error();
        }
    }
    return outcome;
}

} // namespace littoral::facade
