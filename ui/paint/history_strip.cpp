// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/history_strip.h"

#include "core/wording/numbers.h"
#include "ui/paint/faded.h"
#include "ui/paint/glyphs.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr double kPlot = 54.0;
constexpr double kTitle = 118.0;
constexpr double kTickRoom = 34.0;

QString words(const char* text)
{
    return QCoreApplication::translate("StripPainter", text);
}

double labelRoom(const LaneMetrics& metrics)
{
    return figuresWidth(metrics.small, QStringLiteral("00 Mmm 0000")) + metrics.px(12);
}

ValueScale scaleOf(const facade::LaneSeries& series, const AxisView& axis, qint64 flooded)
{
    double low = 1e300;
    double high = -1e300;
    for (const facade::LaneMark& mark : series.marks) {
        const double x = axis.x(mark.at, flooded);
        if (x >= axis.left && x <= axis.right()) {
            low = std::min(low, mark.value);
            high = std::max(high, mark.value);
        }
    }
    if (low > high) {
        low = 0.0;
        high = 1.0;
    }
    if (series.unitLabel == QStringLiteral("%")) {
        return niceScale(0.0, 100.0, 3);
    }
    const double room = std::max((high - low) * 0.15, 0.02 * std::abs(high));
    return niceScale(std::max(0.0, low - room), high + room, 3);
}

double glyphSide(const LaneMetrics& metrics)
{
    return metrics.px(14);
}

} // namespace

double stripHeight(const facade::CaseStrip& strip, const LaneMetrics& metrics)
{
    const double bracket = 2 * metrics.smallLine + metrics.px(10);
    const double panels = static_cast<double>(std::max<std::size_t>(1, strip.series.size())) * metrics.px(kPlot + 6);
    const double events = metrics.smallLine + metrics.px(8) + metrics.px(20);
    return std::ceil(metrics.px(6) + bracket + panels + events + metrics.smallLine + metrics.px(16));
}

StripLayout layOutStrip(const facade::CaseStrip& strip, const LaneMetrics& metrics, const AxisView& axis, double width)
{
    StripLayout made;
    made.axis = axis;
    const double title = std::min(metrics.px(kTitle), width * 0.22);
    made.axis.left = std::round(metrics.px(14) + title + metrics.px(kTickRoom));
    made.axis.width = std::max(40.0, width - made.axis.left - metrics.px(14));
    double y = metrics.px(6);
    made.bracketRow = QRectF(made.axis.left, y, made.axis.width, 2 * metrics.smallLine + metrics.px(10));
    y = made.bracketRow.bottom();
    made.plotsTop = y;
    for (std::size_t i = 0; i < strip.series.size(); ++i) {
        StripPanel panel;
        panel.series = i;
        panel.title = QRectF(metrics.px(14), y, title, metrics.px(kPlot));
        panel.plot = QRectF(made.axis.left, y + metrics.px(6), made.axis.width, metrics.px(kPlot - 8));
        panel.scale = scaleOf(strip.series[i].series, made.axis, strip.flooded);
        for (std::size_t k = 0; k < strip.series[i].series.marks.size(); ++k) {
            const facade::LaneMark& mark = strip.series[i].series.marks[k];
            const double x = made.axis.x(mark.at, strip.flooded);
            if (x >= made.axis.left - 1 && x <= made.axis.right() + 1) {
                const double side = metrics.px(10);
                const QPointF at(x, panel.scale.y(mark.value, panel.plot.top(), panel.plot.bottom()));
                made.parts.push_back(
                    {strip.series[i].refs[k], mark.sentence, QRectF(at.x() - side / 2, at.y() - side / 2, side, side)});
            }
        }
        made.panels.push_back(panel);
        y += metrics.px(kPlot + 6);
    }
    if (strip.series.empty()) {
        y += metrics.px(kPlot + 6);
    }
    made.eventTitle = QRectF(metrics.px(14), y, title, metrics.smallLine + metrics.px(6));
    made.events =
        QRectF(made.axis.left, y, made.axis.width, std::max(glyphSide(metrics), metrics.smallLine) + metrics.px(4));
    y = made.events.bottom() + metrics.px(2);
    made.changes = QRectF(made.axis.left, y, made.axis.width, metrics.px(20));
    y = made.changes.bottom();
    made.plotsBottom = y;
    for (const facade::LaneEvent& event : strip.events) {
        const double x = made.axis.x(event.at, strip.flooded);
        if (x < made.axis.left || x > made.axis.right()) {
            continue;
        }
        const bool change = event.glyph == facade::Glyph::WaterChange;
        const double side = glyphSide(metrics);
        const QRectF box = change ? QRectF(x - metrics.px(4), made.changes.top(), metrics.px(8), made.changes.height())
                                  : QRectF(x - side / 2, made.events.top() + metrics.px(1), side, side);
        made.parts.push_back({{event.entry, {}, event.at}, event.sentence, box});
    }
    std::ranges::stable_sort(made.parts, [](const StripPart& a, const StripPart& b) { return a.ref.at < b.ref.at; });
    made.axisRow = QRectF(made.axis.left, y, made.axis.width, metrics.smallLine + metrics.px(8));
    made.height = made.axisRow.bottom() + metrics.px(4);
    return made;
}

