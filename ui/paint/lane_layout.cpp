// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_layout.h"

#include "ui/paint/lane_rows.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::ui {

namespace {

using facade::LaneModel;
using facade::LaneSeries;

/// Heights of the rows of a lane, top first.
struct Rows
{
    double top = 0, phase = 0, alerts = 0, chart = 0, events = 0, changes = 0, due = 0, bottom = 0;
    int dueCount = 1;
    double total() const { return top + phase + alerts + chart + events + changes + due + bottom; }
};

bool mixedWork(const LaneModel& model)
{
    const auto isChange = [](const facade::LaneChip& chip) { return chip.glyph == facade::Glyph::WaterChange; };
    return std::ranges::any_of(model.chips, isChange) && !std::ranges::all_of(model.chips, isChange);
}

Rows rowsOf(const LaneModel& model, LaneKind kind, const LaneMetrics& m, const LaneFrame& frame)
{
    Rows rows;
    rows.bottom = std::round(m.px(2));
    rows.due = m.dueRow;
    if (kind == LaneKind::Overview) {
        rows.top = 1;
        rows.chart = std::max(14.0, 44.0 - 2 - m.dueRow);
        return rows;
    }
    const bool age = frame.axis.mode == AxisMode::Age;
    rows.top = std::round(m.px(2));
    rows.phase = age ? m.phaseRow : 0.0;
    const bool notices = !model.alerts.empty() || !model.gates.empty();
    rows.alerts = notices || kind == LaneKind::Tall ? m.alertRow : std::round(m.px(5));
    if (kind == LaneKind::Tall) {
        rows.chart = m.tallStrip;
        rows.events = m.eventRow;
        rows.changes = m.changeRow;
        rows.dueCount = mixedWork(model) ? 2 : 1;
    } else {
        rows.chart = m.shortStrip;
        rows.events = std::max(m.eventRow, m.changeRow);
    }
    rows.due = m.dueRow * rows.dueCount;
    return rows;
}

QSizeF outlineOf(const LaneModel& model, const LaneFrame& frame, LaneKind kind)
{
    if (frame.outlineScale <= 0.0 || model.length_cm <= 0.0) {
        return {};
    }
    const QSizeF size = outlineSize(shapeOf(model), frame.outlineScale * (kind == LaneKind::Overview ? 0.6 : 1.0));
    return {size.width() + 6, size.height()};
}

/// Lowest and highest value of a series in the range shown: marks, and the forecast's upper band.
void widen(double& low, double& high, const LaneSeries& series, const AxisView& axis, qint64 flooded,
           const LaneOptions& options)
{
    const auto inView = [&](qint64 at) {
        const double x = axis.x(at, flooded);
        return x >= axis.left - 40 && x <= axis.right() + 40;
    };
    const auto take = [&](double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    };
    for (const auto& mark : series.marks) {
        if (inView(mark.at)) {
            take(mark.value);
        }
    }
    if (options.forecast) {
        for (const auto& band : series.forecast) {
            if (inView(band.at)) {
                take(band.q90);
                take(band.q10);
            }
        }
    }
    if (options.targets) {
        if (series.targetLow) {
            take(*series.targetLow);
        }
        if (series.targetHigh) {
            take(*series.targetHigh);
        }
    }
}

/// "mg/L" of "mg/L NO₂": series of one unit share a scale, whatever they are counted as.
QString plainUnit(const QString& label)
{
    return label.section(QLatin1Char(' '), 0, 0);
}

struct ScaleRange
{
    QString key;
    QString unit; ///< as on the top label
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
};

std::vector<ScaleRange> rangesOf(LaneBox& box, const LaneModel& model, const LaneOptions& options)
{
    std::vector<ScaleRange> ranges;
    for (const LaneSeries* series : shownSeries(model, options)) {
        // Free ammonia is a few thousandths of what it is drawn beside: on the same scale it would be a flat line.
        const bool alone = model.freeAmmonia && series == &*model.freeAmmonia;
        const QString key = alone ? series->parameter : plainUnit(series->unitLabel);
        const auto found = std::ranges::find(ranges, key, &ScaleRange::key);
        const auto index = static_cast<std::size_t>(found - ranges.begin());
        if (found == ranges.end()) {
            ranges.push_back({key, series->unitLabel});
        } else if (ranges[index].unit != series->unitLabel) {
            ranges[index].unit = plainUnit(series->unitLabel);
        }
        widen(ranges[index].low, ranges[index].high, *series, box.axis, model.flooded, options);
        box.series.push_back({series, index});
    }
    return ranges;
}

void addScales(LaneBox& box, const LaneModel& model, const LaneMetrics& m, const LaneOptions& options)
{
    const std::vector<ScaleRange> ranges = rangesOf(box, model, options);
    const int most = std::max(2, static_cast<int>(box.chart.height() / (m.tickLine * 1.35)) + 1);
    std::vector<QString> units;
    for (const ScaleRange& range : ranges) {
        box.scales.push_back(range.low > range.high ? niceScale(0.0, 1.0, 2)
                                                    : niceScale(range.low, range.high, std::min(most, 5)));
        units.push_back(range.unit);
    }
    lanerows::addTicks(box, units, m);
}

} // namespace

