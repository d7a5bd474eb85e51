// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/exposure.h"

#include "core/care/limits.h"
#include "core/care/stock.h"
#include "core/care/water_state.h"
#include "core/record/shown.h"

#include <algorithm>
#include <cmath>

namespace littoral::findings {

using namespace Qt::StringLiterals;
using record::Moment;
using record::Reading;

namespace {

constexpr double kLongestGapDays = 10.0; ///< a weekly test done some days late is still a series
constexpr double kRelativeError = 0.10;
constexpr double kPhError = 0.2;
constexpr double kTemperatureError_C = 0.5;

struct Point
{
    Moment at;
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
};

std::vector<Point> pointsOf(const record::Row& row, const record::LayoutRecord& layout, const QString& parameter)
{
    std::vector<Point> points;
    const bool free = parameter == u"nh3"_s;
    for (const Reading* reading : layout.readingsOf(free ? u"tan"_s : parameter)) {
        const ErrorRange range = errorOf(row, *reading);
        Point point{reading->at, reading->value, range.low, range.high};
        if (free) {
            const auto ammonia = care::freeAmmoniaOf(layout, *reading);
            if (!ammonia) {
                continue;
            }
            // The free share scales with the total; the error of pH comes on top and is not in this range.
            const double share = reading->value > 0.0 ? ammonia->mgN_per_L / reading->value : 0.0;
            point = {reading->at, ammonia->mgN_per_L, range.low * share, range.high * share};
        }
        points.push_back(point);
    }
    return points;
}

double clamped(double value)
{
    return std::clamp(value, 0.0, 1.0);
}

/// Share of the straight stretch from `a` to `b` that lies beyond the limit.
double shareBeyond(double a, double b, const Limit& limit)
{
    const double sign = limit.above ? 1.0 : -1.0;
    const double from = sign * (a - limit.value);
    const double to = sign * (b - limit.value);
    if (from > 0.0 && to > 0.0) {
        return 1.0;
    }
    if (from <= 0.0 && to <= 0.0) {
        return 0.0;
    }
    return from > 0.0 ? clamped(from / (from - to)) : clamped(to / (to - from));
}

/// Value on the stretch at `at`.
Point between(const Point& a, const Point& b, const Moment& at)
{
    const double whole = record::daysBetween(a.at, b.at);
    const double t = whole > 0.0 ? record::daysBetween(a.at, at) / whole : 0.0;
    const auto mix = [t](double x, double y) { return x + t * (y - x); };
    return {at, mix(a.value, b.value), mix(a.low, b.low), mix(a.high, b.high)};
}

class Tally
{
public:
    Tally(const Limit& limit, const Moment& from, const Moment& to)
        : m_from(from)
        , m_to(to)
    {
        m_exposure.limit = limit;
    }

    Exposure of(const std::vector<Point>& points)
    {
        for (const Point& point : points) {
            if (point.at >= m_from && point.at <= m_to) {
                see(point);
            }
        }
        for (std::size_t i = 1; i < points.size(); ++i) {
            stretch(points[i - 1], points[i]);
        }
        m_exposure.gapHours = std::max(0.0, record::daysBetween(m_from, m_to) * 24.0 - m_exposure.readHours);
        return m_exposure;
    }

private:
    [[nodiscard]] bool isBeyond(double value) const
    {
        return m_exposure.limit.above ? value > m_exposure.limit.value : value < m_exposure.limit.value;
    }

    void see(const Point& point)
    {
        const bool worse = m_exposure.limit.above ? point.value > m_exposure.worst : point.value < m_exposure.worst;
        if (m_exposure.readings == 0 || worse) {
            m_exposure.worst = point.value;
            m_exposure.worstAt = point.at;
        }
        ++m_exposure.readings;
    }

    void stretch(const Point& a, const Point& b)
    {
        const Moment from = std::max(a.at, m_from);
        const Moment to = std::min(b.at, m_to);
        if (!(from < to)) {
            return;
        }
        const double hours = record::daysBetween(from, to) * 24.0;
        const bool above = m_exposure.limit.above;
        if (record::daysBetween(a.at, b.at) > kLongestGapDays) {
            const bool near = isBeyond(a.value) || isBeyond(b.value);
            m_exposure.hoursHigh += near ? hours : 0.0;
            return;
        }
        const Point p = between(a, b, from);
        const Point q = between(a, b, to);
        const Limit& limit = m_exposure.limit;
        m_exposure.readHours += hours;
        m_exposure.hours += hours * shareBeyond(p.value, q.value, limit);
        m_exposure.hoursLow += hours * (above ? shareBeyond(p.low, q.low, limit) : shareBeyond(p.high, q.high, limit));
        m_exposure.hoursHigh += hours * (above ? shareBeyond(p.high, q.high, limit) : shareBeyond(p.low, q.low, limit));
    }

