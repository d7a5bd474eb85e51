// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/record/row.h"

namespace littoral::ui {

/// What the program has to say about a value being typed. It advises and never refuses a value that can exist.
struct Advice
{
    enum class Level { None, Note, Unlikely, Impossible };
    Level level = Level::None;
    QString headline; ///< "Lower than expected: 0.8, forecast 3.1 to 3.9"
    QString body;     ///< what it was compared with
    QString often;    ///< what such a value often turns out to be; may be empty
};

struct AdviceQuestion
{
    QString parameter; ///< key
    QString typed;
    QString unit; ///< code
    record::Moment at;
    record::KitId kit;
    record::ReadingId replaces; ///< the reading being typed over: not compared with itself
};

/// Looks, in this order, at whether the value can exist, the forecast's band, the change since the last reading, and
/// the kit's date; the first that applies is the advice. `forecast` may be null.
[[nodiscard]] Advice adviseReading(const record::Row& row, const record::LayoutRecord& layout,
                                   const AdviceQuestion& question, const facade::ForecastResult* forecast);

/// The forecast of a parameter as points in its shown unit: UTC milliseconds with the 1-in-10, middle and 9-in-10
/// values.
struct TrendBand
{
    qint64 at = 0;
    double low = 0.0, middle = 0.0, high = 0.0;
};
[[nodiscard]] std::vector<TrendBand> trendBands(const facade::ForecastResult& forecast,
                                                const record::Parameter& parameter);
[[nodiscard]] std::vector<TrendBand> fittedBands(const facade::ForecastResult& forecast,
                                                 const record::Parameter& parameter);

} // namespace littoral::ui
