// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers the rules ask for that no kit reads: reckoned from the record.
#include "core/care/age.h"
#include "core/care/events.h"
#include "core/care/stock.h"
#include "core/care/water_state.h"
#include "core/findings/case_view.h"
#include "core/water/hardness.h"

#include <algorithm>
#include <cmath>

namespace littoral::findings {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;
using record::LayoutRecord;
using record::Moment;
using record::Reading;

namespace {

constexpr double kPerDayAndPar = 0.0036; ///< mol/m²/d in one hour of one µmol/m²/s
constexpr double kStepDays = 3.0;        ///< successive readings further apart tell of no step
constexpr double kWeek = 7.0;

class Reckoner
{
public:
    Reckoner(const LayoutRecord& layout, const Moment& at)
        : m_layout(layout)
        , m_at(at)
    {
    }

    std::map<QString, Known> all()
    {
        put(u"age_d"_s, record::daysBetween(m_layout.layout.flooded, m_at), m_at);
        freeAmmonia();
        light();
        changes();
        flow();
        steps();
        minerals();
        temperature();
        swing();
        losses();
        return std::move(m_found);
    }

private:
    void put(const QString& key, double value, const Moment& at) { m_found[key] = Known::exactly(value, at); }

    [[nodiscard]] bool within(const Moment& then, double days) const
    {
        return then <= m_at && record::daysBetween(then, m_at) <= days;
    }

    /// Newest reading not older than `days`.
    [[nodiscard]] const Reading* fresh(const QString& parameter, double days) const
    {
        const Reading* reading = m_layout.newest(parameter, m_at);
        return reading != nullptr && within(reading->at, days) ? reading : nullptr;
    }

    void freeAmmonia()
    {
        const Reading* total = fresh(u"tan"_s, 14.0);
        const auto free = total == nullptr ? std::nullopt : care::freeAmmoniaOf(m_layout, *total);
        if (free) {
            put(u"nh3_n"_s, free->mgN_per_L, total->at);
        }
    }

    void light()
    {
        const Entry* change = m_layout.lastDone(EntryKind::LightChange, m_at);
        const double hours = change != nullptr && change->amount ? *change->amount : m_layout.layout.lightHours;
        const Moment since = change != nullptr ? change->at : m_layout.layout.flooded;
        if (hours > 0.0) {
            put(u"photo_h"_s, hours, since);
        }
        const Reading* measured = m_layout.newest(u"par"_s, m_at);
        double par = change != nullptr && change->second ? *change->second : m_layout.layout.lightPar;
        Moment read = since;
        if (measured != nullptr && (change == nullptr || !change->second || measured->at >= change->at)) {
            par = measured->value;
            read = measured->at;
        } else if (par > 0.0) {
            put(u"par"_s, par, since);
        }
        if (par > 0.0 && hours > 0.0) {
            put(u"dli"_s, par * hours * kPerDayAndPar, read);
        }
    }

    void changes()
    {
        const auto days = care::changeDays(m_layout, m_at);
        if (days.empty()) {
            return;
        }
        double left = 1.0;
        bool known = true;
        for (const care::ChangeDay& day : days) {
            if (within(day.last, kWeek)) {
                known = known && day.fraction.has_value();
                left *= 1.0 - day.fraction.value_or(0.0);
            }
        }
        if (known) {
            put(u"wc_frac_7d"_s, 1.0 - left, days.back().last);
        }
        if (within(days.back().last, kWeek) && days.back().fraction) {
            put(u"wc_frac_now"_s, *days.back().fraction, days.back().last);
        }
    }

    void flow()
    {
        const Reading* now = fresh(u"flow"_s, 30.0);
        const auto all = m_layout.readingsOf(u"flow"_s);
        if (now == nullptr || all.size() < 2) {
            return;
        }
        double most = 0.0;
        for (const Reading* reading : all) {
            most = reading->at <= m_at ? std::max(most, reading->value) : most;
        }
        if (most > 0.0) {
            put(u"flow_pct"_s, 100.0 * now->value / most, now->at);
        }
    }

