// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/limits.h"
#include "core/care/observations.h"
#include "core/care/stock.h"
#include "core/facade/case_parts.h"
#include "core/wording/entry_words.h"
#include "core/wording/finding_sentences.h"
#include "core/wording/numbers.h"
#include "core/wording/review_points.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

constexpr double kFreshDays = 14.0;
constexpr double kWeek = 7.0;
// Limits of the sum (judgement, common practice).
constexpr int kKeepTo = 6;
constexpr int kPartTo = 11;
constexpr int kMost = 18;

QString words(const char* text)
{
    return QCoreApplication::translate("CaseTalk", text);
}

struct Scored
{
    std::optional<int> points;
    QString why;
};

/// What the record alone can say to the nine questions.
class Reader
{
public:
    Reader(const record::LayoutRecord& layout, const care::Limits& limits, const findings::Report& report,
           const record::Moment& at)
        : m_layout(layout)
        , m_limits(limits)
        , m_report(report)
        , m_at(at)
    {
    }

    [[nodiscard]] Scored score(const QString& key) const
    {
        return key == u"review_leaves"_s    ? leaves()
               : key == u"review_algae"_s   ? algae()
               : key == u"review_cause"_s   ? cause()
               : key == u"review_bed"_s     ? bed()
               : key == u"review_water"_s   ? water()
               : key == u"review_animals"_s ? animals()
                                            : Scored{};
    }

    /// The keeper's own newest answer of the last two weeks.
    [[nodiscard]] const Entry* answer(const QString& key) const { return newestOf(key + u'='); }

private:
    [[nodiscard]] double ago(const record::Moment& then) const { return record::daysBetween(then, m_at); }
    [[nodiscard]] QString day(const record::Moment& then) const
    {
        return wording::dateText(then.localDate(), m_at.localDate());
    }
    [[nodiscard]] bool isFresh(const Entry& entry, double days = kFreshDays) const
    {
        return !entry.planned && entry.at <= m_at && ago(entry.at) <= days;
    }
    [[nodiscard]] const Entry* newestOf(const QString& prefix) const
    {
        const Entry* newest = nullptr;
        for (const Entry& entry : m_layout.entries) {
            if (entry.kind == EntryKind::Observation && entry.subject.startsWith(prefix) && isFresh(entry)) {
                newest = &entry;
            }
        }
        return newest;
    }

    [[nodiscard]] Scored leaves() const
    {
        const Entry* seen = newestOf(u"new_leaf="_s);
        if (seen == nullptr || ago(seen->at) > kWeek) {
            return {};
        }
        const int points = seen->subject.endsWith(u"dying"_s) ? 2 : seen->subject.endsWith(u"green"_s) ? 0 : 1;
        return {points, words("%1, on %2").arg(wording::subjectText(seen->subject), day(seen->at))};
    }

    [[nodiscard]] Scored algae() const
    {
        Scored worst;
        for (const QString& subject : care::observedSubjects(m_layout, m_at)) {
            const Entry* now = care::isAlgae(subject) ? care::newestObservation(m_layout, subject, m_at) : nullptr;
            if (now == nullptr || !now->severity || ago(now->at) > kFreshDays) {
                continue;
            }
            const auto all = care::observationsOf(m_layout, subject, m_at);
            const Entry* before = all.size() > 1 ? all[all.size() - 2] : nullptr;
            const int then = before == nullptr ? 0 : before->severity.value_or(0);
            const int points = now->coverage.value_or(0.0) > 0.5 || *now->severity > then ? 2
                               : *now->severity == then && then > 0                       ? 1
                                                                                          : 0;
            if (!worst.points || points > *worst.points) {
                worst = {points,
                         words("%1: %2 on %3")
                             .arg(wording::subjectText(subject), wording::severityWord(*now->severity), day(now->at))};
            }
        }
        return worst;
    }

    [[nodiscard]] Scored cause() const
    {
        if (m_report.ranked.empty() || !m_report.ranked.front().seen) {
            return {};
        }
        const findings::Finding& first = m_report.ranked.front();
        const int points = first.support == findings::Support::Strong ? 0
                           : first.support == findings::Support::Fair ? 1
                                                                      : 2;
        return {points,
                words("%1: %2. Whether it can be removed is yours to say.")
                    .arg(wording::factText(first.condition->name), wording::supportText(first.support).toLower())};
    }

    [[nodiscard]] Scored bed() const
    {
        const Entry* smell = newestOf(u"smells=sulfide"_s);
        if (smell != nullptr) {
            return {2, words("Rotten eggs smelt on %1").arg(day(smell->at))};
        }
        const Entry* black = care::newestObservation(m_layout, u"bed_black"_s, m_at);
        return black != nullptr && isFresh(*black) && black->severity.value_or(0) > 0
                   ? Scored{black->severity.value_or(0) >= 3 ? 2 : 1, words("Dark bed seen on %1").arg(day(black->at))}
                   : Scored{};
    }

    [[nodiscard]] Scored water() const
    {
        const record::Reading* ammonia = m_layout.newest(u"tan"_s, m_at);
        const record::Reading* nitrite = m_layout.newest(u"no2"_s, m_at);
        if (ammonia == nullptr || nitrite == nullptr || ago(ammonia->at) > kFreshDays ||
            ago(nitrite->at) > kFreshDays) {
            return {};
        }
        const int raised =
            (ammonia->value > m_limits.ammoniaClear ? 1 : 0) + (nitrite->value > m_limits.nitriteClear ? 1 : 0);
        return {raised, words("%1 and %2, read on %3")
                            .arg(wording::readingWithUnit(*ammonia), wording::readingWithUnit(*nitrite),
                                 day(std::min(ammonia->at, nitrite->at)))};
    }

