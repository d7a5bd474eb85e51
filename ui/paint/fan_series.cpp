// SPDX-License-Identifier: GPL-3.0-or-later
// What a fan chart shows of values: ranges, fitted past, readings, limits and the bracket.
#include "ui/paint/faded.h"
#include "ui/paint/fan_painter.h"
#include "ui/paint/glyphs.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr int kLeft = Qt::AlignVCenter | Qt::AlignLeft;
constexpr int kRight = Qt::AlignVCenter | Qt::AlignRight;
// How strongly the followed plan's fan is drawn while another plan is looked at.
constexpr double kBehindPreview = 0.45;

} // namespace

void FanPainter::paintPanel(QPainter& painter, const FanPanel& panel, const FanBox& box) const
{
    painter.setFont(m_metrics.tick);
    painter.setPen(m_theme[Token::Ink3]);
    for (const FanTick& tick : box.ticks) {
        drawFigures(painter,
                    QRectF(0, tick.y - m_metrics.tickLine / 2, box.plot.left() - m_metrics.px(7), m_metrics.tickLine),
                    kRight, tick.text);
    }
    painter.save();
    painter.setClipRect(box.plot.adjusted(0, -m_metrics.px(5), 0, m_metrics.px(5)), Qt::IntersectClip);
    if (panel.bracket) {
        paintBracket(painter, *panel.bracket, box);
    }
    for (const FanSeries& series : panel.series) {
        const bool looked = !series.preview.empty();
        paintFan(painter, series, box, series.future, looked ? kBehindPreview : 1.0);
        if (looked) {
            paintFan(painter, series, box, series.preview, 1.0);
        }
        paintFitted(painter, series, box, panel.readings.empty());
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Rule2], 1));
    const double base = std::round(box.plot.bottom());
    painter.drawLine(QPointF(box.plot.left(), base), QPointF(box.plot.right(), base));
    paintReference(painter, panel, box);
    paintReadings(painter, panel, box);
    paintLimits(painter, panel, box);
    paintSeriesLabels(painter, panel, box);
    painter.restore();
}

void FanPainter::paintBracket(QPainter& painter, const FanBracket& bracket, const FanBox& box) const
{
    const double from = std::max(x(bracket.from), box.plot.left());
    const double to = std::min(x(bracket.to), box.plot.right());
    if (to <= from) {
        return;
    }
    const QColor ok = m_theme[Token::Ok];
    const double top = std::round(box.plot.top()) + m_metrics.px(1);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(from, top, to - from, box.plot.bottom() - top), m_theme[Token::OkTint]);
    const double drop = m_metrics.px(7);
    painter.fillRect(QRectF(from, top, to - from, 2), ok);
    painter.fillRect(QRectF(from, top, 2, drop), ok);
    painter.fillRect(QRectF(to - 2, top, 2, drop), ok);
    const double side = m_metrics.px(12);
    const double text = figuresWidth(m_metrics.smallStrong, bracket.text);
    const double whole = side + m_metrics.px(5) + text;
    // Inside when it fits, else where there is room beside it.
    double at = from + m_metrics.px(6);
    if (whole + m_metrics.px(10) > to - from) {
        at = to + m_metrics.px(6) + whole <= box.plot.right() ? to + m_metrics.px(6) : from - whole - m_metrics.px(6);
    }
    const QRectF row(at + side + m_metrics.px(5), top + m_metrics.px(6), text, m_metrics.smallLine);
    painter.setRenderHint(QPainter::Antialiasing);
    drawStatus(painter, facade::Status::Ok, QRectF(at, row.center().y() - side / 2, side, side), ok,
               m_theme[Token::OkTint]);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(ok);
    drawFigures(painter, row, kLeft, bracket.text);
}

void FanPainter::paintLimits(QPainter& painter, const FanPanel& panel, const FanBox& box) const
{
    for (const FanLimit& limit : panel.limits) {
        const double y = std::round(box.y(limit.value));
        painter.setRenderHint(QPainter::Antialiasing, false);
        QPen pen(m_theme[Token::Ink2], 1);
        pen.setDashPattern({5, 3});
        painter.setPen(pen);
        painter.drawLine(QPointF(box.plot.left(), y), QPointF(box.plot.right(), y));
        const double width = figuresWidth(m_metrics.small, limit.label) + m_metrics.px(4);
        QRectF label(box.plot.right() - width, y - m_metrics.smallLine - 1, width, m_metrics.smallLine);
        if (label.top() < box.plot.top() - m_metrics.px(4)) {
            label.moveTop(y + 2);
        }
        painter.fillRect(label, faded(ground(label.center().x()), 0.82));
        painter.setFont(m_metrics.small);
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, label, kRight, limit.label);
    }
}

