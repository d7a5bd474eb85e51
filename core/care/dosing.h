// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"

namespace littoral::care {

/// The key that tasks about a regimen's rounds carry: "dose:" and its name.
[[nodiscard]] QString doseKey(const record::DoseRegimen& regimen);

struct LeanShare
{
    double share = 1.0; ///< 0..1 of the full dose; 0: none is asked for
    LeanDose why = LeanDose::Full;
    QDate until; ///< last day of it
};
/// How much of the full dose is given on a day: on ammonia-rich soil less in the first four weeks, unless nitrate was
/// read low; all of it elsewhere.
[[nodiscard]] LeanShare leanShare(const record::DoseRegimen& regimen, const record::LayoutRecord& layout,
                                  const QDate& day, const record::Moment& now);

} // namespace littoral::care
