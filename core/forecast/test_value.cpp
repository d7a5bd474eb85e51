// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/test_value.h"

#include "core/forecast/milestones.h"
#include "core/forecast/observation.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace littoral::forecast {

namespace {

/// A test needs time to be planned; less than this ahead is now.
constexpr double kSoonest_d = 0.5;
constexpr double kLatest_d = 7.0;
/// Answers of a digital kit are grouped into this many equally likely intervals.
constexpr std::size_t kDigitalAnswers = 7;
/// An answer less likely than this says nothing reliable about what would follow from it.
constexpr double kRarestAnswer = 0.01;

/// Probabilities of each answer (columns) for each member (rows).
struct AnswerOdds
{
    std::vector<std::pair<double, double>> answers; ///< low, high in kit unit
    std::vector<double> odds;                       ///< member after member

    [[nodiscard]] double at(std::size_t member, std::size_t answer) const
    {
        return odds[member * answers.size() + answer];
    }
};

AnswerOdds cardAnswers(const Kit& kit, const std::vector<double>& shown)
{
    AnswerOdds result;
    const CardOdds card(kit);
    for (const double step : kit.steps) {
        result.answers.emplace_back(step, step);
    }
    result.odds.resize(shown.size() * card.count());
    for (std::size_t i = 0; i < shown.size(); ++i) {
        card(shown[i], std::span(result.odds).subspan(i * card.count(), card.count()));
    }
    return result;
}

AnswerOdds digitalAnswers(const Kit& kit, const std::vector<double>& shown)
{
    std::vector<double> sorted = shown;
    std::sort(sorted.begin(), sorted.end());
    std::vector<double> edges;
    for (std::size_t k = 1; k < kDigitalAnswers; ++k) {
        const double edge = sorted[k * sorted.size() / kDigitalAnswers];
        if (edges.empty() || edge > edges.back()) {
            edges.push_back(edge);
        }
    }
    AnswerOdds result;
    std::vector<ReadingModel> models;
    for (std::size_t k = 0; k <= edges.size(); ++k) {
        CaseReading reading;
        reading.below = k == 0;
        reading.low = k == 0 ? 0.0 : edges[k - 1];
        reading.high = k < edges.size() ? edges[k] : std::numeric_limits<double>::infinity();
        result.answers.emplace_back(reading.low, reading.high);
        models.emplace_back(kit, reading);
    }
    result.odds.reserve(shown.size() * models.size());
    for (const double m : shown) {
        double sum = 0.0;
        for (const ReadingModel& model : models) {
            result.odds.push_back(std::exp(model.logLikelihood(m)));
            sum += result.odds.back();
        }
        for (std::size_t k = 0; k < models.size(); ++k) {
            result.odds[result.odds.size() - models.size() + k] /= sum;
        }
    }
    return result;
}

/// Weighted quantiles of dates that are sorted once.
class WeightedDates final
{
public:
    WeightedDates(const std::vector<double>& dates, double lastDay)
        : m_dates(dates)
        , m_order(dates.size())
        , m_lastDay(lastDay)
    {
        std::iota(m_order.begin(), m_order.end(), std::size_t{0});
        std::stable_sort(m_order.begin(), m_order.end(),
                         [&](std::size_t a, std::size_t b) { return dates[a] < dates[b]; });
    }

    /// Dates below which 10, 50 and 90 % of the weight lies.
    template <typename Weight> [[nodiscard]] std::array<double, 3> quantiles(double total, Weight&& weight) const
    {
        constexpr std::array<double, 3> kShares{0.1, 0.5, 0.9};
        std::array<double, 3> found{kNotByLast, kNotByLast, kNotByLast};
        double reached = 0.0;
        std::size_t next = 0;
        for (const std::size_t i : m_order) {
            reached += weight(i);
            while (next < kShares.size() && reached >= kShares[next] * total) {
                found[next++] = m_dates[i] > m_lastDay ? kNotByLast : m_dates[i];
            }
        }
        return found;
    }

