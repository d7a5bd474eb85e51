// SPDX-License-Identifier: GPL-3.0-or-later
// Event rows: what was done and seen, on the axis of the charts.
#include "ui/paint/glyphs.h"
#include "ui/paint/trend_painter.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

using Stretch = std::pair<double, double>;

/// The free place of `width` furthest to the right; the right end when there is none.
double freePlace(std::vector<Stretch> taken, double left, double right, double width)
{
    std::ranges::sort(taken);
    double best = -1.0;
    double from = left;
    taken.emplace_back(right, right);
    for (const Stretch& one : taken) {
        if (one.first - from >= width) {
            best = one.first - width;
        }
        from = std::max(from, one.second);
    }
    return best < 0.0 ? right - width : best;
}

} // namespace

void TrendPainter::paintEvents(QPainter& painter) const
{
    if (m_layout.events.empty()) {
        return;
    }
    const bool age = m_layout.columns.front().axis.mode == AxisMode::Age;
    const bool several = m_model.tanks.size() > 1;
    painter.setFont(m_metrics.strong);
    painter.setPen(m_theme[Token::Ink]);
    const QString title = age && several ? QCoreApplication::translate("TrendPainter", "Events at the same age")
                                         : QCoreApplication::translate("TrendPainter", "Events");
    drawFigures(painter, m_layout.eventTitle, Qt::AlignVCenter | Qt::AlignLeft, title);
    const double after = figuresWidth(m_metrics.strong, title) + m_metrics.px(10);
    const QString note =
        QCoreApplication::translate("TrendPainter", "bar height: share of water changed; hollow: planned");
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    if (figuresWidth(m_metrics.small, note) + after < m_layout.eventTitle.width()) {
        drawFigures(painter, m_layout.eventTitle.adjusted(after, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, note);
    }
    for (const TrendEventRow& row : m_layout.events) {
        paintEventRow(painter, row);
    }
}

void TrendPainter::paintEventRow(QPainter& painter, const TrendEventRow& row) const
{
    const facade::TrendTank& tank = m_model.tanks[row.tank];
    const AxisView& axis = m_layout.columns[row.column].axis;
    const double side = m_metrics.px(14);
    const double base = std::round(row.row.bottom()) - 2;
    // Far out, bars of neighbouring days stay apart.
    const double barWidth = std::round(std::clamp(axis.pxPerDay() * 0.6, 2.0, std::max(4.0, m_metrics.px(6))));
    std::vector<Stretch> taken;
    double drawnTo = -1e9;
    painter.save();
    painter.setClipRect(row.row.adjusted(-side / 2, -2, side / 2, 2), Qt::IntersectClip);
    for (const facade::LaneEvent& event : tank.events) {
        const double at = std::round(axis.x(event.at, tank.flooded));
        if (at < axis.left - side / 2 || at > axis.right() + side / 2) {
            continue;
        }
        if (event.glyph == facade::Glyph::WaterChange) {
            const double full = row.row.height() - side - m_metrics.px(4);
            const double height = std::max(3.0, std::round(full * std::clamp(event.fraction.value_or(0.3), 0.0, 1.0)));
            const QRectF bar(at - std::round(barWidth / 2), base - height, barWidth, height);
            painter.setRenderHint(QPainter::Antialiasing, false);
            painter.fillRect(bar, m_theme[Token::WaterSurface]);
            if (event.planned && barWidth > 3.0) {
                painter.fillRect(bar.adjusted(1, 1, -1, -1), m_theme[Token::Panel]);
            }
            taken.emplace_back(bar.left() - 2, bar.right() + 2);
            continue;
        }
        const QRectF box(at - side / 2, row.row.top() + m_metrics.px(1), side, side);
        const QColor ink = event.serious ? m_theme[Token::Act] : m_theme[Token::Ink2];
        if (box.left() < drawnTo + 1) {
            // No room for its picture: a tick says that there is something.
            painter.fillRect(QRectF(at, base - 5, 1, 5), ink);
            continue;
        }
        painter.setRenderHint(QPainter::Antialiasing);
        drawGlyph(painter, event.glyph, box, ink, event.fraction.value_or(0.4));
        drawnTo = box.right();
        taken.emplace_back(box.left() - 2, box.right() + 2);
    }
    painter.restore();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    painter.drawLine(QPointF(row.row.left(), base + 1), QPointF(row.row.right(), base + 1));
    if (m_model.tanks.size() < 2 || m_layout.columns.size() > 1) {
        return;
    }
    const double width = figuresWidth(m_metrics.smallStrong, tank.shortName) + m_metrics.px(6);
    const double left = freePlace(std::move(taken), row.row.left(), row.row.right(), width);
    const QRectF name(left, row.row.top() + (row.row.height() - m_metrics.smallLine) / 2, width, m_metrics.smallLine);
    QColor ground = m_theme[Token::Panel];
    ground.setAlphaF(0.8F);
    painter.fillRect(name, ground);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(m_theme[Token::Ink]);
    drawFigures(painter, name, Qt::AlignVCenter | Qt::AlignRight, tank.shortName);
}

} // namespace littoral::ui
