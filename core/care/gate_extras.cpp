// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/gate_extras.h"

#include "core/care/limits.h"
#include "core/care/observations.h"
#include "core/care/water_state.h"

#include <algorithm>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;
using record::Reading;

namespace {

// Common practice, all of them.
constexpr double kCo2SettlingDays = 3.0;
constexpr double kCopperFree_mg_per_L = 0.02; // below what a drop kit tells from zero
constexpr double kLookedDays = 21.0;          // an older observation says nothing
constexpr double kLossShare = 0.10;
constexpr double kWeek = 7.0;
constexpr double kPhSwing = 0.9;
constexpr double kTemperatureSwing_C = 1.0;
constexpr double kLossDays = 14.0;
constexpr double kQuarantineDays = 60.0;
constexpr double kOneDay = 1.0; // a reading six days before another is of the week before
constexpr int kDaysBeforeJourney = 3;

Known met(bool yes)
{
    return yes ? Known::Met : Known::Unmet;
}

} // namespace

const std::map<QString, GateExtras::Rule>& GateExtras::rules()
{
    static const std::map<QString, Rule> all{
        {u"co2-steady"_s, &GateExtras::co2Steady},
        {u"copper-free"_s, &GateExtras::copperFree},
        {u"melt-not-rising"_s, &GateExtras::meltNotRising},
        {u"algae-to-eat"_s, &GateExtras::algaeToEat},
        {u"temperature"_s, &GateExtras::temperature},
        {u"first-grazers-well"_s, &GateExtras::firstGrazersWell},
        {u"week-since-addition"_s, &GateExtras::weekSinceAddition},
        {u"weekly-cadence"_s, &GateExtras::weeklyCadence},
        {u"biofilm"_s, &GateExtras::biofilm},
        {u"ph-swing"_s, &GateExtras::phSwing},
        {u"temperature-steady"_s, &GateExtras::temperatureSteady},
        {u"no-recent-loss"_s, &GateExtras::noRecentLoss},
        {u"quarantine"_s, &GateExtras::quarantine},
        {u"no-reaction"_s, &GateExtras::noReaction},
        {u"hardness-in-range"_s, &GateExtras::hardnessInRange},
        {u"keeper-there"_s, &GateExtras::keeperThere},
    };
    return all;
}

bool GateExtras::knows(const QString& key)
{
    return rules().contains(key);
}

QStringList GateExtras::keys()
{
    QStringList all;
    for (const auto& [key, rule] : rules()) {
        all << key;
    }
    return all;
}

GateCondition GateExtras::judge(const QString& key) const
{
    GateCondition condition;
    condition.key = key;
    const auto rule = rules().find(key);
    if (rule != rules().end()) {
        (this->*rule->second)(condition);
    }
    return condition;
}

/// Without injected gas there is nothing to settle; with it, three days without a change and a curve or a reading
/// since.
void GateExtras::co2Steady(GateCondition& condition) const
{
    const record::LayoutRecord& layout = *m_at.layout;
    if (layout.layout.co2 != record::Co2Mode::Pressurised) {
        condition.state = Known::Met;
        return;
    }
    const Entry* change = layout.lastDone(EntryKind::Co2Change, m_at.now);
    const record::Moment since = change != nullptr ? change->at : layout.layout.flooded;
    condition.at = since;
    if (record::daysBetween(since, m_at.now) < kCo2SettlingDays) {
        condition.state = Known::Unmet;
        condition.earliest = since.localDate().addDays(static_cast<qint64>(kCo2SettlingDays));
        return;
    }
    const Entry* curve = layout.lastDone(EntryKind::Upkeep, m_at.now, u"co2-curve"_s);
    const Reading* reading = layout.newest(u"co2"_s, m_at.now);
    const bool looked = (curve != nullptr && curve->at >= since) || (reading != nullptr && reading->at >= since);
    condition.state = looked ? Known::Met : Known::Unknown;
}

void GateExtras::copperFree(GateCondition& condition) const
{
    condition.limit = kCopperFree_mg_per_L;
    if (const Reading* copper = m_at.layout->newest(u"cu"_s, m_at.now)) {
        condition.value = copper->value;
        condition.at = copper->at;
        condition.reading = copper->id;
        condition.state = met(copper->value <= kCopperFree_mg_per_L);
    }
}

void GateExtras::meltNotRising(GateCondition& condition) const
{
    const auto all = observationsOf(*m_at.layout, u"melt"_s, m_at.now);
    if (all.empty() || record::daysBetween(all.back()->at, m_at.now) > kLookedDays) {
        return;
    }
    condition.at = all.back()->at;
    condition.value = all.back()->severity.value_or(0);
    if (all.size() == 1) {
        // One look shows no trend; none left to rise is plain enough.
        condition.state = all.back()->severity.value_or(0) == 0 ? Known::Met : Known::Unknown;
        return;
    }
    condition.limit = all[all.size() - 2]->severity.value_or(0);
    condition.state = met(*condition.value <= *condition.limit);
}

