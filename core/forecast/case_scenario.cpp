// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/case_scenario.h"

#include "core/forecast/priors.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace littoral::forecast {

namespace {

sim::EventKind kindOf(EventKind kind)
{
    switch (kind) {
    case EventKind::WaterChange:
        return sim::EventKind::WaterChange;
    case EventKind::AmmoniaDose:
        return sim::EventKind::AmmoniaDose;
    case EventKind::FeedRate:
        return sim::EventKind::FeedRate;
    case EventKind::LivestockRate:
        return sim::EventKind::ExcretionChange;
    case EventKind::StarterDose:
        return sim::EventKind::Starter;
    case EventKind::MatureMedia:
        return sim::EventKind::MatureMedia;
    case EventKind::Squeezings:
        return sim::EventKind::Squeezings;
    }
    return sim::EventKind::WaterChange;
}

Error bad(std::string what, std::string where)
{
    return {Fault::BadInput, std::move(what), std::move(where), "Correct the entry and try again."};
}

bool within(double value, double low, double high)
{
    return value >= low && value <= high; // false for NaN
}

Result<void> checkSetup(const TankCase& tank)
{
    const Setup& s = tank.setup;
    if (s.sources.empty() || s.sources.size() > sim::kMaxSources) {
        return bad("A tank needs between one and eight source waters.", "source water");
    }
    for (const SourceWater& source : s.sources) {
        if (!within(source.alkalinity_meq_per_L, 0.0, 50.0) ||
            (source.nitrate_mgN_per_L && !within(*source.nitrate_mgN_per_L, 0.0, 500.0))) {
            return bad("The alkalinity or nitrate of a source water is out of range.", "source water");
        }
    }
    if (!within(s.temperature_C, 1.0, 45.0) || !within(s.soil_L_per_L, 0.0, 5.0)) {
        return bad("The temperature or the amount of soil is out of range.", "layout");
    }
    if (s.co2.injected && (!within(s.co2.level_mg_per_L, 0.5, 500.0) || !within(s.co2.hoursPerDay, 0.0, 24.0))) {
        return bad("The CO2 level or its hours are out of range.", "CO2");
    }
    if (!within(s.startDay, 0.0, 1e5) || !within(tank.decisionDay, s.startDay, 1e5)) {
        return bad("The day of the forecast lies before the start of the run.", "day");
    }
    return {};
}

Result<void> checkEvents(const TankCase& tank)
{
    for (const Event& event : tank.events) {
        if (!within(event.day, -1e5, 1e6) || !std::isfinite(event.amount)) {
            return bad("An event has no usable day or amount.", "events");
        }
        if (event.kind == EventKind::WaterChange) {
            if (!within(event.amount, 0.0, 1.0)) {
                return bad("A water change must be a fraction between 0 and 1.", "water change");
            }
            if (event.source < 0 || static_cast<std::size_t>(event.source) >= tank.setup.sources.size()) {
                return bad("A water change names a source water that is not there.", "water change");
            }
        } else if (event.kind != EventKind::LivestockRate && event.amount < 0.0) {
            return bad("An amount put into the tank cannot be negative.", "events");
        }
        if (event.amount > 1000.0) {
            return bad("An amount put into the tank is far out of range.", "events");
        }
    }
    return {};
}

Result<void> checkKits(const TankCase& tank)
{
    for (const Kit& kit : tank.kits) {
        if (kit.substance == Substance::FreeAmmonia || !within(kit.unitsPerMgN, 1e-6, 1e6) ||
            !within(kit.scatterFactor, 0.1, 20.0)) {
            return bad("A kit must read total ammonia, nitrite or nitrate in a known unit.", "kit");
        }
        bool ascending = kit.steps.empty() || (kit.steps.size() >= 2 && kit.steps[0] == 0.0);
        for (std::size_t i = 1; i < kit.steps.size(); ++i) {
            ascending = ascending && kit.steps[i] > kit.steps[i - 1] && std::isfinite(kit.steps[i]);
        }
        if (!ascending) {
            return bad("The steps of a card must begin with 0 and ascend.", "kit");
        }
    }
    return {};
}

Result<void> checkReadings(const TankCase& tank)
{
    for (const CaseReading& reading : tank.readings) {
        if (reading.kit < 0 || static_cast<std::size_t>(reading.kit) >= tank.kits.size()) {
            return bad("A reading names a kit that is not there.", "readings");
        }
        if (!(reading.day <= tank.decisionDay)) {
            return bad("A reading lies after the day of the forecast.", "readings");
        }
        if (!(reading.low >= 0.0) || !(reading.high >= reading.low) || std::isinf(reading.low) ||
            (reading.below && std::isinf(reading.high))) {
            return bad("A reading is negative or its bounds are the wrong way round.", "readings");
        }
    }
    return {};
}

Result<void> checkLearned(const TankCase& tank)
{
    const std::size_t dimension = kUnknownFixedCount + 2 * tank.setup.sources.size() + tank.kits.size();
    for (const LearnedUnknown& learned : tank.learned) {
        if (learned.unknown >= dimension || !within(learned.mean, -kLargestZ, kLargestZ) ||
            !within(learned.sd, 0.01, 3.0)) {
            return bad("What was learned from earlier layouts does not fit this one.", "earlier layouts");
        }
    }
    return {};
}

Result<void> checkQuestion(const Request& request)
{
    const double now = request.tank.decisionDay;
    if (!within(request.horizonDays, 0.0, 3650.0) || !within(request.stepDays, 0.01, 3650.0) ||
        request.horizonDays / request.stepDays > 20000.0) {
        return bad("The horizon or the spacing of the forecast is out of range.", "horizon");
    }
    for (const double day : request.extraDays) {
        if (!within(day, now, now + 3650.0)) {
            return bad("A day asked for lies before the day of the forecast.", "extra days");
        }
    }
    for (const GateRule& gate : request.gates) {
        if (!within(gate.spanDays, 0.0, 1000.0) || !within(gate.minDay, 0.0, 1e5)) {
            return bad("A gate asks for a span or age that is out of range.", gate.key);
        }
    }
    if (request.focusGate < -1 || request.focusGate >= static_cast<int>(request.gates.size())) {
        return bad("The gate asked about is not among the gates.", "gates");
    }
    if (!within(request.load_mgN_per_L_d, 0.0, 1000.0) || !within(request.inflation, 0.1, 10.0)) {
        return bad("The planned load or the widening of the bands is out of range.", "forecast");
    }
    if (request.particles < 16 || request.particles > 100000 || request.draws < 16 || request.draws > 100000) {
        return bad("The ensemble must have between 16 and 100000 members.", "ensemble");
    }
    return {};
}

} // namespace

