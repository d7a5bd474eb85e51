// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/expected_course.h"

#include "core/care/due.h"
#include "core/facade/trend_model.h"
#include "core/record/source_profile.h"
#include "core/water/dosing.h"
#include "core/water/load.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;
using water::CourseEvent;

namespace {

constexpr double kDayMs = 86'400'000.0;
constexpr double kWeek_d = 7.0;
// A reading this long before the first dose still begins the course.
constexpr double kStartReach_d = 14.0;
// Ammonia-rich soil sets nitrogen free for about four weeks (common practice): until then doses are the lesser part.
constexpr double kSoilFeeds_d = 28.0;
// Protein share of an ordinary flake or granule when the label was not entered (common practice).
constexpr double kUsualProtein = 0.45;
// Work still due today is taken to be done so long from now.
constexpr double kSoonDays = 1.0 / 24.0;
// A dose follows the water change of its day.
constexpr double kAfterChangeDays = 0.5 / 24.0;

/// What a layout is taken to take up by its density, mg/L NO3 a week: judgement from weekly additions that are commonly
/// found to hold a level (2-6 mg/L lean, 5-12 by plant mass, up to 20-30 in dense fast growth; common practice).
struct Uptake
{
    double low, high;
};
constexpr std::array kByDensity{Uptake{0.0, 0.0}, Uptake{1.0, 4.0}, Uptake{3.0, 10.0}, Uptake{6.0, 20.0}};

/// mg of the parameter taken up with one mg of NO3, by the proportions of a mixture dosed by plant mass: NO3 5-12, PO4
/// 0.5-1.5, K 6-12, Fe 0.2-0.4 mg/L a week (common practice), middles.
struct Proportion
{
    const char16_t* key;
    double perNitrate;
};
constexpr std::array kProportions{Proportion{u"no3", 1.0}, Proportion{u"po4", 1.0 / 8.5}, Proportion{u"k", 9.0 / 8.5},
                                  Proportion{u"fe", 0.3 / 8.5}};

QString words(const char* text)
{
    return QCoreApplication::translate("Expected", text);
}

const Proportion* proportionOf(const QString& parameter)
{
    const auto found =
        std::ranges::find_if(kProportions, [&](const Proportion& p) { return parameter == QStringView(p.key); });
    return found == kProportions.end() ? nullptr : found;
}

QString plain(double value)
{
    return QLocale().toString(value, 'g', 2);
}

/// The regimen a dose belongs to: of that name and in force then, else of that name.
const record::DoseRegimen* regimenOf(const record::LayoutRecord& layout, const Entry& entry)
{
    const record::DoseRegimen* named = nullptr;
    for (const record::DoseRegimen& regimen : layout.regimens) {
        if (regimen.name.compare(entry.subject, Qt::CaseInsensitive) == 0) {
            named = named == nullptr || regimen.isOn(entry.at.localDate()) ? &regimen : named;
        }
    }
    return named;
}

/// Where the course begins and within which bounds.
struct Start
{
    record::Moment at;
    double low = 0.0, high = 0.0;
};

class CourseMaker
{
public:
    CourseMaker(const record::Row& row, const record::LayoutRecord& layout, const record::Parameter& parameter,
                const record::Moment& now, double net_L)
        : m_row(row)
        , m_layout(layout)
        , m_parameter(parameter)
        , m_key(parameter.key)
        , m_now(now)
        , m_net_L(net_L)
    {
    }

    ExpectedCourse make()
    {
        ExpectedCourse course;
        const auto start = findStart();
        if (!start) {
            return course;
        }
        m_flooded = m_layout.layout.flooded;
        addDone();
        addPlanned();
        std::ranges::stable_sort(m_events, {}, &CourseEvent::day);
        const double until = m_layout.layout.ended ? dayOf(*m_layout.layout.ended)
                                                   : dayOf(m_now) + static_cast<double>(kExpectedAhead_d);
        const UptakeRange uptake = uptakeRange(m_layout.layout, m_key);
        const auto least = run(start->low, *start, until, uptake.high_per_d);
        const auto most = run(start->high, *start, until, uptake.low_per_d);
        const auto middle =
            run((start->low + start->high) / 2.0, *start, until, (uptake.low_per_d + uptake.high_per_d) / 2.0);
        merge(course, least, middle, most);
        say(course, uptake, *start);
        return course;
    }

private:
    [[nodiscard]] double dayOf(const record::Moment& at) const
    {
        return record::daysBetween(m_layout.layout.flooded, at);
    }