void GateExtras::algaeToEat(GateCondition& condition) const
{
    bool looked = false;
    for (const QString& subject : observedSubjects(*m_at.layout, m_at.now)) {
        const Entry* seen = newestObservation(*m_at.layout, subject, m_at.now);
        if (!isAlgae(subject) || record::daysBetween(seen->at, m_at.now) > kLookedDays) {
            continue;
        }
        looked = true;
        if (seen->severity.value_or(0) >= 1) {
            condition.state = Known::Met;
            condition.at = seen->at;
            condition.value = seen->severity;
            return;
        }
    }
    condition.state = looked ? Known::Unmet : Known::Unknown;
}

/// Gates hold outside the temperatures of the limits.
void GateExtras::temperature(GateCondition& condition) const
{
    const Reading* reading = m_at.layout->newest(u"temp"_s, m_at.now);
    if (reading == nullptr || record::daysBetween(reading->at, m_at.now) > 2.0 * kWeek) {
        return;
    }
    const Limits limits = limitsOf(*m_at.row);
    condition.value = reading->value;
    condition.limit = reading->value < limits.cool_C ? limits.cool_C : limits.warm_C;
    condition.at = reading->at;
    condition.reading = reading->id;
    condition.state = met(reading->value >= limits.cool_C && reading->value <= limits.warm_C);
}

void GateExtras::firstGrazersWell(GateCondition& condition) const
{
    const Stock& stock = m_at.stock;
    if (!stock.firstAddition) {
        return;
    }
    condition.at = *stock.firstAddition;
    condition.earliest = stock.firstAddition->localDate().addDays(static_cast<qint64>(kWeek));
    condition.value = static_cast<double>(stock.lost) / std::max(1, stock.added);
    condition.limit = kLossShare;
    const bool waited = stock.firstAddition->localDate().daysTo(m_at.now.localDate()) >= static_cast<qint64>(kWeek);
    condition.state = met(waited && *condition.value < kLossShare);
}

/// A week since the last addition, and no ammonia or nitrite seen since.
void GateExtras::weekSinceAddition(GateCondition& condition) const
{
    const Stock& stock = m_at.stock;
    if (!stock.lastAddition) {
        condition.state = Known::Met;
        return;
    }
    condition.at = *stock.lastAddition;
    condition.earliest = stock.lastAddition->localDate().addDays(static_cast<qint64>(kWeek));
    const bool waited = stock.lastAddition->localDate().daysTo(m_at.now.localDate()) >= static_cast<qint64>(kWeek);
    const Limits limits = limitsOf(*m_at.row);
    for (const Reading& reading : m_at.layout->readings) {
        if (isRaised(reading, limits) && reading.at >= *stock.lastAddition && reading.at <= m_at.now) {
            condition.state = Known::Unmet;
            condition.value = reading.value;
            condition.reading = reading.id;
            return;
        }
    }
    condition.state = met(waited);
}

void GateExtras::weeklyCadence(GateCondition& condition) const
{
    const TemplateSet templates = templatesFor(*m_at.row);
    const WorkTemplate* work = templates.find(u"water-change"_s);
    const auto pace = work == nullptr ? std::nullopt : Cadence(*work, m_at).on(m_at.now.localDate());
    condition.limit = kWeek;
    if (pace) {
        condition.value = pace->everyDays;
        condition.state = met(pace->everyDays >= kWeek);
    }
}

/// Seen as such, or as any film of algae that grazers live on.
void GateExtras::biofilm(GateCondition& condition) const
{
    const Entry* seen = newestObservation(*m_at.layout, u"biofilm"_s, m_at.now);
    if (seen != nullptr && record::daysBetween(seen->at, m_at.now) <= kLookedDays) {
        condition.at = seen->at;
        condition.value = seen->severity;
        condition.state = met(seen->severity.value_or(1) >= 1);
        return;
    }
    algaeToEat(condition);
    condition.state = condition.state == Known::Unmet ? Known::Unknown : condition.state;
}

