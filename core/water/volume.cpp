// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/volume.h"

#include "core/water/constants.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace littoral::water {

namespace {
constexpr double kCm3PerL = 1000.0;
constexpr double kCm2PerM2 = 1.0e4;
constexpr double kCm3PerM3 = 1.0e6;

/// Two long panes, two short ones between them, and a bottom pane of the full base, cm³: the panes as they are cut,
/// which counts the lowest edge twice and so errs on the heavy side.
double glassVolume_cm3(const Box& box)
{
    const double walls = 2.0 * (box.length_cm + std::max(0.0, box.depth_cm - 2.0 * box.glass_cm)) * box.height_cm;
    return (walls + box.length_cm * box.depth_cm) * box.glass_cm;
}
} // namespace

double innerVolume_L(const Box& box)
{
    const double length = box.length_cm - 2.0 * box.glass_cm;
    const double depth = box.depth_cm - 2.0 * box.glass_cm;
    const double height = box.height_cm - box.glass_cm - box.gap_cm;
    if (!(length > 0.0) || !(depth > 0.0) || !(height > 0.0)) {
        return 0.0;
    }
    return length * depth * height / kCm3PerL;
}

double outerVolume_L(const Box& box)
{
    return box.length_cm * box.depth_cm * box.height_cm / kCm3PerL;
}

double bedDisplacement_L(double bulk_L, double porosity)
{
    return std::max(0.0, bulk_L) * (1.0 - std::clamp(porosity, 0.0, 1.0));
}

double solidDisplacement_L(double mass_kg, double density_kg_per_L)
{
    return density_kg_per_L > 0.0 ? mass_kg / density_kg_per_L : 0.0;
}

double bowRadius_cm(double chord_cm, double bow_cm)
{
    if (!(bow_cm > 0.0) || bow_cm > chord_cm / 2.0) {
        return 0.0;
    }
    return (chord_cm * chord_cm / 4.0 + bow_cm * bow_cm) / (2.0 * bow_cm);
}

double bowSegment_cm2(double chord_cm, double bow_cm)
{
    const double radius = bowRadius_cm(chord_cm, bow_cm);
    if (radius <= 0.0) {
        return 0.0;
    }
    const double theta = 2.0 * std::asin(std::min(1.0, chord_cm / (2.0 * radius)));
    return radius * radius / 2.0 * (theta - std::sin(theta));
}

double bowFront_L(double chord_cm, double depth_cm, double bow_cm, double water_cm)
{
    return (chord_cm * depth_cm + bowSegment_cm2(chord_cm, bow_cm)) * water_cm / kCm3PerL;
}

double cylinder_L(double diameter_cm, double water_cm)
{
    return std::numbers::pi * diameter_cm * diameter_cm / 4.0 * water_cm / kCm3PerL;
}

double hexagon_L(double side_cm, double water_cm)
{
    return 3.0 * std::numbers::sqrt3 / 2.0 * side_cm * side_cm * water_cm / kCm3PerL;
}

double floorPressure_kPa(double mass_kg, double length_cm, double depth_cm)
{
    const double base_m2 = length_cm * depth_cm / kCm2PerM2;
    return base_m2 > 0.0 ? mass_kg * kGravity / base_m2 / 1000.0 : 0.0;
}

FloorLoad floorLoad(const Box& box, double extra_kg, double stand_kg)
{
    const double waterDepth_cm = std::max(0.0, box.height_cm - box.glass_cm - box.gap_cm);
    const double water_kg = box.length_cm * box.depth_cm * waterDepth_cm / kCm3PerL;
    const double glass_kg = glassVolume_cm3(box) / kCm3PerM3 * kGlassDensity;
    const double mass = water_kg + glass_kg + extra_kg + stand_kg;
    return {mass, floorPressure_kPa(mass, box.length_cm, box.depth_cm)};
}

} // namespace littoral::water
