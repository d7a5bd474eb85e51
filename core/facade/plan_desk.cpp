// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/plan_desk.h"

#include "core/facade/keeper.h"
#include "core/forecast/ensemble.h"
#include "core/forecast/milestones.h"

#include <QCoreApplication>
#include <QThreadPool>
#include <atomic>
#include <stop_token>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

/// Members of the first answer under a dragged slider.
constexpr int kQuickDraws = 120;

using Basis = std::shared_ptr<const ForecastResult>;

/// One kind of work for one layout: what was asked last and what came of it.
template <typename Answer> struct Desk
{
    std::shared_ptr<const Answer> newest;
    Basis basis;        ///< of the newest request
    QString gate;       ///< of the newest request
    quint64 ticket = 0; ///< of the newest request
    bool running = false;
    bool wanted = false; ///< was ever asked for
    std::stop_source stop{std::nostopstate};

    void renew()
    {
        stop.request_stop();
        stop = std::stop_source();
        running = true;
    }
};

QString sentenceOf(const Error& error)
{
    return error.fault == Fault::Cancelled ? QString() : QString::fromStdString(error.sentence());
}

/// Plan, forecast and the plan's own row with so many members; returns why not, or nothing.
QString runPreview(PlanPreview& preview, const QString& gate, int draws, const std::stop_token& token)
{
    const ForecastCase& inputs = preview.basis->inputs;
    forecast::PlanQuestion question = planQuestion(inputs, gate);
    question.plans = {preview.plan};
    question.draws = draws;
    const auto table = forecast::comparePlans(inputs.request, preview.basis->fit, question, token);
    if (!table) {
        return sentenceOf(table.error());
    }
    preview.outcome = table->outcomes.back();
    forecast::Request request = inputs.request;
    const double end = forecast::timetableOf(request).lastDay + forecast::kClearTail_d;
    request.tank = forecast::withChanges(request.tank, forecast::changesOf(preview.plan, request.tank, end));
    request.draws = draws;
    auto answer = forecast::forecast(request, preview.basis->fit, token);
    if (!answer) {
        return sentenceOf(answer.error());
    }
    preview.forecast = std::move(answer).value();
    return {};
}

} // namespace

struct PlanDesk::Private
{
    Keeper& keeper;
    Forecasts& forecasts;
    QThreadPool comparing;
    QThreadPool previewing; ///< its own, so that a slider never waits for the grid of plans
    std::map<record::LayoutId, Desk<PlanSet>> plans;
    std::map<record::LayoutId, Desk<PlanPreview>> previews;
    quint64 lastTicket = 0;

    Private(Keeper& k, Forecasts& f)
        : keeper(k)
        , forecasts(f)
    {
        comparing.setMaxThreadCount(1);
        previewing.setMaxThreadCount(1);
    }

    void stopAll()
    {
        for (auto& [id, desk] : plans) {
            desk.stop.request_stop();
        }
        for (auto& [id, desk] : previews) {
            desk.stop.request_stop();
        }
    }
};

PlanDesk::PlanDesk(Keeper& keeper, Forecasts& forecasts, QObject* parent)
    : QObject(parent)
    , d(std::make_unique<Private>(keeper, forecasts))
{
    connect(&keeper, &Keeper::storeClosed, this, &PlanDesk::forgetAll);
    connect(&forecasts, &Forecasts::ready, this, [this](record::LayoutId layout) {
        dropPreview(layout);
        const auto asked = d->plans.find(layout);
        if (asked != d->plans.end() && asked->second.wanted) {
            compare(layout, QString(asked->second.gate));
        }
    });
}

PlanDesk::~PlanDesk()
{
    d->stopAll();
    d->comparing.waitForDone();
    d->previewing.waitForDone();
}

void PlanDesk::forgetAll()
{
    d->stopAll();
    d->plans.clear();
    d->previews.clear();
}

void PlanDesk::compare(record::LayoutId layout, const QString& gate)
{
    Basis basis = d->forecasts.result(layout);
    if (basis == nullptr) {
        return;
    }
    Desk<PlanSet>& desk = d->plans[layout];
    const bool same = desk.basis == basis && desk.gate == gate;
    if (same && (desk.running || (desk.newest != nullptr && desk.newest->basis == basis))) {
        return;
    }
    desk.renew();
    desk.basis = basis;
    desk.gate = gate;
    desk.wanted = true;
    desk.ticket = ++d->lastTicket;
    auto made = std::make_shared<PlanSet>();
    made->basis = std::move(basis);
    made->gate = gate;
    made->net_L = netLitres(d->keeper.row(), layout);
    d->comparing.start([this, layout, made, ticket = desk.ticket, token = desk.stop.get_token()] {
        const ForecastCase& inputs = made->basis->inputs;
        auto table = forecast::comparePlans(inputs.request, made->basis->fit, planQuestion(inputs, made->gate), token);
        QString failure;
        if (table) {
            made->table = std::move(table).value();
        } else {
            failure = QString::fromStdString(table.error().sentence());
        }
        QMetaObject::invokeMethod(
            this, [this, layout, ticket, made, failure] { takePlans(layout, ticket, made, failure); },
            Qt::QueuedConnection);
    });
}

