// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/findings.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace littoral::findings {

using namespace Qt::StringLiterals;
using facts::Condition;
using facts::Evidence;
using facts::EvidenceKey;
using facts::KeyKind;
using facts::Relation;

namespace {

constexpr std::size_t kContest = 6;
constexpr double kCloseBy = 6.0;     ///< points behind the first that still count as a rival
constexpr double kLeastShift = 0.02; ///< below it no look is worth naming

bool isLookalike(const Condition& a, const Condition& b)
{
    return a.lookalikes.contains(b.id) || b.lookalikes.contains(a.id);
}

/// The first finding and its rivals.
std::vector<const Condition*> contest(const CaseView& view, const std::vector<Finding>& ranked)
{
    std::vector<const Condition*> in{ranked.front().condition};
    const double top = ranked.front().weighing.points;
    for (const Finding& finding : ranked) {
        const bool rival = finding.seen && top - finding.weighing.points <= kCloseBy;
        const bool alike = isLookalike(*in.front(), *finding.condition);
        if (in.size() < kContest && finding.condition != in.front() && (rival || alike)) {
            in.push_back(finding.condition);
        }
    }
    for (const QString& id : in.front()->lookalikes) {
        const Condition* other = view.book().condition(id);
        if (other != nullptr && in.size() < kContest && std::ranges::find(in, other) == in.end()) {
            in.push_back(other);
        }
    }
    return in;
}

/// Answers a key can give, cut where the rivals' items cut it.
class Answers
{
public:
    Answers(const EvidenceKey& key, const std::vector<const Condition*>& rivals)
        : m_key(key)
    {
        for (const Condition* condition : rivals) {
            for (const auto* side : {&condition->supporting, &condition->against}) {
                for (const Evidence& item : *side) {
                    if (item.key == key.key) {
                        take(item);
                    }
                }
            }
        }
    }

    [[nodiscard]] std::vector<Answer> all() const
    {
        std::vector<Answer> answers;
        if (m_key.kind == KeyKind::Tick) {
            for (const QString& value : m_values) {
                Answer answer;
                answer.tick = value;
                answers.push_back(answer);
            }
            if (m_values.size() < m_key.values.size() && !m_values.empty()) {
                answers.emplace_back();
            }
            return answers;
        }
        const std::vector<double> cuts(m_cuts.begin(), m_cuts.end());
        for (std::size_t i = 0; !cuts.empty() && i <= cuts.size(); ++i) {
            Answer answer;
            answer.number = true;
            answer.openLow = i == 0;
            answer.openHigh = i == cuts.size();
            answer.low = answer.openLow ? cuts.front() : cuts[i - 1];
            answer.high = answer.openHigh ? cuts.back() : cuts[i];
            answers.push_back(answer);
        }
        return answers;
    }

    /// What would be known then; "?" is a value that no item asks for; a number stands in the middle of its range, well
    /// beyond the last cut at the ends.
    [[nodiscard]] Known known(const Answer& answer, const record::Moment& at) const
    {
        if (!answer.number) {
            Known ticked;
            ticked.ticks << (answer.tick.isEmpty() ? u"?"_s : answer.tick);
            ticked.at = at;
            return ticked;
        }
        const double margin = 0.5 * std::max(0.01, std::abs(answer.low));
        const double value = answer.openLow    ? answer.high - margin
                             : answer.openHigh ? answer.low + margin
                                               : (answer.low + answer.high) / 2.0;
        return Known::exactly(value, at);
    }

private:
    void take(const Evidence& item)
    {
        switch (item.relation) {
        case Relation::Is:
            m_values.insert(item.value);
            break;
        case Relation::Below:
        case Relation::AtMost:
            m_cuts.insert(item.high);
            break;
        case Relation::Above:
        case Relation::AtLeast:
            m_cuts.insert(item.low);
            break;
        case Relation::Within:
            m_cuts.insert(item.low);
            m_cuts.insert(item.high);
            break;
        default:
            break;
        }
    }

