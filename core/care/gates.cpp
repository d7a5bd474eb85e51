// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/gates.h"

#include "core/care/age.h"
#include "core/care/gate_extras.h"
#include "core/care/own_gates.h"
#include "core/care/water_state.h"

#include <algorithm>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Moment;
using record::Reading;

namespace {

constexpr double kStaleDays = 14.0;
// Where no kit with steps is known: what careful drop kits tell from zero.
constexpr double kFirstAmmoniaStep = 0.10;
constexpr double kFirstNitriteStep = 0.02;

/// First step above zero of the kit a parameter is read with, mg N/L.
double firstStep(const record::Row& row, const record::LayoutRecord& layout, const QString& parameter)
{
    const double fallback = parameter == u"tan"_s ? kFirstAmmoniaStep : kFirstNitriteStep;
    const record::TestKit* kit = row.kitFor(layout, parameter);
    const record::Parameter* known = record::findParameter(parameter);
    if (kit == nullptr || known == nullptr) {
        return fallback;
    }
    const record::Unit* unit = known->unit(kit->unit);
    const auto step = std::ranges::find_if(kit->steps, [](double s) { return s > 0.0; });
    return unit == nullptr || step == kit->steps.end() ? fallback : unit->toCanonical(*step);
}

/// A reading against a gate's limit. Where it must be below the first step, a colour seen between zero and the step is
/// not.
Against against(const Reading& reading, const GateLimit& limit, double step)
{
    if (limit.mgN_per_L) {
        return compare(reading, *limit.mgN_per_L);
    }
    switch (reading.censoring) {
    case record::Censoring::Below:
        return reading.high <= step * (1.0 + 1e-9) ? Against::Below : Against::Undecided;
    case record::Censoring::Between:
    case record::Censoring::Above:
        return Against::Above;
    case record::Censoring::None:
        break;
    }
    return reading.value < step * (1.0 - 1e-9) ? Against::Below : Against::Above;
}

/// The run of clear readings of one parameter that reaches to the newest.
struct Run
{
    int count = 0;
    Moment newest;
    Moment oldest;
};

class GateJudge
{
public:
    GateJudge(const GateExtras& extras, const GateDefinition& gate, double hoursAfterChange)
        : m_extras(extras)
        , m_at(extras.circumstances())
        , m_layout(*m_at.layout)
        , m_gate(gate)
        , m_hoursAfterChange(hoursAfterChange)
    {
    }

    GateState judge() const
    {
        GateState state{m_gate.key, m_gate.title, m_gate.who, m_gate.source, {}};
        state.conditions.push_back(age());
        state.conditions.push_back(level(u"tan"_s, m_gate.tan));
        state.conditions.push_back(freeAmmonia());
        state.conditions.push_back(level(u"no2"_s, m_gate.no2));
        state.conditions.push_back(clearRun());
        for (const QString& key : m_gate.also) {
            state.conditions.push_back(m_extras.judge(key));
        }
        return state;
    }

private:
    GateCondition age() const
    {
        GateCondition condition;
        condition.key = u"age"_s;
        const int days = ageDays(m_layout.layout, m_at.now.localDate());
        const int wanted = m_gate.minAge.at(m_layout.layout.start);
        condition.value = days;
        condition.limit = wanted;
        condition.state = days >= wanted ? Known::Met : Known::Unmet;
        condition.earliest = m_layout.layout.flooded.localDate().addDays(wanted);
        return condition;
    }

    const Reading* newestFresh(const QString& parameter) const
    {
        const Reading* reading = m_layout.newest(parameter, m_at.now);
        return reading != nullptr && record::daysBetween(reading->at, m_at.now) <= kStaleDays ? reading : nullptr;
    }

    GateCondition level(const QString& parameter, const GateLimit& limit) const
    {
        const double step = firstStep(*m_at.row, m_layout, parameter);
        GateCondition condition;
        condition.key = parameter;
        condition.firstStep = !limit.mgN_per_L;
        condition.limit = limit.mgN_per_L.value_or(step);
        if (const Reading* reading = newestFresh(parameter)) {
            tell(condition, *reading, reading->value);
            condition.state = known(against(*reading, limit, step));
        }
        return condition;
    }

    GateCondition freeAmmonia() const
    {
        GateCondition condition;
        condition.key = u"nh3"_s;
        condition.limit = m_gate.nh3_mgN_per_L;
        const Reading* tan = newestFresh(u"tan"_s);
        const auto free = tan == nullptr ? std::nullopt : freeAmmoniaOf(m_layout, *tan);
        if (free) {
            tell(condition, *tan, free->mgN_per_L);
            condition.state = free->mgN_per_L <= m_gate.nh3_mgN_per_L ? Known::Met : Known::Unmet;
        }
        return condition;
    }

