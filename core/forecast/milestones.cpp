// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/milestones.h"

#include <algorithm>
#include <cmath>

namespace littoral::forecast {

DoseDays::DoseDays(const std::vector<Event>& events)
{
    for (const Event& event : events) {
        if (event.kind == EventKind::AmmoniaDose && event.amount > 0.0) {
            const auto day = static_cast<long>(std::floor(event.day));
            m_days.push_back(day);
            m_days.push_back(day + 1);
        }
    }
    std::sort(m_days.begin(), m_days.end());
}

bool DoseDays::covers(double day) const
{
    return std::binary_search(m_days.begin(), m_days.end(), static_cast<long>(std::floor(day)));
}

double completionDay(const std::vector<double>& meanAmmonia, const std::vector<double>& meanNitrite, double firstDay,
                     const DoseDays& doses, double lastDay)
{
    double clearFrom = firstDay;
    for (std::size_t i = meanAmmonia.size(); i-- > 0;) {
        const double day = firstDay + static_cast<double>(i);
        // !(<) so that a value that is not a number is not clear.
        const bool over = !(meanAmmonia[i] < kClearAmmonia_mgN_per_L && meanNitrite[i] < kClearNitrite_mgN_per_L);
        if (over && !doses.covers(day)) {
            clearFrom = day + 1.0;
            break;
        }
    }
    return clearFrom <= lastDay ? clearFrom : kNotByLast;
}

double gateDay(const FinePath& path, const GateRule& gate, const DoseDays& doses, double decisionDay, double lastDay)
{
    double heldSince = kNotByLast;
    double opened = kNotByLast;
    for (std::size_t i = 0; i < path.days.size(); ++i) {
        const double day = path.days[i];
        const bool holds = path.totalAmmonia[i] < gate.total_mgN_per_L && path.freeAmmonia[i] < gate.free_mgN_per_L &&
                           path.nitrite[i] < gate.nitrite_mgN_per_L;
        if (!holds && !doses.covers(day)) {
            heldSince = kNotByLast;
            opened = kNotByLast;
            continue;
        }
        heldSince = std::min(heldSince, day);
        const double due = std::max(heldSince + gate.spanDays, gate.minDay);
        if (opened == kNotByLast && day >= due - 1e-9) {
            opened = due;
        }
        if (opened <= lastDay && day >= decisionDay) {
            return opened;
        }
    }
    return kNotByLast;
}

Band bandOf(std::vector<double>& values)
{
    std::sort(values.begin(), values.end());
    Band band{};
    const auto last = static_cast<double>(values.size() - 1);
    for (std::size_t i = 0; i < kQuantiles.size(); ++i) {
        const double position = kQuantiles[i] * last;
        const auto below = static_cast<std::size_t>(std::floor(position));
        const std::size_t above = std::min(below + 1, values.size() - 1);
        const double share = position - static_cast<double>(below);
        if (std::isinf(values[above])) {
            band[i] = share > 0.0 ? values[above] : values[below];
        } else {
            band[i] = values[below] + share * (values[above] - values[below]);
        }
    }
    return band;
}

DateOdds oddsOf(std::vector<double> days, double decisionDay, double lastDay)
{
    DateOdds odds;
    odds.lastDay = lastDay;
    for (double& day : days) {
        if (day > lastDay) {
            day = kNotByLast;
        }
    }
    odds.day = bandOf(days); // sorts
    const auto n = static_cast<double>(days.size());
    const auto byDay = [&](double day) {
        return static_cast<double>(std::upper_bound(days.begin(), days.end(), day) - days.begin()) / n;
    };
    for (double day = decisionDay; day < lastDay + 1e-9; day += 1.0) {
        odds.gridDays.push_back(day);
        odds.cumulative.push_back(byDay(day));
    }
    if (odds.gridDays.empty() || odds.gridDays.back() < lastDay - 1e-9) {
        odds.gridDays.push_back(lastDay);
        odds.cumulative.push_back(byDay(lastDay));
    }
    odds.notByLast = 1.0 - byDay(lastDay);
    return odds;
}

} // namespace littoral::forecast
