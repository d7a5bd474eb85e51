// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/plans.h"
#include "core/forecast/tank_case.h"
#include "core/record/moment.h"

#include <QDate>
#include <QString>
#include <QStringList>
#include <optional>

/// Sentences about water-change plans, the next test, what was learned from other layouts, and the track record.
namespace littoral::wording {

/// "30 % every 3 days", "50 % daily, half from 9 Dec", "no change"; with a source water that is not the tank's own:
/// "30 % every 7 days from rain barrel". `from`: the day the plan begins.
[[nodiscard]] QString planName(const forecast::ChangePlan& plan, const QDate& from, const QDate& today,
                               const QString& source = {});
/// "as planned now": the changes that are already in the record or follow from the cadence.
[[nodiscard]] QString presentPlanName();
/// What the adoption is called in the journal: "Plan adopted: 30 % every 3 days, Slate Ford".
[[nodiscard]] QString planAdoptedLabel(const QString& name, const QString& tank);

/// "9 changes, 210 L of new water until the gate opens."; without litres when the volume is not known.
[[nodiscard]] QString planWaterText(double changes, const std::optional<double>& litres);
/// "Nitrite above 0.5 mg/L NO₂ for about 29 hours of 35 days, free ammonia above 0.02 mg/L N for about 4."
[[nodiscard]] QString planExposureText(const forecast::PlanOutcome& outcome, const forecast::ExposureLimits& limits,
                                       double windowDays);
/// "Nitrite above 1 mg/L NO₂ at some time in 35 days: 1 in 10."
[[nodiscard]] QString nitriteAboveText(double nitrite_mgN_per_L, double odds, double windowDays);
/// The answer to "cheapest plan that keeps P(nitrite above X) under Y": its name, or nothing when there is none.
[[nodiscard]] QString cheapestPlanText(const std::optional<QString>& name, double nitrite_mgN_per_L, double most);
/// What very heavy changes do: clear readings by dilution alone.
[[nodiscard]] QString dilutionCaution();

/// Readings and filter apart. "Readings clear for G2 27 Nov – 5 Dec, 8 in 10".
[[nodiscard]] QString readingsClearText(const QString& gate, const forecast::DateOdds& odds,
                                        const record::Moment& flooded, const QDate& today);
/// "Filter carries 0.12 mg/L N a day 3–9 Dec, 8 in 10"; nothing without a load.
[[nodiscard]] QString carriesLoadText(const forecast::DateOdds& odds, double load_mgN_per_L_d,
                                      const record::Moment& flooded, const QDate& today);
/// "On the day the readings are clear, the filter carries 0.12 mg/L N a day: 3 in 10."
[[nodiscard]] QString carriesAtGateText(const std::optional<double>& odds, double load_mgN_per_L_d);
/// "The filter could take 0.050 mg/L N to 0.21 mg/L N a day now, 8 in 10." of the weaker guild.
[[nodiscard]] QString capacityText(double low_mgN_per_L_d, double high_mgN_per_L_d);
/// Where the load comes from; empty when there is none.
[[nodiscard]] QString loadRemark(double feeding_mgN_per_L_d, double animals_mgN_per_L_d, double planned_mgN_per_L_d,
                                 bool stated);

/// "A nitrite test on 27 Nov would narrow the range from 6 days to about 4."
[[nodiscard]] QString nextTestText(const forecast::TestValue& test, const record::Moment& flooded, const QDate& today);
/// "If it reads 0.25: 27 Nov – 2 Dec (4 in 10)." `unit` is the kit's.
[[nodiscard]] QString testOutcomeText(const forecast::TestOutcome& outcome, const QString& unit,
                                      const record::Moment& flooded, const QDate& today);
/// When no test of the coming week is worth much.
[[nodiscard]] QString noTestNarrowsText();

/// What other layouts of the row can teach about a new one.
enum class LearnedKind { SoilRelease, SoilRate, SoilBuffering, SourceNitrate, SourceAmmonia, MatureMedia, ChangeGain };

/// "Soil of this kind releases 1.6 times the usual nitrogen, as seen in Fen Corner 1 and Mill Race 2; 8 in 10 within a
/// factor of 1.9, without them 2.8."
[[nodiscard]] QString learnedText(LearnedKind kind, double typical, double prior80, double learned80,
                                  const QStringList& layouts);

/// "Of 41 readings, the 8-in-10 bands held 34 (83 in 100)."
[[nodiscard]] QString heldBandsText(int readings, int inside, int inTen = 8);
/// How far off the middles were against taking the last reading to stay: "... 0.45 times as far off ...". Empty without
/// a comparison.
[[nodiscard]] QString sharpnessText(double error, double persistence);
/// "Of 6 dates that have come about, the 8-in-10 ranges held 5."
[[nodiscard]] QString heldDatesText(int closed, int inside);
/// The same of one gate's dates; `gate` is its key. Empty when none has come about.
[[nodiscard]] QString heldGateText(const QString& gate, int closed, int inside);
/// How much wider earlier bands would have had to be; empty at 1.
[[nodiscard]] QString wideningText(double inflation);

} // namespace littoral::wording
