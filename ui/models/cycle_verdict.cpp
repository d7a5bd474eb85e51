// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/own_gates.h"
#include "core/facade/next_tests.h"
#include "core/wording/forecast_sentences.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "core/wording/plan_sentences.h"
#include "core/wording/sentences.h"
#include "ui/models/cycle_parts.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace littoral::ui::cycle {

using namespace Qt::StringLiterals;

namespace {

constexpr std::size_t kTestsShown = 3;
constexpr std::size_t k10 = 1;
constexpr std::size_t k90 = 5;
// Under this ratio of the ends of its 8-in-10 range a capacity counts as known.
constexpr double kKnownRatio = 1.8;
constexpr int kReadingsWanted = 3;

QString words(const char* text)
{
    return QCoreApplication::translate("Cycle", text);
}

QString plural(const char* text, int n)
{
    return QCoreApplication::translate("Cycle", text, nullptr, n);
}

/// Which way a parameter has been going and since when, from its readings; empty with fewer than two.
QString trendOf(const record::LayoutRecord& layout, const QString& parameter, const record::Moment& now,
                const QDate& today)
{
    std::vector<const record::Reading*> all = layout.readingsOf(parameter);
    std::erase_if(all, [&](const record::Reading* r) { return r->at > now; });
    if (all.size() < 2) {
        return {};
    }
    const auto shown = [](const record::Reading* r) {
        return r->censoring == record::Censoring::Below ? 0.0 : r->value;
    };
    const auto sign = [&](std::size_t i) {
        const double change = shown(all[i]) - shown(all[i - 1]);
        return change > 1e-9 ? 1 : change < -1e-9 ? -1 : 0;
    };
    // Back from the newest over readings that do not contradict the direction.
    int direction = 0;
    std::size_t from = all.size() - 1;
    std::size_t turned = from;
    for (std::size_t i = all.size() - 1; i > 0; --i) {
        const int step = sign(i);
        if (direction == 0) {
            direction = step;
        } else if (step == -direction) {
            break;
        }
        from = i - 1;
        turned = step != 0 ? i - 1 : turned;
    }
    const QString name = wording::parameterName(parameter);
    const QString since = wording::dateText((direction == 0 ? all[from] : all[turned])->at.localDate(), today);
    if (direction == 0) {
        return words("%1 has read the same since %2.").arg(name, since);
    }
    return direction > 0 ? words("%1 has been rising since %2.").arg(name, since)
                         : words("%1 has been falling since %2.").arg(name, since);
}

QString unknownText(const Frame& frame)
{
    if (frame.layout.newest(u"no2"_s, frame.asked.now) == nullptr) {
        return words("Not known: whether nitrite oxidisers have begun to grow; there is no reading of nitrite.");
    }
    if (frame.result() == nullptr) {
        return {};
    }
    std::size_t worst = 0;
    double ratio = 0.0;
    const auto& capacity = frame.result()->forecast.capacity;
    for (std::size_t guild = 0; guild < capacity.size(); ++guild) {
        if (!capacity[guild].future.empty()) {
            const forecast::Band& now = capacity[guild].future.front();
            const double wide = now[k90] / std::max(now[k10], 1e-9);
            worst = wide > ratio ? guild : worst;
            ratio = std::max(ratio, wide);
        }
    }
    if (ratio < kKnownRatio) {
        return {};
    }
    const forecast::Band& now = capacity[worst].future.front();
    const double factor = (frame.net_L > 0.0 ? frame.net_L : 1.0) / 24.0;
    const QString low = wording::numberText(now[k10] * factor, 2);
    const QString high = wording::numberText(now[k90] * factor, 2);
    return worst == 0
               ? words("Not known: what the ammonia oxidisers could take now, 8 in 10 between %1 and %2 mg N an hour.")
                     .arg(low, high)
               : words("Not known: what the nitrite oxidisers could take now, 8 in 10 between %1 and %2 mg N an hour.")
                     .arg(low, high);
}

void addWarnings(CycleModel& model, const Frame& frame)
{
    const facade::ForecastResult* result = frame.result();
    if (result == nullptr) {
        return;
    }
    const forecast::Diagnostics& found = result->forecast.diagnostics;
    if (!found.fitted) {
        model.fans.note = words("not fitted");
        model.warnings << words("Not fitted: the readings contradict the model, so the bands are the wide ones without "
                                "them. A change that was not entered, a wrong unit or an old kit can do that.");
    }
    for (const forecast::FlaggedReading& flagged : found.flagged) {
        const record::ReadingId id{flagged.tag};
        const auto reading = std::ranges::find(frame.layout.readings, id, &record::Reading::id);
        if (reading != frame.layout.readings.end()) {
            model.atOdds.push_back(id);
            model.warnings
                << words("At odds with the other readings: %1 %2 on %3; a reading this far off has odds of %4.")
                       .arg(wording::parameterName(reading->parameter), wording::readingWithUnit(*reading),
                            wording::dateText(reading->at.localDate(), frame.today),
                            wording::oddsText(flagged.probability));
        }
    }
    model.warnings << facade::causeSentences(result->inputs, result->causes, frame.today);
    const auto read = static_cast<int>(result->inputs.request.tank.readings.size());
    if (read < kReadingsWanted) {
        model.warnings << words(
                              "%1 of %2 readings needed for a fit; a nitrite test would do. Until then the bands rest "
                              "on what is known of the layout alone.")
                              .arg(read)
                              .arg(kReadingsWanted);
    }
    const QString when = wording::dateTimeText(result->inputs.asOf.toDateTime(), frame.today);
    if (frame.asked.state == facade::ForecastState::Running) {
        model.fans.note = words("forecast of %1; a new one is running").arg(when);
    } else if (frame.asked.state == facade::ForecastState::Stale) {
        model.fans.note = words("forecast of %1, before the latest entries").arg(when);
    }
    if (!frame.asked.failure.isEmpty()) {
        model.warnings
            << words("The forecast of %1 is shown: a newer one could not be made. %2").arg(when, frame.asked.failure);
    }
}

QString kitUnitOf(const Frame& frame, forecast::Substance substance)
{
    const auto& inputs = frame.result()->inputs;
    QString unit;
    for (std::size_t i = 0; i < inputs.request.tank.kits.size() && i < inputs.kits.size(); ++i) {
        if (inputs.request.tank.kits[i].substance == substance) {
            const record::Parameter* parameter = record::findParameter(inputs.kits[i].parameter);
            const record::Unit* found = parameter == nullptr ? nullptr : parameter->unit(inputs.kits[i].unit);
            unit = found == nullptr ? inputs.kits[i].unit : found->label;
        }
    }
    return unit;
}

QString substanceName(forecast::Substance substance)
{
    const std::array keys{u"tan"_s, u"no2"_s, u"no3"_s, u"nh3"_s};
    return wording::parameterName(keys[static_cast<std::size_t>(substance)]);
}

QStringList mustHold(const care::GateState& gate, const record::LayoutRecord& layout, const care::GateBook& book)
{
    QStringList lines;
    const auto limit = [&](const QString& key) {
        const care::GateCondition* condition = gate.condition(key);
        if (condition == nullptr || condition->firstStep) {
            return words("%1 < first step").arg(wording::parameterSymbol(key));
        }
        const record::Parameter* parameter = record::findParameter(key);
        const double shown = parameter->shown().fromCanonical(condition->limit.value_or(0.0));
        return words("%1 ≤ %2").arg(wording::parameterSymbol(key), wording::numberText(shown, shown < 0.195 ? 2 : 1));
    };
    lines << limit(u"tan"_s) << limit(u"no2"_s);
    for (const care::GateDefinition& definition : book.gates) {
        const auto age = definition.minAge.find(layout.layout.start);
        if (definition.key != gate.key || age == definition.minAge.end()) {
            continue;
        }
        lines << (definition.spanDays ? words("%1 tests over %2 days, from day %3")
                                            .arg(definition.readings)
                                            .arg(std::lround(*definition.spanDays))
                                            .arg(age->second)
                                      : words("%1 tests, from day %2").arg(definition.readings).arg(age->second));
    }
    return lines;
}

/// What is still needed: clear tests first, what else beneath.
QStringList stillNeeded(const care::GateState& gate)
{
    const care::GateCondition* run = gate.condition(u"clear-run"_s);
    const int tests = run == nullptr ? 0 : std::max(0, run->need - run->have);
    int others = 0;
    for (const care::GateCondition& condition : gate.conditions) {
        const bool chemistry = condition.key == u"clear-run"_s || condition.key == u"tan"_s ||
                               condition.key == u"no2"_s || condition.key == u"nh3"_s || condition.key == u"age"_s;
        others += !chemistry && condition.state != care::Known::Met ? 1 : 0;
    }
    if (gate.state() == care::Known::Met) {
        return {words("nothing")};
    }
    QStringList needed;
    if (tests > 0) {
        needed << plural("%n clear test(s)", tests);
    }
    if (others > 0) {
        needed << plural("%n other thing(s)", others);
    }
    return needed.isEmpty() ? QStringList{words("time")} : needed;
}

struct Opening
{
    QString when, odds;
};

Opening openingOf(const Frame& frame, const forecast::DateOdds& odds)
{
    const auto day = [&](double d) { return std::max(frame.flooded().plusDays(d).localDate(), frame.today); };
    const double now = odds.gridDays.empty() ? 0.0 : odds.gridDays.front();
    if (std::isfinite(odds.day[k90])) {
        if (odds.day[k90] <= now) {
            return {words("water clear now"), wording::oddsText(oddsBy(odds, now))};
        }
        return {wording::dateRangeText(day(odds.day[k10]), day(odds.day[k90]), frame.today), wording::oddsText(0.8)};
    }
    const QString last = wording::dateText(day(odds.lastDay), frame.today);
    if (std::isfinite(odds.day[k10])) {
        return {words("from %1").arg(wording::dateText(day(odds.day[k10]), frame.today)),
                words("not by %1: %2").arg(last, wording::oddsText(odds.notByLast))};
    }
    return {words("not by %1").arg(last), wording::oddsText(odds.notByLast)};
}

} // namespace

