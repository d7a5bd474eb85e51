// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/changes.h"

#include "core/care/events.h"
#include "core/care/stock.h"
#include "core/findings/robust.h"
#include "core/record/shown.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

namespace littoral::findings {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;
using record::LayoutRecord;
using record::Moment;

namespace {

constexpr double kBaselineDays = 120.0;
constexpr std::size_t kFewestEarlier = 3;
constexpr std::size_t kFewestWindows = 2; ///< of events: six weeks without one is something to measure against
constexpr double kLeastShown = 1.0;
constexpr double kEventFloor = 0.25;

struct Floor
{
    double absolute = 0.0;
    double relative = 0.0;

    [[nodiscard]] double at(double middle) const { return std::max(absolute, relative * std::abs(middle)); }
};

class Reviewer
{
public:
    Reviewer(const record::Row& row, const LayoutRecord& layout, const Moment& onset, int days)
        : m_row(row)
        , m_layout(layout)
        , m_onset(onset)
        , m_days(days)
        , m_from(std::max(onset.plusDays(-days), layout.layout.flooded))
        , m_baseline(std::max(m_from.plusDays(-kBaselineDays), layout.layout.flooded))
    {
    }

    ChangeReview review()
    {
        readings();
        settings();
        water();
        doses();
        events();
        std::erase_if(m_found, [](const Change& change) { return std::abs(change.z) < kLeastShown; });
        std::ranges::stable_sort(m_found, [](const Change& a, const Change& b) {
            if (a.wasDone() != b.wasDone()) {
                return a.wasDone();
            }
            if (a.ownSpread != b.ownSpread) {
                return a.ownSpread;
            }
            return std::abs(a.z) > std::abs(b.z);
        });
        return {m_from, m_onset, std::move(m_found)};
    }

private:
    [[nodiscard]] bool inWindow(const Moment& at) const { return at > m_from && at <= m_onset; }
    [[nodiscard]] bool isEarlier(const Moment& at) const { return at > m_baseline && at <= m_from; }

    void add(Change change, const std::vector<double>& earlier, double after, const Floor& floor)
    {
        if (change.kind != ChangeKind::LightHours && change.kind != ChangeKind::LightPar &&
            change.kind != ChangeKind::Co2Target && change.kind != ChangeKind::Feeding) {
            change.before = medianOf(earlier);
        }
        change.after = after;
        change.earlier = earlier.size();
        change.ownSpread = earlier.size() >= (change.kind == ChangeKind::Event ? kFewestWindows : kFewestEarlier);
        const double own = change.ownSpread ? spreadOf(earlier) : 0.0;
        const double spread = std::max(own, floor.at(change.before));
        change.z = spread > 0.0 ? (after - change.before) / spread : 0.0;
        m_found.push_back(std::move(change));
    }

    void readings()
    {
        for (const record::Parameter& parameter : record::parameters()) {
            std::vector<double> earlier;
            std::vector<const record::Reading*> now;
            for (const record::Reading* reading : m_layout.readingsOf(parameter.key)) {
                if (inWindow(reading->at)) {
                    now.push_back(reading);
                } else if (isEarlier(reading->at)) {
                    earlier.push_back(reading->value);
                }
            }
            if (now.empty() || earlier.empty()) {
                continue;
            }
            std::vector<double> last;
            for (std::size_t i = now.size() - std::min<std::size_t>(3, now.size()); i < now.size(); ++i) {
                last.push_back(now[i]->value);
            }
            const double digit = record::leastDigit(parameter);
            const double middle = medianOf(earlier);
            Change change;
            change.kind = ChangeKind::Reading;
            change.key = parameter.key;
            change.first = firstBeyond(now, middle, std::max(spreadOf(earlier), Floor{digit, 0.05}.at(middle)));
            add(std::move(change), earlier, medianOf(last), {digit, 0.05});
        }
    }

    /// The first reading of the window that stands apart from what was before; the last when none does.
    static Moment firstBeyond(const std::vector<const record::Reading*>& now, double middle, double spread)
    {
        const auto found = std::ranges::find_if(
            now, [&](const record::Reading* reading) { return std::abs(reading->value - middle) > spread; });
        return found == now.end() ? now.back()->at : (*found)->at;
    }

