// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/case_events.h"

#include "core/care/adopted_plan.h"
#include "core/care/due.h"
#include "core/care/stock.h"
#include "core/facade/evidence.h"
#include "core/sim/parameters.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using forecast::EventKind;
using record::Entry;
using record::EntryKind;

namespace {

// Total ammonia from feed: 0.16 N in protein x 0.80 x 0.80 x 0.90 (Timmons & Ebeling 2013, as quoted in an aquaponics
// manual).
constexpr double kAmmoniaPerProtein = 0.092;
// Protein share of an ordinary flake or granule when the label was not entered (common practice).
constexpr double kUsualProtein = 0.45;
// Share of a filter taken for a start with mature media when the keeper has not said how much (common practice: a
// third).
constexpr double kUsualMediaShare = 1.0 / 3.0;
// Alkalinity when neither the source water nor a reading tells: about 4 dKH, a middling tap water (common practice).
constexpr double kUsualAlkalinity_meq_per_L = 1.43;
// A change due today, or late, is taken to be done this long from now.
constexpr double kSoonDays = 1.0 / 24.0;

QString words(const char* text)
{
    return QCoreApplication::translate("Forecast", text);
}

} // namespace

forecast::SourceWater caseWater(const record::SourceProfile& source, const record::LayoutRecord& known)
{
    forecast::SourceWater made;
    const std::vector<const record::Reading*> kh = known.readingsOf(u"kh"_s);
    const double usual = kh.empty() ? kUsualAlkalinity_meq_per_L : kh.front()->value;
    made.nitrate_mgN_per_L = source.nitrate_mgN_per_L.value;
    made.chloramine = static_cast<forecast::Chloramine>(static_cast<int>(source.chloramine));
    made.alkalinity_meq_per_L = source.alkalinity_meq_per_L.value.value_or(usual);
    return made;
}

double CaseEvents::dayOf(const record::Moment& at) const
{
    return record::daysBetween(out.flooded, at);
}

void CaseEvents::add(double day, EventKind kind, double amount, int source)
{
    // What was put in before flooding (media in the filter, a dose in the bucket) is there from day 0.
    out.request.tank.events.push_back({std::max(0.0, day), kind, amount, source});
}

int CaseEvents::sourceIndex(record::SourceWaterId id)
{
    const record::SourceWater* source = row.source(id);
    if (source == nullptr || id == full.layout.source) {
        return 0;
    }
    const auto known = std::ranges::find(m_waters, id);
    if (known != m_waters.end()) {
        return static_cast<int>(known - m_waters.begin()) + 1;
    }
    if (m_waters.size() + 1 >= sim::kMaxSources) {
        out.remarks << words(
            "More source waters are in use than the forecast can tell apart; the last ones count as the tank's own.");
        return 0;
    }
    m_waters.push_back(id);
    out.sources.push_back(id);
    out.request.tank.setup.sources.push_back(caseWater(record::sourceProfile(row, id), *then.layout(full.layout.id)));
    return static_cast<int>(m_waters.size());
}

void CaseEvents::addDose(const Entry& entry, double day)
{
    if (entry.subject == u"starter"_s) {
        add(day, EventKind::StarterDose, entry.amount.value_or(1.0));
        return;
    }
    if (entry.subject != u"ammonia"_s || !entry.amount) {
        return;
    }
    const record::Unit* unit = record::findParameter(u"tan"_s)->unit(entry.unit.isEmpty() ? u"mg/L N"_s : entry.unit);
    if (unit == nullptr) {
        out.remarks
            << words("A dose of ammonia is given in %1, which does not tell its strength in the tank; it was left out.")
                   .arg(entry.unit);
        return;
    }
    add(day, EventKind::AmmoniaDose, unit->toCanonical(*entry.amount));
}

void CaseEvents::addFeeding(const Entry& entry, double day)
{
    const double amount = entry.amount.value_or(0.0);
    if (entry.unit == u"g/d"_s) {
        if (litres <= 0.0) {
            out.remarks << words("Feed is given in grams but the litres of the tank are not known; it was left out.");
            return;
        }
        add(day, EventKind::FeedRate,
            amount * 1000.0 * entry.proteinShare.value_or(kUsualProtein) * kAmmoniaPerProtein / litres);
        return;
    }
    add(day, EventKind::FeedRate, amount);
}

void CaseEvents::addMedia(const Entry& entry, double day)
{
    if (entry.subject == u"given"_s) {
        return; // this tank was the donor
    }
    const EventKind kind = entry.subject == u"squeezings"_s ? EventKind::Squeezings : EventKind::MatureMedia;
    add(day, kind, std::clamp(entry.fraction.value_or(kUsualMediaShare), 0.0, 1.0));
}