void PlanDesk::takePlans(record::LayoutId layout, quint64 ticket, const std::shared_ptr<PlanSet>& made,
                         const QString& failure)
{
    const auto found = d->plans.find(layout);
    if (found == d->plans.end() || found->second.ticket != ticket) {
        return; // a newer request is on its way
    }
    found->second.running = false;
    if (!failure.isEmpty()) {
        emit failed(layout, failure);
        return;
    }
    found->second.newest = made;
    emit compared(layout);
}

std::shared_ptr<const PlanSet> PlanDesk::plans(record::LayoutId layout) const
{
    const auto found = d->plans.find(layout);
    return found == d->plans.end() ? nullptr : found->second.newest;
}

bool PlanDesk::isComparing(record::LayoutId layout) const
{
    const auto found = d->plans.find(layout);
    return found != d->plans.end() && found->second.running;
}

void PlanDesk::preview(record::LayoutId layout, const forecast::ChangePlan& plan, const QString& gate)
{
    const Basis basis = d->forecasts.result(layout);
    if (basis == nullptr) {
        return;
    }
    Desk<PlanPreview>& desk = d->previews[layout];
    desk.renew();
    desk.basis = basis;
    desk.gate = gate;
    desk.ticket = ++d->lastTicket;
    d->previewing.start([this, layout, basis, plan, gate, ticket = desk.ticket, token = desk.stop.get_token()] {
        const int all = basis->inputs.request.draws;
        for (const int draws : {std::min(kQuickDraws, all), all}) {
            if (token.stop_requested()) {
                return;
            }
            auto made = std::make_shared<PlanPreview>();
            made->basis = basis;
            made->plan = plan;
            made->quick = draws < all;
            const QString failure = runPreview(*made, gate, draws, token);
            if (token.stop_requested()) {
                return;
            }
            QMetaObject::invokeMethod(
                this, [this, layout, ticket, made, failure] { takePreview(layout, ticket, made, failure); },
                Qt::QueuedConnection);
            if (!failure.isEmpty() || !made->quick) {
                return;
            }
        }
    });
}

void PlanDesk::takePreview(record::LayoutId layout, quint64 ticket, const std::shared_ptr<PlanPreview>& made,
                           const QString& failure)
{
    const auto found = d->previews.find(layout);
    if (found == d->previews.end() || found->second.ticket != ticket) {
        return;
    }
    found->second.running = made->quick && failure.isEmpty();
    if (!failure.isEmpty()) {
        emit failed(layout, failure);
        return;
    }
    found->second.newest = made;
    emit previewReady(layout);
}

std::shared_ptr<const PlanPreview> PlanDesk::previewOf(record::LayoutId layout) const
{
    const auto found = d->previews.find(layout);
    return found == d->previews.end() ? nullptr : found->second.newest;
}

void PlanDesk::dropPreview(record::LayoutId layout)
{
    const auto found = d->previews.find(layout);
    if (found != d->previews.end()) {
        found->second.stop.request_stop();
        d->previews.erase(found);
    }
}

void PlanDesk::wait()
{
    d->comparing.waitForDone();
    d->previewing.waitForDone();
    QCoreApplication::sendPostedEvents(this);
}

forecast::GateRule gateRuleOf(const ForecastCase& inputs, const QString& gate)
{
    for (const forecast::GateRule& rule : inputs.request.gates) {
        if (QString::fromStdString(rule.key) == gate) {
            return rule;
        }
    }
    forecast::GateRule rule;
    rule.key = "complete";
    rule.total_mgN_per_L = forecast::kClearAmmonia_mgN_per_L;
    rule.nitrite_mgN_per_L = forecast::kClearNitrite_mgN_per_L;
    rule.spanDays = 7.0; // as long as the common practice of waiting a week of clear readings
    return rule;
}

forecast::PlanQuestion planQuestion(const ForecastCase& inputs, const QString& gate)
{
    forecast::PlanQuestion question;
    question.plans = forecast::planGrid(inputs.request.tank);
    question.gate = gateRuleOf(inputs, gate);
    return question;
}

double netLitres(const record::Row& row, record::LayoutId id)
{
    const record::LayoutRecord* layout = row.layout(id);
    const record::Tank* tank = layout == nullptr ? nullptr : row.tank(layout->layout.tank);
    const auto volume = tank == nullptr ? std::nullopt : record::netVolume(*tank, layout->layout);
    return volume ? volume->litres : 0.0;
}

} // namespace littoral::facade
