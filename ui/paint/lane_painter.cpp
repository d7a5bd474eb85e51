// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_painter.h"

#include "ui/paint/faded.h"
#include "ui/paint/glyphs.h"
#include "ui/paint/lane_chart.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

using facade::LaneModel;

constexpr int kLeft = Qt::AlignVCenter | Qt::AlignLeft;
constexpr int kRight = Qt::AlignVCenter | Qt::AlignRight;
constexpr int kCentre = Qt::AlignVCenter | Qt::AlignHCenter;

/// What colour a header line has: readable on the panel's and the selection's tint.
QColor lineInk(const Theme& theme, HeaderRole role, facade::Status status)
{
    switch (role) {
    case HeaderRole::Name:
    case HeaderRole::Phase:
    case HeaderRole::Verdict:
        return theme[Token::Ink];
    case HeaderRole::Size:
    case HeaderRole::Next:
        return theme[Token::Ink2];
    case HeaderRole::Status:
        break;
    }
    return status == facade::Status::Unknown ? theme[Token::Ink2] : theme.tokens().status(status);
}

const QFont& lineFont(const LaneMetrics& m, HeaderRole role, LaneKind kind)
{
    switch (role) {
    case HeaderRole::Name:
        return kind == LaneKind::Overview ? m.strong : m.name;
    case HeaderRole::Phase:
        return m.strong;
    case HeaderRole::Status:
        return kind == LaneKind::Overview ? m.smallStrong : m.strong;
    default:
        return m.body;
    }
}

} // namespace

void LanePainter::paintLane(QPainter& painter, const LaneModel& model, const LaneBox& box, const LaneFrame& frame,
                            const std::vector<double>& gridLines, bool selected) const
{
    painter.save();
    painter.setClipRect(QRectF(0, 0, box.width, box.height));
    paintGround(painter, model, box, gridLines);
    painter.save();
    painter.setClipRect(box.strip, Qt::IntersectClip);
    paintBeforeFlooding(painter, model, box);
    paintPhases(painter, model, box);
    LaneChart(m_theme, m_metrics, model, box, frame.options).paint(painter, selected);
    paintNotices(painter, model, box);
    paintEvents(painter, model, box);
    paintDue(painter, model, box);
    painter.restore();
    paintHeader(painter, model, box, frame, selected);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(0, box.height - 1, box.width, 1), m_theme[Token::Rule2]);
    painter.restore();
}

void LanePainter::paintHeader(QPainter& painter, const LaneModel& model, const LaneBox& box, const LaneFrame& frame,
                              bool selected) const
{
    const QRectF column(0, 0, box.strip.left(), box.height);
    painter.setRenderHint(QPainter::Antialiasing, false);
    const QColor ground = selected ? m_theme[Token::Selection] : m_theme[Token::Sunk];
    painter.fillRect(column, ground);
    painter.fillRect(QRectF(column.right() - 1, 0, 1, box.height), m_theme[Token::Rule2]);
    if (selected) {
        painter.fillRect(QRectF(0, 0, m_metrics.px(3), box.height), m_theme[Token::Accent]);
    }
    const facade::Status lineStatus = box.kind == LaneKind::Overview ? model.status : model.lineStatus;
    for (const HeaderLine& line : box.header.lines) {
        painter.setFont(lineFont(m_metrics, line.role, box.kind));
        painter.setPen(lineInk(m_theme, line.role, lineStatus));
        drawFigures(painter, line.rect, kLeft, line.text);
        if (!line.glyph.isEmpty()) {
            drawStatus(painter, lineStatus, line.glyph, painter.pen().color(), ground);
        }
    }
    for (const PresentBox& present : box.header.present) {
        const auto& reading = model.present[present.index];
        drawMark(painter, Tokens::mark(reading.parameter), present.mark, m_metrics.px(kMarkSize),
                 m_theme.tokens().parameter(reading.parameter), ground, model.earlier);
        painter.setFont(m_metrics.small);
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, present.symbol, kLeft, reading.symbol);
        painter.setFont(m_metrics.strong);
        painter.setPen(m_theme[Token::Ink]);
        drawFigures(painter, present.value, kLeft, reading.text);
    }
    const double scale = frame.outlineScale * (box.kind == LaneKind::Overview ? 0.6 : 1.0);
    drawOutline(painter, m_theme, box.header.outline, shapeOf(model), scale);
}