    [[nodiscard]] std::optional<record::Moment> firstDosing() const
    {
        std::optional<record::Moment> first;
        const auto see = [&](const record::Moment& at) { first = first && *first < at ? *first : at; };
        for (const record::DoseRegimen& regimen : m_layout.regimens) {
            if (record::milligramsPerUnit(regimen, m_key) > 0.0) {
                const QDateTime day(regimen.from, QTime(0, 0), Qt::OffsetFromUTC, m_now.offsetSeconds());
                see(record::Moment::fromDateTime(day));
            }
        }
        for (const Entry& entry : m_layout.entries) {
            const record::DoseRegimen* regimen =
                entry.kind == EntryKind::Dose && !entry.planned ? regimenOf(m_layout, entry) : nullptr;
            if (regimen != nullptr && record::milligramsPerUnit(*regimen, m_key) > 0.0) {
                see(entry.at);
            }
        }
        return first;
    }

    [[nodiscard]] std::optional<Start> findStart() const
    {
        const auto dosing = firstDosing();
        if (!dosing) {
            return std::nullopt;
        }
        const bool soil = m_layout.layout.bed == record::Bed::RichSoil && m_key == u"no3"_s;
        const record::Moment soonest = m_layout.layout.flooded.plusDays(soil ? kSoilFeeds_d : 0.0);
        const record::Moment from = std::max(soonest, dosing->plusDays(-kStartReach_d));
        const record::Reading* begin = nullptr;
        for (const record::Reading* reading : m_layout.readingsOf(m_key)) {
            // The newest before dosing began, else the first after it.
            if (reading->at < from || reading->at > m_now || (begin != nullptr && reading->at > *dosing)) {
                continue;
            }
            begin = reading;
        }
        if (begin == nullptr) {
            return std::nullopt;
        }
        const TrendInterval step = stepInterval(*begin, m_row.kit(begin->kit));
        const record::Unit& unit = m_parameter.shown();
        return Start{begin->at, unit.fromCanonical(std::min(step.low, begin->low)),
                     unit.fromCanonical(std::max(step.high, begin->high))};
    }

    /// The source's level in the shown unit; what a source is not known to hold counts as nothing.
    [[nodiscard]] double sourceLevel(record::SourceWaterId named)
    {
        if (m_key != u"no3"_s) {
            m_sourceTaken = true;
            return 0.0;
        }
        const record::SourceProfile profile = record::sourceProfile(m_row, named ? named : m_layout.layout.source);
        m_sourceTaken = m_sourceTaken || !profile.nitrate_mgN_per_L.value;
        return m_parameter.shown().fromCanonical(profile.nitrate_mgN_per_L.value.value_or(0.0));
    }

    void addDone()
    {
        for (const Entry& entry : m_layout.entries) {
            if (entry.planned || entry.at > m_now) {
                continue;
            }
            if (entry.kind == EntryKind::WaterChange && entry.fraction) {
                m_events.push_back({dayOf(entry.at), *entry.fraction, sourceLevel(entry.source), 0.0, {}});
            } else if (entry.kind == EntryKind::Dose) {
                addDose(entry);
            } else if (entry.kind == EntryKind::Feeding && m_key == u"no3"_s) {
                m_events.push_back({dayOf(entry.at), 0.0, 0.0, 0.0, feed_mgPerL_d(entry)});
                m_fed = true;
            }
        }
    }

    void addDose(const Entry& entry)
    {
        const record::DoseRegimen* regimen = regimenOf(m_layout, entry);
        if (regimen == nullptr) {
            if (entry.subject != u"ammonia"_s && entry.subject != u"starter"_s &&
                !m_strangers.contains(entry.subject)) {
                m_strangers << entry.subject;
            }
            return;
        }
        const bool sameUnit = entry.unit.isEmpty() || entry.unit.compare(regimen->unit(), Qt::CaseInsensitive) == 0;
        if (!sameUnit) {
            m_strangers << entry.subject;
            return;
        }
        addRise(dayOf(entry.at), *regimen, entry.amount.value_or(regimen->amount));
    }

    void addRise(double day, const record::DoseRegimen& regimen, double amount)
    {
        const double rise = record::milligramsPerUnit(regimen, m_key) * amount / m_net_L;
        if (rise > 0.0) {
            m_events.push_back({day, 0.0, 0.0, rise, {}});
        }
    }

