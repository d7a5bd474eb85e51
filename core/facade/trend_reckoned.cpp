// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/trend_reckoned.h"

#include "core/water/ammonia.h"
#include "core/water/carbonate.h"

#include <QString>
#include <algorithm>
#include <cmath>
#include <optional>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

/// Readings of one parameter, asked for the one nearest in time.
class Companions
{
public:
    Companions(const record::LayoutRecord& layout, const QString& key)
        : m_readings(layout.readingsOf(key))
    {
    }

    [[nodiscard]] std::optional<double> near(const record::Moment& at, double reach_d) const
    {
        const auto after = std::ranges::lower_bound(m_readings, at.utcMs(), {},
                                                    [](const record::Reading* reading) { return reading->at.utcMs(); });
        const record::Reading* best = nullptr;
        double off = reach_d;
        const auto consider = [&](const record::Reading* reading) {
            const double days = std::abs(record::daysBetween(at, reading->at));
            if (days <= off) {
                off = days;
                best = reading;
            }
        };
        if (after != m_readings.begin()) {
            consider(*(after - 1));
        }
        if (after != m_readings.end()) {
            consider(*after);
        }
        return best == nullptr ? std::nullopt : std::optional(best->value);
    }

private:
    std::vector<const record::Reading*> m_readings;
};

} // namespace

std::vector<ReckonedValue> reckonedFreeAmmonia(const record::LayoutRecord& layout)
{
    const Companions acidity(layout, u"ph"_s);
    const Companions warmth(layout, u"temp"_s);
    std::vector<ReckonedValue> made;
    for (const record::Reading* reading : layout.readingsOf(u"tan"_s)) {
        const auto pH = acidity.near(reading->at, kPhReach_d);
        if (!pH) {
            continue;
        }
        const double t_C = warmth.near(reading->at, kSlowReach_d).value_or(layout.layout.temperature_C);
        const double total = reading->censoring == record::Censoring::Below ? reading->high : reading->value;
        if (const auto free = water::freeAmmonia({total}, *pH, t_C)) {
            made.push_back({reading->at, free->value});
        }
    }
    return made;
}

std::vector<ReckonedValue> reckonedCo2(const record::LayoutRecord& layout)
{
    const Companions alkalinity(layout, u"kh"_s);
    const Companions hardness(layout, u"gh"_s);
    const Companions warmth(layout, u"temp"_s);
    std::vector<ReckonedValue> made;
    for (const record::Reading* reading : layout.readingsOf(u"ph"_s)) {
        const auto kh = alkalinity.near(reading->at, kSlowReach_d);
        if (!kh || *kh <= 0.0) {
            continue;
        }
        const double t_C = warmth.near(reading->at, kSlowReach_d).value_or(layout.layout.temperature_C);
        const double gh = hardness.near(reading->at, kSlowReach_d).value_or(*kh / 2.0);
        const water::Medium medium{t_C, water::ionicStrengthFromHardness({gh}, {*kh})};
        if (const auto co2 = water::co2FromPh(reading->value, {*kh}, medium)) {
            made.push_back({reading->at, co2->value});
        }
    }
    return made;
}

} // namespace littoral::facade
