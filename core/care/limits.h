// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/care/cycle_phase.h"
#include "core/record/row.h"
#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

#include <QJsonObject>
#include <QString>
#include <map>
#include <vector>

namespace littoral::care {

/// The limits the care rules act on, canonical units (mg N/L, meq/L, mmol/L, °C). Each names where it comes from; those
/// without a publication are common practice or this program's judgement, say so wherever they are shown, and can be
/// set by the keeper (see limitFacts).
struct Limits
{
    /// Free ammonia that asks for a change at once with animals: 0.02 mg/L is the trade's limit; UF/IFAS FA16 puts harm
    /// above 0.05 mg/L.
    double freeAmmoniaAnimals = 0.02;
    /// Nitrite with animals: 0.5 mg/L as the ion; by the rule of SRAC 462 5 mg/L of chloride protects from it.
    double nitriteAnimals = 0.15;
    /// The same in water poor in chloride: 0.1 mg/L as the ion (MSD/Merck Veterinary Manual, table of environmental
    /// diseases).
    double nitriteAnimalsPoorChloride = 0.03;
    /// Chloride below which water counts as poor in it, mg/L (highest band of the British Columbia guideline, from
    /// memory).
    double poorChloride_mg_per_L = 10.0;
    /// Total ammonia that harms plants in weeks (rosettes lost above 0.56 and failing at 0.81 mg N/L, Cao et al. 2007;
    /// stems bear more): the change is asked for at 2.
    double ammoniaPlants = 2.0;
    /// Free ammonia that slows nitrite oxidisers.
    double freeAmmoniaOxidisers = 0.2;
    /// Nitrite during a cycle without animals from which the lane says so: 1 mg/L as the ion (judgement).
    double nitriteWatch = 1.0 / water::kNitritePerN;
    /// Nitrate: 50 mg/L as the ion with animals (trade limit over source water), 80 in any tank (common practice).
    double nitrateAnimals = 50.0 / water::kNitratePerN;
    double nitrateAny = 80.0 / water::kNitratePerN;
    /// Where one change for nitrate aims when the tank has no target of its own, mg/L as the ion 30 (common practice).
    double nitrateAim = 30.0 / water::kNitratePerN;
    /// Degrees above the target from which hardening rock asks for more changes (common practice).
    double hardnessOverTarget_deg = 2.0;
    /// Clear for the reading of a cycle: the first gate's limits (common practice).
    double ammoniaClear = 0.20;
    double nitriteClear = 0.06;
    /// Carbon dioxide never above this with animals (common practice; fish medicine texts aim below 20, toxic above
    /// 40).
    double co2Animals_mg_per_L = 30.0;
    /// Temperatures outside which gates hold and the lane says so (common practice).
    double warm_C = 28.0;
    double cool_C = 20.0;
    /// Carbonate hardness under which pH may fall and nitrification stall: 1 degree (common practice).
    double lowAlkalinity = 1.0 * water::kMeqPerDegree;

    /// Where the keeper's own figures come from, by the limit's key; a limit that is not here is the program's.
    std::map<QString, QString> ownSources;

    /// The source to show beside a limit: the keeper's where it is the keeper's, else `builtIn`.
    [[nodiscard]] QString sourceOf(double Limits::*which, const QString& builtIn) const;
};

/// A limit as it is shown and set.
struct LimitFact
{
    QString key;
    QString name;      ///< source text, translated in the context "Limits"
    QString use;       ///< as name: what the program does with it
    QString parameter; ///< canonical unit of this parameter; empty where `unit` says it all
    QString unit;      ///< of `value`
    double Limits::*value = nullptr;
    double low = 0.0; ///< what can be set
    double high = 0.0;
    QString source;        ///< as name
    bool practice = false; ///< common practice or judgement: the keeper's to set. Published ones are read only
};
[[nodiscard]] const std::vector<LimitFact>& limitFacts();
[[nodiscard]] const LimitFact* limitFact(const QString& key);

/// Setting of the store that holds the keeper's own figure: {"id": key, "value": number in the canonical unit,
/// "source": where it comes from}.
[[nodiscard]] QString limitSetting(const QString& key); ///< "fact.limit.KEY"
/// Checks one such object; the error says what, where and how to mend it.
[[nodiscard]] Result<double> readLimit(const QString& place, const QString& key, const QJsonObject& object);

struct LimitSet
{
    Limits limits;
    std::vector<Error> problems; ///< the keeper's figures that could not be used
};
/// The program's own with the keeper's put over them.
[[nodiscard]] LimitSet limitSet(const record::Row& row);
[[nodiscard]] Limits limitsOf(const record::Row& row);

/// The phase of the cycle with the keeper's limits for what is clear; see cycle_phase.h.
[[nodiscard]] CyclePhase cyclePhase(const record::LayoutRecord& layout, const record::Moment& at, const Limits& limits);
[[nodiscard]] std::vector<CyclePhaseSpan> cyclePhases(const record::LayoutRecord& layout, const record::Moment& until,
                                                      const Limits& limits);

} // namespace littoral::care
