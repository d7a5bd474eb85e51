// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/cadence.h"

#include <optional>
#include <vector>

namespace littoral::care {

/// A reading that moved a due date, or is evidence for moving it.
struct ReadingEvidence
{
    QString parameter;  ///< key; "nh3" for free ammonia, which is reckoned
    double value = 0.0; ///< canonical
    double limit = 0.0; ///< canonical
    record::Moment at;
    record::ReadingId reading;
};

enum class Known { Met, Unmet, Unknown };

/// What must all hold before the cadence may be eased one step.
enum class EaseCondition {
    ClearReadings,  ///< two readings in a row, taken before changes, under the limits
    MeltNotRising,  ///< over four days
    AlgaeNotRising, ///< no severity up in seven days
    ForecastOdds,   ///< the next peak stays under the limits at the looser cadence, 8 in 10
    TwoIntervals,   ///< two full intervals done at the present step
    NothingRecent,  ///< no addition, bed disturbed, filter service or dose change in three days
    HardnessSteady, ///< GH and KH within a degree between changes
};

struct EaseEvidence
{
    EaseCondition condition = EaseCondition::ClearReadings;
    Known state = Known::Unknown;
    std::vector<ReadingEvidence> readings;
    std::optional<QDate> day;   ///< of the event or observation that decides
    int count = 0;              ///< intervals done, severity seen
    std::optional<double> odds; ///< of the forecast
};

/// The case for one step looser. Never acted on by itself: the keeper is shown the evidence and asked.
struct Loosening
{
    Pace now;
    Pace looser;
    std::vector<EaseEvidence> evidence;

    [[nodiscard]] Known state(EaseCondition condition) const;
    /// Clear readings, two intervals and quiet days are met and nothing speaks against it: worth a run of the forecast.
    [[nodiscard]] bool isCandidate() const;
    /// A candidate that the forecast bears out. What nobody looked at (melt, algae, hardness) is told as unknown.
    [[nodiscard]] bool mayBeProposed() const;
};

/// What a peak of the forecast is held against, mg N/L: the limits of the clear readings (judgement from common
/// practice, stricter with animals).
struct EaseLimits
{
    double tan = 0.0;
    double no2 = 0.0;
};
[[nodiscard]] EaseLimits easeLimits(bool animals);
inline constexpr double kEaseOdds = 0.8; ///< from which the forecast bears an easing out

/// Nothing when there is no looser step, no cadence yet, or something tightens it now. `oddsAtLooser` is the forecast's
/// probability that the next peak stays under the limits; without it that condition is unknown.
[[nodiscard]] std::optional<Loosening> looseningOf(const Circumstances& at, const Cadence& cadence,
                                                   std::optional<double> oddsAtLooser = {});
/// The same from a row, with the water-change template in force.
[[nodiscard]] std::optional<Loosening> looseningOf(const record::Row& row, record::LayoutId layout,
                                                   const record::Moment& now, std::optional<double> oddsAtLooser = {});

} // namespace littoral::care
