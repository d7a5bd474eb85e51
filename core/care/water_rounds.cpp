// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/adopted_plan.h"
#include "core/care/rounds.h"

#include <algorithm>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

constexpr double kEnough = 0.5; // share of the wanted fraction from which a change counts as the round's
constexpr double kUsualFraction = 0.3;

/// A change the keeper set for a day: a planned entry, or a task row with a fraction of its own.
struct HandSet
{
    QDate day;
    std::optional<double> fraction;
    record::EntryId entry;
    const record::Task* task = nullptr;
};

/// Days after its day that a change may be late: none while it is daily.
int graceFor(double everyDays)
{
    if (everyDays <= 1.0) {
        return 0;
    }
    if (everyDays <= 3.5) {
        return 1;
    }
    return everyDays <= 7.0 ? 2 : 7;
}

class WaterMaker
{
public:
    WaterMaker(const WorkTemplate& work, const Desk& desk)
        : m_work(work)
        , m_desk(desk)
        , m_layout(*desk.at.layout)
        , m_cadence(work, desk.at)
        , m_plan(planInForce(*desk.at.row, m_layout, desk.at.now))
    {
        m_rows.add(m_layout.tasks, work.key, desk.at.now);
        takeChanges();
        takeHandSet();
    }

    std::vector<DueItem> all()
    {
        std::optional<QDate> last = m_last;
        std::optional<QDate> beforeLast = m_beforeLast;
        if (m_rows.lastSkip() && (!last || *m_rows.lastSkip() > *last)) {
            last = m_rows.lastSkip();
            beforeLast.reset();
        }
        const QDate end = std::max(m_desk.until, m_desk.today);
        for (bool first = true;; first = false) {
            const auto item = next(last, beforeLast, first, end);
            if (!item) {
                break;
            }
            beforeLast = last;
            last = std::max(item->due, m_desk.today);
            if (item->due <= end) {
                m_items.push_back(*item);
            }
            std::erase_if(m_handSet, [&](const HandSet& h) { return h.day <= *last; });
        }
        retest();
        return std::move(m_items);
    }

private:
    void takeChanges()
    {
        for (const ChangeDay& change : changeDays(m_layout, m_desk.at.now)) {
            const auto pace = m_cadence.base(change.day);
            const double wanted = pace ? pace->fraction : kUsualFraction;
            if (change.fraction && *change.fraction < kEnough * wanted - 1e-9) {
                continue;
            }
            done(change.day);
            m_lastFraction = change.fraction;
            m_lastChange = change.last;
        }
        for (const QDate& day : m_rows.doneDays()) {
            if (!m_last || day > *m_last) {
                done(day);
                m_lastFraction.reset();
            }
        }
    }

    void done(const QDate& day)
    {
        m_beforeLast = m_last;
        m_last = day;
    }

    void takeHandSet()
    {
        for (const Entry& entry : m_layout.entries) {
            const QDate day = entry.at.localDate();
            if (entry.planned && entry.kind == EntryKind::WaterChange && (!m_last || day > *m_last)) {
                m_handSet.push_back({day, entry.fraction, entry.id, nullptr});
            }
        }
        for (const record::Task* task : m_rows.handSet()) {
            if (!m_last || task->due > *m_last) {
                m_handSet.push_back({task->due, task->fraction, {}, task});
            }
        }
        std::ranges::stable_sort(m_handSet, {}, &HandSet::day);
    }

    /// The oldest trigger that asks for a change at once and has not had one since.
    [[nodiscard]] const Trigger* unanswered() const
    {
        const Trigger* oldest = nullptr;
        for (const Trigger& trigger : m_cadence.triggers()) {
            const bool answered = m_lastChange && *m_lastChange > trigger.at;
            if (trigger.immediate && !answered && (oldest == nullptr || trigger.at < oldest->at)) {
                oldest = &trigger;
            }
        }
        return oldest;
    }

