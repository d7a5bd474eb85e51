// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

/// A row of one tank with one layout, flooded on 1 March 2026 at 10:00 UTC, to be filled by day of tank age.
class SmallRow
{
public:
    SmallRow();

    [[nodiscard]] littoral::record::Moment at(double age) const;
    littoral::record::Reading& read(const QString& parameter, double age, double canonical);
    littoral::record::Entry& enter(littoral::record::EntryKind kind, double age, const QString& subject = {});
    littoral::record::Entry& change(double age, double fraction);
    littoral::record::Entry& look(const QString& keyAndValue, double age);
    [[nodiscard]] littoral::record::LayoutRecord& record() { return row.layouts.at(layoutId); }
    /// Sorted, as the store hands it out.
    const littoral::record::LayoutRecord& sorted();

    littoral::record::Row row;
    littoral::record::LayoutId layoutId{11};

private:
    qint64 m_next = 100;
};
