// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/acclimation_plan.h"

#include "core/water/acclimation.h"

#include <cmath>

namespace littoral::facade {

namespace {

// All common practice.
constexpr double kLongTravel_h = 6.0;
constexpr double kPhAlike = 0.5;
constexpr double kGhAlike_deg = 2.0;
constexpr double kGhOverDays_deg = 5.0;
constexpr int kFloat_min = 20;
constexpr int kDripFish_min = 60;
constexpr int kDripTouchy_min = 120;
constexpr double kDripTimes = 3.0;
constexpr double kCo2Share = 0.8;
constexpr double kDailyStep_deg = 2.0;

AcclimationWay wayFor(bool touchy, const BagWater& bag, const AcclimationPlan& plan)
{
    if (plan.ghStep && std::abs(*plan.ghStep) > kGhOverDays_deg) {
        return AcclimationWay::OverDays;
    }
    if (bag.travelHours > kLongTravel_h) {
        return AcclimationWay::Quick;
    }
    const bool alike =
        plan.phStep && plan.ghStep && std::abs(*plan.phStep) <= kPhAlike && std::abs(*plan.ghStep) <= kGhAlike_deg;
    return alike && !touchy ? AcclimationWay::Float : AcclimationWay::Drip;
}

} // namespace

AcclimationPlan acclimationPlan(const facts::Species& species, const BagWater& bag, const TankWater& tank)
{
    AcclimationPlan plan;
    const auto step = [](const std::optional<double>& from, const std::optional<double>& to) {
        return from && to ? std::optional(*to - *from) : std::nullopt;
    };
    plan.phStep = step(bag.ph, tank.ph);
    plan.ghStep = step(bag.gh_deg, tank.gh_deg);
    plan.phUnknown = !plan.phStep;
    plan.ghUnknown = !plan.ghStep;
    const bool touchy = species.kind == QStringLiteral("shrimp") || species.sensitivity >= 4;
    plan.way = wayFor(touchy, bag, plan);
    int minute = 0;
    plan.steps.push_back({minute, AcclimationAct::LightsOff, 0.0, 0.0});
    switch (plan.way) {
    case AcclimationWay::OverDays:
        plan.steps.push_back({minute, AcclimationAct::StepDaily, kDailyStep_deg, 0.0});
        return plan;
    case AcclimationWay::Quick:
        plan.steps.push_back({minute, AcclimationAct::FloatBag, kFloat_min, 0.0});
        minute += kFloat_min;
        plan.steps.push_back({minute, AcclimationAct::OpenBag, 0.0, 0.0});
        break;
    case AcclimationWay::Float:
        plan.steps.push_back({minute, AcclimationAct::FloatBag, kFloat_min, 0.0});
        minute += kFloat_min;
        break;
    case AcclimationWay::Drip: {
        const int drip = touchy ? kDripTouchy_min : kDripFish_min;
        const auto flow = water::dripFlow_mL_per_min(bag.bag_L, kDripTimes, drip);
        plan.steps.push_back({minute, AcclimationAct::FloatBag, kFloat_min, 0.0});
        minute += kFloat_min;
        plan.steps.push_back({minute, AcclimationAct::StartDrip, flow ? *flow : 0.0, static_cast<double>(drip)});
        minute += drip;
        // At three times the volume two thirds of the difference are behind.
        const double share = 1.0 - 1.0 / kDripTimes;
        if (plan.phStep) {
            plan.phPerHour = water::ratePerHour(0.0, *plan.phStep * share, drip);
        }
        if (plan.ghStep) {
            plan.ghPerHour = water::ratePerHour(0.0, *plan.ghStep * share, drip);
        }
        break;
    }
    }
    plan.steps.push_back({minute, AcclimationAct::NetAcross, 0.0, 0.0});
    plan.steps.push_back({minute, AcclimationAct::LessCo2, kCo2Share, 0.0});
    return plan;
}

} // namespace littoral::facade