    /// mg/L NO3 a day that feed comes to once it is nitrified.
    [[nodiscard]] double feed_mgPerL_d(const Entry& entry) const
    {
        double nitrogen_mg_per_d = entry.amount.value_or(0.0) * m_net_L;
        if (entry.unit == u"g/d"_s) {
            const auto fed =
                water::feedNitrogen_mg_per_d(entry.amount.value_or(0.0), entry.proteinShare.value_or(kUsualProtein));
            nitrogen_mg_per_d = fed ? *fed : 0.0;
        }
        const auto rise = water::nitratePerDay(nitrogen_mg_per_d, m_net_L);
        return rise ? rise->mg_per_L : 0.0;
    }

    void addPlanned()
    {
        const QDate today = m_now.localDate();
        for (const care::DueItem& item :
             care::dueWork(m_row, m_layout.layout.id, m_now, today.addDays(kExpectedAhead_d))) {
            const double day = dayOf(m_now) + std::max(kSoonDays, static_cast<double>(today.daysTo(item.due)));
            if (item.kind == care::WorkKind::WaterChange && item.fraction) {
                const auto planned = std::ranges::find(m_layout.entries, item.plannedEntry, &Entry::id);
                const bool named = item.plannedEntry && planned != m_layout.entries.end();
                m_events.push_back(
                    {day, *item.fraction, sourceLevel(named ? planned->source : record::SourceWaterId{}), 0.0, {}});
            } else if (item.kind == care::WorkKind::Dose && item.amount) {
                const auto regimen = std::ranges::find_if(m_layout.regimens, [&](const record::DoseRegimen& r) {
                    return r.name == item.subject && r.isOn(item.cadenceDue);
                });
                if (regimen != m_layout.regimens.end()) {
                    addRise(day + kAfterChangeDays, *regimen, *item.amount);
                }
            }
        }
    }

    [[nodiscard]] std::vector<water::CoursePoint> run(double level, const Start& start, double until,
                                                      double uptake_per_d) const
    {
        std::vector<CourseEvent> events = m_events;
        for (CourseEvent& event : events) {
            // What feeding sets free goes off what the plants take.
            if (event.uptake_per_d) {
                event.uptake_per_d = uptake_per_d - *event.uptake_per_d;
            }
        }
        return water::doseCourse(level, dayOf(start.at), until, uptake_per_d, events);
    }

    /// The three courses have the same events but run dry at different times: every corner of each, once.
    void merge(ExpectedCourse& course, const std::vector<water::CoursePoint>& low,
               const std::vector<water::CoursePoint>& mid, const std::vector<water::CoursePoint>& high) const
    {
        std::vector<double> days;
        for (const auto* one : {&low, &mid, &high}) {
            for (const water::CoursePoint& point : *one) {
                days.push_back(point.day);
            }
        }
        std::ranges::sort(days);
        const auto doubled = std::ranges::unique(days);
        days.erase(doubled.begin(), doubled.end());
        const auto add = [&](double day, bool after) {
            const auto level = [&](const std::vector<water::CoursePoint>& one) {
                if (after) {
                    const auto next = std::ranges::upper_bound(one, day, {}, &water::CoursePoint::day);
                    if (next != one.begin() && (next - 1)->day == day) {
                        return (next - 1)->level;
                    }
                }
                return water::levelAt(one, day).value_or(0.0);
            };
            course.points.push_back(
                {m_flooded.utcMs() + static_cast<qint64>(day * kDayMs), level(low), level(mid), level(high)});
        };
        for (const double day : days) {
            add(day, false);
            const ExpectedPoint before = course.points.back();
            add(day, true);
            if (before.low == course.points.back().low && before.mid == course.points.back().mid &&
                before.high == course.points.back().high) {
                course.points.pop_back();
            }
        }
    }

    void say(ExpectedCourse& course, const UptakeRange& uptake, const Start& start) const
    {
        const QDate today = m_now.localDate();
        course.assumptions
            << words("It begins with the reading of %1.").arg(wording::dateText(start.at.localDate(), today));
        const QString range =
            words("%1–%2 %3")
                .arg(plain(uptake.low_per_d * kWeek_d), plain(uptake.high_per_d * kWeek_d), m_parameter.shown().label);
        course.assumptions << (uptake.declared
                                   ? words("The plants take up %1 a week, as declared for this layout.").arg(range)
                                   : words("The plants are taken to use %1 a week, by how densely it is planted "
                                           "(common practice; it can be set with the layout).")
                                         .arg(range));
        if (m_sourceTaken) {
            course.assumptions << words("The source water is taken to hold none: its figure is not stated.");
        }
        if (m_key == u"no3"_s) {
            course.assumptions << (m_fed ? words("Nitrate from feed is counted; what debris and soil give is not.")
                                         : words("No feeding is on record; what debris and soil give is not counted."));
        }
        if (!m_strangers.isEmpty()) {
            course.assumptions << words("Left out, as their contents or unit are not stated: %1.")
                                      .arg(QLocale().createSeparatedList(m_strangers));
        }
    }

