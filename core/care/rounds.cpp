// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/rounds.h"

#include "core/care/limits.h"
#include "core/care/water_state.h"

#include <algorithm>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

constexpr int kEventLapse = 14;
constexpr int kStretchLapse = 7;
constexpr int kJourneyWorkEarlyDays = 7; // done that long before its day it is of this journey
constexpr int kLateRecordDays = 7;       // a record that begins later than this after flooding begins an older tank
constexpr int kSilentTankDays = 60;      // a tank of this age without any record is asked for from today on

/// When a template's work was last done, by entries, readings and ticks.
struct Evidence
{
    std::optional<QDate> last;
    std::optional<QDate> beforeLast;
    std::vector<std::pair<QString, std::optional<QDate>>>
        readings; ///< newest per parameter asked for (the first of its choices)

    void add(const QDate& day)
    {
        if (!last || day > *last) {
            beforeLast = last;
            last = day;
        } else if (day < *last && (!beforeLast || day > *beforeLast)) {
            beforeLast = day;
        }
    }
};

void addEntries(Evidence& evidence, const WorkTemplate& work, const record::LayoutRecord& layout,
                const record::Moment& now)
{
    for (const Entry& entry : layout.entries) {
        if (entry.planned || entry.at > now) {
            continue;
        }
        const bool asked = work.closes.kind && entry.kind == *work.closes.kind &&
                           (work.closes.subject.isEmpty() || entry.subject == work.closes.subject);
        const bool byKey = entry.kind == EntryKind::Upkeep && entry.subject == work.key;
        if (asked || byKey) {
            evidence.add(entry.at.localDate());
        }
    }
}

/// Which of several parameters that would do is read here, and when last.
struct Choice
{
    QString parameter;
    std::optional<QDate> newest;
    std::ptrdiff_t count = 0;
};

Choice choiceOf(const QStringList& choices, const record::LayoutRecord& layout, const record::Moment& now)
{
    Choice best{choices.front(), std::nullopt, 0};
    for (const QString& key : choices) {
        const record::Reading* reading = layout.newest(key, now);
        if (reading != nullptr && (!best.newest || reading->at.localDate() > *best.newest)) {
            best = {key, reading->at.localDate(),
                    std::ranges::count(layout.readings, key, &record::Reading::parameter)};
        }
    }
    return best;
}

/// All of the readings asked for: the day of the one that was read longest ago. What a keeper never reads while reading
/// the rest is left out, unless it is one of those that matter most.
void addReadings(Evidence& evidence, const WorkTemplate& work, const record::LayoutRecord& layout,
                 const record::Moment& now)
{
    std::vector<Choice> all;
    for (const QStringList& choices : work.closes.readings) {
        all.push_back(choiceOf(choices, layout, now));
    }
    const bool practised = std::ranges::any_of(all, [](const Choice& c) { return c.count >= 2; });
    if (practised && work.priority > 1) {
        std::erase_if(all, [](const Choice& c) { return c.count == 0; });
    }
    for (const Choice& choice : all) {
        evidence.readings.emplace_back(choice.parameter, choice.newest);
    }
    if (!all.empty() && std::ranges::all_of(all, [](const Choice& c) { return c.newest.has_value(); })) {
        evidence.add(*std::ranges::min_element(all, {}, [](const Choice& c) { return *c.newest; })->newest);
    }
}

/// Makes the rounds of one template.
class Maker
{
public:
    Maker(const WorkTemplate& work, const Desk& desk, const Variant& variant, const TaskRows& rows,
          const Evidence& evidence)
        : m_work(work)
        , m_desk(desk)
        , m_variant(variant)
        , m_rows(rows)
        , m_evidence(evidence)
    {
    }

    std::vector<DueItem> all()
    {
        once();
        events();
        journeys();
        rolling();
        return oneOpen();
    }

private:
    [[nodiscard]] const Round* stretchOn(const QDate& day) const
    {
        const int age = static_cast<int>(m_desk.flooded.daysTo(day));
        for (const Round& round : m_variant.rounds) {
            if (round.every > 0.0 && age >= round.from && (!round.to || age <= *round.to) &&
                holds(round.when, m_desk.at)) {
                return &round;
            }
        }
        return nullptr;
    }

