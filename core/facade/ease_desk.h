// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/easing.h"
#include "core/facade/forecasts.h"

#include <QObject>
#include <memory>
#include <optional>
#include <stop_token>

/// The forecast's word on easing the water changes.
namespace littoral::facade {

/// Odds that ammonia and nitrite keep to the limits all the time over the next two intervals (a week at least) of the
/// looser cadence, on the calibrated members; planned changes of that time give way to it. Cancelled when stopped,
/// BadInput without members.
[[nodiscard]] Result<double> oddsAtLooser(const ForecastResult& basis, const care::Pace& looser,
                                          const care::EaseLimits& limits, const std::stop_token& stop = {});

/// Asks the forecast about every layout whose record would bear easing, off the calling thread, as soon as its forecast
/// is there; answers arrive by signal and belong to that forecast.
class EaseDesk final : public QObject
{
    Q_OBJECT

public:
    /// Both outlive the desk.
    EaseDesk(Keeper& keeper, Forecasts& forecasts, QObject* parent = nullptr);
    ~EaseDesk() override;

    /// The question with its evidence, when forecast and record both bear it as of now; nothing otherwise.
    [[nodiscard]] std::optional<care::DueItem> question(record::LayoutId layout) const;
    /// The odds reckoned for a layout's present forecast; nothing when there are none yet.
    [[nodiscard]] std::optional<double> odds(record::LayoutId layout) const;
    /// Blocks until nothing is running (tests, pictures).
    void wait();

signals:
    void weighed(littoral::record::LayoutId layout);

private:
    void weigh(record::LayoutId layout);
    void forget();

    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace littoral::facade
