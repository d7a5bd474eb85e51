// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"

#include <QDate>
#include <QStringList>
#include <optional>
#include <vector>

/// The water that the whole row needs in the days to come: litres, conditioner, demineralised water, and days on which
/// large changes fall together.
namespace littoral::facade {

struct RowPlanOptions
{
    int days = 14; ///< today included, 1 .. 92
    /// mL of conditioner for 100 L of new water, as its label says; nothing: only the litres to treat are told.
    std::optional<double> conditioner_mL_per_100L;
    /// A change is large from this share of the tank's water on, or from this many litres (three buckets of 20 L).
    /// Judgement, for planning the keeper's time and the water in store, not a limit for animals.
    double largeFraction = 0.4;
    double large_L = 60.0;
};

/// One change of the plan.
struct PlannedWater
{
    record::TankId tank;
    QString tankName;
    std::optional<double> fraction; ///< 0..1
    std::optional<double> litres;   ///< nothing when the tank's volume is not known
    QString source;                 ///< name of the water that goes in; empty: none is named for the layout
    double demineralised_L = 0.0;
    double toTreat_L = 0.0;             ///< water from the mains: it meets the conditioner
    std::vector<care::WaterPart> parts; ///< litres of each water that goes in; empty where they are not known
    bool partsUnknown = false;          ///< a blend whose parts are not stated
    bool byHand = false;                ///< planned for that day, not by the cadence
    int daysOver = 0;                   ///< of a change past its day, which counts for today
    bool large = false;
};

struct WaterDay
{
    QDate day;
    std::vector<PlannedWater> changes; ///< in row order
    double litres = 0.0;
    double demineralised_L = 0.0;
    double toTreat_L = 0.0;
    std::optional<double> conditioner_mL;
    bool collides = false;         ///< two or more large changes
    std::optional<QDate> freerDay; ///< nearest day of the plan without a large change, when it collides
};

struct RowPlan
{
    std::vector<WaterDay> days; ///< every day, also those without a change
    double litres = 0.0;
    double demineralised_L = 0.0;
    double toTreat_L = 0.0;
    std::optional<double> conditioner_mL;
    int collisions = 0;
    QStringList volumeUnknown;           ///< tanks with changes due but no volume
    std::vector<care::WaterPart> waters; ///< litres of each water in all, in the order in which they turn up
    QStringList blendUnknown;            ///< blends whose parts are not stated: all of such water is to be treated
};

/// By cadence and by what is planned, taking it that what is due is done on time and what is overdue is done today.
/// About 2 ms for 24 tanks of a year's record each.
[[nodiscard]] RowPlan rowPlan(const record::Row& row, const record::Moment& now, const RowPlanOptions& options = {});

} // namespace littoral::facade
