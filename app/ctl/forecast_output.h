// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/ctl/forecast_run.h"

#include <QByteArray>
#include <QString>

namespace littoral::ctl {

/// The three ways `forecast` prints; resources/formats.md describes the first two column by column. Tanks without an
/// answer are left out of CSV and text and have an "error" in JSON.
[[nodiscard]] QString forecastCsv(const std::vector<TankForecast>& all);
[[nodiscard]] QByteArray forecastJson(const std::vector<TankForecast>& all);
[[nodiscard]] QString forecastText(const TankForecast& one);

/// The unit in which the kit bands of a substance are given: that of the kit it was last read with, else the usual one.
[[nodiscard]] QString kitUnit(const TankForecast& one, forecast::Substance substance);
/// "tan", "no2", "no3" or "nh3".
[[nodiscard]] QString parameterKey(forecast::Substance substance);

} // namespace littoral::ctl
