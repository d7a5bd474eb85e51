// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/acclimation_plan.h"
#include "core/facade/stock_desk.h"
#include "core/facade/stock_model.h"

#include <QDate>
#include <QStringList>

/// The sentences of the Stock page.
namespace littoral::ui {

/// Short, for the row: "In range", "pH 6.4 is under 6.5".
[[nodiscard]] QString animalVerdict(const facade::StockModel& model, const facade::AnimalRow& row);
/// All there is to say, one sentence each: water, gate, company.
[[nodiscard]] QStringList animalReasons(const facade::StockModel& model, const facade::AnimalRow& row,
                                        const QDate& today);
/// "12 since 7 Nov, 1 lost", "8, planned for Thu 26 Nov".
[[nodiscard]] QString animalCountLine(const facade::AnimalRow& row, const QDate& today);
/// Common name, or what was recorded where no species is known.
[[nodiscard]] QString animalName(const facade::AnimalRow& row);
/// Title of the gate for its class of animals.
[[nodiscard]] QString animalClass(const facade::StockModel& model, const facade::AnimalRow& row);
[[nodiscard]] QString concernText(const facade::StockConcern& concern);
/// "6.2–8", with the parameter's decimals.
[[nodiscard]] QString rangeText(const QString& parameter, const facade::StockRange& range);
/// A cell as a sentence: "pH: bears 6.2–8; this water 6.6–6.9".
[[nodiscard]] QString cellText(const facade::StockColumn& column, const facade::StockCell& cell);

[[nodiscard]] QString plantCondition(const facade::PlantRow& row, const QDate& today);
[[nodiscard]] QString lightNeedText(const facade::PlantRow& row);
[[nodiscard]] QString co2NeedText(const facade::PlantRow& row);
/// "light 42 PAR for 7.5 h, CO₂ 27 mg/L"; what is not known is said.
[[nodiscard]] QString plantWater(const facade::StockModel& model);

/// The verdict of a trial: peaks with their odds, as whole sentences.
[[nodiscard]] QStringList trialVerdict(const facade::AdditionTrial& trial);
[[nodiscard]] QStringList gateChanges(const facade::AdditionTrial& trial, const facade::StockModel& model);
/// What speaks against buying now, gates and company; empty when nothing does.
[[nodiscard]] QStringList objections(const facade::StockModel& model, const facade::AnimalRow& row, const QDate& today);

struct AcclimationLine
{
    QString when; ///< "20 min"
    QString what;
    QString why;
};
[[nodiscard]] QString acclimationTitle(const facade::AcclimationPlan& plan);
[[nodiscard]] std::vector<AcclimationLine> acclimationLines(const facade::AcclimationPlan& plan);

[[nodiscard]] QString clockText(const facade::QuarantineClock& clock, const QDate& today);
[[nodiscard]] QString moveText(const facade::MediaMove& move, const record::Row& row, const QDate& today);

} // namespace littoral::ui
