// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/fan_painter.h"

#include "core/wording/numbers.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr int kLeft = Qt::AlignVCenter | Qt::AlignLeft;
constexpr int kRight = Qt::AlignVCenter | Qt::AlignRight;

QString words(const char* text)
{
    return QCoreApplication::translate("FanPainter", text);
}

double labelRoom(const LaneMetrics& metrics)
{
    return figuresWidth(metrics.small, QStringLiteral("Wed 30")) + metrics.px(18);
}

} // namespace

QString fanValueText(const FanSeries& series, int decimals, qint64 at)
{
    const auto number = [&](double value) { return wording::numberText(value, decimals); };
    const LaneBand* ahead = bandAt(series.preview.empty() ? series.future : series.preview, at);
    if (ahead != nullptr) {
        return words("%1 (%2–%3)").arg(number(ahead->q50), number(ahead->q10), number(ahead->q90));
    }
    const LaneBand* past = bandAt(series.fitted, at);
    return past == nullptr ? QString() : number(past->q50);
}

QColor FanPainter::ground(double atX) const
{
    return m_theme[atX > m_layout.nowX ? Token::Future : Token::Panel];
}

QPolygonF FanPainter::line(const std::vector<LaneBand>& bands, double LaneBand::*value, const FanBox& box) const
{
    QPolygonF points;
    points.reserve(static_cast<qsizetype>(bands.size()));
    for (const LaneBand& band : bands) {
        points << QPointF(x(band.at), box.y(band.*value));
    }
    return points;
}

void FanPainter::paint(QPainter& painter, const TimeAxis& axis) const
{
    painter.save();
    std::vector<double> grid;
    for (const AxisTick& tick : axis.ticks(m_layout.axis.width, labelRoom(m_metrics)).lower) {
        const double at = m_layout.axis.x(tick.at, 0);
        if (at > m_layout.axis.left && at < m_layout.axis.right()) {
            grid.push_back(std::round(at));
        }
    }
    paintGrounds(painter, grid);
    for (std::size_t i = 0; i < m_model.panels.size(); ++i) {
        paintPanel(painter, m_model.panels[i], m_layout.panels[i]);
    }
    paintChanges(painter);
    paintAxis(painter, axis);
    paintNow(painter, axis);
    for (std::size_t i = 0; i < m_model.panels.size(); ++i) {
        paintTitle(painter, m_model.panels[i], m_layout.panels[i], {});
    }
    paintNotes(painter);
    painter.restore();
}

void FanPainter::paintGrounds(QPainter& painter, const std::vector<double>& grid) const
{
    const double top = m_layout.flagHeight;
    const double bottom = m_layout.changeRow.bottom();
    const double left = m_layout.axis.left;
    const double right = m_layout.axis.right();
    const double now = std::clamp(m_layout.nowX, left, right);
    painter.fillRect(QRectF(now, top, right - now, bottom - top), m_theme[Token::Future]);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    for (const FanBox& box : m_layout.panels) {
        for (const double at : grid) {
            painter.drawLine(QPointF(at, box.plot.top()), QPointF(at, box.plot.bottom()));
        }
        for (const FanTick& tick : box.ticks) {
            const double y = std::round(tick.y);
            painter.drawLine(QPointF(left, y), QPointF(right, y));
        }
    }
    // Before the flooding there was no water to speak of.
    if (m_layout.floodedX > left + 1.0) {
        painter.fillRect(QRectF(left, top, std::min(m_layout.floodedX, right) - left, bottom - top),
                         QBrush(m_theme[Token::Rule], Qt::BDiagPattern));
    }
}

void FanPainter::paintTitle(QPainter& painter, const FanPanel& panel, const FanBox& box, const QString& right) const
{
    const double mark = m_metrics.px(kMarkSize);
    double at = box.title.left();
    const bool single = panel.series.size() < 2;
    if (single) {
        drawParameterMark(painter, m_theme, panel.parameter, {at + mark, box.title.center().y()}, mark,
                          ground(at + mark));
        at += mark + m_metrics.px(10);
    }
    painter.setFont(m_metrics.strong);
    painter.setPen(m_theme[Token::Ink]);
    const double title = figuresWidth(m_metrics.strong, panel.title);
    drawFigures(painter, QRectF(at, box.title.top(), title, box.title.height()), kLeft, panel.title);
    at += title + m_metrics.px(10);
    const double value = right.isEmpty() ? 0.0 : figuresWidth(m_metrics.strong, right) + m_metrics.px(10);
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    const double room = box.title.right() - at - value;
    const QString unit = elidedFigures(m_metrics.small, panel.unit, room);
    const QRectF place(at, box.title.top(), figuresWidth(m_metrics.small, unit), box.title.height());
    if (place.left() - 2 < m_layout.nowX && m_layout.nowX < place.right() + 2) {
        // The now line stops for words, so that both can be read.
        painter.fillRect(place.adjusted(-2, 1, 2, -1), m_theme[Token::Panel]);
    }
    drawFigures(painter, place, kLeft, unit);
}

