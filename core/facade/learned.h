// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecast_case.h"
#include "core/facade/learned_facts.h"

#include <map>
#include <mutex>
#include <stop_token>
#include <vector>

namespace littoral::facade {

/// Switches learning off for a whole store when its value is "off".
inline const QString kLearnSetting = QStringLiteral("forecast.learn");

/// Layouts of the row that have finished, or are at least 60 days old, with ten or more readings of ammonia and nitrite
/// in their first 60 days; the newest twelve, oldest first. Quick: nothing is calibrated here.
[[nodiscard]] std::vector<TeacherPtr> teachersOf(const record::Row& row, const record::Moment& asOf);

/// Which of them have something in common with `layout`: the same bed (soil), the same source water, a start with
/// mature media; the water-change gain all have in common.
[[nodiscard]] std::vector<Lessons> lessonsFor(const record::LayoutRecord& layout,
                                              const std::vector<TeacherPtr>& teachers);

/// What finished or settled layouts of the row teach about `layout`: soil from those with the same bed, source water
/// from those filled from the same source, media from mature-media starts, the water-change gain from all. Each teacher
/// is calibrated to its own first 60 days (cached by its record's fingerprint). Layouts with fewer than ten readings of
/// ammonia and nitrite teach nothing. Safe to use from several threads at once; takes about a tenth of a second for
/// each teacher not seen before.
class Learning final
{
public:
    /// Nothing when the store's setting switches learning off.
    [[nodiscard]] Learned of(const record::Row& row, record::LayoutId layout, const record::Moment& asOf);

    /// Works through the case's lessons and puts what they teach into it: `learned` and the request's priors. Leaves
    /// the case as it is when stopped.
    void teach(ForecastCase& pupil, std::stop_token stop = {});

private:
    struct Taught
    {
        quint64 fingerprint = 0;
        std::vector<double> mean;
        std::vector<double> sd;
        bool usable = false;
    };
    [[nodiscard]] Learned from(const std::vector<Lessons>& lessons, const forecast::Setup& pupil, std::stop_token stop);
    [[nodiscard]] Taught taughtBy(const Teacher& teacher, const std::stop_token& stop);

    std::mutex m_mutex;
    std::map<record::LayoutId, Taught> m_cache;
};

} // namespace littoral::facade
