// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/decimate.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::ui {

using facade::TrendPoint;

void PointIndex::Block::take(double value, std::size_t place)
{
    if (value < low) {
        low = value;
        places.lowest = place;
    }
    if (value > high) {
        high = value;
        places.highest = place;
    }
}

void PointIndex::Block::take(const Block& other)
{
    if (other.low < low) {
        low = other.low;
        places.lowest = other.places.lowest;
    }
    if (other.high > high) {
        high = other.high;
        places.highest = other.places.highest;
    }
}

PointIndex::PointIndex(std::span<const TrendPoint> points)
    : m_points(points)
{
    m_blocks.reserve(points.size() / kBlock + 1);
    for (std::size_t first = 0; first < points.size(); first += kBlock) {
        Block block{points[first].value, points[first].value, {first, first}};
        for (std::size_t i = first + 1; i < std::min(points.size(), first + kBlock); ++i) {
            block.take(points[i].value, i);
        }
        m_blocks.push_back(block);
    }
    m_large.reserve(m_blocks.size() / kBlocks + 1);
    for (std::size_t first = 0; first < m_blocks.size(); first += kBlocks) {
        Block large = m_blocks[first];
        for (std::size_t i = first + 1; i < std::min(m_blocks.size(), first + kBlocks); ++i) {
            large.take(m_blocks[i]);
        }
        m_large.push_back(large);
    }
}

Extremes PointIndex::extremes(std::size_t first, std::size_t last) const
{
    constexpr std::size_t kWhole = kBlock * kBlocks;
    Block found{m_points[first].value, m_points[first].value, {first, first}};
    std::size_t at = first;
    while (at < last) {
        if (at % kWhole == 0 && at + kWhole <= last) {
            found.take(m_large[at / kWhole]);
            at += kWhole;
        } else if (at % kBlock == 0 && at + kBlock <= last) {
            found.take(m_blocks[at / kBlock]);
            at += kBlock;
        } else {
            found.take(m_points[at].value, at);
            ++at;
        }
    }
    return found.places;
}

std::pair<std::size_t, std::size_t> PointIndex::run(qint64 from, qint64 to) const
{
    const auto first = std::ranges::lower_bound(m_points, from, {}, &TrendPoint::at);
    const auto last = std::ranges::upper_bound(m_points, to, {}, &TrendPoint::at);
    const auto place = [this](auto it) { return static_cast<std::size_t>(it - m_points.begin()); };
    return {place(first), std::max(place(first), place(last))};
}

namespace {

/// The first instant that is drawn beyond a pixel column. Asking every point tried for its pixel took longer than all
/// the rest of drawing it; instants are compared instead. Places rise with instants, so this finds the same points.
qint64 endOf(double column, const AxisView& axis, qint64 flooded)
{
    const double share = (column + 1.0 - axis.left) / axis.width;
    const qint64 zero = axis.mode == AxisMode::Age ? axis.from + flooded : axis.from;
    qint64 at = zero + static_cast<qint64>(std::ceil(share * static_cast<double>(axis.to - axis.from)));
    while (axis.x(at, flooded) < column + 1.0) {
        ++at;
    }
    while (axis.x(at - 1, flooded) >= column + 1.0) {
        --at;
    }
    return at;
}

} // namespace

std::vector<std::size_t> decimated(const PointIndex& index, std::size_t first, std::size_t last, const AxisView& axis,
                                   qint64 flooded)
{
    const auto points = index.points();
    std::vector<std::size_t> kept;
    kept.reserve(std::min(last - first, static_cast<std::size_t>(std::max(0.0, axis.width) * 4.0) + 8));
    std::size_t start = first;
    std::size_t stride = 1; // as many points as the column before had: the next edge is near there
    while (start < last) {
        const qint64 edgeAt = endOf(std::floor(axis.x(points[start].at, flooded)), axis, flooded);
        std::size_t known = start;
        std::size_t beyond = std::min(last, start + stride);
        while (beyond < last && points[beyond].at < edgeAt) {
            known = beyond;
            stride *= 2;
            beyond = std::min(last, start + stride);
        }
        const auto edge = std::partition_point(points.begin() + static_cast<std::ptrdiff_t>(known),
                                               points.begin() + static_cast<std::ptrdiff_t>(beyond),
                                               [edgeAt](const TrendPoint& point) { return point.at < edgeAt; });
        const auto end = static_cast<std::size_t>(edge - points.begin());
        stride = std::max<std::size_t>(1, end - start);
        const Extremes found = index.extremes(start, end);
        const auto [earlier, later] = std::minmax(found.lowest, found.highest);
        for (const std::size_t place : {start, earlier, later, end - 1}) {
            if (kept.empty() || kept.back() != place) {
                kept.push_back(place);
            }
        }
        start = end;
    }
    return kept;
}

std::vector<ColumnSpan> columnSpans(std::span<const QPointF> line, int left, int width)
{
    std::vector<ColumnSpan> all(static_cast<std::size_t>(std::max(0, width)));
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i] = {left + static_cast<int>(i), std::numeric_limits<double>::infinity(),
                  -std::numeric_limits<double>::infinity()};
    }
    const auto take = [&](int column, double y) {
        if (column >= left && column < left + width) {
            ColumnSpan& span = all[static_cast<std::size_t>(column - left)];
            span.top = std::min(span.top, y);
            span.bottom = std::max(span.bottom, y);
        }
    };
    const auto columnOf = [&](double x) {
        return static_cast<int>(std::floor(std::clamp(x, left - 1.0, left + width + 1.0)));
    };
    for (std::size_t i = 0; i < line.size(); ++i) {
        take(columnOf(line[i].x()), line[i].y());
        if (i + 1 == line.size()) {
            break;
        }
        const QPointF& a = line[i];
        const QPointF& b = line[i + 1];
        // Where the piece passes from one column into the next it touches both.
        for (int edge = columnOf(a.x()) + 1; edge <= columnOf(b.x()); ++edge) {
            const double y = a.y() + (b.y() - a.y()) * (edge - a.x()) / (b.x() - a.x());
            take(edge - 1, y);
            take(edge, y);
        }
    }
    std::erase_if(all, [](const ColumnSpan& span) { return span.bottom < span.top; });
    return all;
}

void drawSpans(QPainter& painter, const std::vector<ColumnSpan>& spans, const QColor& colour)
{
    std::vector<QRect> bars;
    bars.reserve(spans.size());
    for (const ColumnSpan& span : spans) {
        const int top = static_cast<int>(std::floor(span.top));
        const int bottom = static_cast<int>(std::floor(span.bottom));
        bars.emplace_back(span.column, top, 1, bottom - top + 1);
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRects(bars.data(), static_cast<int>(bars.size()));
    painter.restore();
}

} // namespace littoral::ui