    DueItem& place(const QDate& day, Basis basis, int tolerance)
    {
        DueItem item = itemOf(m_work, m_desk);
        setDays(item, day, m_rows.openFor(day, tolerance), m_desk.today);
        item.reason.basis = basis;
        item.reason.last = m_evidence.last;
        item.parameters = stillToRead(day, tolerance);
        m_items.push_back(std::move(item));
        return m_items.back();
    }

    /// What has not been read yet for the round of `day`: a reading at most `tolerance` days before it belongs to it.
    [[nodiscard]] QStringList stillToRead(const QDate& day, int tolerance) const
    {
        QStringList missing;
        QStringList all;
        for (const auto& [key, newest] : m_evidence.readings) {
            all << key;
            const bool sinceLast = newest && (!m_evidence.last || *newest > *m_evidence.last);
            if (!sinceLast || newest->daysTo(day) > tolerance) {
                missing << key;
            }
        }
        return missing.isEmpty() ? all : missing;
    }

    void once()
    {
        for (const Round& round : m_variant.rounds) {
            if (!round.once || m_evidence.last || m_rows.lastSkip() || !holds(round.when, m_desk.at)) {
                continue;
            }
            const QDate day = m_desk.flooded.addDays(*round.once);
            const bool lapsed = m_work.lapse && day.addDays(m_work.grace + *m_work.lapse) < m_desk.today;
            if (day >= m_desk.recordFrom && day <= std::max(m_desk.until, m_desk.today) && !lapsed &&
                !m_rows.isClosed(day)) {
                place(day, Basis::Once, 3);
            }
        }
    }

    void events()
    {
        for (const Round& round : m_variant.rounds) {
            for (const Event event : round.after) {
                const auto all = occurrences(*m_desk.at.row, *m_desk.at.layout, event, m_desk.at.now);
                for (const Entry* entry : all) {
                    const record::Reading* raised = round.ifRaised ? raisedAfter(*entry) : nullptr;
                    if (!round.ifRaised || raised != nullptr) {
                        afterEvent(round, event, entry->at.localDate(), raised);
                    }
                }
            }
        }
    }

    /// The first reading in the week after an event that says the filter has lost of what it could do.
    [[nodiscard]] const record::Reading* raisedAfter(const Entry& event) const
    {
        const Limits limits = limitsOf(*m_desk.at.row);
        for (const record::Reading& reading : m_desk.at.layout->readings) {
            if (isRaised(reading, limits) && reading.at > event.at && reading.at <= m_desk.at.now &&
                record::daysBetween(event.at, reading.at) <= kReactionDays) {
                return &reading;
            }
        }
        return nullptr;
    }

    void afterEvent(const Round& round, Event event, const QDate& eventDay, const record::Reading* raised)
    {
        const QDate from = raised == nullptr ? eventDay : raised->at.localDate();
        int before = -1;
        for (const int days : round.days) {
            const QDate due = from.addDays(days);
            // Work done nearer to this round than to the one before it closes it.
            const int opens = before < 0 ? std::min(days, 1) : std::max(before + 1, days - (days - before) / 2);
            before = days;
            const bool closed = (m_evidence.last && *m_evidence.last >= from.addDays(opens)) || m_rows.isClosed(due) ||
                                (m_rows.lastSkip() && *m_rows.lastSkip() >= due);
            const bool lapsed = due.addDays(m_work.grace + m_work.lapse.value_or(kEventLapse)) < m_desk.today;
            if (closed || lapsed || due > std::max(m_desk.until, m_desk.today)) {
                continue;
            }
            DueItem& item = place(due, Basis::Event, 0);
            item.reason.trigger = u"after-"_s + eventCode(event);
            item.reason.eventDay = eventDay;
            item.reason.dayAfter = static_cast<int>(eventDay.daysTo(due));
            if (raised != nullptr) {
                const bool nitrite = raised->parameter == u"no2"_s;
                const Limits own = limitsOf(*m_desk.at.row);
                item.reason.raised = true;
                item.reason.tightened.push_back({raised->parameter, raised->value,
                                                 nitrite ? own.nitriteClear : own.ammoniaClear, raised->at,
                                                 raised->id});
            }
        }
    }