void CaseEvents::addEntry(const Entry& entry)
{
    const double day = dayOf(entry.at);
    switch (entry.kind) {
    case EntryKind::WaterChange:
        if (entry.fraction && day >= 0.0) {
            add(day, EventKind::WaterChange, std::clamp(*entry.fraction, 0.0, 1.0), sourceIndex(entry.source));
        }
        break;
    case EntryKind::Dose:
        addDose(entry, day);
        break;
    case EntryKind::Feeding:
        addFeeding(entry, day);
        break;
    case EntryKind::MediaTransfer:
        addMedia(entry, day);
        break;
    case EntryKind::Addition:
        if (entry.load_mgN_per_L_d) {
            add(day, EventKind::LivestockRate, *entry.load_mgN_per_L_d);
        } else if (entry.planned && !care::isAboutPlants(entry)) {
            ++out.load.unknownAnimals;
        }
        break;
    case EntryKind::Loss:
        if (entry.load_mgN_per_L_d) {
            add(day, EventKind::LivestockRate, -std::abs(*entry.load_mgN_per_L_d));
        }
        break;
    case EntryKind::TopUp:
    case EntryKind::Upkeep:
    case EntryKind::Observation:
    case EntryKind::LightChange:
    case EntryKind::Co2Change:
    case EntryKind::Note:
        break;
    }
}

void CaseEvents::addStart()
{
    const auto has = [&](EventKind kind) {
        return std::ranges::any_of(out.request.tank.events, [&](const forecast::Event& e) { return e.kind == kind; });
    };
    if (full.layout.start == record::StartMethod::MatureMedia && !has(EventKind::MatureMedia) &&
        !has(EventKind::Squeezings)) {
        add(0.0, EventKind::MatureMedia, kUsualMediaShare);
        out.remarks << words("How much mature media was moved in was not entered; a third of a filter was taken.");
    }
    if (full.layout.start == record::StartMethod::Starter && !has(EventKind::StarterDose)) {
        add(0.0, EventKind::StarterDose, 1.0);
        out.remarks << words("The bottled starter was not entered as a dose; one label dose on day 0 was taken.");
    }
}

void CaseEvents::addCadence(double lastDay, const QDate& after)
{
    const QDate until = out.flooded.plusDays(lastDay).localDate();
    const double now = out.request.tank.decisionDay;
    const record::Entry* last = then.layout(full.layout.id)->lastDone(EntryKind::WaterChange, out.asOf);
    const QTime usual = last == nullptr ? QTime(12, 0) : last->at.toDateTime().time();
    for (const care::DueItem& item : care::dueWork(then, full.layout.id, out.asOf, until)) {
        if (item.kind != care::WorkKind::WaterChange || !item.fraction || (after.isValid() && item.due <= after)) {
            continue;
        }
        const QDateTime local(item.due, usual, Qt::OffsetFromUTC, out.asOf.offsetSeconds());
        const double day = std::max(now + kSoonDays, dayOf(record::Moment::fromDateTime(local)));
        add(day, EventKind::WaterChange, *item.fraction);
        ++out.plannedChanges;
    }
}

void CaseEvents::collectPast()
{
    for (const Entry& entry : then.layout(full.layout.id)->entries) {
        if (!entry.planned) {
            addEntry(entry);
        }
    }
    addStart();
}

void CaseEvents::collectPlan(double lastDay)
{
    int missed = 0;
    const std::vector<Entry> plan = planAfter(full, out.asOf, &missed);
    for (const Entry& entry : plan) {
        addEntry(entry);
        out.plannedChanges += entry.kind == EntryKind::WaterChange ? 1 : 0;
    }
    if (missed > 0) {
        out.remarks << QCoreApplication::translate(
                           "Forecast", "Planned but past their date and not entered as done, so left out: %1.")
                           .arg(missed);
    }
    const auto force = care::planInForce(then, *then.layout(full.layout.id), out.asOf);
    if (out.plannedChanges > 0 || force) {
        out.plan = PlanFollowed::Recorded;
        if (force && full.layout.followsCadence) {
            addCadence(lastDay, force->lastDay);
        }
    } else if (full.layout.followsCadence) {
        addCadence(lastDay, {});
        out.plan = out.plannedChanges > 0 ? PlanFollowed::Cadence : PlanFollowed::None;
    }
}

void CaseEvents::finish()
{
    std::ranges::stable_sort(out.request.tank.events, {}, &forecast::Event::day);
    foldBeforeStart();
}

/// A settled tank's run begins late: what was fed and who lived there by then is its state on that day, the rest is
/// past.
void CaseEvents::foldBeforeStart()
{
    const double start = out.request.tank.setup.startDay;
    std::vector<forecast::Event>& events = out.request.tank.events;
    const auto first = std::ranges::find_if(events, [&](const forecast::Event& e) { return e.day >= start; });
    double feed = 0.0;
    double livestock = 0.0;
    for (auto it = events.begin(); it != first; ++it) {
        if (it->kind == EventKind::FeedRate) {
            feed = it->amount;
        } else if (it->kind == EventKind::LivestockRate) {
            livestock += it->amount;
        }
    }
    events.erase(events.begin(), first);
    if (livestock != 0.0) {
        events.insert(events.begin(), {start, EventKind::LivestockRate, livestock, 0});
    }
    if (feed > 0.0) {
        events.insert(events.begin(), {start, EventKind::FeedRate, feed, 0});
    }
}

} // namespace littoral::facade
