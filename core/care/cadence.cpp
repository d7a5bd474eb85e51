// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/cadence.h"

#include "core/care/limits.h"
#include "core/care/observations.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

constexpr std::array kLadder{1.0, 2.0, 3.5, 7.0, 14.0, 21.0};
constexpr double kLeastFraction = 0.30;
constexpr double kMostFraction = 0.70;
constexpr double kFractionStep = 0.10;
constexpr int kPlantedClearDay = 15; // a dark start planted in clear water joins the table at its third week
constexpr int kPlantedDay = 1;
constexpr int kMostSteps = 6;

/// Were the newest readings of ammonia and nitrite before `at` clear?
bool wasClear(const record::LayoutRecord& layout, const record::Moment& at, const Limits& limits)
{
    const record::Reading* tan = layout.newest(u"tan"_s, at);
    const record::Reading* no2 = layout.newest(u"no2"_s, at);
    return tan != nullptr && no2 != nullptr && tan->value <= limits.ammoniaClear && no2->value <= limits.nitriteClear;
}

} // namespace

QString cadenceSettingKey(record::LayoutId layout)
{
    return u"cadence."_s + QString::number(layout.value);
}

AcceptedSteps acceptedSteps(const record::Row& row, record::LayoutId layout)
{
    const QStringList parts = row.settings.value(cadenceSettingKey(layout)).split(u'@');
    AcceptedSteps accepted;
    accepted.steps = std::clamp(parts.value(0).toInt(), -kMostSteps, kMostSteps);
    accepted.since = QDate::fromString(parts.value(1), Qt::ISODate);
    return accepted;
}

QString acceptedStepsText(const AcceptedSteps& accepted)
{
    return accepted.steps == 0 ? QString()
                               : QString::number(accepted.steps) + u'@' + accepted.since.toString(Qt::ISODate);
}

Pace loosened(const Pace& pace, bool lowEnergy)
{
    Pace looser = pace;
    if (pace.everyDays >= 7.0 && pace.fraction > kLeastFraction + 1e-9) {
        looser.fraction = std::max(kLeastFraction, pace.fraction - kFractionStep);
        return looser;
    }
    const double longest = lowEnergy ? 21.0 : 7.0;
    const auto next = std::ranges::find_if(kLadder, [&](double days) { return days > pace.everyDays; });
    if (next != kLadder.end() && *next <= longest) {
        looser.everyDays = *next;
    }
    return looser;
}

Pace tightened(const Pace& pace)
{
    Pace tighter = pace;
    const auto shorter =
        std::find_if(kLadder.rbegin(), kLadder.rend(), [&](double days) { return days < pace.everyDays; });
    if (shorter != kLadder.rend()) {
        tighter.everyDays = *shorter;
    } else {
        tighter.fraction = std::min(kMostFraction, pace.fraction + kFractionStep);
    }
    return tighter;
}

Cadence::Cadence(const WorkTemplate& work, const Circumstances& at)
    : m_variant(variantFor(work, at))
    , m_at(at)
    , m_accepted(acceptedSteps(*at.row, at.layout->layout.id))
    , m_triggers(activeTriggers(at))
{
    const record::Layout& layout = at.layout->layout;
    if (layout.start != record::StartMethod::DarkStart) {
        m_tableStart = layout.flooded.localDate();
        m_begins = *m_tableStart;
    } else if (const auto planted = plantedAt(*at.layout, at.now)) {
        m_begins = planted->localDate();
        m_tableStart =
            m_begins.addDays(-(wasClear(*at.layout, *planted, limitsOf(*at.row)) ? kPlantedClearDay : kPlantedDay));
    }
}

bool Cadence::lowEnergy() const
{
    return m_at.layout->layout.co2 != record::Co2Mode::Pressurised;
}

std::optional<int> Cadence::tableDay(const QDate& day) const
{
    return m_tableStart && day >= m_begins ? std::optional(static_cast<int>(m_tableStart->daysTo(day))) : std::nullopt;
}

std::optional<Pace> Cadence::tableRow(int day) const
{
    if (m_variant == nullptr) {
        return std::nullopt;
    }
    for (const Round& round : m_variant->rounds) {
        if (round.every > 0.0 && day >= round.from && (!round.to || day <= *round.to) && holds(round.when, m_at)) {
            return Pace{round.every, round.fraction.value_or(0.0), round.fractionLow, round.fractionHigh, round.to};
        }
    }
    return std::nullopt;
}

std::optional<Pace> Cadence::base(const QDate& day) const
{
    const auto tableDayOfIt = tableDay(day);
    auto pace = tableDayOfIt ? tableRow(*tableDayOfIt) : std::nullopt;
    if (!pace) {
        return pace;
    }
    for (int step = 0; step < m_accepted.steps; ++step) {
        pace = loosened(*pace, lowEnergy());
    }
    for (int step = 0; step > m_accepted.steps; --step) {
        pace = tightened(*pace);
    }
    return pace;
}

std::optional<Pace> Cadence::on(const QDate& day) const
{
    auto pace = base(day);
    const Pace plain = pace.value_or(Pace{});
    int steps = 0;
    for (const Trigger& trigger : m_triggers) {
        const bool over = trigger.lastDay && *trigger.lastDay < day;
        if (over || day < trigger.at.localDate()) {
            continue;
        }
        if (trigger.everyDays > 0.0) {
            pace = pace ? pace : std::optional(Pace{trigger.everyDays, trigger.fraction, {}, {}, {}});
            pace->everyDays = std::min(pace->everyDays, trigger.everyDays);
            pace->fraction = std::max(pace->fraction, trigger.fraction);
        }
        steps = std::max(steps, trigger.steps);
    }
    if (pace && steps > 0) {
        // Several observations of the same week ask for one step between them, not one each.
        const Pace stepped = tightened(plain);
        pace->everyDays = std::min(pace->everyDays, stepped.everyDays);
        pace->fraction = std::max(pace->fraction, stepped.fraction);
    }
    return pace;
}

QDate Cadence::stepSince(const QDate& day) const
{
    const auto current = tableDay(day);
    if (!current) {
        return day;
    }
    const auto row = tableRow(*current);
    int first = *current;
    while (row && m_tableStart->addDays(first) > m_begins && tableRow(first - 1) == row) {
        --first;
    }
    const QDate rowSince = m_tableStart->addDays(first);
    return m_accepted.since.isValid() && m_accepted.steps != 0 ? std::max(rowSince, m_accepted.since) : rowSince;
}

int gapDays(double every, const QDate& last, const std::optional<QDate>& beforeLast)
{
    const int low = static_cast<int>(std::floor(every));
    const int high = static_cast<int>(std::ceil(every));
    // Only after a short gap is the next one long; after anything irregular the shorter is the safer.
    return beforeLast && beforeLast->daysTo(last) == low ? high : low;
}

} // namespace littoral::care
