// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/regimen.h"
#include "core/record/tank.h"

#include <QJsonObject>

/// The waters and doses of the invented row, read from its scenario.
namespace littoral::facade {

/// Without the parts of a blend, which are named once all waters have their ids.
[[nodiscard]] record::SourceWater sampleSource(const QJsonObject& from);
/// Of no tank yet; it began so many days before `today`.
[[nodiscard]] record::DoseRegimen sampleRegimen(const QJsonObject& from, const QDate& today);

} // namespace littoral::facade
