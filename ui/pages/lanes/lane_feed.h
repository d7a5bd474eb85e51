// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/ease_desk.h"
#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/widgets/lanes/lane_cursor.h"

#include <QDate>
#include <map>

namespace littoral::ui {

/// Lane models of the layouts on show, made anew only when what they rest on has changed: the record, the day, the
/// layout's own forecast, or what it says about easing the water changes.
class LaneFeed final
{
public:
    /// All outlive the feed.
    LaneFeed(const facade::Keeper& keeper, const facade::Forecasts& forecasts, const facade::EaseDesk& ease)
        : m_keeper(keeper)
        , m_forecasts(forecasts)
        , m_ease(ease)
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
        std::optional<double> easeOdds;
        LanePtr lane;
    };
    [[nodiscard]] facade::ForecastState stateOf(record::LayoutId layout) const;

    const facade::Keeper& m_keeper;
    const facade::Forecasts& m_forecasts;
    const facade::EaseDesk& m_ease;
    std::map<record::LayoutId, Made> m_made;
    int m_builds = 0;
};

} // namespace littoral::ui
