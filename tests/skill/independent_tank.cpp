// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/independent_tank.h"

#include "tests/skill/keeper.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::skill {

namespace {

using forecast::EventKind;

constexpr int kStepsPerSample = 12; // 1/96 d

/// Streams of a tank's seed, so that more of one kind of number does not shift the others.
enum Stream : std::uint64_t { kKeeperStream = 1, kLogStream, kTruthStream, kCourseStream, kCardStream };

struct Truth
{
    double fast, thrifty, nitrifier; // capacities, mg N/L/d
    double fastGrowth, thriftyGrowth, nitrifierGrowth, loss, lag, room;
    double ramp, thriftyHalf, nitriteHalf, nitriteInhibition;
    double warmth;                    // all rates, from temperature
    double soil, soilTime, soilPower; // release soil * (1 + t / soilTime)^-soilPower
    double melt, meltDay, uptake, rampDays;
    double sourceAmmonia, sourceNitrate, changeBias;
    double foodShare, foodDelay, excretionShare;
};

void drawFilter(Truth& t, Random& r)
{
    const double carried = spread(r, 0.0015, 1.6); // on plants, soil and hands: the guilds travel together
    t.fast = carried * spread(r, 1.0, 1.0);
    t.thrifty = carried * spread(r, 0.7, 1.0);
    t.nitrifier = carried * spread(r, 1.0, 1.0);
    t.fastGrowth = spread(r, 0.52, 0.30);
    t.thriftyGrowth = spread(r, 0.30, 0.30);
    t.nitrifierGrowth = spread(r, 0.50, 0.30);
    t.loss = spread(r, 0.04, 0.5);
    t.lag = spread(r, 1.0, 0.8);
    t.room = spread(r, 5.0, 0.5);
    t.ramp = spread(r, 0.5, 0.5);
    t.thriftyHalf = spread(r, 0.06, 0.5);
    t.nitriteHalf = spread(r, 0.15, 0.5);
    t.nitriteInhibition = spread(r, 25.0, 0.6);
}

void drawLoads(Truth& t, forecast::PlantDensity plants, forecast::SoilKind soil, Random& r)
{
    using forecast::PlantDensity;
    using forecast::SoilKind;
    const double stand = plants == PlantDensity::Dense    ? 1.6
                         : plants == PlantDensity::Medium ? 1.0
                         : plants == PlantDensity::Sparse ? 0.4
                                                          : 0.0;
    const double kind = soil == SoilKind::Rich ? 1.0 : soil == SoilKind::Mild ? 0.3 : 0.0;
    t.soil = kind * spread(r, 0.75, 0.8);
    t.soilTime = spread(r, 6.0, 0.5);
    t.soilPower = 1.2 + 0.6 * r.uniform();
    t.melt = stand * spread(r, 0.35, 0.9);
    t.meltDay = 3.0 + 6.0 * r.uniform();
    t.uptake = std::max(stand * spread(r, 0.20, 0.8), 0.02);
    t.rampDays = 20.0 + 40.0 * r.uniform();
    t.foodShare = spread(r, 1.0, 0.3);
    t.foodDelay = spread(r, 3.0, 0.4);
    t.excretionShare = spread(r, 1.0, 0.3);
}

void drawSeed(Truth& t, StartMethod method, const forecast::TankCase& log, Random& r)
{
    double amount = 0.0;
    for (const forecast::Event& event : log.events) {
        if (event.kind == EventKind::MatureMedia || event.kind == EventKind::StarterDose) {
            amount += event.amount;
        }
    }
    if (method == StartMethod::MatureMedia) {
        const double vigour = spread(r, amount, 0.4); // one filter: its guilds rise and fall together
        t.fast += vigour * spread(r, 0.7, 0.5);
        t.thrifty += vigour * spread(r, 0.4, 0.6);
        t.nitrifier += vigour * spread(r, 1.0, 0.5);
        t.lag = 0.1;
    } else if (method == StartMethod::Starter && r.uniform() < 0.6) { // the rest of the bottles are dead
        t.fast += amount * spread(r, 0.05, 1.4);
        t.nitrifier += amount * spread(r, 0.04, 1.4);
    }
}

Truth truthOf(StartMethod method, const forecast::TankCase& log, Random& r)
{
    Truth t{};
    drawFilter(t, r);
    drawLoads(t, log.setup.plants, log.setup.soil, r);
    drawSeed(t, method, log, r);
    const double actual_C = log.setup.temperature_C + 0.7 * r.normal();
    t.warmth = std::pow(1.8 + 0.8 * r.uniform(), (actual_C - 24.5) / 10.0);
    t.sourceAmmonia = spread(r, 0.03, 1.0);
    t.sourceNitrate = spread(r, 1.4, 0.7);
    t.changeBias = 0.88 + 0.12 * r.uniform();
    return t;
}

/// Fixed small steps, semi-implicit sinks: never negative and simple.
struct Course
{
    double ammonia = 0.0, nitrite = 0.0, nitrate = 0.0;
    double food = 0.0, feed = 0.0, excretion = 0.0; // rotting, mg N/L; rates, mg N/L/d

