// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

namespace littoral::test {

/// Two tanks, a source water and two kits: enough for files to refer to.
[[nodiscard]] inline record::Row smallRow()
{
    using namespace Qt::StringLiterals;
    record::Row row;
    for (const auto& [id, name] : {std::pair{qint64(1), u"Slate Ford"_s}, std::pair{qint64(2), u"Fen Corner"_s}}) {
        record::Tank tank;
        tank.id.value = id;
        tank.name = name;
        tank.position = static_cast<int>(id);
        row.tanks.push_back(tank);
        record::LayoutRecord layout;
        layout.layout.id.value = id * 10;
        layout.layout.tank = tank.id;
        layout.layout.flooded = record::Moment::fromIso(u"2026-11-01T10:00:00Z"_s);
        layout.layout.measuredNet_L = 100.0;
        layout.layout.source.value = 5;
        row.layouts.emplace(layout.layout.id, layout);
    }
    record::SourceWater tap;
    tap.id.value = 5;
    tap.name = u"tap"_s;
    row.sources.push_back(tap);
    for (const auto& [id, parameter, unit] :
         {std::tuple{qint64(7), u"no2"_s, u"mg/L NO2"_s}, std::tuple{qint64(8), u"tan"_s, u"mg/L NH4"_s}}) {
        record::TestKit kit;
        kit.id.value = id;
        kit.name = u"drop box"_s;
        kit.parameter = parameter;
        kit.unit = unit;
        row.kits.push_back(kit);
    }
    return row;
}

} // namespace littoral::test
