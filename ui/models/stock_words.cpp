// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/stock_words.h"

#include "core/water/units.h"
#include "core/wording/entry_words.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using care::Known;
using facade::AnimalRow;
using facade::ConcernKind;
using facade::PlantRow;
using facade::StockPlace;
using facade::Suits;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("StockWords", text);
}

/// No more decimals than the figure has, and never more than the parameter.
QString figure(const QString& parameter, double value)
{
    // Ammonia and nitrite matter in hundredths, free ammonia in thousandths.
    const record::Parameter* known = record::findParameter(parameter);
    const bool fine = parameter == u"tan"_s || parameter == u"no2"_s;
    const int most = parameter == u"nh3"_s ? 3 : fine ? 2 : known == nullptr ? 1 : std::min(known->decimals, 1);
    const bool whole = std::abs(value - std::round(value)) < 0.5 * std::pow(10.0, -most);
    return wording::numberText(value, whole ? 0 : most);
}

QString unitOf(const QString& parameter)
{
    const record::Parameter* known = record::findParameter(parameter);
    return known == nullptr || parameter == u"ph"_s ? QString() : known->shown().label;
}

QString withUnit(const QString& parameter, const QString& number)
{
    const QString unit = unitOf(parameter);
    return unit.isEmpty() ? number : words("%1 %2").arg(number, unit);
}

const care::GateState* gateOf(const facade::StockModel& model, const QString& key)
{
    const auto found = std::ranges::find(model.gates, key, &care::GateState::key);
    return found == model.gates.end() ? nullptr : &*found;
}

/// First parameter whose newest value is outside: "pH 6.4 is under 6.5".
QString outside(const facade::StockModel& model, const AnimalRow& row)
{
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const facade::StockColumn& column = model.columns[i];
        const facade::StockCell& cell = row.cells[i];
        if (cell.suits != Suits::No || !cell.borne || !column.newest) {
            continue;
        }
        const QString name = wording::parameterSymbol(column.parameter);
        const QString value = figure(column.parameter, *column.newest);
        return *column.newest < cell.borne->low
                   ? words("%1 %2, under %3").arg(name, value, figure(column.parameter, cell.borne->low))
                   : words("%1 %2, over %3").arg(name, value, figure(column.parameter, cell.borne->high));
    }
    return {};
}

QString partly(const facade::StockModel& model, const AnimalRow& row)
{
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        if (row.cells[i].suits == Suits::Partly) {
            return words("%1 out of range at times").arg(wording::parameterSymbol(model.columns[i].parameter));
        }
        if (row.cells[i].aheadLeaves) {
            return words("%1 may leave the range").arg(wording::parameterSymbol(model.columns[i].parameter));
        }
    }
    return {};
}

QString shortConcern(const facade::StockConcern& concern)
{
    switch (concern.kind) {
    case ConcernKind::SmallGroup:
        return words("Group of %1, least %2").arg(concern.value).arg(concern.limit);
    case ConcernKind::SmallTank:
        return words("Needs %1, has %2").arg(wording::litresText(concern.limit), wording::litresText(concern.value));
    case ConcernKind::RecentLoss:
        return words("%1 lost in two weeks").arg(concern.value);
    case ConcernKind::EatsShrimp:
    case ConcernKind::EatsSnails:
    case ConcernKind::EatsSmallFish:
        return words("Eats the %1").arg(concern.other);
    case ConcernKind::NoCommonWater:
        return words("No %1 suits it and %2").arg(wording::parameterSymbol(concern.parameter), concern.other);
    default:
        return concernText(concern);
    }
}

QString percent(double share)
{
    return wording::percentText(share);
}

/// "Total ammonia goes over 0.25 mg/L at some time: 1 in 10 with them, 1 in 50 without."
QString peakText(const QString& parameter, double limit, double with, double without)
{
    const QString name = wording::parameterName(parameter);
    const QString bound = wording::valueWithUnit(parameter, limit);
    if (with < 0.02) {
        return words("%1 stays under %2 (%3).").arg(name, bound, wording::oddsText(1.0 - with));
    }
    if (without < 0.02) {
        return words("%1 goes over %2 at some time: %3 with them, hardly ever without.")
            .arg(name, bound, wording::oddsText(with));
    }
    return words("%1 goes over %2 at some time: %3 with them, %4 without.")
        .arg(name, bound, wording::oddsText(with), wording::oddsText(without));
}

} // namespace

