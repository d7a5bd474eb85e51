// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"

#include <QString>
#include <optional>
#include <vector>

/// What a stack of fan charts shows, as plain values: painters, table twin and accessible tree all read these. Instants
/// are UTC milliseconds, values are in the unit the panel names.
namespace littoral::ui {

using facade::LaneBand;

/// One quantity: the fitted past as a line, the future as a fan, and the fan of a plan that is only being looked at.
struct FanSeries
{
    QString parameter; ///< key: the hue follows it
    QString label;     ///< written on the line; empty where the panel's title is enough
    std::vector<LaneBand> fitted;
    std::vector<LaneBand> future;
    std::vector<LaneBand> preview;
};

struct FanReading
{
    qint64 at = 0;
    double value = 0.0;
    double low = 0.0; ///< half a kit step either side; low == high: the kit has no steps
    double high = 0.0;
    record::Censoring censoring = record::Censoring::None;
    record::ReadingId reading; ///< none: reckoned from others
    bool atOdds = false;       ///< the calibrated members find it surprising
    QString sentence;
};

struct FanLimit
{
    double value = 0.0;
    QString label; ///< "clear ≤ 0.1"
};

struct FanBracket
{
    qint64 from = 0, to = 0;
    QString text; ///< "clear, 8 in 10"
};

struct FanPanel
{
    QString parameter;  ///< key: hue and mark of the title
    QString title;      ///< "Nitrite"
    QString unit;       ///< "mg/L NO₂"
    int decimals = 1;   ///< of values said in words
    double share = 1.0; ///< of the height that is left for plots
    std::vector<FanSeries> series;
    std::vector<FanReading> readings;
    std::vector<FanReading> reference; ///< an earlier layout at the same age, moved onto this one's time
    std::vector<FanLimit> limits;
    std::optional<FanBracket> bracket;
};

struct FanChange
{
    qint64 at = 0;
    double fraction = 0.0; ///< 0..1
    bool planned = false;
    QString sentence;
};

struct FanStackModel
{
    qint64 flooded = 0;
    std::vector<FanPanel> panels;
    std::vector<FanChange> changes;
    std::vector<FanChange> previewChanges; ///< of the plan looked at; used instead of the planned ones when there are
    QString previewText;                   ///< "30 % every 3 days"; empty without a preview
    QString futureText;                    ///< what is planned, where both are told side by side
    bool previewQuick = false;             ///< few members: the full answer follows
    QString note; ///< over the future: "forecast of 24 Nov 07:31", "not fitted", "forecast running"
};

/// The band nearest to an instant, no further than half a day off; nullptr when there is none.
[[nodiscard]] const LaneBand* bandAt(const std::vector<LaneBand>& bands, qint64 at);

} // namespace littoral::ui