/// Largest spread of pH within one day of the last two weeks.
void GateExtras::phSwing(GateCondition& condition) const
{
    condition.limit = kPhSwing;
    if (m_at.layout->layout.co2 != record::Co2Mode::Pressurised) {
        condition.state = Known::Met;
        return;
    }
    std::map<QDate, std::pair<double, double>> days;
    for (const Reading& reading : m_at.layout->readings) {
        if (reading.parameter == u"ph"_s && reading.at <= m_at.now &&
            record::daysBetween(reading.at, m_at.now) <= 2.0 * kWeek) {
            const auto [day, fresh] = days.try_emplace(reading.at.localDate(), reading.value, reading.value);
            day->second = {std::min(day->second.first, reading.value), std::max(day->second.second, reading.value)};
            if (!fresh) {
                condition.value = std::max(condition.value.value_or(0.0), day->second.second - day->second.first);
                condition.at = reading.at;
            }
        }
    }
    if (condition.value) {
        condition.state = met(*condition.value <= kPhSwing + 1e-9);
    }
}

void GateExtras::temperatureSteady(GateCondition& condition) const
{
    condition.limit = kTemperatureSwing_C;
    std::vector<double> values;
    for (const Reading& reading : m_at.layout->readings) {
        if (reading.parameter == u"temp"_s && reading.at <= m_at.now &&
            record::daysBetween(reading.at, m_at.now) <= kWeek) {
            values.push_back(reading.value);
            condition.at = reading.at;
        }
    }
    if (values.size() < 2) {
        return;
    }
    const auto [low, high] = std::ranges::minmax(values);
    condition.value = (high - low) / 2.0; // plus or minus about the middle
    condition.state = met(*condition.value <= kTemperatureSwing_C + 1e-9);
}

void GateExtras::noRecentLoss(GateCondition& condition) const
{
    const auto& lost = m_at.stock.lastLoss;
    if (lost && record::daysBetween(*lost, m_at.now) < kLossDays) {
        condition.at = *lost;
        condition.earliest = lost->localDate().addDays(static_cast<qint64>(kLossDays));
        condition.state = Known::Unmet;
        return;
    }
    condition.state = Known::Met;
}

void GateExtras::quarantine(GateCondition& condition) const
{
    const Entry* done = m_at.layout->lastDone(EntryKind::Upkeep, m_at.now, u"quarantine"_s);
    if (done != nullptr && record::daysBetween(done->at, m_at.now) <= kQuarantineDays) {
        condition.at = done->at;
        condition.state = Known::Met;
    }
}

/// Ammonia or nitrite that rose within a week of an addition: no more animals until the week is over.
void GateExtras::noReaction(GateCondition& condition) const
{
    const Reading* reading = reactionToAddition(*m_at.row, *m_at.layout, m_at.now);
    condition.state = met(reading == nullptr);
    if (reading != nullptr) {
        condition.value = reading->value;
        condition.at = reading->at;
        condition.reading = reading->id;
        condition.earliest = reading->at.localDate().addDays(static_cast<qint64>(kReactionDays) + 1);
    }
}

/// Rock that hardens the water: GH and KH within the tank's range at two readings a week apart.
void GateExtras::hardnessInRange(GateCondition& condition) const
{
    if (!m_at.layout->layout.rockHardens) {
        condition.state = Known::Met;
        return;
    }
    condition.state = Known::Met;
    for (const QString& parameter : {u"gh"_s, u"kh"_s}) {
        const record::Target* target = m_at.row->target(m_at.layout->layout.tank, parameter);
        const auto readings = m_at.layout->readingsOf(parameter);
        const Reading* newest = m_at.layout->newest(parameter, m_at.now);
        const auto earlier = std::find_if(readings.rbegin(), readings.rend(), [&](const Reading* r) {
            return newest != nullptr && record::daysBetween(r->at, newest->at) >= kWeek - kOneDay;
        });
        if (target == nullptr || newest == nullptr || earlier == readings.rend() ||
            record::daysBetween(newest->at, m_at.now) > 2.0 * kWeek) {
            condition.state = condition.state == Known::Met ? Known::Unknown : condition.state;
            continue;
        }
        const auto inside = [&](const Reading& r) {
            return r.value >= target->low.value_or(r.value) && r.value <= target->high.value_or(r.value);
        };
        if (!inside(*newest) || !inside(**earlier)) {
            condition.state = Known::Unmet;
            condition.reading = newest->id;
            condition.at = newest->at;
        }
    }
}

/// Nobody opens a gate and goes away: none from three days before a journey until the keeper is back.
void GateExtras::keeperThere(GateCondition& condition) const
{
    const QDate today = m_at.now.localDate();
    condition.state = Known::Met;
    for (const record::Journey& journey : m_at.row->journeys) {
        if (today >= journey.leaves.addDays(-kDaysBeforeJourney) && today < journey.returns) {
            condition.state = Known::Unmet;
            condition.earliest = std::max(condition.earliest, journey.returns);
        }
    }
}

} // namespace littoral::care
