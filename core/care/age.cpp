// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/age.h"

#include <algorithm>
#include <array>

namespace littoral::care {

namespace {

struct Span
{
    LayoutPhase phase;
    int last;
};

constexpr std::array kSpans{
    Span{LayoutPhase::Planned, -1},   Span{LayoutPhase::Week1, 7},      Span{LayoutPhase::Week2, 14},
    Span{LayoutPhase::Weeks3To4, 28}, Span{LayoutPhase::Weeks5To6, 42}, Span{LayoutPhase::Weeks7To8, 56},
    Span{LayoutPhase::Mature, 365},
};

} // namespace

int ageDays(const record::Layout& layout, const QDate& day)
{
    return static_cast<int>(layout.flooded.localDate().daysTo(day));
}

LayoutPhase phaseOfAge(int days)
{
    for (const Span& span : kSpans) {
        if (days <= span.last) {
            return span.phase;
        }
    }
    return LayoutPhase::Old;
}

PhaseDays daysOf(LayoutPhase phase)
{
    for (std::size_t i = 1; i < kSpans.size(); ++i) {
        if (kSpans[i].phase == phase) {
            return {kSpans[i - 1].last + 1, kSpans[i].last};
        }
    }
    return phase == LayoutPhase::Old ? PhaseDays{kSpans.back().last + 1, std::nullopt} : PhaseDays{};
}

LayoutPhase phase(const record::LayoutRecord& layout, const record::Moment& now)
{
    const record::Layout& l = layout.layout;
    if (!l.flooded.isValid() || l.flooded > now) {
        return LayoutPhase::Planned;
    }
    const record::Moment at = l.ended && *l.ended < now ? *l.ended : now;
    return phaseOfAge(ageDays(l, at.localDate()));
}

} // namespace littoral::care