void LanePainter::paintGround(QPainter& painter, const LaneModel& model, const LaneBox& box,
                              const std::vector<double>& gridLines) const
{
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(box.strip, m_theme[Token::Panel]);
    if (!model.earlier && box.nowX < box.strip.right()) {
        const double left = std::max(box.nowX, box.strip.left());
        painter.fillRect(QRectF(left, 0, box.strip.right() - left, box.height), m_theme[Token::Future]);
    }
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    for (const double x : gridLines) {
        if (x > box.strip.left()) {
            painter.drawLine(QPointF(std::round(x), 0), QPointF(std::round(x), box.height));
        }
    }
    if (box.kind != LaneKind::Overview && !box.dueTops.empty()) {
        const double level = std::round(box.dueTops.front() - m_metrics.px(1));
        painter.drawLine(QPointF(box.strip.left(), level), QPointF(box.strip.right(), level));
    }
}

void LanePainter::paintBeforeFlooding(QPainter& painter, const LaneModel& model, const LaneBox& box) const
{
    const auto hatch = [&](const QRectF& area) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.fillRect(area, m_theme[Token::Sunk]);
        painter.fillRect(area, QBrush(m_theme[Token::Rule], Qt::BDiagPattern));
    };
    if (box.endedX && *box.endedX < box.strip.right()) {
        const double left = std::max(*box.endedX, box.strip.left());
        hatch(QRectF(left, 0, box.strip.right() - left, box.height));
        painter.fillRect(QRectF(*box.endedX, 0, 1, box.height), m_theme[Token::Rule2]);
    }
    if (box.floodedX <= box.strip.left()) {
        return;
    }
    const QRectF before(box.strip.left(), 0, std::min(box.floodedX, box.strip.right()) - box.strip.left(), box.height);
    hatch(before);
    if (box.floodedX <= box.strip.right()) {
        painter.fillRect(QRectF(box.floodedX - 1, 0, 2, box.height), m_theme[Token::Ink2]);
    }
    const double top = std::round(m_metrics.px(5)) + (box.phases.empty() ? 0.0 : m_metrics.phaseRow);
    const auto note = [&](const QString& text, const QFont& font, double y, Token ink) {
        const double width = figuresWidth(font, text);
        QRectF label(before.right() - width - m_metrics.px(9), y, width, m_metrics.smallLine);
        for (const TickLabel& tick : box.ticks) {
            if (tick.rect.right() < box.floodedX && tick.rect.intersects(label.adjusted(-4, 0, 4, 0))) {
                label.moveRight(tick.rect.left() - m_metrics.px(8));
            }
        }
        if (text.isEmpty() || label.left() < before.left() + m_metrics.px(6) || label.bottom() > box.height) {
            return;
        }
        painter.fillRect(label.adjusted(-4, 0, 3, 1), m_theme[Token::Sunk]);
        painter.setFont(font);
        painter.setPen(m_theme[ink]);
        drawFigures(painter, label, kRight, text);
    };
    if (box.kind != LaneKind::Overview) {
        note(model.floodedText, m_metrics.smallStrong, top, Token::Ink2);
        note(model.startText, m_metrics.small, top + m_metrics.smallLine + 1, Token::Ink3);
    }
}

void LanePainter::paintPhases(QPainter& painter, const LaneModel& model, const LaneBox& box) const
{
    painter.setFont(m_metrics.small);
    for (const PhaseBox& phase : box.phases) {
        const bool ahead = model.phases[phase.phase].forecast;
        painter.setRenderHint(QPainter::Antialiasing, false);
        if (ahead) {
            painter.fillRect(phase.rect, m_theme[Token::Panel]);
            painter.setPen(QPen(m_theme[Token::Rule], 1, Qt::DashLine));
            painter.drawRect(phase.rect.adjusted(0, 0, -1, -1));
        } else {
            painter.fillRect(phase.rect, m_theme[Token::Rule]);
        }
        painter.setPen(m_theme[ahead ? Token::Ink2 : Token::Ink]);
        drawFigures(painter, phase.label, kCentre, phase.text);
    }
}

