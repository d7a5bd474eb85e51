// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QString>
#include <variant>
#include <vector>

namespace littoral::store {

struct Setting
{
    QString key;
    QString value; ///< empty removes it
};

/// Everything that can be written. A record with id zero gets its id when it is put into an Edit.
using Record = std::variant<record::Tank, record::Layout, record::SourceWater, record::TestKit, record::Reading,
                            record::Entry, record::Photo, record::Supply, record::TaskTemplate, record::Task,
                            record::Target, record::Plan, record::IssuedForecast, record::DoseRegimen, record::Journey>;

using RecordId =
    std::variant<record::TankId, record::LayoutId, record::SourceWaterId, record::KitId, record::ReadingId,
                 record::EntryId, record::PhotoId, record::SupplyId, record::TaskTemplateId, record::TaskId,
                 record::TargetId, record::PlanId, record::ForecastId, record::RegimenId, record::JourneyId>;

/// One change as the keeper thinks of it ("nitrite 0.8, Slate Ford"), whole or not at all, undone as one.
class Edit
{
public:
    explicit Edit(QString label)
        : m_label(std::move(label))
    {
    }

    /// Adds or replaces. Returns the record's id, made here if it had none, so that records in one edit can refer to
    /// each other.
    template <typename T> auto put(T record)
    {
        const bool fresh = !record.id;
        if (fresh) {
            record.id.value = nextId();
        }
        const auto id = record.id;
        m_steps.emplace_back(Put{std::move(record), fresh});
        return id;
    }
    /// Removes, with what hangs on it (a tank's layouts, a layout's readings).
    void remove(RecordId id) { m_steps.emplace_back(Remove{id}); }
    void set(QString key, QString value) { m_steps.emplace_back(Setting{std::move(key), std::move(value)}); }

    [[nodiscard]] const QString& label() const { return m_label; }
    [[nodiscard]] bool isEmpty() const { return m_steps.empty(); }

    struct Put
    {
        Record record;
        bool fresh = false; ///< its id was made here: a record that has it already is never replaced
    };
    struct Remove
    {
        RecordId id;
    };
    using Step = std::variant<Put, Remove, Setting>;
    [[nodiscard]] const std::vector<Step>& steps() const { return m_steps; }

    /// Microseconds since 1970 in steps of 64, strictly rising within the process, the step's remainder chosen by
    /// chance for each process: unique across the programs that share a store (and where chance fails, apply() refuses
    /// rather than replaces), ordered by making, and exact in a JSON number. Thread-safe.
    [[nodiscard]] static qint64 nextId();

private:
    QString m_label;
    std::vector<Step> m_steps;
};

} // namespace littoral::store
