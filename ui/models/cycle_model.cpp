// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/cycle_model.h"

#include "core/facade/lanes.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"
#include "ui/models/cycle_parts.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Cycle", text);
}

QString stateMessage(CycleModel::State state, const QString& tank, const QString& failure)
{
    switch (state) {
    case CycleModel::State::NoTank:
        return words("Pick a tank in the rail: its cycle, its gates and its water-change plans will be here.");
    case CycleModel::State::NoLayout:
        return words("%1 has no layout under water. Once it is flooded, its cycle will be here; edit the tank to say "
                     "when that was.")
            .arg(tank);
    case CycleModel::State::Failed:
        return failure;
    case CycleModel::State::Loading:
    case CycleModel::State::Ready:
        break;
    }
    return {};
}

void addHead(CycleModel& model, const cycle::Frame& frame)
{
    const CycleQuestion& asked = frame.asked;
    const facade::LaneModel lane =
        facade::laneOf(asked.row, frame.layout.layout.id, asked.now, frame.today, asked.forecast, asked.state);
    model.facts = words("%1 · %2").arg(lane.litresAndAge, lane.startText);
    model.headline = lane.phaseLine;
    model.status = lane.status;
    if (asked.forecast == nullptr) {
        return;
    }
    const facade::ForecastResult& result = *asked.forecast;
    const std::size_t members = result.fit.members == nullptr ? 0 : result.fit.members->count();
    const QString when = wording::dateTimeText(result.inputs.asOf.toDateTime(), result.inputs.asOf.localDate());
    model.fitLine = words("%1 members · fitted to %2 readings · %3")
                        .arg(wording::numberText(static_cast<double>(members), 0),
                             QString::number(result.inputs.request.tank.readings.size()), when);
}

} // namespace

namespace cycle {

double oddsBy(const forecast::DateOdds& odds, double day)
{
    double reached = 0.0;
    for (std::size_t i = 0; i < odds.gridDays.size() && odds.gridDays[i] <= day + 1e-9; ++i) {
        reached = odds.cumulative[i];
    }
    return reached;
}

const forecast::DateOdds* Frame::oddsOf(const QString& gate) const
{
    if (result() == nullptr) {
        return nullptr;
    }
    const auto& rules = result()->inputs.request.gates;
    for (std::size_t i = 0; i < rules.size() && i < result()->forecast.gates.size(); ++i) {
        if (QString::fromStdString(rules[i].key) == gate) {
            return &result()->forecast.gates[i];
        }
    }
    return nullptr;
}

const forecast::DateOdds* Frame::focusOdds() const
{
    if (result() == nullptr) {
        return nullptr;
    }
    return focus < gates.size() ? oddsOf(gates[focus].key) : &result()->forecast.complete;
}

const forecast::GateRule* Frame::rule() const
{
    if (result() == nullptr || focus >= gates.size()) {
        return nullptr;
    }
    const auto& rules = result()->inputs.request.gates;
    const auto found = std::ranges::find_if(
        rules, [this](const forecast::GateRule& r) { return QString::fromStdString(r.key) == gates[focus].key; });
    return found == rules.end() ? nullptr : &*found;
}

QString Frame::focusTitle() const
{
    return focus < gates.size() ? wording::gateTitle(gates[focus]) : words("Cycle complete");
}

} // namespace cycle

CycleModel cycleModel(const CycleQuestion& asked)
{
    CycleModel model;
    const record::Tank* tank = asked.row.tank(asked.tank);
    const record::LayoutRecord* layout = tank == nullptr ? nullptr : asked.row.currentLayout(asked.tank, asked.now);
    model.name = tank == nullptr ? QString() : tank->name;
    if (tank == nullptr) {
        model.message = stateMessage(CycleModel::State::NoTank, {}, {});
        return model;
    }
    if (layout == nullptr || layout->layout.ended || layout->layout.flooded > asked.now) {
        model.state = CycleModel::State::NoLayout;
        model.message = stateMessage(model.state, model.name, {});
        return model;
    }
    model.layout = layout->layout.id;
    cycle::Frame frame{asked, *layout, *tank, asked.now.localDate(), {}, 0, 0.0};
    frame.gates = care::gateStates(asked.row, model.layout, asked.now);
    const auto wanted = std::ranges::find(frame.gates, asked.gate, &care::GateState::key);
    const auto next =
        wanted != frame.gates.end() ? wanted : std::ranges::find_if(frame.gates, [](const care::GateState& gate) {
            return gate.state() != care::Known::Met;
        });
    frame.focus = static_cast<std::size_t>(next - frame.gates.begin());
    const auto volume = record::netVolume(*tank, layout->layout);
    frame.net_L = volume ? volume->litres : 0.0;
    model.state = asked.forecast != nullptr  ? CycleModel::State::Ready
                  : !asked.failure.isEmpty() ? CycleModel::State::Failed
                                             : CycleModel::State::Loading;
    model.message = stateMessage(model.state, model.name, asked.failure);
    model.gate = frame.focus < frame.gates.size() ? frame.gates[frame.focus].key : u"complete"_s;
    model.gateTitle = frame.focusTitle();
    addHead(model, frame);
    cycle::addFans(model, frame);
    cycle::addVerdict(model, frame);
    cycle::addTests(model, frame);
    cycle::addGates(model, frame);
    cycle::addPlans(model, frame);
    cycle::addLearned(model, frame);
    cycle::addRecord(model, frame);
    return model;
}

} // namespace littoral::ui
