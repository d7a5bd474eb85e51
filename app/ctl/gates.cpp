// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/gates.h"

#include "app/ctl/one_tank.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/care/events.h"
#include "core/wording/entry_words.h"
#include "core/wording/forecast_sentences.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <cmath>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr int kOddsDays = 28;
constexpr int kOddsStep = 7;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QString stateCode(care::Known state)
{
    return state == care::Known::Met ? u"met"_s : state == care::Known::Unmet ? u"unmet"_s : u"unknown"_s;
}

QString gateWord(care::Known state)
{
    return state == care::Known::Met ? u"open"_s : state == care::Known::Unmet ? u"shut"_s : u"unknown"_s;
}

/// The odds of a gate's water by a day, from the forecast; nothing for a settled tank, which has no dates to come.
struct Odds
{
    QDate day;
    double probability = 0.0;
};

struct Asked
{
    QString tank;
    const record::LayoutRecord* layout = nullptr;
    record::Moment now;
    std::vector<care::GateState> gates;
    const TankForecast* forecast = nullptr;       ///< nullptr: it could not be made
    QString noForecast;                           ///< why not
    std::vector<const record::Entry*> overridden; ///< notes of what was not waited for

    [[nodiscard]] const forecast::DateOdds* oddsOf(std::size_t gate) const
    {
        return forecast != nullptr && gate < forecast->forecast->gates.size() ? &forecast->forecast->gates[gate]
                                                                              : nullptr;
    }
    [[nodiscard]] std::vector<Odds> byDate(std::size_t gate) const
    {
        std::vector<Odds> found;
        if (const forecast::DateOdds* odds = oddsOf(gate)) {
            for (int ahead = 0; ahead <= kOddsDays; ahead += kOddsStep) {
                const double day = forecast->inputs.request.tank.decisionDay + ahead;
                found.push_back({now.localDate().addDays(ahead), 1.0 - notBy(*odds, day)});
            }
        }
        return found;
    }
};

/// The reading a condition rests on, in words.
QString readingText(const Asked& asked, const care::GateCondition& condition)
{
    const auto& readings = asked.layout->readings;
    const auto found = std::ranges::find(readings, condition.reading, &record::Reading::id);
    if (!condition.reading || found == readings.end()) {
        return {};
    }
    return words("%1 %2, %3")
        .arg(wording::parameterName(found->parameter), wording::readingWithUnit(*found),
             wording::dateText(found->at.localDate(), asked.now.localDate()));
}

QString gateText(const Asked& asked, std::size_t place)
{
    const care::GateState& gate = asked.gates[place];
    const QDate today = asked.now.localDate();
    QString text = u"\n%1 %2: %3\n"_s.arg(gate.key, wording::gateTitle(gate), wording::gateVerdict(gate));
    text += u"  "_s + QCoreApplication::translate("Gates", gate.who.toUtf8().constData()) + u'\n';
    for (const care::GateCondition& condition : gate.conditions) {
        const QString mark = condition.state == care::Known::Met     ? u"+"_s
                             : condition.state == care::Known::Unmet ? u"-"_s
                                                                     : u"?"_s;
        text += u"  %1 %2"_s.arg(mark, wording::gateConditionText(condition, today));
        const QString reading = readingText(asked, condition);
        text += reading.isEmpty() || condition.value ? QString() : u" ("_s + reading + u')';
        text += u'\n';
    }
    const std::vector<Odds> odds = asked.byDate(place);
    if (!odds.empty()) {
        QStringList parts;
        for (const Odds& one : odds) {
            parts << words("%1: %2").arg(wording::dateText(one.day, today), wording::oddsText(one.probability));
        }
        text += u"  "_s + words("Odds that its water stays clear from a day on: %1").arg(parts.join(u"; "_s)) + u'\n';
    }
    return text + u"  "_s +
           words("Rule: %1.").arg(QCoreApplication::translate("Gates", gate.source.toUtf8().constData())) + u'\n';
}

QString gatesText(const Asked& asked)
{
    const QDate today = asked.now.localDate();
    QString text = asked.tank + u'\n';
    for (std::size_t i = 0; i < asked.gates.size(); ++i) {
        text += gateText(asked, i);
    }
    if (asked.gates.empty()) {
        text += words("The layout is not flooded yet.") + u'\n';
    }
    if (!asked.noForecast.isEmpty()) {
        text += u'\n' + words("No odds: %1").arg(asked.noForecast) + u'\n';
    }
    for (const record::Entry* note : asked.overridden) {
        text +=
            u'\n' +
            words("Not waited for on %1 (%2): %3 Tests and looks follow every day for a week.")
                .arg(wording::dateText(note->at.localDate(), today), wording::subjectText(note->where), note->note) +
            u'\n';
    }
    return text;
}

