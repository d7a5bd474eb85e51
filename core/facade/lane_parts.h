// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/lane_model.h"
#include "core/record/row.h"

/// The parts a lane is put together from.
namespace littoral::facade {

/// Readings of a parameter with its forecast, in the shown unit. `forecast` may be null.
[[nodiscard]] LaneSeries seriesOf(const record::Row& row, const record::LayoutRecord& layout, const QString& parameter,
                                  const ForecastResult* forecast);

/// Free ammonia has no readings of its own: only its bands.
[[nodiscard]] std::optional<LaneSeries> freeAmmoniaOf(const ForecastResult* forecast);

/// Everything done or planned, oldest first.
[[nodiscard]] std::vector<LaneEvent> eventsOf(const record::LayoutRecord& layout);

[[nodiscard]] Glyph glyphOf(const record::Entry& entry);
[[nodiscard]] Glyph glyphOf(const care::DueItem& item);

} // namespace littoral::facade
