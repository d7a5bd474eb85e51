// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/trend_layout.h"

#include "core/wording/numbers.h"
#include "ui/theme/figures.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace littoral::ui {

using facade::TrendModel;
using facade::TrendSeries;

namespace {

constexpr double kLeastPlot = 58.0;      // px at text scale 1
constexpr std::size_t kFewPoints = 2000; // up to here the ends of kit steps are drawn and counted

struct Spacing
{
    Spacing(const LaneMetrics& metrics, const TrendOptions& options)
        : flag(metrics.smallLine + metrics.px(8))
        , heading(options.arrangement == TrendArrangement::Grid ? metrics.nameLine + metrics.px(6) : 0.0)
        , title(metrics.bodyLine + metrics.px(4))
        , gap(metrics.px(9))
        , event(metrics.px(33))
        , axis(metrics.smallLine + metrics.px(12))
        , left(std::ceil(figuresWidth(metrics.tick, QStringLiteral("0.000")) + metrics.px(16)))
        , right(metrics.px(16))
        , between(metrics.px(10))
    {
    }
    double flag, heading, title, gap, event, axis, left, right, between;
};

/// Panels in one column, from above.
std::size_t panelRows(const TrendModel& model, const TrendOptions& options)
{
    const std::size_t tanks = std::max<std::size_t>(1, model.tanks.size());
    return options.arrangement == TrendArrangement::Stacked ? model.parameters.size() * tanks : model.parameters.size();
}

std::size_t eventRows(const TrendModel& model, const TrendOptions& options)
{
    if (!options.events || model.tanks.empty()) {
        return 0;
    }
    return options.arrangement == TrendArrangement::Grid ? 1 : model.tanks.size();
}

double fixedHeight(const TrendModel& model, const TrendOptions& options, const Spacing& space)
{
    const auto panels = static_cast<double>(panelRows(model, options));
    const auto rows = static_cast<double>(eventRows(model, options));
    return space.flag + space.heading + panels * (space.title + space.gap) + (rows > 0 ? space.title : 0.0) +
           rows * space.event + space.axis;
}

struct Span
{
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    double positive = std::numeric_limits<double>::infinity(); ///< lowest above zero

    void take(double value)
    {
        low = std::min(low, value);
        high = std::max(high, value);
        if (value > 0.0) {
            positive = std::min(positive, value);
        }
    }
};

void takeSeries(Span& span, const TrendDrawing& drawing, std::size_t place, const TrendOptions& options,
                const AxisView& axis)
{
    const TrendSeries& series = drawing.model.series[place];
    const qint64 flooded = drawing.model.tanks[series.tank].flooded;
    const auto [first, last] =
        drawing.indexes[place].run(instantOf(axis.mode, axis.from, flooded), instantOf(axis.mode, axis.to, flooded));
    if (last > first) {
        const Extremes found = drawing.indexes[place].extremes(first, last);
        span.take(series.points[found.lowest].value);
        span.take(series.points[found.highest].value);
    }
    if (options.steps && last - first < kFewPoints) {
        for (std::size_t i = first; i < last; ++i) {
            span.high = std::max(span.high, series.intervals[i].high);
        }
    }
    if (options.forecast) {
        for (const facade::LaneBand& band : series.forecast) {
            if (const double x = axis.x(band.at, flooded); x >= axis.left && x <= axis.right()) {
                span.take(band.q10);
                span.take(band.q90);
            }
        }
    }
    if (options.expected) {
        for (const facade::ExpectedPoint& point : series.expected.points) {
            if (const double x = axis.x(point.at, flooded); x >= axis.left && x <= axis.right()) {
                span.take(point.low);
                span.take(point.high);
            }
        }
    }
    if (options.targets) {
        for (const auto& end : {series.targetLow, series.targetHigh}) {
            if (end) {
                span.take(*end);
            }
        }
    }
}

/// One scale for a parameter, whatever panels it has: heights may be compared.
TrendScale scaleFor(const TrendDrawing& drawing, std::size_t parameter, const TrendOptions& options,
                    const AxisView& axis, int most)
{
    Span span;
    for (std::size_t i = 0; i < drawing.model.series.size(); ++i) {
        if (drawing.model.series[i].parameter == parameter) {
            takeSeries(span, drawing, i, options, axis);
        }
    }
    if (!(span.high >= span.low)) {
        span.take(0.0);
        span.take(1.0);
    }
    if (options.logarithmic && std::isfinite(span.positive)) {
        return logScale(span.positive, span.high, most);
    }
    const bool fromZero =
        drawing.model.parameters[parameter].key != QLatin1String("ph") && span.low >= 0.0 && span.low < 0.5 * span.high;
    return linearScale(fromZero ? 0.0 : span.low, span.high, most);
}

class Builder
{
public:
    Builder(const TrendDrawing& drawing, const TrendOptions& options, const LaneMetrics& metrics, AxisView axis,
            QSizeF size)
        : m_drawing(drawing)
        , m_model(drawing.model)
        , m_options(options)
        , m_metrics(metrics)
        , m_space(metrics, options)
    {
        m_made.height = std::max(size.height(), leastTrendHeight(m_model, options, metrics));
        m_made.flagHeight = m_space.flag;
        makeColumns(axis, size.width());
    }

