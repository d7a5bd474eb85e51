// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_rows.h"

#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <tuple>

namespace littoral::ui::lanerows {

namespace {

using facade::LaneModel;

/// px of a bar for a whole water change.
constexpr double kFullBar = 20.0;

bool isChange(const facade::LaneEvent& event)
{
    return event.glyph == facade::Glyph::WaterChange && event.fraction.has_value();
}

bool near(const LaneBox& box, double x, double margin)
{
    return x >= box.strip.left() - margin && x <= box.strip.right() + margin;
}

/// Spans along a row that are taken, for labels that must not collide.
class Taken final
{
public:
    void add(const QRectF& rect) { m_rects.push_back(rect); }
    bool isFree(const QRectF& rect) const
    {
        return std::ranges::none_of(m_rects, [&](const QRectF& taken) { return taken.intersects(rect); });
    }

private:
    std::vector<QRectF> m_rects;
};

void addChangeBars(LaneBox& box, const LaneModel& model, const LaneMetrics& m, Taken& taken)
{
    const double floor = box.changeRow.bottom() - 1;
    for (std::size_t i = 0; i < model.events.size(); ++i) {
        const auto& event = model.events[i];
        const double x = isChange(event) ? box.axis.x(event.at, model.flooded) : 0.0;
        if (!isChange(event) || !near(box, x, m.px(20))) {
            continue;
        }
        const double height = std::clamp(std::round(*event.fraction * m.px(kFullBar)), 3.0, box.changeRow.height() - 2);
        const double width = std::round(m.px(5));
        ChangeBar bar;
        bar.event = i;
        bar.bar = QRectF(std::round(x - width / 2), floor - height, width, height);
        taken.add(bar.bar.adjusted(-1, -2, 1, 0));
        box.changes.push_back(bar);
    }
    for (ChangeBar& bar : box.changes) {
        const QString digits = model.events[bar.event].word;
        const QRectF label(bar.bar.right() + 2, floor - m.tickLine + 1, figuresWidth(m.tick, digits), m.tickLine);
        const bool underNow = label.left() < box.nowX + 2 && label.right() > box.nowX - 2;
        if (!digits.isEmpty() && !underNow && taken.isFree(label.adjusted(1, 0, 2, 0))) {
            bar.digits = label;
            taken.add(label);
        }
    }
}

/// Work that ticks itself off in the due row: a picture of it without its word would say nothing more.
bool isRoutine(const facade::LaneEvent& event)
{
    using facade::Glyph;
    return !event.serious && (event.glyph == Glyph::Upkeep || event.glyph == Glyph::TopUp ||
                              event.glyph == Glyph::Feed || event.glyph == Glyph::Photo);
}

/// Serious events first, so that a loss never gives way to a note; then the newest.
std::vector<std::size_t> byWeight(const LaneModel& model)
{
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < model.events.size(); ++i) {
        if (!isChange(model.events[i])) {
            order.push_back(i);
        }
    }
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        const auto& left = model.events[a];
        const auto& right = model.events[b];
        const auto weight = [](const facade::LaneEvent& event) { return event.serious ? 0 : isRoutine(event) ? 2 : 1; };
        return std::tuple(weight(left), -left.at) < std::tuple(weight(right), -right.at);
    });
    return order;
}

/// Where the word beside a glyph stands; empty when there is none or no room for it.
QRectF labelFor(const LaneBox& box, const facade::LaneEvent& event, const QRectF& glyph, const LaneMetrics& m,
                const Taken& taken)
{
    const QFont& font = event.serious ? m.strong : m.body;
    const QRectF label(glyph.right() + m.px(4), box.eventRow.top(), std::ceil(figuresWidth(font, event.word)),
                       m.eventRow);
    const bool inside =
        label.right() <= box.strip.right() && !(label.left() < box.nowX && label.right() > box.nowX - 2);
    const bool room = !event.word.isEmpty() && inside && taken.isFree(label.adjusted(0, 2, m.px(3), -2));
    return room ? label : QRectF();
}

} // namespace

