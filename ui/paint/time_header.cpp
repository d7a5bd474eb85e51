// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/time_header.h"

#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr int kLeft = Qt::AlignVCenter | Qt::AlignLeft;

QString tr(const char* text)
{
    return QCoreApplication::translate("TimeHeader", text);
}

/// "Wed 25 Nov, 07:40"
QString nowText(qint64 now, const QTimeZone& zone)
{
    const QDateTime time = QDateTime::fromMSecsSinceEpoch(now, zone);
    return QLocale().toString(time, tr("ddd d MMM, HH:mm"));
}

} // namespace

double TimeHeader::height() const
{
    return std::ceil(m_metrics.bodyLine * 2 + m_metrics.px(12));
}

double TimeHeader::labelRoom() const
{
    return figuresWidth(m_metrics.small, QStringLiteral("Wed 30")) + m_metrics.px(18);
}

std::vector<double> TimeHeader::gridLines(const TimeAxis& axis, const AxisView& view) const
{
    std::vector<double> lines;
    for (const AxisTick& tick : axis.ticks(view.width, labelRoom()).lower) {
        lines.push_back(view.x(tick.at, 0));
    }
    return lines;
}

void TimeHeader::paint(QPainter& painter, const TimeAxis& axis, const AxisView& view, double width) const
{
    const double whole = height();
    const double upperTop = m_metrics.px(4);
    const double lowerTop = whole - m_metrics.bodyLine - m_metrics.px(5);
    painter.save();
    painter.fillRect(QRectF(0, 0, width, whole), m_theme[Token::Sunk]);
    painter.setFont(m_metrics.small);
    const double indent = m_metrics.px(14);
    const bool age = view.mode == AxisMode::Age;
    painter.setPen(m_theme[Token::Ink3]);
    drawFigures(painter, QRectF(indent, upperTop, view.left - indent, m_metrics.bodyLine), kLeft,
                elidedFigures(m_metrics.small, tr("One axis for all tanks"), view.left - indent * 1.5));
    painter.setPen(m_theme[Token::Ink2]);
    drawFigures(painter, QRectF(indent, lowerTop, view.left - indent, m_metrics.bodyLine), kLeft,
                elidedFigures(m_metrics.small, age ? tr("days since flooding") : tr("calendar dates"),
                              view.left - indent * 1.5));

    painter.setClipRect(QRectF(view.left, 0, view.width, whole));
    const QRectF flag = age ? QRectF() : paintNowFlag(painter, axis, view);
    const AxisTicks ticks = axis.ticks(view.width, labelRoom());
    painter.setPen(QPen(m_theme[Token::Rule2], 1));
    for (const AxisTick& tick : ticks.minor) {
        const double x = std::round(view.x(tick.at, 0));
        painter.drawLine(QPointF(x, whole - 5), QPointF(x, whole - 1));
    }
    painter.setFont(m_metrics.small);
    for (std::size_t i = 0; i < ticks.lower.size(); ++i) {
        const double x = std::round(view.x(ticks.lower[i].at, 0));
        painter.setPen(QPen(m_theme[Token::Rule2], 1));
        painter.drawLine(QPointF(x, lowerTop + 2), QPointF(x, whole - 1));
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, QRectF(x + m_metrics.px(4), lowerTop, view.width, m_metrics.bodyLine), kLeft,
                    ticks.lower[i].label);
    }
    painter.setFont(m_metrics.smallStrong);
    for (std::size_t i = 0; i < ticks.upper.size(); ++i) {
        const double from = std::round(view.x(ticks.upper[i].at, 0));
        const double to = i + 1 < ticks.upper.size() ? view.x(ticks.upper[i + 1].at, 0) : 1e9;
        const double text = figuresWidth(m_metrics.smallStrong, ticks.upper[i].label);
        // A span that began before the strip keeps its name at the edge for as long as it fits.
        const double x = age ? from + (std::min(to, from + 7 * view.pxPerDay()) - from - text) / 2
                             : std::max(from, view.left + 1) + m_metrics.px(6);
        const QRectF label(x, upperTop, text, m_metrics.bodyLine);
        if (label.intersects(flag)) {
            continue;
        }
        if (!age && from > view.left) {
            painter.setPen(QPen(m_theme[Token::Ink2], 1));
            painter.drawLine(QPointF(from, upperTop + 1), QPointF(from, lowerTop));
        }
        if (age || label.right() < to - m_metrics.px(4)) {
            painter.setPen(m_theme[Token::Ink]);
            drawFigures(painter, label, kLeft, ticks.upper[i].label);
        }
    }
    painter.setClipping(false);
    painter.fillRect(QRectF(view.left - 1, 0, 1, whole), m_theme[Token::Rule2]);
    painter.fillRect(QRectF(0, whole - 1, width, 1), m_theme[Token::Rule2]);
    painter.restore();
}

QRectF TimeHeader::paintNowFlag(QPainter& painter, const TimeAxis& axis, const AxisView& view) const
{
    const double x = std::round(view.x(axis.now(), 0));
    const QString text = nowText(axis.now(), axis.zone());
    const double width = std::ceil(figuresWidth(m_metrics.smallStrong, text) + m_metrics.px(18));
    const double height = m_metrics.bodyLine + m_metrics.px(3);
    if (x < view.left || x > view.right()) {
        return {};
    }
    QRectF flag(x - width / 2, m_metrics.px(2), width, height);
    flag.moveLeft(std::clamp(flag.left(), view.left + 2, std::max(view.left + 2, view.right() - width - 2)));
    painter.fillRect(QRectF(x - 1, flag.bottom(), 2, this->height() - flag.bottom()), m_theme[Token::Ink]);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme[Token::Ink]);
    painter.drawRoundedRect(flag, 2, 2);
    const double tip = m_metrics.px(4);
    painter.drawPolygon(
        QPolygonF{{x - tip, flag.bottom() - 0.5}, {x + tip, flag.bottom() - 0.5}, {x, flag.bottom() + tip}});
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(m_theme[Token::Panel]);
    drawFigures(painter, flag, Qt::AlignVCenter | Qt::AlignHCenter, text);

    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    const QString before = tr("← recorded");
    const QString after = tr("forecast →");
    const double gap = m_metrics.px(9);
    const double beforeWidth = figuresWidth(m_metrics.small, before);
    const double afterWidth = figuresWidth(m_metrics.small, after);
    QRectF taken = flag;
    const QRectF left(flag.left() - gap - beforeWidth, flag.top(), beforeWidth, height);
    if (left.left() > view.left + m_metrics.px(4)) {
        drawFigures(painter, left, kLeft, before);
        taken = taken.united(left);
    }
    const QRectF right(flag.right() + gap, flag.top(), afterWidth, height);
    if (right.right() < view.right() - m_metrics.px(4)) {
        drawFigures(painter, right, kLeft, after);
        taken = taken.united(right);
    }
    return taken.adjusted(-m_metrics.px(6), 0, m_metrics.px(6), 0);
}

} // namespace littoral::ui