    void step(Truth& t, double day, double h, double vigour)
    {
        const double awake = day > t.lag ? 1.0 : 0.1;
        const double fastUse = std::min(1.0, ammonia / t.ramp) * vigour;
        const double thriftyUse = ammonia / (t.thriftyHalf + ammonia) * vigour;
        const double nitriteUse =
            nitrite / (t.nitriteHalf + nitrite + nitrite * nitrite / t.nitriteInhibition) * vigour;
        const double crowd = 1.0 - (t.fast + t.thrifty + t.nitrifier) / (2.0 * t.room);
        double toNitrite = t.fast * fastUse * h;
        double straight = t.thrifty * thriftyUse * h;
        const double wish = t.uptake * std::min(1.0, 0.2 + 0.8 * day / t.rampDays) * h;
        double plantsA = wish * ammonia / (0.05 + ammonia);
        const double wanted = toNitrite + straight + plantsA;
        const double rotted = food / t.foodDelay * h;
        food += feed * t.foodShare * h - rotted;
        const double income = (soilAt(t, day) + meltAt(t, day) + excretion * t.excretionShare) * h + rotted;
        const double share = std::min(1.0, (ammonia + income) / std::max(wanted, 1e-12));
        toNitrite *= share;
        straight *= share;
        plantsA *= share;
        ammonia = std::max(ammonia + income - toNitrite - straight - plantsA, 0.0);
        const double toNitrate = std::min(t.nitrifier * nitriteUse * h, nitrite + toNitrite);
        nitrite += toNitrite - toNitrate;
        const double plantsZ = std::min(std::max(wish - plantsA, 0.0) * nitrate / (0.3 + nitrate), nitrate);
        nitrate += straight + toNitrate - plantsZ;
        t.fast *= 1.0 + h * (t.fastGrowth * fastUse * awake * crowd - t.loss);
        t.thrifty *= 1.0 + h * (t.thriftyGrowth * thriftyUse * awake * crowd - 0.5 * t.loss);
        t.nitrifier *= 1.0 + h * (t.nitrifierGrowth * nitriteUse * awake * crowd - t.loss);
    }

    static double soilAt(const Truth& t, double day) { return t.soil * std::pow(1.0 + day / t.soilTime, -t.soilPower); }
    static double meltAt(const Truth& t, double day)
    {
        const double x = (day - t.meltDay) / 2.5;
        return t.melt * std::exp(-0.5 * x * x) / (2.5 * 2.5066);
    }