void addVerdict(CycleModel& model, const Frame& frame)
{
    for (const QString& parameter : {u"tan"_s, u"no2"_s}) {
        const QString trend = trendOf(frame.layout, parameter, frame.asked.now, frame.today);
        if (!trend.isEmpty()) {
            model.known << trend;
        }
    }
    const QString unknown = unknownText(frame);
    if (!unknown.isEmpty()) {
        model.known << unknown;
    }
    if (const forecast::DateOdds* odds = frame.focusOdds()) {
        const QString opening = wording::openingText(frame.focusTitle(), *odds, frame.flooded(), frame.today);
        model.headline = model.headline.isEmpty() ? opening : words("%1. %2").arg(model.headline, opening);
    }
    if (frame.result() != nullptr) {
        model.remarks = frame.result()->inputs.remarks;
    }
    addWarnings(model, frame);
}

void addTests(CycleModel& model, const Frame& frame)
{
    if (frame.result() == nullptr) {
        return;
    }
    for (const forecast::TestValue& test : facade::tellingTests(frame.result()->forecast, kTestsShown)) {
        CycleTest row;
        const QDate day = frame.flooded().plusDays(test.day).localDate();
        row.title = words("%1, %2").arg(substanceName(test.substance), wording::weekdayText(day, frame.today));
        row.gain =
            words("%1 to %2 d").arg(wording::numberText(test.width_d, 1), wording::numberText(test.expectedWidth_d, 1));
        row.sentence = wording::nextTestText(test, frame.flooded(), frame.today);
        const QString unit = kitUnitOf(frame, test.substance);
        for (const forecast::TestOutcome& outcome : test.outcomes) {
            if (outcome.probability >= 0.02) {
                row.outcomes << wording::testOutcomeText(outcome, unit, frame.flooded(), frame.today);
            }
        }
        model.tests.push_back(std::move(row));
    }
    model.nextTest = model.tests.empty() ? wording::noTestNarrowsText() : model.tests.front().sentence;
}