void LanePainter::paintNotices(QPainter& painter, const LaneModel& model, const LaneBox& box) const
{
    for (const GateBox& gate : box.gates) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        const QColor green = m_theme[Token::Ok];
        painter.fillRect(gate.area, faded(green, 0.10));
        painter.fillRect(QRectF(gate.area.left(), gate.area.top(), gate.area.width(), 2), green);
        const double foot = m_metrics.px(8);
        painter.fillRect(QRectF(gate.area.left(), gate.area.top(), 2, foot), green);
        painter.fillRect(QRectF(gate.area.right() - 2, gate.area.top(), 2, foot), green);
        if (!gate.label.isEmpty()) {
            painter.fillRect(gate.glyph.united(gate.label).adjusted(-2, 0, 2, 0), faded(m_theme[Token::Future], 0.85));
            drawStatus(painter, facade::Status::Ok, gate.glyph, green, m_theme[Token::Future]);
            painter.setFont(m_metrics.smallStrong);
            painter.setPen(green);
            drawFigures(painter, gate.label, kLeft, model.gates[gate.gate].text);
        }
    }
    for (const AlertBox& alert : box.alerts) {
        const facade::Status status = model.alerts[alert.alert].status;
        const QColor ink = m_theme.tokens().status(status);
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.fillRect(alert.bar, ink);
        if (!alert.text.isEmpty()) {
            painter.fillRect(alert.glyph.united(alert.label).adjusted(-3, 0, 3, 0), faded(m_theme[Token::Panel], 0.85));
            drawStatus(painter, status, alert.glyph, ink, m_theme[Token::Panel]);
            painter.setFont(m_metrics.smallStrong);
            painter.setPen(ink);
            drawFigures(painter, alert.label, kLeft, alert.text);
        }
    }
}

void LanePainter::paintEvents(QPainter& painter, const LaneModel& model, const LaneBox& box) const
{
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const ChangeBar& bar : box.changes) {
        const auto& event = model.events[bar.event];
        const QColor water = m_theme[Token::WaterSurface];
        if (event.planned) {
            painter.setPen(QPen(water, 1));
            painter.setBrush(m_theme[Token::Panel]);
            painter.drawRect(bar.bar.adjusted(0, 0, -1, -1));
        } else {
            painter.fillRect(bar.bar, water);
        }
        if (!bar.digits.isEmpty()) {
            painter.setFont(m_metrics.tick);
            painter.setPen(m_theme[Token::Ink2]);
            drawFigures(painter, bar.digits, kLeft, event.word);
        }
    }
    for (const EventBox& box_ : box.events) {
        const auto& event = model.events[box_.event];
        const QColor ink = event.serious ? m_theme[Token::Act] : m_theme[event.planned ? Token::Ink3 : Token::Ink2];
        drawGlyph(painter, event.glyph, box_.glyph, ink);
        if (!box_.label.isEmpty()) {
            painter.setFont(event.serious ? m_metrics.strong : m_metrics.body);
            painter.setPen(ink);
            drawFigures(painter, box_.label, kLeft, event.word);
        }
    }
}

void LanePainter::paintDue(QPainter& painter, const LaneModel& model, const LaneBox& box) const
{
    for (const double x : box.doneTicks) {
        const double half = m_metrics.glyph / 2;
        drawTick(painter, QRectF(x - half, box.dueTops.front(), m_metrics.glyph, m_metrics.chipHeight),
                 m_theme[Token::Ink2]);
    }
    for (const ChipBox& chip : box.chips) {
        paintChip(painter, model, chip);
    }
}