void FanPainter::paintChanges(QPainter& painter) const
{
    const QRectF& row = m_layout.changeRow;
    painter.setFont(m_metrics.strong);
    painter.setPen(m_theme[Token::Ink]);
    const QString title = words("Water changes");
    drawFigures(painter, m_layout.changeTitle, kLeft, title);
    const double after = figuresWidth(m_metrics.strong, title) + m_metrics.px(10);
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    drawFigures(painter, m_layout.changeTitle.adjusted(after, 0, 0, 0), kLeft, words("percent; hollow: planned"));

    painter.save();
    painter.setClipRect(row.adjusted(0, -2, 0, 2), Qt::IntersectClip);
    painter.setFont(m_metrics.tick);
    const double width = std::max(4.0, m_metrics.px(6));
    const bool looked = !m_model.previewText.isEmpty();
    std::vector<FanChange> shown;
    for (const FanChange& change : m_model.changes) {
        if (!change.planned || !looked) {
            shown.push_back(change);
        }
    }
    if (looked) {
        shown.insert(shown.end(), m_model.previewChanges.begin(), m_model.previewChanges.end());
    }
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const FanChange& change = shown[i];
        const double at = std::round(x(change.at));
        const double full = row.height() - m_metrics.px(4);
        const double height = std::max(3.0, std::round(full * std::clamp(change.fraction, 0.0, 1.0)));
        const QRectF bar(at - std::round(width / 2), std::round(row.bottom() - 1 - height), width, height);
        painter.setRenderHint(QPainter::Antialiasing, false);
        if (change.planned) {
            painter.fillRect(bar, m_theme[Token::WaterSurface]);
            painter.fillRect(bar.adjusted(1, 1, -1, -1), ground(at));
        } else {
            painter.fillRect(bar, m_theme[Token::WaterSurface]);
        }
        const QString digits = QString::number(std::lround(change.fraction * 100.0));
        const double text = figuresWidth(m_metrics.tick, digits) + m_metrics.px(3);
        const double next = i + 1 < shown.size() ? x(shown[i + 1].at) - width : row.right();
        if (bar.right() + text <= next) {
            painter.setPen(m_theme[Token::Ink2]);
            drawFigures(
                painter,
                QRectF(bar.right() + m_metrics.px(2), row.bottom() - m_metrics.tickLine, text, m_metrics.tickLine),
                kLeft, digits);
        }
    }
    painter.restore();
}

void FanPainter::paintAxis(QPainter& painter, const TimeAxis& axis) const
{
    const QRectF& row = m_layout.axisRow;
    const double right = m_layout.axis.right();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Ink2], 1));
    painter.drawLine(QPointF(row.left(), row.top()), QPointF(right, row.top()));
    const AxisTicks ticks = axis.ticks(m_layout.axis.width, labelRoom(m_metrics));
    for (const AxisTick& tick : ticks.minor) {
        const double at = std::round(m_layout.axis.x(tick.at, 0));
        if (at >= row.left() && at <= right) {
            painter.drawLine(QPointF(at, row.top()), QPointF(at, row.top() + m_metrics.px(4)));
        }
    }
    // Both readings of the same instant: the mode in force above, the other one under it.
    const bool age = m_layout.axis.mode == AxisMode::Age;
    const auto dayOf = [&](qint64 at) { return QDateTime::fromMSecsSinceEpoch(at, m_layout.axis.zone).date(); };
    const QDate today = dayOf(m_layout.axis.now);
    painter.setFont(m_metrics.small);
    double freeFrom = row.left();
    const double line = m_metrics.smallLine;
    for (const AxisTick& tick : ticks.lower) {
        const double at = std::round(m_layout.axis.x(tick.at, 0));
        if (at < row.left() || at > right) {
            continue;
        }
        painter.setPen(QPen(m_theme[Token::Ink2], 1));
        painter.drawLine(QPointF(at, row.top()), QPointF(at, row.top() + m_metrics.px(6)));
        const qint64 instant = age ? tick.at + m_model.flooded : tick.at;
        const QString date = wording::dateText(dayOf(instant), today);
        const qint64 days = dayOf(m_model.flooded).daysTo(dayOf(instant));
        const QString aged = days == 0 ? words("flooded") : words("day %1").arg(days);
        const QString first = age ? aged : date;
        const QString second = age ? date : aged;
        const double width = std::max(figuresWidth(m_metrics.small, first), figuresWidth(m_metrics.small, second));
        const double left = std::clamp(at - width / 2, row.left(), std::max(row.left(), right - width));
        if (left < freeFrom) {
            continue;
        }
        freeFrom = left + width + m_metrics.px(8);
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, QRectF(left, row.top() + m_metrics.px(6), width, line), Qt::AlignCenter, first);
        painter.setPen(m_theme[Token::Ink3]);
        if (days >= 0) {
            drawFigures(painter, QRectF(left, row.top() + m_metrics.px(6) + line, width, line), Qt::AlignCenter,
                        second);
        }
    }
}

