// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/limits.h"
#include "core/care/observations.h"
#include "core/care/standing.h"
#include "core/care/stock.h"
#include "core/care/water_state.h"

#include <algorithm>
#include <functional>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::Reading;

namespace {

constexpr double kCycleFreshDays = 14.0;
constexpr double kOtherFreshDays = 45.0;
constexpr double kObservationDays = 21.0;
constexpr int kLossDays = 7;

const char* const kPractice = QT_TRANSLATE_NOOP("Templates", "common practice");
const char* const kTarget = QT_TRANSLATE_NOOP("Templates", "the range set for this tank");

struct Bound
{
    AlertKind kind = AlertKind::AboveLimit;
    Status level = Status::Watch;
    double limit = 0.0;
    bool forbidsAnimals = false;
    QString source;
};

class AlertFinder
{
public:
    AlertFinder(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& now)
        : m_row(row)
        , m_layout(layout)
        , m_now(now)
        , m_limits(limitsOf(row))
        , m_animals(stockAt(layout, now).any())
    {
    }

    std::vector<Alert> all()
    {
        nitrogen();
        others();
        targets();
        observations();
        losses();
        std::ranges::stable_sort(m_found, [](const Alert& a, const Alert& b) { return rank(a) < rank(b); });
        return std::move(m_found);
    }

private:
    static int rank(const Alert& alert)
    {
        return (alert.level == Status::Act ? 0 : 2) + (alert.forbidsAnimals ? 0 : 1);
    }

    static bool broken(const Bound& bound, double value)
    {
        const bool below = bound.kind == AlertKind::BelowLimit || bound.kind == AlertKind::BelowTarget;
        return below ? value < bound.limit : value > bound.limit;
    }

    /// Alert for the run of readings beyond the bound that reaches to the newest; `valueOf` may reckon (free ammonia).
    void readings(const QString& parameter, const QString& name, const Bound& bound, double freshDays,
                  const std::function<std::optional<double>(const Reading&)>& valueOf)
    {
        Alert alert{bound.kind, bound.level,          name,        {}, 0.0, bound.limit, {}, {}, {},
                    {},         bound.forbidsAnimals, bound.source};
        for (auto it = m_layout.readings.rbegin(); it != m_layout.readings.rend(); ++it) {
            if (it->parameter != parameter || it->at > m_now) {
                continue;
            }
            const auto value = valueOf(*it);
            const bool stale = !alert.newest.isValid() && record::daysBetween(it->at, m_now) > freshDays;
            if (stale || !value || !broken(bound, *value)) {
                break;
            }
            if (!alert.newest.isValid()) {
                alert.newest = it->at;
                alert.reading = it->id;
                alert.value = *value;
            }
            alert.since = it->at;
        }
        // One line per parameter: the first bound that is broken is the one that counts most.
        const bool told = std::ranges::any_of(m_found, [&](const Alert& a) { return a.parameter == name; });
        if (alert.newest.isValid() && !told) {
            m_found.push_back(std::move(alert));
        }
    }

    void plain(const QString& parameter, const Bound& bound, double freshDays = kOtherFreshDays)
    {
        readings(parameter, parameter, bound, freshDays, [](const Reading& r) { return std::optional(r.value); });
    }

    static Bound above(Status level, double limit, bool forbids, const char* source)
    {
        return {AlertKind::AboveLimit, level, limit, forbids, QString::fromUtf8(source)};
    }

    /// By one of the limits, which the keeper may have set; `share` of it.
    Bound above(Status level, double Limits::*limit, bool forbids, const char* source, double share = 1.0) const
    {
        return bound(AlertKind::AboveLimit, level, limit, forbids, source, share);
    }
    Bound below(Status level, double Limits::*limit, bool forbids) const
    {
        return bound(AlertKind::BelowLimit, level, limit, forbids, kPractice, 1.0);
    }
    Bound bound(AlertKind kind, Status level, double Limits::*limit, bool forbids, const char* source,
                double share) const
    {
        return {kind, level, m_limits.*limit * share, forbids, m_limits.sourceOf(limit, QString::fromUtf8(source))};
    }