void LanePainter::paintChip(QPainter& painter, const LaneModel& model, const ChipBox& chip) const
{
    const bool waiting = chip.today && !chip.overdue;
    const QColor fill = chip.overdue ? m_theme[Token::Overdue] : m_theme[waiting ? Token::Selection : Token::Panel];
    const QColor edge = chip.overdue ? fill : m_theme[waiting ? Token::Accent : Token::Rule2];
    const QColor ink = chip.overdue ? m_theme[Token::OnOverdue] : m_theme[waiting ? Token::Accent : Token::Ink];
    painter.setRenderHint(QPainter::Antialiasing);
    if (!chip.overdue && chip.rect.left() - chip.anchor > 3.0) {
        // Moved aside: a thin line along the top of the row keeps the day it belongs to.
        const double top = chip.rect.top();
        const QPointF lead[] = {{chip.anchor, top + 3},
                                {chip.anchor, top - 1},
                                {chip.rect.left() + 4, top - 1},
                                {chip.rect.left() + 4, top + 1}};
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(m_theme[Token::Rule2], 1));
        painter.drawPolyline(lead, 4);
        painter.setRenderHint(QPainter::Antialiasing);
    }
    const double width = waiting ? 1.6 : 1.0;
    painter.setPen(QPen(edge, width));
    painter.setBrush(fill);
    const double radius = m_metrics.px(3);
    painter.drawRoundedRect(chip.rect.adjusted(width / 2, width / 2 + 0.5, -width / 2, -width / 2 - 0.5), radius,
                            radius);
    QRectF text = chip.rect;
    if (chip.withGlyph) {
        const facade::LaneChip& item = model.chips[chip.chips.front()];
        const QRectF glyph(chip.rect.left() + m_metrics.px(6), chip.rect.center().y() - m_metrics.glyph / 2,
                           m_metrics.glyph, m_metrics.glyph);
        drawGlyph(painter, item.glyph, glyph, ink, item.item.fraction.value_or(0.4));
        text.setLeft(glyph.right() + m_metrics.px(4));
        painter.setFont(chip.overdue || waiting ? m_metrics.chipStrong : m_metrics.chip);
        painter.setPen(ink);
        drawFigures(painter, text, kLeft, chip.text);
        return;
    }
    painter.setFont(m_metrics.chipStrong);
    painter.setPen(ink);
    drawFigures(painter, text, kCentre, chip.text);
}

void LanePainter::paintNow(QPainter& painter, const LaneModel& model, const LaneBox& box) const
{
    if (model.earlier || box.nowX < box.strip.left() || box.nowX > box.strip.right()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(box.nowX - 1, 0, 2, box.height), m_theme[Token::Ink]);
    if (box.nowFlag.isEmpty()) {
        return;
    }
    painter.fillRect(box.nowFlag, m_theme[Token::Ink]);
    painter.setFont(m_metrics.smallStrong);
    painter.setPen(m_theme[Token::Panel]);
    drawFigures(painter, box.nowFlag, kCentre, box.nowText);
}

void LanePainter::paintFocus(QPainter& painter, const QRectF& item) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double offset = 2.0;
    const double width = m_theme.tokens().scheme() == Scheme::HighContrast ? 3.0 : 2.0;
    const double reach = offset + width / 2;
    painter.setBrush(Qt::NoBrush);
    // A ring of ground between item and accent keeps it visible on filled chips.
    painter.setPen(QPen(m_theme[Token::Panel], offset));
    painter.drawRoundedRect(item.adjusted(-1, -1, 1, 1), 4, 4);
    painter.setPen(QPen(m_theme[Token::Accent], width));
    painter.drawRoundedRect(item.adjusted(-reach, -reach, reach, reach), 5, 5);
    painter.restore();
}

void LanePainter::paintHover(QPainter& painter, const QRectF& item) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_theme[Token::Ink2], 1));
    painter.drawRoundedRect(item.adjusted(-1.5, -1.5, 1.5, 1.5), 4, 4);
    painter.restore();
}

} // namespace littoral::ui