void FanPainter::paintNow(QPainter& painter, const TimeAxis& axis) const
{
    const double at = std::round(m_layout.nowX);
    if (at < m_layout.axis.left || at > m_layout.axis.right()) {
        return;
    }
    const bool age = m_layout.axis.mode == AxisMode::Age;
    const QDateTime time = QDateTime::fromMSecsSinceEpoch(axis.now(), axis.zone());
    const QString text = age ? words("day %1").arg(m_layout.axis.ageInDays(m_model.flooded))
                             : wording::dateText(time.date(), time.date());
    const double width = figuresWidth(m_metrics.smallStrong, text) + m_metrics.px(18);
    QRectF flag(at - width / 2, m_metrics.px(3), width, m_layout.flagHeight - m_metrics.px(4));
    flag.moveLeft(std::clamp(flag.left(), m_layout.axis.left, m_layout.axis.right() - width));
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(at - 1, flag.bottom(), 2, m_layout.changeRow.bottom() - flag.bottom()),
                     m_theme[Token::Ink]);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme[Token::Ink]);
    painter.drawRoundedRect(flag, 2, 2);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(m_theme[Token::Panel]);
    drawFigures(painter, flag, Qt::AlignCenter, text);
}

void FanPainter::paintNotes(QPainter& painter) const
{
    const double now = std::clamp(m_layout.nowX, m_layout.axis.left, m_layout.axis.right());
    const double gap = m_metrics.px(8);
    const double flagWidth = m_metrics.px(60);
    const double top = m_metrics.px(3);
    const double height = m_layout.flagHeight - m_metrics.px(4);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    const QRectF before(m_layout.axis.left, top, now - m_layout.axis.left - flagWidth / 2 - gap, height);
    const QString bars = words("bars: half a kit step either side");
    if (figuresWidth(m_metrics.small, bars) <= before.width()) {
        drawFigures(painter, before, kRight, bars);
    }
    const QRectF after(now + flagWidth / 2 + gap, top, m_layout.axis.right() - now - flagWidth / 2 - gap, height);
    QString text = words("bands: 8 in 10, 5 in 10; dashes: middle");
    QString strong;
    if (!m_model.previewText.isEmpty()) {
        strong = m_model.previewQuick ? words("quick: %1").arg(m_model.previewText)
                                      : words("looked at: %1").arg(m_model.previewText);
        text = m_model.previewQuick ? words("few members, the full answer follows") : words("paler: as planned now");
    } else if (!m_model.note.isEmpty()) {
        strong = m_model.note;
        text.clear();
    }
    const double width = strong.isEmpty() ? 0.0 : figuresWidth(m_metrics.smallStrong, strong) + gap;
    if (!strong.isEmpty()) {
        painter.setFont(m_metrics.smallStrong);
        painter.setPen(m_theme[Token::Accent]);
        drawFigures(painter, after, kLeft, elidedFigures(m_metrics.smallStrong, strong, after.width()));
    }
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    if (width + figuresWidth(m_metrics.small, text) <= after.width()) {
        drawFigures(painter, after.adjusted(width, 0, 0, 0), kLeft, text);
    }
}

void FanPainter::paintCursor(QPainter& painter, qint64 at) const
{
    const double cursor = std::round(x(at));
    if (cursor < m_layout.axis.left || cursor > m_layout.axis.right()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    QPen pen(m_theme[Token::Accent], 1);
    pen.setDashPattern({2, 2});
    painter.setPen(pen);
    painter.drawLine(QPointF(cursor, m_layout.flagHeight), QPointF(cursor, m_layout.changeRow.bottom()));
    const QDateTime time = QDateTime::fromMSecsSinceEpoch(at, m_layout.axis.zone);
    const QDate today = QDateTime::fromMSecsSinceEpoch(m_layout.axis.now, m_layout.axis.zone).date();
    const QString day = wording::dateText(time.date(), today);
    painter.setFont(m_metrics.smallStrong);
    for (std::size_t i = 0; i < m_model.panels.size(); ++i) {
        const FanPanel& panel = m_model.panels[i];
        QStringList values;
        for (const FanSeries& series : panel.series) {
            const QString value = fanValueText(series, panel.decimals, at);
            if (!value.isEmpty()) {
                values << value;
            }
        }
        if (values.isEmpty()) {
            continue;
        }
        const QString text = words("%1: %2").arg(day, values.join(QStringLiteral("; ")));
        const QRectF& title = m_layout.panels[i].title;
        const double width = figuresWidth(m_metrics.smallStrong, text) + m_metrics.px(8);
        const QRectF box(title.right() - width, title.top() + 1, width, title.height() - 2);
        painter.fillRect(box, m_theme[Token::Selection]);
        painter.setPen(m_theme[Token::Ink]);
        drawFigures(painter, box, Qt::AlignCenter, text);
    }
    painter.restore();
}

} // namespace littoral::ui
