// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/tank_case.h"
#include "tests/skill/independent_tank.h"

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

/// Rules by which a forecast is scored. Concentrations are compared on ln(1 + c / c0), c in ppm of the common cards and
/// c0 = 0.25, 0.25 and 5 ppm: nothing below the first step counts for much, and a doubling counts the same at any
/// height.
namespace littoral::skill {

/// A concentration in mg N/L, or a card's value in its unit, on the scale scores are made on.
[[nodiscard]] double scaledWater(double water_mgN_per_L, std::size_t substance);
[[nodiscard]] double scaledCard(double value_ppm, std::size_t substance);

/// How far the 50, 80 and 95 % bands hold a truth that is known to +-resolution only: the share of the predictive
/// probability within that distance of it that lies inside the band. Where predicted and true water are both nothing
/// this is the nominal share, and a band that is plainly missed or met counts 0 or 1: the non-randomised probability
/// integral transform of discrete data (C. Czado, T. Gneiting and L. Held, Biometrics 65, 2009).
[[nodiscard]] std::array<double, 3> heldShares(const forecast::Band& band, double truth, double resolution);

/// Continuous ranked probability score of seven quantiles (forecast::kQuantiles, already on the scale wanted): mean
/// pinball loss, each quantile weighted by the share of probability it stands for. Every distribution here is scored by
/// this same rule; a point forecast scores |error|, as the exact formula gives.
[[nodiscard]] double crpsOf(const forecast::Band& quantiles, double truth);

/// CRPS of a date in days, with the mass of 'not by then' in it: the integral of (F(t) - 1{t >= truth})^2 from `from`
/// to kLastDay. The odds give F day by day from the decision day on; before it F is interpolated between the quantiles.
[[nodiscard]] double crpsOfDate(const forecast::DateOdds& odds, double from, double truth);

/// Probability of completion by `day`.
[[nodiscard]] double probabilityBy(const forecast::DateOdds& odds, double day);

/// What a keeper with a spreadsheet could say: the last value of a kit, and a straight line through the last five.
struct Spreadsheet
{
    double last = 0.0;   ///< kit unit
    double line = 0.0;   ///< ordinary least squares at the day asked for, not below zero
    double spread = 0.0; ///< the regression's own predictive standard deviation there; 0 when it has none (fewer than
                         ///< three readings, or five on one line)
};

/// Nothing when the kit was never read.
[[nodiscard]] std::optional<Spreadsheet> spreadsheetOf(const forecast::TankCase& tank, std::size_t kit, double day);

/// Scores of the line: as a point, and as a normal with its predictive spread, cut at zero.
[[nodiscard]] double crpsOfLine(const Spreadsheet& sheet, std::size_t substance, double scaledTruth);
[[nodiscard]] double crpsOfLineWithSpread(const Spreadsheet& sheet, std::size_t substance, double scaledTruth);

} // namespace littoral::skill