QString rangeText(const QString& parameter, const facade::StockRange& range)
{
    const QString low = figure(parameter, range.low);
    const QString high = figure(parameter, range.high);
    return low == high ? low : words("%1–%2").arg(low, high);
}

QString cellText(const facade::StockColumn& column, const facade::StockCell& cell)
{
    const QString name = wording::parameterName(column.parameter);
    if (!cell.borne) {
        return words("%1: what it bears is not known").arg(name);
    }
    const QString bears = withUnit(column.parameter, rangeText(column.parameter, *cell.borne));
    const QString now = column.water ? rangeText(column.parameter, *column.water) : QString();
    if (column.ahead) {
        const QString ahead = rangeText(column.parameter, *column.ahead);
        return column.water
                   ? words("%1: bears %2; this water %3; coming fortnight %4, 8 in 10").arg(name, bears, now, ahead)
                   : words("%1: bears %2; no reading in the last two weeks; coming fortnight %3, 8 in 10")
                         .arg(name, bears, ahead);
    }
    return column.water ? words("%1: bears %2; this water %3").arg(name, bears, now)
                        : words("%1: bears %2; no reading in the last two weeks").arg(name, bears);
}

QString animalName(const AnimalRow& row)
{
    return row.species ? QCoreApplication::translate("Facts", row.species->name.toUtf8().constData()) : row.subject;
}

QString animalClass(const facade::StockModel& model, const AnimalRow& row)
{
    if (!row.species) {
        return words("not known");
    }
    const care::GateState* gate = gateOf(model, row.species->gate);
    return gate == nullptr ? row.species->gate : wording::gateTitle(*gate);
}

QString animalCountLine(const AnimalRow& row, const QDate& today)
{
    if (row.place == StockPlace::Planned) {
        return words("%1, planned for %2").arg(row.count).arg(wording::weekdayText(row.since.localDate(), today));
    }
    if (row.place == StockPlace::Considered) {
        return words("%1, thought about").arg(row.count);
    }
    const QString since = wording::dateText(row.since.localDate(), today);
    return row.lost > 0 ? words("%1 since %2, %3 lost").arg(row.count).arg(since).arg(row.lost)
                        : words("%1 since %2").arg(row.count).arg(since);
}

QString animalVerdict(const facade::StockModel& model, const AnimalRow& row)
{
    if (!row.species) {
        return words("Species not in the list");
    }
    if (const QString water = outside(model, row); !water.isEmpty()) {
        return water;
    }
    if (row.place != StockPlace::Here && row.gate == Known::Unmet) {
        return words("Gate not open yet");
    }
    if (!row.concerns.empty() && row.concerns.front().serious) {
        return shortConcern(row.concerns.front());
    }
    if (const QString water = partly(model, row); !water.isEmpty()) {
        return water;
    }
    if (row.place != StockPlace::Here && row.gate == Known::Unknown) {
        return words("Gate: not all looked at");
    }
    QStringList unread;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        if (row.cells[i].suits == Suits::Unknown) {
            unread << wording::parameterSymbol(model.columns[i].parameter);
        }
    }
    if (unread.size() == static_cast<qsizetype>(row.cells.size())) {
        return words("Unknown: no readings");
    }
    if (row.place != StockPlace::Here) {
        return words("May go in now");
    }
    return unread.isEmpty() ? words("In range") : words("In range; %1 not read").arg(unread.join(u", "_s));
}

