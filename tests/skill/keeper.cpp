// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/keeper.h"

#include <algorithm>
#include <cmath>

namespace littoral::skill {

namespace {

using forecast::EventKind;
using forecast::Kit;
using forecast::PlantDensity;
using forecast::SoilKind;
using forecast::Substance;

constexpr double kUnloggedShare = 0.03;
constexpr double kDeadGain = 0.05; // what is left of the colour (judgement)

bool chance(Random& r, double share)
{
    return r.uniform() < share;
}

double between(Random& r, double low, double high)
{
    return low + (high - low) * r.uniform();
}

/// Steps of the usual liquid kits and of coarse strips, common practice.
std::vector<Kit> kitsOf(bool strips)
{
    const double scatter = strips ? 1.6 : 1.0;
    using Steps = std::vector<double>;
    const Steps ammonia = strips ? Steps{0, 0.5, 1, 3, 6} : Steps{0, 0.25, 0.5, 1, 2, 4, 8};
    const Steps nitrite = strips ? Steps{0, 0.5, 1, 3, 10} : Steps{0, 0.25, 0.5, 1, 2, 5};
    const Steps nitrate = strips ? Steps{0, 20, 40, 80, 160} : Steps{0, 5, 10, 20, 40, 80, 160};
    return {{Substance::TotalAmmonia, ammonia, kCardUnits[0], false, scatter},
            {Substance::Nitrite, nitrite, kCardUnits[1], false, scatter},
            {Substance::Nitrate, nitrate, kCardUnits[2], true, scatter}};
}

void describe(StartMethod method, forecast::Setup& setup, Random& r)
{
    setup.temperature_C = std::round(between(r, 21.0, 28.0));
    if (method == StartMethod::DosedInert) {
        setup.soil = SoilKind::Inert;
        setup.plants = PlantDensity::None;
        setup.sources[0].alkalinity_meq_per_L = 2.5;
        return;
    }
    const double stand = r.uniform();
    setup.plants = stand < 0.3 ? PlantDensity::Sparse : stand < 0.75 ? PlantDensity::Medium : PlantDensity::Dense;
    const bool mild = method == StartMethod::Starter || chance(r, 0.2);
    setup.soil = mild ? SoilKind::Mild : SoilKind::Rich;
}

void addDoses(std::vector<forecast::Event>& events, Random& r)
{
    events.push_back({0.4, EventKind::AmmoniaDose, std::round(between(r, 2.0, 4.0)) / kCardUnits[0], 0});
    const double every = std::round(between(r, 7.0, 12.0));
    for (double day = every + 0.4; day < 45.0; day += every) {
        events.push_back({day, EventKind::AmmoniaDose, 1.0 / kCardUnits[0], 0});
    }
}

void addChanges(std::vector<forecast::Event>& events, Random& r)
{
    constexpr std::array<double, 5> rhythms{1.0, 2.0, 3.0, 3.5, 7.0};
    const double every = rhythms[std::min(static_cast<std::size_t>(r.uniform() * 5.0), std::size_t{4})];
    const double usual = every < 1.5 ? 0.3 : between(r, 0.25, 0.6);
    for (double day = every + 0.6; day < kLastDay + 3.0; day += day < 21.0 ? every : 7.0) {
        events.push_back({day, EventKind::WaterChange, chance(r, 0.8) ? usual : 0.3, 0});
    }
}

/// Food and a few small animals, as logged: early behind a mature filter, else in the fifth or sixth week.
void addAnimals(StartMethod method, std::vector<forecast::Event>& events, Random& r)
{
    const bool mature = method == StartMethod::MatureMedia;
    if (!chance(r, mature ? 0.6 : 0.4)) {
        return;
    }
    const double day = std::round(mature ? between(r, 5.0, 14.0) : between(r, 30.0, 42.0)) + 0.5;
    events.push_back({day, EventKind::LivestockRate, mature ? between(r, 0.01, 0.06) : between(r, 0.005, 0.03), 0});
    events.push_back({day, EventKind::FeedRate, mature ? between(r, 0.02, 0.10) : between(r, 0.01, 0.05), 0});
}

void sortByDay(std::vector<forecast::Event>& events)
{
    std::stable_sort(events.begin(), events.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
}

double shownOn(const Kit& card, double value, Random& r)
{
    std::size_t best = 0;
    for (std::size_t s = 1; s < card.steps.size(); ++s) {
        if (std::fabs(card.steps[s] - value) < std::fabs(card.steps[best] - value)) {
            best = s;
        }
    }
    const double u = r.uniform();
    if (u < 0.03 && best + 1 < card.steps.size()) {
        ++best;
    } else if (u < 0.06 && best > 0) {
        --best;
    } else if (u < 0.075) {
        best = static_cast<std::size_t>(r.uniform() * static_cast<double>(card.steps.size()));
    }
    return card.steps[best];
}

void readOne(const Keeper& keeper, SimulatedTank& tank, double day, std::size_t kit, Random& r)
{
    const auto i = std::min(static_cast<std::size_t>(day * kPerDay), tank.water[0].size() - 1);
    const Kit& card = tank.log.kits[kit];
    double value = tank.water[kit][i] + (kit == 2 ? keeper.crossReading * tank.water[1][i] : 0.0);
    value *= keeper.printsNitrogen[kit] ? 1.0 : card.unitsPerMgN;
    value *= (keeper.dead[kit] ? kDeadGain : 1.0) * keeper.gain[kit] * spread(r, 1.0, 0.14 * card.scatterFactor);
    value += 0.15 * card.steps[1] * r.normal();
    const double shown = shownOn(card, value, r);
    tank.log.readings.push_back(
        {day, static_cast<int>(kit), shown, shown, false, static_cast<std::int64_t>(tank.log.readings.size())});
}

} // namespace

Keeper keeperOf(Random& r)
{
    Keeper keeper;
    const double zeal = r.uniform();
    if (zeal < 0.30) {
        keeper.shortest = 0.9;
        keeper.longest = 1.5;
    } else if (zeal > 0.80) {
        keeper.shortest = 3.0;
        keeper.longest = 7.0;
    }
    keeper.strips = chance(r, 0.12);
    const double missed = r.uniform();
    keeper.tests[2] = missed >= 0.10;
    keeper.tests[1] = missed < 0.95;
    keeper.nitrateShare = between(r, 0.3, 0.9);
    for (std::size_t i = 0; i < keeper.gain.size(); ++i) {
        keeper.gain[i] = spread(r, 1.0, i == 2 ? 0.22 : 0.10);
    }
    keeper.crossReading = spread(r, 0.35, 0.5);
    return keeper;
}

void writeLog(StartMethod method, const Keeper& keeper, SimulatedTank& tank, Random& r)
{
    forecast::TankCase& log = tank.log;
    log.kits = kitsOf(keeper.strips);
    describe(method, log.setup, r);
    if (method == StartMethod::DosedInert) {
        addDoses(log.events, r);
    } else {
        addChanges(log.events, r);
        addAnimals(method, log.events, r);
    }
    if (method == StartMethod::MatureMedia) {
        log.events.push_back({0.2, EventKind::MatureMedia, chance(r, 0.5) ? 1.0 : between(r, 0.3, 0.8), 0});
    } else if (method == StartMethod::Starter) {
        log.events.push_back({0.2, EventKind::StarterDose, chance(r, 0.7) ? 1.0 : 2.0, 0});
    }
    sortByDay(log.events);
    tank.actual = log.events;
    if (chance(r, kUnloggedShare)) {
        tank.actual.push_back({between(r, 2.0, 30.0), EventKind::WaterChange, between(r, 0.3, 0.5), 0});
        sortByDay(tank.actual);
    }
}

void readCards(const Keeper& keeper, SimulatedTank& tank, Random& r)
{
    for (double day = 1.0 + r.uniform(); day < kLastDay; day += between(r, keeper.shortest, keeper.longest)) {
        const bool nitrate = chance(r, keeper.nitrateShare);
        for (std::size_t kit = 0; kit < keeper.tests.size(); ++kit) {
            if (keeper.tests[kit] && (kit != 2 || nitrate)) {
                readOne(keeper, tank, day, kit, r);
            }
        }
    }
}

} // namespace littoral::skill