    const EvidenceKey& m_key;
    std::set<QString> m_values;
    std::set<double> m_cuts;
};

std::vector<double> normalised(std::vector<double> shares)
{
    const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
    for (double& share : shares) {
        share /= sum;
    }
    return shares;
}

class Contest
{
public:
    Contest(const CaseView& view, std::vector<const Condition*> rivals)
        : m_view(view)
        , m_rivals(std::move(rivals))
    {
        for (const Condition* condition : m_rivals) {
            m_points.push_back(weigh(*condition, view).points);
            m_shares.push_back(std::exp2(m_points.back() / 2.0));
        }
        m_shares = normalised(m_shares);
    }

    [[nodiscard]] const std::vector<const Condition*>& rivals() const { return m_rivals; }

    /// The check made of this key, with its expected shift and who would come first for each answer.
    [[nodiscard]] Check tried(const EvidenceKey& key) const
    {
        Check check{&key, 0.0, false, {}};
        const Answers answers(key, m_rivals);
        const std::vector<Answer> all = answers.all();
        // likelihood[answer][condition], each condition's summing to one over the answers
        std::vector<std::vector<double>> likelihood;
        std::vector<double> sums(m_rivals.size(), 0.0);
        for (const Answer& answer : all) {
            const CaseView then = m_view.with(key.key, answers.known(answer, m_view.at()));
            std::vector<double> row;
            for (std::size_t i = 0; i < m_rivals.size(); ++i) {
                row.push_back(std::exp2((weigh(*m_rivals[i], then).points - m_points[i]) / 2.0));
                sums[i] += row.back();
            }
            likelihood.push_back(std::move(row));
        }
        for (std::size_t a = 0; a < all.size(); ++a) {
            addAnswer(check, all[a], likelihood[a], sums);
        }
        return check;
    }

private:
    void addAnswer(Check& check, Answer answer, const std::vector<double>& likelihood,
                   const std::vector<double>& sums) const
    {
        std::vector<double> joint;
        double chance = 0.0;
        for (std::size_t i = 0; i < m_rivals.size(); ++i) {
            joint.push_back(m_shares[i] * likelihood[i] / sums[i]);
            chance += joint.back();
        }
        double change = 0.0;
        std::size_t first = 0;
        for (std::size_t i = 0; i < m_rivals.size(); ++i) {
            change += std::abs(joint[i] / chance - m_shares[i]) / 2.0;
            first = joint[i] > joint[first] ? i : first;
        }
        check.expectedShift += chance * change;
        answer.first = m_rivals[first];
        check.changesFirst = check.changesFirst || first != 0;
        check.answers.push_back(answer);
    }

    const CaseView& m_view;
    std::vector<const Condition*> m_rivals;
    std::vector<double> m_points;
    std::vector<double> m_shares;
};

/// Keys the rivals ask for that nobody has looked at and that can be looked at.
std::vector<const EvidenceKey*> openKeys(const CaseView& view, const std::vector<const Condition*>& rivals)
{
    std::vector<const EvidenceKey*> keys;
    for (const Condition* condition : rivals) {
        for (const auto* side : {&condition->supporting, &condition->against}) {
            for (const Evidence& item : *side) {
                const EvidenceKey* key = view.book().key(item.key);
                const bool askable = key != nullptr && item.relation != Relation::SeenAtLeast &&
                                     key->kind != KeyKind::Event && key->kind != KeyKind::Sight;
                if (askable && view.known(item.key) == nullptr && std::ranges::find(keys, key) == keys.end()) {
                    keys.push_back(key);
                }
            }
        }
    }
    return keys;
}

/// A small margin keeps the order of asking where two do the same.
bool decidesMore(const Check& check, const Check& best)
{
    if (check.changesFirst != best.changesFirst) {
        return check.changesFirst;
    }
    return check.expectedShift > best.expectedShift + 1e-12;
}

} // namespace

std::optional<Check> decidingCheck(const CaseView& view, const std::vector<Finding>& ranked)
{
    if (ranked.empty() || !ranked.front().seen) {
        return std::nullopt;
    }
    const Contest contested(view, contest(view, ranked));
    if (contested.rivals().size() < 2) {
        return std::nullopt;
    }
    std::optional<Check> best;
    for (const EvidenceKey* key : openKeys(view, contested.rivals())) {
        Check check = contested.tried(*key);
        if (check.expectedShift > kLeastShift && (!best || decidesMore(check, *best))) {
            best = std::move(check);
        }
    }
    return best;
}

} // namespace littoral::findings
