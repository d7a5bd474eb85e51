// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "ui/paint/lane_metrics.h"
#include "ui/paint/time_axis.h"
#include "ui/paint/value_scale.h"

#include <QRectF>
#include <utility>
#include <vector>

class QPainter;

namespace littoral::ui {

/// One thing on the strip that can be pointed at: a reading, an observation's coverage, an event.
struct StripPart
{
    facade::RecordRef ref;
    QString sentence;
    QRectF box;
};

struct StripPanel
{
    std::size_t series = 0;
    QRectF title, plot;
    ValueScale scale;
};

struct StripLayout
{
    AxisView axis;
    QRectF bracketRow, axisRow, events, changes, eventTitle;
    std::vector<StripPanel> panels;
    std::vector<StripPart> parts; ///< in time order, those on show
    double plotsTop = 0.0, plotsBottom = 0.0;
    double height = 0.0;
};

/// Height the strip asks for, px.
[[nodiscard]] double stripHeight(const facade::CaseStrip& strip, const LaneMetrics& metrics);

/// Pure. `axis` is the shared axis; its left and width are set here.
[[nodiscard]] StripLayout layOutStrip(const facade::CaseStrip& strip, const LaneMetrics& metrics, const AxisView& axis,
                                      double width);

/// The look-back window as a bracket over readings and events, on the shared axis: for the screen and for paper.
class StripPainter final
{
public:
    /// All outlive the painter.
    StripPainter(const Theme& theme, const LaneMetrics& metrics, const facade::CaseStrip& strip,
                 const StripLayout& layout)
        : m_theme(theme)
        , m_metrics(metrics)
        , m_strip(strip)
        , m_layout(layout)
    {
    }

    void paint(QPainter& painter, const TimeAxis& axis) const;
    /// Rings around what a piece of evidence rests on; arrows at the edge for what lies outside.
    void paintMarked(QPainter& painter, const std::vector<facade::RecordRef>& marked) const;

private:
    void paintGround(QPainter& painter, const TimeAxis& axis) const;
    void paintBracket(QPainter& painter) const;
    void paintPanel(QPainter& painter, const StripPanel& panel) const;
    void paintEvents(QPainter& painter) const;
    void paintEvent(QPainter& painter, const facade::LaneEvent& event,
                    std::vector<std::pair<double, double>>& taken) const;
    void paintChanges(QPainter& painter) const;
    void paintAxis(QPainter& painter, const TimeAxis& axis) const;
    void paintNow(QPainter& painter, const TimeAxis& axis) const;
    void paintOnset(QPainter& painter) const;
    [[nodiscard]] double x(qint64 at) const { return m_layout.axis.x(at, m_strip.flooded); }
    /// x within the plots.
    [[nodiscard]] double inside(qint64 at) const;

    const Theme& m_theme;
    const LaneMetrics& m_metrics;
    const facade::CaseStrip& m_strip;
    const StripLayout& m_layout;
};

} // namespace littoral::ui
