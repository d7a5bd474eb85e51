// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/work_template.h"
#include "core/facade/hand_over.h"

/// Whose each round of a journey is. Rules from common practice: the helper gets what is marked as simple in the task
/// templates and cannot wait; a tank out of its first weeks is changed on the day of leaving; filters are serviced five
/// to seven days before it.
namespace littoral::facade {

class HandSplit
{
public:
    /// All outlive the split.
    HandSplit(const record::Row& row, const record::Journey& journey, const record::Moment& now);

    /// As of when the record is read: now, but not after the evening of the day of leaving.
    [[nodiscard]] const record::Moment& moment() const { return m_moment; }
    /// The layout of a tank that stands in water on the day of leaving; nullptr when there is none.
    [[nodiscard]] const record::LayoutRecord* layoutOf(record::TankId tank) const;
    /// Every round of a layout that falls into the journey or is open when it begins. Tank names are left empty.
    [[nodiscard]] std::vector<HandOverTask> tasksOf(const record::LayoutRecord& layout);
    /// Work for the whole row.
    [[nodiscard]] std::vector<HandOverTask> rowTasks() const;

private:
    [[nodiscard]] record::Moment on(const QDate& day, int hour) const;
    [[nodiscard]] std::vector<care::DueItem> workOf(const record::Row& row, record::LayoutId layout,
                                                    const record::Moment& at) const;
    [[nodiscard]] bool isBetween(const QDate& day) const { return m_journey.covers(day); }
    [[nodiscard]] bool canWait(const care::DueItem& item) const;
    [[nodiscard]] bool givesWay(const care::DueItem& item) const;
    [[nodiscard]] const QString& helperWords(const care::DueItem& item) const;
    [[nodiscard]] std::optional<HandOverTask> broughtForward(const care::DueItem& item, bool young) const;
    [[nodiscard]] HandOverTask helperTask(const record::LayoutRecord& layout, const care::DueItem& item) const;
    [[nodiscard]] HandOverTask laterTask(const care::DueItem& item) const;
    void markDone(record::Row& row, const care::DueItem& item, const QDate& day) const;

    const record::Row& m_row;
    const record::Journey& m_journey;
    record::Row m_then; ///< as it will be when all due until the day of leaving is done on time; one layout at a time
    record::Moment m_moment;
    care::TemplateSet m_templates;
};

} // namespace littoral::facade