    /// One number of a kind of entry that stays in force until the next.
    void setting(ChangeKind kind, EntryKind entryKind, std::optional<double> Entry::*number, double ofLayout,
                 const Floor& floor)
    {
        double before = ofLayout;
        double after = ofLayout;
        std::vector<double> earlier;
        Change change;
        change.kind = kind;
        for (const Entry& entry : m_layout.entries) {
            if (entry.kind != entryKind || entry.planned || !(entry.*number) || entry.at > m_onset) {
                continue;
            }
            after = *(entry.*number);
            change.key = kind == ChangeKind::Feeding ? entry.unit : QString();
            if (inWindow(entry.at)) {
                change.first = change.first.isValid() ? change.first : entry.at;
            } else {
                before = after;
                earlier.push_back(after);
            }
        }
        if (change.first.isValid()) {
            change.before = before;
            add(std::move(change), earlier, after, floor);
        }
    }

    void settings()
    {
        const record::Layout& layout = m_layout.layout;
        setting(ChangeKind::LightHours, EntryKind::LightChange, &Entry::amount, layout.lightHours, {0.5, 0.0});
        setting(ChangeKind::LightPar, EntryKind::LightChange, &Entry::second, layout.lightPar, {1.0, 0.1});
        setting(ChangeKind::Co2Target, EntryKind::Co2Change, &Entry::amount, layout.co2Target_mg_per_L, {2.0, 0.0});
        setting(ChangeKind::Feeding, EntryKind::Feeding, &Entry::amount, 0.0, {0.01, 0.1});
    }

    /// Sums of whole weeks before the onset: those of the window and those before it.
    struct Weeks
    {
        std::vector<double> now;
        std::vector<double> earlier;
    };
    template <typename Sum> Weeks weeks(Sum sum) const
    {
        Weeks weeks;
        for (Moment end = m_onset; end.plusDays(-7.0) >= m_baseline; end = end.plusDays(-7.0)) {
            const Moment begin = end.plusDays(-7.0);
            (end > m_from ? weeks.now : weeks.earlier).push_back(sum(begin, end));
        }
        return weeks;
    }

    /// `steady`: the middle week of the window, so that a round a day early or late is no change; else the week
    /// furthest from what is usual.
    void addWeeks(Change change, const Weeks& weeks, const Floor& floor, bool steady)
    {
        if (weeks.now.empty() || weeks.earlier.empty()) {
            return;
        }
        const double middle = medianOf(weeks.earlier);
        const double furthest =
            *std::ranges::max_element(weeks.now, {}, [middle](double value) { return std::abs(value - middle); });
        add(std::move(change), weeks.earlier, steady ? medianOf(weeks.now) : furthest, floor);
    }

    void water()
    {
        std::vector<double> earlier;
        double largest = 0.0;
        Change one;
        one.kind = ChangeKind::LargestChange;
        std::vector<std::pair<Moment, double>> all;
        for (const Entry& entry : m_layout.entries) {
            if (entry.kind != EntryKind::WaterChange || entry.planned || !entry.fraction) {
                continue;
            }
            all.emplace_back(entry.at, *entry.fraction);
            if (isEarlier(entry.at)) {
                earlier.push_back(*entry.fraction);
            } else if (inWindow(entry.at) && *entry.fraction > largest) {
                largest = *entry.fraction;
                one.first = entry.at;
            }
        }
        if (!earlier.empty() && largest > 0.0) {
            add(std::move(one), earlier, largest, {0.05, 0.0});
        }
        Change weekly;
        weekly.kind = ChangeKind::WaterChanged;
        weekly.first = m_from;
        addWeeks(std::move(weekly), weeks([&all](const Moment& begin, const Moment& end) {
                     double left = 1.0;
                     for (const auto& [at, fraction] : all) {
                         left *= at > begin && at <= end ? 1.0 - fraction : 1.0;
                     }
                     return 1.0 - left;
                 }),
                 {0.05, 0.0}, true);
    }