void FanPainter::paintFan(QPainter& painter, const FanSeries& series, const FanBox& box,
                          const std::vector<LaneBand>& bands, double strength) const
{
    if (bands.size() < 2) {
        return;
    }
    const QColor hue = m_theme.tokens().parameter(series.parameter);
    const bool dark = m_theme.tokens().scheme() != Scheme::Light;
    const auto fill = [&](double LaneBand::*low, double LaneBand::*high, double opacity) {
        QPolygonF area = line(bands, high, box);
        const QPolygonF under = line(bands, low, box);
        std::copy(under.crbegin(), under.crend(), std::back_inserter(area));
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(Qt::NoPen);
        painter.setBrush(faded(hue, opacity * strength));
        painter.drawPolygon(area);
    };
    fill(&LaneBand::q10, &LaneBand::q90, dark ? 0.19 : 0.17);
    fill(&LaneBand::q25, &LaneBand::q75, dark ? 0.30 : 0.26);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(faded(hue, 0.45 * strength), 0.8));
    painter.drawPolyline(line(bands, &LaneBand::q10, box));
    painter.drawPolyline(line(bands, &LaneBand::q90, box));
    QPen median(faded(hue, strength), 1.5);
    median.setDashPattern({4, 3});
    median.setCapStyle(Qt::FlatCap);
    painter.setPen(median);
    painter.drawPolyline(line(bands, &LaneBand::q50, box));
}

void FanPainter::paintFitted(QPainter& painter, const FanSeries& series, const FanBox& box, bool strong) const
{
    if (series.fitted.size() < 2) {
        return;
    }
    const QColor hue = m_theme.tokens().parameter(series.parameter);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(strong ? hue : faded(hue, 0.75), strong ? 1.6 : 1.1));
    painter.drawPolyline(line(series.fitted, &LaneBand::q50, box));
}

void FanPainter::paintSeriesLabels(QPainter& painter, const FanPanel& panel, const FanBox& box) const
{
    painter.setFont(m_metrics.smallStrong);
    for (std::size_t i = 0; i < panel.series.size(); ++i) {
        const FanSeries& series = panel.series[i];
        const auto& bands = series.future.empty() ? series.fitted : series.future;
        if (series.label.isEmpty() || bands.empty()) {
            continue;
        }
        // On the line, two thirds into the forecast: the upper line's name above it, the lower line's below.
        const LaneBand& at = bands[bands.size() * 3 / 5];
        const double middle = box.y(at.q50);
        const double level = bands[bands.size() * 3 / 5].q50;
        const bool upper = std::ranges::all_of(panel.series, [&](const FanSeries& other) {
            const auto& theirs = other.future.empty() ? other.fitted : other.future;
            return &other == &series || theirs.empty() || theirs[theirs.size() * 3 / 5].q50 <= level;
        });
        const double width = figuresWidth(m_metrics.smallStrong, series.label);
        const double mark = m_metrics.px(kMarkSize);
        const double gap = m_metrics.px(4);
        double top = upper ? box.y(at.q90) - m_metrics.smallLine - gap : box.y(at.q10) + gap;
        if (top < box.plot.top() - m_metrics.px(3)) {
            top = middle + gap;
        }
        top = std::min(top, box.plot.bottom() - m_metrics.smallLine - 1);
        const double left = std::clamp(x(at.at) - width / 2, box.plot.left(), box.plot.right() - width - mark - gap);
        const QRectF row(left + mark + gap, top, width, m_metrics.smallLine);
        painter.fillRect(row.adjusted(-mark - gap, 0, 2, 0), faded(ground(row.center().x()), 0.75));
        drawParameterMark(painter, m_theme, series.parameter, {left + mark / 2, row.center().y()}, mark,
                          ground(row.center().x()));
        painter.setPen(m_theme[Token::Ink]);
        drawFigures(painter, row, kLeft, series.label);
    }
}

void FanPainter::paintReadings(QPainter& painter, const FanPanel& panel, const FanBox& box) const
{
    const QColor hue = m_theme.tokens().parameter(panel.parameter);
    const Mark mark = Tokens::mark(panel.parameter);
    const double size = m_metrics.px(kMarkSize);
    double drawnAt = -1e9;
    for (const FanReading& reading : panel.readings) {
        const QPointF at(x(reading.at), box.y(reading.value));
        if (at.x() < box.plot.left() - size || at.x() > box.plot.right() + size) {
            continue;
        }
        painter.setRenderHint(QPainter::Antialiasing);
        if (reading.high > reading.low) {
            painter.setPen(QPen(hue, std::max(1.2, m_metrics.px(1.2))));
            painter.drawLine(QPointF(at.x(), box.y(reading.low)), QPointF(at.x(), box.y(reading.high)));
        }
        // Marks closer than a third of themselves add ink, not news.
        if (at.x() - drawnAt < size / 3 && !reading.atOdds) {
            continue;
        }
        drawnAt = at.x();
        const bool outside =
            reading.censoring == record::Censoring::Below || reading.censoring == record::Censoring::Above;
        if (outside) {
            drawCensoredMark(painter, mark, at, size, hue, ground(at.x()),
                             reading.censoring == record::Censoring::Below);
        } else {
            drawMark(painter, mark, at, size, hue, ground(at.x()));
        }
        if (reading.atOdds) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(m_theme[Token::Act], 1.6));
            painter.drawEllipse(at, size, size);
        }
    }
}

void FanPainter::paintReference(QPainter& painter, const FanPanel& panel, const FanBox& box) const
{
    if (panel.reference.empty()) {
        return;
    }
    const QColor hue = m_theme.tokens().parameter(panel.parameter);
    QPolygonF points;
    for (const FanReading& reading : panel.reference) {
        points << QPointF(x(reading.at), box.y(reading.value));
    }
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(hue, 1.2);
    pen.setDashPattern({5, 3});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(points);
    for (const QPointF& at : points) {
        drawMark(painter, Tokens::mark(panel.parameter), at, m_metrics.px(kMarkSize - 1), hue, ground(at.x()), true);
    }
}

} // namespace littoral::ui
