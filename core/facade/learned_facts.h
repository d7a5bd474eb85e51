// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/tank_case.h"
#include "core/record/row.h"
#include "core/wording/plan_sentences.h"

#include <memory>
#include <vector>

namespace littoral::facade {

/// What one unknown was narrowed to, and by which layouts, in terms a person can check.
struct LearnedFact
{
    using Kind = wording::LearnedKind;
    Kind kind = Kind::SoilRelease;
    double typical = 1.0;   ///< times the plain prior's median
    double prior80 = 1.0;   ///< 80 % range of the plain prior as a factor either side
    double learned80 = 1.0; ///< the same after learning
    std::vector<record::LayoutId> from;
};

struct Learned
{
    std::vector<forecast::LearnedUnknown> unknowns;
    std::vector<LearnedFact> facts;
};

/// A layout that can teach others: its own first weeks as the forecaster sees them, without what came later.
struct Teacher
{
    record::LayoutId layout;
    record::Bed bed = record::Bed::Inert;
    record::StartMethod start = record::StartMethod::NewMedia;
    record::SourceWaterId source;
    forecast::Request request;
    quint64 fingerprint = 0; ///< of everything the calibration rests on
};
using TeacherPtr = std::shared_ptr<const Teacher>;

/// What one teacher has in common with the layout that is to learn.
struct Lessons
{
    TeacherPtr teacher;
    std::vector<LearnedFact::Kind> about;
};

} // namespace littoral::facade
