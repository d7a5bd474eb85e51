// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/store/store.h"

#include <QString>
#include <map>
#include <vector>

namespace littoral::facade {

/// Version of the model and its priors, written beside each kept forecast.
inline const QString kForecastModel = QStringLiteral("two-step 2");

/// Keeps what was issued: one row per layout and record state, outside the undo journal. Does nothing when the newest
/// kept forecast of the layout has the same fingerprint, or the store cannot be written.
[[nodiscard]] Result<void> keepIssued(store::Store& store, const ForecastResult& result);

/// The kept form of a result, its id still open; the body is described in resources/formats.md.
[[nodiscard]] record::IssuedForecast issuedOf(const ForecastResult& result);

/// How bands held against readings that came later.
struct HeldBands
{
    int readings = 0;
    int inside50 = 0;
    int inside80 = 0;
    int inside95 = 0;
    int compared = 0;         ///< readings with an earlier one of their parameter: what the next two sum over
    double error = 0.0;       ///< sum of |ln(1+median/c0) - ln(1+reading/c0)|; c0: the kit's first step above zero
    double persistence = 0.0; ///< the same for the last reading before the forecast
    std::vector<double> pit;  ///< predictive probability below the reading, half of its own step counted
};

/// How dates held: a completion or gate interval against when it came about.
struct HeldDates
{
    int closed = 0; ///< dates that have come about since
    int inside80 = 0;
    std::vector<double> errors_d; ///< middle date less the true one; where the middle has a date
};

struct TrackRecord
{
    int forecasts = 0;
    HeldBands all;
    std::map<record::LayoutId, HeldBands> layouts;
    std::map<QString, HeldBands> parameters;
    HeldDates dates;                    ///< ends of the cycle
    std::map<QString, HeldDates> gates; ///< by the gate's key, each as `dates`
    /// Widening that would have made past bands hold what they said (1: none; needs 30 readings, else 1).
    double inflation = 1.0;
};

/// Scores every kept forecast against the readings made after it was issued. A reading is scored once per forecast, up
/// to 28 days ahead. Dates are judged by the readings, too: the end of the cycle came about when ammonia and nitrite
/// read below 0.25 ppm and went on doing so for a week and to the last reading, halfway between the last reading that
/// was not clear and the first that was. A gate came about as gateOpenings says, the first time after the forecast.
[[nodiscard]] TrackRecord trackRecord(const record::Row& row, const std::vector<record::IssuedForecast>& issued);
/// Of every layout in the row.
[[nodiscard]] Result<TrackRecord> trackRecord(const record::Row& row, const store::Store& store);

} // namespace littoral::facade
