// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecast_case.h"

namespace littoral::facade {

/// Sorts readings of the three nitrogen parameters under the kits that took them, as the likelihood needs them. A
/// reading without a kit is taken as one of a common colour card in the unit it was typed in.
class CaseKits
{
public:
    CaseKits(const record::Row& row, ForecastCase& out)
        : m_row(row)
        , m_out(out)
    {
    }
    void add(const record::Reading& reading, double day);

private:
    int kitIndex(const record::Reading& reading);

    const record::Row& m_row;
    ForecastCase& m_out;
};

/// The kit a reading of tan, no2 or no3 counts as: its own, or the common colour card in the parameter's usual unit.
[[nodiscard]] record::TestKit kitOf(const record::Row& row, const record::Reading& reading);
/// That kit as the likelihood needs it.
[[nodiscard]] forecast::Kit likelihoodKit(const record::TestKit& kit);
/// A reading in that kit's unit.
[[nodiscard]] forecast::CaseReading likelihoodReading(const record::Reading& reading, const forecast::Kit& kit);

/// What the forecaster measures by this parameter key; nothing for parameters outside the nitrogen cycle.
[[nodiscard]] std::optional<forecast::Substance> substanceOf(const QString& parameter);

} // namespace littoral::facade
