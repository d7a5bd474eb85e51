// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/forecasts.h"

#include "core/facade/keeper.h"
#include "core/facade/learned.h"
#include "core/facade/track_record.h"

#include <QCoreApplication>
#include <QThreadPool>
#include <stop_token>

namespace littoral::facade {

namespace {

struct Slot
{
    std::shared_ptr<const ForecastResult> newest;
    quint64 wanted = 0;  ///< fingerprint of the newest request
    quint64 current = 0; ///< fingerprint of `newest`
    bool running = false;
    std::stop_source stop{std::nostopstate};
};

/// Learns from the row's other layouts, calibrates and forecasts; returns why not, or nothing.
QString run(ForecastResult& result, Learning& learning, const std::stop_token& token)
{
    learning.teach(result.inputs, token);
    auto fitted = forecast::fit(result.inputs.request, token);
    if (!fitted) {
        return QString::fromStdString(fitted.error().sentence());
    }
    result.fit = std::move(fitted).value();
    auto answer = forecast::forecast(result.inputs.request, result.fit, token);
    if (!answer) {
        return QString::fromStdString(answer.error().sentence());
    }
    result.forecast = std::move(answer).value();
    if (forecast::worthExplaining(result.forecast.diagnostics)) {
        // A cause that could not be looked for is no reason to withhold the forecast.
        if (auto causes = forecast::explainContradiction(result.inputs.request, token)) {
            result.causes = std::move(causes).value();
        }
    }
    return {};
}

// Fine enough that a water change shows as the step it is.
constexpr double kLaneStepDays = 0.25;

} // namespace

struct Forecasts::Private
{
    Keeper& keeper;
    Learning learning;
    QThreadPool pool;
    std::map<record::LayoutId, Slot> requests;

    explicit Private(Keeper& k)
        : keeper(k)
    {
    }
};

Forecasts::Forecasts(Keeper& keeper, QObject* parent)
    : QObject(parent)
    , d(std::make_unique<Private>(keeper))
{
    connect(&keeper, &Keeper::storeClosed, this, [this] {
        for (auto& [id, slot] : d->requests) {
            slot.stop.request_stop();
        }
        d->requests.clear();
    });
    connect(&keeper, &Keeper::storeOpened, this, &Forecasts::refresh);
}

Forecasts::~Forecasts()
{
    for (auto& [id, slot] : d->requests) {
        slot.stop.request_stop();
    }
    d->pool.waitForDone();
}

std::shared_ptr<const ForecastResult> Forecasts::result(record::LayoutId layout) const
{
    const auto found = d->requests.find(layout);
    return found == d->requests.end() ? nullptr : found->second.newest;
}

bool Forecasts::isRunning(record::LayoutId layout) const
{
    const auto found = d->requests.find(layout);
    return found != d->requests.end() && found->second.running;
}

bool Forecasts::isCurrent(record::LayoutId layout) const
{
    const auto found = d->requests.find(layout);
    return found != d->requests.end() && found->second.newest != nullptr &&
           found->second.current == found->second.wanted;
}

void Forecasts::refresh()
{
    const record::Row& row = d->keeper.row();
    const record::Moment now = d->keeper.clock().now();
    const std::vector<TeacherPtr> teachers = teachersOf(row, now);
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout != nullptr && !layout->layout.ended && layout->layout.flooded <= now) {
            request(layout->layout.id, teachers);
        }
    }
}

void Forecasts::request(record::LayoutId id, const std::vector<TeacherPtr>& teachers)
{
    Slot& slot = d->requests[id];
    ForecastOptions options;
    options.stepDays = kLaneStepDays;
    options.teachers = &teachers;
    auto inputs = forecastCase(d->keeper.row(), id, d->keeper.clock().now(), options);
    if (!inputs) {
        emit failed(id, QString::fromStdString(inputs.error().sentence()));
        return;
    }
    const quint64 print = inputs->fingerprint;
    if (print == slot.wanted && (slot.running || slot.newest != nullptr)) {
        return;
    }
    slot.stop.request_stop();
    slot.stop = std::stop_source();
    slot.wanted = print;
    slot.running = true;
    auto shared = std::make_shared<ForecastResult>();
    shared->inputs = std::move(*inputs);
    d->pool.start([this, id, print, shared, token = slot.stop.get_token()] {
        const QString failure = run(*shared, d->learning, token);
        QMetaObject::invokeMethod(
            this, [this, id, print, shared, failure] { adopt(id, print, shared, failure); }, Qt::QueuedConnection);
    });
}

void Forecasts::adopt(record::LayoutId id, quint64 print, const std::shared_ptr<ForecastResult>& made,
                      const QString& failure)
{
    const auto found = d->requests.find(id);
    if (found == d->requests.end() || found->second.wanted != print) {
        return; // a newer request is on its way
    }
    Slot& slot = found->second;
    slot.running = false;
    if (!failure.isEmpty()) {
        emit failed(id, failure);
        return;
    }
    slot.newest = made;
    slot.current = print;
    keep(*made);
    emit ready(id);
}

/// For the track record. A store that cannot be written, or is busy, goes without: the forecast itself is none the
/// worse, and the next one is kept.
void Forecasts::keep(const ForecastResult& made)
{
    if (d->keeper.hasStore() && !d->keeper.isReadOnly()) {
        static_cast<void>(keepIssued(*d->keeper.store(), made));
    }
}

void Forecasts::wait()
{
    d->pool.waitForDone();
    QCoreApplication::sendPostedEvents(this);
}

} // namespace littoral::facade
