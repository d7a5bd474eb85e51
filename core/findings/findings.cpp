// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/findings.h"

#include <algorithm>
#include <cmath>

namespace littoral::findings {

using namespace Qt::StringLiterals;

namespace {

constexpr double kStrong = 4.0;
constexpr double kStrongSign = 3.0;
constexpr double kFair = 1.5;
constexpr double kBarWithoutSign = 0.35;

Support supportOf(const Weighing& weighing)
{
    if (weighing.points < -kFair) {
        return Support::Against;
    }
    if (weighing.points >= kStrong && weighing.signPoints >= kStrongSign) {
        return Support::Strong;
    }
    return weighing.points >= kFair && weighing.signPoints > 0.0 ? Support::Fair : Support::Weak;
}

bool anythingSpeaksFor(const Weighing& weighing)
{
    return std::ranges::any_of(weighing.supporting, [](const Judged& judged) {
        return judged.verdict == Verdict::Holds && (judged.item == nullptr || judged.item->key != u"age_d"_s);
    });
}

bool ranksBefore(const Finding& a, const Finding& b)
{
    if (a.seen != b.seen) {
        return a.seen;
    }
    if (a.weighing.points != b.weighing.points) {
        return a.weighing.points > b.weighing.points;
    }
    if (a.weighing.signPoints != b.weighing.signPoints) {
        return a.weighing.signPoints > b.weighing.signPoints;
    }
    if (a.condition->urgency != b.condition->urgency) {
        return a.condition->urgency < b.condition->urgency;
    }
    return a.condition->id < b.condition->id;
}

int weightOf(const Judged& judged)
{
    return judged.item == nullptr ? 3 : judged.item->weight;
}

std::vector<const Judged*> byWeight(std::vector<const Judged*> items)
{
    std::ranges::stable_sort(items, [](const Judged* a, const Judged* b) { return weightOf(*a) > weightOf(*b); });
    return items;
}

} // namespace

QString supportCode(Support support)
{
    switch (support) {
    case Support::Strong:
        return u"strong"_s;
    case Support::Fair:
        return u"fair"_s;
    case Support::Against:
        return u"against"_s;
    case Support::Weak:
        break;
    }
    return u"weak"_s;
}

std::vector<const Judged*> Finding::holding() const
{
    std::vector<const Judged*> items;
    for (const Judged& judged : weighing.supporting) {
        if (judged.verdict == Verdict::Holds) {
            items.push_back(&judged);
        }
    }
    return byWeight(std::move(items));
}

std::vector<const Judged*> Finding::opposing() const
{
    std::vector<const Judged*> items;
    for (const auto* side : {&weighing.against, &weighing.supporting}) {
        for (const Judged& judged : *side) {
            if (judged.points < 0.0) {
                items.push_back(&judged);
            }
        }
    }
    std::ranges::stable_sort(items, [](const Judged* a, const Judged* b) { return a->points < b->points; });
    return items;
}

std::vector<const Judged*> Finding::unknown() const
{
    std::vector<const Judged*> items;
    for (const Judged& judged : weighing.supporting) {
        if (judged.verdict == Verdict::Unknown && judged.item != nullptr) {
            items.push_back(&judged);
        }
    }
    return byWeight(std::move(items));
}

Report findings(const CaseView& view)
{
    Report report;
    for (const facts::Condition& condition : view.book().conditions) {
        Finding finding;
        finding.condition = &condition;
        finding.weighing = weigh(condition, view);
        if (!anythingSpeaksFor(finding.weighing)) {
            continue;
        }
        finding.seen = finding.weighing.signPoints > 0.0;
        finding.support = supportOf(finding.weighing);
        finding.bar = 1.0 / (1.0 + std::exp2(-finding.weighing.points / 2.0));
        if (!finding.seen) {
            finding.bar = std::min(finding.bar, kBarWithoutSign);
        }
        report.ranked.push_back(std::move(finding));
    }
    std::ranges::sort(report.ranked, ranksBefore);
    report.check = decidingCheck(view, report.ranked);
    return report;
}

Report findings(const facts::FactBook& book, const record::Row& row, const record::LayoutRecord& layout,
                const record::Moment& at)
{
    return findings(CaseView(book, row, layout, at));
}

} // namespace littoral::findings
