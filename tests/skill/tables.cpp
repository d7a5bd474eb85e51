// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/tables.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <functional>
#include <string>

namespace littoral::skill {

namespace {

constexpr std::array<const char*, 3> kSubstanceNames{"ammonia", "nitrite", "nitrate"};
constexpr std::array<const char*, 3> kLeadNames{"3 d ahead", "7 d ahead", "14 d ahead"};
constexpr std::array<const char*, 3> kDecisionNames{"from day 7", "from day 14", "from day 21"};

/// Counts floors that were missed while printing them.
class Floors final
{
public:
    const char* within(double value, double low, double high)
    {
        const bool good = value >= low && value <= high;
        m_missed += good ? 0 : 1;
        return good ? "ok" : "short";
    }
    const char* atMost(double value, double high) { return within(value, -1e300, high); }
    [[nodiscard]] int missed() const { return m_missed; }

private:
    int m_missed = 0;
};

/// Shares inside the three bands, and how sure the middle one is: tanks are independent, scores of one tank are not.
struct Coverage
{
    double n = 0.0;
    std::array<double, 3> share{};
    std::array<double, 3> slack{}; ///< with a truth within a hair of the band counted as inside
    double error80 = 0.0;

    void finish(const std::vector<std::array<double, 2>>& perTank) // hits of the 80 % band, scores
    {
        double sum = 0.0;
        for (double& s : share) {
            s /= std::max(n, 1.0);
        }
        for (double& s : slack) {
            s /= std::max(n, 1.0);
        }
        for (const auto& [hits, count] : perTank) {
            sum += (hits - share[1] * count) * (hits - share[1] * count);
        }
        error80 = std::sqrt(sum) / std::max(n, 1.0);
    }
};

std::array<double, 3> heldOf(const WaterScore& score)
{
    return score.held;
}

/// Days are read to the half, bands of dates are never points: inside or not.
std::array<double, 3> heldOf(const DateScore& score)
{
    return {score.inside[0] ? 1.0 : 0.0, score.inside[1] ? 1.0 : 0.0, score.inside[2] ? 1.0 : 0.0};
}

template <typename Score> using Filter = std::function<bool(const TankScores&, const Score&)>;

template <typename Score>
Coverage coverageOf(const std::vector<TankScores>& tanks, std::vector<Score> TankScores::*list,
                    const Filter<Score>& wanted)
{
    Coverage coverage;
    std::vector<std::array<double, 2>> perTank;
    for (const TankScores& tank : tanks) {
        std::array<double, 2> own{};
        for (const Score& score : tank.*list) {
            if (!wanted(tank, score)) {
                continue;
            }
            coverage.n += 1.0;
            const std::array<double, 3> held = heldOf(score);
            own[0] += held[1];
            own[1] += 1.0;
            for (std::size_t i = 0; i < held.size(); ++i) {
                coverage.share[i] += held[i];
                coverage.slack[i] += score.inside[i] ? 1.0 : 0.0;
            }
        }
        perTank.push_back(own);
    }
    coverage.finish(perTank);
    return coverage;
}

/// Sums of scores; the three columns of the spreadsheet are compared only where there was something to compare.
struct Sums
{
    double n = 0.0, crps = 0.0, prior = 0.0;
    double crpsRead = 0.0, persistence = 0.0, line = 0.0, lineWithSpread = 0.0;
};

Sums sumsOf(const std::vector<TankScores>& tanks, const Filter<WaterScore>& wanted)
{
    Sums sums;
    for (const TankScores& tank : tanks) {
        for (const WaterScore& score : tank.water) {
            if (!wanted(tank, score)) {
                continue;
            }
            sums.n += 1.0;
            sums.crps += score.crps;
            sums.prior += score.prior;
            if (score.read) {
                sums.crpsRead += score.crps;
                sums.persistence += score.persistence;
                sums.line += score.line;
                sums.lineWithSpread += score.lineWithSpread;
            }
        }
    }
    return sums;
}

double ratio(double a, double b)
{
    return b > 0.0 ? a / b : 0.0;
}

double quantile(std::vector<double> values, double p)
{
    if (values.empty()) {
        return 0.0;
    }
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(p * static_cast<double>(values.size() - 1) + 0.5)];
}

/// A named row of a table and the scores that belong in it. held: the floors apply to this row.
template <typename Score> struct Row
{
    std::string name;
    Filter<Score> wanted;
    bool held = false;
};

std::vector<Row<WaterScore>> waterRows()
{
    std::vector<Row<WaterScore>> rows;
    rows.push_back({"all", [](const auto&, const auto&) { return true; }, true});
    for (std::size_t i = 0; i < kSubstanceNames.size(); ++i) {
        rows.push_back({kSubstanceNames[i], [i](const auto&, const auto& s) { return s.substance == i; }, true});
    }
    for (std::size_t m = 0; m < kStartMethods; ++m) {
        rows.push_back({kMethodNames[m], [m](const auto& t, const auto&) { return t.method == m; }, true});
    }
    for (std::size_t i = 0; i < kSubstanceNames.size(); ++i) {
        rows.push_back({std::string("  ") + kSubstanceNames[i] + ", band not a point",
                        [i](const auto&, const auto& s) { return s.substance == i && s.wide; }});
    }
    for (std::size_t m = 0; m < kStartMethods; ++m) {
        for (std::size_t i = 0; i < kSubstanceNames.size(); ++i) {
            rows.push_back({std::string("  ") + kMethodNames[m] + ", " + kSubstanceNames[i],
                            [m, i](const auto& t, const auto& s) { return t.method == m && s.substance == i; }});
        }
    }
    for (std::size_t i = 0; i < kLeadNames.size(); ++i) {
        rows.push_back({kLeadNames[i], [i](const auto&, const auto& s) { return s.lead == i; }});
    }
    for (std::size_t i = 0; i < kDecisionNames.size(); ++i) {
        rows.push_back({kDecisionNames[i], [i](const auto&, const auto& s) { return s.decision == i; }});
    }
    return rows;
}

void printWater(const std::vector<TankScores>& tanks, Floors& floor, Floors& fair)
{
    std::printf(
        "\nConcentrations: share of truths inside the bands (floors: 50 %% band %.2f-%.2f, 80 %% band "
        "%.2f-%.2f, 95 %% band at least %.2f,\nby parameter and by start method; +- is one standard error of "
        "the 80 %% column, tanks independent). A truth within 0.01 of\na band's edge on the log scale cannot be "
        "told from it and counts by the share of the forecast's probability there that lies\ninside; the last "
        "three columns count it as inside altogether, which is how the floors were set\n",
        floors::kLow50, floors::kHigh50, floors::kLow80, floors::kHigh80, floors::kLow95);
    std::printf("  %-24s %6s  %-10s %-17s %-10s %s\n", "", "n", "50 %", "80 %", "95 %", "edges inside: 50, 80, 95 %");
    for (const auto& row : waterRows()) {
        const Coverage c = coverageOf<WaterScore>(tanks, &TankScores::water, row.wanted);
        const auto mark = [&](Floors& counted, double value, double low, double high) {
            return row.held ? counted.within(value, low, high) : "";
        };
        const char* fair50 = mark(fair, c.share[0], floors::kLow50, floors::kHigh50);
        const char* fair80 = mark(fair, c.share[1], floors::kLow80, floors::kHigh80);
        const char* fair95 = mark(fair, c.share[2], floors::kLow95, 1.0);
        const char* low = mark(floor, c.slack[0], floors::kLow50, floors::kHigh50);
        const char* middle = mark(floor, c.slack[1], floors::kLow80, floors::kHigh80);
        const char* high = mark(floor, c.slack[2], floors::kLow95, 1.0);
        std::printf("  %-24s %6.0f  %.2f %-5s %.2f +-%.3f %-5s %.2f %-5s %.2f %-5s %.2f %-5s %.2f %s\n",
                    row.name.c_str(), c.n, c.share[0], fair50, c.share[1], c.error80, fair80, c.share[2], fair95,
                    c.slack[0], low, c.slack[1], middle, c.slack[2], high);
    }
    std::printf("\nConcentrations: CRPS on ln(1 + c / c0), and its ratio to what is easily had (floors on the first "
                "row: %.2f of the last\nreading, %.2f of the straight line, %.2f of the prior; the line's floor is "
                "held against the better of its two forms)\n",
                floors::kPersistence, floors::kLine, floors::kPrior);
    std::printf("  %-24s %6s  %-14s %-12s %-12s %-12s\n", "", "CRPS", "last reading", "line, point", "line, spread",
                "prior");
    for (const auto& row : waterRows()) {
        const Sums s = sumsOf(tanks, row.wanted);
        const bool held = row.name == "all";
        const double last = ratio(s.crpsRead, s.persistence);
        const double point = ratio(s.crpsRead, s.line);
        const double normal = ratio(s.crpsRead, s.lineWithSpread);
        const double prior = ratio(s.crps, s.prior);
        const char* line = held ? floor.atMost(std::max(point, normal), floors::kLine) : "";
        std::printf("  %-24s %6.3f  %.2f %-9s %.2f %-7s %.2f %-7s %.2f %s\n", row.name.c_str(), ratio(s.crps, s.n),
                    last, held ? floor.atMost(last, floors::kPersistence) : "", point, point >= normal ? line : "",
                    normal, point >= normal ? "" : line, prior, held ? floor.atMost(prior, floors::kPrior) : "");
    }
}

/// Sum over tanks of (numerator - ratio * denominator)^2: how sure a ratio of two sums is, tanks independent.
struct RatioSpread
{
    std::vector<std::array<double, 2>> perTank; ///< forecast, prior

