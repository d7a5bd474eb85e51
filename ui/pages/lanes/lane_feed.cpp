// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/lanes/lane_feed.h"

#include "core/facade/lanes.h"

#include <algorithm>

namespace littoral::ui {

namespace {

/// How far ahead due work is reckoned: past the widest span the page offers ahead of now.
constexpr int kDaysAhead = 63;

} // namespace

std::vector<record::LayoutId> LaneFeed::runningLayouts() const
{
    std::vector<record::LayoutId> layouts;
    const record::Row& row = m_keeper.row();
    for (const record::Tank& tank : row.tanks) {
        if (const auto* current = row.currentLayout(tank.id, m_keeper.clock().now())) {
            layouts.push_back(current->layout.id);
        }
    }
    return layouts;
}

facade::ForecastState LaneFeed::stateOf(record::LayoutId layout) const
{
    const record::LayoutRecord* found = m_keeper.row().layout(layout);
    if (found != nullptr && found->layout.ended) {
        return facade::ForecastState::NotForecast;
    }
    if (m_forecasts.isRunning(layout)) {
        return facade::ForecastState::Running;
    }
    if (m_forecasts.result(layout) == nullptr) {
        return facade::ForecastState::None;
    }
    return m_forecasts.isCurrent(layout) ? facade::ForecastState::Ready : facade::ForecastState::Stale;
}

std::vector<LanePtr> LaneFeed::lanes(const std::vector<record::LayoutId>& layouts)
{
    const record::Moment now = m_keeper.clock().now();
    std::vector<LanePtr> lanes;
    std::map<record::LayoutId, Made> kept;
    for (const record::LayoutId id : layouts) {
        if (m_keeper.row().layout(id) == nullptr) {
            continue;
        }
        Made wanted{m_keeper.revision(), now.localDate(), m_forecasts.result(id),
                    stateOf(id),         m_ease.odds(id), nullptr};
        const auto found = m_made.find(id);
        const bool same = found != m_made.end() && found->second.revision == wanted.revision &&
                          found->second.day == wanted.day && found->second.forecast == wanted.forecast &&
                          found->second.state == wanted.state && found->second.easeOdds == wanted.easeOdds;
        if (same) {
            wanted.lane = found->second.lane;
        } else {
            const QDate until = wanted.day.addDays(kDaysAhead);
            wanted.lane = std::make_shared<const facade::LaneModel>(facade::laneOf(
                m_keeper.row(), id, now, until, wanted.forecast.get(), wanted.state, m_ease.question(id)));
            ++m_builds;
        }
        lanes.push_back(wanted.lane);
        kept[id] = std::move(wanted);
    }
    m_made = std::move(kept);
    return lanes;
}

} // namespace littoral::ui
