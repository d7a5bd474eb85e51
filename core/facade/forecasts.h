// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/doubts.h"
#include "core/facade/forecast_case.h"
#include "core/forecast/forecaster.h"

#include <QObject>
#include <map>
#include <memory>
#include <set>

namespace littoral::facade {

class Keeper;

/// A forecast with the inputs it belongs to.
struct ForecastResult
{
    ForecastCase inputs;
    forecast::Fit fit; ///< the calibrated members, for plans and sliders
    forecast::Forecast forecast;
    /// What would make contradicting readings agree; looked for only when they do (see forecast::worthExplaining).
    std::vector<forecast::Explanation> causes = {};
};

/// Forecasts of the whole row, computed off the calling thread; the newest request for a layout wins and results arrive
/// by signal. Results stay until the record they rest on changes.
class Forecasts final : public QObject
{
    Q_OBJECT

public:
    explicit Forecasts(Keeper& keeper, QObject* parent = nullptr);
    ~Forecasts() override;

    /// The newest result, possibly stale (see isCurrent); nullptr when there has been none.
    [[nodiscard]] std::shared_ptr<const ForecastResult> result(record::LayoutId layout) const;
    [[nodiscard]] bool isRunning(record::LayoutId layout) const;
    /// Whether the result is of the record as it is now.
    [[nodiscard]] bool isCurrent(record::LayoutId layout) const;
    /// Asks for every running layout whose result is missing or out of date. Returns at once. Done by itself when a
    /// store is opened; after changes the owner asks, so that typing a round is one run and not one a cell.
    void refresh();
    /// Blocks until nothing is running (tests, pictures).
    void wait();

signals:
    void ready(littoral::record::LayoutId layout);
    void failed(littoral::record::LayoutId layout, const QString& sentence);

private:
    void request(record::LayoutId layout, const std::vector<TeacherPtr>& teachers);
    void keep(const ForecastResult& made);
    void adopt(record::LayoutId layout, quint64 print, const std::shared_ptr<ForecastResult>& made,
               const QString& failure);

    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace littoral::facade
