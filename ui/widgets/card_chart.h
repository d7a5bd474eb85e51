// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QGraphicsScene>
#include <QPointF>
#include <vector>

class QAreaSeries;
class QChart;
class QLineSeries;
class QValueAxis;

namespace littoral::ui {

/// What a card's small chart shows: days from now across, values in the shown unit up.
struct CardChartData
{
    QString parameter;              ///< key: the hue
    std::vector<QPointF> low, high; ///< 8 in 10
    std::vector<QPointF> middle;    ///< dashed
    std::vector<QPointF> before;    ///< what it is compared with, dotted
    double limit = 0.0;             ///< dashed across
};

/// The small chart of a card: one range with its middle against a limit, with Qt Charts under the theme's tokens. For
/// few points; what has thousands is drawn by the painters.
class CardChart final
{
public:
    /// `theme` outlives the chart.
    explicit CardChart(const Theme& theme);
    ~CardChart();
    CardChart(const CardChart&) = delete;
    CardChart& operator=(const CardChart&) = delete;
    CardChart(CardChart&&) = delete;
    CardChart& operator=(CardChart&&) = delete;

    void setData(const CardChartData& data);
    /// Draws it into `room`; returns where the plot itself stands.
    QRectF paint(QPainter& painter, const QRectF& room);
    /// y of a value in the plot that paint() returned.
    [[nodiscard]] double y(double value, const QRectF& plot) const;

private:
    void dress();

    const Theme& m_theme;
    CardChartData m_data;
    QGraphicsScene m_scene;
    QChart* m_chart; ///< the scene's
    QLineSeries *m_low, *m_high, *m_middle, *m_before, *m_limit;
    QAreaSeries* m_range;
    QValueAxis *m_days, *m_values;
};

} // namespace littoral::ui
