// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"
#include "ui/paint/lane_metrics.h"

#include <QRectF>
#include <QSizeF>
#include <vector>

namespace littoral::ui {

enum class LaneKind { Tall, Short, Overview };

enum class HeaderRole { Name, Size, Phase, Verdict, Status, Next };

struct HeaderLine
{
    HeaderRole role = HeaderRole::Verdict;
    QRectF rect; ///< of the text
    QString text;
    QRectF glyph; ///< of the status shape; empty without
};

struct PresentBox
{
    QPointF mark;
    QRectF symbol;
    QRectF value;
    std::size_t index = 0; ///< into LaneModel::present
};

/// The header column of one lane, lane-local. Texts are wrapped, not cut; `height` is what they need.
struct HeaderBox
{
    std::vector<HeaderLine> lines;
    std::vector<PresentBox> present;
    QRectF outline; ///< room for the outline, drawn at its bottom right
    double height = 0.0;
};

/// `outline` is the px the tank takes at the row's common scale. In overview lanes: name, status and size in two lines.
[[nodiscard]] HeaderBox layOutHeader(const facade::LaneModel& model, LaneKind kind, const LaneMetrics& metrics,
                                     double width, QSizeF outline);
/// Moves the present readings down to the foot of a lane that came out higher than its header needs.
void settleHeader(HeaderBox& header, double laneHeight, const LaneMetrics& metrics);

} // namespace littoral::ui
