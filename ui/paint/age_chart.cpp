// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/age_chart.h"

#include "core/wording/numbers.h"
#include "ui/paint/line_labels.h"
#include "ui/paint/marks.h"
#include "ui/paint/value_scale.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr double kPlot = 118.0;

QString words(const char* text)
{
    return QCoreApplication::translate("AgeChart", text);
}

} // namespace

double AgeChart::height(const LaneMetrics& metrics)
{
    return std::ceil(metrics.px(kPlot) + 2 * metrics.smallLine + metrics.px(14));
}

AgeChart::AgeChart(const Theme& theme, const LaneMetrics& metrics, const facade::Comparison& comparison,
                   const QRectF& box)
    : m_theme(theme)
    , m_metrics(metrics)
    , m_made(comparison)
    , m_plot(box.adjusted(metrics.px(34), metrics.smallLine + metrics.px(4), -metrics.px(8),
                          -metrics.smallLine - metrics.px(8)))
{
    double low = 1e300;
    double high = -1e300;
    m_to = std::max(1.0, comparison.nowAge);
    // The other line matters as far as this layout has come, and half as far again.
    const double most = std::max(14.0, comparison.nowAge * 1.5);
    for (const facade::AgeLine* line : {&comparison.own, &comparison.other}) {
        for (const auto& [age, value] : line->points) {
            if (age <= most) {
                m_to = std::max(m_to, age);
                low = std::min(low, value);
                high = std::max(high, value);
            }
        }
    }
    if (low > high) {
        low = 0.0;
        high = 1.0;
    }
    const bool share = comparison.unitLabel == QStringLiteral("%");
    const ValueScale scale = niceScale(share ? 0.0 : low, share ? 100.0 : high, 4);
    m_low = scale.low;
    m_high = scale.high;
    m_ticks = scale.ticks;
    m_decimals = scale.decimals;
    for (const facade::AgeLine* line : {&comparison.own, &comparison.other}) {
        for (const auto& [age, value] : line->points) {
            const QPointF at(x(age), scale.y(value, m_plot.top(), m_plot.bottom()));
            const QString number = wording::numberText(value, comparison.decimals);
            m_points.push_back({at, words("%1, %2: %3 %4")
                                        .arg(line->name, wording::ageText(static_cast<int>(std::floor(age))), number,
                                             comparison.unitLabel)
                                        .trimmed()});
        }
    }
}

double AgeChart::x(double age) const
{
    return m_plot.left() + (age - m_from) / (m_to - m_from) * m_plot.width();
}

QColor AgeChart::hue() const
{
    return m_made.key.startsWith(QStringLiteral("cover:")) ? m_theme[Token::Ink]
                                                           : m_theme.tokens().parameter(m_made.key);
}

void AgeChart::paint(QPainter& painter) const
{
    painter.save();
    paintGrid(painter);
    painter.save();
    painter.setClipRect(m_plot.adjusted(-5, -6, 5, 6), Qt::IntersectClip);
    paintLine(painter, m_made.other, m_made.own.points.size(), false);
    paintLine(painter, m_made.own, 0, true);
    painter.restore();
    paintNames(painter);
    paintDay(painter);
    painter.restore();
}

void AgeChart::paintGrid(QPainter& painter) const
{
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(m_metrics.tick);
    for (const double tick : m_ticks) {
        const double y = std::round(m_plot.bottom() - (tick - m_low) / (m_high - m_low) * m_plot.height());
        painter.setPen(QPen(m_theme[Token::Rule], 1));
        painter.drawLine(QPointF(m_plot.left(), y), QPointF(m_plot.right(), y));
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(
            painter,
            QRectF(m_plot.left() - m_metrics.px(34), y - m_metrics.tickLine / 2, m_metrics.px(28), m_metrics.tickLine),
            Qt::AlignVCenter | Qt::AlignRight, wording::numberText(tick, m_decimals));
    }
    painter.setPen(QPen(m_theme[Token::Ink2], 1));
    painter.drawLine(m_plot.bottomLeft(), m_plot.bottomRight());
    painter.setFont(m_metrics.small);
    const double room = figuresWidth(m_metrics.small, wording::ageText(888)) + m_metrics.px(16);
    const double step = std::max(1.0, std::ceil((m_to - m_from) * room / m_plot.width() / 7.0)) * 7.0;
    painter.setPen(m_theme[Token::Ink2]);
    for (double age = 0.0; age <= m_to; age += step) {
        const QString text = wording::ageText(static_cast<int>(age));
        const double width = figuresWidth(m_metrics.small, text);
        const double left =
            std::clamp(x(age) - width / 2, m_plot.left(), std::max(m_plot.left(), m_plot.right() - width));
        drawFigures(painter, QRectF(left, m_plot.bottom() + m_metrics.px(4), width, m_metrics.smallLine),
                    Qt::AlignVCenter, text);
    }
}

void AgeChart::paintLine(QPainter& painter, const facade::AgeLine& line, std::size_t first, bool own) const
{
    QPolygonF points;
    for (std::size_t i = 0; i < line.points.size(); ++i) {
        points << m_points[first + i].at;
    }
    const QColor ink = own ? hue() : m_theme[Token::Ink2];
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(ink, own ? 2.2 : 1.3, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (!own) {
        pen.setDashPattern({5, 3});
    }
    painter.setPen(pen);
    painter.drawPolyline(points);
    const Mark mark = m_made.key.startsWith(QStringLiteral("cover:")) ? Mark::Diamond : Tokens::mark(m_made.key);
    double drawn = -1e9;
    for (const QPointF& at : points) {
        if (at.x() - drawn >= m_metrics.px(4)) {
            drawMark(painter, mark, at, m_metrics.px(7), ink, m_theme[Token::Panel], !own);
            drawn = at.x();
        }
    }
}

void AgeChart::paintNames(QPainter& painter) const
{
    std::vector<NamedLine> lines;
    std::size_t first = 0;
    for (const facade::AgeLine* line : {&m_made.own, &m_made.other}) {
        NamedLine named;
        for (std::size_t i = 0; i < line->points.size(); ++i) {
            const QPointF at = m_points[first + i].at;
            if (at.x() <= m_plot.right()) {
                named.points.push_back(at);
            }
        }
        first += line->points.size();
        named.text = QSizeF(figuresWidth(m_metrics.smallStrong, line->name), m_metrics.smallLine);
        lines.push_back(std::move(named));
    }
    const auto places = placeLineLabels(lines, m_plot, m_metrics.px(3));
    painter.setFont(m_metrics.smallStrong);
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (places[i]) {
            painter.setPen(m_theme[i == 0 ? Token::Ink : Token::Ink2]);
            drawFigures(painter, *places[i], Qt::AlignCenter, i == 0 ? m_made.own.name : m_made.other.name);
        }
    }
}

void AgeChart::paintDay(QPainter& painter) const
{
    const double at = std::round(x(m_made.nowAge));
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(at - 1, m_plot.top(), 2, m_plot.height()), m_theme[Token::Ink]);
    const QString text = wording::ageText(static_cast<int>(std::floor(m_made.nowAge)));
    const double width = figuresWidth(m_metrics.smallStrong, text);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(m_theme[Token::Ink]);
    drawFigures(painter,
                QRectF(std::min(at - width / 2, m_plot.right() - width), m_plot.top() - m_metrics.smallLine - 1, width,
                       m_metrics.smallLine),
                Qt::AlignVCenter, text);
}

} // namespace littoral::ui
