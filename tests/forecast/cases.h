// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/calibration.h"
#include "core/forecast/case_scenario.h"
#include "core/forecast/milestones.h"
#include "core/forecast/tank_case.h"
#include "core/sim/run.h"

#include <vector>

/// Invented tanks shared by the tests of this folder.
namespace littoral::forecast::cases {

/// Steps of the usual liquid kits, common practice: ammonia as NH3, nitrite and nitrate as the ion.
inline Kit ammoniaCard()
{
    return {Substance::TotalAmmonia, {0, 0.25, 0.5, 1, 2, 4, 8}, 1.21588, false, 1.0};
}

inline Kit nitriteCard()
{
    return {Substance::Nitrite, {0, 0.25, 0.5, 1, 2, 5}, 3.28454, false, 1.0};
}

inline Kit nitrateCard()
{
    return {Substance::Nitrate, {0, 5, 10, 20, 40, 80, 160}, 4.42680, true, 1.0};
}

inline void addChanges(TankCase& tank, double first, double every, double fraction, double last = 60.0)
{
    for (double day = first; day < last; day += every) {
        tank.events.push_back({day, EventKind::WaterChange, fraction, 0});
    }
}

/// Rich soil, medium plants, half the water changed every other day, three cards.
inline TankCase richSoil(double decisionDay)
{
    TankCase tank;
    tank.kits = {ammoniaCard(), nitriteCard(), nitrateCard()};
    tank.decisionDay = decisionDay;
    addChanges(tank, 2.0, 2.0, 0.5);
    return tank;
}

inline void addReading(TankCase& tank, double day, int kit, double value)
{
    tank.readings.push_back({day, kit, value, value, false, static_cast<std::int64_t>(tank.readings.size()) + 1});
}

/// The same with five readings, the last on day 9.
inline TankCase fiveReadings()
{
    TankCase tank = richSoil(9.0);
    addReading(tank, 3.0, 0, 1.0);
    addReading(tank, 6.0, 0, 2.0);
    addReading(tank, 6.0, 1, 0.25);
    addReading(tank, 9.0, 0, 0.5);
    addReading(tank, 9.0, 1, 1.0);
    return tank;
}

/// Three substances on `days` days up to the decision day, a believable course.
inline TankCase manyReadings(int days, double decisionDay)
{
    TankCase tank = richSoil(decisionDay);
    const std::vector<double> ammonia{0.5, 1, 2, 2, 2, 1, 1, 0.5, 0.25, 0.25, 0, 0, 0, 0, 0};
    const std::vector<double> nitrite{0, 0, 0, 0.25, 0.5, 1, 1, 2, 2, 1, 1, 0.5, 0.5, 0.25, 0.25};
    const std::vector<double> nitrate{5, 5, 5, 5, 5, 10, 10, 10, 10, 10, 10, 10, 10, 20, 20};
    for (int i = 0; i < days; ++i) {
        const double day = 1.0 + 1.4 * i;
        const auto k = static_cast<std::size_t>(i);
        addReading(tank, day, 0, ammonia[k]);
        addReading(tank, day, 1, nitrite[k]);
        addReading(tank, day, 2, nitrate[k]);
    }
    return tank;
}

/// A settled tank of 400 days, followed from day 370: fed, planted, half the water every week, nitrate read weekly.
inline TankCase settled()
{
    TankCase tank;
    tank.kits = {ammoniaCard(), nitriteCard(), nitrateCard()};
    tank.setup.startDay = 370.0;
    tank.setup.established = true;
    tank.setup.plants = PlantDensity::Sparse;
    tank.setup.sources[0].nitrate_mgN_per_L = 1.0;
    tank.decisionDay = 400.0;
    tank.events.push_back({100.0, EventKind::FeedRate, 0.25, 0});
    addChanges(tank, 371.0, 7.0, 0.5, 460.0);
    for (int i = 0; i < 4; ++i) {
        addReading(tank, 370.5 + 7.0 * i, 2, 10.0);
        addReading(tank, 370.5 + 7.0 * i, 0, 0.0);
    }
    return tank;
}

} // namespace littoral::forecast::cases