    [[nodiscard]] double width(const std::array<double, 3>& quantiles) const
    {
        return std::min(quantiles[2], m_lastDay) - std::min(quantiles[0], m_lastDay);
    }

private:
    const std::vector<double>& m_dates;
    std::vector<std::size_t> m_order;
    double m_lastDay;
};

TestValue valueOf(const AnswerOdds& odds, const WeightedDates& dates, std::size_t members)
{
    TestValue value;
    const auto n = static_cast<double>(members);
    value.width_d = dates.width(dates.quantiles(n, [](std::size_t) { return 1.0; }));
    double counted = 0.0;
    for (std::size_t k = 0; k < odds.answers.size(); ++k) {
        double total = 0.0;
        for (std::size_t i = 0; i < members; ++i) {
            total += odds.at(i, k);
        }
        const double probability = total / n;
        if (probability < kRarestAnswer) {
            continue;
        }
        const auto after = dates.quantiles(total, [&](std::size_t i) { return odds.at(i, k); });
        counted += probability;
        value.expectedWidth_d += probability * dates.width(after);
        value.outcomes.push_back(
            {odds.answers[k].first, odds.answers[k].second, probability, after[0], after[1], after[2]});
    }
    value.expectedWidth_d = counted > 0.0 ? value.expectedWidth_d / counted : value.width_d;
    return value;
}

} // namespace

void fillStepOdds(const Request& request, const Timetable& timetable, const EnsembleOutcome& outcome,
                  SubstanceForecast& substance)
{
    const auto kit = newestKit(request.tank, substance.substance);
    if (!kit || request.tank.kits[*kit].steps.size() < 2) {
        return;
    }
    const CardOdds card(request.tank.kits[*kit]);
    substance.steps = request.tank.kits[*kit].steps;
    substance.stepOdds.resize(timetable.rows.size());
    std::vector<double> one(card.count());
    for (std::size_t row = 0; row < timetable.rows.size(); ++row) {
        const double day = timetable.rows[row];
        const bool asked =
            day <= request.tank.decisionDay + kStepOddsDays ||
            std::find(request.extraDays.begin(), request.extraDays.end(), day) != request.extraDays.end();
        if (!asked) {
            continue;
        }
        std::vector<double>& odds = substance.stepOdds[row];
        odds.assign(card.count(), 0.0);
        const auto& shown = outcome.kit[static_cast<std::size_t>(substance.substance)][row];
        for (const double m : shown) {
            card(m, one);
            for (std::size_t k = 0; k < one.size(); ++k) {
                odds[k] += one[k] / static_cast<double>(shown.size());
            }
        }
    }
}

std::vector<TestValue> nextTests(const Request& request, const Timetable& timetable, const EnsembleOutcome& outcome)
{
    const std::vector<double>& focus =
        request.focusGate >= 0 ? outcome.gates[static_cast<std::size_t>(request.focusGate)] : outcome.complete;
    const WeightedDates dates(focus, timetable.lastDay);
    std::vector<TestValue> values;
    for (std::size_t s = 0; s < outcome.kit.size(); ++s) {
        const auto kit = newestKit(request.tank, static_cast<Substance>(s));
        if (!kit) {
            continue;
        }
        const Kit& card = request.tank.kits[*kit];
        for (std::size_t row = 0; row < timetable.rows.size(); ++row) {
            const double ahead = timetable.rows[row] - request.tank.decisionDay;
            if (ahead < kSoonest_d || ahead > kLatest_d) {
                continue;
            }
            const auto& shown = outcome.kit[s][row];
            const AnswerOdds odds = card.steps.size() >= 2 ? cardAnswers(card, shown) : digitalAnswers(card, shown);
            TestValue value = valueOf(odds, dates, focus.size());
            value.substance = static_cast<Substance>(s);
            value.day = timetable.rows[row];
            values.push_back(std::move(value));
        }
    }
    std::stable_sort(values.begin(), values.end(),
                     [](const TestValue& a, const TestValue& b) { return a.narrowing_d() > b.narrowing_d(); });
    return values;
}

} // namespace littoral::forecast