namespace {

QString tickText(const ValueScale& scale, std::size_t index, const QString& unit)
{
    const QString number = QLocale().toString(scale.ticks[index], 'f', scale.decimals);
    const bool top = index + 1 == scale.ticks.size();
    return top ? QCoreApplication::translate("LaneChart", "%1 %2", "tick value and unit").arg(number, unit) : number;
}

double tickColumnWidth(const ValueScale& scale, const QString& unit, const LaneMetrics& m)
{
    double widest = 0.0;
    for (std::size_t i = 0; i < scale.ticks.size(); ++i) {
        widest = std::max(widest, figuresWidth(m.tick, tickText(scale, i, unit)));
    }
    return std::ceil(widest);
}

/// Labels of one scale in the column from `left`, ranged right when they stand before the flooding line.
void addTickColumn(LaneBox& box, std::size_t index, const QString& unit, double left, double width, bool rangedRight,
                   const LaneMetrics& m)
{
    const ValueScale& scale = box.scales[index];
    const double highest = box.chart.top() - m.px(6);
    const double lowest = std::max(highest, box.chart.bottom() - m.tickLine + m.px(5));
    for (std::size_t i = 0; i < scale.ticks.size(); ++i) {
        TickLabel label;
        label.text = tickText(scale, i, unit);
        label.level = std::round(scale.y(scale.ticks[i], box.chart.top(), box.chart.bottom()));
        label.scale = index;
        const double own = std::ceil(figuresWidth(m.tick, label.text));
        const double y = std::clamp(label.level - m.tickLine / 2, highest, lowest);
        label.rect = QRectF(rangedRight ? left + width - own : left, y, own, m.tickLine);
        box.ticks.push_back(label);
    }
}

} // namespace

void addTicks(LaneBox& box, const std::vector<QString>& units, const LaneMetrics& m)
{
    if (box.kind == LaneKind::Overview) {
        return;
    }
    // Beside the flooding line where there is hatched room before it, so that no label lies on a reading; else at the
    // left edge.
    double right = box.floodedX - m.px(6);
    double left = std::max(box.strip.left(), box.floodedX) + m.px(5);
    for (std::size_t i = 0; i < box.scales.size(); ++i) {
        const double width = tickColumnWidth(box.scales[i], units[i], m);
        const bool before = box.floodedX <= box.strip.right() && right - width > box.strip.left() + m.px(4);
        if (before) {
            addTickColumn(box, i, units[i], right - width, width, true, m);
            right -= width + m.px(8);
        } else if (left + width < box.strip.right()) {
            addTickColumn(box, i, units[i], left, width, false, m);
            left += width + m.px(10);
        }
    }
}

void addEvents(LaneBox& box, const LaneModel& model, const LaneMetrics& m)
{
    if (box.kind == LaneKind::Overview) {
        return;
    }
    Taken taken;
    addChangeBars(box, model, m, taken);
    const double y = std::round(box.eventRow.top() + (m.eventRow - m.glyph) / 2);
    const auto glyphAt = [&](std::size_t i) {
        const double x = box.axis.x(model.events[i].at, model.flooded);
        return near(box, x, m.glyph) ? QRectF(std::round(x - m.glyph / 2), y, m.glyph, m.glyph) : QRectF();
    };
    const std::vector<std::size_t> order = byWeight(model);
    for (const std::size_t i : order) {
        const QRectF glyph = glyphAt(i);
        const bool free = taken.isFree(glyph.adjusted(2, 2, -2, -2)) || model.events[i].serious;
        if (!glyph.isEmpty() && free && !isRoutine(model.events[i])) {
            taken.add(glyph);
            box.events.push_back({glyph, {}, i});
        }
    }
    for (EventBox& event : box.events) {
        event.label = labelFor(box, model.events[event.event], event.glyph, m, taken);
        taken.add(event.label.adjusted(0, 2, 0, -2));
    }
    for (const std::size_t i : order) {
        const QRectF glyph = glyphAt(i);
        if (!isRoutine(model.events[i]) || glyph.isEmpty() || !taken.isFree(glyph.adjusted(-2, 2, -2, -2))) {
            continue;
        }
        if (const QRectF label = labelFor(box, model.events[i], glyph, m, taken); !label.isEmpty()) {
            taken.add(glyph.united(label.adjusted(0, 2, m.px(6), -2)));
            box.events.push_back({glyph, label, i});
        }
    }
}

