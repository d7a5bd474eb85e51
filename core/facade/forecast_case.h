// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/facade/learned_facts.h"
#include "core/forecast/tank_case.h"
#include "core/record/row.h"

#include <optional>

namespace littoral::facade {

struct ForecastOptions
{
    double horizonDays = 28.0;
    double stepDays = 1.0;
    std::vector<double> extraDays; ///< days since flooding
    bool withGates = true;
    /// Follow what is to come; without it the case ends at asOf.
    bool withPlan = true;
    /// Key of the gate whose date the next tests are to narrow. Empty: the next one that is not open yet. A key that is
    /// no gate's ("complete"): the end of the cycle.
    QString focusGate;
    /// What the filter is to carry, mg N/L/d, in place of what the record's feeding and animals come to.
    std::optional<double> load_mgN_per_L_d;
    /// List what finished layouts of the row can teach (see Learning::teach), unless the store's setting
    /// "forecast.learn" is "off".
    bool learn = true;
    /// The row's teachers where they are known already; looked for otherwise.
    const std::vector<TeacherPtr>* teachers = nullptr;
    double inflation = 1.0; ///< widening learned from how earlier bands held
};

/// Which future changes the forecast followed.
enum class PlanFollowed { Recorded, Cadence, None };

/// What the filter is held against, mg N/L of tank water and day.
struct FilterLoad
{
    double feeding = 0.0;   ///< the daily feed in force when everything planned is in
    double animals = 0.0;   ///< excretion of the animals that are in now
    double planned = 0.0;   ///< of those planned
    int unknownAnimals = 0; ///< planned additions that do not say what they excrete
    bool stated = false;    ///< given from outside: the others do not count
    double total() const { return feeding + animals + planned; }
};

struct ForecastCase
{
    forecast::Request request;
    record::LayoutId layout;
    record::Moment asOf;
    record::Moment flooded;
    PlanFollowed plan = PlanFollowed::None;
    int plannedChanges = 0;
    /// Kits in request.tank.kits order, for the units of the 'kit' bands; key empty where a standard card was assumed.
    std::vector<record::TestKit> kits;
    /// Waters in request.tank.setup.sources order; the first is the layout's own and may be none.
    std::vector<record::SourceWaterId> sources;
    FilterLoad load;
    std::vector<Lessons> lessons; ///< what could be learned, not yet worked through
    Learned learned;              ///< what was
    QStringList remarks; ///< what had to be assumed, in words ("source nitrate not stated: a wide range was taken")
    quint64 fingerprint =
        0; ///< of everything that decides the answer, the time of day apart: equal means no need to run again
};

/// The record of one layout as the forecaster sees it at `asOf`. Evidence (readings, observations, losses, closings)
/// dated later is not looked at. Changes, doses, feeding and additions dated later are the plan: one that was planned
/// and has been done since counts as it was planned; one that was never planned counts as recorded. Where the layout
/// follows its cadence and nothing is planned by hand, the cadence's rounds are the plan; after an adopted plan's last
/// change they go on from there. Calibrates nothing: what other layouts teach is listed in `lessons`, and
/// Learning::teach, which takes longer, works it in.
[[nodiscard]] Result<ForecastCase> forecastCase(const record::Row& row, record::LayoutId layout,
                                                const record::Moment& asOf, const ForecastOptions& options = {});

} // namespace littoral::facade
