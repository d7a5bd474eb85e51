// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace littoral::test {

/// A keeper with an open, empty store of its own and a clock that stands still: Wednesday 25 November 2026, 07:40 UTC.
class TempKeeper
{
public:
    TempKeeper()
        : clock(record::Moment::fromIso(QStringLiteral("2026-11-25T07:40:00Z")))
        , keeper(clock)
    {
        const auto made = keeper.create(path());
        EXPECT_TRUE(made) << (made ? "" : made.error().sentence());
    }
    [[nodiscard]] QString path() const { return dir.filePath(QStringLiteral("row.littoral")); }

    /// A tank of 60 x 34 x 34 cm flooded `days` before now at this hour.
    record::LayoutId addTank(const QString& name, int days, record::StartMethod start = record::StartMethod::NewMedia)
    {
        record::Tank tank;
        tank.name = name;
        tank.length_cm = 60;
        tank.depth_cm = 34;
        tank.height_cm = 34;
        record::Layout layout;
        layout.flooded = clock.now().plusDays(-days);
        layout.start = start;
        layout.bed_L = 8;
        const auto id = keeper.addTank(tank, layout);
        EXPECT_TRUE(id) << (id ? "" : id.error().sentence());
        return id ? keeper.row().layoutsOf(*id).front()->layout.id : record::LayoutId{};
    }

    record::ReadingId read(record::LayoutId layout, const QString& parameter, const QString& typed, double daysAgo,
                           const QString& unit = {})
    {
        facade::Keeper::TypedReading reading;
        reading.layout = layout;
        reading.parameter = parameter;
        reading.typed = typed;
        reading.unit = unit;
        reading.at = clock.now().plusDays(-daysAgo);
        const auto id = keeper.enterReading(reading);
        EXPECT_TRUE(id) << (id ? "" : id.error().sentence());
        return id ? *id : record::ReadingId{};
    }

    record::EntryId change(record::LayoutId layout, double fraction, double daysAgo, bool planned = false)
    {
        record::Entry entry;
        entry.layout = layout;
        entry.kind = record::EntryKind::WaterChange;
        entry.fraction = fraction;
        entry.planned = planned;
        entry.at = clock.now().plusDays(-daysAgo);
        const auto id = keeper.enter(entry);
        EXPECT_TRUE(id) << (id ? "" : id.error().sentence());
        return id ? *id : record::EntryId{};
    }

    QTemporaryDir dir;
    record::FixedClock clock;
    facade::Keeper keeper;
};

} // namespace littoral::test