void addGates(CycleModel& model, const Frame& frame)
{
    const care::GateBook book = care::gatesOf(frame.asked.row);
    for (const care::GateState& gate : frame.gates) {
        CycleGate row;
        row.key = gate.key;
        row.title = wording::gateTitle(gate);
        row.who = QCoreApplication::translate("Gates", gate.who.toUtf8().constData());
        row.mustHold = mustHold(gate, frame.layout, book);
        row.needed = stillNeeded(gate);
        for (const care::GateCondition& condition : gate.conditions) {
            row.conditions << wording::gateConditionText(condition, frame.today);
        }
        const bool open = gate.state() == care::Known::Met;
        row.status = open ? facade::Status::Ok : facade::Status::Waiting;
        const forecast::DateOdds* odds = frame.oddsOf(gate.key);
        if (open) {
            row.opens = words("open");
        } else if (odds != nullptr) {
            const Opening opening = openingOf(frame, *odds);
            row.opens = opening.when;
            row.odds = opening.odds;
            const forecast::DateOdds& carries = frame.result()->forecast.carriesLoad;
            if (!carries.gridDays.empty()) {
                const double by = std::isfinite(odds->day[3]) ? odds->day[3] : odds->lastDay;
                row.capacity = words("load carried by then: %1").arg(wording::oddsText(oddsBy(carries, by)));
            }
        }
        row.sentence = words("%1, %2. Opens %3, %4. Still needed: %5.")
                           .arg(row.title, row.who, row.opens.isEmpty() ? words("not known") : row.opens,
                                row.odds.isEmpty() ? words("by the record") : row.odds, row.needed.join(u", "_s));
        model.gates.push_back(std::move(row));
    }
    if (frame.result() != nullptr) {
        const double load = frame.result()->inputs.request.load_mgN_per_L_d;
        model.capacityNote =
            load > 0.0
                ? wording::carriesLoadText(frame.result()->forecast.carriesLoad, load, frame.flooded(), frame.today)
                : words("No feed or animals are entered or planned, so there is no load to hold the filter "
                        "against. Plan an addition to see one.");
    }
}

