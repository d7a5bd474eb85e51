// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Volumes and weights of glass boxes. Lengths in cm, volumes in litres.
namespace littoral::water {

inline constexpr double kLitresPerUSGallon = 3.785411784;   ///< exact: 231 cubic inches
inline constexpr double kLitresPerImperialGallon = 4.54609; ///< exact by definition

[[nodiscard]] constexpr double litresFromUSGallons(double gallons)
{
    return gallons * kLitresPerUSGallon;
}
[[nodiscard]] constexpr double litresFromImperialGallons(double gallons)
{
    return gallons * kLitresPerImperialGallon;
}

/// A rectangular tank by its outside measures.
struct Box
{
    double length_cm = 0.0;
    double depth_cm = 0.0;
    double height_cm = 0.0;
    double glass_cm = 0.0; ///< thickness of walls and bottom pane
    double gap_cm = 0.0;   ///< rim to water surface
};

/// Water the empty box holds up to its gap; 0 when nothing is left inside.
[[nodiscard]] double innerVolume_L(const Box& box);

/// Litres of the box by its outside measures, as labels print them.
[[nodiscard]] double outerVolume_L(const Box& box);

/// Water displaced by a grain bed of `bulk_L` litres; the water in its pores (`porosity`, 0..1) still belongs to the
/// tank.
[[nodiscard]] double bedDisplacement_L(double bulk_L, double porosity);

/// Water displaced by sunken rock or wood: kg over kg/L; 0 for a density that is not positive.
[[nodiscard]] double solidDisplacement_L(double mass_kg, double density_kg_per_L);

/// Radius of the arc of a bow front with the given chord and bow depth; 0 unless 0 < bow <= chord / 2.
[[nodiscard]] double bowRadius_cm(double chord_cm, double bow_cm);
/// Area between chord and arc, cm²; 0 outside the same range.
[[nodiscard]] double bowSegment_cm2(double chord_cm, double bow_cm);
/// Rectangle of chord × depth with a bow in front, inner measures.
[[nodiscard]] double bowFront_L(double chord_cm, double depth_cm, double bow_cm, double water_cm);

/// Inner measures.
[[nodiscard]] double cylinder_L(double diameter_cm, double water_cm);
[[nodiscard]] double hexagon_L(double side_cm, double water_cm);

/// What stands on the floor. Never a verdict on the floor: that is for local rules and a structural engineer.
struct FloorLoad
{
    double mass_kg = 0.0;
    double pressure_kPa = 0.0; ///< averaged over the base
};

/// `box` filled to its gap with `extra_kg` of bed and rock (weight less the water they displace) and `stand_kg` of
/// furniture on a base of the box's own size. Water is taken over the outside base as 1 kg/L, glass as walls and bottom
/// pane.
[[nodiscard]] FloorLoad floorLoad(const Box& box, double extra_kg, double stand_kg);

/// Pressure of a mass on a base, kPa; 0 for an empty base.
[[nodiscard]] double floorPressure_kPa(double mass_kg, double length_cm, double depth_cm);

} // namespace littoral::water