double StripPainter::inside(qint64 at) const
{
    return std::clamp(std::round(x(at)), m_layout.axis.left, m_layout.axis.right());
}

void StripPainter::paint(QPainter& painter, const TimeAxis& axis) const
{
    painter.save();
    paintGround(painter, axis);
    paintBracket(painter);
    for (const StripPanel& panel : m_layout.panels) {
        paintPanel(painter, panel);
    }
    if (m_layout.panels.empty()) {
        painter.setFont(m_metrics.body);
        painter.setPen(m_theme[Token::Ink3]);
        const QRectF room(m_layout.axis.left, m_layout.plotsTop, m_layout.axis.width, m_metrics.px(kPlot));
        painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap,
                         words("Readings of this layout are drawn here once there are some."));
    }
    paintEvents(painter);
    paintAxis(painter, axis);
    paintOnset(painter);
    paintNow(painter, axis);
    painter.restore();
}

void StripPainter::paintGround(QPainter& painter, const TimeAxis& axis) const
{
    painter.setRenderHint(QPainter::Antialiasing, false);
    const double top = m_layout.plotsTop;
    const double height = m_layout.plotsBottom - top;
    const double now = inside(axis.now());
    if (now < m_layout.axis.right()) {
        painter.fillRect(QRectF(now, top, m_layout.axis.right() - now, height), m_theme[Token::Future]);
    }
    const double flooded = inside(m_strip.flooded);
    if (flooded > m_layout.axis.left) {
        painter.fillRect(QRectF(m_layout.axis.left, top, flooded - m_layout.axis.left, height),
                         QBrush(m_theme[Token::Rule], Qt::BDiagPattern));
    }
    const double left = inside(m_strip.from);
    const double right = inside(m_strip.onset);
    if (right > left) {
        painter.fillRect(QRectF(left, top, right - left, height), m_theme[Token::InfoTint]);
    }
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    const AxisTicks ticks = axis.ticks(m_layout.axis.width, labelRoom(m_metrics));
    for (const AxisTick& tick : ticks.lower) {
        const double at = std::round(m_layout.axis.x(tick.at, 0));
        if (at >= m_layout.axis.left && at <= m_layout.axis.right()) {
            painter.drawLine(QPointF(at, top), QPointF(at, m_layout.plotsBottom));
        }
    }
}

void StripPainter::paintBracket(QPainter& painter) const
{
    const double left = inside(m_strip.from);
    const double right = inside(m_strip.onset);
    if (right - left < 2) {
        return;
    }
    // Words above the line, growing to the left: now and the onset are named at its right.
    const QRectF& row = m_layout.bracketRow;
    const double y = std::round(row.top() + m_metrics.smallLine + m_metrics.px(4));
    const QColor ink = m_theme[Token::Info];
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(left, y - 1, right - left, 2), ink);
    painter.fillRect(QRectF(left, y - 1, 2, row.bottom() - y + 1), ink);
    painter.fillRect(QRectF(right - 2, y - 1, 2, row.bottom() - y + 1), ink);
    const double width = figuresWidth(m_metrics.smallStrong, m_strip.bracket) + m_metrics.px(4);
    const bool fits = width < right - left;
    const QRectF label(fits ? (left + right - width) / 2 : std::max(m_metrics.px(4), right - width), row.top(), width,
                       m_metrics.smallLine);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(ink);
    drawFigures(painter, label, Qt::AlignCenter, m_strip.bracket);
}