    /// From the newest back: readings that count are under the limit, long enough after a change, and far enough apart.
    /// One over the limit ends the run whenever it was taken: water just after a change is flattered, never slandered.
    Run runOf(const QString& parameter, const GateLimit& limit) const
    {
        const double step = firstStep(*m_at.row, m_layout, parameter);
        Run run;
        for (auto it = m_layout.readings.rbegin(); it != m_layout.readings.rend(); ++it) {
            if (it->parameter != parameter || it->at > m_at.now) {
                continue;
            }
            if (m_gate.withinDays && record::daysBetween(it->at, m_at.now) > *m_gate.withinDays) {
                break;
            }
            if (against(*it, limit, step) != Against::Below) {
                break;
            }
            const bool apart = run.count == 0 ||
                               record::daysBetween(it->at, run.oldest) * 24.0 >= m_gate.apartHours - kClockSlackHours;
            if (!apart || isSoonAfterChange(m_layout, *it, m_hoursAfterChange)) {
                continue;
            }
            if (run.count == 0) {
                run.newest = it->at;
            }
            run.oldest = it->at;
            ++run.count;
        }
        return run;
    }

    GateCondition clearRun() const
    {
        const Run tan = runOf(u"tan"_s, m_gate.tan);
        const Run no2 = runOf(u"no2"_s, m_gate.no2);
        const Run& shorter = tan.count <= no2.count ? tan : no2;
        GateCondition condition;
        condition.key = u"clear-run"_s;
        condition.have = shorter.count;
        condition.need = m_gate.readings;
        condition.needDays = m_gate.spanDays.value_or(0.0);
        if (tan.count > 0 && no2.count > 0) {
            condition.haveDays =
                std::min(record::daysBetween(tan.oldest, tan.newest), record::daysBetween(no2.oldest, no2.newest));
            condition.at = std::min(tan.newest, no2.newest);
        }
        const bool stale = condition.have > 0 && record::daysBetween(condition.at, m_at.now) > kStaleDays;
        const bool longEnough = condition.haveDays >= condition.needDays - kClockSlackHours / 24.0;
        condition.state = condition.have >= condition.need && longEnough && !stale ? Known::Met : Known::Unmet;
        if (m_layout.newest(u"tan"_s, m_at.now) == nullptr || m_layout.newest(u"no2"_s, m_at.now) == nullptr) {
            condition.state = Known::Unknown;
        }
        return condition;
    }

    static void tell(GateCondition& condition, const Reading& reading, double value)
    {
        condition.value = value;
        condition.at = reading.at;
        condition.reading = reading.id;
    }

    static Known known(Against against)
    {
        return against == Against::Below ? Known::Met : against == Against::Above ? Known::Unmet : Known::Unknown;
    }

    /// "24 hours apart" is kept by a reading at half past seven after one at eight the day before.
    static constexpr double kClockSlackHours = 4.0;

    const GateExtras& m_extras;
    const Circumstances& m_at;
    const record::LayoutRecord& m_layout;
    const GateDefinition& m_gate;
    double m_hoursAfterChange;
};

} // namespace

Known GateState::state() const
{
    const auto any = [&](Known wanted) {
        return std::ranges::any_of(conditions, [&](const GateCondition& c) { return c.state == wanted; });
    };
    if (any(Known::Unmet)) {
        return Known::Unmet;
    }
    return any(Known::Unknown) ? Known::Unknown : Known::Met;
}

const GateCondition* GateState::condition(const QString& wanted) const
{
    const auto found = std::ranges::find(conditions, wanted, &GateCondition::key);
    return found == conditions.end() ? nullptr : &*found;
}

std::vector<GateState> gateStates(const record::Row& row, record::LayoutId id, const Moment& now)
{
    const record::LayoutRecord* layout = row.layout(id);
    if (layout == nullptr || !layout->layout.flooded.isValid() || layout->layout.flooded > now) {
        return {};
    }
    const GateExtras extras(circumstances(row, *layout, now));
    std::vector<GateState> states;
    const GateBook book = gatesOf(row);
    for (const GateDefinition& gate : book.gates) {
        states.push_back(GateJudge(extras, gate, book.hoursAfterChange).judge());
    }
    return states;
}

std::optional<GateState> gateState(const record::Row& row, record::LayoutId layout, const QString& key,
                                   const Moment& now)
{
    for (GateState& state : gateStates(row, layout, now)) {
        if (state.key == key) {
            return std::move(state);
        }
    }
    return std::nullopt;
}

std::vector<forecast::GateRule> gateRules(const record::Row& row, record::LayoutId id)
{
    const record::LayoutRecord* layout = row.layout(id);
    if (layout == nullptr) {
        return {};
    }
    const auto water = [&](const GateLimit& limit, const QString& parameter) {
        return limit.mgN_per_L.value_or(firstStep(row, *layout, parameter) / 2.0);
    };
    std::vector<forecast::GateRule> rules;
    const GateBook book = gatesOf(row);
    for (const GateDefinition& gate : book.gates) {
        const double span = std::max(gate.spanDays.value_or(0.0), (gate.readings - 1) * gate.apartHours / 24.0);
        rules.push_back({gate.key.toStdString(), static_cast<double>(gate.minAge.at(layout->layout.start)),
                         water(gate.tan, u"tan"_s), gate.nh3_mgN_per_L, water(gate.no2, u"no2"_s), span});
    }
    return rules;
}

} // namespace littoral::care
