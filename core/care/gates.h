// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/care/loosening.h"
#include "core/forecast/tank_case.h"
#include "core/record/row.h"

#include <QByteArray>
#include <QDate>
#include <map>
#include <optional>
#include <vector>

/// Who may go in when. The rules are resources/facts/gates.json: defaults from common practice, to be judged by the
/// keeper.
namespace littoral::care {

/// A limit of a gate: a concentration in mg N/L, or "below the first step of the kit in use".
struct GateLimit
{
    std::optional<double> mgN_per_L; ///< nothing: below the first step
};

struct GateDefinition
{
    QString key;                               ///< "G1".."G4"
    QString title;                             ///< source text, translated in the context "Gates"
    QString who;                               ///< as title
    std::map<record::StartMethod, int> minAge; ///< days
    GateLimit tan;
    GateLimit no2;
    double nh3_mgN_per_L = 0.0;
    int readings = 1;                 ///< in a row, of ammonia and of nitrite
    double apartHours = 24;           ///< between them
    std::optional<double> withinDays; ///< all of them no older than this
    std::optional<double> spanDays;   ///< from the first to the last of them
    QStringList also;                 ///< keys of further conditions
    QString source;                   ///< as title
};

struct GateBook
{
    std::vector<GateDefinition> gates;
    double hoursAfterChange = 20; ///< a reading sooner after a change proves nothing
};

[[nodiscard]] Result<GateBook> parseGates(const QByteArray& json);
/// The program's own, read once.
[[nodiscard]] const GateBook& builtInGates();

/// One condition of a gate as it stands, with what decides it.
struct GateCondition
{
    /// "age", "tan", "nh3", "no2", "clear-run", or one of the further ones ("co2-steady", "copper-free",
    /// "melt-not-rising", "algae-to-eat", "temperature", "first-grazers-well", "week-since-addition", "weekly-cadence",
    /// "biofilm", "ph-swing", "temperature-steady", "no-recent-loss", "quarantine", "no-reaction", "hardness-in-range",
    /// "keeper-there")
    QString key;
    Known state = Known::Unknown;
    std::optional<double> value; ///< of the deciding reading, canonical; days or counts where the key says so
    std::optional<double> limit;
    bool firstStep = false; ///< the limit is the kit's first step
    int have = 0;           ///< clear-run: readings that count
    int need = 0;
    double haveDays = 0.0; ///< clear-run: days they span
    double needDays = 0.0;
    record::Moment at; ///< of the deciding reading or entry
    record::ReadingId reading;
    QDate earliest; ///< the first day on which it could be met, where that is known
};

struct GateState
{
    QString key;
    QString title;
    QString who;
    QString source;
    std::vector<GateCondition> conditions;

    /// Met: all are. Unmet: at least one is. Unknown: none is unmet, but something was not looked at.
    [[nodiscard]] Known state() const;
    [[nodiscard]] const GateCondition* condition(const QString& key) const;
};

/// Every gate of a layout as the record tells at `now`; empty for an unknown layout or one not flooded yet.
[[nodiscard]] std::vector<GateState> gateStates(const record::Row& row, record::LayoutId layout,
                                                const record::Moment& now);
/// One gate; nothing for an unknown key.
[[nodiscard]] std::optional<GateState> gateState(const record::Row& row, record::LayoutId layout, const QString& key,
                                                 const record::Moment& now);

/// The gates as the forecaster takes them: limits on the water itself. "Below the first step" is half the step, from
/// where a card reads zero.
[[nodiscard]] std::vector<forecast::GateRule> gateRules(const record::Row& row, record::LayoutId layout);

} // namespace littoral::care
