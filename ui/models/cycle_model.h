// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/gates.h"
#include "core/facade/plan_desk.h"
#include "core/facade/track_record.h"
#include "ui/models/plain_table.h"
#include "ui/paint/fan_panel.h"
#include "ui/paint/plan_scatter.h"

#include <QStringList>
#include <QTimeZone>
#include <array>
#include <optional>

/// The Cycle page as plain values, words included: its widgets read nothing else.
namespace littoral::ui {

/// What the page was asked to show, and what there is to show it from. Pointers may be null.
struct CycleQuestion
{
    const record::Row& row;
    record::TankId tank;
    record::Moment now;
    const facade::ForecastResult* forecast = nullptr;
    facade::ForecastState state = facade::ForecastState::None;
    QString failure{}; ///< why there is no new forecast; empty when all is well
    const facade::PlanSet* plans = nullptr;
    const facade::PlanPreview* preview = nullptr;
    bool comparing = false;
    const facade::TrackRecord* track = nullptr;
    QString gate{};                               ///< key; empty: the next one that is not open
    std::optional<forecast::ChangePlan> chosen{}; ///< nothing: the plan that is followed now
    bool withReference = false;                   ///< an earlier layout at the same age
};

/// A test that could be made and what it would tell.
struct CycleTest
{
    QString title;        ///< "Nitrite, Fri 27 Nov"
    QString gain;         ///< "6 d to 4 d"
    QString sentence;     ///< the whole thing
    QStringList outcomes; ///< one sentence for each answer
};

struct CycleGate
{
    QString key, title, who;
    QStringList mustHold;
    QString opens;      ///< "4–9 Dec"
    QString odds;       ///< "8 in 10"
    QString capacity;   ///< "filter by then: 6 in 10"; empty without a load
    QStringList needed; ///< "2 clear tests", "1 other thing"
    QStringList conditions;
    QString sentence;
    facade::Status status = facade::Status::Waiting;
};

struct CyclePlan
{
    std::optional<forecast::ChangePlan> plan; ///< nothing: as planned now
    std::optional<std::size_t> outcome;       ///< place in the table; nothing: only looked at
    QString letter, name, detail;
    QString litres, changes, hours, gate, late;
    QString sentence;
};

/// How earlier bands held, as tenths of the predictive probability below each reading.
struct CycleRecord
{
    QStringList sentences;
    std::array<int, 10> tenths{};
    int readings = 0;
};

struct CycleModel
{
    enum class State {
        NoTank,
        NoLayout, ///< nothing is running and flooded
        Loading,  ///< no forecast yet, one is on its way
        Failed,   ///< no forecast and none to come
        Ready,
    };
    State state = State::NoTank;
    QString message; ///< for every state but Ready: what will be here and what fills it

    record::LayoutId layout;
    QString name;
    QString facts;   ///< "150 L · day 16 · new media, ammonia-rich soil"
    QString fitLine; ///< "600 members · fitted to 45 readings · 24 Nov 07:31"
    FanStackModel fans;
    QString referenceName; ///< "Layout 1 at the same age"; empty when there is none

    facade::Status status = facade::Status::Unknown;
    QString headline;
    QStringList known;    ///< whole sentences
    QString nextTest;     ///< the strong one
    QStringList warnings; ///< not fitted, readings at odds, too little data, stale
    std::vector<record::ReadingId> atOdds;
    std::vector<CycleTest> tests;

    QString gate; ///< key of the gate the page is about; "complete" when none is left
    QString gateTitle;
    std::vector<CycleGate> gates;
    QString capacityNote;

    bool comparing = false;
    std::vector<CyclePlan> plans;
    std::size_t selected = 0; ///< row of plans
    std::size_t compared = 0; ///< how many were
    QString hoursHeader;      ///< "Hours" and "> 0.5 mg/L" under it
    QString lateHeader;       ///< "After" and "9 Dec" under it
    ScatterModel scatter;
    std::vector<std::optional<forecast::ChangePlan>> pointPlans; ///< the plan of each point of `scatter`
    QStringList sources;      ///< names of the waters a plan may use, the layout's own first
    QString adoption;         ///< what adopting would replace
    QStringList adoptionList; ///< "goes: 50 % on 27 Nov"
    bool previewPending = false;

    QStringList learned;
    bool learnOn = true;
    bool canLearn = false; ///< other layouts have something to teach, or it is switched off
    CycleRecord record;
    QStringList remarks;
};

[[nodiscard]] CycleModel cycleModel(const CycleQuestion& question);

/// Day by day: every series' middle and 8-in-10 range, and what was read. `zone` tells whose days are meant.
[[nodiscard]] PlainTable fanTable(const FanStackModel& model, const QTimeZone& zone, qint64 now);

} // namespace littoral::ui