void StripPainter::paintPanel(QPainter& painter, const StripPanel& panel) const
{
    const facade::LaneSeries& series = m_strip.series[panel.series].series;
    const QColor hue = m_theme.tokens().parameter(series.parameter);
    const Mark shape = series.parameter.isEmpty() ? Mark::OpenDiamond : Tokens::mark(series.parameter);
    const QRectF& plot = panel.plot;
    const auto y = [&](double value) { return panel.scale.y(value, plot.top(), plot.bottom()); };
    painter.setRenderHint(QPainter::Antialiasing);
    const double lineY = panel.title.top() + m_metrics.bodyLine / 2 + m_metrics.px(4);
    drawMark(painter, shape, QPointF(panel.title.left() + m_metrics.px(5), lineY), m_metrics.px(9), hue,
             m_theme[Token::Panel]);
    painter.setFont(m_metrics.strong);
    painter.setPen(m_theme[Token::Ink]);
    const double after = panel.title.left() + m_metrics.px(16);
    const double room = panel.title.right() - after;
    // The symbol where the whole name does not fit.
    const bool fits = series.parameter.isEmpty() || figuresWidth(m_metrics.strong, series.name) <= room;
    const QString name = fits ? series.name : wording::parameterSymbol(series.parameter);
    drawFigures(painter, QRectF(after, lineY - m_metrics.bodyLine / 2, room, m_metrics.bodyLine),
                Qt::AlignVCenter | Qt::AlignLeft, elidedFigures(m_metrics.strong, name, room));
    painter.setFont(m_metrics.small);
    painter.setPen(m_theme[Token::Ink3]);
    drawFigures(painter, QRectF(after, lineY + m_metrics.bodyLine / 2, room, m_metrics.smallLine),
                Qt::AlignVCenter | Qt::AlignLeft, elidedFigures(m_metrics.small, series.unitLabel, room));
    painter.setFont(m_metrics.tick);
    for (const double tick : panel.scale.ticks) {
        const double level = std::round(y(tick));
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(m_theme[Token::Rule], 1));
        painter.drawLine(QPointF(plot.left(), level), QPointF(plot.right(), level));
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(painter,
                    QRectF(plot.left() - m_metrics.px(kTickRoom), level - m_metrics.tickLine / 2,
                           m_metrics.px(kTickRoom - 6), m_metrics.tickLine),
                    Qt::AlignVCenter | Qt::AlignRight, wording::numberText(tick, panel.scale.decimals));
    }
    painter.save();
    painter.setClipRect(plot.adjusted(-4, -6, 4, 6), Qt::IntersectClip);
    if (series.targetLow || series.targetHigh) {
        const double top = y(series.targetHigh.value_or(panel.scale.high));
        const double bottom = y(series.targetLow.value_or(panel.scale.low));
        painter.fillRect(QRectF(plot.left(), top, plot.width(), bottom - top).intersected(plot), faded(hue, 0.11));
    }
    QPolygonF line;
    for (const facade::LaneMark& mark : series.marks) {
        line << QPointF(x(mark.at), y(mark.value));
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(hue, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(line);
    const double size = m_metrics.px(kMarkSize);
    double drawnAt = -1e9;
    for (std::size_t i = 0; i < series.marks.size(); ++i) {
        const QPointF at = line[static_cast<qsizetype>(i)];
        if (at.x() - drawnAt < size / 3) {
            continue;
        }
        drawnAt = at.x();
        const auto censoring = series.marks[i].censoring;
        if (censoring == record::Censoring::Below || censoring == record::Censoring::Above) {
            drawCensoredMark(painter, shape, at, size, hue, m_theme[Token::Panel],
                             censoring == record::Censoring::Below);
        } else {
            drawMark(painter, shape, at, size, hue, m_theme[Token::Panel]);
        }
    }
    painter.restore();
}

void StripPainter::paintEvents(QPainter& painter) const
{
    painter.setFont(m_metrics.strong);
    painter.setPen(m_theme[Token::Ink]);
    drawFigures(painter, m_layout.eventTitle, Qt::AlignVCenter | Qt::AlignLeft, words("Events"));
    paintChanges(painter);
    // What is serious takes its place first; routine work fills what is left.
    std::vector<std::pair<double, double>> taken;
    for (const bool serious : {true, false}) {
        for (const facade::LaneEvent& event : m_strip.events) {
            if (event.serious == serious && event.glyph != facade::Glyph::WaterChange) {
                paintEvent(painter, event, taken);
            }
        }
    }
}

void StripPainter::paintEvent(QPainter& painter, const facade::LaneEvent& event,
                              std::vector<std::pair<double, double>>& taken) const
{
    const double at = std::round(x(event.at));
    const double side = glyphSide(m_metrics);
    const auto isFree = [&](double from, double to) {
        return std::ranges::none_of(taken, [&](const auto& one) { return from < one.second && to > one.first; });
    };
    if (at < m_layout.axis.left || at > m_layout.axis.right() || !isFree(at - side / 2, at + side / 2)) {
        return;
    }
    const QRectF box(at - side / 2, m_layout.events.top() + m_metrics.px(1), side, side);
    const QColor ink = event.serious ? m_theme[Token::Act] : m_theme[Token::Ink2];
    drawGlyph(painter, event.glyph, box, ink);
    const double width = figuresWidth(m_metrics.small, event.word) + m_metrics.px(4);
    const bool crowded = std::ranges::any_of(m_strip.events, [&](const facade::LaneEvent& other) {
        const double there = x(other.at);
        return other.glyph != facade::Glyph::WaterChange && there > at && there - side / 2 < box.right() + width;
    });
    const bool room = box.right() + width < m_layout.axis.right() && isFree(box.right(), box.right() + width);
    const bool named = !event.word.isEmpty() && room && (event.serious || !crowded);
    if (named) {
        painter.setFont(m_metrics.small);
        painter.setPen(ink);
        drawFigures(painter, QRectF(box.right() + m_metrics.px(3), m_layout.events.top(), width, side + 2),
                    Qt::AlignVCenter | Qt::AlignLeft, event.word);
    }
    taken.emplace_back(box.left(), box.right() + (named ? width : 0.0));
}

void StripPainter::paintChanges(QPainter& painter) const
{
    double digitsFrom = -1e9;
    for (const facade::LaneEvent& event : m_strip.events) {
        const double at = std::round(x(event.at));
        if (event.glyph != facade::Glyph::WaterChange || at < m_layout.axis.left || at > m_layout.axis.right()) {
            continue;
        }
        const double width = std::round(std::clamp(m_layout.axis.pxPerDay() * 0.5, 2.0, m_metrics.px(6)));
        const double share = std::clamp(event.fraction.value_or(0.3), 0.0, 1.0);
        const double height = std::max(3.0, std::round(m_layout.changes.height() * share));
        const QRectF bar(at - width / 2, m_layout.changes.bottom() - height, width, height);
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.fillRect(bar, m_theme[Token::WaterSurface]);
        if (event.planned && width > 3) {
            painter.fillRect(bar.adjusted(1, 1, -1, -1), m_theme[Token::Panel]);
        }
        const double digits = figuresWidth(m_metrics.tick, event.word);
        if (!event.word.isEmpty() && bar.left() > digitsFrom && at + width + digits < m_layout.axis.right()) {
            painter.setFont(m_metrics.tick);
            painter.setPen(m_theme[Token::Ink2]);
            drawFigures(
                painter,
                QRectF(bar.right() + 2, m_layout.changes.bottom() - m_metrics.tickLine, digits, m_metrics.tickLine),
                Qt::AlignVCenter | Qt::AlignLeft, event.word);
            digitsFrom = bar.right() + digits + m_metrics.px(8);
        }
    }
}

void StripPainter::paintAxis(QPainter& painter, const TimeAxis& axis) const
{
    const QRectF& row = m_layout.axisRow;
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(m_theme[Token::Ink2], 1));
    painter.drawLine(QPointF(row.left(), row.top()), QPointF(row.right(), row.top()));
    painter.setFont(m_metrics.small);
    const AxisTicks ticks = axis.ticks(m_layout.axis.width, labelRoom(m_metrics));
    double freeFrom = row.left();
    for (const AxisTick& tick : ticks.lower.empty() ? ticks.upper : ticks.lower) {
        const double at = std::round(m_layout.axis.x(tick.at, 0));
        if (at < row.left() || at > row.right()) {
            continue;
        }
        painter.setPen(QPen(m_theme[Token::Ink2], 1));
        painter.drawLine(QPointF(at, row.top()), QPointF(at, row.top() + m_metrics.px(4)));
        const auto dayOf = [&](qint64 ms) {
            return QDateTime::fromMSecsSinceEpoch(ms, Qt::UTC).toTimeZone(m_layout.axis.zone).date();
        };
        const QString text = m_layout.axis.mode == AxisMode::Age ? (tick.at == 0 ? words("flooded") : tick.label)
                                                                 : wording::dateText(dayOf(tick.at), dayOf(axis.now()));
        const double width = figuresWidth(m_metrics.small, text);
        const double left = std::clamp(at - width / 2, row.left(), std::max(row.left(), row.right() - width));
        if (left < freeFrom) {
            continue;
        }
        freeFrom = left + width + m_metrics.px(8);
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, QRectF(left, row.top() + m_metrics.px(5), width, m_metrics.smallLine), Qt::AlignVCenter,
                    text);
    }
}

