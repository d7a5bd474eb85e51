// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_metrics.h"
#include "ui/paint/time_axis.h"

#include <vector>

class QPainter;

namespace littoral::ui {

/// The time header above the lanes: spans, ticks, now flag, "recorded" and "forecast".
class TimeHeader final
{
public:
    TimeHeader(const Theme& theme, const LaneMetrics& metrics)
        : m_theme(theme)
        , m_metrics(metrics)
    {
    }

    [[nodiscard]] double height() const;
    /// `view` gives where the strip lies; `width` is the whole view's.
    void paint(QPainter& painter, const TimeAxis& axis, const AxisView& view, double width) const;
    /// px of the labelled ticks: grid lines of the lanes.
    [[nodiscard]] std::vector<double> gridLines(const TimeAxis& axis, const AxisView& view) const;

private:
    [[nodiscard]] double labelRoom() const;
    [[nodiscard]] QRectF paintNowFlag(QPainter& painter, const TimeAxis& axis, const AxisView& view) const;

    const Theme& m_theme;
    const LaneMetrics& m_metrics;
};

} // namespace littoral::ui