TankShape shapeOf(const LaneModel& model)
{
    return {model.length_cm, model.height_cm, model.bedShare};
}

LaneKind laneKind(const LaneModel& model, bool overview)
{
    if (overview) {
        return LaneKind::Overview;
    }
    return model.young ? LaneKind::Tall : LaneKind::Short;
}

std::vector<const LaneSeries*> shownSeries(const LaneModel& model, const LaneOptions& options)
{
    std::vector<const LaneSeries*> shown;
    for (const LaneSeries& series : model.series) {
        shown.push_back(&series);
    }
    if (options.freeAmmonia && model.freeAmmonia) {
        shown.push_back(&*model.freeAmmonia);
    }
    return shown;
}

double laneHeight(const LaneModel& model, LaneKind kind, const LaneMetrics& metrics, const LaneFrame& frame)
{
    const HeaderBox header = layOutHeader(model, kind, metrics, frame.axis.left, outlineOf(model, frame, kind));
    return std::ceil(std::max(header.height, rowsOf(model, kind, metrics, frame).total())) + 1;
}

LaneBox layOutLane(const LaneModel& model, LaneKind kind, const LaneMetrics& m, const LaneFrame& frame)
{
    LaneBox box;
    box.kind = kind;
    box.width = frame.width;
    box.axis = frame.axis;
    box.header = layOutHeader(model, kind, m, frame.axis.left, outlineOf(model, frame, kind));
    Rows rows = rowsOf(model, kind, m, frame);
    const double spare = std::max(0.0, std::ceil(box.header.height) - std::ceil(rows.total()));
    rows.chart += spare; // the chart takes what the header needs more
    box.height = std::ceil(rows.total()) + 1;
    settleHeader(box.header, box.height, m);
    const double left = frame.axis.left;
    const double right = frame.axis.right();
    box.strip = QRectF(left, 0, right - left, box.height);
    double y = rows.top;
    const auto take = [&](double height) {
        const QRectF row(left, y, right - left, height);
        y += height;
        return row;
    };
    const QRectF phaseRow = take(rows.phase);
    const QRectF alertRow = take(rows.alerts);
    const double breath = std::round(m.px(kind == LaneKind::Overview ? 1 : 4));
    box.chart = take(rows.chart).adjusted(0, breath, 0, -breath);
    box.eventRow = take(rows.events);
    box.changeRow = rows.changes > 0 ? take(rows.changes) : box.eventRow;
    for (int i = 0; i < rows.dueCount; ++i) {
        box.dueTops.push_back(take(rows.due / rows.dueCount).top() + std::round(m.px(1)));
    }
    box.nowX = std::round(box.axis.x(box.axis.now, model.flooded));
    box.floodedX = std::round(box.axis.x(model.flooded, model.flooded));
    if (model.ended) {
        box.endedX = std::round(box.axis.x(*model.ended, model.flooded));
    }
    addScales(box, model, m, frame.options);
    lanerows::addCensored(box, model, m);
    lanerows::addNowFlag(box, model, phaseRow, m);
    lanerows::addPhases(box, model, phaseRow, m, frame.options);
    lanerows::addNotices(box, model, alertRow, m, frame.options);
    lanerows::addEvents(box, model, m);
    if (!model.earlier) {
        box.chips = layOutChips(model.chips, box.axis, model.flooded, {box.dueTops, left, right, box.nowX}, m);
    }
    lanerows::addDoneTicks(box, model, m, frame.options);
    return box;
}

} // namespace littoral::ui