    [[nodiscard]] double error() const
    {
        double above = 0.0, under = 0.0, squares = 0.0;
        for (const auto& [a, b] : perTank) {
            above += a;
            under += b;
        }
        for (const auto& [a, b] : perTank) {
            const double off = a - ratio(above, under) * b;
            squares += off * off;
        }
        return under > 0.0 ? std::sqrt(squares) / under : 0.0;
    }
};

struct DateSums
{
    RatioSpread ahead;
    double crps = 0.0, prior = 0.0, crpsAhead = 0.0, priorAhead = 0.0;
    double n = 0.0, fitted = 0.0, brier = 0.0, within = 0.0;
    std::vector<double> errors, widths;
};

DateSums dateSumsOf(const std::vector<TankScores>& tanks, const Filter<DateScore>& wanted)
{
    DateSums sums;
    for (const TankScores& tank : tanks) {
        sums.ahead.perTank.push_back({0.0, 0.0});
        for (const DateScore& score : tank.dates) {
            if (!wanted(tank, score)) {
                continue;
            }
            sums.n += 1.0;
            sums.crps += score.crps;
            sums.prior += score.prior;
            sums.crpsAhead += score.crpsAhead;
            sums.priorAhead += score.priorAhead;
            sums.ahead.perTank.back()[0] += score.crpsAhead;
            sums.ahead.perTank.back()[1] += score.priorAhead;
            sums.fitted += score.fitted ? 1.0 : 0.0;
            const double happened = score.wasWithinWeek ? 1.0 : 0.0;
            sums.within += happened;
            sums.brier += (score.withinWeek - happened) * (score.withinWeek - happened);
            sums.errors.push_back(score.error_d);
            sums.widths.push_back(score.width80_d);
        }
    }
    return sums;
}

std::vector<Row<DateScore>> dateRows()
{
    std::vector<Row<DateScore>> rows;
    rows.push_back({"all", [](const auto&, const auto&) { return true; }, true});
    rows.push_back({"still open", [](const auto&, const auto& s) { return s.open; }});
    for (std::size_t i = 0; i < kDecisionNames.size(); ++i) {
        rows.push_back({kDecisionNames[i], [i](const auto&, const auto& s) { return s.decision == i; }});
    }
    for (std::size_t m = 0; m < kStartMethods; ++m) {
        rows.push_back({kMethodNames[m], [m](const auto& t, const auto&) { return t.method == m; }});
    }
    return rows;
}

void printDates(const std::vector<TankScores>& tanks, Floors& floor)
{
    std::printf("\nCompletion date (floors on the first row: the 80 %% band holds %.2f-%.2f, CRPS at most %.2f of the "
                "prior's. 'Not by day\n%.0f' is in every column. CRPS from flooding on, and from the decision day on, "
                "with what was over counted as over. Brier:\n'complete within 7 days', beside that of always saying "
                "how often it happened)\n",
                floors::kDateLow80, floors::kDateHigh80, floors::kDatePrior, kLastDay);
    std::printf("  %-13s %4s  %-5s %-18s %-5s %-7s %-11s %-7s %-12s %-8s %-8s %-14s %s\n", "", "n", "50 %", "80 %",
                "95 %", "CRPS d", "to prior", "ahead d", "to prior +-", "error d", "width d", "Brier", "fitted");
    for (const auto& row : dateRows()) {
        const Coverage c = coverageOf<DateScore>(tanks, &TankScores::dates, row.wanted);
        const DateSums s = dateSumsOf(tanks, row.wanted);
        const double toPrior = ratio(s.crps, s.prior);
        const double base = ratio(s.within, s.n);
        std::printf("  %-13s %4.0f  %.2f  %.2f +-%.3f %-6s %.2f  %-7.2f %.2f %-6s %-7.2f %.2f +-%.2f  %-8.1f %-8.1f "
                    "%.3f / %.3f  %.2f\n",
                    row.name.c_str(), c.n, c.share[0], c.share[1], c.error80,
                    row.held ? floor.within(c.share[1], floors::kDateLow80, floors::kDateHigh80) : "", c.share[2],
                    ratio(s.crps, s.n), toPrior, row.held ? floor.atMost(toPrior, floors::kDatePrior) : "",
                    ratio(s.crpsAhead, s.n), ratio(s.crpsAhead, s.priorAhead), s.ahead.error(), quantile(s.errors, 0.5),
                    quantile(s.widths, 0.5), ratio(s.brier, s.n), base * (1.0 - base), ratio(s.fitted, s.n));
    }
}

void printTruth(const Batch& batch, const std::vector<TankScores>& tanks)
{
    std::printf("Simulated tanks: %d per start method, seed %llu (%s); forecasts on days 7, 14 and 21, looking 3, 7 "
                "and 14 days ahead.\nTrue completion day 10/50/90 %%, share not by day %.0f:\n",
                batch.tanksPerMethod, static_cast<unsigned long long>(batch.seed),
                batch.seed == kTrainingSeed ? "training: look and tune" : "report", kLastDay);
    for (std::size_t m = 0; m < kStartMethods; ++m) {
        std::vector<double> days;
        for (const TankScores& tank : tanks) {
            if (tank.method == m) {
                days.push_back(tank.complete);
            }
        }
        const auto never = std::count_if(days.begin(), days.end(), [](double d) { return std::isinf(d); });
        std::printf("  %-14s %.0f/%.0f/%.0f  %.2f\n", kMethodNames[m], quantile(days, 0.1), quantile(days, 0.5),
                    quantile(days, 0.9), static_cast<double>(never) / static_cast<double>(days.size()));
    }
}

} // namespace

int printReport(const Batch& batch, const std::vector<TankScores>& tanks)
{
    Floors floor;
    Floors fair;
    printTruth(batch, tanks);
    printWater(tanks, floor, fair);
    printDates(tanks, floor);
    std::vector<double> seconds;
    for (const TankScores& tank : tanks) {
        seconds.insert(seconds.end(), tank.seconds.begin(), tank.seconds.end());
    }
    std::printf("\nProcessor seconds per calibrated forecast, one thread: median %.3f, worst %.3f\n",
                quantile(seconds, 0.5), quantile(seconds, 1.0));
    std::printf("Floors missed: %d; of coverage, with edges counted by share: %d\n", floor.missed(), fair.missed());
    return floor.missed();
}

} // namespace littoral::skill
