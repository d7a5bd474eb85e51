// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/learning.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace littoral::forecast {

namespace {

/// A posterior this close to the prior's width measured nothing.
constexpr double kSaysNothing = 0.98;
/// No run of layouts teaches more than this; the next one may be the odd one out.
constexpr double kNarrowest = 0.3;
constexpr double kFurthest = 3.0;

struct Sum
{
    double precision = 1.0 / (1.0 - kOwnShare); ///< of the common mean, prior included
    double weighted = 0.0;
    int lessons = 0;
};

} // namespace

std::vector<LearnedUnknown> learn(std::span<const Lesson> lessons)
{
    std::map<std::size_t, Sum> sums;
    for (const Lesson& lesson : lessons) {
        if (!(lesson.sd > 0.0) || lesson.sd >= kSaysNothing || !std::isfinite(lesson.mean)) {
            continue;
        }
        // Posterior precision less the prior's is the measurement's.
        const double precision = 1.0 / (lesson.sd * lesson.sd) - 1.0;
        const double measured = lesson.mean / (lesson.sd * lesson.sd) / precision;
        const double ofCommon = 1.0 / (1.0 / precision + kOwnShare);
        Sum& sum = sums[lesson.unknown];
        sum.precision += ofCommon;
        sum.weighted += ofCommon * measured;
        ++sum.lessons;
    }
    std::vector<LearnedUnknown> learned;
    for (const auto& [unknown, sum] : sums) {
        const double mean = std::clamp(sum.weighted / sum.precision, -kFurthest, kFurthest);
        const double sd = std::sqrt(1.0 / sum.precision + kOwnShare);
        learned.push_back({unknown, mean, std::max(sd, kNarrowest)});
    }
    return learned;
}

} // namespace littoral::forecast
