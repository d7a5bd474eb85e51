// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/stock_desk.h"

#include "core/care/events.h"
#include "core/care/limits.h"
#include "core/care/water_state.h"
#include "core/facade/keeper.h"
#include "core/facade/member_runs.h"
#include "core/facade/plan_desk.h"
#include "core/forecast/milestones.h"
#include "core/water/load.h"

#include <QCoreApplication>
#include <QThreadPool>
#include <algorithm>
#include <stop_token>

namespace littoral::facade {

namespace {

/// Protein share of an ordinary flake or granule (common practice), as in the forecast's feeding.
constexpr double kProtein = 0.45;
constexpr int kTrialDraws = 300;

QString words(const char* text)
{
    return QCoreApplication::translate("Stock", text);
}

std::vector<forecast::Band> bands(forecast::EnsembleOutcome::Columns columns)
{
    std::vector<forecast::Band> made;
    for (auto& column : columns) {
        made.push_back(forecast::bandOf(column));
    }
    return made;
}

/// The forecast's own request, a few weeks long, without dates: only the water is looked at.
forecast::Request requestOf(const ForecastResult& basis, const Addition& addition)
{
    forecast::Request request = basis.inputs.request;
    const double first = record::daysBetween(basis.inputs.flooded, addition.first);
    const double last = std::max(first, request.tank.decisionDay) + kLotDays * (addition.lots - 1);
    request.horizonDays = last - request.tank.decisionDay + kTrialDays;
    request.stepDays = 0.25;
    request.extraDays.clear();
    request.gates.clear();
    request.load_mgN_per_L_d = 0.0;
    request.draws = std::min(kTrialDraws, request.draws);
    return request;
}

void addLots(forecast::Request& request, const AdditionTrial& trial)
{
    const double first =
        std::max(request.tank.decisionDay, record::daysBetween(trial.basis->inputs.flooded, trial.addition.first));
    for (int lot = 0; lot < trial.addition.lots; ++lot) {
        const double load = additionLoad(trial.addition, trial.addition.inLot(lot), trial.net_L);
        request.tank.events.push_back({first + 1e-3 + kLotDays * lot, forecast::EventKind::LivestockRate, load, 0});
    }
    std::ranges::stable_sort(request.tank.events, {}, &forecast::Event::day);
}

/// Band of the guild that can do less today.
forecast::Band weaker(const ForecastResult& basis)
{
    const auto& ammonia = basis.forecast.capacity[0].future;
    const auto& nitrite = basis.forecast.capacity[1].future;
    if (ammonia.empty() || nitrite.empty()) {
        return {};
    }
    return ammonia.front()[3] <= nitrite.front()[3] ? ammonia.front() : nitrite.front();
}

record::Entry lotEntry(const record::LayoutRecord& layout, const Addition& addition, int lot, double net_L,
                       const QString& reason)
{
    record::Entry entry;
    entry.tank = layout.layout.tank;
    entry.layout = layout.layout.id;
    entry.kind = record::EntryKind::Addition;
    entry.at = addition.first.plusDays(kLotDays * lot);
    entry.subject = addition.species.name;
    entry.count = addition.inLot(lot);
    if (const double load = additionLoad(addition, *entry.count, net_L); load > 0.0) {
        entry.load_mgN_per_L_d = load;
    }
    entry.note = reason;
    return entry;
}

/// Keeps why something that spoke against the addition was not waited for: a week of daily tests and looks follows from
/// it (care::Event::GateOverridden).
void noteOverride(store::Edit& edit, const Keeper& keeper, const record::LayoutRecord& layout, const Addition& addition,
                  const QString& reason)
{
    if (reason.trimmed().isEmpty()) {
        return;
    }
    record::Entry note;
    note.tank = layout.layout.tank;
    note.layout = layout.layout.id;
    note.kind = record::EntryKind::Note;
    note.at = std::min(keeper.clock().now(), addition.first);
    note.subject = care::kGateOverridden;
    note.where = addition.species.name;
    note.note = reason.trimmed();
    note.enteredAt = keeper.clock().now();
    edit.put(std::move(note));
}

Result<const record::LayoutRecord*> writable(const Keeper& keeper, record::LayoutId id, const Addition& addition)
{
    const record::LayoutRecord* layout = keeper.row().layout(id);
    if (layout == nullptr) {
        return Error{Fault::NotFound, words("That layout is not in the store any more.").toStdString(), {}, {}};
    }
    if (addition.count < 1 || addition.lots < 1 || addition.lots > addition.count) {
        return Error{Fault::BadInput,
                     words("There must be at least one animal in each lot.").toStdString(),
                     {},
                     words("Take more animals or fewer lots.").toStdString()};
    }
    return layout;
}

} // namespace

double Addition::feed_g_per_d() const
{
    return species.mass_g.value_or(0.0) * count * feedOfMass;
}

int Addition::inLot(int lot) const
{
    return count / lots + (lot < count % lots ? 1 : 0);
}

double additionLoad(const Addition& addition, int count, double net_L)
{
    const double feed = addition.species.mass_g.value_or(0.0) * count * addition.feedOfMass;
    const auto nitrogen = water::feedNitrogen_mg_per_d(feed, kProtein);
    return net_L > 0.0 && nitrogen ? *nitrogen / net_L : 0.0;
}

Result<AdditionTrial> tryAddition(const std::shared_ptr<const ForecastResult>& basis, const Addition& addition,
                                  double net_L, const AnimalLimits& limits, const std::stop_token& stop)
{
    if (basis == nullptr || basis->fit.members == nullptr || net_L <= 0.0) {
        return Error{Fault::BadInput,
                     words("The litres of this tank are not known.").toStdString(),
                     {},
                     words("Give its dimensions, or the litres measured on flood day.").toStdString()};
    }
    AdditionTrial trial;
    trial.basis = basis;
    trial.addition = addition;
    trial.net_L = net_L;
    trial.loadNow = basis->inputs.load.feeding + basis->inputs.load.animals;
    trial.loadAdded = additionLoad(addition, addition.count, net_L);
    trial.capacity = weaker(*basis);
    trial.ammoniaLimit = limits.ammonia;
    trial.freeLimit = limits.free;
    trial.nitriteLimit = limits.nitrite;
    const forecast::Request before = requestOf(*basis, addition);
    forecast::Request after = before;
    addLots(after, trial);
    const auto without = runMembers(before, basis->fit, stop);
    const auto with = without ? runMembers(after, basis->fit, stop) : std::nullopt;
    if (!with) {
        return Error{Fault::Cancelled, words("The trial was stopped.").toStdString(), {}, {}};
    }
    trial.days = forecast::timetableOf(after).rows;
    trial.ammonia = bands(with->water[0]);
    trial.nitrite = bands(with->water[1]);
    trial.ammoniaBefore = bands(without->water[0]);
    trial.nitriteBefore = bands(without->water[1]);
    const Peaks high(*with), low(*without);
    trial.ammoniaOver = shareOver(high.ammonia, trial.ammoniaLimit);
    trial.nitriteOver = shareOver(high.nitrite, trial.nitriteLimit);
    trial.freeOver = shareOver(high.free, trial.freeLimit);
    trial.ammoniaOverBefore = shareOver(low.ammonia, trial.ammoniaLimit);
    trial.nitriteOverBefore = shareOver(low.nitrite, trial.nitriteLimit);
    trial.freeOverBefore = shareOver(low.free, trial.freeLimit);
    for (const forecast::GateRule& gate : basis->inputs.request.gates) {
        trial.gates.push_back({QString::fromStdString(gate.key),
                               low.keeping(gate.total_mgN_per_L, gate.nitrite_mgN_per_L, gate.free_mgN_per_L),
                               high.keeping(gate.total_mgN_per_L, gate.nitrite_mgN_per_L, gate.free_mgN_per_L)});
    }
    return trial;
}

Result<void> planAddition(Keeper& keeper, record::LayoutId id, const Addition& addition, const QString& reason)
{
    const auto layout = writable(keeper, id, addition);
    if (!layout) {
        return layout.error();
    }
    const double net_L = netLitres(keeper.row(), id);
    store::Edit edit(words("%1 planned").arg(addition.species.name));
    noteOverride(edit, keeper, **layout, addition, reason);
    for (int lot = 0; lot < addition.lots; ++lot) {
        record::Entry entry = lotEntry(**layout, addition, lot, net_L, reason);
        entry.planned = true;
        entry.enteredAt = keeper.clock().now();
        edit.put(std::move(entry));
    }
    return keeper.commit(edit);
}

Result<void> recordAddition(Keeper& keeper, record::LayoutId id, const Addition& addition, const QString& reason)
{
    Addition whole = addition;
    whole.lots = 1;
    whole.first = keeper.clock().now();
    const auto layout = writable(keeper, id, whole);
    if (!layout) {
        return layout.error();
    }
    store::Edit edit(words("%1 added").arg(addition.species.name));
    noteOverride(edit, keeper, **layout, whole, reason);
    record::Entry entry = lotEntry(**layout, whole, 0, netLitres(keeper.row(), id), reason);
    entry.enteredAt = keeper.clock().now();
    edit.put(std::move(entry));
    return keeper.commit(edit);
}

struct StockDesk::Private
{
    Keeper& keeper;
    Forecasts& forecasts;
    QThreadPool pool;
    std::stop_source stop{std::nostopstate};
    std::shared_ptr<const AdditionTrial> newest;
    quint64 ticket = 0;
    bool running = false;

