// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <vector>

namespace littoral::findings {

/// A limit to reckon exposure against, canonical units.
struct Limit
{
    QString parameter; ///< a parameter's key, or "nh3" for free ammonia
    double value = 0.0;
    bool above = true; ///< false: exposure is time under it
    QString source;    ///< source text, translated in the context "Facts"
};

/// Hours beyond a limit between two times. Between readings the value is taken to run straight; a water change or a
/// dose in between is not seen. Stretches of over ten days between readings, and those before the first and after the
/// last, count as not read.
struct Exposure
{
    Limit limit;
    double hours = 0.0;     ///< as read
    double hoursLow = 0.0;  ///< if every reading erred to the harmless side by the kit's error
    double hoursHigh = 0.0; ///< if to the other, and gaps next to a reading beyond the limit were beyond it, too
    double readHours = 0.0; ///< covered by readings
    double gapHours = 0.0;  ///< not read
    double worst = 0.0;     ///< the furthest reading
    record::Moment worstAt;
    std::size_t readings = 0;
};

[[nodiscard]] Exposure exposure(const record::Row& row, const record::LayoutRecord& layout, const Limit& limit,
                                const record::Moment& from, const record::Moment& to);

/// The limits that matter for this layout at that time: with animals or without, chloride-poor or not.
[[nodiscard]] std::vector<Limit> limitsFor(const record::Row& row, const record::LayoutRecord& layout,
                                           const record::Moment& at);

/// Error of one reading, canonical units. A card: half way to the steps beside it. "<x" and "a-b": the range itself.
/// Otherwise 10 % of the value, at least the last decimal shown; 0.2 for pH and 0.5 °C (common practice).
struct ErrorRange
{
    double low = 0.0;
    double high = 0.0;
};
[[nodiscard]] ErrorRange errorOf(const record::Row& row, const record::Reading& reading);

} // namespace littoral::findings
