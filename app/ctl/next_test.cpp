// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/next_tests.h"

#include "app/ctl/forecast_output.h"
#include "app/ctl/one_tank.h"
#include "app/ctl/verbs.h"
#include "core/wording/forecast_sentences.h"
#include "core/wording/plan_sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

const forecast::DateOdds& focusOdds(const TankForecast& one)
{
    const int gate = one.inputs.request.focusGate;
    return gate >= 0 ? one.forecast->gates[static_cast<std::size_t>(gate)] : one.forecast->complete;
}

QString testsText(const TankForecast& one, const std::vector<forecast::TestValue>& tests)
{
    const QDate today = one.inputs.asOf.localDate();
    const QString focus = facade::focusKey(one.inputs);
    QString text = one.tank + u'\n';
    text += (focus == u"complete"_s ? wording::completionText(focusOdds(one), one.inputs.flooded, today)
                                    : wording::readingsClearText(focus, focusOdds(one), one.inputs.flooded, today)) +
            u".\n"_s;
    if (tests.empty()) {
        return text + wording::noTestNarrowsText() + u'\n';
    }
    for (const forecast::TestValue& test : tests) {
        text += wording::nextTestText(test, one.inputs.flooded, today) + u'\n';
        const QString unit = kitUnit(one, test.substance);
        for (const forecast::TestOutcome& outcome : test.outcomes) {
            text += u"  "_s + wording::testOutcomeText(outcome, unit, one.inputs.flooded, today) + u'\n';
        }
    }
    return text;
}

QJsonObject testObject(const TankForecast& one, const forecast::TestValue& test)
{
    const auto rounded = [](double value) { return QString::number(value, 'g', 6).toDouble(); };
    const auto date = [&](double day) { return std::isfinite(day) ? QJsonValue(isoDay(one, day)) : QJsonValue(); };
    QJsonArray outcomes;
    for (const forecast::TestOutcome& outcome : test.outcomes) {
        outcomes.append(
            QJsonObject{{u"low"_s, rounded(outcome.low)},
                        {u"high"_s, std::isfinite(outcome.high) ? QJsonValue(rounded(outcome.high)) : QJsonValue()},
                        {u"probability"_s, rounded(outcome.probability)},
                        {u"date_low"_s, date(outcome.day10)},
                        {u"date_middle"_s, date(outcome.day50)},
                        {u"date_high"_s, date(outcome.day90)}});
    }
    return {{u"parameter"_s, parameterKey(test.substance)},
            {u"unit"_s, kitUnit(one, test.substance)},
            {u"day"_s, rounded(test.day)},
            {u"date"_s, isoDay(one, test.day)},
            {u"width_days"_s, rounded(test.width_d)},
            {u"expected_width_days"_s, rounded(test.expectedWidth_d)},
            {u"outcomes"_s, outcomes}};
}

} // namespace

int runNextTest(Context& context, const QStringList& line)
{
    Arguments arguments(u"next-test FILE --tank NAME [--gate KEY] [--json]"_s,
                        words("Shows which tests of the coming week are expected to narrow the date of a gate, or of "
                              "the end of the cycle, most, and what each answer would tell."),
                        {u"littoralctl next-test row.littoral --tank \"Fen Corner\""_s,
                         u"littoralctl next-test row.littoral --tank \"Fen Corner\" --gate complete --json"_s});
    declareOneTank(arguments);
    arguments.flag(u"json"_s, words("Write JSON."));
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    const NamedTank named = openNamedTank(context, arguments, store::Access::ReadOnly);
    if (!named) {
        return named.code;
    }
    const OneTank one = forecastOneTank(context, arguments, named);
    if (!one) {
        return one.code;
    }
    const std::vector<forecast::TestValue> tests = facade::tellingTests(*one.answer->forecast);
    if (!arguments.json()) {
        context.out << testsText(*one.answer, tests);
        return kDone;
    }
    QJsonArray list;
    for (const forecast::TestValue& test : tests) {
        list.append(testObject(*one.answer, test));
    }
    const QJsonObject object{
        {u"tank"_s, one.answer->tank}, {u"about"_s, facade::focusKey(one.answer->inputs)}, {u"tests"_s, list}};
    context.out << QString::fromUtf8(QJsonDocument(object).toJson());
    return kDone;
}

} // namespace littoral::ctl
