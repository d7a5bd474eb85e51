// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/learned.h"

#include "core/forecast/fit.h"
#include "core/forecast/learning.h"
#include "core/forecast/prior_table.h"
#include "core/forecast/priors.h"

#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using Kind = LearnedFact::Kind;
namespace prior = forecast::prior;

namespace {

constexpr double kTaughtDays = 60.0;
constexpr std::ptrdiff_t kFewestReadings = 10;
/// Enough to narrow as far as learning goes; each costs a calibration.
constexpr std::size_t kMostTeachers = 12;
/// Half-width of the middle 80 % of a normal distribution, in its deviations (standard normal table: z(0.9) = 1.2816).
constexpr double kEightInTen_sd = 1.2816;

bool teaches(const record::LayoutRecord& layout, const record::Moment& asOf)
{
    const record::Moment& flooded = layout.layout.flooded;
    if (!flooded.isValid() || flooded >= asOf) {
        return false;
    }
    const bool ended = layout.layout.ended && *layout.layout.ended <= asOf;
    if (!ended && record::daysBetween(flooded, asOf) < kTaughtDays) {
        return false;
    }
    const record::Moment until = flooded.plusDays(kTaughtDays);
    const auto counted = std::ranges::count_if(layout.readings, [&](const record::Reading& reading) {
        return (reading.parameter == u"tan"_s || reading.parameter == u"no2"_s) && reading.at >= flooded &&
               reading.at <= until && reading.at <= asOf;
    });
    return counted >= kFewestReadings;
}

TeacherPtr teacherOf(const record::Row& row, const record::LayoutRecord& layout)
{
    record::Moment until = layout.layout.flooded.plusDays(kTaughtDays);
    if (layout.layout.ended && *layout.layout.ended <= until) {
        until = layout.layout.ended->plusMs(-1);
    }
    ForecastOptions options;
    options.withPlan = false;
    options.withGates = false;
    options.learn = false;
    options.load_mgN_per_L_d = 0.0;
    auto made = forecastCase(row, layout.layout.id, until, options);
    if (!made) {
        return nullptr;
    }
    auto teacher = std::make_shared<Teacher>();
    teacher->layout = layout.layout.id;
    teacher->bed = layout.layout.bed;
    teacher->start = layout.layout.start;
    teacher->source = layout.layout.source;
    teacher->fingerprint = made->fingerprint;
    teacher->request = std::move(made->request);
    return teacher;
}

bool isSoil(record::Bed bed)
{
    return bed == record::Bed::RichSoil || bed == record::Bed::MildSoil;
}

std::size_t placeOf(Kind kind)
{
    switch (kind) {
    case Kind::SoilRelease:
        return forecast::kUnknownFastSoil;
    case Kind::SoilRate:
        return forecast::kUnknownFastSoilRate;
    case Kind::SoilBuffering:
        return forecast::kUnknownSoilBuffering;
    case Kind::SourceNitrate: // of the first source, the layout's own: the same place in every case
        return forecast::kUnknownFixedCount;
    case Kind::SourceAmmonia:
        return forecast::kUnknownFixedCount + 1;
    case Kind::MatureMedia:
        return forecast::kUnknownMedia;
    case Kind::ChangeGain:
        break;
    }
    return forecast::kUnknownChangeGain;
}

/// The plain prior's deviation on the logarithmic scale.
double priorSd(Kind kind, const forecast::Setup& setup)
{
    switch (kind) {
    case Kind::SoilRelease:
        return prior::kFastSoil.sd;
    case Kind::SoilRate:
        return prior::kFastSoilRate.sd;
    case Kind::SoilBuffering:
        return prior::kSoilBuffering.sd;
    case Kind::SourceNitrate:
        return setup.sources.front().nitrate_mgN_per_L ? prior::kStatedNitrateSd : prior::kUnknownNitrate.sd;
    case Kind::SourceAmmonia:
        switch (setup.sources.front().chloramine) {
        case forecast::Chloramine::Yes:
            return prior::kChloramineYes.sd;
        case forecast::Chloramine::No:
            return prior::kChloramineNo.sd;
        case forecast::Chloramine::Unknown:
            break;
        }
        return prior::kChloramineUnknown.sd;
    case Kind::MatureMedia:
        return prior::kMedia.sd;
    case Kind::ChangeGain:
        break;
    }
    return prior::kChangeGain.sd;
}

/// Has the teacher anything to say about this unknown? Its own readings must have narrowed it.
bool narrowed(double sd)
{
    const forecast::Lesson lesson{0, 0.0, sd};
    return !forecast::learn(std::span(&lesson, 1)).empty();
}

} // namespace

