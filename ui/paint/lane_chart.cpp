// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_chart.h"

#include "ui/paint/faded.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

using facade::LaneBand;

/// The part of a series of bands that touches the strip, one neighbour on each side kept so that lines run to the edge.
template <typename Item, typename XOf>
std::pair<std::size_t, std::size_t> visible(const std::vector<Item>& items, XOf xOf, double left, double right)
{
    std::size_t first = 0;
    while (first + 1 < items.size() && xOf(items[first + 1]) < left) {
        ++first;
    }
    std::size_t last = first;
    while (last < items.size() && (last == first || xOf(items[last - 1]) <= right)) {
        ++last;
    }
    return {first, last};
}

/// A thick antialiased polyline is slow in the raster engine; single segments with round caps look the same and are
/// not.
void drawPath(QPainter& painter, const QPolygonF& points)
{
    if (points.size() < 2) {
        return;
    }
    if (painter.pen().style() != Qt::SolidLine) {
        painter.drawPolyline(points);
        return;
    }
    QList<QLineF> lines;
    lines.reserve(points.size());
    for (qsizetype i = 1; i < points.size(); ++i) {
        lines.append(QLineF(points[i - 1], points[i]));
    }
    painter.drawLines(lines);
}

} // namespace

double LaneChart::y(const SeriesBox& series, double value) const
{
    const ValueScale& scale = m_box.scales[series.scale];
    const double bounded =
        std::clamp(value, scale.low - (scale.high - scale.low), scale.high + (scale.high - scale.low));
    return scale.y(bounded, m_box.chart.top(), m_box.chart.bottom());
}

QColor LaneChart::ground(double atX) const
{
    return m_theme[atX > m_box.nowX && !m_model.earlier ? Token::Future : Token::Panel];
}

void LaneChart::paint(QPainter& painter, bool selected) const
{
    painter.save();
    painter.setClipRect(QRectF(m_box.strip.left(), m_box.chart.top() - m_metrics.px(9), m_box.strip.width(),
                               m_box.chart.height() + m_metrics.px(16)),
                        Qt::IntersectClip);
    if (m_options.targets) {
        for (const SeriesBox& series : m_box.series) {
            paintTarget(painter, series);
        }
    }
    paintGrid(painter);
    for (const SeriesBox& series : m_box.series) {
        if (m_options.forecast) {
            paintFan(painter, series);
        }
        paintFitted(painter, series);
    }
    for (const SeriesBox& series : m_box.series) {
        paintReadings(painter, series, selected);
    }
    painter.setFont(m_metrics.tick);
    painter.setPen(m_theme[Token::Ink2]);
    for (const MarkLabel& label : m_box.censored) {
        drawFigures(painter, label.rect, Qt::AlignVCenter | Qt::AlignLeft, label.text);
    }
    paintTicks(painter);
    paintNote(painter);
    painter.restore();
}

void LaneChart::paintTarget(QPainter& painter, const SeriesBox& box) const
{
    const facade::LaneSeries& series = *box.series;
    if (!series.targetLow && !series.targetHigh) {
        return;
    }
    const ValueScale& scale = m_box.scales[box.scale];
    const double top = y(box, series.targetHigh.value_or(scale.high));
    const double bottom = y(box, series.targetLow.value_or(scale.low));
    const double left = std::max(m_box.strip.left(), m_box.floodedX);
    const double right = std::min(m_box.strip.right(), m_box.endedX.value_or(m_box.strip.right()));
    if (right <= left) {
        return;
    }
    const QColor hue = m_theme.tokens().parameter(series.parameter);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(left, std::round(top), right - left, std::round(bottom) - std::round(top)),
                     faded(hue, 0.11));
    QPen edge(hue, 1);
    edge.setDashPattern({2, 3});
    painter.setPen(edge);
    for (const auto& limit : {series.targetLow, series.targetHigh}) {
        if (limit) {
            const double level = std::round(y(box, *limit));
            painter.drawLine(QPointF(left, level), QPointF(right, level));
        }
    }
}

void LaneChart::paintFan(QPainter& painter, const SeriesBox& box) const
{
    const auto& bands = box.series->forecast;
    if (bands.size() < 2) {
        return;
    }
    const double left = std::max(m_box.strip.left(), m_box.nowX);
    const auto xOf = [this](const LaneBand& band) { return x(band.at); };
    const auto [first, last] = visible(bands, xOf, left, m_box.strip.right());
    const QColor hue = m_theme.tokens().parameter(box.series->parameter);
    const bool dark = m_theme.tokens().scheme() != Scheme::Light;
    painter.save();
    painter.setClipRect(QRectF(left, m_box.chart.top() - 8, m_box.strip.right() - left, m_box.chart.height() + 16),
                        Qt::IntersectClip);
    const auto fill = [&](double LaneBand::*low, double LaneBand::*high, double opacity) {
        QPolygonF area;
        for (std::size_t i = first; i < last; ++i) {
            area << QPointF(xOf(bands[i]), y(box, bands[i].*high));
        }
        for (std::size_t i = last; i-- > first;) {
            area << QPointF(xOf(bands[i]), y(box, bands[i].*low));
        }
        // Not antialiased: long translucent polygons are slow and their edges are drawn over anyway.
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(Qt::NoPen);
        painter.setBrush(faded(hue, opacity));
        painter.drawPolygon(area);
    };
    fill(&LaneBand::q10, &LaneBand::q90, dark ? 0.17 : 0.15);
    fill(&LaneBand::q25, &LaneBand::q75, dark ? 0.30 : 0.26);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto line = [&](double LaneBand::*value, const QPen& pen) {
        QPolygonF points;
        for (std::size_t i = first; i < last; ++i) {
            points << QPointF(xOf(bands[i]), y(box, bands[i].*value));
        }
        painter.setPen(pen);
        drawPath(painter, points);
    };
    line(&LaneBand::q10, QPen(faded(hue, 0.45), 0.8));
    line(&LaneBand::q90, QPen(faded(hue, 0.45), 0.8));
    QPen median(hue, 1.5);
    median.setDashPattern({4, 3});
    median.setCapStyle(Qt::FlatCap);
    line(&LaneBand::q50, median);
    painter.restore();
}