    [[nodiscard]] Scored animals() const
    {
        int thisWeek = 0;
        int weekBefore = 0;
        bool signs = false;
        for (const Entry& entry : m_layout.entries) {
            if (!isFresh(entry)) {
                continue;
            }
            if (entry.kind == EntryKind::Loss && !care::isAboutPlants(entry)) {
                (ago(entry.at) <= kWeek ? thisWeek : weekBefore) += entry.count.value_or(1);
            }
            signs = signs || (entry.kind == EntryKind::Observation && care::isAnimalSign(entry.subject) &&
                              entry.severity.value_or(1) > 0);
        }
        const int lost = thisWeek + weekBefore;
        if (lost == 0 && !signs) {
            const bool any = care::stockAt(m_layout, m_at).any();
            return any ? Scored{0, words("No loss and no sign of illness on record in two weeks")}
                       : Scored{0, words("No animals on record")};
        }
        const bool weekly = thisWeek > 0 && weekBefore > 0;
        return {weekly ? 2 : 1, lost == 0 ? words("Signs of illness on record in two weeks")
                                          : words("Lost in two weeks: %1").arg(lost)};
    }

    const record::LayoutRecord& m_layout;
    const care::Limits& m_limits;
    const findings::Report& m_report;
    const record::Moment m_at;
};

std::vector<TalkWay> ways()
{
    return {
        {words("Keep the layout"),
         words("Up to %1 points").arg(kKeepTo),
         {words("Mend one cause and leave everything else as it is."),
          words("Take out what is dead, a little at each water change."),
          words("Write down today what you expect to see, and by when.")}},
        {words("Reset a part"),
         words("%1 to %2 points").arg(kKeepTo + 1).arg(kPartTo),
         {words("Keep the filter running and half of the bed in place."),
          words("Lift what is sound, clean it, and plant it again densely."),
          words("Change water as in the first weeks until ammonia and nitrite are clear again.")}},
        {words("Start afresh"),
         words("%1 points and more").arg(kPartTo + 1),
         {words("Find the animals a cycled place first; none is moved into a tank that still has ammonia or nitrite."),
          words("Keep the filter alive, in another tank or on measured ammonia."),
          words("Save the clean plants, photograph the layout, and write three things to do otherwise."),
          words("Empty the tank before it is moved; stone and wet soil are heavy, so lift with two people.")}},
    };
}

QStringList overriding(const findings::Report& report)
{
    QStringList said;
    for (const findings::Finding& finding : report.ranked) {
        const QString& id = finding.condition->id;
        const bool stands = finding.support == findings::Support::Strong || finding.support == findings::Support::Fair;
        if (stands && (id == u"dz_myco"_s || id == u"an_copper"_s)) {
            said << words("%1 counts for more than points: whether to disinfect and start afresh is settled with a "
                          "veterinarian or a fish-health laboratory.")
                        .arg(wording::factText(finding.condition->name));
        }
    }
    said << words("A leak or a cracked pane counts for more than points: unplug, drain, and move the animals now.");
    return said;
}

QString leaningOf(const Talk& talk)
{
    const auto band = [](int sum) { return sum <= kKeepTo ? 0 : sum <= kPartTo ? 1 : 2; };
    const int low = band(talk.sum);
    const int high = band(talk.sum + 2 * talk.open);
    if (low != high) {
        return words("The questions still open could turn it either way; answer them before anything is decided.");
    }
    return low == 0   ? words("So few points usually go with keeping the layout and mending one cause.")
           : low == 1 ? words("Points between usually go with resetting a part of it.")
                      : words("So many points usually go with starting afresh.");
}

} // namespace

Talk talkOf(const record::LayoutRecord& layout, const care::Limits& limits, const findings::Report& report,
            const record::Moment& at)
{
    Talk talk;
    const Reader reader(layout, limits, report, at);
    for (const wording::ReviewPoint& point : wording::reviewPoints()) {
        TalkPoint made;
        made.key = point.key;
        made.title = point.title;
        for (std::size_t i = 0; i < point.answers.size(); ++i) {
            made.answers.push_back({u"%1=%2"_s.arg(point.key).arg(i), point.answers[i]});
        }
        const Scored scored = reader.score(point.key);
        made.points = scored.points;
        made.why = scored.why;
        if (const Entry* own = reader.answer(point.key)) {
            made.points = std::clamp(own->subject.section(u'=', 1).toInt(), 0, 2);
            made.why = words("%1, answered on %2")
                           .arg(point.answers[static_cast<std::size_t>(*made.points)],
                                wording::dateText(own->at.localDate(), at.localDate()));
            made.byHand = true;
        }
        talk.sum += made.points.value_or(0);
        talk.open += made.points ? 0 : 1;
        talk.points.push_back(std::move(made));
    }
    talk.headline = talk.open == 0 ? words("%1 of %2 points").arg(talk.sum).arg(kMost)
                                   : words("%1 of %2 points so far, %3 questions open: %1 to %4")
                                         .arg(talk.sum)
                                         .arg(kMost)
                                         .arg(talk.open)
                                         .arg(talk.sum + 2 * talk.open);
    talk.leaning = leaningOf(talk);
    talk.overriding = overriding(report);
    talk.ways = ways();
    const QDate today = at.localDate();
    talk.judgeOn =
        words("Give a mended cause 14 days for algae and growth, 21 for melt, before it is judged: %1 or %2.")
            .arg(wording::dateText(today.addDays(14), today), wording::dateText(today.addDays(21), today));
    return talk;
}

} // namespace littoral::facade
