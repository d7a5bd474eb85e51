// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/reset_forecast.h"

#include "core/care/own_gates.h"
#include "core/facade/forecasts.h"
#include "core/facade/plan_desk.h"
#include "core/wording/plan_sentences.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

constexpr int kDraws = 200; // members for the gates' work: as many as plans are compared with

QString words(const char* text)
{
    return QCoreApplication::translate("Reset", text);
}

/// The row as it would be if the layout ended now and a new one began in its tank: same bed bought new, same planting
/// density, water, light and gas; no animals, no feed.
record::Row startedAfresh(record::Row row, record::LayoutRecord& old, record::StartMethod start,
                          const record::Moment& now, record::LayoutId fresh)
{
    record::LayoutRecord made;
    made.layout = old.layout;
    made.layout.id = fresh;
    made.layout.number = old.layout.number + 1;
    made.layout.name.clear();
    made.layout.flooded = now;
    made.layout.ended.reset();
    made.layout.start = start;
    made.layout.followsCadence = true;
    if (made.layout.bed == record::Bed::SpentSoil) {
        made.layout.bed = record::Bed::RichSoil;
    }
    row.layouts[old.layout.id].layout.ended = now;
    row.layouts[fresh] = std::move(made);
    return row;
}

QStringList learnedLines(const record::Row& row, const Learned& learned)
{
    QStringList lines;
    for (const LearnedFact& fact : learned.facts) {
        QStringList names;
        for (const record::LayoutId id : fact.from) {
            const record::LayoutRecord* layout = row.layout(id);
            const record::Tank* tank = layout == nullptr ? nullptr : row.tank(layout->layout.tank);
            if (tank != nullptr) {
                names << words("%1, %2").arg(tank->name, record::layoutName(layout->layout));
            }
        }
        lines << wording::learnedText(fact.kind, fact.typical, fact.prior80, fact.learned80, names);
    }
    return lines;
}

/// Forecasts one way and counts what is changed on it until each gate.
class WayMaker
{
public:
    WayMaker(const record::Row& row, record::LayoutId layout, const record::Moment& now, Learning& learning,
             const std::stop_token& stop)
        : m_row(row)
        , m_layout(layout)
        , m_now(now)
        , m_learning(learning)
        , m_stop(stop)
    {
    }

    Result<ResetWay> make(bool fresh, double net_L)
    {
        ForecastOptions options;
        options.horizonDays = kResetWindow_d;
        auto inputs = forecastCase(m_row, m_layout, m_now, options);
        if (!inputs) {
            return inputs.error();
        }
        m_learning.teach(*inputs, m_stop);
        const auto fit = forecast::fit(inputs->request, m_stop);
        if (!fit) {
            return fit.error();
        }
        const auto answer = forecast::forecast(inputs->request, *fit, m_stop);
        if (!answer) {
            return answer.error();
        }
        ResetWay way;
        way.fresh = fresh;
        way.flooded = inputs->flooded;
        way.ageNow = inputs->request.tank.decisionDay;
        way.fitted = answer->diagnostics.fitted;
        for (const double day : answer->days) {
            way.days.push_back(day - way.ageNow);
        }
        way.bands = {answer->substances[0].water, answer->substances[1].water};
        way.readings = static_cast<int>(inputs->request.tank.readings.size());
        way.assumed = inputs->remarks;
        way.learned = learnedLines(m_row, inputs->learned);
        const auto counted = gates(way, *inputs, *fit, *answer, net_L);
        if (!counted) {
            return counted.error();
        }
        return way;
    }

private:
    Result<void> gates(ResetWay& way, const ForecastCase& inputs, const forecast::Fit& fit,
                       const forecast::Forecast& answer, double net_L)
    {
        const care::GateBook book = care::gatesOf(m_row);
        const auto& rules = inputs.request.gates;
        for (std::size_t i = 0; i < rules.size() && i < answer.gates.size(); ++i) {
            const forecast::PlanQuestion question{{}, rules[i], {}, kResetWindow_d, kDraws};
            const auto table = forecast::comparePlans(inputs.request, fit, question, m_stop);
            if (!table) {
                return table.error();
            }
            const forecast::PlanOutcome& present = table->outcomes.front();
            const QString key = QString::fromStdString(rules[i].key);
            const auto gate = std::ranges::find(book.gates, key, &care::GateDefinition::key);
            const QString title =
                gate == book.gates.end() ? key : QCoreApplication::translate("Gates", gate->title.toUtf8().constData());
            way.gates.push_back({key, title, answer.gates[i], present.changesToGate, present.volumesToGate * net_L});
            if (i == 0) {
                countWindow(way, present, net_L);
            }
        }
        return {};
    }

    static void countWindow(ResetWay& way, const forecast::PlanOutcome& present, double net_L)
    {
        for (const forecast::Event& change : present.changes) {
            way.changes += 1.0;
            way.litres += change.amount * net_L;
        }
    }

    const record::Row& m_row;
    const record::LayoutId m_layout;
    const record::Moment& m_now;
    Learning& m_learning;
    const std::stop_token& m_stop;
};

} // namespace

Result<ResetForecast> resetForecast(const record::Row& row, record::LayoutId layout, record::StartMethod start,
                                    const record::Moment& now, Learning& learning, const std::stop_token& stop)
{
    const record::LayoutRecord* found = row.layout(layout);
    const double net_L = netLitres(row, layout);
    if (found == nullptr || found->layout.ended || net_L <= 0.0 || found->layout.flooded > now) {
        return Error{Fault::BadInput,
                     words("Carrying on and starting afresh are compared for a layout that is running, in a tank "
                           "whose litres are known.")
                         .toStdString(),
                     {},
                     words("Give the tank's dimensions, or the litres measured on flood day.").toStdString()};
    }
    ResetForecast made;
    made.layout = layout;
    made.now = now;
    made.start = start;
    made.net_L = net_L;
    auto keep = WayMaker(row, layout, now, learning, stop).make(false, net_L);
    if (!keep) {
        return keep.error();
    }
    made.keep = std::move(keep).value();
    record::LayoutRecord old = *found;
    const record::LayoutId next{row.layouts.rbegin()->first.value + 1};
    const record::Row afresh = startedAfresh(row, old, start, now, next);
    auto fresh = WayMaker(afresh, next, now, learning, stop).make(true, net_L);
    if (!fresh) {
        return fresh.error();
    }
    made.fresh = std::move(fresh).value();
    return made;
}

} // namespace littoral::facade