void addCensored(LaneBox& box, const LaneModel& model, const LaneMetrics& m)
{
    if (box.kind == LaneKind::Overview || box.axis.pxPerDay() < kArrowPerDay) {
        return;
    }
    Taken taken;
    for (const TickLabel& tick : box.ticks) {
        taken.add(tick.rect);
    }
    const double half = m.px(6);
    const auto place = [&](const SeriesBox& series, const facade::LaneMark& mark) {
        const ValueScale& scale = box.scales[series.scale];
        return QPointF(box.axis.x(mark.at, model.flooded), scale.y(mark.value, box.chart.top(), box.chart.bottom()));
    };
    for (const SeriesBox& series : box.series) {
        for (const facade::LaneMark& mark : series.series->marks) {
            const QPointF at = place(series, mark);
            if (!near(box, at.x(), half)) {
                continue;
            }
            taken.add(QRectF(at.x() - half, at.y() - half, 2 * half, 2 * half));
        }
    }
    for (const SeriesBox& series : box.series) {
        for (const facade::LaneMark& mark : series.series->marks) {
            const bool below = mark.censoring == record::Censoring::Below;
            const QPointF at = place(series, mark);
            if ((!below && mark.censoring != record::Censoring::Above) || !near(box, at.x(), 0.0)) {
                continue;
            }
            MarkLabel label;
            label.text =
                (below ? QStringLiteral("<%1") : QStringLiteral(">%1")).arg(QLocale().toString(mark.value, 'g', 3));
            const double width = std::ceil(figuresWidth(m.tick, label.text));
            label.rect = QRectF(at.x() + half, at.y() - m.tickLine - m.px(1), width, m.tickLine);
            const bool inside = label.rect.left() >= box.strip.left() && label.rect.right() <= box.strip.right() &&
                                !(label.rect.left() < box.nowX + 2 && label.rect.right() > box.nowX - 2);
            if (inside && taken.isFree(label.rect)) {
                taken.add(label.rect.adjusted(-m.px(4), 0, m.px(4), 0));
                box.censored.push_back(label);
            }
        }
    }
}

void addNowFlag(LaneBox& box, const LaneModel& model, const QRectF& row, const LaneMetrics& m)
{
    const bool inView = box.nowX >= box.strip.left() && box.nowX <= box.strip.right();
    if (box.axis.mode != AxisMode::Age || model.earlier || !inView || row.height() <= 0.0) {
        return;
    }
    box.nowText = QCoreApplication::translate("LanePainter", "day %1").arg(box.axis.ageInDays(model.flooded));
    const double width = std::ceil(figuresWidth(m.smallStrong, box.nowText) + m.px(12));
    box.nowFlag = QRectF(box.nowX - 1, row.top(), width, row.height() - 1);
    if (box.nowFlag.right() > box.strip.right()) {
        box.nowFlag.moveRight(box.nowX + 1);
    }
}

void addPhases(LaneBox& box, const LaneModel& model, const QRectF& row, const LaneMetrics& m,
               const LaneOptions& options)
{
    if (row.height() <= 0.0 || !options.phases) {
        return;
    }
    for (std::size_t i = 0; i < model.phases.size(); ++i) {
        const auto& phase = model.phases[i];
        const double from = std::max(box.strip.left(), std::round(box.axis.x(phase.from, model.flooded)));
        const double to = std::min(box.strip.right(), std::round(box.axis.x(phase.to, model.flooded)));
        if (to - from < 2.0) {
            continue;
        }
        PhaseBox out{QRectF(from, row.top(), to - from - 2, row.height() - 1), {}, {}, i};
        out.label = out.rect;
        if (out.rect.intersects(box.nowFlag)) {
            const double before = box.nowFlag.left() - out.rect.left();
            const double after = out.rect.right() - box.nowFlag.right();
            before > after ? out.label.setRight(box.nowFlag.left()) : out.label.setLeft(box.nowFlag.right());
        }
        const QString fitted = elidedFigures(m.small, phase.text, out.label.width() - m.px(8));
        // A beginning of less than four letters says nothing.
        if (fitted.size() > 4 || fitted == phase.text) {
            out.text = fitted;
        }
        box.phases.push_back(out);
    }
}

