// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_chips.h"
#include "ui/paint/lane_header.h"
#include "ui/paint/outline.h"
#include "ui/paint/value_scale.h"

#include <QPointF>
#include <optional>
#include <span>

namespace littoral::ui {

/// What the page bar switches.
struct LaneOptions
{
    bool forecast = true;
    bool targets = true;
    bool doneWork = true;
    bool freeAmmonia = false;
    bool phases = true; ///< in age mode

    bool operator==(const LaneOptions&) const = default;
};

struct EventBox
{
    QRectF glyph;
    QRectF label; ///< empty: dropped because it would collide
    std::size_t event = 0;
};

struct ChangeBar
{
    QRectF bar;
    QRectF digits; ///< empty: dropped
    std::size_t event = 0;
};

struct AlertBox
{
    QRectF bar;
    QRectF glyph;
    QRectF label;
    QString text;
    std::size_t alert = 0;
};

struct GateBox
{
    QRectF area; ///< bracket and fill
    QRectF glyph;
    QRectF label; ///< empty: dropped
    std::size_t gate = 0;
};

struct PhaseBox
{
    QRectF rect;
    QRectF label; ///< the part of it that no flag covers
    QString text; ///< as much as fits; may be empty
    std::size_t phase = 0;
};

/// A value beside the chart; the grid line stands at `level`.
struct TickLabel
{
    QRectF rect;
    QString text;
    double level = 0.0;
    std::size_t scale = 0;
};

/// "<0.05" beside a reading that its kit could not place.
struct MarkLabel
{
    QRectF rect;
    QString text;
};

/// Width of a day, px, from which readings off the scale have their arrow and label.
inline constexpr double kArrowPerDay = 6.0;

struct SeriesBox
{
    const facade::LaneSeries* series = nullptr;
    std::size_t scale = 0; ///< into LaneBox::scales
};

/// Every rectangle of one lane, lane-local: x from the left edge of the view, y from the top of the lane. Points into
/// the model it was made from.
struct LaneBox
{
    LaneKind kind = LaneKind::Short;
    double width = 0.0;
    double height = 0.0;
    HeaderBox header;
    QRectF strip; ///< all to the right of the header
    QRectF chart;
    QRectF eventRow, changeRow; ///< the same in short lanes
    std::vector<double> dueTops;
    AxisView axis;
    double nowX = 0.0, floodedX = 0.0;
    QRectF nowFlag; ///< in age mode, while now is in the range shown
    QString nowText;
    std::optional<double> endedX;
    std::vector<ValueScale> scales;
    std::vector<SeriesBox> series;
    std::vector<TickLabel> ticks;
    std::vector<MarkLabel> censored;
    std::vector<EventBox> events;
    std::vector<ChangeBar> changes;
    std::vector<AlertBox> alerts;
    std::vector<GateBox> gates;
    std::vector<PhaseBox> phases;
    std::vector<double> doneTicks; ///< px
    std::vector<ChipBox> chips;
};

/// What every lane of a view has in common.
struct LaneFrame
{
    AxisView axis; ///< left edge = header width
    double width = 0.0;
    double outlineScale = 0.0; ///< px per cm
    LaneOptions options;
};

[[nodiscard]] TankShape shapeOf(const facade::LaneModel& model);
/// Overview when asked for, else tall for young tanks and short for settled ones.
[[nodiscard]] LaneKind laneKind(const facade::LaneModel& model, bool overview);
/// Does not depend on the range shown, so panning never moves a lane up or down.
[[nodiscard]] double laneHeight(const facade::LaneModel& model, LaneKind kind, const LaneMetrics& metrics,
                                const LaneFrame& frame);
[[nodiscard]] LaneBox layOutLane(const facade::LaneModel& model, LaneKind kind, const LaneMetrics& metrics,
                                 const LaneFrame& frame);

/// The rows of a lane that Tab walks through.
enum class LaneRow { Due, Events, Readings, Notices };
inline constexpr LaneRow kLaneRows[] = {LaneRow::Due, LaneRow::Events, LaneRow::Readings, LaneRow::Notices};

/// One thing in a row: what a key, a pointer or a screen reader stops at.
struct LaneItem
{
    LaneRow row = LaneRow::Due;
    std::size_t index = 0; ///< chip, event, alert (then gates); marks of all series in one count
    qint64 at = 0;
    QString sentence;

    [[nodiscard]] bool same(const LaneItem& other) const { return row == other.row && index == other.index; }
};

/// Everything in a row, in time order, whether it is in the range shown or not.
[[nodiscard]] std::vector<LaneItem> itemsOf(const facade::LaneModel& model, LaneRow row, const LaneOptions& options);
/// Where an item stands, lane-local; empty when it is outside the range shown. A folded chip has the rectangle of its
/// fold.
[[nodiscard]] QRectF itemRect(const LaneBox& box, const facade::LaneModel& model, const LaneItem& item,
                              const LaneMetrics& metrics);
/// The nearest item whose rectangle, grown to a 24 px target, holds `at` (lane-local).
[[nodiscard]] std::optional<LaneItem> itemAt(const LaneBox& box, const facade::LaneModel& model, QPointF at,
                                             const LaneMetrics& metrics, const LaneOptions& options);

/// Series shown, free ammonia last when it is asked for.
[[nodiscard]] std::vector<const facade::LaneSeries*> shownSeries(const facade::LaneModel& model,
                                                                 const LaneOptions& options);

} // namespace littoral::ui
