// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/widgets/lanes/lane_cursor.h"

#include <QDate>
#include <map>

namespace littoral::ui {

/// Lane models of the layouts on show, made anew only when what they rest on has changed: the record, the day, or the
/// layout's own forecast.
class LaneFeed final
{
public:
    /// Both outlive the feed.
    LaneFeed(const facade::Keeper& keeper, const facade::Forecasts& forecasts)
        : m_keeper(keeper)
        , m_forecasts(forecasts)
    {
    }

    /// One model for each layout that exists, in the order given.
    [[nodiscard]] std::vector<LanePtr> lanes(const std::vector<record::LayoutId>& layouts);
    /// The running layout of every tank in row order: what is shown until something else is asked for.
    [[nodiscard]] std::vector<record::LayoutId> runningLayouts() const;
    /// How many models were made so far.
    [[nodiscard]] int builds() const { return m_builds; }

private:
    struct Made
    {
        quint64 revision = 0;
        QDate day;
        std::shared_ptr<const facade::ForecastResult> forecast;
        facade::ForecastState state = facade::ForecastState::None;
        LanePtr lane;
    };
    [[nodiscard]] facade::ForecastState stateOf(record::LayoutId layout) const;

    const facade::Keeper& m_keeper;
    const facade::Forecasts& m_forecasts;
    std::map<record::LayoutId, Made> m_made;
    int m_builds = 0;
};

} // namespace littoral::ui