    /// The next day by the cadence, not after `end`.
    [[nodiscard]] std::optional<QDate> byCadence(std::optional<QDate> last, std::optional<QDate> beforeLast,
                                                 const QDate& end) const
    {
        const bool follows = m_layout.layout.followsCadence;
        QDate day = last ? last->addDays(1) : m_desk.recordFrom;
        for (; day <= end; day = day.addDays(1)) {
            const bool planned = m_plan && day <= m_plan->lastDay;
            const auto pace = follows && !planned ? m_cadence.on(day) : triggeredOnly(day);
            if (!pace || (last && last->daysTo(day) < gapDays(pace->everyDays, *last, beforeLast))) {
                continue;
            }
            if (!m_rows.isClosed(day)) {
                return day;
            }
            beforeLast = last; // skipped ahead of its day: the next counts from there
            last = day;
        }
        return std::nullopt;
    }

    /// For a layout whose changes are set by hand or by an adopted plan: only what a reading asks for, and under a plan
    /// only one that the plan did not know.
    [[nodiscard]] std::optional<Pace> triggeredOnly(const QDate& day) const
    {
        const auto tight = m_cadence.on(day);
        const bool asks = std::ranges::any_of(m_cadence.triggers(), [&](const Trigger& t) {
            const bool known = m_plan && day <= m_plan->lastDay && t.at <= m_plan->adopted;
            return t.everyDays > 0.0 && !known && day >= t.at.localDate() && !(t.lastDay && *t.lastDay < day);
        });
        return asks ? tight : std::nullopt;
    }

    std::optional<DueItem> next(const std::optional<QDate>& last, const std::optional<QDate>& beforeLast, bool first,
                                const QDate& end)
    {
        const auto cadenceDay = byCadence(last, beforeLast, end);
        const Trigger* trigger = first ? unanswered() : nullptr;
        std::optional<QDate> day = cadenceDay;
        if (trigger != nullptr) {
            const QDate asked = trigger->at.localDate();
            day = day ? std::min(*day, asked) : asked;
        }
        if (!m_handSet.empty()) {
            const HandSet& set = m_handSet.front();
            const auto pace = day ? m_cadence.on(*day) : std::nullopt;
            const int slack = pace ? static_cast<int>(pace->everyDays / 2.0) : 0;
            const bool urgent = trigger != nullptr && day && *day < set.day;
            if (!urgent && (!day || set.day <= day->addDays(slack))) {
                return byHand(set, end);
            }
        }
        return day ? std::optional(byRule(*day, trigger)) : std::nullopt;
    }

    std::optional<DueItem> byHand(const HandSet& set, const QDate& end)
    {
        if (set.day > end) {
            return std::nullopt;
        }
        DueItem item = itemOf(m_work, m_desk);
        const auto pace = m_cadence.on(std::max(set.day, m_desk.today));
        item.graceDays = pace ? graceFor(pace->everyDays) : m_work.grace;
        setDays(item, set.day, nullptr, m_desk.today);
        item.plannedEntry = set.entry;
        item.reason.basis = set.task != nullptr ? Basis::ByHand : Basis::Planned;
        if (set.task != nullptr) {
            item.task = set.task->id;
            item.reason.moveReason = set.task->reason;
        }
        setFraction(item, set.fraction ? set.fraction : (pace ? std::optional(pace->fraction) : std::nullopt));
        tellLast(item);
        return item;
    }

    DueItem byRule(const QDate& day, const Trigger* trigger)
    {
        DueItem item = itemOf(m_work, m_desk);
        const auto pace = m_cadence.on(std::max(day, m_desk.today));
        const bool asked = trigger != nullptr && trigger->at.localDate() <= day;
        item.graceDays = asked || !pace ? 0 : graceFor(pace->everyDays);
        setDays(item, day, rowFor(day, pace, trigger), m_desk.today);
        item.reason.basis = asked ? Basis::Trigger : Basis::Cadence;
        if (pace) {
            item.reason.intervalDays = pace->everyDays;
            item.reason.phaseKey = m_cadence.variantKey();
            item.fractionLow = pace->fractionLow;
            item.fractionHigh = pace->fractionHigh;
            tellUntil(item, *pace, std::max(day, m_desk.today));
        }
        double fraction = pace ? pace->fraction : kUsualFraction;
        if (asked) {
            for (const Trigger& t : m_cadence.triggers()) {
                fraction = t.immediate ? std::max(fraction, t.fraction) : fraction;
            }
            item.reason.trigger = triggerKey(trigger->kind);
            if (!trigger->caution.isEmpty()) {
                item.caution = trigger->caution;
            }
        }
        setFraction(item, fraction);
        tellTriggers(item, day, asked);
        tellLast(item);
        return item;
    }

