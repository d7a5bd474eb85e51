// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/ensemble.h"
#include "core/forecast/fit.h"
#include "core/forecast/tank_case.h"

#include <optional>
#include <stop_token>
#include <vector>

/// Runs of calibrated members through another future, and how high the water goes in them.
namespace littoral::facade {

/// Highest value of each draw over the rows, mg N/L.
struct Peaks
{
    std::vector<double> ammonia, nitrite, free;

    explicit Peaks(const forecast::EnsembleOutcome& outcome);
    /// Share of the draws that keep to these limits all the time; zero without draws.
    [[nodiscard]] double keeping(double total_mgN_per_L, double nitrite_mgN_per_L, double free_mgN_per_L) const;
};
/// Share of the draws that go over the limit.
[[nodiscard]] double shareOver(const std::vector<double>& highest, double limit);

/// The request's future on the members of the fit, evenly chosen where fewer draws are asked for. The same request
/// gives the same draws, so that two futures can be held against each other. Nothing when stopped.
[[nodiscard]] std::optional<forecast::EnsembleOutcome>
runMembers(const forecast::Request& request, const forecast::Fit& fit, const std::stop_token& stop);

} // namespace littoral::facade