void addLearned(CycleModel& model, const Frame& frame)
{
    const QString setting = frame.asked.row.settings.value(u"forecast.learn"_s);
    model.learnOn = setting != u"off"_s;
    if (frame.result() == nullptr) {
        return;
    }
    const facade::ForecastCase& inputs = frame.result()->inputs;
    model.learned = facade::learnedSentences(frame.asked.row, inputs.learned);
    model.canLearn = !inputs.lessons.empty() || !model.learned.isEmpty() || !model.learnOn;
}

void addRecord(CycleModel& model, const Frame& frame)
{
    const facade::TrackRecord* track = frame.asked.track;
    if (track == nullptr || track->all.readings == 0) {
        model.record.sentences << words("No earlier forecast has been held against later readings yet. Each one issued "
                                        "is kept, and how it held is shown here.");
        return;
    }
    const facade::HeldBands& all = track->all;
    model.record.readings = all.readings;
    model.record.sentences << wording::heldBandsText(all.readings, all.inside80);
    const auto own = track->layouts.find(frame.layout.layout.id);
    if (own != track->layouts.end() && own->second.readings > 0 && own->second.readings < all.readings) {
        model.record.sentences
            << words("Of this layout's %1, they held %2.").arg(own->second.readings).arg(own->second.inside80);
    }
    for (const QString& sentence : {wording::sharpnessText(all.error, all.persistence),
                                    wording::heldDatesText(track->dates.closed, track->dates.inside80),
                                    wording::wideningText(track->inflation)}) {
        if (!sentence.isEmpty()) {
            model.record.sentences << sentence;
        }
    }
    for (const auto& [gate, held] : track->gates) {
        model.record.sentences << wording::heldGateText(gate, held.closed, held.inside80);
    }
    for (const double pit : all.pit) {
        const auto tenth = static_cast<std::size_t>(std::clamp(pit * 10.0, 0.0, 9.0));
        ++model.record.tenths[tenth];
    }
}

} // namespace littoral::ui::cycle
