// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/independent_tank.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::skill {

namespace {

using forecast::EventKind;
using forecast::Kit;
using forecast::Substance;

constexpr double kAmmoniaPpm = 1.21588;
constexpr double kNitritePpm = 3.28454;
constexpr double kNitratePpm = 4.42680;
constexpr int kStepsPerSample = 12; // 1/96 d

struct Truth
{
    double fast, thrifty, nitrifier; // capacities, mg N/L/d
    double fastGrowth, thriftyGrowth, nitrifierGrowth, loss, lag, room;
    double ramp, thriftyHalf, nitriteHalf, nitriteInhibition;
    double soil, soilTime, soilPower; // release soil * (1 + t / soilTime)^-soilPower
    double melt, meltDay, uptake, rampDays;
    double sourceAmmonia, sourceNitrate, changeBias;
    double gain[3];
    double cross;
};

double spread(Random& random, double median, double sd)
{
    return median * std::exp(sd * random.normal());
}

Truth truthOf(StartMethod method, Random& r)
{
    Truth t{};
    t.fast = spread(r, 0.0022, 1.5);
    t.thrifty = spread(r, 0.0012, 1.2);
    t.nitrifier = spread(r, 0.0022, 1.5);
    t.fastGrowth = spread(r, 0.52, 0.22);
    t.thriftyGrowth = spread(r, 0.30, 0.25);
    t.nitrifierGrowth = spread(r, 0.50, 0.22);
    t.loss = spread(r, 0.04, 0.4);
    t.lag = spread(r, 1.0, 0.7);
    t.room = spread(r, 5.0, 0.4);
    t.ramp = spread(r, 0.5, 0.4);
    t.thriftyHalf = spread(r, 0.06, 0.5);
    t.nitriteHalf = spread(r, 0.15, 0.5);
    t.nitriteInhibition = spread(r, 25.0, 0.5);
    t.soil = spread(r, 0.75, 0.6);
    t.soilTime = spread(r, 6.0, 0.4);
    t.soilPower = 1.2 + 0.6 * r.uniform();
    t.melt = spread(r, 0.35, 0.7);
    t.meltDay = 3.0 + 6.0 * r.uniform();
    t.uptake = spread(r, 0.20, 0.6);
    t.rampDays = 25.0 + 25.0 * r.uniform();
    t.sourceAmmonia = spread(r, 0.03, 1.0);
    t.sourceNitrate = spread(r, 1.4, 0.6);
    t.changeBias = 0.90 + 0.10 * r.uniform();
    for (int i = 0; i < 3; ++i) {
        t.gain[i] = spread(r, 1.0, i == 2 ? 0.22 : 0.10);
    }
    t.cross = spread(r, 0.35, 0.5);
    if (method == StartMethod::MatureMedia) {
        t.fast += spread(r, 0.7, 0.6);
        t.thrifty += spread(r, 0.4, 0.6);
        t.nitrifier += spread(r, 1.0, 0.6);
        t.lag = 0.1;
    } else if (method == StartMethod::Starter) {
        const bool alive = r.uniform() < 0.6;
        t.fast += alive ? spread(r, 0.05, 1.2) : 0.0;
        t.nitrifier += alive ? spread(r, 0.04, 1.2) : 0.0;
        t.soil *= 0.3;
    } else if (method == StartMethod::DosedInert) {
        t.soil = 0.0;
        t.melt = 0.0;
        t.uptake = 0.02;
    }
    return t;
}

std::vector<Kit> kits()
{
    return {{Substance::TotalAmmonia, {0, 0.25, 0.5, 1, 2, 4, 8}, kAmmoniaPpm, false, 1.0},
            {Substance::Nitrite, {0, 0.25, 0.5, 1, 2, 5}, kNitritePpm, false, 1.0},
            {Substance::Nitrate, {0, 5, 10, 20, 40, 80, 160}, kNitratePpm, true, 1.0}};
}

void writeLog(StartMethod method, forecast::TankCase& log, Random& r)
{
    using forecast::SoilKind;
    log.kits = kits();
    log.setup.temperature_C = 24.0;
    log.setup.plants = forecast::PlantDensity::Medium;
    const bool dosed = method == StartMethod::DosedInert;
    log.setup.soil = dosed ? SoilKind::Inert : method == StartMethod::Starter ? SoilKind::Mild : SoilKind::Rich;
    if (dosed) {
        log.setup.plants = forecast::PlantDensity::None;
        log.setup.sources[0].alkalinity_meq_per_L = 2.5;
        log.events.push_back({0.4, EventKind::AmmoniaDose, 3.0 / kAmmoniaPpm, 0});
        for (double day = 10.4; day < 45.0; day += 10.0) {
            log.events.push_back({day, EventKind::AmmoniaDose, 1.0 / kAmmoniaPpm, 0});
        }
    } else {
        const double every = r.uniform() < 0.5 ? 2.0 : 3.0;
        for (double day = every + 0.6; day < kLastDay + 3.0; day += day < 21.0 ? every : 7.0) {
            log.events.push_back({day, EventKind::WaterChange, r.uniform() < 0.5 ? 0.5 : 0.3, 0});
        }
    }
    if (method == StartMethod::MatureMedia) {
        log.events.push_back({0.2, EventKind::MatureMedia, 1.0, 0});
    } else if (method == StartMethod::Starter) {
        log.events.push_back({0.2, EventKind::StarterDose, 1.0, 0});
    }
    std::stable_sort(log.events.begin(), log.events.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
}

/// Fixed small steps, semi-implicit sinks: never negative and simple.
struct Water
{
    double ammonia = 0.0, nitrite = 0.0, nitrate = 0.0;

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
        double plantsA = t.uptake * std::min(1.0, 0.2 + 0.8 * day / t.rampDays) * ammonia / (0.05 + ammonia) * h;
        const double wanted = toNitrite + straight + plantsA;
        const double income = soilAt(t, day) * h + meltAt(t, day) * h;
        const double share = std::min(1.0, (ammonia + income) / std::max(wanted, 1e-12));
        toNitrite *= share;
        straight *= share;
        plantsA *= share;
        ammonia = std::max(ammonia + income - toNitrite - straight - plantsA, 0.0);
        const double toNitrate = std::min(t.nitrifier * nitriteUse * h, nitrite + toNitrite);
        nitrite += toNitrite - toNitrate;
        const double demand = t.uptake * std::min(1.0, 0.2 + 0.8 * day / t.rampDays) * h - plantsA;
        const double plantsZ = std::min(std::max(demand, 0.0) * nitrate / (0.3 + nitrate), nitrate);
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
            const double f = std::min(event.amount * t.changeBias * spread(r, 1.0, 0.04), 0.98);
            ammonia += f * (t.sourceAmmonia - ammonia);
            nitrite -= f * nitrite;
            nitrate += f * (t.sourceNitrate - nitrate);
        } else if (event.kind == EventKind::AmmoniaDose) {
            ammonia += event.amount * spread(r, 1.0, 0.08);
        }
    }
};