namespace {

void addAlerts(LaneBox& box, const LaneModel& model, const QRectF& row, const LaneMetrics& m)
{
    const double end = std::clamp(box.nowX, box.strip.left(), box.strip.right());
    bool labelled = false;
    double barEnd = end; // bars of further alerts stop short of the first one's words
    for (std::size_t i = 0; i < model.alerts.size(); ++i) {
        const auto& alert = model.alerts[i];
        const double start = std::clamp(std::round(box.axis.x(alert.since, model.flooded)), box.strip.left(), end);
        const double offset = static_cast<double>(box.alerts.size()) * 4.0;
        if (barEnd - start < 1.0 || offset > row.height() - 3) {
            continue;
        }
        AlertBox out;
        out.alert = i;
        out.bar = QRectF(start, row.top() + offset, barEnd - start, 3);
        const std::size_t others = model.alerts.size() - i - 1;
        const QString text =
            others == 0 ? alert.text
                        : QCoreApplication::translate("LaneRows", "%1 (+%2 more)", "an alert, and how many others")
                              .arg(alert.text)
                              .arg(others);
        const double room = end - box.strip.left() - m.px(10);
        const double width = std::min(std::ceil(figuresWidth(m.smallStrong, text)), room - m.glyph - m.px(4));
        if (!labelled && width > m.px(30) && box.kind != LaneKind::Overview) {
            out.text = elidedFigures(m.smallStrong, text, width);
            out.label = QRectF(end - m.px(7) - width, row.top() + 4, width, m.smallLine);
            out.glyph =
                QRectF(out.label.left() - m.glyph - m.px(4), out.label.center().y() - m.glyph / 2, m.glyph, m.glyph);
            labelled = true;
            barEnd = out.glyph.left() - m.px(4);
        }
        box.alerts.push_back(out);
    }
}

void addGates(LaneBox& box, const LaneModel& model, const QRectF& row, const LaneMetrics& m)
{
    double labelEnd = box.strip.left();
    for (std::size_t i = 0; i < model.gates.size(); ++i) {
        const auto& gate = model.gates[i];
        const double from = std::round(box.axis.x(gate.from, model.flooded));
        const double to = std::round(box.axis.x(gate.to, model.flooded));
        if (to < box.strip.left() || from > box.strip.right()) {
            continue;
        }
        GateBox out;
        out.gate = i;
        const double bottom = box.kind == LaneKind::Short ? box.chart.bottom() : box.changeRow.bottom();
        out.area = QRectF(from, row.top() + 2, std::max(3.0, to - from), bottom - row.top() - 2);
        const double x = std::max(from + m.px(5), box.strip.left());
        const double width = std::ceil(figuresWidth(m.smallStrong, gate.text));
        const QRectF glyph(x, row.top() + 4 + (m.smallLine - m.glyph) / 2, m.glyph, m.glyph);
        const QRectF label(glyph.right() + m.px(4), row.top() + 4, width, m.smallLine);
        if (glyph.left() >= labelEnd && label.right() <= box.strip.right() && box.kind != LaneKind::Overview) {
            out.glyph = glyph;
            out.label = label;
            labelEnd = label.right() + m.px(6);
        }
        box.gates.push_back(out);
    }
}

} // namespace

void addNotices(LaneBox& box, const LaneModel& model, const QRectF& row, const LaneMetrics& m,
                const LaneOptions& options)
{
    QRectF place = row;
    if (box.kind == LaneKind::Overview) {
        place = QRectF(row.left(), 0, row.width(), 8);
    }
    addAlerts(box, model, place, m);
    if (options.forecast && box.kind != LaneKind::Overview) {
        addGates(box, model, place, m);
    }
}

void addDoneTicks(LaneBox& box, const LaneModel& model, const LaneMetrics& m, const LaneOptions& options)
{
    if (!options.doneWork || box.kind == LaneKind::Overview) {
        return;
    }
    const double half = m.glyph / 2;
    double last = -1e9;
    for (const qint64 at : model.doneWork) {
        const double x = std::round(box.axis.x(at, model.flooded));
        if (!near(box, x, 0.0) || x - last < half) {
            continue;
        }
        const QRectF tick(x - half, box.dueTops.front(), m.glyph, m.chipHeight);
        if (std::ranges::none_of(box.chips, [&](const ChipBox& chip) { return chip.rect.intersects(tick); })) {
            box.doneTicks.push_back(x);
            last = x;
        }
    }
}

} // namespace littoral::ui::lanerows
