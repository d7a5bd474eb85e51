// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/standing.h"
#include "core/record/entry.h"
#include "core/record/reading.h"

#include <QString>
#include <optional>
#include <vector>

/// One lane as plain values, words included: what the lane painter, its table twin and its accessible tree all read.
/// Instants are UTC milliseconds; values are in the parameter's shown unit.
namespace littoral::facade {

using Status = care::Status;

/// What a small picture stands for; the painter knows how each is drawn.
enum class Glyph {
    WaterChange,
    Dose,
    Trim,
    Upkeep,
    Media,
    In,
    Out,
    Loss,
    Light,
    Co2,
    Cylinder,
    Observation,
    Test,
    TopUp,
    Note,
    Gate,
    Decide,
    Feed,
    Photo
};

struct LaneMark
{
    qint64 at = 0;
    double value = 0.0;
    record::Censoring censoring = record::Censoring::None;
    record::ReadingId reading;
    QString sentence; ///< "Nitrite 0.8 mg/L, 24 Nov 07:30"
};

struct LaneBand
{
    qint64 at = 0;
    double q10 = 0, q25 = 0, q50 = 0, q75 = 0, q90 = 0;
};

struct LaneSeries
{
    QString parameter; ///< key: hue and mark follow it
    QString name;
    QString unitLabel;
    int decimals = 1;
    std::vector<LaneMark> marks;
    std::vector<LaneBand> forecast; ///< from now on
    std::vector<LaneBand> fitted;   ///< the fitted past
    std::optional<double> targetLow, targetHigh;
};

struct LaneEvent
{
    qint64 at = 0;
    Glyph glyph = Glyph::Note;
    QString word;     ///< "50", "stems", "melt 2"; may be empty
    QString sentence; ///< for the foot strip and screen readers
    bool planned = false;
    bool serious = false;           ///< observation of severity 2 or more, a loss
    std::optional<double> fraction; ///< water change: bar height
    record::EntryId entry;
};

struct LaneChip
{
    care::DueItem item;
    Glyph glyph = Glyph::Note;
    qint64 at = 0; ///< noon of the due day
    bool overdue = false;
    bool today = false;
    int daysOver = 0;
    QString text;      ///< "Water change 40 %, 3 d over"
    QString shortText; ///< "40 %": when chips would collide
    QString title;     ///< "Water change 40 %"
    QString why;       ///< the rest of the foot strip's sentence
};

struct LaneAlert
{
    Status status = Status::Watch;
    qint64 since = 0;
    QString text; ///< "Nitrite above 1 mg/L since 17 Nov"
};

struct LaneGate
{
    qint64 from = 0, to = 0; ///< 8 in 10
    QString text;            ///< "Nitrite clear, 8 in 10"
    QString sentence;
};

struct LanePhase
{
    qint64 from = 0, to = 0;
    QString text;
    bool forecast = false;
};

struct PresentReading
{
    QString parameter, symbol, text;
};

enum class ForecastState { None, Running, Ready, Stale, NotFitted, NotForecast };

struct LaneModel
{
    record::TankId tank;
    record::LayoutId layout;
    bool earlier = false; ///< an ended layout
    bool young = false;   ///< tall lane: first 63 days
    QString name;         ///< "Slate Ford" or "Slate Ford, layout 1"
    QString litresAndAge; ///< "180 L · day 16"
    double length_cm = 0, depth_cm = 0, height_cm = 0;
    double bedShare = 0.15; ///< of the height, for the outline
    Status status = Status::Unknown;
    QString statusWord; ///< rail: "Nitrite high", "2 overdue"
    QString phaseLine;  ///< bold: "Nitrite at its peak"
    QString verdict;    ///< "Nitrite clear about 4–9 Dec (8 in 10)"
    Status lineStatus = Status::Unknown;
    QString statusLine; ///< "Nitrite 6 mg/L: no animals yet"
    QString nextLine;   ///< "Next change 50 %, tomorrow"
    std::vector<PresentReading> present;
    qint64 flooded = 0;
    std::optional<qint64> ended;
    QString floodedText;            ///< "Flooded 9 Nov, 10:00"
    QString startText;              ///< "new media, ammonia-rich soil"
    std::vector<LaneSeries> series; ///< one or two, the ones that matter now
    std::optional<LaneSeries> freeAmmonia;
    std::vector<LaneEvent> events;
    std::vector<qint64> doneWork; ///< ticks in the due row
    std::vector<LaneChip> chips;  ///< overdue first, then by day
    int overdueCount = 0, dueTodayCount = 0, snoozedCount = 0;
    std::vector<LaneAlert> alerts;
    std::vector<LaneGate> gates;
    std::vector<LanePhase> phases; ///< for the age mode
    ForecastState forecastState = ForecastState::None;
    QString forecastNote; ///< "not fitted: ...", "forecast of 07:10", or empty
};

} // namespace littoral::facade
