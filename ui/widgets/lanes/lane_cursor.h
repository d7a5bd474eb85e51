// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_layout.h"

#include <memory>
#include <optional>
#include <vector>

namespace littoral::ui {

using LanePtr = std::shared_ptr<const facade::LaneModel>;

/// Where the keyboard is in a stack of lanes: a lane, a row in it, an item in the row. Moves only to what exists; pure.
class LaneCursor final
{
public:
    [[nodiscard]] std::size_t lane() const { return m_lane; }
    [[nodiscard]] LaneRow row() const { return m_row; }
    [[nodiscard]] const std::optional<LaneItem>& item() const { return m_item; }

    /// Takes up a new set of lanes: stays on the same layout and the same work, entry or reading where it still exists;
    /// else on its neighbour in the row.
    void adopt(const std::vector<LanePtr>& before, const std::vector<LanePtr>& after, const LaneOptions& options);
    void toLane(std::size_t lane, const std::vector<LanePtr>& lanes, const LaneOptions& options);
    void toItem(std::size_t lane, const LaneItem& item);
    /// False when there is no further lane, item or row that way.
    bool stepLane(int by, const std::vector<LanePtr>& lanes, const LaneOptions& options);
    bool stepItem(int by, const std::vector<LanePtr>& lanes, const LaneOptions& options);
    bool stepRow(int by, const std::vector<LanePtr>& lanes, const LaneOptions& options);
    bool toEnd(bool last, const std::vector<LanePtr>& lanes, const LaneOptions& options);

private:
    std::size_t m_lane = 0;
    LaneRow m_row = LaneRow::Due;
    std::optional<LaneItem> m_item;
};

} // namespace littoral::ui
