// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "ui/paint/lane_metrics.h"

#include <QRectF>
#include <vector>

class QPainter;

namespace littoral::ui {

/// Two layouts at the same age: own line solid and filled, the other dashed and open, named on the lines.
class AgeChart final
{
public:
    AgeChart(const Theme& theme, const LaneMetrics& metrics, const facade::Comparison& comparison, const QRectF& box);

    void paint(QPainter& painter) const;
    struct Point
    {
        QPointF at;
        QString sentence;
    };
    /// Own points first, then the other's.
    [[nodiscard]] const std::vector<Point>& points() const { return m_points; }
    [[nodiscard]] static double height(const LaneMetrics& metrics);

private:
    [[nodiscard]] double x(double age) const;
    void paintGrid(QPainter& painter) const;
    void paintLine(QPainter& painter, const facade::AgeLine& line, std::size_t first, bool own) const;
    void paintNames(QPainter& painter) const;
    void paintDay(QPainter& painter) const;
    [[nodiscard]] QColor hue() const;

    const Theme& m_theme;
    const LaneMetrics& m_metrics;
    const facade::Comparison& m_made;
    QRectF m_plot;
    double m_from = 0.0, m_to = 1.0;
    double m_low = 0.0, m_high = 1.0;
    std::vector<double> m_ticks;
    int m_decimals = 0;
    std::vector<Point> m_points;
};

} // namespace littoral::ui
