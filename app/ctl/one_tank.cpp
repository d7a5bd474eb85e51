// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/one_tank.h"

#include "core/care/gates.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr double kHorizon_d = 28.0;
/// Four rows a day: a test can be put at any quarter of it.
constexpr double kStep_h = 6.0;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

bool isGate(const QString& key)
{
    const auto& gates = care::builtInGates().gates;
    return key == u"complete"_s || std::ranges::any_of(gates, [&](const auto& gate) { return gate.key == key; });
}

} // namespace

NamedTank openNamedTank(Context& context, const Arguments& arguments, store::Access access, Naming naming)
{
    NamedTank named;
    const bool given = arguments.isSet(u"tank"_s);
    if (!given && naming == Naming::Needed) {
        named.code = arguments.misused(context, words("Name a tank with --tank."));
        return named;
    }
    named.store = openStore(context, arguments.operands()[0], access);
    if (!named.store) {
        named.code = named.store.code;
        return named;
    }
    if (given) {
        named.tank = findTank(context, named.row(), arguments.value(u"tank"_s));
        named.code = named.tank == nullptr ? kRefused : kDone;
    }
    return named;
}

const record::LayoutRecord* layoutOf(Context& context, NamedTank& named, const record::Moment& at)
{
    const record::LayoutRecord* layout = named.row().layoutAt(named.tank->id, at);
    if (layout == nullptr) {
        named.code = context.fail(words("There is no layout in \"%1\" yet.").arg(named.tank->name), kRefused);
    }
    return layout;
}

void declareTank(Arguments& arguments, Naming naming)
{
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.option(u"tank"_s, u"NAME"_s, naming == Naming::Needed ? words("The tank.") : words("Only this tank."));
}

void declareOneTank(Arguments& arguments)
{
    declareTank(arguments);
    arguments.option(u"gate"_s, u"KEY"_s,
                     words("G1 to G4, or \"complete\" for the end of the cycle; the next gate that is not open yet if "
                           "not given."));
    arguments.option(u"load"_s, u"MG"_s,
                     words("What the filter is to carry, mg N per litre of tank and day; what feeding, animals and "
                           "plans in the record come to if not given."));
    arguments.flag(u"no-learning"_s, words("Learn nothing from finished layouts of the row."));
}

OneTank forecastOneTank(Context& context, const Arguments& arguments, const NamedTank& named)
{
    OneTank one;
    const QString gate = arguments.value(u"gate"_s);
    if (!gate.isEmpty() && !isGate(gate)) {
        one.code = arguments.misused(context, words("There is no gate \"%1\"; they are G1 to G4.").arg(gate));
        return one;
    }
    bool bad = false;
    ForecastQuestion question;
    question.asOf = context.clock.now();
    question.days = kHorizon_d;
    question.stepHours = kStep_h;
    question.gate = gate;
    question.load_mgN_per_L_d = arguments.number(context, u"load"_s, 0.0, 50.0, bad);
    question.learn = !arguments.isSet(u"no-learning"_s);
    if (bad) {
        one.code = kUsage;
        return one;
    }
    std::vector<TankForecast> all = runForecasts(named.row(), {named.tank->id}, question);
    if (all.front().error) {
        one.code = context.fail(*all.front().error);
        return one;
    }
    one.answer = std::move(all.front());
    return one;
}

QString isoDay(const TankForecast& one, double day)
{
    if (!std::isfinite(day)) {
        return {};
    }
    return record::Moment(one.dateOf(day).utcMs(), one.inputs.asOf.offsetSeconds()).localDate().toString(Qt::ISODate);
}

} // namespace littoral::ctl
