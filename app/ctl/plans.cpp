// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/plan_desk.h"

#include "app/ctl/one_tank.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/facade/next_tests.h"
#include "core/record/shown.h"
#include "core/wording/numbers.h"
#include "core/wording/plan_sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr double kMgNPerNitrite = 1.0 / 3.28454; // mg N in a mg of nitrite ion
constexpr std::size_t kLow8 = 1, kMiddle = 3, kHigh8 = 5;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

/// What was asked beside the tank.
struct Question
{
    std::optional<double> nitrite_mg_per_L; ///< as the ion
    std::optional<double> underPercent;
    std::optional<double> adopt;
    bool bad = false;
};

/// Plans of one tank, compared.
struct Compared
{
    const record::Row& row;
    const TankForecast& one;
    forecast::PlanTable table;
    QString gate;
    double net_L = 0.0;

    [[nodiscard]] QString title(const forecast::PlanOutcome& outcome) const
    {
        return facade::planTitle(row, one.inputs, outcome);
    }
    [[nodiscard]] std::optional<double> litres(const forecast::PlanOutcome& outcome) const
    {
        return net_L > 0.0 ? std::optional(net_L * outcome.volumesToGate) : std::nullopt;
    }
};

QString gateRange(const Compared& all, const forecast::DateOdds& odds)
{
    const QDate today = all.one.inputs.asOf.localDate();
    const QString low = isoDay(all.one, odds.day[kLow8]);
    const QString high = isoDay(all.one, odds.day[kHigh8]);
    if (low.isEmpty()) {
        return words("later");
    }
    const QDate first = std::max(QDate::fromString(low, Qt::ISODate), today);
    return high.isEmpty() ? words("%1 or later").arg(wording::dateText(first, today))
                          : wording::dateRangeText(first, QDate::fromString(high, Qt::ISODate), today);
}

QString planTable(const Compared& all, bool every)
{
    const record::Measure volume = record::volumeMeasure(record::shownUnits());
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < all.table.outcomes.size(); ++i) {
        const forecast::PlanOutcome& outcome = all.table.outcomes[i];
        if (!every && !outcome.shown) {
            continue;
        }
        const auto litres = all.litres(outcome);
        rows.push_back({QString::number(i), all.title(outcome),
                        litres ? QString::number(std::lround(volume.shown(*litres))) : u"?"_s,
                        QString::number(std::lround(outcome.changesToGate)),
                        QString::number(std::lround(outcome.hoursNitriteOver)),
                        QString::number(std::lround(outcome.hoursFreeOver)), gateRange(all, outcome.gate),
                        outcome.carriesAtGate ? wording::oddsText(*outcome.carriesAtGate) : u"?"_s});
    }
    return textTable({words("No."), words("Plan"), words("Water, %1").arg(volume.label), words("Changes"),
                      words("Hours NO2"), words("Hours NH3"), words("Readings clear"), words("Filter carries")},
                     rows, 2);
}

QString plansText(const Compared& all, bool every, const std::optional<QString>& cheapest)
{
    const forecast::ExposureLimits limits;
    QString text = words("%1: water-change plans until readings are clear for %2; exposure over %3 days.")
                       .arg(all.one.tank, all.gate, QString::number(std::lround(all.table.windowDays))) +
                   u'\n' + planTable(all, every) +
                   words("Hours: nitrite above %1, free ammonia above %2.")
                       .arg(wording::valueWithUnit(u"no2"_s, limits.nitrite_mgN_per_L),
                            wording::valueWithUnit(u"nh3"_s, limits.free_mgN_per_L)) +
                   u'\n' + words("Readings clear: 8 in 10. Water and changes: until then.") + u'\n' +
                   wording::dilutionCaution() + u'\n';
    const double load = all.one.inputs.request.load_mgN_per_L_d;
    if (load <= 0.0) {
        text += wording::carriesAtGateText(std::nullopt, load) + u'\n';
    }
    return cheapest ? text + *cheapest + u'\n' : text;
}

