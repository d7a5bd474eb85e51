// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/arguments.h"
#include "app/ctl/forecast_output.h"
#include "app/ctl/verbs.h"
#include "core/exchange/field_reader.h"
#include "core/facade/track_record.h"

#include <QCoreApplication>
#include <thread>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

void declareOptions(Arguments& arguments)
{
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.option(u"tank"_s, u"NAME"_s, words("The tank."));
    arguments.flag(u"all"_s, words("Every tank, in row order."));
    arguments.option(u"as-of"_s, u"DATE"_s,
                     words("Forecast as if it were then: nothing measured, seen or closed later is looked at; what was "
                           "planned for later is the plan. "
                           "Now if not given; a day alone is noon."));
    arguments.option(u"days"_s, u"N"_s, words("How far ahead; 28, or to tank day 60 if that is later."));
    arguments.option(u"step"_s, u"HOURS"_s, words("Spacing of the rows; 24 if not given."));
    arguments.option(u"at"_s, u"DAY,DAY..."_s, words("Further rows at these instants, in days since flooding."));
    arguments.option(u"threads"_s, u"N"_s,
                     words("How many tanks at a time; one per core if not given. The answer does not depend on it."));
    arguments.option(u"load"_s, u"MG"_s,
                     words("What the filter is to carry, mg N per litre of tank and day; what feeding, animals and "
                           "plans in the record come to if not given."));
    arguments.flag(u"no-learning"_s, words("Learn nothing from finished layouts of the row."));
    arguments.flag(u"keep"_s, words("Keep the forecast in the store for the track record. Not with --as-of."));
    arguments.dataFormats();
}

std::optional<ForecastQuestion> readQuestion(Context& context, const Arguments& arguments)
{
    bool bad = false;
    ForecastQuestion question;
    question.asOf = arguments.instant(context, u"as-of"_s, bad).value_or(context.clock.now());
    question.days = arguments.number(context, u"days"_s, 0.0, 366.0, bad);
    question.stepHours = arguments.number(context, u"step"_s, 0.25, 720.0, bad).value_or(24.0);
    const int cores = std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    question.threads = static_cast<int>(arguments.number(context, u"threads"_s, 1.0, 256.0, bad).value_or(cores));
    question.load_mgN_per_L_d = arguments.number(context, u"load"_s, 0.0, 50.0, bad);
    question.learn = !arguments.isSet(u"no-learning"_s);
    question.causes = !arguments.csv(); // a table has no place for them
    const QStringList instants = arguments.value(u"at"_s).split(u',', Qt::SkipEmptyParts);
    for (const QString& text : instants) {
        const std::optional<double> day = exchange::parseNumber(text);
        if (!day || *day < 0.0 || *day > 20000.0) {
            arguments.misused(context, words("--at takes days since flooding such as 10,14.5, not \"%1\".").arg(text));
            return std::nullopt;
        }
        question.extraDays.push_back(*day);
    }
    return bad ? std::nullopt : std::optional(question);
}

/// Which tanks; empty after a sentence has been written.
std::vector<record::TankId> chosenTanks(Context& context, const Arguments& arguments, const record::Row& row)
{
    std::vector<record::TankId> chosen;
    if (arguments.isSet(u"all"_s)) {
        for (const record::Tank& tank : row.tanks) {
            chosen.push_back(tank.id);
        }
    } else if (const record::Tank* tank = findTank(context, row, arguments.value(u"tank"_s))) {
        chosen.push_back(tank->id);
    }
    return chosen;
}

/// Keeps what was forecast; the exit code.
int keepAll(Context& context, store::Store& store, const std::vector<TankForecast>& all)
{
    for (const TankForecast& one : all) {
        if (one.forecast) {
            if (const auto kept = facade::keepIssued(store, one.result()); !kept) {
                return context.fail(kept.error());
            }
        }
    }
    return kDone;
}

void print(Context& context, const Arguments& arguments, const std::vector<TankForecast>& all)
{
    if (arguments.json()) {
        context.out << QString::fromUtf8(forecastJson(all));
    } else if (arguments.csv()) {
        context.out << forecastCsv(all);
    } else {
        bool first = true;
        for (const TankForecast& one : all) {
            if (one.forecast) {
                context.out << (first ? QString() : u"\n"_s) << forecastText(one);
                first = false;
            }
        }
    }
}

} // namespace

int runForecast(Context& context, const QStringList& line)
{
    Arguments arguments(
        u"forecast FILE (--tank NAME | --all) [options]"_s,
        words("Forecasts total ammonia, nitrite and nitrate as ranges, and the day on which the cycle is complete, "
              "with its odds. Not a "
              "promise: ask the kit before animals go in."),
        {u"littoralctl forecast row.littoral --tank \"Fen Corner\""_s,
         u"littoralctl forecast row.littoral --tank \"Fen Corner\" --as-of 2026-11-20 --days 14 --csv"_s,
         u"littoralctl forecast row.littoral --all --json"_s});
    declareOptions(arguments);
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    if (arguments.isSet(u"all"_s) == arguments.isSet(u"tank"_s)) {
        return arguments.misused(context, words("Name a tank with --tank, or ask for --all."));
    }
    const std::optional<ForecastQuestion> question = readQuestion(context, arguments);
    if (!question) {
        return kUsage;
    }
    const bool keep = arguments.isSet(u"keep"_s);
    if (keep && arguments.isSet(u"as-of"_s)) {
        return arguments.misused(context, words("--keep is for the present: leave out --as-of."));
    }
    const OpenStore keeper =
        openStore(context, arguments.operands()[0], keep ? store::Access::ReadWrite : store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    const std::vector<record::TankId> tanks = chosenTanks(context, arguments, keeper->row());
    if (tanks.empty() && !arguments.isSet(u"all"_s)) {
        return kRefused;
    }
    const std::vector<TankForecast> all = runForecasts(keeper->row(), tanks, *question);
    int code = kDone;
    for (const TankForecast& one : all) {
        if (one.error) {
            code = context.fail(*one.error);
        }
    }
    // One tank out of many that cannot be forecast then (not flooded yet, ended) does not spoil the others.
    const bool some = std::ranges::any_of(all, [](const TankForecast& one) { return one.forecast.has_value(); });
    if (some || arguments.isSet(u"all"_s)) {
        print(context, arguments, all);
    }
    if (keep) {
        if (const int kept = keepAll(context, *keeper->store(), all); kept != kDone) {
            return kept;
        }
    }
    return arguments.isSet(u"all"_s) && code == kRefused ? kDone : code;
}

} // namespace littoral::ctl
