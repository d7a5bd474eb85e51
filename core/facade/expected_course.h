// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QStringList>
#include <optional>
#include <vector>

/// What nitrate, phosphate, potassium and iron should have come to by what was dosed, changed and taken up.
namespace littoral::facade {

/// Instant UTC ms, levels in the parameter's shown unit. Two points at one instant are before and after an event.
struct ExpectedPoint
{
    qint64 at = 0;
    double low = 0.0, mid = 0.0, high = 0.0;
};

struct ExpectedCourse
{
    std::vector<ExpectedPoint> points; ///< oldest first; empty where no regimen of the layout brings the parameter
    QStringList assumptions;           ///< what was taken for granted, a sentence each

    /// The level just before what happens at `at`; nothing outside the course.
    [[nodiscard]] std::optional<ExpectedPoint> at(qint64 instant) const;
};

/// Days beyond now that the regimen and the cadence of changes are carried on.
inline constexpr int kExpectedAhead_d = 14;

/// mg/L of the parameter (as shown) taken up a day: least and most. As declared for the layout, else by how densely it
/// is planted.
struct UptakeRange
{
    double low_per_d = 0.0, high_per_d = 0.0;
    bool declared = false;
};
[[nodiscard]] UptakeRange uptakeRange(const record::Layout& layout, const QString& parameter);

/// The course of "no3", "po4", "k" or "fe": from the reading nearest to the first day of dosing (its kit's half step
/// either way) by the doses entered, the water changes and the profile of their source, with the least and the most
/// uptake; nitrate from feed is counted. After now by the regimens and by the changes that are due. Empty for other
/// parameters, without litres, and before there is anything to begin from.
[[nodiscard]] ExpectedCourse expectedCourse(const record::Row& row, const record::LayoutRecord& layout,
                                            const QString& parameter, const record::Moment& now);

/// "Nitrate measured 12, expected 18–24 mg/L NO₃ on 25 Nov: ..."; empty when no reading lies on the course.
[[nodiscard]] QString expectedSentence(const record::Row& row, const record::LayoutRecord& layout,
                                       const QString& parameter, const ExpectedCourse& course,
                                       const record::Moment& now);

} // namespace littoral::facade
