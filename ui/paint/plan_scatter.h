// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_metrics.h"
#include "ui/paint/value_scale.h"

#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

class QPainter;

namespace littoral::ui {

/// One plan by what it costs and what it leaves: litres of new water against hours of exposure.
struct ScatterPoint
{
    double litres = 0.0;
    double hours = 0.0;
    bool late = false;     ///< its gate is likely to open later than the present plan's late date
    bool frontier = false; ///< no other plan is better in every way
    QString letter;        ///< of its row in the table; empty for the rest
    QString sentence;
};

struct ScatterModel
{
    std::vector<ScatterPoint> points;
    QString xTitle;   ///< "litres of new water until the gate"
    QString yTitle;   ///< "hours above 0.5 mg/L nitrite"
    QString lateText; ///< "gate later than 9 Dec, 1 in 5 or more"
    QString ringText; ///< "a plan"
    std::optional<std::size_t> selected;
};

struct ScatterLayout
{
    QRectF plot;
    QRectF legend;
    ValueScale x, y;
    std::vector<QPointF> at; ///< one per point

    [[nodiscard]] std::optional<std::size_t> hit(QPointF pos, double reach) const;
};

[[nodiscard]] ScatterLayout layOutScatter(const ScatterModel& model, const LaneMetrics& metrics, const QRectF& box);
/// Least height with room for its axes and four ticks, px.
[[nodiscard]] double leastScatterHeight(const LaneMetrics& metrics);
void paintScatter(QPainter& painter, const Theme& theme, const LaneMetrics& metrics, const ScatterModel& model,
                  const ScatterLayout& layout);

} // namespace littoral::ui