void LaneChart::paintFitted(QPainter& painter, const SeriesBox& box) const
{
    const auto& bands = box.series->fitted;
    if (bands.size() < 2 || !m_options.forecast) {
        return;
    }
    const auto [first, last] = visible(
        bands, [this](const LaneBand& b) { return x(b.at); }, m_box.strip.left(), m_box.strip.right());
    QPolygonF points;
    for (std::size_t i = first; i < last; ++i) {
        points << QPointF(x(bands[i].at), y(box, bands[i].q50));
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(faded(m_theme.tokens().parameter(box.series->parameter), 0.55), 1.1));
    drawPath(painter, points);
}

void LaneChart::paintReadings(QPainter& painter, const SeriesBox& box, bool selected) const
{
    const auto& marks = box.series->marks;
    if (marks.empty()) {
        return;
    }
    const auto [first, last] = visible(
        marks, [this](const facade::LaneMark& m) { return x(m.at); }, m_box.strip.left(), m_box.strip.right());
    const QColor hue = m_theme.tokens().parameter(box.series->parameter);
    QPolygonF points;
    for (std::size_t i = first; i < last; ++i) {
        points << QPointF(x(marks[i].at), y(box, marks[i].value));
    }
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(hue, selected ? 2.2 : 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    if (m_model.earlier) {
        pen.setDashPattern({5, 3});
        pen.setCapStyle(Qt::FlatCap);
    }
    painter.setPen(pen);
    drawPath(painter, points);
    if (m_box.kind == LaneKind::Overview) {
        return;
    }
    const double size = m_metrics.px(kMarkSize);
    const Mark mark = Tokens::mark(box.series->parameter);
    double drawnAt = -1e9;
    for (std::size_t i = first; i < last; ++i) {
        const QPointF at = points[static_cast<qsizetype>(i - first)];
        // Two years of daily readings on one screen: marks closer than a third of themselves add ink, not news.
        if (at.x() - drawnAt < size / 3) {
            continue;
        }
        drawnAt = at.x();
        const auto censoring = marks[i].censoring;
        const bool outside = censoring == record::Censoring::Below || censoring == record::Censoring::Above;
        if (outside && m_box.axis.pxPerDay() >= kArrowPerDay) {
            drawCensoredMark(painter, mark, at, size, hue, ground(at.x()), censoring == record::Censoring::Below);
        } else {
            drawMark(painter, mark, at, size, hue, ground(at.x()), m_model.earlier);
        }
    }
}

void LaneChart::paintGrid(QPainter& painter) const
{
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    const double left = std::max(m_box.strip.left(), m_box.floodedX);
    for (const TickLabel& tick : m_box.ticks) {
        if (tick.scale == 0) {
            painter.drawLine(QPointF(left, tick.level), QPointF(m_box.strip.right(), tick.level));
        }
    }
}

void LaneChart::paintTicks(QPainter& painter) const
{
    painter.setFont(m_metrics.tick);
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const TickLabel& tick : m_box.ticks) {
        const bool before = tick.rect.right() < m_box.floodedX;
        const QColor back = before ? m_theme[Token::Sunk] : ground(tick.rect.center().x());
        painter.fillRect(tick.rect.adjusted(-2, 1, 2, -1), faded(back, before ? 1.0 : 0.9));
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(painter, tick.rect, Qt::AlignVCenter | Qt::AlignLeft, tick.text);
    }
}

void LaneChart::paintNote(QPainter& painter) const
{
    if (m_box.kind == LaneKind::Overview) {
        return;
    }
    const bool blank = std::ranges::all_of(m_box.series, [](const SeriesBox& s) { return s.series->marks.empty(); });
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    if (blank && m_box.nowX > m_box.strip.left() + m_metrics.px(60)) {
        const QString text = QCoreApplication::translate("LaneChart", "No readings yet");
        const double left = std::max(m_box.strip.left(), m_box.floodedX);
        const QRectF room(left + m_metrics.px(60), m_box.chart.top(), m_box.nowX - left - m_metrics.px(68),
                          m_box.chart.height());
        drawFigures(painter, room, Qt::AlignVCenter | Qt::AlignRight,
                    elidedFigures(m_metrics.small, text, room.width()));
    }
    if (m_options.forecast && !m_model.forecastNote.isEmpty() && !m_model.earlier) {
        const QRectF room(std::max(m_box.nowX, m_box.strip.left()) + m_metrics.px(6),
                          m_box.chart.bottom() - m_metrics.smallLine,
                          m_box.strip.right() - m_box.nowX - m_metrics.px(12), m_metrics.smallLine);
        if (room.width() > m_metrics.px(60)) {
            const QString text = elidedFigures(m_metrics.small, m_model.forecastNote, room.width());
            painter.fillRect(
                QRectF(room.left() - 2, room.top(), figuresWidth(m_metrics.small, text) + 4, room.height()),
                faded(m_theme[Token::Future], 0.86));
            drawFigures(painter, room, Qt::AlignVCenter | Qt::AlignLeft, text);
        }
    }
}

} // namespace littoral::ui
