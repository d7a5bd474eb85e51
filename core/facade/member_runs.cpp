// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/member_runs.h"

#include "core/forecast/milestones.h"
#include "core/forecast/priors.h"
#include "core/forecast/streams.h"

#include <algorithm>
#include <limits>

namespace littoral::facade {

namespace {

std::vector<double> peaksOf(const forecast::EnsembleOutcome& outcome, forecast::Substance substance)
{
    std::vector<double> highest;
    for (const std::vector<double>& column : outcome.water[static_cast<std::size_t>(substance)]) {
        highest.resize(std::max(highest.size(), column.size()), 0.0);
        for (std::size_t draw = 0; draw < column.size(); ++draw) {
            highest[draw] = std::max(highest[draw], column[draw]);
        }
    }
    return highest;
}

} // namespace

Peaks::Peaks(const forecast::EnsembleOutcome& outcome)
    : ammonia(peaksOf(outcome, forecast::Substance::TotalAmmonia))
    , nitrite(peaksOf(outcome, forecast::Substance::Nitrite))
    , free(peaksOf(outcome, forecast::Substance::FreeAmmonia))
{
}

double Peaks::keeping(double total, double nitriteLimit, double freeLimit) const
{
    std::size_t keep = 0;
    for (std::size_t draw = 0; draw < ammonia.size(); ++draw) {
        keep += ammonia[draw] <= total && nitrite[draw] <= nitriteLimit && free[draw] <= freeLimit ? 1 : 0;
    }
    return ammonia.empty() ? 0.0 : static_cast<double>(keep) / static_cast<double>(ammonia.size());
}

double shareOver(const std::vector<double>& highest, double limit)
{
    const auto count = std::ranges::count_if(highest, [&](double value) { return value > limit; });
    return highest.empty() ? 0.0 : static_cast<double>(count) / static_cast<double>(highest.size());
}

std::optional<forecast::EnsembleOutcome> runMembers(const forecast::Request& request, const forecast::Fit& fit,
                                                    const std::stop_token& stop)
{
    const forecast::Prior prior(request.tank);
    const auto wanted = static_cast<std::size_t>(request.draws);
    const forecast::Rows members =
        wanted < fit.members->count() ? forecast::evenly(*fit.members, wanted, 0.0) : *fit.members;
    Random random(request.seed, forecast::kEnsembleStream);
    return forecast::runEnsemble(request, prior, members, forecast::timetableOf(request), random, stop);
}

} // namespace littoral::facade