    TrendLayout build()
    {
        double y = m_space.flag + m_space.heading;
        m_made.plotsTop = y;
        const auto rows = static_cast<double>(std::max<std::size_t>(1, panelRows(m_model, m_options)));
        m_plot = std::floor((m_made.height - fixedHeight(m_model, m_options, m_space)) / rows);
        for (std::size_t parameter = 0; parameter < m_model.parameters.size(); ++parameter) {
            y = addParameter(parameter, y);
        }
        m_made.plotsBottom = y - m_space.gap;
        addEvents(y);
        return std::move(m_made);
    }

private:
    void makeColumns(AxisView axis, double width)
    {
        const bool grid = m_options.arrangement == TrendArrangement::Grid && !m_model.tanks.empty();
        const std::size_t count = grid ? m_model.tanks.size() : 1;
        const double each =
            (width - m_space.right - m_space.between * static_cast<double>(count - 1)) / static_cast<double>(count);
        for (std::size_t i = 0; i < count; ++i) {
            TrendColumn column;
            const double left = static_cast<double>(i) * (each + m_space.between);
            axis.left = std::floor(left + m_space.left);
            axis.width = std::max(10.0, std::floor(each - m_space.left));
            column.axis = axis;
            if (grid) {
                column.tank = i;
                column.heading = QRectF(axis.left, m_space.flag, axis.width, m_space.heading);
            }
            m_made.columns.push_back(column);
        }
    }

    double addParameter(std::size_t parameter, double y)
    {
        const int most = std::clamp(static_cast<int>(m_plot / (m_metrics.tickLine * 1.9)) + 1, 3, 7);
        const TrendScale scale = scaleFor(m_drawing, parameter, m_options, m_made.columns.front().axis, most);
        const auto add = [&](std::optional<std::size_t> tank, std::size_t column, double top) {
            TrendPanelBox box;
            box.parameter = parameter;
            box.tank = tank;
            box.column = column;
            const AxisView& axis = m_made.columns[column].axis;
            box.title = QRectF(axis.left, top, axis.width, m_space.title);
            box.plot = QRectF(axis.left, top + m_space.title, axis.width, std::max(10.0, m_plot));
            box.scale = scale;
            for (const double tick : scale.ticks) {
                box.ticks.push_back({box.y(tick), wording::numberText(tick, scale.decimals)});
            }
            for (std::size_t i = 0; i < m_model.series.size(); ++i) {
                const TrendSeries& series = m_model.series[i];
                if (series.parameter == parameter && (!tank || *tank == series.tank)) {
                    box.series.push_back(i);
                }
            }
            m_made.panels.push_back(std::move(box));
        };
        const double step = m_space.title + m_plot + m_space.gap;
        switch (m_options.arrangement) {
        case TrendArrangement::Overlay:
            add(std::nullopt, 0, y);
            return y + step;
        case TrendArrangement::Stacked:
            for (std::size_t tank = 0; tank < m_model.tanks.size(); ++tank, y += step) {
                add(tank, 0, y);
            }
            return y;
        case TrendArrangement::Grid:
            for (std::size_t tank = 0; tank < m_model.tanks.size(); ++tank) {
                add(tank, tank, y);
            }
            return y + step;
        }
        return y;
    }

