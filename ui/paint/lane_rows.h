// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_layout.h"

/// The rows of a lane, one function each; called by layOutLane in this order, addTicks with the scales.
namespace littoral::ui::lanerows {

/// Tick labels of each scale; `units` are what their top labels carry.
void addTicks(LaneBox& box, const std::vector<QString>& units, const LaneMetrics& metrics);
/// "<0.05" beside readings off their kit's scale, where nothing stands; not when days are narrow.
void addCensored(LaneBox& box, const facade::LaneModel& model, const LaneMetrics& metrics);
void addNowFlag(LaneBox& box, const facade::LaneModel& model, const QRectF& row, const LaneMetrics& metrics);
void addPhases(LaneBox& box, const facade::LaneModel& model, const QRectF& row, const LaneMetrics& metrics,
               const LaneOptions& options);
void addNotices(LaneBox& box, const facade::LaneModel& model, const QRectF& row, const LaneMetrics& metrics,
                const LaneOptions& options);
void addEvents(LaneBox& box, const facade::LaneModel& model, const LaneMetrics& metrics);
/// After the chips: a tick under a chip is left out.
void addDoneTicks(LaneBox& box, const facade::LaneModel& model, const LaneMetrics& metrics, const LaneOptions& options);

} // namespace littoral::ui::lanerows
