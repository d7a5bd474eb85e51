// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/ease_desk.h"

#include "core/care/stock.h"
#include "core/facade/keeper.h"
#include "core/facade/member_runs.h"
#include "core/forecast/plans.h"

#include <QCoreApplication>
#include <QThreadPool>
#include <limits>
#include <map>

namespace littoral::facade {

namespace {

constexpr double kIntervals = 2.0;
constexpr double kLeastDays = 7.0;
constexpr double kRow_d = 0.25;
constexpr int kDraws = 300;

/// What was found, and what it belongs to.
struct Weighed
{
    std::shared_ptr<const ForecastResult> basis;
    care::Pace looser;
    std::optional<double> odds;
    quint64 ticket = 0;
    std::stop_source stop{std::nostopstate};
};

} // namespace

Result<double> oddsAtLooser(const ForecastResult& basis, const care::Pace& looser, const care::EaseLimits& limits,
                            const std::stop_token& stop)
{
    if (basis.fit.members == nullptr || looser.everyDays <= 0.0) {
        return Error{
            Fault::BadInput,
            QCoreApplication::translate("littoral::facade::EaseDesk", "There is no forecast to ask.").toStdString(),
            {},
            {}};
    }
    forecast::Request request = basis.inputs.request;
    request.horizonDays = std::max(kIntervals * looser.everyDays, kLeastDays);
    request.stepDays = kRow_d;
    request.extraDays.clear();
    request.gates.clear();
    request.load_mgN_per_L_d = 0.0;
    request.draws = std::min(kDraws, request.draws);
    forecast::ChangePlan plan;
    plan.fraction = looser.fraction;
    plan.everyDays = looser.everyDays;
    const double end = request.tank.decisionDay + request.horizonDays;
    request.tank = forecast::withChanges(request.tank, forecast::changesOf(plan, request.tank, end));
    const auto outcome = runMembers(request, basis.fit, stop);
    if (!outcome) {
        return Error{Fault::Cancelled,
                     QCoreApplication::translate("littoral::facade::EaseDesk", "It was stopped.").toStdString(),
                     {},
                     {}};
    }
    return Peaks(*outcome).keeping(limits.tan, limits.no2, std::numeric_limits<double>::infinity());
}

struct EaseDesk::Private
{
    Keeper& keeper;
    Forecasts& forecasts;
    QThreadPool pool;
    std::map<record::LayoutId, Weighed> weighed;
    quint64 lastTicket = 0;

    Private(Keeper& k, Forecasts& f)
        : keeper(k)
        , forecasts(f)
    {
        pool.setMaxThreadCount(1);
    }
};

EaseDesk::EaseDesk(Keeper& keeper, Forecasts& forecasts, QObject* parent)
    : QObject(parent)
    , d(std::make_unique<Private>(keeper, forecasts))
{
    connect(&forecasts, &Forecasts::ready, this, &EaseDesk::weigh);
    connect(&keeper, &Keeper::storeClosed, this, &EaseDesk::forget);
}

EaseDesk::~EaseDesk()
{
    forget();
    d->pool.waitForDone();
}

void EaseDesk::forget()
{
    for (auto& [layout, entry] : d->weighed) {
        entry.stop.request_stop();
    }
    d->weighed.clear();
}

void EaseDesk::weigh(record::LayoutId layout)
{
    const record::Moment now = d->keeper.clock().now();
    const auto basis = d->forecasts.result(layout);
    const auto candidate = care::easeCandidate(d->keeper.row(), layout, now);
    if (basis == nullptr || !candidate) {
        d->weighed.erase(layout);
        return;
    }
    Weighed& entry = d->weighed[layout];
    if (entry.basis == basis && entry.looser == candidate->looser) {
        return;
    }
    entry.stop.request_stop();
    const quint64 ticket = ++d->lastTicket;
    entry = Weighed{basis, candidate->looser, std::nullopt, ticket, std::stop_source()};
    const record::LayoutRecord* record = d->keeper.row().layout(layout);
    const care::EaseLimits limits = care::easeLimits(care::stockAt(*record, now).any());
    d->pool.start([this, layout, basis, ticket, limits, looser = candidate->looser, token = entry.stop.get_token()] {
        const auto odds = oddsAtLooser(*basis, looser, limits, token);
        if (!odds) {
            return; // stopped: a newer question is on its way, or the desk goes
        }
        QMetaObject::invokeMethod(
            this,
            [this, layout, ticket, found = *odds] {
                const auto asked = d->weighed.find(layout);
                if (asked != d->weighed.end() && asked->second.ticket == ticket) {
                    asked->second.odds = found;
                    emit weighed(layout);
                }
            },
            Qt::QueuedConnection);
    });
}

std::optional<double> EaseDesk::odds(record::LayoutId layout) const
{
    const auto found = d->weighed.find(layout);
    const bool current = found != d->weighed.end() && found->second.basis == d->forecasts.result(layout);
    return current ? found->second.odds : std::nullopt;
}

std::optional<care::DueItem> EaseDesk::question(record::LayoutId layout) const
{
    const auto found = odds(layout);
    if (!found || d->keeper.isReadOnly() || !d->forecasts.isCurrent(layout)) {
        return std::nullopt;
    }
    auto item = care::easeQuestion(d->keeper.row(), layout, d->keeper.clock().now(), *found);
    // The odds are of one pace: another one that the record has come to since is asked about anew.
    const bool same = item && item->reason.loosening && item->reason.loosening->looser == d->weighed.at(layout).looser;
    return same ? item : std::nullopt;
}

void EaseDesk::wait()
{
    d->pool.waitForDone();
    QCoreApplication::sendPostedEvents(this);
}

} // namespace littoral::facade
