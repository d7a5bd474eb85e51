// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/tank_case.h"

#include <limits>
#include <vector>

namespace littoral::forecast {

inline constexpr double kNotByLast = std::numeric_limits<double>::infinity();

/// Clear means below 0.25 ppm as the common cards read it: total ammonia as NH3 (1.21588 ppm per mg N/L), nitrite as
/// the ion (3.28454 ppm per mg N/L).
inline constexpr double kClearAmmonia_mgN_per_L = 0.25 / 1.21588;
inline constexpr double kClearNitrite_mgN_per_L = 0.25 / 3.28454;

/// Members are run this much past the last day reported, so that a completion on the last day has been clear for a
/// while.
inline constexpr double kClearTail_d = 3.0;

/// Days of an ammonia dose and the days after them: they count neither for nor against being clear.
class DoseDays final
{
public:
    explicit DoseDays(const std::vector<Event>& events);
    /// day: any instant, days since flooding.
    [[nodiscard]] bool covers(double day) const;

private:
    std::vector<long> m_days; ///< sorted
};

/// First day (a whole number, or firstDay) from which both daily means stay below the clear limits to the end of the
/// series, dose days left out; kNotByLast when that is later than lastDay. means[i] covers [firstDay + i, + 1).
[[nodiscard]] double completionDay(const std::vector<double>& meanAmmonia, const std::vector<double>& meanNitrite,
                                   double firstDay, const DoseDays& doses, double lastDay);

/// A member's path on a fine grid, mg N/L.
struct FinePath
{
    std::vector<double> days;
    std::vector<double> totalAmmonia;
    std::vector<double> freeAmmonia;
    std::vector<double> nitrite;
};

/// When the gate opens: all limits have then held without a break for spanDays (dose days left out) and the tank is
/// minDay old. A stretch that held but broke before decisionDay does not count: that gate is shut now.
[[nodiscard]] double gateDay(const FinePath& path, const GateRule& gate, const DoseDays& doses, double decisionDay,
                             double lastDay);

/// Sorts days and makes odds of them; kNotByLast or anything past lastDay is its own outcome.
[[nodiscard]] DateOdds oddsOf(std::vector<double> days, double decisionDay, double lastDay);

/// Quantiles kQuantiles of values (any order), linear between neighbours; infinite where a neighbour is.
[[nodiscard]] Band bandOf(std::vector<double>& values);

} // namespace littoral::forecast