QJsonArray changesArray(const Compared& all, const forecast::PlanOutcome& outcome)
{
    QJsonArray changes;
    for (const forecast::Event& event : outcome.changes) {
        changes.append(QJsonObject{{u"date"_s, isoDay(all.one, event.day)}, {u"fraction"_s, event.amount}});
    }
    return changes;
}

QJsonObject planObject(const Compared& all, std::size_t i)
{
    const forecast::PlanOutcome& outcome = all.table.outcomes[i];
    const auto day = [&](std::size_t q) {
        return std::isfinite(outcome.gate.day[q]) ? QJsonValue(isoDay(all.one, outcome.gate.day[q])) : QJsonValue();
    };
    const auto rounded = [](double value) { return QString::number(value, 'g', 6).toDouble(); };
    QJsonObject object{{u"number"_s, static_cast<int>(i)},
                       {u"name"_s, all.title(outcome)},
                       {u"present"_s, outcome.present},
                       {u"changes_to_gate"_s, rounded(outcome.changesToGate)},
                       {u"hours_nitrite_over"_s, rounded(outcome.hoursNitriteOver)},
                       {u"hours_free_ammonia_over"_s, rounded(outcome.hoursFreeOver)},
                       {u"gate_low"_s, day(kLow8)},
                       {u"gate_middle"_s, day(kMiddle)},
                       {u"gate_high"_s, day(kHigh8)},
                       {u"gate_not_by_last_day"_s, rounded(outcome.gate.notByLast)},
                       {u"on_frontier"_s, outcome.onFrontier},
                       {u"shown"_s, outcome.shown},
                       {u"changes"_s, changesArray(all, outcome)}};
    if (!outcome.present) {
        object.insert(u"fraction"_s, outcome.plan.fraction);
        object.insert(u"every_days"_s, outcome.plan.everyDays);
        if (std::isfinite(outcome.plan.easeAfterDays)) {
            object.insert(u"ease_after_days"_s, outcome.plan.easeAfterDays);
        }
    }
    if (const auto litres = all.litres(outcome)) {
        object.insert(u"litres_to_gate"_s, rounded(*litres));
    }
    if (outcome.carriesAtGate) {
        object.insert(u"carries_load_at_gate"_s, rounded(*outcome.carriesAtGate));
    }
    return object;
}

QByteArray plansJson(const Compared& all, const std::optional<std::optional<std::size_t>>& cheapest)
{
    QJsonArray plans;
    for (std::size_t i = 0; i < all.table.outcomes.size(); ++i) {
        plans.append(planObject(all, i));
    }
    QJsonObject object{{u"tank"_s, all.one.tank},
                       {u"gate"_s, all.gate},
                       {u"window_days"_s, all.table.windowDays},
                       {u"load_mgn_per_l_d"_s, all.one.inputs.request.load_mgN_per_L_d},
                       {u"plans"_s, plans}};
    if (cheapest) {
        object.insert(u"cheapest"_s, *cheapest ? QJsonValue(static_cast<int>(**cheapest)) : QJsonValue());
    }
    return QJsonDocument(object).toJson();
}

int adoptPlan(Context& context, facade::Keeper& keeper, const Compared& all, std::size_t number)
{
    if (number == 0 || number >= all.table.outcomes.size()) {
        return context.fail(words("There is no plan of that number to adopt; they go from 1 to %1.")
                                .arg(static_cast<int>(all.table.outcomes.size()) - 1),
                            kRefused);
    }
    const forecast::PlanOutcome& outcome = all.table.outcomes[number];
    const record::LayoutId id = all.one.inputs.layout;
    const auto changes =
        facade::plannedChanges(all.one.result(), outcome.plan, *keeper.row().layout(id), all.table.windowDays);
    const auto replaced = facade::adoptionOf(*keeper.row().layout(id), changes, context.clock.now()).replaced.size();
    const QString name = all.title(outcome);
    if (const auto done = facade::adopt(keeper, id, name, outcome.plan, changes); !done) {
        return context.fail(done.error());
    }
    context.out << wording::planAdoptedLabel(name, all.one.tank) << '\n'
                << words("Planned water changes put in: %1; taken out: %2.")
                       .arg(QString::number(changes.size()), QString::number(replaced))
                << '\n';
    return kDone;
}

