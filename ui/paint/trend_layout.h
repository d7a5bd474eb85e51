// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/trend_model.h"
#include "ui/paint/decimate.h"
#include "ui/paint/fan_layout.h"
#include "ui/paint/lane_metrics.h"
#include "ui/paint/trend_scale.h"

#include <QList>
#include <QRectF>
#include <QSizeF>

namespace littoral::ui {

enum class TrendArrangement {
    Overlay, ///< a panel for each parameter, all tanks on it
    Stacked, ///< the tanks' panels under one another, parameter by parameter, one scale for each parameter
    Grid,    ///< parameters down, tanks across, one scale for each parameter
};

struct TrendOptions
{
    TrendArrangement arrangement = TrendArrangement::Overlay;
    bool targets = true;
    bool events = true;
    bool forecast = true;
    bool expected = true; ///< what doses and changes should have come to
    bool steps = true;    ///< half a kit step either side of a reading
    bool logarithmic = false;

    bool operator==(const TrendOptions&) const = default;
};

/// How a tank is told from the others in a panel: the hue is the parameter's, so weight, dash and fill are the tank's.
struct TankStyle
{
    double width = 1.3;
    QList<qreal> dash; ///< empty: solid
    bool open = false; ///< marks show the ground inside
    double mark = 7.0;
};
/// `place` in the model; the selected tank is drawn heaviest, ended layouts open and dashed.
[[nodiscard]] TankStyle tankStyle(const facade::TrendModel& model, std::size_t place, std::size_t selected);

/// A model with what drawing it many times needs.
struct TrendDrawing
{
    TrendDrawing() = default;
    explicit TrendDrawing(facade::TrendModel made);
    // The indexes look into the model: both move together and are never copied.
    TrendDrawing(TrendDrawing&&) = default;
    TrendDrawing& operator=(TrendDrawing&&) = default;
    TrendDrawing(const TrendDrawing&) = delete;
    TrendDrawing& operator=(const TrendDrawing&) = delete;
    ~TrendDrawing() = default;

    facade::TrendModel model;
    std::vector<PointIndex> indexes; ///< one for each series
};

struct TrendPanelBox
{
    std::size_t parameter = 0;
    std::vector<std::size_t> series; ///< places in the model, the order in which they are drawn
    std::optional<std::size_t> tank; ///< the only one, where a panel is one tank's
    std::size_t column = 0;
    QRectF title, plot;
    TrendScale scale;
    std::vector<FanTick> ticks;

    [[nodiscard]] double y(double value) const { return scale.y(value, plot.top(), plot.bottom()); }
};

struct TrendEventRow
{
    std::size_t tank = 0;
    std::size_t column = 0;
    QRectF row;
};

struct TrendColumn
{
    AxisView axis;
    QRectF axisRow;
    QRectF heading; ///< the tank's name in a grid; empty otherwise
    std::optional<std::size_t> tank;
};

struct TrendLayout
{
    std::vector<TrendColumn> columns;
    std::vector<TrendPanelBox> panels;
    std::vector<TrendEventRow> events;
    QRectF eventTitle; ///< empty without event rows
    double flagHeight = 0.0;
    double plotsTop = 0.0, plotsBottom = 0.0;
    double height = 0.0;

    [[nodiscard]] const AxisView& axisOf(const TrendPanelBox& panel) const { return columns[panel.column].axis; }
};

/// Least height at which every plot is readable, px.
[[nodiscard]] double leastTrendHeight(const facade::TrendModel& model, const TrendOptions& options,
                                      const LaneMetrics& metrics);

/// Pure: rectangles, scales and ticks in `size`. `axis` is the shared axis; its left and width are set here. Scales
/// span what is on show.
[[nodiscard]] TrendLayout layOutTrends(const TrendDrawing& drawing, const TrendOptions& options,
                                       const LaneMetrics& metrics, const AxisView& axis, QSizeF size);

/// [first, last) of a series' points to draw: those on show and one beyond either edge, so that lines leave the plot.
[[nodiscard]] std::pair<std::size_t, std::size_t> shownRun(const PointIndex& index, const AxisView& axis,
                                                           qint64 flooded);

/// The own place of an instant on the axis: ms since flooding in age mode, UTC ms otherwise; and back.
[[nodiscard]] inline qint64 ownPlace(AxisMode mode, qint64 at, qint64 flooded)
{
    return mode == AxisMode::Age ? at - flooded : at;
}
[[nodiscard]] inline qint64 instantOf(AxisMode mode, qint64 own, qint64 flooded)
{
    return mode == AxisMode::Age ? own + flooded : own;
}

} // namespace littoral::ui