void read(SimulatedTank& tank, const Truth& t, double day, int kit, Random& r)
{
    const auto i = std::min(static_cast<std::size_t>(day * kPerDay), tank.ammonia.size() - 1);
    const Kit& card = tank.log.kits[static_cast<std::size_t>(kit)];
    double value = kit == 0   ? tank.ammonia[i]
                   : kit == 1 ? tank.nitrite[i]
                              : tank.nitrate[i] + t.cross * tank.nitrite[i];
    value *= card.unitsPerMgN * t.gain[kit] * spread(r, 1.0, 0.14);
    value += 0.15 * card.steps[1] * r.normal();
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
    const double shown = card.steps[best];
    tank.log.readings.push_back({day, kit, shown, shown, false, static_cast<std::int64_t>(tank.log.readings.size())});
}

void findCompletion(SimulatedTank& tank)
{
    tank.complete = 0.0;
    const auto days = static_cast<int>(tank.ammonia.size()) / kPerDay;
    for (int day = days - 1; day >= 0; --day) {
        const bool dosed = std::any_of(tank.log.events.begin(), tank.log.events.end(), [&](const auto& e) {
            const double whole = std::floor(e.day);
            return e.kind == EventKind::AmmoniaDose && (whole == day || whole + 1.0 == day);
        });
        double a = 0.0;
        double n = 0.0;
        for (int i = 0; i < kPerDay; ++i) {
            a += tank.ammonia[static_cast<std::size_t>(day * kPerDay + i)] / kPerDay;
            n += tank.nitrite[static_cast<std::size_t>(day * kPerDay + i)] / kPerDay;
        }
        if (!dosed && (a * kAmmoniaPpm >= 0.25 || n * kNitritePpm >= 0.25)) {
            tank.complete = day + 1.0;
            break;
        }
    }
    if (tank.complete > kLastDay) {
        tank.complete = std::numeric_limits<double>::infinity();
    }
}

} // namespace

SimulatedTank simulate(StartMethod method, Random& random)
{
    SimulatedTank tank;
    writeLog(method, tank.log, random);
    Truth t = truthOf(method, random);
    Water water{t.sourceAmmonia, 0.0, t.sourceNitrate};
    const int samples = static_cast<int>(kLastDay + 3.0) * kPerDay;
    std::size_t event = 0;
    double wander = 0.0;
    for (int i = 0; i < samples; ++i) {
        tank.ammonia.push_back(water.ammonia);
        tank.nitrite.push_back(water.nitrite);
        tank.nitrate.push_back(water.nitrate);
        wander += -0.02 * wander + 0.02 * random.normal();
        for (int s = 0; s < kStepsPerSample; ++s) {
            const double h = 1.0 / (kPerDay * kStepsPerSample);
            const double day = static_cast<double>(i) / kPerDay + s * h;
            while (event < tank.log.events.size() && tank.log.events[event].day <= day) {
                water.apply(t, tank.log.events[event++], random);
            }
            water.step(t, day, h, std::exp(wander));
        }
    }
    findCompletion(tank);
    for (double day = 1.0 + random.uniform(); day < kLastDay; day += 1.0 + 2.0 * random.uniform()) {
        read(tank, t, day, 0, random);
        read(tank, t, day, 1, random);
        if (random.uniform() < 0.6) {
            read(tank, t, day, 2, random);
        }
    }
    return tank;
}

} // namespace littoral::skill
