// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/co2_trials.h"

#include "core/facade/trend_model.h"
#include "core/facade/trend_reckoned.h"
#include "core/water/carbonate.h"

#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;
using record::Reading;

namespace {

// A calibrated meter, or a card read with care (common practice).
constexpr double kPhDoubt = 0.1;
// Half a drop of the usual kit, a degree a drop (common practice).
constexpr double kKhDoubt_meq = 0.5 * 0.357;
const QString kIndicator = u"indicator="_s;

/// What a reading may have stood for: its kit's half steps, else `doubt` either way.
TrendInterval doubtOf(const record::Row& row, const Reading& reading, double doubt)
{
    const TrendInterval step = stepInterval(reading, row.kit(reading.kit));
    return step.high > step.low ? step : TrendInterval{reading.value - doubt, reading.value + doubt, step.censoring};
}

const Reading* nearest(const record::LayoutRecord& layout, const QString& key, const record::Moment& at)
{
    const Reading* best = nullptr;
    double off = kSlowReach_d;
    for (const Reading* reading : layout.readingsOf(key)) {
        const double days = std::abs(record::daysBetween(reading->at, at));
        if (days <= off) {
            off = days;
            best = reading;
        }
    }
    return best;
}

class TrialMaker
{
public:
    TrialMaker(const record::Row& row, const record::LayoutRecord& layout, const facts::FactBook& book,
               const record::Moment& now)
        : m_row(row)
        , m_layout(layout)
        , m_book(book)
        , m_now(now)
    {
    }

    [[nodiscard]] Co2Trial make(const Entry& change, const std::optional<record::Moment>& next) const
    {
        Co2Trial trial;
        trial.entry = change.id;
        trial.at = change.at;
        trial.target_mg_per_L = change.amount;
        trial.hoursADay = change.second;
        trial.set = change.subject;
        const record::Moment end = change.at.plusDays(kTrialHours / 24.0);
        const record::Moment until = std::min(m_now, next ? std::min(end, *next) : end);
        addPh(trial, until);
        // The colour may stand in what was written about the change itself; one seen later goes before it.
        for (const QString& colour : {u"blue"_s, u"green"_s, u"yellow"_s}) {
            if (change.subject.contains(u"indicator "_s + colour, Qt::CaseInsensitive)) {
                trial.colour = colour;
            }
        }
        for (const Entry& entry : m_layout.entries) {
            if (!entry.planned && entry.at >= change.at && entry.at <= until) {
                see(trial, entry);
            }
        }
        return trial;
    }

private:
    void addPh(Co2Trial& trial, const record::Moment& until) const
    {
        for (const Reading* reading : m_layout.readingsOf(u"ph"_s)) {
            const double hours = record::daysBetween(trial.at, reading->at) * 24.0;
            if (hours < 0.0 && hours >= -kBeforeHours) {
                trial.before = phOf(*reading, hours);
            } else if (hours >= 0.0 && reading->at <= until) {
                trial.after.push_back(phOf(*reading, hours));
            }
        }
    }

    [[nodiscard]] TrialPh phOf(const Reading& reading, double hours) const
    {
        TrialPh made{reading.at, hours, reading.value, {}, {}, {}};
        const Reading* kh = nearest(m_layout, u"kh"_s, reading.at);
        if (kh == nullptr) {
            return made;
        }
        const Reading* warm = nearest(m_layout, u"temp"_s, reading.at);
        const Reading* hard = nearest(m_layout, u"gh"_s, reading.at);
        const double t_C = warm == nullptr ? m_layout.layout.temperature_C : warm->value;
        const auto co2 = [&](double pH, double alkalinity) {
            const double gh = hard == nullptr ? alkalinity / 2.0 : hard->value;
            const water::Medium medium{t_C, water::ionicStrengthFromHardness({gh}, {alkalinity})};
            const auto found =
                alkalinity > 0.0 ? water::co2FromPh(pH, {alkalinity}, medium) : Result<water::Co2>(water::Co2{0.0});
            return found ? std::optional(found->value) : std::nullopt;
        };
        const TrendInterval ph = doubtOf(m_row, reading, kPhDoubt);
        const TrendInterval alkalinity = doubtOf(m_row, *kh, kKhDoubt_meq);
        made.co2 = kh->value > 0.0 ? co2(reading.value, kh->value) : std::nullopt;
        // Much CO2 is a low pH and a high KH.
        made.co2Low = co2(ph.high, std::max(0.0, alkalinity.low));
        made.co2High = co2(ph.low, alkalinity.high);
        return made;
    }

    void see(Co2Trial& trial, const Entry& entry) const
    {
        if (entry.kind == EntryKind::Loss) {
            trial.looked = true;
            trial.signs.push_back({entry.at, entry.subject, 0, true});
            return;
        }
        if (entry.kind != EntryKind::Observation) {
            return;
        }
        if (entry.subject.startsWith(kIndicator)) {
            trial.colour = entry.subject.mid(kIndicator.size());
            return;
        }
        const facts::Condition* condition = m_book.condition(entry.subject);
        const bool animals =
            condition != nullptr &&
            (condition->kind == u"animal"_s || condition->kind == u"shrimp"_s || condition->kind == u"disease"_s);
        if (!animals) {
            return;
        }
        trial.looked = true;
        if (entry.severity.value_or(1) > 0) {
            trial.signs.push_back({entry.at, entry.subject, entry.severity.value_or(1), false});
            trial.gasping = trial.gasping || entry.subject == u"an_gasp"_s;
        }
    }

    const record::Row& m_row;
    const record::LayoutRecord& m_layout;
    const facts::FactBook& m_book;
    record::Moment m_now;
};

} // namespace

std::vector<Co2Trial> co2Trials(const record::Row& row, const record::LayoutRecord& layout, const facts::FactBook& book,
                                const record::Moment& now)
{
    const TrialMaker maker(row, layout, book, now);
    std::vector<Co2Trial> trials;
    std::optional<record::Moment> next;
    for (auto entry = layout.entries.rbegin(); entry != layout.entries.rend(); ++entry) {
        if (entry->kind == EntryKind::Co2Change && !entry->planned && entry->at <= now) {
            trials.push_back(maker.make(*entry, next));
            next = entry->at;
        }
    }
    return trials;
}

} // namespace littoral::facade