    Moment m_from;
    Moment m_to;
    Exposure m_exposure;
};

/// Half way to the steps of the card on either side, canonical; nothing when the kit has no steps of this value.
std::optional<ErrorRange> cardRange(const record::TestKit& kit, const Reading& reading)
{
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    const record::Unit* unit = parameter == nullptr ? nullptr : parameter->unit(kit.unit);
    if (unit == nullptr || kit.steps.size() < 2 || kit.kind == record::KitKind::Digital) {
        return std::nullopt;
    }
    const double shown = unit->fromCanonical(reading.value);
    const auto next = std::ranges::upper_bound(kit.steps, shown + 1e-9);
    const auto here = std::ranges::lower_bound(kit.steps, shown - 1e-9);
    const double low = here == kit.steps.begin() ? shown : (shown + *std::prev(here)) / 2.0;
    const double high = next == kit.steps.end() ? shown * (1.0 + kRelativeError) : (shown + *next) / 2.0;
    return ErrorRange{unit->toCanonical(low), unit->toCanonical(high)};
}

} // namespace

ErrorRange errorOf(const record::Row& row, const Reading& reading)
{
    if (reading.censoring != record::Censoring::None) {
        return {reading.low, reading.high};
    }
    if (reading.parameter == u"ph"_s) {
        return {reading.value - kPhError, reading.value + kPhError};
    }
    if (reading.parameter == u"temp"_s) {
        return {reading.value - kTemperatureError_C, reading.value + kTemperatureError_C};
    }
    const record::TestKit* kit = reading.kit ? row.kit(reading.kit) : nullptr;
    if (const auto card = kit == nullptr ? std::nullopt : cardRange(*kit, reading)) {
        return *card;
    }
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    const double digit = parameter == nullptr ? 0.0 : record::leastDigit(*parameter);
    const double error = std::max(kRelativeError * std::abs(reading.value), digit);
    const double least = parameter == nullptr ? reading.value - error : parameter->lowest;
    return {std::max(least, reading.value - error), reading.value + error};
}

Exposure exposure(const record::Row& row, const record::LayoutRecord& layout, const Limit& limit, const Moment& from,
                  const Moment& to)
{
    return Tally(limit, from, to).of(pointsOf(row, layout, limit.parameter));
}

std::vector<Limit> limitsFor(const record::Row& row, const record::LayoutRecord& layout, const Moment& at)
{
    using care::Limits;
    const Limits limits = care::limitsOf(row);
    std::vector<Limit> all;
    const auto add = [&](const QString& parameter, double Limits::*limit, const QString& source, bool above = true) {
        all.push_back({parameter, limits.*limit, above, limits.sourceOf(limit, source)});
    };
    const QString practice = u"common practice"_s;
    if (care::stockAt(layout, at).added > 0) {
        const bool poor = care::isPoorInChloride(row, layout, at);
        add(u"nh3"_s, &Limits::freeAmmoniaAnimals, u"trade limit; UF/IFAS FA16 puts harm above 0.05"_s);
        add(u"no2"_s, poor ? &Limits::nitriteAnimalsPoorChloride : &Limits::nitriteAnimals,
            poor ? u"MSD/Merck Veterinary Manual, table"_s : u"SRAC 462"_s);
        add(u"no3"_s, &Limits::nitrateAnimals, u"trade limit over source water"_s);
        add(u"co2"_s, &Limits::co2Animals_mg_per_L, practice);
    } else {
        add(u"tan"_s, &Limits::ammoniaPlants, u"plants: Cao et al. 2007; common practice"_s);
        add(u"nh3"_s, &Limits::freeAmmoniaOxidisers, u"nitrite oxidisers held back"_s);
        add(u"no3"_s, &Limits::nitrateAny, practice);
    }
    add(u"temp"_s, &Limits::warm_C, practice);
    add(u"temp"_s, &Limits::cool_C, practice, false);
    add(u"kh"_s, &Limits::lowAlkalinity, practice, false);
    return all;
}

} // namespace littoral::findings