std::vector<TeacherPtr> teachersOf(const record::Row& row, const record::Moment& asOf)
{
    std::vector<const record::LayoutRecord*> able;
    for (const auto& [id, layout] : row.layouts) {
        if (teaches(layout, asOf)) {
            able.push_back(&layout);
        }
    }
    std::ranges::stable_sort(able, {}, [](const record::LayoutRecord* l) { return l->layout.flooded.utcMs(); });
    if (able.size() > kMostTeachers) {
        able.erase(able.begin(), able.end() - kMostTeachers);
    }
    std::vector<TeacherPtr> teachers;
    for (const record::LayoutRecord* layout : able) {
        if (TeacherPtr teacher = teacherOf(row, *layout)) {
            teachers.push_back(std::move(teacher));
        }
    }
    return teachers;
}

std::vector<Lessons> lessonsFor(const record::LayoutRecord& layout, const std::vector<TeacherPtr>& teachers)
{
    std::vector<Lessons> all;
    for (const TeacherPtr& teacher : teachers) {
        if (teacher->layout == layout.layout.id) {
            continue;
        }
        Lessons lessons{teacher, {}};
        if (isSoil(teacher->bed) && teacher->bed == layout.layout.bed) {
            lessons.about.insert(lessons.about.end(), {Kind::SoilRelease, Kind::SoilRate, Kind::SoilBuffering});
        }
        if (teacher->source && teacher->source == layout.layout.source) {
            lessons.about.insert(lessons.about.end(), {Kind::SourceNitrate, Kind::SourceAmmonia});
        }
        if (teacher->start == record::StartMethod::MatureMedia && layout.layout.start == teacher->start) {
            lessons.about.push_back(Kind::MatureMedia);
        }
        lessons.about.push_back(Kind::ChangeGain);
        all.push_back(std::move(lessons));
    }
    return all;
}

Learned Learning::of(const record::Row& row, record::LayoutId layout, const record::Moment& asOf)
{
    const record::LayoutRecord* pupil = row.layout(layout);
    if (pupil == nullptr || row.settings.value(kLearnSetting) == u"off"_s) {
        return {};
    }
    auto made = forecastCase(row, layout, asOf);
    if (!made) {
        return {};
    }
    return from(made->lessons, made->request.tank.setup, {});
}

void Learning::teach(ForecastCase& pupil, std::stop_token stop)
{
    if (pupil.lessons.empty()) {
        return;
    }
    Learned learned = from(pupil.lessons, pupil.request.tank.setup, stop);
    if (!stop.stop_requested()) {
        pupil.request.tank.learned = learned.unknowns;
        pupil.learned = std::move(learned);
    }
}

Learning::Taught Learning::taughtBy(const Teacher& teacher, const std::stop_token& stop)
{
    // Held while calibrating: two pupils of one teacher wait for it instead of both doing the work.
    const std::scoped_lock lock(m_mutex);
    const auto known = m_cache.find(teacher.layout);
    if (known != m_cache.end() && known->second.fingerprint == teacher.fingerprint) {
        return known->second;
    }
    Taught taught;
    taught.fingerprint = teacher.fingerprint;
    const auto fitted = forecast::fit(teacher.request, stop);
    if (!fitted && fitted.error().fault == Fault::Cancelled) {
        return taught;
    }
    if (fitted && fitted->diagnostics.fitted) {
        taught.mean = fitted->mean;
        taught.sd = fitted->sd;
        taught.usable = true;
    }
    m_cache[teacher.layout] = taught;
    return taught;
}

Learned Learning::from(const std::vector<Lessons>& lessons, const forecast::Setup& pupil, std::stop_token stop)
{
    std::vector<forecast::Lesson> all;
    std::map<Kind, std::vector<record::LayoutId>> from;
    for (const Lessons& one : lessons) {
        if (stop.stop_requested()) {
            return {};
        }
        const Taught taught = taughtBy(*one.teacher, stop);
        if (!taught.usable) {
            continue;
        }
        for (const Kind kind : one.about) {
            const std::size_t place = placeOf(kind);
            all.push_back({place, taught.mean[place], taught.sd[place]});
            if (narrowed(taught.sd[place])) {
                from[kind].push_back(one.teacher->layout);
            }
        }
    }
    Learned learned;
    learned.unknowns = forecast::learn(all);
    for (const auto& [kind, layouts] : from) {
        const auto unknown = std::ranges::find(learned.unknowns, placeOf(kind), &forecast::LearnedUnknown::unknown);
        if (unknown != learned.unknowns.end()) {
            const double sd = priorSd(kind, pupil);
            learned.facts.push_back({kind, std::exp(sd * unknown->mean), std::exp(kEightInTen_sd * sd),
                                     std::exp(kEightInTen_sd * sd * unknown->sd), layouts});
        }
    }
    return learned;
}

} // namespace littoral::facade