QString concernText(const facade::StockConcern& concern)
{
    switch (concern.kind) {
    case ConcernKind::SmallGroup:
        return words("There are %1; it lives in groups of %2 or more.").arg(concern.value).arg(concern.limit);
    case ConcernKind::SmallTank:
        return words("It wants %1 of water; this tank holds %2.")
            .arg(wording::litresText(concern.limit), wording::litresText(concern.value));
    case ConcernKind::EatsShrimp:
        return words("It eats shrimp: %1 live or come here.").arg(concern.other);
    case ConcernKind::EatsYoungShrimp:
        return words("It eats young shrimp (%1); moss gives cover.").arg(concern.other);
    case ConcernKind::EatsSnails:
        return words("It eats snails: %1.").arg(concern.other);
    case ConcernKind::EatsSmallFish:
        return words("The %1 fits its mouth.").arg(concern.other);
    case ConcernKind::EatsPlants:
        return words("It eats or rasps plants.");
    case ConcernKind::NipsFins:
        return words("It may nip the fins of %1.").arg(concern.other);
    case ConcernKind::Territorial:
        return words("It holds a territory, most of all when it breeds.");
    case ConcernKind::MalesFight:
        return words("Males fight: one male to a tank.");
    case ConcernKind::NoCommonWater:
        return words("No value of %1 suits both it and %2.")
            .arg(wording::parameterName(concern.parameter), concern.other);
    case ConcernKind::RecentLoss:
        return words("Lost in the last two weeks: %1.").arg(concern.value);
    case ConcernKind::NeedsFilm:
        return words("It needs a film to graze; look at its belly every day for three weeks.");
    case ConcernKind::Jumps:
        return words("It gets out of open tanks: keep the lid on.");
    case ConcernKind::Regulated:
        return words("It is banned or listed in some places: look up the local rules.");
    }
    return {};
}

QStringList animalReasons(const facade::StockModel& model, const AnimalRow& row, const QDate& today)
{
    if (!row.species) {
        return {words("\"%1\" names no species of the list, so its water, gate and company are not compared. Edit the "
                      "entry and give a scientific or common name.")
                    .arg(row.subject)};
    }
    QStringList reasons;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        reasons << cellText(model.columns[i], row.cells[i]) + u'.';
    }
    const auto lacksForecast = [](const facade::StockColumn& column) { return column.isForecast && !column.ahead; };
    reasons << (std::ranges::any_of(model.columns, lacksForecast)
                    ? words("What comes is unknown: there is no forecast of this tank yet.")
                    : words("What comes is unknown for pH, hardness and temperature: they are not forecast."));
    if (row.place != StockPlace::Here) {
        if (const care::GateState* gate = gateOf(model, row.species->gate)) {
            reasons << words("%1: %2").arg(wording::gateTitle(*gate), wording::gateVerdict(*gate));
            for (const care::GateCondition& condition : gate->conditions) {
                if (condition.state != Known::Met) {
                    reasons << wording::gateConditionText(condition, today);
                }
            }
        }
    }
    for (const facade::StockConcern& concern : row.concerns) {
        reasons << concernText(concern);
    }
    return reasons;
}

QStringList objections(const facade::StockModel& model, const AnimalRow& row, const QDate& today)
{
    QStringList against;
    if (!row.species) {
        return against;
    }
    if (const QString water = outside(model, row); !water.isEmpty()) {
        against << words("The water does not suit: %1.").arg(water);
    }
    const care::GateState* gate = gateOf(model, row.species->gate);
    if (gate != nullptr && gate->state() != Known::Met) {
        against << words("%1: %2").arg(wording::gateTitle(*gate), wording::gateVerdict(*gate));
        for (const care::GateCondition& condition : gate->conditions) {
            if (condition.state == Known::Unmet) {
                against << wording::gateConditionText(condition, today);
            }
        }
    }
    for (const facade::StockConcern& concern : row.concerns) {
        if (concern.serious) {
            against << concernText(concern);
        }
    }
    return against;
}

QString lightNeedText(const PlantRow& row)
{
    switch (row.lightNeed) {
    case 1:
        return words("little light");
    case 2:
        return words("middling light");
    case 3:
        return words("much light");
    default:
        return words("light need not known");
    }
}