    void nitrogen()
    {
        const auto free = [this](const Reading& r) {
            const auto reckoned = freeAmmoniaOf(m_layout, r);
            return reckoned ? std::optional(reckoned->mgN_per_L) : std::nullopt;
        };
        const char* const published = QT_TRANSLATE_NOOP("Templates", "UF/IFAS FA16; SRAC 462");
        // The limits are themselves too much: "at or above", hence the least step below.
        constexpr double kAtOrAbove = 1.0 - 1e-9;
        if (m_animals) {
            readings(u"tan"_s, u"nh3"_s, above(Status::Act, &Limits::freeAmmoniaAnimals, true, published, kAtOrAbove),
                     kCycleFreshDays, free);
            double Limits::*const nitrite = isPoorInChloride(m_row, m_layout, m_now)
                                                ? &Limits::nitriteAnimalsPoorChloride
                                                : &Limits::nitriteAnimals;
            plain(u"no2"_s, above(Status::Act, nitrite, true, published, kAtOrAbove), kCycleFreshDays);
            plain(u"tan"_s, above(Status::Watch, &Limits::ammoniaClear, true, kPractice), kCycleFreshDays);
        } else {
            plain(u"tan"_s, above(Status::Act, &Limits::ammoniaPlants, true, kPractice, kAtOrAbove), kCycleFreshDays);
            plain(u"no2"_s, above(Status::Watch, &Limits::nitriteWatch, true, kPractice), kCycleFreshDays);
        }
        if (m_animals) {
            plain(u"no3"_s, above(Status::Act, &Limits::nitrateAny, true, kPractice));
            plain(u"no3"_s, above(Status::Watch, &Limits::nitrateAnimals, false, kPractice));
        } else {
            plain(u"no3"_s, above(Status::Watch, &Limits::nitrateAny, false, kPractice));
        }
    }

    void others()
    {
        if (m_animals) {
            plain(u"co2"_s, above(Status::Act, &Limits::co2Animals_mg_per_L, true, kPractice), kCycleFreshDays);
            plain(u"cu"_s, above(Status::Act, 0.02, true, kPractice));
        }
        plain(u"temp"_s, above(Status::Act, 30.0, true, kPractice), kCycleFreshDays);
        plain(u"temp"_s, above(Status::Watch, &Limits::warm_C, true, kPractice), kCycleFreshDays);
        plain(u"temp"_s, below(Status::Watch, &Limits::cool_C, true), kCycleFreshDays);
        if (m_row.target(m_layout.layout.tank, u"kh"_s) == nullptr && m_layout.layout.bed != record::Bed::RichSoil) {
            plain(u"kh"_s, below(Status::Watch, &Limits::lowAlkalinity, false));
        }
    }

    void targets()
    {
        for (const record::Target& target : m_row.targets) {
            if (target.tank != m_layout.layout.tank) {
                continue;
            }
            if (target.high) {
                plain(target.parameter,
                      {AlertKind::AboveTarget, Status::Watch, *target.high, false, QString::fromUtf8(kTarget)});
            }
            if (target.low) {
                plain(target.parameter,
                      {AlertKind::BelowTarget, Status::Watch, *target.low, false, QString::fromUtf8(kTarget)});
            }
        }
    }

    void observations()
    {
        for (const QString& subject : observedSubjects(m_layout, m_now)) {
            const bool sign = isAnimalSign(subject);
            const int threshold = sign ? 1 : 2;
            const auto all = observationsOf(m_layout, subject, m_now);
            const Entry* newest = all.back();
            if (newest->severity.value_or(0) < threshold || record::daysBetween(newest->at, m_now) > kObservationDays) {
                continue;
            }
            const int severity = *newest->severity;
            const bool act = severity >= 3 || (sign && severity >= 2);
            Alert alert{AlertKind::Severity,
                        act ? Status::Act : Status::Watch,
                        {},
                        subject,
                        static_cast<double>(severity),
                        static_cast<double>(threshold),
                        newest->at,
                        newest->at,
                        {},
                        newest->id,
                        sign,
                        QString::fromUtf8(kPractice)};
            for (auto it = all.rbegin(); it != all.rend() && (*it)->severity.value_or(0) >= threshold; ++it) {
                alert.since = (*it)->at;
            }
            m_found.push_back(std::move(alert));
        }
    }

    void losses()
    {
        Alert alert{AlertKind::Losses,           Status::Watch, {}, {}, 0.0, 0.0, {}, {}, {}, {}, true,
                    QString::fromUtf8(kPractice)};
        for (const Entry* loss : occurrences(m_row, m_layout, Event::Loss, m_now)) {
            if (loss->at.localDate().daysTo(m_now.localDate()) > kLossDays) {
                continue;
            }
            alert.since = alert.since.isValid() ? alert.since : loss->at;
            alert.newest = loss->at;
            alert.entry = loss->id;
            alert.value += loss->count.value_or(1);
        }
        if (alert.value > 0.0) {
            alert.level = alert.value >= 2.0 ? Status::Act : Status::Watch;
            m_found.push_back(std::move(alert));
        }
    }

    const record::Row& m_row;
    const record::LayoutRecord& m_layout;
    record::Moment m_now;
    const Limits m_limits;
    bool m_animals;
    std::vector<Alert> m_found;
};

} // namespace

std::vector<Alert> alertsOf(const record::Row& row, record::LayoutId id, const record::Moment& now)
{
    const record::LayoutRecord* layout = row.layout(id);
    if (layout == nullptr || !layout->layout.flooded.isValid() || layout->layout.flooded > now) {
        return {};
    }
    return AlertFinder(row, *layout, now).all();
}

} // namespace littoral::care
