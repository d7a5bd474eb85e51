// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/loosening.h"

#include "core/care/observations.h"
#include "core/care/water_state.h"
#include "core/water/hardness.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::Reading;

namespace {

constexpr double kHoursAfterChange = 12.0; // sooner after a change a reading flatters the tank
constexpr double kLongestBetween = 2.5;    // intervals: an older pair of readings is not of the present step
constexpr int kQuietDays = 3;
constexpr double kMeltDays = 4.0;
constexpr int kAlgaeDays = 7;

/// The newest readings of a parameter that were not taken just after a change, newest first.
std::vector<const Reading*> beforeChanges(const record::LayoutRecord& layout, const QString& parameter,
                                          const record::Moment& now)
{
    std::vector<const Reading*> found;
    for (auto it = layout.readings.rbegin(); it != layout.readings.rend() && found.size() < 2; ++it) {
        if (it->parameter == parameter && it->at <= now && !isSoonAfterChange(layout, *it, kHoursAfterChange)) {
            found.push_back(&*it);
        }
    }
    return found;
}

class Judge
{
public:
    Judge(const Circumstances& at, const Cadence& cadence, const Pace& pace)
        : m_at(at)
        , m_layout(*at.layout)
        , m_cadence(cadence)
        , m_pace(pace)
    {
    }

    EaseEvidence clearReadings() const
    {
        const EaseLimits limits = easeLimits(m_at.stock.any());
        EaseEvidence evidence{EaseCondition::ClearReadings, Known::Met, {}, {}, 0, {}};
        takeClear(evidence, u"tan"_s, limits.tan);
        takeClear(evidence, u"no2"_s, limits.no2);
        return evidence;
    }

    EaseEvidence meltNotRising() const
    {
        EaseEvidence evidence{EaseCondition::MeltNotRising, Known::Unknown, {}, {}, 0, {}};
        const auto all = observationsOf(m_layout, u"melt"_s, m_at.now);
        if (all.empty()) {
            return evidence;
        }
        const Entry* newest = all.back();
        evidence.day = newest->at.localDate();
        evidence.count = newest->severity.value_or(0);
        evidence.state = Known::Met;
        for (const Entry* earlier : all) {
            const bool near = record::daysBetween(earlier->at, m_at.now) <= kMeltDays + m_pace.everyDays;
            if (earlier != newest && near && newest->severity.value_or(0) > earlier->severity.value_or(0)) {
                evidence.state = Known::Unmet;
            }
        }
        return evidence;
    }

    EaseEvidence algaeNotRising() const
    {
        EaseEvidence evidence{EaseCondition::AlgaeNotRising, Known::Unknown, {}, {}, 0, {}};
        for (const QString& subject : observedSubjects(m_layout, m_at.now)) {
            if (isAlgae(subject)) {
                evidence.state = Known::Met;
            }
        }
        for (const Rise& rise : risesOfAlgae(m_layout, m_at.now, 2.0 * kAlgaeDays)) {
            if (rise.now->at.localDate().daysTo(m_at.now.localDate()) <= kAlgaeDays) {
                evidence.state = Known::Unmet;
                evidence.day = rise.now->at.localDate();
                evidence.count = rise.now->severity.value_or(0);
            }
        }
        return evidence;
    }

    EaseEvidence twoIntervals() const
    {
        EaseEvidence evidence{EaseCondition::TwoIntervals, Known::Unmet, {}, {}, 0, {}};
        const QDate today = m_at.now.localDate();
        const QDate since = m_cadence.stepSince(today);
        for (const ChangeDay& change : changeDays(m_layout, m_at.now)) {
            evidence.count += change.day >= since ? 1 : 0;
        }
        evidence.day = since;
        const bool longEnough = static_cast<double>(since.daysTo(today)) + 1e-9 >= 2.0 * m_pace.everyDays;
        evidence.state = longEnough && evidence.count >= 2 ? Known::Met : Known::Unmet;
        return evidence;
    }

    EaseEvidence nothingRecent() const
    {
        EaseEvidence evidence{EaseCondition::NothingRecent, Known::Met, {}, {}, 0, {}};
        for (const Event event : {Event::Addition, Event::BedDisturbed, Event::Replant, Event::FilterService,
                                  Event::MediaReplaced, Event::Dose}) {
            const auto all = occurrences(*m_at.row, m_layout, event, m_at.now);
            if (!all.empty() && all.back()->at.localDate().daysTo(m_at.now.localDate()) <= kQuietDays &&
                isChange(all)) {
                evidence.state = Known::Unmet;
                evidence.day = all.back()->at.localDate();
            }
        }
        return evidence;
    }

