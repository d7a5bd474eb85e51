// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/fan_panel.h"
#include "ui/paint/lane_metrics.h"
#include "ui/paint/time_axis.h"
#include "ui/paint/value_scale.h"

#include <QRectF>
#include <QSizeF>

namespace littoral::ui {

struct FanTick
{
    double y = 0.0;
    QString text;
};

/// Where one panel lies.
struct FanBox
{
    QRectF title;
    QRectF plot;
    ValueScale scale;
    std::vector<FanTick> ticks;

    [[nodiscard]] double y(double value) const { return scale.y(value, plot.top(), plot.bottom()); }
};

struct FanStackLayout
{
    AxisView axis; ///< the shared axis without what lies before the layout was flooded
    double nowX = 0.0;
    double floodedX = 0.0;
    double flagHeight = 0.0; ///< band at the top that holds the now flag
    std::vector<FanBox> panels;
    QRectF changeTitle;
    QRectF changeRow;
    QRectF axisRow;
    double height = 0.0; ///< of everything; more than was given when plots would fall below their least height

    [[nodiscard]] double x(qint64 at, qint64 flooded) const { return axis.x(at, flooded); }
};

/// The axis from the flooding on: what lies before it is empty on a page about one layout. A little of it is left so
/// that the first marks are whole.
[[nodiscard]] AxisView fromFlooding(AxisView axis, qint64 flooded);

/// Least height at which every plot is readable, px.
[[nodiscard]] double leastFanHeight(const FanStackModel& model, const LaneMetrics& metrics);

/// Pure: rectangles, scales and ticks for a stack of panels in `size`. `axis` is the shared axis; its left and width
/// are set here.
[[nodiscard]] FanStackLayout layOutFans(const FanStackModel& model, const LaneMetrics& metrics, AxisView axis,
                                        QSizeF size);

} // namespace littoral::ui