QString co2NeedText(const PlantRow& row)
{
    switch (row.co2Need) {
    case 1:
        return words("takes CO₂ from the air");
    case 2:
        return words("does without added CO₂");
    case 3:
        return words("CO₂ helps much");
    case 4:
        return words("CO₂ needed");
    default:
        return words("CO₂ need not known");
    }
}

QString plantCondition(const PlantRow& row, const QDate& today)
{
    if (row.severity > 0) {
        return words("%1, %2, %3")
            .arg(wording::subjectText(row.trouble), wording::severityWord(row.severity),
                 wording::dateText(row.troubleAt.localDate(), today));
    }
    if (row.lightShort && row.co2Short) {
        return words("Short of light and CO₂");
    }
    if (row.lightShort) {
        return words("Short of light");
    }
    if (row.co2Short) {
        return words("Short of CO₂");
    }
    if (row.cover.size() >= 2) {
        const double change = row.cover.back().share - row.cover[row.cover.size() - 2].share;
        return change > 0.025    ? words("Spreading, now %1").arg(percent(row.cover.back().share))
               : change < -0.025 ? words("Less than before, now %1").arg(percent(row.cover.back().share))
                                 : words("Steady at %1").arg(percent(row.cover.back().share));
    }
    return row.troubleAt.isValid() ? words("Recovered") : words("Nothing seen against it");
}

QString plantWater(const facade::StockModel& model)
{
    const QString hours = model.lightHours ? wording::plainNumber(*model.lightHours) : QString();
    const QString light = model.par && model.lightHours
                              ? words("light %1 PAR for %2 h").arg(wording::numberText(*model.par, 0), hours)
                          : model.lightHours ? words("light for %1 h, PAR not measured").arg(hours)
                                             : words("light not recorded");
    return model.co2_mg_per_L ? words("%1; CO₂ %2").arg(light, wording::valueWithUnit(u"co2"_s, *model.co2_mg_per_L))
                              : words("%1; no CO₂ added").arg(light);
}

QStringList trialVerdict(const facade::AdditionTrial& trial)
{
    return {peakText(u"tan"_s, trial.ammoniaLimit, trial.ammoniaOver, trial.ammoniaOverBefore),
            peakText(u"no2"_s, trial.nitriteLimit, trial.nitriteOver, trial.nitriteOverBefore),
            peakText(u"nh3"_s, trial.freeLimit, trial.freeOver, trial.freeOverBefore)};
}

QStringList gateChanges(const facade::AdditionTrial& trial, const facade::StockModel& model)
{
    QStringList lines;
    for (const facade::AdditionTrial::GateOdds& odds : trial.gates) {
        const care::GateState* gate = gateOf(model, odds.key);
        // Its own gate always; the others where the addition makes a difference.
        const bool own = odds.key == trial.addition.species.gate;
        if (gate == nullptr || (!own && wording::oddsText(odds.after) == wording::oddsText(odds.before))) {
            continue;
        }
        const QString after = wording::oddsText(odds.after);
        const QString before = wording::oddsText(odds.before);
        lines << (after == before ? words("%1: the water keeps to its limits %2, as without them.")
                                        .arg(wording::gateTitle(*gate), after)
                                  : words("%1: the water keeps to its limits %2; without them %3.")
                                        .arg(wording::gateTitle(*gate), after, before));
    }
    return lines;
}

QString acclimationTitle(const facade::AcclimationPlan& plan)
{
    switch (plan.way) {
    case facade::AcclimationWay::Float:
        return words("Short way, water alike: temperature only");
    case facade::AcclimationWay::Drip:
        return words("Drip slowly into the bag's water");
    case facade::AcclimationWay::Quick:
        return words("Long in the bag: open it and move on");
    case facade::AcclimationWay::OverDays:
        break;
    }
    return words("Hardness too far apart: over days, in quarantine");
}

namespace {

/// A difference of general hardness given in degrees.
QString hardness(double degrees)
{
    return wording::valueWithUnit(u"gh"_s, water::GermanDegrees{degrees}.hardness().value);
}

} // namespace

