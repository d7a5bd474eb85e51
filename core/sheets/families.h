// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sheets/sheet.h"

/// The files that hold the sheets, each a family; the registry puts them one after another.
namespace littoral::sheets {

[[nodiscard]] std::vector<Sheet> volumeSheets();
[[nodiscard]] std::vector<Sheet> changeSheets();
[[nodiscard]] std::vector<Sheet> sourceSheets();
[[nodiscard]] std::vector<Sheet> evaporationSheets();
[[nodiscard]] std::vector<Sheet> nitrogenSheets();
[[nodiscard]] std::vector<Sheet> co2Sheets();
[[nodiscard]] std::vector<Sheet> dosingSheets();
[[nodiscard]] std::vector<Sheet> mineralSheets();
[[nodiscard]] std::vector<Sheet> rockSheets();
[[nodiscard]] std::vector<Sheet> hygieneSheets();
[[nodiscard]] std::vector<Sheet> animalSheets();
[[nodiscard]] std::vector<Sheet> oxygenSheets();
[[nodiscard]] std::vector<Sheet> energySheets();

} // namespace littoral::sheets