    const record::Row& m_row;
    const record::LayoutRecord& m_layout;
    const record::Parameter& m_parameter;
    QString m_key;
    record::Moment m_now;
    double m_net_L;
    record::Moment m_flooded;
    std::vector<CourseEvent> m_events;
    QStringList m_strangers;
    bool m_sourceTaken = false;
    bool m_fed = false;
};

QString verdict(double low, double high, const ExpectedPoint& expected)
{
    if (high < expected.low) {
        return words("%1: the plants take up more, less was dosed than entered, or the kit reads low.");
    }
    if (low > expected.high) {
        return words("%1: the plants take up less, more came in than entered, or the kit reads high.");
    }
    return words("%1: they agree.");
}

} // namespace

std::optional<ExpectedPoint> ExpectedCourse::at(qint64 instant) const
{
    if (points.empty() || instant < points.front().at || instant > points.back().at) {
        return std::nullopt;
    }
    const auto next = std::ranges::lower_bound(points, instant, {}, &ExpectedPoint::at);
    if (next == points.begin() || next->at == instant) {
        return *next;
    }
    const ExpectedPoint& before = *(next - 1);
    const double share = static_cast<double>(instant - before.at) / static_cast<double>(next->at - before.at);
    const auto between = [&](double ExpectedPoint::*level) {
        return before.*level + share * (*next.*level - before.*level);
    };
    return ExpectedPoint{instant, between(&ExpectedPoint::low), between(&ExpectedPoint::mid),
                         between(&ExpectedPoint::high)};
}

UptakeRange uptakeRange(const record::Layout& layout, const QString& parameter)
{
    const Proportion* proportion = proportionOf(parameter);
    if (proportion == nullptr) {
        return {};
    }
    const Uptake usual = kByDensity[static_cast<std::size_t>(layout.plants)];
    const bool declared = layout.uptakeLow_mg_per_L_wk || layout.uptakeHigh_mg_per_L_wk;
    const double low = declared ? layout.uptakeLow_mg_per_L_wk.value_or(0.0) : usual.low;
    const double high = declared ? layout.uptakeHigh_mg_per_L_wk.value_or(low) : usual.high;
    return {low * proportion->perNitrate / kWeek_d, std::max(low, high) * proportion->perNitrate / kWeek_d, declared};
}

ExpectedCourse expectedCourse(const record::Row& row, const record::LayoutRecord& layout, const QString& parameter,
                              const record::Moment& now)
{
    const record::Parameter* known = record::findParameter(parameter);
    const record::Tank* tank = row.tank(layout.layout.tank);
    if (proportionOf(parameter) == nullptr || known == nullptr || tank == nullptr || layout.regimens.empty()) {
        return {};
    }
    const auto net = record::netVolume(*tank, layout.layout);
    return net ? CourseMaker(row, layout, *known, now, net->litres).make() : ExpectedCourse{};
}

QString expectedSentence(const record::Row& row, const record::LayoutRecord& layout, const QString& parameter,
                         const ExpectedCourse& course, const record::Moment& now)
{
    const record::Parameter* known = record::findParameter(parameter);
    const record::Reading* reading = layout.newest(parameter, now);
    const auto expected = reading == nullptr ? std::nullopt : course.at(reading->at.utcMs());
    // The reading it begins with says nothing against it.
    if (known == nullptr || !expected || reading->at.utcMs() <= course.points.front().at) {
        return {};
    }
    const record::Unit& unit = known->shown();
    const TrendInterval step = stepInterval(*reading, row.kit(reading->kit));
    const auto number = [&](double value) { return wording::numberText(value, known->decimals); };
    const QString low = number(expected->low);
    const QString high = number(expected->high);
    const QString range = low == high ? low : words("%1–%2").arg(low, high);
    const QString figures = words("%1 measured %2, expected %3 %4 on %5")
                                .arg(known->name, record::valueText(*reading), range, unit.label,
                                     wording::dateText(reading->at.localDate(), now.localDate()));
    return verdict(unit.fromCanonical(std::min(step.low, reading->low)),
                   unit.fromCanonical(std::max(step.high, reading->high)), *expected)
        .arg(figures);
}

} // namespace littoral::facade
