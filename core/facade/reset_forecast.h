// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/facade/learned.h"
#include "core/forecast/plans.h"

#include <QStringList>
#include <array>
#include <stop_token>
#include <vector>

/// Carrying on with a layout against starting it afresh today, forecast by the same model over the same days, so that
/// what each costs in time, work and water can be talked over. It weighs nothing else and decides nothing.
namespace littoral::facade {

/// Days both are looked at, from today.
inline constexpr double kResetWindow_d = 60.0;

/// When a gate's readings clear on one way, and what is changed until then.
struct ResetGate
{
    QString key, title;
    forecast::DateOdds odds; ///< days since that way's flooding
    double changes = 0.0;    ///< mean over the members, to the gate or the window's end
    double litres = 0.0;
};

/// One way, in days from now.
struct ResetWay
{
    bool fresh = false;
    record::Moment flooded;
    double ageNow = 0.0; ///< days since its flooding
    bool fitted = true;  ///< false: the readings contradict the model, bands are the prior's
    std::vector<double> days;
    std::array<std::vector<forecast::Band>, 2> bands; ///< total ammonia, nitrite; mg N/L of the water
    std::vector<ResetGate> gates;
    double changes = 0.0; ///< in the window
    double litres = 0.0;
    int readings = 0; ///< of ammonia and nitrite it rests on
    QStringList assumed;
    QStringList learned; ///< what other layouts of the row taught it
};

struct ResetForecast
{
    record::LayoutId layout;
    record::Moment now;
    record::StartMethod start = record::StartMethod::NewMedia;
    double net_L = 0.0;
    ResetWay keep;
    ResetWay fresh;
};

/// Forecasts both ways. `start`: how the new layout would begin. The fresh one has no readings: it rests on the prior
/// and on what finished layouts of the row taught. Pure but for `learning`'s cache; half a second or so; any thread.
/// BadInput for a layout that has ended or has no litres, Cancelled when stopped.
[[nodiscard]] Result<ResetForecast> resetForecast(const record::Row& row, record::LayoutId layout,
                                                  record::StartMethod start, const record::Moment& now,
                                                  Learning& learning, const std::stop_token& stop = {});

/// The same in words.
struct ResetTable
{
    QString headline;
    QStringList heads;
    std::vector<QStringList> rows; ///< a gate each: when, odds, changes and litres on either way
    QStringList sentences;         ///< work over the window, what is assumed, what was learned, what it does not weigh
};
[[nodiscard]] ResetTable resetTable(const ResetForecast& made);
/// "new media", "mature media" ...
[[nodiscard]] QString startWords(record::StartMethod start);

} // namespace littoral::facade
