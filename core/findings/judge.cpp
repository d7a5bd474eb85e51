// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/judge.h"

#include <algorithm>

namespace littoral::findings {

using namespace Qt::StringLiterals;
using facts::Condition;
using facts::Evidence;
using facts::EvidenceKey;
using facts::KeyKind;
using facts::Relation;

namespace {

constexpr double kNamed = 3.0;
constexpr double kNamedSign = 2.0; ///< a name alone is never strong support
constexpr double kLookalike = 1.0;
constexpr double kPriorBase = 4.0;
constexpr double kOutsideAge = 1.0;

Verdict yes(bool holds)
{
    return holds ? Verdict::Holds : Verdict::Fails;
}

/// A reading that is only known as a range decides when the whole range lies on one side.
Verdict judgeNumber(const Evidence& item, const Known& known)
{
    const bool exact = known.low == known.high;
    const auto below = [&](double limit, bool orEqual) {
        if (orEqual ? known.high <= limit : known.high < limit || (!exact && known.high <= limit)) {
            return Verdict::Holds;
        }
        return (orEqual ? known.low > limit : known.low >= limit) ? Verdict::Fails : Verdict::Unknown;
    };
    const auto turned = [](Verdict v) {
        return v == Verdict::Holds ? Verdict::Fails : v == Verdict::Fails ? Verdict::Holds : v;
    };
    switch (item.relation) {
    case Relation::Below:
        return below(item.high, false);
    case Relation::AtMost:
        return below(item.high, true);
    case Relation::Above:
        return turned(below(item.low, true));
    case Relation::AtLeast:
        return turned(below(item.low, false));
    default:
        break;
    }
    const Verdict low = turned(below(item.low, false));
    const Verdict high = below(item.high, true);
    if (low == Verdict::Fails || high == Verdict::Fails) {
        return Verdict::Fails;
    }
    return low == Verdict::Holds ? high : low;
}

Judged judgeEvent(const Evidence& item, const CaseView& view)
{
    Judged judged{&item, {}, Verdict::Unknown, 0.0, false, {}};
    const auto last = view.lastEvent(item.key);
    if (last) {
        const double days = record::daysBetween(*last, view.at());
        judged.known = Known::exactly(days, *last);
        // That something did not happen lately is only as good as the record: it speaks for nothing.
        judged.verdict = item.relation == Relation::NoEventFor ? yes(days > item.high)
                         : days < item.high                    ? Verdict::Holds
                                                               : Verdict::Unknown;
    } else if (item.relation == Relation::NoEventFor && view.hasEntries() && view.ageDays() > item.high) {
        judged.verdict = Verdict::Holds;
        judged.known = Known::exactly(view.ageDays(), {});
    }
    return judged;
}

Judged judgeSight(const Evidence& item, const CaseView& view)
{
    Judged judged{&item, {}, Verdict::Unknown, 0.0, true, {}};
    if (const auto seen = view.severity(item.key)) {
        judged.known = Known::exactly(seen->level, seen->at);
        judged.verdict = yes(seen->level >= item.low);
    }
    return judged;
}

/// Kinds whose trouble shows in a reading itself; the others have to be seen.
bool showsInReadings(const Condition& condition)
{
    static const QStringList kinds{u"animal"_s, u"shrimp"_s, u"snail"_s, u"equipment"_s, u"bed"_s};
    return kinds.contains(condition.kind);
}

/// Events favour a condition without being it; a sight counts as one for plants, whose melt is what is asked about.
bool isSign(const Condition& condition, const Judged& judged, const CaseView& view)
{
    const EvidenceKey* key = view.book().key(judged.item->key);
    if (judged.item->relation == Relation::SeenAtLeast) {
        return condition.kind == u"plant"_s;
    }
    if (key == nullptr || key->background || key->kind == KeyKind::Event) {
        return false;
    }
    const bool measured = key->kind == KeyKind::Reading || !key->reckoned.isEmpty();
    return !measured || (showsInReadings(condition) && judged.item->weight == 3);
}

/// Failing items of one key count once, at the largest, and not at all when another item of the key holds.
void countSupport(std::vector<Judged>& items)
{
    for (Judged& judged : items) {
        const double weight = judged.item->weight;
        if (judged.verdict == Verdict::Holds) {
            judged.points = weight;
            continue;
        }
        const bool covered = std::ranges::any_of(items, [&](const Judged& other) {
            return other.item->key == judged.item->key && &other != &judged &&
                   (other.verdict == Verdict::Holds || (other.verdict == Verdict::Fails && other.points < 0.0) ||
                    (other.verdict == Verdict::Fails && other.item->weight > judged.item->weight));
        });
        judged.points = judged.verdict == Verdict::Fails && !covered ? -weight / 2.0 : 0.0;
    }
}

void addNaming(const Condition& condition, const CaseView& view, Weighing& weighing)
{
    const auto seen = view.severity(condition.id);
    if (seen) {
        Judged judged{nullptr,
                      condition.id,
                      yes(seen->level > 0),
                      seen->level > 0 ? kNamed : -kNamed,
                      true,
                      Known::exactly(seen->level, seen->at)};
        (seen->level > 0 ? weighing.supporting : weighing.against).push_back(judged);
        return;
    }
    for (const Condition& other : view.book().conditions) {
        const auto named = view.severity(other.id);
        if (named && named->level > 0 && other.lookalikes.contains(condition.id)) {
            weighing.supporting.push_back(
                {nullptr, other.id, Verdict::Holds, kLookalike, false, Known::exactly(named->level, named->at)});
            return;
        }
    }
}

} // namespace

Judged judge(const Evidence& item, const CaseView& view)
{
    if (item.relation == Relation::EventWithin || item.relation == Relation::NoEventFor) {
        return judgeEvent(item, view);
    }
    if (item.relation == Relation::SeenAtLeast) {
        return judgeSight(item, view);
    }
    Judged judged{&item, {}, Verdict::Unknown, 0.0, true, {}};
    const Known* known = view.known(item.key);
    if (known == nullptr) {
        return judged;
    }
    judged.known = *known;
    if (item.relation == Relation::Is) {
        judged.verdict = known->number ? Verdict::Unknown : yes(known->ticks.contains(item.value));
    } else {
        judged.verdict = known->number ? judgeNumber(item, *known) : Verdict::Unknown;
    }
    return judged;
}

Weighing weigh(const Condition& condition, const CaseView& view)
{
    Weighing weighing;
    for (const Evidence& item : condition.supporting) {
        Judged judged = judge(item, view);
        judged.sign = isSign(condition, judged, view);
        weighing.supporting.push_back(judged);
    }
    countSupport(weighing.supporting);
    for (const Evidence& item : condition.against) {
        Judged judged = judge(item, view);
        judged.sign = false;
        judged.points = judged.verdict == Verdict::Holds ? -static_cast<double>(item.weight) : 0.0;
        weighing.against.push_back(judged);
    }
    addNaming(condition, view, weighing);
    weighing.points = condition.prior - kPriorBase;
    const bool usual = view.ageDays() >= condition.ageLow && view.ageDays() <= condition.ageHigh.value_or(100000);
    weighing.points -= usual ? 0.0 : kOutsideAge;
    for (const auto* side : {&weighing.supporting, &weighing.against}) {
        for (const Judged& judged : *side) {
            weighing.points += judged.points;
            const double sign = judged.item == nullptr ? kNamedSign : judged.points;
            weighing.signPoints += judged.sign && judged.verdict == Verdict::Holds ? sign : 0.0;
        }
    }
    return weighing;
}

} // namespace littoral::findings
