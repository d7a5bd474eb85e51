// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/dosing.h"

#include "core/water/refusal.h"

#include <algorithm>
#include <cmath>

namespace littoral::water {

namespace {

constexpr double kSettledShare = 0.05;
constexpr double kCountSlack = 1.0e-9; // a whole number but for rounding stays it
constexpr int kMostIntervals = 200000; // 0.01 % changes settle to 1e-9 in this many

DoseStep next(const DosePlan& plan, double level)
{
    DoseStep step;
    const double decayed = level * std::exp(-plan.uptakeRate_per_d * plan.intervalDays);
    step.beforeChange = std::max(0.0, decayed - plan.uptake);
    step.afterChange = step.beforeChange + plan.fraction * (plan.source - step.beforeChange);
    step.afterDose = step.afterChange + plan.dose;
    return step;
}

} // namespace

std::vector<DoseStep> doseSteps(const DosePlan& plan, int intervals)
{
    std::vector<DoseStep> steps;
    double level = plan.start;
    for (int i = 0; i < intervals; ++i) {
        steps.push_back(next(plan, level));
        level = steps.back().afterDose;
    }
    return steps;
}

Result<DoseStep> doseCeiling(const DosePlan& plan)
{
    if (!within(plan.fraction, 0.0, 1.0)) {
        return refuse("The share changed lies between 0 and 100 %.");
    }
    if (!(plan.dose >= 0.0) || !(plan.uptake >= 0.0) || !(plan.uptakeRate_per_d >= 0.0) || !(plan.intervalDays > 0.0)) {
        return refuse("Dose, uptake and interval cannot be negative.");
    }
    double level = plan.start;
    DoseStep step;
    for (int i = 0; i < kMostIntervals; ++i) {
        step = next(plan, level);
        if (std::abs(step.afterDose - level) <= 1.0e-12 * std::max(1.0, std::abs(level))) {
            return step;
        }
        level = step.afterDose;
    }
    return refuse("With this plan the level rises without end.",
                  "Change water, dose less, or enter what the plants take up.");
}

Result<int> intervalsToSettle(double fraction)
{
    if (!(fraction > 0.0) || !(fraction <= 1.0)) {
        return refuse("The share changed must be above 0 and up to 100 %.");
    }
    if (fraction == 1.0) {
        return 1;
    }
    return static_cast<int>(std::ceil(std::log(kSettledShare) / std::log1p(-fraction) - kCountSlack));
}

Result<double> doseToHold(double peak, double fraction, double source, double uptake)
{
    if (!within(fraction, 0.0, 1.0) || !(uptake >= 0.0)) {
        return refuse("The share changed lies between 0 and 100 %, and uptake is not negative.");
    }
    if (peak < source * fraction + (1.0 - fraction) * std::max(0.0, peak - uptake)) {
        return refuse("The source water alone brings more than this level.", "Blend it with demineralised water.");
    }
    const double left = std::max(0.0, peak - uptake);
    return peak - (left + fraction * (source - left));
}

namespace {

/// Runs a level on, corner by corner.
class Course
{
public:
    Course(double start, double day, double uptake)
        : m_uptake(uptake)
    {
        m_points.push_back({day, std::max(0.0, start)});
    }

    void runTo(double day)
    {
        const CoursePoint from = m_points.back();
        if (day <= from.day) {
            return;
        }
        const double dryDay = m_uptake > 0.0 ? from.day + from.level / m_uptake : day;
        if (m_uptake > 0.0 && dryDay < day) {
            if (dryDay > from.day) {
                m_points.push_back({dryDay, 0.0});
            }
            m_points.push_back({day, 0.0});
            return;
        }
        m_points.push_back({day, from.level - m_uptake * (day - from.day)});
    }

    void happen(const CourseEvent& event)
    {
        const CoursePoint before = m_points.back();
        const double after =
            before.level + std::clamp(event.fraction, 0.0, 1.0) * (event.source - before.level) + event.rise;
        if (after != before.level) {
            m_points.push_back({before.day, after});
        }
        setUptake(event);
    }

    void setUptake(const CourseEvent& event) { m_uptake = event.uptake_per_d.value_or(m_uptake); }

    std::vector<CoursePoint> take() { return std::move(m_points); }

private:
    double m_uptake;
    std::vector<CoursePoint> m_points;
};

} // namespace

std::vector<CoursePoint> doseCourse(double start, double fromDay, double toDay, double uptake_per_d,
                                    std::span<const CourseEvent> events)
{
    Course course(start, fromDay, uptake_per_d);
    for (const CourseEvent& event : events) {
        if (event.day < fromDay) {
            course.setUptake(event);
        } else if (event.day <= toDay) {
            course.runTo(event.day);
            course.happen(event);
        }
    }
    course.runTo(toDay);
    return course.take();
}

std::optional<double> levelAt(std::span<const CoursePoint> course, double day)
{
    if (course.empty() || day < course.front().day || day > course.back().day) {
        return std::nullopt;
    }
    const auto next = std::ranges::lower_bound(course, day, {}, &CoursePoint::day);
    if (next == course.begin()) {
        return next->level;
    }
    const CoursePoint& before = *(next - 1);
    const double span = next->day - before.day;
    return span > 0.0 ? before.level + (next->level - before.level) * (day - before.day) / span : next->level;
}

} // namespace littoral::water