    void doses()
    {
        std::map<QString, std::vector<const Entry*>> bySubject;
        for (const Entry& entry : m_layout.entries) {
            if (entry.kind == EntryKind::Dose && !entry.planned && entry.at <= m_onset && entry.at > m_baseline &&
                !care::isEvent(entry, care::Event::Medication)) {
                bySubject[entry.subject].push_back(&entry);
            }
        }
        for (const auto& [subject, entries] : bySubject) {
            const bool amounts = std::ranges::all_of(
                entries, [&](const Entry* entry) { return entry->amount && entry->unit == entries.front()->unit; });
            const auto sizeOf = [amounts](const Entry* entry) { return amounts ? *entry->amount : 1.0; };
            Change change;
            change.kind = ChangeKind::Dose;
            change.key = subject;
            change.unit = amounts ? entries.front()->unit : QString();
            double largest = 0.0;
            for (const Entry* entry : entries) {
                largest = std::max(largest, sizeOf(entry));
                if (inWindow(entry->at) && !change.first.isValid()) {
                    change.first = entry->at;
                }
            }
            change.first = change.first.isValid() ? change.first : m_from;
            addWeeks(std::move(change), weeks([&](const Moment& begin, const Moment& end) {
                         double sum = 0.0;
                         for (const Entry* entry : entries) {
                             sum += entry->at > begin && entry->at <= end ? sizeOf(entry) : 0.0;
                         }
                         return sum;
                     }),
                     {largest * kEventFloor, 0.1}, false);
        }
    }

    [[nodiscard]] std::vector<Moment> sourceSwitches() const
    {
        std::vector<Moment> switches;
        record::SourceWaterId before = m_layout.layout.source;
        for (const Entry& entry : m_layout.entries) {
            if (entry.kind != EntryKind::WaterChange || entry.planned || !entry.source || entry.at > m_onset) {
                continue;
            }
            if (before && before != entry.source) {
                switches.push_back(entry.at);
            }
            before = entry.source;
        }
        return switches;
    }

    void events()
    {
        static constexpr std::array kEvents{
            care::Event::SourceChange,  care::Event::Addition,   care::Event::FilterService,
            care::Event::MediaReplaced, care::Event::MediaGiven, care::Event::BedDisturbed,
            care::Event::Replant,       care::Event::Trim,       care::Event::CylinderChange,
            care::Event::PowerCut,      care::Event::Overfeed,   care::Event::Medication};
        for (const care::Event event : kEvents) {
            std::vector<Moment> times;
            for (const Entry* entry : care::occurrences(m_row, m_layout, event, m_onset)) {
                times.push_back(entry->at);
            }
            if (event == care::Event::SourceChange && times.empty()) {
                times = sourceSwitches();
            }
            count(care::eventCode(event), times);
        }
    }

    void count(const QString& code, const std::vector<Moment>& times)
    {
        Change change;
        change.kind = ChangeKind::Event;
        change.key = code;
        double now = 0.0;
        for (const Moment& at : times) {
            if (inWindow(at)) {
                now += 1.0;
                change.first = change.first.isValid() ? change.first : at;
            }
        }
        if (now == 0.0) {
            return;
        }
        std::vector<double> earlier;
        for (Moment end = m_from; end.plusDays(-m_days) >= m_baseline; end = end.plusDays(-m_days)) {
            const Moment begin = end.plusDays(-m_days);
            earlier.push_back(static_cast<double>(
                std::ranges::count_if(times, [&](const Moment& at) { return at > begin && at <= end; })));
        }
        add(std::move(change), earlier, now, {kEventFloor, 0.0});
    }

    const record::Row& m_row;
    const LayoutRecord& m_layout;
    Moment m_onset;
    int m_days;
    Moment m_from;
    Moment m_baseline;
    std::vector<Change> m_found;
};

} // namespace

ChangeReview whatChanged(const record::Row& row, const LayoutRecord& layout, const Moment& onset, int days)
{
    return Reviewer(row, layout, onset, days).review();
}

std::optional<Moment> onsetOf(const LayoutRecord& layout, const Moment& at)
{
    constexpr double kQuietDays = 30.0;
    std::optional<Moment> onset;
    std::optional<Moment> last;
    for (const Entry& entry : layout.entries) {
        const bool seen = entry.kind == EntryKind::Observation && entry.severity.value_or(0) >= 2;
        const bool lost = care::isEvent(entry, care::Event::Loss);
        if (entry.planned || entry.at > at || !(seen || lost)) {
            continue;
        }
        if (!last || record::daysBetween(*last, entry.at) > kQuietDays) {
            onset = entry.at;
        }
        last = entry.at;
    }
    return onset;
}

} // namespace littoral::findings
