// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/fan_layout.h"

class QPainter;

namespace littoral::ui {

/// Draws a stack of fan charts: 8 in 10 and 5 in 10 with a dashed middle, the fitted past thin, readings with their kit
/// step, limits, one bracket, water changes and the time axis. Used by the screen and by paper alike.
class FanPainter final
{
public:
    FanPainter(const Theme& theme, const LaneMetrics& metrics, const FanStackModel& model, const FanStackLayout& layout)
        : m_theme(theme)
        , m_metrics(metrics)
        , m_model(model)
        , m_layout(layout)
    {
    }

    /// Everything but the cursor. `axis` gives the ticks and the now flag's text.
    void paint(QPainter& painter, const TimeAxis& axis) const;
    /// The cursor's line with each panel's values at that instant beside its title.
    void paintCursor(QPainter& painter, qint64 at) const;

private:
    void paintGrounds(QPainter& painter, const std::vector<double>& grid) const;
    void paintTitle(QPainter& painter, const FanPanel& panel, const FanBox& box, const QString& right) const;
    void paintPanel(QPainter& painter, const FanPanel& panel, const FanBox& box) const;
    void paintBracket(QPainter& painter, const FanBracket& bracket, const FanBox& box) const;
    void paintLimits(QPainter& painter, const FanPanel& panel, const FanBox& box) const;
    void paintFan(QPainter& painter, const FanSeries& series, const FanBox& box, const std::vector<LaneBand>& bands,
                  double strength) const;
    void paintFitted(QPainter& painter, const FanSeries& series, const FanBox& box, bool strong) const;
    void paintSeriesLabels(QPainter& painter, const FanPanel& panel, const FanBox& box) const;
    void paintReadings(QPainter& painter, const FanPanel& panel, const FanBox& box) const;
    void paintReference(QPainter& painter, const FanPanel& panel, const FanBox& box) const;
    void paintChanges(QPainter& painter) const;
    void paintAxis(QPainter& painter, const TimeAxis& axis) const;
    void paintNow(QPainter& painter, const TimeAxis& axis) const;
    void paintNotes(QPainter& painter) const;
    [[nodiscard]] double x(qint64 at) const { return m_layout.x(at, m_model.flooded); }
    [[nodiscard]] QColor ground(double atX) const;
    [[nodiscard]] QPolygonF line(const std::vector<LaneBand>& bands, double LaneBand::*value, const FanBox& box) const;

    const Theme& m_theme;
    const LaneMetrics& m_metrics;
    const FanStackModel& m_model;
    const FanStackLayout& m_layout;
};

/// "4.1 (2.9–5.0)": the middle and the 8-in-10 range at an instant; the fitted value in the past; empty without either.
[[nodiscard]] QString fanValueText(const FanSeries& series, int decimals, qint64 at);

} // namespace littoral::ui
