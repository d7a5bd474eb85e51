// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/fact_book.h"
#include "core/record/row.h"

#include <QStringList>
#include <optional>
#include <vector>

/// What came of each change of the CO2: the indicator's colour, pH before and after, and how the animals bore it.
namespace littoral::facade {

/// How long after a change pH, colour and animals are still put down to it.
inline constexpr double kTrialHours = 48.0;
/// How long before it a pH reading still counts as the state before.
inline constexpr double kBeforeHours = 24.0;

struct TrialPh
{
    record::Moment at;
    double hours = 0.0; ///< after the change; below zero: before
    double ph = 0.0;
    /// mg/L by pH and the nearest KH within a week, with the range that the steps of both leave; nothing without KH.
    std::optional<double> co2, co2Low, co2High;
};

struct TrialSign
{
    record::Moment at;
    QString subject; ///< observation, or the animal lost
    int severity = 0;
    bool loss = false;
};

struct Co2Trial
{
    record::EntryId entry;
    record::Moment at;
    std::optional<double> target_mg_per_L, hoursADay;
    QString set;    ///< what was written about it
    QString colour; ///< "blue", "green", "yellow" as seen within the hours; empty: not looked at
    std::optional<TrialPh> before;
    std::vector<TrialPh> after;   ///< oldest first
    std::vector<TrialSign> signs; ///< animals, oldest first
    bool looked = false;          ///< something was recorded about the animals, also that nothing was amiss
    bool gasping = false;
};

/// Newest first; changes that are planned are none. A trial ends early where the next change begins.
[[nodiscard]] std::vector<Co2Trial> co2Trials(const record::Row& row, const record::LayoutRecord& layout,
                                              const facts::FactBook& book, const record::Moment& now);

} // namespace littoral::facade
