// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/next_tests.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

/// Tests of one parameter closer together than this tell much the same.
constexpr double kApart_d = 2.0;

} // namespace

std::vector<forecast::TestValue> tellingTests(const forecast::Forecast& forecast, std::size_t most)
{
    std::vector<forecast::TestValue> chosen;
    for (const forecast::TestValue& test : forecast.nextTests) {
        if (chosen.size() == most || test.narrowing_d() < kWorthATest_d) {
            break;
        }
        const bool near = std::ranges::any_of(chosen, [&](const forecast::TestValue& other) {
            return other.substance == test.substance && std::fabs(other.day - test.day) < kApart_d;
        });
        if (!near) {
            chosen.push_back(test);
        }
    }
    return chosen;
}

QString focusKey(const ForecastCase& inputs)
{
    const auto place = static_cast<std::size_t>(inputs.request.focusGate);
    return inputs.request.focusGate >= 0 && place < inputs.request.gates.size()
               ? QString::fromStdString(inputs.request.gates[place].key)
               : u"complete"_s;
}

QString layoutTitle(const record::Row& row, record::LayoutId id)
{
    const record::LayoutRecord* layout = row.layout(id);
    const record::Tank* tank = layout == nullptr ? nullptr : row.tank(layout->layout.tank);
    if (tank == nullptr) {
        return {};
    }
    if (row.layoutsOf(tank->id).size() < 2) {
        return tank->name;
    }
    return QCoreApplication::translate("Forecast", "%1 (layout %2)")
        .arg(tank->name, QString::number(layout->layout.number));
}

QStringList learnedSentences(const record::Row& row, const Learned& learned)
{
    QStringList sentences;
    for (const LearnedFact& fact : learned.facts) {
        QStringList names;
        for (const record::LayoutId id : fact.from) {
            names << layoutTitle(row, id);
        }
        sentences << wording::learnedText(fact.kind, fact.typical, fact.prior80, fact.learned80, names);
    }
    return sentences;
}

QString planTitle(const record::Row& row, const ForecastCase& inputs, const forecast::PlanOutcome& outcome)
{
    if (outcome.present) {
        return wording::presentPlanName();
    }
    QString water;
    const auto place = static_cast<std::size_t>(outcome.plan.source);
    if (place > 0 && place < inputs.sources.size()) {
        const record::SourceWater* source = row.source(inputs.sources[place]);
        water = source == nullptr ? QString() : source->name;
    }
    const QDate today = inputs.asOf.localDate();
    return wording::planName(outcome.plan, today, today, water);
}

} // namespace littoral::facade