    void apply(const Truth& t, const forecast::Event& event, Random& r)
    {
        if (event.kind == EventKind::WaterChange) {
            const double f = std::min(event.amount * t.changeBias * spread(r, 1.0, 0.06), 0.98);
            ammonia += f * (t.sourceAmmonia - ammonia);
            nitrite -= f * nitrite;
            nitrate += f * (t.sourceNitrate - nitrate);
        } else if (event.kind == EventKind::AmmoniaDose) {
            ammonia += event.amount * spread(r, 1.0, 0.10);
        } else if (event.kind == EventKind::FeedRate) {
            feed = event.amount;
        } else if (event.kind == EventKind::LivestockRate) {
            excretion = std::max(excretion + event.amount, 0.0);
        }
    }
};

/// Ammonia at the limit is all oxidised by the fast and the thrifty; only what the fast leave is nitrite to deal with.
double carriesAt(const Truth& t, double vigour)
{
    constexpr double kAmmonia = 0.25 / kCardUnits[0];
    constexpr double kNitrite = 0.25 / kCardUnits[1];
    const double fast = t.fast * std::min(1.0, kAmmonia / t.ramp) * vigour;
    const double both = fast + t.thrifty * kAmmonia / (t.thriftyHalf + kAmmonia) * vigour;
    const double nitrite =
        t.nitrifier * kNitrite / (t.nitriteHalf + kNitrite + kNitrite * kNitrite / t.nitriteInhibition) * vigour;
    return std::min(both, nitrite * both / std::max(fast, 1e-12));
}

void live(SimulatedTank& tank, Truth t, Random& r)
{
    Course water{t.sourceAmmonia, 0.0, t.sourceNitrate};
    const int samples = static_cast<int>(kLastDay + 3.0) * kPerDay;
    std::size_t event = 0;
    double wander = 0.0;
    for (int i = 0; i < samples; ++i) {
        tank.water[0].push_back(water.ammonia);
        tank.water[1].push_back(water.nitrite);
        tank.water[2].push_back(water.nitrate);
        tank.carries.push_back(carriesAt(t, t.warmth * std::exp(wander)));
        wander += -0.02 * wander + 0.025 * r.normal();
        for (int s = 0; s < kStepsPerSample; ++s) {
            const double h = 1.0 / (kPerDay * kStepsPerSample);
            const double day = static_cast<double>(i) / kPerDay + s * h;
            while (event < tank.actual.size() && tank.actual[event].day <= day) {
                water.apply(t, tank.actual[event++], r);
            }
            water.step(t, day, h, t.warmth * std::exp(wander));
        }
    }
}

void happenToo(std::vector<forecast::Event>& actual, const std::vector<forecast::Event>& unlogged)
{
    actual.insert(actual.end(), unlogged.begin(), unlogged.end());
    std::stable_sort(actual.begin(), actual.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
}

void findCompletion(SimulatedTank& tank)
{
    tank.complete = 0.0;
    const auto days = static_cast<int>(tank.water[0].size()) / kPerDay;
    for (int day = days - 1; day >= 0; --day) {
        const bool dosed = std::any_of(tank.actual.begin(), tank.actual.end(), [&](const auto& e) {
            const double whole = std::floor(e.day);
            return e.kind == EventKind::AmmoniaDose && (whole == day || whole + 1.0 == day);
        });
        double a = 0.0;
        double n = 0.0;
        for (int i = 0; i < kPerDay; ++i) {
            a += tank.water[0][static_cast<std::size_t>(day * kPerDay + i)] / kPerDay;
            n += tank.water[1][static_cast<std::size_t>(day * kPerDay + i)] / kPerDay;
        }
        if (!dosed && (a * kCardUnits[0] >= 0.25 || n * kCardUnits[1] >= 0.25)) {
            tank.complete = day + 1.0;
            break;
        }
    }
    if (tank.complete > kLastDay) {
        tank.complete = std::numeric_limits<double>::infinity();
    }
}

} // namespace

double spread(Random& random, double median, double sd)
{
    return median * std::exp(sd * random.normal());
}

SimulatedTank simulate(StartMethod method, std::uint64_t seed, std::uint64_t index, const Mishap& mishap)
{
    const std::uint64_t own = mixSeed(mixSeed(seed, static_cast<std::uint64_t>(method)), index);
    Random keeperRandom(own, kKeeperStream);
    Random logRandom(own, kLogStream);
    Random truthRandom(own, kTruthStream);
    Random courseRandom(own, kCourseStream);
    Random cardRandom(own, kCardStream);
    SimulatedTank tank;
    Keeper keeper = keeperOf(keeperRandom);
    keeper.printsNitrogen = mishap.printsNitrogen;
    keeper.dead = mishap.dead;
    writeLog(method, keeper, tank, logRandom);
    happenToo(tank.actual, mishap.unlogged);
    live(tank, truthOf(method, tank.log, truthRandom), courseRandom);
    findCompletion(tank);
    readCards(keeper, tank, cardRandom);
    return tank;
}

} // namespace littoral::skill
