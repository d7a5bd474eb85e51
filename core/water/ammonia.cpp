// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/ammonia.h"

#include "core/water/carbonate.h"
#include "core/water/constants.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {

bool within(double value, double low, double high)
{
    return value >= low && value <= high; // false for NaN
}

/// Range of the tables the criteria were published with (from memory).
bool criteriaHold(double pH, double t_C)
{
    return within(pH, 6.5, 9.0) && within(t_C, 0.0, 30.0);
}

double acid(double pivot, double pH)
{
    return 1.0 + std::pow(10.0, pivot - pH);
}

double alkaline(double pivot, double pH)
{
    return 1.0 + std::pow(10.0, pH - pivot);
}

double acuteShape(double pH)
{
    return 0.7249 * (0.0114 / acid(7.204, pH) + 1.6181 / alkaline(7.204, pH));
}

double acuteInvertebrates(double t_C)
{
    return 23.12 * std::pow(10.0, 0.036 * (20.0 - t_C));
}

} // namespace

std::optional<double> pKa(double t_C)
{
    if (!within(t_C, 0.0, 50.0)) {
        return std::nullopt;
    }
    return 0.09018 + 2729.92 / (t_C + kZeroCelsius_K);
}

std::optional<double> unionisedFraction(double pH, double t_C)
{
    const auto constant = pKa(t_C);
    if (!constant || !within(pH, 2.0, 13.0)) {
        return std::nullopt;
    }
    return 1.0 / (1.0 + std::pow(10.0, *constant - pH));
}

std::optional<double> unionisedFractionInSalt(double pH, double t_C, double ionicStrength)
{
    const auto constant = pKa(t_C);
    if (!constant || !within(pH, 2.0, 13.0) || !within(ionicStrength, 0.0, 0.1)) {
        return std::nullopt;
    }
    const double ammonium = activityCoefficient(1, {t_C, ionicStrength});
    return 1.0 / (1.0 + std::pow(10.0, *constant - pH) / ammonium);
}

std::optional<MgNPerL> freeAmmonia(MgNPerL total, double pH, double t_C)
{
    const auto share = unionisedFraction(pH, t_C);
    if (!share || !(total.value >= 0.0)) {
        return std::nullopt;
    }
    return MgNPerL{total.value * *share};
}

std::optional<MgNPerL> acuteCriterionSalmonidsAbsent(double pH, double t_C)
{
    if (!criteriaHold(pH, t_C)) {
        return std::nullopt;
    }
    return MgNPerL{acuteShape(pH) * std::min(51.93, acuteInvertebrates(t_C))};
}

std::optional<MgNPerL> acuteCriterionSalmonidsPresent(double pH, double t_C)
{
    if (!criteriaHold(pH, t_C)) {
        return std::nullopt;
    }
    const double salmonids = 0.275 / acid(7.204, pH) + 39.0 / alkaline(7.204, pH);
    return MgNPerL{std::min(salmonids, acuteShape(pH) * acuteInvertebrates(t_C))};
}

std::optional<MgNPerL> chronicCriterion(double pH, double t_C)
{
    if (!criteriaHold(pH, t_C)) {
        return std::nullopt;
    }
    const double shape = 0.8876 * (0.0278 / acid(7.688, pH) + 1.1994 / alkaline(7.688, pH));
    return MgNPerL{shape * 2.126 * std::pow(10.0, 0.028 * (20.0 - std::max(7.0, t_C)))};
}

std::optional<MgNPerL> chronicFourDayLimit(double pH, double t_C)
{
    const auto chronic = chronicCriterion(pH, t_C);
    return chronic ? std::optional(MgNPerL{2.5 * chronic->value}) : std::nullopt;
}

} // namespace littoral::water
