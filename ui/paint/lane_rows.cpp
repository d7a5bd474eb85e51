// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_rows.h"

#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

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
        if (!digits.isEmpty() && taken.isFree(label.adjusted(1, 0, 2, 0))) {
            bar.digits = label;
            taken.add(label);
        }
    }
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
        return left.serious != right.serious ? left.serious : left.at > right.at;
    });
    return order;
}

void addLabels(LaneBox& box, const LaneModel& model, const LaneMetrics& m, Taken& taken)
{
    for (EventBox& event : box.events) {
        const QString& word = model.events[event.event].word;
        if (word.isEmpty()) {
            continue;
        }
        const QRectF label(event.glyph.right() + m.px(4), box.eventRow.top(), std::ceil(figuresWidth(m.body, word)),
                           m.eventRow);
        const bool inside =
            label.right() <= box.strip.right() && !(label.left() < box.nowX && label.right() > box.nowX - 2);
        if (inside && taken.isFree(label.adjusted(0, 2, m.px(3), -2))) {
            event.label = label;
            taken.add(label.adjusted(0, 2, 0, -2));
        }
    }
}

} // namespace

void addEvents(LaneBox& box, const LaneModel& model, const LaneMetrics& m)
{
    if (box.kind == LaneKind::Overview) {
        return;
    }
    Taken taken;
    addChangeBars(box, model, m, taken);
    const double y = std::round(box.eventRow.top() + (m.eventRow - m.glyph) / 2);
    for (const std::size_t i : byWeight(model)) {
        const double x = box.axis.x(model.events[i].at, model.flooded);
        if (!near(box, x, m.glyph)) {
            continue;
        }
        const QRectF glyph(std::round(x - m.glyph / 2), y, m.glyph, m.glyph);
        if (taken.isFree(glyph.adjusted(2, 2, -2, -2)) || model.events[i].serious) {
            taken.add(glyph);
            box.events.push_back({glyph, {}, i});
        }
    }
    addLabels(box, model, m, taken);
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
        PhaseBox out{QRectF(from, row.top(), to - from - 2, row.height() - 1), {}, i};
        const double room = out.rect.width() - m.px(8);
        const QString fitted = elidedFigures(m.small, phase.text, room);
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
