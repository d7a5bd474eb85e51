// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/trend_statistics.h"
#include "ui/paint/time_axis.h"

#include <QColor>
#include <QPointF>
#include <span>
#include <vector>

class QPainter;

namespace littoral::ui {

/// Lowest and highest of a run of points, by place.
struct Extremes
{
    std::size_t lowest = 0;
    std::size_t highest = 0;
};

/// Many points made ready for drawing: extremes of fixed blocks, and of blocks of blocks, are kept, so that the
/// extremes of any run cost a few blocks and not a walk through the run. Points are ascending in time and outlive the
/// index.
class PointIndex final
{
public:
    static constexpr std::size_t kBlock = 64;  ///< points
    static constexpr std::size_t kBlocks = 16; ///< in a large block

    PointIndex() = default;
    explicit PointIndex(std::span<const facade::TrendPoint> points);

    [[nodiscard]] std::span<const facade::TrendPoint> points() const { return m_points; }
    /// Of [first, last), which is not empty; the earlier of equals.
    [[nodiscard]] Extremes extremes(std::size_t first, std::size_t last) const;
    /// [first, last) of the points whose instants are in [from, to].
    [[nodiscard]] std::pair<std::size_t, std::size_t> run(qint64 from, qint64 to) const;

private:
    /// Values beside the places: a walk over blocks stays in the cache.
    struct Block
    {
        double low = 0.0, high = 0.0;
        Extremes places;

        void take(double value, std::size_t place);
        void take(const Block& other);
    };

    std::span<const facade::TrendPoint> m_points;
    std::vector<Block> m_blocks, m_large;
};

/// Places of the points that draw the same line as all of [first, last): for each pixel column the first, the lowest,
/// the highest and the last, in the order of time (Jugel, Jerzak, Hackenbroich & Markl 2014, "M4: a
/// visualization-oriented time series data aggregation", PVLDB 7(10)). A line between two columns runs between the very
/// points that it ran between before, and within a column it covers the same height.
[[nodiscard]] std::vector<std::size_t> decimated(const PointIndex& index, std::size_t first, std::size_t last,
                                                 const AxisView& axis, qint64 flooded);

/// What a line covers of one pixel column.
struct ColumnSpan
{
    int column = 0; ///< left edge, px
    double top = 0.0;
    double bottom = 0.0;
};

/// The line as the stretch it covers of each pixel column in [left, left + width): how a dense line is drawn. Unlike a
/// line drawn piece by piece this depends only on what is covered, so the points that decimated() keeps give the same
/// spans as all of them.
[[nodiscard]] std::vector<ColumnSpan> columnSpans(std::span<const QPointF> line, int left, int width);

/// Fills the spans, each at least a pixel high.
void drawSpans(QPainter& painter, const std::vector<ColumnSpan>& spans, const QColor& colour);

} // namespace littoral::ui