    void addEvents(double y)
    {
        if (const std::size_t rows = eventRows(m_model, m_options); rows > 0) {
            m_made.eventTitle =
                QRectF(m_made.columns.front().axis.left, y, m_made.columns.front().axis.width, m_space.title);
            y += m_space.title;
            const bool grid = m_options.arrangement == TrendArrangement::Grid;
            for (std::size_t tank = 0; tank < m_model.tanks.size(); ++tank) {
                const std::size_t column = grid ? tank : 0;
                const AxisView& axis = m_made.columns[column].axis;
                m_made.events.push_back({tank, column, QRectF(axis.left, y, axis.width, m_space.event)});
                y += grid ? 0.0 : m_space.event;
            }
            y += grid ? m_space.event : 0.0;
        }
        for (TrendColumn& column : m_made.columns) {
            column.axisRow = QRectF(column.axis.left, y, column.axis.width, m_space.axis);
        }
    }

    const TrendDrawing& m_drawing;
    const TrendModel& m_model;
    const TrendOptions& m_options;
    const LaneMetrics& m_metrics;
    Spacing m_space;
    TrendLayout m_made;
    double m_plot = 0.0;
};

} // namespace

TrendDrawing::TrendDrawing(TrendModel made)
    : model(std::move(made))
{
    for (const TrendSeries& series : model.series) {
        indexes.emplace_back(series.points);
    }
}

TankStyle tankStyle(const TrendModel& model, std::size_t place, std::size_t selected)
{
    // Each further tank has its own dash; an ended layout is always open and dashed.
    static const std::array<QList<qreal>, 4> dashes{QList<qreal>{}, QList<qreal>{7, 2}, QList<qreal>{2, 2},
                                                    QList<qreal>{8, 2, 2, 2}};
    if (place >= model.tanks.size()) {
        return {};
    }
    if (model.tanks[place].earlier) {
        return {1.3, {4, 2.5}, true, 7.0};
    }
    if (place == selected) {
        return {2.2, {}, false, 8.0};
    }
    std::size_t rank = 0;
    for (std::size_t i = 0; i < place; ++i) {
        rank += !model.tanks[i].earlier && i != selected ? 1 : 0;
    }
    return {1.2, dashes[rank % dashes.size()], rank >= 2, 5.5};
}

double leastTrendHeight(const TrendModel& model, const TrendOptions& options, const LaneMetrics& metrics)
{
    const auto rows = static_cast<double>(std::max<std::size_t>(1, panelRows(model, options)));
    return std::ceil(fixedHeight(model, options, Spacing(metrics, options)) + rows * metrics.px(kLeastPlot));
}

TrendLayout layOutTrends(const TrendDrawing& drawing, const TrendOptions& options, const LaneMetrics& metrics,
                         const AxisView& axis, QSizeF size)
{
    return Builder(drawing, options, metrics, axis, size).build();
}

std::pair<std::size_t, std::size_t> shownRun(const PointIndex& index, const AxisView& axis, qint64 flooded)
{
    auto [first, last] = index.run(instantOf(axis.mode, axis.from, flooded), instantOf(axis.mode, axis.to, flooded));
    first = first > 0 ? first - 1 : first;
    last = std::min(last + 1, index.points().size());
    return {first, std::max(first, last)};
}

} // namespace littoral::ui
