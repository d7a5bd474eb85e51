// SPDX-License-Identifier: GPL-3.0-or-later
// Lines, marks, forecasts and names: the part of the painter that shows values.
#include "core/wording/numbers.h"
#include "ui/paint/faded.h"
#include "ui/paint/line_labels.h"
#include "ui/paint/marks.h"
#include "ui/paint/trend_painter.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using facade::TrendSeries;

namespace {

// From this many points to a pixel column a line is drawn as what it covers of each column, from the extremes of the
// columns: that picture is the same as the one of all points, pixel for pixel.
constexpr double kDensePerColumn = 2.0;
constexpr double kMarkRoom = 0.9; // least mean distance of marks, in marks

QString words(const char* text)
{
    return QCoreApplication::translate("TrendPainter", text);
}

QPen penOf(const QColor& hue, const TankStyle& style)
{
    QPen pen(hue, style.width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (!style.dash.isEmpty()) {
        pen.setDashPattern(style.dash);
    }
    return pen;
}

/// The short arrow of a reading outside its kit's scale.
void drawArrow(QPainter& painter, QPointF centre, double size, const QColor& hue, bool below)
{
    const double way = below ? 1.0 : -1.0;
    const double start = centre.y() + way * size * 0.7;
    const double end = start + way * size * 0.7;
    const double wing = size * 0.26;
    painter.setPen(QPen(hue, std::max(1.0, size * 0.15), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawLine(QPointF(centre.x(), start), QPointF(centre.x(), end));
    const QPointF head[] = {
        {centre.x() - wing, end - way * wing}, {centre.x(), end}, {centre.x() + wing, end - way * wing}};
    painter.drawPolyline(head, 3);
}

QString bandText(const std::optional<double>& low, const std::optional<double>& high, int decimals)
{
    const auto number = [&](double value) { return wording::numberText(value, decimals); };
    if (low && high) {
        return words("target %1–%2").arg(number(*low), number(*high));
    }
    return low ? words("target from %1").arg(number(*low)) : words("target up to %1").arg(number(*high));
}

} // namespace

double TrendPainter::x(const TrendPanelBox& box, std::size_t series, qint64 at) const
{
    return m_layout.axisOf(box).x(at, m_model.tanks[m_model.series[series].tank].flooded);
}

QColor TrendPainter::hueOf(const TrendPanelBox& box) const
{
    return m_theme.tokens().parameter(m_model.parameters[box.parameter].key);
}

bool TrendPainter::isDense(const TrendPanelBox& box, std::size_t series) const
{
    const auto flooded = m_model.tanks[m_model.series[series].tank].flooded;
    const auto [first, last] = shownRun(m_drawing.indexes[series], m_layout.axisOf(box), flooded);
    return static_cast<double>(last - first) > kDensePerColumn * box.plot.width();
}

std::vector<QPointF> TrendPainter::linePoints(const TrendPanelBox& box, std::size_t series) const
{
    const TrendSeries& one = m_model.series[series];
    const AxisView& axis = m_layout.axisOf(box);
    const qint64 flooded = m_model.tanks[one.tank].flooded;
    const auto [first, last] = shownRun(m_drawing.indexes[series], axis, flooded);
    const auto place = [&](const facade::TrendPoint& point) {
        return QPointF(axis.x(point.at, flooded), box.y(point.value));
    };
    std::vector<QPointF> made;
    if (isDense(box, series)) {
        const std::vector<std::size_t> kept = decimated(m_drawing.indexes[series], first, last, axis, flooded);
        made.reserve(kept.size());
        for (const std::size_t i : kept) {
            made.push_back(place(one.points[i]));
        }
    } else {
        for (std::size_t i = first; i < last; ++i) {
            made.push_back(place(one.points[i]));
        }
    }
    return made;
}

void TrendPainter::paintLine(QPainter& painter, const TrendPanelBox& box, std::size_t series) const
{
    const std::vector<QPointF> points = linePoints(box, series);
    const TankStyle style = tankStyle(m_model, m_model.series[series].tank, m_selected);
    painter.setBrush(Qt::NoBrush);
    if (isDense(box, series)) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        drawSpans(painter,
                  columnSpans(points, static_cast<int>(box.plot.left()), static_cast<int>(std::ceil(box.plot.width()))),
                  hueOf(box));
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(penOf(hueOf(box), style));
    painter.drawPolyline(points.data(), static_cast<int>(points.size()));
}

void TrendPainter::paintSteps(QPainter& painter, const TrendPanelBox& box, std::size_t series) const
{
    const TrendSeries& one = m_model.series[series];
    // On a shared panel only the selected tank's: bars of several tanks at one place cannot be told apart.
    if (!m_options.steps || isDense(box, series) || (!box.tank && one.tank != m_selected)) {
        return;
    }
    const qint64 flooded = m_model.tanks[one.tank].flooded;
    const auto [first, last] = shownRun(m_drawing.indexes[series], m_layout.axisOf(box), flooded);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(faded(hueOf(box), 0.55), std::max(1.0, m_metrics.px(1.2))));
    const double cap = m_metrics.px(2.5);
    for (std::size_t i = first; i < last; ++i) {
        const facade::TrendInterval& interval = one.intervals[i];
        if (interval.high <= interval.low) {
            continue;
        }
        const double at = std::round(x(box, series, one.points[i].at));
        const double low = std::round(box.y(interval.low));
        const double high = std::round(box.y(interval.high));
        painter.drawLine(QPointF(at, low), QPointF(at, high));
        painter.drawLine(QPointF(at - cap, low), QPointF(at + cap, low));
        painter.drawLine(QPointF(at - cap, high), QPointF(at + cap, high));
    }
}

void TrendPainter::paintMarks(QPainter& painter, const TrendPanelBox& box, std::size_t series) const
{
    const TrendSeries& one = m_model.series[series];
    const TankStyle style = tankStyle(m_model, one.tank, m_selected);
    const qint64 flooded = m_model.tanks[one.tank].flooded;
    const auto [first, last] = shownRun(m_drawing.indexes[series], m_layout.axisOf(box), flooded);
    const double size = m_metrics.px(style.mark);
    if (static_cast<double>(last - first) * size * kMarkRoom > box.plot.width()) {
        return;
    }
    const QColor hue = hueOf(box);
    const QColor ground = m_theme[Token::Panel];
    const Mark mark = Tokens::mark(m_model.parameters[box.parameter].key);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = first; i < last; ++i) {
        const QPointF at(x(box, series, one.points[i].at), box.y(one.points[i].value));
        if (at.x() < box.plot.left() - size || at.x() > box.plot.right() + size) {
            continue;
        }
        drawMark(painter, mark, at, size, hue, ground, style.open || one.reckoned);
        const record::Censoring censoring = one.intervals[i].censoring;
        if (censoring == record::Censoring::Below || censoring == record::Censoring::Above) {
            drawArrow(painter, at, size, hue, censoring == record::Censoring::Below);
        }
    }
}

void TrendPainter::paintForecast(QPainter& painter, const TrendPanelBox& box, std::size_t series) const
{
    const auto& bands = m_model.series[series].forecast;
    if (!m_options.forecast || bands.size() < 2) {
        return;
    }
    const QColor hue = hueOf(box);
    const bool dark = m_theme.tokens().scheme() != Scheme::Light;
    const auto line = [&](double facade::LaneBand::*value) {
        QPolygonF points;
        for (const facade::LaneBand& band : bands) {
            points << QPointF(x(box, series, band.at), box.y(band.*value));
        }
        return points;
    };
    const auto fill = [&](double facade::LaneBand::*low, double facade::LaneBand::*high, double opacity) {
        QPolygonF area = line(high);
        const QPolygonF under = line(low);
        std::copy(under.crbegin(), under.crend(), std::back_inserter(area));
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(Qt::NoPen);
        painter.setBrush(faded(hue, opacity));
        painter.drawPolygon(area);
    };
    // On a shared panel only the selected tank has its range: two fans in one hue cannot be told apart.
    if (box.tank || m_model.series[series].tank == m_selected || m_model.tanks.size() == 1) {
        fill(&facade::LaneBand::q10, &facade::LaneBand::q90, dark ? 0.19 : 0.16);
        fill(&facade::LaneBand::q25, &facade::LaneBand::q75, dark ? 0.30 : 0.25);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    QPen median(hue, m_model.series[series].tank == m_selected ? 1.5 : 1.1, Qt::SolidLine, Qt::FlatCap);
    median.setDashPattern({4, 3});
    painter.setPen(median);
    painter.drawPolyline(line(&facade::LaneBand::q50));
}

/// A range with dotted edges and a line of dashes and dots: told from the forecast in grey, too.
void TrendPainter::paintExpected(QPainter& painter, const TrendPanelBox& box, std::size_t series) const
{
    const auto& points = m_model.series[series].expected.points;
    if (!m_options.expected || points.size() < 2) {
        return;
    }
    const QColor hue = hueOf(box);
    const bool selected = m_model.series[series].tank == m_selected;
    const auto line = [&](double facade::ExpectedPoint::*level) {
        QPolygonF made;
        for (const facade::ExpectedPoint& point : points) {
            made << QPointF(x(box, series, point.at), box.y(point.*level));
        }
        return made;
    };
    painter.setBrush(Qt::NoBrush);
    if (box.tank || selected || m_model.tanks.size() == 1) {
        QPolygonF area = line(&facade::ExpectedPoint::high);
        const QPolygonF under = line(&facade::ExpectedPoint::low);
        std::copy(under.crbegin(), under.crend(), std::back_inserter(area));
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(Qt::NoPen);
        painter.setBrush(faded(hue, m_theme.tokens().scheme() == Scheme::Light ? 0.09 : 0.13));
        painter.drawPolygon(area);
        painter.setBrush(Qt::NoBrush);
        QPen edge(faded(hue, 0.7), 1.0, Qt::SolidLine, Qt::FlatCap);
        edge.setDashPattern({1, 3});
        painter.setPen(edge);
        painter.drawPolyline(line(&facade::ExpectedPoint::low));
        painter.drawPolyline(line(&facade::ExpectedPoint::high));
    }
    painter.setRenderHint(QPainter::Antialiasing);
    QPen middle(hue, selected ? 1.4 : 1.0, Qt::SolidLine, Qt::FlatCap);
    middle.setDashPattern({7, 3, 1.5, 3});
    painter.setPen(middle);
    painter.drawPolyline(line(&facade::ExpectedPoint::mid));
}

const TrendSeries* TrendPainter::targetOf(const TrendPanelBox& box) const
{
    const TrendSeries* of = nullptr;
    for (const std::size_t place : box.series) {
        const TrendSeries& one = m_model.series[place];
        if ((one.targetLow || one.targetHigh) && (of == nullptr || one.tank == m_selected)) {
            of = &one;
        }
    }
    return of;
}

QString TrendPainter::limitWords(const TrendPanelBox& box) const
{
    const facade::TrendParameter& parameter = m_model.parameters[box.parameter];
    QStringList parts;
    const bool anyExpected = std::ranges::any_of(
        box.series, [&](std::size_t place) { return !m_model.series[place].expected.points.empty(); });
    if (m_options.expected && anyExpected) {
        parts << words("dash-dots: expected from doses");
    }
    if (!m_options.targets) {
        return parts.join(QStringLiteral("; "));
    }
    if (const TrendSeries* of = targetOf(box)) {
        const QString band = bandText(of->targetLow, of->targetHigh, parameter.decimals);
        const bool shared = std::ranges::all_of(box.series, [&](std::size_t place) {
            const TrendSeries& other = m_model.series[place];
            return other.targetLow == of->targetLow && other.targetHigh == of->targetHigh;
        });
        parts << (shared || box.tank ? band : words("%1, %2").arg(band, m_model.tanks[of->tank].shortName));
    }
    if (parameter.clear && !box.series.empty()) {
        parts << words("dashes: clear ≤ %1").arg(wording::numberText(*parameter.clear, 1));
    }
    return parts.join(QStringLiteral("; "));
}

void TrendPainter::paintTargets(QPainter& painter, const TrendPanelBox& box) const
{
    if (!m_options.targets) {
        return;
    }
    const TrendSeries* of = targetOf(box);
    if (of == nullptr) {
        return;
    }
    const QColor hue = hueOf(box);
    const double low =
        of->targetLow ? std::clamp(box.y(*of->targetLow), box.plot.top(), box.plot.bottom()) : box.plot.bottom();
    const double high =
        of->targetHigh ? std::clamp(box.y(*of->targetHigh), box.plot.top(), box.plot.bottom()) : box.plot.top();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(box.plot.left(), high, box.plot.width(), low - high), faded(hue, 0.11));
    QPen edge(faded(hue, 0.8), 1);
    edge.setDashPattern({2, 3});
    painter.setPen(edge);
    for (const auto& [end, y] : {std::pair(of->targetLow, low), std::pair(of->targetHigh, high)}) {
        if (end && y > box.plot.top() && y < box.plot.bottom()) {
            painter.drawLine(QPointF(box.plot.left(), std::round(y)), QPointF(box.plot.right(), std::round(y)));
        }
    }
}
void TrendPainter::paintClear(QPainter& painter, const TrendPanelBox& box) const
{
    const facade::TrendParameter& parameter = m_model.parameters[box.parameter];
    if (!m_options.targets || !parameter.clear || box.series.empty()) {
        return;
    }
    const double y = std::round(box.y(*parameter.clear));
    if (y <= box.plot.top() || y >= box.plot.bottom()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    QPen pen(m_theme[Token::Ink2], 1);
    pen.setDashPattern({5, 3});
    painter.setPen(pen);
    painter.drawLine(QPointF(box.plot.left(), y), QPointF(box.plot.right(), y));
}

void TrendPainter::paintNames(QPainter& painter, const TrendPanelBox& box) const
{
    if (box.tank || m_model.tanks.size() < 2) {
        return; // the panel's title or column says whose it is
    }
    std::vector<NamedLine> lines;
    for (const std::size_t place : box.series) {
        NamedLine line;
        for (const QPointF& point : linePoints(box, place)) {
            if (point.x() >= box.plot.left() && point.x() <= box.plot.right()) {
                line.points.push_back(point);
            }
        }
        const QString& name = m_model.tanks[m_model.series[place].tank].shortName;
        line.text = QSizeF(figuresWidth(m_metrics.smallStrong, name) + m_metrics.px(4), m_metrics.smallLine);
        lines.push_back(std::move(line));
    }
    const auto placed = placeLineLabels(lines, box.plot, m_metrics.px(6));
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(m_metrics.smallStrong);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        if (placed[i]) {
            painter.fillRect(placed[i]->adjusted(0, 1, 0, -1), faded(m_theme[Token::Panel], 0.72));
            painter.setPen(m_theme[Token::Ink]);
            drawFigures(painter, *placed[i], Qt::AlignCenter,
                        m_model.tanks[m_model.series[box.series[i]].tank].shortName);
        }
    }
}

} // namespace littoral::ui