std::vector<AcclimationLine> acclimationLines(const facade::AcclimationPlan& plan)
{
    std::vector<AcclimationLine> lines;
    for (const facade::AcclimationStep& step : plan.steps) {
        const QString when = words("%1 min").arg(step.minute);
        switch (step.act) {
        case facade::AcclimationAct::LightsOff:
            lines.push_back({when, words("Lights out for the rest of the day"), words("less stress for both sides")});
            break;
        case facade::AcclimationAct::FloatBag:
            lines.push_back({when, words("Float the closed bag for %1 min").arg(step.value),
                             words("less than %1 an hour").arg(wording::temperatureStepText(2.0))});
            break;
        case facade::AcclimationAct::OpenBag:
            lines.push_back({when, words("Open it and go on at once"),
                             words("as CO₂ leaves, pH climbs and ammonia in the bag turns free")});
            break;
        case facade::AcclimationAct::StartDrip:
            lines.push_back({when,
                             words("Drip %1 mL/min for %2 min, to three times the volume")
                                 .arg(wording::numberText(step.value, 0), wording::numberText(step.second, 0)),
                             plan.ghPerHour ? words("GH moves %1 an hour").arg(hardness(std::abs(*plan.ghPerHour)))
                                            : words("in a covered bucket")});
            break;
        case facade::AcclimationAct::MatchTemperature:
            lines.push_back({when, words("Match the temperature"), {}});
            break;
        case facade::AcclimationAct::NetAcross:
            lines.push_back({when, words("Net across; the bag's water goes down the drain"),
                             words("nothing from the bag into the tank")});
            break;
        case facade::AcclimationAct::LessCo2:
            lines.push_back({when, words("CO₂ down by %1 for the day").arg(percent(1.0 - step.value)),
                             words("watch breathing; feed nothing today")});
            break;
        case facade::AcclimationAct::StepDaily:
            lines.push_back(
                {when,
                 words("Into quarantine with water like the bag's; %1 a day from there").arg(hardness(step.value)),
                 words("GH differs by %1").arg(hardness(std::abs(plan.ghStep.value_or(0.0))))});
            break;
        }
    }
    return lines;
}

QString clockText(const facade::QuarantineClock& clock, const QDate& today)
{
    const QString day = wording::dateText(clock.since.localDate(), today);
    const QString subject = wording::subjectText(clock.subject);
    const QString since = clock.cause == facade::QuarantineClock::Cause::Arrival
                              ? words("Day %1 since %2 came in on %3.").arg(clock.days).arg(subject, day)
                          : clock.cause == facade::QuarantineClock::Cause::Loss
                              ? words("Day %1 since %2 was lost on %3.").arg(clock.days).arg(subject, day)
                              : words("Day %1 since %2 was seen on %3.").arg(clock.days).arg(subject, day);
    if (clock.done) {
        return words("%1 Quarantine was entered as done on %2.")
            .arg(since, wording::dateText(clock.done->localDate(), today));
    }
    const QDate least = clock.since.localDate().addDays(facade::kQuarantineLeast_d);
    const QDate better = clock.since.localDate().addDays(facade::kQuarantineBetter_d);
    if (clock.days >= facade::kQuarantineBetter_d) {
        return words("%1 More than four weeks without a new arrival or sign.").arg(since);
    }
    return words("%1 Three weeks are over on %2, four on %3; each arrival, loss or sign starts anew.")
        .arg(since, wording::dateText(least, today), wording::dateText(better, today));
}

QString moveText(const facade::MediaMove& move, const record::Row& row, const QDate& today)
{
    const auto name = [&](record::TankId id) {
        const record::Tank* tank = row.tank(id);
        return tank == nullptr ? words("a tank that is gone") : tank->name;
    };
    const QString what = move.squeezings ? words("squeezings")
                         : move.share    ? words("%1 of a filter").arg(percent(*move.share))
                                         : words("media");
    return words("%1 to %2, %3: %4")
        .arg(name(move.from), name(move.to), wording::dateText(move.at.localDate(), today), what);
}

} // namespace littoral::ui