void StripPainter::paintOnset(QPainter& painter) const
{
    const double at = std::round(x(m_strip.onset));
    if (m_strip.onsetText.isEmpty() || at < m_layout.axis.left || at > m_layout.axis.right()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    QPen pen(m_theme[Token::Act], 2);
    pen.setDashPattern({3, 2});
    painter.setPen(pen);
    painter.drawLine(QPointF(at, m_layout.plotsTop), QPointF(at, m_layout.plotsBottom));
    painter.setFont(m_metrics.smallStrong);
    const double width = figuresWidth(m_metrics.smallStrong, m_strip.onsetText) + m_metrics.px(6);
    double left = at + m_metrics.px(4);
    if (left + width > m_layout.axis.right()) {
        left = at - width - m_metrics.px(4);
    }
    const QRectF label(left, m_layout.bracketRow.bottom() - m_metrics.smallLine, width, m_metrics.smallLine);
    painter.fillRect(label, m_theme[Token::Panel]);
    painter.setPen(m_theme[Token::Act]);
    drawFigures(painter, label, Qt::AlignVCenter | Qt::AlignLeft, m_strip.onsetText);
}

void StripPainter::paintNow(QPainter& painter, const TimeAxis& axis) const
{
    const double at = std::round(x(axis.now()));
    if (at < m_layout.axis.left || at > m_layout.axis.right()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(at - 1, m_layout.plotsTop, 2, m_layout.plotsBottom - m_layout.plotsTop),
                     m_theme[Token::Ink]);
    const QDate today = QDateTime::fromMSecsSinceEpoch(axis.now(), Qt::UTC).toTimeZone(m_layout.axis.zone).date();
    const QString text = wording::dateText(today, today);
    const double width = figuresWidth(m_metrics.smallStrong, text) + m_metrics.px(14);
    QRectF flag(at - width / 2, m_layout.bracketRow.top(), width, m_metrics.smallLine + m_metrics.px(4));
    flag.moveLeft(
        std::clamp(flag.left(), m_layout.axis.left, std::max(m_layout.axis.left, m_layout.axis.right() - width)));
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme[Token::Ink]);
    painter.drawRoundedRect(flag, 3, 3);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(m_theme[Token::Panel]);
    drawFigures(painter, flag, Qt::AlignCenter, text);
}

