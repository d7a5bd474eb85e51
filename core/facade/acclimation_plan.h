// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/fact_book.h"

#include <optional>
#include <vector>

/// From the bag into the tank: steps with their minutes, as data.
namespace littoral::facade {

struct BagWater
{
    std::optional<double> ph;
    std::optional<double> gh_deg;
    std::optional<double> temperature_C;
    double travelHours = 1.0;
    double bag_L = 1.0;
};

struct TankWater
{
    std::optional<double> ph;
    std::optional<double> gh_deg;
    std::optional<double> temperature_C;
};

/// Which way to go, by travel and difference (common practice).
enum class AcclimationWay {
    Float,    ///< short trip, water alike: temperature only
    Drip,     ///< some difference, or animals that are touchy about it
    Quick,    ///< hours in the bag: open and move without delay, as ammonia turns free when the gas leaves
    OverDays, ///< hardness too far apart: in quarantine, over days
};

enum class AcclimationAct {
    LightsOff,
    FloatBag, ///< value: minutes; to the tank's temperature
    OpenBag,
    StartDrip, ///< value: mL/min, second: minutes, to three times the volume
    MatchTemperature,
    NetAcross, ///< the bag's water stays out
    LessCo2,   ///< value: share
    StepDaily, ///< value: degrees a day
};

struct AcclimationStep
{
    int minute = 0;
    AcclimationAct act = AcclimationAct::FloatBag;
    double value = 0.0;
    double second = 0.0;
};

struct AcclimationPlan
{
    AcclimationWay way = AcclimationWay::Float;
    std::vector<AcclimationStep> steps;
    bool phUnknown = false, ghUnknown = false;  ///< of the bag: the careful way was taken
    std::optional<double> phStep, ghStep;       ///< tank less bag
    std::optional<double> phPerHour, ghPerHour; ///< on the way taken; nothing when it is not gradual
};

[[nodiscard]] AcclimationPlan acclimationPlan(const facts::Species& species, const BagWater& bag,
                                              const TankWater& tank);

} // namespace littoral::facade
