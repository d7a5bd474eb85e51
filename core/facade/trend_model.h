// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/expected_course.h"
#include "core/facade/forecasts.h"
#include "core/facade/lane_model.h"
#include "core/facade/trend_statistics.h"
#include "core/record/row.h"

#include <QStringList>
#include <functional>
#include <memory>

/// Readings of several tanks and parameters side by side, as plain values. Instants are UTC ms, values in the
/// parameter's shown unit.
namespace littoral::facade {

/// One parameter of one layout. `points`, `intervals` and `readings` are as long as one another; two arrays, because
/// drawing and reckoning run through a million points and need the first alone.
struct TrendSeries
{
    std::size_t parameter = 0; ///< place in TrendModel::parameters
    std::size_t tank = 0;      ///< place in TrendModel::tanks
    bool reckoned = false;     ///< no kit read it: from other readings
    std::vector<TrendPoint> points;
    std::vector<TrendInterval> intervals;
    std::vector<record::ReadingId> readings; ///< none: reckoned
    std::vector<LaneBand> forecast;          ///< from now on
    ExpectedCourse expected;                 ///< by doses, changes and uptake, where it was asked for
    QString expectedSentence;                ///< how the newest reading compares with it; may be empty
    std::optional<double> targetLow, targetHigh;

    /// Place of the newest point not after `at`; nothing when there is none.
    [[nodiscard]] std::optional<std::size_t> newest(qint64 at) const;
    /// Place of the point nearest to `at` and no further off than `reach` ms.
    [[nodiscard]] std::optional<std::size_t> nearest(qint64 at, qint64 reach) const;
};

struct TrendTank
{
    record::TankId tank;
    record::LayoutId layout;
    QString name;      ///< "Slate Ford", "Slate Ford, layout 1"
    QString shortName; ///< "Slate Ford", "Layout 1" where its tank is on show as well
    bool earlier = false;
    qint64 flooded = 0;
    std::optional<qint64> ended;
    std::vector<LaneEvent> events; ///< done and planned, oldest first
    bool hasForecast = false;
};

struct TrendParameter
{
    QString key, name, symbol, unitLabel;
    int decimals = 1;
    std::optional<double> clear; ///< at or below it counts as clear in a cycle
};

struct TrendModel
{
    std::vector<TrendTank> tanks;
    std::vector<TrendParameter> parameters;
    std::vector<TrendSeries> series; ///< one for each pair that has points or a forecast; by parameter, then tank

    [[nodiscard]] const TrendSeries* find(std::size_t parameter, std::size_t tank) const;
    [[nodiscard]] std::size_t pointCount() const;
};

struct TrendChoice
{
    std::vector<record::LayoutId> layouts;         ///< in order
    QStringList parameters;                        ///< keys, in order
    std::optional<record::Moment> expectedAt = {}; ///< reckon what doses should have come to, as of then
};

/// The forecast of a layout, or nullptr.
using ForecastOf = std::function<std::shared_ptr<const ForecastResult>(record::LayoutId)>;

/// What there is to draw for the choice. Layouts and parameters the row does not know are left out; free ammonia
/// ("nh3", mg/L N) is reckoned from total ammonia with the pH and temperature read nearest to it, CO2 also from pH and
/// KH.
[[nodiscard]] TrendModel trendOf(const record::Row& row, const TrendChoice& choice, const ForecastOf& forecasts);

/// Parameters that can be chosen, in the order shown, with how many readings the layouts have of each (for reckoned
/// ones: how many could be reckoned).
struct TrendOffer
{
    QString key, name;
    std::size_t readings = 0;
    bool reckoned = false;
};
[[nodiscard]] std::vector<TrendOffer> trendOffers(const record::Row& row, const std::vector<record::LayoutId>& layouts);

/// The interval a kit's answer stands for, canonical units: half-way to the neighbouring steps; a reading taken between
/// two steps, below or above the scale keeps its own bounds. Equal ends when the kit has no steps.
[[nodiscard]] TrendInterval stepInterval(const record::Reading& reading, const record::TestKit* kit);

} // namespace littoral::facade