    Private(Keeper& k, Forecasts& f)
        : keeper(k)
        , forecasts(f)
    {
        pool.setMaxThreadCount(1);
    }
};

StockDesk::StockDesk(Keeper& keeper, Forecasts& forecasts, QObject* parent)
    : QObject(parent)
    , d(std::make_unique<Private>(keeper, forecasts))
{
    connect(&keeper, &Keeper::storeClosed, this, &StockDesk::forget);
}

StockDesk::~StockDesk()
{
    d->stop.request_stop();
    d->pool.waitForDone();
}

void StockDesk::forget()
{
    d->stop.request_stop();
    d->newest.reset();
    d->running = false;
    ++d->ticket;
}

void StockDesk::weigh(record::LayoutId layout, const Addition& addition)
{
    const auto basis = d->forecasts.result(layout);
    const record::LayoutRecord* known = d->keeper.row().layout(layout);
    if (basis == nullptr || known == nullptr) {
        forget();
        return;
    }
    d->stop.request_stop();
    d->stop = std::stop_source();
    d->running = true;
    const quint64 ticket = ++d->ticket;
    const double net_L = netLitres(d->keeper.row(), layout);
    const AnimalLimits limits = animalLimits(d->keeper.row(), *known, d->keeper.clock().now());
    d->pool.start([this, basis, addition, net_L, limits, ticket, token = d->stop.get_token()] {
        auto made = tryAddition(basis, addition, net_L, limits, token);
        auto answer = made ? std::make_shared<const AdditionTrial>(std::move(*made)) : nullptr;
        const QString failure = made ? QString() : QString::fromStdString(made.error().sentence());
        QMetaObject::invokeMethod(
            this,
            [this, answer, failure, ticket] {
                if (ticket != d->ticket) {
                    return; // a newer question is on its way
                }
                d->running = false;
                d->newest = answer;
                if (answer != nullptr) {
                    emit weighed();
                } else {
                    emit failed(failure);
                }
            },
            Qt::QueuedConnection);
    });
}

std::shared_ptr<const AdditionTrial> StockDesk::trial() const
{
    return d->newest;
}

bool StockDesk::isRunning() const
{
    return d->running;
}

void StockDesk::wait()
{
    d->pool.waitForDone();
    QCoreApplication::sendPostedEvents(this);
}

} // namespace littoral::facade
