// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/trend_layout.h"

class QPainter;

namespace littoral::ui {

/// Draws readings of several tanks and parameters: target bands, forecasts, lines, marks with their kit step, names on
/// the lines, event rows, axis, now. The same for the screen and for files.
class TrendPainter final
{
public:
    /// All outlive the painter. `selected` is the place of the tank drawn heaviest.
    TrendPainter(const Theme& theme, const LaneMetrics& metrics, const TrendDrawing& drawing,
                 const TrendOptions& options, const TrendLayout& layout, std::size_t selected)
        : m_theme(theme)
        , m_metrics(metrics)
        , m_drawing(drawing)
        , m_model(drawing.model)
        , m_options(options)
        , m_layout(layout)
        , m_selected(selected)
    {
    }

    /// Everything that stands still.
    void paint(QPainter& painter, const TimeAxis& axis) const;
    /// The crosshair at an own place of the axis, rings around the readings it reads, its flag on the axis.
    void paintCursor(QPainter& painter, qint64 own) const;
    /// The stretch that statistics are reckoned over, own places.
    void paintSpan(QPainter& painter, qint64 from, qint64 to) const;
    /// A frame around the panel that has the keyboard.
    void paintCurrent(QPainter& painter, std::size_t panel) const;

private:
    void paintGround(QPainter& painter, const TrendPanelBox& box, const AxisTicks& ticks) const;
    void paintTitle(QPainter& painter, const TrendPanelBox& box) const;
    void paintTargets(QPainter& painter, const TrendPanelBox& box) const;
    void paintClear(QPainter& painter, const TrendPanelBox& box) const;
    void paintForecast(QPainter& painter, const TrendPanelBox& box, std::size_t series) const;
    void paintExpected(QPainter& painter, const TrendPanelBox& box, std::size_t series) const;
    void paintLine(QPainter& painter, const TrendPanelBox& box, std::size_t series) const;
    void paintMarks(QPainter& painter, const TrendPanelBox& box, std::size_t series) const;
    void paintSteps(QPainter& painter, const TrendPanelBox& box, std::size_t series) const;
    void paintNames(QPainter& painter, const TrendPanelBox& box) const;
    void paintNowLines(QPainter& painter) const;
    void paintNowNames(QPainter& painter) const;
    void paintCalendarNow(QPainter& painter) const;
    void paintEvents(QPainter& painter) const;
    void paintEventRow(QPainter& painter, const TrendEventRow& row) const;
    void paintAxis(QPainter& painter, const TrendColumn& column, const AxisTicks& ticks) const;
    void paintHeadings(QPainter& painter) const;

    /// Whose target band a panel shows: the selected tank's, else the first that has one; nullptr for none.
    [[nodiscard]] const facade::TrendSeries* targetOf(const TrendPanelBox& box) const;
    [[nodiscard]] QString limitWords(const TrendPanelBox& box) const;
    [[nodiscard]] bool isDense(const TrendPanelBox& box, std::size_t series) const;
    [[nodiscard]] std::vector<QPointF> linePoints(const TrendPanelBox& box, std::size_t series) const;
    [[nodiscard]] double x(const TrendPanelBox& box, std::size_t series, qint64 at) const;
    [[nodiscard]] QColor hueOf(const TrendPanelBox& box) const;

    const Theme& m_theme;
    const LaneMetrics& m_metrics;
    const TrendDrawing& m_drawing;
    const facade::TrendModel& m_model;
    const TrendOptions& m_options;
    const TrendLayout& m_layout;
    std::size_t m_selected;
};

/// A short piece of a tank's line with its mark, for legends.
void drawTankSample(QPainter& painter, const QRectF& box, const TankStyle& style, const QColor& ink,
                    const QColor& ground);

/// Room one label of the time axis takes, px.
[[nodiscard]] double trendLabelRoom(const LaneMetrics& metrics);

} // namespace littoral::ui