Question readQuestion(Context& context, const Arguments& arguments)
{
    Question question;
    question.nitrite_mg_per_L = arguments.number(context, u"max-nitrite"_s, 0.0, 100.0, question.bad);
    question.underPercent = arguments.number(context, u"under"_s, 0.0, 100.0, question.bad);
    question.adopt = arguments.number(context, u"adopt"_s, 0.0, 1000.0, question.bad);
    return question;
}

Result<Compared> compare(const facade::Keeper& keeper, const TankForecast& one)
{
    const QString gate = facade::focusKey(one.inputs);
    auto table = forecast::comparePlans(one.inputs.request, *one.fit, facade::planQuestion(one.inputs, gate));
    if (!table) {
        return table.error();
    }
    return Compared{keeper.row(), one, std::move(table).value(), gate,
                    facade::netLitres(keeper.row(), one.inputs.layout)};
}

} // namespace

int runPlans(Context& context, const QStringList& line)
{
    Arguments arguments(u"plans FILE --tank NAME [options]"_s,
                        words("Compares schedules of water changes on the fitted odds of one tank: water, exposure, "
                              "when readings clear, and apart from it whether the filter would carry the load. Not "
                              "proof that animals are safe: ask the kit before they go in."),
                        {u"littoralctl plans row.littoral --tank \"Fen Corner\""_s,
                         u"littoralctl plans row.littoral --tank \"Fen Corner\" --gate G2 --max-nitrite 1 --under 10"_s,
                         u"littoralctl plans row.littoral --tank \"Fen Corner\" --adopt 12"_s});
    declareOneTank(arguments);
    arguments.option(u"max-nitrite"_s, u"MG"_s,
                     words("With --under: the plan with the least water that keeps the odds of nitrite above this, in "
                           "mg/L NO2, under that."));
    arguments.option(u"under"_s, u"PERCENT"_s, words("See --max-nitrite; 10 means 1 in 10."));
    arguments.flag(u"every"_s, words("List every plan, not only the few that differ most."));
    arguments.option(
        u"adopt"_s, u"NUMBER"_s,
        words("Put the plan's changes into the record in place of those planned now. Undo takes it back."));
    arguments.flag(u"json"_s, words("Write JSON."));
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    const Question question = readQuestion(context, arguments);
    if (question.bad) {
        return kUsage;
    }
    if (question.nitrite_mg_per_L.has_value() != question.underPercent.has_value()) {
        return arguments.misused(context, words("--max-nitrite and --under go together."));
    }
    const NamedTank named =
        openNamedTank(context, arguments, question.adopt ? store::Access::ReadWrite : store::Access::ReadOnly);
    if (!named) {
        return named.code;
    }
    facade::Keeper& keeper = *named.store.keeper;
    const OneTank one = forecastOneTank(context, arguments, named);
    if (!one) {
        return one.code;
    }
    const auto compared = compare(keeper, *one.answer);
    if (!compared) {
        return context.fail(compared.error());
    }
    if (question.adopt) {
        return adoptPlan(context, keeper, *compared, static_cast<std::size_t>(*question.adopt));
    }
    std::optional<std::optional<std::size_t>> cheapest;
    std::optional<QString> sentence;
    if (question.nitrite_mg_per_L) {
        const double level = *question.nitrite_mg_per_L * kMgNPerNitrite;
        const double most = *question.underPercent / 100.0;
        cheapest = forecast::cheapestPlan(compared->table, level, most);
        std::optional<QString> name;
        if (*cheapest) {
            name = words("no. %1, %2")
                       .arg(QString::number(**cheapest), compared->title(compared->table.outcomes[**cheapest]));
        }
        sentence = wording::cheapestPlanText(name, level, most);
    }
    if (arguments.json()) {
        context.out << QString::fromUtf8(plansJson(*compared, cheapest));
    } else {
        context.out << plansText(*compared, arguments.isSet(u"every"_s), sentence);
    }
    return kDone;
}

} // namespace littoral::ctl