    EaseEvidence hardnessSteady() const
    {
        EaseEvidence evidence{EaseCondition::HardnessSteady, Known::Unknown, {}, {}, 0, {}};
        takeDrift(evidence, u"gh"_s, water::kMmolPerDegree);
        takeDrift(evidence, u"kh"_s, water::kMeqPerDegree);
        return evidence;
    }

private:
    void takeClear(EaseEvidence& evidence, const QString& parameter, double limit) const
    {
        const auto pair = beforeChanges(m_layout, parameter, m_at.now);
        const double oldest = kLongestBetween * std::max(m_pace.everyDays, 2.0);
        for (const Reading* reading : pair) {
            evidence.readings.push_back({parameter, reading->value, limit, reading->at, reading->id});
            if (compare(*reading, limit) == Against::Above) {
                evidence.state = Known::Unmet;
            }
        }
        const bool enough = pair.size() == 2 && record::daysBetween(pair.back()->at, m_at.now) <= oldest &&
                            compare(*pair[0], limit) == Against::Below && compare(*pair[1], limit) == Against::Below;
        if (!enough && evidence.state == Known::Met) {
            evidence.state = Known::Unknown;
        }
    }

    void takeDrift(EaseEvidence& evidence, const QString& parameter, double perDegree) const
    {
        const auto pair = beforeChanges(m_layout, parameter, m_at.now);
        const record::Target* target = m_at.row->target(m_layout.layout.tank, parameter);
        if (pair.size() < 2) {
            return;
        }
        const bool inBand =
            m_layout.layout.rockHardens && target != nullptr && target->high && pair.front()->value <= *target->high;
        const bool steady = std::abs(pair[0]->value - pair[1]->value) <= perDegree + 1e-9;
        evidence.readings.push_back(
            {parameter, pair.front()->value, pair.back()->value, pair.front()->at, pair.front()->id});
        if (!steady && !inBand) {
            evidence.state = Known::Unmet;
        } else if (evidence.state == Known::Unknown) {
            evidence.state = Known::Met;
        }
    }

    /// A dose counts as a change only when its amount or its kind is not that of the dose before it.
    static bool isChange(const std::vector<const Entry*>& all)
    {
        const Entry* newest = all.back();
        if (newest->kind != record::EntryKind::Dose) {
            return true;
        }
        return std::ranges::none_of(all, [&](const Entry* e) {
            return e != newest && e->subject == newest->subject && e->amount == newest->amount;
        });
    }

    const Circumstances& m_at;
    const record::LayoutRecord& m_layout;
    const Cadence& m_cadence;
    Pace m_pace;
};

} // namespace

Known Loosening::state(EaseCondition condition) const
{
    const auto found = std::ranges::find(evidence, condition, &EaseEvidence::condition);
    return found == evidence.end() ? Known::Unknown : found->state;
}

bool Loosening::isCandidate() const
{
    const bool against = std::ranges::any_of(evidence, [](const EaseEvidence& e) { return e.state == Known::Unmet; });
    return !against && state(EaseCondition::ClearReadings) == Known::Met &&
           state(EaseCondition::TwoIntervals) == Known::Met && state(EaseCondition::NothingRecent) == Known::Met;
}

bool Loosening::mayBeProposed() const
{
    return isCandidate() && state(EaseCondition::ForecastOdds) == Known::Met;
}

EaseLimits easeLimits(bool animals)
{
    return animals ? EaseLimits{0.10, 0.03} : EaseLimits{0.25, 0.15};
}

std::optional<Loosening> looseningOf(const Circumstances& at, const Cadence& cadence,
                                     std::optional<double> oddsAtLooser)
{
    const QDate today = at.now.localDate();
    const auto base = cadence.base(today);
    if (!base || cadence.on(today) != base || !cadence.triggers().empty()) {
        return std::nullopt;
    }
    const Pace looser = loosened(*base, cadence.lowEnergy());
    if (looser == *base) {
        return std::nullopt;
    }
    const Judge judge(at, cadence, *base);
    EaseEvidence odds{EaseCondition::ForecastOdds, Known::Unknown, {}, {}, 0, {}};
    if (oddsAtLooser) {
        odds.state = *oddsAtLooser >= kEaseOdds ? Known::Met : Known::Unmet;
        odds.odds = oddsAtLooser;
    }
    return Loosening{*base,
                     looser,
                     {judge.clearReadings(), judge.meltNotRising(), judge.algaeNotRising(), odds, judge.twoIntervals(),
                      judge.nothingRecent(), judge.hardnessSteady()}};
}

std::optional<Loosening> looseningOf(const record::Row& row, record::LayoutId id, const record::Moment& now,
                                     std::optional<double> oddsAtLooser)
{
    const record::LayoutRecord* layout = row.layout(id);
    const TemplateSet templates = templatesFor(row);
    const WorkTemplate* work = templates.find(u"water-change"_s);
    if (layout == nullptr || work == nullptr || !layout->layout.flooded.isValid() || layout->layout.flooded > now) {
        return std::nullopt;
    }
    const Circumstances at = circumstances(row, *layout, now);
    return looseningOf(at, Cadence(*work, at), oddsAtLooser);
}

} // namespace littoral::care
