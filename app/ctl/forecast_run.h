// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/forecast/forecaster.h"
#include "core/record/row.h"

#include <optional>
#include <vector>

namespace littoral::ctl {

/// What is asked for on the command line.
struct ForecastQuestion
{
    record::Moment asOf;
    std::optional<double> days; ///< horizon; nothing: 28, or to tank day 60 if that is later
    double stepHours = 24.0;
    std::vector<double> extraDays; ///< days since flooding
    int threads = 1;
    QString gate;                           ///< whose date the next tests narrow; empty: the next one not open yet
    std::optional<double> load_mgN_per_L_d; ///< what the filter is to carry, if not what the record comes to
    bool learn = true;                      ///< from finished layouts of the row
    bool causes = true; ///< look for what would make contradicting readings agree; takes a second where they do
};

/// A reading that the fitted members find hard to explain: worth repeating the test.
struct SurprisingReading
{
    QString parameter; ///< key
    QString typed;
    QString unit;
    record::Moment at;
    double probability = 0.0;
};

/// One tank's answer, or why there is none.
struct TankForecast
{
    QString tank;
    int layoutNumber = 1;
    facade::ForecastCase inputs;
    std::optional<forecast::Fit> fit; ///< set with forecast
    std::optional<forecast::Forecast> forecast;
    std::vector<SurprisingReading> surprising;
    QStringList learned; ///< sentences
    QStringList causes;  ///< sentences: what would make contradicting readings agree
    std::optional<Error> error;

    [[nodiscard]] double horizonDay() const { return inputs.request.tank.decisionDay + inputs.request.horizonDays; }
    /// With forecast and fit set: what the facade works on.
    [[nodiscard]] facade::ForecastResult result() const { return {inputs, *fit, *forecast, {}}; }
    [[nodiscard]] record::Moment dateOf(double day) const { return inputs.flooded.plusDays(day); }
};

/// The forecasts in the order of `tanks`, the same for any number of threads.
[[nodiscard]] std::vector<TankForecast> runForecasts(const record::Row& row, const std::vector<record::TankId>& tanks,
                                                     const ForecastQuestion& question);

/// The probability that something with these odds has not happened by `day` (days since flooding).
[[nodiscard]] double notBy(const forecast::DateOdds& odds, double day);

} // namespace littoral::ctl