void StripPainter::paintMarked(QPainter& painter, const std::vector<facade::RecordRef>& marked) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = m_theme[Token::Accent];
    for (const facade::RecordRef& ref : marked) {
        const double at = x(ref.at);
        if (at < m_layout.axis.left || at > m_layout.axis.right()) {
            // Outside what is on show: an arrow at that edge.
            const bool before = at < m_layout.axis.left;
            const double edge = before ? m_layout.axis.left + 2 : m_layout.axis.right() - 2;
            const double tail = before ? 8.0 : -8.0;
            const double y = m_layout.plotsTop + m_metrics.px(12);
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink);
            painter.drawPolygon(QPolygonF{{edge, y}, {edge + tail, y - 6}, {edge + tail, y + 6}});
            continue;
        }
        painter.setPen(QPen(faded(ink, 0.7), 1.2, Qt::DotLine));
        painter.drawLine(QPointF(std::round(at), m_layout.plotsTop), QPointF(std::round(at), m_layout.plotsBottom));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink, 2));
        for (const StripPart& part : m_layout.parts) {
            if (part.ref == ref) {
                painter.drawRoundedRect(part.box.adjusted(-4, -4, 4, 4), 5, 5);
            }
        }
    }
    painter.restore();
}

} // namespace littoral::ui
