// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/lanes/lane_cursor.h"

#include <algorithm>

namespace littoral::ui {

namespace {

using facade::LaneModel;

/// Whether two items of two versions of a lane are the same thing in the record.
bool sameThing(const LaneModel& before, const LaneItem& a, const LaneModel& after, const LaneItem& b)
{
    if (a.row != b.row) {
        return false;
    }
    if (a.row == LaneRow::Due) {
        const auto& x = before.chips[a.index].item;
        const auto& y = after.chips[b.index].item;
        return x.templateKey == y.templateKey && x.cadenceDue == y.cadenceDue && x.subject == y.subject;
    }
    if (a.row == LaneRow::Events) {
        return before.events[a.index].entry == after.events[b.index].entry && a.at == b.at;
    }
    return a.at == b.at && a.sentence == b.sentence;
}

std::size_t positionIn(const std::vector<LaneItem>& items, const LaneItem& item)
{
    return static_cast<std::size_t>(std::ranges::find_if(items, [&](const LaneItem& each) { return each.same(item); }) -
                                    items.begin());
}

/// What a lane is entered at: its most pressing work, else the newest thing in the row.
std::optional<LaneItem> entryOf(const LaneModel& model, LaneRow row, const LaneOptions& options)
{
    const auto items = itemsOf(model, row, options);
    if (items.empty()) {
        return {};
    }
    if (row != LaneRow::Due) {
        return items.back();
    }
    const auto first = std::ranges::find(items, std::size_t{0}, &LaneItem::index);
    return *first;
}

} // namespace

void LaneCursor::adopt(const std::vector<LanePtr>& before, const std::vector<LanePtr>& after,
                       const LaneOptions& options)
{
    if (after.empty()) {
        m_lane = 0;
        m_item.reset();
        return;
    }
    const LanePtr old = m_lane < before.size() ? before[m_lane] : nullptr;
    const auto found =
        std::ranges::find_if(after, [&](const LanePtr& lane) { return old != nullptr && lane->layout == old->layout; });
    if (found == after.end()) {
        toLane(std::min(m_lane, after.size() - 1), after, options);
        return;
    }
    m_lane = static_cast<std::size_t>(found - after.begin());
    if (!m_item) {
        m_item = entryOf(**found, m_row, options);
        return;
    }
    const auto items = itemsOf(**found, m_row, options);
    const auto same =
        std::ranges::find_if(items, [&](const LaneItem& each) { return sameThing(*old, *m_item, **found, each); });
    if (same != items.end()) {
        m_item = *same;
        return;
    }
    if (items.empty()) {
        m_item.reset();
        return;
    }
    const std::size_t was = positionIn(itemsOf(*old, m_row, options), *m_item);
    m_item = items[std::min(was, items.size() - 1)];
}

void LaneCursor::toLane(std::size_t lane, const std::vector<LanePtr>& lanes, const LaneOptions& options)
{
    m_lane = lane;
    m_row = LaneRow::Due;
    m_item = lane < lanes.size() ? entryOf(*lanes[lane], m_row, options) : std::nullopt;
}

void LaneCursor::toItem(std::size_t lane, const LaneItem& item)
{
    m_lane = lane;
    m_row = item.row;
    m_item = item;
}

bool LaneCursor::stepLane(int by, const std::vector<LanePtr>& lanes, const LaneOptions& options)
{
    const auto wanted = static_cast<std::ptrdiff_t>(m_lane) + by;
    if (wanted < 0 || wanted >= static_cast<std::ptrdiff_t>(lanes.size())) {
        return false;
    }
    toLane(static_cast<std::size_t>(wanted), lanes, options);
    return true;
}

bool LaneCursor::stepItem(int by, const std::vector<LanePtr>& lanes, const LaneOptions& options)
{
    if (m_lane >= lanes.size()) {
        return false;
    }
    const auto items = itemsOf(*lanes[m_lane], m_row, options);
    if (items.empty()) {
        return false;
    }
    if (!m_item) {
        m_item = by > 0 ? items.front() : items.back();
        return true;
    }
    const auto wanted = static_cast<std::ptrdiff_t>(positionIn(items, *m_item)) + by;
    if (wanted < 0 || wanted >= static_cast<std::ptrdiff_t>(items.size())) {
        return false;
    }
    m_item = items[static_cast<std::size_t>(wanted)];
    return true;
}

bool LaneCursor::stepRow(int by, const std::vector<LanePtr>& lanes, const LaneOptions& options)
{
    if (m_lane >= lanes.size()) {
        return false;
    }
    const int count = static_cast<int>(std::size(kLaneRows));
    for (int row = static_cast<int>(m_row) + by; row >= 0 && row < count; row += by) {
        if (const auto item = entryOf(*lanes[m_lane], static_cast<LaneRow>(row), options)) {
            m_row = static_cast<LaneRow>(row);
            m_item = item;
            return true;
        }
    }
    return false;
}

bool LaneCursor::toEnd(bool last, const std::vector<LanePtr>& lanes, const LaneOptions& options)
{
    if (m_lane >= lanes.size()) {
        return false;
    }
    const auto items = itemsOf(*lanes[m_lane], m_row, options);
    if (items.empty()) {
        return false;
    }
    m_item = last ? items.back() : items.front();
    return true;
}

} // namespace littoral::ui
