// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/cycle_model.h"

/// The parts a CycleModel is put together from.
namespace littoral::ui::cycle {

/// Everything the parts share.
struct Frame
{
    const CycleQuestion& asked;
    const record::LayoutRecord& layout;
    const record::Tank& tank;
    QDate today;
    std::vector<care::GateState> gates;
    std::size_t focus = 0; ///< of gates; gates.size() when all are open
    double net_L = 0.0;

    [[nodiscard]] const facade::ForecastResult* result() const { return asked.forecast; }
    [[nodiscard]] const record::Moment& flooded() const { return layout.layout.flooded; }
    /// Odds of the gate the page is about; nullptr without a forecast.
    [[nodiscard]] const forecast::DateOdds* focusOdds() const;
    /// The odds of a gate by its key; nullptr when it was not forecast.
    [[nodiscard]] const forecast::DateOdds* oddsOf(const QString& gate) const;
    [[nodiscard]] const forecast::GateRule* rule() const;
    [[nodiscard]] QString focusTitle() const;
};

/// Probability that it has happened by `day`.
[[nodiscard]] double oddsBy(const forecast::DateOdds& odds, double day);

void addFans(CycleModel& model, const Frame& frame);
void addVerdict(CycleModel& model, const Frame& frame);
void addTests(CycleModel& model, const Frame& frame);
void addGates(CycleModel& model, const Frame& frame);
void addPlans(CycleModel& model, const Frame& frame);
void addLearned(CycleModel& model, const Frame& frame);
void addRecord(CycleModel& model, const Frame& frame);

} // namespace littoral::ui::cycle
