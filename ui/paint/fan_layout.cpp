// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/fan_layout.h"

#include "core/wording/numbers.h"
#include "ui/theme/figures.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::ui {

namespace {

constexpr double kLeastPlot = 46.0; // px at text scale 1
constexpr double kBeforeFlooding_d = 0.3;
// A panel without values still gets a scale with a tick at 1.
constexpr double kEmptyTop = 1.0;

struct Spacing
{
    explicit Spacing(const LaneMetrics& metrics)
        : flag(metrics.smallLine + metrics.px(10))
        , title(metrics.bodyLine + metrics.px(4))
        , change(metrics.px(26))
        , axis(metrics.smallLine * 2 + metrics.px(8))
        , gap(metrics.px(8))
        , right(metrics.px(16))
        , top(metrics.px(4))
    {
    }
    double flag, title, change, axis, gap, right, top;
};

double fixedHeight(const FanStackModel& model, const Spacing& space)
{
    const auto panels = static_cast<double>(model.panels.size());
    return space.flag + panels * (space.title + space.gap) + space.title + space.change + space.axis;
}

double shares(const FanStackModel& model)
{
    double sum = 0.0;
    for (const FanPanel& panel : model.panels) {
        sum += panel.share;
    }
    return std::max(sum, 0.1);
}

/// Highest value on show: the outer edge of bands, readings with their bars, limits.
double highest(const FanPanel& panel, const AxisView& axis, qint64 flooded)
{
    double top = 0.0;
    const auto seen = [&](qint64 at) {
        const double x = axis.x(at, flooded);
        return x >= axis.left - 2.0 && x <= axis.right() + 2.0;
    };
    for (const FanSeries& series : panel.series) {
        for (const LaneBand& band : series.fitted) {
            top = seen(band.at) ? std::max(top, band.q50) : top;
        }
        for (const auto* bands : {&series.future, &series.preview}) {
            for (const LaneBand& band : *bands) {
                top = seen(band.at) ? std::max(top, band.q90) : top;
            }
        }
    }
    for (const auto* readings : {&panel.readings, &panel.reference}) {
        for (const FanReading& reading : *readings) {
            top = seen(reading.at) ? std::max({top, reading.value, reading.high}) : top;
        }
    }
    for (const FanLimit& limit : panel.limits) {
        top = std::max(top, limit.value * 1.15);
    }
    return top > 0.0 ? top : kEmptyTop;
}

void addTicks(FanBox& box, double top, const LaneMetrics& metrics)
{
    const int most = std::clamp(static_cast<int>(box.plot.height() / (metrics.tickLine * 2.1)) + 1, 3, 6);
    box.scale = niceScale(0.0, top, most);
    // The scale ends a little above the highest value, not at the next round number: plots are low enough as it is.
    box.scale.high = std::min(box.scale.high, std::max(top * 1.08, box.scale.low + 1e-12));
    box.scale.low = 0.0;
    for (const double tick : box.scale.ticks) {
        if (tick <= box.scale.high * 1.0001) {
            box.ticks.push_back({box.y(tick), wording::numberText(tick, box.scale.decimals)});
        }
    }
}

} // namespace

const LaneBand* bandAt(const std::vector<LaneBand>& bands, qint64 at)
{
    const LaneBand* best = nullptr;
    qint64 off = kDayMs / 2;
    for (const LaneBand& band : bands) {
        const qint64 distance = std::abs(band.at - at);
        if (distance <= off) {
            off = distance;
            best = &band;
        }
    }
    return best;
}

AxisView fromFlooding(AxisView axis, qint64 flooded)
{
    const auto margin = static_cast<qint64>(kBeforeFlooding_d * static_cast<double>(kDayMs));
    const qint64 first = (axis.mode == AxisMode::Age ? 0 : flooded) - margin;
    if (axis.from < first && axis.to > first + kDayMs) {
        axis.from = first;
    }
    return axis;
}

double leastFanHeight(const FanStackModel& model, const LaneMetrics& metrics)
{
    double least = std::numeric_limits<double>::infinity();
    for (const FanPanel& panel : model.panels) {
        least = std::min(least, panel.share);
    }
    const double unit = std::isfinite(least) ? metrics.px(kLeastPlot) / least : 0.0;
    return std::ceil(fixedHeight(model, Spacing(metrics)) + unit * shares(model));
}

FanStackLayout layOutFans(const FanStackModel& model, const LaneMetrics& metrics, AxisView axis, QSizeF size)
{
    const Spacing space(metrics);
    FanStackLayout made;
    made.height = std::max(size.height(), leastFanHeight(model, metrics));
    // One left edge for all panels: room for the widest tick text any of them could have.
    const double left = std::ceil(figuresWidth(metrics.tick, QStringLiteral("0.000")) + metrics.px(20));
    axis.left = left;
    axis.width = std::max(10.0, size.width() - left - space.right);
    made.axis = fromFlooding(axis, model.flooded);
    made.nowX = made.axis.x(axis.now, model.flooded);
    made.floodedX = made.axis.x(model.flooded, model.flooded);
    made.flagHeight = space.flag;
    const double unit = (made.height - fixedHeight(model, space)) / shares(model);
    double y = space.flag;
    for (const FanPanel& panel : model.panels) {
        FanBox box;
        box.title = QRectF(left, y, axis.width, space.title);
        y += space.title;
        const double plot = std::floor(unit * panel.share);
        box.plot = QRectF(left, y + space.top, axis.width, std::max(10.0, plot - space.top));
        y += plot + space.gap;
        addTicks(box, highest(panel, made.axis, model.flooded), metrics);
        made.panels.push_back(std::move(box));
    }
    made.changeTitle = QRectF(left, y, axis.width, space.title);
    made.changeRow = QRectF(left, y + space.title, axis.width, space.change);
    made.axisRow = QRectF(left, made.changeRow.bottom(), axis.width, space.axis);
    return made;
}

} // namespace littoral::ui
