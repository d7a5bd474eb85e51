// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/case_desk.h"

#include "core/facade/keeper.h"

#include <QCoreApplication>
#include <QThreadPool>

namespace littoral::facade {

struct CaseDesk::Private
{
    Keeper& keeper;
    Learning learning;
    QThreadPool reviews;
    QThreadPool resets; ///< its own, so that a review never waits for a forecast
    quint64 asked = 0;
    quint64 ticket = 0;
    std::stop_source stop{std::nostopstate};
    bool weighing = false;
    record::LayoutId layout; ///< what was weighed last: layout, start, record
    record::StartMethod start = record::StartMethod::NewMedia;
    quint64 revision = 0;
    std::shared_ptr<const ResetForecast> newest;

    explicit Private(Keeper& k)
        : keeper(k)
    {
        reviews.setMaxThreadCount(1);
        resets.setMaxThreadCount(1);
    }
};

CaseDesk::CaseDesk(Keeper& keeper, QObject* parent)
    : QObject(parent)
    , d(std::make_unique<Private>(keeper))
{
    connect(&keeper, &Keeper::storeClosed, this, [this] {
        d->stop.request_stop();
        d->newest.reset();
        d->layout = {};
        d->weighing = false;
        ++d->ticket;
    });
}

CaseDesk::~CaseDesk()
{
    d->stop.request_stop();
    d->reviews.clear();
    d->reviews.waitForDone();
    d->resets.waitForDone();
}

void CaseDesk::ask(const CaseRequest& request)
{
    const quint64 asked = ++d->asked;
    // One that has not begun is dropped, one that has is passed over when it arrives.
    d->reviews.clear();
    d->reviews.start([this, asked, request, row = d->keeper.row(), now = d->keeper.clock().now()] {
        auto made = std::make_shared<CaseFile>(caseFile(row, request, now));
        QMetaObject::invokeMethod(
            this,
            [this, asked, made] {
                if (asked == d->asked) {
                    emit ready(*made);
                }
            },
            Qt::QueuedConnection);
    });
}

void CaseDesk::weighReset(record::LayoutId layout, record::StartMethod start)
{
    if (layout == d->layout && start == d->start && d->revision == d->keeper.revision()) {
        return;
    }
    d->layout = layout;
    d->start = start;
    d->revision = d->keeper.revision();
    d->stop.request_stop();
    d->stop = std::stop_source();
    d->weighing = true;
    const quint64 ticket = ++d->ticket;
    d->resets.start([this, layout, start, ticket, row = d->keeper.row(), now = d->keeper.clock().now(),
                     token = d->stop.get_token()] {
        auto made = resetForecast(row, layout, start, now, d->learning, token);
        auto answer = made ? std::make_shared<const ResetForecast>(std::move(*made)) : nullptr;
        const QString failure = made ? QString() : QString::fromStdString(made.error().sentence());
        QMetaObject::invokeMethod(
            this,
            [this, answer, failure, ticket] {
                if (ticket != d->ticket) {
                    return; // a newer question is on its way
                }
                d->weighing = false;
                d->newest = answer;
                if (answer != nullptr) {
                    emit resetReady();
                } else {
                    emit resetFailed(failure);
                }
            },
            Qt::QueuedConnection);
    });
}

std::shared_ptr<const ResetForecast> CaseDesk::reset() const
{
    return d->newest;
}

bool CaseDesk::isWeighing() const
{
    return d->weighing;
}

void CaseDesk::wait(bool resets)
{
    d->reviews.waitForDone();
    if (resets) {
        d->resets.waitForDone();
    }
    QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
}

} // namespace littoral::facade
