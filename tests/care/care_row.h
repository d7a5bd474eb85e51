// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"
#include "core/record/row.h"

#include <QStringList>
#include <vector>

/// A row of one tank of 100 L net, flooded on 1 March 2026 at 10:00 (+01:00), to be filled by day of tank age.
class CareRow
{
public:
    explicit CareRow(littoral::record::StartMethod start = littoral::record::StartMethod::NewMedia,
                     littoral::record::Bed bed = littoral::record::Bed::RichSoil,
                     littoral::record::Co2Mode co2 = littoral::record::Co2Mode::Pressurised);

    [[nodiscard]] static QDate day(int age);
    [[nodiscard]] static littoral::record::Moment at(int age, int hour = 12, int minute = 0);

    littoral::record::Reading& read(const QString& parameter, int age, double canonical, int hour = 8);
    littoral::record::Entry& enter(littoral::record::EntryKind kind, int age, const QString& subject = {},
                                   int hour = 12);
    littoral::record::Entry& change(int age, double fraction, int hour = 12);
    littoral::record::Entry& observe(const QString& subject, int age, int severity, double coverage = 0.0);
    littoral::record::Entry& animals(const QString& subject, int age, int count);
    littoral::record::Task& task(const QString& key, int dueAge, littoral::record::TaskState state);
    void target(const QString& parameter, double low, double high);
    /// Water changes done on each of these days.
    void changes(const std::vector<int>& ages, double fraction = 0.5);

    /// All due work at an age, to an age.
    [[nodiscard]] std::vector<littoral::care::DueItem> due(int age, int untilAge, int hour = 18);
    /// Only that of one template.
    [[nodiscard]] std::vector<littoral::care::DueItem> due(const QString& key, int age, int untilAge, int hour = 18);
    /// Ages at which rounds of a template fall.
    [[nodiscard]] std::vector<int> ages(const QString& key, int age, int untilAge, int hour = 18);

    littoral::record::Row row;
    littoral::record::LayoutId layoutId{11};
    littoral::record::TankId tankId{1};
    littoral::record::LayoutRecord& record() { return row.layouts.at(layoutId); }
    littoral::record::Layout& layout() { return record().layout; }
    /// Sorted, as the store hands it out.
    const littoral::record::Row& sorted();

private:
    qint64 m_next = 100;
};