    /// A move made before something asked for a change at once does not hold it back.
    [[nodiscard]] const record::Task* rowFor(const QDate& day, const std::optional<Pace>& pace,
                                             const Trigger* trigger) const
    {
        const record::Task* row = m_rows.openFor(day, pace ? static_cast<int>(pace->everyDays / 2.0) : 0);
        const bool overtaken =
            row != nullptr && trigger != nullptr && row->enteredAt.isValid() && row->enteredAt < trigger->at;
        return overtaken ? nullptr : row;
    }

    void setFraction(DueItem& item, std::optional<double> fraction) const
    {
        item.fraction = fraction;
        if (fraction && m_desk.at.net_L) {
            item.litres = *fraction * *m_desk.at.net_L;
        }
    }

    void tellLast(DueItem& item) const
    {
        item.reason.last = m_last;
        item.reason.lastFraction = m_lastFraction;
        item.reason.acceptedSteps = m_cadence.accepted().steps;
        if (item.daysOver > 0) {
            for (const Animals& animals : m_desk.at.stock.animals) {
                item.reason.animalsAtRisk << animals.subject;
            }
        }
    }

    void tellUntil(DueItem& item, const Pace& pace, const QDate& day) const
    {
        const auto tableDay = m_cadence.tableDay(day);
        if (pace.lastDay && tableDay) {
            item.reason.cadenceUntil = day.addDays(*pace.lastDay - *tableDay);
        }
    }

    void tellTriggers(DueItem& item, const QDate& day, bool asked) const
    {
        for (const Trigger& trigger : m_cadence.triggers()) {
            const bool over = trigger.lastDay && *trigger.lastDay < day;
            const bool tightens = (trigger.everyDays > 0.0 || trigger.steps > 0) && !over;
            if (!tightens && !(asked && trigger.immediate && !(m_lastChange && *m_lastChange > trigger.at))) {
                continue;
            }
            item.reason.triggers.push_back(trigger);
            if (trigger.reading) {
                item.reason.tightened.push_back({trigger.parameter, trigger.value.value_or(0),
                                                 trigger.limit.value_or(0), trigger.at, trigger.reading});
            }
        }
    }

    /// After an emergency change for animals, the reading that made it is taken again the same day.
    void retest()
    {
        for (const Trigger& trigger : m_cadence.triggers()) {
            const bool emergency =
                trigger.kind == TriggerKind::FreeAmmoniaWithAnimals || trigger.kind == TriggerKind::NitriteWithAnimals;
            if (!emergency || !m_lastChange || !(*m_lastChange > trigger.at)) {
                continue;
            }
            DueItem item;
            item.tank = m_layout.layout.tank;
            item.layout = m_layout.layout.id;
            item.templateKey = u"retest"_s;
            item.title = QString::fromUtf8(QT_TRANSLATE_NOOP("Templates", "Test again after the change"));
            item.kind = WorkKind::Test;
            item.parameters = trigger.kind == TriggerKind::NitriteWithAnimals ? QStringList{u"no2"_s}
                                                                              : QStringList{u"tan"_s, u"ph"_s};
            item.minutes = 8;
            item.priority = 1;
            item.consequence =
                QString::fromUtf8(QT_TRANSLATE_NOOP("Templates", "Nobody knows whether the change was enough."));
            item.source = trigger.source;
            item.reason.basis = Basis::Trigger;
            item.reason.trigger = triggerKey(trigger.kind);
            item.reason.triggers = {trigger};
            item.reason.last = m_last;
            setDays(item, m_lastChange->localDate(), nullptr, m_desk.today);
            m_items.push_back(std::move(item));
        }
    }

    const WorkTemplate& m_work;
    const Desk& m_desk;
    const record::LayoutRecord& m_layout;
    Cadence m_cadence;
    std::optional<PlanInForce> m_plan;
    TaskRows m_rows;
    std::optional<QDate> m_last;
    std::optional<QDate> m_beforeLast;
    std::optional<double> m_lastFraction;
    std::optional<record::Moment> m_lastChange;
    std::vector<HandSet> m_handSet;
    std::vector<DueItem> m_items;
};

} // namespace

std::vector<DueItem> waterRounds(const WorkTemplate& work, const Desk& desk)
{
    return WaterMaker(work, desk).all();
}

} // namespace littoral::care