QJsonObject conditionJson(const Asked& asked, const care::GateCondition& condition)
{
    QJsonObject object{{u"key"_s, condition.key},
                       {u"state"_s, stateCode(condition.state)},
                       {u"text"_s, wording::gateConditionText(condition, asked.now.localDate())}};
    const auto put = [&](const QString& key, const std::optional<double>& value) {
        if (value) {
            object.insert(key, QString::number(*value, 'g', 6).toDouble());
        }
    };
    put(u"value"_s, condition.value);
    put(u"limit"_s, condition.limit);
    if (condition.key == u"clear-run"_s) {
        object.insert(u"have"_s, condition.have);
        object.insert(u"need"_s, condition.need);
    }
    if (condition.at.isValid()) {
        object.insert(u"at"_s, condition.at.toIso());
    }
    if (condition.earliest.isValid()) {
        object.insert(u"earliest"_s, condition.earliest.toString(Qt::ISODate));
    }
    if (const QString reading = readingText(asked, condition); !reading.isEmpty()) {
        object.insert(u"reading"_s, reading);
    }
    return object;
}

QByteArray gatesJson(const Asked& asked)
{
    QJsonArray gates;
    for (std::size_t i = 0; i < asked.gates.size(); ++i) {
        const care::GateState& gate = asked.gates[i];
        QJsonArray conditions;
        for (const care::GateCondition& condition : gate.conditions) {
            conditions.append(conditionJson(asked, condition));
        }
        QJsonArray odds;
        for (const Odds& one : asked.byDate(i)) {
            odds.append(QJsonObject{{u"day"_s, one.day.toString(Qt::ISODate)},
                                    {u"probability"_s, QString::number(one.probability, 'g', 4).toDouble()}});
        }
        gates.append(QJsonObject{{u"key"_s, gate.key},
                                 {u"title"_s, wording::gateTitle(gate)},
                                 {u"state"_s, gateWord(gate.state())},
                                 {u"conditions"_s, conditions},
                                 {u"odds"_s, odds},
                                 {u"source"_s, gate.source}});
    }
    QJsonArray overridden;
    for (const record::Entry* note : asked.overridden) {
        overridden.append(
            QJsonObject{{u"at"_s, note->at.toIso()}, {u"animals"_s, note->where}, {u"reason"_s, note->note}});
    }
    return QJsonDocument(QJsonObject{{u"tank"_s, asked.tank},
                                     {u"on"_s, asked.now.localDate().toString(Qt::ISODate)},
                                     {u"gates"_s, gates},
                                     {u"overridden"_s, overridden}})
        .toJson();
}

std::vector<const record::Entry*> overridesOf(const record::LayoutRecord& layout, const record::Moment& now)
{
    std::vector<const record::Entry*> found;
    for (const record::Entry& entry : layout.entries) {
        if (entry.kind == record::EntryKind::Note && entry.subject == care::kGateOverridden && entry.at <= now) {
            found.push_back(&entry);
        }
    }
    return found;
}

} // namespace

int runGates(Context& context, const QStringList& line)
{
    Arguments arguments(u"gates FILE --tank NAME [--json]"_s,
                        words("Shows for each gate every condition, how it stands and the reading that decides it, the "
                              "odds by date, and what was not waited for. A gate is judgement, not proof: ask the kit "
                              "before animals go in."),
                        {u"littoralctl gates row.littoral --tank \"Fen Corner\""_s,
                         u"littoralctl gates row.littoral --tank \"Fen Corner\" --json"_s});
    declareTank(arguments);
    arguments.flag(u"json"_s, words("Write JSON."));
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    const record::Moment now = context.clock.now();
    NamedTank named = openNamedTank(context, arguments, store::Access::ReadOnly);
    const record::LayoutRecord* layout = named ? layoutOf(context, named, now) : nullptr;
    if (layout == nullptr) {
        return named.code;
    }
    ForecastQuestion question;
    question.asOf = now;
    question.days = kOddsDays;
    question.causes = false;
    const std::vector<TankForecast> forecasts = runForecasts(named.row(), {named.tank->id}, question);
    const TankForecast& one = forecasts.front();
    Asked asked{named.tank->name,
                layout,
                now,
                care::gateStates(named.row(), layout->layout.id, now),
                one.error ? nullptr : &one,
                one.error ? QString::fromStdString(one.error->sentence()) : QString(),
                overridesOf(*layout, now)};
    context.out << (arguments.json() ? QString::fromUtf8(gatesJson(asked)) : gatesText(asked));
    return kDone;
}

} // namespace littoral::ctl
