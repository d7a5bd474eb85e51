// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"
#include "core/record/moment.h"

#include <QString>
#include <optional>

namespace littoral::record {

/// One glass box of water with its filter. Outside measures in cm, glass in mm; zero means not given.
struct Tank
{
    TankId id;
    QString name;
    int position = 0; ///< place in the row
    double length_cm = 0.0;
    double depth_cm = 0.0;
    double height_cm = 0.0;
    double glass_mm = 6.0;
    QString note;

    bool operator==(const Tank&) const = default;
};

enum class StartMethod { NewMedia, MatureMedia, Starter, DryStart, DarkStart };
enum class Bed { RichSoil, MildSoil, SpentSoil, Inert };
enum class PlantDensity { None, Sparse, Medium, Dense };
enum class Co2Mode { None, Pressurised, Other };
enum class YesNoUnknown { No, Unknown, Yes };

/// The planted, hardscaped scene in a tank; a tank may hold several, one after another.
struct Layout
{
    LayoutId id;
    TankId tank;
    int number = 1;
    QString name; ///< empty: "layout N"
    Moment flooded;
    std::optional<Moment> ended;
    StartMethod start = StartMethod::NewMedia;
    Bed bed = Bed::RichSoil;
    double bed_L = 0.0; ///< bulk litres of soil or sand; zero: not given
    double rock_kg = 0.0;
    bool rockHardens = false;
    double gap_cm = 3.0;                 ///< rim to water surface
    std::optional<double> measuredNet_L; ///< metered or counted in buckets on flood day: the best measure there is
    PlantDensity plants = PlantDensity::Medium;
    SourceWaterId source;
    Co2Mode co2 = Co2Mode::None;
    double co2Target_mg_per_L = 25.0;
    double co2Hours = 8.0;
    double lightHours = 6.0;
    double lightPar = 0.0; ///< at the bed, µmol/m²/s; zero: not measured
    double filterFlow_L_per_h = 0.0;
    double temperature_C = 24.0;
    bool followsCadence =
        true; ///< forecasts follow the cadence; false: only changes that were planned by hand or import
    /// What the plants take up, mg/L of NO3 a week, as the keeper judges it; nothing: by how densely it is planted.
    std::optional<double> uptakeLow_mg_per_L_wk, uptakeHigh_mg_per_L_wk;
    QString note;

    bool operator==(const Layout&) const = default;
};

enum class SourceKind { Tap, ReverseOsmosis, Blend, Rain };

/// What goes in at a water change. Nothing measured is nothing stated; what a blend's figures come to from its parts is
/// told by sourceProfile() (core/record/source_profile.h).
struct SourceWater
{
    SourceWaterId id;
    QString name;
    SourceKind kind = SourceKind::Tap;
    std::optional<double> nitrate_mgN_per_L;
    YesNoUnknown chloramine = YesNoUnknown::Unknown;
    std::optional<double> alkalinity_meq_per_L;
    std::optional<double> hardness_mmol_per_L;
    std::optional<double> ph;
    std::optional<double> chloride_mg_per_L;
    SourceWaterId firstPart; ///< of a blend: the two waters it is made of; none: not stated
    SourceWaterId secondPart;
    std::optional<double> firstShare; ///< 0..1 of the blend's litres that are the first part
    QString note;

    bool operator==(const SourceWater&) const = default;
};

/// Litres of water in the tank: measured if it was, else reckoned from glass, gap, bed and rock; nothing when there are
/// no dimensions. `reckoned` tells which.
struct NetVolume
{
    double litres = 0.0;
    bool reckoned = true;
};
[[nodiscard]] std::optional<NetVolume> netVolume(const Tank& tank, const Layout& layout);

/// Litres of the glass box outside, as printed on labels; zero without dimensions.
[[nodiscard]] double glassVolume_L(const Tank& tank);

[[nodiscard]] QString layoutName(const Layout& layout);

} // namespace littoral::record
