// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/tank.h"

#include <QString>
#include <QStringList>

namespace littoral::ui {

/// What the first-run card asks for, and the tank and layout that follow from it.
struct FirstTank
{
    QString name;
    double length_cm = 0.0, depth_cm = 0.0, height_cm = 0.0;
    record::Moment flooded;
    int start = 0; ///< index in startChoices()
};

/// Ways to have started, in words.
[[nodiscard]] QStringList startChoices();
[[nodiscard]] record::Tank tankOf(const FirstTank& given);
/// Includes a bed of 5 cm, or 15 % of a low tank's height, so that the litres of water are not overstated.
[[nodiscard]] record::Layout layoutOf(const FirstTank& given);
/// Depth of that bed, cm.
[[nodiscard]] double proposedBed_cm(double height_cm);
/// The work the built-in cadence proposes for the first week from `now`, in one sentence; empty when there is none.
[[nodiscard]] QString proposedWork(const record::Tank& tank, const record::Layout& layout, const record::Moment& now);

} // namespace littoral::ui