    void journeys()
    {
        for (const Round& round : m_variant.rounds) {
            for (const record::Journey& journey : m_desk.at.row->journeys) {
                if (round.leaves) {
                    aroundJourney(u"leaves"_s, journey.leaves, *round.leaves);
                } else if (round.returns) {
                    aroundJourney(u"returns"_s, journey.returns, *round.returns);
                }
            }
        }
    }

    void aroundJourney(const QString& end, const QDate& day, int days)
    {
        const QDate due = day.addDays(days);
        const bool closed = (m_evidence.last && *m_evidence.last >= due.addDays(-kJourneyWorkEarlyDays)) ||
                            m_rows.isClosed(due) || (m_rows.lastSkip() && *m_rows.lastSkip() >= due);
        const bool lapsed = due.addDays(m_work.grace + m_work.lapse.value_or(kStretchLapse)) < m_desk.today;
        if (closed || lapsed || due > std::max(m_desk.until, m_desk.today)) {
            return;
        }
        DueItem& item = place(due, Basis::Journey, 0);
        item.reason.trigger = end;
        item.reason.eventDay = day;
        item.reason.dayAfter = days;
    }

    void rolling()
    {
        std::optional<QDate> last = m_evidence.last;
        std::optional<QDate> beforeLast = m_evidence.beforeLast;
        if (m_rows.lastSkip() && (!last || *m_rows.lastSkip() > *last)) {
            last = m_rows.lastSkip();
            beforeLast.reset();
        }
        QDate day = last ? last->addDays(1) : m_desk.recordFrom;
        const QDate end = std::max(m_desk.until, m_desk.today);
        bool first = true;
        while (day <= end) {
            const Round* round = stretchOn(day);
            if (round == nullptr || (last && last->daysTo(day) < gapDays(round->every, *last, beforeLast))) {
                day = day.addDays(1);
                continue;
            }
            QDate due = day;
            if (!m_rows.isClosed(due)) {
                if (first && (m_work.rolls || isOffered())) {
                    due = rolled(due, *round);
                }
                // One that nobody asks for any more is passed over; what is still to come counts from now.
                if (!first || !lapses(due)) {
                    due = placeRolling(due, *round);
                }
                due = std::max(due, m_desk.today);
                first = false;
            }
            beforeLast = last;
            last = due;
            day = due.addDays(1);
        }
    }

    /// Periodic work that was never once entered for this tank is offered on its days and not held to be overdue: the
    /// keeper may not do it, or not write it down. Not so what matters most.
    [[nodiscard]] bool isOffered() const { return !m_evidence.last && m_work.priority > 1; }

    /// The newest round not after today of a template whose missed rounds give way.
    [[nodiscard]] QDate rolled(const QDate& due, const Round& round) const
    {
        const auto over = static_cast<double>(due.daysTo(m_desk.today));
        if (over < round.every) {
            return due;
        }
        return due.addDays(static_cast<qint64>(std::floor(std::floor(over / round.every) * round.every)));
    }

    [[nodiscard]] bool lapses(const QDate& due) const
    {
        return stretchOn(m_desk.today) == nullptr && m_desk.today > m_desk.flooded &&
               due.addDays(m_work.grace + m_work.lapse.value_or(kStretchLapse)) < m_desk.today;
    }

    /// The day the round now stands on.
    QDate placeRolling(const QDate& due, const Round& round)
    {
        DueItem& item = place(due, Basis::Cadence, static_cast<int>(round.every / 2.0));
        item.reason.intervalDays = round.every;
        item.reason.phaseKey = m_variant.key;
        item.overdue = item.overdue && !isOffered();
        if (round.to) {
            item.reason.cadenceUntil = m_desk.flooded.addDays(*round.to);
        }
        return item.due;
    }

    /// Rounds in order of their days: of those not after today only the oldest, of the rest one a day, none after
    /// `until`.
    std::vector<DueItem> oneOpen()
    {
        std::ranges::stable_sort(m_items, {}, &DueItem::due);
        std::vector<DueItem> kept;
        for (DueItem& item : m_items) {
            if (!kept.empty() && (item.due == kept.back().due || item.due <= m_desk.today)) {
                continue;
            }
            if (item.due <= std::max(m_desk.until, m_desk.today)) {
                kept.push_back(std::move(item));
            }
        }
        return kept;
    }

