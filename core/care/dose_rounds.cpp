// SPDX-License-Identifier: GPL-3.0-or-later
// When the doses of a layout's regimens fall due. A round that was missed gives way to the next: doses are not doubled
// (common practice: an uptake that did not happen needs no making up, and a double dose of trace harms shrimp).
#include "core/care/dosing.h"
#include "core/care/rounds.h"

#include <algorithm>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::DoseRegimen;

namespace {

// A regular dose may slip this long before it counts as overdue (common practice).
constexpr int kGraceDays = 2;
constexpr int kMinutes = 3;

// Weeks on ammonia-rich soil (common practice): no nitrogen and phosphorus in the first two and a quarter of the rest;
// a quarter to a half of all in the next two, taken as a quarter and then a half; all from the fifth week.
constexpr int kNothingUntil = 14;
constexpr int kQuarterUntil = 21;
constexpr int kHalfUntil = 28;
// Full dose before its time when nitrate was read below 5 mg/L as the ion (common practice).
constexpr double kSpentNitrate_mg_per_L = 5.0;
constexpr double kReadingIsFresh_d = 7.0;

bool nitrateIsSpent(const record::LayoutRecord& layout, const record::Moment& now)
{
    const record::Reading* read = layout.newest(u"no3"_s, now);
    const record::Unit* ion = record::findParameter(u"no3"_s)->unit(u"mg/L NO3"_s);
    return read != nullptr && record::daysBetween(read->at, now) <= kReadingIsFresh_d &&
           ion->fromCanonical(read->value) < kSpentNitrate_mg_per_L;
}

/// Finds the days a regimen asks for.
class Schedule
{
public:
    Schedule(const DoseRegimen& regimen, const std::optional<QDate>& last, const QDate& start)
        : m_regimen(regimen)
        , m_last(last)
        , m_start(start)
    {
    }

    /// The first round after the last dose, or the first of all.
    [[nodiscard]] QDate first() const
    {
        if (!m_last) {
            return onOrAfter(m_start);
        }
        return std::max(after(*m_last), onOrAfter(m_start));
    }

    [[nodiscard]] QDate after(const QDate& day) const
    {
        return m_regimen.everyDays > 0 ? day.addDays(m_regimen.everyDays) : onOrAfter(day.addDays(1));
    }

private:
    [[nodiscard]] QDate onOrAfter(QDate day) const
    {
        while (m_regimen.everyDays == 0 && (m_regimen.weekdays & (1 << (day.dayOfWeek() - 1))) == 0) {
            day = day.addDays(1);
        }
        return day;
    }

    const DoseRegimen& m_regimen;
    std::optional<QDate> m_last;
    QDate m_start;
};

class DoseMaker
{
public:
    DoseMaker(const Desk& desk, const DoseRegimen& regimen)
        : m_desk(desk)
        , m_regimen(regimen)
    {
        m_rows.add(desk.at.layout->tasks, doseKey(regimen), desk.at.now);
        for (const record::Entry& entry : desk.at.layout->entries) {
            if (entry.kind == record::EntryKind::Dose && !entry.planned && entry.at <= desk.at.now &&
                entry.subject.compare(regimen.name, Qt::CaseInsensitive) == 0) {
                see(entry.at.localDate());
            }
        }
        for (const QDate& day : m_rows.doneDays()) {
            see(day);
        }
    }

    void run(std::vector<DueItem>& items)
    {
        std::optional<QDate> counted = m_last;
        if (m_rows.lastSkip() && (!counted || *m_rows.lastSkip() > *counted)) {
            counted = m_rows.lastSkip();
        }
        const Schedule schedule(m_regimen, counted, std::max(m_regimen.from, m_desk.flooded));
        QDate day = schedule.first();
        // The newest round not after today stands for those that were missed before it.
        for (QDate next = schedule.after(day); next <= m_desk.today; next = schedule.after(next)) {
            m_missed += isAsked(day) ? 1 : 0;
            day = next;
        }
        const QDate end = std::max(m_desk.until, m_desk.today);
        while (day <= end && m_regimen.isOn(day)) {
            QDate stands = day;
            if (isAsked(day)) {
                items.push_back(place(day));
                stands = std::max(items.back().due, m_desk.today);
                m_missed = 0;
            }
            day = schedule.after(stands);
        }
    }

private:
    void see(const QDate& day) { m_last = m_last ? std::max(*m_last, day) : day; }

    [[nodiscard]] bool isAsked(const QDate& day) const
    {
        return m_regimen.isOn(day) && !m_rows.isClosed(day) &&
               leanShare(m_regimen, *m_desk.at.layout, day, m_desk.at.now).share > 0.0;
    }

    [[nodiscard]] DueItem place(const QDate& day) const
    {
        const LeanShare lean = leanShare(m_regimen, *m_desk.at.layout, day, m_desk.at.now);
        DueItem item;
        item.tank = m_desk.at.layout->layout.tank;
        item.layout = m_desk.at.layout->layout.id;
        item.templateKey = doseKey(m_regimen);
        item.kind = WorkKind::Dose;
        item.subject = m_regimen.name;
        item.amount = m_regimen.amount * lean.share;
        item.unit = m_regimen.unit();
        item.graceDays = kGraceDays;
        item.minutes = kMinutes;
        item.priority = 2;
        item.reason.basis = Basis::Cadence;
        item.reason.intervalDays = m_regimen.everyDays;
        item.reason.last = m_last;
        item.reason.dose = DoseReason{m_regimen.amount, lean.why, lean.until,
                                      m_regimen.everyDays > 0 ? 0 : m_regimen.weekdays, m_missed};
        setDays(item, day, m_rows.openFor(day, m_regimen.everyDays / 2), m_desk.today);
        return item;
    }

    const Desk& m_desk;
    const DoseRegimen& m_regimen;
    TaskRows m_rows;
    std::optional<QDate> m_last;
    int m_missed = 0;
};

} // namespace

QString doseKey(const DoseRegimen& regimen)
{
    return u"dose:"_s + regimen.name;
}

LeanShare leanShare(const DoseRegimen& regimen, const record::LayoutRecord& layout, const QDate& day,
                    const record::Moment& now)
{
    const QDate flooded = layout.layout.flooded.localDate();
    const auto age = flooded.daysTo(day);
    if (!regimen.leanStart || layout.layout.bed != record::Bed::RichSoil || age >= kHalfUntil) {
        return {};
    }
    const bool feeds = record::bringsNitrogenOrPhosphorus(regimen);
    if (age < kNothingUntil) {
        return {feeds ? 0.0 : 0.25, LeanDose::Quarter, flooded.addDays((feeds ? kNothingUntil : kQuarterUntil) - 1)};
    }
    if (nitrateIsSpent(layout, now)) {
        return {1.0, LeanDose::NitrateSpent, {}};
    }
    return age < kQuarterUntil ? LeanShare{0.25, LeanDose::Quarter, flooded.addDays(kQuarterUntil - 1)}
                               : LeanShare{0.5, LeanDose::Half, flooded.addDays(kHalfUntil - 1)};
}

std::vector<DueItem> doseRounds(const Desk& desk)
{
    std::vector<DueItem> items;
    for (const DoseRegimen& regimen : desk.at.layout->regimens) {
        if (record::regimenProblem(regimen).isEmpty()) {
            DoseMaker(desk, regimen).run(items);
        }
    }
    return items;
}

} // namespace littoral::care