    struct Step
    {
        double up = 0.0;
        double down = 0.0;
        double percent = 0.0;
        Moment at;
    };

    /// Largest steps between successive readings of the last week; nothing without such a pair.
    [[nodiscard]] std::optional<Step> stepOf(const QString& parameter) const
    {
        const Reading* before = nullptr;
        std::optional<Step> step;
        for (const Reading& reading : m_layout.readings) {
            if (reading.parameter != parameter || reading.at > m_at) {
                continue;
            }
            if (before != nullptr && within(reading.at, kWeek) &&
                record::daysBetween(before->at, reading.at) <= kStepDays) {
                Step& s = step ? *step : step.emplace();
                const double change = reading.value - before->value;
                s.up = std::max(s.up, change);
                s.down = std::max(s.down, -change);
                s.percent =
                    before->value > 0.0 ? std::max(s.percent, 100.0 * std::abs(change) / before->value) : s.percent;
                s.at = reading.at;
            }
            before = &reading;
        }
        return step;
    }

    void steps()
    {
        if (const auto step = stepOf(u"gh"_s)) {
            put(u"gh_change"_s, std::max(step->up, step->down) / water::kMmolPerDegree, step->at);
        }
        auto solids = stepOf(u"tds"_s);
        if (!solids) {
            solids = stepOf(u"cond"_s);
        }
        if (solids) {
            put(u"tds_change_pct"_s, solids->percent, solids->at);
        }
        if (const auto step = stepOf(u"temp"_s)) {
            put(u"temp_drop"_s, step->down, step->at);
            put(u"temp_jump"_s, std::max(step->up, step->down), step->at);
        }
    }

    void minerals()
    {
        const Reading* calcium = fresh(u"ca"_s, 60.0);
        const Reading* magnesium = fresh(u"mg"_s, 60.0);
        if (calcium != nullptr && magnesium != nullptr && magnesium->value > 0.0) {
            put(u"ca_mg_ratio"_s, calcium->value / magnesium->value, std::min(calcium->at, magnesium->at));
        }
    }

    void temperature()
    {
        if (const Reading* now = fresh(u"temp"_s, kWeek)) {
            put(u"temp_minus_set"_s, now->value - m_layout.layout.temperature_C, now->at);
        }
    }

    /// Scatter of pH read near one clock hour in a week; needs three such readings.
    void swing()
    {
        std::vector<const Reading*> week;
        for (const Reading& reading : m_layout.readings) {
            if (reading.parameter == u"ph"_s && within(reading.at, kWeek)) {
                week.push_back(&reading);
            }
        }
        std::vector<double> best;
        for (const Reading* middle : week) {
            std::vector<double> near;
            for (const Reading* reading : week) {
                const int apart = std::abs(reading->at.toDateTime().time().secsTo(middle->at.toDateTime().time()));
                if (std::min(apart, 86400 - apart) <= 3600) {
                    near.push_back(reading->value);
                }
            }
            if (near.size() > best.size()) {
                best = near;
            }
        }
        if (best.size() < 3) {
            return;
        }
        const double count = static_cast<double>(best.size());
        double mean = 0.0;
        for (const double value : best) {
            mean += value / count;
        }
        double squares = 0.0;
        for (const double value : best) {
            squares += (value - mean) * (value - mean);
        }
        put(u"co2_swing"_s, std::sqrt(squares / (count - 1.0)), week.back()->at);
    }

    void losses()
    {
        if (care::stockAt(m_layout, m_at).added == 0) {
            return;
        }
        int lost = 0;
        for (const Entry& entry : m_layout.entries) {
            if (care::isEvent(entry, care::Event::Loss) && !entry.planned && within(entry.at, 30.0)) {
                lost += entry.count.value_or(1);
            }
        }
        put(u"loss_rate_month"_s, lost, m_at);
    }

    const LayoutRecord& m_layout;
    const Moment m_at;
    std::map<QString, Known> m_found;
};

} // namespace

std::map<QString, Known> reckonedNumbers(const LayoutRecord& layout, const Moment& at)
{
    return Reckoner(layout, at).all();
}

} // namespace littoral::findings
