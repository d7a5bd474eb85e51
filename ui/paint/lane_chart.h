// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_layout.h"

class QPainter;

namespace littoral::ui {

/// Draws the chart strip of one lane: target band, forecast fan, fitted past, readings, value labels.
class LaneChart final
{
public:
    LaneChart(const Theme& theme, const LaneMetrics& metrics, const facade::LaneModel& model, const LaneBox& box,
              const LaneOptions& options)
        : m_theme(theme)
        , m_metrics(metrics)
        , m_model(model)
        , m_box(box)
        , m_options(options)
    {
    }

    void paint(QPainter& painter, bool selected) const;

private:
    struct Point
    {
        double x = 0, y = 0;
    };
    [[nodiscard]] double x(qint64 at) const { return m_box.axis.x(at, m_model.flooded); }
    [[nodiscard]] double y(const SeriesBox& series, double value) const;
    [[nodiscard]] QColor ground(double atX) const;
    void paintTarget(QPainter& painter, const SeriesBox& series) const;
    void paintFan(QPainter& painter, const SeriesBox& series) const;
    void paintFitted(QPainter& painter, const SeriesBox& series) const;
    void paintReadings(QPainter& painter, const SeriesBox& series, bool selected) const;
    void paintGrid(QPainter& painter) const;
    void paintTicks(QPainter& painter) const;
    void paintNote(QPainter& painter) const;

    const Theme& m_theme;
    const LaneMetrics& m_metrics;
    const facade::LaneModel& m_model;
    const LaneBox& m_box;
    const LaneOptions& m_options;
};

} // namespace littoral::ui
