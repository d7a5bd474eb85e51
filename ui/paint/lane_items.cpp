// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_layout.h"

#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

using facade::LaneModel;

struct MarkRef
{
    std::size_t series = 0;
    const facade::LaneMark* mark = nullptr;
};

/// The mark with this number when the marks of all series shown are counted on.
MarkRef markAt(const LaneBox& box, std::size_t index)
{
    for (std::size_t s = 0; s < box.series.size(); ++s) {
        const auto& marks = box.series[s].series->marks;
        if (index < marks.size()) {
            return {s, &marks[index]};
        }
        index -= marks.size();
    }
    return {};
}

QRectF around(QPointF centre, double side)
{
    return {centre.x() - side / 2, centre.y() - side / 2, side, side};
}

QRectF chipRect(const LaneBox& box, std::size_t chip)
{
    const auto found = std::ranges::find_if(
        box.chips, [&](const ChipBox& c) { return std::ranges::find(c.chips, chip) != c.chips.end(); });
    return found == box.chips.end() ? QRectF() : found->rect;
}

QRectF eventRect(const LaneBox& box, const LaneModel& model, std::size_t event, const LaneMetrics& metrics)
{
    for (const EventBox& e : box.events) {
        if (e.event == event) {
            return e.label.isEmpty() ? e.glyph : e.glyph.united(e.label.adjusted(0, 2, 0, -2));
        }
    }
    for (const ChangeBar& bar : box.changes) {
        if (bar.event == event) {
            return bar.digits.isEmpty() ? bar.bar : bar.bar.united(bar.digits);
        }
    }
    // One without a picture, for want of room: the keyboard still stops at its place.
    const double x = box.axis.x(model.events[event].at, model.flooded);
    const bool shown = box.kind != LaneKind::Overview && x >= box.strip.left() && x <= box.strip.right();
    return shown ? around({x, box.eventRow.center().y()}, metrics.glyph) : QRectF();
}

QRectF noticeRect(const LaneBox& box, const LaneModel& model, std::size_t index)
{
    if (index < model.alerts.size()) {
        for (const AlertBox& alert : box.alerts) {
            if (alert.alert == index) {
                return alert.label.isEmpty() ? alert.bar : alert.glyph.united(alert.label);
            }
        }
        return {};
    }
    for (const GateBox& gate : box.gates) {
        if (gate.gate == index - model.alerts.size()) {
            return gate.label.isEmpty() ? QRectF(gate.area.left(), gate.area.top(), gate.area.width(), 12)
                                        : gate.glyph.united(gate.label);
        }
    }
    return {};
}

std::vector<LaneItem> readingItems(const LaneModel& model, const LaneOptions& options)
{
    std::vector<LaneItem> items;
    std::size_t index = 0;
    for (const facade::LaneSeries* series : shownSeries(model, options)) {
        for (const auto& mark : series->marks) {
            items.push_back({LaneRow::Readings, index++, mark.at, mark.sentence});
        }
    }
    return items;
}

} // namespace

std::vector<LaneItem> itemsOf(const LaneModel& model, LaneRow row, const LaneOptions& options)
{
    std::vector<LaneItem> items;
    switch (row) {
    case LaneRow::Due:
        for (std::size_t i = 0; i < model.chips.size(); ++i) {
            const auto& chip = model.chips[i];
            items.push_back({row, i, chip.at, chip.text});
        }
        break;
    case LaneRow::Events:
        for (std::size_t i = 0; i < model.events.size(); ++i) {
            items.push_back({row, i, model.events[i].at, model.events[i].sentence});
        }
        break;
    case LaneRow::Readings:
        items = readingItems(model, options);
        break;
    case LaneRow::Notices:
        for (std::size_t i = 0; i < model.alerts.size(); ++i) {
            items.push_back({row, i, model.alerts[i].since, model.alerts[i].text});
        }
        if (options.forecast) {
            for (std::size_t i = 0; i < model.gates.size(); ++i) {
                const auto& gate = model.gates[i];
                items.push_back(
                    {row, model.alerts.size() + i, gate.from, gate.sentence.isEmpty() ? gate.text : gate.sentence});
            }
        }
        break;
    }
    std::ranges::stable_sort(items, {}, &LaneItem::at);
    return items;
}

QRectF itemRect(const LaneBox& box, const LaneModel& model, const LaneItem& item, const LaneMetrics& metrics)
{
    switch (item.row) {
    case LaneRow::Due:
        return chipRect(box, item.index);
    case LaneRow::Events:
        return eventRect(box, model, item.index, metrics);
    case LaneRow::Notices:
        return noticeRect(box, model, item.index);
    case LaneRow::Readings:
        break;
    }
    const MarkRef ref = markAt(box, item.index);
    if (ref.mark == nullptr) {
        return {};
    }
    const double x = box.axis.x(ref.mark->at, model.flooded);
    if (x < box.strip.left() || x > box.strip.right()) {
        return {};
    }
    const ValueScale& scale = box.scales[box.series[ref.series].scale];
    return around({x, scale.y(ref.mark->value, box.chart.top(), box.chart.bottom())}, std::round(metrics.px(10)));
}

std::optional<LaneItem> itemAt(const LaneBox& box, const LaneModel& model, QPointF at, const LaneMetrics& metrics,
                               const LaneOptions& options)
{
    std::optional<LaneItem> best;
    double bestDistance = 1e9;
    for (const LaneRow row : kLaneRows) {
        for (const LaneItem& item : itemsOf(model, row, options)) {
            const QRectF rect = itemRect(box, model, item, metrics);
            if (rect.isEmpty()) {
                continue;
            }
            const double growX = std::max(0.0, (24.0 - rect.width()) / 2);
            const double growY = std::max(0.0, (24.0 - rect.height()) / 2);
            if (!rect.adjusted(-growX, -growY, growX, growY).contains(at)) {
                continue;
            }
            // Inside the thing itself beats inside its enlarged target.
            const double distance =
                rect.contains(at) ? 0.0 : std::hypot(at.x() - rect.center().x(), at.y() - rect.center().y());
            if (distance < bestDistance) {
                best = item;
                bestDistance = distance;
            }
        }
    }
    return best;
}

} // namespace littoral::ui