    const WorkTemplate& m_work;
    const Desk& m_desk;
    const Variant& m_variant;
    const TaskRows& m_rows;
    const Evidence& m_evidence;
    std::vector<DueItem> m_items;
};

std::vector<DueItem> make(const WorkTemplate& work, const Desk& desk,
                          const std::vector<const record::LayoutRecord*>& layouts,
                          const std::optional<QDate>& doneBySetting)
{
    const Variant* variant = variantFor(work, desk.at);
    if (variant == nullptr) {
        return {};
    }
    TaskRows rows;
    Evidence evidence;
    for (const record::LayoutRecord* layout : layouts) {
        rows.add(layout->tasks, work.key, desk.at.now);
        addEntries(evidence, work, *layout, desk.at.now);
    }
    if (work.closes.byReadings()) {
        addReadings(evidence, work, *desk.at.layout, desk.at.now);
    }
    for (const QDate& day : rows.doneDays()) {
        evidence.add(day);
    }
    if (doneBySetting) {
        evidence.add(*doneBySetting);
    }
    return Maker(work, desk, *variant, rows, evidence).all();
}

} // namespace

Desk deskFor(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& now, const QDate& until)
{
    Desk desk{circumstances(row, layout, now), now.localDate(), until, layout.layout.flooded.localDate(),
              layout.layout.flooded.localDate()};
    std::optional<record::Moment> first;
    if (!layout.readings.empty()) {
        first = layout.readings.front().at;
    }
    for (const Entry& entry : layout.entries) {
        if (!entry.planned && (!first || entry.at < *first)) {
            first = entry.at;
        }
    }
    if (first && desk.flooded.daysTo(first->localDate()) > kLateRecordDays) {
        desk.recordFrom = first->localDate();
    } else if (!first && desk.flooded.daysTo(desk.today) > kSilentTankDays) {
        desk.recordFrom = desk.today;
    }
    return desk;
}

DueItem itemOf(const WorkTemplate& work, const Desk& desk)
{
    DueItem item;
    item.tank = desk.at.layout->layout.tank;
    item.layout = desk.at.layout->layout.id;
    item.templateKey = work.key;
    item.title = work.title;
    item.kind = work.kind;
    item.subject = work.closes.kind == EntryKind::TopUp ? u"topup"_s : work.closes.subject;
    item.graceDays = work.grace;
    item.minutes = work.minutes;
    item.priority = work.priority;
    item.consequence = work.consequence;
    item.caution = work.caution;
    item.source = work.source;
    return item;
}

void setDays(DueItem& item, const QDate& cadenceDue, const record::Task* row, const QDate& today)
{
    item.cadenceDue = cadenceDue;
    item.due = cadenceDue;
    if (row != nullptr) {
        item.task = row->id;
        item.cadenceDue = row->due; // the round keeps the name under which it was touched
        item.due = row->movedTo.value_or(row->due);
        item.snoozed = row->snoozed;
        item.reason.snoozed = row->snoozed;
        item.reason.movedByHand = row->movedTo.has_value() && !row->snoozed;
        item.reason.moveReason = row->reason;
    }
    item.daysOver = static_cast<int>(std::max<qint64>(0, item.due.daysTo(today)));
    item.overdue = item.daysOver > item.graceDays;
}

std::vector<DueItem> roundsOf(const WorkTemplate& work, const Desk& desk)
{
    return make(work, desk, {desk.at.layout}, std::nullopt);
}

std::vector<DueItem> rowRoundsOf(const WorkTemplate& work, const Desk& desk)
{
    std::vector<const record::LayoutRecord*> all;
    for (const auto& [id, layout] : desk.at.row->layouts) {
        all.push_back(&layout);
    }
    const QDate setting = QDate::fromString(desk.at.row->settings.value(u"care.done."_s + work.key), Qt::ISODate);
    return make(work, desk, all, setting.isValid() && setting <= desk.today ? std::optional(setting) : std::nullopt);
}

} // namespace littoral::care