sim::Scenario scenarioOf(const TankCase& tank, double endDay, bool outlook)
{
    sim::Scenario scenario;
    scenario.startDay = tank.setup.startDay;
    scenario.endDay = endDay;
    scenario.co2Injected = tank.setup.co2.injected && tank.setup.co2.hoursPerDay > 0.0;
    scenario.co2ShareOfDay = scenario.co2Injected ? tank.setup.co2.hoursPerDay / 24.0 : 0.0;
    const StartRates rates = startRates(tank);
    scenario.feed_mgN_per_L_d = rates.feed;
    scenario.excretion_mgN_per_L_d = rates.excretion;
    for (const Event& event : tank.events) {
        if (event.day >= scenario.startDay && event.day < endDay) {
            scenario.events.push_back(
                {event.day, kindOf(event.kind), event.amount, static_cast<std::size_t>(std::max(event.source, 0))});
        }
    }
    if (outlook && tank.decisionDay < endDay) {
        scenario.events.push_back({tank.decisionDay, sim::EventKind::OutlookBegins, 0.0, 0});
    }
    std::stable_sort(scenario.events.begin(), scenario.events.end(),
                     [](const sim::Event& a, const sim::Event& b) { return a.day < b.day; });
    return scenario;
}

std::vector<CaseReading> usedReadings(const TankCase& tank)
{
    std::vector<CaseReading> readings;
    for (const CaseReading& reading : tank.readings) {
        if (reading.day >= tank.setup.startDay) {
            readings.push_back(reading);
        }
    }
    std::stable_sort(readings.begin(), readings.end(),
                     [](const CaseReading& a, const CaseReading& b) { return a.day < b.day; });
    return readings;
}

Result<void> checkRequest(const Request& request)
{
    for (const auto& outcome : {checkSetup(request.tank), checkEvents(request.tank), checkKits(request.tank),
                                checkReadings(request.tank), checkLearned(request.tank), checkQuestion(request)}) {
        if (!outcome) {
            return outcome;
        }
    }
    return {};
}

} // namespace littoral::forecast
