// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_layout.h"

class QPainter;

namespace littoral::ui {

/// Draws lanes from their layout, on screen or on paper. paintLane() draws what rarely changes and is worth caching;
/// the rest goes on top of it with every frame.
class LanePainter final
{
public:
    LanePainter(const Theme& theme, const LaneMetrics& metrics)
        : m_theme(theme)
        , m_metrics(metrics)
    {
    }

    /// Everything but now-line, hover and focus, from (0, 0). `gridLines` are px of the time header's ticks.
    void paintLane(QPainter& painter, const facade::LaneModel& model, const LaneBox& box, const LaneFrame& frame,
                   const std::vector<double>& gridLines, bool selected) const;
    /// The now-line of one lane; in age mode with its own flag ("day 16").
    void paintNow(QPainter& painter, const facade::LaneModel& model, const LaneBox& box) const;
    /// 2 px accent ring, 2 px off the item.
    void paintFocus(QPainter& painter, const QRectF& item) const;
    void paintHover(QPainter& painter, const QRectF& item) const;

private:
    void paintHeader(QPainter& painter, const facade::LaneModel& model, const LaneBox& box, const LaneFrame& frame,
                     bool selected) const;
    void paintGround(QPainter& painter, const facade::LaneModel& model, const LaneBox& box,
                     const std::vector<double>& gridLines) const;
    void paintBeforeFlooding(QPainter& painter, const facade::LaneModel& model, const LaneBox& box) const;
    void paintNotices(QPainter& painter, const facade::LaneModel& model, const LaneBox& box) const;
    void paintPhases(QPainter& painter, const facade::LaneModel& model, const LaneBox& box) const;
    void paintEvents(QPainter& painter, const facade::LaneModel& model, const LaneBox& box) const;
    void paintDue(QPainter& painter, const facade::LaneModel& model, const LaneBox& box) const;
    void paintChip(QPainter& painter, const facade::LaneModel& model, const ChipBox& chip) const;

    const Theme& m_theme;
    const LaneMetrics& m_metrics;
};

} // namespace littoral::ui
