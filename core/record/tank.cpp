// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/tank.h"

#include "core/water/volume.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::record {

namespace {
// Porosity of a grain bed: sands and gravels span 0.25-0.50 (Freeze & Cherry 1979, from memory); the middle is taken.
constexpr double kBedPorosity = 0.40;
// Density of quartz and granite, kg/L (handbook value, from memory); limestone is within 6 %.
constexpr double kRockDensity_kg_per_L = 2.65;
} // namespace

std::optional<NetVolume> netVolume(const Tank& tank, const Layout& layout)
{
    if (layout.measuredNet_L && *layout.measuredNet_L > 0.0) {
        return NetVolume{*layout.measuredNet_L, false};
    }
    const water::Box box{tank.length_cm, tank.depth_cm, tank.height_cm, tank.glass_mm / 10.0, layout.gap_cm};
    const double inner = water::innerVolume_L(box);
    const double net =
        inner - water::bedDisplacement_L(layout.bed_L, kBedPorosity) - layout.rock_kg / kRockDensity_kg_per_L;
    if (net <= 0.0) {
        return std::nullopt;
    }
    return NetVolume{net, true};
}

double glassVolume_L(const Tank& tank)
{
    return tank.length_cm * tank.depth_cm * tank.height_cm / 1000.0;
}

QString layoutName(const Layout& layout)
{
    return layout.name.isEmpty() ? QCoreApplication::translate("Layout", "layout %1").arg(layout.number) : layout.name;
}

} // namespace littoral::record
