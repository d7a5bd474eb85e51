// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/shown.h"
#include "core/sheets/sheet.h"

/// Worksheets reckon in fixed units (L, cm, °C, degrees of hardness, mg/L), which their formulas name. What people type
/// and read is in the units they chose.
namespace littoral::sheets {

/// How a value in a sheet's unit is shown under a choice of units; the unit itself where the choice does not touch it.
[[nodiscard]] record::Measure measureOf(const QString& sheetUnit, const record::Units& units);
/// Every unit that may be typed for the sheet's one.
[[nodiscard]] std::vector<record::Measure> measuresOf(const QString& sheetUnit);

/// Results and moves in the units on show. Formula and figures keep the sheet's units, and a note says which.
[[nodiscard]] Answer inShownUnits(const Sheet& sheet, Answer answer);

/// A number as it stands in a blank, put into the unit on show; other text as it is.
[[nodiscard]] QString shownText(const QString& text, const record::Measure& measure);

} // namespace littoral::sheets
